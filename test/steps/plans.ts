/** The samples with their own steps and without, and what their steps come to. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { diskReader } from "../../server/lsp/disk";
import { type Evaluated, evaluate } from "../../server/service";

export const FOLDER = join(__dirname, "../../samples");

/** The text of a plan without its step entries. */
export const withoutSteps = (text: string): string => text.replace(/^step .*\n(?:[ \t].*\n)*/gm, "");

/** The samples that place pieces. */
export const SAMPLES = readdirSync(FOLDER)
  .filter((f) => f.endsWith(".sawbuck"))
  .map((name) => ({ name, text: readFileSync(join(FOLDER, name), "utf8") }))
  .filter(({ text }) => /^place /m.test(text));

/** A plan that lies beside the samples, and may use their shop. */
export const beside = (text: string): Evaluated => evaluate(join(FOLDER, "plan.sawbuck"), text, diskReader);

/** `1. Build it: 4 leg, 2 rail; 8 screws`, a line for each step. */
export function shownSteps({ worked: { steps, space } }: Evaluated): string[] {
  return steps.steps.map((step, n) => {
    const counts = new Map<string, number>();
    for (const i of step.fresh) {
      const { part } = space.pieces[i]!;
      counts.set(part, (counts.get(part) ?? 0) + 1);
    }
    const fresh = [...[...counts].map(([part, count]) => `${count} ${part}`), ...step.parts].join(", ");
    const screws = step.joints.reduce((sum, d) => sum + (d.count ?? 0), 0);
    const glued = step.glues.reduce((sum, d) => sum + d.crossings.length, 0);
    return [
      `${n + 1}. ${step.title}${fresh ? `: ${fresh}` : ""}`,
      ...(screws > 0 ? [`${screws} screws`] : []),
      ...(glued > 0 ? [`${glued} glued`] : []),
    ].join("; ");
  });
}
