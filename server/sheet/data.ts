/**
 * The shop sheet as plain data: also the JSON of the worked-out plan, version 1. Fields are only ever added.
 * Everything is text or a number; nothing here knows HTML. Lengths carry millimetres and the text to the plan's mark.
 */

import type { SheetBuilt } from "./data-built";
import type { SheetGap, SheetHeld, SheetRoots, SheetTaken } from "./data-holding";
import type { SheetPile, SheetProof, SheetRest, SheetStop } from "./data-stock";
import type {
  SheetBit,
  SheetFinish,
  SheetLining,
  SheetSitting,
  SheetStep,
  SheetTool,
  SheetYard,
} from "./data-work";

export type * from "./data-built";
export type * from "./data-holding";
export type * from "./data-stock";
export type * from "./data-work";

/** A length: exact-as-a-double millimetres, the text to the plan's mark, and the text in the other system. */
export interface Marked {
  readonly mm: number;
  readonly text: string;
  readonly other: string;
}

export interface Place {
  readonly file: string;
  /** From 1, as an editor shows them. */
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

export interface SheetNumber {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly text: string;
  readonly source: string;
}

export interface SheetProblem {
  readonly code: string;
  readonly class: "error" | "hazard" | "warning" | "hint";
  /** One sentence that stands alone in a list. */
  readonly message: string;
  readonly place: Place;
  readonly numbers: readonly SheetNumber[];
  readonly related: readonly { readonly message: string; readonly place: Place }[];
  readonly assumed: readonly string[];
  readonly cures: readonly string[];
  /** The reason given by `accept … because …`; the problem then stands, printed with it. */
  readonly accepted?: string;
}

export interface NotChecked {
  /** What was not looked at: "where the pieces stand". */
  readonly what: string;
  /** Why not: "this version reads `place` lines but does not work them out". */
  readonly why: string;
  readonly place?: Place;
}

/** A placed piece: what the drawing shows. */
export interface SheetPiece {
  /** `leg / front left`. */
  readonly id: string;
  readonly part: string;
  /** Of its row of the cut list. */
  readonly mark: string;
  /** The assemblies it stands in, outermost first. */
  readonly assemblies: readonly string[];
  /** The least and the most it reaches to the right, to the back and up, in mm. */
  readonly from: readonly [x: number, y: number, z: number];
  readonly to: readonly [x: number, y: number, z: number];
  /** The line that puts it there. */
  readonly place: Place;
}

/** Distances for the bench, and what they are measured from. */
export interface SheetMarks {
  readonly from: "end" | "edge" | "face";
  readonly which: "left" | "right" | "front" | "back" | "bottom" | "top" | "each" | "either";
  readonly at: readonly Marked[];
  /** `from each end: 1-3/4"`. */
  readonly words: string;
}

/** Pieces on which a joint's screws are marked alike. */
export interface SheetSetOut {
  readonly part: string;
  readonly mark: string;
  readonly pieces: readonly string[];
  /** On each of them. */
  readonly screws: number;
  readonly grids: readonly {
    readonly on: "face" | "edge" | "end";
    readonly along: SheetMarks;
    readonly across: SheetMarks;
  }[];
}

/** A fasten line. */
export interface SheetJoint {
  /** "side face into leg face". */
  readonly title: string;
  /** "#8 x 1-5/8"", or empty where the line does not say. */
  readonly what: string;
  /** How they are set out, in the line's words: "2 at each crossing". */
  readonly pattern: string;
  readonly holes: string;
  /** In one copy; null where its pieces are not placed. */
  readonly crossings: number | null;
  readonly screws: number | null;
  readonly setOut: readonly SheetSetOut[];
  readonly place: Place;
}

/** Something to measure corner to corner: both diagonals are to be this long. */
export interface SheetSquare {
  readonly of: "ring" | "box" | "feet";
  /** The ring's or the box's; empty for feet. */
  readonly name: string;
  readonly diagonal: Marked;
  readonly sides: readonly [Marked, Marked];
  readonly count: number;
  /** "cap, outside corners". */
  readonly words: string;
}

export interface CutRow {
  /** Its letter: on the drawing, on the boards, in this row. */
  readonly mark: string;
  readonly part: string;
  /** Identities of the pieces, `leg / front left` where placed, else `leg / 1` … in order. */
  readonly pieces: readonly string[];
  readonly count: number;
  readonly hand: "" | "left" | "right";
  /** Tip to tip: what must be there before the ends are cut. Null when not known. */
  readonly length: Marked | null;
  /** What the length follows from, as the plan writes it: "overall width of legs"; empty for a measure typed for it. */
  readonly rule: string;
  /** "long point to long point", "cut to fit" …; empty for a plain length. */
  readonly measured: string;
  readonly shortPoint: Marked | null;
  /** The board's own width and thickness, or the ripped width. */
  readonly width: Marked | null;
  readonly thickness: Marked | null;
  readonly ripped: boolean;
  /** "45° miter both ends, long points on one edge"; empty for square ends. */
  readonly ends: string;
  /** Anything else for the saw: "leave 1/2" to fit", notches. */
  readonly notes: readonly string[];
  readonly place: Place;
}

export interface CutGroup {
  readonly stock: string;
  /** "2x4, 1-1/2" x 3-1/2", western redcedar". */
  readonly title: string;
  readonly source: string;
  readonly rows: readonly CutRow[];
}

export interface SheetCut {
  readonly piece: string;
  /** What is written on the wood: "leg". */
  readonly label: string;
  /** Of its row of the cut list. */
  readonly mark: string;
  readonly from: Marked;
  readonly to: Marked;
  readonly length: Marked;
}

export interface SheetBoard {
  /** "8' board" or "on hand, 41"". */
  readonly label: string;
  readonly kind: "bought" | "on hand";
  /** How many boards are cut just like this one (the pieces then list all of them). */
  readonly count: number;
  readonly length: Marked;
  readonly cuts: readonly SheetCut[];
  /** Stretches that become nothing, in order; `from` and `to` in mm. */
  readonly waste: readonly {
    readonly from: number;
    readonly to: number;
    readonly why: "trim" | "kerf" | "bad" | "offcut";
  }[];
  /** The largest rest worth keeping, or null. */
  readonly offcut: Marked | null;
  /** All rests worth keeping, in order along the board. */
  readonly rests: readonly SheetRest[];
}

export interface BoardPlan {
  readonly stock: string;
  readonly title: string;
  readonly boards: readonly SheetBoard[];
  /** "1/8" lost to each saw cut", "1/2" trimmed off each bought end" … */
  readonly assumed: readonly string[];
  /** Pieces that found no wood. */
  readonly unplaced: readonly string[];
  readonly proof: SheetProof;
  /** Longest first. */
  readonly stops: readonly SheetStop[];
  /** For the shop file, once all is cut: "on hand 1 of 28-1/2""; empty where nothing is left. */
  readonly onHandAfter: string;
}

export interface SheetPanel {
  readonly label: string;
  readonly kind: "bought" | "on hand";
  readonly count: number;
  readonly length: Marked;
  readonly width: Marked;
  readonly cuts: readonly {
    readonly piece: string;
    readonly label: string;
    readonly mark: string;
    /** mm from the sheet's lower left corner. */
    readonly x: number;
    readonly y: number;
    readonly length: Marked;
    readonly width: Marked;
  }[];
  /** Rests worth keeping that come off by a cut from edge to edge. */
  readonly rests: readonly SheetRest[];
}

export interface PanelPlan {
  readonly stock: string;
  readonly title: string;
  readonly sheets: readonly SheetPanel[];
  readonly assumed: readonly string[];
  readonly unplaced: readonly string[];
  readonly proof: SheetProof;
  readonly onHandAfter: string;
}

export interface ShoppingRow {
  /** "boards", "sheets", "fasteners", "finish", "liner": the aisle. */
  readonly aisle: string;
  readonly what: string;
  readonly count: number;
  /** "8' board", "box of 100". */
  readonly unit: string;
  /** The same in every language and in all units, other for another size: "boards/2x4/2438.4". */
  readonly key: string;
  /** "$7.40", or null when no price is known. */
  readonly each: string | null;
  readonly total: string | null;
  readonly note: string;
}

export interface SheetLoad {
  /** Boards and sheets. */
  readonly count: number;
  /** The longest side of any of them. */
  readonly longest: Marked | null;
  /** All of them, in both systems; null where the weight of some is not known. */
  readonly weight: string | null;
}

export interface SheetWeight {
  /** Kilograms. */
  readonly kg: number;
  /** In both systems. */
  readonly text: string;
}

export interface Shopping {
  readonly rows: readonly ShoppingRow[];
  /** What is taken from the pile: "2 of 41" 2x4". */
  readonly onHand: readonly string[];
  readonly subtotal: string | null;
  readonly tax: string | null;
  /** The yard whose tax it is; null where the plan itself says it. */
  readonly taxOf: string | null;
  readonly total: string | null;
  readonly budget: string | null;
  /** Things whose price is not known, so that the total leaves them out. */
  readonly withoutPrice: readonly string[];
  /** Boards and sheets to carry home; null where none are bought. */
  readonly carry: SheetLoad | null;
  /** What is cut of the pile, and what it saves. */
  readonly pile: readonly SheetPile[];
  /** What the total leaves of the budget, or is over it; null where there is no budget, or nothing to compare. */
  readonly left: { readonly amount: string; readonly over: boolean } | null;
}

export interface FastenerRow {
  readonly what: string;
  readonly count: number | null;
  /** Each joint that uses it: "side into leg: 2 at each end". */
  readonly joints: readonly string[];
  /** The holes to drill, where all its joints ask for the same; else each joint tells its own. */
  readonly holes: string;
}

export interface SheetRing {
  readonly name: string;
  readonly members: string;
  /** "closes" or the opening in words. */
  readonly state: string;
}

export interface SheetBox {
  readonly name: string;
  readonly rows: readonly { readonly label: string; readonly value: string }[];
  readonly caution: string;
}

export interface SheetCare {
  /** A sentence or two. */
  readonly text: string;
  /** Where it comes from; empty for common practice. */
  readonly source: string;
}

export interface SheetData {
  readonly format: "sawbuck-sheet";
  readonly version: 1;
  /** The plan language the sheet was read in. */
  readonly language: number;
  readonly file: string;
  readonly title: string;
  readonly units: { readonly system: "inches" | "millimetres"; readonly mark: string };
  readonly make: number;
  /** The facts of the plan, in order: who wrote it, licence, how many, space, floor limit, lumber standard … */
  readonly facts: readonly { readonly label: string; readonly value: string }[];
  readonly notes: readonly string[];
  readonly problems: readonly SheetProblem[];
  readonly accepted: readonly SheetProblem[];
  readonly notChecked: readonly NotChecked[];
  /** Over all; null when nothing is placed. */
  readonly overall: { readonly width: Marked; readonly depth: Marked; readonly height: Marked } | null;
  readonly pieces: readonly SheetPiece[];
  readonly cutList: readonly CutGroup[];
  readonly boards: readonly BoardPlan[];
  readonly panels: readonly PanelPlan[];
  readonly shopping: Shopping;
  readonly fasteners: readonly FastenerRow[];
  readonly joints: readonly SheetJoint[];
  readonly square: readonly SheetSquare[];
  readonly rings: readonly SheetRing[];
  readonly boxes: readonly SheetBox[];
  /** The builder's own rules and how they came out. */
  readonly musts: readonly { readonly rule: string; readonly because: string; readonly state: string }[];
  /** In the order they are taken up. */
  readonly tools: readonly SheetTool[];
  /** For holes and heads. */
  readonly bits: readonly SheetBit[];
  /** What is really measured on the boards before they are bought. */
  readonly yard: readonly SheetYard[];
  /** One for each coat line. */
  readonly finishes: readonly SheetFinish[];
  /** One for each box that is lined. */
  readonly linings: readonly SheetLining[];
  /** Of one copy, dry; null when the weight of some piece is not known. */
  readonly weight: SheetWeight | null;
  /** The order of work: the plan's own steps, or those that follow from its joints. */
  readonly steps: readonly SheetStep[];
  /** The plan gives no steps: these follow from its joints. */
  readonly stepsProposed: boolean;
  /** Work that is done in one go, and what is waited for after it. */
  readonly sittings: readonly SheetSitting[];
  /** What the thing wants after it is built. */
  readonly care: readonly SheetCare[];
  readonly cautions: readonly { readonly text: string; readonly source: string }[];
  /** What has to carry something; empty where nothing placed does. */
  readonly holds: readonly SheetHeld[];
  /** What was taken for granted of loads and of what bears them. */
  readonly taken: readonly SheetTaken[];
  /** The caution that stands with all of it; empty where nothing is told. */
  readonly holdsCaution: string;
  readonly roots: readonly SheetRoots[];
  /** Gaps between boards through the year. */
  readonly gaps: readonly SheetGap[];
  /** In the order of their days. */
  readonly built: readonly SheetBuilt[];
}
