/** What wood may be stressed to: worked examples of factors, and single values of tables beside the trade's rows. */
import { adjusted, type InUse, type WoodValues } from "../../../server/strength/allowable";
import { longTermSag } from "../../../server/strength/creep";
import { MPA_PER_PSI } from "../../../server/strength/units";
import {
  bendingValues,
  creepFactors,
  designValues,
  durationFactors,
  repetitiveFactor,
  sizeFactor,
  wetFactors,
} from "../../../server/trade";
import { greenRuptures } from "../../../server/trade/clear-wood";
import type { PublishedExample } from "../strength-example";

const INCH = 25.4;
const WET = {
  bending: wetFactors.bending.value,
  shear: wetFactors.shear.value,
  bearing: wetFactors.bearing.value,
  elasticity: wetFactors.elasticity.value,
};
const { tenYears, twoMonths, permanent } = durationFactors;

/** psi in, psi out. */
const allowed = (values: WoodValues, use: InUse): WoodValues => adjusted(values, use)!;

/** Values of No. 2 lumber on edge from the trade's rows, as used; psi. */
function no2(species: string, width: number, use: InUse): WoodValues {
  const values = allowed(bendingValues(species, 1.5 * INCH, width * INCH, false)!, use);
  const psi = (mpa: number): number => mpa / MPA_PER_PSI;
  return {
    bending: psi(values.bending),
    shear: psi(values.shear),
    bearing: psi(values.bearing),
    elasticity: psi(values.elasticity),
  };
}

const formula = (example: Omit<PublishedExample, "topic" | "kind" | "unit">): PublishedExample => ({
  topic: "adjustments",
  kind: "formula",
  unit: "psi",
  ...example,
});
const row = (example: Omit<PublishedExample, "topic" | "kind">): PublishedExample => ({
  topic: "adjustments",
  kind: "table row",
  ...example,
});

const PURDUE = { document: "CE 479 wood design example", edition: "fall 2006", via: "scribd.com 89270399" };
/** Douglas fir-larch No. 1, a 2x8: its size is put in, as the program does. */
const No1: WoodValues = {
  bending: 1000 * sizeFactor(8)!.value,
  shear: 180,
  bearing: 625,
  elasticity: 1_700_000,
};
const SNOW_WET: InUse = { duration: twoMonths.value, wet: WET };

const permit = (document: string, via: string) => ({ document, via });
const GUARD = permit(
  "rafter calculation in a building permit, Everett, Washington",
  "lfportal.everettwa.gov 1572251, page 28",
);
const ROOF = permit(
  "rafter calculation in a building permit, Everett, Washington",
  "lfportal.everettwa.gov 2021580, page 7",
);
const SNOW: InUse = { duration: twoMonths.value, repetitive: repetitiveFactor.value };

const WORKED: readonly PublishedExample[] = [
  formula({
    name: "2x8 of Douglas fir-larch No. 1, wet, under snow: bending",
    source: PURDUE,
    printed: 1173,
    tolerance: 0.5,
    work: () => allowed(No1, SNOW_WET).bending,
  }),
  formula({
    name: "2x8 of Douglas fir-larch No. 1, wet, under snow: shear",
    source: PURDUE,
    printed: 201,
    tolerance: 0.5,
    work: () => allowed(No1, SNOW_WET).shear,
  }),
  formula({
    name: "2x8 of hem-fir No. 1, one of three or more: bending",
    source: {
      document: "HUD Residential Structural Design Guide",
      edition: "2nd edition",
      table: "Example 5.1",
      via: "an open-source structural library (xc)",
    },
    printed: 1345,
    tolerance: 0.51,
    work: () =>
      allowed(
        { ...No1, bending: 975 * sizeFactor(8)!.value },
        { duration: tenYears.value, repetitive: repetitiveFactor.value },
      ).bending,
  }),
  formula({
    name: "2x4 of hem-fir No. 2 under snow, one of three or more: bending",
    source: GUARD,
    printed: 1686,
    tolerance: 0.5,
    work: () => no2("hem-fir", 3.5, SNOW).bending,
  }),
  formula({
    name: "2x4 of hem-fir No. 2 under snow: shear",
    source: GUARD,
    printed: 172,
    tolerance: 0.51,
    work: () => no2("hem-fir", 3.5, SNOW).shear,
  }),
  formula({
    name: "2x4 of Douglas fir-larch No. 2 under snow, one of three or more: bending",
    source: ROOF,
    printed: 1785,
    tolerance: 0.5,
    work: () => no2("douglas-fir-larch", 3.5, SNOW).bending,
  }),
  formula({
    name: "2x4 of Douglas fir-larch No. 2 under snow: shear",
    source: ROOF,
    printed: 207,
    tolerance: 0.5,
    work: () => no2("douglas-fir-larch", 3.5, SNOW).shear,
  }),
  formula({
    name: "2x4 of Douglas fir-larch No. 2: bearing, which no duration raises",
    source: ROOF,
    printed: 625,
    tolerance: 0.5,
    work: () => no2("douglas-fir-larch", 3.5, SNOW).bearing,
  }),
  formula({
    name: "beam of 1500 psi under its dead load, size factor 0.9: bending",
    source: { document: "wood beam analysis and design, calculation sheet", via: "scribd.com 635872648" },
    printed: 1215,
    tolerance: 0.5,
    work: () => allowed({ ...No1, bending: 1500 * 0.9 }, { duration: permanent.value }).bending,
  }),
  {
    ...formula({
      name: "long-term sag of seasoned wood: 1.5 times what stays, and what comes and goes",
      source: ROOF,
      printed: 2.5,
      tolerance: 1e-9,
      work: () => longTermSag(1, 1, creepFactors.seasonedDry.value)!,
    }),
    unit: "",
  },
];

const XC = "an open-source structural library (xc)";
const green = (name: string): number => greenRuptures.find(({ key }) => key === name)!.value;
const SOUTHERN = { document: "NDS Supplement", edition: "2018", table: "Southern Pine, No. 2", via: XC };
const T4A = { document: "NDS Supplement", table: "Table 4A" };
const D2555 = { document: "ASTM D2555", table: "clear wood, unseasoned", via: "scribd.com 566742651" };
/** The handbook prints the same averages to the nearest hundred. */
const HUNDRED = 50;

const ROWS: readonly PublishedExample[] = [
  row({
    name: "southern pine No. 2, 2x6: bending",
    source: SOUTHERN,
    printed: 6.9,
    unit: "N/mm2",
    tolerance: 0.05,
    work: () => bendingValues("southern-pine", 38.1, 139.7, false)!.bending,
  }),
  row({
    name: "southern pine No. 2: stiffness",
    source: SOUTHERN,
    printed: 9.7,
    unit: "kN/mm2",
    tolerance: 0.05,
    work: () => bendingValues("southern-pine", 38.1, 139.7, false)!.elasticity / 1000,
  }),
  row({
    name: "western cedars No. 2: bending before size",
    source: { ...T4A, via: "an open-source set of lumber design values" },
    printed: 700,
    unit: "psi",
    tolerance: 0.5,
    work: () => designValues("western-cedars")!.value.bending,
  }),
  row({
    name: "northern white cedar No. 2: bending before size",
    source: { ...T4A, via: "an open-source study of timber panels" },
    printed: 550,
    unit: "psi",
    tolerance: 0.5,
    work: () => designValues("northern-white-cedar")!.value.bending,
  }),
  row({
    name: "eastern hemlock: green bending strength",
    source: D2555,
    printed: 6420,
    unit: "psi",
    tolerance: HUNDRED,
    work: () => green("eastern-hemlock"),
  }),
  row({
    name: "Port-Orford-cedar: green bending strength",
    source: D2555,
    printed: 6598,
    unit: "psi",
    tolerance: HUNDRED,
    work: () => green("port-orford-cedar"),
  }),
  row({
    name: "dead and live load together last ten years",
    source: { document: "NDS", edition: "2018", table: "Table 2.3.2", via: XC },
    printed: 1,
    unit: "",
    tolerance: 1e-9,
    work: () => tenYears.value,
  }),
  row({
    name: "dead load alone",
    source: { document: "NDS", edition: "2018", table: "Table 2.3.2", via: XC },
    printed: 0.9,
    unit: "",
    tolerance: 1e-9,
    work: () => permanent.value,
  }),
];

export const EXAMPLES: readonly PublishedExample[] = [...WORKED, ...ROWS];
