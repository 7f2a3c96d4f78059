/** What wind finds of some blocks that stand one behind another: the area they show together, and the middle of it. */

/** A block as wind sees it: from where to where across, and from where to where upward; mm. */
export interface Shown {
  readonly across: readonly [from: number, to: number];
  readonly up: readonly [from: number, to: number];
}

export interface Sail {
  /** mm2, what stands behind something else counted once. */
  readonly area: number;
  /** mm above the floor: the middle of that area; 0 where there is none. */
  readonly height: number;
}

/** The area that these blocks show together. Never throws; a block without size shows nothing. */
export function sailOf(blocks: readonly Shown[]): Sail {
  const levels = [...new Set(blocks.flatMap((b) => b.up))].sort((a, b) => a - b);
  const rows: [number, number][][] = levels.map(() => []);
  const rowOf = new Map(levels.map((z, i) => [z, i]));
  for (const { across, up } of blocks)
    for (let i = rowOf.get(up[0])!; i < rowOf.get(up[1])!; i++) rows[i]!.push([...across]);
  let area = 0;
  let moment = 0;
  rows.forEach((row, i) => {
    if (row.length === 0) return;
    const [from, to] = [levels[i]!, levels[i + 1]!];
    const shown = covered(row) * (to - from);
    area += shown;
    moment += (shown * (from + to)) / 2;
  });
  return { area, height: area > 0 ? moment / area : 0 };
}

/** How much of a line some stretches cover together. */
function covered(stretches: [number, number][]): number {
  let sum = 0;
  let reached = -Infinity;
  for (const [from, to] of stretches.sort((a, b) => a[0] - b[0])) {
    sum += Math.max(0, to - Math.max(from, reached));
    reached = Math.max(reached, to);
  }
  return sum;
}
