/**
 * What the fill of a box does to its walls: each board presses outwards on what holds it, and bows between. Drained, the
 * moist fill at rest says how far it bows in the end; with a blocked drain, the saturated fill and its water say what it
 * must bear. Newtons and millimetres.
 */
import type { Scope } from "../../plan";
import { dot, type Vec3 } from "../../solid/vector";
import { type BeamLoad, type Bending, bend } from "../../strength/beam";
import { blockedDrain, pressureAt } from "../../strength/soil";
import { atRestShare } from "../../trade";
import type { Box } from "../boxes";
import { wallsOf } from "../choose";
import { otherOf, outward, type Space } from "../space";
import { longest } from "./carrying";
import { type Lie, lieOf, reachAlong } from "./lie";
import type { Fixing, Fixings } from "./links";

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

interface Fill {
  /** How high its surface and its bottom are. */
  readonly top: number;
  readonly low: number;
  /** kg/m3 */
  readonly moist: number;
  readonly saturated: number;
}

function fillOf({ placed, fill, fillBelowRim }: Box): Fill | undefined {
  const saturated = fill?.density.saturated?.approx;
  if (!placed || !saturated || !fillBelowRim) return undefined;
  const moist = fill?.density.moist?.approx ?? saturated;
  const { high, low } = placed.room;
  return { top: high - fillBelowRim.approx, low, moist: moist * 1e9, saturated: saturated * 1e9 };
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
  const { bounds, pose } = space.pieces[piece]!;
  // Boards that stand upright are held at their ends, which is not looked at.
  if (Math.abs(pose.length[2]) > Math.SQRT1_2) return undefined;
  const [from, to] = [fill.top - bounds.most[2], fill.top - Math.max(bounds.least[2], fill.low)];
  const top = Math.max(0, from);
  const out = outwardOf(box, piece, space);
  if (to - top < LEAST_DEPTH || !out) return undefined;
  const upright = lieOf(space.pieces[piece]!, panel);
  const lie = { ...upright, deep: upright.wide, wide: upright.deep };
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
    drained: evenly((d) => pressureAt(d, fill.moist, atRestShare.value) ?? 0),
    blocked: evenly((d) => blockedDrain(d, fill.saturated, atRestShare.value)?.total ?? 0),
  };
  const found = holdersOf(piece, out, lie, walls, space, fixings);
  const places = placesOf(found);
  const beam = { length: lie.length, supports: places.map((p) => p.at) };
  const [drained, blocked] = [loads.drained, loads.blocked].map((load) => bend({ ...beam, loads: [load] }));
  const holders = found.map((holder, n) => ({
    ...holder,
    force: places.reduce((sum, p, k) => (p.holder === n ? sum + (blocked?.reactions[k] ?? 0) : sum), 0),
  }));
  const span = longest(beam.supports);
  return {
    box,
    piece,
    lie,
    depth: to,
    holders,
    span,
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
  if (Math.abs(pose.thickness[2]) > Math.SQRT1_2 || !placed) return undefined;
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
    if (sameSide.has(other) || !isHeld(other, sameSide, space, fixings)) return [];
    const patch = meeting.patches[0]!;
    const towards = dot(outward(meeting, piece, patch), out);
    const joined = fixings(piece, other);
    if (joined.length === 0 && towards < FACING) return [];
    const glued = joined.some(({ joint }) => joint.entry.kind === "glue");
    const how = towards > FACING ? "outside" : glued ? "glued" : towards < -FACING ? "pulled" : "across";
    const [from, to] = reachAlong(lie, patch.patch);
    const at = to - from <= POINT ? [(from + to) / 2] : [from, (from + to) / 2, to];
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

/** A batten on boards of one side alone goes outwards with them. */
const isHeld = (other: number, sameSide: ReadonlySet<number>, space: Space, fixings: Fixings): boolean =>
  space.meetingsOf[other]!.some((m) => {
    const next = otherOf(space.meetings[m]!, other);
    return !sameSide.has(next) && fixings(other, next).length > 0;
  });

function placesOf(holders: readonly FoundHolder[]): { readonly at: number; readonly holder: number }[] {
  const all = holders.flatMap(({ at }, holder) => at.map((a) => ({ at: a, holder })));
  all.sort((a, b) => a.at - b.at);
  return all.filter((p, i) => i === 0 || p.at - all[i - 1]!.at > ONE_PLACE);
}

/** Where a wall is held, in order, mm from its own end. */
export const holdersAlong = ({ holders }: Pick<WallWork, "holders">): number[] =>
  placesOf(holders).map(({ at }) => at);

const PARALLEL = 0.99;
const FACING = 0.7;
/** mm */
const SAME_PLANE = 60;
const POINT = 200;
const ONE_PLACE = 10;
