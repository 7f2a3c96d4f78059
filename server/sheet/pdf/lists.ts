/** Lists: bullets, numbers, boxes to tick, and marks with what they stand for in columns. */
import type { Item, List } from "../document";
import type { Setting } from "./blocks";
import { boxesWidth, boxLines, linesOf, widthsOf } from "./lines";
import { BODY, GAP, MM, SMALL, STRONG } from "./paper";
import type { Tag } from "./pen";
import { beside, type Flow, type Frame, pile, row, type Slab, type Stack } from "./slab";

export function listFlows(list: List, frame: Frame, parent: Tag, setting: Setting): readonly Flow[] {
  const tag = setting.pen.tag("L", parent);
  if (list.style === "marks") return columns(list, frame, tag, setting, COLUMN);
  if (list.columns) return columns(list, frame, tag, setting, (frame.width - COLUMN_GAP) / list.columns);
  return itemSlabs(list, list.items, frame, tag, setting);
}

/** Items under each other: boxes, then the lead, number or bullet, then the words with what stands under them. */
function itemSlabs(
  list: List,
  items: readonly Item[],
  frame: Frame,
  parent: Tag,
  { pen, words }: Setting,
): readonly Slab[] {
  const { letters } = pen;
  const leads = items.map((item, i) => leadOf(list, item, list.items.indexOf(item, i)));
  const ticks = items.map(({ ticks }) => ticks ?? (list.style === "ticks" ? [UNNAMED] : []));
  const boxes = boxesWidth(Math.min(BOXES, Math.max(...ticks.map(({ length }) => length), 0)));
  const widest = Math.max(0, ...leads.map((lead) => widthsOf(lead, STRONG, letters).most));
  const framed = items.some((item) => item.framed) ? FRAME : 0;
  const least = list.style === "marks" ? MARK : list.style === "ticks" ? 0 : BULLET;
  const lead =
    widest === 0 ? 0 : Math.min(Math.max(widest + 2 * framed + LEAD_GAP, least), frame.width * LEAD_SHARE);
  const afterBoxes = frame.left + boxes + (boxes > 0 ? GAP : 0);
  const body = { left: afterBoxes + lead, width: frame.left + frame.width - afterBoxes - lead };
  return items.map((item, i) => {
    const tag = pen.tag("LI", parent);
    const label = pen.tag("Lbl", tag);
    const own = item.lead === undefined ? BODY : STRONG;
    const below = (item.below ?? []).flatMap((said) => linesOf(said, SMALL, body.width, letters));
    const room = Math.max(lead - LEAD_GAP / 2 - 2 * framed, 1);
    const stacks: Stack[] = [
      { left: frame.left, width: boxes, lines: boxLines(ticks[i]!, boxes, words), tag: label },
      {
        left: afterBoxes + framed,
        width: room,
        lines: linesOf(leads[i]!, own, room, letters),
        tag: label,
        ...(item.framed && { framed: true }),
      },
      {
        ...body,
        lines: [...linesOf(item.words, BODY, body.width, letters), ...below],
        tag: pen.tag("LBody", tag),
      },
    ];
    const after = below.length > 0 ? 3 * MM : (i === items.length - 1 ? 2 : 1) * MM;
    return row(
      stacks.filter(({ lines }) => lines.length > 0),
      { after },
    );
  });
}

function leadOf({ style }: List, { lead }: Item, place: number): string {
  if (lead !== undefined) return lead;
  return style === "numbers" ? `${place + 1}.` : style === "bullets" ? "•" : "";
}

const UNNAMED = { id: "", what: "", done: "" };

/** In columns, read down one and then the next; a long list as several such blocks. */
function columns(list: List, frame: Frame, parent: Tag, setting: Setting, column: number): readonly Slab[] {
  const count = Math.max(1, Math.floor((frame.width + COLUMN_GAP + 0.01) / (column + COLUMN_GAP)));
  const width = (frame.width - (count - 1) * COLUMN_GAP) / count;
  const found: Slab[] = [];
  for (let from = 0; from < list.items.length; from += count * ROWS) {
    const items = list.items.slice(from, from + count * ROWS);
    const each = Math.ceil(items.length / count);
    const piles = Array.from({ length: Math.ceil(items.length / each) }, (_, i) => {
      const left = frame.left + i * (width + COLUMN_GAP);
      return pile(itemSlabs(list, items.slice(i * each, (i + 1) * each), { left, width }, parent, setting));
    });
    const block = beside(piles);
    if (block.height <= setting.room) found.push(block);
    else found.push(...itemSlabs(list, items, frame, parent, setting));
  }
  return found;
}

/** A column of marks, and how many stand in one before the next block begins. */
const COLUMN = 48 * MM;
const COLUMN_GAP = 6 * MM;
const ROWS = 24;

/** Boxes on a line before an item; more wrap. */
const BOXES = 4;
const BULLET = 6 * MM;
const MARK = 7 * MM;
const FRAME = 1.5 * MM;
const LEAD_GAP = 2 * MM;
const LEAD_SHARE = 0.3;
