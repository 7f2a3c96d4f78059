/** Broken lines as strokes of their own, so that every writer of a drawing draws the same. */
import type { Point } from "../display";
import { along, heading, reach, type Stroke } from "./plane";

/** Strokes and gaps in turn, in mm of paper. */
export const DASHED = [1.4, 0.9] as const;
export const DASH_DOT = [3.2, 0.8, 0.3, 0.8] as const;

/** One straight line broken after a pattern; it begins and ends with a stroke that may be cut short. */
export function dashed([from, to]: readonly [Point, Point], pattern: readonly number[]): readonly Stroke[] {
  const way = heading(from, to);
  const long = reach(from, to);
  const period = pattern.reduce((sum, d) => sum + d, 0);
  const count = Math.min(MOST, Math.ceil(long / period));
  const strokes: Stroke[] = [];
  for (let n = 0; n < count; n++) {
    let at = n * period;
    pattern.forEach((d, k) => {
      if (k % 2 === 0 && at < long)
        strokes.push([along(from, way, at), along(from, way, Math.min(at + d, long))]);
      at += d;
    });
  }
  return strokes;
}

/** More dashes than a page has room for. */
const MOST = 1000;
