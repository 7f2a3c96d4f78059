/** From the picture of the solids, in mm of wood, to paths on the page, in mm of paper. */
import { dot, unit, type Vec3 } from "../../solid/vector";
import { type Line, lightened, type Picture, type Point2 } from "../../solid/view";
import { type Fill, INNER, type Item, lines, OUTLINE, type PathItem, type Point, THIN } from "../display";
import { DASHED, dashed } from "./dashes";

/** mm of wood for one of paper, and the wood's point that lies at the page's origin. */
export interface Fit {
  readonly scale: number;
  readonly left: number;
  readonly top: number;
}

export const onPaper = ({ scale, left, top }: Fit, [x, y]: Point2 | Vec3): Point => [
  (x - left) / scale,
  (top - y) / scale,
];

/** Tinted faces, then lines, the thinnest first. */
export function paths(picture: Picture, fit: Fit): readonly Item[] {
  const drawn = lightened(picture.lines, CROWDED * fit.scale).filter((line) => isWorth(line, fit));
  const hidden = picture.hidden.filter((line) => isWorth(line, fit));
  const strokes = (list: readonly Line[]): PathItem["strokes"] =>
    joined(list.map(({ from, to }) => [onPaper(fit, from), onPaper(fit, to)]));
  const layers = [
    lines(
      "hidden",
      THIN,
      hidden.flatMap(({ from, to }) => dashed([onPaper(fit, from), onPaper(fit, to)], DASHED)),
    ),
    lines("edge", INNER, strokes(drawn.filter(({ outline }) => !outline))),
    lines("edge", OUTLINE, strokes(drawn.filter(({ outline }) => outline))),
  ];
  return [...faces(picture, fit), ...layers.filter((item) => item.strokes.length > 0)];
}

function faces(picture: Picture, fit: Fit): readonly Item[] {
  return picture.faces.map(({ id, points, normal }) => ({
    kind: "path",
    layer: "face",
    piece: id,
    strokes: [points.map((p) => onPaper(fit, p))],
    closed: true,
    weight: 0,
    fill: tint(normal),
  }));
}

/** Lines that go on where another ends become one stroke. */
function joined(strokes: readonly (readonly Point[])[]): readonly (readonly Point[])[] {
  const key = ([x, y]: Point): string => `${Math.round(x * 100)} ${Math.round(y * 100)}`;
  const from = new Map<string, number[]>();
  strokes.forEach(([p], i) => {
    const list = from.get(key(p!));
    if (list) list.push(i);
    else from.set(key(p!), [i]);
  });
  const used = new Set<number>();
  return strokes.flatMap((stroke, i) => {
    if (used.has(i)) return [];
    used.add(i);
    const chain = [...stroke];
    for (;;) {
      const next = from.get(key(chain.at(-1)!))?.find((j) => !used.has(j));
      if (next === undefined) return [chain];
      used.add(next);
      chain.push(strokes[next]![1]!);
    }
  });
}

/** White towards the viewer and towards the light, which falls from the upper left. */
function tint(normal: Vec3): Fill {
  const lit = dot(normal, LIGHT);
  if (normal[2] > FULL || lit > 0.6) return "paper";
  return lit > 0 ? "pale" : "gray";
}
const LIGHT = unit([-0.4, 0.8, 0.45])!;
/** Cosine to the line of sight beyond which a face is seen flat on. */
const FULL = 0.97;

const isWorth = ({ from, to }: Line, { scale }: Fit): boolean =>
  Math.hypot(to[0] - from[0], to[1] - from[1]) > LEAST_STROKE * scale;

/** mm of paper. */
const LEAST_STROKE = 0.5;
/** Outlines nearer to another line than this on paper are thin, in mm. */
const CROWDED = 0.9;
/** Lines nearer than this on paper are drawn as one, in mm. */
export const ONE_LINE = 0.35;
