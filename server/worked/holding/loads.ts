/**
 * What stands on each placed piece: its own weight, the fill of a box on its bottom, what the plan says, and a person on
 * whatever is as high as a seat. Newtons and millimetres.
 */
import { ifKnown, type Scope } from "../../plan";
import { boundsApart } from "../../solid/contact";
import { MM_PER_INCH, NEWTONS_PER_POUND, STANDARD_GRAVITY } from "../../strength/units";
import { seatLoad } from "../../trade";
import { type Box, boxFloors } from "../boxes";
import { chosen } from "../choose";
import type { Part } from "../parts";
import type { Piece } from "../pieces";
import { otherOf, outward, type Space } from "../space";
import type { Bearing, SaidLoad } from "./said";

/** A weight that lies on a piece and stays there. */
export interface Steady {
  readonly from: "own" | "fill" | "said";
  readonly force: number;
  /** Over which part of the world it is spread, left to right and front to back; all of the piece where unsaid. */
  readonly over?: readonly [readonly [number, number], readonly [number, number]];
  /** On this width in the middle of the piece. */
  readonly middle?: number;
}

/** A weight that may stand anywhere on a piece. */
export interface Roaming {
  readonly from: "said" | "usual";
  readonly force: number;
  /** How wide it stands, in mm. */
  readonly foot: number;
}

export interface PieceLoads {
  readonly steady: readonly Steady[];
  readonly roaming: readonly Roaming[];
}

interface Input {
  readonly space: Space;
  readonly scope: Scope;
  readonly parts: ReadonlyMap<string, Part>;
  readonly boxes: readonly Box[];
  readonly loads: readonly SaidLoad[];
}

/** For each piece what stands on it. What is not known weighs nothing here, and is on the not-checked list by its cause. */
export function loadsOf(input: Input): PieceLoads[] {
  const { space, parts } = input;
  const found = space.pieces.map(({ part }) => {
    const kg = ifKnown(parts.get(part)?.weight)?.approx ?? 0;
    return { steady: kg > 0 ? [{ from: "own" as const, force: kg * STANDARD_GRAVITY }] : [], roaming: [] };
  }) as { steady: Steady[]; roaming: Roaming[] }[];
  for (const box of input.boxes) fill(box, input, found);
  const said = new Set<number>();
  for (const load of input.loads) for (const i of put(load, input, found)) said.add(i);
  // Nobody sits on what lies under soil.
  const buried = new Set(
    found.flatMap(({ steady }, i) => (steady.some((s) => s.from === "fill") ? [i] : [])),
  );
  for (const i of seats(space))
    if (!said.has(i) && !buried.has(i))
      found[i]!.roaming.push({ from: "usual", force: SEAT.force, foot: SEAT.foot });
  return found;
}

/** A person sits or stands on a place this wide (care: 300 lb on 4 x 4 in). */
export const SEAT = {
  force: seatLoad.value.pounds * NEWTONS_PER_POUND,
  foot: seatLoad.value.foot * MM_PER_INCH,
  low: seatLoad.value.low * MM_PER_INCH,
  high: seatLoad.value.high * MM_PER_INCH,
} as const;

type Found = readonly { steady: Steady[]; roaming: Roaming[] }[];

/** The saturated fill over its bottom, each piece by its share of the area. */
function fill(box: Box, { space, scope }: Input, found: Found): void {
  const kg = ifKnown(box.weights.saturated)?.approx;
  const floors = boxFloors(box.declared, scope).flatMap((name) => space.named.get(name) ?? []);
  if (!kg || floors.length === 0) return;
  const over = box.placed && ([0, 1] as const).map((k) => pair(box.placed!.room.foot[k]));
  const areas = floors.map((i) => areaOf(space.pieces[i]!, over));
  const all = areas.reduce((sum, a) => sum + a, 0);
  if (all <= 0) return;
  floors.forEach((i, n) => {
    const force = (kg * STANDARD_GRAVITY * areas[n]!) / all;
    if (force > 0)
      found[i]!.steady.push({
        from: "fill",
        force,
        ...(over && { over: over as unknown as NonNullable<Steady["over"]> }),
      });
  });
}

const pair = ({ from, to }: { readonly from: number; readonly to: number }): readonly [number, number] => [
  from,
  to,
];

/** Seen from above, of what lies within. */
function areaOf(
  { bounds: { least, most } }: Piece,
  over?: readonly (readonly [number, number])[] | undefined,
): number {
  const side = (k: 0 | 1): number => {
    const [from, to] = over?.[k] ?? [least[k], most[k]];
    return Math.max(0, Math.min(most[k], to) - Math.max(least[k], from));
  };
  return side(0) * side(1);
}

/** Puts a weight that the plan says on the uppermost level pieces of its thing; on each level of a row all of it. */
function put(load: SaidLoad, { space, scope }: Input, found: Found): readonly number[] {
  const kg = ifKnown(load.weight)?.approx;
  const group = chosen(load.thing, space, scope);
  if (group.length === 0) return [];
  const levels = levelsIn(group, space);
  for (const level of kg ? levels : []) stand(kg! * STANDARD_GRAVITY, load.how, level, space, found);
  return levels.flat();
}

/** Pieces with level tops, by how high these are; what lies under others of the group carries nothing of its own. */
function levelsIn(group: readonly number[], space: Space): number[][] {
  const level = group.filter((i) => isFlatTop(space.pieces[i]!) && !covered(i, space, new Set(group)));
  const rows = new Map<number, number[]>();
  for (const i of level.length > 0 ? level : group) {
    const key = Math.round(space.pieces[i]!.bounds.most[2] / SAME_LEVEL);
    const row = rows.get(key);
    if (row) row.push(i);
    else rows.set(key, [i]);
  }
  return [...rows.values()];
}

/** mm */
const SAME_LEVEL = 6;

function stand(force: number, how: Bearing, level: readonly number[], space: Space, found: Found): void {
  if (how === "anywhere") {
    for (const i of level) found[i]!.roaming.push({ from: "said", force, foot: SEAT.foot });
    return;
  }
  const on = how === "middle" ? [middleOf(level, space)] : level;
  const areas = on.map((i) => areaOf(space.pieces[i]!));
  const all = areas.reduce((sum, a) => sum + a, 0);
  on.forEach((i, n) => {
    const share = all > 0 ? areas[n]! / all : 1 / on.length;
    const middle = how === "middle" ? { middle: SEAT.foot } : {};
    found[i]!.steady.push({ from: "said", force: force * share, ...middle });
  });
}

/** The piece nearest to the middle of all. */
function middleOf(level: readonly number[], { pieces }: Space): number {
  const mid = (i: number, k: 0 | 1): number => (pieces[i]!.bounds.least[k] + pieces[i]!.bounds.most[k]) / 2;
  const center = ([0, 1] as const).map((k) => {
    const at = level.flatMap((i) => [pieces[i]!.bounds.least[k], pieces[i]!.bounds.most[k]]);
    return (Math.min(...at) + Math.max(...at)) / 2;
  });
  const off = (i: number): number => Math.hypot(mid(i, 0) - center[0]!, mid(i, 1) - center[1]!);
  return level.reduce((best, i) => (off(i) < off(best) - NEARER ? i : best));
}

/** Pieces no nearer than this, in mm, are as near as the first. */
const NEARER = 0.05;

/** Pieces that somebody sits or stands on: level, 12 to 24 in high, with nothing on them, alone or with neighbours wide enough. */
export function seats(space: Space): number[] {
  const tops = space.pieces.flatMap((p, i) => {
    const high = p.bounds.most[2];
    return high >= SEAT.low && high <= SEAT.high && isFlatTop(p) && !covered(i, space) ? [i] : [];
  });
  const isTop = new Set(tops);
  return tops.filter((i) => {
    const own = space.pieces[i]!;
    const narrow = narrowOf(own);
    if (narrow >= WIDE_ENOUGH) return true;
    if (narrow < LEAST_SLAT) return false;
    return space.grid
      .near(own.bounds, NEIGHBOUR)
      .some((n) => n !== i && isTop.has(n) && isBeside(own, space.pieces[n]!));
  });
}

const isBeside = (a: Piece, b: Piece): boolean =>
  Math.abs(a.bounds.most[2] - b.bounds.most[2]) < SAME_LEVEL &&
  narrowOf(b) >= LEAST_SLAT &&
  boundsApart(a.bounds, b.bounds) <= NEIGHBOUR;

const narrowOf = ({ bounds: { least, most } }: Piece): number =>
  Math.min(most[0] - least[0], most[1] - least[1]);

/** A board this wide, in mm, is stood on by itself; a slat this wide with others no further away than that. */
const WIDE_ENOUGH = 76;
const LEAST_SLAT = 31;
const NEIGHBOUR = 38;

/** Its upper side is a face of its board that is level, or nearly. */
export function isFlatTop({ pose }: Piece): boolean {
  return [pose.thickness, pose.width].some((v) => Math.abs(v[2]) > NEARLY_LEVEL);
}

/** The cosine of 5°. */
const NEARLY_LEVEL = 0.996;

/** Something lies on most of its top; of these pieces alone, where they are given. */
function covered(piece: number, space: Space, among?: ReadonlySet<number>): boolean {
  let area = 0;
  for (const m of space.meetingsOf[piece]!) {
    const meeting = space.meetings[m]!;
    if (among && !among.has(otherOf(meeting, piece))) continue;
    for (const patch of meeting.patches)
      if (outward(meeting, piece, patch)[2] > NEARLY_LEVEL) area += patch.area;
  }
  return area > areaOf(space.pieces[piece]!) / 3;
}
