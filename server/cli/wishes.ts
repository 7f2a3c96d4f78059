/** `--set` and `--swap`: a plan adapted to another place or other wood. */
import type { Wish } from "../exchange";
import type { Read, Wrong } from "./options";

export const WISHES = ["set", "swap"];

/** What is wished for, in the order of the words. */
export function wishesIn(read: Read): readonly Wish[] | Wrong {
  const wishes: Wish[] = [];
  for (const word of read.all("set")) {
    const [what, value] = parted(word);
    if (value === undefined)
      return { wrong: `--set is NAME=VALUE, such as rim-height=28"; “${word}” is not.` };
    wishes.push({ kind: "set", what, value });
  }
  for (const word of read.all("swap")) {
    const [old, now] = parted(word);
    if (now === undefined) return { wrong: `--swap is OLD=NEW, such as 1x4=18x95; “${word}” is not.` };
    wishes.push({ kind: "swap", old, new: now });
  }
  return wishes;
}

function parted(word: string): [string, string | undefined] {
  const at = word.indexOf("=");
  const [before, behind] = [word.slice(0, at).trim(), word.slice(at + 1).trim()];
  return at < 0 || before === "" || behind === "" ? [word, undefined] : [before, behind];
}
