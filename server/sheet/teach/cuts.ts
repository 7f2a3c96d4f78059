/** Drawings of saw cuts: what a blade takes, how ends slant, and where lengths are measured. */
import type { Item } from "../display";
import {
  arc,
  arrow,
  box,
  dash,
  fibers,
  measure,
  pointer,
  screw,
  shape,
  stroke,
  thin,
  waste,
  words,
} from "./pen";
import { page, scene } from "./solids";
import type { Teaching } from "./teaching";

/** What is too narrow for a measure of its own, above an upper edge. */
const narrow = (from: number, to: number, edge: number, said: string): Item[] => [
  thin([from, edge - 1], [from, edge - 4.2]),
  thin([to, edge - 1], [to, edge - 4.2]),
  ...arrow([from - 6, edge - 2.8], [from, edge - 2.8]),
  ...arrow([to + 6, edge - 2.8], [to, edge - 2.8]),
  words((from + to) / 2, edge - 5.8, said),
];

const kerf: Teaching = (say) => [
  box(0, 8, 26, 22),
  box(29, 8, 56, 22),
  ...waste(26, 8, 29, 22),
  fibers(0, 8, 26, 12, 1),
  fibers(29, 8, 56, 12, 1),
  ...narrow(26, 29, 8, say("kerf", "trait de scie")),
  words(13, 17.5, say("piece", "pièce")),
  words(42.5, 17.5, say("waste", "chute")),
];

/** How an end is cut, seen in space, and beside it from the side where the slant shows. */
const miter: Teaching = (say) => [
  ...scene([{ size: [90, 40, 14], left: { miter: 45, bevel: 0 } }], page(0, 4, 34, 24)).items,
  shape([
    [40, 22],
    [54, 8],
    [68, 8],
    [68, 22],
  ]),
  dash([40, 22], [40, 6]),
  arc(40, 22, 9, -90, -45),
  words(44.4, 10.5, "45°"),
  words(55, 28, say("seen from above", "vu d’en haut")),
];

const bevel: Teaching = (say) => [
  ...scene([{ size: [90, 40, 18], left: { miter: 0, bevel: 45 } }], page(0, 4, 34, 24)).items,
  shape([
    [40, 22],
    [51, 11],
    [68, 11],
    [68, 22],
  ]),
  dash([40, 22], [40, 6]),
  arc(40, 22, 9, -90, -45),
  words(44.4, 10.5, "45°"),
  words(55, 28, say("seen on the edge", "vu de chant")),
];

const TRAPEZOID: Item = shape([
  [0, 10],
  [60, 10],
  [49, 21],
  [11, 21],
]);

const points: Teaching = (say) => [
  TRAPEZOID,
  ...measure([0, 10], [60, 10], [0, -1], 5, say("long point to long point", "de pointe longue à longue")),
  ...measure([11, 21], [49, 21], [0, 1], 5, say("short to short", "courte à courte")),
];

const overall: Teaching = (say) => [
  shape([
    [0, 20],
    [11, 9],
    [60, 9],
    [49, 20],
  ]),
  dash([0, 20], [0, 5]),
  dash([60, 9], [60, 5]),
  ...measure([0, 9], [60, 9], [0, -1], 5, say("overall", "hors tout")),
  ...measure([0, 20], [49, 20], [0, 1], 5, say("along the edge", "le long du chant")),
];

const square: Teaching = (say) => [
  box(8, 10, 50, 24),
  fibers(8, 10, 50, 24),
  box(2, 24, 38, 27.5, "gray"),
  box(4.6, 4, 8, 24, "pale"),
  stroke([8, 20.5], [11.5, 20.5], [11.5, 24]),
  words(20, 32.5, say("try square", "équerre")),
  ...pointer([22, 7.5], [8.2, 13]),
  words(23, 8, say("no light here", "pas de jour ici"), "start"),
];

const offSquare: Teaching = (say) => [
  box(0, 10, 56, 26),
  stroke([16, 7], [16, 29]),
  words(16, 5.6, "0°"),
  stroke([32, 29], [51, 10], [53.5, 7.5]),
  dash([34.9, 7], [34.9, 26]),
  arc(34.9, 26.1, 10, -90, -45),
  words(40.2, 14.6, "45°"),
  words(16, 33.5, say("square", "d’équerre")),
  words(42, 33.5, say("off square", "en biais")),
];

const endTrim: Teaching = (say) => [
  box(8, 8, 60, 20),
  shape([
    [8, 8],
    [4, 9],
    [5.2, 11],
    [2.6, 13.5],
    [5, 16],
    [3.2, 18.6],
    [8, 20],
  ]),
  ...waste(5.4, 8.8, 8, 19.4),
  dash([8, 4], [8, 24]),
  ...measure([8, 20], [60, 20], [0, 1], 5.5, say("measured from here", "mesuré d’ici")),
  words(10, 6, say("sawn off first", "scié d’abord"), "start"),
];

const rip: Teaching = (say) => [
  box(0, 8, 28, 24),
  fibers(0, 8, 28, 24),
  dash([-2, 13.5], [30, 13.5]),
  words(14, 29.5, say("rip", "déligner")),
  box(36, 8, 64, 24),
  fibers(36, 8, 64, 24),
  dash([50, 5], [50, 26]),
  words(50, 29.5, say("crosscut", "tronçonner")),
];

const notch: Teaching = (say) => {
  const { items, on } = scene(
    [
      {
        size: [120, 45, 18],
        lies: "on edge",
        takenOut: [{ from: [0, -1, -1], to: [30, 22, 19] }],
      },
      { size: [70, 30, 18], lies: "upright", at: [-1, -18, -64] },
    ],
    page(0, 0, 42, 30),
  );
  return [...items, ...pointer([46, 22], on([29, -9, 22])), words(47, 23, say("notch", "entaille"), "start")];
};

const dado: Teaching = (say) => {
  const { items, on } = scene(
    [
      {
        size: [110, 50, 18],
        pose: { length: [1, 0, 0], width: [0, -1, 0], thickness: [0, 0, -1], origin: [0, 50, 18] },
        takenOut: [{ from: [46, -1, -1], to: [64, 51, 8] }],
      },
      {
        size: [40, 50, 18],
        pose: { length: [0, 0, 1], width: [0, 1, 0], thickness: [-1, 0, 0], origin: [64, 0, 32] },
      },
    ],
    page(0, 0, 42, 31),
  );
  return [
    ...items,
    ...pointer([46, 25], on([55, 0, 11])),
    words(47, 26, say("dado", "rainure"), "start"),
    ...pointer([46, 5], on([64, 30, 60])),
    words(47, 6, say("shelf", "tablette"), "start"),
  ];
};

const offcut: Teaching = (say) => [
  box(0, 8, 20, 20),
  box(20, 8, 40, 20),
  box(40, 8, 60, 20, "pale"),
  words(10, 15.2, say("piece", "pièce")),
  words(30, 15.2, say("piece", "pièce")),
  words(50, 15.2, say("offcut", "chute")),
  ...measure([0, 20], [60, 20], [0, 1], 5, say("bought board", "planche achetée")),
];

const salvage: Teaching = (say) => [
  box(0, 9, 60, 21),
  fibers(0, 9, 60, 21),
  ...waste(22, 9, 34, 21),
  ...screw([8, 4], [8, 19]),
  ...arrow([12.5, 9], [12.5, 1.5]),
  words(15, 5, say("pull nails first", "ôter les clous"), "start"),
  words(28, 26, say("bad stretch", "partie abîmée")),
];

const ring: Teaching = (say) => [
  shape([
    [0, 0],
    [46, 0],
    [38, 8],
    [8, 8],
  ]),
  shape([
    [46, 0],
    [46, 30],
    [38, 22],
    [38, 8],
  ]),
  shape([
    [46, 30],
    [0, 30],
    [8, 22],
    [38, 22],
  ]),
  shape([
    [0, 30],
    [0, 0],
    [8, 8],
    [8, 22],
  ]),
  ...pointer([50, 15], [42, 4]),
  words(51, 16, say("miter", "onglet"), "start"),
];

const fit: Teaching = (say) => [
  box(0, 2, 7, 32, "pale"),
  box(43, 2, 50, 32, "pale"),
  box(3, 12, 49, 20),
  dash([7, 9], [7, 23]),
  dash([43, 9], [43, 23]),
  words(25, 27.5, say("mark it in its place", "tracer sur place")),
  thin([7, 12], [7, 20]),
  thin([43, 12], [43, 20]),
];

const mark: Teaching = (say) => [
  box(0, 12, 58, 24),
  ...Array.from({ length: 33 }, (_, i) => {
    const long = i % 16 === 0 ? 7 : i % 8 === 0 ? 5 : i % 4 === 0 ? 3.6 : i % 2 === 0 ? 2.6 : 1.7;
    return thin([3 + i * 1.62, 12], [3 + i * 1.62, 12 + long]);
  }),
  words(5, 22.6, "0"),
  words(31.4, 22.6, `1"`),
  ...narrow(38.64, 40.26, 12, say(`mark, 1/16"`, `trait, 1/16"`)),
];

export const CUT_DRAWINGS = {
  kerf,
  miter,
  bevel,
  points,
  overall,
  square,
  "off-square": offSquare,
  "end-trim": endTrim,
  rip,
  notch,
  dado,
  offcut,
  salvage,
  ring,
  fit,
  mark,
};
