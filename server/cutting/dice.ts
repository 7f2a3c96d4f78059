/** Chance that is the same for the same seed on every machine. */

/** Whole numbers below n (a 32-bit mixing generator). */
export type Dice = (n: number) => number;

export function diceFrom(seed: number): Dice {
  let state = seed | 0;
  return (n) => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return Math.floor((((t ^ (t >>> 14)) >>> 0) / 4294967296) * n);
  };
}
