/** A small turned drawing without measures and balloons, in which some pieces are pointed out by tint and outline. */
import { boundsOf } from "../../solid/contact";
import { pictureOf } from "../../solid/view";
import { laid } from "../../solid/view-flat";
import { type Box, boxOf, type Drawing, type Item, OUTLINE, type PathItem, rectangle } from "../display";
import { type Fit, ONE_LINE, paths } from "./paper";
import type { DrawnPiece } from "./pieces";
import { viewOf } from "./views";

/** The whole as it is seen small, in which pieces are then pointed out. */
export interface Small {
  readonly items: readonly Item[];
  readonly page: Box;
  readonly scale: number;
}

export function seenSmall(pieces: readonly DrawnPiece[]): Small {
  const view = viewOf("turned");
  const points = pieces.flatMap(({ cells }) => cells.flatMap((c) => c.vertices.map((v) => laid(v, view))));
  const { least, most } = boundsOf(points);
  const [wide, high] = [most[0] - least[0], most[1] - least[1]];
  const scale = Math.max(wide / WIDTH, high / HEIGHT, 1e-6);
  const fit: Fit = { scale, left: least[0] - MARGIN * scale, top: most[1] + MARGIN * scale };
  const items = paths(pictureOf(pieces, view, { within: ONE_LINE * scale }), fit);
  const page: Box = { left: 0, top: 0, right: wide / scale + 2 * MARGIN, bottom: high / scale + 2 * MARGIN };
  return { items, page, scale };
}

/** Only as many tints as the pointed out pieces need, so that it stays small as a file too. */
export function drawSmall(
  { items, page, scale }: Small,
  marked: ReadonlySet<string>,
  title: string,
): Drawing {
  const shown = [...pointedOut(items, marked), ...items.filter(({ layer }) => layer !== "face")];
  return {
    title,
    width: page.right,
    height: page.bottom,
    scale,
    items: [rectangle("wood", 0, page, "paper"), ...shown.map(bare)],
  };
}

/** The faces of these pieces, and those painted after them that may lie in front. */
function pointedOut(items: readonly Item[], marked: ReadonlySet<string>): readonly Item[] {
  const behind: Box[] = [];
  return items.flatMap((item): Item[] => {
    if (item.kind !== "path" || item.layer !== "face") return [];
    const box = boxOf(item);
    if (marked.has(item.piece ?? "")) {
      behind.push(box);
      return [{ ...item, fill: "marked", weight: POINTED_OUT }];
    }
    return behind.some((other) => overlap(box, other)) ? [{ ...item, fill: "paper" }] : [];
  });
}

/** Without the names of pieces, which nobody asks a picture for. */
function bare(item: Item): Item {
  if (item.kind === "text") return item;
  const { layer, strokes, closed, weight, fill }: PathItem = item;
  return { kind: "path", layer, strokes, closed, weight, fill };
}

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** mm of paper. */
const WIDTH = 62;
const HEIGHT = 46;
const MARGIN = 2;
const POINTED_OUT = 1.75 * OUTLINE;
