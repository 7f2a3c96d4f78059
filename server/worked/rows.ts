/** Rows of like pieces side by side, and whether their gaps are even. */
import { TOUCHING } from "../solid/contact";
import type { Piece } from "./pieces";
import type { Space } from "./space";

export interface UnevenRow {
  readonly part: string;
  readonly axis: 0 | 1 | 2;
  /** In order; places among all pieces. */
  readonly pieces: readonly number[];
  /** mm between neighbours, one fewer than there are pieces. */
  readonly gaps: readonly number[];
}

/** Gaps that differ by less than this, in mm, look even: 1/16". */
export const EVEN = 1.5875;
/** Gaps that differ by more than this, in mm, were meant to: 1/2". */
const MEANT = 12.7;

/** Rows of three or more pieces of one part whose gaps differ, but by so little that they were likely meant to be even. */
export function unevenRows(space: Space): UnevenRow[] {
  const byPart = new Map<string, number[]>();
  space.pieces.forEach(({ part }, i) => {
    const same = byPart.get(part);
    if (same) same.push(i);
    else byPart.set(part, [i]);
  });
  return [...byPart].flatMap(([part, same]) => (same.length < 3 ? [] : unevenOf(part, same, space)));
}

function unevenOf(part: string, same: readonly number[], space: Space): UnevenRow[] {
  const found = ([0, 1, 2] as const).flatMap((axis) =>
    rowsAlong(axis, same, space).flatMap((row): UnevenRow[] => {
      if (row.length < 3) return [];
      const gaps = row.slice(1).map((i, n) => low(space, i, axis) - high(space, row[n]!, axis));
      const differ = Math.max(...gaps) - Math.min(...gaps);
      const uneven = Math.min(...gaps) > TOUCHING && differ > EVEN + TOUCHING && differ < MEANT - TOUCHING;
      return uneven ? [{ part, axis, pieces: row, gaps }] : [];
    }),
  );
  return found.sort((a, b) => Math.min(...a.pieces) - Math.min(...b.pieces) || a.axis - b.axis);
}

/** Pieces that stand alike in the two other directions, each row in its order along the axis. */
function rowsAlong(axis: 0 | 1 | 2, same: readonly number[], space: Space): number[][] {
  const apart = (a: number, b: number): number => beside(space.pieces[a]!, space.pieces[b]!, axis);
  const rows: number[][] = [];
  for (const i of [...same].sort((a, b) => apart(a, b) || low(space, a, axis) - low(space, b, axis))) {
    const row = rows.at(-1);
    if (row && apart(row[0]!, i) === 0) row.push(i);
    else rows.push([i]);
  }
  return rows;
}

const low = (space: Space, i: number, axis: 0 | 1 | 2): number => space.pieces[i]!.bounds.least[axis];
const high = (space: Space, i: number, axis: 0 | 1 | 2): number => space.pieces[i]!.bounds.most[axis];

/** How two pieces stand to each other in the two other directions: 0 for those in one row, else below or above it. */
function beside({ bounds: a }: Piece, { bounds: b }: Piece, axis: 0 | 1 | 2): number {
  const [u, v] = OTHERS[axis];
  return (
    tenths(a.least[u]) - tenths(b.least[u]) ||
    tenths(a.most[u]) - tenths(b.most[u]) ||
    tenths(a.least[v]) - tenths(b.least[v]) ||
    tenths(a.most[v]) - tenths(b.most[v])
  );
}

const OTHERS = [
  [1, 2],
  [0, 2],
  [0, 1],
] as const;

/** Tenths of a millimetre. Set a little aside, since many fractions of an inch lie just where rounding turns. */
const tenths = (mm: number): number => Math.round(mm * 10 + 0.3);
