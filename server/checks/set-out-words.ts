/** How the marks of screws are told at the bench: `from each end: 1-3/4"`, `from the top edge: 1-3/8" and 4-1/8"`. */
import { type Display, LENGTH, lengthText, roughly } from "../units";
import type { MarkedFrom } from "../worked";
import { allOf } from "./writing";

/** The distances, as the tape shows them. */
export const markLengths = ({ mm }: MarkedFrom, display: Display): string[] =>
  mm.map((d) => lengthText(roughly(LENGTH, d), display));

export function marksWords({ from, which, point }: MarkedFrom, lengths: readonly string[]): string {
  const side = which === "each" || which === "either" ? which : `the ${which}`;
  return `from ${side} ${point ? "long point" : from}: ${allOf(lengths)}`;
}

/** `16 screws at 8 crossings`, `1 screw at 1 crossing`. */
export function screwsInWords(screws: number, crossings: number): string {
  const of = (n: number, what: string): string => `${n} ${what}${n === 1 ? "" : "s"}`;
  return `${of(screws, "screw")} at ${of(crossings, "crossing")}`;
}
