/** How a thing stands: its feet, what it weighs and where, the tops that are sat on, and what wind finds of it. */
import { HAIRLINE } from "../../solid/contact";
import { areaOf, massOf } from "../../solid/convex";
import { sailOf } from "../../strength/sail";
import { hullOf, type Mass, narrowest, type Point } from "../../strength/topple";
import type { Piece } from "../pieces";
import { SEAT, SEAT_WIDTH, WIND } from "./limits";

/** In what state it is looked at. */
export type State = "standing" | "empty" | "dry" | "wet on one side" | "loaded";

/** What weighs on an edge: someone on a top, or a load of the plan's own. */
export interface Perch {
  readonly is: "seat" | "load";
  /** The part that carries it. */
  readonly on: string;
  readonly kg: number;
  /** Where it may come, and how far within the outline of these its middle stays; mm. */
  readonly points: readonly Point[];
  readonly inset: number;
  readonly height: number;
}

/** A gust: kilograms along a direction, and how high its middle is. */
export interface Gust {
  readonly kg: number;
  readonly way: Point;
  readonly height: number;
}

/** All that decides whether a thing tips over. Millimetres and kilograms. */
export interface Stance {
  /** Corners of the feet's outline. */
  readonly base: readonly Point[];
  readonly high: number;
  readonly states: readonly { readonly state: State; readonly mass: Mass }[];
  readonly perches: readonly Perch[];
  readonly gusts: readonly Gust[];
  /** Everything in it has a known weight. */
  readonly weighed: boolean;
}

/** The outline of the feet: of the corners of these pieces that are on the floor. */
export function baseOf(pieces: readonly Piece[]): Point[] {
  return hullOf(
    pieces
      .filter((p) => p.bounds.least[2] <= HAIRLINE)
      .flatMap((p) =>
        p.cells.flatMap((cell): Point[] =>
          cell.aligned
            ? cell.bounds.least[2] > HAIRLINE
              ? []
              : cornersOf(cell.bounds)
            : cell.vertices.filter((v) => v[2] <= HAIRLINE).map(([x, y]): Point => [x, y]),
        ),
      ),
  );
}

export const cornersOf = ({ least, most }: Piece["bounds"]): Point[] => [
  [least[0], least[1]],
  [most[0], least[1]],
  [most[0], most[1]],
  [least[0], most[1]],
];

/** A piece as a weight in its middle. */
export function massOfPiece({ cells, bounds }: Piece, kg: number): Mass {
  if (cells.length === 1 && cells[0]!.aligned) {
    const { least, most } = bounds;
    return { kg, at: [(least[0] + most[0]) / 2, (least[1] + most[1]) / 2, (least[2] + most[2]) / 2] };
  }
  const masses = cells.map((cell) => massOf(cell));
  const volume = masses.reduce((sum, m) => sum + m.volume, 0);
  const middle = (k: 0 | 1 | 2): number =>
    masses.reduce((sum, m) => sum + m.volume * m.centroid[k], 0) / volume;
  return { kg, at: [middle(0), middle(1), middle(2)] };
}

/** A level face of a piece, wide enough and low enough to sit or stand on. */
export interface Top {
  readonly points: readonly Point[];
  readonly height: number;
}

export function seatsOf({ cells, bounds }: Piece): Top[] {
  if (bounds.most[2] < SEAT.low - HAIRLINE || bounds.least[2] > SEAT.high) return [];
  return cells.flatMap((cell): Top[] => {
    if (cell.aligned) {
      const { least, most } = cell.bounds;
      const wide = Math.min(most[0] - least[0], most[1] - least[1]);
      return isSeat(most[2], wide) ? [{ points: cornersOf(cell.bounds), height: most[2] }] : [];
    }
    return cell.facets.flatMap((f) => {
      if (f.inner || f.normal[2] < LEVEL) return [];
      const corners = f.loop.map((i) => cell.vertices[i]!);
      const points = corners.map(([x, y]): Point => [x, y]);
      const height = Math.max(...corners.map((c) => c[2]));
      return isSeat(height, narrowest(hullOf(points))) ? [{ points, height }] : [];
    });
  });
}

/** Cosine up to which a top counts as level: 2°. */
const LEVEL = 0.9994;

const isSeat = (height: number, wide: number): boolean =>
  height >= SEAT.low - HAIRLINE && height <= SEAT.high + HAIRLINE && wide >= SEAT_WIDTH - HAIRLINE;

/** What a gust does to these pieces from each of the four sides. Boards square to the world shelter each other; others show all. */
export function gustsOf(pieces: readonly Piece[]): Gust[] {
  return ([0, 1] as const).flatMap((axis) => {
    const across = axis === 0 ? 1 : 0;
    const cells = pieces.flatMap((p) => p.cells);
    const square = cells.filter((c) => c.aligned);
    const sail = sailOf(
      square.map(({ bounds: { least, most } }) => ({
        across: [least[across], most[across]],
        up: [least[2], most[2]],
      })),
    );
    let { area } = sail;
    let moment = area * sail.height;
    for (const cell of cells) {
      if (cell.aligned) continue;
      const shown = cell.facets.reduce((sum, f) => sum + Math.max(0, f.normal[axis]) * areaOf(cell, f), 0);
      area += shown;
      moment += shown * massOf(cell).centroid[2];
    }
    if (!(area > 0)) return [];
    const [kg, height] = [area * WIND, moment / area];
    const way = (sign: 1 | -1): Point => (axis === 0 ? [sign, 0] : [0, sign]);
    return [
      { kg, height, way: way(1) },
      { kg, height, way: way(-1) },
    ];
  });
}
