/** What a hover says of a step: what is new in it, what is driven and glued, how long it takes, and how many hands. */
import type { Entry } from "../../grammar/tree";
import { countOf, kilos } from "../checks/step-words";
import { type Quantity, quantityText } from "../units";
import type { DrivenIn, Worked, WorkStep } from "../worked";
import { escaped, list, paragraphs } from "./markdown";

export function describeStep(entry: Entry, worked: Worked): string | undefined {
  const { steps } = worked.steps;
  const n = steps.findIndex((s) => s.entry === entry);
  const step = steps[n];
  if (!step) return undefined;
  return paragraphs(
    `**Step ${n + 1} of ${steps.length}**`,
    list([
      freshText(step, worked),
      drivenText(step.joints, "Screws"),
      step.glues.length > 0 ? `Glues ${titles(step.glues)}` : undefined,
      things("Coats", step.coats),
      things("Lines", step.lines),
      step.cutToFit.length > 0 ? `Cut to fit here: ${escaped(step.cutToFit.join(", "))}` : undefined,
      squareText(step),
      liftText(step, worked),
      timeText(step, worked),
    ]),
  );
}

/** `New: 4 leg, 2 end`. */
function freshText({ fresh, parts }: WorkStep, worked: Worked): string | undefined {
  const { space } = worked;
  const counts = new Map<string, number>();
  for (const i of fresh) {
    const { part } = space.pieces[i]!;
    counts.set(part, (counts.get(part) ?? 0) + 1);
  }
  const unplaced = parts.map((part) => `${countOf(part, worked) ?? "some"} ${part}`);
  const all = [...[...counts].map(([part, count]) => `${count} ${part}`), ...unplaced];
  return all.length > 0 ? `New: ${escaped(all.join(", "))}` : undefined;
}

/** `Screws: 16, of end face into leg edge`. */
function drivenText(driven: readonly DrivenIn[], label: string): string | undefined {
  if (driven.length === 0) return undefined;
  const counts = driven.map((d) => d.count);
  const sum = counts.reduce((a, b) => (a === undefined || b === undefined ? undefined : a + b), 0);
  return `${label}: ${sum ?? "not known how many"}, of ${titles(driven)}`;
}

const titles = (driven: readonly DrivenIn[]): string => {
  const more = driven.length > MOST ? ` and ${driven.length - MOST} more` : "";
  return (
    driven
      .slice(0, MOST)
      .map((d) => escaped(d.joint.title))
      .join("; ") + more
  );
};

/** Joints that a hover names. */
const MOST = 6;

const things = (verb: string, list: readonly { readonly words: string }[]): string | undefined =>
  list.length > 0 ? `${verb} ${escaped([...new Set(list.map((t) => t.words))].join(", "))}` : undefined;

function squareText({ squares }: WorkStep): string | undefined {
  if (squares.length === 0) return undefined;
  const named = squares.map(({ of, name }) => (of === "feet" ? "the feet" : name));
  return `Before the last screws are tight, measure from corner to corner: ${escaped(named.join(", "))}`;
}

function liftText({ lift }: WorkStep, { settings }: Worked): string | undefined {
  if (!lift || lift.kg < WORTH_TELLING) return undefined;
  const weight = quantityText(kilos(lift.kg), settings.display);
  return `The heaviest to lift is about ${escaped(weight)}: ${escaped(lift.part)}${lift.is === "piece" ? "" : " and what it is joined to"}`;
}

/** kg: what is lighter goes without saying. */
const WORTH_TELLING = 5;

function timeText({ takes, wait, people }: WorkStep, { settings }: Worked): string | undefined {
  const text = (q: Quantity): string => escaped(quantityText(q, settings.display));
  const all = [
    takes && `takes ${text(takes)}`,
    wait && `then wait ${text(wait)}`,
    people === undefined ? undefined : people === 1 ? "one person" : `${people} people`,
  ].filter((t) => t !== undefined);
  return all.length > 0 ? all.join(", ").replace(/^./, (c) => c.toUpperCase()) : undefined;
}
