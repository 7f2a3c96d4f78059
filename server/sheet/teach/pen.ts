/** What the drawings that teach a word are drawn with: shapes, small letters, pointers and measures, in mm of paper. */
import {
  INNER,
  type Item,
  line,
  lines,
  OUTLINE,
  type PathItem,
  type Point,
  rectangle,
  type TextItem,
  THIN,
  text,
} from "../display";
import { DASHED, dashed } from "../piece-drawing/dashes";
import { drawMeasure } from "../piece-drawing/dimensions";
import { along, heading } from "../piece-drawing/plane";
import { hatched } from "../strokes";

/** Height of their type in mm. */
export const SMALL = 3.2;

export function words(x: number, y: number, said: string, anchor: TextItem["anchor"] = "middle"): TextItem {
  return { ...text("label", x, y, said, { anchor }), size: SMALL };
}

/** One under the other. */
export const wordLines = (
  x: number,
  y: number,
  said: readonly string[],
  anchor: TextItem["anchor"] = "middle",
): TextItem[] => said.map((one, i) => words(x, y + i * 4, one, anchor));

export const shape = (
  points: readonly Point[],
  fill: PathItem["fill"] = "paper",
  weight = OUTLINE,
): PathItem => ({ kind: "path", layer: "wood", strokes: [points], closed: true, weight, fill });

export const box = (
  left: number,
  top: number,
  right: number,
  bottom: number,
  fill: PathItem["fill"] = "paper",
  weight = OUTLINE,
): PathItem => rectangle("wood", weight, { left, top, right, bottom }, fill);

export const stroke = (...points: readonly Point[]): PathItem => line("edge", INNER, ...points);
export const thin = (...points: readonly Point[]): PathItem => line("edge", THIN, ...points);
export const dash = (from: Point, to: Point): PathItem => lines("hidden", THIN, dashed([from, to], DASHED));

/** Wood that is gone or of no use. */
export const waste = (left: number, top: number, right: number, bottom: number): PathItem[] => [
  ...hatched("waste", { left, top, right, bottom }, 1.3),
];

export function round(
  x: number,
  y: number,
  radius: number,
  fill: PathItem["fill"] = "none",
  weight = INNER,
): PathItem {
  const points = Array.from({ length: SIDES }, (_, i): Point => {
    const turn = (2 * i * Math.PI) / SIDES;
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
  });
  return { kind: "path", layer: "edge", strokes: [points], closed: true, weight, fill };
}

/** A circle is drawn with so many. */
const SIDES = 32;

/** A stretch of a circle, in degrees clockwise from the right. */
export function arc(x: number, y: number, radius: number, from: number, to: number): PathItem {
  const points = Array.from({ length: 13 }, (_, i): Point => {
    const turn = ((from + ((to - from) * i) / 12) * Math.PI) / 180;
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
  });
  return stroke(...points);
}

/** A line with a head at its end. */
export function arrow(from: Point, to: Point): PathItem[] {
  const way = heading(from, to);
  const aside: Point = [-way[1], way[0]];
  const foot = along(to, way, -HEAD);
  return [
    stroke(from, foot),
    {
      kind: "path",
      layer: "leader",
      strokes: [[to, along(foot, aside, HEAD / 3), along(foot, aside, -HEAD / 3)]],
      closed: true,
      weight: 0,
      fill: "ink",
    },
  ];
}
const HEAD = 2.2;

/** From a label to a dot on what it names. */
export const pointer = (from: Point, to: Point): PathItem[] => [
  line("leader", THIN, from, to),
  round(to[0], to[1], 0.5, "ink", 0),
];

/** A measure beside what it measures; `out` tells to which side. */
export function measure(from: Point, to: Point, out: Point, off: number, said: string): Item[] {
  return drawMeasure({ from, to, out, off, words: said }).map((item) =>
    item.kind === "text" ? { ...item, size: SMALL } : item,
  );
}

/** The fibers of a board as it lies. */
export const fibers = (left: number, top: number, right: number, bottom: number, count = 3): PathItem =>
  lines(
    "edge",
    THIN,
    Array.from({ length: count }, (_, i): Point[] => {
      const y = top + ((bottom - top) * (i + 1)) / (count + 1);
      const dent = i % 2 === 0 ? 0.5 : -0.4;
      return [
        [left + 1 + i, y],
        [left + (right - left) * 0.4, y + dent],
        [left + (right - left) * 0.7, y - dent],
        [right - 1, y],
      ];
    }),
  );

/** A screw from its head to its tip, seen from the side, its head's top at `head`. */
export function screw(head: Point, tip: Point, thread = 0.6): PathItem[] {
  const way = heading(head, tip);
  const side: Point = [-way[1], way[0]];
  const long = Math.hypot(tip[0] - head[0], tip[1] - head[1]);
  const at = (along_: number, off: number): Point => along(along(head, way, along_), side, off);
  const start = long * (1 - thread);
  const turns = Math.max(3, Math.floor((long - start) / 1.1));
  const ridges = Array.from({ length: turns }, (_, i): Point[] => {
    const y = start + ((long - 1.4 - start) * i) / turns;
    return [at(y, -1), at(y + 0.7, 1)];
  });
  return [
    shape(
      [
        at(0, -2),
        at(0, 2),
        at(1.6, 0.7),
        at(long - 1.6, 0.7),
        at(long, 0),
        at(long - 1.6, -0.7),
        at(1.6, -0.7),
      ],
      "pale",
      INNER,
    ),
    lines("screw", INNER, ridges),
  ];
}
