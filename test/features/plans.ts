/** Plans for the features' tests: fixtures from files, and short ones with the cursor marked by ‸. */
import { readFileSync } from "node:fs";
import type { Reader } from "../../server/plan";
import { type Evaluated, evaluate } from "../../server/service";

export const PLAN = "plan.sawbuck";

export const fixture = (name: string): string =>
  readFileSync(new URL(`plans/${name}.sawbuck`, import.meta.url), "utf8");

/** Files in memory by name; paths are names. */
export const memory =
  (files: Readonly<Record<string, string>>): Reader =>
  (path) => {
    const text = Object.hasOwn(files, path) ? files[path] : undefined;
    return text === undefined ? { file: path, refused: "there is no such file" } : { file: path, text };
  };

export const worked = (text: string, files: Readonly<Record<string, string>> = {}): Evaluated =>
  evaluate(PLAN, text, memory(files));

/** A plan whose text marks the cursor with ‸. */
export function atCaret(
  marked: string,
  files: Readonly<Record<string, string>> = {},
): { readonly plan: Evaluated; readonly offset: number } {
  const offset = marked.indexOf("‸");
  if (offset < 0) throw new Error("no ‸ in the text");
  return { plan: worked(marked.replace("‸", ""), files), offset };
}

/** Places in a text, the end just past the last letter. */
interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** A text whose ranges are marked by ⟦ and ⟧, without its marks; the ranges in the order in which they begin. */
export function unmarked(marked: string): { readonly text: string; readonly ranges: Stretch[] } {
  const open: { start: number; end: number }[] = [];
  const ranges: { start: number; end: number }[] = [];
  let text = "";
  for (const letter of marked) {
    if (letter === "⟦") {
      const range = { start: text.length, end: -1 };
      open.push(range);
      ranges.push(range);
    } else if (letter === "⟧") {
      const range = open.pop();
      if (!range) throw new Error("a ⟧ without its ⟦");
      range.end = text.length;
    } else text += letter;
  }
  if (open.length > 0) throw new Error("a ⟦ without its ⟧");
  return { text, ranges };
}

/** A text with its ranges marked by ⟦ and ⟧: what `unmarked` reads. */
export function withMarks(text: string, ranges: readonly Stretch[]): string {
  const signs = ranges.flatMap(({ start, end }) => [
    { at: start, sign: "⟦", rank: end === start ? 1 : 2 },
    { at: end, sign: "⟧", rank: end === start ? 1.5 : 0 },
  ]);
  signs.sort((a, b) => b.at - a.at || b.rank - a.rank);
  return signs.reduce((all, { at, sign }) => all.slice(0, at) + sign + all.slice(at), text);
}
