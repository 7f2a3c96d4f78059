/**
 * The linear program of a purchase: patterns, as often as there are sheets for them, so that the least worth of pieces is
 * left without a place. Revised primal simplex with the inverse of the basis; its duals are worths for the pieces
 * (Gilmore and Gomory 1961), which price new patterns.
 */
import type { Meter } from "./question";

/** A pattern for a kind of sheet. */
export interface Column {
  readonly kind: number;
  /** Per group. */
  readonly counts: readonly number[];
}

export interface Duals {
  /** Per group, from 0 to its cost of being left over. */
  readonly worths: readonly number[];
  /** Per kind, what a pattern must be worth more than to help. */
  readonly sheets: readonly number[];
  /** Worth left over: 0 when the pieces fit as far as fractions of patterns can tell. */
  readonly left: number;
}

export interface Master {
  readonly groups: number;
  readonly kinds: number;
  readonly columns: Column[];
  /** Cost of leaving over one piece of each group. */
  readonly costs: readonly number[];
  /** Per row, groups then kinds: the variable in the basis, its value; the inverse of the basis, row by row. */
  readonly basis: Int32Array;
  readonly values: Float64Array;
  readonly inverse: Float64Array;
}

/** Variables by number: pieces left over, pieces too many, sheets not used, then patterns. */
export function masterOf(
  costs: readonly number[],
  demand: readonly number[],
  supply: readonly number[],
  columns: Column[],
): Master {
  const [groups, kinds] = [demand.length, supply.length];
  const rows = groups + kinds;
  const inverse = new Float64Array(rows * rows);
  for (let r = 0; r < rows; r++) inverse[r * rows + r] = 1;
  const basis = Int32Array.from({ length: rows }, (_, r) => (r < groups ? r : groups + r));
  return { groups, kinds, columns, costs, basis, values: Float64Array.from([...demand, ...supply]), inverse };
}

/** Takes patterns known so far into the basis until none helps. */
export function solve(master: Master, meter: Meter): Duals {
  const rows = master.groups + master.kinds;
  for (let pivots = 0; pivots < MOST_PIVOTS; pivots++) {
    const duals = dualsOf(master);
    const entering = cheapest(master, duals);
    meter.used += (master.columns.length + rows) * rows;
    if (entering < 0 || !pivot(master, entering)) return duals;
  }
  return dualsOf(master);
}

/** Patterns in the basis and how often each is cut. */
export function used({ groups, kinds, columns, basis, values }: Master): { column: Column; times: number }[] {
  const first = 2 * groups + kinds;
  return [...basis].flatMap((variable, r) =>
    variable >= first && values[r]! > TINY ? [{ column: columns[variable - first]!, times: values[r]! }] : [],
  );
}

const MOST_PIVOTS = 2000;
export const TINY = 1e-9;

function dualsOf({ groups, kinds, costs, basis, values, inverse }: Master): Duals {
  const rows = groups + kinds;
  const duals = new Array<number>(rows).fill(0);
  let left = 0;
  for (let r = 0; r < rows; r++) {
    const cost = basis[r]! < groups ? costs[basis[r]!]! : 0;
    if (cost === 0) continue;
    left += cost * values[r]!;
    for (let c = 0; c < rows; c++) duals[c]! += cost * inverse[r * rows + c]!;
  }
  return { worths: duals.slice(0, groups), sheets: duals.slice(groups).map((n) => -n), left };
}

/** The variable of most negative reduced cost, the first among equals; -1 when there is none. */
function cheapest({ groups, kinds, columns, costs }: Master, { worths, sheets }: Duals): number {
  let [best, least] = [-1, -TINY];
  const look = (variable: number, reduced: number) => {
    if (reduced < least) [best, least] = [variable, reduced];
  };
  for (let g = 0; g < groups; g++) {
    look(g, costs[g]! - worths[g]!);
    look(groups + g, worths[g]!);
  }
  for (let k = 0; k < kinds; k++) look(2 * groups + k, sheets[k]!);
  columns.forEach(({ kind, counts }, c) => {
    let reduced = sheets[kind]!;
    for (let g = 0; g < groups; g++) reduced -= worths[g]! * counts[g]!;
    look(2 * groups + kinds + c, reduced);
  });
  return best;
}

/** False when nothing leaves the basis, which rounding alone could bring about. */
function pivot({ groups, kinds, columns, basis, values, inverse }: Master, entering: number): boolean {
  const rows = groups + kinds;
  const entry = new Float64Array(rows);
  const add = (row: number, amount: number) => {
    for (let r = 0; r < rows; r++) entry[r]! += amount * inverse[r * rows + row]!;
  };
  if (entering < groups) add(entering, 1);
  else if (entering < 2 * groups) add(entering - groups, -1);
  else if (entering < 2 * groups + kinds) add(entering - groups, 1);
  else {
    const { kind, counts } = columns[entering - 2 * groups - kinds]!;
    counts.forEach((n, g) => {
      if (n > 0) add(g, n);
    });
    add(groups + kind, 1);
  }
  let leaving = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let r = 0; r < rows; r++) {
    if (entry[r]! <= TINY) continue;
    const ratio = values[r]! / entry[r]!;
    const equal = leaving >= 0 && ratio <= least + TINY && basis[r]! < basis[leaving]!;
    if (ratio < least - TINY || equal) [leaving, least] = [r, Math.min(ratio, least)];
  }
  if (leaving < 0) return false;
  const by = entry[leaving]!;
  for (let c = 0; c < rows; c++) inverse[leaving * rows + c]! /= by;
  values[leaving]! /= by;
  for (let r = 0; r < rows; r++) {
    const times = entry[r]!;
    if (r === leaving || times === 0) continue;
    for (let c = 0; c < rows; c++) inverse[r * rows + c]! -= times * inverse[leaving * rows + c]!;
    values[r] = Math.max(0, values[r]! - times * values[leaving]!);
  }
  basis[leaving] = entering;
  return true;
}
