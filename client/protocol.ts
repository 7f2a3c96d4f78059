/** What the extension and the language server say to each other beyond the Language Server Protocol. */
import { NotificationType, RequestType } from "vscode-languageclient";
import type { Choices } from "./choices";

/** How a sheet is to be shown. `language` is the tag of the editor's own language: the sheet is in it where it can be. */
export interface ShownAs extends Choices {
  readonly language: string;
}

/** The shop sheet of one plan; `style` is CSS. */
export interface SheetAnswer {
  readonly title: string;
  /** Tag of the language it is written in. */
  readonly language: string;
  /** Its sections, under names of their own: each one element of HTML with all text escaped, without scripts or styles. */
  readonly parts: readonly { readonly name: string; readonly html: string }[];
  readonly style: string;
  readonly state: "good" | "has errors";
  /** The version of the document that the sheet was worked out from. */
  readonly version: number;
  /** The line of the first error, counted from 1. */
  readonly brokenAt?: number;
  /** All drawings are of this version; else ask again, without `soon`. */
  readonly complete: boolean;
}

/** The page of the manual about one kind of problem. */
export interface ProblemPage {
  readonly code: string;
  readonly title: string;
  readonly markdown: string;
}

/** Which version of a document something is about. */
export interface OfVersion {
  readonly uri: string;
  readonly version: number;
}

export interface Worked extends OfVersion {
  readonly counts: Counts;
}

/** How many problems of each class a plan has, and how many things were not looked at. */
export interface Counts {
  readonly errors: number;
  readonly hazards: number;
  readonly warnings: number;
  readonly hints: number;
  readonly unchecked: number;
}

/** Something that was not looked at, in words; the line, counted from 1, of the document it is about, where there is one. */
export interface NotChecked {
  readonly what: string;
  readonly why: string;
  readonly uri?: string;
  readonly line?: number;
}

/** How the layouts of a plan stand. */
export interface LayoutsStanding extends OfVersion {
  /** `none`: there is nothing to lay out. */
  readonly state: "looking" | "proven" | "bounded" | "none";
  /** How many stocks are still looked at. */
  readonly looking: number;
  /** All stocks have their prices: it is about money, else about wood too. */
  readonly priced: boolean;
  /** What all of it may be over the least there can be: money, and lengths and areas of what has no price; unsaid while it is not known. */
  readonly over?: readonly string[];
}

/** What the server is told when it starts. */
export interface StartOptions {
  /** Problem codes link to `<pageScheme>:/<code>.md`. */
  readonly pageScheme: string;
  /** The setting `sawbuck.shopFile` as typed; empty where it is not set. */
  readonly shopFile: string;
  /** Hovers may hold pictures as `data:` addresses. */
  readonly pictures: true;
  /** There are the commands of the extension, and those of its editor. */
  readonly commands: true;
  /** The editor answers `sawbuck/readFile`. */
  readonly readsFiles: true;
  /** The editor answers `sawbuck/plansBelow`. */
  readonly listsPlans: true;
  /** The text of the program that looks for layouts, for a server that cannot find it by itself. */
  readonly layouts?: string;
  /** The command that opens the list of suggestions anew: run behind one that needs more after it. */
  readonly offerAgain: string;
}

/** A file as the editor read it; in words why there is none. */
export type FileRead = { readonly text: string } | { readonly refused: string };

/** Asked by the server, of a file that is not on a disk of its own. */
export const ReadFileRequest = new RequestType<{ readonly uri: string }, FileRead, void>("sawbuck/readFile");

/** Asked by the server, of a folder that is not on a disk of its own: the addresses of all plan files below it. */
export const PlansBelowRequest = new RequestType<
  { readonly uri: string },
  { readonly uris: readonly string[] },
  void
>("sawbuck/plansBelow");

/**
 * Answers null for a document that has no sheet. `soon`: rather some drawings of before than a wait for all of them;
 * without it null too when the text has changed meanwhile.
 */
export const SheetRequest = new RequestType<
  { readonly uri: string; readonly soon: boolean } & ShownAs,
  SheetAnswer | null,
  void
>("sawbuck/sheet");

/** The content of a file: text, or bytes in base 64; in words why there is none. */
export type SheetFile =
  | { readonly text: string }
  | { readonly base64: string }
  | { readonly refused: string };

/** The shop sheet in one of the formats of sheet-formats.ts; null for a document without one. */
export const SheetFileRequest = new RequestType<
  { readonly uri: string; readonly format: string } & ShownAs,
  SheetFile | null,
  void
>("sawbuck/sheetFile");

/** What a plan became since the last commit, as a sheet: in words why there is nothing to compare with. */
export type Compared =
  | Pick<SheetAnswer, "title" | "language" | "parts" | "style" | "version">
  | { readonly refused: string };

/** Answers null for a document that is not open, and for a text that has changed meanwhile. `language` as in ShownAs. */
export const CompareRequest = new RequestType<
  { readonly uri: string; readonly language: string },
  Compared | null,
  void
>("sawbuck/compare");

/** A plan's measuring-up slip as it is filled in. */
export interface SlipAnswer extends Pick<SheetAnswer, "title" | "language" | "parts" | "style" | "version"> {
  /** How to fill it in, under the title. */
  readonly key: string;
  readonly rows: readonly SlipRow[];
}

/** One thing to measure: its name, then in words what it is called, what the plan says, its bounds, and what is wrong with what was typed. */
export interface SlipRow {
  readonly what: string;
  readonly number: number;
  readonly label: string;
  readonly now: string;
  /** Empty where there are none. */
  readonly bounds: string;
  readonly wrong?: string;
}

/** What was typed into a slip, by the names of its rows. */
export type Measured = Readonly<Record<string, string>>;

export interface OfSlip {
  readonly uri: string;
  readonly language: string;
  readonly measured: Measured;
}

/** Answers null for a document that is not open, and for a text that has changed meanwhile. */
export const SlipRequest = new RequestType<OfSlip, SlipAnswer | null, void>("sawbuck/slip");

/** Writes the rows that can be read into the plan; how many were written. Null as for SlipRequest. */
export const SlipWriteRequest = new RequestType<OfSlip, { readonly written: number } | null, void>(
  "sawbuck/slipWrite",
);

/**
 * What a line is about, counted from 1: the identities of its placed pieces, to be marked in the drawing, and the first and
 * the last line of its entry, which rows of the sheet are known by.
 */
export const PiecesAtRequest = new RequestType<
  { readonly uri: string; readonly line: number },
  { readonly pieces: readonly string[]; readonly lines?: readonly [first: number, last: number] },
  void
>("sawbuck/piecesAt");

export const ProblemPagesRequest = new RequestType<object, { readonly pages: readonly ProblemPage[] }, void>(
  "sawbuck/problemPages",
);

/** Null for a document that is not open. */
export const NotCheckedRequest = new RequestType<
  { readonly uri: string },
  { readonly entries: readonly NotChecked[] } | null,
  void
>("sawbuck/notChecked");

/** Sent by the server after each time it has worked a document out. */
export const WorkedNotification = new NotificationType<Worked>("sawbuck/worked");

/** Sent by the server whenever that has changed, and for each version once nobody types. */
export const LayoutsNotification = new NotificationType<LayoutsStanding>("sawbuck/layouts");
