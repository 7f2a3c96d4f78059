/** Where what holds a piece stands along it, in mm from its end; and which way a panel bends over that. */

import { spanAlong } from "../../solid/vector";
import type { Piece } from "../pieces";
import { type Lie, lieOf, placeAlong, reachAlong } from "./lie";
import type { Link } from "./links";

export interface Support {
  /** mm from the end of the piece. */
  readonly at: number;
  /** Places among the links of the piece: what stands close together holds as one, each link as much. */
  readonly links: readonly number[];
}

/**
 * Where links hold a piece, along it, in order: in the middle of a short one, at both ends and between of a long one. A
 * panel goes over from one rail to the next, and what runs along that way does not hold it in between.
 */
export function supportsOf(lie: Lie, links: readonly Link[]): Support[] {
  const isSideways = (link: Link): boolean => lie.panel && runsAlong(lie, link);
  const all = links.every(isSideways);
  const found: { at: number; link: number }[] = [];
  links.forEach((one, link) => {
    if (!all && isSideways(one)) return;
    const { patch, fixings, how } = one;
    const [from, to] = reachAlong(lie, patch);
    const screws = how === "screwed" && to - from > POINT ? fixings.flatMap((f) => f.screws) : [];
    if (to - from <= POINT) found.push({ at: (from + to) / 2, link });
    else if (screws.length > 0)
      for (const { start } of screws)
        found.push({ at: Math.min(to, Math.max(from, placeAlong(lie, start))), link });
    else {
      const n = Math.min(MOST, Math.ceil((to - from) / STEP));
      for (let k = 0; k <= n; k++) found.push({ at: from + ((to - from) * k) / n, link });
    }
  });
  return onePlaces(found).map(
    (group): Support =>
      group.length === 1
        ? { at: group[0]!.at, links: [group[0]!.link] }
        : { at: middleOf(group), links: [...new Set(group.map((g) => g.link))] },
  );
}

function runsAlong(lie: Lie, { patch }: Link): boolean {
  const [from, to] = reachAlong(lie, patch);
  const [left, right] = spanAlong(patch, lie.beside);
  return to - from > POINT && to - from > right - left;
}

/** What lies on something no longer than this, in mm, lies on one place; on more, on places no further apart than STEP. */
export const POINT = 200;
const STEP = 300;
/** Of one holder: what is longer than any timber is told elsewhere. */
const MOST = 100;
/** Holders no further apart than this, in mm (3-1/2"), hold as one: wood gives way before it works as a lever between them. */
const ONE_PLACE = 89;

/**
 * Places along a piece, in order, those that hold as one together. A row of them longer than that is parted evenly, and
 * what lies just between two parts belongs to both, so that it comes out the same from either end.
 */
export function onePlaces<T extends { readonly at: number }>(places: readonly T[]): T[][] {
  const rows: T[][] = [];
  for (const place of [...places].sort((a, b) => a.at - b.at)) {
    const row = rows.at(-1);
    if (row && place.at - row.at(-1)!.at <= ONE_PLACE) row.push(place);
    else rows.push([place]);
  }
  return rows.some(isLong) ? rows.flatMap((row) => (isLong(row) ? parted(row) : [row])) : rows;
}

const lengthOf = (row: readonly { readonly at: number }[]): number => row.at(-1)!.at - row[0]!.at;
const isLong = (row: readonly { readonly at: number }[]): boolean => lengthOf(row) > ONE_PLACE;

function parted<T extends { readonly at: number }>(row: readonly T[]): T[][] {
  const long = lengthOf(row);
  const parts = Math.ceil(long / ONE_PLACE - SAME);
  const isIn = ({ at }: T, part: number): boolean => {
    const share = ((at - row[0]!.at) / long) * parts;
    return share >= part - SAME && share <= part + 1 + SAME;
  };
  return Array.from({ length: parts }, (_, part) => row.filter((one) => isIn(one, part))).filter(
    (group) => group.length > 0,
  );
}

const SAME = 1e-6;

export const middleOf = (group: readonly { readonly at: number }[]): number =>
  group.reduce((sum, g) => sum + g.at, 0) / group.length;

/** The longest stretch between places in order. */
export const longest = (at: readonly number[]): number =>
  at.slice(1).reduce((most, a, i) => Math.max(most, a - at[i]!), 0);

/**
 * A panel bends the shorter way, where what holds it runs along its other side; held at its corners alone it bends the
 * longer way.
 */
export function bestLie(piece: Piece, links: readonly Link[], panel: boolean): Lie {
  const lie = lieOf(piece, panel);
  if (!panel || lie.is === "upright") return lie;
  const across = lieOf(piece, panel, true);
  const [along, other] = [
    { lie, gap: widestGap(lie, links), isHeld: coverage(across, links) >= HELD_ALONG },
    { lie: across, gap: widestGap(across, links), isHeld: coverage(lie, links) >= HELD_ALONG },
  ];
  if (along.isHeld !== other.isHeld) return along.isHeld ? lie : across;
  return along.gap <= other.gap === along.isHeld ? lie : across;
}

/** What share of a side something holds. */
const HELD_ALONG = 0.5;

function coverage(lie: Lie, links: readonly Link[]): number {
  const reaches = links.map(({ patch }) => reachAlong(lie, patch)).sort((a, b) => a[0] - b[0]);
  let [sum, end] = [0, 0];
  for (const [from, to] of reaches) {
    sum += Math.max(0, to - Math.max(from, end));
    end = Math.max(end, to);
  }
  return sum / lie.length;
}

function widestGap(lie: Lie, links: readonly Link[]): number {
  const at = supportsOf(lie, links).map((s) => s.at);
  return at.length < 2 ? Infinity : longest(at);
}
