/** Ways to strike wood out on a drawing: crossed from corner to corner, or hatched. */
import { type Box, type Layer, lines, type PathItem, type Point, THIN } from "./display";

/** Crossed from corner to corner; a stretch too narrow for it on paper is left as it is. */
export function crossed(layer: Layer, { left, top, right, bottom }: Box): readonly PathItem[] {
  if (right - left < NARROWEST) return [];
  const down: readonly Point[] = [
    [left, top],
    [right, bottom],
  ];
  const up: readonly Point[] = [
    [left, bottom],
    [right, top],
  ];
  return [lines(layer, THIN, [down, up])];
}

/** Lines at 45 degrees, `step` mm apart measured along the page, kept inside the box. */
export function hatched(layer: Layer, { left, top, right, bottom }: Box, step: number): readonly PathItem[] {
  const [width, height] = [right - left, bottom - top];
  const count = Math.floor((width + height) / step);
  if (count === 0) return [];
  const strokes = Array.from({ length: count }, (_, i): readonly Point[] => {
    const d = (i + 1) * step;
    const from: Point = d <= height ? [left, top + d] : [left + d - height, bottom];
    const to: Point = d <= width ? [left + d, top] : [right, top + d - width];
    return [from, to];
  });
  return [lines(layer, THIN, strokes)];
}

/** mm of paper in which a cross can be seen. */
const NARROWEST = 0.7;
