/** How checks speak of steps, and how they change their lines. */
import { ifKnown } from "../plan";
import { exactly, fraction, type Quantity, quantityText, roughly, TIME, WEIGHT } from "../units";
import type { Worked, WorkStep } from "../worked";
import type { Edit, Slot } from "./check";
import { phrase } from "./phrases";
import { editAfter } from "./writing";

/** `step 3 (“Put the cap on”)`; a long title is cut short at a word. */
export function stepSlot(step: WorkStep, { steps: { steps } }: Worked): Slot {
  const words = step.title.trim().split(/\s+/);
  let short = "";
  for (const word of words) {
    if (short !== "" && short.length + word.length >= LONGEST) {
      short += " …";
      break;
    }
    short += short === "" ? word.slice(0, LONGEST) : ` ${word}`;
  }
  const n = steps.indexOf(step) + 1;
  return short === "" ? phrase("step", { n }) : phrase("titled step", { n, title: short });
}

/** Letters of a title that a sentence repeats. */
const LONGEST = 40;

/** The text of the plan's own file. */
export const textOfPlan = ({ loaded }: Worked): string => loaded.files[0]!.tree.text;

/** A clause on a line of its own at the end of a step. */
export function clauseAdded({ entry, at }: WorkStep, clause: string): Edit[] {
  return entry ? [editAfter({ ...at, start: entry.start, end: entry.end }, `\n  ${clause}`)] : [];
}

/** Where the lines of a step begin and end, their last line's end included. */
function linesOf({ entry }: WorkStep, text: string): { start: number; end: number } | undefined {
  if (!entry) return undefined;
  const start = text.lastIndexOf("\n", entry.start - 1) + 1;
  const next = text.indexOf("\n", entry.end);
  return { start, end: next < 0 ? text.length : next + 1 };
}

/** Moving the lines of a step before, or behind, those of another; none where one of them has no lines. */
export function stepMoved(
  step: WorkStep,
  where: "before" | "after",
  other: WorkStep,
  worked: Worked,
): Edit[] {
  const text = textOfPlan(worked);
  const [own, theirs] = [linesOf(step, text), linesOf(other, text)];
  if (!own || !theirs) return [];
  const at = where === "before" ? theirs.start : theirs.end;
  const { file } = step.at;
  const lines = text.slice(own.start, own.end).replace(/\r?\n$/, "");
  const moved = text.endsWith("\n") || at < text.length ? `${lines}\n` : `\n${lines}`;
  return [
    { file, start: own.start, end: own.end, text: "" },
    { file, start: at, end: at, text: moved },
  ];
}

/** Minutes as a plan writes them: `12 h`, `1.5 h`, `40 min`; a part of a quarter of an hour counts as a whole. */
export function timeWritten(minutes: number): string {
  if (minutes < 60) return `${Math.ceil(minutes)} min`;
  return `${Math.ceil(minutes / 15) / 4} h`;
}

export const minutesOf = (minutes: number): Quantity =>
  Number.isInteger(minutes) ? exactly(TIME, fraction.rational(minutes)) : roughly(TIME, minutes);

export const kilos = (kg: number): Quantity => roughly(WEIGHT, kg);

/** Proposed steps as the lines of a plan. */
export function stepsWritten(worked: Worked): string {
  const { display } = worked.settings;
  return worked.steps.steps
    .map(({ title, uses, coats, lines, wait, people }) => {
      const named = (verb: string, things: readonly { words: string }[]): string[] =>
        things.length > 0 ? [`  ${verb} ${things.map((t) => t.words).join(" and ")}`] : [];
      return [
        `step ${title}`,
        ...named("uses", uses),
        ...named("coats", coats),
        ...named("lines", lines),
        ...(wait ? [`  wait ${quantityText(wait, display)}`] : []),
        ...(people !== undefined ? [`  ${people} people`] : []),
      ].join("\n");
    })
    .join("\n");
}

/** Names as a step's clause joins them, `leg and rail`; of many the first three, and how many more there are. */
export function someOf(names: readonly string[]): Slot {
  const most = 3;
  if (names.length <= most + 1) return { row: names, by: " and " };
  return { row: [...names.slice(0, most), phrase("so many more", { n: names.length - most })], by: " and " };
}

/** Names of the parts of pieces, and of what they belong to. */
export function namesOf(pieces: readonly number[], { space }: Worked): string[] {
  const all = pieces.map((i) => space.pieces[i]!);
  return [...new Set(all.flatMap((p) => [p.part, ...p.owners.map((o) => o.name)]))];
}

/** How many pieces of a part there are, where that is known. */
export const countOf = (part: string, { parts }: Worked): number | undefined =>
  ifKnown(parts.get(part)?.count);
