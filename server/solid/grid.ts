/** Which boxes come near another: boxes are kept in the cubes of space that they reach into. Millimetres. */
import { type Bounds, boundsApart } from "./contact";

export interface Grid {
  /** Places of the boxes no further than `within` from this one, in order. */
  readonly near: (box: Bounds, within: number) => number[];
}

/** The side of a cube: about the length of a short board. */
const CUBE = 400;
/** A box over more cubes than this is kept aside and always looked at. */
const MOST_CUBES = 512;

export function gridOf(bounds: readonly Bounds[]): Grid {
  const cubes = new Map<number, number[]>();
  const large: number[] = [];
  bounds.forEach((box, i) => {
    const keys = keysOf(box, 0);
    if (!keys) large.push(i);
    else
      for (const key of keys) {
        const list = cubes.get(key);
        if (list) list.push(i);
        else cubes.set(key, [i]);
      }
  });
  // When each box was looked at last: it may lie in several cubes.
  const looked = new Int32Array(bounds.length);
  let turn = 0;
  const near = (box: Bounds, within: number): number[] => {
    turn++;
    const found: number[] = [];
    const look = (i: number): void => {
      if (looked[i] === turn) return;
      looked[i] = turn;
      if (boundsApart(bounds[i]!, box) <= within) found.push(i);
    };
    const keys = keysOf(box, within);
    if (!keys) for (let i = 0; i < bounds.length; i++) look(i);
    else {
      large.forEach(look);
      for (const key of keys) cubes.get(key)?.forEach(look);
    }
    return rising(found);
  };
  return { near };
}

/** Sorts few numbers in place. */
function rising(list: number[]): number[] {
  for (let i = 1; i < list.length; i++) {
    const one = list[i]!;
    let at = i;
    for (; at > 0 && list[at - 1]! > one; at--) list[at] = list[at - 1]!;
    list[at] = one;
  }
  return list;
}

/** The cubes that a box, made larger all round, reaches into; undefined when they are too many. */
function keysOf({ least, most }: Bounds, more: number): number[] | undefined {
  const first = (k: 0 | 1 | 2): number => Math.floor((least[k] - more) / CUBE);
  const last = (k: 0 | 1 | 2): number => Math.floor((most[k] + more) / CUBE);
  const [x0, y0, z0] = [first(0), first(1), first(2)];
  const [x1, y1, z1] = [last(0), last(1), last(2)];
  const [wide, deep, high] = [x1 - x0 + 1, y1 - y0 + 1, z1 - z0 + 1];
  if (!(wide * deep * high <= MOST_CUBES)) return undefined;
  const keys: number[] = [];
  // Counted from nothing: so far out that numbers have gaps, adding 1 to a place leaves it where it is.
  for (let x = 0; x < wide; x++)
    for (let y = 0; y < deep; y++)
      for (let z = 0; z < high; z++)
        keys.push(((x0 + x) * 73_856_093) ^ ((y0 + y) * 19_349_663) ^ ((z0 + z) * 83_492_791));
  return keys;
}
