/** How far each piece is moved so that the thing can be seen in its pieces: along the axes, away from what it lies on. */
import type { Vec3 } from "../../solid/vector";
import type { Point2, View } from "../../solid/view";
import { laid } from "../../solid/view-flat";
import { hullOf } from "../../solid/view-order";
import { levelsOf } from "./levels";
import { wayToPart } from "./parting";
import type { DrawnPiece } from "./pieces";
import type { Touch } from "./touching";

/**
 * A move in mm for every piece. Where pieces say how they come apart, those are moved so, the others stay, and all moves
 * are made longer alike until outlines part; else the pieces go in steps along the axes, as long as parting them takes.
 */
export function movesOf(pieces: readonly DrawnPiece[], pairs: readonly Touch[], view: View): readonly Vec3[] {
  const outlines = pieces.map(({ cells }) =>
    hullOf(cells.flatMap((cell) => cell.vertices.map((v) => laid(v, view)))),
  );
  const scene: Scene = { pairs, outlines, view, gap: GAP * sizeOf(outlines) };
  const told = pieces.some(({ apart }) => apart);
  return stretched(scene, told ? pieces.map(({ apart }) => apart ?? NONE) : inSteps(scene));
}

/** Steps as short as will do: an axis whose steps do not part two pieces that touch along it is given longer ones. */
function inSteps(scene: Scene): readonly Vec3[] {
  const levels = levelsOf(scene.outlines.length, scene.pairs);
  const step: [number, number, number] = [scene.gap, scene.gap, scene.gap];
  const move = ([x, y, z]: Vec3): Vec3 => [x * step[0], y * step[1], z * step[2]];
  for (let round = 0; round < ROUNDS; round++) {
    let still = true;
    for (const touch of scene.pairs) {
      const [low, high] = [levels[touch.first]!, levels[touch.second]!];
      const axis = axisOf(touch.normal);
      const between = high[axis] - low[axis];
      if (between === 0) continue;
      const sign = Math.sign(between);
      const along: Vec3 = [axis === 0 ? sign : 0, axis === 1 ? sign : 0, axis === 2 ? sign : 0];
      const way = wayBetween(scene, touch, [move(low), move(high)], along);
      if (way === 0 || !Number.isFinite(way)) continue;
      step[axis] += way / Math.abs(between);
      still = false;
    }
    if (still) break;
  }
  return levels.map(move);
}

interface Scene {
  readonly pairs: readonly Touch[];
  /** Of every piece where it stands in the whole, in mm of wood. */
  readonly outlines: readonly (readonly Point2[])[];
  readonly view: View;
  readonly gap: number;
}

/** How far the second of two must still go along a step, both moved, until its outline is clear of the first's. */
function wayBetween(
  { outlines, view, gap }: Scene,
  { first, second }: Touch,
  moves: readonly [Vec3, Vec3],
  along: Vec3,
): number {
  const at = (i: number, move: Vec3): Point2[] => {
    const [dx, dy] = laid(move, view);
    return outlines[i]!.map(([x, y]): Point2 => [x + dx, y + dy]);
  };
  const [x, y] = laid(along, view);
  return wayToPart(at(first, moves[0]), at(second, moves[1]), [x, y], gap);
}

/** All moves made longer alike until the outlines of touching pieces that move apart are clear of each other. */
function stretched(scene: Scene, moves: readonly Vec3[]): readonly Vec3[] {
  let now = moves;
  for (let n = 0; n < LONGEST; n++) {
    const parted = scene.pairs.every((touch) => {
      const [a, b] = [now[touch.first]!, now[touch.second]!];
      const same = Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) < STILL;
      return same || wayBetween(scene, touch, [a, b], UP) === 0;
    });
    if (parted) return now;
    now = now.map(([x, y, z]): Vec3 => [x * LONGER, y * LONGER, z * LONGER]);
  }
  return now;
}

/** The axis nearest to a direction, upright before level where two are as near. */
function axisOf(normal: Vec3): 0 | 1 | 2 {
  const larger = (best: 0 | 1 | 2, k: 0 | 1 | 2): 0 | 1 | 2 =>
    Math.abs(normal[k]) > Math.abs(normal[best]) + 1e-6 ? k : best;
  return ([1, 0] as const).reduce<0 | 1 | 2>(larger, 2);
}

function sizeOf(outlines: readonly (readonly Point2[])[]): number {
  const points = outlines.flat();
  const spread = (k: 0 | 1): number => {
    const all = points.map((p) => p[k]);
    return points.length > 0 ? Math.max(...all) - Math.min(...all) : 0;
  };
  return Math.hypot(spread(0), spread(1));
}

const NONE: Vec3 = [0, 0, 0];
const UP: Vec3 = [0, 0, 1];
/** Between outlines, as a share of the whole thing's size on paper. */
const GAP = 0.02;
const ROUNDS = 40;
/** mm: moves nearer than this are the same. */
const STILL = 1e-6;
const LONGER = 1.15;
const LONGEST = 40;
