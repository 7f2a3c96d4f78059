/**
 * A board's two end cuts and what they do to its lengths.
 *
 * The board lies with its length along x, its width along y (0 to width) and its thickness along z
 * (0 to thickness). Each end is one plane, given as a saw is set: `miter` is the swing off square across
 * the width, `bevel` the tilt of the blade off square through the thickness. The left end's long point is
 * the corner y = 0, z = 0. Millimetres and degrees throughout.
 */
import { cos, NUMERIC, tan, usable } from "./angle";
import type { Vec3 } from "./vector";

export interface EndCut {
  readonly miter: number;
  readonly bevel: number;
}

/**
 * What a stated length runs between, always along the board: the two long points (the same as the overall
 * length), the two short points, or the left end's long point and the right end's short point. A point is
 * the longest or shortest corner of its end, bevel included.
 */
export type Measured = "long-long" | "short-short" | "long-short" | "overall";
/** Whether both ends have their long points on one edge (a trapezoid) or on opposite edges (a parallelogram). */
export type LongPoints = "one" | "opposite";

export interface BoardEnds {
  readonly measured: Measured;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly left: EndCut;
  readonly right: EndCut;
  /** For the miters, across the two edges. */
  readonly edges: LongPoints;
  /** For the bevels, across the two faces; as `edges` when left out. */
  readonly faces?: LongPoints;
}

export interface CutBoard {
  readonly kind: "cut";
  /** Tip to tip along the board: what must be cut from stock. */
  readonly overall: number;
  /** Between the two long points, along the board; equal to `overall`. */
  readonly longPoint: number;
  /** Between the two short points, along the board. Negative when the cuts of a short parallelogram pass each other. */
  readonly shortPoint: number;
  /** The longest of the board's four arrises. */
  readonly longEdge: number;
  /** The shortest of the board's four arrises (the heel's edge of a trapezoid); 0 for a triangle. */
  readonly shortEdge: number;
  /** The four arrises: at y = 0 and y = width on the face z = 0, then the same on the face z = thickness. */
  readonly arrises: readonly [number, number, number, number];
  /** How far each end's short point lies behind its long point, along the board. */
  readonly setback: { readonly left: number; readonly right: number };
  /** Left end of each arris in their order, then the right end of each; x = 0 at the left long point. */
  readonly corners: readonly Vec3[];
  /** Cubic millimetres. */
  readonly volume: number;
  readonly centroid: Vec3;
}

export interface UncuttableBoard {
  readonly kind: "impossible";
  /** Not a usable number; no length; no width or thickness; an angle below 0 or at 90 and more; ends that cross. */
  readonly reason: "number" | "length" | "section" | "angle" | "ends-cross";
  /** For `ends-cross`: the stated length, measured as it was, at which the ends only just meet. */
  readonly least?: number;
}

/** The lengths, corners, volume and centroid of a board with these end cuts, or why it cannot be cut. Never throws. */
export function lengths(board: BoardEnds): CutBoard | UncuttableBoard {
  const fault = faultOf(board);
  if (fault) return { kind: "impossible", reason: fault };
  const { width, thickness, length } = board;
  const left = slopeOf(board.left);
  const right = slopeOf(board.right);
  const setback = { left: width * left.y + thickness * left.z, right: width * right.y + thickness * right.z };
  const rightRises = board.edges === "opposite";
  const rightRisesInZ = (board.faces ?? board.edges) === "opposite";

  /** How far the end lies behind its long point at y, z. */
  const leftAt = (y: number, z: number): number => y * left.y + z * left.z;
  const rightAt = (y: number, z: number): number =>
    (rightRises ? width - y : y) * right.y + (rightRisesInZ ? thickness - z : z) * right.z;

  const beyond = beyondLength(board.measured, setback);
  const overall = length + beyond;
  const section = SECTION.map(([y, z]) => [y * width, z * thickness] as const);
  const lost = section.map(([y, z]) => leftAt(y, z) + rightAt(y, z));
  const most = Math.max(...lost);
  const arris = (i: number): number => Math.max(0, overall - lost[i]!);
  const arrises = [arris(0), arris(1), arris(2), arris(3)] as const;
  if (overall - most < -NUMERIC || Math.max(...arrises) < NUMERIC)
    return { kind: "impossible", reason: "ends-cross", least: most - beyond };

  const corners: Vec3[] = [
    ...section.map(([y, z]): Vec3 => [leftAt(y, z), y, z]),
    ...section.map(([y, z]): Vec3 => [overall - rightAt(y, z), y, z]),
  ];
  return {
    kind: "cut",
    overall,
    longPoint: overall,
    shortPoint: overall - setback.left - setback.right,
    longEdge: Math.max(...arrises),
    shortEdge: Math.min(...arrises),
    arrises,
    setback,
    corners,
    ...massOf(corners, width, thickness),
  };
}

/** The corners of the section, as shares of width and thickness, in the order of the arrises. */
const SECTION = [
  [0, 0],
  [1, 0],
  [0, 1],
  [1, 1],
] as const;

function faultOf(board: BoardEnds): UncuttableBoard["reason"] | undefined {
  const angles = [board.left.miter, board.left.bevel, board.right.miter, board.right.bevel];
  const all = [board.length, board.width, board.thickness, ...angles];
  if (!all.every(usable)) return "number";
  if (board.length <= 0) return "length";
  if (board.width <= 0 || board.thickness <= 0) return "section";
  return angles.some((a) => a < 0 || a >= 90) ? "angle" : undefined;
}

/**
 * How fast an end recedes across the width and through the thickness. The blade tilts about the mitred line,
 * so along the board, as seen on the edge, the tilt shows as tan(bevel) / cos(miter).
 */
const slopeOf = (cut: EndCut): { y: number; z: number } => ({
  y: tan(cut.miter),
  z: tan(cut.bevel) / cos(cut.miter),
});

function beyondLength(measured: Measured, setback: { left: number; right: number }): number {
  if (measured === "short-short") return setback.left + setback.right;
  return measured === "long-short" ? setback.right : 0;
}

/**
 * Both ends are planes, so x at each is linear in y and z, and over a rectangle the mean of a product of two
 * linear functions is the product at the middle plus slope * slope * side^2 / 12 for each side.
 */
function massOf(
  corners: readonly Vec3[],
  width: number,
  thickness: number,
): { volume: number; centroid: Vec3 } {
  const end = (at: number): { mid: number; y: number; z: number } => {
    const [a, b, c, d] = [0, 1, 2, 3].map((i) => corners[at + i]![0]) as [number, number, number, number];
    return { mid: (a + b + c + d) / 4, y: (b - a) / width, z: (c - a) / thickness };
  };
  const l = end(0);
  const r = end(4);
  const yy = (width * width) / 12;
  const zz = (thickness * thickness) / 12;
  const middle = r.mid - l.mid;
  const square = (e: typeof l): number => e.mid * e.mid + e.y * e.y * yy + e.z * e.z * zz;
  return {
    volume: width * thickness * middle,
    centroid: [
      (square(r) - square(l)) / (2 * middle),
      width / 2 + ((r.y - l.y) * yy) / middle,
      thickness / 2 + ((r.z - l.z) * zz) / middle,
    ],
  };
}
