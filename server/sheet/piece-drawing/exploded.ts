/** The thing drawn apart: every piece moved off what it lies on, with the way it was moved as a dash-dot line. */
import { MovedBody } from "../../solid/contact";
import type { Steps } from "../../solid/steps";
import type { Vec3 } from "../../solid/vector";
import type { Drawing } from "../display";
import { ENGLISH } from "../words";
import { movesOf } from "./apart";
import { GUTTER } from "./balloons";
import { type DrawingOptions, laidOut, titleOf } from "./draw";
import { MARGIN, PAGE_WIDTH } from "./page";
import type { DrawnPiece } from "./pieces";
import { touches } from "./touching";
import { trailItems, trailsOf } from "./trails";
import { viewOf } from "./views";

export interface ApartOptions extends DrawingOptions {
  /** Pieces that stay together, by their ids: those with the same name. */
  readonly units?: ReadonlyMap<string, string>;
}

/** The pieces drawn apart, from the side of the turned view. When some say how they come apart, those are moved so and the others stay. */
export function* drawExploded(pieces: readonly DrawnPiece[], options: ApartOptions): Steps<Drawing> {
  const view = viewOf("turned");
  const says = options.says ?? ENGLISH.drawings;
  const units = unitsOf(pieces, options.units);
  const wholes = units.map(whole);
  const pairs = touches(wholes);
  const moves = movesOf(wholes, pairs, view);
  const unitOf = new Map(units.flatMap((unit, i) => unit.map((piece) => [piece, i] as const)));
  const moved = pieces.map((piece) => movedBy(piece, moves[unitOf.get(piece)!]!));
  const trails = trailsOf(pairs, moves);
  yield;
  return yield* laidOut(
    {
      pieces: moved,
      view,
      room: { width: PAGE_WIDTH - 2 * MARGIN - 2 * GUTTER, height: HIGHEST },
      system: options.system,
      says,
      scale: options.scale ?? 0,
      hidden: false,
      gutters: ["left", "right", "top", "bottom"],
      extra: (fit) => trailItems(trails, moved, view, fit),
      measures: () => [],
    },
    (scale) => {
      const caption = `${says.apart}, ${says.scale(scale)}`;
      return { title: titleOf(pieces, `${options.name} ${caption}`, options.words, says), caption };
    },
  );
}

/** Pieces that are moved as one, in the order of the first of each. */
function unitsOf(
  pieces: readonly DrawnPiece[],
  units: ReadonlyMap<string, string> = new Map(),
): readonly (readonly DrawnPiece[])[] {
  const found = new Map<string, DrawnPiece[]>();
  for (const piece of pieces) {
    const unit = units.get(piece.id);
    const key = unit === undefined ? `piece ${piece.id}` : `unit ${unit}`;
    const list = found.get(key);
    if (list) list.push(piece);
    else found.set(key, [piece]);
  }
  return [...found.values()];
}

function whole(unit: readonly DrawnPiece[]): DrawnPiece {
  const [first] = unit as readonly [DrawnPiece];
  if (unit.length === 1) return first;
  return { ...first, cells: unit.flatMap((p) => p.cells), ridges: unit.flatMap((p) => p.ridges) };
}

/** The piece moved as it stands. */
export function movedBy(piece: DrawnPiece, by: Vec3): DrawnPiece {
  const move = ([x, y, z]: Vec3): Vec3 => [x + by[0], y + by[1], z + by[2]];
  const ridges = piece.ridges.map((ridge) => ({ ...ridge, from: move(ridge.from), to: move(ridge.to) }));
  return { ...piece, cells: piece.cells.map((cell) => new MovedBody(cell, by)), ridges };
}

/** mm of paper that the pieces may take. */
const HIGHEST = 165;
