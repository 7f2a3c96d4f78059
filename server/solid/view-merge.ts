/** Lines that lie on each other, or nearly, drawn once. Millimetres. */
import type { Steps } from "./steps";
import { rests, type Stretch } from "./view-hidden";
import type { Line } from "./view-lines";

/**
 * The lines less those stretches that run along another line no further than `within` away. Bits no longer than `within`
 * are left out. Where lines fall on each other the nearest to the viewer stays; of lines side by side the heavier, then
 * the longer. Lines at more than a degree or so to each other are left as they are.
 */
export function* merged<L extends Line>(
  lines: readonly L[],
  within: number,
  kept: readonly Line[] = [],
): Steps<L[]> {
  const nearest = [...lines].sort((a, b) => b.depth - a.depth);
  const once = thinned(nearest, Math.min(within, COINCIDE), []);
  yield;
  if (within <= COINCIDE) return thinned(once, within, kept);
  const heaviest = once
    .map((line) => ({ line, long: runOf(line).long }))
    .sort((a, b) => Number(b.line.outline) - Number(a.line.outline) || b.long - a.long);
  return thinned(
    heaviest.map(({ line }) => line),
    within,
    kept,
  );
}

/** The lines with those thin that run close beside others for most of their length, so that a gap between them stays open. */
export function lightened<L extends Line>(lines: readonly L[], within: number): L[] {
  const bins = new Bins();
  const runs = lines.map(runOf);
  for (const run of runs) bins.keep(run);
  return lines.map((line, i) => {
    if (!line.outline) return line;
    const run = runs[i]!;
    const free = rests([0, run.long], bins.covering(run, within), 0);
    const open = free.reduce((sum, [from, to]) => sum + to - from, 0);
    return open > run.long / 2 ? line : { ...line, outline: false };
  });
}

/** mm: lines no further apart fall on each other. */
const COINCIDE = 0.05;

/** The lines in their order, each less what those before it cover. */
function thinned<L extends Line>(lines: readonly L[], within: number, kept: readonly Line[]): L[] {
  const bins = new Bins();
  for (const line of kept) bins.keep(runOf(line));
  const found: L[] = [];
  for (const line of lines) {
    const run = runOf(line);
    const covered = bins.covering(run, within);
    if (covered.length === 0) {
      found.push(line);
      bins.keep(run);
      continue;
    }
    const at = (d: number): [number, number] => [run.x + d * run.ux, run.y + d * run.uy];
    for (const [p, q] of rests([0, run.long], covered, within)) {
      const part = { ...line, from: at(p), to: at(q) };
      found.push(part);
      bins.keep(runOf(part));
    }
  }
  return found;
}

/** Lines by their direction, and by how far aside of it they lie. */
class Bins {
  private readonly lists = Array.from({ length: BINS }, () => new Map<number, Run[]>());

  keep(run: Run): void {
    const bin = binOf(run);
    const [first, last] = stripsOf(bin, run, 0);
    const lists = this.lists[bin]!;
    for (let strip = first; strip <= last; strip++) {
      const list = lists.get(strip);
      if (list) list.push(run);
      else lists.set(strip, [run]);
    }
  }

  /** The stretches of a run beside which others lie. */
  covering(run: Run, within: number): Stretch[] {
    const covered: Stretch[] = [];
    const bin = binOf(run);
    for (const near of [bin + BINS - 1, bin, bin + 1]) {
      const lists = this.lists[near % BINS]!;
      if (lists.size === 0) continue;
      const [first, last] = stripsOf(near % BINS, run, within);
      for (let strip = first; strip <= last; strip++)
        for (const other of lists.get(strip) ?? []) {
          if (other === run || !meet(run, other, within)) continue;
          const stretch = coveredBy(run, other, within);
          if (stretch) covered.push(stretch);
        }
    }
    return covered;
  }
}

/** The first and the last strip, as they lie side by side along a bin's middle direction, that a run comes within a distance of. */
function stripsOf(bin: number, { x, y, ex, ey }: Run, within: number): readonly [number, number] {
  const [c, s] = MIDDLES[bin]!;
  const [a, b] = [y * c - x * s, ey * c - ex * s];
  return [Math.floor((Math.min(a, b) - within) / STRIP), Math.floor((Math.max(a, b) + within) / STRIP)];
}

/** mm: wide enough that a line at the edge of its bin runs through few strips. */
const STRIP = 25;

/** A line as a start, a direction of unit length, how far it goes, and its end. */
interface Run {
  readonly x: number;
  readonly y: number;
  readonly ux: number;
  readonly uy: number;
  readonly long: number;
  readonly ex: number;
  readonly ey: number;
}

/** Whether the frames of two lines come within a distance of each other. */
const meet = (a: Run, b: Run, within: number): boolean =>
  Math.min(a.x, a.ex) <= Math.max(b.x, b.ex) + within &&
  Math.min(b.x, b.ex) <= Math.max(a.x, a.ex) + within &&
  Math.min(a.y, a.ey) <= Math.max(b.y, b.ey) + within &&
  Math.min(b.y, b.ey) <= Math.max(a.y, a.ey) + within;

function runOf({ from, to }: Line): Run {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const long = Math.hypot(dx, dy);
  return {
    x: from[0],
    y: from[1],
    ux: long > 0 ? dx / long : 1,
    uy: long > 0 ? dy / long : 0,
    long,
    ex: to[0],
    ey: to[1],
  };
}

/** Directions, either way round, in bins of two degrees. */
const BINS = 90;
function binOf({ ux, uy }: Run): number {
  const turn = Math.atan2(uy, ux) / Math.PI;
  return Math.floor((turn < 0 ? turn + 1 : turn) * BINS) % BINS;
}

/** Cosine and sine of the middle direction of each bin. */
const MIDDLES = Array.from({ length: BINS }, (_, bin) => {
  const turn = ((bin + 0.5) * Math.PI) / BINS;
  return [Math.cos(turn), Math.sin(turn)] as const;
});

/** Sine of the angle up to which lines run along each other. */
const ALONG = 0.02;

/** The stretch of a run, in mm from its start, that lies within a distance of the other line and beside it. */
function coveredBy(run: Run, other: Run, within: number): Stretch | undefined {
  const [dx, dy] = [run.x - other.x, run.y - other.y];
  const off = dy * other.ux - dx * other.uy;
  const rise = run.uy * other.ux - run.ux * other.uy;
  if (Math.abs(rise) > ALONG) return undefined;
  const ahead = dx * other.ux + dy * other.uy;
  const pace = run.ux * other.ux + run.uy * other.uy;
  let [from, to] = [0, run.long];
  if (Math.abs(rise) * run.long < 1e-9) {
    if (Math.abs(off) > within) return undefined;
  } else {
    const [a, b] = [(-within - off) / rise, (within - off) / rise];
    from = Math.max(from, Math.min(a, b));
    to = Math.min(to, Math.max(a, b));
  }
  const [c, d] = [-ahead / pace, (other.long - ahead) / pace];
  from = Math.max(from, Math.min(c, d));
  to = Math.min(to, Math.max(c, d));
  return from < to ? [from, to] : undefined;
}
