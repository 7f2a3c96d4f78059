/**
 * What was worked out lately, kept by all that it follows from, so that the next key need not do it again. A key must hold
 * everything its value depends on: what is found here is then what would be worked out anew.
 */

const ALL = new Set<Lately<unknown>>();

export class Lately<T> {
  private young = new Map<string, T>();
  private old = new Map<string, T>();

  /** Keeps at least so many of the last, and never more than twice as many. */
  constructor(private readonly many: number) {
    ALL.add(this);
  }

  of(key: string, work: () => T): T {
    if (this.young.has(key)) return this.young.get(key) as T;
    const value = this.old.has(key) ? (this.old.get(key) as T) : work();
    if (this.young.size >= this.many) {
      this.old = this.young;
      this.young = new Map();
    }
    this.young.set(key, value);
    return value;
  }

  forget(): void {
    this.young.clear();
    this.old.clear();
  }
}

/** As in a process that has just begun. */
export function forgetAll(): void {
  for (const one of ALL) one.forget();
}
