/** Sections of boards and panels, as printed in tables of lumber. */
import { rectangle, type Section } from "../../../server/strength/section";
import { MPA_PER_PSI, NEWTONS_PER_POUND } from "../../../server/strength/units";
import { bendingValues, panelValues, section } from "../../../server/trade";
import { tapeNumber } from "../../../server/trade/tape";
import type { PublishedExample } from "../strength-example";

const INCH = 25.4;

/** By its name in the trade's table of sizes, on edge; inches. */
function onEdge(name: string): Section {
  const found = section(name, "ps20-dry")!;
  const [thick, wide] = [found.thickness, found.width].map((side) => tapeNumber(String(side))!);
  return inInches(rectangle(thick! * INCH, wide! * INCH)!);
}

const inInches = ({ area, inertia, modulus }: Section): Section => ({
  area: area / INCH ** 2,
  inertia: inertia / INCH ** 4,
  modulus: modulus / INCH ** 3,
});

const row = (example: Omit<PublishedExample, "topic" | "kind">): PublishedExample => ({
  topic: "sections",
  kind: "table row",
  ...example,
});

const LUMBER = {
  document: "structural lumber properties",
  table: "section properties",
  via: "engineeringtoolbox.com d_1835",
};
const OLD = {
  document: "Civil Engineering Formulas, after the National Lumber Manufacturers Association",
  table: "Table 6.1",
  via: "issuhub.com 4884, page 177",
};
const GUIDE = {
  document: "HUD Residential Structural Design Guide",
  edition: "2nd edition",
  table: "Example 5.1",
  via: "an open-source structural library (xc)",
};
const PLYWOOD = {
  document: "Design Capacities for Structural Plywood (TECO)",
  table: "Table C",
  via: "an open-source structural library (xc)",
};
const RATED = { ...PLYWOOD, table: "Table A, 32/16 of four plies" };
const foot = (inches: number): Section => inInches(rectangle(12 * INCH, inches * INCH)!);
/** Of four plies, both are 1.1 times what three plies have along the grain (the grade and construction factor). */
const FOUR_PLIES = 1.1;
const perFoot = 304.8 / NEWTONS_PER_POUND;

export const EXAMPLES: readonly PublishedExample[] = [
  row({
    name: "2x10: section modulus",
    source: LUMBER,
    printed: 21.4,
    unit: "in3",
    tolerance: 0.05,
    work: () => onEdge("2x10").modulus,
  }),
  row({
    name: "2x4 laid flat: moment of inertia",
    source: LUMBER,
    printed: 0.98,
    unit: "in4",
    tolerance: 0.005,
    work: () => inInches(rectangle(3.5 * INCH, 1.5 * INCH)!).inertia,
  }),
  row({
    name: "old 2x8, 1-5/8 x 7-1/2: moment of inertia",
    source: OLD,
    printed: 57.13,
    unit: "in4",
    tolerance: 0.005,
    work: () => inInches(rectangle(1.625 * INCH, 7.5 * INCH)!).inertia,
  }),
  row({
    name: "old 2x4, 1-5/8 x 3-5/8: section modulus",
    source: OLD,
    printed: 3.56,
    unit: "in3",
    tolerance: 0.005,
    work: () => inInches(rectangle(1.625 * INCH, 3.625 * INCH)!).modulus,
  }),
  {
    topic: "sections",
    kind: "formula",
    name: "Example 5.1, 2x8: moment of inertia",
    source: GUIDE,
    printed: 47.63,
    unit: "in4",
    tolerance: 0.006,
    work: () => onEdge("2x8").inertia,
  },
  {
    topic: "sections",
    kind: "formula",
    name: "Example 5.1, 2x8: section modulus",
    source: GUIDE,
    printed: 13.14,
    unit: "in3",
    tolerance: 0.005,
    work: () => onEdge("2x8").modulus,
  },
  {
    topic: "sections",
    kind: "formula",
    name: "timber 100 x 200 mm: section modulus",
    source: { document: "timber beam under three loads, worked example", via: "amesweb.info" },
    printed: 666_666.688,
    unit: "mm3",
    tolerance: 0.03,
    work: () => rectangle(100, 200)!.modulus,
  },
  {
    topic: "sections",
    kind: "formula",
    name: "2x4 of Douglas fir-larch No. 2 on edge: E I",
    source: {
      document: "rafter calculation in a building permit, Everett, Washington",
      via: "lfportal.everettwa.gov 2021580, page 7",
    },
    printed: 8.57e6,
    unit: "lb in2",
    tolerance: 0.006e6,
    work: () =>
      (bendingValues("douglas-fir-larch", 1.5 * INCH, 3.5 * INCH, false)!.elasticity / MPA_PER_PSI) *
      onEdge("2x4").inertia,
  },
  row({
    name: "a foot of 15/32 plywood: moment of inertia",
    source: PLYWOOD,
    printed: 0.103,
    unit: "in4",
    tolerance: 0.0005,
    work: () => foot(0.469).inertia,
  }),
  row({
    name: "a foot of 23/32 plywood: section modulus",
    source: PLYWOOD,
    printed: 1.033,
    unit: "in3",
    tolerance: 0.001,
    work: () => foot(0.719).modulus,
  }),
  row({
    name: "plywood rated 32/16, four plies: bending strength of a foot along the grain",
    source: RATED,
    printed: 407,
    unit: "lb in",
    tolerance: 0.5,
    work: () => (panelValues("15/32")!.value.along.strength * perFoot * FOUR_PLIES) / INCH,
  }),
  row({
    name: "plywood rated 32/16: stiffness of a foot along the grain",
    source: RATED,
    printed: 126_500,
    unit: "lb in2",
    // 115,000 by 1.1; the program's table rounds that to 125,000.
    tolerance: 1501,
    work: () => (panelValues("15/32")!.value.along.stiffness * perFoot) / INCH ** 2,
  }),
];
