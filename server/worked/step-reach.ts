/** Screws that hand and driver do not reach, though nothing stands behind them: deep down in a box whose walls are up. Millimetres. */

import { HAIRLINE } from "../solid/contact";
import { armReach } from "../trade";
import { readLiteral } from "../units";
import type { Box } from "./boxes";
import { boxPieces } from "./choose";
import type { DrivenIn } from "./step-joints";
import type { WorkStep } from "./steps";
import type { Worked } from "./work";

/** mm: how far into a closed-in place a hand with a driver gets. */
export const ARM = readLiteral(`${armReach.value}"`)!.approx;

export interface TooDeep {
  readonly step: WorkStep;
  readonly driven: DrivenIn;
  readonly box: Box;
  /** How far below the rim the deepest head is. */
  readonly depth: number;
  /** How many screws of the joint are too deep. */
  readonly screws: number;
  /** The last step that closed the box. */
  readonly closed: WorkStep;
}

/**
 * Screws whose heads are further below the rim of a box than an arm reaches, driven after all its walls and its bottom
 * are there, where nobody can climb in: the box is no wider than an arm is long.
 */
export function tooDeep(worked: Worked): TooDeep[] {
  const { steps, stepOf } = worked.steps;
  return worked.boxes.flatMap((box) => {
    if (!box.placed) return [];
    const { rim, low, high } = box.placed.room;
    const narrow = Math.min(...rim.map(({ from, to }) => to - from));
    if (high - low <= ARM || narrow > ARM) return [];
    const pieces = boxPieces(box.declared, worked.space, worked.scope);
    const at = pieces.map((i) => stepOf[i]);
    const bottom = box.declared.entry.clauses.some((c) => c.kind === "floor");
    const closedBelow = bottom || pieces.some((i) => worked.space.pieces[i]!.bounds.least[2] <= HAIRLINE);
    if (!closedBelow || at.some((s) => s === undefined)) return [];
    const last = Math.max(...at.map((s) => s!));
    return steps.slice(last + 1).flatMap((step) =>
      step.joints.flatMap((driven): TooDeep[] => {
        const depths = driven.screws.flatMap((n) => {
          const [x, y, z] = driven.joint.placed!.screws[n]!.start;
          const inside =
            x > rim[0].from - HAIRLINE &&
            x < rim[0].to + HAIRLINE &&
            y > rim[1].from - HAIRLINE &&
            y < rim[1].to + HAIRLINE;
          return inside && z > low - HAIRLINE && high - z > ARM ? [high - z] : [];
        });
        if (depths.length === 0) return [];
        const depth = Math.max(...depths);
        return [{ step, driven, box, depth, screws: depths.length, closed: steps[last]! }];
      }),
    );
  });
}
