import {
  ARM,
  BRUSH,
  coveredFinish,
  type Narrow,
  narrowGaps,
  type TooDeep,
  tooDeep,
  type Worked,
} from "../worked";
import type { Check, Cure, Finding } from "./check";
import { phrase } from "./phrases";
import { mm, pieceSlot } from "./piece-words";
import { screwSlot } from "./screw-words";
import { namesOf, stepMoved, stepSlot } from "./step-words";

export const cannotReach: Check = {
  code: "cannot-reach",
  class: "warning",
  title: "Out of reach of brush or hand",
  page: `A brush gets into no gap narrower than 1/2" (common practice): faces that look at each other over less are coated before the
pieces are put together. And a screw is out of reach, though nothing stands behind its head, where it is driven more than an
arm's length, 24" (common practice), below the rim of a box whose walls and bottom are there by then, and which is too narrow to
climb into. Only these clear cases are looked at, as far as the steps tell what is there when.

\`\`\`sawbuck
part batten of 1x2, length 12"
part slat of 1x4, length 30"
place batten front to back, flat, on floor, 0 from left, 0 from front
place batten front to back, flat, on floor, 28-1/2" from left, 0 from front
place slat across, flat, on battens, flush with left of battens, flush with front of battens, 3 deep, 1/4" apart
fasten slat into batten, 2 #8 x 1-1/4" at each crossing, pilot 3/32"
finish oil, dries 12 h
coat slat with oil
step Screw the slats on
  uses batten and slat
step Oil them
  coats slat
\`\`\`

\`\`\`sawbuck
part batten of 1x2, length 12"
part slat of 1x4, length 30"
place batten front to back, flat, on floor, 0 from left, 0 from front
place batten front to back, flat, on floor, 28-1/2" from left, 0 from front
place slat across, flat, on battens, flush with left of battens, flush with front of battens, 3 deep, 1/4" apart
fasten slat into batten, 2 #8 x 1-1/4" at each crossing, pilot 3/32"
finish oil, dries 12 h
coat slat with oil
step Oil them
  coats slat
  wait 12 h
step Screw the slats on
  uses batten and slat
\`\`\``,
  templates: {
    brush:
      "Between {piece} and {other} there is {gap} when they are coated here{more}, and a brush needs {needs}.",
    driver:
      "{Screw} into {into}{more} is driven {depth} below the rim of {box}, which is closed by then: an arm with a driver reaches {reach}.",
    closed: "Its walls and its bottom are there from this step on.",
    there: "They stand that near from this step on.",
    move: "Move this step before {first}",
    before: "Coat them before {first}, or leave a wider gap.",
    earlier: "Drive it before {closed} closes the box.",
  },
  run: (worked) => {
    if (worked.steps.proposed) return [];
    const narrow = narrowGaps(worked);
    const outdoors = narrow.length > 0 && worked.settings.place === "outdoors";
    const covered = outdoors ? coveredFinish(worked).map((c) => c.step) : [];
    // Moving a step before what covers its faces opens its gaps too: that is told once.
    const gaps = narrow.filter((g) => !covered.includes(g.step));
    return [
      ...gaps.map((g) => brushFinding(g, worked)),
      ...tooDeep(worked).map((d) => deepFinding(d, worked)),
    ];
  },
};

function brushFinding({ step, piece, other, gap, more }: Narrow, worked: Worked): Finding {
  const { steps, stepOf } = worked.steps;
  const first = steps[Math.max(stepOf[piece]!, stepOf[other]!)]!;
  const name = stepSlot(first, worked);
  const edits = step.uses.length + step.lines.length === 0 ? stepMoved(step, "before", first, worked) : [];
  const cure: Cure = { says: edits.length > 0 ? "move" : "before", slots: { first: name }, edits };
  const [narrow, needs] = [mm(gap), mm(BRUSH)];
  return {
    at: step.at,
    about: namesOf([piece, other], worked),
    says: "brush",
    slots: {
      piece: pieceSlot(worked.space.pieces[piece]!),
      other: pieceSlot(worked.space.pieces[other]!),
      gap: narrow,
      more: more > 0 ? phrase("and in more places", { n: more }) : "",
      needs,
    },
    numbers: [
      { name: "gap", value: narrow, source: "worked out" },
      { name: "a brush needs", value: needs, source: "common practice" },
    ],
    related: [{ says: "there", slots: {}, at: first.at }],
    cures: [cure],
  };
}

function deepFinding({ driven, box, depth, screws, closed, step }: TooDeep, worked: Worked): Finding {
  const { joint } = driven;
  const [deep, reach] = [mm(depth), mm(ARM)];
  return {
    at: step.at,
    about: [box.name, ...joint.parts],
    says: "driver",
    slots: {
      screw: screwSlot(joint),
      into: joint.parts.at(-1) ?? "",
      depth: deep,
      box: box.name,
      more: screws > 1 ? phrase("and more", { n: screws - 1 }) : "",
      reach,
    },
    numbers: [
      { name: "below the rim", value: deep, source: "worked out" },
      { name: "reach of an arm", value: reach, source: "common practice" },
    ],
    related: [{ says: "closed", slots: {}, at: closed.at }],
    cures: [{ says: "earlier", slots: { closed: stepSlot(closed, worked) }, edits: [] }],
  };
}
