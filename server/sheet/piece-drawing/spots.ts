/**
 * Where on the paper each piece is seen, on a raster: the nearest face of every small square. It finds good places for
 * the dots of leaders; nothing that is drawn exactly comes from it.
 */
import type { Steps } from "../../solid/steps";
import type { Face2 } from "../../solid/view";
import type { Box, Point } from "../display";
import { type Fit, onPaper } from "./paper";

export interface Spot {
  readonly at: Point;
  readonly piece: string;
}

/** What is seen of pieces, by their ids. */
export interface Sight {
  /** Square millimetres of paper. */
  readonly area: (id: string) => number;
  /** The widest that it is seen anywhere, level or upright, whichever is less; mm of paper. */
  readonly width: (id: string) => number;
  /** Spots on these pieces well away from the edges of their faces: at least this share of the best. */
  readonly spots: (ids: readonly string[], share: number) => readonly Spot[];
}

export function* sightOf(faces: readonly Face2[], fit: Fit, box: Box): Steps<Sight> {
  const raster = rasterOf(box);
  const regions = new Map<string, number>();
  const owners: string[] = [];
  for (const face of faces) {
    const key = regionKey(face);
    let region = regions.get(key);
    if (region === undefined) {
      region = owners.push(face.id) - 1;
      regions.set(key, region);
    }
    fill(raster, face, region, fit);
  }
  yield;
  const { step, columns } = raster;
  const room = roomOf(raster);
  yield;
  const squares = new Map<string, number[]>();
  raster.region.forEach((region, i) => {
    if (region < 0) return;
    const list = squares.get(owners[region]!);
    if (list) list.push(i);
    else squares.set(owners[region]!, [i]);
  });
  const of = (id: string): readonly number[] => squares.get(id) ?? [];
  yield;
  const runs = runsOf(raster);
  return {
    area: (id) => of(id).length * step ** 2,
    width: (id) => of(id).reduce((most, i) => Math.max(most, runs[i]!), 0) * step,
    spots: (ids, share) => {
      const most = ids.reduce((best, id) => of(id).reduce((b, i) => Math.max(b, room[i]!), best), 0);
      return ids.flatMap((piece) =>
        of(piece)
          .filter((i) => room[i]! >= share * most)
          .map((i) => {
            const at: Point = [
              raster.left + ((i % columns) + 0.5) * step,
              raster.top + (Math.floor(i / columns) + 0.5) * step,
            ];
            return { at, piece };
          }),
      );
    },
  };
}

interface Raster {
  readonly left: number;
  readonly top: number;
  readonly step: number;
  readonly columns: number;
  readonly rows: number;
  readonly region: Int32Array;
  readonly depth: Float32Array;
}

function rasterOf({ left, top, right, bottom }: Box): Raster {
  const step = Math.max(FINEST, Math.sqrt(((right - left) * (bottom - top)) / SQUARES));
  const columns = Math.max(1, Math.ceil((right - left) / step));
  const rows = Math.max(1, Math.ceil((bottom - top) / step));
  const region = new Int32Array(columns * rows).fill(-1);
  const depth = new Float32Array(columns * rows).fill(-Infinity);
  return { left, top, step, columns, rows, region, depth };
}

/** Faces of one piece in one plane are one region, though cells part them. */
function regionKey({ id, normal, points, depth }: Face2): string {
  const [x, y] = points[0]!;
  const height = normal[0] * x + normal[1] * y + normal[2] * depth;
  return [id, ...[...normal, height].map((n) => Math.round(n * 100))].join("|");
}

/** Takes the squares whose middles the face covers and where it is nearest so far. */
function fill(raster: Raster, face: Face2, region: number, fit: Fit): void {
  const { left, top, step, columns, rows } = raster;
  const corners = face.points.map((p): Point => {
    const [x, y] = onPaper(fit, p);
    return [(x - left) / step - 0.5, (y - top) / step - 0.5];
  });
  const [x0, y0] = corners[0]!;
  // Depth by column and by row: paper's y runs down, the view's up.
  const across = (-face.normal[0] / face.normal[2]) * step * fit.scale;
  const down = (face.normal[1] / face.normal[2]) * step * fit.scale;
  const ys = corners.map(([, y]) => y);
  const first = Math.max(0, Math.ceil(Math.min(...ys)));
  const last = Math.min(rows - 1, Math.floor(Math.max(...ys)));
  for (let row = first; row <= last; row++) {
    const [from, to] = spanAt(corners, row);
    for (let column = Math.max(0, Math.ceil(from)); column <= Math.min(columns - 1, to); column++) {
      const i = row * columns + column;
      const depth = face.depth + across * (column - x0) + down * (row - y0);
      if (depth <= raster.depth[i]!) continue;
      raster.depth[i] = depth;
      raster.region[i] = region;
    }
  }
}

/** Where a convex outline is crossed at a height. */
function spanAt(corners: readonly Point[], y: number): [number, number] {
  let [from, to] = [Infinity, -Infinity];
  for (let i = 0; i < corners.length; i++) {
    const [[ax, ay], [bx, by]] = [corners[i]!, corners[(i + 1) % corners.length]!];
    if (ay > y === by > y) continue;
    const x = ax + ((y - ay) / (by - ay)) * (bx - ax);
    from = Math.min(from, x);
    to = Math.max(to, x);
  }
  return [from, to];
}

/** How many half squares, counted along rows and columns, each lies from another region: one sweep each way. */
function roomOf({ region, columns, rows }: Raster): Uint16Array {
  const room = new Uint16Array(region.length);
  for (let i = 0; i < region.length; i++) {
    const left = i % columns === 0 || region[i - 1] !== region[i] ? 1 : room[i - 1]! + 2;
    const above = i < columns || region[i - columns] !== region[i] ? 1 : room[i - columns]! + 2;
    room[i] = Math.min(left, above);
  }
  for (let i = region.length - 1; i >= 0; i--) {
    const last = i % columns === columns - 1;
    const right = last || region[i + 1] !== region[i] ? 1 : room[i + 1]! + 2;
    const foot = i >= (rows - 1) * columns || region[i + columns] !== region[i];
    const below = foot ? 1 : room[i + columns]! + 2;
    if (right < room[i]!) room[i] = right;
    if (below < room[i]!) room[i] = below;
  }
  return room;
}

/** How many squares of the same region lie in line with each, along its row or its column, whichever are fewer. */
function runsOf({ region, columns, rows }: Raster): Uint16Array {
  const runs = new Uint16Array(region.length).fill(65535);
  const along = (start: number, count: number, step: number): void => {
    for (let k = 0; k < count; ) {
      const first = region[start + k * step];
      let end = k + 1;
      while (end < count && region[start + end * step] === first) end++;
      for (let n = k; n < end; n++) {
        const i = start + n * step;
        if (end - k < runs[i]!) runs[i] = end - k;
      }
      k = end;
    }
  };
  for (let row = 0; row < rows; row++) along(row * columns, columns, 1);
  for (let column = 0; column < columns; column++) along(column, rows, columns);
  return runs;
}

/** The side of a square in mm of paper at the least, and how many squares the object's box is cut into at the most. */
const FINEST = 0.3;
const SQUARES = 120_000;
