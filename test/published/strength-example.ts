/** A number printed somewhere outside, and how the program comes to it. */

export interface PublishedExample {
  readonly topic:
    | "beams"
    | "spans"
    | "sections"
    | "adjustments"
    | "withdrawal"
    | "lateral"
    | "soil"
    | "movement"
    | "tipping"
    | "gravity"
    | "other";
  readonly name: string;
  /** A printed formula or a worked example; or one row of a table. */
  readonly kind: "formula" | "table row";
  readonly source: {
    readonly document: string;
    readonly edition?: string;
    readonly table?: string;
    /** Who reproduced it, where a copy was read; "from memory" where none was. */
    readonly via?: string;
  };
  readonly printed: number;
  readonly unit: string;
  /** In the same unit: half of the last digit printed, or what the rounding of the example's own steps comes to. */
  readonly tolerance: number;
  readonly work: () => number;
}
