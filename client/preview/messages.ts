/** What the panel and the page inside it say to each other. */
import type { SheetView } from "../sheet-view";

export interface ToPreview {
  /** The document whose sheet this is: the page keeps the place it was scrolled to while this stays the same. */
  readonly uri: string;
  readonly view: SheetView;
}

/** The pieces that the line under the cursor is about, by their identities. */
export interface MarkPieces {
  readonly marked: readonly string[];
}

/** The page has loaded and shows nothing yet. */
export const READY = "ready";

/** The reader asks for a line of the plan, counted from 1. */
export interface GoTo {
  readonly line: number;
}

/** What the page leaves behind for the next start of the editor. */
export interface PreviewState {
  readonly uri: string;
  readonly scroll: number;
}
