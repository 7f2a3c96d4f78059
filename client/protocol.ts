/** What the extension and the language server say to each other beyond the Language Server Protocol. */
import { NotificationType, RequestType } from "vscode-languageclient";

/** The shop sheet of one plan. `body` is a fragment of HTML with all text escaped, without scripts or styles; `style` is CSS. */
export interface SheetAnswer {
  readonly title: string;
  readonly body: string;
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

/** What the server is told when it starts. */
export interface StartOptions {
  /** Problem codes link to `<pageScheme>:/<code>.md`. */
  readonly pageScheme: string;
  /** The setting `sawbuck.shopFile` as typed; empty where it is not set. */
  readonly shopFile: string;
  /** Hovers may hold pictures as `data:` addresses. */
  readonly pictures: true;
}

/**
 * Answers null for a document that has no sheet. `soon`: rather some drawings of before than a wait for all of them;
 * without it null too when the text has changed meanwhile.
 */
export const SheetRequest = new RequestType<
  { readonly uri: string; readonly soon: boolean },
  SheetAnswer | null,
  void
>("sawbuck/sheet");

/** The identities of the placed pieces that a line is about, counted from 1: to be marked in the drawing. */
export const PiecesAtRequest = new RequestType<
  { readonly uri: string; readonly line: number },
  { readonly pieces: readonly string[] },
  void
>("sawbuck/piecesAt");

export const ProblemPagesRequest = new RequestType<object, { readonly pages: readonly ProblemPage[] }, void>(
  "sawbuck/problemPages",
);

/** Sent by the server after each time it has worked a document out. */
export const WorkedNotification = new NotificationType<Worked>("sawbuck/worked");
