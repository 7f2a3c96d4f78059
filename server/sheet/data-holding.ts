/** The part of the sheet's data that is about loads: what things carry and can bear, roots, gaps through the year. */
import type { Marked, Place } from "./data";

/** Something that carries a load, beside what it can bear. */
export interface SheetHeld {
  /** floor: a filled box on its floor. tipping: a thing that stands free. */
  readonly kind: "floor" | "board" | "wall" | "joint" | "foot" | "tipping";
  /** What it is about: "floor-board, the worst of 10". */
  readonly what: string;
  /** What it carries, or is asked for; null where it is not known. */
  readonly load: SheetAmount | null;
  /** What it can bear of that; null where it is not known. */
  readonly limit: SheetAmount | null;
  /** The share of what it can bear that it carries: over 1 is too much. Null where it is not known. */
  readonly uses: number | null;
  /** In plain words: "within", "too weak". */
  readonly state: string;
  /** The line it follows from; null for none. */
  readonly place: Place | null;
}

export interface SheetAmount {
  /** Kilograms, or kilograms on a square metre. */
  readonly value: number;
  /** kg, or kg/m2. */
  readonly unit: "kg" | "kg/m2";
  /** In the plan's units, with how far it bends where that is what counts. */
  readonly text: string;
}

/** Something taken for granted of loads and of what bears them. */
export interface SheetTaken {
  /** What is taken for granted: a sentence. */
  readonly text: string;
  /** Where it comes from. */
  readonly source: string;
}

/** What a box grows, and the room that its roots find. */
export interface SheetRoots {
  /** As the plan calls it. */
  readonly crop: string;
  /** The box. */
  readonly box: string;
  /** How deep the fill is, and how much there is where that is what a table tells; empty where not known. */
  readonly here: string;
  /** What it wants in a container; empty where no table tells. */
  readonly wants: string;
  /** How deep its roots go in open ground; empty where no table tells. */
  readonly ground: string;
  /** How the two compare, in plain words. */
  readonly state: string;
  /** Where it says what a container must have; empty where none does. */
  readonly source: string;
}

/** The narrowest gap of a row of boards through the year. */
export interface SheetGap {
  /** The parts of the row, and how many boards. */
  readonly row: string;
  /** As it is built. */
  readonly built: Marked;
  /** When the boards are at their wettest; less than nothing where they push each other. */
  readonly wettest: Marked;
  /** When the boards are at their driest. */
  readonly driest: Marked;
  /** Where the boards are: "outdoors", "in wet soil". */
  readonly where: string;
  /** The line that places its first board. */
  readonly place: Place;
}
