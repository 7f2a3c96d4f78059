/** Points and directions in space: three numbers, x y z. */
export type Vec3 = readonly [x: number, y: number, z: number];

export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const subtract = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const scaled = (a: Vec3, by: number): Vec3 => [a[0] * by, a[1] * by, a[2] * by];
/** The point in the middle of some: the mean of each coordinate. */
export function mean(points: readonly Vec3[]): Vec3 {
  const total: [number, number, number] = [0, 0, 0];
  for (const p of points) for (const k of [0, 1, 2] as const) total[k] += p[k];
  return scaled(total, 1 / points.length);
}
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
/** The least and the most of some points along an axis; Infinity and -Infinity of none. */
export function spanAlong(points: readonly Vec3[], axis: Vec3): [least: number, most: number] {
  let [least, most] = [Infinity, -Infinity];
  for (const p of points) {
    const at = dot(p, axis);
    if (at < least) least = at;
    if (at > most) most = at;
  }
  return [least, most];
}
export const size = (a: Vec3): number => Math.hypot(a[0], a[1], a[2]);
/** The direction of a with length 1; undefined when a has no length or is not a number. */
export function unit(a: Vec3): Vec3 | undefined {
  const s = size(a);
  return s > 0 && Number.isFinite(s) ? [a[0] / s, a[1] / s, a[2] / s] : undefined;
}
