import {
  type HeldPiece,
  type HeldWall,
  sagPart,
  memberCures as tried,
  type Worked,
  wallCures,
} from "../worked";
import type { Check, Finding } from "./check";
import {
  aboutPiece,
  askedOf,
  assumedOf,
  length,
  load,
  MEMBER_TEMPLATES,
  memberCures,
  memberNumbers,
  pieceIn,
  worstOfEach,
} from "./holding-words";
import { phrase } from "./phrases";
import { pieceSlot } from "./piece-words";

export const tooWeak: Check = {
  code: "too-weak",
  class: "hazard",
  title: "A board may break under what it carries",
  page: `Every placed board that lies on others, or is fastened between them, is worked out as a beam over what holds it: with its own
weight, what is filled or said to stand on it, and what other boards hand down. A flat top between 12" and 24" high is sat and
stood on until a \`load\` line says otherwise: 300 lb on a place 4" wide, wherever that is worst. Walls of a box are judged as if
its drain were blocked. Wood that gets wet is weaker, and bears less for good than for a while.

Lumber from 1-1/2" thick is taken as grade No. 2 (NDS Supplement, Table 4A). Thinner boards have no published values: theirs are
brought down from clear wood (Wood Handbook, ASTM D245).

\`\`\`sawbuck
plan Bench in the shed
  indoors
part leg of 4x4, length 15-1/4"
part slat of 1x8, length 40"
place leg upright, wide face front, on floor, at each corner of 40" x 7-1/4"
place slat across, flat, on legs, flush with left of legs, flush with front of legs
\`\`\`

\`\`\`sawbuck
plan Bench in the shed
  indoors
part leg of 4x4, length 15-1/4"
part slat of 2x8, length 26"
place leg upright, wide face front, on floor, at each corner of 26" x 7-1/4"
place slat across, flat, on legs, flush with left of legs, flush with front of legs
\`\`\``,
  templates: {
    ...MEMBER_TEMPLATES,
    bends: "{piece} carries {load} over spans of up to {span}, and its wood can bear {bears} of that{more}.",
    shears: "{piece} carries {load}, and beside what holds it its wood can bear {bears} of that{more}.",
    wall: "With a blocked drain, wet fill presses {piece} outwards with {load}, and over {span} its wood can bear {bears} of that{more}.",
  },
  run: (worked) => {
    const { holding } = worked;
    const pieces = worstOfEach(
      holding.pieces,
      (p) => p.judged?.strain.uses ?? 0,
      (p) => pieceIn(worked, p.piece),
    );
    const walls = worstOfEach(
      holding.walls,
      (w) => w.judged?.strain.uses ?? 0,
      (w) => pieceIn(worked, w.work.piece),
    );
    return [...pieces.map((found) => ofPiece(found, worked)), ...walls.map((found) => ofWall(found, worked))];
  },
};

type Found<T> = ReturnType<typeof worstOfEach<HeldPiece | HeldWall>>[number] & { readonly worst: T };

function ofPiece({ worst, piece, more }: Found<HeldPiece>, worked: Worked): Finding {
  const { display } = worked.settings;
  const { strain } = worst.judged!;
  const asked = askedOf(worst);
  const bears = asked / strain.uses;
  return {
    at: piece.at,
    about: aboutPiece(piece),
    says: strain.what === "bending" ? "bends" : "shears",
    slots: {
      piece: pieceSlot(piece),
      load: load(asked, display),
      bears: load(bears, display),
      span: length(worst.carried.span),
      more: moreSlot(more),
    },
    numbers: memberNumbers(asked, bears, worst.member!, display),
    assumed: assumedOf(worst.member!, worst, display),
    cures: memberCures(tried(worst, sagPart(worst.carried), worked), piece.part, "held"),
  };
}

function ofWall({ worst, piece, more }: Found<HeldWall>, worked: Worked): Finding {
  const { display } = worked.settings;
  const { strain } = worst.judged!;
  const { blocked } = worst.work.loads;
  const asked = "from" in blocked ? blocked.start * (blocked.to - blocked.from) : blocked.force;
  const bears = asked / strain.uses;
  return {
    at: piece.at,
    about: [...aboutPiece(piece), worst.work.box.name],
    says: "wall",
    slots: {
      piece: pieceSlot(piece),
      load: load(asked, display),
      bears: load(bears, display),
      span: length(worst.work.span),
      more: moreSlot(more),
    },
    numbers: memberNumbers(asked, bears, worst.member!, display),
    assumed: assumedOf(worst.member!, undefined, display),
    cures: memberCures(wallCures(worst, worked), piece.part, "wall"),
  };
}

export const moreSlot = (more: number) => (more > 0 ? phrase("as of more like it", { n: more }) : "");
