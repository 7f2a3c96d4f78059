/** Fillings worth much, place by place: branch and bound by worth for its length, for a counted number of steps. */
import type { Filling } from "./knapsack";
import type { Puzzle } from "./puzzle";

export interface Found {
  readonly filling: Filling;
  readonly worth: number;
}

/** For each place a filling worth more than `above` of it, or null where the steps did not find one. */
export class Branching {
  work = 0;
  private readonly order: number[];
  private readonly size: Int32Array;
  private readonly worth: Float64Array;
  private readonly most: Int32Array;
  private readonly counts: Int32Array;
  private readonly best: Int32Array;
  private value = 0;
  private left = 0;

  constructor(
    private readonly puzzle: Puzzle,
    worths: ArrayLike<number>,
    most: ArrayLike<number>,
  ) {
    const { sizes } = puzzle;
    const order: number[] = [];
    for (let g = 0; g < sizes.length; g++) if (worths[g]! > 0 && most[g]! > 0) order.push(g);
    order.sort((a, b) => worths[b]! * sizes[a]! - worths[a]! * sizes[b]! || a - b);
    this.order = order;
    this.size = Int32Array.from(order, (g) => sizes[g]!);
    this.worth = Float64Array.from(order, (g) => worths[g]!);
    this.most = Int32Array.from(order, (g) => most[g]!);
    this.counts = new Int32Array(order.length);
    this.best = new Int32Array(order.length);
  }

  better(place: number, above: number, steps: number): Found | null {
    const { room, from, to, kind } = this.puzzle.places[place]!;
    if (kind === "missing") return null;
    this.value = above;
    this.left = steps;
    this.best.fill(0);
    this.take(0, room, 0, from, to);
    this.work += 4 * (steps - this.left);
    if (this.value <= above) return null;
    const runs: [number, number][] = [];
    this.best.forEach((n, i) => {
      if (n > 0) runs.push([this.order[i]!, n]);
    });
    return { filling: runs.sort((a, b) => a[0] - b[0]).flat(), worth: this.value };
  }

  /** Items from i on into what is left of the room, most of the densest first. */
  private take(i: number, room: number, worth: number, from: number, to: number): void {
    const { size, order } = this;
    let at = i;
    while (at < order.length && (size[at]! > room || order[at]! < from || order[at]! >= to)) at++;
    if (at === order.length) {
      if (worth <= this.value) return;
      this.value = worth;
      this.best.set(this.counts);
      return;
    }
    if (this.left-- <= 0 || worth + (room * this.worth[at]!) / size[at]! <= this.value) return;
    for (let n = Math.min(this.most[at]!, Math.floor(room / size[at]!)); n >= 0 && this.left > 0; n--) {
      this.counts[at] = n;
      this.take(at + 1, room - n * size[at]!, worth + n * this.worth[at]!, from, to);
    }
    this.counts[at] = 0;
  }
}
