/** A board as a block: square to the world, or leaning. */
import type { Clause, Side } from "../../../grammar/tree";
import { chain, type Declared, ifKnown, known, map, say, type Value } from "../../plan";
import { radians } from "../../solid/angle";
import { boundsOf } from "../../solid/contact";
import { type Pose, placedAt, turned } from "../../solid/pose";
import type { Vec3 } from "../../solid/vector";
import { LENGTH, type Quantity, roughly } from "../../units";
import type { Worker } from "../expressions";
import type { Shapes } from "../shapes";
import { type Axis, axisOfSide, isFar } from "./axes";
import type { Block } from "./block";
import { withSolid } from "./board-solid";
import { type Frame, frameOf, lieOf, poseOf, withLongPoints } from "./frame";

/** A turn that tips what stands upright towards a side. */
export interface Lean {
  readonly degrees: number;
  readonly toward: Side;
}

/** How far a place line leans or slopes what it places; undefined when it does not. */
export function leanOf(
  clauses: readonly Clause[],
  worker: Worker,
  file: string,
): (() => Value<Lean>) | undefined {
  const clause = clauses.find((c) => c.kind === "leaning" || c.kind === "sloping");
  if (clause?.kind !== "leaning" && clause?.kind !== "sloping") return undefined;
  const { toward, start, end } = clause;
  if (toward === "in" || toward === "out" || axisOfSide(toward) === 2)
    return () => worker.fault({ kind: "impossible", at: { file, start, end }, why: "lean", what: toward });
  return () => map(leanAngle(clause, worker, file), (a): Lean => ({ degrees: a.approx, toward }));
}

/** What it leans by may ask how much room it takes, and that asks how it leans. */
export const leanAngle = (
  { angle, start, end }: Clause & { kind: "leaning" | "sloping" },
  worker: Worker,
  file: string,
): Value<Quantity> =>
  worker.once("lean", `${file} ${start}`, say("how it leans"), { file, start, end }, () =>
    worker.angle(angle, file),
  );

/** A direction after the lean. */
export function leaned({ degrees, toward }: Lean, v: Vec3): Vec3 {
  const k = axisOfSide(toward);
  const sign = isFar(toward) ? 1 : -1;
  const [s, c] = [Math.sin(radians(degrees)), Math.cos(radians(degrees))];
  const out: [number, number, number] = [v[0], v[1], v[2]];
  out[k] = c * v[k] + s * sign * v[2];
  out[2] = c * v[2] - s * sign * v[k];
  return out;
}

export const leanedPose = (lean: Lean, { length, width, thickness, origin }: Pose): Pose => ({
  length: leaned(lean, length),
  width: leaned(lean, width),
  thickness: leaned(lean, thickness),
  origin: leaned(lean, origin),
});

/** Sides on which a place line wants the long edge or the long face. */
const longSides = (clauses: readonly Clause[]): Side[] =>
  clauses.flatMap((c) => (c.kind === "long points at" ? [c.side] : []));

export function partBlock(
  declared: Declared,
  clauses: readonly Clause[],
  file: string,
  line: string,
  worker: Worker,
  shapes: Shapes,
): Block | undefined {
  const lie = lieOf(clauses);
  if (lie === "lie" || lie === "flat or on edge") return undefined;
  const frame = withLongPoints(frameOf(lie), longSides(clauses));
  const own = poseOf(frame);
  const lean = leanOf(clauses, worker, file);
  if (lean) {
    const pose = () => chain(lean(), (l) => withSolid(shapes.of(declared), () => known(leanedPose(l, own))));
    return askewBlock(line, pose, shapes, declared);
  }
  return {
    size: (axis) => sizeAlong(axis, frame, declared, shapes),
    thin: (axis) => axis === frame.thickness.axis,
    inside: () => [],
    boards: () =>
      withSolid(shapes.of(declared), (shape, cut) => {
        const size: Vec3 = [cut.overall, ifKnown(shape.width)!.approx, ifKnown(shape.thickness)!.approx];
        return known([{ part: declared.name, path: "", pose: fromCorner(own, size), owners: [], line }]);
      }),
  };
}

function sizeAlong(axis: Axis, frame: Frame, declared: Declared, shapes: Shapes): Value<Quantity> {
  if (frame.width.axis === axis) return shapes.width(declared);
  if (frame.thickness.axis === axis) return shapes.thickness(declared);
  return shapes.overall(declared);
}

/** The pose moved so that the block of that size has its lowest corner at 0. */
function fromCorner(pose: Pose, size: Vec3): Pose {
  const far = turned(pose, size);
  return { ...pose, origin: [Math.max(0, -far[0]), Math.max(0, -far[1]), Math.max(0, -far[2])] };
}

/** A block whose board stands in any pose: as large as the solid's bounds. */
function askewBlock(line: string, pose: () => Value<Pose>, shapes: Shapes, declared: Declared): Block {
  const stands = (): Value<{ pose: Pose; size: Vec3 }> =>
    chain(pose(), (p) =>
      withSolid(shapes.of(declared), (_, cut) => {
        const { least, most } = boundsOf(cut.corners.map((c) => placedAt(p, c)));
        const origin: Vec3 = [p.origin[0] - least[0], p.origin[1] - least[1], p.origin[2] - least[2]];
        return known({
          pose: { ...p, origin },
          size: [most[0] - least[0], most[1] - least[1], most[2] - least[2]],
        });
      }),
    );
  let done: ReturnType<typeof stands> | undefined;
  const once = () => (done ??= stands());
  return {
    size: (axis) => chain(once(), ({ size }) => known(roughly(LENGTH, size[axis]))),
    thin: () => false,
    inside: () => [],
    boards: () =>
      chain(once(), (s) => known([{ part: declared.name, path: "", pose: s.pose, owners: [], line }])),
  };
}
