// Soil behind walls, things that tip, where weight acts, and wind, against printed values.
import { atRest, blockedDrain, pressureAt } from "../../../server/strength/soil";
import { marginAgainst, pushToTip, sidesOf, together } from "../../../server/strength/topple";
import { windPressure } from "../../../server/strength/wind";
import { windFactor } from "../../../server/trade";
import type { PublishedExample } from "../strength-example";
import { FOOT, fromKN, G, PCF, POUND, PSF, there } from "../strength-units";

const DAS = {
  document: "Das, textbooks of geotechnical and foundation engineering",
  via: "notebooks that work its examples",
};
const CLASS = { document: "solutions of a course on earth pressure", via: "scribd.com 551711000" };
const COMPARED = { document: "a comparison of Rankine and Coulomb, wall of 3 m", via: "github.com" };
const HUD = {
  document: "HUD Residential Structural Design Guide",
  table: "Table 3.5",
  via: "1library.net",
};
const REST = { document: "a course on geotechnical engineering", via: "geoeqdoc.pages.dev" };
const PHYSICS = { document: "Halliday, Resnick and Walker, chapter 12", via: "vaia.com" };

const KPA = 1e-3;
const MPH = 0.44704;
/** Of 30 degrees, as the solutions print it. */
const KA = 0.333;
/** lb/cuft of the fluid that presses as hard as a soil of a printed share and weight. */
const fluid = (share: number, weight: number): number => there(pressureAt(FOOT, weight * PCF, share)) / PSF;
/** N on each mm of a wall, as walls of boxes are loaded: the pressure half way down all over its height. */
const onWall = (height: number, density: number, share: number): number =>
  there(pressureAt(height / 2, density, share)) * height;
/** 2.5 m of sand in water, submerged 9.06 kN/m3, under 2 m of moist sand, 14.89 kN/m3; friction angle 30. */
const moistSand = (): number => there(pressureAt(2000, fromKN(14.89), KA));
const sandInWater = () => there(blockedDrain(2500, fromKN(9.06) + 1000, KA));
/** 10 ft of soil of 100 pcf, and 5 ft of 122.4 in water under it. */
const soilInWater = () => there(blockedDrain(5 * FOOT, 122.4 * PCF, 0.5));

const base = (wide: number, deep: number) =>
  sidesOf([
    [0, 0],
    [wide, 0],
    [wide, deep],
    [0, deep],
  ]);
/** What pushes over a crate so wide and so deep, in the unit of its weight. */
const topples = (weight: number, deep: number, height: number): number =>
  there(pushToTip(base(2 * deep, deep), { kg: weight, at: [deep, deep / 2, 0] }, height)).kg;
const points = (...masses: readonly (readonly [number, number, number])[]) => {
  const [x, y] = there(together(masses.map(([kg, ...at]) => ({ kg, at: [...at, 0] })))).at;
  return { x, y };
};
const STUDENT = [
  [8.5, -5.2, -6.5],
  [6.3, 0.2, -2.3],
  [6.1, 4.9, 0.9],
] as const;
const TRIANGLE = [
  [14, 0, 0],
  [21, 0, 7],
  [69, 7 * Math.cos(Math.PI / 6), 3.5],
] as const;

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

const SOIL: readonly PublishedExample[] = [
  example("soil", "K0 at a friction angle of 30", REST, [0.5, "", 0.0005], () => there(atRest(30))),
  example(
    "soil",
    "thrust of 3 m at 1800 kg/m3, Ka .307259",
    COMPARED,
    [2.489, "t/m", 0.0005],
    () => onWall(3000, 1800, 0.307259) / G,
  ),
  example(
    "soil",
    "active thrust, 105 pcf, 10 ft, Ka .246",
    { ...DAS, table: "Example 7.5" },
    [1291.5, "lb/ft", 0.05],
    () => (onWall(10 * FOOT, 105 * PCF, 0.246) * FOOT) / POUND,
  ),
  example(
    "soil",
    "soil 10 ft down at 100 pcf, K0 70.7%",
    { ...DAS, table: "chapter 13" },
    [707, "psf", 0.5],
    () => there(pressureAt(10 * FOOT, 100 * PCF, 70.7 / 100)) / PSF,
  ),
  example(
    "soil",
    "at rest, water 10 ft down, soil 15 ft down: 100 pcf over it, 122.4 in it",
    { ...DAS, table: "Example 13.1", via: "from memory" },
    [650, "psf", 0.5],
    () => (there(pressureAt(10 * FOOT, 100 * PCF, 0.5)) + soilInWater().soil) / PSF,
  ),
  example(
    "soil",
    "the water on the same wall",
    { ...DAS, table: "Example 13.1", via: "from memory" },
    [312, "psf", 0.5],
    () => soilInWater().water / PSF,
  ),
  example(
    "soil",
    "moist sand over the water, 2 m (printed without its third decimal)",
    CLASS,
    [9.92, "kPa", 0.01],
    () => moistSand() / KPA,
  ),
  example(
    "soil",
    "soil of that wall at its foot, 9.92 and 7.55",
    CLASS,
    [17.47, "kPa", 0.015],
    () => (moistSand() + sandInWater().soil) / KPA,
  ),
  example(
    "soil",
    "water on that wall at its foot",
    CLASS,
    [24.53, "kPa", 0.015],
    () => sandInWater().water / KPA,
  ),
  example(
    "soil",
    "sand and gravel, .26 of 115 lb/cuft, press like a fluid of",
    HUD,
    [30, "lb/cuft", 0.5],
    () => fluid(0.26, 115),
  ),
  example("soil", "clay, .6 of 100 lb/cuft, presses like a fluid of", HUD, [60, "lb/cuft", 0.5], () =>
    fluid(0.6, 100),
  ),
];

const TIPPING: readonly PublishedExample[] = [
  example(
    "tipping",
    "wall of 16 x 40 x 1.5 ft on a footing of 20 x 6 x 2 at 150 pcf with 240 kips on it, 24 kips at 42 ft",
    { document: "a question of an architects' examination (NCARB)", via: "arecoach.com" },
    [4.17, "", 0.005],
    () => {
      const all = together([
        { kg: 16 * 40 * 1.5 * 0.15, at: [10, 3, 22] },
        { kg: 20 * 6 * 2 * 0.15, at: [10, 3, 1] },
        { kg: 240, at: [10, 3, 42] },
      ]);
      return there(marginAgainst(base(20, 6), there(all), { kg: 24, way: [1, 0], height: 42 })).margin;
    },
  ),
  example(
    "tipping",
    "crate of .850 m and 500 N, pushed .53125 m up",
    { ...PHYSICS, edition: "10" },
    [400, "N", 0.5],
    () => topples(500, 850, 531.25),
  ),
  example(
    "tipping",
    "crate of .750 m and 500 N, pushed .536 m up",
    { ...PHYSICS, edition: "9" },
    [350, "N", 0.35],
    () => topples(500, 750, 536),
  ),
  example(
    "tipping",
    "refrigerator of 100 kg at 9.8 m/s2, 1.0 m deep, pushed 1.4 m up",
    { document: "a physics exercise", via: "physicsforums.com 783676" },
    [350, "N", 0.5],
    () => topples(980, 1000, 1400),
  ),
  example(
    "tipping",
    "crate of 40 kg at 10 m/s2, 1.0 m high and 0.5 m deep, pushed at its top",
    { document: "a physics exercise", via: "physicsforums.com 723919" },
    [100, "N", 0.5],
    () => topples(400, 500, 1000),
  ),
];

const WYZANT = { document: "a physics exercise, three masses", via: "wyzant.com 785354" };
const JISKHA = { document: "a physics exercise, masses on a triangle", via: "jiskha.com 1352082643" };

const WEIGHTS: readonly PublishedExample[] = [
  example("gravity", "three masses, x", WYZANT, [-0.624, "m", 0.0005], () => points(...STUDENT).x),
  example("gravity", "three masses, y", WYZANT, [-3.074, "m", 0.0005], () => points(...STUDENT).y),
  example(
    "gravity",
    "14, 21 and 69 kg on a triangle of 7 m, x",
    JISKHA,
    [4.022, "m", 0.0005],
    () => points(...TRIANGLE).x,
  ),
  example(
    "gravity",
    "14, 21 and 69 kg on a triangle of 7 m, y",
    JISKHA,
    [3.74, "m", 0.005],
    () => points(...TRIANGLE).y,
  ),
  example(
    "gravity",
    "3, 4 and 8 kg, x",
    { document: "Halliday, Resnick and Walker, chapter 9", via: "coursehero.com 6254815" },
    [1.1, "m", 0.05],
    () => points([3, 0, 0], [4, 2, 1], [8, 1, 2]).x,
  ),
];

const WIND: readonly PublishedExample[] = [
  example(
    "other",
    "wind of 100 mph with Kz .90 and Kd .85",
    { document: "a worked example by ASCE 7-05", via: "a page on wind loads" },
    [19.58, "psf", 0.005],
    () => (there(windPressure(100, windFactor.value)) * 0.9 * 0.85) / PSF,
  ),
  example(
    "other",
    "wind of 72.2222 m/s with Kz .7778 and Kd .85, by the metric factor .613 (three figures)",
    { document: "wind load computations by the NSCP", via: "scribd.com 461702671" },
    [2113.92, "N/m2", 1.8],
    () => there(windPressure(72.2222 / MPH, windFactor.value)) * 1e6 * 0.7778 * 0.85,
  ),
];

export const EXAMPLES: readonly PublishedExample[] = [...SOIL, ...TIPPING, ...WEIGHTS, ...WIND];
