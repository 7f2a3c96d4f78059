/** The thing drawn apart: every piece moved off what it lies on, with the way it was moved as a dash-dot line. */
import type { Body } from "../../solid/contact";
import { dot, type Vec3 } from "../../solid/vector";
import type { Drawing } from "../display";
import { movesOf } from "./apart";
import { GUTTER } from "./balloons";
import { type DrawingOptions, laidOut, titleOf } from "./draw";
import { MARGIN, PAGE_WIDTH } from "./page";
import type { DrawnPiece } from "./pieces";
import { scaleWords } from "./scale";
import { touches } from "./touching";
import { trailItems, trailsOf } from "./trails";
import { viewOf } from "./views";

/** The pieces drawn apart, from the side of the turned view. When some say how they come apart, those are moved so and the others stay. */
export function drawExploded(pieces: readonly DrawnPiece[], options: DrawingOptions): Drawing {
  const view = viewOf("turned");
  const pairs = touches(pieces);
  const moves = movesOf(pieces, pairs, view);
  const moved = pieces.map((piece, i) => movedBy(piece, moves[i]!));
  const trails = trailsOf(pairs, moves);
  return laidOut(
    {
      pieces: moved,
      view,
      room: { width: PAGE_WIDTH - 2 * MARGIN - 2 * GUTTER, height: HIGHEST },
      system: options.system,
      hidden: false,
      gutters: ["left", "right", "top", "bottom"],
      extra: (fit) => trailItems(trails, moved, view, fit),
      measures: () => [],
    },
    (scale) => ({
      title: titleOf(pieces, `${options.name} drawn apart, ${scaleWords(scale)}`, options.words),
      caption: `drawn apart, ${scaleWords(scale)}`,
    }),
  );
}

/** The piece moved as it stands. */
export function movedBy(piece: DrawnPiece, by: Vec3): DrawnPiece {
  const move = ([x, y, z]: Vec3): Vec3 => [x + by[0], y + by[1], z + by[2]];
  const body = (cell: Body): Body => ({
    ...cell,
    vertices: cell.vertices.map(move),
    facets: cell.facets.map((facet) => ({ ...facet, offset: facet.offset + dot(facet.normal, by) })),
    bounds: { least: move(cell.bounds.least), most: move(cell.bounds.most) },
  });
  const ridges = piece.ridges.map((ridge) => ({ ...ridge, from: move(ridge.from), to: move(ridge.to) }));
  return { ...piece, cells: piece.cells.map(body), ridges };
}

/** mm of paper that the pieces may take. */
const HIGHEST = 165;
