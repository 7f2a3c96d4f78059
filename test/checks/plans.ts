/** Plans that have a problem: the pages' own examples and the gallery of mistakes. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { CHECKS, type Problem, problemText } from "../../server/checks";
import type { Reader } from "../../server/plan";
import { type Evaluated, evaluate } from "../../server/service";

export const nothing: Reader = (path) => ({ file: path, refused: "there is no such file" });
export const run = (text: string, read: Reader = nothing): Evaluated => evaluate("plan.sawbuck", text, read);
export const codesOf = (text: string): string[] => [...new Set(run(text).problems.map((p) => p.code))].sort();

/** The `sawbuck` blocks of a page. NUL stands for the byte that no page can hold. */
export const blocksOf = (page: string): string[] =>
  [...page.matchAll(/```sawbuck\n([\s\S]*?)```/g)].map((m) => m[1]!.replace("NUL", "\0"));

const FOLDER = join(__dirname, "../../samples/mistakes");
export const MISTAKES = readdirSync(FOLDER)
  .sort()
  .map((name) => ({ name, text: readFileSync(join(FOLDER, name), "utf8") }));

export const EXAMPLES = CHECKS.flatMap((c) =>
  blocksOf(c.page).map((text, i) => ({ name: `${c.code} ${i + 1}`, text })),
);

/** A problem as the command line tells it, every text of it. */
export function told(p: Problem, { worked }: Evaluated): string {
  const { display } = worked.settings;
  const lines = [`${p.class}: ${problemText(p.code, p, display)}`];
  for (const r of p.related) lines.push(`  see: ${problemText(p.code, r, display)}`);
  for (const a of p.assumed) lines.push(`  taken for granted: ${problemText(p.code, a, display)}`);
  for (const c of p.cures) lines.push(`  cure: ${problemText(p.code, c, display)}`);
  return lines.join("\n");
}
