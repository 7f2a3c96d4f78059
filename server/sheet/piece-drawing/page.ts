/** The page: object, balloons and measures in the middle, the scale and what is not seen in words below. */
import {
  type Box,
  boxOf,
  type Drawing,
  type Item,
  type Point,
  shortened,
  TYPE,
  text,
  textWidth,
} from "../display";
import { around } from "./plane";
import { brokenInto } from "./title";

/** The widest a drawing is, in mm: the text of an A4 page with margins of 15 mm. */
export const PAGE_WIDTH = 180;

/** The object with the box that it takes, and what stands around it. */
export interface Shown {
  readonly object: readonly Item[];
  readonly box: Box;
  readonly about: readonly Item[];
}

const boxOfAll = ({ box, about }: Shown): Box => around([box, ...about.map(boxOf)]);

/** Whether all of it fits the width of the page. */
export function fitsPage(shown: Shown): boolean {
  const { left, right } = boxOfAll(shown);
  return right - left <= PAGE_WIDTH - MARGIN;
}

/** What is shown, in the middle of a page as wide and as high as it needs, with lines of text below. */
export function pageOf(title: string, shown: Shown, captions: readonly string[]): Drawing {
  const box = boxOfAll(shown);
  const width = Math.min(PAGE_WIDTH, Math.ceil(Math.max(box.right - box.left, NARROWEST) + 2 * MARGIN));
  const move: Point = [width / 2 - (box.left + box.right) / 2, MARGIN - box.top];
  const fits = (line: string): boolean => textWidth(line, TYPE) <= width - 2 * MARGIN;
  const said = captions.flatMap((words) => brokenInto(words, fits));
  const foot = box.bottom + move[1] + ABOVE_TEXT;
  const words = said.map((line, i) =>
    text("label", width / 2, foot + i * LINE, shortened(line, TYPE, width - 2 * MARGIN), {
      anchor: "middle",
    }),
  );
  return {
    title,
    width,
    height: Math.ceil(foot + Math.max(0, said.length - 1) * LINE + MARGIN),
    items: [...[...shown.object, ...shown.about].map((item) => moved(item, move)), ...words],
  };
}

function moved(item: Item, [dx, dy]: Point): Item {
  if (item.kind === "text") return { ...item, x: item.x + dx, y: item.y + dy };
  const strokes = item.strokes.map((points) => points.map(([x, y]): Point => [x + dx, y + dy]));
  return { ...item, strokes };
}

/** No object at all. */
export const NOTHING: Shown = { object: [], box: { left: 0, top: 0, right: 0, bottom: 0 }, about: [] };
/** mm of paper. */
export const MARGIN = 2;
/** Room for a line of text. */
const NARROWEST = 48;
const ABOVE_TEXT = 7.5;
const LINE = 5.2;
