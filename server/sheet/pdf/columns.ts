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
 * The widths that let the rows take the fewest lines in all, of two or three columns of words; of equal ones those nearest
 * to the given ones. `linesIn` counts the lines of a column's cells, row by row.
 */
export function fewestLines(
  widths: Widths,
  needs: readonly Need[],
  linesIn: (column: number, width: number) => readonly number[],
): Widths {
  const open = needs.flatMap(({ fit, most }, i) =>
    (fit === "text" || fit === "wide") && most > NARROWEST_TEXT && widths[i] !== undefined ? [i] : [],
  );
  if (open.length < 2 || open.length > 3) return widths;
  const given = open.map((i) => widths[i]!);
  const room = sum(given);
  const floors = open.map((i) => Math.max(Math.min(needs[i]!.least, LONGEST), NARROWEST_TEXT));
  const counts = open.map(() => new Map<number, readonly number[]>());
  const countsOf = (n: number, width: number): readonly number[] => {
    const before = counts[n]!.get(width);
    if (before) return before;
    const made = linesIn(open[n]!, width);
    counts[n]!.set(width, made);
    return made;
  };
  const costOf = (tried: readonly number[]) => {
    const each = tried.map((width, n) => countsOf(n, width));
    const lines = sum(each[0]!.map((_, row) => Math.max(...each.map((rows) => rows[row]!))));
    return { tried, lines, moved: sum(tried.map((width, n) => Math.abs(width - given[n]!))) };
  };
  let best = costOf(given);
  for (const tried of sharesOf(room, floors)) {
    const found = costOf(tried);
    if (found.lines < best.lines || (found.lines === best.lines && found.moved < best.moved)) best = found;
  }
  return widths.map((width, i) => (open.includes(i) ? best.tried[open.indexOf(i)] : width));
}

/** All ways, step by step, to share a room among columns of at least these widths. */
function sharesOf(room: number, [floor = 0, ...others]: readonly number[]): readonly (readonly number[])[] {
  if (others.length === 0) return room >= floor ? [[room]] : [];
  const found: (readonly number[])[] = [];
  for (let width = floor; width <= room - sum(others); width += STEP)
    for (const rest of sharesOf(room - width, others)) found.push([width, ...rest]);
  return found;
}

const STEP = 1.5 * MM;

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
