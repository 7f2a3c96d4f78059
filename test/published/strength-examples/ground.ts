// Soil behind walls, things that tip, where weight acts, and wind, against printed values.
import { centreOfGravity } from "../../../server/strength/gravity";
import {
  active,
  atRest,
  blockedDrain,
  overconsolidated,
  pressureAt,
  surcharge,
  thrust,
} from "../../../server/strength/soil";
import { forceToTip, tipMargin, windForce, windPressure } from "../../../server/strength/tipping";
import { guideSoils } from "../../../server/trade";
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
/** The pressure of a fluid that presses alike, lb/cuft. */
const fluid = (soil: string): number => {
  const { share, weight } = there(guideSoils.find(({ key }) => key === `guide soil, ${soil}`)).value;
  return there(pressureAt(FOOT, weight * PCF, share)) / PSF;
};
/** 4.5 m of sand with water 2 m down: bulk 14.89 and submerged 9.06 kN/m3, friction angle 30, 50 kPa on the surface. */
const classWall = () =>
  there(
    blockedDrain(4500, fromKN(9.06) + 1000, there(active(30)), {
      waterDepthMm: 2000,
      moistKgM3: fromKN(14.89),
    }),
  );
/** Weights, and how far inside the edge: kips and feet. */
const wall = (loads: readonly (readonly [number, number])[], push: number, height: number): number => {
  const margin = there(
    tipMargin(
      loads.map(([newtons, armMm]) => ({ newtons, armMm })),
      [{ newtons: push, heightMm: height }],
    ),
  );
  if (margin.kind !== "margin") throw new Error(margin.kind);
  return margin.ratio;
};
const points = (...masses: readonly (readonly [number, number, number])[]) =>
  there(centreOfGravity(masses.map(([weight, x, y]) => ({ weight, x, y, z: 0 }))));
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
  example("soil", "Ka at a friction angle of 30", REST, [0.333, "", 0.0005], () => there(active(30))),
  example(
    "soil",
    "Ka at a friction angle of 35",
    { ...DAS, table: "Example 10.2", via: "an open-source structural library (xc)" },
    [0.27099005412, "", 5e-12],
    () => there(active(35)),
  ),
  example("soil", "Ka at a friction angle of 32", COMPARED, [0.307259, "", 5e-7], () => there(active(32))),
  example("soil", "Ka at a friction angle of 25", CLASS, [0.406, "", 0.0005], () => there(active(25))),
  example("soil", "Ka at a friction angle of 22", CLASS, [0.455, "", 0.0005], () => there(active(22))),
  example("soil", "thrust of 3 m at 1800 kg/m3, friction angle 32", COMPARED, [2.489, "t/m", 0.0005], () => {
    const { newtonsPerMm } = there(thrust(3000, 1800, there(active(32))));
    return newtonsPerMm / G;
  }),
  example("soil", "the same wall, of 1000 kg/m2 on the surface", COMPARED, [0.922, "t/m", 0.0005], () => {
    const all = there(thrust(3000, 1800, there(active(32)), 1000 * G * 1e-6));
    return (all.newtonsPerMm - there(thrust(3000, 1800, there(active(32)))).newtonsPerMm) / G;
  }),
  example(
    "soil",
    "active thrust, 105 pcf, 10 ft, Ka .246",
    { ...DAS, table: "Example 7.5" },
    [1291.5, "lb/ft", 0.05],
    () => {
      const { newtonsPerMm } = there(thrust(10 * FOOT, 105 * PCF, 0.246));
      return (newtonsPerMm * FOOT) / POUND;
    },
  ),
  example(
    "soil",
    "K0 of soil pressed twice as hard once, friction angle 30",
    { ...DAS, table: "chapter 13" },
    [70.7, "%", 0.05],
    () => 100 * there(overconsolidated(30, 2)),
  ),
  example(
    "soil",
    "the same soil 10 ft down at 100 pcf",
    { ...DAS, table: "chapter 13" },
    [707, "psf", 0.5],
    () => there(pressureAt(10 * FOOT, 100 * PCF, there(overconsolidated(30, 2)))) / PSF,
  ),
  example(
    "soil",
    "at rest, water 10 ft down, soil 15 ft down: 100 pcf over it, 122.4 in it",
    { ...DAS, table: "Example 13.1", via: "from memory" },
    [650, "psf", 0.5],
    () =>
      there(blockedDrain(15 * FOOT, 122.4 * PCF, 0.5, { waterDepthMm: 10 * FOOT, moistKgM3: 100 * PCF }))
        .soil / PSF,
  ),
  example(
    "soil",
    "the water on the same wall",
    { ...DAS, table: "Example 13.1", via: "from memory" },
    [312, "psf", 0.5],
    () => there(blockedDrain(15 * FOOT, 122.4 * PCF, 0.5, { waterDepthMm: 10 * FOOT })).water / PSF,
  ),
  example(
    "soil",
    "50 kPa on the surface presses on the wall",
    CLASS,
    [16.67, "kPa", 0.005],
    () => there(surcharge(50 * KPA, there(active(30)))) / KPA,
  ),
  example(
    "soil",
    "the same on 4.5 m of wall",
    CLASS,
    [75, "kN/m", 0.005],
    () => there(thrust(4500, 0, there(active(30)), 50 * KPA)).newtonsPerMm,
  ),
  example(
    "soil",
    "how high that acts",
    CLASS,
    [2.25, "m", 0.005],
    () => there(thrust(4500, 0, there(active(30)), 50 * KPA)).heightMm / 1000,
  ),
  example(
    "soil",
    "moist sand over the water, 2 m (printed without its third decimal)",
    CLASS,
    [9.92, "kPa", 0.01],
    () => there(pressureAt(2000, fromKN(14.89), there(active(30)))) / KPA,
  ),
  example(
    "soil",
    "soil of that wall at its foot, 9.92 and 7.55",
    CLASS,
    [17.47, "kPa", 0.015],
    () => classWall().soil / KPA,
  ),
  example(
    "soil",
    "water on that wall at its foot",
    CLASS,
    [24.53, "kPa", 0.015],
    () => classWall().water / KPA,
  ),
  example("soil", "sand and gravel press like a fluid of", HUD, [30, "lb/cuft", 0.5], () =>
    fluid("sand and gravel"),
  ),
  example("soil", "clay presses like a fluid of", HUD, [60, "lb/cuft", 0.5], () => fluid("clay")),
];

const TIPPING: readonly PublishedExample[] = [
  example(
    "tipping",
    "wall of 16 x 40 x 1.5 ft on a footing of 20 x 6 x 2 at 150 pcf with 240 kips on it, 24 kips at 42 ft",
    { document: "a question of an architects' examination (NCARB)", via: "arecoach.com" },
    [4.17, "", 0.005],
    () =>
      wall(
        [
          [16 * 40 * 1.5 * 0.15, 10],
          [20 * 6 * 2 * 0.15, 10],
          [240, 10],
        ],
        24,
        42,
      ),
  ),
  example(
    "tipping",
    "crate of .850 m and 500 N, pushed .53125 m up",
    { ...PHYSICS, edition: "10" },
    [400, "N", 0.5],
    () => there(forceToTip(500, 425, 531.25)),
  ),
  example(
    "tipping",
    "crate of .750 m and 500 N, pushed .536 m up",
    { ...PHYSICS, edition: "9" },
    [350, "N", 0.35],
    () => there(forceToTip(500, 375, 536)),
  ),
  example(
    "tipping",
    "refrigerator of 100 kg at 9.8 m/s2, 1.0 m deep, pushed 1.4 m up",
    { document: "a physics exercise", via: "physicsforums.com 783676" },
    [350, "N", 0.5],
    () => there(forceToTip(980, 500, 1400)),
  ),
  example(
    "tipping",
    "crate of 40 kg at 10 m/s2, 1.0 m high and 0.5 m deep, pushed at its top",
    { document: "a physics exercise", via: "physicsforums.com 723919" },
    [100, "N", 0.5],
    () => there(forceToTip(400, 250, 1000)),
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
    () => there(windForce(there(windPressure({ mph: 100 })), 1, 0.9, 0.85)) / PSF,
  ),
  example(
    "other",
    "wind of 72.2222 m/s with Kz .7778 and Kd .85, by the metric factor .613 (three figures)",
    { document: "wind load computations by the NSCP", via: "scribd.com 461702671" },
    [2113.92, "N/m2", 1.8],
    () => there(windForce(there(windPressure({ metresPerSecond: 72.2222 })), 1e6, 0.7778, 0.85)),
  ),
];

export const EXAMPLES: readonly PublishedExample[] = [...SOIL, ...TIPPING, ...WEIGHTS, ...WIND];
