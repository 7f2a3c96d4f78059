/** Counted work, and places to pause: what looks for better layouts may be driven in slices, or be left off. */

/** Counted work, shared by all that a proof does. */
export interface Work {
  done: number;
  readonly most: number;
}

export const isSpent = (work: Work): boolean => work.done >= work.most;

/** A pause: whoever drives the generator may do other things, or never come back. */
export type Pausing<T> = Generator<undefined, T, void>;
