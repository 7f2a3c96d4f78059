/** A display list as SVG: the page in millimetres, one element per item, the layer as its class, the piece it shows beside. */
import type { Drawing, Fill, Item, Layer, PathItem, TextItem } from "./display";
import { element, type Markup, markupText } from "./markup";

/** The `svg` element, to stand in a page or alone. */
export function drawingSvg(drawing: Drawing, look: Look = {}): Markup {
  const [width, height] = [number(drawing.width), number(drawing.height)];
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      class: "drawing",
      role: "img",
      "aria-label": drawing.title,
      width: `${width}mm`,
      height: `${height}mm`,
      viewBox: `0 0 ${width} ${height}`,
      "font-family": "sans-serif",
    },
    drawing.items.map((item) => itemSvg(item, look)),
  );
}

/** The same as text: a whole SVG file. */
export function svgText(drawing: Drawing, look: Look = {}): string {
  return `${markupText(drawingSvg(drawing, look))}\n`;
}

/** What a drawing says beside its lines. */
export interface Look {
  /** The line of the plan to which a click on an item leads. */
  readonly lineOf?: (item: Item) => number | undefined;
}

function itemSvg(item: Item, { lineOf }: Look): Markup {
  const line = lineOf?.(item);
  return item.kind === "path" ? pathSvg(item, line) : textSvg(item, line);
}

function pathSvg(
  { layer, piece, strokes, closed, weight, fill }: PathItem,
  line: number | undefined,
): Markup {
  let d = "";
  for (const points of strokes) {
    let pen = "M";
    for (const [x, y] of points) {
      d += `${pen}${number(x)} ${number(y)}`;
      pen = "L";
    }
  }
  return element("path", {
    class: layer,
    "data-piece": piece,
    "data-line": line,
    d: closed ? `${d}Z` : d,
    fill: COLOURS[fill],
    ...strokeOf(layer, weight, fill),
    "stroke-linecap": ROUND.has(layer) ? "round" : undefined,
    "stroke-linejoin": fill === "marked" ? "round" : undefined,
  });
}

export const COLOURS: Readonly<Record<Fill, string>> = {
  none: "none",
  paper: "#fff",
  ink: "#000",
  pale: "#f4f4f4",
  gray: "#e6e6e6",
  dark: "#9c9c9c",
  marked: "#ffe48a",
};

/** Faces meet without a seam: each is drawn a little over its edge in its own tint. */
function strokeOf(layer: Layer, weight: number, fill: Fill): Record<string, string> {
  if (weight > 0) return { stroke: "#000", "stroke-width": number(weight) };
  return layer === "face" ? { stroke: COLOURS[fill], "stroke-width": "0.1" } : { stroke: "none" };
}

/** Layers whose lines end round. */
export const ROUND: ReadonlySet<Layer> = new Set<Layer>(["leader", "edge", "screw"]);

function textSvg(
  { layer, piece, x, y, anchor, text, size, bold, upright, halo }: TextItem,
  line: number | undefined,
): Markup {
  const place = { x: number(x), y: number(y) };
  const attributes = {
    class: layer,
    "data-piece": piece,
    "data-line": line,
    ...place,
    transform: upright ? `rotate(-90 ${place.x} ${place.y})` : undefined,
    "font-size": number(size),
    "font-weight": bold ? "bold" : undefined,
    "text-anchor": anchor === "start" ? undefined : anchor,
    fill: "#000",
    ...(halo && { stroke: "#fff", "stroke-width": 0.7, "stroke-linejoin": "round", "paint-order": "stroke" }),
  };
  return element("text", attributes, text);
}

/** To a hundredth of a millimetre, without an exponent. */
function number(mm: number): string {
  const hundredths = Math.round(Math.abs(mm) * 100);
  if (!Number.isSafeInteger(hundredths)) return String(Math.round(mm) || 0);
  const [whole, rest] = [Math.floor(hundredths / 100), hundredths % 100];
  const sign = mm < 0 && hundredths > 0 ? "-" : "";
  if (rest === 0) return `${sign}${whole}`;
  return rest % 10 === 0 ? `${sign}${whole}.${rest / 10}` : `${sign}${whole}.${rest < 10 ? "0" : ""}${rest}`;
}
