/** One offer, and what it is made from. */
import type { Span } from "../../grammar/tree";
import type { Language } from "../checks";
import type { Checked } from "./checked";
import type { Typed } from "./completion-typed";

export interface Completion {
  readonly label: string;
  readonly kind:
    | "entry"
    | "snippet"
    | "clause"
    | "word"
    | "section"
    | "measure"
    | "property"
    | "function"
    | "unit"
    | "size"
    | "code"
    | "file"
    | "thing";
  /** What it comes to, in a few words. */
  readonly detail: string;
  /** Markdown, worked out when it is asked for. */
  readonly documentation: () => string;
  readonly insertText: string;
  /** The same with places to fill in. */
  readonly snippet?: string;
  /** What the text is put in place of: from the first letter typed to the end of the word under the cursor. */
  readonly range: Span;
  readonly sortText: string;
  /** Likely what is meant. */
  readonly preselect: boolean;
  /** The line needs more behind it. */
  readonly goesOn: boolean;
}

/** An offer before its place is known; the lower the rank, the earlier it comes. */
export type Offer = Omit<Completion, "range" | "sortText" | "preselect"> & { readonly rank: number };

/** What offers are made from. */
export interface Asking {
  readonly plan: Checked;
  readonly language: Language;
  readonly typed: Typed | undefined;
}

const nothing = (): string => "";

export const offer = (
  label: string,
  kind: Offer["kind"],
  rank: number,
  more: Partial<Omit<Offer, "label" | "kind" | "rank">> = {},
): Offer => ({
  label,
  kind,
  rank,
  detail: "",
  documentation: nothing,
  insertText: label,
  goesOn: false,
  ...more,
});

/** What is likely stands before all, what is known to be wrong here behind all. */
export const RANK = {
  likely: -1,
  open: 0,
  name: 1,
  plural: 2,
  other: 3,
  property: 4,
  word: 5,
  function: 6,
  table: 7,
  narrow: 8,
  last: 9,
} as const;

/** The lowest rank of each label. */
export function distinct(offers: readonly Offer[]): Offer[] {
  const byLabel = new Map<string, Offer>();
  for (const o of offers) {
    const before = byLabel.get(o.label);
    if (!before || o.rank < before.rank) byLabel.set(o.label, o);
  }
  return [...byLabel.values()].sort((a, b) => a.rank - b.rank);
}
