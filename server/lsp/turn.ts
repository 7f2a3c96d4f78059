/** Letting what is waiting go first. */

export const turn = (): Promise<void> => new Promise((resolve) => afterwards(resolve));

/** A timer would wait a millisecond of its own each time; a browser has nothing else. */
export const afterwards: (go: () => void) => unknown =
  typeof setImmediate === "function" ? setImmediate : (go) => setTimeout(go, 0);

/** Long work in steps, with room between them for other requests; undefined once nobody waits for it any more. */
export async function finishedInTurns<T>(
  steps: Generator<undefined, T, void>,
  stale: () => boolean,
): Promise<T | undefined> {
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    await turn();
    if (stale()) return undefined;
  }
}
