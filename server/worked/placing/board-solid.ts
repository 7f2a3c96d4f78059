/** A part's piece as a solid in its own frame, worked out once for each shape; and how far it is its own mirror image. */
import { ifKnown, type Value } from "../../plan";
import { NUMERIC } from "../../solid/angle";
import { type Solid, solidOf, type TakenOut } from "../../solid/board";
import type { CutBoard } from "../../solid/ends";
import { isMirrored, type Pose } from "../../solid/pose";
import { mean, type Vec3 } from "../../solid/vector";
import type { Notch } from "../notches";
import type { Shape } from "../shapes";

/** Runs f on a shape of which every size is known. */
export function withSolid<T>(shape: Shape, f: (shape: Shape, cut: CutBoard) => Value<T>): Value<T> {
  if (shape.width.state !== "known") return shape.width;
  if (shape.thickness.state !== "known") return shape.thickness;
  if (shape.cut.state !== "known") return shape.cut;
  return f(shape, shape.cut.value);
}

const SOLIDS = new WeakMap<CutBoard, Solid>();

/** The solid of a piece; undefined when a size is not known, or the notches leave nothing. */
export function boardSolid(shape: Shape): Solid | undefined {
  const [cut, width, thickness] = [ifKnown(shape.cut), ifKnown(shape.width), ifKnown(shape.thickness)];
  if (!cut || !width || !thickness) return undefined;
  let solid = SOLIDS.get(cut);
  if (!solid) {
    const takenOut = takenOutOf(shape.notches, cut.overall, width.approx, thickness.approx);
    solid = solidOf({ cut, width: width.approx, thickness: thickness.approx, takenOut });
    SOLIDS.set(cut, solid);
  }
  return solid.block || solid.cells.length > 0 ? solid : undefined;
}

/** Blocks taken out: a notch out of the near edge through the thickness, a dado out of the under face across the width. */
function takenOutOf(notches: readonly Notch[], length: number, width: number, thickness: number): TakenOut[] {
  return notches.flatMap((notch): TakenOut[] => {
    const { along, into, where, distance } = notch;
    const box = (from: number): TakenOut => {
      const to = from + along.approx;
      return notch.kind === "notch"
        ? { from: [from, 0, 0], to: [to, into.approx, thickness] }
        : { from: [from, 0, 0], to: [to, width, into.approx] };
    };
    const left = box(0);
    const right = box(length - along.approx);
    if (where === "at left end") return [left];
    if (where === "at right end") return [right];
    if (where === "at both ends") return [left, right];
    const off = distance?.approx ?? 0;
    return [box(where === "from left" ? off : length - off - along.approx)];
  });
}

/** In which of its own directions a board is its own reflection; `all`: when turned over in all three at once. */
interface Even {
  readonly length: boolean;
  readonly width: boolean;
  readonly thickness: boolean;
  readonly all: boolean;
}

/** The directions in which the piece is its own reflection. */
function evenness(shape: Shape): Even {
  const corners = ifKnown(shape.cut)?.corners;
  const solid = boardSolid(shape);
  if (!corners || !solid) return { length: true, width: true, thickness: true, all: true };
  // Corners alone do not tell: those of a housing half as deep as the board lie alike on both its faces.
  const sets = [solid.cells.flatMap((c) => c.vertices), solid.cells.map((c) => mean(c.vertices))];
  const size: Vec3 = [
    ifKnown(shape.cut)!.overall,
    ifKnown(shape.width)!.approx,
    ifKnown(shape.thickness)!.approx,
  ];
  const even = (...over: (0 | 1 | 2)[]): boolean =>
    sets.every((points) =>
      points.every((p) =>
        points.some((q) =>
          ([0, 1, 2] as const).every(
            (j) => Math.abs((over.includes(j) ? size[j] - p[j] : p[j]) - q[j]) < 100 * NUMERIC,
          ),
        ),
      ),
    );
  return { length: even(0), width: even(1), thickness: even(2), all: even(0, 1, 2) };
}

/** A mirrored pose as a plain one, where the piece is its own mirror image; else the pose as it is. */
export function unmirrored(pose: Pose, shape: Shape): Pose {
  if (!isMirrored(pose)) return pose;
  const even = evenness(shape);
  if (even.length) return turnedOver(pose, shape, "length");
  if (even.thickness) return turnedOver(pose, shape, "thickness");
  if (even.width) return turnedOver(pose, shape, "width");
  return even.all ? turnedOver(pose, shape, "length", "width", "thickness") : pose;
}

function turnedOver(pose: Pose, shape: Shape, ...over: ("length" | "width" | "thickness")[]): Pose {
  const sizes = {
    length: ifKnown(shape.cut)?.overall ?? 0,
    width: ifKnown(shape.width)?.approx ?? 0,
    thickness: ifKnown(shape.thickness)?.approx ?? 0,
  };
  let turned = pose;
  for (const k of over) {
    const [x, y, z] = turned[k];
    const by = sizes[k];
    const from = turned.origin;
    const origin: Vec3 = [from[0] + by * x, from[1] + by * y, from[2] + by * z];
    turned = { ...turned, [k]: [-x, -y, -z], origin };
  }
  return turned;
}
