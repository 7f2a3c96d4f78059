/** Where cuts may lie: sums of sides of pieces, as far as there are pieces for them. */

/** Per copy of a piece, the sides it may have along the axis; at most so many copies. */
export interface Sides {
  readonly sides: readonly number[];
  readonly count: number;
}

/**
 * All sums up to `end`, in order from 0, each piece used once at most: what does not lie on one of them can be pushed
 * down to one. Null when there are more than `most`.
 */
export function pointsUpTo(end: number, pieces: readonly Sides[], most: number): readonly number[] | null {
  let points: readonly number[] = [0];
  for (const { sides, count } of pieces) {
    for (let copy = 0; copy < count; copy++) {
      const more = sides.reduce((all, side) => withSide(all, points, side, end), points);
      if (more.length === points.length) break;
      if (more.length > most) return null;
      points = more;
    }
  }
  return points;
}

/** `all` and every one of `points` moved by the side, in order. */
function withSide(
  all: readonly number[],
  points: readonly number[],
  side: number,
  end: number,
): readonly number[] {
  const merged: number[] = [];
  let at = 0;
  for (const point of points) {
    const moved = point + side;
    if (moved > end) break;
    while (at < all.length && all[at]! < moved) merged.push(all[at++]!);
    if (all[at] !== moved) merged.push(moved);
  }
  while (at < all.length) merged.push(all[at++]!);
  return merged;
}

/** For each i and p at `i * n + p`, p up to i: the place of the last point not beyond `points[i] - points[p]`. */
export function restsOf(points: readonly number[]): Uint16Array {
  const n = points.length;
  const rests = new Uint16Array(n * n);
  for (let p = 0; p < n; p++) {
    let rest = 0;
    for (let i = p; i < n; i++) {
      const gap = points[i]! - points[p]!;
      while (rest + 1 < n && points[rest + 1]! <= gap) rest++;
      rests[i * n + p] = rest;
    }
  }
  return rests;
}
