/** One value printed in a published source, and what works out the same here. */
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
  readonly kind: "formula" | "table row";
  readonly source: {
    readonly document: string;
    readonly edition?: string;
    readonly table?: string;
    readonly via?: string;
  };
  readonly printed: number;
  readonly unit: string;
  /** Absolute. */
  readonly tolerance: number;
  readonly work: () => number;
}
