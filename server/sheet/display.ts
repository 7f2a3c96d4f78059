/**
 * The display list: a drawing as paths and texts on a page, in millimetres of paper from its upper left corner. It
 * feeds SVG, and a PDF writer can read the same list. Items are painted in order.
 */
import { oneLine } from "./escape";

export type Layer =
  /** Outline of the board or sheet. */
  | "wood"
  /** A piece's own rectangle, for pointing at; it has no stroke of its own where the saw lines are drawn. */
  | "piece"
  /** Where the saw goes through. */
  | "cut"
  /** The waste side of a saw line. */
  | "kerf"
  | "waste"
  | "bad"
  /** The tape's edge and graduations. */
  | "tape"
  /** A running mark: its tick and its text. */
  | "mark"
  | "leader"
  | "label"
  /** A face of a built piece, for its tint and for pointing at. */
  | "face"
  /** Lines of the built thing, those that other wood hides, and the way a piece was moved from its place. */
  | "edge"
  | "hidden"
  | "trail"
  /** A screw's head. */
  | "screw"
  /** The ring around a piece's mark, and the mark. */
  | "balloon"
  /** Overall measures: their lines and texts. */
  | "dimension";

/** White, black, two light tints for faces turned from the light, what is new in a step, and what is pointed out. */
export type Fill = "none" | "paper" | "ink" | "pale" | "gray" | "dark" | "marked";

/** Line weights in mm: outline and marks, inner lines, thin lines. */
export const OUTLINE = 0.4;
export const INNER = 0.22;
export const THIN = 0.15;

/** Height of type in mm: 11 points. */
export const TYPE = 3.9;

export type Point = readonly [x: number, y: number];

export interface PathItem {
  readonly kind: "path";
  readonly layer: Layer;
  /** Identity of the piece it shows, `leg / 1`. */
  readonly piece?: string;
  /** Lines drawn in one go, each from point to point. */
  readonly strokes: readonly (readonly Point[])[];
  readonly closed: boolean;
  /** Stroke in mm; 0 for none. */
  readonly weight: number;
  readonly fill: Fill;
}

export interface TextItem {
  readonly kind: "text";
  readonly layer: Layer;
  readonly piece?: string;
  /** Where its baseline begins, has its middle, or ends. */
  readonly x: number;
  readonly y: number;
  readonly anchor: "start" | "middle" | "end";
  readonly text: string;
  /** Height of type in mm. */
  readonly size: number;
  readonly bold: boolean;
  /** Reads from the foot of the page upwards. */
  readonly upright: boolean;
  /** A white edge under the letters, so that lines behind do not cross them. */
  readonly halo: boolean;
}

export type Item = PathItem | TextItem;

export interface Drawing {
  /** What it shows, in words, for who cannot see it. */
  readonly title: string;
  readonly width: number;
  readonly height: number;
  /** mm of wood for one of paper, where it is one scale. */
  readonly scale?: number;
  readonly items: readonly Item[];
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export function line(layer: Layer, weight: number, ...points: readonly Point[]): PathItem {
  return lines(layer, weight, [points]);
}

/** Many lines as one item. */
export function lines(layer: Layer, weight: number, strokes: PathItem["strokes"]): PathItem {
  return { kind: "path", layer, strokes, closed: false, weight, fill: "none" };
}

export function rectangle(layer: Layer, weight: number, box: Box, fill: PathItem["fill"]): PathItem {
  const { left, top, right, bottom } = box;
  const points: Point[] = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
  return { kind: "path", layer, strokes: [points], closed: true, weight, fill };
}

type TextStyle = Partial<Pick<TextItem, "anchor" | "bold" | "upright" | "halo" | "piece">>;

/** A text on one line at the drawing's type size. */
export function text(layer: Layer, x: number, y: number, words: string, style: TextStyle = {}): TextItem {
  const plain = { anchor: "start", bold: false, upright: false, halo: false } as const;
  return { kind: "text", layer, x, y, text: oneLine(words), size: TYPE, ...plain, ...style };
}

/** Rises above and falls below the baseline, as a share of the type's height. */
const ASCENT = 0.8;
const DESCENT = 0.22;

/** The space an item takes: a path's points, a text's estimated letters. */
export function boxOf(item: Item): Box {
  if (item.kind === "path") {
    const points = item.strokes.flat();
    const xs = points.map(([x]) => x);
    const ys = points.map(([, y]) => y);
    return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
  }
  const width = textWidth(item.text, item.size, item.bold);
  const before = item.anchor === "start" ? 0 : item.anchor === "middle" ? width / 2 : width;
  const [up, down] = [ASCENT * item.size, DESCENT * item.size];
  const { x, y } = item;
  return item.upright
    ? { left: x - up, right: x + down, top: y + before - width, bottom: y + before }
    : { left: x - before, right: x - before + width, top: y - up, bottom: y + down };
}

/** How wide a page must be for these items, in whole mm, with so much free at its right edge. */
export const widthFor = (items: readonly Item[], free: number): number =>
  Math.ceil(items.reduce((right, item) => Math.max(right, boxOf(item).right), 0) + free);

/**
 * Width in mm of a text in a sans font of that height, on the generous side: the letters' widths are those of a wide
 * face (DejaVu Sans, rounded up), since the reader's font is not known.
 */
export function textWidth(words: string, size: number, bold = false): number {
  let ems = 0;
  for (const c of words) ems += emsOf(c);
  return ems * size * (bold ? BOLDER : 1);
}

/** The text, or as much of it as fits with an ellipsis; empty when not even that does. */
export function shortened(words: string, size: number, width: number, bold = false): string {
  if (textWidth(words, size, bold) <= width) return words;
  const most = width / (size * (bold ? BOLDER : 1)) - emsOf(ELLIPSIS);
  let [ems, length, kept] = [0, 0, 0];
  for (const c of words) {
    ems += emsOf(c);
    if (ems > most) break;
    length += c.length;
    if (c.trim() !== "") kept = length;
  }
  return kept === 0 ? "" : words.slice(0, kept) + ELLIPSIS;
}

const ELLIPSIS = "…";

const BOLDER = 1.12;

function emsOf(c: string): number {
  if (c > "\u{ffff}") return 1.4;
  if (c > "~") return 1.05;
  return NARROW.find(([letters]) => letters.includes(c))?.[1] ?? (/[A-Z+<>=~#^w]/.test(c) ? 0.84 : 0.64);
}

/** Letters narrower or wider than most, in ems. */
const NARROW: readonly (readonly [letters: string, ems: number])[] = [
  ["ijl'", 0.31],
  [" .,:;/|\\", 0.36],
  ["ftr-()[]!I", 0.44],
  ['"', 0.47],
  ["csz", 0.56],
  ["kvxy", 0.6],
  ["mMW@%&", 1.02],
];
