/** Plans that have a problem: the pages' own examples and the gallery of mistakes. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { CHECKS, type Problem, problemText } from "../../server/checks";
import type { Reader } from "../../server/plan";
import { type Evaluated, type EvaluateOptions, evaluate } from "../../server/service";

export const nothing: Reader = (path) => ({ file: path, refused: "there is no such file" });
export const run = (text: string, read: Reader = nothing, options: EvaluateOptions = {}): Evaluated =>
  evaluate("plan.sawbuck", text, read, options);
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

/** Four legs, two rails and four slats on them, screwed together. */
export const STAND = `part leg of 2x4, length 10"
part rail of 1x6, length 30"
part slat of 1x4, length 13-1/2"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
place slat front to back, flat, on rails, flush with front of rails, 4" in from left of legs, 4 across, 2" apart
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
fasten slat into rail edge, 1 #8 x 1-5/8" at each crossing, pilot 3/32"
`;
