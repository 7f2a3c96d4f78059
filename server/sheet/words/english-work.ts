/** What the sheet says of finishes, liners and steps, in English. */

import { openingWords, stapleWords, tinWords } from "../../checks/lining-words";
import type { Display } from "../../units";
import { assumedWords, type FinishNeed } from "../../worked";

export const ENGLISH_WORK = {
  /** Sold as: `1 qt tin`, `13' off the roll`. */
  tin: (size: string) => `${size} tin`,
  offRoll: (length: string) => `${length} off the roll`,
  tinsOf: (need: FinishNeed, _display: Display) => tinWords(need),
  openingOf: openingWords,
  staplesOf: stapleWords,
  hiddenLeftOut: (area: string) => `what lies on other wood is left out: ${area}`,
  endGrain: (area: string) => `${area} of it is end grain, which drinks more`,
  atLeast: (amount: string) => `or, where the finish goes farther, ${amount}`,
  countedWhole: (parts: string) => `counted whole, since they stand nowhere: ${parts}`,
  taken: "taken for granted: ",
  assumed: assumedWords,
  tins: (tins: string) => `to buy: ${tins}`,
  oneSheet: "one sheet",
  strip: "strip",
  foldOver: (fold: string) => `${fold} of it folds over the rim on every side`,
  overlapped: (overlap: string) => `each strip lies ${overlap} over the next`,
  /** Liners of several boxes, or copies, that one length of the roll gives. */
  besideOnRoll: (boxes: readonly string[], length: string) =>
    `side by side on ${length} of the roll: ${boxes.join(", ")}`,
  offTheRoll: (length: string) => `${length} off the roll for one`,
  staples: (how: string) => `staples: ${how}`,
  finishedWith: (finish: string, coats: string) => `${finish}, ${coats}`,
  /** Minutes as a builder says them: `40 min`, `1 h 25 min`, `12 h`, `3 days`. */
  time: (minutes: number) => {
    const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
    if (minutes >= 48 * 60 && minutes % (24 * 60) === 0) return `${minutes / (24 * 60)} days`;
    return [hours > 0 ? `${hours} h` : "", rest > 0 || hours === 0 ? `${rest} min` : ""]
      .filter(Boolean)
      .join(" ");
  },
  coats: (n: number) => `${n} coat${n === 1 ? "" : "s"}`,
  linedWith: (box: string, liner: string) => `${box} with ${liner}`,
  fitNow: (part: string) => `${part}: hold it in its place, mark it there and cut it`,
  lifts: (what: string, weight: string) => `${what}, ${weight}`,
  lifted: { piece: "a piece", unit: "what was joined before", assembly: "the assembly" },
  liftOf: (is: string, part: string) => `${is}: ${part}`,
};
