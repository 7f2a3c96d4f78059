/** Random numbers that are the same for the same seed on every machine. */
export interface Random {
  /** A whole number from `low` to `high`, both possible. */
  readonly whole: (low: number, high: number) => number;
  /** True in so many of a hundred cases. */
  readonly chance: (percent: number) => boolean;
  readonly one: <T>(list: readonly T[]) => T;
}

/** A 32-bit xorshift generator with a multiplication at the end (G. Marsaglia 2003). */
export function randomFrom(seed: number): Random {
  let state = (Math.imul(seed + 1, 0x9e3779b1) ^ 0x5bd1e995) >>> 0 || 1;
  const next = () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return (Math.imul(state, 0x2545f491) >>> 0) / 2 ** 32;
  };
  const whole = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  return {
    whole,
    chance: (percent) => next() * 100 < percent,
    one: (list) => list[whole(0, list.length - 1)]!,
  };
}
