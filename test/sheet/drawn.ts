/** Reads drawings of the built thing: their faces, lines, texts and balloons. */
import {
  type Box,
  boxOf,
  type Drawing,
  type PathItem,
  type Point,
  type TextItem,
} from "../../server/sheet/display";

export const paths = (drawing: Drawing, layer: string): readonly PathItem[] =>
  drawing.items.filter((item): item is PathItem => item.kind === "path" && item.layer === layer);
export const texts = (drawing: Drawing): readonly TextItem[] =>
  drawing.items.filter((item): item is TextItem => item.kind === "text");
export const said = (drawing: Drawing): string =>
  texts(drawing)
    .map(({ text }) => text)
    .join(" ");
export const rings = (drawing: Drawing): readonly Box[] => paths(drawing, "balloon").map(boxOf);
export const marks = (drawing: Drawing): readonly string[] =>
  texts(drawing).flatMap(({ layer, text }) => (layer === "balloon" ? [text] : []));
export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
export const objectBox = (drawing: Drawing): Box => {
  const boxes = paths(drawing, "face").map(boxOf);
  return {
    left: Math.min(...boxes.map((b) => b.left)),
    top: Math.min(...boxes.map((b) => b.top)),
    right: Math.max(...boxes.map((b) => b.right)),
    bottom: Math.max(...boxes.map((b) => b.bottom)),
  };
};
export const leaders = (drawing: Drawing): readonly (readonly [Point, Point])[] =>
  paths(drawing, "leader").flatMap(({ strokes, closed }) =>
    closed ? [] : [[strokes[0]![0]!, strokes[0]![1]!]],
  );

/** Whether an outline goes around a point. */
export function covers(points: readonly Point[], [x, y]: Point): boolean {
  let inside = false;
  points.forEach(([ax, ay], i) => {
    const [bx, by] = points[(i + 1) % points.length]!;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  });
  return inside;
}
