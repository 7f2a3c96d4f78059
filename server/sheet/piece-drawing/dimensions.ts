/** Measures over all: extension lines off the object, a line between oblique ticks, the text in a gap of the line. */
import { type Item, lines, OUTLINE, type Point, shortened, THIN, TYPE, text, textWidth } from "../display";
import { along, heading, middle, reach, type Stroke } from "./plane";

export interface Measure {
  /** The ends of what is measured, on the page. */
  readonly from: Point;
  readonly to: Point;
  /** Direction of the extension lines, unit length, and how far out the line stands, in mm. */
  readonly out: Point;
  readonly off: number;
  readonly words: string;
}

export function drawMeasure({ from, to, out, off, words }: Measure): readonly Item[] {
  const [a, b] = [along(from, out, off), along(to, out, off)];
  const way = heading(a, b);
  const said = shortened(words, TYPE, LONGEST);
  const upright = Math.abs(way[0]) < 0.02;
  const size: Point = upright ? [TYPE, textWidth(said, TYPE)] : [textWidth(said, TYPE), TYPE];
  const gap = gapFor(way, size);
  const fits = 2 * gap + LEAST_LINE < reach(a, b);
  const centre = fits ? middle(a, b) : along(middle(a, b), out, beside(out, size));
  const strokes: Stroke[] = [from, to].map((p) => [along(p, out, CLEAR), along(p, out, off + OVER)]);
  const [start, end] = [along(a, way, -OVER), along(b, way, OVER)];
  if (fits) strokes.push([start, along(centre, way, -gap)], [along(centre, way, gap), end]);
  else strokes.push([start, end]);
  return [
    lines("dimension", THIN, strokes),
    lines(
      "dimension",
      OUTLINE,
      [a, b].map((p) => tick(p, way, out)),
    ),
    upright
      ? text("dimension", centre[0] + BASE, centre[1], said, { anchor: "middle", upright, halo: true })
      : text("dimension", centre[0], centre[1] + BASE, said, { anchor: "middle", halo: true }),
  ];
}

/** Half the gap of a line for a text of that width and height about its middle. */
const gapFor = ([x, y]: Point, [wide, high]: Point): number =>
  Math.min(wide / 2 / Math.max(Math.abs(x), 1e-9), high / 2 / Math.max(Math.abs(y), 1e-9)) + AIR;

/** How far out a text stands that finds no room in its line. */
const beside = ([x, y]: Point, [wide, high]: Point): number =>
  (Math.abs(x) * wide + Math.abs(y) * high) / 2 + AIR;

/** A short stroke that slants between the line and its extension lines. */
function tick(p: Point, way: Point, out: Point): Stroke {
  const slant = heading(out, way);
  return [along(p, slant, -TICK), along(p, slant, TICK)];
}

/** mm of paper: between object and extension line, past the crossing, half a tick, around a text, the least line beside it, the longest text. */
const CLEAR = 1.2;
const OVER = 1.2;
const TICK = 1.1;
const AIR = 1;
const LEAST_LINE = 6;
const LONGEST = 60;
/** From the middle of a text's height to its base line. */
const BASE = 0.36 * TYPE;
