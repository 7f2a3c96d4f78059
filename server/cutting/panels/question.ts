/**
 * A sheet job boiled down to integers for the proof: one kerf added to every side of every piece and of every sheet, so
 * that pieces lie beside each other with a kerf between them exactly when their sides add up to no more than the sheet's.
 */
import { readSheetJob, type SheetJob, type SheetReading } from "../sheets";
import type { Placed, ShelfSheet } from "../shelves";

/** Equal pieces. Sides include a kerf. */
export interface Group {
  readonly length: number;
  readonly width: number;
  readonly free: boolean;
  readonly count: number;
}

/** A sheet to cut from. Sides include a kerf. */
export interface Room {
  readonly length: number;
  readonly width: number;
  readonly grain: boolean;
}

/** One way of laying a piece of a group on a sheet. */
export interface Way {
  readonly group: number;
  readonly dx: number;
  readonly dy: number;
  readonly turned: boolean;
}

export interface PanelQuestion {
  readonly job: SheetJob;
  readonly reading: SheetReading;
  readonly groups: readonly Group[];
  readonly sold: readonly Room[];
  readonly own: readonly Room[];
  /** Places in `groups` of those that some sheet sold takes: what a bound speaks of. */
  readonly sellable: readonly number[];
  /** Of the others, those that some sheet on hand takes. */
  readonly onlyOwn: readonly number[];
  /** Pieces that no sheet takes. */
  readonly hopeless: number;
}

/** A sheet with what lies on it; `index` is its place among those sold or on hand. */
export interface Laid {
  readonly index: number;
  readonly bought: boolean;
  readonly placed: readonly Placed[];
}

/** Reads any job, leaving out what cannot be used. */
export function readPanels(job: SheetJob): PanelQuestion {
  const reading = readSheetJob(job);
  const { kerf } = job;
  const groups = reading.items.map(({ length, width, grain, count }) => ({
    length: length + kerf,
    width: width + kerf,
    free: grain === "free",
    count,
  }));
  const room = ({ length, width, grain }: ShelfSheet) => ({
    length: length + kerf,
    width: width + kerf,
    grain,
  });
  const [sold, own] = [reading.kinds.map(room), reading.own.map(room)];
  const takes = (rooms: readonly Room[], g: number) =>
    rooms.some((sheet) => waysOn(sheet, groups, [g]).length > 0);
  const places = groups.map((_, g) => g);
  const sellable = places.filter((g) => takes(sold, g));
  const others = places.filter((g) => !takes(sold, g));
  const onlyOwn = others.filter((g) => takes(own, g));
  const hopeless = others.reduce((sum, g) => sum + (takes(own, g) ? 0 : groups[g]!.count), 0);
  return { job, reading, groups, sold, own, sellable, onlyOwn, hopeless };
}

/** How pieces of these groups can lie on the sheet: as given, and turned where the grain allows it. */
export function waysOn(room: Room, groups: readonly Group[], which: readonly number[]): readonly Way[] {
  return which.flatMap((group) => {
    const { length, width, free } = groups[group]!;
    const ways: Way[] = [];
    if (length <= room.length && width <= room.width)
      ways.push({ group, dx: length, dy: width, turned: false });
    if (length !== width && (free || !room.grain) && width <= room.length && length <= room.width)
      ways.push({ group, dx: width, dy: length, turned: true });
    return ways;
  });
}

/** Work done so far, in steps of about a nanosecond, and when to let go next. */
export interface Meter {
  used: number;
  pause: number;
}

/** About 10 ms. */
const SLICE = 8_000_000;

/** Whether a slice of work has passed since it last did. */
export function isDue(meter: Meter): boolean {
  if (meter.used < meter.pause) return false;
  meter.pause = meter.used + SLICE;
  return true;
}
