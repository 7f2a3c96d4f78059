/** What the panel and the page inside it say to each other. */
import type { Choices } from "../choices";
import type { SheetNews } from "../sheet-view";

export type ToPreview = ShowSheet | MarkLine;

export interface ShowSheet {
  /** The document whose sheet this is: the page keeps the place it was scrolled to while this stays the same. */
  readonly uri: string;
  readonly view: SheetNews;
  /** With the first sheet of a document, or of a page that shows nothing yet. */
  readonly ticks?: KnownTicks;
}

/** The boxes ticked before, by their identities. */
export interface KnownTicks {
  readonly ids: readonly string[];
  /** False where ticks cannot be kept: an unsaved text has no name to keep them under. */
  readonly keeps: boolean;
}

/** What the line under the cursor is about: pieces by their identities, and the first and the last line of its entry. */
export interface MarkLine {
  readonly marked: readonly string[];
  readonly lines?: readonly [first: number, last: number];
}

export type FromPreview =
  /** The page has loaded and shows nothing yet; these choices it kept from before. */
  | { readonly ready: Choices }
  | { readonly choices: Choices }
  | GoTo
  /** All ticks of a document. */
  | { readonly uri: string; readonly ticks: readonly string[] }
  | { readonly save: true };

/** The reader asks for a line of the plan, counted from 1. */
export interface GoTo {
  readonly line: number;
}

/** What the page leaves behind for the next time it comes into view, and for the next start of the editor. */
export interface PreviewState {
  /** Unsaid while no plan was shown. */
  readonly uri?: string;
  readonly scroll: number;
  readonly choices: Choices;
}
