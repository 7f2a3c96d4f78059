// How wood moves, how wet it gets and what it weighs, against printed values.
import { growth } from "../../../server/strength/swelling";
import {
  fiberSaturation,
  ovenDryGravity,
  sawnShrinkage,
  shrinkageOf,
  shrinksBelow,
  woodDensity,
} from "../../../server/trade";
import type { PublishedExample } from "../strength-example";
import { PCF, there } from "../strength-units";

const HANDBOOK = { document: "Wood Handbook", edition: "FPL-GTR-190" };
const MEMORY = { ...HANDBOOK, via: "from memory" };
const LUMBER = { document: "FPL-RP-489, shrinkage factors of PS 20-70", via: "scribd.com 393303591" };
const COEFFICIENTS = "Table 13-5";

/** Share of its size that a flat-sawn board grows from a moisture to another, as rows of boards do. */
const grows = (wood: string, from: number, to: number): number =>
  growth(there(shrinkageOf(wood)).row.value.tangential, from, to, shrinksBelow(wood).value);
/** Coefficient that the shrinkage form gives at 10%, about which the table was made. */
const coefficient = (wood: string): number => grows(wood, 10, 11);
/** lb/cuft of wood by its gravity at 12%. */
const at12 = (gravity: number): number => woodDensity(ovenDryGravity(gravity, 12), 12);

const example = (
  topic: PublishedExample["topic"],
  name: string,
  source: PublishedExample["source"],
  [printed, unit, tolerance]: readonly [number, string, number],
  work: () => number,
): PublishedExample => ({
  topic,
  name,
  kind: source.table?.startsWith("Table") ? "table row" : "formula",
  source,
  printed,
  unit,
  tolerance,
  work,
});

export const EXAMPLES: readonly PublishedExample[] = [
  example(
    "movement",
    "Douglas-fir: the coefficient from its shrinkage of 7.6%",
    { ...HANDBOOK, table: COEFFICIENTS, via: "flooringartists.com" },
    [0.00267, "per 1%", 0.000005],
    () => coefficient("douglas-fir"),
  ),
  example(
    "movement",
    "western redcedar: the coefficient from its shrinkage of 5.0%, which starts at 22%",
    { ...MEMORY, table: COEFFICIENTS },
    [0.00234, "per 1%", 0.000005],
    () => coefficient("western-redcedar"),
  ),
  example("movement", "sawn width from green to 15%", LUMBER, [2.8, "%", 0.01], () =>
    sawnShrinkage("width", 15),
  ),
  example("movement", "sawn thickness from green to 15%", LUMBER, [2.35, "%", 0.01], () =>
    sawnShrinkage("thickness", 15),
  ),
  example(
    "movement",
    "a wood that shrinks 7.5% in all: size for each 4% of moisture, about",
    { document: "AWC FAQ, dimensional change", via: "awc.org" },
    [1, "%", 0.05],
    () => 100 * growth(7.5, 12, 16, fiberSaturation.value),
  ),
  example(
    "gravity",
    "wood of gravity .40 at 12%",
    { document: "forestry functions, citing the Wood Handbook", via: "oakmissouri.org" },
    [448, "kg/m3", 0.5],
    () => at12(0.4) * PCF,
  ),
];
