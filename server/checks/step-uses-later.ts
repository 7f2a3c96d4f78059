import {
  type LinedEarly,
  linedEarly,
  type StepThing,
  takenBefore,
  type UsedEarly,
  usedEarly,
  type Worked,
  type WorkStep,
} from "../worked";
import type { Check, Cure, Edit, Finding } from "./check";
import { pieceSlot } from "./piece-words";
import { clauseAdded, stepMoved, stepSlot } from "./step-words";

export const stepUsesLater: Check = {
  code: "step-uses-later",
  class: "warning",
  title: "A step that needs what comes later",
  page: `Steps are done in the order of their lines. A piece that a step \`uses\` must by then stand on the floor, lie on something
that is there, or be joined to something: where all that it is joined to comes only in later steps, it can only wait. What is
laid out flat and joined among itself is fine, and so is what a later step names again: it was cut or tried before.

A box can only be lined when its walls and its bottom are there (\`lines\`), and of a ring that a step has put together
nothing is left for a later one.

\`\`\`sawbuck
part leg of 2x4, length 10"
part rail of 1x6, length 30"
part slat of 1x4, length 13-1/2"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
place slat front to back, flat, on rails, flush with front of rails, 4" in from left of legs, 4 across, 2" apart
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
fasten slat into rail edge, 1 #8 x 1-5/8" at each crossing, pilot 3/32"
step Screw the slats on
  uses slat
step Build the frame
  uses leg and rail
\`\`\`

\`\`\`sawbuck
part leg of 2x4, length 10"
part rail of 1x6, length 30"
part slat of 1x4, length 13-1/2"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
place slat front to back, flat, on rails, flush with front of rails, 4" in from left of legs, 4 across, 2" apart
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
fasten slat into rail edge, 1 #8 x 1-5/8" at each crossing, pilot 3/32"
step Build the frame
  uses leg and rail
step Screw the slats on
  uses slat
\`\`\``,
  templates: {
    early:
      "“{thing}” is used here, but all that it is joined to comes later: {needs} only in {later}, and until then nothing holds it.",
    lined: "{box} is lined here, but {needs} comes only in {later}, so it is still open.",
    taken:
      "“{thing}” belongs to {ring}, which {before} has used already: nothing of it is left for this step.",
    there: "{piece} comes in this step.",
    used: "It is used up in this step.",
    move: "Move this step after {later}",
    line: "Line {box} only when {needs} is there, in {later} or after it.",
    give: "Use {thing} in {later} instead",
    wait: "Use {thing} only where {needs} is there, or bring that first.",
    leave: "Leave {thing} out here, or use the pieces of {ring} one by one.",
  },
  run: (worked) => {
    if (worked.steps.proposed) return [];
    const early = usedEarly(worked).map((u) => earlyFinding(u, worked));
    const lined = linedEarly(worked).map((l) => linedFinding(l, worked));
    const taken = takenBefore(worked).map(({ step, thing, ring, before }): Finding => {
      return {
        at: placeOf(thing, step),
        about: [thing.name, ring],
        says: "taken",
        slots: { thing: thing.words, ring, before: stepSlot(before, worked) },
        related: [{ says: "used", slots: {}, at: before.at }],
        cures: [{ says: "leave", slots: { thing: thing.words, ring }, edits: [] }],
      };
    });
    return [...early, ...lined, ...taken];
  },
};

const placeOf = ({ thing }: StepThing, { at }: WorkStep): Finding["at"] =>
  thing ? { ...at, start: thing.start, end: thing.end } : at;

function earlyFinding({ step, thing, needs, later }: UsedEarly, worked: Worked): Finding {
  const piece = pieceSlot(worked.space.pieces[needs]!);
  const after = stepSlot(later, worked);
  const alone = step.uses.length === 1 && step.coats.length === 0 && step.lines.length === 0;
  const cures: Cure[] = alone
    ? [{ says: "move", slots: { later: after }, edits: stepMoved(step, "after", later, worked) }]
    : [{ says: "give", slots: { thing: thing.words, later: after }, edits: given(step, thing, later) }];
  return {
    at: placeOf(thing, step),
    about: [thing.name],
    says: "early",
    slots: { thing: thing.words, needs: piece, later: after },
    related: [{ says: "there", slots: { piece }, at: later.at }],
    cures:
      cures[0]!.edits.length > 0
        ? cures
        : [{ says: "wait", slots: { thing: thing.words, needs: piece }, edits: [] }],
  };
}

/** Taking a thing out of one step's list and naming it in another; none where it stands alone in its clause. */
function given(step: WorkStep, { thing, words }: StepThing, later: WorkStep): Edit[] {
  const clause = step.entry?.clauses.find((c) => c.kind === "uses" && c.things.some((t) => t === thing));
  if (clause?.kind !== "uses" || !thing || clause.things.length < 2) return [];
  const n = clause.things.indexOf(thing);
  const [start, end] =
    n > 0 ? [clause.things[n - 1]!.end, thing.end] : [thing.start, clause.things[1]!.start];
  const taken: Edit = { file: step.at.file, start, end, text: "" };
  const theirs = later.entry?.clauses.find((c) => c.kind === "uses");
  const last = theirs?.kind === "uses" ? theirs.things.at(-1) : undefined;
  const more: Edit[] = last
    ? [{ file: step.at.file, start: last.end, end: last.end, text: ` and ${words}` }]
    : clauseAdded(later, `uses ${words}`);
  return more.length > 0 ? [taken, ...more] : [];
}

function linedFinding({ step, thing, needs, later }: LinedEarly, worked: Worked): Finding {
  const piece = pieceSlot(worked.space.pieces[needs]!);
  const after = stepSlot(later, worked);
  const alone = step.uses.length === 0 && step.coats.length === 0;
  const cure: Cure = alone
    ? { says: "move", slots: { later: after }, edits: stepMoved(step, "after", later, worked) }
    : { says: "line", slots: { box: thing.words, needs: piece, later: after }, edits: [] };
  return {
    at: placeOf(thing, step),
    about: [thing.name],
    says: "lined",
    slots: { box: thing.words, needs: piece, later: after },
    related: [{ says: "there", slots: { piece }, at: later.at }],
    cures: [cure],
  };
}
