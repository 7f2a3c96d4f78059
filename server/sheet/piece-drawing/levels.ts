/** In which order pieces stand along each axis when a thing is taken apart: the piece beyond a contact goes a step further. */
import type { Vec3 } from "../../solid/vector";
import type { Touch } from "./touching";

/**
 * Steps along the three axes for every piece, 0 in the middle. Two pieces that touch along an axis are a step or more
 * apart along it; a piece that touches nothing along an axis goes with those it touches. Where pieces hold each other
 * both ways round, they come out less than a step apart.
 */
export function levelsOf(count: number, pairs: readonly Touch[]): readonly Vec3[] {
  const axes = ([0, 1, 2] as const).map((k) => alongAxis(count, pairs, k));
  return Array.from({ length: count }, (_, i): Vec3 => [axes[0]![i]!, axes[1]![i]!, axes[2]![i]!]);
}

function alongAxis(count: number, pairs: readonly Touch[], axis: 0 | 1 | 2): readonly number[] {
  const level = new Float64Array(count);
  const held = new Uint8Array(count);
  const orders = pairs.flatMap(({ first, second, normal }) => {
    const most = Math.max(...normal.map(Math.abs));
    if (Math.abs(normal[axis]) < AS_GOOD * most) return [];
    held[first] = held[second] = 1;
    return [normal[axis] > 0 ? ([first, second] as const) : ([second, first] as const)];
  });
  for (let round = 0; round < ROUNDS; round++) {
    if (settle(level, orders) < SETTLED) break;
    follow(level, pairs, held);
  }
  return [...level].map((x) => Math.round(x * 4) / 4);
}

/** Moves the two of each order apart alike where they stand less than a step apart; the most that any was moved. */
function settle(level: Float64Array, orders: readonly (readonly [low: number, high: number])[]): number {
  const push = new Float64Array(level.length);
  const times = new Uint16Array(level.length);
  for (const [low, high] of orders) {
    const lack = 1 - (level[high]! - level[low]!);
    if (lack <= 0) continue;
    push[low]! -= lack / 2;
    push[high]! += lack / 2;
    times[low]!++;
    times[high]!++;
  }
  let most = 0;
  for (let i = 0; i < level.length; i++) {
    if (times[i] === 0) continue;
    const step = push[i]! / times[i]!;
    level[i]! += step;
    most = Math.max(most, Math.abs(step));
  }
  return most;
}

/** Puts each piece that nothing holds along the axis at the mean of those it touches, by their areas. */
function follow(level: Float64Array, pairs: readonly Touch[], held: Uint8Array): void {
  const sum = new Float64Array(level.length);
  const weight = new Float64Array(level.length);
  for (const { first, second, area } of pairs)
    for (const [i, j] of [
      [first, second],
      [second, first],
    ] as const) {
      sum[i]! += area * level[j]!;
      weight[i]! += area;
    }
  for (let i = 0; i < level.length; i++) if (held[i] === 0 && weight[i]! > 0) level[i] = sum[i]! / weight[i]!;
}

/** Share of a normal's largest part from which an axis counts as well: a miter parts along both. */
const AS_GOOD = 0.6;
const ROUNDS = 400;
const SETTLED = 1e-3;
