/**
 * Column generation over fillings of places: can all pieces be cut from so many of each, were boards divisible; and what
 * would the cheapest boards cost. The answer "no" comes as worths of pieces, in whole numbers, with which anyone can check
 * it: all pieces together are worth more than the best fillings of those boards (Gilmore and Gomory 1961; Farkas).
 */
import { Branching } from "./branch";
import type { Filled } from "./fill";
import { bestFillings, bestWorths, type Filling } from "./knapsack";
import type { Need } from "./least";
import { isSpent, type Pausing, type Work } from "./pausing";
import type { Puzzle } from "./puzzle";
import { Simplex } from "./simplex";

/** What pieces are worth, per group, in whole numbers, and what follows for every purchase. */
export interface Worths {
  readonly worths: readonly number[];
  readonly need: Need;
}

/** A filling, and how many times the linear program takes it. */
export interface Share {
  readonly place: number;
  readonly filling: Filling;
  readonly times: number;
}

export type Covered = "all" | "unsure" | Worths;

export class Cover {
  private readonly lp: Simplex;
  private readonly fillings: {
    readonly place: number;
    readonly filling: Filling;
    readonly column: number;
  }[] = [];
  private readonly known = new Set<string>();
  private readonly demand: number[];
  private readonly counts: number[];
  private readonly groups: number;
  private readonly buys: boolean;

  /**
   * `counts`: how many of each place there are; null when all on hand are there, and others bought at their weights. In the first case what
   * is not covered counts by its length, in the second each piece may have the cheapest board of its own. Fillings of
   * `pool` are there to choose from; those found are added to it.
   */
  constructor(
    private readonly puzzle: Puzzle,
    counts: readonly number[] | null,
    private readonly pool: Filled[],
    private readonly work: Work,
  ) {
    const { places, sizes, demand, wares } = puzzle;
    this.groups = sizes.length;
    this.buys = counts === null;
    this.demand = [...demand];
    this.counts = counts ? [...counts] : places.map(({ kind, supply }) => (kind === "on hand" ? supply : 0));
    const dearest = places.reduce((most, { weight }) => Math.max(most, weight), 1);
    const alone = (g: number) =>
      places.reduce(
        (least, { room, weight, from, to }, p) =>
          p < wares && g >= from && g < to && room >= sizes[g]! ? Math.min(least, weight) : least,
        dearest * 2,
      ) / dearest;
    const length = (g: number) => sizes[g]! / sizes[0]!;
    this.lp = new Simplex(Float64Array.from([...this.demand, ...this.counts]), [
      ...this.demand.map((_, g) => (counts ? length(g) : alone(g))),
      ...places.map(() => 0),
    ]);
    for (let g = 0; g < this.groups; g++) this.lp.add([g, -1], 0);
    if (!counts)
      for (let p = 0; p < wares; p++) this.lp.add([this.groups + p, -1], places[p]!.weight / dearest);
    for (const { place, filling } of pool) this.column(place, filling);
  }

  /** Sets what is still to be cut, or how many of a place are left. */
  demandOf(group: number, to: number): void {
    this.demand[group] = to;
    this.lp.setRhs(group, to);
  }

  countOf(place: number, to: number): void {
    this.counts[place] = to;
    this.lp.setRhs(this.groups + place, to);
  }

  /** Whether these boards cover all pieces; worths that show it when not. */
  *covers(): Pausing<Covered> {
    const { lp } = this;
    if (!lp.restore(RESTORING)) lp.reset();
    for (let round = 0; round < ROUNDS && !isSpent(this.work); round++) {
      if (!this.improve()) return "unsure";
      yield;
      if (lp.objective() < NOTHING) return "all";
      const { short, fresh } = yield* this.price();
      if (short > NOTHING) {
        const worths = yield* this.inWhole();
        if (worths) return worths;
      }
      if (fresh === 0) return "unsure";
    }
    return "unsure";
  }

  /** Worths by which what is bought has to cost at least what the linear program says; null when work ran out. */
  *leastWorths(): Pausing<readonly number[]> {
    for (let round = 0; round < ROUNDS && !isSpent(this.work); round++) {
      if (!this.improve()) break;
      yield;
      if ((yield* this.price()).fresh === 0) break;
    }
    return this.duals();
  }

  /** What it takes of each filling, those it takes. */
  shares(): Share[] {
    return this.fillings.flatMap(({ place, filling, column }) => {
      const times = this.lp.valueOf(column);
      return times > NOTHING ? [{ place, filling, times }] : [];
    });
  }

  private column(place: number, filling: Filling): boolean {
    const key = `${place}:${filling.join()}`;
    if (this.known.has(key)) return false;
    this.known.add(key);
    const column = this.lp.add([...filling, this.groups + place, 1], 0);
    this.fillings.push({ place, filling, column });
    return true;
  }

  private improve(): boolean {
    const before = this.lp.work;
    const done = this.lp.improve(PIVOTS);
    this.work.done += this.lp.work - before;
    return done;
  }

  private duals(): number[] {
    return Array.from({ length: this.groups }, (_, g) => Math.max(0, this.lp.duals[g]!));
  }

  /** Adds fillings worth more than their place; `short` is by how much all pieces are worth more than all boards. */
  private *price(): Pausing<{ short: number; fresh: number }> {
    const duals = this.duals();
    const quick = this.priceQuickly(duals);
    if (quick > 0) return { short: 0, fresh: quick };
    const found = yield* bestFillings(this.puzzle, duals, this.demand);
    this.work.done += found.work;
    let short = 0;
    let fresh = 0;
    this.demand.forEach((n, g) => {
      short += n * duals[g]!;
    });
    this.counts.forEach((n, p) => {
      short -= n * found.worth[p]!;
      if (found.worth[p]! <= this.priceOf(p) + NOTHING) return;
      const filling = found.of(p);
      if (filling && this.fresh(p, filling)) fresh++;
    });
    return { short, fresh };
  }

  /** The same by a short search, which finds most of them. */
  private priceQuickly(duals: readonly number[]): number {
    const branching = new Branching(this.puzzle, duals, this.demand);
    let fresh = 0;
    this.counts.forEach((n, p) => {
      const found = n > 0 || this.buys ? branching.better(p, this.priceOf(p) + NOTHING, BRANCHES) : null;
      if (found && this.fresh(p, found.filling)) fresh++;
    });
    this.work.done += branching.work;
    return fresh;
  }

  /** What one of a place costs by the duals. */
  private priceOf(place: number): number {
    return -this.lp.duals[this.groups + place]!;
  }

  private fresh(place: number, filling: Filling): boolean {
    if (!this.column(place, filling)) return false;
    this.pool.push({ place, filling });
    return true;
  }

  private *inWhole(): Pausing<Worths | null> {
    for (const scale of SCALES) {
      const worths = scaled(this.duals(), scale);
      const found = yield* wholeNeed(this.puzzle, worths, this.demand, this.counts);
      this.work.done += found.work;
      if (isShort(found.need, this.counts)) return { worths, need: found.need };
    }
    return null;
  }
}

/** The need that follows from whole worths for boards and missing pieces, given all there is on hand. */
export function needOf(
  puzzle: Puzzle,
  worths: readonly number[],
): Pausing<{ readonly need: Need; readonly work: number }> {
  return wholeNeed(
    puzzle,
    worths,
    puzzle.demand,
    puzzle.places.map(({ supply }) => supply),
  );
}

function* wholeNeed(
  puzzle: Puzzle,
  worths: readonly number[],
  demand: ArrayLike<number>,
  counts: readonly number[],
): Pausing<{ readonly need: Need; readonly work: number }> {
  const { worth, work } = yield* bestWorths(puzzle, worths, demand);
  let least = 0;
  for (let g = 0; g < demand.length; g++) least += demand[g]! * worths[g]!;
  for (let p = puzzle.wares; p < counts.length; p++) least -= counts[p]! * worth[p]!;
  return { need: { gives: [...worth.subarray(0, puzzle.wares)], least }, work };
}

/** Whole worths, the largest of them `scale`. */
export function scaled(worths: readonly number[], scale: number): readonly number[] {
  const largest = Math.max(...worths, 1e-9);
  return worths.map((worth) => Math.round((worth / largest) * scale));
}

const isShort = ({ gives, least }: Need, counts: readonly number[]): boolean =>
  gives.reduce((sum, each, p) => sum + each * counts[p]!, 0) < least;

/** Below this a number of the linear program is 0. */
const NOTHING = 1e-6;
/** The largest of the whole worths: the first that shows it. */
export const SCALES = [720, 10_000, 1_000_000];
/** Steps of the short search for each place. */
const BRANCHES = 400;
const PIVOTS = 20_000;
/** Pivots after which it begins anew. */
const RESTORING = 300;
const ROUNDS = 2_000;
