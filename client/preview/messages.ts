/** What the panel and the page inside it say to each other. */
import type { SheetView } from "../sheet-view";

export interface ToPreview {
  /** The document whose sheet this is: the page keeps the place it was scrolled to while this stays the same. */
  readonly uri: string;
  readonly view: SheetView;
}

/** The page has loaded and shows nothing yet. */
export const READY = "ready";

/** What the page leaves behind for the next start of the editor. */
export interface PreviewState {
  readonly uri: string;
  readonly scroll: number;
}
