/** What must hold of any board's ends, any sloped corner and any screw. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BoardEnds, type CutBoard, lengths } from "../server/solid/ends";
import { gridOf } from "../server/solid/grid";
import { edgeAngle, hopper, leaningCorner } from "../server/solid/hopper";
import { angleForMargin, driveScrew, longestStraight } from "../server/solid/screw";
import { cross, dot, subtract, unit, type Vec3 } from "../server/solid/vector";
import { odd, rad, real } from "./numbers";

const deg = (r: number): number => (r * 180) / Math.PI;
const square = { miter: 0, bevel: 0 };

const endCut = fc.record({ miter: real(0, 70), bevel: real(0, 60) });
const side = fc.constantFrom("one" as const, "opposite" as const);
const measured = fc.constantFrom(
  "long-long" as const,
  "short-short" as const,
  "long-short" as const,
  "overall" as const,
);
const anyBoard: fc.Arbitrary<BoardEnds> = fc.record({
  measured,
  length: real(1, 4000),
  width: real(10, 300),
  thickness: real(5, 100),
  left: endCut,
  right: endCut,
  edges: side,
  faces: side,
});
const cutBoard = anyBoard
  .map((board) => ({ board, cut: lengths(board) }))
  .filter((b): b is { board: BoardEnds; cut: CutBoard } => b.cut.kind === "cut");

describe("a board's ends", () => {
  it("overall is at least every edge, and is the extent of its corners", () => {
    fc.assert(
      fc.property(cutBoard, ({ cut }) => {
        const xs = cut.corners.map(([x]) => x);
        expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(cut.overall, 6);
        expect(Math.min(...xs)).toBeCloseTo(0, 9);
        for (const [i, arris] of cut.arrises.entries()) {
          expect(cut.overall).toBeGreaterThanOrEqual(arris);
          expect(xs[i + 4]! - xs[i]!).toBeCloseTo(arris, 5);
        }
        expect(cut.longPoint).toBe(cut.overall);
        expect(cut.longEdge).toBeGreaterThanOrEqual(cut.shortEdge);
      }),
    );
  });

  it("long point less short point is w tan(miter) + t tan(bevel) / cos(miter), end by end", () => {
    const setback = (b: BoardEnds, { miter, bevel }: BoardEnds["left"]): number =>
      b.width * Math.tan(rad(miter)) + (b.thickness * Math.tan(rad(bevel))) / Math.cos(rad(miter));
    fc.assert(
      fc.property(cutBoard, ({ board, cut }) => {
        const both = setback(board, board.left) + setback(board, board.right);
        expect(cut.longPoint - cut.shortPoint).toBeCloseTo(both, 6);
      }),
    );
  });

  it("has its long points on the edges and faces asked for", () => {
    const end = { miter: 30, bevel: 20 };
    const piece = {
      measured: "overall",
      length: 500,
      width: 89,
      thickness: 38,
      left: end,
      right: end,
    } as const;
    for (const [edges, faces, y, z] of [
      ["one", "one", 0, 0],
      ["one", "opposite", 0, 38],
      ["opposite", "one", 89, 0],
      ["opposite", "opposite", 89, 38],
      ["opposite", undefined, 89, 38],
    ] as const) {
      const cut = lengths({ ...piece, edges, ...(faces && { faces }) });
      if (cut.kind !== "cut") throw new Error(cut.reason);
      const tips = [...cut.corners].sort((a, b) => a[0] - b[0]);
      expect(tips[0]).toEqual([0, 0, 0]);
      expect(tips.at(-1)).toEqual([500, y, z]);
    }
  });

  it("comes back the same however its length was stated", () => {
    fc.assert(
      fc.property(cutBoard, measured, ({ board, cut }, as) => {
        const right = cut.setback.right;
        const length = { overall: cut.overall, "long-long": cut.longPoint, "short-short": cut.shortPoint };
        const stated = as === "long-short" ? cut.overall - right : length[as];
        fc.pre(stated > 0.01);
        const again = lengths({ ...board, measured: as, length: stated });
        expect(again.kind === "cut" ? again.overall : again.reason).toBeCloseTo(cut.overall, 6);
      }),
    );
  });

  it("has end planes that stand as the saw was set", () => {
    fc.assert(
      fc.property(cutBoard, ({ board, cut }) => {
        for (const [at, set] of [
          [0, board.left],
          [4, board.right],
        ] as const) {
          const [a, b, c, d] = cut.corners.slice(at, at + 4) as [Vec3, Vec3, Vec3, Vec3];
          const normal = unit(cross(subtract(b, a), subtract(c, a)))!;
          expect(dot(normal, subtract(d, a))).toBeCloseTo(0, 6);
          // The tilt is the angle between the cut and the upright to the face; the miter shows on the face.
          expect(deg(Math.asin(Math.abs(normal[2])))).toBeCloseTo(set.bevel, 6);
          expect(deg(Math.atan2(Math.abs(b[0] - a[0]), b[1] - a[1]))).toBeCloseTo(set.miter, 6);
        }
      }),
    );
  });

  it("weighs what its corners enclose, in tetrahedra", () => {
    fc.assert(
      fc.property(cutBoard, ({ board, cut }) => {
        const { volume, centroid } = tetrahedra(cut.corners);
        expect(cut.volume / volume).toBeCloseTo(1, 8);
        for (const axis of [0, 1, 2] as const)
          expect(Math.abs(cut.centroid[axis] - centroid[axis])).toBeLessThan(
            1e-6 * (cut.overall + board.width),
          );
      }),
    );
  });

  it("a hopper's side cut by its settings meets the upright planes between the sides", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 12 }), real(1, 80), real(600, 3000), (n, lean, length) => {
        const set = hopper(n, lean)!;
        const end = { miter: set.miter, bevel: set.tilt };
        const cut = lengths({
          measured: "long-long",
          length,
          width: 60,
          thickness: 19,
          left: end,
          right: end,
          edges: "one",
        });
        if (cut.kind !== "cut") throw new Error(cut.reason);
        // y runs down the slope from the rim, z inward from the outer face; r is the distance from the middle.
        const rim = length / 2 / Math.tan(Math.PI / n);
        for (const [x, y, z] of cut.corners) {
          const r = rim - y * Math.sin(rad(lean)) - z * Math.cos(rad(lean));
          expect(Math.abs(x - length / 2)).toBeCloseTo(r * Math.tan(Math.PI / n), 6);
        }
        // The miter on the face and the angle seen on the edge.
        const [a, , c] = cut.corners as [Vec3, Vec3, Vec3];
        expect(deg(Math.atan2(c[0] - a[0], c[2] - a[2]))).toBeCloseTo(edgeAngle(set), 6);
      }),
    );
  });

  it("a short parallelogram may have short points that pass each other, and is still a board", () => {
    const miter = { miter: 45, bevel: 0 };
    const piece = { width: 89, thickness: 38, left: miter, right: miter } as const;
    const cut = lengths({ measured: "overall", length: 120, ...piece, edges: "opposite" });
    expect(cut).toMatchObject({ kind: "cut", shortPoint: expect.closeTo(-58, 9) });
    const crossed = lengths({ measured: "overall", length: 120, ...piece, edges: "one" });
    expect(crossed).toMatchObject({
      kind: "impossible",
      reason: "ends-cross",
      least: expect.closeTo(178, 9),
    });
    const flat = lengths({ measured: "overall", length: 89, ...piece, edges: "opposite" });
    expect(flat).toMatchObject({ kind: "impossible", reason: "ends-cross" });
  });

  it("says the least length in the terms the length was stated in", () => {
    fc.assert(
      fc.property(anyBoard, (board) => {
        const short = lengths({ ...board, length: 1e-9 });
        const least = short.kind === "impossible" ? (short.least ?? 0) : 0;
        fc.pre(least > 1);
        expect(lengths({ ...board, length: least + 0.01 }).kind).toBe("cut");
        expect(lengths({ ...board, length: least - 0.01 }).kind).toBe("impossible");
      }),
    );
  });

  it.each([
    ["number", { length: Number.NaN }],
    ["number", { left: { miter: Number.POSITIVE_INFINITY, bevel: 0 } }],
    ["length", { length: 0 }],
    ["length", { length: -3 }],
    ["section", { width: 0 }],
    ["section", { thickness: -1 }],
    ["angle", { left: { miter: 90, bevel: 0 } }],
    ["angle", { right: { miter: 0, bevel: 135 } }],
    ["angle", { right: { miter: -1, bevel: 0 } }],
  ] as const)("refuses a wrong %s: %o", (reason, wrong) => {
    const good = { measured: "overall", length: 300, width: 89, thickness: 38, edges: "one" } as const;
    expect(lengths({ ...good, left: square, right: square })).toMatchObject({
      kind: "cut",
      volume: 300 * 89 * 38,
    });
    expect(lengths({ ...good, left: square, right: square, ...wrong })).toEqual({
      kind: "impossible",
      reason,
    });
  });

  it("never throws, and never gives a number that is none", () => {
    const anyCut = fc.record({ miter: odd, bevel: odd });
    const wild = fc.record({ measured, length: odd, width: odd, thickness: odd, edges: side });
    fc.assert(
      fc.property(wild, anyCut, anyCut, (board, left, right) => {
        const cut = lengths({ ...board, left, right });
        if (cut.kind === "cut")
          expect(
            [cut.longEdge, cut.volume, ...cut.corners.flat(), ...cut.centroid].every(Number.isFinite),
          ).toBe(true);
        else expect(cut.reason).toMatch(/^(number|length|section|angle|ends-cross)$/);
      }),
    );
  });
});

describe("sloped corners", () => {
  it("agree with the hopper where both boards lean alike, outward or inward", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 20 }), real(-89, 89), (n, lean) => {
        const [one, general] = [hopper(n, lean)!, leaningCorner(360 / n, lean, lean)!];
        expect(general.miters[0]).toBeCloseTo(one.miter, 6);
        expect(general.miters[1]).toBeCloseTo(one.miter, 6);
        expect(general.tilt).toBeCloseTo(one.tilt, 6);
      }),
    );
  });

  it("upright boards are not mitred but tilted by half the turn; a board meeting an upright one is mitred not at all", () => {
    const upright = leaningCorner(90, 0, 0)!;
    expect(upright.tilt).toBeCloseTo(45, 9);
    expect(upright.miters[0]).toBeCloseTo(0, 9);
    const mixed = leaningCorner(90, 0, 25)!;
    expect(mixed.miters[0]).toBeCloseTo(25, 9);
    expect(mixed.miters[1]).toBeCloseTo(0, 9);
  });

  it("swap their miters when the boards are swapped", () => {
    fc.assert(
      fc.property(real(20, 160), real(-60, 60), real(-60, 60), (turn, a, b) => {
        const [there, back] = [leaningCorner(turn, a, b)!, leaningCorner(turn, b, a)!];
        expect(there.miters[0]).toBeCloseTo(back.miters[1], 6);
        expect(there.tilt).toBeCloseTo(back.tilt, 6);
      }),
    );
  });

  it("are refused where there is no corner", () => {
    for (const n of [2, 0, -4, 4.5, Number.NaN]) expect(hopper(n, 15)).toBeUndefined();
    for (const lean of [91, -91, Number.NaN]) expect(hopper(4, lean)).toBeUndefined();
    expect(leaningCorner(0, 15, 15)).toBeUndefined();
    expect(leaningCorner(90, Number.NaN, 15)).toBeUndefined();
  });
});

describe("a screw through a stack", () => {
  const stack = fc.array(real(5, 60), { minLength: 1, maxLength: 5 });
  const layersOf = (depths: readonly number[]) => depths.map((depth, i) => ({ id: `board ${i}`, depth }));

  it("is as long as its reaches and what stands out, and its tip is in the layer it reached last", () => {
    fc.assert(
      fc.property(stack, real(10, 250), real(0, 80), (depths, length, angleOffSquare) => {
        const screw = driveScrew({ length, angleOffSquare, layers: layersOf(depths) });
        if (screw.kind !== "driven") throw new Error(screw.reason);
        const proud = Math.max(0, -screw.tip.woodOverTip) / Math.cos(rad(angleOffSquare));
        expect(screw.reach.reduce((sum, r) => sum + r.along, 0) + proud).toBeCloseTo(length, 6);
        const touched = screw.reach.filter((r) => r.depth > 1e-6).length;
        expect(touched).toBe(screw.tip.in === "beyond" ? depths.length : screw.tip.in + 1);
        expect(screw.tip.in === "beyond").toBe(screw.tip.woodOverTip < -1e-6);
        expect(screw.share).toBeCloseTo(screw.bite / length, 12);
      }),
    );
  });

  it("keeps just the margin at the angle for it, or is short enough straight", () => {
    fc.assert(
      fc.property(real(10, 200), real(10, 150), real(0, 9), (length, depth, margin) => {
        const angle = angleForMargin(length, depth, margin)!;
        const screw = driveScrew({ length, angleOffSquare: angle, layers: layersOf([depth]) });
        if (screw.kind !== "driven") throw new Error(screw.reason);
        if (angle > 0) expect(screw.tip.woodOverTip).toBeCloseTo(margin, 6);
        else expect(screw.tip.woodOverTip).toBeGreaterThanOrEqual(margin - 1e-9);
        expect(angle === 0).toBe(length <= longestStraight(depth, margin)!);
      }),
    );
  });

  it("goes deeper by what its head is sunk, and a sunk head spares the first layer", () => {
    const layers = layersOf([38, 38]);
    const screw = driveScrew({ length: 50, angleOffSquare: 0, layers, sink: 10 });
    expect(screw).toMatchObject({
      reach: [{ depth: 28 }, { depth: 22 }],
      tip: { in: 1, depth: 60, woodOverTip: 16 },
      bite: 22,
    });
    expect(driveScrew({ length: 50, angleOffSquare: 0, layers, sink: 76 })).toMatchObject({ reason: "sink" });
  });

  it("bites nothing when it ends before the last board, or just at its face", () => {
    for (const length of [12, 19]) {
      const screw = driveScrew({ length, angleOffSquare: 0, layers: layersOf([19, 19]) });
      expect(screw).toMatchObject({ bite: 0, share: 0, tip: { in: 0, woodOverTip: 38 - length } });
    }
  });

  it.each([
    ["number", { length: Number.NaN }],
    ["number", { layers: [{ id: "a", depth: Number.NaN }] }],
    ["length", { length: 0 }],
    ["angle", { angleOffSquare: 90 }],
    ["angle", { angleOffSquare: -5 }],
    ["layers", { layers: [] }],
    ["layers", { layers: [{ id: "a", depth: 0 }] }],
    ["sink", { sink: -1 }],
  ] as const)("refuses a wrong %s: %o", (reason, wrong) => {
    const good = { length: 32, angleOffSquare: 0, layers: layersOf([19, 19]) };
    expect(driveScrew({ ...good, ...wrong })).toEqual({ kind: "impossible", reason });
  });

  it("never throws, and never gives a number that is none", () => {
    const layers = fc.array(fc.record({ id: fc.string(), depth: odd }), { maxLength: 3 });
    fc.assert(
      fc.property(odd, odd, layers, odd, (length, angleOffSquare, layers, sink) => {
        const screw = driveScrew({ length, angleOffSquare, layers, sink });
        if (screw.kind === "driven")
          expect([screw.bite, screw.share, screw.tip.woodOverTip].every(Number.isFinite)).toBe(true);
        else expect(screw.reason).toMatch(/^(number|length|angle|layers|sink)$/);
        const angle = angleForMargin(length, angleOffSquare, sink) ?? 0;
        expect(angle >= 0 && angle <= 90).toBe(true);
      }),
    );
  });

  it("has no angle for what cannot be", () => {
    expect(angleForMargin(50, 3, 3)).toBeUndefined();
    expect(angleForMargin(Number.NaN, 38, 3)).toBeUndefined();
    expect(angleForMargin(0, 38, 3)).toBeUndefined();
    expect(angleForMargin(Number.POSITIVE_INFINITY, 38, 3)).toBeUndefined();
    expect(longestStraight(38, -1)).toBeUndefined();
    expect(longestStraight(Number.NaN, 1)).toBeUndefined();
  });
});

/** Volume and centroid of a board from its eight corners, as tetrahedra about its first corner. */
function tetrahedra(corners: readonly Vec3[]): { volume: number; centroid: Vec3 } {
  // Faces as loops of corner indices that all turn the same way seen from outside.
  const faces: readonly (readonly [number, number, number, number])[] = [
    [0, 1, 3, 2],
    [4, 6, 7, 5],
    [0, 4, 5, 1],
    [2, 3, 7, 6],
    [0, 2, 6, 4],
    [1, 5, 7, 3],
  ];
  const origin = corners[0]!;
  const solids = faces
    .flatMap(([i, j, k, l]) => [[i, j, k] as const, [i, k, l] as const])
    .map(([p, q, r]) => {
      const [a, b, c] = [corners[p]!, corners[q]!, corners[r]!];
      const volume = dot(subtract(a, origin), cross(subtract(b, origin), subtract(c, origin))) / 6;
      return { volume, middle: (axis: 0 | 1 | 2) => (origin[axis] + a[axis] + b[axis] + c[axis]) / 4 };
    });
  const volume = solids.reduce((sum, s) => sum + s.volume, 0);
  const at = (axis: 0 | 1 | 2): number =>
    solids.reduce((sum, s) => sum + s.volume * s.middle(axis), 0) / volume;
  return { volume: Math.abs(volume), centroid: [at(0), at(1), at(2)] };
}

describe("boxes kept in cubes of space", () => {
  it("are found near each other, so far out too that numbers have gaps", () => {
    for (const far of [0, 1e9, 1e20]) {
      const box = { least: [far, far, far], most: [far + 30, far + 30, far + 30] } as const;
      expect(gridOf([box, box]).near(box, 1)).toEqual([0, 1]);
    }
    const [here, there] = [0, 1e6].map((x) => ({ least: [x, 0, 0], most: [x + 30, 30, 30] }) as const);
    expect(gridOf([here!, there!]).near(here!, 1)).toEqual([0]);
  });
});
