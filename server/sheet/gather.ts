/** From the worked-out plan and its problems to the sheet's plain data. */
import { baseName, type Judged, type Problem, problemText } from "../checks";
import { ifKnown } from "../plan";
import { LENGTH, moneyText, quantityText } from "../units";
import { cautionsOf, type Worked } from "../worked";
import type { SheetData } from "./data";
import { boardPlans, panelPlans } from "./gather-boards";
import { builtRows } from "./gather-built";
import { finishRows, liningRows } from "./gather-coats";
import { cutGroups } from "./gather-cuts";
import { holdingOf } from "./gather-holding";
import { reportOf } from "./gather-problems";
import { gapRows, rootRows } from "./gather-roots";
import { documented, shopOf } from "./gather-shop";
import { jointRows, overallOf, pieceRows, squareRows } from "./gather-space";
import { sittingRows, stepRows } from "./gather-steps";
import { boxRows, fastenerRows, ringRows, shoppingOf } from "./gather-work";
import { identitiesOf } from "./identity";
import { placer } from "./marks";
import type { SheetWords } from "./words";

/**
 * The sheet of a plan, in these words. `named` tells how a file is named on it. Problems and what was not looked at keep
 * the words and numbers of the checks.
 */
export function gather(
  plan: Worked,
  judged: Judged,
  named: (file: string) => string,
  words: SheetWords,
): SheetData {
  const { display } = plan.settings;
  const worked = writtenIn(plan, words);
  const { settings, loaded } = worked;
  const place = placer(loaded.files, named);
  const main = loaded.files[0]!;
  const identities = identitiesOf(worked);
  const message = (p: Problem): string => problemText(p.code, p, display, words.messages);
  const { file, title, problems, accepted, notChecked } = reportOf(worked, judged, named, words, display);
  const shop = shopOf(worked, words);
  return {
    format: "sawbuck-sheet",
    version: 1,
    language: settings.language,
    file,
    title,
    units: {
      system: display.system,
      mark: quantityText({ dim: LENGTH, exact: display.mark, approx: 0 }, settings.display),
    },
    make: settings.make,
    facts: factsOf(worked, shop.weight, words),
    notes: main.tree.entries.flatMap((e) => (e.kind === "note" && e.title.text ? [e.title.text] : [])),
    problems,
    accepted,
    notChecked,
    overall: overallOf(worked),
    pieces: pieceRows(worked, identities, place),
    cutList: cutGroups(worked, identities, place, words),
    boards: boardPlans(worked, identities, words),
    panels: panelPlans(worked, identities, words),
    shopping: shoppingOf(worked, words),
    fasteners: fastenerRows(worked, words),
    joints: jointRows(worked, identities, place, words),
    square: squareRows(worked, words),
    rings: ringRows(worked, judged, message, words),
    boxes: boxRows(worked, words),
    musts: worked.musts.map((m) => ({
      rule: main.tree.text.slice(m.entry.left.start, m.entry.right.end),
      because: m.because,
      state: mustState(m, worked, words),
    })),
    ...shop,
    finishes: finishRows(worked, identities, place, words),
    linings: liningRows(worked, place, words),
    steps: stepRows(worked, identities, place, words),
    stepsProposed: worked.steps.proposed,
    sittings: sittingRows(worked, words),
    cautions: cautionsOf(worked, words.shop).map(({ text, source }) => ({
      text,
      source: documented(source, words),
    })),
    ...holdingOf(worked, place, words),
    roots: rootRows(worked, words),
    gaps: gapRows(worked, place, words),
    built: builtRows(worked, place, words),
  };
}

/** The same plan, its numbers written as the language does. */
const writtenIn = (worked: Worked, { numbers }: SheetWords): Worked => {
  const { settings } = worked;
  return { ...worked, settings: { ...settings, display: { ...settings.display, numbers } } };
};

function mustState(must: Worked["musts"][number], { settings }: Worked, { plan }: SheetWords): string {
  const left = ifKnown(must.left);
  const right = ifKnown(must.right);
  if (!left || !right || must.holds === undefined) return plan.notChecked;
  return plan.must(quantityText(left, settings.display), must.holds);
}

function factsOf(
  { settings, materials, loaded }: Worked,
  weight: SheetData["weight"],
  { plan }: SheetWords,
): SheetData["facts"] {
  const { display } = settings;
  const { facts } = plan;
  const text = (q: Parameters<typeof quantityText>[0]): string => quantityText(q, display);
  const sides = (e: typeof settings.space): string =>
    (["wide", "deep", "high"] as const)
      .flatMap((side) => {
        const length = e?.[side];
        return length ? [plan.sides[side](text(length))] : [];
      })
      .join(", ");
  const limit = (l: typeof settings.floorLimit): string => (l ? plan.limit(text(l.value), l.by) : "");
  const stands = [
    settings.place ? plan.settings[settings.place] : "",
    settings.nearChildren ? plan.nearChildren : "",
    settings.nearGuard ? plan.nearGuard : "",
  ];
  const shop = loaded.files.find((f) => f.role === "shop");
  const told: [string, string][] = [
    [facts.writtenBy, settings.writtenBy],
    [facts.licence, settings.licence],
    [facts.language, plan.languageVersion(settings.language)],
    [facts.weight, weight ? (settings.make > 1 ? plan.dryWoodEach : plan.dryWood)(weight.text) : ""],
    [facts.make, settings.make > 1 ? plan.makes(settings.make) : ""],
    [facts.stands, stands.filter(Boolean).join(", ")],
    [facts.anchored, settings.anchoredTo],
    [facts.space, sides(settings.space)],
    [facts.wayIn, sides(settings.wayIn)],
    [facts.floorLimit, limit(settings.floorLimit)],
    [facts.alsoOnFloor, settings.shares.map((s) => `${s.what} ${text(s.value)}`).join(", ")],
    [facts.footLimit, limit(settings.footLimit)],
    [facts.budget, settings.budget ? moneyText(settings.budget.value, display) : ""],
    [facts.lumber, materials.some((m) => m.kind === "board") ? plan.lumber[settings.lumber] : ""],
    [facts.sawCut, plan.kerf(text(settings.kerf.value), settings.kerf.from)],
    [facts.spares, settings.spare ? plan.sparesIn(settings.spare.count, settings.spare.per) : ""],
    [facts.shop, shop ? baseName(shop.file) : ""],
    [facts.yard, settings.yard],
    [facts.tools, settings.tools?.has.join(", ") ?? ""],
  ];
  return told.filter(([, value]) => value !== "").map(([label, value]) => ({ label, value }));
}
