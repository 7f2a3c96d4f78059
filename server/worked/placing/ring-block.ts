/** A ring as one block: its sides walked round, flat, on edge, or on edge and leaning. */
import { chain, ifKnown, known, map, type Value } from "../../plan";
import { cos, degrees, sin } from "../../solid/angle";
import { type Bounds, boundsOf } from "../../solid/contact";
import type { CutBoard } from "../../solid/ends";
import { type Pose, placedAt } from "../../solid/pose";
import { cross, type Vec3 } from "../../solid/vector";
import { LENGTH, type Quantity, roughly } from "../../units";
import type { Shape } from "../shapes";
import type { Axis } from "./axes";
import type { Block, BoardIn, Inside } from "./block";
import { type Lean, leanedPose } from "./part-block";
import { NOTHING } from "./stretch";

/** One side of a ring: its part, and the part's shape. */
export interface RingSideShape {
  readonly part: string;
  readonly shape: Shape;
}

export interface RingStand {
  readonly lies: "flat" | "on edge";
  /** How far the sides lean out (or in, less than 0) from upright, in degrees; only on edge. */
  readonly out: number;
}

/** The sides of the ring as they are walked round, from the outer corner at which the first begins; unknown when a size is. */
function ringPoses(sides: readonly RingSideShape[], stand: RingStand): Value<readonly Pose[]> {
  const cuts: { cut: CutBoard; width: number }[] = [];
  for (const { shape } of sides) {
    const { cut, width } = shape;
    if (cut.state !== "known") return cut;
    if (width.state !== "known") return width;
    cuts.push({ cut: cut.value, width: width.value.approx });
  }
  const inward = stand.out < 0;
  let heading = 0;
  let at: Vec3 = [0, 0, 0];
  const poses: Pose[] = [];
  const highest = Math.max(0, ...cuts.map((c) => c.width * cos(stand.out)));
  cuts.forEach(({ cut }, i) => {
    const next = cuts[(i + 1) % cuts.length]!;
    const along: Vec3 = [cos(heading), sin(heading), 0];
    const inner: Vec3 = [-sin(heading), cos(heading), 0];
    poses.push(sidePose(stand, at, along, inner, highest));
    const run = cut.arrises[0];
    at = [at[0] + run * along[0], at[1] + run * along[1], 0];
    heading += endTurn(cut, "right", stand) + endTurn(next.cut, "left", stand);
  });
  return known(inward ? poses.map(reflected) : poses);
}

function sidePose(stand: RingStand, at: Vec3, along: Vec3, inner: Vec3, highest: number): Pose {
  if (stand.lies === "flat") return { length: along, width: inner, thickness: [0, 0, 1], origin: at };
  const lean = Math.abs(stand.out);
  const [s, c] = [sin(lean), cos(lean)];
  if (stand.out >= 0) {
    const down: Vec3 = [s * inner[0], s * inner[1], -c];
    return { length: along, width: down, thickness: cross(along, down), origin: [at[0], at[1], highest] };
  }
  // Leaning in, the long edge is below; the walk is then turned about, so that the long face still looks out.
  const up: Vec3 = [s * inner[0], s * inner[1], c];
  const thickness = cross(up, along);
  return { length: along, width: up, thickness, origin: at };
}

/** The walk the other way round: seen from above its mirror image, left for right. */
const reflected = ({ length, width, thickness, origin }: Pose): Pose => {
  const over = ([x, y, z]: Vec3): Vec3 => [-x, y, z];
  return { length: over(length), width: over(width), thickness: over(thickness), origin: over(origin) };
};

/** By how much the ring turns at an end: the cut's angle as it shows on a level plane. */
export function endTurn(cut: CutBoard, end: "left" | "right", stand: RingStand): number {
  const first = end === "left" ? 0 : 4;
  const [a, b, c] = [cut.corners[first]!, cut.corners[first + 1]!, cut.corners[first + 2]!];
  const sign = end === "left" ? 1 : -1;
  const perWidth = ((b[0] - a[0]) / (b[1] - a[1])) * sign;
  const perThickness = ((c[0] - a[0]) / (c[2] - a[2])) * sign;
  if (stand.lies === "flat") return degrees(Math.atan(perWidth));
  // A level step inwards of 1: so far through the thickness, and so far down the width.
  const lean = Math.abs(stand.out);
  return degrees(Math.atan(perThickness * cos(lean) + perWidth * sin(lean)));
}

/** `parts` names the part of each side in order, which is known before any size is; `lean` tips the ring as a whole. */
export function ringBlock(
  parts: readonly string[],
  sides: () => Value<readonly RingSideShape[]>,
  stand: () => Value<RingStand>,
  lean: (() => Value<Lean>) | undefined,
  line: string,
): Block {
  let done: Value<Standing> | undefined;
  const stands = (): Value<Standing> =>
    (done ??= chain(stand(), (s) =>
      chain(sides(), (list) => chain(ringPoses(list, s), (poses) => tipped(list, poses))),
    ));
  const tipped = (list: readonly RingSideShape[], poses: readonly Pose[]): Value<Standing> =>
    lean
      ? map(lean(), (l) =>
          standing(
            list,
            poses.map((pose) => leanedPose(l, pose)),
          ),
        )
      : known(standing(list, poses));
  const numeric = (axis: Axis): Value<Quantity> =>
    chain(stands(), ({ size }) => known(roughly(LENGTH, size[axis])));
  return {
    size: (axis) => (lean ? undefined : exactSize(axis, sides, stand())) ?? numeric(axis),
    thin: () => false,
    inside: (part) => insideOf(part, parts, stands),
    boards: () =>
      chain(stands(), ({ sides: list, poses }) =>
        known(
          list.map(
            ({ part }, i): BoardIn => ({ part, path: String(i + 1), pose: poses[i]!, owners: [], line }),
          ),
        ),
      ),
  };
}

interface Standing {
  readonly sides: readonly RingSideShape[];
  readonly poses: readonly Pose[];
  readonly bounds: readonly Bounds[];
  readonly size: Vec3;
}

/** The sides in these poses, moved so that the lowest corner of all is at 0. */
function standing(sides: readonly RingSideShape[], poses: readonly Pose[]): Standing {
  const raw = poses.map((pose, i) =>
    boundsOf(ifKnown(sides[i]!.shape.cut)!.corners.map((c) => placedAt(pose, c))),
  );
  const all = boundsOf(raw.flatMap((b) => [b.least, b.most]));
  const moved = ([x, y, z]: Vec3): Vec3 => [x - all.least[0], y - all.least[1], z - all.least[2]];
  return {
    sides,
    poses: poses.map((p) => ({ ...p, origin: moved(p.origin) })),
    bounds: raw.map((b) => ({ least: moved(b.least), most: moved(b.most) })),
    size: moved(all.most),
  };
}

/** Four sides at square corners have sizes that need no trigonometry, while they stand level. */
function exactSize(
  axis: Axis,
  sides: () => Value<readonly RingSideShape[]>,
  stand: Value<RingStand>,
): Value<Quantity> | undefined {
  const [s, list] = [ifKnown(stand), ifKnown(sides())];
  if (s?.out !== 0 || list?.length !== 4 || axis === 2) return undefined;
  const square = list.every(({ shape }) => {
    const cut = ifKnown(shape.cut);
    return (
      cut &&
      shape.edges === "one" &&
      (["left", "right"] as const).every((end) => Math.abs(endTurn(cut, end, s) - 45) < 1e-9)
    );
  });
  if (!square) return undefined;
  const { shape } = list[axis]!;
  const opposite = ifKnown(list[axis + 2]!.shape.cut)!;
  const tips = shape.measured === "overall" || shape.measured === "long to long";
  return tips && Math.abs(opposite.overall - ifKnown(shape.cut)!.overall) < 1e-9 ? shape.length : undefined;
}

function insideOf(part: string, parts: readonly string[], stands: () => Value<Standing>): Inside[] {
  return parts.flatMap((name, i): Inside[] => {
    if (name !== part) return [];
    return [
      {
        stretches: (axis) =>
          map(stands(), ({ bounds }) => {
            const { least, most } = bounds[i]!;
            return [{ low: near(least[axis]), high: near(most[axis]), flipped: false }];
          }),
        thin: (axis) => {
          const pose = ifKnown(stands())?.poses[i];
          return pose !== undefined && Math.abs(Math.abs(pose.thickness[axis]) - 1) < 1e-9;
        },
      },
    ];
  });
}

const near = (mm: number): Quantity => (Math.abs(mm) < 1e-9 ? NOTHING : roughly(LENGTH, mm));
