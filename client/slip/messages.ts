/** What the measuring-up slip's panel and the page inside it say to each other. */
import type { Measured, SlipAnswer } from "../protocol";

export type ToSlip =
  | {
      /** The plan whose slip this is: what was typed belongs to it. */
      readonly uri: string;
      readonly slip: Omit<SlipAnswer, "version">;
    }
  /** One sentence above the slip; empty where there is nothing to say. */
  | { readonly notice: string }
  /** What was typed stands in the plan now. */
  | { readonly written: true };

export type FromSlip =
  /** The page has loaded and shows nothing yet; of which plan it kept what was typed. */
  | { readonly ready: SlipState }
  | SlipState
  /** Into the plan with it. */
  | { readonly write: SlipState };

/** What was typed so far; it stays while the panel is out of sight. */
export interface SlipState {
  readonly uri: string;
  readonly measured: Measured;
}
