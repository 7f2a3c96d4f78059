/** What was not looked at, and why, in words: what is on no drawing first, then what the plan's working out left open. */
import { uncheckedText } from "../checks";
import type { At } from "../plan";
import type { Worked } from "../worked";
import { notDrawn } from "./gather-space";
import type { SheetWords } from "./words";

/** Both without a capital and a full stop; `at`: the line it is about, where it is about one. */
export interface LeftOpen {
  readonly what: string;
  readonly why: string;
  readonly at?: At;
}

export const leftOpen = (worked: Worked, words: SheetWords): LeftOpen[] => [
  ...notDrawn(worked, words),
  ...worked.unchecked.map((u) => ({ ...uncheckedText(u, words.messages), ...(u.at && { at: u.at }) })),
];
