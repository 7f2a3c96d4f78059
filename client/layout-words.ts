/** What the status of the layouts says. */
import type { LayoutsStanding } from "./protocol";

export const LAYOUT_WORDS = {
  name: "Sawbuck Layouts",
  openSheet: "Open Shop Sheet",
  looking: "Layouts: looking for a cheaper way",
  lookingWithin: (over: string) => `Layouts: looking for a cheaper way (at most ${over} over)`,
  sorting: "Layouts: no cheaper way exists; the boards are being sorted",
  left: (stocks: number) => (stocks === 1 ? "1 stock is looked at" : `${stocks} stocks are looked at`),
  cheapest: "Layouts: no cheaper way exists, checked",
  least: "Layouts: no better way exists, checked",
  overCheapest: (over: string) => `Layouts: at most ${over} over the cheapest`,
  overLeast: (over: string) => `Layouts: at most ${over} more than the least`,
  unknown: "Layouts: the best that was found; a cheaper way may exist",
  and: " and ",
} as const;

/** How they stand, in a line; undefined where there is nothing to lay out. */
export function layoutText({ state, priced, over }: LayoutsStanding): string | undefined {
  const words = LAYOUT_WORDS;
  if (state === "none") return undefined;
  const gap = (over ?? []).join(words.and);
  if (state === "looking") {
    if (over === undefined) return words.looking;
    return gap === "" ? words.sorting : words.lookingWithin(gap);
  }
  if (state === "proven") return priced ? words.cheapest : words.least;
  if (gap === "") return words.unknown;
  return priced ? words.overCheapest(gap) : words.overLeast(gap);
}
