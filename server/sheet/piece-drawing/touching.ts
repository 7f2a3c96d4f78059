/** Which pieces lie on each other, where, and which way they come apart. */
import { type Contact, contacts, polygonArea } from "../../solid/contact";
import { nearPairs } from "../../solid/pairs";
import { size, unit, type Vec3 } from "../../solid/vector";
import type { DrawnPiece } from "./pieces";

/** Two pieces, by their places, that lie on each other. */
export interface Touch {
  readonly first: number;
  readonly second: number;
  /** The way in which the second leaves the first, unit length: the sides of a slot or a mortise cancel each other. */
  readonly normal: Vec3;
  /** Square millimetres, and the middle, of the largest patch. */
  readonly area: number;
  readonly middle: Vec3;
}

/** All pairs that touch with area, in order. */
export function touches(pieces: readonly DrawnPiece[]): readonly Touch[] {
  const cells = pieces.flatMap(({ cells }, piece) => cells.map((body) => ({ piece, body })));
  const patches = new Map<string, { first: number; second: number; found: Contact[] }>();
  const near = nearPairs(
    cells.map(({ body }) => body.bounds),
    NEAR,
  );
  for (const [i, j] of near) {
    const [a, b] = [cells[i]!, cells[j]!];
    if (a.piece === b.piece) continue;
    const found = contacts(a.body, b.body);
    if (found.length === 0) continue;
    const key = `${a.piece} ${b.piece}`;
    const all = patches.get(key);
    if (all) all.found.push(...found);
    else patches.set(key, { first: a.piece, second: b.piece, found });
  }
  return [...patches.values()].map(({ first, second, found }) => {
    const largest = found.reduce((best, one) => (one.area > best.area ? one : best));
    const { area, patch, normal } = largest;
    return { first, second, area, middle: middleOf(patch, normal), normal: wayOut(found) ?? normal };
  });
}

/** The mean of the patches' normals by their areas; undefined where they cancel. */
function wayOut(found: readonly Contact[]): Vec3 | undefined {
  const sum = ([0, 1, 2] as const).map((k) => found.reduce((s, { area, normal }) => s + area * normal[k], 0));
  const whole = found.reduce((s, { area }) => s + area, 0);
  const mean: Vec3 = [sum[0]! / whole, sum[1]! / whole, sum[2]! / whole];
  return size(mean) > CANCELLED ? unit(mean) : undefined;
}

/** The centre of a convex patch. */
function middleOf(patch: readonly Vec3[], normal: Vec3): Vec3 {
  const sum: [number, number, number] = [0, 0, 0];
  let whole = 0;
  for (let i = 1; i + 1 < patch.length; i++) {
    const [a, b, c] = [patch[0]!, patch[i]!, patch[i + 1]!];
    const area = polygonArea([a, b, c], normal);
    whole += area;
    for (const k of [0, 1, 2] as const) sum[k] += (area * (a[k] + b[k] + c[k])) / 3;
  }
  return [sum[0] / whole, sum[1] / whole, sum[2] / whole];
}

const CANCELLED = 1e-3;
/** mm within which pairs are looked at. */
const NEAR = 0.1;
