/** Holes that a line gives: just under and over what the published rules allow. By hand, from the roots of NDS Table L3. */
import { describe, expect, test } from "vitest";
import type { Problem } from "../../server/checks";
import { applied } from "../checks/curing";
import { run } from "../checks/plans";

const of = (text: string): Problem[] => run(text).problems.filter((p) => p.code === "pilot-wrong");
const rail = (screws: string, stock = "", units = ""): string =>
  `${units}${stock}part post 2 of 4x4, length 30"\npart rail 2 of 2x4, length 40"\nfasten rail face into post face, 2 ${screws}`;
const told = (screws: string, stock = ""): string[] => of(rail(screws, stock)).map((p) => p.says);

describe("for the thread", () => {
  // #8: root 0.131, shank 0.164. Soft wood 70% to 7/8 of the root, 1/64 more: 0.0761 to 0.1303.
  test.each([
    ['0.076"', ["thread-narrow"]],
    ['0.077"', []],
    ['5/64"', []],
    ['1/8"', []],
    ['0.130"', []],
    ['0.131"', ["thread-wide"]],
    ['9/64"', ["thread-wide"]],
    ['0.163"', ["thread-wide"]],
    ['0.164"', ["no-hold"]],
    ['3/16"', ["no-hold"]],
  ])("of a #8 in spruce-pine-fir: %s", (hole, found) => {
    expect(told(`#8 x 3" at each end, pilot ${hole}`)).toEqual(found);
  });

  // White oak, 0.73: 90% to the whole root: 0.1023 to 0.1466.
  const OAK = "stock 2x4, species white-oak\nstock 4x4, species white-oak\n";
  test.each([
    ['0.102"', ["thread-narrow"]],
    ['0.103"', []],
    ['9/64"', []],
    ['0.147"', ["thread-wide"]],
  ])("of a #8 in oak: %s", (hole, found) => {
    expect(told(`#8 x 3" at each end, pilot ${hole}`, OAK)).toEqual(found);
  });

  test("of two woods the widest band of both", () => {
    const both = "stock 2x4, species white-oak\n";
    const found = ['0.076"', '0.077"', '0.146"', '0.147"'].map((h) =>
      told(`#8 x 3" at each end, pilot ${h}`, both),
    );
    expect(found).toEqual([["thread-narrow"], [], [], ["thread-wide"]]);
  });

  // 5 mm: half of it to 70%, 1/64 in (0.397 mm) more: 2.103 to 3.897.
  test.each([
    ["2mm", ["thread-narrow"]],
    ["2.2mm", []],
    ["3mm", []],
    ["3.5mm", []],
    ["3.9mm", ["thread-wide"]],
    ["5mm", ["no-hold"]],
  ])("of a 5 mm screw: %s", (hole, found) => {
    expect(told(`5 x 80mm at each end, pilot ${hole}`)).toEqual(found);
  });

  test("a gauge that no table of roots has is taken by its diameter: #5, 0.125", () => {
    // 0.0625 - 0.0156 = 0.0469 to 0.0875 + 0.0156 = 0.1031.
    const found = ['0.046"', '0.047"', '0.103"', '0.104"'].map((h) =>
      told(`#5 x 3" at each end, pilot ${h}`),
    );
    expect(found).toEqual([["thread-narrow"], [], [], ["thread-wide"]]);
  });

  test("the wood that is taken for granted is told", () => {
    const [problem] = of(rail('#8 x 3" at each end, pilot 1/4"', "stock 2x4, species hem-fir\n"));
    expect(problem!.assumed.map((a) => a.slots.part)).toEqual(["post"]);
  });
});

describe("for the shank", () => {
  // #8 in soft wood: 7/8 of 0.164 less 1/64: 0.1279; the head 0.328.
  test.each([
    ['1/8"', ["shank-narrow"]],
    ['0.127"', ["shank-narrow"]],
    ['0.128"', []],
    ['11/64"', []],
    ['1/4"', []],
    ['0.327"', []],
    ['0.328"', ["head-through"]],
  ])("of a #8: %s", (hole, found) => {
    expect(told(`#8 x 3" at each end, pilot 3/32", clearance ${hole}`)).toEqual(found);
  });

  // In oak the whole shank less 1/64: 0.1484.
  test.each([
    ['0.148"', ["shank-narrow"]],
    ['0.149"', []],
  ])("of a #8 in oak: %s", (hole, found) => {
    expect(
      told(`#8 x 3" at each end, pilot 1/8", clearance ${hole}`, "stock 2x4, species white-oak\n"),
    ).toEqual(found);
  });

  // 5 mm: 4.375 - 0.397 = 3.978; the head 10.
  test.each([
    ["3.97mm", ["shank-narrow"]],
    ["3.98mm", []],
    ["9.9mm", []],
    ["10mm", ["head-through"]],
  ])("of a 5 mm screw: %s", (hole, found) => {
    expect(told(`5 x 80mm at each end, pilot 3mm, clearance ${hole}`)).toEqual(found);
  });
});

describe("for nails and bolts", () => {
  const NAIL = 'fastener pin, nail 0.131" x 3"\n';
  // 75% of 0.131 and 1/64: 0.1139.
  test.each([
    ['1/32"', []],
    ['0.113"', []],
    ['0.114"', ["nail-wide"]],
    ['0.131"', ["no-hold"]],
  ])("a nail of 0.131 in soft wood: %s", (hole, found) => {
    expect(told(`pin at each end, pilot ${hole}`, NAIL)).toEqual(found);
  });

  const BOLT = 'fastener long, bolt 1/4" x 6"\n';
  // From its own 1/4 to 1/16 and 1/64 more: 21/64.
  test.each([
    ['15/64"', ["bolt-narrow"]],
    ['1/4"', []],
    ['9/32"', []],
    ['21/64"', []],
    ['11/32"', ["bolt-wide"]],
  ])("a bolt of 1/4: %s", (hole, found) => {
    expect(told(`long at each end, pilot ${hole}`, BOLT)).toEqual(found);
    expect(told(`long at each end, clearance ${hole}`, BOLT)).toEqual(found);
  });
});

test("the bit that is told is of a usual set, and within the rules", () => {
  const metric = "plan Thing\n  units millimetres to 1 mm\n";
  const wrong = [
    '#8 x 3" at each end, pilot 1/4"',
    "5 x 80mm at each end, pilot 1mm",
    '#10 x 3" at each end, clearance 1/8", pilot 1/8"',
  ];
  for (const units of ["", metric])
    for (const screws of wrong) {
      const text = rail(screws, "", units);
      const [problem, ...more] = of(text);
      expect(more).toEqual([]);
      const bit = problem!.cures[0]!.edits[0]!.text;
      expect(bit).toMatch(units === "" ? /^\d+\/\d+"$/ : /^\d+(\.5)?mm$/);
      expect(of(applied(text, problem!.cures[0]!.edits))).toEqual([]);
    }
});

test("nothing is said of a line without holes, or with one that could not be read", () => {
  expect(told('#8 x 3" at each end')).toEqual([]);
  expect(told('#8 x 3" at each end, pilot 3 lb')).toEqual([]);
});
