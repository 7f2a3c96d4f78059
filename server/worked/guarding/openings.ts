/** Openings between placed pieces: gaps across which two faces look at each other, less what stands in them or close behind. Millimetres. */
import { NUMERIC } from "../../solid/angle";
import { type Body, type Bounds, boundsApart, boundsOf } from "../../solid/contact";
import { type Convex, cut, type Facet } from "../../solid/convex";
import type { Vec3 } from "../../solid/vector";
import type { Piece } from "../pieces";
import type { Space } from "../space";
import { type Band, BODY, FINGER_STOP, FINGERS, HEADS, REACH } from "./sizes";
import type { Soil } from "./soil";
import { gapsIn } from "./uncovered";

export type Axis = 0 | 1 | 2;
const AXES = [0, 1, 2] as const;

export interface Opening {
  readonly catches: "finger" | "head";
  /** Places among all pieces: the one before it along the axis, and the one behind. */
  readonly first: number;
  readonly second: number;
  /** The direction across the gap. */
  readonly axis: Axis;
  readonly gap: number;
  /** Along the two pieces, the longest stretch that is open. */
  readonly long: number;
}

/** A face that is square to an axis, as the rectangle that it is. */
interface Face {
  readonly axis: Axis;
  readonly at: number;
  readonly bounds: Bounds;
}

interface Faces {
  /** Looking to the far side of an axis, and to its near one. */
  readonly far: readonly Face[];
  readonly near: readonly Face[];
}

interface Rules {
  readonly catches: Opening["catches"];
  readonly band: Band;
  /** How near behind it something closes it. */
  readonly stop: number;
  /** Both ends of the band are let be, and the opening must be closed all round. */
  readonly round: boolean;
  /** The least length. */
  readonly long: number;
}

/** A finger goes in over a length of as much as the widest gap that catches it. */
const FINGER: Rules = {
  catches: "finger",
  band: FINGERS,
  stop: FINGER_STOP,
  round: false,
  long: FINGERS.high,
};
const HEAD: Rules = { catches: "head", band: HEADS, stop: HEADS.low, round: true, long: HEADS.low };

/** Every opening that catches a finger or a head, each told once, by the pieces on its two sides and in the order of these. */
export function openingsIn(space: Space, soils: readonly Soil[]): Opening[] {
  const faces = space.pieces.map(facesOf);
  const fingers: Opening[] = [];
  const heads: Hole[] = [];
  space.pieces.forEach((piece, first) => {
    if (piece.bounds.least[2] >= REACH) return;
    for (const second of space.grid.near(piece.bounds, HEADS.high)) {
      if (second === first || !mayFace(piece, space.pieces[second]!)) continue;
      for (const far of faces[first]!.far)
        for (const near of faces[second]!.near) {
          const rules = far.axis === near.axis ? rulesFor(near.at - far.at) : undefined;
          const found = rules && openingBetween(far, near, rules, [first, second], space, soils);
          if (found?.opening.catches === "head") heads.push(found);
          else if (found) fingers.push(found.opening);
        }
    }
  });
  return [...fingers, ...once(heads)].sort(
    (a, b) =>
      Math.min(a.first, a.second) - Math.min(b.first, b.second) ||
      Math.max(a.first, a.second) - Math.max(b.first, b.second),
  );
}

/** Whether one lies beside the other along just one axis, and blocks in a way that may catch something. */
function mayFace(p: Piece, q: Piece): boolean {
  const [a, b] = [p.bounds, q.bounds];
  let apart = 0;
  let gap = 0;
  for (const k of AXES) {
    const behind = b.least[k] - a.most[k];
    if (behind <= 0 && b.most[k] >= a.least[k]) continue;
    if (++apart > 1) return false;
    gap = behind;
  }
  return !(isBlock(p) && isBlock(q)) || rulesFor(gap) !== undefined;
}

const isBlock = ({ cells }: Piece): boolean => cells.length === 1 && cells[0]!.aligned;

function rulesFor(gap: number): Rules | undefined {
  if (gap >= FINGERS.low - NUMERIC && gap <= FINGERS.high + NUMERIC) return FINGER;
  return gap > HEADS.low + NUMERIC && gap < HEADS.high - NUMERIC ? HEAD : undefined;
}

function facesOf({ cells }: Piece): Faces {
  const far: Face[] = [];
  const near: Face[] = [];
  for (const cell of cells)
    if (cell.aligned) {
      const { least, most } = cell.bounds;
      for (const axis of AXES) {
        if (!cell.sides[cell.looks[2 * axis + 1]!]!.inner)
          far.push({ axis, at: most[axis], bounds: cell.bounds });
        if (!cell.sides[cell.looks[2 * axis]!]!.inner)
          near.push({ axis, at: least[axis], bounds: cell.bounds });
      }
    } else
      for (const facet of cell.facets) {
        const face = facet.inner ? undefined : faceOf(cell, facet);
        if (face) (face.far ? far : near).push(face);
      }
  return { far, near };
}

function faceOf({ vertices }: Body, { normal, loop }: Facet): (Face & { far: boolean }) | undefined {
  const axis = AXES.find((k) => Math.abs(normal[k]) > SQUARE);
  if (axis === undefined) return undefined;
  const bounds = boundsOf(loop.map((i) => vertices[i]!));
  return { axis, at: bounds.most[axis], bounds, far: normal[axis] > 0 };
}

/** Cosine from which a face is square to an axis. */
const SQUARE = 1 - 1e-9;

const OTHERS = [
  [1, 2],
  [0, 2],
  [0, 1],
] as const;

function openingBetween(
  far: Face,
  near: Face,
  { catches, band, stop, round, long }: Rules,
  [first, second]: readonly [number, number],
  space: Space,
  soils: readonly Soil[],
): Hole | undefined {
  const { axis } = far;
  const span = (k: Axis): [number, number] => [
    Math.max(far.bounds.least[k], near.bounds.least[k]),
    Math.min(far.bounds.most[k], near.bounds.most[k]),
  ];
  const [a, b] = OTHERS[axis];
  const [one, other] = [span(a), span(b)];
  const [wideA, wideB] = [one[1] - one[0], other[1] - other[0]];
  if (Math.min(wideA, wideB) < EDGE || Math.max(wideA, wideB) < long - NUMERIC) return undefined;
  // What is looked through is the way through the thinner side of the two.
  const [along, through] = wideA >= wideB - NUMERIC ? [a, b] : [b, a];
  const [length, thick] = along === a ? [one, other] : [other, one];
  const gap = near.at - far.at;
  const least: [number, number, number] = [0, 0, 0];
  const most: [number, number, number] = [0, 0, 0];
  [least[axis], most[axis]] = [far.at, near.at];
  [least[through], most[through]] = [thick[0] - stop, thick[1] + stop];
  [least[along], most[along]] = [length[0] - ENDS, length[1] + ENDS];
  const all: Bounds = { least, most };
  const closed: [number, number][] = [];
  const grounded = least[2] < 0;
  if (grounded && through === 2) return undefined;
  if (grounded && along === 2) closed.push([least[2], 0]);
  const close = (part: Bounds): void => {
    const inside = part.most[through] > thick[0] + NUMERIC && part.least[through] < thick[1] - NUMERIC;
    const left = Math.max(part.least[axis] - far.at, near.at - part.most[axis]);
    // Behind it, what leaves enough of the gap open does not close it.
    if (inside || (round ? left <= band.low + NUMERIC : left < band.low - NUMERIC))
      closed.push([part.least[along], part.most[along]]);
  };
  for (const i of space.grid.near(all, 0))
    for (const cell of space.pieces[i]!.cells) {
      if (boundsApart(cell.bounds, all) > -NUMERIC) continue;
      const part = cell.aligned ? cell.bounds : within(cell, all);
      if (part) close(part);
    }
  for (const { bounds } of soils) if (boundsApart(bounds, all) < -NUMERIC) close(bounds);
  const open = gapsIn([least[along], most[along]], closed).map(([from, to]): [number, number] =>
    round ? [from, to] : [Math.max(from, length[0]), Math.min(to, length[1])],
  );
  // Too high up is out of reach.
  const low = (from: number): number => (along === 2 ? from : axis === 2 ? far.at : thick[0]);
  const fits = ([from, to]: [number, number]): boolean => {
    if (to - from < long - NUMERIC || low(from) > REACH - NUMERIC) return false;
    if (!round) return true;
    const [small, large] = [Math.min(gap, to - from), Math.max(gap, to - from)];
    const bounded = from > least[along] + NUMERIC && to < most[along] - NUMERIC;
    const onGround = along === 2 && from < NUMERIC;
    return bounded && !onGround && small > band.low + NUMERIC && large >= BODY - NUMERIC;
  };
  const caught = open.filter(fits);
  if (caught.length === 0) return undefined;
  const longest = caught.reduce((x, y) => (y[1] - y[0] > x[1] - x[0] + NUMERIC ? y : x));
  [least[through], most[through]] = thick;
  [least[along], most[along]] = longest;
  return {
    opening: { catches, first, second, axis, gap, long: longest[1] - longest[0] },
    through,
    bounds: { least, most },
  };
}

/** Thinner edges, in mm, close nothing in. */
const EDGE = 3;
/** An end that something closes within so much is closed: 1/2". */
const ENDS = 12.7;

/** An opening with where it is. */
interface Hole {
  readonly opening: Opening;
  readonly through: Axis;
  readonly bounds: Bounds;
}

/** A hole may be found by either two of its four sides: the narrower way across tells it. */
function once(holes: readonly Hole[]): Opening[] {
  const kept: Hole[] = [];
  for (const hole of [...holes].sort(byGap)) if (!kept.some((k) => isSame(k, hole))) kept.push(hole);
  return kept.map((k) => k.opening);
}

/** The narrowest first; of those alike the one of the pieces that the plan names first. */
function byGap({ opening: p }: Hole, { opening: q }: Hole): number {
  if (Math.abs(p.gap - q.gap) > NUMERIC) return p.gap - q.gap;
  return Math.min(p.first, p.second) - Math.min(q.first, q.second) || p.axis - q.axis;
}

/** Both are looked through the same way, and lie one behind the other. */
const isSame = (a: Hole, b: Hole): boolean =>
  a.through === b.through &&
  boundsApart(a.bounds, b.bounds) <= FINGERS.high &&
  OTHERS[a.through].every((k) => {
    const middle = (h: Hole): number => h.bounds.least[k] + h.bounds.most[k];
    return Math.abs(middle(a) - middle(b)) < 2 * ENDS;
  });

/** What of a body that stands at a slant lies in these bounds. */
function within(cell: Body, { least, most }: Bounds): Bounds | undefined {
  let part: Convex | undefined = cell;
  for (const k of AXES) {
    const normal: Vec3 = [k === 0 ? 1 : 0, k === 1 ? 1 : 0, k === 2 ? 1 : 0];
    const back: Vec3 = [-normal[0], -normal[1], -normal[2]];
    part = part && cut(part, { normal, offset: most[k], side: "upper face" });
    part = part && cut(part, { normal: back, offset: -least[k], side: "upper face" });
  }
  // A cut leaves corners that no face has any more.
  return part && boundsOf(part.facets.flatMap((f) => f.loop.map((i) => part!.vertices[i]!)));
}
