/** What went wrong while working a plan out, as typed facts. The checks turn them into problems; nothing here is text for a builder. */

import type { Comparison } from "../../grammar/tree";
import type { At, DeclaredKind, Says, Told } from "../plan";
import type { Dimension, Quantity } from "../units";

export type Fault =
  /** Two values that cannot be added, subtracted, compared … */
  | {
      readonly kind: "kinds";
      readonly at: At;
      readonly doing: "add" | "subtract" | "multiply" | "divide" | "compare" | "round" | "put together";
      readonly left: Quantity;
      readonly right: Quantity;
      /** Where the two stand, in that order. */
      readonly sides?: readonly [At, At];
      /** How they are compared, in that order. */
      readonly comparison?: Comparison;
      /** For `11 - 1/2"`: the mixed number that was likely meant. */
      readonly meant?: string;
    }
  /** A value of the wrong kind: `length 28` where a length is wanted. */
  | {
      readonly kind: "wanted";
      readonly at: At;
      readonly what: Told;
      readonly wanted: Dimension;
      readonly found: Quantity;
      readonly text: string;
      /** For `28-1/2` without its mark: the mixed number that was likely meant. */
      readonly meant?: string;
    }
  | {
      readonly kind: "circle";
      readonly at: At;
      /** Names of the plan, or what is asked: where something stands. */
      readonly path: readonly { readonly name: Told; readonly at: At }[];
    }
  /** No such value: division by zero, a length of nothing … `what` names it, `found` is what came out. */
  | {
      readonly kind: "impossible";
      readonly at: At;
      readonly why: Impossible;
      readonly what: Told;
      readonly found?: Quantity;
      /** What `found` may be at most. */
      readonly most?: Quantity;
    }
  | {
      readonly kind: "unknown-name";
      readonly at: At;
      readonly name: string;
      readonly near: readonly string[];
      readonly wants: Told;
      /** It is looked up in a table and not among the names of the plan. */
      readonly fixed?: true;
    }
  | {
      readonly kind: "wrong-kind";
      readonly at: At;
      readonly name: string;
      readonly found: DeclaredKind;
      readonly wants: Told;
    }
  | {
      readonly kind: "unknown-section";
      readonly at: At;
      readonly name: string;
      readonly near: readonly string[];
    }
  | { readonly kind: "missing-measure"; readonly at: At; readonly name: string }
  | {
      readonly kind: "size-missing";
      readonly at: At;
      readonly name: string;
      readonly what: "length" | "width" | "inside" | "board" | "thickness";
    }
  | {
      readonly kind: "too-many";
      readonly at: At;
      readonly what: Told;
      readonly found: number;
      readonly limit: number;
    }
  | { readonly kind: "ends-cross"; readonly at: At; readonly name: string; readonly least: Quantity }
  | { readonly kind: "said-twice"; readonly at: At; readonly what: string; readonly first: At }
  /** A place line that leaves directions open, or does not say how its board lies. */
  | {
      readonly kind: "undecided";
      readonly at: At;
      readonly subject: string;
      readonly open: readonly (0 | 1 | 2)[];
      /** The clause most likely meant for each open direction. */
      readonly offers: readonly string[];
      readonly lie: "lie" | "flat or on edge" | undefined;
      /** Where the line ends. */
      readonly after: number;
    }
  /** Two clauses of a place line that put it in two places. */
  | {
      readonly kind: "disputed";
      readonly at: At;
      readonly first: At;
      readonly subject: string;
      readonly axis: 0 | 1 | 2;
      /** Where its left, front or lower side would come by the first clause, and by this one. */
      readonly starts: readonly [Quantity, Quantity];
      /** From where the first clause puts it to where this one does. */
      readonly apart: Quantity;
      /** The clauses of which either could be taken out, and the rest would agree. */
      readonly either: readonly At[];
    }
  /** A line says `between`, and what it places is shorter than the room there. */
  | {
      readonly kind: "loose";
      readonly at: At;
      readonly subject: string;
      readonly gap: Quantity;
      readonly axis: 0 | 1 | 2;
      /** The two things, as the line names them. */
      readonly first: string;
      readonly second: string;
    }
  /** Pieces that do not fit where a line puts them. */
  | {
      readonly kind: "no-room";
      readonly at: At;
      readonly subject: string;
      /** A row that is longer than its span, or a diagonal board in a rectangle of two sides. */
      readonly why:
        | {
            readonly is: "row";
            readonly count: number;
            readonly length: Quantity;
            readonly span: Quantity;
            /** Where the count stands as a plain number, and how many would fit. */
            readonly fits: { readonly at: At; readonly n: number } | undefined;
            /** Of as many as fit: the gap that one fewer leaves, and the largest allowed. */
            readonly fewer:
              | { readonly n: number; readonly gap: Quantity; readonly most: Quantity }
              | undefined;
          }
        | {
            readonly is: "diagonal";
            readonly width: Quantity;
            readonly sides: readonly [Quantity, Quantity];
          };
    }
  /** As many as fit, and nothing says in what room. */
  | { readonly kind: "room-unsaid"; readonly at: At; readonly subject: string }
  /** A line leans on something that stands nowhere. */
  | {
      readonly kind: "unplaced";
      readonly at: At;
      readonly name: string;
      /** As the line says it: `front leg`. */
      readonly words: string;
      /** No line places it; none but this line does; some stand there, but none that the words choose; it is the floor. */
      readonly why: "nowhere" | "itself" | "narrowed" | "floor";
    }
  /** A distance from the right, the back or the top, where nothing says how far away that is. */
  | {
      readonly kind: "no-far-side";
      readonly at: At;
      readonly side: string;
      /** The line stands in an assembly. */
      readonly inside: boolean;
    };

/** Why there is no such value. */
export type Impossible =
  | "by zero"
  | "no value"
  | "nothing"
  | "less than nothing"
  | "angle"
  | "whole number"
  | "not a number"
  | "too long a chain"
  | "too large"
  | "too few values"
  | "overfilled"
  | "underfilled"
  | "no inside"
  | "uncuttable"
  | "too deep"
  | "too far along"
  | "too long together"
  | "lean"
  | "wide face";

/** Something that was not looked at, and why; `uncheckedText` of the checks writes it. */
export interface Unchecked {
  readonly what: Says;
  readonly why: Says;
  readonly at?: At;
}
