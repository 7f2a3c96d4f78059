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

export interface Worked {
  readonly uri: string;
  readonly version: number;
}

/** How the layouts of a plan stand. */
export interface LayoutsStanding extends Worked {
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
  /** The command that opens the list of suggestions anew: run behind one that needs more after it. */
  readonly offerAgain: string;
}

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

/** Sent by the server after each time it has worked a document out. */
export const WorkedNotification = new NotificationType<Worked>("sawbuck/worked");

/** Sent by the server whenever that has changed, and for each version once nobody types. */
export const LayoutsNotification = new NotificationType<LayoutsStanding>("sawbuck/layouts");
