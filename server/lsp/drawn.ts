/**
 * Drawings for the preview, made on a clock of their own: one at a time, with room between for other requests; not made
 * again while nothing that they show has changed. Of many pieces the first drawing comes before the rest.
 */
import { drawingsOf, type Evaluated, shownIn } from "../service";
import type { SheetDrawing } from "../sheet/drawings";

export interface Drawn {
  /** Where the rest is not made yet, it is that of before. */
  readonly drawings: readonly SheetDrawing[];
  readonly complete: boolean;
}

export interface Drawer {
  /** `soon`: rather the first drawing of many pieces now than all of them later. No more are made of what is `stale`. */
  readonly of: (uri: string, evaluated: Evaluated, soon: boolean, stale: () => boolean) => Promise<Drawn>;
  readonly forget: (uri: string) => void;
}

interface Kept {
  readonly shown: string;
  readonly made: SheetDrawing[];
  readonly rest: Generator<SheetDrawing, void>;
  readonly before: readonly SheetDrawing[];
  done: boolean;
}

export function drawer(): Drawer {
  const kept = new Map<string, Kept>();

  const keptFor = (uri: string, evaluated: Evaluated): Kept => {
    const shown = shownIn(evaluated);
    const last = kept.get(uri);
    if (last?.shown === shown) return last;
    const before = last ? (last.done ? last.made : last.before) : [];
    const next: Kept = { shown, made: [], rest: drawingsOf(evaluated), before, done: false };
    kept.set(uri, next);
    return next;
  };

  return {
    of: async (uri, evaluated, soon, stale) => {
      const one = keptFor(uri, evaluated);
      const many = evaluated.worked.pieces.all.length > MANY;
      while (!one.done) {
        if (one.made.length > 0 && ((soon && many) || stale()))
          return { drawings: [...one.made, ...one.before.slice(one.made.length)], complete: false };
        const { value, done } = one.rest.next();
        if (value) one.made.push(value);
        if (done) one.done = true;
        else await turn();
      }
      return { drawings: one.made, complete: true };
    },
    forget: (uri) => kept.delete(uri),
  };
}

/** Pieces up to which all drawings are made in about 100 ms. */
const MANY = 80;

/** Lets what is waiting go first. */
export const turn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
