/**
 * Solids of boards against a general solid-modelling library (manifold-3d), which shares no code with ours: volumes of
 * compound cuts, and whether pairs overlap, touch or stand apart.
 */
import Module, { type Manifold, type ManifoldToplevel } from "manifold-3d";
import { beforeAll, describe, expect, it } from "vitest";
import { type Solid, solidOf } from "../../server/solid/board";
import { apart, type Body, bodyOf, contacts, distance, TOUCHING } from "../../server/solid/contact";
import { areaOf, type Convex, massOf } from "../../server/solid/convex";
import { type EndCut, lengths } from "../../server/solid/ends";
import { type Pose, placed } from "../../server/solid/pose";
import { cross, unit, type Vec3 } from "../../server/solid/vector";
import { random } from "./random";

let lib: ManifoldToplevel;
beforeAll(async () => {
  lib = await Module();
  lib.setup();
});

const next = random(20261125);
const between = (a: number, b: number): number => a + (b - a) * next();

function board(): Solid {
  const end = (): EndCut => ({
    miter: next() < 0.3 ? 0 : between(0, 55),
    bevel: next() < 0.3 ? 0 : between(0, 50),
  });
  for (;;) {
    const [width, thickness] = [between(20, 200), between(6, 60)];
    const cut = lengths({
      measured: "overall",
      length: between(100, 1500),
      width,
      thickness,
      left: end(),
      right: end(),
      edges: next() < 0.5 ? "one" : "opposite",
    });
    if (cut.kind === "cut") return solidOf({ cut, width, thickness, takenOut: [] });
  }
}

function turn(origin: Vec3): Pose {
  const direction = (): Vec3 => unit([between(-1, 1), between(-1, 1), between(-1, 1)]) ?? [1, 0, 0];
  const length = direction();
  const thickness = unit(cross(length, direction()))!;
  return { length, width: cross(thickness, length), thickness, origin };
}

/** The same solid in the other library: the hull of its corners. */
const hull = (solid: Convex): Manifold =>
  lib.Manifold.hull(
    [...new Set(solid.facets.flatMap((f) => f.loop))].map(
      (i) => [...solid.vertices[i]!] as [number, number, number],
    ),
  );

const common = (a: Convex, b: Convex): number => lib.Manifold.intersection(hull(a), hull(b)).volume();

describe("4,000 pairs of boards with compound cuts", () => {
  it("have the library's volume to a part in a thousand million, and overlap, or stand apart, as it says", () => {
    const seen = { overlap: 0, apart: 0, close: 0 };
    for (let i = 0; i < 4000; i++) {
      const [p, q] = [board(), board()].map((solid) => {
        const at: Vec3 = [between(-150, 150), between(-150, 150), between(-100, 100)];
        return bodyOf(placed(solid.cells[0]!, turn(at)));
      }) as [Body, Body];
      for (const body of [p, q]) {
        const ours = massOf(body).volume;
        expect(Math.abs(hull(body).volume() - ours) / ours).toBeLessThan(1e-9);
      }
      const { gap } = apart(p, q);
      const shared = common(p, q);
      if (gap < -TOUCHING) {
        seen.overlap++;
        expect(shared).toBeGreaterThan(0);
      } else if (gap > TOUCHING) {
        seen.apart++;
        expect(shared).toBe(0);
        const ours = distance(p, q).gap;
        expect(ours).toBeGreaterThanOrEqual(gap - 1e-6);
        expect(ours).toBeCloseTo(hull(p).minGap(hull(q), ours + 10), 5);
      } else seen.close++;
    }
    console.log(
      `pairs: ${seen.overlap} overlap, ${seen.apart} stand apart, ${seen.close} within ${TOUCHING} mm`,
    );
    expect(seen.overlap).toBeGreaterThan(500);
    expect(seen.apart).toBeGreaterThan(500);
  });
});

/** A board whose near edge, face or end is laid on a face of the first, moved along its normal by `off`. */
function laidOn(first: Body, off: number): Body {
  const facet = first.facets[Math.floor(next() * first.facets.length)]!;
  const second = board().cells[0]!;
  const own = second.facets[Math.floor(next() * second.facets.length)]!;
  // Turn the second so that its own face looks against the first's, about any angle, the middles on each other.
  const basis = (n: Vec3): [Vec3, Vec3, Vec3] => {
    const u = unit(cross(n, Math.abs(n[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0]))!;
    return [u, cross(n, u), n];
  };
  const [u, v, n] = basis(facet.normal);
  const [a, b, c] = basis(own.normal);
  const angle = between(0, 6.28);
  const to: [Vec3, Vec3, Vec3] = [
    mix(u, v, Math.cos(angle), Math.sin(angle)),
    mix(u, v, Math.sin(angle), -Math.cos(angle)),
    mix(n, n, -1, 0),
  ];
  const rotated = (x: Vec3): Vec3 => {
    const [i, j, k] = [along(x, a), along(x, b), along(x, c)];
    return [0, 1, 2].map((d) => i * to[0][d]! + j * to[1][d]! + k * to[2][d]!) as unknown as Vec3;
  };
  const middle = (s: Convex, loop: readonly number[]): Vec3 =>
    [0, 1, 2].map(
      (d) => loop.reduce((sum, i) => sum + s.vertices[i]![d]!, 0) / loop.length,
    ) as unknown as Vec3;
  const here = middle(first, facet.loop);
  const there = rotated(middle(second, own.loop));
  const origin = [0, 1, 2].map((d) => here[d]! - there[d]! + off * n[d]!) as unknown as Vec3;
  const pose: Pose = {
    length: rotated([1, 0, 0]),
    width: rotated([0, 1, 0]),
    thickness: rotated([0, 0, 1]),
    origin,
  };
  return bodyOf(placed(second, pose));
}
const along = (x: Vec3, y: Vec3): number => x[0] * y[0] + x[1] * y[1] + x[2] * y[2];
const mix = (u: Vec3, v: Vec3, s: number, t: number): Vec3 => [
  s * u[0] + t * v[0],
  s * u[1] + t * v[1],
  s * u[2] + t * v[2],
];

describe("a face laid on a face, turned anyhow in space", () => {
  const SIXTY_FOURTH = 25.4 / 64;
  it("touches with area and never overlaps", () => {
    for (let i = 0; i < 2000; i++) {
      const first = bodyOf(placed(board().cells[0]!, turn([0, 0, 0])));
      const second = laidOn(first, 0);
      expect(Math.abs(apart(first, second).gap)).toBeLessThan(1e-6);
      expect(contacts(first, second).length).toBeGreaterThan(0);
    }
  });
  it("a gap of 1/64 inch is always seen, and measured", () => {
    for (let i = 0; i < 2000; i++) {
      const first = bodyOf(placed(board().cells[0]!, turn([0, 0, 0])));
      const second = laidOn(first, SIXTY_FOURTH);
      expect(apart(first, second).gap).toBeCloseTo(SIXTY_FOURTH, 6);
      expect(distance(first, second).gap).toBeCloseTo(SIXTY_FOURTH, 6);
      expect(contacts(first, second)).toEqual([]);
    }
  });
  it("an overlap of 1/64 inch is always seen, with its depth", () => {
    for (let i = 0; i < 2000; i++) {
      const first = bodyOf(placed(board().cells[0]!, turn([0, 0, 0])));
      const second = laidOn(first, -SIXTY_FOURTH);
      expect(apart(first, second).gap).toBeCloseTo(-SIXTY_FOURTH, 6);
    }
  });
});

describe("notches", () => {
  it("leave the volume the library leaves", () => {
    for (let i = 0; i < 300; i++) {
      const cut = lengths({
        measured: "overall",
        length: 800,
        width: 140,
        thickness: 38,
        left: { miter: between(0, 45), bevel: 0 },
        right: { miter: 0, bevel: between(0, 45) },
        edges: "one",
      });
      if (cut.kind !== "cut") throw new Error("not cut");
      const takenOut = [0, 1].map(() => {
        const at = between(0, 600);
        return {
          from: [at, -1, -1] as Vec3,
          to: [at + between(10, 150), between(10, 90), between(5, 60)] as Vec3,
        };
      });
      const ours = solidOf({ cut, width: 140, thickness: 38, takenOut });
      const whole = hull(solidOf({ cut, width: 140, thickness: 38, takenOut: [] }).cells[0]!);
      const rest = takenOut.reduce((left, { from, to }) => {
        const size = [to[0] - from[0], to[1] - from[1], to[2] - from[2]] as const;
        return lib.Manifold.difference(left, lib.Manifold.cube([...size]).translate([...from]));
      }, whole);
      const volume = ours.cells.reduce((sum, cell) => sum + massOf(cell).volume, 0);
      expect(Math.abs(volume - rest.volume()) / volume).toBeLessThan(1e-9);
      const skin = ours.cells.flatMap((cell) =>
        cell.facets.filter((f) => !f.inner).map((f) => areaOf(cell, f)),
      );
      expect(
        Math.abs(skin.reduce((a, b) => a + b, 0) - rest.surfaceArea()) / rest.surfaceArea(),
      ).toBeLessThan(1e-9);
    }
  });
});
