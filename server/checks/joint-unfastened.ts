import type { LoosePiece, Worked } from "../worked";
import type { Check, Finding } from "./check";
import { phrase } from "./phrases";
import { pieceSlot } from "./piece-words";

export const jointUnfastened: Check = {
  code: "joint-unfastened",
  class: "warning",
  title: "Pieces that lie on others and are joined to nothing",
  page: `In a plan that says how its pieces are joined, a piece that lies on others and is held by no fasten or glue line can be lifted
out, or falls out. Join it, or let it stand as it is with \`accept joint-unfastened on … because …\`: a shelf that is meant to be
lifted out, say. Several pieces that are joined among themselves, such as a bin or a lid, may stand loose.

\`\`\`sawbuck
part leg of 2x4, length 30"
part rail of 1x6, length 30"
part top of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place top across, flat, on legs, flush with left of legs, flush with front of legs
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
\`\`\`

\`\`\`sawbuck
part leg of 2x4, length 30"
part rail of 1x6, length 30"
part top of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place top across, flat, on legs, flush with left of legs, flush with front of rail
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
fasten top into rail, 4 #8 x 2" along it, pilot 1/8"
\`\`\``,
  templates: {
    one: "{piece} lies on {other}, but no line joins it to anything: it can be lifted out.",
    some: "{piece} lies on {other}, but no line joins it to anything, nor {more} like it: they can be lifted out.",
    "one-beside": "{piece} touches {other}, but no line joins it to anything: it stands loose.",
    "some-beside":
      "{piece} touches {other}, but no line joins it to anything, nor {more} like it: they stand loose.",
    here: "{other} is placed here.",
    join: "Join them: fasten {part} into {into}, with its screws.",
  },
  run: (worked) => [...alike(worked).values()].map((group) => findingOf(group, worked)),
};

/** Loose pieces of one part, told once. */
function alike({ loose, space, holding }: Worked): Map<string, LoosePiece[]> {
  const groups = new Map<string, LoosePiece[]>();
  // What carries something that so falls down is told with that.
  const falls = new Set(holding.noPath.map(({ piece }) => piece));
  for (const one of loose) {
    if (falls.has(one.piece)) continue;
    const { part } = space.pieces[one.piece]!;
    groups.set(part, [...(groups.get(part) ?? []), one]);
  }
  return groups;
}

function findingOf(group: readonly LoosePiece[], { space }: Worked): Finding {
  const [piece, other] = [space.pieces[group[0]!.piece]!, space.pieces[group[0]!.on]!];
  const more = group.length - 1;
  const { is } = group[0]!;
  // What lies on a piece is screwed to it from above.
  const [part, into] = is === "under" ? [other.part, piece.part] : [piece.part, other.part];
  return {
    at: piece.at,
    about: [piece.part, ...piece.owners.map((o) => o.name)],
    says: `${more > 0 ? "some" : "one"}${is === "on" ? "" : "-beside"}`,
    slots: {
      piece: pieceSlot(piece),
      other: pieceSlot(other),
      more: phrase("the others", { n: more }),
    },
    related: [{ says: "here", slots: { other: pieceSlot(other) }, at: other.at }],
    cures: [{ says: "join", slots: { part, into }, edits: [] }],
  };
}
