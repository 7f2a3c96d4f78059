/** What a drawing owes its reader: everything on the page, to scale, no label on another, leaders clear of labels. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boardScale, drawBoard, PAGE_WIDTH } from "../../server/sheet/board-drawing";
import { type Box, boxOf, type Drawing, type TextItem, textWidth } from "../../server/sheet/display";
import { fanOut } from "../../server/sheet/fan";
import { placeFlags } from "../../server/sheet/flags";
import { drawPanel, panelScale } from "../../server/sheet/panel-drawing";
import { Pen } from "../../server/sheet/pdf/pen";
import { board, panel } from "./made";
import { nasty, PATIENCE, RUNS } from "./nasty";
import { FONTS } from "./read-pdf";
import { trough } from "./trough";

/** Boards cut at random, in sixteenths of an inch, some with a bad stretch. */
const boards = fc
  .record({
    label: nasty,
    length: fc.integer({ min: 1, max: 240 }),
    trim: fc.constantFrom(0, 0.5),
    keep: fc.boolean(),
    wanted: fc.array(
      fc.tuple(
        fc.oneof(nasty, fc.constantFrom("leg", "side-rail", "block")),
        fc.integer({ min: 1, max: 700 }),
      ),
      { maxLength: 40 },
    ),
    bad: fc.option(fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 1, max: 6 }))),
  })
  .map(({ label, length, trim, keep, wanted, bad }) => {
    const cuts: ([string, number] | ["bad", number, number])[] = [];
    let x = trim;
    for (const [name, sixteenths] of wanted) {
      const long = sixteenths / 16;
      if (x + long + trim > length) continue;
      cuts.push([name, long]);
      x += long + 1 / 8;
      if (bad && cuts.length === 2 && x + bad[0] + bad[1] < length) {
        cuts.push(["bad", x + bad[0], x + bad[0] + bad[1]]);
        x += bad[0] + bad[1];
      }
    }
    return board({ label, kind: "bought", length, trim, keep, cuts });
  });

/** Sheets cut into strips and the strips into pieces. */
const panels = fc
  .record({
    length: fc.integer({ min: 2, max: 144 }),
    width: fc.integer({ min: 2, max: 96 }),
    strips: fc.array(
      fc.tuple(
        fc.double({ min: 0.25, max: 30, noNaN: true }),
        fc.array(fc.tuple(nasty, fc.double({ min: 0.25, max: 60, noNaN: true })), { maxLength: 12 }),
      ),
      { maxLength: 8 },
    ),
  })
  .map(({ length, width, strips }) => {
    const cuts: [string, number, number, number, number][] = [];
    let y = 0;
    for (const [high, pieces] of strips) {
      if (y + high > width) continue;
      let x = 0;
      for (const [name, long] of pieces) {
        if (x + long > length) continue;
        cuts.push([name, x, y, long, high]);
        x += long + 1 / 8;
      }
      y += high + 1 / 8;
    }
    return panel("sheet", length, width, cuts);
  });

const words = (drawing: Drawing) => drawing.items.filter((item) => item.kind === "text");

/** The letters that can be typed on any keyboard. */
const LETTERS = Array.from({ length: 0x7f - 0x20 }, (_, i) => String.fromCharCode(0x20 + i));
/** DejaVu fonts 2.37: the face that the estimate of a text's width is of, and that is embedded in PDF. */
const { regular, bold } = new Pen("", "en", [1, 1], FONTS).letters;
/** How wide each of them is, in ems by the font's own tables. */
const widthsOf = (face: typeof regular) => new Map(LETTERS.map((c) => [c, face.width(c, 1)]));
const [REGULAR, BOLD] = [widthsOf(regular), widthsOf(bold)];
/** Any other letter, in ems: half of the type's height. */
const OTHER = 0.5;

/** A second estimate of a text's space, by its letters' own widths. */
function byLetters(item: TextItem): Box {
  const widths = item.bold ? BOLD : REGULAR;
  const width = [...item.text].reduce((sum, c) => sum + (widths.get(c) ?? OTHER) * item.size, 0);
  const start = item.anchor === "start" ? 0 : item.anchor === "middle" ? width / 2 : width;
  const { x, y, size } = item;
  return item.upright
    ? { left: x - 0.75 * size, right: x + 0.2 * size, top: y + start - width, bottom: y + start }
    : { left: x - start, right: x - start + width, top: y - 0.75 * size, bottom: y + 0.2 * size };
}

function meet(a: Box, b: Box): boolean {
  return (
    a.left < b.right - 0.01 && b.left < a.right - 0.01 && a.top < b.bottom - 0.01 && b.top < a.bottom - 0.01
  );
}

function expectClear(drawing: Drawing): void {
  const texts = words(drawing).filter((item) => item.text !== "");
  const boxes = texts.map((item) => [boxOf(item), byLetters(item)] as const);
  boxes.forEach(([mine, printed], i) => {
    for (let j = 0; j < i; j++) {
      if (meet(mine, boxes[j]![0]) || meet(printed, boxes[j]![1]))
        throw new Error(`${JSON.stringify(texts[i]!.text)} on ${JSON.stringify(texts[j]!.text)}`);
    }
  });
}

function expectOnPage(drawing: Drawing): void {
  const outside = drawing.items.filter((item) => {
    const { left, top, right, bottom } = boxOf(item);
    const inside = left >= -0.001 && top >= -0.001 && right <= drawing.width + 0.001;
    return !(inside && bottom <= drawing.height + 0.001);
  });
  expect(outside).toEqual([]);
}

describe("the room a text takes", () => {
  it("is told too small for no letter that can be typed on any keyboard, to a thousandth of its height", () => {
    const short = LETTERS.filter((c) => {
      const [plain, heavy] = [textWidth(c, 1), textWidth(c, 1, true)];
      return plain < REGULAR.get(c)! - 0.001 || heavy < BOLD.get(c)! - 0.001;
    });
    expect(LETTERS.length).toBe(95);
    expect(short).toEqual([]);
  });
});

describe("a board on paper", () => {
  it(
    "keeps everything on the page, labels clear of each other and leaders clear of hanging labels",
    () => {
      fc.assert(
        fc.property(boards, fc.double({ min: 1, max: 4, noNaN: true }), (one, smaller) => {
          const drawing = drawBoard(one, { scale: boardScale([one]) / smaller, system: "inches" });
          expectOnPage(drawing);
          expectClear(drawing);
          const wood = boxOf(drawing.items.find(({ layer }) => layer === "wood")!);
          const hanging = words(drawing).filter((item) => item.y > wood.bottom);
          for (const item of drawing.items) {
            if (item.kind !== "path" || item.layer !== "leader") continue;
            for (const label of hanging) {
              if (
                meet(
                  { ...boxOf(item), left: boxOf(item).left, right: boxOf(item).right + 0.02 },
                  boxOf(label),
                )
              )
                throw new Error(`a leader runs through ${label.text}`);
            }
          }
        }),
        { numRuns: RUNS },
      );
    },
    PATIENCE,
  );

  it(
    "draws lengths to the scale asked for",
    () => {
      fc.assert(
        fc.property(boards, (one) => {
          const scale = boardScale([one]);
          const drawing = drawBoard(one, { scale, system: "millimetres" });
          const wood = boxOf(drawing.items.find(({ layer }) => layer === "wood")!);
          expect(wood.right - wood.left).toBeCloseTo(one.length.mm * scale, 6);
          expect(wood.right - wood.left).toBeCloseTo(PAGE_WIDTH - 4, 6);
          const pieces = drawing.items.filter(({ layer }) => layer === "piece").map(boxOf);
          expect(pieces.length).toBe(one.cuts.length);
          one.cuts.forEach(({ from, length }, i) => {
            expect(pieces[i]!.left - wood.left).toBeCloseTo(from.mm * scale, 6);
            expect(pieces[i]!.right - pieces[i]!.left).toBeCloseTo(length.mm * scale, 6);
          });
        }),
        { numRuns: RUNS },
      );
    },
    PATIENCE,
  );

  it("marks the end of each cut in order, and a beginning that does not follow a kerf", () => {
    const one = board({
      label: "8'",
      kind: "bought",
      length: 96,
      trim: 0.5,
      keep: true,
      cuts: [
        ["a", 20],
        ["b", 20],
        ["bad", 45, 50],
        ["c", 20],
      ],
    });
    const drawing = drawBoard(one, { scale: boardScale([one]), system: "inches" });
    const marks = words(drawing).filter(({ layer }) => layer === "mark");
    // By hand: 1/2 + 20, + 1/8 + 20, then from 50 on.
    expect(marks.map(({ text }) => text)).toEqual(['1/2"', '20-1/2"', '40-5/8"', '50"', '70"']);
    const labels = words(drawing).filter(({ layer }) => layer === "label");
    expect(labels.map(({ text }) => text)).toEqual([
      "a",
      '20"',
      "b",
      '20"',
      "c",
      '20"',
      "offcut 1:",
      '25-3/8", keep',
    ]);
    const sides = drawing.items.flatMap((item) => {
      if (item.kind !== "path" || item.layer !== "kerf") return [];
      const [mark, other] = item.strokes.map((points) => points[0]![0]);
      return [Math.sign(other! - mark!)];
    });
    expect(sides).toEqual([-1, 1, 1, -1, 1]);
  });

  it("names what does not fit on a leader, neighbours alike once", () => {
    const cuts = Array.from({ length: 6 }, () => ["peg", 1.5] as const);
    const one = board({ label: "stub", kind: "on hand", length: 96, trim: 0, keep: true, cuts });
    const drawing = drawBoard(one, { scale: boardScale([one]), system: "inches" });
    expect(words(drawing).map(({ text }) => text)).toContain('peg 1-1/2", 6 in a row');
    expect(words(drawing).filter(({ layer }) => layer === "mark").length).toBe(6);
  });
});

describe("a sheet on paper", () => {
  it(
    "keeps everything on the page and labels clear of each other",
    () => {
      fc.assert(
        fc.property(panels, (one) => {
          const drawing = drawPanel(one, { scale: panelScale([one]) });
          expectOnPage(drawing);
          expectClear(drawing);
          const pieces = drawing.items.filter(({ layer }) => layer === "piece").map(boxOf);
          const scale = panelScale([one]);
          one.cuts.forEach(({ length, width }, i) => {
            expect(pieces[i]!.right - pieces[i]!.left).toBeCloseTo(length.mm * scale, 6);
            expect(pieces[i]!.bottom - pieces[i]!.top).toBeCloseTo(width.mm * scale, 6);
          });
        }),
        { numRuns: RUNS },
      );
    },
    PATIENCE,
  );

  it("writes along a narrow upright piece and hangs what fits nowhere", () => {
    const one = trough.panels[0]!.sheets[0]!;
    const texts = words(drawPanel(one, { scale: panelScale([one]) }));
    expect(texts.filter(({ upright }) => upright).map(({ text }) => text)).toEqual([
      'P tall-strip, 4" x 29"',
    ]);
    expect(texts.filter(({ text }) => text === 'O gusset, 8" x 8"').length).toBe(2);
  });
});

describe("a fan", () => {
  it("keeps order, distance and bounds, and no arrangement on a grid lies nearer", () => {
    const wanted = fc.array(fc.integer({ min: -2, max: 14 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(wanted, fc.integer({ min: 1, max: 3 }), (xs, pitch) => {
        const sorted = [...xs].sort((a, b) => a - b);
        const places = fanOut(sorted, pitch, 0, 12)!;
        places.forEach((place, i) => {
          expect(place).toBeGreaterThanOrEqual(-1e-9);
          expect(place).toBeLessThanOrEqual(12 + 1e-9);
          if (i > 0) expect(place - places[i - 1]!).toBeGreaterThanOrEqual(pitch - 1e-9);
        });
        const cost = (tried: readonly number[]) =>
          tried.reduce((sum, place, i) => sum + (place - sorted[i]!) ** 2, 0);
        const best = (chosen: readonly number[]): number => {
          if (chosen.length === sorted.length) return cost(chosen);
          const first = chosen.length === 0 ? 0 : chosen.at(-1)! + pitch;
          let least = Number.POSITIVE_INFINITY;
          for (let place = first; place <= 12; place++) least = Math.min(least, best([...chosen, place]));
          return least;
        };
        expect(cost(places)).toBeLessThanOrEqual(best([]) + 1e-9);
      }),
      { numRuns: Math.min(RUNS, 300) },
    );
    expect(fanOut([1, 2, 3], 5, 0, 9)).toBeNull();
  });

  it("takes the marks of a crowded board, upright and each once", () => {
    const cuts = Array.from({ length: 20 }, () => ["peg", 1.5] as const);
    const one = board({ label: "stub", kind: "on hand", length: 96, trim: 0, keep: true, cuts });
    const drawing = drawBoard(one, { scale: boardScale([one]), system: "inches" });
    const marks = words(drawing).filter(({ layer }) => layer === "mark");
    expect(marks.map(({ text }) => text)).toEqual(one.cuts.map(({ to }) => to.text));
    expect(marks.every(({ upright }) => upright)).toBe(true);
  });
});

describe("flags", () => {
  it(
    "never meet, and no leader runs through a label",
    () => {
      const flags = fc.array(
        fc.record({ x: fc.integer({ min: 0, max: 100 }), width: fc.integer({ min: 1, max: 30 }) }),
        {
          maxLength: 25,
        },
      );
      let placedOnes = 0;
      fc.assert(
        fc.property(flags, (all) => {
          const sorted = [...all].sort((a, b) => a.x - b.x);
          const placed = placeFlags(sorted, 100);
          if (placed === null) return;
          placedOnes++;
          const spans = sorted.map(({ x, width }, i) =>
            placed[i]!.side === "left" ? [x - width, x] : [x, x + width],
          );
          spans.forEach(([from, to], i) => {
            expect(from).toBeGreaterThanOrEqual(0);
            expect(to).toBeLessThanOrEqual(100);
            spans.forEach(([otherFrom, otherTo], j) => {
              if (i === j) return;
              const [a, b] = [placed[i]!, placed[j]!];
              if (a.row === b.row) expect(from! >= otherTo! || otherFrom! >= to!).toBe(true);
              const through = sorted[j]!.x > from! && sorted[j]!.x < to!;
              if (through) expect(b.row).toBeLessThan(a.row);
            });
          });
        }),
        { numRuns: RUNS },
      );
      expect(placedOnes).toBeGreaterThan(RUNS / 10);
    },
    PATIENCE,
  );
});
