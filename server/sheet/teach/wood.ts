/** Drawings of wood: the sides of a board, its grain, its sizes, and what water does to it. */
import { arrow, box, dash, fibers, measure, pointer, round, shape, thin, words } from "./pen";
import { page, scene } from "./solids";
import type { Teaching } from "./teaching";

const faces: Teaching = (say) => {
  const { items, on } = scene([{ size: [110, 48, 20] }], page(14, 6, 50, 26));
  return [
    ...items,
    ...pointer([40, 4], on([60, 28, 20])),
    words(41, 3.4, say("face", "face"), "start"),
    ...pointer([48, 27], on([75, 0, 10])),
    words(49, 28.4, say("edge", "chant"), "start"),
    ...pointer([11, 25], on([0, 24, 10])),
    words(10, 27, say("end", "bout"), "end"),
  ];
};

const grain: Teaching = (say) => {
  const { items, on } = scene([{ size: [110, 48, 22] }], page(12, 5, 52, 27));
  const lines = [8, 16, 24, 32, 40].map((y) => thin(on([4, y, 22]), on([106, y, 22])));
  const front = [7, 14].map((z) => thin(on([4, 0, z]), on([106, 0, z])));
  const rings = [10, 18, 27, 36].map((r) =>
    thin(
      ...Array.from({ length: 9 }, (_, i) => {
        const y = 4 + i * 5;
        return on([0, y, Math.max(1, Math.min(21, r - 14 + ((y - 24) * (y - 24)) / 60))]);
      }),
    ),
  );
  return [
    ...items,
    ...lines,
    ...front,
    ...rings,
    ...arrow([34, 3.4], [50, 3.4]),
    words(33, 4.4, say("long grain", "fil"), "end"),
    words(20, 33, say("end grain", "bois de bout")),
    ...pointer([17, 29.6], on([0, 30, 10])),
  ];
};

/** 2x4: 2 and 4 inches by name, 1-1/2 and 3-1/2 when dressed dry (PS 20). */
const nominal: Teaching = (say) => [
  dash([2, 2], [46, 2]),
  dash([46, 2], [46, 24]),
  dash([46, 24], [2, 24]),
  dash([2, 24], [2, 2]),
  box(4.8, 4.8, 43.2, 21.2, "pale"),
  ...measure([4.8, 21.2], [43.2, 21.2], [0, 1], 8, `3-1/2"`),
  ...measure([43.2, 4.8], [43.2, 21.2], [1, 0], 8, `1-1/2"`),
  words(24, 14.2, say("actual", "réel")),
  words(24, -0.6, say("by name 2x4", "nommé 2x4")),
];

const dressed: Teaching = (say) => [
  shape([
    [0, 8],
    [4, 7.4],
    [8, 8.4],
    [13, 7.5],
    [18, 8.5],
    [24, 7.6],
    [28, 8.2],
    [28, 24],
    [23, 24.7],
    [18, 23.7],
    [12, 24.6],
    [6, 23.8],
    [0, 24.4],
  ]),
  fibers(1, 9, 27, 23),
  box(36, 9.5, 64, 22.5),
  fibers(37, 10, 63, 22),
  words(14, 30, say("rough", "brut")),
  words(50, 30, say("dressed", "raboté")),
];

const heartwood: Teaching = (say) => [
  round(15, 15, 15, "paper", 0.4),
  round(15, 15, 14, "paper"),
  round(15, 15, 9.5, "gray"),
  ...[2.5, 4.8, 7.2].map((r) => round(15, 15, r, "none", 0.15)),
  round(15, 15, 11.8, "none", 0.15),
  ...pointer([34, 8], [25.3, 8.6]),
  words(35, 9, say("sapwood", "aubier"), "start"),
  ...pointer([34, 17], [20, 16]),
  words(35, 18, say("heartwood", "bois de cœur"), "start"),
  ...pointer([34, 26], [25.5, 25.3]),
  words(35, 27, say("bark", "écorce"), "start"),
];

const treated: Teaching = (say) => [
  box(0, 6, 34, 26, "gray"),
  box(6, 11, 28, 21),
  ...pointer([38, 9], [31, 9]),
  words(39, 10, say("preservative", "produit"), "start"),
  ...pointer([38, 19], [20, 16]),
  words(39, 20, say("bare wood", "bois nu"), "start"),
  words(17, 31, say("sawn end", "bout scié")),
];

const moisture: Teaching = (say) => [
  box(0, 8, 26, 19),
  fibers(0, 8, 26, 19),
  words(13, 26, say("dry", "sec")),
  box(38, 6, 64.3, 21),
  fibers(38, 6, 64.3, 21),
  words(51, 27, say("wet: wider", "mouillé, plus large")),
  ...arrow([46, 4.6], [46, 0.6]),
];

const stock: Teaching = (say) => [
  box(0, 0, 40, 7),
  box(0, 9.5, 48, 16.5),
  box(0, 19, 60, 26),
  words(20, 4.8, "8'"),
  words(24, 14.3, "10'"),
  words(30, 23.8, "12'"),
  words(30, 31.6, say("lengths at the yard", "longueurs vendues")),
];

const plywood: Teaching = (say) => {
  const { items, on } = scene(
    [0, 1, 2].map((i) => ({ size: [110, 60, 8] as const, at: [0, 0, i * 8] as const })),
    page(4, 3, 44, 28),
  );
  return [
    ...items,
    ...[12, 24, 36, 48].map((y) => thin(on([4, y, 24]), on([106, y, 24]))),
    ...[2, 6, 18, 22].map((z) => thin(on([3, 0, z]), on([107, 0, z]))),
    ...Array.from({ length: 12 }, (_, i) => thin(on([6 + i * 9, 0, 9.5]), on([6 + i * 9, 0, 14.5]))),
    ...pointer([47, 27], on([96, 0, 12])),
    words(48, 28, say("crossed", "croisé"), "start"),
  ];
};

const cup: Teaching = (say) => {
  const bow = (y: number): [number, number][] =>
    Array.from({ length: 13 }, (_, i) => [34 + i * 2.4, y + (i - 6) ** 2 / -9]);
  return [
    box(0, 12, 28, 18),
    words(14, 26, say("flat", "plane")),
    shape([...bow(15), ...bow(21).reverse()]),
    words(48.4, 27.5, say("cupped", "tuilée")),
    dash([34, 11], [62.8, 11]),
    words(48.4, 8, say("dry side", "côté sec")),
  ];
};

const split: Teaching = (say) => [
  box(0, 8, 56, 22),
  fibers(0, 8, 56, 22),
  round(50, 15, 1.6, "ink", 0),
  shape(
    [
      [56, 14.2],
      [50, 14.6],
      [36, 15],
      [50, 15.4],
      [56, 15.8],
    ],
    "ink",
    0,
  ),
  ...pointer([42, 4.5], [46, 14.2]),
  words(41, 4.6, say("split", "fente"), "end"),
  ...measure([50, 22], [56, 22], [0, 1], 5, say("too near", "trop près")),
];

export const WOOD_DRAWINGS = {
  faces,
  grain,
  nominal,
  dressed,
  heartwood,
  treated,
  moisture,
  stock,
  plywood,
  cup,
  split,
};
