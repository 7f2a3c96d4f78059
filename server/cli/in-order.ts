/**
 * Many tasks shared out among workers, one at a time, since some take a hundred times as long as others. What comes of
 * them is given in the order of the tasks, so that nobody can tell how many workers there were.
 */

/** A worker at work. */
export interface Hand<Task> {
  /** Does one task; only once it is ready and has done the one before. */
  readonly post: (task: Task) => void;
  readonly end: () => void;
}

export interface Heard<Done> {
  readonly ready: () => void;
  readonly did: (done: Done) => void;
  /** It is no more; heard once, and nothing after it. */
  readonly gone: (why: string) => void;
}

export interface Sharing<Task, Done> {
  readonly tasks: readonly Task[];
  readonly hands: number;
  readonly start: (heard: Heard<Done>) => Hand<Task>;
  /** Without a worker: where none is asked for, or none starts. */
  readonly here: (task: Task) => Done;
  /** For a task at which two workers were gone. */
  readonly lost: (task: Task, why: string) => Done;
}

/** So many tasks may be done before their turn to be given: while one takes long, the others' answers wait in memory. */
const AHEAD = 1000;

export async function* inOrder<Task, Done>(sharing: Sharing<Task, Done>): AsyncGenerator<Done, void, void> {
  const { tasks, start, here, lost } = sharing;
  const done = new Map<number, Done>();
  const given = { next: 0, back: [] as number[], lost: new Map<number, string>() };
  const ended = new Set<() => void>();
  const idle = new Set<(index: number) => void>();
  let [told, working, wake] = [0, 0, () => {}];

  const take = (): number | undefined =>
    given.back.shift() ?? (given.next < Math.min(tasks.length, told + AHEAD) ? given.next++ : undefined);

  const handOut = (): void => {
    for (const give of idle) {
      const index = take();
      if (index === undefined) return;
      idle.delete(give);
      give(index);
    }
  };

  const isGone = (index: number, why: string): void => {
    if (given.lost.has(index)) done.set(index, lost(tasks[index]!, why));
    else given.back.push(index);
    given.lost.set(index, why);
  };

  const begin = (): void => {
    let at: number | undefined;
    const give = (index: number): void => {
      at = index;
      hand.post(tasks[index]!);
    };
    const free = (): void => {
      at = undefined;
      idle.add(give);
      handOut();
      wake();
    };
    working++;
    const hand = start({
      ready: free,
      did: (answer) => {
        done.set(at!, answer);
        free();
      },
      gone: (why) => {
        working--;
        idle.delete(give);
        ended.delete(hand.end);
        // Another one takes its place, unless it never got to work: then the next would not either.
        if (at !== undefined) {
          isGone(at, why);
          begin();
        }
        wake();
      },
    });
    ended.add(hand.end);
  };

  try {
    for (let i = 0; i < sharing.hands; i++) begin();
    while (told < tasks.length) {
      if (done.has(told)) {
        const answer = done.get(told)!;
        done.delete(told++);
        handOut();
        yield answer;
      } else if (working > 0) {
        await new Promise<void>((heard) => {
          wake = heard;
        });
      } else {
        const index = take()!;
        const why = given.lost.get(index);
        done.set(index, why === undefined ? here(tasks[index]!) : lost(tasks[index]!, why));
      }
    }
  } finally {
    for (const end of ended) end();
  }
}
