/** Which screws stand too near a side of a piece, and what would help: read off where they go in. Millimetres. */
import type { BoardSide } from "../solid/convex";
import { dot } from "../solid/vector";
import { metricDiameters, placing, screwGauges, usualScrewLengths } from "../trade";
import { fraction, INCH } from "../units";
import { screwsOf } from "./driving";
import type { Joint } from "./joints";
import type { Piece } from "./pieces";
import { faceName, nearly, TIGHT } from "./screw-facts";
import type { Clearance, PlacedScrew } from "./screw-way";
import type { Worked } from "./work";

const INCH_MM = fraction.toNumber(INCH);

/** Least wood from the center of a screw to a side beside it, in diameters. */
export const EDGE_RULE = placing.find((row) => row.key === "screw edge distance")!;

export type SideName = "edge" | "end" | "face" | "notch";

export interface NearSide {
  readonly screw: PlacedScrew;
  readonly piece: Piece;
  readonly side: SideName;
  /** From the center of the screw. */
  readonly distance: number;
}

/** What the rule asks for a screw of that diameter. */
export const edgeDistance = (diameter: number): number => EDGE_RULE.value.bored * diameter;
/** A millimetre less is let be: nobody sets a screw finer. */
const SLACK = 1;
const tooNear = (distance: number, diameter: number): boolean =>
  distance < edgeDistance(diameter) - SLACK - TIGHT;

/** Screws that stand nearer to a side than the rule asks, the nearest first. */
export function nearSides(joint: Joint, worked: Worked): NearSide[] {
  const { placed, size } = joint;
  if (!placed || !size) return [];
  const diameter = size.diameter.approx;
  return placed.screws
    .flatMap((screw): NearSide[] => {
      const { nearest } = screw;
      if (!nearest || !tooNear(nearest.wood + diameter / 2, diameter)) return [];
      const piece = worked.space.pieces[nearest.piece]!;
      const distance = Math.max(0, nearest.wood + diameter / 2);
      return [{ screw, piece, side: sideOf(piece, nearest, screw, distance), distance }];
    })
    .sort((a, b) => nearly(a.distance, b.distance));
}

/** A side of the board's own block, or one that a notch left further in. */
function sideOf(piece: Piece, { side }: Clearance, screw: PlacedScrew, distance: number): SideName {
  const name = faceName(side);
  if (piece.cells.length < 2) return name;
  const axis = { end: piece.pose.length, edge: piece.pose.width, face: piece.pose.thickness }[name];
  const at = dot(screw.start, axis);
  const reach = piece.cells.flatMap((c) => c.vertices.map((v) => dot(v, axis)));
  const outer = FAR.includes(side) ? Math.max(...reach) - at : at - Math.min(...reach);
  return outer > distance + 1 ? "notch" : name;
}

const FAR: readonly BoardSide[] = ["right end", "far edge", "upper face"];

/** How many screws in place of each `count` would all stand far enough from every side; undefined when none would. */
export function fewerScrews(joint: Joint, worked: Worked): number | undefined {
  const { placed, size, entry, angle } = joint;
  const driven = entry.clauses.find((c) => c.kind === "driven");
  if (!placed || !size || joint.spacing || driven?.count?.kind !== "literal") return undefined;
  const place = driven.place ?? entry.clauses.find((c) => c.kind === "joint place")?.place;
  if (place?.at === "in all" || place?.at === "along it") return undefined;
  const now = Number(driven.count.text);
  const diameter = size.diameter.approx;
  for (let count = Math.min(now - 1, MOST_TRIED); count >= 1; count--) {
    const screws = screwsOf(worked.space, placed.crossings, {
      count,
      place,
      spacing: undefined,
      angle: angle.approx,
      length: size.length.approx,
      diameter,
    });
    const near = screws.some((s) => s.nearest && tooNear(s.nearest.wood + diameter / 2, diameter));
    if (!near) return count;
  }
  return undefined;
}

const MOST_TRIED = 12;

/** The thickest screw usually sold, thinner than this one, that may stand so near to a side: `#6`, `3.5 mm`. */
export function thinnerScrew({ size }: Joint, distance: number): string | undefined {
  if (!size) return undefined;
  const sold =
    size.gauge === undefined
      ? metricDiameters.map(({ value }) => ({ name: `${value} mm`, diameter: value }))
      : screwGauges
          .filter(({ gauge }) => usualScrewLengths(gauge))
          .map(({ gauge, shank }) => ({
            name: `#${gauge}`,
            diameter: Number(shank.value) * INCH_MM,
          }));
  return sold.filter((s) => s.diameter < size.diameter.approx && !tooNear(distance, s.diameter)).at(-1)?.name;
}
