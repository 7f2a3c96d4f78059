/** In which step corners are measured: once what is measured is held together, and not while its frames lie apart. */
import { DisjointSets } from "../solid/disjoint-sets";
import type { SquareCheck } from "./square";
import type { DrivenIn } from "./step-joints";

/** Each check of corners in the first step in which all that it measures is there and joined into one; where no step joins it, as soon as it is there. */
export function squaresByStep(
  checks: readonly SquareCheck[],
  stepOf: readonly (number | undefined)[],
  driven: readonly (readonly DrivenIn[])[],
): SquareCheck[][] {
  const byStep: SquareCheck[][] = driven.map(() => []);
  for (const check of checks) {
    const at = check.pieces.map((i) => stepOf[i]);
    if (at.length === 0 || !at.every((s) => s !== undefined)) continue;
    byStep[Math.max(...at, joinedIn(check.pieces, driven) ?? 0)]!.push(check);
  }
  return byStep;
}

/** The first step after which joints hold all of these together; undefined where none does. */
function joinedIn(pieces: readonly number[], driven: readonly (readonly DrivenIn[])[]): number | undefined {
  const held = new DisjointSets<number>();
  const n = driven.findIndex((own) => {
    for (const { crossings } of own)
      for (const { first, through, into } of crossings)
        for (const other of [...through, into]) held.join(first, other);
    return pieces.every((i) => held.topOf(i) === held.topOf(pieces[0]!));
  });
  return n < 0 ? undefined : n;
}
