/** Plans of what weather does, and what is found in them. */
import type { Problem } from "../../server/checks";
import { uncheckedText } from "../../server/checks";
import { run } from "../checks/plans";

export const OUTDOORS = "plan Thing\n  outdoors\n";
export const ON_SLABS = "plan Thing\n  outdoors\n  floor limit 137 psf by the mason\n";

export const of = (code: string, text: string): Problem[] =>
  run(text).problems.filter((p) => p.code === code);
export const says = (code: string, text: string): string[] => of(code, text).map((p) => p.says);

/** What was not looked at, of these words, and why. */
export const unlooked = (text: string, word: RegExp): string[] =>
  run(text)
    .worked.unchecked.map((u) => uncheckedText(u))
    .map(({ what, why }) => `${what}: ${why}`)
    .filter((line) => word.test(line));
