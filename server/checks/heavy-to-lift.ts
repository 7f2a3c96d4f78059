import { cite, liftingLimit } from "../trade";
import { handsFor, LIFTS, type Lift, type Worked, type WorkStep } from "../worked";
import type { Check, Cure, Finding } from "./check";
import { phrase } from "./phrases";
import { pieceSlot } from "./piece-words";
import { clauseAdded, kilos, namesOf } from "./step-words";
import { edit } from "./writing";

export const heavyToLift: Check = {
  code: "heavy-to-lift",
  class: "hazard",
  title: "Too heavy to lift",
  page: `51 lb (23 kg) is the most that one person lifts in the best posture: close to the body, from the height of a table. Reaching
and stooping make it less. In a step each new piece is lifted by itself, an assembly is set in its place as a whole, and
what was joined before is lifted where new pieces join it to what stands, or where it is set down on what came after it. What
begins less than 6" above the floor is stood up or levered up, and not lifted. Weights are of the wood alone, and what
fills a box is not lifted.

How many people are there is said by the step (\`2 people\`); unsaid, one is taken.

\`\`\`sawbuck
stock beam of 6x6, species douglas-fir, sold 14' $60
part sill 1 of beam, length 12'
step Lay the sill
  uses sill
\`\`\`

\`\`\`sawbuck
stock beam of 6x6, species douglas-fir, sold 14' $60
part sill 1 of beam, length 12'
step Lay the sill
  uses sill
  2 people
\`\`\``,
  templates: {
    piece: "{what} weighs {weight} and is lifted here by {people}: {limit} is the most for {each}.",
    unit: "What was joined before, {count} pieces with {what}, weighs {weight} and is lifted here by {people}: {limit} is the most for {each}.",
    assembly:
      "The assembly that {what} belongs to weighs {weight} and is set in its place here by {people}: {limit} is the most for {each}.",
    alone: "The step does not say how many people are there: one is taken.",
    wood: "The wood alone is weighed: screws, finish and water come on top.",
    write: "Write {people} people",
    parts: "Put it together where it stands, in lighter parts, or lift it with a hoist.",
  },
  run: (worked) =>
    worked.steps.proposed
      ? []
      : worked.steps.steps.flatMap((step) => {
          const { lift, people, unread } = step;
          const hands = people ?? 1;
          return lift && !unread && lift.kg > LIFTS * hands * (1 + ROUNDING)
            ? [findingOf(step, lift, hands, worked)]
            : [];
        }),
};

/** What arithmetic leaves of a weight that is just at the limit. */
const ROUNDING = 1e-9;

function findingOf(step: WorkStep, lift: Lift, hands: number, worked: Worked): Finding {
  const weight = kilos(lift.kg);
  const limit = kilos(LIFTS);
  const [first] = lift.pieces;
  return {
    at: step.at,
    about: first === undefined ? [lift.part] : namesOf(lift.pieces, worked),
    says: lift.is,
    slots: {
      what: first === undefined ? lift.part : pieceSlot(worked.space.pieces[first]!),
      weight,
      count: lift.pieces.length,
      people: phrase("so many people", { n: hands }),
      limit,
      each: phrase("each of so many", { n: hands }),
    },
    numbers: [
      { name: "to be lifted", value: weight, source: "worked out" },
      { name: "the most for one person", value: limit, source: cite(liftingLimit.source) },
    ],
    assumed: [
      ...(step.people === undefined ? [{ says: "alone", slots: {} }] : []),
      { says: "wood", slots: {} },
    ],
    cures: cures(step, lift),
  };
}

function cures(step: WorkStep, { kg }: Lift): Cure[] {
  const people = handsFor(kg);
  if (people === undefined) return [{ says: "parts", slots: {}, edits: [] }];
  const clause = step.entry?.clauses.find((c) => c.kind === "people");
  const edits = clause
    ? [edit({ file: step.at.file, start: clause.start, end: clause.end }, `${people} people`)]
    : clauseAdded(step, `${people} people`);
  return [{ says: "write", slots: { people }, edits }];
}
