/** Beams on two supports, with overhangs, or built in: formulas of handbooks and worked examples of textbooks. */
import { type Beam, type BeamLoad, type Bending, bend } from "../../../server/strength/beam";
import { rectangle, shearStress } from "../../../server/strength/section";
import type { PublishedExample } from "../strength-example";

const L = 1000;
const W = 3;
const P = 700;

/** A uniform load over the whole length. */
export const uniform = (length: number, load: number): BeamLoad => ({
  from: 0,
  to: length,
  start: load,
  end: load,
});

export function bent(beam: Beam): Bending {
  const bending = bend(beam);
  if (bending === undefined) throw new Error("this beam cannot stand");
  return bending;
}

const simple = (...loads: readonly BeamLoad[]): Bending => bent({ length: L, supports: [0, L], loads });
const cantilever = (...loads: readonly BeamLoad[]): Bending =>
  bent({ length: L, supports: [], clamped: "left", loads });
const builtIn = (...loads: readonly BeamLoad[]): Bending =>
  bent({ length: L, supports: [], clamped: "both", loads });

const sag = ({ sag: { timesStiffness } }: Bending): number => timesStiffness;
const beams = (example: Omit<PublishedExample, "topic" | "kind">): PublishedExample => ({
  topic: "beams",
  kind: "formula",
  ...example,
});

/** Printed as fractions of W L^3 / E I, W being the whole load: six digits of each are asked for. */
const WOOD_HANDBOOK = {
  document: "Wood Handbook",
  edition: "FPL-GTR-190",
  table: "Table 9-1, beam deflection",
  via: "from memory",
};
const deflection = (name: string, printed: number, work: () => number): PublishedExample =>
  beams({ name, source: WOOD_HANDBOOK, printed, unit: "W L3 / E I", tolerance: printed * 1e-6, work });

const HANDBOOK: readonly PublishedExample[] = [
  deflection("uniform load on two supports, 5/384", 5 / 384, () => sag(simple(uniform(L, W))) / (W * L ** 4)),
  deflection(
    "load in the middle of two supports, 1/48",
    1 / 48,
    () => sag(simple({ at: L / 2, force: P })) / (P * L ** 3),
  ),
  deflection(
    "half the load at each quarter point, 11/768",
    11 / 768,
    () => sag(simple({ at: L / 4, force: P / 2 }, { at: (3 * L) / 4, force: P / 2 })) / (P * L ** 3),
  ),
  deflection(
    "uniform load, both ends built in, 1/384",
    1 / 384,
    () => sag(builtIn(uniform(L, W))) / (W * L ** 4),
  ),
  deflection(
    "load in the middle, both ends built in, 1/192",
    1 / 192,
    () => sag(builtIn({ at: L / 2, force: P })) / (P * L ** 3),
  ),
  deflection(
    "uniform load, one end built in, 1/8",
    1 / 8,
    () => sag(cantilever(uniform(L, W))) / (W * L ** 4),
  ),
  deflection(
    "load at the free end, other built in, 1/3",
    1 / 3,
    () => sag(cantilever({ at: L, force: P })) / (P * L ** 3),
  ),
];

const TRIANGLE = {
  document: "beam formulas",
  table: "beam 07, triangular load",
  via: "mechengcalculations.com",
};
const rising: BeamLoad = { from: 0, to: L, start: 0, end: W };

const TRIANGULAR: readonly PublishedExample[] = [
  beams({
    name: "load that rises from one support to the other, sag",
    source: TRIANGLE,
    printed: 0.00652,
    unit: "w L4 / E I",
    tolerance: 0.000005,
    work: () => sag(simple(rising)) / (W * L ** 4),
  }),
  beams({
    name: "load that rises from one support to the other, where it sags most",
    source: TRIANGLE,
    printed: 0.519,
    unit: "L",
    tolerance: 0.0005,
    work: () => simple(rising).sag.at / L,
  }),
  beams({
    name: "load that rises from one support to the other, moment",
    source: TRIANGLE,
    printed: 0.0642,
    unit: "w L2",
    tolerance: 0.00005,
    work: () => simple(rising).moment.size / (W * L ** 2),
  }),
  beams({
    name: "load that rises from one support to the other, where the moment is greatest",
    source: TRIANGLE,
    printed: 0.577,
    unit: "L",
    tolerance: 0.0005,
    work: () => simple(rising).moment.at / L,
  }),
  beams({
    name: "water against a wall built in at its foot, 30",
    source: { document: "cantilever under hydrostatic load, worked solution", via: "expertsmind.com" },
    printed: 30,
    unit: "w L4 / (E I sag)",
    tolerance: 1e-6,
    work: () => (W * L ** 4) / sag(cantilever({ from: 0, to: L, start: W, end: 0 })),
  }),
];

const FORMULAS = "Civil Engineering Formulas, after Time-Saver Standards, 6th ed.";
const [a, b] = [640, 360];
const [over, under] = [250, 150];
const hung: Beam = {
  length: over + L + under,
  supports: [over, over + L],
  loads: [uniform(over + L + under, W)],
};

const TIME_SAVER: readonly PublishedExample[] = [
  beams({
    name: "load at any point, sag W a b (a + 2b) sqrt(3a (a + 2b)) / 27 E I L",
    source: { document: FORMULAS, table: "case 2, page 50", via: "digilib.universitaspertamina.ac.id" },
    printed: (P * a * b * (a + 2 * b) * Math.sqrt(3 * a * (a + 2 * b))) / (27 * L),
    unit: "N mm3",
    tolerance: 1e3,
    work: () => sag(simple({ at: a, force: P })),
  }),
  beams({
    name: "load at any point, moment W a b / L",
    source: { document: FORMULAS, table: "case 2, page 50", via: "digilib.universitaspertamina.ac.id" },
    printed: (P * a * b) / L,
    unit: "N mm",
    tolerance: 0.01,
    work: () => simple({ at: a, force: P }).moment.size,
  }),
  beams({
    name: "overhangs at both ends, reaction w [(a + L)2 - b2] / 2 L",
    source: { document: FORMULAS, table: "case 11, page 67", via: "digilib.universitaspertamina.ac.id" },
    printed: (W * ((over + L) ** 2 - under ** 2)) / (2 * L),
    unit: "N",
    tolerance: 0.001,
    work: () => bent(hung).reactions[0]!,
  }),
];

const HIBBELER = {
  document: "Mechanics of Materials (Hibbeler)",
  edition: "2013",
  via: "an open-source library for beams",
};
const propped: Beam = {
  length: 3,
  supports: [3],
  clamped: "left",
  loads: [uniform(3, 6), { at: 1.5, force: 8 }],
};

const TEXTBOOKS: readonly PublishedExample[] = [
  beams({
    name: "Example 12.21, propped cantilever of 3 m: reaction of the prop",
    source: { ...HIBBELER, table: "Example 12.21" },
    printed: 9.25,
    unit: "kN",
    tolerance: 0.005,
    work: () => bent(propped).reactions[1]!,
  }),
  beams({
    name: "Example 12.21, propped cantilever of 3 m: moment at the wall",
    source: { ...HIBBELER, table: "Example 12.21" },
    printed: 11.25,
    unit: "kN m",
    tolerance: 0.005,
    work: () => bent(propped).moment.size,
  }),
  beams({
    name: "Example 12.14, cantilever of 8 m, load falling to nothing at 6 m: sag of its end",
    source: { ...HIBBELER, table: "Example 12.14" },
    printed: 244.8,
    unit: "kN m3",
    tolerance: 0.05,
    work: () =>
      sag(
        bent({
          length: 8,
          supports: [],
          clamped: "left",
          loads: [{ from: 0, to: 6, start: 4, end: 0 }],
        }),
      ),
  }),
  beams({
    name: "timber cantilever 3 x 6 in, 5 ft, end load and part load: sag",
    source: {
      document: "Beams and Bending, part 3, Example 1 (page 215)",
      via: "a textbook companion, chapter 6",
    },
    printed: 0.1823,
    unit: "in",
    tolerance: 0.00005,
    work: () => {
      const loads = [{ at: 60, force: 150 }, uniform(36, 10)];
      const inertia = rectangle(3, 6)!.inertia;
      return sag(bent({ length: 60, supports: [], clamped: "left", loads })) / (1.5e6 * inertia);
    },
  }),
  beams({
    name: "cantilever 0.12 x 0.2 m, 2.5 m: uniform load that sags it 5 mm",
    source: { document: "cantilever, worked numbers", via: "a textbook companion, chapter 6" },
    printed: 16_384,
    unit: "N/m",
    tolerance: 0.5,
    work: () =>
      (0.005 * 2e11 * rectangle(0.12, 0.2)!.inertia) /
      sag(bent({ length: 2.5, supports: [], clamped: "left", loads: [uniform(2.5, 1)] })),
  }),
  beams({
    name: "overhanging beam with four loads: reaction of its second support",
    source: { document: "reactions of an overhanging beam, worked solution", via: "civilguruvu.com" },
    printed: 43.125,
    unit: "kN",
    tolerance: 0.0005,
    work: () => bent(FOUR_LOADS).reactions[1]!,
  }),
];

/** Supports at 1 and 5 m of 6; 20 kN at both ends, 40 kN between, 5 kN/m over the last 3 m. */
const FOUR_LOADS: Beam = {
  length: 6,
  supports: [1, 5],
  loads: [
    { at: 0, force: 20 },
    { at: 2, force: 40 },
    { at: 6, force: 20 },
    { from: 3, to: 6, start: 5, end: 5 },
  ],
};

const TIMBER = { document: "timber beam under three loads, worked example", via: "amesweb.info" };
const timber: Beam = {
  length: 3000,
  supports: [0, 3000],
  loads: [
    uniform(3000, 0.1177),
    { at: 500, force: 10_000 },
    { at: 1500, force: 5000 },
    { at: 2500, force: 10_000 },
  ],
};
const timberSection = rectangle(100, 200)!;

const SHEET = {
  document: "wood beam with a cantilever, calculation sheet after NDS 2005",
  via: "scribd.com 377989401",
};
/** 12 ft between supports and 3 ft beyond; kips and feet; the dead load lies along a slope of 4 in 12. */
const sloped = Math.hypot(4, 12) / 12;
const onSlope: Beam = {
  length: 15,
  supports: [0, 12],
  loads: [
    { from: 0, to: 12, start: 0.35 * sloped + 0.14, end: 0.35 * sloped + 0.14 },
    { from: 12, to: 15, start: 0.25 * sloped + 0.2, end: 0.25 * sloped + 0.2 },
    { at: 4, force: 0.91 },
    { at: 8, force: 1 },
    { at: 15, force: 2.2 },
  ],
};

const WORKED: readonly PublishedExample[] = [
  beams({
    name: "timber beam of 3 m under three loads and its own weight: reaction",
    source: TIMBER,
    printed: 12_676.5,
    unit: "N",
    tolerance: 0.1,
    work: () => bent(timber).reactions[0]!,
  }),
  beams({
    name: "timber beam of 3 m under three loads and its own weight: moment",
    source: TIMBER,
    printed: 8882.4,
    unit: "N m",
    tolerance: 0.05,
    work: () => bent(timber).moment.size / 1000,
  }),
  beams({
    name: "timber beam of 3 m under three loads and its own weight: bending stress",
    source: TIMBER,
    printed: 13.323,
    unit: "N/mm2",
    tolerance: 0.001,
    work: () => bent(timber).moment.size / timberSection.modulus,
  }),
  beams({
    name: "timber beam of 3 m under three loads and its own weight: shear stress",
    source: TIMBER,
    printed: 0.951,
    unit: "N/mm2",
    tolerance: 0.0005,
    work: () => shearStress(bent(timber).shear.size, timberSection),
  }),
  beams({
    name: "12 ft and a cantilever of 3 ft: reaction beside the cantilever",
    source: SHEET,
    printed: 8.34,
    unit: "kips",
    tolerance: 0.005,
    work: () => bent(onSlope).reactions[1]!,
  }),
  beams({
    name: "12 ft and a cantilever of 3 ft: the other reaction",
    source: SHEET,
    printed: 3.27,
    unit: "kips",
    tolerance: 0.005,
    work: () => bent(onSlope).reactions[0]!,
  }),
  beams({
    name: "12 ft and a cantilever of 3 ft: greatest moment",
    source: SHEET,
    printed: 9.1,
    unit: "ft kips",
    tolerance: 0.05,
    work: () => bent(onSlope).moment.size,
  }),
];

export const EXAMPLES: readonly PublishedExample[] = [
  ...HANDBOOK,
  ...TRIANGULAR,
  ...TIME_SAVER,
  ...TEXTBOOKS,
  ...WORKED,
];
