/**
 * Surfaces of pieces against a general solid-modelling library (manifold-3d), which shares no code with ours: end cuts,
 * notches, and what is left to see of pieces that stand on each other, which is the surface of them put together.
 */
import Module, { type Manifold, type ManifoldToplevel } from "manifold-3d";
import { beforeAll, describe, expect, it } from "vitest";
import { ifKnown } from "../../server/plan";
import { solidOf } from "../../server/solid/board";
import type { Convex } from "../../server/solid/convex";
import { lengths } from "../../server/solid/ends";
import { skinOf } from "../../server/solid/skin";
import type { Vec3 } from "../../server/solid/vector";
import { evaluated } from "../placing/plans";
import { random } from "./random";

let lib: ManifoldToplevel;
beforeAll(async () => {
  lib = await Module();
  lib.setup();
});

const next = random(20261126);
const between = (a: number, b: number): number => a + (b - a) * next();
const whole = (a: number, b: number): number => Math.round(between(a, b));

const hull = ({ vertices, facets }: Convex): Manifold =>
  lib.Manifold.hull(
    [...new Set(facets.flatMap((f) => f.loop))].map((i) => [...vertices[i]!] as [number, number, number]),
  );

describe("boards with compound ends and notches", () => {
  it("have the library's surface, and end grain is a part of it", () => {
    for (let i = 0; i < 600; i++) {
      const cut = lengths({
        measured: "overall",
        length: 800,
        width: 140,
        thickness: 38,
        left: { miter: between(0, 45), bevel: between(0, 30) },
        right: { miter: next() < 0.3 ? 0 : between(0, 40), bevel: between(0, 30) },
        edges: next() < 0.5 ? "one" : "opposite",
      });
      if (cut.kind !== "cut") throw new Error("not cut");
      const takenOut = Array.from({ length: whole(0, 2) }, () => {
        const at = between(0, 600);
        return {
          from: [at, -1, -1] as Vec3,
          to: [at + between(10, 150), between(10, 90), between(5, 60)] as Vec3,
        };
      });
      const board = { cut, width: 140, thickness: 38 };
      const rest = takenOut.reduce(
        (left, { from, to }) => {
          const size: Vec3 = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
          return lib.Manifold.difference(left, lib.Manifold.cube([...size]).translate([...from]));
        },
        hull(solidOf({ ...board, takenOut: [] }).cells[0]!),
      );
      const { whole: ours, ends } = skinOf(solidOf({ ...board, takenOut }));
      expect(Math.abs(ours - rest.surfaceArea()) / ours).toBeLessThan(1e-9);
      expect(ends).toBeGreaterThan(0);
      expect(ends).toBeLessThan(ours);
    }
  });
});

describe("boards piled up at random, all of them finished", () => {
  it("show the surface of them put together", () => {
    for (let i = 0; i < 150; i++) {
      // Whole millimetres, which both programs keep as they are: faces that touch are in one plane to the last digit.
      const sizes = Array.from(
        { length: whole(2, 5) },
        () => [whole(200, 800), whole(40, 240), whole(20, 90)] as const,
      );
      const lines = sizes.map(([long], n) => {
        const lies = ["across, flat", "across, on edge", "front to back, flat"][whole(0, 2)]!;
        const on = n === 0 ? "on floor" : `on p${n - 1}`;
        return `place p${n} ${lies}, ${on}, ${whole(1, long / 3)}mm from left, ${whole(1, 90)}mm from front`;
      });
      const { worked } = evaluated(
        [
          ...sizes.flatMap(([long, wide, thick], n) => [
            `stock s${n}, actual ${thick}mm x ${wide}mm`,
            `part p${n} of s${n}, length ${long}mm`,
          ]),
          ...lines,
          `coat ${sizes.map((_, n) => `p${n}`).join(" and ")} with oil-finish`,
        ].join("\n"),
      );
      const { pieces } = worked.pieces.all.length === sizes.length ? worked.coats[0]! : { pieces: [] };
      expect(pieces).toHaveLength(sizes.length);
      const [work] = worked.coats;
      const together = lib.Manifold.union(worked.pieces.all.map((p) => hull(p.cells[0]!)));
      const shown = ifKnown(work!.exposed)!.approx;
      expect(Math.abs(shown - together.surfaceArea()) / shown).toBeLessThan(1e-6);
      const apart = worked.pieces.all.reduce((sum, p) => sum + hull(p.cells[0]!).surfaceArea(), 0);
      expect(shown + work!.hidden!.approx).toBeCloseTo(apart, 3);
    }
  });
});
