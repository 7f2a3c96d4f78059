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
