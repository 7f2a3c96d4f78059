/** The part of the sheet's data that is about the work: tools, bits, boards at the yard, finishes, liners, steps. */
import type { Marked, Place } from "./data";

export interface SheetTool {
  /** The same in every language: "miter". */
  readonly key: string;
  /** What it is called: "a saw that turns for miters". */
  readonly what: string;
  /** Each thing it is taken up for: "miters of cap-side and cap-end, 45°". */
  readonly uses: readonly string[];
  /** How far it must reach: "miter 45°", "widest cut across 5-1/2"". */
  readonly reach: readonly string[];
  /** Whether the plan's tools say that it is at hand. */
  readonly have: "yes" | "no" | "unsaid";
  /** A way round it where it is missing; empty where there is none. */
  readonly instead: string;
}

export interface SheetBit {
  /** What it bores or drives. */
  readonly kind: "pilot" | "clearance" | "drain" | "countersink" | "driver";
  /** As it is sold: "1/8"", "to fit the head". */
  readonly what: string;
  /** In all copies; null where it is not known. */
  readonly holes: number | null;
  /** Each joint or box it is for. */
  readonly uses: readonly string[];
  /** Where its size comes from: "the plan", or a rule. */
  readonly source: string;
  /** What was taken for granted, and what there is to know about it; may be empty. */
  readonly assumed: string;
}

export interface SheetYard {
  /** The board as the plan calls it: "2x4". */
  readonly stock: string;
  /** The real thickness that all lengths were worked out with. */
  readonly thickness: Marked | null;
  /** The real width that all lengths were worked out with. */
  readonly width: Marked | null;
}

/** A coat line. */
export interface SheetFinish {
  /** The finish. */
  readonly what: string;
  /** With their marks: "A leg". */
  readonly parts: readonly string[];
  /** One coat on one copy; null where it is not known. */
  readonly area: SheetArea | null;
  /** How many coats. */
  readonly coats: number;
  /** For all coats on all copies; null where it is not known. */
  readonly amount: SheetVolume | null;
  /** How long a coat dries: "12 h"; empty where it is not known. */
  readonly dries: string;
  /** What was left out and what to buy: a sentence each. */
  readonly notes: readonly string[];
  /** What was taken for granted: a sentence each. */
  readonly assumed: readonly string[];
  /** The coat line. */
  readonly place: Place;
}

export interface SheetArea {
  /** Square metres. */
  readonly m2: number;
  /** In both systems. */
  readonly text: string;
}

export interface SheetVolume {
  /** Litres. */
  readonly litres: number;
  /** In both systems. */
  readonly text: string;
}

/** A line entry. */
export interface SheetLining {
  /** The liner or fabric. */
  readonly what: string;
  /** The box it lines. */
  readonly box: string;
  /** What is cut off the roll for one copy. */
  readonly cuts: readonly SheetLinerCut[];
  /** How it is laid, folded, cut open for the water and stapled: a sentence each. */
  readonly notes: readonly string[];
  /** What was taken for granted: a sentence each. */
  readonly assumed: readonly string[];
  /** The line entry. */
  readonly place: Place;
}

export interface SheetLinerCut {
  /** What is cut: "one sheet", "strip". */
  readonly what: string;
  /** How many of this size. */
  readonly count: number;
  /** Along the roll or across it, whichever is the longer. */
  readonly length: Marked;
  /** The other side. */
  readonly width: Marked;
}

/** A piece or several of a row that are new in a step. */
export interface SheetFresh {
  /** Of its row of the cut list. */
  readonly mark: string;
  /** The part. */
  readonly part: string;
  /** Identities of the pieces. */
  readonly pieces: readonly string[];
  /** How many. */
  readonly count: number;
}

export interface SheetJoin {
  /** The joint: "side face into leg face". */
  readonly title: string;
  /** With what: "deck-mid (#8 x 1-5/8")", or how it is glued. */
  readonly what: string;
  /** Driven in this step, in one copy; null for glue, and where it is not known. */
  readonly screws: number | null;
  /** The holes to drill, as the plan gives them. */
  readonly holes: string;
}

export interface SheetSpan {
  /** Minutes. */
  readonly minutes: number;
  /** As a builder says it: "1 h 25 min". */
  readonly text: string;
}

export interface SheetStep {
  /** From 1. */
  readonly number: number;
  /** What is done. */
  readonly title: string;
  /** Its clauses as written. */
  readonly lines: readonly string[];
  /** Pieces that no step before used. */
  readonly fresh: readonly SheetFresh[];
  /** What is driven or glued in it. */
  readonly joins: readonly SheetJoin[];
  /** What is finished in it: "leg, side: outdoor-oil, 1 coat". */
  readonly coats: readonly string[];
  /** What is lined in it: "trough with pond-liner". */
  readonly linings: readonly string[];
  /** Parts that are cut to fit now. */
  readonly fit: readonly string[];
  /** What is measured corner to corner before it is screwed tight. */
  readonly square: readonly string[];
  /** Tools and bits to lay ready. */
  readonly tools: readonly string[];
  /** How many hands it wants; null where the plan does not say. */
  readonly people: number | null;
  /** How long it takes; null where the plan does not say. */
  readonly takes: SheetSpan | null;
  /** What is waited for after it; null for nothing. */
  readonly wait: SheetSpan | null;
  /** What is heavy to lift in it; empty where nothing is. */
  readonly lift: string;
  /** The line of the step; null for one that follows from joints. */
  readonly place: Place | null;
}

export interface SheetSitting {
  /** Its first step. */
  readonly from: number;
  /** Its last step. */
  readonly to: number;
  /** Work; null where some step does not say. */
  readonly takes: SheetSpan | null;
  /** What is waited for after it; null after the last. */
  readonly wait: SheetSpan | null;
  /** The wait lasts overnight. */
  readonly overnight: boolean;
}
