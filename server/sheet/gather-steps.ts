/** The steps and sittings as the sheet tells them. */
import type { At } from "../plan";
import type { ToolKey } from "../trade";
import { type Display, roughly, WEIGHT } from "../units";
import {
  type BitNeed,
  bitsNeeded,
  type Joint,
  type ToolNeed,
  timePlanOf,
  toolsNeeded,
  type Worked,
  type WorkStep,
} from "../worked";
import type { Place, SheetFresh, SheetSitting, SheetStep } from "./data";
import { squareRow } from "./gather-space";
import { holesOf, screwWords } from "./gather-work";
import type { Identities } from "./identity";
import { both } from "./marks";
import type { SheetWords } from "./words";

interface Shop {
  readonly tools: readonly ToolNeed[];
  readonly bits: readonly BitNeed[];
}

export function stepRows(
  worked: Worked,
  identities: Identities,
  place: (at: At) => Place,
  words: SheetWords,
): readonly SheetStep[] {
  const shop = { tools: toolsNeeded(worked, words.shop), bits: bitsNeeded(worked, words.shop) };
  return worked.steps.steps.map((step, i) => ({
    number: i + 1,
    title: step.title,
    lines: clausesOf(step, worked, identities),
    fresh: freshOf(step, worked, identities),
    joins: joinsOf(step, worked.settings.display, words),
    coats: coatsOf(step, worked, words),
    linings: step.lines.map(({ name, words: said }) => {
      const liners = worked.linings
        .filter((l) => l.box?.declared.name === name && l.roll)
        .map((l) => l.roll!.name);
      return liners.length === 0 ? said : words.work.linedWith(said, liners.join(", "));
    }),
    fit: step.cutToFit.map((part) => words.work.fitNow(part)),
    square: step.squares.map((check) => {
      const { words: what, diagonal } = squareRow(check, worked.settings.display, words);
      return words.diagonals(what, diagonal.text, diagonal.other);
    }),
    tools: toolsOf(step, shop, drainedIn(step, worked), words),
    people: step.people ?? null,
    takes: span(step.takes?.approx, words),
    wait: span(step.wait?.approx, words),
    lift: liftOf(step, worked, words),
    place: step.entry ? place(step.at) : null,
  }));
}

/** The clauses as they are written, a part with its marks: `uses B side`. */
function clausesOf({ entry }: WorkStep, { loaded, parts }: Worked, identities: Identities): string[] {
  if (!entry) return [];
  const { text } = loaded.files[0]!.tree;
  const named = (name: string): string => {
    const part = parts.get(name);
    const marks = part ? identities.rowsOf(part).map(({ mark }) => mark) : [];
    return marks.length > 0 ? `${marks.join(" and ")} ${name}` : name;
  };
  return entry.clauses.flatMap((c) => {
    if (c.kind === "uses" || c.kind === "coats" || c.kind === "lines")
      return [`${c.kind} ${c.things.map((t) => named(t.name.text)).join(", ")}`];
    return c.kind === "takes" || c.kind === "wait" || c.kind === "people" ? [text.slice(c.start, c.end)] : [];
  });
}

/** What gets the same finish as often, told together. */
function coatsOf({ coats }: WorkStep, worked: Worked, { work, said: told }: SheetWords): string[] {
  // How many coats there are where nobody says is told with the finish, and not of a step.
  const unsaid = new Set(worked.coats.flatMap((c) => (c.coatsFrom === "assumed" ? [c.entry] : [])));
  const groups = new Map<string, string[]>();
  for (const { words: said, line, coats: n } of coats) {
    const how = !line
      ? ""
      : unsaid.has(line.entry)
        ? line.finish
        : work.finishedWith(line.finish, work.coats(n));
    groups.set(how, [...(groups.get(how) ?? []), said]);
  }
  return [...groups].map(([how, things]) => (how === "" ? things.join(", ") : told(things.join(", "), how)));
}

/** By their rows of the cut list, in the order of the marks. */
function freshOf({ fresh, parts }: WorkStep, worked: Worked, identities: Identities): SheetFresh[] {
  const rows = new Map<string, { mark: string; part: string; pieces: string[] }>();
  for (const i of fresh) {
    const { id, part } = worked.space.pieces[i]!;
    const mark = identities.ofPlaced(id)?.row.mark ?? "";
    const row = rows.get(`${mark} ${part}`);
    if (row) row.pieces.push(id);
    else rows.set(`${mark} ${part}`, { mark, part, pieces: [id] });
  }
  const placed = [...rows.values()].map((row) => ({ ...row, count: row.pieces.length }));
  const loose = parts.flatMap((name) => {
    const part = worked.parts.get(name);
    return (part ? identities.rowsOf(part) : []).map(({ mark, pieces }) => ({
      mark,
      part: name,
      pieces,
      count: pieces.length,
    }));
  });
  return [...placed, ...loose].sort((a, b) => a.mark.length - b.mark.length || (a.mark < b.mark ? -1 : 1));
}

const joinsOf = ({ joints, glues }: WorkStep, display: Display, words: SheetWords): SheetStep["joins"] => [
  ...joints.map(({ joint, count }) => ({
    title: words.shop.titleOf(joint),
    what: screwWords(joint),
    screws: count ?? null,
    holes: holesOf(joint, display, words),
  })),
  ...glues.map(({ joint }) => ({
    title: words.shop.titleOf(joint),
    what: glueIn(joint),
    screws: null,
    holes: "",
  })),
];

/** The glue that the line names. */
function glueIn({ entry }: Joint): string {
  const clause = entry.clauses.find((c) => c.kind === "glue with");
  return clause?.name.text ?? "";
}

/** The bits and tools that its joints, coats, liners and corners take. */
function toolsOf(
  { joints, glues, coats, lines, squares }: WorkStep,
  shop: Shop,
  drained: ReadonlySet<string>,
  words: SheetWords,
): string[] {
  const titles = new Set(joints.map(({ joint }) => words.shop.titleOf(joint)));
  const bits = shop.bits.flatMap(({ kind, text, for: holes }) => {
    if (kind === "countersink" || kind === "driver") return [];
    const own = kind === "drain" ? drained : titles;
    return holes.some(({ title }) => own.has(title)) ? [words.wood.holes[kind](text)] : [];
  });
  const keys = new Set<ToolKey>([
    ...(coats.length > 0 ? (["brush", "rags"] as const) : []),
    ...(glues.length > 0 ? (["clamps"] as const) : []),
    ...(lines.length > 0 ? (["knife", "stapler"] as const) : []),
    ...(squares.length > 0 ? (["square"] as const) : []),
    ...(drained.size > 0 ? (["drill"] as const) : []),
  ]);
  const tools = shop.tools.filter(
    ({ tool, for: uses }) => keys.has(tool) || (tool !== "driver" && uses.some((use) => titles.has(use))),
  );
  return [...tools.map(({ name }) => name), ...bits];
}

/** The boxes whose drain holes are bored in this step: the one in which the last piece of the bottom is new. */
function drainedIn(step: WorkStep, { drainage, space, steps }: Worked): ReadonlySet<string> {
  const n = steps.steps.indexOf(step);
  const own = drainage.filter(({ how, box }) => {
    if (how !== "holes") return false;
    const bottom = box.declared.entry.clauses.flatMap((c) =>
      c.kind === "floor" ? c.things.flatMap((t) => space.named.get(t.name.text) ?? []) : [],
    );
    return bottom.length > 0 && Math.max(...bottom.map((i) => steps.stepOf[i] ?? -1)) === n;
  });
  return new Set(own.map(({ box }) => box.name));
}

function liftOf({ lift }: WorkStep, { settings, space }: Worked, words: SheetWords): string {
  if (!lift || lift.kg < WORTH_SAYING) return "";
  const part = lift.pieces.length > 0 ? space.pieces[lift.pieces[0]!]!.part : lift.part;
  const what = words.work.liftOf(words.work.lifted[lift.is], part);
  return words.work.lifts(what, both(roughly(WEIGHT, lift.kg), settings.display));
}
/** Kilograms; lighter is lifted without a thought. */
const WORTH_SAYING = 8;

/** Work and what ends it, from step to step. */
export function sittingRows({ steps }: Worked, words: SheetWords): readonly SheetSitting[] {
  const order = new Map(steps.steps.map((step, i) => [step, i + 1]));
  return timePlanOf(steps.steps).map(({ steps: own, minutes, wait }) => ({
    from: order.get(own[0]!)!,
    to: order.get(own.at(-1)!)!,
    takes: span(minutes, words),
    wait: span(wait?.minutes, words),
    overnight: wait?.overnight ?? false,
  }));
}

function span(minutes: number | undefined, words: SheetWords): { minutes: number; text: string } | null {
  if (minutes === undefined || minutes <= 0) return null;
  return { minutes, text: words.work.time(Math.round(minutes)) };
}
