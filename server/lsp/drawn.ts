/**
 * Drawings for the preview, made on a clock of their own: a few milliseconds at a time, with room between for other
 * requests; not made again while nothing that they show has changed. Of many pieces the first drawing comes before the
 * rest, and where even that takes long, the drawings of before stand in.
 */
import { drawingsInSteps, type Evaluated, type Scene, sameScene, sceneIn } from "../service";
import type { SheetDrawing } from "../sheet/drawings";
import type { SheetLanguage } from "../sheet/words";
import { turn } from "./turn";

export interface Drawn {
  /** What is not made yet is that of before, and marked as old. */
  readonly drawings: readonly SheetDrawing[];
  readonly complete: boolean;
}

export interface Asked {
  /** Of the words in them. */
  readonly language: SheetLanguage;
  /** Rather some drawings of many pieces now, old ones too, than all of them later. */
  readonly soon: boolean;
  /** The text has changed since: no more are made. */
  readonly stale: () => boolean;
}

export interface Drawer {
  readonly of: (uri: string, evaluated: Evaluated, asked: Asked) => Promise<Drawn>;
  readonly forget: (uri: string) => void;
}

interface Kept {
  readonly scene: Scene;
  readonly made: SheetDrawing[];
  readonly rest: ReturnType<typeof drawingsInSteps>;
  readonly before: readonly SheetDrawing[];
  done: boolean;
}

/**
 * `draw` makes the drawings in steps; what it throws is passed on, and it is asked anew the next time. `now` tells the
 * time in ms.
 */
export function drawer(draw = drawingsInSteps, now = (): number => performance.now()): Drawer {
  const kept = new Map<string, Kept>();

  const keptFor = (uri: string, evaluated: Evaluated, language: SheetLanguage): Kept => {
    const scene = sceneIn(evaluated, language);
    const last = kept.get(uri);
    if (last && sameScene(last.scene, scene)) return last;
    const before = last ? shownOf(last).map((d) => ({ ...d, old: true })) : [];
    const next: Kept = { scene, made: [], rest: draw(evaluated, language), before, done: false };
    kept.set(uri, next);
    return next;
  };

  /** Goes on for a few milliseconds, or to the next drawing. A generator that threw gives nothing more: it is not kept. */
  const goOn = (uri: string, one: Kept): void => {
    const end = now() + SLICE;
    try {
      do {
        const { value, done } = one.rest.next();
        if (done) one.done = true;
        else if (value) one.made.push(value);
        if (done || value) return;
      } while (now() < end);
    } catch (error) {
      if (kept.get(uri) === one) kept.delete(uri);
      throw error;
    }
  };

  return {
    of: async (uri, evaluated, { language, soon, stale }) => {
      const one = keptFor(uri, evaluated, language);
      const inTime = soon && evaluated.worked.pieces.all.length > MANY;
      const late = now() + SOON;
      while (!one.done) {
        const some = shownOf(one).length > 0;
        const waited = inTime && (one.made.length > 0 || now() > late);
        if (some && (waited || stale())) return { drawings: shownOf(one), complete: false };
        goOn(uri, one);
        await turn();
      }
      return { drawings: one.made, complete: true };
    },
    forget: (uri) => kept.delete(uri),
  };
}

/** Those made, and those of before in place of the rest. */
const shownOf = ({ made, before, done }: Kept): readonly SheetDrawing[] =>
  done
    ? made
    : [...made, ...before.filter((old) => !made.some((d) => d.kind === old.kind && d.of === old.of))];

/** Pieces up to which all drawings are made in some 50 ms. */
const MANY = 40;
/** ms of drawing at a time, and until drawings of before are sent. */
const SLICE = 4;
const SOON = 20;
