/**
 * What the fill of a box does to its walls: each board presses outwards on what holds it, and bows between. Drained, the
 * moist fill at rest says how far it bows in the end; with a blocked drain, the saturated fill and its water say what it
 * must bear. Newtons and millimetres.
 */
import type { Scope } from "../../plan";
import { dot, type Vec3 } from "../../solid/vector";
import { type BeamLoad, type Bending, bend } from "../../strength/beam";
import { atRest, blockedDrain, pressureAt } from "../../strength/soil";
import { atRestShare, frictionAngle } from "../../trade";
import type { Box } from "../boxes";
import { wallsOf } from "../choose";
import { otherOf, outward, type Space } from "../space";
import type { Fixing, Fixings } from "./fixings";
import { isSteep, type Lie, lieOf, reachAlong } from "./lie";
import { longest, middleOf, onePlaces, POINT } from "./supports";

/** How a holder keeps a wall from going outwards: it stands outside of it, by screws pulled or across them, or by glue. */
export type WallHold = "outside" | "pulled" | "across" | "glued";

export interface WallHolder {
  /** By its place among all pieces. */
  readonly piece: number;
  readonly how: WallHold;
  readonly fixings: readonly Fixing[];
  /** mm from the wall's own end. */
  readonly at: readonly number[];
  /** What it holds back with a blocked drain. */
  readonly force: number;
}

export interface WallWork {
  readonly box: Box;
  readonly piece: number;
  readonly lie: Lie;
  /** Of the fill, at the board's lower edge, mm. */
  readonly depth: number;
  readonly holders: readonly WallHolder[];
  /** Where they hold it, in order, mm from its own end. */
  readonly supports: readonly number[];
  /** The longest stretch between two holders, mm. */
  readonly span: number;
  /** Undefined where fewer than two places hold it. */
  readonly bends: { readonly drained: Bending; readonly blocked: Bending } | undefined;
  readonly loads: { readonly drained: BeamLoad; readonly blocked: BeamLoad };
}

/** Each wall board that fill presses on. */
export function wallWork(
  boxes: readonly Box[],
  space: Space,
  scope: Scope,
  fixings: Fixings,
  isPanel: (piece: number) => boolean,
): WallWork[] {
  return boxes.flatMap((box) => {
    const fill = fillOf(box);
    if (!fill) return [];
    const walls = wallsOf(box.declared, space, scope);
    return walls.flatMap((piece) => workOf(box, fill, piece, walls, space, fixings, isPanel(piece)) ?? []);
  });
}

/** Boards that stand upright are held at their ends, which is not looked at. */
export const isUprightWall = (piece: number, { pieces }: Space): boolean =>
  isSteep(pieces[piece]!.pose.length);

interface Fill {
  /** How high its surface and its bottom are. */
  readonly top: number;
  readonly low: number;
  /** kg/m3 */
  readonly moist: number;
  readonly saturated: number;
  /** How much of its weight presses sideways. */
  readonly share: number;
}

function fillOf({ placed, fill, fillBelowRim }: Box): Fill | undefined {
  const saturated = fill?.density.saturated?.approx;
  if (!placed || !saturated || !fillBelowRim) return undefined;
  const moist = fill?.density.moist?.approx ?? saturated;
  const { high, low } = placed.room;
  const top = high - fillBelowRim.approx;
  return { top, low, moist: moist * 1e9, saturated: saturated * 1e9, share: shareOf(fill.name) };
}

/** All of it for water; of loose fill what its friction angle leaves at rest. */
function shareOf(fill: string): number {
  if (fill === "water") return 1;
  const angle = frictionAngle(fill);
  return (angle && atRest(angle.value)) ?? atRestShare.value;
}

function workOf(
  box: Box,
  fill: Fill,
  piece: number,
  walls: readonly number[],
  space: Space,
  fixings: Fixings,
  panel: boolean,
): WallWork | undefined {
  const { bounds } = space.pieces[piece]!;
  if (isUprightWall(piece, space)) return undefined;
  const [from, to] = [fill.top - bounds.most[2], fill.top - Math.max(bounds.least[2], fill.low)];
  const top = Math.max(0, from);
  const out = outwardOf(box, piece, space);
  if (to - top < LEAST_DEPTH || !out) return undefined;
  // Pushed on its face: what is its depth on edge is its width here.
  const onEdge = lieOf(space.pieces[piece]!, panel);
  const lie = { ...onEdge, deep: onEdge.wide, wide: onEdge.deep, flat: true };
  const room = box.placed!.room.rim;
  const axis = Math.abs(lie.along[0]) > Math.abs(lie.along[1]) ? 0 : 1;
  const inner = reachAlong(lie, [along(axis, room[axis].from), along(axis, room[axis].to)]);
  const [start, end] = inner[1] - inner[0] > 1 ? inner : [0, lie.length];
  const evenly = (pressure: (depth: number) => number): BeamLoad => {
    // Straight with depth, so that its middle tells its mean.
    const each = pressure((top + to) / 2) * (to - top);
    return { from: start, to: end, start: each, end: each };
  };
  const loads = {
    drained: evenly((d) => pressureAt(d, fill.moist, fill.share) ?? 0),
    blocked: evenly((d) => blockedDrain(d, fill.saturated, fill.share)?.total ?? 0),
  };
  const found = holdersOf(piece, out, lie, walls, space, fixings);
  const places = onePlaces(found.flatMap((holder) => holder.at.map((at) => ({ at, holder }))));
  const beam = { length: lie.length, supports: places.map(middleOf) };
  const [drained, blocked] = [loads.drained, loads.blocked].map((load) => bend({ ...beam, loads: [load] }));
  const forces = new Map<FoundHolder, number>();
  places.forEach((group, k) => {
    const here = [...new Set(group.map((p) => p.holder))];
    // What stands outside of a wall holds it before any screw does.
    const outside = here.filter(({ how }) => how === "outside");
    const by = outside.length > 0 ? outside : here;
    for (const holder of by)
      forces.set(holder, (forces.get(holder) ?? 0) + (blocked?.reactions[k] ?? 0) / by.length);
  });
  return {
    box,
    piece,
    lie,
    depth: to,
    holders: found.map((holder) => ({ ...holder, force: forces.get(holder) ?? 0 })),
    supports: beam.supports,
    span: longest(beam.supports),
    bends: drained && blocked && { drained, blocked },
    loads,
  };
}

/** Less fill than this against a board, in mm, does not press on it. */
const LEAST_DEPTH = 6;

const along = (axis: 0 | 1, at: number): Vec3 => (axis === 0 ? [at, 0, 0] : [0, at, 0]);

/** Away from the middle of the box, square to the wall; undefined for a board that lies flat. */
function outwardOf({ placed }: Box, piece: number, space: Space): Vec3 | undefined {
  const { pose, bounds } = space.pieces[piece]!;
  if (isSteep(pose.thickness) || !placed) return undefined;
  const [x, y] = placed.room.rim.map((r) => (r.from + r.to) / 2);
  const away: Vec3 = [
    (bounds.least[0] + bounds.most[0]) / 2 - x!,
    (bounds.least[1] + bounds.most[1]) / 2 - y!,
    0,
  ];
  const sign = dot(away, pose.thickness) < 0 ? -1 : 1;
  return [sign * pose.thickness[0], sign * pose.thickness[1], sign * pose.thickness[2]];
}

type FoundHolder = Omit<WallHolder, "force">;

function holdersOf(
  piece: number,
  out: Vec3,
  lie: Lie,
  walls: readonly number[],
  space: Space,
  fixings: Fixings,
): FoundHolder[] {
  const own = space.pieces[piece]!.pose.thickness;
  const sameSide = new Set(
    walls.filter(
      (w) => Math.abs(dot(space.pieces[w]!.pose.thickness, own)) > PARALLEL && isBeside(space, piece, w, out),
    ),
  );
  return space.meetingsOf[piece]!.flatMap((m): FoundHolder[] => {
    const meeting = space.meetings[m]!;
    const other = otherOf(meeting, piece);
    if (sameSide.has(other)) return [];
    const patch = meeting.patches[0]!;
    const towards = dot(outward(meeting, piece, patch), out);
    const joined = fixings(piece, other);
    if (joined.length === 0 && towards < FACING) return [];
    const reach = reachAlong(lie, patch.patch);
    const at = heldAt(other, reach, lie, sameSide, space, fixings);
    if (at.length === 0) return [];
    const glued = joined.some(({ joint }) => joint.entry.kind === "glue");
    const how = towards > FACING ? "outside" : glued ? "glued" : towards < -FACING ? "pulled" : "across";
    return [{ piece: other, how, fixings: joined, at }];
  });
}

/** Boards of one side of the box lie in one plane. */
function isBeside(space: Space, a: number, b: number, out: Vec3): boolean {
  const middle = (i: number): number => {
    const { least, most } = space.pieces[i]!.bounds;
    return dot(out, [(least[0] + most[0]) / 2, (least[1] + most[1]) / 2, (least[2] + most[2]) / 2]);
  };
  return Math.abs(middle(a) - middle(b)) < SAME_PLANE;
}

/**
 * Where along a wall something holds it: in the middle of a short one; a long one bends with the wall, but where it is held
 * itself. A batten on boards of one side alone goes outwards with them, and holds nothing.
 */
function heldAt(
  other: number,
  [from, to]: readonly [number, number],
  lie: Lie,
  sameSide: ReadonlySet<number>,
  space: Space,
  fixings: Fixings,
): number[] {
  const ties = space.meetingsOf[other]!.flatMap((m): number[] => {
    const next = otherOf(space.meetings[m]!, other);
    if (sameSide.has(next) || fixings(other, next).length === 0) return [];
    const [low, high] = reachAlong(lie, space.meetings[m]!.patches[0]!.patch);
    return [Math.min(to, Math.max(from, (low + high) / 2))];
  });
  return ties.length > 0 && to - from <= POINT ? [(from + to) / 2] : ties;
}

const PARALLEL = 0.99;
const FACING = 0.7;
/** mm */
const SAME_PLANE = 60;
