/** How a placed piece lies, as whatever it carries sees it: a beam along one of its sides, or upright. Millimetres. */
import { dot, spanAlong, type Vec3 } from "../../solid/vector";
import type { Piece } from "../pieces";

export interface Lie {
  /** A beam bends; what is upright, a panel on edge too, only hands on what it carries. */
  readonly is: "beam" | "upright";
  readonly along: Vec3;
  /** From its own end. */
  readonly length: number;
  /** Of its section: level, and up and down. */
  readonly wide: number;
  readonly deep: number;
  /** A board that lies on its wide face. */
  readonly flat: boolean;
  readonly start: number;
  readonly panel: boolean;
  /** A panel that bends along its width. */
  readonly across: boolean;
  /** The side of its face that lies square to `along`. */
  readonly beside: Vec3;
}

/** `across` lets a panel bend along its width instead of along its length. */
export function lieOf(piece: Piece, panel: boolean, across = false): Lie {
  const { pose } = piece;
  const [along, other] = across ? [pose.width, pose.length] : [pose.length, pose.width];
  const [start, end] = reachOf(piece, along);
  const size = (axis: Vec3): number => {
    const [from, to] = reachOf(piece, axis);
    return to - from;
  };
  const flat = Math.abs(pose.thickness[2]) >= Math.abs(other[2]);
  const [thick, broad] = [size(pose.thickness), size(other)];
  return {
    is: isUpright(piece, panel) ? "upright" : "beam",
    along,
    length: end - start,
    wide: flat ? broad : thick,
    deep: flat ? thick : broad,
    flat,
    start,
    panel,
    across,
    beside: other,
  };
}

/** A board whose length stands up, or a panel on edge. */
export const isUpright = ({ pose }: Piece, panel: boolean): boolean =>
  isSteep(pose.length) || (panel && !isSteep(pose.thickness));

/** Steeper than 45°: a board along it is upright, a face square to it is one that things lie on. */
export const isSteep = (axis: Vec3): boolean => Math.abs(axis[2]) > Math.SQRT1_2;

/** From where to where a piece reaches along a direction of the world. */
function reachOf({ cells, bounds: { least, most } }: Piece, axis: Vec3): readonly [number, number] {
  for (const k of [0, 1, 2] as const) {
    if (axis[k] === 1) return [least[k], most[k]];
    if (axis[k] === -1) return [-most[k], -least[k]];
  }
  return spanAlong(
    cells.flatMap((c) => c.vertices),
    axis,
  );
}

/** Where a point of the world is along it, from its end. */
export const placeAlong = ({ along, start }: Lie, at: Vec3): number => dot(along, at) - start;

/** From where to where points of the world reach along it, within its own length. */
export function reachAlong(lie: Lie, points: readonly Vec3[]): readonly [from: number, to: number] {
  const [from, to] = spanAlong(points, lie.along);
  const within = (at: number): number => Math.min(lie.length, Math.max(0, at - lie.start));
  return [within(from), within(to)];
}
