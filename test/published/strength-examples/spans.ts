/** Spans printed in code tables, worked out from the trade's values by trying spans until one no longer bears. */
import { adjusted } from "../../../server/strength/allowable";
import { longTermSag } from "../../../server/strength/creep";
import { rectangle } from "../../../server/strength/section";
import { MPA_PER_PSF, MPA_PER_PSI } from "../../../server/strength/units";
import { bendingValues, durationFactors, repetitiveFactor } from "../../../server/trade";
import type { PublishedExample } from "../strength-example";
import { bent, uniform } from "./beams";

const INCH = 25.4;

interface Joist {
  /** Inches, as dressed. */
  readonly depth: number;
  /** N/mm2: bending under ten years of load with three or more together, and stiffness. */
  readonly bending: number;
  readonly elasticity: number;
  /** Inches from one to the next. */
  readonly spacing: number;
  /** psf. */
  readonly live: number;
  readonly dead: number;
  /** Span over sag of the live load. */
  readonly limit: number;
}

/** The longest span in inches at which a joist 1-1/2 in thick neither sags nor is stressed beyond what it may. */
function longestSpan({ depth, bending, elasticity, spacing, live, dead, limit }: Joist): number {
  const { inertia, modulus } = rectangle(1.5 * INCH, depth * INCH)!;
  const bears = (span: number): boolean => {
    const under = (psf: number) =>
      bent({ length: span, supports: [0, span], loads: [uniform(span, psf * MPA_PER_PSF * spacing * INCH)] });
    const sag = longTermSag(0, under(live).sag.timesStiffness / (elasticity * inertia), 1)!;
    return sag <= span / limit && under(live + dead).moment.size / modulus <= bending;
  };
  let [least, most] = [100, 20_000];
  while (most - least > 0.01) {
    const span = (least + most) / 2;
    if (bears(span)) least = span;
    else most = span;
  }
  return least / INCH;
}

function no2(species: string, depth: number): Pick<Joist, "depth" | "bending" | "elasticity"> {
  const values = bendingValues(species, 1.5 * INCH, depth * INCH, false)!;
  const use = { duration: durationFactors.tenYears.value, repetitive: repetitiveFactor.value };
  return { depth, ...adjusted(values, use)! };
}

const LIVING = { live: 40, dead: 10, limit: 360 };
const SLEEPING = { live: 30, dead: 10, limit: 360 };
const ATTIC = { live: 20, dead: 10, limit: 240 };
const IRC = "International Residential Code";

/** Printed in whole inches. */
const row = (
  name: string,
  source: Omit<PublishedExample["source"], "document">,
  [feet, inches]: readonly [number, number],
  joist: Joist,
): PublishedExample => ({
  topic: "spans",
  kind: "table row",
  name,
  source: { document: IRC, ...source },
  printed: feet * 12 + inches,
  unit: "in",
  tolerance: 0.6,
  work: () => longestSpan(joist),
});

const LIVING_TABLE = "Table R502.3.1(2), floor joists, 40 psf";
const SLEEPING_TABLE = "Table R502.3.1(1), floor joists, 30 psf";
const ATTIC_TABLE = "Table R802.5.1(2), ceiling joists, limited storage";

const ROWS: readonly PublishedExample[] = [
  row(
    "floor of living rooms, spruce-pine-fir No. 2 2x8 at 16 in: 12'-3\"",
    { edition: "2003", table: LIVING_TABLE, via: "toolbase.org" },
    [12, 3],
    { ...no2("spruce-pine-fir", 7.25), ...LIVING, spacing: 16 },
  ),
  row(
    "floor of living rooms, hem-fir No. 2 2x8 at 16 in: 12'-0\"",
    { edition: "2012", table: LIVING_TABLE, via: "learnframing.com" },
    [12, 0],
    { ...no2("hem-fir", 7.25), ...LIVING, spacing: 16 },
  ),
  row(
    "floor of bedrooms, spruce-pine-fir No. 2 2x8 at 12 in: 14'-11\"",
    { edition: "2012", table: SLEEPING_TABLE, via: "learnframing.com" },
    [14, 11],
    { ...no2("spruce-pine-fir", 7.25), ...SLEEPING, spacing: 12 },
  ),
  row(
    "floor of bedrooms, hem-fir No. 2 2x10 at 16 in: 16'-10\"",
    { edition: "2012", table: SLEEPING_TABLE, via: "learnframing.com" },
    [16, 10],
    { ...no2("hem-fir", 9.25), ...SLEEPING, spacing: 16 },
  ),
  row(
    "ceiling, Douglas fir-larch No. 2 2x8 at 24 in, by strength: 13'-6\"",
    { edition: "2018", table: ATTIC_TABLE, via: "flipbuilder.com, page 430" },
    [13, 6],
    { ...no2("douglas-fir-larch", 7.25), ...ATTIC, spacing: 24 },
  ),
  row(
    "ceiling, southern pine No. 2 2x6 at 24 in, by strength: 9'-10\"",
    { edition: "2018", table: ATTIC_TABLE, via: "flipbuilder.com, page 430" },
    [9, 10],
    { ...no2("southern-pine", 5.5), ...ATTIC, spacing: 24 },
  ),
];

const GUIDE = {
  document: "HUD Residential Structural Design Guide",
  edition: "2nd edition",
  table: "Example 5.1",
  via: "an open-source structural library (xc)",
};
/** A hem-fir No. 1 2x8: 975 psi by the factors of three or more and of size, 1.5 million psi. */
const guideJoist: Joist = {
  depth: 7.25,
  bending: 975 * 1.15 * 1.2 * MPA_PER_PSI,
  elasticity: 1.5e6 * MPA_PER_PSI,
  spacing: 16,
  live: 30,
  dead: 10,
  limit: 360,
};

export const EXAMPLES: readonly PublishedExample[] = [
  ...ROWS,
  {
    topic: "spans",
    kind: "formula",
    name: "Example 5.1, hem-fir No. 1 2x8 at 16 in: span by strength",
    source: GUIDE,
    printed: 14.87,
    unit: "ft",
    tolerance: 0.01,
    work: () => longestSpan({ ...guideJoist, limit: 1 }) / 12,
  },
  {
    topic: "spans",
    kind: "formula",
    name: "Example 5.1, hem-fir No. 1 2x8 at 16 in: span by sag, L/360",
    source: GUIDE,
    printed: 13.8,
    unit: "ft",
    tolerance: 0.05,
    work: () => longestSpan(guideJoist) / 12,
  },
];
