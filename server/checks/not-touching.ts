import type { At } from "../plan";
import { type Joint, type NearMiss, TOUCHING, type Worked } from "../worked";
import type { Check, Finding } from "./check";
import { ofKind } from "./faults";
import { phrase } from "./phrases";
import { mm, pieceSlot, wayWords } from "./piece-words";

export const notTouching: Check = {
  code: "not-touching",
  class: "error",
  title: "Pieces that are joined but do not touch",
  page: `A screw pulls two boards together only where their faces lie on each other. Where a line fastens or glues placed pieces, each
thing it names must lie on one of the others with a face; an edge or a corner alone holds nothing. A gap of more than 1/64"
between two faces that look at each other, up to an inch, is told with its width and its direction: further apart they were
likely never meant to touch. So is a piece that is put between two others and is shorter than the room between them by more
than 1/64".

\`\`\`sawbuck
part leg of 2x4, length 20"
part rail of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, 1/8" in front of legs, flush with left of legs, on floor
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
\`\`\`

\`\`\`sawbuck
part leg of 2x4, length 20"
part rail of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, on floor
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
\`\`\``,
  templates: {
    gap: "{first} and {into} are joined, but stand {gap} apart: move {first} {gap} {way}.",
    "gap-more": "{first} and {into} are joined, but stand {gap} apart, {more}: move {first} {gap} {way}.",
    never: "This line joins {name} to {others}, but no {name} lies on any of them with a face.",
    loose: "{subject} is put between {first} and {second}, but is {gap} shorter than the room between them.",
    here: "{piece} is placed here.",
    fill: "Make {subject} {gap} longer, or set what it stands between {gap} closer.",
  },
  run: (worked) => [
    ...worked.joints.flatMap((joint) => ofJoint(joint, worked)),
    ...looseOnes(worked).map(
      ({ at, subject, gap, first, second }): Finding => ({
        at,
        about: [subject],
        says: "loose",
        slots: { subject, gap, first, second },
        cures: [{ says: "fill", slots: { subject, gap }, edits: [] }],
      }),
    ),
  ],
};

/** Pieces put between two others that leave room there; the same of one part in several lines is told once. */
const looseOnes = (worked: Worked) =>
  ofKind(worked, "loose").filter(
    ({ subject, gap }, i, all) =>
      all.findIndex((o) => o.subject === subject && Math.abs(o.gap.approx - gap.approx) <= TOUCHING) === i,
  );

/** Whether a gap of a joint is that of a piece which is too short for the room it is put in. */
const isLoose = (miss: NearMiss, worked: Worked): boolean =>
  looseOnes(worked).some(
    ({ subject, gap }) =>
      [miss.first, miss.into].some((i) => worked.space.pieces[i]!.part === subject) &&
      Math.abs(gap.approx - miss.gap) <= TOUCHING,
  );

function ofJoint(joint: Joint, worked: Worked): Finding[] {
  const { placed } = joint;
  if (!placed) return [];
  const misses = placed.misses.filter((m) => !isLoose(m, worked)).sort((a, b) => b.gap - a.gap);
  const [worst] = misses;
  if (worst) return [gapOf(joint, worst, misses.length - 1, worked)];
  return placed.unmet.slice(0, 1).map(({ name, thing }): Finding => {
    const others = [...joint.entry.first, ...joint.entry.through, ...joint.entry.into]
      .map((s) => s.thing.name.text)
      .filter((n) => n !== name);
    const at: At = { file: joint.at.file, start: thing.start, end: thing.end };
    return { at, about: [name, ...others], says: "never", slots: { name, others: { all: others } } };
  });
}

function gapOf(joint: Joint, worst: NearMiss, more: number, { space }: Worked): Finding {
  const [first, into] = [space.pieces[worst.first]!, space.pieces[worst.into]!];
  const names = [...joint.entry.first, ...joint.entry.into].map((s) => s.thing);
  const at: At = { file: joint.at.file, start: names[0]!.start, end: names.at(-1)!.end };
  return {
    at,
    about: [first.part, into.part, ...first.owners.map((o) => o.name)],
    says: more > 0 ? "gap-more" : "gap",
    slots: {
      first: pieceSlot(first),
      into: pieceSlot(into),
      gap: mm(worst.gap),
      way: phrase(wayWords(worst.direction)),
      ...(more > 0 && { more: phrase("as do other pairs", { n: more }) }),
    },
    numbers: [{ name: "gap", value: mm(worst.gap), source: "worked out" }],
    related: [first, into].map((p) => ({ says: "here", slots: { piece: pieceSlot(p) }, at: p.at })),
  };
}
