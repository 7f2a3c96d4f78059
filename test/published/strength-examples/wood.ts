// How wood moves, how wet it gets and what it weighs, against printed values.
import { densityAtMoisture, gravityAtMoisture } from "../../../server/strength/gravity";
import { byCoefficient, change, equilibriumMoisture } from "../../../server/strength/movement";
import { movementOf, sawnShrinkage, shrinksBelow, species } from "../../../server/trade";
import type { PublishedExample } from "../strength-example";
import { INCH, PCF, there } from "../strength-units";

const HANDBOOK = { document: "Wood Handbook", edition: "FPL-GTR-190" };
const MEMORY = { ...HANDBOOK, via: "from memory" };
const LUMBER = { document: "FPL-RP-489, shrinkage factors of PS 20-70", via: "scribd.com 393303591" };
const MAGAZINE = { document: "a trade magazine's answer on humidity", via: "woodworkingnetwork.com" };
const COEFFICIENTS = "Table 13-5";
const EMC = "Table 4-2";

/** Inches that a board of so many inches grows. */
const grows = (width: number, coefficient: number, from: number, to: number): number => {
  const moved = there(byCoefficient(width * INCH, coefficient, from, to));
  if (moved.kind === "outside") throw new Error("outside");
  return moved.mm / INCH;
};
/** Coefficient that the shrinkage form gives at 10%, about which the table was made. */
const tangential = (wood: string): number =>
  there(change(1, 10, 11, there(species(wood)?.shrinkage).value.tangential, shrinksBelow(wood).value));
const oak = (wood: string): number => there(movementOf(wood)).value.tangential;
const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
const at70 = (humidity: number): number => there(equilibriumMoisture(humidity, celsius(70)));

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
    "mesquite, 5 in, 6 to 9%",
    { document: "a flooring maker's page", via: "flooringartists.com" },
    [0.019, "in", 0.0005],
    () => grows(5, 0.00129, 6, 9),
  ),
  example(
    "movement",
    "white oak, 5 in, 6 to 9%",
    { document: "a flooring maker's page", via: "sullivanhardwoodflooring.com" },
    [0.055, "in", 0.0005],
    () => grows(5, oak("white-oak"), 6, 9),
  ),
  example(
    "movement",
    "red oak, 5 in, 6 to 9%",
    { document: "a flooring magazine, 2016", via: "hardwoodfloorsmag.com" },
    [0.055, "in", 0.0005],
    () => grows(5, oak("red-oak"), 6, 9),
  ),
  example(
    "movement",
    "red oak, 5 in, from 30 to 60% humidity: 4.8% of moisture",
    { document: "a flooring magazine, 2017", via: "cld.bz" },
    [0.08856, "in", 0.000005],
    () => grows(5, oak("red-oak"), 6.2, 11),
  ),
  example(
    "movement",
    "red oak from 30 to 60% humidity, by its printed moistures",
    { document: "a flooring magazine, 2017, its moisture chart", via: "cld.bz" },
    [4.8, "%", 0.1],
    () => at70(60) - at70(30),
  ),
  example(
    "movement",
    "red alder, 8 in flatsawn, 6% of moisture",
    { document: "a magazine's chart, 2021", via: "pressreader.com" },
    [0.1248, "in", 0.00005],
    () => grows(8, 0.0026, 6, 12),
  ),
  example(
    "movement",
    "white fir, 9.15 in, 8 to 11%",
    { ...MEMORY, table: "example after Eq. 13-1" },
    [0.067, "in", 0.0005],
    () => grows(9.15, there(movementOf("white-fir")).value.tangential, 8, 11),
  ),
  example(
    "movement",
    "Douglas-fir: the coefficient from its shrinkage of 7.6%",
    { ...HANDBOOK, table: COEFFICIENTS, via: "flooringartists.com" },
    [0.00267, "per 1%", 0.000005],
    () => tangential("douglas-fir"),
  ),
  example(
    "movement",
    "western redcedar: the coefficient from its shrinkage of 5.0%, which starts at 22%",
    { ...MEMORY, table: COEFFICIENTS },
    [0.00234, "per 1%", 0.000005],
    () => tangential("western-redcedar"),
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
    () => there(change(100, 12, 16, 7.5)),
  ),
  example("movement", "moisture at 50% humidity, 70 F", { ...MEMORY, table: EMC }, [9.2, "%", 0.05], () =>
    at70(50),
  ),
  example("movement", "moisture at 65% humidity, 70 F", { ...MEMORY, table: EMC }, [12, "%", 0.05], () =>
    at70(65),
  ),
  example("movement", "moisture at 30% humidity", MAGAZINE, [6, "%", 0.5], () => at70(30)),
  example("movement", "moisture at 80% humidity", MAGAZINE, [16, "%", 0.5], () => at70(80)),
  example(
    "movement",
    "moisture at 55% humidity, 140 F, by the equation in Fahrenheit",
    { document: "an encyclopedia's page on equilibrium moisture", via: "liquisearch.com" },
    [8.4, "%", 0.05],
    () => there(equilibriumMoisture(55, celsius(140))),
  ),
  example(
    "movement",
    "moisture at 50% humidity, 20 C",
    { document: "the manual of a package for conservators (ConSciR)", via: "github.com" },
    [9.271141, "%", 5e-7],
    () => there(equilibriumMoisture(50, 20)),
  ),
  example(
    "movement",
    "moisture at 25% humidity (rounded), 21 C",
    { document: "a calculator after FPL-RN-0268", via: "stoves.bioenergylists.org" },
    [5.3, "%", 0.15],
    () => there(equilibriumMoisture(25, 21)),
  ),
  example(
    "gravity",
    "wood of gravity .40 at 12%",
    { document: "forestry functions, citing the Wood Handbook", via: "oakmissouri.org" },
    [448, "kg/m3", 0.5],
    () => there(densityAtMoisture(0.4, 12)),
  ),
  example(
    "gravity",
    "the same by water of 62.43 lb/cuft",
    { document: "forestry functions, citing the Wood Handbook", via: "oakmissouri.org" },
    [27.968, "lb/cuft", 0.001],
    () => there(densityAtMoisture(0.4, 12)) / PCF,
  ),
  example(
    "gravity",
    "Douglas-fir of basic gravity .45 at 12%",
    { ...MEMORY, table: "Table 5-3" },
    [0.48, "", 0.005],
    () => there(gravityAtMoisture(0.45, 12)),
  ),
  example(
    "gravity",
    "ponderosa pine of basic gravity .38 at 12%",
    { ...MEMORY, table: "Table 5-3" },
    [0.4, "", 0.005],
    () => there(gravityAtMoisture(0.38, 12)),
  ),
];
