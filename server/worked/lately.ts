/**
 * Work whose last answers are kept, so that the next key need not do it again. It is given everything it works from, as
 * plain data, and nothing else: what is kept is then what would be worked out anew.
 */

const ALL = new Set<{ forget(): void }>();

export class Lately<Given, Answer> {
  private young = new Map<string, Answer>();
  private old = new Map<string, Answer>();

  /** Keeps at least so many of the last answers, and never more than twice as many. */
  constructor(
    private readonly many: number,
    private readonly work: (given: Given) => Answer,
  ) {
    ALL.add(this);
  }

  of(given: Given): Answer {
    const key = JSON.stringify(given);
    if (this.young.has(key)) return this.young.get(key) as Answer;
    const answer = this.old.has(key) ? (this.old.get(key) as Answer) : this.work(given);
    if (this.young.size >= this.many) {
      this.old = this.young;
      this.young = new Map();
    }
    this.young.set(key, answer);
    return answer;
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
