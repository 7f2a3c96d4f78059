// Board and panel sizes against values printed outside the project.
import { describe, expect, it } from "vitest";
import { metricPanel, panel, panelNames, panelSections, section } from "../../server/trade";
import { tapeNumber } from "../../server/trade/tape";

const MM = 25.4;

function inches(name: string, standard: "ps20-dry" | "ps20-green" = "ps20-dry"): [number, number] {
  const sold = section(name, standard);
  if (sold?.unit !== "in") throw new Error(`${name} has no inch size`);
  return [tapeNumber(sold.thickness)!, tapeNumber(sold.width)!];
}

describe("PS 20-20 sizes, as reproduced by engineeringtoolbox.com d_1270", () => {
  it.each([
    ["1x2", 0.75, 1.5],
    ["1x3", 0.75, 2.5],
    ["1x4", 0.75, 3.5],
    ["1x6", 0.75, 5.5],
    ["1x8", 0.75, 7.25],
    ["1x10", 0.75, 9.25],
    ["1x12", 0.75, 11.25],
    ["2x2", 1.5, 1.5],
    ["2x4", 1.5, 3.5],
    ["2x6", 1.5, 5.5],
    ["2x8", 1.5, 7.25],
    ["2x10", 1.5, 9.25],
    ["2x12", 1.5, 11.25],
    ["4x4", 3.5, 3.5],
    ["6x6", 5.5, 5.5],
    ["5/4x6", 1, 5.5], // common practice
    ["5/4x4", 1, 3.5],
    ["4x6", 3.5, 5.5],
    ["8x8", 7.25, 7.25],
  ])("%s dry", (name, thickness, width) => {
    expect(inches(name)).toEqual([thickness, width]);
  });

  it.each([
    ["1x4", 0.78125, 3.5625],
    ["2x4", 1.5625, 3.5625],
    ["2x6", 1.5625, 5.625],
    ["2x8", 1.5625, 7.5],
    ["2x12", 1.5625, 11.5],
    ["4x4", 3.5625, 3.5625],
    ["6x6", 5.5, 5.5],
    ["8x8", 7.5, 7.5],
  ])("%s green", (name, thickness, width) => {
    expect(inches(name, "ps20-green")).toEqual([thickness, width]);
  });
});

describe("section properties, NDS Supplement 2018 Table 1A and engineeringtoolbox.com d_1835", () => {
  it.each([
    ["2x4", 5.36, 3.06],
    ["2x6", 20.8, 7.56],
    ["2x8", 47.63, 13.14],
    ["2x10", 98.9, 21.4],
    ["2x12", 178, 31.6],
    ["4x4", 12.5, 7.15],
  ])("%s: inertia and modulus follow from its size", (name, inertia, modulus) => {
    const [b, d] = inches(name);
    expect(Math.abs((b * d ** 3) / 12 / inertia - 1)).toBeLessThan(0.003);
    expect(Math.abs((b * d ** 2) / 6 / modulus - 1)).toBeLessThan(0.003);
  });
});

describe("CSA O141 metric names are the dry inch sizes, rounded (from memory)", () => {
  it.each([
    ["19x89", "1x4"],
    ["38x89", "2x4"],
    ["38x140", "2x6"],
    ["38x184", "2x8"],
    ["38x235", "2x10"],
    ["38x286", "2x12"],
    ["89x89", "4x4"],
  ])("%s is %s", (metric, inch) => {
    const sold = section(metric, "planed-metric");
    expect(inches(inch).map((side) => Math.round(side * MM))).toEqual([sold?.thickness, sold?.width]);
  });
});

describe("PS 1 performance categories, as reproduced by apawood-europe.org", () => {
  it("23/32 may measure 0.688 to 0.750 in", () => {
    expect(panel("23/32")).toMatchObject({ min: "0.688", max: "0.750", unit: "in" });
  });

  it("keeps the printed tolerance: 1/32 in to 13/16, 5% above", () => {
    const inch = panelNames().filter((name) => !name.endsWith("mm"));
    expect(inch).toHaveLength(12);
    for (const name of inch) {
      const size = tapeNumber(name)!;
      const either = size <= 13 / 16 ? 1 / 32 : size * 0.05;
      const known = panel(name)!;
      expect(Math.abs(Number(known.min) - (size - either)), name).toBeLessThanOrEqual(0.00051);
      expect(Math.abs(Number(known.max) - (size + either)), name).toBeLessThanOrEqual(0.00051);
    }
  });

  it("a foot of panel width has 12 t^3 / 12 and 12 t^2 / 6 (plywood design-capacity table)", () => {
    for (const { value } of panelSections) {
      expect(value.inertia).toBeCloseTo(value.thickness ** 3, 2);
      expect(value.modulus).toBeCloseTo(2 * value.thickness ** 2, 2);
    }
  });

  it("18 mm sanded may measure 17.06 to 18.74 mm (EN 315, from memory)", () => {
    expect(metricPanel(18)).toMatchObject({ min: 17.06, max: 18.74, unit: "mm" });
  });
});
