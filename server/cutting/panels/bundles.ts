/**
 * Everything that can be cut from one sheet when there are few pieces: for each bundle, so many pieces of each group, the
 * smallest rectangles that hold it and come apart by edge-to-edge cuts (bottom-up building: Wang 1983).
 */
import { type Group, isDue, type Meter, type Room, waysOn } from "./question";

/** A rectangle, made of one piece or of two others side by side or one above the other. */
export interface Block {
  readonly dx: number;
  readonly dy: number;
  readonly group: number;
  readonly turned: boolean;
  readonly first: Block | null;
  readonly second: Block | null;
  readonly beside: boolean;
}

/** Bundles by number, the count of the first group in the lowest place. */
export interface Bundles {
  /** Per group: what one piece adds to the number. */
  readonly steps: readonly number[];
  /** Smallest rectangles, none inside another; none at all where no room takes the bundle. */
  readonly blocks: readonly (readonly Block[])[];
  readonly areas: Float64Array;
}

/** How many bundles there are. */
export function bundleCount(counts: readonly number[]): number {
  return counts.reduce((product, count) => product * (count + 1), 1);
}

/** Ways to part all of them in two, order told: the work grows with it. */
export function partings(counts: readonly number[]): number {
  return counts.reduce((product, count) => (product * (count + 1) * (count + 2)) / 2, 1);
}

/** The bundles of so many pieces for rooms that are alike in having grain; null when the work runs out. */
export function* bundlesFor(
  rooms: readonly Room[],
  groups: readonly Group[],
  counts: readonly number[],
  slack: number,
  meter: Meter,
  until: number,
): Generator<void, Bundles | null, void> {
  const steps: number[] = [];
  let total = 1;
  for (const count of counts) {
    steps.push(total);
    total *= count + 1;
  }
  const blocks: (readonly Block[])[] = new Array(total).fill(NONE);
  const areas = new Float64Array(total);
  const fits = (dx: number, dy: number) => rooms.some(({ length, width }) => dx <= length && dy <= width);
  const largest = rooms.reduce((most, { length, width }) => Math.max(most, length * width), 0);
  const digits = counts.map(() => 0);
  for (let bundle = 1; bundle < total; bundle++) {
    for (let g = 0; ++digits[g]! > counts[g]!; g++) digits[g] = 0;
    const inIt = digits.flatMap((n, g) => (n > 0 ? [g] : []));
    areas[bundle] = inIt.reduce((sum, g) => sum + digits[g]! * groups[g]!.length * groups[g]!.width, 0);
    meter.used += 200;
    if (isDue(meter)) yield;
    if (meter.used > until) return null;
    if (inIt.length === 1 && digits[inIt[0]!] === 1) {
      const ways = rooms.flatMap((room) => waysOn(room, groups, inIt));
      for (const { group, dx, dy, turned } of ways)
        if (isNew(blocks[bundle]!, dx, dy))
          blocks[bundle] = withBlock(blocks[bundle]!, { dx, dy, group, turned, ...ALONE });
      continue;
    }
    const most = areas[bundle]! + slack;
    if (areas[bundle]! > largest) continue;
    let found: readonly Block[] = [];
    const part = inIt.map(() => 0);
    for (let first = 0; ; ) {
      let d = 0;
      for (; d < inIt.length && part[d] === digits[inIt[d]!]; d++) {
        first -= part[d]! * steps[inIt[d]!]!;
        part[d] = 0;
      }
      if (d === inIt.length) break;
      part[d]!++;
      first += steps[inIt[d]!]!;
      // Numbers grow with the parts, so that the first half of them has all pairs.
      if (2 * first > bundle) break;
      const ones = blocks[first]!;
      const others = ones.length === 0 ? NONE : blocks[bundle - first]!;
      meter.used += 10 + 30 * ones.length * others.length;
      for (const a of ones)
        for (const b of others) {
          const [length, width] = [Math.max(a.dx, b.dx), Math.max(a.dy, b.dy)];
          if ((a.dx + b.dx) * width <= most && isNew(found, a.dx + b.dx, width) && fits(a.dx + b.dx, width))
            found = withBlock(found, joined(a, b, true));
          if (
            length * (a.dy + b.dy) <= most &&
            isNew(found, length, a.dy + b.dy) &&
            fits(length, a.dy + b.dy)
          )
            found = withBlock(found, joined(a, b, false));
        }
    }
    blocks[bundle] = found;
  }
  return { steps, blocks, areas };
}

const NONE: readonly Block[] = [];
const ALONE = { first: null, second: null, beside: false } as const;

function joined(first: Block, second: Block, beside: boolean): Block {
  const dx = beside ? first.dx + second.dx : Math.max(first.dx, second.dx);
  const dy = beside ? Math.max(first.dy, second.dy) : first.dy + second.dy;
  return { dx, dy, group: -1, turned: false, first, second, beside };
}

/** Whether none of the blocks lies within these sides. */
function isNew(blocks: readonly Block[], dx: number, dy: number): boolean {
  for (const block of blocks) if (block.dx <= dx && block.dy <= dy) return false;
  return true;
}

/** With a block that is new, and without those that it lies within. */
function withBlock(blocks: readonly Block[], one: Block): readonly Block[] {
  return [...blocks.filter(({ dx, dy }) => dx < one.dx || dy < one.dy), one];
}
