/** The drawings that teach the words of the trade, each by its key; small enough for a hover, labels in the language asked. */
import { boxOf, type Drawing, type Item, type Point, rectangle } from "../display";
import { around } from "../piece-drawing/plane";
import type { SheetLanguage } from "../words";
import { CUT_DRAWINGS } from "./cuts";
import { JOINT_DRAWINGS } from "./joints";
import { PIECE_DRAWINGS } from "./pieces";
import type { Teaching } from "./teaching";
import { WOOD_DRAWINGS } from "./wood";

const DRAWINGS: ReadonlyMap<string, Teaching> = new Map(
  Object.entries({ ...CUT_DRAWINGS, ...WOOD_DRAWINGS, ...PIECE_DRAWINGS, ...JOINT_DRAWINGS }),
);

export const TEACHING_KEYS: readonly string[] = [...DRAWINGS.keys()];

/** One of them on a page of its own; undefined for a key that there is not. */
export function drawTeaching(key: string, title: string, language: SheetLanguage): Drawing | undefined {
  const made = MADE.get(`${language} ${key}`);
  if (made) return { ...made, title };
  const items = DRAWINGS.get(key)?.((en, fr) => (language === "fr" ? fr : en));
  if (!items) return undefined;
  const drawing = onPage(items, title);
  MADE.set(`${language} ${key}`, drawing);
  return drawing;
}

/** Each is the same in every plan, and made when it is first asked for. */
const MADE = new Map<string, Drawing>();

/** On a white page that ends a little beyond the items on every side. */
export function onPage(items: readonly Item[], title: string): Drawing {
  const { left, top, right, bottom } = around(items.map(boxOf));
  const [dx, dy] = [MARGIN - left, MARGIN - top];
  const [width, height] = [right - left + 2 * MARGIN, bottom - top + 2 * MARGIN];
  const paper = rectangle("wood", 0, { left: 0, top: 0, right: width, bottom: height }, "paper");
  return { title, width, height, items: [paper, ...items.map((item) => moved(item, dx, dy))] };
}

const MARGIN = 2.5;

function moved(item: Item, dx: number, dy: number): Item {
  if (item.kind === "text") return { ...item, x: item.x + dx, y: item.y + dy };
  return { ...item, strokes: item.strokes.map((s) => s.map(([x, y]): Point => [x + dx, y + dy])) };
}
