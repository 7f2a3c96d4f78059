/** Boards in space for the drawings that teach a word: made, cut and seen by the same geometry as the built thing. */
import { solidOf, type TakenOut } from "../../solid/board";
import { bodyOf, boundsOf } from "../../solid/contact";
import { type EndCut, lengths } from "../../solid/ends";
import { type Pose, placed, placedAt, turned } from "../../solid/pose";
import type { Vec3 } from "../../solid/vector";
import { pictureOf, type Seen, type View, viewFrom } from "../../solid/view";
import { laid } from "../../solid/view-flat";
import type { Box, Item, Point } from "../display";
import { type Fit, ONE_LINE, onPaper, paths } from "../piece-drawing/paper";

/** Seen from the front, a little from the left and from above. */
export const VIEW = viewFrom(-32, 26);

const LIES = {
  flat: { length: [1, 0, 0], width: [0, 1, 0], thickness: [0, 0, 1] },
  "on edge": { length: [1, 0, 0], width: [0, 0, 1], thickness: [0, -1, 0] },
  upright: { length: [0, 0, 1], width: [1, 0, 0], thickness: [0, 1, 0] },
  "front to back": { length: [0, 1, 0], width: [-1, 0, 0], thickness: [0, 0, 1] },
  "on edge front to back": { length: [0, 1, 0], width: [0, 0, 1], thickness: [1, 0, 0] },
} as const satisfies Record<string, Omit<Pose, "origin">>;

export interface Board {
  readonly size: Vec3;
  readonly lies?: keyof typeof LIES;
  readonly at?: Vec3;
  readonly left?: EndCut;
  readonly right?: EndCut;
  readonly takenOut?: readonly TakenOut[];
  /** Stands otherwise than the usual ways. */
  readonly pose?: Pose;
}

const SQUARE: EndCut = { miter: 0, bevel: 0 };

/** A board as it stands; what cannot be cut gives no cells. */
function seen(board: Board, i: number): Seen {
  const { size, lies = "flat", at = [0, 0, 0], left = SQUARE, right = SQUARE, takenOut = [] } = board;
  const [length, width, thickness] = size;
  const pose: Pose = board.pose ?? { ...LIES[lies], origin: at };
  const cut = lengths({ measured: "overall", length, width, thickness, left, right, edges: "one" });
  if (cut.kind !== "cut") return { id: String(i), cells: [], ridges: [] };
  const { cells, ridges } = solidOf({ cut, width, thickness, takenOut });
  return {
    id: String(i),
    cells: cells.map((cell) => bodyOf(placed(cell, pose))),
    ridges: ridges.map(({ from, to, normals }) => ({
      from: placedAt(pose, from),
      to: placedAt(pose, to),
      normals: normals.map((n) => turned(pose, n)),
    })),
  };
}

export interface Scene {
  readonly items: readonly Item[];
  /** Where a point of the scene lies on the page. */
  readonly on: (p: Vec3) => Point;
}

/** Boards as large as a box of the page lets them be, in its middle; those of `pointed` tinted. */
export function scene(
  boards: readonly Board[],
  page: Box,
  view: View = VIEW,
  pointed: readonly number[] = [],
): Scene {
  const pieces = boards.map(seen);
  const corners = pieces.flatMap(({ cells }) => cells.flatMap((c) => c.vertices.map((v) => laid(v, view))));
  const { least, most } = boundsOf(corners);
  const [wide, high] = [most[0] - least[0], most[1] - least[1]];
  const scale = Math.max(wide / (page.right - page.left), high / (page.bottom - page.top));
  const fit: Fit = {
    scale,
    left: (least[0] + most[0]) / 2 - ((page.left + page.right) / 2) * scale,
    top: (least[1] + most[1]) / 2 + ((page.top + page.bottom) / 2) * scale,
  };
  const items = paths(pictureOf(pieces, view, { within: ONE_LINE * scale }), fit).map((item): Item => {
    if (item.kind === "text") return item;
    const { layer, strokes, closed, weight, fill } = item;
    const tinted = pointed.includes(Number(item.piece)) ? "marked" : fill;
    return { kind: "path", layer, strokes, closed, weight, fill: item.piece === undefined ? fill : tinted };
  });
  return { items, on: (p) => onPaper(fit, laid(p, view)) };
}

export const page = (left: number, top: number, right: number, bottom: number): Box => ({
  left,
  top,
  right,
  bottom,
});
