/** States that count how many pieces of a few groups may still be used, and how a state is shared by two parts. */
import type { Group } from "./question";

export interface Holding {
  /** Numbered from 0, none may be used, to the last, all that there are. */
  readonly states: number;
  /** Ways of sharing: `sum[k]` lets one part use `first[k]` and the other `second[k]`. */
  readonly first: Uint16Array;
  readonly second: Uint16Array;
  readonly sum: Uint16Array;
  /** Whether a state lets one piece of the group be used. */
  readonly uses: (state: number, group: number) => boolean;
}

export function holdingOf(groups: readonly Group[], held: readonly number[]): Holding {
  let shares: readonly (readonly [first: number, second: number])[] = [[0, 0]];
  let states = 1;
  const steps = new Map<number, number>();
  for (const g of held) {
    const { count } = groups[g]!;
    const step = states;
    steps.set(g, step);
    const more: [number, number][] = [];
    for (let a = 0; a <= count; a++)
      for (let b = 0; a + b <= count; b++)
        for (const [first, second] of shares) more.push([first + a * step, second + b * step]);
    shares = more;
    states *= count + 1;
  }
  return {
    states,
    first: Uint16Array.from(shares, ([first]) => first),
    second: Uint16Array.from(shares, ([, second]) => second),
    sum: Uint16Array.from(shares, ([first, second]) => first + second),
    uses: (state, group) => {
      const step = steps.get(group);
      return step === undefined || Math.floor(state / step) % (groups[group]!.count + 1) > 0;
    },
  };
}

/** Ways of sharing that holding these groups takes: the work grows with it. */
export function sharesOf(groups: readonly Group[], held: readonly number[]): number {
  return held.reduce((product, g) => (product * (groups[g]!.count + 1) * (groups[g]!.count + 2)) / 2, 1);
}
