import type { NoPath, Worked } from "../worked";
import type { Check, Finding } from "./check";
import { aboutPiece, caution, load, pieceIn } from "./holding-words";
import { pieceSlot } from "./piece-words";

export const loadHasNoPath: Check = {
  code: "load-has-no-path",
  class: "hazard",
  title: "Nothing carries a load to the floor",
  page: `What stands on a board must come down to the floor: the board lies on something, or is fastened to something, that lies on or is
fastened to something else, and so on. A ledger that only touches a side holds nothing up. A board that lies on one thing alone
stays there only with its weight over that.

\`\`\`sawbuck
part leg of 2x4, length 30"
part side of 1x8, length 30"
part hook-board of 1x4, length 24"
place leg upright, wide face front, on floor, at each corner of 30" x 14"
place side across, on edge, in front of legs, flush with left of legs, flush with top of legs
place hook-board across, on edge, in front of side, centered left to right on side, flush with top of side
fasten side into leg, 3 #8 x 2" at each crossing
load hook-board 12 lb spread
\`\`\`

\`\`\`sawbuck
part leg of 2x4, length 30"
part side of 1x8, length 30"
part hook-board of 1x4, length 24"
place leg upright, wide face front, on floor, at each corner of 30" x 14"
place side across, on edge, in front of legs, flush with left of legs, flush with top of legs
place hook-board across, on edge, in front of side, centered left to right on side, flush with top of side
fasten side into leg, 3 #8 x 2" at each crossing
fasten hook-board into side, 4 #8 x 1-1/4" along it
load hook-board 12 lb spread
\`\`\``,
  templates: {
    nothing:
      "{piece} carries {load}, and nothing holds it up: it touches {other}, but no line fastens the two.",
    "one-place":
      "{piece} carries {load} and is held in one place only, with its weight beside that: it tips off.",
    here: "{other} is placed here.",
    fasten: "Fasten {part} to {into}, or let it lie on something.",
    support: "Hold {part} up at its other end too.",
    caution: "{caution}",
  },
  run: (worked) => {
    const told = new Set<string>();
    return worked.holding.noPath.flatMap((found) => {
      const { part } = pieceIn(worked, found.piece);
      if (told.has(part)) return [];
      told.add(part);
      return [findingOf(found, worked)];
    });
  },
};

function findingOf({ piece: i, force, beside, why }: NoPath, worked: Worked): Finding {
  const piece = pieceIn(worked, i);
  const other = beside === undefined ? undefined : pieceIn(worked, beside);
  const weight = load(force, worked.settings.display);
  const nothing = why === "held by nothing" && other;
  return {
    at: piece.at,
    about: aboutPiece(piece),
    says: nothing ? "nothing" : "one-place",
    slots: { piece: pieceSlot(piece), load: weight, ...(other && { other: pieceSlot(other) }) },
    numbers: [{ name: "load", value: weight, source: "worked out" }],
    related: other ? [{ says: "here", slots: { other: pieceSlot(other) }, at: other.at }] : [],
    assumed: [caution()],
    cures: nothing
      ? [{ says: "fasten", slots: { part: piece.part, into: other.part }, edits: [] }]
      : [{ says: "support", slots: { part: piece.part }, edits: [] }],
  };
}
