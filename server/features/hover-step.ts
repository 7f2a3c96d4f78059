/** What a hover says of a step: what is new in it, what is driven and glued, how long it takes, and how many hands. */
import type { Entry } from "../../grammar/tree";
import { countOf, kilos } from "../checks/step-words";
import { type Quantity, quantityText } from "../units";
import type { DrivenIn, Worked, WorkStep } from "../worked";
import { COMMON } from "./hover-texts/common";
import { STEP } from "./hover-texts/step";
import type { Voice } from "./hover-texts/voice";
import { escaped, list, paragraphs } from "./markdown";

export function describeStep(entry: Entry, worked: Worked, voice: Voice): string | undefined {
  const { steps } = worked.steps;
  const n = steps.findIndex((s) => s.entry === entry);
  const step = steps[n];
  if (!step) return undefined;
  const says = STEP[voice.language];
  return paragraphs(
    `**${says.step(n + 1, steps.length)}**`,
    list([
      freshText(step, worked, voice),
      drivenText(step.joints, voice),
      step.glues.length > 0 ? says.glues(titles(step.glues, voice)) : undefined,
      step.coats.length > 0 ? says.coats(things(step.coats)) : undefined,
      step.lines.length > 0 ? says.lines(things(step.lines)) : undefined,
      step.cutToFit.length > 0 ? says.fit(escaped(step.cutToFit.join(", "))) : undefined,
      squareText(step, voice),
      liftText(step, voice),
      timeText(step, voice),
    ]),
  );
}

/** `New: 4 leg, 2 end`. */
function freshText({ fresh, parts }: WorkStep, worked: Worked, { language }: Voice): string | undefined {
  const says = STEP[language];
  const { space } = worked;
  const counts = new Map<string, number>();
  for (const i of fresh) {
    const { part } = space.pieces[i]!;
    counts.set(part, (counts.get(part) ?? 0) + 1);
  }
  const all = [
    ...[...counts].map(([part, count]) => says.part(count, part)),
    ...parts.map((part) => says.part(countOf(part, worked), part)),
  ];
  return all.length > 0 ? says.fresh(escaped(all.join(", "))) : undefined;
}

/** `Screws: 16, of end face into leg edge`. */
function drivenText(driven: readonly DrivenIn[], voice: Voice): string | undefined {
  if (driven.length === 0) return undefined;
  const counts = driven.map((d) => d.count);
  const sum = counts.reduce((a, b) => (a === undefined || b === undefined ? undefined : a + b), 0);
  return STEP[voice.language].screws(sum, titles(driven, voice));
}

function titles(driven: readonly DrivenIn[], { language }: Voice): string {
  const { joint, between } = COMMON[language];
  const told = driven.slice(0, MOST).map((d) => escaped(joint(d.joint)));
  const more = driven.length > MOST ? STEP[language].more(driven.length - MOST) : "";
  return told.join(between) + more;
}

/** Joints that a hover names. */
const MOST = 6;

const things = (list: readonly { readonly words: string }[]): string =>
  escaped([...new Set(list.map((t) => t.words))].join(", "));

function squareText({ squares }: WorkStep, { language }: Voice): string | undefined {
  if (squares.length === 0) return undefined;
  const says = STEP[language];
  const named = squares.map(({ of, name }) => (of === "feet" ? says.feet : name));
  return says.square(escaped(named.join(", ")));
}

function liftText({ lift }: WorkStep, { language, display }: Voice): string | undefined {
  if (!lift || lift.kg < WORTH_TELLING) return undefined;
  const weight = quantityText(kilos(lift.kg), display);
  return STEP[language].lift(escaped(weight), escaped(lift.part), lift.is !== "piece");
}

/** kg: what is lighter goes without saying. */
const WORTH_TELLING = 5;

function timeText({ takes, wait, people }: WorkStep, { language, display }: Voice): string | undefined {
  const says = STEP[language];
  const text = (q: Quantity): string => escaped(quantityText(q, display));
  const all = [
    takes && says.takes(text(takes)),
    wait && says.wait(text(wait)),
    people === undefined ? undefined : says.people(people),
  ].filter((t) => t !== undefined);
  return all.length > 0 ? all.join(", ").replace(/^./, (c) => c.toUpperCase()) : undefined;
}
