/** Beams that run on over more than two supports: formulas of handbooks and worked examples. */
import type { Beam } from "../../../server/strength/beam";
import type { PublishedExample } from "../strength-example";
import { bent, uniform } from "./beams";

const L = 1000;
const W = 3;
const P = 700;

const beams = (example: Omit<PublishedExample, "topic" | "kind">): PublishedExample => ({
  topic: "beams",
  kind: "formula",
  ...example,
});

const formulas = (table: string) => ({
  document: "beam design formulas, two-span continuous beam",
  table,
  via: "piping-designer.com",
});

const both: Beam = { length: 2 * L, supports: [0, L, 2 * L], loads: [uniform(2 * L, W)] };
const one: Beam = { ...both, loads: [uniform(L, W)] };
const middles: Beam = {
  ...both,
  loads: [
    { at: L / 2, force: P },
    { at: (3 * L) / 2, force: P },
  ],
};

const TWO_SPANS: readonly PublishedExample[] = [
  beams({
    name: "two equal spans, uniform load: moment over the middle support, 1/8",
    source: formulas("equal spans, uniformly distributed load"),
    printed: 0.125,
    unit: "w L2",
    tolerance: 1e-9,
    work: () => bent(both).moment.size / (W * L ** 2),
  }),
  beams({
    name: "two equal spans, uniform load: sag, 185",
    source: formulas("equal spans, uniformly distributed load"),
    printed: 185,
    unit: "w L4 / (E I sag)",
    tolerance: 0.5,
    work: () => (W * L ** 4) / bent(both).sag.timesStiffness,
  }),
  beams({
    name: "two equal spans, uniform load: where they sag most",
    source: formulas("equal spans, uniformly distributed load"),
    printed: 0.4215,
    unit: "L",
    tolerance: 0.00005,
    work: () => {
      const { at } = bent(both).sag;
      return Math.min(at, 2 * L - at) / L;
    },
  }),
  beams({
    name: "two equal spans, one loaded: moment, 49/512",
    source: formulas("equal spans, uniform load on one span"),
    printed: 49 / 512,
    unit: "w L2",
    tolerance: 1e-9,
    work: () => bent(one).moment.size / (W * L ** 2),
  }),
  beams({
    name: "two equal spans, one loaded: the far support is pulled up by 1/16",
    source: formulas("equal spans, uniform load on one span"),
    printed: -1 / 16,
    unit: "w L",
    tolerance: 1e-9,
    work: () => bent(one).reactions[2]! / (W * L),
  }),
  beams({
    name: "two equal spans, one loaded: sag",
    source: formulas("equal spans, uniform load on one span"),
    printed: 0.0092,
    unit: "w L4 / E I",
    tolerance: 0.00005,
    work: () => bent(one).sag.timesStiffness / (W * L ** 4),
  }),
  beams({
    name: "two equal spans, one loaded: where it sags most",
    source: formulas("equal spans, uniform load on one span"),
    printed: 0.472,
    unit: "L",
    tolerance: 0.0005,
    work: () => bent(one).sag.at / L,
  }),
  beams({
    name: "two equal spans, a load in the middle of each: moment, 3/16",
    source: formulas("equal spans, two equal concentrated loads symmetrically placed"),
    printed: 3 / 16,
    unit: "P L",
    tolerance: 1e-9,
    work: () => bent(middles).moment.size / (P * L),
  }),
  beams({
    name: "two equal spans, a load in the middle of each: middle reaction, 11/8",
    source: formulas("equal spans, two equal concentrated loads symmetrically placed"),
    printed: 11 / 8,
    unit: "P",
    tolerance: 1e-9,
    work: () => bent(middles).reactions[1]! / P,
  }),
];

const three: Beam = { length: 3 * L, supports: [0, L, 2 * L, 3 * L], loads: [uniform(3 * L, W)] };
const AISC = {
  document: "AISC beam diagrams",
  table: "figure 36, three equal spans",
  via: "an open-source structural library's tests",
};
const TECO = {
  document: "Design Capacities for Structural Plywood (TECO), after the ASD manual of 2005",
  table: "roof design example, three spans",
  via: "an open-source structural library (xc)",
};

const THREE_SPANS: readonly PublishedExample[] = [
  beams({
    name: "three equal spans, uniform load: moment, 0.100",
    source: AISC,
    printed: 0.1,
    unit: "w L2",
    tolerance: 0.0005,
    work: () => bent(three).moment.size / (W * L ** 2),
  }),
  beams({
    name: "three equal spans, uniform load: shear, 0.600",
    source: AISC,
    printed: 0.6,
    unit: "w L",
    tolerance: 0.0005,
    work: () => bent(three).shear.size / (W * L),
  }),
  beams({
    name: "plywood over three spans: load in psf by strength, 120 FbS / l2",
    source: TECO,
    printed: 120,
    unit: "12 M / (M / w l2)",
    tolerance: 0.5,
    work: () => (12 * W * L ** 2) / bent(three).moment.size,
  }),
  beams({
    name: "plywood over three spans: load in psf by sag, 1743 E I sag / l4",
    source: TECO,
    printed: 1743,
    unit: "12 w l4 / (E I sag)",
    tolerance: 0.5,
    work: () => (12 * W * L ** 4) / bent(three).sag.timesStiffness,
  }),
];

const [alpha, beta] = [0.5, 1.5];
/** Spans of 0.5, 1 and 1.5 L; the load on the middle one. */
const middle: Beam = {
  length: 3 * L,
  supports: [0, alpha * L, (alpha + 1) * L, 3 * L],
  loads: [{ from: alpha * L, to: (alpha + 1) * L, start: W, end: W }],
};
const overSecond = (beam: Beam, span: number): number => bent(beam).reactions[0]! * span;

const PROBLEM_822 = { document: "Strength of Materials review, problem 822", via: "mathalino.com" };

/** Feet and kips: 10 ft with 2 kips/ft and 6 kips in its middle, then 15 ft with 3 kips/ft and 10 kips 6 ft from its end. */
const handbook: Beam = {
  length: 25,
  supports: [0, 10, 25],
  loads: [
    { from: 0, to: 10, start: 2, end: 2 },
    { at: 5, force: 6 },
    { from: 10, to: 25, start: 3, end: 3 },
    { at: 19, force: 10 },
  ],
};
const HANDBOOK = {
  document: "handbook of structural calculations, theorem of three moments, figure 44",
  via: "issuhub.com 4963, page 101",
};

/** Metres and kN: 120 kN in the middle of the first 3 m, 40 kN/m over the next 3 m. */
const nptel: Beam = {
  length: 6,
  supports: [0, 3, 6],
  loads: [
    { at: 1.5, force: 120 },
    { from: 3, to: 6, start: 40, end: 40 },
  ],
};
const NPTEL = { document: "NPTEL 105101085, Example 5.22", via: "archive.nptel.ac.in" };

const WORKED: readonly PublishedExample[] = [
  beams({
    name: "three unequal spans, the middle one loaded: moment over the second support",
    source: PROBLEM_822,
    printed: -((W * L ** 2) / 4) * ((1 + 2 * beta) / (4 * (alpha + 1) * (1 + beta) - 1)),
    unit: "N mm",
    tolerance: 0.01,
    work: () => overSecond(middle, alpha * L),
  }),
  beams({
    name: "10 ft and 15 ft under mixed loads: first reaction",
    source: HANDBOOK,
    printed: 4.98,
    unit: "kips",
    tolerance: 0.005,
    work: () => bent(handbook).reactions[0]!,
  }),
  beams({
    name: "10 ft and 15 ft under mixed loads: middle reaction",
    source: HANDBOOK,
    printed: 52.87,
    unit: "kips",
    tolerance: 0.01,
    work: () => bent(handbook).reactions[1]!,
  }),
  beams({
    name: "10 ft and 15 ft under mixed loads: last reaction",
    source: HANDBOOK,
    printed: 23.15,
    unit: "kips",
    tolerance: 0.005,
    work: () => bent(handbook).reactions[2]!,
  }),
  beams({
    name: "two spans of 3 m, one with a load in its middle: moment over the middle support",
    source: NPTEL,
    printed: -56.25,
    unit: "kN m",
    tolerance: 0.005,
    work: () => overSecond(nptel, 3) - 120 * 1.5,
  }),
  beams({
    name: "two spans of 3 m, one with a load in its middle: middle reaction",
    source: NPTEL,
    printed: 157.5,
    unit: "kN",
    tolerance: 0.05,
    work: () => bent(nptel).reactions[1]!,
  }),
];

export const EXAMPLES: readonly PublishedExample[] = [...TWO_SPANS, ...THREE_SPANS, ...WORKED];
