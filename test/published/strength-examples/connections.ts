// Screws, nails, lag screws and bolts: pulled out and across, against printed values.
import { adjusted } from "../../../server/strength/fastener";
import { bearing, type LateralJoint, lateral } from "../../../server/strength/lateral";
import { lagWithdrawal, nailWithdrawal, screwWithdrawal } from "../../../server/strength/withdrawal";
import {
  bendingYieldOf,
  boltYield,
  durationFactors,
  endGrainLateral,
  lagSize,
  lagThread,
  screwGauge,
  species,
} from "../../../server/trade";
import { tapeNumber } from "../../../server/trade/tape";
import type { PublishedExample } from "../strength-example";
import { INCH, LB_PER_INCH, POUND, PSI, there } from "../strength-units";

const TOOLBOX_SCREWS = {
  document: "withdrawal of wood screws",
  via: "engineeringtoolbox.com d_1815",
  table: "example",
};
const TOOLBOX_NAILS = { document: "withdrawal of nails and spikes", via: "engineeringtoolbox.com d_1814" };
const SOLVED = {
  document: "Structural Wood Design Solved Example Problems (American Wood Council)",
  via: "an open-source structural library (xc)",
};
const FORMULAS = {
  document: "a handbook of civil engineering formulas",
  table: "Table 6.2",
  via: "issuhub.com 4884, page 189",
};
const TABLE_12_2A = {
  document: "NDS",
  edition: "2015",
  table: "Table 12.2A",
  via: "a city's public records (Everett)",
};
const MAIL = { document: "an engineer's question, 2009", via: "seaintarchive 2009c msg00914" };
const FROM_MEMORY = "from memory";

const gravity = (wood: string): number => there(species(wood)?.gravity).value;
const inches = (text: string): number => there(tapeNumber(text));
/** Inches, as the tables of the NDS print them. */
const NAILS = {
  "8d common": { length: 2.5, shank: 0.131 },
  "10d common": { length: 3, shank: 0.148 },
  "16d common": { length: 3.5, shank: 0.162 },
} as const;

/** Pounds per inch. */
const perInch = (newtonsPerMm: number | undefined): number => there(newtonsPerMm) / LB_PER_INCH;

/** Pounds across a nail with as much of it in the main piece as is asked, in inches. */
const nailed = (name: keyof typeof NAILS, side: number, bite: number): number => {
  const { shank } = NAILS[name];
  const joint: LateralJoint = {
    diameterMm: shank * INCH,
    sideThickMm: side * INCH,
    penetrationMm: bite * INCH,
    gravitySide: 0.5,
    gravityMain: 0.5,
    yieldMpa: there(bendingYieldOf(shank)).value.psi * PSI,
    fastener: "nail",
  };
  return there(lateral(joint)).newtons / POUND;
};

/** Pounds across a 1/2 in bolt in Douglas fir-larch, by the thickness of the main piece and the angles to the grain. */
const bolted = (main: number, sideGrainDeg: number, mainGrainDeg: number): number =>
  there(
    lateral({
      diameterMm: INCH / 2,
      sideThickMm: 1.5 * INCH,
      penetrationMm: main * INCH,
      gravitySide: 0.5,
      gravityMain: 0.5,
      yieldMpa: boltYield.value * PSI,
      fastener: "bolt",
      sideGrainDeg,
      mainGrainDeg,
    }),
  ).newtons / POUND;

export const EXAMPLES: readonly PublishedExample[] = [
  {
    topic: "withdrawal",
    name: "#10 wood screw, G .45 (printed without its decimals)",
    kind: "formula",
    source: TOOLBOX_SCREWS,
    printed: 109,
    unit: "lb/in",
    tolerance: 1,
    work: () => perInch(screwWithdrawal(0.45, inches(there(screwGauge(10)).shank.value) * INCH)),
  },
  {
    topic: "withdrawal",
    name: "20d nail (.203 in), G .45",
    kind: "formula",
    source: { ...TOOLBOX_NAILS, table: "example" },
    printed: 38,
    unit: "lb/in",
    tolerance: 0.5,
    work: () => perInch(nailWithdrawal(0.45, 0.203 * INCH)),
  },
  {
    topic: "withdrawal",
    name: "metric wire nail 90 x 3.4 mm, G .5",
    kind: "table row",
    source: { ...TOOLBOX_NAILS, table: "metric wire nails" },
    printed: 515,
    unit: "N",
    tolerance: 0.5,
    work: () => there(nailWithdrawal(0.5, 3.4)) * 90,
  },
  {
    topic: "withdrawal",
    name: "metric wire nail 100 x 3.8 mm, G .5",
    kind: "table row",
    source: { ...TOOLBOX_NAILS, table: "metric wire nails" },
    printed: 639,
    unit: "N",
    tolerance: 0.5,
    work: () => there(nailWithdrawal(0.5, 3.8)) * 100,
  },
  {
    topic: "withdrawal",
    name: "8d nail (.131 in) in spruce-pine-fir, an inch of it",
    kind: "formula",
    source: { ...SOLVED, table: "E2.1a" },
    printed: 20.67,
    unit: "lb/in",
    tolerance: 0.005,
    work: () => perInch(nailWithdrawal(gravity("spruce-pine-fir"), NAILS["8d common"].shank * INCH)),
  },
  {
    topic: "withdrawal",
    name: "8d nail through .105 in, 2.395 in of it in the main piece",
    kind: "formula",
    source: { ...SOLVED, table: "E2.1a" },
    printed: 49.5,
    unit: "lb",
    tolerance: 0.01,
    work: () => {
      const { length, shank } = NAILS["8d common"];
      const hold = there(nailWithdrawal(gravity("spruce-pine-fir"), shank * INCH));
      return (hold * (length - 0.105) * INCH) / POUND;
    },
  },
  {
    topic: "withdrawal",
    name: "lag screw 1/2 x 4 in southern pine, 2.1875 in of thread without the tip",
    kind: "formula",
    source: { ...SOLVED, table: "E2.3" },
    printed: 4247.94,
    unit: "N",
    tolerance: 0.01,
    work: () => {
      const thread = (lagThread(4) - inches(there(lagSize(0.5)).value.tip)) * INCH;
      return there(lagWithdrawal(gravity("southern-pine"), INCH / 2)) * thread;
    },
  },
  {
    topic: "withdrawal",
    name: "lag screw 3/8, G .50",
    kind: "table row",
    source: TABLE_12_2A,
    printed: 305,
    unit: "lb/in",
    tolerance: 0.5,
    work: () => perInch(lagWithdrawal(0.5, 0.375 * INCH)),
  },
  {
    topic: "withdrawal",
    name: "lag screw 1/4, G .42",
    kind: "table row",
    source: TABLE_12_2A,
    printed: 173,
    unit: "lb/in",
    tolerance: 0.5,
    work: () => perInch(lagWithdrawal(0.42, 0.25 * INCH)),
  },
  {
    topic: "withdrawal",
    name: "a nail of an inch in wood of gravity 1 pulls out at five times what is allowed",
    kind: "formula",
    source: { document: "Forest Products Laboratory, Technical Note 236", edition: "1958" },
    printed: 6900,
    unit: "lb/in",
    tolerance: 0.5,
    work: () => 5 * perInch(nailWithdrawal(1, INCH)),
  },
  {
    topic: "withdrawal",
    name: "G^2 of Douglas fir of gravity .51, by which screws go",
    kind: "table row",
    source: FORMULAS,
    printed: 0.26,
    unit: "",
    tolerance: 0.0005,
    work: () => there(screwWithdrawal(0.51, INCH)) / there(screwWithdrawal(1, INCH)),
  },
  {
    topic: "withdrawal",
    name: "G^2.5 of redwood of gravity .42, by which nails go",
    kind: "table row",
    source: FORMULAS,
    printed: 0.114,
    unit: "",
    tolerance: 0.0005,
    work: () => there(nailWithdrawal(0.42, INCH)) / there(nailWithdrawal(1, INCH)),
  },
  {
    topic: "lateral",
    name: "16d nail (.162 in), 1-1/2 side, Douglas fir-larch; the table rounds bearing to 50 psi",
    kind: "table row",
    source: { document: "NDS", edition: "2005", table: "Table 11N", via: MAIL.via },
    printed: 141,
    unit: "lb",
    tolerance: 0.7,
    work: () => nailed("16d common", 1.5, 1.62),
  },
  {
    topic: "lateral",
    name: "10d nail (.148 in), 1-1/2 side, Douglas fir-larch; the table rounds bearing to 50 psi",
    kind: "table row",
    source: { document: "NDS", edition: "2005", table: "Table 11N", via: FROM_MEMORY },
    printed: 118,
    unit: "lb",
    tolerance: 0.7,
    work: () => nailed("10d common", 1.5, 1.48),
  },
  {
    topic: "lateral",
    name: "16d nail with 1.25 in of bite of 1.62, ten minutes of wind",
    kind: "formula",
    source: MAIL,
    printed: 174,
    unit: "lb",
    tolerance: 0.9,
    work: () =>
      there(adjusted(nailed("16d common", 1.5, 1.25), { duration: durationFactors.tenMinutes.value })),
  },
  {
    topic: "lateral",
    name: "10d nail through 3/4 into Douglas fir-larch, 2.25 in of bite",
    kind: "formula",
    source: { ...SOLVED, table: "nail, single shear" },
    printed: 467.488,
    unit: "N",
    tolerance: 0.001,
    work: () => nailed("10d common", 0.75, 2.25) * POUND,
  },
  {
    topic: "lateral",
    name: "bearing of wood of gravity .50 under a thin fastener, to 50 psi",
    kind: "table row",
    source: { document: "NDS", edition: "2005", table: "Table 11.3.2", via: FROM_MEMORY },
    printed: 4650,
    unit: "psi",
    tolerance: 25,
    work: () => bearing(0.5, 0.162, 90),
  },
  {
    topic: "lateral",
    name: "bearing of wood of gravity .50 across the grain under 1/2 in, to 50 psi",
    kind: "table row",
    source: { document: "NDS", edition: "2005", table: "Table 11.3.2", via: FROM_MEMORY },
    printed: 3150,
    unit: "psi",
    tolerance: 25,
    work: () => bearing(0.5, 0.5, 90),
  },
  {
    topic: "lateral",
    name: "1/2 in bolt, two pieces of 1-1/2, along the grain, to 10 lb",
    kind: "table row",
    source: { document: "NDS", edition: "2005", table: "Table 11A", via: FROM_MEMORY },
    printed: 480,
    unit: "lb",
    tolerance: 5,
    work: () => bolted(1.5, 0, 0),
  },
  {
    topic: "lateral",
    name: "1/2 in bolt, 1-1/2 side pulled across its grain on 3-1/2, to 10 lb",
    kind: "table row",
    source: { document: "NDS", edition: "2005", table: "Table 11A", via: FROM_MEMORY },
    printed: 370,
    unit: "lb",
    tolerance: 5,
    work: () => bolted(3.5, 90, 0),
  },
  {
    topic: "lateral",
    name: "a screw in end grain keeps two thirds of 300 lb",
    kind: "formula",
    source: {
      document: "a handbook of civil engineering formulas",
      table: "page 171",
      via: "issuhub.com 4884, page 190",
    },
    printed: 200,
    unit: "lb",
    tolerance: 1.01,
    work: () => there(adjusted(300, { endGrain: endGrainLateral.value })),
  },
];
