/** Words that read from right to left, on lines that read from left to right. */
import type { Fragment } from "./lines";

/** It reads from right to left: the font sets its letters in that order, word by word. */
export const isReversed = (text: string): boolean => REVERSED.test(text);

/** Words from right to left that stand beside each other, in the order in which they are seen. */
export function asSeen(fragments: readonly Fragment[]): readonly Fragment[] {
  if (!fragments.some(({ text }) => isReversed(text))) return fragments;
  const seen: Fragment[] = [];
  for (let i = 0; i < fragments.length; i++) {
    let last = i;
    for (let n = i; n < fragments.length && isPart(fragments[n]!); n++)
      if (isReversed(fragments[n]!.text)) last = n;
    const run = fragments.slice(i, last + 1);
    seen.push(...(isReversed(run[0]!.text) ? run.reverse() : run));
    i = last;
  }
  return seen;
}

const isPart = ({ kind, text }: Fragment): boolean => kind === "text" && (text === " " || isReversed(text));

const REVERSED =
  /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Script=Samaritan}\p{Script=Mandaic}]/u;
