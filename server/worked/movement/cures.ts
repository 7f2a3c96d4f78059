/** What would give a row room to swell, each tried with the boards it would leave. Millimetres. */
import { HAIRLINE } from "../../solid/contact";
import { leastDrainGap } from "../../trade";
import { OPEN_IN_BOTTOM } from "../box-placed";
import { size } from "../materials";
import type { RowOfYear } from "./year";

/** So many boards of this width, with gaps of this between them and at both ends. */
export interface Respaced {
  readonly count: number;
  readonly width: number;
  readonly gap: number;
}

const LEAST_GAP = size(leastDrainGap.value, "in").approx;

/** The least gap between boards that stays open at the wettest; of a bottom that drains by it, one that drains as built. */
export function gapThatStays(row: RowOfYear): number {
  const most = Math.max(...row.widths) * swellsOf(row);
  return Math.max(most + HAIRLINE, row.box?.as === "floor" ? LEAST_GAP : 0);
}

/** One board fewer in the same room, even gaps; undefined where that leaves none, or gaps wider than a bottom may have. */
export function oneFewer(row: RowOfYear, draining: boolean): Respaced | undefined {
  const count = row.pieces.length - 1;
  const width = evenWidth(row);
  return count > 0 && width !== undefined ? tried(row, count, width, draining) : undefined;
}

/** The widest that its boards may be ripped to, to have room; undefined for boards of several widths, or between free ends. */
export function mostWidth(row: RowOfYear, draining: boolean): number | undefined {
  const count = row.pieces.length;
  if (row.span === undefined || evenWidth(row) === undefined) return undefined;
  const swells = swellsOf(row);
  const least = draining ? LEAST_GAP : 0;
  const held = row.span / (count * (1 + swells));
  if (!draining) return held;
  const open = (row.span - (count + 1) * HAIRLINE) / (count + (count + 1) * swells);
  return Math.min(held, open, (row.span - (count + 1) * least) / count);
}

/** So many boards of that width in the room of the row, if they then have room to swell. */
export function tried(row: RowOfYear, count: number, width: number, draining: boolean): Respaced | undefined {
  if (row.span === undefined || !(width > 0)) return undefined;
  const gap = (row.span - count * width) / (count + 1);
  const swells = width * swellsOf(row);
  if (gap * (count + 1) < count * swells) return undefined;
  if (draining && (gap - swells <= 0 || gap < LEAST_GAP)) return undefined;
  return gap > OPEN_IN_BOTTOM ? undefined : { count, width, gap };
}

/** The share by which the boards of a row swell that do so the most. */
const swellsOf = ({ movements }: RowOfYear): number => Math.max(...movements.map((m) => m.swells));

/** The width of its boards where that is the same for all of them. */
function evenWidth({ widths }: RowOfYear): number | undefined {
  const [first] = widths;
  return first !== undefined && widths.every((w) => Math.abs(w - first) < HAIRLINE) ? first : undefined;
}
