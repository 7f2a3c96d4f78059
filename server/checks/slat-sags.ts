import { loadOn, sagPart, memberCures as tried, type Worked } from "../worked";
import type { Check, Finding } from "./check";
import {
  aboutPiece,
  assumedOf,
  length,
  load,
  MEMBER_TEMPLATES,
  memberCures,
  pieceIn,
  worstOfEach,
} from "./holding-words";
import { pieceSlot } from "./piece-words";
import { moreSlot } from "./too-weak";
import { tellApart } from "./writing";

export const slatSags: Check = {
  code: "slat-sags",
  class: "warning",
  title: "A board bends too far under what it carries",
  page: `A board can be strong enough and still bend so far that a seat feels like a springboard, or books slide to the middle of a
shelf. What comes and goes may bend it by 1/240 of its span (IRC, Table R301.7, all other members); what stays bends it more with
the years, half as much again where wood is kept dry, twice as much where it gets wet (NDS 3.5.2). Under the soil of a box
1/120 is let be.

\`\`\`sawbuck
plan Shelf for pots
  indoors
part leg of 2x4, length 40"
part shelf of 1x12, length 48"
place leg upright, wide face left, on floor, at each corner of 48" x 11-1/4"
place shelf across, flat, on legs, centered on legs
load shelf 60 lb spread
\`\`\`

\`\`\`sawbuck
plan Shelf for pots
  indoors
part leg of 2x4, length 40"
part shelf of 2x12, length 48"
place leg upright, wide face left, on floor, at each corner of 48" x 11-1/4"
place shelf across, flat, on legs, centered on legs
load shelf 60 lb spread
\`\`\``,
  templates: {
    ...MEMBER_TEMPLATES,
    sags: "{piece} carries {load} and bends by {sag} over a span of {span}, where 1/{part} of it, {limit}, is the most{more}.",
  },
  run: (worked) => {
    const weak = new Set(
      worked.holding.pieces.flatMap((p) =>
        (p.judged?.strain.uses ?? 0) > 1 ? [pieceIn(worked, p.piece).part] : [],
      ),
    );
    // What breaks is told by itself; its cure mends this too.
    const stiffless = worked.holding.pieces.filter((p) => !weak.has(pieceIn(worked, p.piece).part));
    return worstOfEach(
      stiffless,
      (p) => p.judged?.sag.uses ?? 0,
      (p) => pieceIn(worked, p.piece),
    ).map((found) => findingOf(found, worked));
  },
};

function findingOf(
  { worst, piece, more }: ReturnType<typeof worstOfEach<Worked["holding"]["pieces"][number]>>[number],
  worked: Worked,
): Finding {
  const { display } = worked.settings;
  const { sag } = worst.judged!;
  const part = sagPart(worst.carried);
  const [size, limit] = tellApart(length(sag.size), length(sag.limit), display);
  return {
    at: piece.at,
    about: aboutPiece(piece),
    says: "sags",
    slots: {
      piece: pieceSlot(piece),
      load: load(loadOn(worst), display),
      sag: size,
      span: length(sag.span),
      part,
      limit,
      more: moreSlot(more),
    },
    numbers: [
      { name: "sag", value: length(sag.size), source: "worked out" },
      { name: "most it may sag", value: length(sag.limit), source: "IRC, Table R301.7" },
    ],
    assumed: assumedOf(worst.member!, worst, display),
    cures: memberCures(tried(worst, part, worked), piece.part, "held"),
  };
}
