/** Words of place lines: what builders say otherwise, and what stands behind a distance. */
import type { IToken } from "chevrotain";
import { type Here, leaveOut } from "./guesses";
import { complain, isWord, spanOf, swap, wordsOf } from "./messages";
import { Numeral } from "./tokens";
import type { Complaint } from "./tree";

/** What a builder says of a place, and the language's words for it. */
const PLACE_HABITS: readonly (readonly [string, string])[] = [
  ["vertical", "upright"],
  ["vertically", "upright"],
  ["standing", "upright"],
  ["horizontal", "flat"],
  ["lying flat", "flat"],
  ["on its edge", "on edge"],
  ["edgewise", "on edge"],
  ["centred", "centered"],
  ["in the middle of", "centered on"],
  ["aligned with", "flush with"],
  ["level with", "flush with"],
  ["even with", "flush with"],
  ["resting on", "on"],
  ["sitting on", "on"],
  ["on top of", "on"],
  ["touching", "on"],
  ["flush to", "flush with"],
  ["below", "under"],
  ["underneath", "under"],
  ["beneath", "under"],
  ["above", "on"],
  ["before", "in front of"],
  ["in back of", "behind"],
  ["facing", "wide face"],
  ["at the corners of", "at each corner of"],
  ["at corners of", "at each corner of"],
  ["at all corners of", "at each corner of"],
  ["leant", "leaning"],
  ["tilted", "leaning"],
  ["to the left of", "left of"],
  ["to the right of", "right of"],
];

/** The words at the start of a place clause that are said otherwise here, and how many they are. */
export function placeHabit(tokens: readonly IToken[]): { near: string; words: number } | undefined {
  for (const [said, near] of PLACE_HABITS) {
    const words = said.split(" ");
    if (words.every((w, i) => tokens[i]?.image.toLowerCase() === w)) return { near, words: words.length };
  }
  return undefined;
}

/** Words that a builder reaches for to set a row out. */
export const EVENLY: ReadonlySet<string> = new Set([
  "spread",
  "evenly",
  "even",
  "equally",
  "spaced",
  "distributed",
]);

/** `overhang past front of legs`: a place clause that opens with a name, as told by the word behind the value. */
export const opensWithValue = (entry: string, tokens: readonly IToken[]): boolean =>
  entry === "place" && isWord(tokens[0]) && tokens.slice(1).some((t) => BEHIND_VALUE.has(t.image));

/** Words that stand behind a distance or a count in a place clause. */
const BEHIND_VALUE: ReadonlySet<string> = new Set([
  "above",
  "below",
  "behind",
  "left",
  "right",
  "in",
  "past",
  "from",
  "up",
  "high",
  "across",
  "deep",
  "apart",
]);

/** Ways to say where that are said otherwise here: `on top of legs`, `spread along posts`, `4 at each corner`. */
export function* places({ entry, part, tokens, text }: Here): Generator<Complaint> {
  const [first, second] = tokens;
  if (entry !== "place" || part !== "clause" || !first || !second) return;
  if (first.image === "flush" && SIDES.has(second.image)) {
    const said = spanOf(first);
    yield complain(
      said,
      "not-understood",
      "word-near",
      { found: "flush", near: "flush with" },
      swap(said, "flush with"),
    );
  }
  const way = first.tokenType === Numeral ? WAYS.get(second.image) : undefined;
  if (way) {
    const said = spanOf(second);
    yield complain(said, "not-understood", "word-near", { found: second.image, near: way }, swap(said, way));
  }
  const habit = placeHabit(tokens);
  const along = first.image === "spread" && ALONG.has(second.image);
  const near = habit?.near ?? (along ? "spread over" : undefined);
  if (near) {
    const span = spanOf(first, tokens[(habit?.words ?? 2) - 1]);
    yield complain(
      span,
      "not-understood",
      "word-near",
      { found: wordsOf(text, span), near },
      swap(span, near),
    );
  }
  if (first.tokenType === Numeral && second.image === "at") {
    const slots = { found: first.image };
    yield complain(spanOf(first), "not-understood", "word-extra", slots, leaveOut(text, first));
  }
}

const SIDES: ReadonlySet<string> = new Set(["left", "right", "front", "back", "top", "bottom"]);
/** Which way a row runs, as builders say it: `3 wide`. */
const WAYS: ReadonlyMap<string, string> = new Map([
  ["wide", "across"],
  ["long", "across"],
  ["tall", "high"],
]);

const ALONG: ReadonlySet<string> = new Set(["along", "in", "on", "across", "inside", "within", "down", "up"]);
