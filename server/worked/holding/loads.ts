/**
 * What stands on each placed piece: its own weight, the fill of a box on its bottom, what the plan says, and a person on
 * whatever is as high as a seat. Newtons and millimetres.
 */
import { ifKnown, lookUp, type Scope } from "../../plan";
import { boundsApart, TOUCHING } from "../../solid/contact";
import { MM_PER_INCH, NEWTONS_PER_POUND, STANDARD_GRAVITY } from "../../strength/units";
import { seatLoad } from "../../trade";
import type { Box } from "../boxes";
import { chosen, floorsOf } from "../choose";
import type { Part } from "../parts";
import type { Piece } from "../pieces";
import { copiesOf, otherOf, outward, type Space } from "../space";
import type { Bearing, SaidLoad } from "./said";

/** A weight that lies on a piece and stays there. */
export interface Steady {
  readonly from: "own" | "fill" | "said";
  readonly force: number;
  /** Over which part of the world it is spread; all of the piece where unsaid. */
  readonly over?: Area | undefined;
  /** On this width in the middle of the piece. */
  readonly middle?: number;
}

/** Seen from above: from where to where, left to right and front to back. */
type Area = readonly [readonly [number, number], readonly [number, number]];

/** A weight that may stand anywhere on a piece, on a place as wide as `SEAT.foot`. */
export interface Roaming {
  readonly from: "said" | "usual";
  readonly force: number;
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
export function loadsOf(input: Input): readonly PieceLoads[] {
  const { space, parts } = input;
  const found: Found = space.pieces.map(({ part }) => {
    const kg = ifKnown(parts.get(part)?.weight)?.approx ?? 0;
    return { steady: kg > 0 ? [{ from: "own", force: kg * STANDARD_GRAVITY }] : [], roaming: [] };
  });
  for (const box of input.boxes) fill(box, input, found);
  const said = new Set<number>();
  for (const load of input.loads) for (const i of put(load, input, found)) said.add(i);
  // Nobody sits on what lies under soil.
  const buried = new Set(
    found.flatMap(({ steady }, i) => (steady.some((s) => s.from === "fill") ? [i] : [])),
  );
  for (const i of seats(space))
    if (!said.has(i) && !buried.has(i)) found[i]!.roaming.push({ from: "usual", force: SEAT.force });
  return found;
}

/** A person sits or stands on a place this wide (care: 300 lb on 4 x 4 in). */
export const SEAT = {
  force: seatLoad.value.pounds * NEWTONS_PER_POUND,
  foot: seatLoad.value.foot * MM_PER_INCH,
  low: seatLoad.value.low * MM_PER_INCH,
  high: seatLoad.value.high * MM_PER_INCH,
} as const;

type Found = readonly { readonly steady: Steady[]; readonly roaming: Roaming[] }[];

/** The saturated fill over its bottom, each piece by its share of the area. */
function fill({ declared, weights, placed }: Box, { space, scope }: Input, found: Found): void {
  const kg = ifKnown(weights.saturated)?.approx;
  const floors = floorsOf(declared, space, scope);
  if (!kg) return;
  const [x, y] = placed?.room.foot ?? [];
  const over: Area | undefined = x &&
    y && [
      [x.from, x.to],
      [y.from, y.to],
    ];
  share(
    kg * STANDARD_GRAVITY,
    floors,
    (i) => areaOf(space.pieces[i]!, over),
    (i, force) => {
      if (force > 0) found[i]!.steady.push({ from: "fill", force, over });
    },
  );
}

/** Deals a force to pieces by the area of each; evenly where none has any. */
function share(
  force: number,
  pieces: readonly number[],
  area: (piece: number) => number,
  deal: (piece: number, force: number) => void,
): void {
  const areas = pieces.map(area);
  const all = areas.reduce((sum, a) => sum + a, 0);
  pieces.forEach((piece, n) => {
    deal(piece, all > 0 ? (force * areas[n]!) / all : force / pieces.length);
  });
}

/** Seen from above, of what lies within. */
function areaOf({ bounds: { least, most } }: Piece, over?: Area): number {
  const side = (k: 0 | 1): number => {
    const [from, to] = over?.[k] ?? [least[k], most[k]];
    return Math.max(0, Math.min(most[k], to) - Math.max(least[k], from));
  };
  return side(0) * side(1);
}

/** Puts a weight that the plan says where its thing carries it; on each level of a part all of it. */
function put(load: SaidLoad, input: Input, found: Found): readonly number[] {
  const kg = ifKnown(load.weight)?.approx;
  const levels = levelsOf(load.thing, input);
  for (const level of kg ? levels : []) stand(kg! * STANDARD_GRAVITY, load.how, level, input.space, found);
  return levels.flat();
}

/**
 * The pieces that carry what stands on a thing, by how high they are: each level of a part, of each copy of an assembly or
 * a ring the highest one, of a box its bottom.
 */
function levelsOf(thing: SaidLoad["thing"], { space, scope }: Input): number[][] {
  const declared = lookUp(scope, thing.name.text);
  if (!declared) return [];
  const group = chosen(thing, space, scope);
  if (declared.kind === "part") return rowsOf(group, space);
  const floors = declared.kind === "box" ? floorsOf(declared, space, scope) : [];
  if (floors.length > 0) return rowsOf(floors, space);
  const highest = copiesOf(space, declared.name, group).flatMap((copy) => rowsOf(copy, space)[0] ?? []);
  return rowsOf(highest, space);
}

/** Pieces with level tops, by how high these are, the highest first; what lies under others of the group carries nothing of its own. */
function rowsOf(group: readonly number[], space: Space): number[][] {
  const among = new Set(group);
  const level = group.filter((i) => isFlatTop(space.pieces[i]!) && !covered(i, space, among));
  const top = (i: number): number => space.pieces[i]!.bounds.most[2];
  const rows: number[][] = [];
  for (const i of [...(level.length > 0 ? level : group)].sort((a, b) => top(b) - top(a))) {
    const row = rows.at(-1);
    if (row && top(row[0]!) - top(i) < SAME_LEVEL) row.push(i);
    else rows.push([i]);
  }
  return rows;
}

/** mm */
const SAME_LEVEL = 6;

function stand(force: number, how: Bearing, level: readonly number[], space: Space, found: Found): void {
  if (how === "anywhere") {
    for (const i of level) found[i]!.roaming.push({ from: "said", force });
    return;
  }
  const middle = how === "middle" ? { middle: SEAT.foot } : {};
  const on = how === "middle" ? middlesOf(level, space) : level;
  share(
    force,
    on,
    (i) => areaOf(space.pieces[i]!),
    (i, own) => {
      found[i]!.steady.push({ from: "said", force: own, ...middle });
    },
  );
}

/** The piece nearest to the middle of all, or the two that are as near. */
function middlesOf(level: readonly number[], { pieces }: Space): number[] {
  const mid = (i: number, k: 0 | 1): number => (pieces[i]!.bounds.least[k] + pieces[i]!.bounds.most[k]) / 2;
  const center = ([0, 1] as const).map((k) => {
    const at = level.flatMap((i) => [pieces[i]!.bounds.least[k], pieces[i]!.bounds.most[k]]);
    return (Math.min(...at) + Math.max(...at)) / 2;
  });
  const off = (i: number): number => Math.hypot(mid(i, 0) - center[0]!, mid(i, 1) - center[1]!);
  const least = Math.min(...level.map(off));
  return level.filter((i) => off(i) < least + NEARER);
}

/** Pieces that differ by no more than this, in mm, are as near. */
const NEARER = 0.05;

/** Pieces that somebody sits or stands on: level, 12 to 24 in high, with nothing on them, alone or with neighbours wide enough. */
function seats(space: Space): number[] {
  const tops = space.pieces.flatMap((p, i) => {
    const high = p.bounds.most[2];
    const isSeat = high >= SEAT.low - TOUCHING && high <= SEAT.high + TOUCHING;
    return isSeat && isFlatTop(p) && !covered(i, space) ? [i] : [];
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

/** Its upper side is a face or an edge of its board that is level, or nearly. */
const isFlatTop = ({ pose }: Piece): boolean =>
  Math.abs(pose.thickness[2]) > NEARLY_LEVEL || Math.abs(pose.width[2]) > NEARLY_LEVEL;

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
