/**
 * The linear program of a purchase: patterns, as often as there are sheets for them, so that the least worth of pieces is
 * left without a place. Its duals are worths for the pieces, which price new patterns (Gilmore and Gomory 1961).
 */
import { Simplex } from "../proof/simplex";
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

export class Master {
  private readonly lp: Simplex;
  private readonly columns: { readonly column: Column; readonly at: number }[] = [];

  /** `costs`: of leaving over one piece of each group; `supply`: how many sheets there are of each kind. */
  constructor(
    costs: readonly number[],
    private readonly demand: readonly number[],
    private readonly supply: readonly number[],
  ) {
    this.lp = new Simplex(Float64Array.from([...demand, ...supply]), [...costs, ...supply.map(() => 0)]);
    demand.forEach((_, g) => {
      this.lp.add([g, -1], 0);
    });
  }

  add(column: Column): void {
    const entries = column.counts.flatMap((n, g) => (n > 0 ? [g, n] : []));
    const at = this.lp.add([...entries, this.demand.length + column.kind, 1], 0);
    this.columns.push({ column, at });
  }

  /** Takes patterns known so far into the basis until none helps. */
  solve(meter: Meter): Duals {
    const before = this.lp.work;
    this.lp.improve(MOST_PIVOTS);
    meter.used += this.lp.work - before;
    const { duals } = this.lp;
    return {
      worths: this.demand.map((_, g) => duals[g]!),
      sheets: this.supply.map((_, k) => -duals[this.demand.length + k]!),
      left: this.lp.objective(),
    };
  }

  /** Patterns in the basis and how often each is cut. */
  used(): { column: Column; times: number }[] {
    return this.columns.flatMap(({ column, at }) => {
      const times = this.lp.valueOf(at);
      return times > TINY ? [{ column, times }] : [];
    });
  }
}

const MOST_PIVOTS = 2000;
export const TINY = 1e-9;
