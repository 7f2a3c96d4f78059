/** The part of the sheet's data that is about the work: tools, bits, boards at the yard, finishes, liners, steps. */
import type { Marked, Place } from "./data";

export interface SheetTool {
  /** "miter saw or miter box". */
  readonly what: string;
  /** "miters of cap-side and cap-end, 45°". */
  readonly uses: readonly string[];
  /** How far it must reach: "miter 45°", "widest cut across 5-1/2"". */
  readonly reach: readonly string[];
  readonly have: "yes" | "no" | "unsaid";
  /** A way round it where it is missing; empty where there is none. */
  readonly instead: string;
}

export interface SheetBit {
  readonly kind: "pilot" | "clearance" | "drain" | "countersink" | "driver";
  /** "1/8" bit"; empty where none is known. */
  readonly what: string;
  /** In all copies; null where it is not known. */
  readonly holes: number | null;
  /** Each joint or box it is for. */
  readonly uses: readonly string[];
  readonly source: string;
  readonly assumed: string;
}

export interface SheetYard {
  readonly stock: string;
  readonly thickness: Marked | null;
  readonly width: Marked | null;
}

/** A coat line. */
export interface SheetFinish {
  readonly what: string;
  /** With their marks: "A leg". */
  readonly parts: readonly string[];
  /** One coat on one copy, in m2, and in words; null where it is not known. */
  readonly area: { readonly m2: number; readonly text: string } | null;
  readonly coats: number;
  /** For all coats on all copies. */
  readonly amount: { readonly litres: number; readonly text: string } | null;
  /** "12 h"; empty where it is not known. */
  readonly dries: string;
  readonly notes: readonly string[];
  readonly place: Place;
}

/** A line entry. */
export interface SheetLining {
  readonly what: string;
  readonly box: string;
  readonly cuts: readonly {
    readonly what: string;
    readonly count: number;
    readonly length: Marked;
    readonly width: Marked;
  }[];
  /** How it is laid, folded, cut open for the water and stapled, a sentence each. */
  readonly notes: readonly string[];
  readonly place: Place;
}

/** A piece or several of a row that are new in a step. */
export interface SheetFresh {
  readonly mark: string;
  readonly part: string;
  readonly pieces: readonly string[];
  /** How many; as many as pieces where these are placed. */
  readonly count: number;
}

export interface SheetStep {
  /** From 1. */
  readonly number: number;
  readonly title: string;
  /** Its clauses as written. */
  readonly lines: readonly string[];
  readonly fresh: readonly SheetFresh[];
  /** What is driven in it, in one copy. */
  readonly joins: readonly {
    readonly title: string;
    readonly what: string;
    readonly screws: number | null;
    readonly holes: string;
  }[];
  /** "leg, side: outdoor-oil, 2 coats". */
  readonly coats: readonly string[];
  readonly linings: readonly string[];
  /** Parts that are cut to fit now. */
  readonly fit: readonly string[];
  /** What is measured corner to corner before it is screwed tight. */
  readonly square: readonly string[];
  readonly tools: readonly string[];
  readonly people: number | null;
  readonly takes: { readonly minutes: number; readonly text: string } | null;
  readonly wait: { readonly minutes: number; readonly text: string } | null;
  /** What is heavy to lift in it; empty where nothing is. */
  readonly lift: string;
  /** The line of the step; null for one that follows from joints. */
  readonly place: Place | null;
}

export interface SheetSitting {
  /** First and last step. */
  readonly from: number;
  readonly to: number;
  /** Work in minutes; null where some step does not say. */
  readonly takes: { readonly minutes: number; readonly text: string } | null;
  /** What is waited for after it; null after the last. */
  readonly wait: { readonly minutes: number; readonly text: string } | null;
  readonly overnight: boolean;
}
