/** What the sheet's data tells of a stock besides its layouts: how good they are, what is left of it, and what the pile gives. */
import type { Marked } from "./data";

/** Numbers by which a checker of whole numbers can see that nothing costs less than the bound. */
export interface ProofCertificate {
  /**
   * Each a worth for every different piece: of boards by length, longest first; of sheets by length, width and grain,
   * those that a sheet sold can take.
   */
  readonly worths: readonly (readonly number[])[];
  /** Of sheets, for each of these worths the pieces that are counted one by one; else empty. */
  readonly held: readonly (readonly number[])[];
  /** Of sheets, numbers of each size sold from which not all can be cut; else empty. */
  readonly refuted: readonly (readonly number[])[];
}

export interface SheetProof {
  /** first: nothing is known. bounded: nothing costs less than the bound. proven: nothing costs less than this does. */
  readonly status: "first" | "bounded" | "proven";
  /** What the layout buys, in `unit`. */
  readonly cost: number;
  /** The least that any layout buys, in `unit`; null where it is not known. */
  readonly bound: number | null;
  /** Cents; where a price is missing, mm of boards or square mm of sheets. */
  readonly unit: "cents" | "mm" | "mm2";
  /** Of the cents; empty for another unit. */
  readonly currency: string;
  /** Counted work that was spent on it. */
  readonly work: number;
  readonly certificate: ProofCertificate | null;
}

/** What is left over and worth keeping, of one board or sheet or of several cut alike. */
export interface SheetRest {
  /** "1x4 rest 1"; "1x4 rests 1 to 3" for several. */
  readonly name: string;
  readonly count: number;
  /** mm from the board's left end, or from the sheet's lower left corner along it and up. */
  readonly x: number;
  readonly y: number;
  /** Of a sheet's rest, along the sheet and across it. */
  readonly length: Marked;
  /** Null for a board's. */
  readonly width: Marked | null;
}

/** A length that is cut more than once, so that a stop on the saw is set for all of them. */
export interface SheetStop {
  readonly length: Marked;
  readonly count: number;
  /** Marks of the pieces: "A, C". */
  readonly marks: string;
  /** The boards that they are cut from. */
  readonly boards: readonly { readonly label: string; readonly count: number }[];
}

/** Boards or sheets on hand that are cut. */
export interface SheetPile {
  readonly stock: string;
  readonly count: number;
  readonly length: Marked;
  /** Null for boards. */
  readonly width: Marked | null;
  /** Pieces cut from them. */
  readonly pieces: number;
  /** About what as much of it costs new, at the lowest price by length or area; null where there is no price. */
  readonly saves: string | null;
}
