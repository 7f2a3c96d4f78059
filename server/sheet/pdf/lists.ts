/** Lists: bullets, numbers, boxes to tick, and marks with what they stand for in columns. */
import type { Item, List } from "../document";
import type { Setting } from "./blocks";
import { boxesWidth, boxLines, linesOf, widthsOf } from "./lines";
import { BODY, GAP, MM, SMALL, STRONG } from "./paper";
import type { Tag } from "./pen";
import { beside, evenly, type Flow, type Frame, pile, row, type Slab, type Stack } from "./slab";

export function listFlows(list: List, frame: Frame, parent: Tag, setting: Setting): readonly Flow[] {
  const tag = setting.pen.tag("L", parent);
  const count = list.style === "marks" ? columnsIn(frame.width, MARKS) : (list.columns ?? 1);
  const width = (frame.width - (count - 1) * COLUMN_GAP) / count;
  const items = itemSlabs(list, width, tag, setting);
  if (count === 1 || items.some((item) => item(frame.left).height > setting.room)) {
    const slabs = items.map((item) => item(frame.left));
    return slabs.length > FEW ? slabs : [{ together: slabs }];
  }
  return blocksOf(items, count * ROWS).map((block) => {
    const slab = inColumns(block, { left: frame.left, width }, count);
    const whole = list.style === "marks" || items.length <= FEW;
    return whole ? { ...slab, least: Math.min(slab.height, setting.room) } : slab;
  });
}

/** An item with its left edge there. */
type ItemAt = (left: number) => Slab;

/** Items of a width: boxes, then the lead, number or bullet, then the words with what stands under them. */
function itemSlabs(list: List, width: number, parent: Tag, { pen, words }: Setting): readonly ItemAt[] {
  const { letters } = pen;
  const { items } = list;
  const leads = items.map((item, i) => leadOf(list, item, i));
  const ticks = items.map(({ ticks }) => ticks ?? (list.style === "ticks" ? [UNNAMED] : []));
  const boxes = boxesWidth(Math.min(BOXES, Math.max(...ticks.map(({ length }) => length), 0)));
  const widest = Math.max(0, ...leads.map((lead) => widthsOf(lead, STRONG, letters).most));
  const framed = items.some((item) => item.framed) ? FRAME : 0;
  const least = list.style === "marks" ? MARK : list.style === "ticks" ? 0 : BULLET;
  const lead =
    widest === 0 ? 0 : Math.min(Math.max(widest + 2 * framed + LEAD_GAP, least), width * LEAD_SHARE);
  const afterBoxes = boxes + (boxes > 0 ? GAP : 0);
  const body = width - afterBoxes - lead;
  const room = Math.max(lead - LEAD_GAP / 2 - 2 * framed, 1);
  return items.map((item, i) => {
    const tag = pen.tag("LI", parent);
    const label = pen.tag("Lbl", tag);
    const own = item.lead === undefined ? BODY : STRONG;
    const below = (item.below ?? []).flatMap((said) => linesOf(said, SMALL, body, letters));
    const stacks: Stack[] = [
      { left: 0, width: boxes, lines: boxLines(ticks[i]!, boxes, words), tag: label },
      {
        left: afterBoxes + framed,
        width: room,
        lines: linesOf(leads[i]!, own, room, letters),
        tag: label,
        ...(item.framed && { framed: true }),
      },
      {
        left: afterBoxes + lead,
        width: body,
        lines: [...linesOf(item.words, BODY, body, letters), ...below],
        tag: pen.tag("LBody", tag),
      },
    ];
    const after = below.length > 0 ? 3 * MM : (i === items.length - 1 ? 2 : 1) * MM;
    const shown = stacks.filter(({ lines }) => lines.length > 0);
    return (at) =>
      row(
        shown.map((stack) => ({ ...stack, left: at + stack.left })),
        { after },
      );
  });
}

function leadOf({ style }: List, { lead }: Item, place: number): string {
  if (lead !== undefined) return lead;
  return style === "numbers" ? `${place + 1}.` : style === "bullets" ? "•" : "";
}

const UNNAMED = { id: "", what: "", done: "" };

/** In columns, read down one and then the next; parted, the columns of each part are about as long as each other. */
function inColumns(items: readonly ItemAt[], frame: Frame, count: number): Slab {
  const slabs = items.map((item) => item(frame.left));
  const heights = slabs.map(({ height, after }) => height + after);
  const columns = evenly(heights, count).map(([from, to], i) => {
    const left = frame.left + i * (frame.width + COLUMN_GAP);
    return pile(items.slice(from, to).map((item) => item(left)));
  });
  const first = evenly(heights.slice(0, count), count).map(([from, to]) => pile(slabs.slice(from, to)));
  return {
    ...beside(columns),
    least: beside(first).height,
    part: (room) => {
      for (let n = items.length - 1; n > 0; n--) {
        const part = evenly(heights.slice(0, n), count).map(([from, to]) => pile(slabs.slice(from, to)));
        if (beside(part).height <= room)
          return [inColumns(items.slice(0, n), frame, count), inColumns(items.slice(n), frame, count)];
      }
      return undefined;
    },
  };
}

/** So many at a time. */
function blocksOf<T>(all: readonly T[], size: number): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(all.length / size) }, (_, i) => all.slice(i * size, (i + 1) * size));
}

const columnsIn = (width: number, column: number): number =>
  Math.max(1, Math.floor((width + COLUMN_GAP + 0.01) / (column + COLUMN_GAP)));

/** The least width of a column of marks, and how many stand in one before the next block begins. */
const MARKS = 48 * MM;
const COLUMN_GAP = 6 * MM;
const ROWS = 24;

/** A list so short is not parted. */
const FEW = 4;

/** Boxes on a line before an item; more wrap. */
const BOXES = 4;
const BULLET = 6 * MM;
const MARK = 7 * MM;
const FRAME = 1.5 * MM;
const LEAD_GAP = 2 * MM;
const LEAD_SHARE = 0.3;
