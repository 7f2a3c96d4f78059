/** Whether a purchase takes all pieces, by trying every way to share them out over its sheets. */
import { type Block, type Bundles, bundleCount, bundlesFor } from "./bundles";
import type { Lie, Sheet } from "./pack";
import { type Group, isDue, type Meter } from "./question";

/** Bundles for sheets with grain and without, made when first needed. */
export interface BundleShelf {
  grain: Bundles | null;
  plain: Bundles | null;
}

export interface Shared {
  readonly lies: readonly Lie[];
  /** Per group. */
  readonly left: readonly number[];
}

/**
 * How the bundles lie that leave least area over, and how many pieces of each group they leave; null when more than
 * `allowed` area is left whatever is done; undefined when the work ran out.
 */
export function* shareOut(
  sheets: readonly Sheet[],
  counts: readonly number[],
  allowed: number,
  shelf: BundleShelf,
  meter: Meter,
  until: number,
): Generator<void, Shared | null | undefined, void> {
  const all = bundleCount(counts) - 1;
  const takes: { sheet: number; bundles: Bundles; fitting: readonly number[] }[] = [];
  for (const [sheet, { room }] of sheets.entries()) {
    const bundles = room.grain ? shelf.grain : shelf.plain;
    const same = takes.find((other) => {
      const { length, width, grain } = sheets[other.sheet]!.room;
      return length === room.length && width === room.width && grain === room.grain;
    });
    if (!bundles) return undefined;
    meter.used += same ? 0 : 10 * all;
    takes.push({ sheet, bundles, fitting: same?.fitting ?? fittingOn(bundles, sheets[sheet]!) });
  }
  takes.sort((a, b) => a.fitting.length - b.fitting.length || a.sheet - b.sheet);
  const area = takes[0]?.bundles.areas;
  if (!area) return all === 0 ? { lies: [], left: counts } : null;
  const room = ({ sheet }: { sheet: number }) => sheets[sheet]!.room.length * sheets[sheet]!.room.width;
  // For each sheet so far: what may still be missing after it, with the bundle that it took.
  const levels: Map<number, number>[] = [new Map([[all, 0]])];
  for (const [t, { fitting }] of takes.entries()) {
    const after = takes.slice(t + 1).reduce((sum, take) => sum + room(take), 0);
    const level = new Map<number, number>();
    for (const missing of levels[t]!.keys())
      for (const bundle of fitting) {
        if (area[bundle]! < area[missing]! - after - allowed) break;
        meter.used += 30;
        if (isDue(meter)) yield;
        if (meter.used > until) return undefined;
        if (isWithin(bundle, missing, counts) && !level.has(missing - bundle))
          level.set(missing - bundle, bundle);
      }
    levels.push(level);
  }
  let rest = -1;
  for (const missing of levels.at(-1)!.keys()) if (rest < 0 || area[missing]! < area[rest]!) rest = missing;
  if (rest < 0) return null;
  const lies: Lie[] = [];
  let missing = rest;
  for (let t = takes.length - 1; t >= 0; t--) {
    const bundle = levels[t + 1]!.get(missing)!;
    const { sheet, bundles } = takes[t]!;
    const { length, width } = sheets[sheet]!.room;
    const block = bundles.blocks[bundle]!.find(({ dx, dy }) => dx <= length && dy <= width);
    if (block) lay(block, sheet, 0, 0, lies);
    missing += bundle;
  }
  const { steps } = takes[0]!.bundles;
  return { lies, left: counts.map((count, g) => Math.floor(rest / steps[g]!) % (count + 1)) };
}

/** Numbers of the bundles that a sheet takes, those of most area first, the empty one last. */
function fittingOn({ blocks, areas }: Bundles, { room }: Sheet): readonly number[] {
  const fitting = blocks.flatMap((some, bundle) =>
    bundle === 0 || some.some(({ dx, dy }) => dx <= room.length && dy <= room.width) ? [bundle] : [],
  );
  return fitting.sort((a, b) => areas[b]! - areas[a]! || a - b);
}

function isWithin(bundle: number, missing: number, counts: readonly number[]): boolean {
  let [a, b] = [bundle, missing];
  for (const count of counts) {
    const base = count + 1;
    if (a % base > b % base) return false;
    a = Math.floor(a / base);
    b = Math.floor(b / base);
  }
  return true;
}

function lay(block: Block, sheet: number, x: number, y: number, lies: Lie[]): void {
  const { first, second, beside, group, turned } = block;
  if (!first || !second) {
    lies.push({ group, sheet, x, y, turned });
    return;
  }
  lay(first, sheet, x, y, lies);
  lay(second, sheet, beside ? x + first.dx : x, beside ? y : y + first.dy, lies);
}

/** Makes the bundles that these sheets need, as far as they are not there; false when the work ran out. */
export function* stock(
  groups: readonly Group[],
  sheets: readonly Sheet[],
  counts: readonly number[],
  slack: number,
  shelf: BundleShelf,
  meter: Meter,
  until: number,
): Generator<void, boolean, void> {
  for (const key of ["grain", "plain"] as const) {
    const rooms = sheets.map(({ room }) => room).filter(({ grain }) => grain === (key === "grain"));
    if (rooms.length === 0 || shelf[key]) continue;
    shelf[key] = yield* bundlesFor(rooms, groups, counts, slack, meter, until);
    if (!shelf[key]) return false;
  }
  return true;
}

/** Area of the sheets less that of the pieces: what can be wasted at most. */
export function slackOf(
  groups: readonly Group[],
  sheets: readonly Sheet[],
  counts: readonly number[],
): number {
  const area = counts.reduce((sum, n, g) => sum + n * groups[g]!.length * groups[g]!.width, 0);
  return sheets.reduce((sum, { room }) => sum + room.length * room.width, 0) - area;
}
