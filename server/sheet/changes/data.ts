/**
 * What differs between two plans, or two versions of one, as plain data: also the JSON of a comparison, version 1. Fields
 * are only ever added. It is told of the thing, not of the text: pieces, joints, boards, cost, weight, work, problems.
 * Compared the other way round it is the same with `old` and `new` exchanged and `by` turned round.
 */
import type { Marked, NotChecked, SheetBuilt, SheetProblem } from "../data";

/** What there was and what there is; null where there was, or is, nothing. */
export interface Both<T> {
  readonly old: T | null;
  readonly new: T | null;
}

/** Something that is told with one text before and another now. */
export interface Told extends Both<string> {
  /** What it is about: "Total", "Floor limit", "side face into leg face". */
  readonly what: string;
}

/** A row of the cut list. */
export interface PieceFacts {
  readonly part: string;
  readonly mark: string;
  readonly hand: "" | "left" | "right";
  readonly count: number;
  /** The board as the plan calls it: "2x4". */
  readonly stock: string;
  /** Tip to tip; null when not known. */
  readonly length: Marked | null;
  /** Their identities. */
  readonly pieces: readonly string[];
}

/** Pieces that stay as they are and stand elsewhere, all by the same way. */
export interface Moved {
  /** Their identities as they are now. */
  readonly pieces: readonly string[];
  /** To the right, to the back and up, in mm. */
  readonly by: readonly [x: number, y: number, z: number];
  /** "2" to the right, 1/2" down". */
  readonly words: string;
}

/** What differs about the pieces of one row. */
export interface PieceChange extends Both<PieceFacts> {
  /** Of a row that is there before and now: count, length, section, width, ends, notes. */
  readonly fields: readonly Told[];
  /** Identities of pieces of such a row that there are on one side only. */
  readonly pieces: { readonly old: readonly string[]; readonly new: readonly string[] };
  readonly moved: readonly Moved[];
  /** Pieces that reach otherwise through space, though their sizes are the same. */
  readonly turned: readonly string[];
}

/** Boards or sheets of one stock that are cut otherwise. */
export interface CutOtherwise {
  readonly stock: string;
  /** How many there were and are. */
  readonly old: number;
  readonly new: number;
  /** Of both, how many are cut just as before. */
  readonly same: number;
}

export interface SheetChanges {
  readonly format: "sawbuck-changes";
  readonly version: 1;
  readonly plans: Both<{ readonly file: string; readonly title: string }>;
  /** What the plan tells of the building that it is compared with; empty where none is. */
  readonly built: readonly SheetBuilt[];
  /** Nothing that is listed below differs, and nothing was changed that is only told in words. */
  readonly same: boolean;
  /** Title, size, weight, and what the plan says of itself. */
  readonly plan: readonly Told[];
  readonly pieces: readonly PieceChange[];
  readonly cutting: readonly CutOtherwise[];
  /** Everything to buy and to take from the pile. */
  readonly buying: readonly Told[];
  readonly cost: readonly Told[];
  /** Joints, and how many of each fastener they take. */
  readonly joining: readonly Told[];
  /** Rings, boxes, finishes, liners, tools, the plan's own rules, notes. */
  readonly more: readonly Told[];
  readonly steps: readonly Told[];
  /** Problems that are gone, and new ones. */
  readonly problems: { readonly old: readonly SheetProblem[]; readonly new: readonly SheetProblem[] };
  /** Those that were let stand, and those that are. */
  readonly accepted: { readonly old: readonly SheetProblem[]; readonly new: readonly SheetProblem[] };
  readonly notChecked: { readonly old: readonly NotChecked[]; readonly new: readonly NotChecked[] };
}
