/** What a drawing of the built thing owes its reader: every piece, on the page, to scale, labels clear of all else. */
import { describe, expect, it } from "vitest";
import { boxOf, type Drawing, type Point } from "../../server/sheet/display";
import {
  type DrawingOptions,
  type DrawnPiece,
  drawExploded as explodedInSteps,
  ofAssembly,
  type Side,
  drawView as viewInSteps,
} from "../../server/sheet/piece-drawing";
import { movesOf } from "../../server/sheet/piece-drawing/apart";
import { cheapest } from "../../server/sheet/piece-drawing/assign";
import { movedBy } from "../../server/sheet/piece-drawing/exploded";
import { cross } from "../../server/sheet/piece-drawing/plane";
import { standardScale } from "../../server/sheet/piece-drawing/scale";
import { touches } from "../../server/sheet/piece-drawing/touching";
import { viewOf } from "../../server/sheet/piece-drawing/views";
import { svgText } from "../../server/sheet/svg";
import { finished } from "../../server/solid/steps";
import { laid } from "../../server/solid/view-flat";
import { hullOf } from "../../server/solid/view-order";
import { random } from "../published/random";
import { covers, gapBetween, leaders, marks, objectBox, overlap, paths, rings, said, texts } from "./drawn";
import { alongX, alongY, bench, flatX, flatY, made, tee, trough, upright } from "./made-pieces";
import { readStrictly } from "./strict-markup";

const SIDES: readonly Side[] = ["turned", "front", "left", "right", "above", "back"];
const options: DrawingOptions = {
  name: "trough",
  words: (mm) => `${Math.round(mm)} mm`,
  system: "millimetres",
};

const drawView = (...asked: Parameters<typeof viewInSteps>): Drawing => finished(viewInSteps(...asked));
const drawExploded = (...asked: Parameters<typeof explodedInSteps>): Drawing =>
  finished(explodedInSteps(...asked));

const SCENES: Readonly<Record<string, readonly DrawnPiece[]>> = {
  tee: tee(),
  trough: trough(),
  bench: bench(),
};
const drawings: readonly {
  name: string;
  side: Side | "apart";
  pieces: readonly DrawnPiece[];
  drawing: Drawing;
}[] = Object.entries(SCENES).flatMap(([name, pieces]) => [
  ...SIDES.map((side) => ({ name, side, pieces, drawing: drawView(pieces, side, options) })),
  { name, side: "apart" as const, pieces, drawing: drawExploded(pieces, options) },
]);
const each = drawings.map((d) => [`${d.name} ${d.side}`, d] as const);

describe.each(each)("%s", (_, { side, pieces, drawing }) => {
  it("shows every piece, as a face that can be pointed at", () => {
    const shown = new Set(paths(drawing, "face").map(({ piece }) => piece));
    expect([...shown].sort()).toEqual(pieces.map(({ id }) => id).sort());
    for (const face of paths(drawing, "face")) {
      expect(face.closed).toBe(true);
      expect(["paper", "pale", "gray"]).toContain(face.fill);
    }
    for (const edge of paths(drawing, "edge")) expect(edge.piece).toBeUndefined();
  });

  it("stays on the page", () => {
    expect(drawing.width).toBeLessThanOrEqual(180);
    expect(drawing.height).toBeLessThanOrEqual(side === "turned" || side === "apart" ? 200 : 140);
    for (const item of drawing.items) {
      const box = boxOf(item);
      expect(box.left).toBeGreaterThanOrEqual(0);
      expect(box.top).toBeGreaterThanOrEqual(0);
      expect(box.right).toBeLessThanOrEqual(drawing.width);
      expect(box.bottom).toBeLessThanOrEqual(drawing.height);
    }
  });

  it("has a balloon for every mark seen, and says which are not", () => {
    const all = [...new Set(pieces.map(({ mark }) => mark))];
    const missing = /not seen from here: (.*)$/.exec(said(drawing))?.[1]?.split(", ") ?? [];
    expect([...marks(drawing), ...missing].sort()).toEqual(all.sort());
    expect(drawing.title.includes("not seen from here")).toBe(missing.length > 0);
  });

  it("keeps balloons off each other, off the object and off the measures", () => {
    const object = objectBox(drawing);
    const boxes = rings(drawing);
    boxes.forEach((ring, i) => {
      expect(overlap(ring, object)).toBe(false);
      for (const other of boxes.slice(i + 1)) expect(overlap(ring, other)).toBe(false);
      for (const text of texts(drawing))
        if (text.layer !== "balloon") expect(overlap(ring, boxOf(text))).toBe(false);
    });
    const measures = paths(drawing, "dimension").flatMap(({ strokes }) =>
      strokes.map(([a, b]) => [a!, b!] as const),
    );
    for (const { left, right, top, bottom } of boxes) {
      const across = [
        [
          [left, top],
          [right, bottom],
        ],
        [
          [left, bottom],
          [right, top],
        ],
      ] as const;
      for (const line of across) expect(measures.some((m) => cross(m, line))).toBe(false);
    }
    for (const leader of leaders(drawing)) expect(measures.some((m) => cross(m, leader))).toBe(false);
  });

  it("ends each leader on a face of a piece of its mark, and lets no two cross", () => {
    const markOf = new Map(pieces.map(({ id, mark }) => [id, mark]));
    const all = leaders(drawing);
    all.forEach((leader, i) => {
      for (const other of all.slice(i + 1)) expect(cross(leader, other)).toBe(false);
    });
    const dots = paths(drawing, "leader").filter(({ closed }) => closed);
    expect(dots.map(({ piece }) => markOf.get(piece!))).toEqual(marks(drawing));
    for (const dot of dots) {
      const box = boxOf(dot);
      const at: Point = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
      const top = paths(drawing, "face")
        .filter(({ strokes }) => covers(strokes[0]!, at))
        .at(-1);
      expect(top?.piece).toBe(dot.piece);
    }
  });

  it("writes well-formed SVG, the same each time", () => {
    const svg = svgText(drawing);
    readStrictly(svg.trim());
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    const again = side === "apart" ? drawExploded(pieces, options) : drawView(pieces, side, options);
    expect(svgText(again)).toBe(svg);
  });
});

describe("measures over all", () => {
  const measured = (side: Side): readonly string[] =>
    texts(drawView(trough(), side, options)).flatMap(({ layer, text }) =>
      layer === "dimension" ? [text] : [],
    );
  it("are width, depth and height in the turned view, and the two of the plane in the others", () => {
    expect(measured("turned")).toEqual(["1020 mm", "420 mm", "340 mm"]);
    for (const side of ["front", "back"] as const) expect(measured(side)).toEqual(["1020 mm", "340 mm"]);
    for (const side of ["left", "right"] as const) expect(measured(side)).toEqual(["420 mm", "340 mm"]);
    expect(measured("above")).toEqual(["1020 mm", "420 mm"]);
  });
  it("have lines as long as the scale says", () => {
    const drawing = drawView(trough(), "front", options);
    const { left, right, top, bottom } = objectBox(drawing);
    expect(said(drawing).replaceAll("\u00a0", " ")).toContain("1 : 10");
    expect(right - left).toBeCloseTo(102, 6);
    expect(bottom - top).toBeCloseTo(34, 6);
  });
});

describe("scales", () => {
  it("are the largest standard one in which the object fits its room", () => {
    const room = { width: 100, height: 100 };
    const metric = [90, 101, 201, 251, 501, 1001, 3000, 8000].map((mm) =>
      standardScale(mm, 50, room, "millimetres"),
    );
    expect(metric).toEqual([1, 2, 2.5, 5, 10, 15, 50, 100]);
    const inches = [90, 101, 390, 790, 1190, 1590, 2390, 7000].map((mm) =>
      standardScale(50, mm, room, "inches"),
    );
    expect(inches).toEqual([1, 2, 4, 8, 12, 16, 24, 96]);
  });
});

describe("lines", () => {
  it("that other wood hides are dashed, when asked for, and in straight views only", () => {
    const hidden = { ...options, hidden: true };
    expect(paths(drawView(trough(), "front", options), "hidden")).toHaveLength(0);
    expect(paths(drawView(trough(), "turned", hidden), "hidden")).toHaveLength(0);
    const [dashes] = paths(drawView(trough(), "front", hidden), "hidden");
    expect(dashes!.weight).toBe(0.15);
    expect(dashes!.strokes.length).toBeGreaterThan(20);
  });
  it("have the weights of outline and inner line, and none is a speck", () => {
    for (const { drawing } of drawings) {
      const edges = paths(drawing, "edge");
      for (const { weight } of edges) expect([0.22, 0.4]).toContain(weight);
      for (const stroke of edges.flatMap(({ strokes }) => strokes)) {
        const [a, b] = [stroke[0]!, stroke.at(-1)!];
        if (stroke.length === 2) expect(Math.hypot(b[0] - a[0], b[1] - a[1])).toBeGreaterThan(0.35);
      }
    }
  });
});

describe("drawn apart", () => {
  const view = viewOf("turned");
  const outline = (piece: DrawnPiece) =>
    hullOf(piece.cells.flatMap((cell) => cell.vertices.map((v) => laid(v, view))));
  const parted = (pieces: readonly DrawnPiece[]): void => {
    const pairs = touches(pieces);
    const moves = movesOf(pieces, pairs, view);
    const moved = pieces.map((piece, i) => movedBy(piece, moves[i]!));
    expect(pairs.length).toBeGreaterThan(0);
    for (const { first, second } of pairs) {
      if (moves[first]!.every((x, k) => x === moves[second]![k])) continue;
      expect(gapBetween(outline(moved[first]!), outline(moved[second]!))).toBeGreaterThan(1 - 1e-6);
    }
  };
  it("the outlines of pieces that touch part", () => {
    for (const pieces of Object.values(SCENES)) {
      const pairs = touches(pieces);
      const moves = movesOf(pieces, pairs, view);
      for (const { first, second } of pairs) expect(moves[first]).not.toEqual(moves[second]);
      parted(pieces);
    }
  });
  it("pieces go the way they are told, far enough, and those that are told nothing stay", () => {
    const [foot, post] = tee();
    const told = [foot!, { ...post!, apart: [0, -10, 20] as const }];
    const moves = movesOf(told, touches(told), view);
    expect(moves[0]).toEqual([0, 0, 0]);
    const [x, y, z] = moves[1]!;
    expect(x).toBe(0);
    expect(y).toBeLessThan(-10);
    expect(z / y).toBeCloseTo(-2, 9);
    parted(told);
  });
  it("both halves of a thing go the same way out", () => {
    const pieces = trough();
    const moves = movesOf(pieces, touches(pieces), view);
    const of = (id: string) => moves[pieces.findIndex((piece) => piece.id === id)]!;
    expect(of("side / 1")[1]).toBeLessThan(0);
    expect(of("side / 2")[1]).toBeCloseTo(-of("side / 1")[1], 6);
    expect(of("end / 2")[0]).toBeCloseTo(-of("end / 1")[0], 6);
    expect(of("cap-long / 1")[2]).toBeGreaterThan(of("side / 3")[2]);
    expect(of("foot / 1")[2]).toBeLessThan(of("side / 1")[2]);
  });
  it("has thin dash-dot lines from face to face", () => {
    const trails = paths(drawExploded(tee(), options), "trail");
    expect(trails).toHaveLength(1);
    expect(trails[0]!.weight).toBe(0.15);
    for (const [a, b] of trails[0]!.strokes) expect(a![0]).toBeCloseTo(b![0], 6);
  });
});

describe("texts", () => {
  it("say what is shown, in words", () => {
    const { title } = drawView(trough(), "front", options);
    expect(title).toBe(
      "trough seen from the front, 1 : 10. Over all: width 1020 mm, depth 420 mm, height 340 mm. A foot, 4 pieces; " +
        "B bearer, 2 pieces; C slat, 4 pieces; D side, 4 pieces; E end, 4 pieces; F post, 4 pieces; G cleat, 4 pieces; " +
        "H cap-long, 2 pieces; I cap-short, 2 pieces. not seen from here: C, E, F, G, I",
    );
  });
  it("of a plan cannot break out of the drawing, and long ones are shortened", () => {
    const nasty = `"><script>&'\u0000`;
    const pieces = tee().map((piece, i) => ({
      ...piece,
      id: `${nasty}${i}`,
      mark: `${nasty} a very long mark ${i}`,
      title: nasty,
    }));
    const drawing = drawView(pieces, "turned", {
      ...options,
      name: nasty,
      words: () => `${nasty} ${"9".repeat(200)}`,
    });
    const svg = svgText(drawing);
    readStrictly(svg.trim());
    expect(svg).not.toContain("<script");
    for (const item of drawing.items) {
      expect(boxOf(item).left).toBeGreaterThanOrEqual(0);
      expect(boxOf(item).right).toBeLessThanOrEqual(180);
    }
  });
});

describe("a part of the whole, or very little", () => {
  it("one assembly is drawn alone", () => {
    const cap = ofAssembly(trough(), "cap");
    expect(cap.map(({ id }) => id)).toEqual([
      "cap-long / 1",
      "cap-short / 1",
      "cap-long / 2",
      "cap-short / 2",
    ]);
    expect(ofAssembly(trough(), "trough")).toHaveLength(30);
    expect(marks(drawView(cap, "above", options))).toEqual(["H", "I"]);
  });
  it("no pieces, one piece, a crumb and a giant are drawn too", () => {
    expect(said(drawView([], "turned", options))).toBe("nothing to show");
    expect(said(drawExploded([], options))).toBe("nothing to show");
    for (const size of [2, 40, 5e4]) {
      const one = [made({ id: "one / 1", mark: "A", size: [size, size, size], pose: flatX([0, 0, 0]) })];
      for (const side of SIDES) {
        const drawing = drawView(one, side, options);
        expect(marks(drawing)).toEqual(["A"]);
        expect(drawing.height).toBeLessThan(220);
      }
    }
  });
  it("more marks than places beside the object find their places above it", () => {
    const posts = Array.from({ length: 60 }, (_, i) =>
      made({ id: `post / ${i}`, mark: `M${i}`, size: [300, 40, 40], pose: upright([i * 45, 0, 0]) }),
    );
    const drawing = drawView(posts, "front", options);
    expect(marks(drawing)).toHaveLength(60);
    const boxes = rings(drawing);
    boxes.forEach((ring, i) => {
      for (const other of boxes.slice(i + 1)) expect(overlap(ring, other)).toBe(false);
    });
  });
});

describe("any pile of boards", () => {
  // Seed 20261128.
  const next = random(20261128);
  const step = (least: number, most: number): number =>
    least + 10 * Math.floor((next() * (most - least)) / 10);
  const pile = (): readonly DrawnPiece[] =>
    Array.from({ length: step(10, 300) / 10 }, (_, i) => {
      const at = [step(0, 900), step(0, 500), step(0, 700)] as const;
      const lying = [alongX, alongY, flatX, flatY, upright][Math.floor(next() * 5)]!;
      return made({
        id: `board / ${i}`,
        mark: String.fromCharCode(65 + Math.floor(next() * 26)),
        size: [step(50, 900), step(20, 150), step(10, 60)],
        pose: lying(at),
      });
    });
  it("keeps to its page, and its balloons to their places", () => {
    let [crossed, all] = [0, 0];
    for (let n = 0; n < 60; n++) {
      const pieces = pile();
      for (const side of [...SIDES, "apart"] as const) {
        const drawing = side === "apart" ? drawExploded(pieces, options) : drawView(pieces, side, options);
        for (const box of drawing.items.map(boxOf)) {
          expect(Math.min(box.left, box.top)).toBeGreaterThanOrEqual(0);
          expect(box.right).toBeLessThanOrEqual(180);
          expect(box.bottom).toBeLessThanOrEqual(drawing.height);
        }
        const boxes = rings(drawing);
        boxes.forEach((ring, i) => {
          expect(overlap(ring, objectBox(drawing))).toBe(false);
          for (const other of boxes.slice(i + 1)) expect(overlap(ring, other)).toBe(false);
        });
        const missing = /not seen from here: (.*)$/.exec(said(drawing))?.[1]?.split(", ") ?? [];
        expect([...marks(drawing), ...missing].sort()).toEqual(
          [...new Set(pieces.map((p) => p.mark))].sort(),
        );
        const lines = leaders(drawing);
        lines.forEach((line, i) => {
          all++;
          crossed += lines.slice(i + 1).filter((other) => cross(line, other)).length;
        });
      }
    }
    console.log(`leaders: ${crossed} crossings among ${all}`);
    expect(crossed / all).toBeLessThan(0.005);
  });
});

describe("the least sum of costs", () => {
  it("is that of the best of all ways to deal out", () => {
    const costs = [
      [4, 1, 3, 9],
      [2, 0, 5, 8],
      [3, 2, 2, 7],
    ];
    const ways = [0, 1, 2, 3].flatMap((a) =>
      [0, 1, 2, 3].flatMap((b) =>
        [0, 1, 2, 3].flatMap((c) => (new Set([a, b, c]).size === 3 ? [[a, b, c]] : [])),
      ),
    );
    const sum = (way: readonly number[]): number =>
      way.reduce((s, column, row) => s + costs[row]![column]!, 0);
    expect(sum(cheapest(costs))).toBe(Math.min(...ways.map(sum)));
  });
});
