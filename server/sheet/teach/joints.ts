/** Drawings of screws and their holes, of linings and loads. */

import type { Point } from "../display";
import { arrow, box, dash, fibers, measure, pointer, round, screw, shape, stroke, thin, words } from "./pen";
import type { Teaching } from "./teaching";

/** Two boards in section, cut open at the screw. */
const layers = (right = 44) => [
  box(0, 4, right, 15),
  fibers(0, 4, right, 15, 2),
  box(0, 15, right, 32, "pale"),
];

const holes: Teaching = (say) => [
  ...layers(),
  box(28.4, 4, 31.6, 15),
  box(29.3, 15, 30.7, 28),
  box(9.4, 4, 12.6, 15),
  box(10.3, 15, 11.7, 28),
  ...screw([11, 3.6], [11, 27.6], 0.55),
  ...pointer([47, 8], [31.2, 9]),
  words(48, 9, say("clearance", "passage"), "start"),
  ...pointer([47, 23], [30.2, 24]),
  words(48, 24, say("pilot", "avant-trou"), "start"),
];

const countersink: Teaching = (say) => [
  box(0, 8, 46, 26),
  fibers(0, 18, 46, 26, 1),
  shape([
    [6, 8],
    [16, 8],
    [12.4, 12],
    [12.4, 22],
    [9.6, 22],
    [9.6, 12],
  ]),
  ...screw([33, 8.2], [33, 25], 0.55),
  ...pointer([24, 3.4], [14.4, 9.4]),
  words(25, 4.2, say("countersink", "fraisure"), "start"),
  words(34, 31.4, say("head flush", "tête affleurante")),
];

const gauge: Teaching = (say) => [
  ...screw([6, 4], [6, 26], 0.6),
  ...screw([26, 4], [26, 26], 0.6).map((item) =>
    item.kind === "path"
      ? { ...item, strokes: item.strokes.map((s) => s.map(([x, y]): Point => [26 + (x - 26) * 1.7, y])) }
      : item,
  ),
  words(6, 31.4, "#6"),
  words(26, 31.4, "#10"),
  words(34, 12, say("higher number,", "plus grand numéro,"), "start"),
  words(34, 16.2, say("thicker screw", "vis plus grosse"), "start"),
];

const thread: Teaching = (say) => [
  ...screw([2, 12], [56, 12], 0.6),
  ...measure([2, 10], [23.6, 10], [0, -1], 4, say("shank", "fût")),
  ...measure([23.6, 10], [56, 10], [0, -1], 4, say("thread", "filet")),
];

const bite: Teaching = (say) => [
  ...layers(40),
  ...screw([20, 4], [20, 28], 0.6),
  dash([20, 28], [40, 28]),
  ...measure([40, 15], [40, 28], [1, 0], 5, say("bite", "prise")),
];

const toe: Teaching = (say) => [
  box(14, 0, 28, 24),
  box(0, 24, 56, 32, "pale"),
  ...screw([27.6, 13], [18, 29.6], 0.6),
  ...pointer([34, 12], [26.2, 15.4]),
  words(35, 13, say("starts well up", "part bien haut"), "start"),
];

const coating: Teaching = (say) => [
  ...screw([4, 8], [40, 8], 0.6),
  ...screw([4, 22], [40, 22], 0.6),
  ...[12, 18, 25, 31, 36].map((x, i) => round(x, 21.4 + (i % 3) * 0.6, 0.9, "ink", 0)),
  words(44, 9.2, say("zinc coat", "zinguée"), "start"),
  words(44, 23.2, say("bare, rusts", "nue, rouille"), "start"),
];

const coat: Teaching = (say) => [
  box(0, 16, 46, 28),
  fibers(0, 16, 46, 28),
  box(0, 13.2, 46, 16, "pale"),
  box(0, 10.4, 34, 13.2, "gray"),
  words(49, 16, say("first", "première"), "start"),
  ...pointer([40, 6.6], [31, 11.6]),
  words(41, 7.4, say("second", "seconde"), "start"),
];

const WALLS: readonly Point[] = [
  [0, 2],
  [4, 2],
  [4, 28],
  [44, 28],
  [44, 2],
  [48, 2],
  [48, 32],
  [0, 32],
];

const liner: Teaching = (say) => [
  shape(WALLS, "pale"),
  stroke([5, 9], [5, 3.4], [6.6, 3.4], [6.6, 26.4], [41.4, 26.4], [41.4, 3.4], [43, 3.4], [43, 9]),
  ...pointer([16, 5], [6, 6]),
  words(17, 6, say("fold", "rabat"), "start"),
  ...pointer([22, 21], [14, 26.2]),
  words(23, 20.4, say("liner", "doublure"), "start"),
];

const overlap: Teaching = (say) => [
  stroke([0, 10], [36, 18]),
  stroke([24, 17.4], [60, 25.4]),
  ...arrow([4, 6], [16, 8.6]),
  words(18, 8, say("water", "eau"), "start"),
  ...measure([24, 17.4], [36, 17.4], [0, 1], 9, say("overlap", "recouvrement")),
];

const drain: Teaching = (say) => [
  shape(
    [
      [0, 2],
      [4, 2],
      [4, 24],
      [20, 24],
      [20, 28],
      [0, 28],
    ],
    "pale",
  ),
  shape(
    [
      [44, 2],
      [48, 2],
      [48, 28],
      [28, 28],
      [28, 24],
      [44, 24],
    ],
    "pale",
  ),
  stroke([4, 7], [44, 7]),
  ...[10, 18, 30, 38].flatMap((x) => [
    round(x, 12, 0.6, "ink", 0),
    round(x - 3, 17, 0.6, "ink", 0),
    round(x + 2, 21, 0.6, "ink", 0),
  ]),
  ...arrow([24, 18], [24, 33]),
  ...pointer([52, 5], [47, 2.6]),
  words(53, 6, say("rim", "bord"), "start"),
  words(27, 33, say("water leaves", "l’eau sort"), "start"),
];

const psf: Teaching = (say) => [
  shape(
    [
      [0, 22],
      [24, 22],
      [34, 12],
      [10, 12],
    ],
    "pale",
  ),
  shape(
    [
      [12, 12.6],
      [18, 12.6],
      [20, 19],
      [10, 19],
    ],
    "gray",
  ),
  shape(
    [
      [13.4, 12.6],
      [13.4, 10.6],
      [16.6, 10.6],
      [16.6, 12.6],
    ],
    "none",
  ),
  words(27, 8, "1 lb", "end"),
  ...measure([0, 22], [24, 22], [0, 1], 5, say("1 foot", "1 pied")),
  words(37, 18, say("1 foot wide", "large d’1 pied"), "start"),
];

const loadPath: Teaching = (say) => [
  box(0, 8, 48, 12, "pale"),
  box(4, 12, 8, 30, "pale"),
  box(40, 12, 44, 30, "pale"),
  thin([-4, 30], [54, 30]),
  ...arrow([24, 0], [24, 7.6]),
  ...arrow([22, 10], [9, 10]),
  ...arrow([26, 10], [39, 10]),
  ...arrow([6, 14], [6, 29]),
  ...arrow([42, 14], [42, 29]),
  words(26.5, 4, say("load", "charge"), "start"),
  words(24, 35, say("ground", "sol")),
];

const span: Teaching = (say) => {
  const bow = (y: number): Point[] =>
    Array.from({ length: 15 }, (_, i) => [i * 4, y + 5 * (1 - ((i - 7) / 7) ** 2)]);
  return [
    box(0, 9.4, 5, 24, "pale"),
    box(51, 9.4, 56, 24, "pale"),
    shape([...bow(6), ...bow(9.4).reverse()]),
    dash([0, 9.4], [56, 9.4]),
    ...arrow([28, 1], [28, 10]),
    ...measure([5, 24], [51, 24], [0, 1], 5, say("span", "portée")),
    ...pointer([36, 20], [33, 13.6]),
    words(37, 21, say("sag", "flèche"), "start"),
  ];
};

const tip: Teaching = (say) => [
  thin([-2, 30], [60, 30]),
  box(2, 4, 12, 30, "pale"),
  ...arrow([-8, 8], [1.4, 8]),
  shape(
    [
      [24, 27],
      [33.6, 30],
      [41, 5.2],
      [31.4, 2.2],
    ].map(([x, y]): Point => [x!, y!]),
  ),
  round(32.5, 16, 0.9, "ink", 0),
  ...arrow([32.5, 16], [32.5, 28]),
  words(44, 12, say("weight inside", "poids en dedans"), "start"),
  words(44, 16.2, say("its feet", "des pieds"), "start"),
];

export const JOINT_DRAWINGS = {
  holes,
  countersink,
  gauge,
  thread,
  bite,
  toe,
  coating,
  coat,
  liner,
  overlap,
  drain,
  psf,
  "load-path": loadPath,
  span,
  tip,
};
