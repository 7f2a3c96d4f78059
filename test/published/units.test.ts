/** Every unit's factor against mathjs 15, which keeps its own table of units. */
import { unit as theirs } from "mathjs";
import { describe, expect, it } from "vitest";
import {
  ANGLE,
  AREA,
  DENSITY,
  type Dimension,
  LENGTH,
  PRESSURE,
  TIME,
  VOLUME,
  WEIGHT,
} from "../../server/units/dimension";
import { toNumber } from "../../server/units/rational";
import { UNITS } from "../../server/units/table";

/** The base unit of each kind in mathjs's words: mm, kg, min and degree, and what is made of them. */
const BASES: readonly (readonly [Dimension, string])[] = [
  [LENGTH, "mm"],
  [ANGLE, "deg"],
  [WEIGHT, "kg"],
  [AREA, "mm^2"],
  [VOLUME, "mm^3"],
  // The weight of a kilogram on a square millimetre.
  [PRESSURE, "kgf/mm^2"],
  [DENSITY, "kg/mm^3"],
  [TIME, "minute"],
];

/** How mathjs writes each unit; those with the same name are left out. It has no psf, but lbf. */
const WORDS: Readonly<Record<string, string>> = {
  lb: "lbm",
  oz: "oz",
  sqft: "sqft",
  sqin: "sqin",
  cuft: "cuft",
  cuyd: "cuyd",
  gal: "gallon",
  qt: "quart",
  psf: "lbf/ft^2",
  psi: "lbf/in^2",
  "kg/m2": "kgf/m^2",
  "lb/cuft": "lbm/ft^3",
  "kg/m3": "kg/m^3",
  min: "minute",
  h: "hour",
  m2: "m^2",
  m3: "m^3",
};

const baseOf = (dim: Dimension): string => BASES.find(([d]) => d === dim)![1];

describe("factors of the units a plan may write", () => {
  it.each(UNITS.map((u) => [u.names[0]!, u] as const))("%s", (name, unit) => {
    const other = theirs(1, WORDS[name] ?? name).toNumber(baseOf(unit.dim));
    const ours = toNumber(unit.factor);
    // mathjs reckons in doubles.
    expect(Math.abs(other / ours - 1)).toBeLessThan(1e-12);
  });

  it("the other spellings of a unit are the same unit to mathjs, where it knows them", () => {
    const others: readonly (readonly [string, string])[] = [
      ["lbs", "lbm"],
      ["hours", "h"],
      ["days", "day"],
      ["weeks", "week"],
      ["l", "L"],
      ["ml", "mL"],
    ];
    for (const [spelt, first] of others) {
      expect(theirs(1, spelt).toNumber(first)).toBeCloseTo(1, 12);
    }
  });
});
