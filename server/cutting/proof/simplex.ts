/**
 * A small linear program, solved by the revised simplex method with a dense inverse: least cost of columns, each at least
 * 0, whose entries add up to the right-hand sides. Columns may be added between two runs, and right-hand sides changed.
 * Ties are broken by place, so the same calls give the same numbers on every machine.
 */

/** Rows and entries …, rows ascending. */
export type Entries = readonly number[];

export class Simplex {
  /** Of each basic variable, by row. */
  readonly values: Float64Array;
  /** The column that is basic in each row. */
  readonly basis: Int32Array;
  /** What one unit more of each right-hand side would cost. */
  readonly duals: Float64Array;
  /** Multiplications done. */
  work = 0;

  private readonly columns: Entries[] = [];
  private readonly costs: number[] = [];
  private readonly rowOf: number[] = [];
  private readonly inverse: Float64Array;
  private readonly entering: Float64Array;
  private readonly filled: Int32Array;
  private sinceRefresh = 0;

  /** Begins with one column for each row, which has only a 1 there; right-hand sides are at least 0. */
  constructor(
    private readonly rhs: Float64Array,
    costs: readonly number[],
  ) {
    const rows = rhs.length;
    this.values = rhs.slice();
    this.basis = new Int32Array(rows);
    this.duals = new Float64Array(rows);
    this.inverse = new Float64Array(rows * rows);
    this.entering = new Float64Array(rows);
    this.filled = new Int32Array(rows);
    for (let r = 0; r < rows; r++) {
      this.inverse[r * rows + r] = 1;
      this.basis[r] = this.add([r, 1], costs[r]!);
      this.rowOf[r] = r;
      this.duals[r] = costs[r]!;
    }
  }

  get count(): number {
    return this.columns.length;
  }

  /** The new column's number. */
  add(column: Entries, cost: number): number {
    this.columns.push(column);
    this.costs.push(cost);
    this.rowOf.push(-1);
    return this.columns.length - 1;
  }

  objective(): number {
    let sum = 0;
    for (let r = 0; r < this.basis.length; r++) sum += this.costs[this.basis[r]!]! * this.values[r]!;
    return sum;
  }

  valueOf(column: number): number {
    const row = this.rowOf[column]!;
    return row < 0 ? 0 : this.values[row]!;
  }

  /** Sets right-hand sides; the duals stay right, values may fall below 0 until `restore`. */
  setRhs(row: number, to: number): void {
    const by = to - this.rhs[row]!;
    if (by === 0) return;
    this.rhs[row] = to;
    const rows = this.rhs.length;
    for (let r = 0; r < rows; r++) this.values[r]! += this.inverse[r * rows + row]! * by;
    this.work += rows;
  }

  /** Brings in columns that make it cheaper until there is none; false when the pivots ran out. */
  improve(pivots: number): boolean {
    for (let n = 0; n < pivots; n++) {
      const column = this.cheaper();
      if (column < 0) return true;
      this.enter(column);
      const row = this.leaving();
      if (row < 0) return false;
      this.pivot(column, row);
    }
    return false;
  }

  /** Brings values back to 0 or more while no column is cheaper; false when that cannot be, or the pivots ran out. */
  restore(pivots: number): boolean {
    for (let n = 0; n < pivots; n++) {
      // By the first place instead of by the largest number it cannot go round in a circle (R. G. Bland 1977).
      const first = n > CIRCLING;
      const row = this.lacking(first);
      if (row < 0) return true;
      const column = this.restoring(row, first);
      if (column < 0) return false;
      this.enter(column);
      this.pivot(column, row);
    }
    return false;
  }

  /** As it began: each row with its own first column. */
  reset(): void {
    const rows = this.rhs.length;
    this.rowOf.fill(-1);
    this.inverse.fill(0);
    for (let r = 0; r < rows; r++) {
      this.inverse[r * rows + r] = 1;
      this.basis[r] = r;
      this.rowOf[r] = r;
      this.values[r] = this.rhs[r]!;
      this.duals[r] = this.costs[r]!;
    }
    this.sinceRefresh = 0;
  }

  reducedCost(column: number): number {
    return this.costs[column]! - this.dot(this.duals, 0, this.columns[column]!);
  }

  private dot(vector: Float64Array, from: number, column: Entries): number {
    let sum = 0;
    for (let i = 0; i < column.length; i += 2) sum += vector[from + column[i]!]! * column[i + 1]!;
    return sum;
  }

  /** The column that saves most for each unit of it. */
  private cheaper(): number {
    let [best, least] = [-1, -COSTS];
    for (let j = 0; j < this.columns.length; j++) {
      if (this.rowOf[j]! >= 0) continue;
      const cost = this.reducedCost(j);
      if (cost < least) [best, least] = [j, cost];
    }
    this.work += 4 * this.columns.length;
    return best;
  }

  private enter(column: number): void {
    const rows = this.rhs.length;
    const entries = this.columns[column]!;
    this.entering.fill(0);
    for (let i = 0; i < entries.length; i += 2) {
      const [at, by] = [entries[i]!, entries[i + 1]!];
      for (let r = 0; r < rows; r++) this.entering[r]! += this.inverse[r * rows + at]! * by;
    }
    this.work += (rows * entries.length) / 2;
  }

  /** The row whose value reaches 0 first as the entering column grows; of those, the one with the largest pivot. */
  private leaving(): number {
    let [row, ratio] = [-1, Number.POSITIVE_INFINITY];
    for (let r = 0; r < this.values.length; r++) {
      const by = this.entering[r]!;
      if (by <= PIVOT) continue;
      const at = Math.max(0, this.values[r]!) / by;
      if (at < ratio - TIE || (at < ratio + TIE && row >= 0 && by > this.entering[row]!)) {
        row = r;
        ratio = Math.min(at, ratio);
      }
    }
    return row;
  }

  private lacking(first: boolean): number {
    let [row, least] = [-1, -FEASIBLE];
    for (let r = 0; r < this.values.length; r++) {
      if (this.values[r]! >= least) continue;
      [row, least] = [r, this.values[r]!];
      if (first) break;
    }
    return row;
  }

  /** The column that costs least to bring in for the value of that row; -1 when none can. */
  private restoring(row: number, first: boolean): number {
    const rows = this.rhs.length;
    let [best, ratio, size] = [-1, Number.POSITIVE_INFINITY, 0];
    for (let j = 0; j < this.columns.length; j++) {
      if (this.rowOf[j]! >= 0) continue;
      const by = this.dot(this.inverse, row * rows, this.columns[j]!);
      if (by >= -PIVOT) continue;
      const at = Math.max(0, this.reducedCost(j)) / -by;
      if (at < ratio - TIE || (!first && at < ratio + TIE && -by > size))
        [best, ratio, size] = [j, Math.min(at, ratio), -by];
    }
    this.work += 8 * this.columns.length;
    return best;
  }

  private pivot(column: number, row: number): void {
    const rows = this.rhs.length;
    const { inverse, entering, values, duals, filled } = this;
    const by = entering[row]!;
    const cost = this.reducedCost(column);
    const from = row * rows;
    // Most of a row is 0 for long.
    let some = 0;
    for (let c = 0; c < rows; c++) {
      if (inverse[from + c] === 0) continue;
      inverse[from + c]! /= by;
      filled[some++] = c;
    }
    values[row]! /= by;
    for (let r = 0; r < rows; r++) {
      const times = entering[r]!;
      if (r === row || (times < TINY && times > -TINY)) continue;
      const at = r * rows;
      for (let i = 0; i < some; i++) inverse[at + filled[i]!]! -= times * inverse[from + filled[i]!]!;
      values[r]! -= times * values[row]!;
    }
    for (let i = 0; i < some; i++) duals[filled[i]!]! += cost * inverse[from + filled[i]!]!;
    this.rowOf[this.basis[row]!] = -1;
    this.basis[row] = column;
    this.rowOf[column] = row;
    this.work += rows * some;
    if (++this.sinceRefresh % REFRESH === 0 && this.drift() > DRIFT) this.refresh();
  }

  /** By how much basic columns times their values miss the right-hand sides, and costs their duals. */
  private drift(): number {
    const sums = this.rhs.slice();
    let most = 0;
    this.basis.forEach((column, r) => {
      const entries = this.columns[column]!;
      for (let i = 0; i < entries.length; i += 2) sums[entries[i]!]! -= entries[i + 1]! * this.values[r]!;
      most = Math.max(most, Math.abs(this.reducedCost(column)));
    });
    return sums.reduce((largest, sum) => Math.max(largest, Math.abs(sum)), most);
  }

  /** The inverse worked out anew from the columns, so that rounding does not add up. */
  private refresh(): void {
    const rows = this.rhs.length;
    const matrix = new Float64Array(rows * rows);
    const inverse = new Float64Array(rows * rows);
    for (let r = 0; r < rows; r++) {
      const entries = this.columns[this.basis[r]!]!;
      for (let i = 0; i < entries.length; i += 2) matrix[entries[i]! * rows + r] = entries[i + 1]!;
      inverse[r * rows + r] = 1;
    }
    if (!invert(matrix, inverse, rows)) return;
    this.inverse.set(inverse);
    for (let r = 0; r < rows; r++) {
      let value = 0;
      for (let c = 0; c < rows; c++) value += inverse[r * rows + c]! * this.rhs[c]!;
      this.values[r] = value;
    }
    for (let c = 0; c < rows; c++) {
      let dual = 0;
      for (let r = 0; r < rows; r++) dual += this.costs[this.basis[r]!]! * inverse[r * rows + c]!;
      this.duals[c] = dual;
    }
    this.work += rows * rows * rows;
  }
}

/** Pivots after which ties are broken otherwise. */
const CIRCLING = 60;
const FEASIBLE = 1e-7;
const COSTS = 1e-9;
const PIVOT = 1e-9;
const TIE = 1e-10;
const TINY = 1e-14;
/** Pivots after which it is looked whether rounding has added up to so much that the inverse is worked out anew. */
const REFRESH = 100;
const DRIFT = 1e-9;

/** Gauss-Jordan with row exchanges: `inverse` begins as the identity. False where the matrix has none. */
function invert(matrix: Float64Array, inverse: Float64Array, rows: number): boolean {
  for (let c = 0; c < rows; c++) {
    let row = c;
    for (let r = c + 1; r < rows; r++)
      if (Math.abs(matrix[r * rows + c]!) > Math.abs(matrix[row * rows + c]!)) row = r;
    const pivot = matrix[row * rows + c]!;
    if (Math.abs(pivot) < 1e-12) return false;
    for (let k = 0; k < rows; k++) {
      for (const of of [matrix, inverse]) {
        const kept = of[c * rows + k]!;
        of[c * rows + k] = of[row * rows + k]! / pivot;
        if (row !== c) of[row * rows + k] = kept;
      }
    }
    for (let r = 0; r < rows; r++) {
      const times = matrix[r * rows + c]!;
      if (r === c || times === 0) continue;
      for (let k = 0; k < rows; k++) {
        matrix[r * rows + k]! -= times * matrix[c * rows + k]!;
        inverse[r * rows + k]! -= times * inverse[c * rows + k]!;
      }
    }
  }
  return true;
}
