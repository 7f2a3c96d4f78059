import { type Frame, STIFF, type Worked } from "../worked";
import type { Check, Finding } from "./check";
import { phrase } from "./phrases";
import { mm, pieceSlot } from "./piece-words";

export const racks: Check = {
  code: "racks",
  class: "warning",
  title: "A frame that leans over",
  page: `Uprights joined by rails make an open rectangle, and an open rectangle folds like a lattice as soon as its corners give: it
racks. Something must hold it: a diagonal, a panel that stands upright along it, or stiff corners, where the screws of one
rail (or of boards tight on each other) reach over at least 2-1/2" of the upright (common practice). It is looked at left to
right and front to back, for uprights of 12" and more that rails join.

\`\`\`sawbuck
part leg of 2x4, length 20"
part rail of 1x3, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
fasten rail into leg, 1 #8 x 1-5/8" at each crossing
\`\`\`

\`\`\`sawbuck
part leg of 2x4, length 20"
part rail of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
\`\`\``,
  templates: {
    racks:
      "Pushed {way}, {upright} and {others} lean over: nothing runs diagonally there, no panel stands upright, and the screws of a rail reach over only {spread} of an upright, where {stiff} make a stiff corner.",
    loose:
      "Pushed {way}, {upright} and {others} lean over: nothing runs diagonally there, no panel stands upright, and no rail is screwed to an upright.",
    single:
      "Pushed {way}, {upright} and {others} lean over: nothing runs diagonally there, no panel stands upright, and no rail has two screws one above the other in an upright.",
    rail: "{piece} joins the uprights.",
    brace: "Add a brace: a part placed “diagonally on {side} of …, from bottom left to top right”.",
    wider: "Or use wider rails, with two screws far apart at each upright.",
  },
  run: (worked) => (held(worked) ? firstOfEach(worked).map((frame) => findingOf(frame, worked)) : []),
};

/** The frames that nothing holds, of copies of one thing the first. */
function firstOfEach({ frames, space }: Worked): Frame[] {
  const firsts = new Map<string, Frame>();
  for (const frame of frames) {
    if (frame.heldBy) continue;
    const key = [frame.axis, ...partsIn(frame, space)].join("\n");
    if (!firsts.has(key)) firsts.set(key, frame);
  }
  return [...firsts.values()];
}

const partsIn = ({ uprights, rails }: Frame, { pieces }: Worked["space"]): string[] => [
  ...new Set([...uprights, ...rails].map((i) => pieces[i]!.part)),
];

/** Whether the plan says at all how its pieces are joined: a plan without joints is not done yet. */
const held = (worked: Worked): boolean => worked.joints.length > 0;

const WAYS = ["left to right", "front to back"] as const;
const SIDES = ["back", "left"] as const;

function findingOf(frame: Frame, worked: Worked): Finding {
  const { axis, uprights, rails, spread, screwed } = frame;
  const { space } = worked;
  const first = space.pieces[uprights[0]!]!;
  return {
    at: first.at,
    about: partsIn(frame, space),
    says: spread > 0 ? "racks" : screwed ? "single" : "loose",
    slots: {
      way: phrase(WAYS[axis]),
      upright: pieceSlot(first),
      others: phrase("the other uprights", { n: uprights.length - 1 }),
      spread: mm(spread),
      stiff: mm(STIFF),
    },
    numbers: [
      { name: "screws of a rail reach over", value: mm(spread), source: "worked out" },
      { name: "a stiff corner", value: mm(STIFF), source: "common practice" },
    ],
    related: rails.slice(0, 1).map((i) => {
      const piece = space.pieces[i]!;
      return { says: "rail", slots: { piece: pieceSlot(piece) }, at: piece.at };
    }),
    cures: [
      { says: "brace", slots: { side: SIDES[axis] }, edits: [] },
      { says: "wider", slots: {}, edits: [] },
    ],
  };
}
