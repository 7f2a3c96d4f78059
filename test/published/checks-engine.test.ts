/** The whole of the program on figures from outside it: plans in, worked-out numbers and problems out. */
import { describe, expect, test } from "vitest";
import { type Evaluated, evaluate } from "../../server/service";

const run = (text: string): Evaluated =>
  evaluate("plan.sawbuck", text, (path) => ({ file: path, refused: "there is no such file" }));
const codes = (e: Evaluated): string[] => e.problems.map((p) => p.code);
const INCH = 25.4;
const inches = (mm: number): number => mm / INCH;

/** The value of a problem's number, in inches where it is a length. */
function numberOf(e: Evaluated, code: string, name: string): number {
  const found = e.problems.find((p) => p.code === code)?.numbers.find((n) => n.name === name);
  if (!found) throw new Error(`no ${name} in ${code}`);
  return inches(found.value.approx);
}

const halfInch = (screws: string): string => `
stock thin, actual 1/2" x 3-1/2"
part slat 2 of thin, length 20"
part rail 2 of thin, length 30"
fasten slat face into rail face, ${screws}
`;

describe("a 1-1/4 screw in two 1/2 boards", () => {
  // Exact geometry; that a tip must not come out is common practice.
  test("driven straight comes out 1/4 proud: a hazard", () => {
    const e = run(halfInch('2 #8 x 1-1/4" at each end'));
    expect(e.problems.map((p) => `${p.code} ${p.class} ${p.says}`)).toEqual([
      "screw-pokes-through hazard out",
    ]);
    expect(numberOf(e, "screw-pokes-through", "wood over the tip")).toBeCloseTo(-0.25, 9);
  });

  test("at 36.9 off square its tip just reaches the far face: the 3-4-5 triangle", () => {
    const e = run(halfInch('2 #8 x 1-1/4" at each end, angled 36.9°'));
    expect(e.problems.map((p) => `${p.code} ${p.class} ${p.says}`)).toEqual([
      "screw-pokes-through warning reaches",
    ]);
    // 1-1/4 cos 36.9 is 0.99963.
    expect(numberOf(e, "screw-pokes-through", "wood over the tip")).toBeCloseTo(1 - 1.25 * 0.799685, 4);
  });
});

test("long point to long point at 45 both ends, the short side is shorter by twice the width (common practice; case 30: 7.000 at 3-1/2)", () => {
  const { worked } = run('part rail 2 of 2x4, length 40", long point to long point, ends mitered 45°');
  const cut = worked.parts.get("rail")!.cut;
  if (cut.state !== "known") throw new Error("not cut");
  const arrises = cut.value.arrises.map(inches);
  expect(Math.max(...arrises)).toBeCloseTo(40, 9);
  expect(Math.max(...arrises) - Math.min(...arrises)).toBeCloseTo(7, 9);
});

describe("a box of 48 x 24 x 18 inside", () => {
  const text = (limit: number): string => `
plan Trough
  floor limit ${limit} psf by the porch's builder
fill heavy-soil, saturated 100 lb/cuft
box trough
  inside 48" x 24" x 18"
  outline 48" x 24"
  filled with heavy-soil
`;
  // Case 34, exact geometry: 12.00 ft3 = 89.77 gal = 339.8 L.
  test("holds 12.00 cubic feet, 89.77 gallons, 339.8 litres", () => {
    const { volume } = run(text(200)).worked.boxes[0]!;
    const mm3 = volume.state === "known" ? volume.value.approx : Number.NaN;
    expect(mm3 / (12 * INCH) ** 3).toBeCloseTo(12, 9);
    expect(mm3 / (231 * INCH ** 3)).toBeCloseTo(89.77, 2);
    expect(mm3 / 1e6).toBeCloseTo(339.8, 1);
  });

  // Case 35, published formula: 1200 lb on 8 square feet is 150 psf (7.18 kPa).
  test("full of 100 lb/cuft weighs 1200 lb and presses 150 psf", () => {
    const box = run(text(200)).worked.boxes[0]!;
    const kg = box.weights.saturated.state === "known" ? box.weights.saturated.value.approx : Number.NaN;
    expect(kg / 0.45359237).toBeCloseTo(1200, 6);
    const pressure = box.pressure.state === "known" ? box.pressure.value.approx : Number.NaN;
    expect((pressure * (12 * INCH) ** 2) / 0.45359237).toBeCloseTo(150, 6);
    expect(pressure * 9.80665 * 1000).toBeCloseTo(7.18, 2);
  });

  test.each([40, 60, 100])("is over a limit of %i psf", (limit) => {
    const [problem, ...more] = run(text(limit)).problems;
    expect(more).toEqual([]);
    expect(problem).toMatchObject({ code: "box-over-load", class: "hazard", says: "over" });
  });

  test("is not over 160 psf", () => {
    expect(codes(run(text(160)))).toEqual([]);
  });
});

describe("rings", () => {
  // Computed outside the project, from the corners' coordinates.
  const hexagon = (angle: string): string =>
    `part board of 1x4, length 12", long point to long point, ends mitered ${angle}\nring seat = 6 board\n`;

  test("a hexagon of 12-inch sides, 3-1/2 wide, closes at 30", () => {
    expect(codes(run(hexagon("30°")))).toEqual([]);
  });

  test("and at 29.5 opens 1.2754 outside, 0.8545 inside, 0.0702 when shared", () => {
    const e = run(hexagon("29.5°"));
    expect(codes(e)).toEqual(["ring-open"]);
    expect(numberOf(e, "ring-open", "opening outside")).toBeCloseTo(1.2754, 4);
    expect(numberOf(e, "ring-open", "opening inside")).toBeCloseTo(0.8545, 4);
    expect(numberOf(e, "ring-open", "opening at each corner when shared")).toBeCloseTo(0.0702, 4);
  });

  const frame = (first: string, ends: string): string => `
part front 1 of 1x6, length ${first}, long point to long point, ends mitered 45°
part back 1 of 1x6, length 48", long point to long point, ends mitered 45°
part side 2 of ${ends}, length 20", long point to long point, ends mitered 45°
ring top = front and side and back and side
`;

  test("a frame of 48 x 20, 5-1/2 wide, one long side 1/8 over, opens 0.125 (exact geometry)", () => {
    const e = run(frame('48-1/8"', "1x6"));
    expect(codes(e)).toEqual(["ring-open"]);
    expect(numberOf(e, "ring-open", "opening")).toBeCloseTo(0.125, 9);
  });

  test("boards of 5-1/2 and 3-1/2 meet square at 32.4712 and 57.5288 (exact geometry)", () => {
    const cure = run(frame('48"', "1x4")).problems[0]!.cures[0]!;
    const degrees = (slot: unknown): number => (slot as { approx: number }).approx;
    expect(cure.says).toBe("match");
    expect(degrees(cure.slots.x)).toBeCloseTo(32.4712, 4);
    expect(degrees(cure.slots.y)).toBeCloseTo(57.5288, 4);
  });
});

describe("sizes of what is sold", () => {
  // PS 20-20, dressed dry, as reproduced by lumber tables (cases 1 and 2); 5/4x6 is common practice.
  test.each([
    ["2x4", 1.5, 3.5],
    ["1x8", 0.75, 7.25],
    ["2x10", 1.5, 9.25],
    ["5/4x6", 1, 5.5],
    ["6x6", 5.5, 5.5],
  ])("%s is really %f by %f", (name, thickness, width) => {
    const part = run(`stock ${name}\npart piece 1 of ${name}, length 20"`).worked.parts.get("piece")!;
    const inInches = (v: typeof part.width): number =>
      v.state === "known" ? inches(v.value.approx) : Number.NaN;
    expect(inInches(part.thickness)).toBeCloseTo(thickness, 12);
    expect(inInches(part.width)).toBeCloseTo(width, 12);
  });

  // PS 1, performance category 23/32 (case 4).
  test("a 23/32 panel is taken for 23/32 and its real range, 0.688 to 0.75, is named", () => {
    const { materials } = run(
      'sheet ply, plywood 23/32", sold 48" x 96"\npart top 1 of ply, length 20", width 10"',
    ).worked;
    const ply = materials.find((m) => m.name === "ply")!;
    expect(ply.thickness.state === "known" && inches(ply.thickness.value.approx)).toBeCloseTo(0.71875, 12);
    expect(ply.source).toMatch(/PS 1.*0\.688 to 0\.75/);
  });
});

test("a 96 in stick gives 4 parts of 20.5 with a 1/8 kerf, and a 13.5 offcut (case 7, exact geometry)", () => {
  const { worked } = run(
    'plan Slats\n  kerf 1/8"\nstock 2x4, on hand 1 of 96"\npart slat 4 of 2x4, length 20.5"\n',
  );
  const [board, ...more] = worked.boards[0]!.answer.boards;
  expect(more).toEqual([]);
  expect(board!.cuts).toHaveLength(4);
  expect(inches(board!.offcut / 640)).toBeCloseTo(13.5, 9);
});
