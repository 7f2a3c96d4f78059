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

/** From a point to a line between two others. */
export function distanceTo([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const [dx, dy] = [bx - ax, by - ay];
  const long = dx * dx + dy * dy;
  const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / long));
  return Math.hypot(x - ax - t * dx, y - ay - t * dy);
}

/** How far two outlines stand apart; 0 where they touch, cross, or one lies in the other. */
export function gapBetween(one: readonly Point[], other: readonly Point[]): number {
  const [edges, others] = [edgesOf(one), edgesOf(other)];
  const meet =
    one.some((p) => covers(other, p)) ||
    other.some((p) => covers(one, p)) ||
    edges.some(([a, b]) =>
      others.some(([c, d]) => side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0),
    );
  if (meet) return 0;
  const from = (points: readonly Point[], lines: readonly (readonly [Point, Point])[]): number =>
    Math.min(...points.flatMap((p) => lines.map(([a, b]) => distanceTo(p, a, b))));
  return Math.min(from(one, others), from(other, edges));
}

const edgesOf = (points: readonly Point[]): readonly (readonly [Point, Point])[] =>
  points.map((p, i) => [p, points[(i + 1) % points.length]!]);
const side = ([ax, ay]: Point, [bx, by]: Point, [x, y]: Point): number =>
  (bx - ax) * (y - ay) - (by - ay) * (x - ax);
