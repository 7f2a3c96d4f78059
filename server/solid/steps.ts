/** Long work in steps: between them it pauses, so that whoever runs it can do other work first, or leave it. */
export type Steps<T> = Generator<undefined, T, void>;

/** All of it at once. */
export function finished<T>(steps: Steps<T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}
