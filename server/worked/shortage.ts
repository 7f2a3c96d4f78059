/** Pieces that find no wood, and why: what there is gives none at all, or there is too little of it on hand. */
import { clearLengths, MOST } from "../cutting/job";
import { AREA, exactly, fraction, type Quantity } from "../units";
import { type BoardWork, ofTicks, piecesOf, type SheetWork, TICKS_PER_MM } from "./layouts";

/**
 * Why nothing at all can be cut from a stock of which there is some: the saw takes as much as there is, squaring the
 * ends of what is sold does, or all of it on hand is bad.
 */
export function whyNothing(work: BoardWork | SheetWork): "kerf" | "trim" | "bad" | undefined {
  const { job } = work;
  if (job.sold.length + job.onHand.length === 0) return undefined;
  if ("longest" in work && work.longest === null) return job.sold.length > 0 ? "trim" : "bad";
  return job.kerf >= longestOf(work) ? "kerf" : undefined;
}

/** The longest that it gives, in ticks. */
export const longestOf = (work: BoardWork | SheetWork): number =>
  "longest" in work
    ? (work.longest ?? 0)
    : Math.max(0, ...[...work.job.sold, ...work.job.onHand].map((s) => Math.max(s.length, s.width)));

export interface Shortage {
  /** Pieces without wood, those of one part and one length together, in the order of the parts. */
  readonly pieces: readonly {
    readonly part: string;
    readonly count: number;
    readonly length: Quantity;
    readonly width: Quantity | undefined;
  }[];
  /** Some of it is sold, but nothing that they could be cut from. */
  readonly sold: boolean;
  /** All that only the pile could give, and what is good of the pile: lengths, of sheets areas. */
  readonly needs: Quantity;
  readonly has: Quantity;
  /** What is without wood, likewise. */
  readonly lacks: Quantity;
  /** No way to lay them out leaves fewer without wood. */
  readonly sure: boolean;
}

/** Undefined where nothing is short, and where numbers are too large for anything to be laid out. */
export function shortageOf(work: BoardWork | SheetWork): Shortage | undefined {
  return "longest" in work ? ofBoards(work) : ofSheets(work);
}

function ofBoards(work: BoardWork): Shortage | undefined {
  const { job, answer, proof } = work;
  if (answer.unplaced.length === 0 || job.onHand.length === 0 || whyNothing(work)) return undefined;
  const numbers = [...job.pieces, ...job.sold, ...job.onHand].map(({ length }) => length);
  if (Math.max(job.kerf, job.endTrim, ...numbers) > MOST) return undefined;
  const reach = Math.max(0, ...job.sold.map((s) => s.length - job.endTrim));
  const asked = job.pieces.filter(({ length }) => length > reach);
  const spans = job.onHand.flatMap((board) => clearLengths(board, job.kerf));
  const withKerfs = (lengths: readonly number[]) => sum(lengths.map((length) => length + job.kerf));
  const needs = asked.map(({ length }) => length);
  const each = asked.flatMap((piece) => piecesOf(work, piece.id).map((id) => ({ ...piece, id })));
  return {
    ...grouped(
      each,
      answer.unplaced.flatMap((id) => piecesOf(work, id)),
    ),
    sold: job.sold.length > 0,
    needs: ofTicks(sum(needs)),
    has: ofTicks(sum(spans)),
    lacks: ofTicks(sum(left(asked, answer.unplaced).map(({ length }) => length))),
    sure: proof?.status === "proven" || withKerfs(needs) > withKerfs(spans),
  };
}

function ofSheets(work: SheetWork): Shortage | undefined {
  const { job, answer } = work;
  if (answer.unplaced.length === 0 || job.onHand.length === 0 || whyNothing(work)) return undefined;
  type Sides = { readonly length: number; readonly width: number };
  const fits = (piece: (typeof job.pieces)[number], on: Sides) =>
    (piece.length <= on.length && piece.width <= on.width) ||
    (piece.grain === "free" && piece.length <= on.width && piece.width <= on.length);
  const asked = job.pieces.filter((piece) => !job.sold.some((sheet) => fits(piece, sheet)));
  const without = left(asked, answer.unplaced);
  if (without.length === 0) return undefined;
  const areas = (all: readonly Sides[]) => sum(all.map(({ length, width }) => length * width));
  return {
    ...grouped(asked, answer.unplaced),
    sold: job.sold.length > 0,
    needs: squareTicks(areas(asked)),
    has: squareTicks(areas(job.onHand)),
    lacks: squareTicks(areas(without)),
    // What is proven of sheets is what they cost, not how few pieces are left over.
    sure: areas(asked) > areas(job.onHand),
  };
}

/** An area of so many square ticks. */
export const squareTicks = (ticks: number): Quantity =>
  exactly(AREA, fraction.divide(fraction.rational(ticks), fraction.rational(TICKS_PER_MM ** 2))!);

const sum = (numbers: readonly number[]): number => numbers.reduce((all, n) => all + n, 0);

function left<Piece extends { readonly id: string }>(
  asked: readonly Piece[],
  unplaced: readonly string[],
): Piece[] {
  const ids = new Set(unplaced);
  return asked.filter(({ id }) => ids.has(id));
}

function grouped(
  asked: readonly { readonly id: string; readonly length: number; readonly width?: number }[],
  unplaced: readonly string[],
): Pick<Shortage, "pieces"> {
  const groups = new Map<string, { part: string; count: number; length: number; width?: number }>();
  for (const { id, length, width } of left(asked, unplaced)) {
    const part = partOfPiece(id);
    const group = groups.get(part);
    if (group) group.count++;
    else groups.set(part, { part, count: 1, length, ...(width !== undefined && { width }) });
  }
  return {
    pieces: [...groups.values()].map(({ length, width, ...of }) => ({
      ...of,
      length: ofTicks(length),
      width: width === undefined ? undefined : ofTicks(width),
    })),
  };
}

/** The part of a piece in a layout: of `leg / 1`, `copy 2 / leg / 1`, `spare / leg / 1`. */
export function partOfPiece(id: string): string {
  const names = id.split(" / ");
  return names[names.length - 2] ?? id;
}
