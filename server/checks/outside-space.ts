import type { Clause } from "../../grammar/tree";
import type { At } from "../plan";
import { reachBeyond, type Worked } from "../worked";
import type { Check, Finding } from "./check";
import { phrase } from "./phrases";
import { mm, pieceSlot } from "./piece-words";

export const outsideSpace: Check = {
  code: "outside-space",
  class: "error",
  title: "It is larger than its space",
  page: `The plan says the space it must fit: how wide, how deep, how high. From the leftmost to the rightmost of all placed
pieces, from the foremost to the last, and from the lowest to the highest they may not take more. Where in the space it stands
does not matter, so a piece that is placed to the left of where the plan begins is fine as long as the whole is no wider than
the space.

What reaches below the floor is told as well: a post that is dug in may stand, by \`accept outside-space on … because …\`.

\`\`\`sawbuck
plan A rack
  space 30" wide, 20" deep
part leg of 2x4, length 20"
part rail of 1x4, length 33"
place leg upright, wide face front, on floor, at each corner of 33" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
\`\`\`

\`\`\`sawbuck
plan A rack
  space 36" wide, 20" deep
part leg of 2x4, length 20"
part rail of 1x4, length 33"
place leg upright, wide face front, on floor, at each corner of 33" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
\`\`\``,
  templates: {
    over: "It is {reach} {way}, and its space is {limit} {way}: {over} too much, and {piece} reaches furthest.",
    below: "{piece} reaches {depth} below the floor{more}.",
    space: "The space is {limit} {way}.",
    less: "Make it {over} {less}.",
  },
  run: (worked) => [...SIDES.flatMap((side) => findingsOf(side, worked)), ...below(worked)],
};

type Space = Clause & { readonly kind: "space" | "way in" };

const SIDES = [
  { side: "wide", axis: 0, less: "narrower" },
  { side: "deep", axis: 1, less: "less deep" },
  { side: "high", axis: 2, less: "lower" },
] as const;

function findingsOf({ side, axis, less }: (typeof SIDES)[number], worked: Worked): Finding[] {
  const limit = worked.settings.space?.[side];
  const beyond = limit && reachBeyond(worked, axis, limit.approx);
  if (!beyond) return [];
  const { piece } = beyond;
  const [reach, over] = [mm(beyond.reach), mm(beyond.reach - limit.approx)];
  const at = extentAt(worked, side);
  return [
    {
      at: piece.at,
      about: [piece.part, ...piece.owners.map((o) => o.name)],
      says: "over",
      slots: { reach, limit, over, way: phrase(side), piece: pieceSlot(piece) },
      numbers: [
        { name: `everything, ${side}`, value: reach, source: "worked out" },
        { name: `space, ${side}`, value: limit, source: "the plan" },
      ],
      related: at ? [{ says: "space", slots: { limit, way: phrase(side) }, at }] : [],
      cures: [{ says: "less", slots: { over, less: phrase(less) }, edits: [] }],
    },
  ];
}

/** Pieces in the ground: an error for what does not even reach up to it, a warning for what is dug in. */
function below({ space }: Worked): Finding[] {
  const sunk = space.pieces
    .filter((p) => p.bounds.least[2] < -GROUND)
    .sort((a, b) => a.bounds.least[2] - b.bounds.least[2]);
  const [deepest] = sunk;
  if (!deepest) return [];
  const rest = sunk.length - 1;
  const more = rest === 0 ? "" : phrase("and so do other pieces", { n: rest });
  return [
    {
      at: deepest.at,
      class: deepest.bounds.most[2] > GROUND ? "warning" : "error",
      about: [deepest.part, ...deepest.owners.map((o) => o.name)],
      says: "below",
      slots: { piece: pieceSlot(deepest), depth: mm(-deepest.bounds.least[2]), more },
      numbers: [{ name: "below the floor", value: mm(-deepest.bounds.least[2]), source: "worked out" }],
    },
  ];
}

/** What reaches no further down, in mm, stands on the floor: 1/64". */
const GROUND = 0.4;

/** Where the plan says that side of the space. */
function extentAt({ loaded }: Worked, side: "wide" | "deep" | "high"): At | undefined {
  const { file, tree } = loaded.files[0]!;
  const plan = tree.entries.find((e) => e.kind === "plan");
  const clause = plan?.clauses.find((c): c is Space => c.kind === "space");
  const extent = clause?.extents.find((e) => (e.side === "long" ? "wide" : e.side) === side);
  return extent && { file, start: extent.start, end: extent.end };
}
