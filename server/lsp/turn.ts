/** Letting what is waiting go first. */

export const turn = (): Promise<void> => new Promise((resolve) => afterwards(resolve));

/** A timer would wait a millisecond of its own each time; a browser has nothing else. */
export const afterwards: (go: () => void) => unknown =
  typeof setImmediate === "function" ? setImmediate : (go) => setTimeout(go, 0);
