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

/** Four legs, two rails on them and slats over the rails. */
export const STAND = `part leg of 2x4, length 20"
part rail of 1x6, length 30"
part slat of 1x4, length 13-1/2"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
place slat front to back, flat, on rails, flush with front of rails, 4" in from left of legs, 4 across, 2" apart
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
fasten slat into rail edge, 1 #8 x 1-5/8" at each crossing
`;
