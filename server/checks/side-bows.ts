import { type HeldWall, type Worked, wallCures } from "../worked";
import type { Check, Finding } from "./check";
import {
  aboutPiece,
  assumedOf,
  length,
  MEMBER_TEMPLATES,
  memberCures,
  pieceIn,
  worstOfEach,
} from "./holding-words";
import { pieceSlot } from "./piece-words";
import { moreSlot } from "./too-weak";
import { tellApart } from "./writing";

export const sideBows: Check = {
  code: "side-bows",
  class: "warning",
  title: "The side of a box bows outwards",
  page: `Moist soil presses sideways with about half of its weight, the deeper the more, and never lets go: with the years a board bows
twice as far as on the first day. Each board of a wall is worked out between what holds it, with the fill that lies against it.
It may bow by 1/120 of its span. A batten that only joins the boards of one side goes outwards with them and holds nothing.

\`\`\`sawbuck
plan Bed along the shed wall
  indoors
part post of 4x4, length 5-1/2"
part side of 1x6, length 96"
part end of 2x6, length 24"
place post upright, wide face front, on floor, at each corner of 93" x 24"
place side across, on edge, in front of posts, centered left to right on posts, flush with top of posts
place side across, on edge, behind posts, centered left to right on posts, flush with top of posts
place end front to back, on edge, left of posts, flush with front of posts, flush with top of posts
place end front to back, on edge, right of posts, flush with front of posts, flush with top of posts
fasten side and end into post, 3 #10 x 3" at each crossing, pilot 1/8"
box bed, walls side and end
  filled with soil 3" deep
step Screw the sides and the ends to the posts
  uses post and side and end
\`\`\`

\`\`\`sawbuck
plan Bed along the shed wall
  indoors
part post of 4x4, length 5-1/2"
part side of 2x6, length 96"
part end of 2x6, length 24"
place post upright, wide face front, on floor, at each corner of 93" x 24"
place side across, on edge, in front of posts, centered left to right on posts, flush with top of posts
place side across, on edge, behind posts, centered left to right on posts, flush with top of posts
place end front to back, on edge, left of posts, flush with front of posts, flush with top of posts
place end front to back, on edge, right of posts, flush with front of posts, flush with top of posts
fasten side and end into post, 3 #10 x 3-1/2" at each crossing, pilot 1/8"
box bed, walls side and end
  filled with soil 3" deep
step Screw the sides and the ends to the posts
  uses post and side and end
\`\`\``,
  templates: {
    ...MEMBER_TEMPLATES,
    bows: "The fill of {box} bows {piece} outwards by {bow} over {span}, where 1/120 of that, {limit}, is the most{more}.",
  },
  run: (worked) => {
    const weak = new Set(
      worked.holding.walls.flatMap((w) =>
        (w.judged?.strain.uses ?? 0) > 1 ? [pieceIn(worked, w.work.piece).part] : [],
      ),
    );
    return worstOfEach(
      worked.holding.walls.filter((w) => !weak.has(pieceIn(worked, w.work.piece).part)),
      (w) => w.judged?.sag.uses ?? 0,
      (w) => pieceIn(worked, w.work.piece),
    ).map((found) => findingOf(found, worked));
  },
};

function findingOf(
  { worst, piece, more }: ReturnType<typeof worstOfEach<HeldWall>>[number],
  worked: Worked,
): Finding {
  const { display } = worked.settings;
  const { sag } = worst.judged!;
  const { box } = worst.work;
  const [bow, limit] = tellApart(length(sag.size), length(sag.limit), display);
  return {
    at: piece.at,
    about: [...aboutPiece(piece), box.name],
    says: "bows",
    slots: {
      piece: pieceSlot(piece),
      box: box.name,
      bow,
      span: length(sag.span),
      limit,
      more: moreSlot(more),
    },
    numbers: [
      { name: "bow", value: length(sag.size), source: "worked out" },
      { name: "most it may bow", value: length(sag.limit), source: "IRC, Table R301.7, from memory" },
    ],
    assumed: assumedOf(worst.member!, undefined, display),
    cures: memberCures(wallCures(worst, worked), piece.part, "wall"),
  };
}
