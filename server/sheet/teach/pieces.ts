/** Drawings of pieces by their work, and of how they lie and stand. */
import { arrow, box, dash, measure, pointer, shape, stroke, thin, waste, words } from "./pen";
import { type Board, page, scene } from "./solids";
import type { Teaching } from "./teaching";

const batten: Teaching = (say) => {
  const boards: Board[] = [0, 1, 2].map((i) => ({
    size: [90, 30, 8],
    lies: "front to back",
    at: [30 + i * 31, 0, 0],
  }));
  const { items, on } = scene(
    [...boards, { size: [92, 14, 10], at: [0, 38, 8] }],
    page(0, 0, 44, 30),
    undefined,
    [3],
  );
  return [...items, ...pointer([47, 8], on([84, 45, 18])), words(48, 9, say("batten", "barre"), "start")];
};

const ledger: Teaching = (say) => {
  const { items, on } = scene(
    [
      { size: [134, 80, 8], lies: "on edge", at: [0, 58, 0] },
      { size: [134, 16, 10], lies: "on edge", at: [0, 50, 34] },
      { size: [50, 18, 8], lies: "front to back", at: [34, 0, 50] },
      { size: [50, 18, 8], lies: "front to back", at: [64, 0, 50] },
      { size: [50, 18, 8], lies: "front to back", at: [94, 0, 50] },
    ],
    page(0, 0, 42, 32),
    undefined,
    [1],
  );
  return [
    ...items,
    ...pointer([45, 26], on([124, 40, 42])),
    words(46, 27, say("ledger", "lambourde"), "start"),
  ];
};

const cleat: Teaching = (say) => {
  const { items, on } = scene(
    [
      {
        size: [80, 60, 10],
        pose: { length: [0, 0, 1], width: [0, 1, 0], thickness: [-1, 0, 0], origin: [10, 0, 0] },
      },
      { size: [56, 12, 12], lies: "on edge front to back", at: [10, 2, 36] },
      { size: [90, 60, 9], at: [10, 0, 48] },
    ],
    page(0, 0, 42, 32),
    undefined,
    [1],
  );
  return [...items, ...pointer([38, 28], on([16, 2, 42])), words(39, 29.4, say("cleat", "tasseau"), "start")];
};

const frame: Teaching = (say) => {
  const leg = (x: number, y: number): Board => ({ size: [70, 10, 10], lies: "upright", at: [x, y, 0] });
  const { items, on } = scene(
    [
      leg(0, 0),
      leg(100, 0),
      leg(0, 40),
      leg(100, 40),
      { size: [90, 16, 6], lies: "on edge", at: [10, 8, 52] },
      { size: [90, 16, 6], lies: "on edge", at: [10, 48, 52] },
      { size: [30, 16, 6], lies: "on edge front to back", at: [2, 10, 52] },
      { size: [30, 16, 6], lies: "on edge front to back", at: [102, 10, 52] },
    ],
    page(0, 0, 42, 32),
  );
  return [
    ...items,
    ...pointer([45, 12], on([80, 2, 60])),
    words(46, 13, say("rail", "traverse"), "start"),
    ...pointer([45, 27], on([110, 5, 20])),
    words(46, 28, say("leg", "pied"), "start"),
  ];
};

const LEAN = 7;
const brace: Teaching = (say) => [
  shape([
    [LEAN, 2],
    [24 + LEAN, 2],
    [24, 26],
    [0, 26],
  ]),
  shape([
    [LEAN + 2.2, 5],
    [21 + LEAN, 5],
    [21.8, 23],
    [3.8, 23],
  ]),
  words(12, 31.4, say("racks", "penche")),
  shape([
    [40, 2],
    [64, 2],
    [64, 26],
    [40, 26],
  ]),
  shape([
    [43, 5],
    [61, 5],
    [61, 23],
    [43, 23],
  ]),
  shape(
    [
      [43, 20.6],
      [43, 23],
      [45.4, 23],
      [61, 7.4],
      [61, 5],
      [58.6, 5],
    ],
    "marked",
  ),
  words(52, 31.4, say("brace", "écharpe")),
];

const slats: Teaching = (say) => {
  const rails: Board[] = [12, 82].map((x) => ({ size: [64, 8, 8], lies: "front to back", at: [x, 0, 0] }));
  const over: Board[] = [0, 1, 2, 3].map((i) => ({ size: [100, 12, 5], at: [-10, i * 17, 8] }));
  const { items, on } = scene([...rails, ...over], page(0, 0, 44, 30));
  return [...items, ...pointer([47, 5], on([86, 57, 13])), words(48, 6, say("slat", "latte"), "start")];
};

const lies: Teaching = (say) => [
  ...scene([{ size: [70, 26, 9] }], page(0, 12, 21, 24)).items,
  ...scene([{ size: [70, 26, 9], lies: "on edge" }], page(25, 8, 46, 25)).items,
  ...scene([{ size: [70, 26, 9], lies: "upright" }], page(52, 0, 62, 25)).items,
  words(10, 30.4, say("flat", "à plat")),
  words(35, 30.4, say("on edge", "sur chant")),
  words(57.5, 30.4, say("upright", "debout")),
];

const ROW = [2, 22, 42];
const onCenter: Teaching = (say) => [
  ...ROW.map((x) => box(x, 9, x + 8, 23)),
  dash([6, 6], [6, 26]),
  dash([26, 6], [26, 26]),
  ...measure([6, 7], [26, 7], [0, -1], 3, say("on center", "entraxe")),
  ...measure([30, 23], [42, 23], [0, 1], 5, say("apart", "jour")),
];

const spread: Teaching = (say) => [
  box(0, 6, 60, 10, "pale"),
  ...[0, 18, 36, 54].map((x) => box(x, 10, x + 6, 22)),
  ...[6, 24, 42].flatMap((x) => [
    ...arrow([x + 6, 16], [x + 0.4, 16]),
    ...arrow([x + 6, 16], [x + 11.6, 16]),
  ]),
  words(30, 28, say("all gaps alike", "tous les jours pareils")),
];

const tight: Teaching = (say) => [
  ...[0, 14, 28].map((x) => box(x, 6, x + 14, 14)),
  box(46, 6, 60, 14),
  box(63, 6, 77, 14),
  words(21, 21, say("tight", "jointif")),
  words(61.5, 21, say("with a gap", "avec un jour")),
];

const flush: Teaching = (say) =>
  (
    [
      [0, 0, say("flush", "affleure")],
      [26, 5, say("inset", "en retrait")],
      [52, -5, say("overhang", "débord")],
    ] as const
  ).flatMap(([x, step, said]) => [
    box(x + 6, 8, x + 18, 26, "pale"),
    box(x + step + 6, 3, x + 18, 8),
    dash([x + 6, 0], [x + 6, 29]),
    words(x + 10, 33.4, said),
  ]);

const proud: Teaching = (say) => [
  box(0, 12, 56, 24),
  shape(
    [
      [12, 9.6],
      [20, 9.6],
      [17, 12],
      [15, 12],
    ],
    "gray",
  ),
  ...pointer([26, 6], [19, 10]),
  words(27, 7, say("proud", "en saillie"), "start"),
  shape(
    [
      [40, 12],
      [48, 12],
      [45, 14.4],
      [43, 14.4],
    ],
    "gray",
  ),
  words(44, 30, say("flush", "affleure")),
  dash([-2, 12], [58, 12]),
];

const centered: Teaching = (say) => [
  box(0, 12, 60, 18, "pale"),
  box(20, 5, 40, 12),
  dash([30, 2], [30, 21]),
  ...measure([0, 18], [20, 18], [0, 1], 5, say("same", "égal")),
  ...measure([40, 18], [60, 18], [0, 1], 5, say("same", "égal")),
];

const diagonals: Teaching = (say) => [
  shape([
    [0, 2],
    [26, 2],
    [26, 24],
    [0, 24],
  ]),
  thin([0, 2], [26, 24]),
  thin([26, 2], [0, 24]),
  words(13, 30, say("equal: square", "égales, d’équerre")),
  shape([
    [46, 2],
    [70, 2],
    [64, 24],
    [40, 24],
  ]),
  thin([46, 2], [64, 24]),
  thin([70, 2], [40, 24]),
  words(55, 30, say("unequal", "inégales")),
];

const plumb: Teaching = (say) => [
  box(8, 2, 16, 28, "pale"),
  stroke([22, 2], [22, 20]),
  shape(
    [
      [20.5, 20],
      [23.5, 20],
      [23.5, 23],
      [22, 26],
      [20.5, 23],
    ],
    "gray",
  ),
  stroke([16, 2], [24, 2]),
  words(14, 33.4, say("plumb", "d’aplomb")),
  box(34, 18, 66, 22, "pale"),
  box(38, 12.5, 62, 18),
  box(46, 13.6, 54, 16.6),
  shape(
    [
      [48.6, 14.4],
      [51.4, 14.4],
      [51.4, 15.8],
      [48.6, 15.8],
    ],
    "gray",
    0.15,
  ),
  words(50, 28, say("level", "de niveau")),
];

const pairs: Teaching = (say) => [
  shape([
    [0, 22],
    [0, 6],
    [16, 6],
    [24, 22],
  ]),
  box(4, 14, 8, 18, "gray"),
  shape([
    [64, 22],
    [64, 6],
    [48, 6],
    [40, 22],
  ]),
  box(56, 14, 60, 18, "gray"),
  dash([32, 2], [32, 26]),
  words(12, 29, say("left", "gauche")),
  words(52, 29, say("right", "droite")),
];

const crossing: Teaching = (say) => [
  box(22, 0, 36, 32),
  box(0, 10, 54, 22),
  dash([22, 10], [22, 22]),
  dash([36, 10], [36, 22]),
  ...waste(22, 10, 36, 22),
  ...pointer([41, 4.6], [33, 13]),
  words(42, 5.6, say("crossing", "croisement"), "start"),
];

export const PIECE_DRAWINGS = {
  batten,
  ledger,
  cleat,
  frame,
  brace,
  slats,
  lies,
  "on-center": onCenter,
  spread,
  tight,
  flush,
  proud,
  centered,
  diagonals,
  plumb,
  pairs,
  crossing,
};
