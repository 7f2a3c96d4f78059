/**
 * Hidden lines against sight itself: points along every ridge, from each a ray to the viewer, tried against every cell by
 * half-spaces made afresh from its corners. Seed 20261127.
 */
import { describe, expect, it } from "vitest";
import { solidOf, type TakenOut } from "../../server/solid/board";
import { apart, bodyOf, TOUCHING } from "../../server/solid/contact";
import type { Convex } from "../../server/solid/convex";
import { type EndCut, lengths } from "../../server/solid/ends";
import { type Pose, placed, placedAt, turned } from "../../server/solid/pose";
import { finished } from "../../server/solid/steps";
import { cross, dot, subtract, unit, type Vec3 } from "../../server/solid/vector";
import {
  type Face2,
  type Line,
  type Point2,
  pictureOf,
  type Seen,
  type View,
  viewFrom,
} from "../../server/solid/view";
import { flatten, laid } from "../../server/solid/view-flat";
import { type RidgeLine, ridgeLines } from "../../server/solid/view-lines";
import { merged } from "../../server/solid/view-merge";
import { distanceTo } from "../sheet/drawn";
import { bench, trough } from "../sheet/made-pieces";
import { random } from "./random";

const next = random(20261127);
const between = (a: number, b: number): number => a + (b - a) * next();
const oneOf = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)]!;

function piece(id: string, pose: Pose, [length, width, thickness]: Vec3): Seen {
  const end = (): EndCut => ({
    miter: next() < 0.5 ? 0 : between(0, 50),
    bevel: next() < 0.5 ? 0 : between(0, 45),
  });
  const takenOut = next() < 0.3 ? [notch(length, width, thickness)] : [];
  for (;;) {
    const edges = oneOf(["one", "opposite"] as const);
    const cut = lengths({ measured: "overall", length, width, thickness, left: end(), right: end(), edges });
    if (cut.kind !== "cut") continue;
    const solid = solidOf({ cut, width, thickness, takenOut });
    const cells = solid.cells.map((cell) => bodyOf(placed(cell, pose)));
    const ridges = solid.ridges.map(({ from, to, normals }) => ({
      from: placedAt(pose, from),
      to: placedAt(pose, to),
      normals: normals.map((n) => turned(pose, n)),
    }));
    return { id, cells, ridges };
  }
}

function notch(length: number, width: number, thickness: number): TakenOut {
  const at = between(0, length * 0.7);
  return {
    from: [at, -1, -1],
    to: [at + between(10, 120), width * between(0.3, 0.8), thickness * between(0.3, 1.2)],
  };
}

/** Turned anyhow. */
function thrown(): Pose {
  const direction = (): Vec3 => unit([between(-1, 1), between(-1, 1), between(-1, 1)]) ?? [1, 0, 0];
  const length = direction();
  const thickness = unit(cross(length, direction()))!;
  const origin: Vec3 = [between(-300, 300), between(-300, 300), between(-300, 300)];
  return { length, width: cross(thickness, length), thickness, origin };
}

/** Boards thrown in a heap. They may pass through each other: sight does not mind. */
const heap = (count: number): Seen[] =>
  Array.from({ length: count }, (_, i) =>
    piece(`p${i}`, thrown(), [between(100, 700), between(20, 150), between(10, 60)]),
  );

/** Boards square to each other on a grid of their own thickness, so that many lie flush, touch and line up. */
const stack = (count: number): Seen[] =>
  Array.from({ length: count }, (_, i) => {
    const axes = oneOf([0, 1, 2, 3, 4, 5]);
    const unitOf = (k: number): Vec3 => [k === 0 ? 1 : 0, k === 1 ? 1 : 0, k === 2 ? 1 : 0];
    const [a, b] = [axes % 3, (axes + (axes < 3 ? 1 : 2)) % 3];
    const length = unitOf(a);
    const width = unitOf(b);
    const grid = (): number => 20 * Math.floor(between(0, 16));
    const pose = { length, width, thickness: cross(length, width), origin: [grid(), grid(), grid()] as Vec3 };
    return piece(`p${i}`, pose, [20 * Math.floor(between(3, 18)), 20 * Math.floor(between(2, 5)), 20]);
  });

const VIEWS: readonly (readonly [turn: number, raise: number])[] = [
  [-55, 27],
  [0, 0],
  [90, 0],
  [180, 0],
  [0, 90],
  [33, -12],
];

/** A half-space from three corners of a face: points with normal · p ≤ offset. */
interface Half {
  readonly normal: Vec3;
  readonly offset: number;
  /** Wood goes on beyond it, in another cell of the piece. */
  readonly inner: boolean;
}

function halves(solid: Convex): Half[] {
  const corners = [...new Set(solid.facets.flatMap((f) => f.loop))].map((i) => solid.vertices[i]!);
  return solid.facets.map(({ loop, inner }) => {
    const [a, b, c] = widest(loop.map((i) => solid.vertices[i]!));
    const n = unit(cross(subtract(b, a), subtract(c, a)))!;
    const inward = corners.some((p) => dot(n, subtract(p, a)) > 1e-4);
    const normal: Vec3 = inward ? [-n[0], -n[1], -n[2]] : n;
    return { normal, offset: dot(normal, a), inner };
  });
}

/** Three corners of a loop that span it well. */
function widest(points: readonly Vec3[]): [Vec3, Vec3, Vec3] {
  let best: [Vec3, Vec3, Vec3] = [points[0]!, points[1]!, points[2]!];
  let most = 0;
  for (let i = 1; i < points.length; i++)
    for (let j = i + 1; j < points.length; j++) {
      const s = cross(subtract(points[i]!, points[0]!), subtract(points[j]!, points[0]!));
      const area = Math.hypot(...s);
      if (area > most) [most, best] = [area, [points[0]!, points[i]!, points[j]!]];
    }
  return best;
}

/** How long the ray from p runs inside a solid that is `grown` mm larger all round. */
function runsInside(p: Vec3, toViewer: Vec3, solid: readonly Half[], grown: number): number {
  let [enters, leaves] = [0, Infinity];
  for (const { normal, offset, inner } of solid) {
    const speed = dot(normal, toViewer);
    const room = offset + (inner ? 1e-6 : grown) - dot(normal, p);
    if (Math.abs(speed) < 1e-10) {
      if (room <= 1e-7) return 0;
    } else if (speed > 0) leaves = Math.min(leaves, room / speed);
    else enters = Math.max(enters, room / speed);
  }
  return Math.max(0, leaves - enters);
}

function drawn(lines: readonly Line[], [x, y]: readonly number[], near: number): boolean {
  return lines.some(({ from, to }) => distanceTo([x!, y!], from, to) <= near);
}

interface Count {
  seen: number;
  hidden: number;
  unsure: number;
}

const flatsOf = (pieces: readonly Seen[], view: View) =>
  pieces.map(({ cells }, i) => cells.map((cell) => flatten(i, cell, view)));

/** Every point that is surely seen is drawn; none that is surely hidden is drawn as part of its own ridge. */
function tried(pieces: readonly Seen[], view: View, count: Count): void {
  const solids = pieces.flatMap(({ cells }) => cells.map(halves));
  const { seen, hidden } = finished(ridgeLines(pieces, flatsOf(pieces, view), view));
  const own = new Map<string, RidgeLine[]>();
  for (const line of seen) {
    const key = `${line.id} ${line.ridge}`;
    own.set(key, [...(own.get(key) ?? []), line]);
  }
  const behind = new Map<string, RidgeLine[]>();
  for (const line of hidden) {
    const key = `${line.id} ${line.ridge}`;
    behind.set(key, [...(behind.get(key) ?? []), line]);
  }
  for (const { id, ridges } of pieces)
    ridges.forEach(({ from, to, normals }, ridge) => {
      const lines = own.get(`${id} ${ridge}`) ?? [];
      const [a, b] = [laid(from, view), laid(to, view)];
      if (Math.hypot(b[0] - a[0], b[1] - a[1]) < 2 * LEAST_BIT) return;
      const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
      const turnedAway = normals.every((n) => dot(n, view.toViewer) <= 1e-9);
      const point = (t: number): Vec3 => mix(from, to, t);
      const isClear = (t: number): boolean =>
        t >= 0 && t <= 1 && solids.every((s) => runsInside(point(t), view.toViewer, s, 0) < 1e-6);
      for (let k = 0; k < 9; k++) {
        const t = (k + next()) / 9;
        const at = laid(point(t), view);
        if (!turnedAway && isClear(t)) {
          count.seen++;
          // A gap through which less than 0.1 mm of a line is seen shows nothing.
          const bit = !isClear(t - LEAST_BIT / long) && !isClear(t + LEAST_BIT / long);
          if (!bit && !drawn(lines, at, LEAST_BIT + 1e-6))
            expect(`${id} ridge ${ridge} at ${t}`).toBe("drawn");
        } else if (turnedAway || solids.some((s) => runsInside(point(t), view.toViewer, s, -0.05) > 0.1)) {
          count.hidden++;
          if (drawn(lines, at, 1e-6)) expect(`${id} ridge ${ridge} at ${t}`).toBe("hidden");
          if (!drawn(behind.get(`${id} ${ridge}`) ?? [], at, 1e-6))
            expect(`${id} ridge ${ridge} at ${t}`).toBe("behind");
        } else count.unsure++;
      }
    });
}

const LEAST_BIT = 0.1;
const mix = (p: Vec3, q: Vec3, t: number): Vec3 => [
  p[0] + t * (q[0] - p[0]),
  p[1] + t * (q[1] - p[1]),
  p[2] + t * (q[2] - p[2]),
];

describe("lines of boards seen from several sides", () => {
  const scenes: readonly (readonly [string, () => readonly Seen[], number])[] = [
    ["thrown in a heap", () => heap(14), 12],
    ["square to each other, touching and flush", () => stack(24), 15],
    ["in a trough under a mitered cap", () => trough(), 1],
    ["in a bench with a leaning back", () => bench(), 1],
  ];
  for (const [name, scene, times] of scenes)
    it(`${name}: nothing seen is missing, nothing hidden is drawn`, () => {
      const count = { seen: 0, hidden: 0, unsure: 0 };
      for (let i = 0; i < times; i++) {
        const pieces = scene();
        for (const [turn, raise] of VIEWS) tried(pieces, viewFrom(turn, raise), count);
      }
      console.log(
        `${name}: ${count.seen} points seen, ${count.hidden} hidden, ${count.unsure} within 0.05 mm of either`,
      );
      expect(count.seen).toBeGreaterThan(1000);
      expect(count.hidden).toBeGreaterThan(1000);
      expect(count.unsure).toBeLessThan(count.seen);
    });
});

describe("lines along each other", () => {
  const within = 0.05;
  it("are drawn once, and nothing is lost by it", () => {
    for (const pieces of [trough(), bench(), ...Array.from({ length: 8 }, () => stack(24))])
      for (const [turn, raise] of VIEWS) {
        const view = viewFrom(turn, raise);
        const { seen } = finished(ridgeLines(pieces, flatsOf(pieces, view), view));
        const once = finished(merged(seen, within));
        for (const { from, to } of seen)
          for (const t of [0.01, 0.3, 0.5, 0.77, 0.99]) {
            const p: Point2 = [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])];
            if (!drawn(once, p, 0.2)) expect(`${p} from ${turn}, ${raise}`).toBe("drawn");
          }
        const long = once.filter(
          (line) => Math.hypot(line.to[0] - line.from[0], line.to[1] - line.from[1]) > 0.5,
        );
        for (const line of long) {
          const middle: Point2 = [(line.from[0] + line.to[0]) / 2, (line.from[1] + line.to[1]) / 2];
          const along = long.filter(
            (o) => o !== line && parallel(o, line) && distanceTo(middle, o.from, o.to) < 0.04,
          );
          expect(along).toEqual([]);
        }
      }
  });

  it("a joint that lies flush is one line, and not an outline", () => {
    const pose = (x: number): Pose => ({
      length: [0, 0, 1],
      width: [1, 0, 0],
      thickness: [0, 1, 0],
      origin: [x, 0, 0],
    });
    const plain = (id: string, x: number): Seen => {
      const square = { miter: 0, bevel: 0 };
      const size = { length: 300, width: 100, thickness: 20 };
      const cut = lengths({ measured: "overall", ...size, left: square, right: square, edges: "one" });
      if (cut.kind !== "cut") throw new Error("not cut");
      const solid = solidOf({ cut, width: 100, thickness: 20, takenOut: [] });
      const ridges = solid.ridges.map(({ from, to, normals }) => ({
        from: placedAt(pose(x), from),
        to: placedAt(pose(x), to),
        normals: normals.map((n) => turned(pose(x), n)),
      }));
      return { id, cells: solid.cells.map((c) => bodyOf(placed(c, pose(x)))), ridges };
    };
    const { lines } = pictureOf([plain("a", 0), plain("b", 100)], viewFrom(0, 0));
    const seam = lines.filter(
      ({ from, to }) => from[0] > 99 && from[0] < 101 && Math.abs(to[0] - from[0]) < 1,
    );
    expect(seam).toHaveLength(1);
    expect(seam[0]!.outline).toBe(false);
    expect(lines.filter(({ outline }) => outline)).toHaveLength(6);
  });
});

const parallel = (p: Line, q: Line): boolean => {
  const d = (l: Line): Point2 => [l.to[0] - l.from[0], l.to[1] - l.from[1]];
  const [[a, b], [c, e]] = [d(p), d(q)];
  return Math.abs(a * e - b * c) < 1e-6 * Math.hypot(a, b) * Math.hypot(c, e);
};

/** Boards that do not pass through each other, of those of a scene. */
function clearOfEachOther(pieces: readonly Seen[]): Seen[] {
  const kept: Seen[] = [];
  for (const piece of pieces) {
    const clear = kept.every((other) =>
      other.cells.every((a) => piece.cells.every((b) => apart(a, b).gap > -TOUCHING)),
    );
    if (clear) kept.push(piece);
  }
  return kept;
}

describe("faces painted from back to front", () => {
  /** How many spots of the faces show another face than the nearest, of how many. */
  function wrong(pieces: readonly Seen[], view: View): [number, number] {
    const { faces } = pictureOf(pieces, view);
    const depth = ({ points, normal, depth }: Face2, [x, y]: Point2): number =>
      depth - (normal[0] * (x - points[0]![0]) + normal[1] * (y - points[0]![1])) / normal[2];
    let [bad, all] = [0, 0];
    for (const { points } of faces) {
      const [a, b, c] = [points[0]!, points[1]!, points[2]!];
      const [s, t] = [between(0.1, 0.4), between(0.1, 0.4)];
      const spot: Point2 = [0, 1].map(
        (k) => a[k]! + s * (b[k]! - a[k]!) + t * (c[k]! - a[k]!),
      ) as unknown as Point2;
      const over = faces.filter((face) => within(face.points, spot));
      const nearest = Math.max(...over.map((face) => depth(face, spot)));
      all++;
      if (nearest - depth(over.at(-1)!, spot) > 0.1) bad++;
    }
    return [bad, all];
  }
  it("show the nearest face everywhere, in things that are built", () => {
    for (const pieces of [trough(), bench()])
      for (const [turn, raise] of VIEWS) {
        const [bad, all] = wrong(pieces, viewFrom(turn, raise));
        expect(bad).toBe(0);
        expect(all).toBeGreaterThanOrEqual(pieces.length);
      }
  });
  it("show it nearly everywhere in heaps, where boards pass around each other", () => {
    let [bad, all] = [0, 0];
    for (let i = 0; i < 20; i++)
      for (const [turn, raise] of VIEWS) {
        const [b, n] = wrong(clearOfEachOther(i % 2 ? heap(30) : stack(40)), viewFrom(turn, raise));
        [bad, all] = [bad + b, all + n];
      }
    console.log(`faces: ${bad} of ${all} spots show a face that is not the nearest`);
    expect(bad / all).toBeLessThan(0.002);
  });
});

function within(points: readonly Point2[], [x, y]: Point2): boolean {
  return points.every(([ax, ay], i) => {
    const [bx, by] = points[(i + 1) % points.length]!;
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax) >= -1e-9;
  });
}
