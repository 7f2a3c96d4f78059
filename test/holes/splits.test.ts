/** Screws without a pilot hole: when that splits the wood. By hand; D is 4.1656 mm for a #8 and 4.826 mm for a #10. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Problem } from "../../server/checks";
import { problemText } from "../../server/checks";
import { seenFrom } from "../../server/solid/pose";
import { applied } from "../checks/curing";
import { run } from "../checks/plans";

const SPLITS = "screw-splits";
const of = (text: string): Problem[] => run(text).problems.filter((p) => p.code === SPLITS);
const told = (text: string): string[] => of(text).map((p) => `${p.says} ${p.class}`);

/** A slat over two rails that are that wide, its ends flush with them: a screw in the middle stands half of that from its end. */
const ends = (
  wide: string,
  screws: string,
  stock = "",
  slat = 'stock slat-board, actual 3/4" x 3-1/2"\n',
): string =>
  `${slat}${stock}stock rail-board, actual 40mm x ${wide}\npart rail of rail-board, length 30"\npart slat of slat-board, length 24"\nplace rail across, flat, on floor, 0 from left, 0 from front\nplace rail across, flat, on floor, 0 from left, 24" - ${wide} from front\nplace slat front to back, flat, on rails, 12" in from left of rails, flush with front of rails\nfasten slat into rail, 1 ${screws} at each crossing`;
const SLAT = (species: string): string => `stock slat-board, actual 3/4" x 3-1/2", species ${species}\n`;

describe("near an end", () => {
  // 5 D less a millimetre that is let be: 19.828 mm for a #8, 23.13 mm for a #10.
  test.each([
    ["39.6mm", '#8 x 1-1/2"', ["end warning"]],
    ["39.7mm", '#8 x 1-1/2"', []],
    ["46.2mm", '#10 x 1-1/2"', ["end warning"]],
    ["46.3mm", '#10 x 1-1/2"', []],
    // 5 x 4 mm less one.
    ["37.9mm", "4 x 40mm", ["end warning"]],
    ["38.1mm", "4 x 40mm", []],
  ])("on rails %s wide with %s", (wide, screw, found) => {
    expect(told(ends(wide, screw))).toEqual(found);
  });

  // 10 D less a millimetre: 40.656 mm for a #8.
  test.each([
    ["81.2mm", "western-redcedar", ["brittle hint"]],
    ["81.4mm", "western-redcedar", []],
    ["81.2mm", "redwood-young-growth", ["brittle hint"]],
    // Gravity 0.50, and 0.43.
    ["81.2mm", "douglas-fir-larch", ["brittle hint"]],
    ["81.4mm", "douglas-fir-larch", []],
    ["81.2mm", "hem-fir", []],
    ["39.6mm", "western-redcedar", ["end warning"]],
  ])("on rails %s wide in %s", (wide, wood, found) => {
    expect(told(ends(wide, '#8 x 1-1/2"', "", SLAT(wood)))).toEqual(found);
  });

  test("the hint is for boards up to 3/4 thick", () => {
    const slat = (thick: string) => `stock slat-board, actual ${thick} x 3-1/2", species western-redcedar\n`;
    expect(told(ends("76mm", '#8 x 1-1/2"', "", slat('3/4"')))).toEqual(["brittle hint"]);
    expect(told(ends("76mm", '#8 x 1-5/8"', "", slat('13/16"')))).toEqual([]);
  });

  test("no screw that has a hole, and no nail", () => {
    expect(told(ends("38mm", '#8 x 1-1/2"').concat(', pilot 3/32"'))).toEqual([]);
    expect(told(ends("38mm", "pin", 'fastener pin, nail 0.131" x 1-1/2"\n'))).toEqual([]);
    expect(told(ends("38mm", "long", 'fastener long, bolt 1/4" x 3"\n'))).toEqual([]);
  });

  test("a clearance hole bores the near piece, not the last", () => {
    expect(told(ends("38mm", '#8 x 1-1/2"').concat(', clearance 3/16"'))).toEqual([]);
    const cleat = `part rail of 2x4, length 30"\npart slat of 1x4, length 24"\nplace rail across, flat, on floor, 0 from left, 0 from front\nplace slat front to back, flat, on rail, flush with left of rail, 3" past front of rail\nfasten slat into rail, 1 #8 x 1-1/2" at each crossing, clearance 3/16"`;
    expect(told(cleat)).toEqual([]);
    const [problem] = of(cleat.replace("flush with left of rail", '2-1/4" past left of rail'));
    expect(problem).toMatchObject({ says: "end", about: ["slat", "rail"] });
  });

  test("no panel", () => {
    const ply = 'sheet slat-board, plywood 3/4", sold 48" x 96" $60\n';
    expect(told(ends("38mm", '#8 x 1-1/2"', "", ply).replace('length 24"', 'length 24", width 4"'))).toEqual(
      [],
    );
  });

  test("what stands nearer to a side than a hole helps is told by itself", () => {
    const near = ends("15mm", '#8 x 1-1/2"');
    expect(run(near).problems.map((p) => p.code)).toContain("screw-near-edge");
    expect(told(near)).toEqual([]);
  });

  test("a mitered end is as near as it is where the screw stands", () => {
    const mitered = (more: string) =>
      `stock rail-board, actual 40mm x 45mm\npart rail of rail-board, length 30"\npart slat of 1x4, length 24"${more}\nplace rail across, flat, on floor, 0 from left, 0 from front\nplace slat front to back, flat, on rail, 9" in from left of rail, flush with front of rail\nfasten slat into rail, 2 #8 x 1-1/2" at each crossing`;
    expect(told(mitered(""))).toEqual([]);
    const text = mitered(", ends mitered 15°");
    const { joints, space } = run(text).worked;
    // Each stands so far from the long point, less what the miter takes off there.
    const toEnds = joints[0]!.placed!.screws.map(({ start, crossing }) => {
      const [along, across] = seenFrom(space.pieces[crossing.first]!.pose, start);
      return along - across * Math.tan(Math.PI / 12);
    });
    const [problem] = of(text);
    expect(problem!.says).toBe("end");
    expect(problem!.numbers[0]!.value.approx).toBeCloseTo(Math.min(...toEnds), 6);
  });
});

describe("in a row along the grain", () => {
  const row = (apart: string, screws = '#8 x 1-5/8"'): string =>
    `part post of 2x4, length 30"\npart board of 1x4, length 30"\nplace post upright, wide face front, on floor, 0 from left, 0 from front\nplace board upright, wide face front, in front of post, flush with left of post, on floor\nfasten board into post, ${screws}, ${apart} on center`;

  // 10 D less a millimetre is 40.656 mm; what is set out lies between two ends that are bored or far enough.
  test.each([
    ["38mm", ["row"]],
    ['1-1/4"', ["row"]],
    ['3"', []],
  ])("%s apart", (apart, found) => {
    expect(of(row(apart)).map((p) => p.says)).toEqual(found);
  });

  test("two beside each other across the grain, or two alone, are no row", () => {
    const pair = row("").replace(', #8 x 1-5/8",  on center', ', 2 #8 x 1-5/8" at each crossing');
    expect(told(pair)).toEqual([]);
  });
});

describe("anywhere", () => {
  const joint = (stock: string, screws = '2 #8 x 2" at each end'): string =>
    `${stock}part post 2 of 4x4, length 30"\npart rail 2 of lath, length 40"\nfasten rail face into post face, ${screws}`;
  const lath = (thick: string, more = ""): string => `stock lath of 1x4, actual ${thick} x 3-1/2"${more}\n`;

  test.each([
    ['31/64"', ["thin warning"]],
    ['1/2"', []],
    ['3/4"', []],
  ])("in a board %s thick", (thick, found) => {
    expect(told(joint(lath(thick)))).toEqual(found);
  });

  // NDS 12.1.5 by the gravities of NDS Table 12.3.3A: over 0.5.
  test.each([
    ["southern-pine", ["dense warning"]],
    ["white-oak", ["dense warning"]],
    ["douglas-fir-larch", []],
    ["spruce-pine-fir", []],
  ])("in %s", (wood, found) => {
    expect(told(joint(lath('3/4"', `, species ${wood}`)))).toEqual(found);
    expect(told(joint(`stock 4x4, species ${wood}\n${lath('3/4"')}`))).toEqual(found);
  });

  test("the hole is that for the dense wood: 70% of the root of a #8 in pine, 90% in oak", () => {
    const hole = (wood: string) => of(joint(lath('3/4"', `, species ${wood}`)))[0]!.cures[0]!.edits[0]!.text;
    // 0.7 x 0.131 = 0.0917; 0.9 x 0.131 = 0.1179: 5.9 and 7.5 sixty-fourths.
    expect([hole("southern-pine"), hole("white-oak")]).toEqual([', pilot 3/32"', ', pilot 1/8"']);
  });

  test("in end grain only once that is accepted", () => {
    const end = joint(lath('3/4"')).replace("post face", "post end");
    expect(told(end)).toEqual([]);
    expect(told(`${end}\naccept screw-in-end-grain on post because it only keeps it from sliding`)).toEqual([
      "along warning",
    ]);
  });

  test("the hole that is told leaves nothing to tell", () => {
    for (const text of [joint(lath('3/8"')), ends("38mm", '#8 x 1-1/2"'), ends("36mm", "4 x 40mm")]) {
      const cured = applied(text, of(text)[0]!.cures[0]!.edits);
      const left = run(cured).problems.map((p) => p.code);
      expect(left.filter((c) => c === SPLITS || c === "pilot-wrong" || c === "not-understood")).toEqual([]);
    }
  });
});

test("moved or mirrored, a plan is told the same", () => {
  const plan = (x: number, y: number, inset: number, each: number, mirrored: boolean): string => {
    const side = mirrored ? "right" : "left";
    return `stock 1x4, species western-redcedar\npart rail of 2x4, length 40"\npart slat of 1x4, length 12"\nplace rail across, on edge, on floor, ${x}" from left, ${y}" from front\nplace rail across, on edge, on floor, ${x}" from left, ${y + 10.5}" from front\nplace slat front to back, flat, on rails, ${inset / 4}" in from ${side} of rails, flush with front of rails\nfasten slat into rail, ${each} #8 x 2" at each crossing`;
  };
  const text = (plan: string): string[] =>
    of(plan).map((p) =>
      problemText(p.code, p, run(plan).worked.settings.display).replace(/(slat|rail) \(.*?\)/, "$1"),
    );
  fc.assert(
    fc.property(
      fc.nat(30),
      fc.nat(30),
      fc.nat(20),
      fc.integer({ min: 1, max: 3 }),
      fc.boolean(),
      (x, y, inset, each, m) => {
        const plain = text(plan(0, 0, inset, each, false));
        expect(text(plan(x, y, inset, each, m))).toEqual(plain);
        expect(plain.join()).not.toMatch(/NaN|undefined|Infinity/);
      },
    ),
    { numRuns: Number(process.env.FC_RUNS ?? 100) },
  );
});
