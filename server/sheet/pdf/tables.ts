/** Tables: heads that stand again on the next page, titles of groups, rows that are not broken, sums. */
import type { Row, Table, TableGroup, Words } from "../document";
import type { Setting } from "./blocks";
import { cellLines, isFull, type Laid, layOut, placeOf } from "./cells";
import { type Line, linesOf, widthsOf } from "./lines";
import { BODY, GAP, GRAY, INNER, MM, SMALL, STRONG, THIN } from "./paper";
import type { Pen, Tag } from "./pen";
import { type Flow, type Frame, row, type Slab, type Stack } from "./slab";

/** Columns with nothing in any row are left out. */
export function tableFlows(table: Table, frame: Frame, parent: Tag, setting: Setting): readonly Flow[] {
  const rows = table.groups.flatMap((group) => group.rows);
  const places = table.columns.flatMap((_, i) => (rows.some(({ cells }) => isFull(cells[i])) ? [i] : []));
  if (places.length === 0 && table.sums.length === 0) return [];
  const { pen } = setting;
  const laid = layOut(table.columns, places, rows, frame, pen.letters);
  const tag = pen.tag("Table", parent);
  const shape: Shape = { frame, laid, tag, setting };
  const head = places.length === 0 ? undefined : headOf(shape);
  const groups = table.groups.flatMap((group, i) =>
    groupSlabs(group, shape, head, table.sums.length > 0 && i === table.groups.length - 1),
  );
  const sums = table.sums.map((sum, i) => sumSlab(sum, shape, i < table.sums.length - 1));
  const slabs = [...(head ? [head] : []), ...groups, ...sums];
  return slabs.map((slab, i) => (i === slabs.length - 1 ? { ...slab, after: 3 * MM } : slab));
}

interface Shape {
  readonly frame: Frame;
  readonly laid: readonly Laid[];
  readonly tag: Tag;
  readonly setting: Setting;
}

function headOf({ frame, laid, tag, setting: { pen } }: Shape): Slab {
  const line = pen.tag("TR", tag);
  const stacks = laid.map((one): Stack => {
    const head = pen.tag("TH", line, { scope: "Column" });
    return {
      ...placeOf(one),
      lines: one.under ? [] : linesOf(one.column.head, SMALL, one.width, pen.letters),
      tag: head,
    };
  });
  return row(footed(stacks), {
    before: 2 * MM,
    bottom: 1 * MM,
    tied: true,
    rules: under(frame, INNER, "#000000"),
  });
}

/** Heads of one line stand level with the last line of longer ones. */
function footed(stacks: readonly Stack[]): readonly Stack[] {
  const most = Math.max(0, ...stacks.map(({ lines }) => lines.length));
  return stacks.map((stack) => {
    const height = stack.lines[0]?.height ?? 0;
    const empty: Line = { fragments: [], width: 0, height, size: 0 };
    const above = stack.lines.length === 0 ? 0 : most - stack.lines.length;
    return { ...stack, lines: [...Array.from({ length: above }, () => empty), ...stack.lines] };
  });
}

const under =
  ({ left, width }: Frame, weight: number, colour: string) =>
  (pen: Pen, top: number, height: number): void =>
    pen.rule(left, top + height, left + width, weight, colour);

function groupSlabs(
  group: TableGroup,
  shape: Shape,
  head: Slab | undefined,
  summed: boolean,
): readonly Slab[] {
  const rows = group.rows.flatMap((one, i) =>
    rowSlabs(one, shape, head, group.rows[i + 1]?.goesOn ?? (summed && i === group.rows.length - 1)),
  );
  const title = group.title === "" && group.source === "" ? [] : [titleOf(group, shape, head)];
  return [...title, ...rows];
}

function titleOf({ title, source }: TableGroup, shape: Shape, head: Slab | undefined): Slab {
  const { frame, laid, tag, setting } = shape;
  const { pen } = setting;
  const words: Words = [
    { text: title, style: "strong" },
    { text: source === "" ? "" : ` ${source}`, style: "small" },
  ];
  const cell = pen.tag("TH", pen.tag("TR", tag), { span: laid.length, scope: "Row" });
  const lines = linesOf(words, BODY, frame.width, pen.letters);
  return row([{ ...frame, lines, tag: cell }], {
    top: 2.4 * MM,
    bottom: 0.8 * MM,
    tied: true,
    ...(head && { head }),
    rules: under(frame, THIN, GRAY),
  });
}

/** The row, and under it, tied to it, what had no room beside. */
function rowSlabs({ cells }: Row, shape: Shape, head: Slab | undefined, tied: boolean): readonly Slab[] {
  const { frame, laid, tag, setting } = shape;
  const { pen } = setting;
  const line = pen.tag("TR", tag);
  const stacks = laid.map((one): Stack & { readonly under: boolean } => {
    const words = cellLines(cells[one.place], one, setting);
    return { ...placeOf(one), lines: words, tag: pen.tag("TD", line), under: one.under };
  });
  const rows = [
    stacks.filter((s) => !s.under),
    ...stacks.filter((s) => s.under && s.lines.length > 0).map((s) => [s]),
  ];
  return rows.map((parts, i) => {
    const last = i === rows.length - 1;
    return row(parts, {
      top: i === 0 ? 0.8 * MM : 0,
      bottom: last ? 0.8 * MM : 0,
      tied: !last || tied,
      ...(head && { head }),
      ...(last && { rules: under(frame, THIN, GRAY) }),
    });
  });
}

/** What it is the sum of, ending where the number begins. */
function sumSlab({ label, value }: Table["sums"][number], shape: Shape, tied: boolean): Slab {
  const { frame, laid, tag, setting } = shape;
  const { pen } = setting;
  const line = pen.tag("TR", tag);
  const width = Math.min(
    Math.max(widthsOf(value, STRONG, pen.letters).most, laid.at(-1)?.width ?? 0),
    frame.width / 2,
  );
  const words = frame.width - width - GAP;
  const heading = pen.tag("TH", line, { span: Math.max(1, laid.length - 1), scope: "Row" });
  const stacks: Stack[] = [
    {
      left: frame.left,
      width: words,
      lines: linesOf(label, BODY, words, pen.letters),
      align: "right",
      tag: heading,
    },
    {
      left: frame.left + words + GAP,
      width,
      lines: linesOf(value, STRONG, width, pen.letters),
      align: "right",
      tag: pen.tag("TD", line),
    },
  ];
  return row(stacks, { top: 0.8 * MM, bottom: 0.4 * MM, tied });
}
