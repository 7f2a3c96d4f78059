/**
 * The question "which boards, and what is cut from each" and its answer, as plain data.
 *
 * All lengths are integer ticks (1/640 mm: 1 in = 16256 ticks, 1 mm = 640), money is integer cents, and both end at
 * `MOST`. Anything else (negative, a fraction, NaN, beyond `MOST`) makes its piece or board unusable: the piece is
 * reported unplaced, the board is left alone; an unusable kerf or salvage stretch does the same to what depends on it.
 * Ids are unique within `pieces`, `sold` and `onHand`; of boards with the same id the first counts.
 */
export { layOut } from "./lay-out";
export { clearLengths } from "./question";

/** The longest length in ticks (about 105 m) and the largest price in cents that is worked with; products stay exact. */
export const MOST = 2 ** 26;

export interface BoardPiece {
  /** Piece identity. The canonical order of pieces is the order given. */
  readonly id: string;
  readonly length: number;
}

export interface BoardForSale {
  readonly id: string;
  readonly length: number;
  /** Cents; null when not known. */
  readonly price: number | null;
}

export interface BoardOnHand {
  readonly id: string;
  readonly length: number;
  /** Stretches that cannot be used, in ticks from the marked end. What lies off the board is ignored. */
  readonly bad: readonly { readonly from: number; readonly to: number }[];
}

export interface BoardJob {
  readonly pieces: readonly BoardPiece[];
  readonly sold: readonly BoardForSale[];
  readonly onHand: readonly BoardOnHand[];
  /** Lost to each saw cut. */
  readonly kerf: number;
  /** Taken once off the marked end of each bought board, its saw cut included; never off a board on hand. */
  readonly endTrim: number;
  /** Boards on hand first, or only for what nothing sold can take. */
  readonly salvage: "use up" | "keep";
}

/** A piece's place in ticks from the board's marked end. */
export interface Cut {
  readonly pieceId: string;
  readonly from: number;
  readonly to: number;
}

export interface Waste {
  readonly from: number;
  readonly to: number;
  readonly why: "trim" | "kerf" | "bad" | "offcut";
}

export interface BoardLayout {
  readonly boardId: string;
  readonly kind: "bought" | "on hand";
  readonly length: number;
  /** As in the job; empty on a bought board. */
  readonly bad: BoardOnHand["bad"];
  /** In order along the board. */
  readonly cuts: readonly Cut[];
  /** In order along the board; cuts and waste together cover the board once. */
  readonly waste: readonly Waste[];
  /** The longest usable rest; 0 when there is none. */
  readonly offcut: number;
}

export interface BoardAnswer {
  /** On hand in the job's order, then bought: fullest first, equal ones together. */
  readonly boards: readonly BoardLayout[];
  /** Ids of pieces that no board could take, in the order given. */
  readonly unplaced: readonly string[];
  /** What to buy, shortest first; `price` is the total in cents, null when it is not known. */
  readonly buy: readonly { readonly id: string; readonly count: number; readonly price: number | null }[];
  /** Cents; 0 when nothing is bought, null when any bought board has no price. */
  readonly cost: number | null;
  /** Ticks bought. */
  readonly length: number;
}
