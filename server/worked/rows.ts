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
  const groups = new Map<string, { readonly axis: 0 | 1 | 2; readonly list: number[] }>();
  for (const i of same)
    for (const axis of [0, 1, 2] as const) {
      const key = `${axis} ${beside(space.pieces[i]!, axis)}`;
      const group = groups.get(key);
      if (group) group.list.push(i);
      else groups.set(key, { axis, list: [i] });
    }
  return [...groups.values()].flatMap(({ axis, list }): UnevenRow[] => {
    if (list.length < 3) return [];
    const row = [...list].sort((a, b) => low(space, a, axis) - low(space, b, axis));
    const gaps = row.slice(1).map((i, n) => low(space, i, axis) - high(space, row[n]!, axis));
    const differ = Math.max(...gaps) - Math.min(...gaps);
    const uneven = Math.min(...gaps) > TOUCHING && differ > EVEN + TOUCHING && differ < MEANT - TOUCHING;
    return uneven ? [{ part, axis, pieces: row, gaps }] : [];
  });
}

const low = (space: Space, i: number, axis: 0 | 1 | 2): number => space.pieces[i]!.bounds.least[axis];
const high = (space: Space, i: number, axis: 0 | 1 | 2): number => space.pieces[i]!.bounds.most[axis];

/** Where a piece stands in the two other directions: pieces that agree are in one row. */
function beside({ bounds }: Piece, axis: 0 | 1 | 2): string {
  const [u, v] = OTHERS[axis];
  const { least, most } = bounds;
  return `${tenths(least[u])},${tenths(most[u])} ${tenths(least[v])},${tenths(most[v])}`;
}

const OTHERS = [
  [1, 2],
  [0, 2],
  [0, 1],
] as const;

/** Tenths of a millimetre. Set a little aside, since many fractions of an inch lie just where rounding turns. */
const tenths = (mm: number): number => Math.round(mm * 10 + 0.3);
