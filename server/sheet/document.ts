/**
 * The sheet as something to be read: sections of blocks, in one language, for one reader. The page, the PDF, Markdown and
 * plain text are written from this and from nothing else, so that they say the same in the same order. Plain data, but
 * for drawings, which are made when a writer asks for them.
 */
import type { Drawing } from "./display";

export interface SheetDocument {
  /** Tag of the language it is written in, `en`. */
  readonly language: string;
  readonly title: string;
  /** What ticks are kept under, the same in every language: the plan's title, if it has one, and the name of its file. */
  readonly plan: string;
  /** Under the title: the file, and how its lengths are written. */
  readonly under: string;
  readonly sections: readonly Section[];
  readonly words: WriterWords;
}

/** What writers say themselves. */
export interface WriterWords {
  /** `2 of 5`, at the foot of a page. */
  readonly page: (page: number, of: number) => string;
  /** Said by a box to tick, to who cannot see it: `leg / front left: cut`. */
  readonly tick: (what: string, done: string) => string;
  /** Said by a drawing that could not be written as a picture. */
  readonly drawing: (title: string) => string;
  /** Behind a label, before a blank. */
  readonly colon: string;
  /** Between things on one line that are of several words each. */
  readonly between: string;
}

export interface Section {
  /** The same in every language: `cut-list`. A class in HTML. */
  readonly name: string;
  readonly heading: string;
  readonly blocks: readonly Block[];
  /** Begins a page of its own on paper. */
  readonly newPage?: boolean;
  /** Kept on one page of paper where it fits. */
  readonly onePage?: boolean;
}

export type Block = Paragraph | Terms | List | Table | Figure | Figures | Group | Progress;

/** Words on one line or wrapped: plain, or each run in its own style. */
export type Words = string | readonly Run[];

export interface Run {
  readonly text: string;
  /** small: said beside, in smaller type. blank: a line to write on, `text` being what it is for. */
  readonly style?: "strong" | "small" | "blank";
  /** Its language, where that is not the document's. */
  readonly language?: string;
  /** What it leads to on the same page, by its id, where the writer can show that. */
  readonly to?: string;
}

export interface Paragraph {
  readonly kind: "paragraph";
  /** key: how to read what follows. caution: beside a figure or a hazard. */
  readonly style: "plain" | "key" | "caution" | "source";
  readonly words: Words;
  /** Said instead where pictures are made of letters. */
  readonly letters?: Words;
}

/** Terms and what they are, side by side. */
export interface Terms {
  readonly kind: "terms";
  /** Side by side, read down the first; unsaid, one. */
  readonly columns?: 2;
  /** The words are as light as what they stand in; unsaid, they are heavy. */
  readonly light?: true;
  readonly rows: readonly { readonly label: string; readonly words: Words }[];
}

export interface List {
  readonly kind: "list";
  /** marks: short ones, side by side in columns. leads: one under the other, the lead hanging. */
  readonly style: "bullets" | "numbers" | "ticks" | "marks" | "leads";
  /** Side by side, read down the first; unsaid, one, but for marks. */
  readonly columns?: 2;
  readonly items: readonly Item[];
}

export interface Item extends Pointing {
  /** Boxes to tick before it. */
  readonly ticks?: readonly Tick[];
  /** What stands before it and apart: a mark, the class of a problem. */
  readonly lead?: string;
  /** The lead is framed: a hazard. */
  readonly framed?: boolean;
  readonly words: Words;
  /** Under it, smaller. */
  readonly below?: readonly Words[];
}

/** Where a click leads: a line of the plan, counted from 1. */
export interface Pointing {
  readonly line?: number;
}

/** A box to tick, kept by its identity: `cut/leg / front left`. */
export interface Tick {
  readonly id: string;
  /** `leg / front left`. */
  readonly what: string;
  /** `cut`, `bought`, `done`. */
  readonly done: string;
  /** How many pieces it stands for; unsaid, one. */
  readonly pieces?: number;
}

export interface Table {
  readonly kind: "table";
  /** The same in every language: `cuts`. A class in HTML. */
  readonly name: string;
  readonly columns: readonly Column[];
  readonly groups: readonly TableGroup[];
  /** Sums under the rows. */
  readonly sums: readonly { readonly label: string; readonly value: string }[];
}

export interface Column {
  /** Unique in its table, the same in every language: `length`. A class in HTML. */
  readonly name: string;
  readonly head: string;
  /** Numbers and money end on one line. wide: takes what room is left, and goes under its row where there is none. */
  readonly fit: "text" | "number" | "tick" | "mark" | "wide";
  /** Said before the cell where there is no head, on a phone. */
  readonly label?: string;
}

export interface TableGroup {
  /** Over its rows; empty for none. */
  readonly title: string;
  readonly source: string;
  readonly rows: readonly Row[];
}

export interface Row extends Pointing {
  /** Goes on from the row above, and stays on its page. */
  readonly goesOn?: true;
  /** One for each column; a list of words stands one under the other; empty where there is nothing. */
  readonly cells: readonly Cell[];
}

export type Cell =
  | { readonly words: Words }
  | { readonly lines: readonly Words[] }
  | { readonly ticks: readonly Tick[] };

export interface Figure extends Pointing {
  readonly kind: "figure";
  readonly caption: string;
  readonly drawing: () => Drawing;
  /** In letters, for a terminal, lines of at most `width` columns; nothing where words about it would do. */
  readonly letters?: (width: number) => readonly string[];
  /** Never made smaller on a screen, so that it stays to one scale with those around it. */
  readonly toScale?: boolean;
  /** It shows the plan as it was before the last change. */
  readonly old?: boolean;
  /** Where a click on one of its items leads. */
  readonly links?: Links;
  /** A small picture beside the text that follows it in its group. */
  readonly beside?: boolean;
}

/** Figures that stand side by side, as many as the width takes. */
export interface Figures {
  readonly kind: "figures";
  readonly figures: readonly Figure[];
}

/** The lines to which the items of a drawing lead. */
export interface Links {
  /** By the identity of a piece: the line that places it, the line of its part. */
  readonly places: ReadonlyMap<string, number>;
  readonly parts: ReadonlyMap<string, number>;
  /** The same for the same lines. */
  readonly key: string;
}

/** A part of a section with a heading of its own: a stock's layouts, a step. Kept together on paper where it fits. */
export interface Group extends Pointing {
  readonly kind: "group";
  /** The same in every language: `step`. A class in HTML. */
  readonly name: string;
  readonly ticks?: readonly Tick[];
  readonly heading: string;
  /** Its blocks may stand on different pages. */
  readonly loose?: true;
  readonly blocks: readonly Exclude<Block, Group>[];
}

/** How many boxes are still to be ticked: for a page that can count them. Paper leaves it out. */
export interface Progress {
  readonly kind: "progress";
  /** The first word of the ticks it counts: `cut`. */
  readonly of: string;
  /** With {left} and {all} where the numbers go. */
  readonly left: string;
  readonly untick: string;
  readonly putBack: string;
  readonly notKept: string;
}

/** The runs of words. */
export const runsOf = (words: Words): readonly Run[] =>
  typeof words === "string" ? [{ text: words }] : words;

/** The rows of terms by their labels: a row without one belongs to the row before it. */
export function labelled(
  rows: Terms["rows"],
): readonly { readonly label: string; readonly all: readonly Words[] }[] {
  const groups: { label: string; all: Words[] }[] = [];
  for (const { label, words } of rows) {
    const last = groups.at(-1);
    if (label === "" && last) last.all.push(words);
    else groups.push({ label, all: [words] });
  }
  return groups;
}

/** Words without their styles; a blank is a line to write on. */
export const plainWords = (words: Words, blank = "________"): string =>
  runsOf(words)
    .map(({ text, style }) => (style === "blank" ? blank : text))
    .join("");
