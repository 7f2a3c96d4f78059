/** How wide the columns of a table are, from what stands in them. Points. */
import type { Column } from "../document";
import { GAP, MM } from "./paper";

export interface Need {
  readonly fit: Column["fit"];
  /** What its cells take on one line, and what of them is not broken. */
  readonly most: number;
  readonly least: number;
}

/** A width for each column; none for one whose cells go under their row. */
export type Widths = readonly (number | undefined)[];

/** Columns that together take at most the room. Only where words are longer than their column are they broken. */
export function widthsOfColumns(needs: readonly Need[], room: number): Widths {
  const bounds = needs.map(boundsOf);
  const used = bounds.map(() => true);
  if (taken(bounds, used) > room)
    needs.forEach(({ fit }, i) => {
      if (fit === "wide" && used.filter(Boolean).length > 1) used[i] = false;
    });
  const free = room - gaps(used);
  const floor = taken(bounds, used) - gaps(used);
  if (floor > free) {
    const share = Math.max(free, 0) / floor;
    return bounds.map(({ least }, i) => (used[i] ? Math.max(least * share, 1) : undefined));
  }
  const widths = shared(needs, bounds, used, free - floor);
  const rest = free - sum(widths.map((width) => width ?? 0));
  const takers = takersOf(needs, used);
  return widths.map((width, i) =>
    width !== undefined && takers.includes(i) ? width + rest / takers.length : width,
  );
}

/**
 * The widths changed so that the rows take fewer lines in all: room goes from one column of words to another as long as
 * that helps. `lines` counts them.
 */
export function fewestLines(
  widths: Widths,
  needs: readonly Need[],
  lines: (widths: Widths) => number,
): Widths {
  const open = needs.flatMap(({ fit }, i) =>
    (fit === "text" || fit === "wide") && widths[i] !== undefined ? [i] : [],
  );
  let best = { widths, lines: lines(widths) };
  for (let round = 0; round < ROUNDS; round++) {
    const before = best;
    for (const from of open)
      for (const to of open)
        for (const step of from === to ? [] : STEPS) {
          const left = before.widths[from]! - step;
          if (left < Math.max(Math.min(needs[from]!.least, LONGEST), NARROWEST_TEXT)) continue;
          const moved = before.widths.map((width, i) =>
            i === from ? left : i === to ? width! + step : width,
          );
          const count = lines(moved);
          if (count < best.lines) best = { widths: moved, lines: count };
        }
    if (best === before) break;
  }
  return best.widths;
}

const STEPS = [2, 4, 8, 16].map((mm) => mm * MM);
const ROUNDS = 8;

/** What is left above the floor: to columns of text first, where they can have all they ask for, else to all alike. */
function shared(
  needs: readonly Need[],
  bounds: readonly Bounds[],
  used: readonly boolean[],
  spare: number,
): readonly (number | undefined)[] {
  const wishes = bounds.map(({ least, most }, i) => (used[i] ? most - least : 0));
  const words = sum(wishes.filter((_, i) => needs[i]!.fit === "text"));
  const first = words <= spare ? 1 : 0;
  const left = spare - first * words;
  const open = wishes.map((wish, i) => (first === 1 && needs[i]!.fit === "text" ? 0 : wish));
  const share = sum(open) > 0 ? Math.min(1, left / sum(open)) : 0;
  return bounds.map(({ least }, i) =>
    used[i] ? least + (open[i]! > 0 ? open[i]! * share : first * wishes[i]!) : undefined,
  );
}

interface Bounds {
  readonly least: number;
  readonly most: number;
}

/** Numbers, ticks and marks take what they take; words give way, but not below their longest one. */
function boundsOf({ fit, most, least }: Need): Bounds {
  if (fit === "wide")
    return { least: Math.max(Math.min(most, NARROWEST_WIDE), Math.min(least, LONGEST)), most };
  if (fit === "text") {
    const narrowest = Math.max(Math.min(least, LONGEST), Math.min(most, NARROWEST_TEXT));
    return { least: narrowest, most: Math.max(most, narrowest) };
  }
  const width = Math.min(most, LONGEST);
  return { least: width, most: width };
}

/** What is left over goes to the wide columns, else to those of text. */
function takersOf(needs: readonly Need[], used: readonly boolean[]): readonly number[] {
  const of = (fit: Need["fit"]) => needs.flatMap((need, i) => (need.fit === fit && used[i] ? [i] : []));
  const wide = of("wide");
  return wide.length > 0 ? wide : of("text");
}

const gaps = (used: readonly boolean[]): number => Math.max(0, used.filter(Boolean).length - 1) * GAP;
const taken = (bounds: readonly Bounds[], used: readonly boolean[]): number =>
  gaps(used) + sum(bounds.map(({ least }, i) => (used[i] ? least : 0)));
const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

/** A column may ask for no more than this without a blank in it. */
const LONGEST = 45 * MM;
const NARROWEST_TEXT = 26 * MM;
/** A wide column narrower than this goes under its row. */
const NARROWEST_WIDE = 48 * MM;
