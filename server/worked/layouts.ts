/** Which boards to buy and what is cut from each: the first answer, worked out while typing, or a better one that is known. Exact lengths become whole ticks here. */

import type { Laid, Layouts, Proof } from "../cutting/improve";
import {
  type BoardAnswer,
  type BoardForSale,
  type BoardJob,
  type BoardOnHand,
  clearLengths,
  layOut,
} from "../cutting/job";
import { layOutSheets, type SheetAnswer, type SheetJob } from "../cutting/sheets";
import { ifKnown } from "../plan";
import { exactly, exactOf, fraction, LENGTH, type Quantity } from "../units";
import { type Blank, blanksOf, type Ripped } from "./blanks";
import { Lately } from "./lately";
import type { Material } from "./materials";
import { type Part, pieceIds } from "./parts";
import type { Settings } from "./settings";

/** 1/640 mm: every tape fraction to 1/64" and every millimetre is a whole number of these. */
export const TICKS_PER_MM = 640;

export interface BoardWork {
  readonly material: Material;
  /** Ripped pieces that lie side by side are one piece in it, under the name of the first. */
  readonly job: BoardJob;
  /** By that name: all that are ripped from one stretch of board. */
  readonly sideBySide: ReadonlyMap<string, readonly string[]>;
  readonly answer: BoardAnswer;
  /** Null for a first answer, of which nothing is known. */
  readonly proof: Proof | null;
  /** The longest piece any board sold or on hand could give, in ticks; null when there is none at all. */
  readonly longest: number | null;
  /** Parts longer than that, which were left out of the layout. */
  readonly tooLong: readonly Part[];
  /** Parts whose count or length is not known, left out as well. */
  readonly leftOut: readonly Part[];
  readonly spares: number;
  /** Some piece is ripped narrower than its board. */
  readonly ripped: boolean;
}

export interface SheetWork {
  readonly material: Material;
  readonly job: SheetJob;
  readonly answer: SheetAnswer;
  readonly proof: Proof | null;
  readonly tooLong: readonly Part[];
  readonly tooWide: readonly Part[];
  /** Parts that are neither too long nor too wide for every sheet, and yet fit on none. */
  readonly tooLarge: readonly Part[];
  readonly leftOut: readonly Part[];
  readonly spares: number;
}

/** A length of so many ticks. */
export const ofTicks = (ticks: number): Quantity => exactly(LENGTH, fraction.rational(ticks, TICKS_PER_MM));

/** The whole tick at or above a length: pieces are never cut short. */
export const ticksUp = (q: Quantity): number => {
  const scaled = fraction.multiply(exactOf(q), fraction.rational(TICKS_PER_MM));
  return Number(-fraction.floor(fraction.negate(scaled)));
};
/** The whole tick at or below a length: boards are never taken for longer than they are. */
const ticksDown = (q: Quantity): number =>
  Number(fraction.floor(fraction.multiply(exactOf(q), fraction.rational(TICKS_PER_MM))));

const cents = (q: Quantity | undefined): number | null =>
  q ? Number(fraction.roundTo(fraction.multiply(exactOf(q), fraction.rational(100)), fraction.ONE).n) : null;

/** The currencies in which something of a material is sold. */
export const currenciesOf = ({ sold }: Material): string[] => [
  ...new Set(sold.flatMap(({ price }) => (price ? [price.dim.currency] : []))),
];

/** In cents, in the order of what is sold; none where they are in several currencies, which no number compares. */
function pricesOf(material: Material): (number | null)[] {
  const comparable = currenciesOf(material).length < 2;
  return material.sold.map(({ price }) => (comparable ? cents(price) : null));
}

/** An edit that changes no length of a material leaves its boards as they are. */
const BOARDS = new Lately(16, layOut);
const SHEETS = new Lately(16, layOutSheets);
const BLANKS = new Lately(
  16,
  ({
    pieces,
    width,
    kerf,
  }: {
    pieces: readonly Ripped[];
    width: number | undefined;
    kerf: number;
  }): Blank[] => blanksOf(pieces, width, kerf),
);

/** None but first answers. */
export const FIRST_ANSWERS: Layouts = { boards: () => undefined, sheets: () => undefined };

export function layOutBoards(
  material: Material,
  parts: readonly Part[],
  settings: Settings,
  layouts: Layouts,
): BoardWork {
  const prices = pricesOf(material);
  const sold: BoardForSale[] = material.sold.map((s, i) => ({
    id: `sold ${i}`,
    length: ticksDown(s.length),
    price: prices[i]!,
  }));
  const onHand: BoardOnHand[] = material.onHand.flatMap((pile, i) =>
    Array.from({ length: pile.count }, (_, n) => ({
      id: `pile ${i} / ${n + 1}`,
      length: ticksDown(pile.length),
      bad: pile.bad.map((b) => ({ from: ticksDown(b.from), to: ticksUp(b.to) })),
    })),
  );
  const kerf = ticksUp(settings.kerf.value);
  const endTrim = ticksUp(material.endTrim.value);
  const spans = onHand.flatMap((board) => clearLengths(board, kerf));
  const reaches = [...sold.map((s) => s.length - endTrim), ...spans].filter((reach) => reach > 0);
  const longest = reaches.length > 0 ? Math.max(...reaches) : null;
  const collected = collect(parts, settings, (part) => {
    const length = ticksUp(ifKnown(part.needs)!);
    const width = part.ripped ? ticksUp(ifKnown(part.width)!) : undefined;
    return longest !== null && length > longest ? "too long" : (id) => ({ id, length, width });
  });
  const { tooLong, leftOut, spares } = collected;
  const boardWidth = material.width && ifKnown(material.width);
  const blanks = BLANKS.of({
    pieces: collected.pieces,
    width: boardWidth && ticksDown(boardWidth),
    kerf,
  });
  const pieces = blanks.map(({ id, length }) => ({ id, length }));
  const job: BoardJob = { pieces, sold, onHand, kerf, endTrim, salvage: material.salvage };
  return {
    material,
    job,
    sideBySide: new Map(blanks.flatMap((b) => (b.pieces.length > 1 ? [[b.id, b.pieces] as const] : []))),
    ...(layouts.boards(job) ?? first(BOARDS.of(job))),
    longest,
    tooLong,
    leftOut,
    spares,
    ripped: parts.some((p) => p.ripped),
  };
}

/** The same boards, laid out as is known by now. */
export const boardsAnew = (work: BoardWork, { boards }: Layouts): BoardWork => ({
  ...work,
  ...(boards(work.job) ?? first(BOARDS.of(work.job))),
});

/** The same sheets, laid out as is known by now. */
export const sheetsAnew = (work: SheetWork, { sheets }: Layouts): SheetWork => ({
  ...work,
  ...(sheets(work.job) ?? first(SHEETS.of(work.job))),
});

/** The pieces under a name of a board's layout: those that lie side by side there, or the one. */
export const piecesOf = ({ sideBySide }: BoardWork, id: string): readonly string[] =>
  sideBySide.get(id) ?? [id];

export function layOutPanels(
  material: Material,
  parts: readonly Part[],
  settings: Settings,
  layouts: Layouts,
): SheetWork {
  const kerf = ticksUp(settings.kerf.value);
  const grained = material.grain !== "none";
  // A sheet's grain runs along its longer side, unless the plan says along its width.
  const sized = (length: Quantity, width: Quantity | undefined) => {
    const sides = [ticksDown(length), ticksDown(width ?? length)];
    const long = Math.max(...sides);
    const short = Math.min(...sides);
    return material.grain === "width" ? { length: short, width: long } : { length: long, width: short };
  };
  const prices = pricesOf(material);
  const sold = material.sold.map((s, i) => ({
    id: `sold ${i}`,
    ...sized(s.length, s.width),
    price: prices[i]!,
    grain: grained,
  }));
  const onHand = material.onHand.flatMap((pile, i) =>
    Array.from({ length: pile.count }, (_, n) => ({
      id: `pile ${i} / ${n + 1}`,
      ...sized(pile.length, pile.width),
      grain: grained,
    })),
  );
  const all = [...sold, ...onHand];
  const tooWide: Part[] = [];
  const tooLarge: Part[] = [];
  const { pieces, tooLong, leftOut, spares } = collect(parts, settings, (part) => {
    const length = ticksUp(ifKnown(part.needs)!);
    const width = ticksUp(ifKnown(part.width)!);
    const free = !grained;
    const fits = (b: { length: number; width: number }) =>
      (length <= b.length && width <= b.width) || (free && length <= b.width && width <= b.length);
    if (all.length > 0 && !all.some(fits)) {
      // Of a sheet without grain, a piece may lie either way: what is told of is its longer side.
      if (all.every((b) => length > b.length) && (grained || length >= width)) return "too long";
      (grained && all.every((b) => width > b.width) ? tooWide : tooLarge).push(part);
      return "too large";
    }
    return (id) => ({ id, length, width, grain: free ? ("free" as const) : ("along" as const) });
  });
  const job: SheetJob = { pieces, sold, onHand, kerf };
  return {
    material,
    job,
    ...(layouts.sheets(job) ?? first(SHEETS.of(job))),
    tooLong,
    tooWide,
    tooLarge,
    leftOut,
    spares,
  };
}

const first = <Answer>(answer: Answer): Omit<Laid<Answer>, "proof"> & { proof: null } => ({
  answer,
  proof: null,
});

/** Every piece to cut, copies and spares too, in the order of the parts. */
function collect<Piece>(
  parts: readonly Part[],
  settings: Settings,
  cutting: (part: Part) => ((id: string) => Piece) | "too long" | "too large",
): { pieces: Piece[]; tooLong: Part[]; leftOut: Part[]; spares: number } {
  const pieces: Piece[] = [];
  const tooLong: Part[] = [];
  const leftOut: Part[] = [];
  let spares = 0;
  for (const part of parts) {
    const count = ifKnown(part.count);
    if (count === undefined || part.needs.state !== "known" || part.width.state !== "known") {
      leftOut.push(part);
      continue;
    }
    const piece = cutting(part);
    if (piece === "too long") tooLong.push(part);
    if (typeof piece === "string") continue;
    const extra = sparesOf(count * settings.make, settings);
    spares += extra;
    for (const id of allPieces(part.name, count, settings.make)) pieces.push(piece(id));
    for (const id of pieceIds(part.name, extra)) pieces.push(piece(`spare / ${id}`));
  }
  return { pieces, tooLong, leftOut, spares };
}

/** `leg / 1` … for the first copy, `copy 2 / leg / 1` … for the next. */
function allPieces(part: string, count: number, make: number): string[] {
  const first = pieceIds(part, count);
  const copies = Array.from({ length: make - 1 }, (_, i) => first.map((id) => `copy ${i + 2} / ${id}`));
  return [...first, ...copies.flat()];
}

export function sparesOf(count: number, settings: Settings): number {
  return settings.spare ? Math.ceil((count * settings.spare.count) / settings.spare.per) : 0;
}
