/**
 * Pieces put one by one into free rectangles of the sheets; what is left of a rectangle is parted by one cut from edge to
 * edge into two, so that every sheet comes apart by such cuts.
 */
import type { Group, Laid, PanelQuestion, Room } from "./question";

export interface PackRule {
  /** Which free rectangle: least area left, least left on the nearer side, or the first sheet and then the nearer side. */
  readonly fit: "area" | "side" | "first";
  /** How the rest is parted: one rectangle as large as can be, as even as can be, or always along or across the sheet. */
  readonly split: "large" | "even" | "along" | "across";
}

export const PACK_RULES: readonly PackRule[] = (["side", "area", "first"] as const).flatMap((fit) =>
  (["large", "even", "along", "across"] as const).map((split) => ({ fit, split })),
);

/** A sheet that may be used; `index` as in `Laid`. */
export interface Sheet {
  readonly room: Room;
  readonly index: number;
  readonly bought: boolean;
}

export interface Packing {
  /** Places in the sequence of the pieces that found no place. */
  readonly left: readonly number[];
  /** Their area. */
  readonly area: number;
  readonly steps: number;
  readonly lies: readonly Lie[];
}

export interface Lie {
  readonly group: number;
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
}

interface Free {
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
}

/** Packs a sequence of groups, one entry a piece, into the sheets. */
export function packInto(
  groups: readonly Group[],
  sheets: readonly Sheet[],
  sequence: readonly number[],
  rule: PackRule,
): Packing {
  const free: Free[] = sheets.map(({ room }, sheet) => ({
    sheet,
    x: 0,
    y: 0,
    dx: room.length,
    dy: room.width,
  }));
  const least = leastSide(groups, sequence);
  const left: number[] = [];
  const lies: Lie[] = [];
  let [area, steps] = [0, 0];
  let [lastGroup, lastFailed] = [-1, false];
  sequence.forEach((group, at) => {
    const { length, width, free: turns } = groups[group]!;
    let [best, score, turned] = [-1, Number.POSITIVE_INFINITY, false];
    if (group !== lastGroup || !lastFailed) {
      steps += 2 + free.length;
      for (let f = 0; f < free.length; f++) {
        const { dx, dy, sheet } = free[f]!;
        if (length <= dx && width <= dy) {
          const s = scoreOf(rule, dx - length, dy - width, dx * dy, sheet);
          if (s < score) [best, score, turned] = [f, s, false];
        }
        if (width <= dx && length <= dy && length !== width && (turns || !sheets[sheet]!.room.grain)) {
          const s = scoreOf(rule, dx - width, dy - length, dx * dy, sheet);
          if (s < score) [best, score, turned] = [f, s, true];
        }
      }
    }
    [lastGroup, lastFailed] = [group, best < 0];
    if (best < 0) {
      left.push(at);
      area += length * width;
      return;
    }
    const { sheet, x, y } = free[best]!;
    lies.push({ group, sheet, x, y, turned });
    part(free, best, turned ? width : length, turned ? length : width, rule, least);
  });
  return { left, area, steps, lies };
}

/** As sheets with what lies on them, row by row, those that are empty left out. */
export function laidOf(
  { groups, job }: Pick<PanelQuestion, "groups" | "job">,
  sheets: readonly Sheet[],
  lies: readonly Lie[],
): readonly Laid[] {
  return sheets.flatMap(({ index, bought }, s) => {
    const placed = lies
      .filter(({ sheet }) => sheet === s)
      .sort((a, b) => a.y - b.y || a.x - b.x)
      .map(({ group, x, y, turned }) => {
        const length = groups[group]!.length - job.kerf;
        const width = groups[group]!.width - job.kerf;
        return { item: group, x, y, dx: turned ? width : length, dy: turned ? length : width, turned };
      });
    return placed.length === 0 ? [] : [{ index, bought, placed }];
  });
}

function leastSide(groups: readonly Group[], sequence: readonly number[]): number {
  return sequence.reduce(
    (least, g) => Math.min(least, groups[g]!.length, groups[g]!.width),
    Number.POSITIVE_INFINITY,
  );
}

function scoreOf({ fit }: PackRule, restX: number, restY: number, area: number, sheet: number): number {
  if (fit === "area") return area;
  const side = Math.min(restX, restY);
  return fit === "side" ? side : sheet * FAR + side;
}

/** More than any side. */
const FAR = 2 ** 30;

function part(free: Free[], at: number, px: number, py: number, { split }: PackRule, least: number): void {
  const { sheet, x, y, dx, dy } = free[at]!;
  const [restX, restY] = [dx - px, dy - py];
  // Cut along x first: what lies above the piece keeps the whole length.
  const alongFirst =
    split === "along" ||
    (split === "large" && restY * dx >= restX * dy) ||
    (split === "even" && restY * dx < restX * dy);
  const above = { sheet, x, y: y + py, dx: alongFirst ? dx : px, dy: restY };
  const beside = { sheet, x: x + px, y, dx: restX, dy: alongFirst ? py : dy };
  const rest = [beside, above].filter((r) => r.dx >= least && r.dy >= least);
  if (rest.length === 0) {
    free[at] = free[free.length - 1]!;
    free.pop();
  } else {
    free[at] = rest[0]!;
    if (rest[1]) free.push(rest[1]);
  }
}
