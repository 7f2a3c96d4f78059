/** What is taken for granted of finishes and liners where nothing says it: facts, and their words in English. */
import { cite, type Source, type Span } from "../trade";
import { type Display, lengthText, type Quantity } from "../units";

export type Assumption =
  /** How far a usual finish goes, in square feet to a gallon. */
  | {
      readonly kind: "spread";
      readonly finish: string;
      readonly smooth: Span;
      readonly rough: Span | undefined;
    }
  /** Hours that a coat dries. */
  | { readonly kind: "drying"; readonly hours: Span }
  | { readonly kind: "coats"; readonly coats: number }
  /** How many times what a face drinks. */
  | { readonly kind: "end grain"; readonly times: Span; readonly source: Source }
  /** How many times what planed wood drinks. */
  | { readonly kind: "rough wood"; readonly times: number; readonly source: Source }
  /** Parts that stand nowhere. */
  | { readonly kind: "whole pieces"; readonly parts: readonly string[] }
  /** Past the rim, and over each other. */
  | { readonly kind: "fold" | "overlap"; readonly length: Quantity; readonly source: Source }
  | { readonly kind: "sloping sides" }
  | { readonly kind: "by its name"; readonly roll: string; readonly holdsWater: boolean }
  /** From one to the next. */
  | {
      readonly kind: "staples";
      readonly least: Quantity;
      readonly most: Quantity;
      readonly source: Source;
    };

/** A sentence without its end. */
export function assumedWords(assumption: Assumption, display: Display): string {
  const long = (length: Quantity): string => lengthText(length, display);
  switch (assumption.kind) {
    case "spread": {
      const { finish, smooth, rough } = assumption;
      const goes = ({ low, high }: Span): string => `${low} to ${high} sqft per gal`;
      const spread = rough ? `${goes(smooth)}, on rough wood ${goes(rough)}` : goes(smooth);
      return `${finish} is taken to go ${spread} on a coat; what to buy is reckoned with the lesser`;
    }
    case "drying": {
      const { low, high } = assumption.hours;
      return `a coat is taken to dry ${high} h, the most of ${low} to ${high}`;
    }
    case "coats":
      return `${assumption.coats} coats, since neither the line nor its finish says`;
    case "end grain": {
      const { low, high } = assumption.times;
      return `end grain is taken to drink ${high} times what a face does, the most of ${low} to ${high}; ${cite(assumption.source)}`;
    }
    case "rough wood":
      return `rough wood is taken to drink ${assumption.times} times what planed wood does; ${cite(assumption.source)}`;
    case "whole pieces":
      return `the whole of every piece of ${assumption.parts.join(", ")} is counted, since no line says where they stand`;
    case "fold":
      return `${long(assumption.length)} past the rim on every side, since the line says no fold; ${cite(assumption.source)}`;
    case "overlap":
      return `strips lie ${long(assumption.length)} over each other, since the line says no overlap; ${cite(assumption.source)}`;
    case "sloping sides":
      return "its sides slope, so the larger of its rim and its bottom is taken with upright sides";
    case "by its name":
      return assumption.holdsWater
        ? `${assumption.roll} is taken to hold water, since its name is not that of a fabric or a mesh`
        : `${assumption.roll} is taken to let water through, by its name`;
    case "staples":
      return `staples ${long(assumption.least)} to ${long(assumption.most)} apart; ${cite(assumption.source)}`;
  }
}
