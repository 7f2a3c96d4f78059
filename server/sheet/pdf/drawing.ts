/** A display list on a page: millimetres of the drawing are millimetres of paper, times a scale. */
import type { Drawing, Item, PathItem, TextItem } from "../display";
import { COLOURS, ROUND } from "../svg";
import { trimmed } from "./letters";
import { CONDENSED, MM } from "./paper";
import type { Pen } from "./pen";

/** Paints it with its upper left corner there, in points; what reaches over its edges is cut off. */
export function paintDrawing(pen: Pen, drawing: Drawing, left: number, top: number, scale: number): void {
  const { doc } = pen;
  doc
    .save()
    .translate(left, top)
    .scale(MM * scale);
  doc.rect(0, 0, rounded(drawing.width), rounded(drawing.height)).clip().miterLimit(4);
  for (const item of drawing.items) {
    if (!isDrawable(item)) continue;
    if (item.kind === "path") paintPath(pen, item);
    else paintText(pen, item);
  }
  doc.restore();
}

/** Faces meet without a seam: each is drawn a little over its edge in its own tint. Millimetres. */
const SEAM = 0.1;
const HALO = 0.7;
const BLACK = "#000000";
const WHITE = "#ffffff";

function paintPath({ doc }: Pen, { layer, strokes, closed, weight, fill }: PathItem): void {
  const tint = fill === "none" ? undefined : COLOURS[fill];
  const stroke = weight > 0 ? BLACK : layer === "face" ? tint : undefined;
  if (!stroke && !tint) return;
  doc.save();
  if (stroke) doc.lineWidth(weight > 0 ? rounded(weight) : SEAM);
  if (ROUND.has(layer)) doc.lineCap("round");
  if (fill === "marked") doc.lineJoin("round");
  for (const points of strokes)
    for (const [i, [x, y]] of points.entries()) doc[i === 0 ? "moveTo" : "lineTo"](rounded(x), rounded(y));
  // As in SVG, only the last of several lines is closed.
  if (closed) doc.closePath();
  if (stroke && tint) doc.fillAndStroke(tint, stroke);
  else if (tint) doc.fill(tint);
  else doc.stroke(stroke);
  doc.restore();
}

function paintText(pen: Pen, { x, y, anchor, text, size, bold, upright, halo }: TextItem): void {
  const { doc } = pen;
  const words = trimmed(text);
  if (words === "") return;
  const style = { size, bold };
  const width = pen.letters.width(words, style) / CONDENSED;
  const start = anchor === "start" ? 0 : anchor === "middle" ? -width / 2 : -width;
  doc.save().translate(rounded(x), rounded(y));
  if (upright) doc.rotate(-90);
  doc.translate(start, 0);
  if (halo) paintHalo(pen, words, style);
  pen.text(0, 0, words, style, 1);
  doc.restore();
}

/** The edge is drawn from outlines, so that its letters are not read twice. */
function paintHalo(pen: Pen, words: string, style: { size: number; bold: boolean }): void {
  const { doc } = pen;
  doc.save().lineWidth(HALO).lineJoin("round");
  for (const letter of pen.outlines(words, style)) {
    let [px, py] = [0, 0];
    for (const { command, args } of letter) {
      const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = args;
      if (command === "moveTo") doc.moveTo(a, b);
      else if (command === "lineTo") doc.lineTo(a, b);
      // A curve of one control point as one of two.
      else if (command === "quadraticCurveTo")
        doc.bezierCurveTo(
          px + (2 * (a - px)) / 3,
          py + (2 * (b - py)) / 3,
          c + (2 * (a - c)) / 3,
          d + (2 * (b - d)) / 3,
          c,
          d,
        );
      else if (command === "bezierCurveTo") doc.bezierCurveTo(a, b, c, d, e, f);
      else doc.closePath();
      if (args.length > 1) [px, py] = [args.at(-2)!, args.at(-1)!];
    }
  }
  doc.stroke(WHITE).restore();
}

/** To a hundredth of a millimetre. */
const rounded = (mm: number): number => Math.round(mm * 100) / 100;

/** Farther out nothing is drawn, in millimetres. */
const FARTHEST = 1e5;
const isNear = (mm: number): boolean => Math.abs(mm) < FARTHEST;

function isDrawable(item: Item): boolean {
  if (item.kind === "text") return isNear(item.x) && isNear(item.y) && item.size > 0 && item.size < FARTHEST;
  return (
    isNear(item.weight) && item.strokes.every((points) => points.every(([x, y]) => isNear(x) && isNear(y)))
  );
}
