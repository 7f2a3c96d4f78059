// Tools, bits and care as tables: whole sentences, words that mean a tool, and bits that are sold.
import { describe, expect, it } from "vitest";
import {
  type Bit,
  bitAtLeast,
  bitAtMost,
  boltHole,
  care,
  careFor,
  cite,
  clearanceHole,
  crossBit,
  finishKind,
  isAmong,
  nailHole,
  nearestBit,
  pilotHole,
  screwGauges,
  shankDiameter,
  stainService,
  type ToolKey,
  tools,
} from "../../server/trade";
import { tapeNumber } from "../../server/trade/tape";

const toolOf = (key: ToolKey) => tools.find(({ value }) => value.key === key)!;
const MM = 25.4;
const screw = (gauge: number) => ({ gauge, diameter: shankDiameter(gauge) * MM });
const mm = (bit: Bit | undefined): number =>
  bit === undefined ? Number.NaN : bit.unit === "mm" ? bit.size : tapeNumber(bit.size)! * MM;

describe("tools", () => {
  it("have a name, a use, words, and whole sentences for the way round", () => {
    for (const { value, key } of tools) {
      expect(value.name, key).not.toBe("");
      expect(value.use, key).not.toBe("");
      expect(value.words.length, key).toBeGreaterThan(0);
      if (value.instead) expect(value.instead, key).toMatch(/^[A-Z].*\.$/);
      for (const word of value.words) expect(word, key).toMatch(/^[a-z][a-z0-9-]*$/);
    }
    expect(new Set(tools.map(({ value }) => value.key)).size).toBe(tools.length);
  });

  it("offer no way round what keeps a builder whole", () => {
    for (const key of ["eyes", "ears", "dust"] as const) expect(toolOf(key).value.instead).toBe("");
    expect(toolOf("clamps").value.instead).toContain("Nothing stands in for a clamp at the saw");
  });

  it("are meant by their words with or without hyphens, one or many", () => {
    expect(isAmong(["hand-saw"], toolOf("crosscut").value.words)).toBe(true);
    expect(isAmong(["handsaws"], toolOf("crosscut").value.words)).toBe(true);
    expect(isAmong(["clamps"], toolOf("clamps").value.words)).toBe(true);
    expect(isAmong(["chain"], toolOf("clamps").value.words)).toBe(false);
    expect(isAmong([], toolOf("clamps").value.words)).toBe(false);
  });
});

describe("bits of a usual set", () => {
  it("go by sixty-fourths from 1/16 in, and by half millimetres from 1 mm", () => {
    expect(nearestBit(0.0917 * MM, "inches")).toEqual({ size: "3/32", unit: "in" });
    expect(nearestBit(0.01, "inches")).toEqual({ size: "1/16", unit: "in" });
    expect(nearestBit(2.8, "millimetres")).toEqual({ size: 3, unit: "mm" });
    expect(bitAtLeast(4, "millimetres")).toEqual({ size: 4, unit: "mm" });
    expect(bitAtLeast(4.01, "millimetres")).toEqual({ size: 4.5, unit: "mm" });
    expect(bitAtMost(4.49, "millimetres")).toEqual({ size: 4, unit: "mm" });
    expect(bitAtMost(1.5, "inches")).toBeUndefined();
    expect(bitAtLeast(MM, "inches")).toEqual({ size: "1", unit: "in" });
  });
});

describe("holes", () => {
  it("have a bit within their own band for every gauge and gravity, in both systems", () => {
    for (const { gauge } of screwGauges)
      for (const system of ["inches", "millimetres"] as const)
        for (let gravity = 0.3; gravity < 0.9; gravity += 0.02)
          for (const hole of [pilotHole, clearanceHole]) {
            const { bit, least, most } = hole(screw(gauge), gravity, system);
            const at = `${hole.name} #${gauge} ${gravity.toFixed(2)} ${system}`;
            expect(mm(bit), at).toBeGreaterThanOrEqual(mm(least));
            expect(mm(bit), at).toBeLessThanOrEqual(mm(most));
          }
  });

  it("of a shank are as wide as it or just wider (common practice)", () => {
    expect([6, 8, 10].map((gauge) => clearanceHole(screw(gauge), 0.42, "inches").bit?.size)).toEqual([
      ...["9/64", "11/64", "13/64"],
    ]);
    expect(clearanceHole({ gauge: undefined, diameter: 4 }, 0.42, "millimetres").bit?.size).toBe(4);
    expect(cite(clearanceHole(screw(8), 0.42, "inches").source)).toBe("common practice");
  });

  it("of a metric screw, or of a gauge without a row, go by its diameter", () => {
    const metric = pilotHole({ gauge: undefined, diameter: 5 }, 0.42, "millimetres");
    expect(metric).toMatchObject({ bit: { size: 3.5, unit: "mm" }, assumed: "", noneForStrength: true });
    const odd = pilotHole({ gauge: 5, diameter: shankDiameter(5) * MM }, 0.42, "inches");
    expect(odd.bit).toEqual({ size: "3/32", unit: "in" });
    expect(odd.assumed).toContain("#5");
  });

  it("of a nail stay under 75% of it, 90% in hard wood (NDS 12.1.6, from memory)", () => {
    const common = 0.131 * MM;
    expect(nailHole(common, 0.42, "inches").bit?.size).toBe("3/32");
    expect(nailHole(common, 0.67, "inches").bit?.size).toBe("7/64");
    expect(mm(nailHole(common, 0.42, "inches").bit)).toBeLessThanOrEqual(0.75 * common);
    const thin = nailHole(1.2, 0.42, "inches");
    expect(thin.bit).toBeUndefined();
    expect(thin.assumed).toContain("head cut off");
  });

  it("of a bolt are 1/32 to 1/16 in wider than it (NDS 12.1.3, from memory)", () => {
    expect(boltHole(MM / 4, "inches")).toMatchObject({
      least: { size: "9/32" },
      bit: { size: "9/32" },
      most: { size: "5/16" },
    });
  });

  it("for a driver go by the gauge (from memory)", () => {
    expect([4, 8, 10].map((gauge) => crossBit(gauge)?.value.bit)).toEqual([1, 2, 3]);
    expect(crossBit(20)).toBeUndefined();
  });
});

describe("care", () => {
  it("is whole plain sentences, each with something that calls it up", () => {
    for (const { key, value } of care) {
      expect(value.when.length, key).toBeGreaterThan(0);
      expect(value.text, key).toMatch(/^[A-Z].*\.$/);
    }
    expect(new Set(care.map(({ key }) => key)).size).toBe(care.length);
    expect(careFor([])).toEqual([]);
  });

  it("tells the years that the Wood Handbook prints for stain, from its own rows", () => {
    const [rough, smooth] = stainService;
    expect(careFor(["stain-rough"])[0]?.value.text).toContain(`up to ${rough?.value.high} years`);
    expect(careFor(["stain-smooth"])[0]?.value.text).toContain("2 to 4 years");
    expect(careFor(["stain-smooth"])[0]?.source).toEqual(smooth?.source);
  });

  it("knows a finish by its name, and keeps the others unknown", () => {
    const kinds = ["outdoor-oil", "deck-stain", "penetrating-stain", "exterior-paint", "water-repellent"];
    expect(kinds.map(finishKind)).toEqual(["oil", "stain", "stain", "paint", "water-repellent"]);
    expect(["shellac", "water-based-stain", "foil"].map(finishKind)).toEqual(Array(3).fill(undefined));
  });
});
