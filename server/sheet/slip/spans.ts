/**
 * Where a measure is seen on the thing: between two faces that are as far apart as it says, and move apart by as much as it
 * is made longer. Found by working the plan out with a little more, and by nothing that is read from the text.
 */
import type { Worked } from "../../worked";

/** From a face to another, along 0 to the right, 1 to the back, 2 up; mm. */
export interface Span {
  readonly axis: 0 | 1 | 2;
  readonly from: number;
  readonly to: number;
}

interface Face {
  readonly at: number;
  readonly moved: number;
  readonly pieces: ReadonlySet<string>;
}

/** `value` is what the measure is before, `more` what it has more after, both in mm; undefined where it is between no faces. */
export function spanOf(before: Worked, after: Worked, value: number, more: number): Span | undefined {
  const pairs = AXES.flatMap((axis) => {
    const faces = facesAlong(axis, before, after);
    const [first, last] = [faces[0]?.at ?? 0, faces.at(-1)?.at ?? 0];
    return faces.flatMap((from) =>
      faces.flatMap((to) => {
        const grows = to.moved - from.moved;
        if (!near(to.at - from.at, value) || !near(grows, more)) return [];
        const outermost = Number(near(from.at, first)) + Number(near(to.at, last));
        const own = [...from.pieces].some((id) => to.pieces.has(id));
        return [{ axis, from: from.at, to: to.at, rank: 2 * outermost + Number(own) }];
      }),
    );
  });
  const [best] = pairs.sort((a, b) => b.rank - a.rank);
  return best && { axis: best.axis, from: best.from, to: best.to };
}

/** Those that a slip shows from the front first. */
const AXES = [0, 2, 1] as const;

/** The faces of all pieces square to an axis, and the floor, from the least to the most. */
function facesAlong(axis: 0 | 1 | 2, before: Worked, after: Worked): Face[] {
  const later = new Map(after.pieces.all.map((piece) => [piece.id, piece]));
  const faces = new Map<string, { at: number; moved: number; pieces: Set<string> }>();
  const add = (at: number, moved: number, id: string): void => {
    const key = `${Math.round(at / NEAR)} ${Math.round(moved / NEAR)}`;
    const there = faces.get(key);
    if (there) there.pieces.add(id);
    else faces.set(key, { at, moved, pieces: new Set([id]) });
  };
  if (axis === 2) add(0, 0, "");
  for (const { id, bounds } of before.pieces.all) {
    const now = later.get(id)?.bounds;
    if (!now) continue;
    add(bounds.least[axis], now.least[axis] - bounds.least[axis], id);
    add(bounds.most[axis], now.most[axis] - bounds.most[axis], id);
  }
  return [...faces.values()].sort((a, b) => a.at - b.at);
}

/** mm; finer than any mark. */
const NEAR = 0.01;
const near = (a: number, b: number): boolean => Math.abs(a - b) < 2 * NEAR;
