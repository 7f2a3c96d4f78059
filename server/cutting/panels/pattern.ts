/**
 * The most worth that edge-to-edge cuts can take from one sheet, by dynamic programming over the points where cuts may
 * lie (normal patterns: Herz 1972, Christofides and Whitlock 1977). Only of held groups is it certain that no more pieces
 * are taken than there are, so that the value is at least that of every pattern with no more pieces than there are.
 */

import { type Holding, holdingOf } from "./holding";
import { pointsUpTo, restsOf } from "./points";
import { type Group, isDue, type Meter, type Room, type Way, waysOn } from "./question";

export interface Pattern {
  /** Whole when the worths are. */
  readonly value: number;
  /** Per group, how often it is cut. */
  readonly counts: readonly number[];
}

/** Points on one axis at most; beyond it all sides are rounded down to a coarser grid. */
const MOST_POINTS = 1600;
const MOST_CELLS = 800_000;

/** The best pattern for these worths, one per group and at least 0; those of worth 0 are left out. */
export function* bestPattern(
  room: Room,
  groups: readonly Group[],
  worths: readonly number[],
  held: readonly number[],
  meter: Meter,
): Generator<void, Pattern, void> {
  const counts = groups.map(() => 0);
  const some = groups.flatMap((_, g) => (worths[g]! > 0 ? [g] : []));
  const ways = waysOn(room, groups, some);
  if (ways.length === 0) return { value: 0, counts };
  const holding = holdingOf(
    groups,
    held.filter((g) => ways.some(({ group }) => group === g)),
  );
  const table = tableFor(room, groups, ways, worths, holding);
  meter.used += 2 * (table.nx * table.nx + table.ny * table.ny);
  for (let j = 1; j < table.ny; j++) {
    if (holding.states === 1) fillRow(table, j, meter);
    else fillHeldRow(table, j, meter);
    if (isDue(meter)) yield;
  }
  trace(table, counts);
  let value = table.rows[table.rows.length - 1]!;
  for (const g of table.tiny) {
    counts[g] = groups[g]!.count;
    value += worths[g]! * groups[g]!.count;
  }
  return { value, counts };
}

interface Table {
  readonly nx: number;
  readonly ny: number;
  readonly holding: Holding;
  /** Best value at `(j * nx + i) * states + state`, and the same by columns at `(i * ny + j) * states + state`. */
  readonly rows: Float64Array;
  readonly columns: Float64Array;
  readonly restX: Uint16Array;
  readonly restY: Uint16Array;
  /** Of each column, the heights that no horizontal cut makes as well; their number. */
  readonly whole: Uint16Array;
  readonly wholes: Int32Array;
  /** Single pieces by the corner that they need, and their worth. */
  readonly pieces: ReadonlyMap<number, readonly number[]>;
  readonly worths: readonly number[];
  /** Groups too small for the grid, which are taken to fit as often as they are wanted. */
  readonly tiny: readonly number[];
}

function tableFor(
  room: Room,
  groups: readonly Group[],
  ways: readonly Way[],
  worths: readonly number[],
  holding: Holding,
): Table {
  const divisor = ways.reduce((all, { dx, dy }) => commonDivisor(commonDivisor(all, dx), dy), 0);
  for (let grid = divisor; ; grid *= 2) {
    const down = (side: number) => Math.floor(side / grid);
    const tiny = new Set(ways.filter(({ dx, dy }) => dx < grid || dy < grid).map(({ group }) => group));
    const points = (end: number, of: (way: Way) => number) => {
      const sides = groups.flatMap(({ count }, g) => {
        const own = ways.filter(({ group }) => group === g && !tiny.has(g)).map((way) => down(of(way)));
        return own.length === 0 ? [] : [{ sides: own, count }];
      });
      return pointsUpTo(down(end), sides, MOST_POINTS);
    };
    const xs = points(room.length, ({ dx }) => dx);
    const ys = xs && points(room.width, ({ dy }) => dy);
    if (!ys || xs.length * ys.length > MOST_CELLS) continue;
    const [nx, ny] = [xs.length, ys.length];
    const pieces = new Map<number, number[]>();
    for (const { group, dx, dy } of ways) {
      if (tiny.has(group)) continue;
      const at = ys.indexOf(down(dy)) * nx + xs.indexOf(down(dx));
      const others = pieces.get(at);
      if (others) others.push(group);
      else pieces.set(at, [group]);
    }
    return {
      nx,
      ny,
      holding,
      rows: new Float64Array(nx * ny * holding.states),
      columns: new Float64Array(nx * ny * holding.states),
      restX: restsOf(xs),
      restY: restsOf(ys),
      whole: new Uint16Array(nx * ny),
      wholes: new Int32Array(nx),
      pieces,
      worths,
      tiny: [...tiny],
    };
  }
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/** Cuts need only be tried where the part before the cut is not itself best cut the same way. */
function fillRow(table: Table, j: number, meter: Meter): void {
  const { nx, ny, rows, columns, restX, restY, whole, wholes, pieces, worths } = table;
  const row = j * nx;
  const lone = new Uint16Array(nx);
  let lones = 0;
  for (let i = 1; i < nx; i++) {
    const column = i * ny;
    let across = columns[column + j - 1]!;
    const heights = wholes[i]!;
    for (let p = 0; p < heights; p++) {
      const height = whole[column + p]!;
      const sum = columns[column + height]! + columns[column + restY[j * ny + height]!]!;
      if (sum > across) across = sum;
    }
    let along = rows[row + i - 1]!;
    for (let p = 0; p < lones; p++) {
      const x = lone[p]!;
      const sum = rows[row + x]! + rows[row + restX[i * nx + x]!]!;
      if (sum > along) along = sum;
    }
    let one = 0;
    for (const group of pieces.get(row + i) ?? []) one = Math.max(one, worths[group]!);
    if (one > along || across > along) lone[lones++] = i;
    if (one > across || along > across) {
      whole[column + heights] = j;
      wholes[i] = heights + 1;
    }
    const value = Math.max(one, along, across);
    rows[row + i] = value;
    columns[column + j] = value;
    meter.used += 40 + 7 * (heights + lones);
  }
}

/** The same with a value for each state: how many pieces of the held groups may be used. */
function fillHeldRow(table: Table, j: number, meter: Meter): void {
  const { nx, ny, holding, rows, columns, restX, restY, whole, wholes, pieces, worths } = table;
  const { states, first, second, sum, uses } = holding;
  const lone = new Uint16Array(nx);
  let lones = 0;
  const along = new Float64Array(states);
  const across = new Float64Array(states);
  const one = new Float64Array(states);
  /** The better of what `best` holds and two parts side by side, for each state. */
  const join = (values: Float64Array, a: number, b: number, best: Float64Array) => {
    for (let k = 0; k < sum.length; k++) {
      const both = values[a + first[k]!]! + values[b + second[k]!]!;
      if (both > best[sum[k]!]!) best[sum[k]!] = both;
    }
  };
  for (let i = 1; i < nx; i++) {
    const [cell, column, row] = [(i * ny + j) * states, i * ny, j * nx];
    across.set(columns.subarray(cell - states, cell));
    const heights = wholes[i]!;
    for (let p = 0; p < heights; p++) {
      const height = whole[column + p]!;
      join(columns, (column + height) * states, (column + restY[j * ny + height]!) * states, across);
    }
    along.set(rows.subarray((row + i - 1) * states, (row + i) * states));
    for (let p = 0; p < lones; p++)
      join(rows, (row + lone[p]!) * states, (row + restX[i * nx + lone[p]!]!) * states, along);
    one.fill(0);
    for (const group of pieces.get(row + i) ?? [])
      for (let state = 0; state < states; state++)
        if (uses(state, group)) one[state] = Math.max(one[state]!, worths[group]!);
    let [isLone, isWhole] = [false, false];
    for (let state = 0; state < states; state++) {
      const [o, x, y] = [one[state]!, along[state]!, across[state]!];
      if (o > x || y > x) isLone = true;
      if (o > y || x > y) isWhole = true;
      const value = Math.max(o, x, y);
      rows[(row + i) * states + state] = value;
      columns[cell + state] = value;
    }
    if (isLone) lone[lones++] = i;
    if (isWhole) {
      whole[column + heights] = j;
      wholes[i] = heights + 1;
    }
    meter.used += 80 + 30 * states + 4 * (heights + lones) * sum.length;
  }
}

/** Counts the pieces of a best pattern, reading the table backwards. */
function trace({ nx, ny, holding, rows, restX, restY, pieces, worths }: Table, counts: number[]): void {
  const { states, first, second, sum, uses } = holding;
  const at = (i: number, j: number, state: number) => rows[(j * nx + i) * states + state]!;
  const open: (readonly [i: number, j: number, state: number])[] = [[nx - 1, ny - 1, states - 1]];
  next: for (let part = open.pop(); part; part = open.pop()) {
    const [i, j, state] = part;
    const value = at(i, j, state);
    if (value === 0) continue;
    if (at(i - 1, j, state) === value) {
      open.push([i - 1, j, state]);
      continue;
    }
    if (at(i, j - 1, state) === value) {
      open.push([i, j - 1, state]);
      continue;
    }
    const single = pieces.get(j * nx + i)?.find((g) => worths[g] === value && uses(state, g));
    if (single !== undefined) {
      counts[single]!++;
      continue;
    }
    for (let k = 0; k < sum.length; k++) {
      if (sum[k] !== state) continue;
      const [a, b] = [first[k]!, second[k]!];
      for (let p = 1; p < i; p++) {
        const rest = restX[i * nx + p]!;
        if (at(p, j, a) + at(rest, j, b) !== value) continue;
        open.push([p, j, a], [rest, j, b]);
        continue next;
      }
      for (let p = 1; p < j; p++) {
        const rest = restY[j * ny + p]!;
        if (at(i, p, a) + at(i, rest, b) !== value) continue;
        open.push([i, p, a], [i, rest, b]);
        continue next;
      }
    }
  }
}
