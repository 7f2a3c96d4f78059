/** Which of some things hang together, told pair by pair: sets that have nothing in common (Tarjan's union and find). */
export class DisjointSets<T> {
  readonly #above = new Map<T, T>();

  /** One of its set, the same for all in it as long as none is joined; of a thing that nothing was joined to, itself. */
  topOf(thing: T): T {
    let top = thing;
    for (let up = this.#above.get(top); up !== undefined; up = this.#above.get(top)) top = up;
    for (let at = thing; at !== top; ) {
      const up = this.#above.get(at)!;
      this.#above.set(at, top);
      at = up;
    }
    return top;
  }

  /** Makes the sets of both one; false where they were. */
  join(one: T, other: T): boolean {
    const [a, b] = [this.topOf(one), this.topOf(other)];
    if (a === b) return false;
    this.#above.set(a, b);
    return true;
  }
}
