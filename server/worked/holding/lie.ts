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
  /** A panel that bends along its width. */
  readonly across: boolean;
}

/** `across` lets a panel bend along its width instead of along its length. */
export function lieOf(piece: Piece, panel: boolean, across = false): Lie {
  const { pose } = piece;
  const [along, other] = across ? [pose.width, pose.length] : [pose.length, pose.width];
  const points = piece.cells.flatMap((c) => c.vertices);
  const span = (v: Vec3): readonly [number, number] => spanAlong(points, v);
  const [start, end] = span(along);
  const size = (v: Vec3): number => span(v)[1] - span(v)[0];
  const flat = Math.abs(pose.thickness[2]) >= Math.abs(other[2]);
  const upright = Math.abs(along[2]) > STEEP || (panel && !flat);
  const [thick, broad] = [size(pose.thickness), size(other)];
  return {
    is: upright ? "upright" : "beam",
    along,
    length: end - start,
    wide: flat ? broad : thick,
    deep: flat ? thick : broad,
    flat,
    start,
    across,
  };
}

/** Where a point of the world is along it, from its end. */
export const placeAlong = ({ along, start }: Lie, at: Vec3): number => dot(along, at) - start;

/** From where to where points of the world reach along it, within its own length. */
export function reachAlong(lie: Lie, points: readonly Vec3[]): readonly [from: number, to: number] {
  const [from, to] = spanAlong(points, lie.along);
  const within = (at: number): number => Math.min(lie.length, Math.max(0, at - lie.start));
  return [within(from), within(to)];
}

/** Steeper than 45° a board is upright. */
const STEEP = Math.SQRT1_2;
