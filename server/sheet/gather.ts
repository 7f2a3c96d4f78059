/** From the worked-out plan and its problems to the sheet's plain data. */
import { type Judged, type Problem, problemText, uncheckedText } from "../checks";
import { ifKnown } from "../plan";
import { documented } from "../trade";
import { LENGTH, moneyText, quantityText } from "../units";
import { cautionsOf, type Worked } from "../worked";
import type { SheetData, SheetProblem } from "./data";
import { boardPlans, panelPlans } from "./gather-boards";
import { finishRows, liningRows } from "./gather-coats";
import { cutGroups } from "./gather-cuts";
import { shopOf } from "./gather-shop";
import { jointRows, notDrawn, overallOf, pieceRows, squareRows } from "./gather-space";
import { sittingRows, stepRows } from "./gather-steps";
import { boxRows, fastenerRows, ringRows, shoppingOf } from "./gather-work";
import { identitiesOf } from "./identity";
import { placer } from "./marks";
import type { SheetWords } from "./words";

/** The sheet of a plan. `named` tells how a file is named on it. */
export function gather(
  worked: Worked,
  judged: Judged,
  named: (file: string) => string,
  words: SheetWords,
): SheetData {
  const { settings, loaded } = worked;
  const { display } = settings;
  const place = placer(loaded.files, named);
  const main = loaded.files[0]!;
  const identities = identitiesOf(worked);
  const problem = (p: Problem, accepted?: string): SheetProblem => ({
    code: p.code,
    class: p.class,
    message: problemText(p.code, p, display),
    place: place(p.at),
    numbers: p.numbers.map((n) => ({
      name: n.name,
      value: n.value.approx,
      unit: baseUnit(n.value),
      text: quantityText(n.value, display),
      source: n.source,
    })),
    related: p.related.map((r) => ({ message: problemText(p.code, r, display), place: place(r.at) })),
    assumed: p.assumed.map((a) => problemText(p.code, a, display)),
    cures: p.cures.map((c) => problemText(p.code, c, display)),
    ...(accepted !== undefined && { accepted }),
  });
  const shop = shopOf(worked);
  return {
    format: "sawbuck-sheet",
    version: 1,
    language: settings.language,
    file: named(main.file),
    title: settings.title || "Untitled plan",
    units: {
      system: display.system,
      mark: quantityText({ dim: LENGTH, exact: display.mark, approx: 0 }, display),
    },
    make: settings.make,
    facts: factsOf(worked, shop.weight),
    notes: main.tree.entries.flatMap((e) => (e.kind === "note" && e.title.text ? [e.title.text] : [])),
    problems: judged.problems.map((p) => problem(p)),
    accepted: judged.accepted.map((a) => problem(a.problem, a.because)),
    notChecked: [
      ...notDrawn(worked),
      ...worked.unchecked.map((u) => ({ ...uncheckedText(u), ...(u.at && { place: place(u.at) }) })),
    ],
    overall: overallOf(worked),
    pieces: pieceRows(worked, identities, place),
    cutList: cutGroups(worked, identities, place),
    boards: boardPlans(worked, identities),
    panels: panelPlans(worked, identities),
    shopping: shoppingOf(worked),
    fasteners: fastenerRows(worked),
    joints: jointRows(worked, identities, place),
    square: squareRows(worked),
    rings: ringRows(worked, judged),
    boxes: boxRows(worked),
    musts: worked.musts.map((m) => ({
      rule: main.tree.text.slice(m.entry.left.start, m.entry.right.end),
      because: m.because,
      state: mustState(m, worked),
    })),
    ...shop,
    finishes: finishRows(worked, identities, place, words),
    linings: liningRows(worked, place, words),
    steps: stepRows(worked, identities, place, words),
    stepsProposed: worked.steps.proposed,
    sittings: sittingRows(worked, words),
    cautions: cautionsOf(worked).map(({ text, source }) => ({ text, source: documented(source) })),
  };
}

function mustState(must: Worked["musts"][number], { settings }: Worked): string {
  const left = ifKnown(must.left);
  const right = ifKnown(must.right);
  if (!left || !right || must.holds === undefined) return "not checked";
  const is = `it is ${quantityText(left, settings.display)}`;
  return must.holds ? is : `${is}: broken`;
}

function factsOf({ settings, materials, loaded }: Worked, weight: SheetData["weight"]): SheetData["facts"] {
  const { display } = settings;
  const text = (q: Parameters<typeof quantityText>[0] | undefined) => (q ? quantityText(q, display) : "");
  const sides = (e: typeof settings.space) =>
    e
      ? [e.wide && `${text(e.wide)} wide`, e.deep && `${text(e.deep)} deep`, e.high && `${text(e.high)} high`]
          .filter(Boolean)
          .join(", ")
      : "";
  const limit = (l: typeof settings.floorLimit) =>
    l ? `${text(l.value)}${l.by ? ` by ${l.by}` : ", not said by whom"}` : "";
  const standards = {
    "ps20-dry": "PS 20, surfaced dry",
    "ps20-green": "PS 20, surfaced green",
    "planed-metric": "planed metric",
  };
  const shop = loaded.files.find((f) => f.role === "shop");
  const facts: [string, string][] = [
    ["Written by", settings.writtenBy],
    ["Licence", settings.licence],
    ["Written in", `plan language ${settings.language}`],
    ["Weight", weight ? `${weight.text} of dry wood` : ""],
    ["Make", settings.make > 1 ? `${settings.make} of the whole thing` : ""],
    [
      "Stands",
      [
        settings.place ?? "",
        settings.nearChildren ? "near children" : "",
        settings.nearGuard ? "near a guard" : "",
      ]
        .filter(Boolean)
        .join(", "),
    ],
    ["Space", sides(settings.space)],
    ["Way in", sides(settings.wayIn)],
    ["Floor limit", limit(settings.floorLimit)],
    ["Also on the floor", settings.shares.map((s) => `${s.what} ${text(s.value)}`).join(", ")],
    ["Foot limit", limit(settings.footLimit)],
    ["Budget", settings.budget ? moneyText(settings.budget.value) : ""],
    ["Lumber sizes", materials.some((m) => m.kind === "board") ? standards[settings.lumber] : ""],
    [
      "Saw cut",
      `${text(settings.kerf.value)} ${settings.kerf.from === "assumed" ? "(taken for granted)" : `(from the ${settings.kerf.from === "plan" ? "plan" : "tools"})`}`,
    ],
    ["Spares", settings.spare ? `${settings.spare.count} in ${settings.spare.per}` : ""],
    ["Shop", shop ? shop.file.split(/[\\/]/).pop()! : ""],
    ["Tools", settings.tools?.has.join(", ") ?? ""],
  ];
  return facts.filter(([, value]) => value !== "").map(([label, value]) => ({ label, value }));
}

function baseUnit(q: {
  dim: { length: number; weight: number; time: number; angle: number; money: number; currency: string };
}): string {
  const { length, weight, time, angle, money, currency } = q.dim;
  if (money) return currency;
  const parts = [
    weight ? "kg" : "",
    length ? `mm${Math.abs(length) > 1 ? Math.abs(length) : ""}` : "",
    time ? "min" : "",
    angle ? "deg" : "",
  ];
  if (weight && length < 0) return `kg/mm${-length}`;
  return parts.filter(Boolean).join(" ");
}
