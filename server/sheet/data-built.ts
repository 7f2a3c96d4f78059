/** What the sheet tells of the thing as it was built. */
import type { Place } from "./data";

/** A value with the unit it is counted in. */
export interface SheetValue {
  readonly value: number;
  readonly unit: string;
  readonly text: string;
}

/** That it was built, what came out otherwise then, and what wear was found since. */
export interface SheetBuilt {
  /** Year, month and day, as the plan says it. */
  readonly date: string;
  /** By whom, or empty. */
  readonly by: string;
  /** Measures and lengths of parts; `planned` is null where it is not known. */
  readonly measured: readonly {
    /** "rim-height", "length of leg". */
    readonly what: string;
    readonly planned: SheetValue | null;
    readonly built: SheetValue;
    readonly because: string;
  }[];
  /** Boards and sheets that took the place of others. */
  readonly boards: readonly { readonly planned: string; readonly used: string; readonly because: string }[];
  /** What else was done otherwise, in words. */
  readonly changed: readonly string[];
  readonly wear: readonly { readonly date: string; readonly words: string }[];
  readonly place: Place;
}
