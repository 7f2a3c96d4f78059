/** Small makers of blocks that several parts of the sheet share; what would be empty is left out. */
import type { SheetData } from "../data";
import type {
  Block,
  Cell,
  Column,
  List,
  Paragraph,
  Section,
  Table,
  TableGroup,
  Row as TableRow,
  Terms,
  Words,
} from "../document";
import type { SheetWords } from "../words";

/** A section, or nothing when nothing stands in it. */
export function section(
  name: string,
  heading: string,
  blocks: readonly (Block | undefined)[],
  more: Pick<Section, "newPage" | "onePage"> = {},
): Section[] {
  const shown = blocks.filter((block) => block !== undefined);
  return shown.length === 0 ? [] : [{ name, heading, blocks: shown, ...more }];
}

export const paragraph = (style: Paragraph["style"], words: Words, letters?: Words): Paragraph => ({
  kind: "paragraph",
  style,
  words,
  ...(letters !== undefined && { letters }),
});

/** Where several are made, that what follows is told of one. */
export const ofOne = ({ make }: SheetData, words: SheetWords): Paragraph[] =>
  make > 1 ? [paragraph("key", words.keys.forOne(make))] : [];

export const terms = (rows: Terms["rows"], more: Pick<Terms, "columns" | "light"> = {}): Terms | undefined =>
  rows.length === 0 ? undefined : { kind: "terms", rows, ...more };

export const list = (
  style: List["style"],
  items: List["items"],
  more: Pick<List, "columns"> = {},
): List | undefined => (items.length === 0 ? undefined : { kind: "list", style, items, ...more });

/** One column of a table, with how its cell is made from a row's data; nothing where it has nothing to say. */
export interface ColumnOf<Row> extends Column {
  readonly cell: (row: Row) => Cell | Words | undefined;
}

interface GroupOf<Row> extends Pick<TableGroup, "title" | "source"> {
  readonly rows: readonly Row[];
}

/** A table of row groups; columns with nothing in them are left out. */
export function table<Row>(
  name: string,
  columns: readonly ColumnOf<Row>[],
  groups: readonly GroupOf<Row>[],
  /** The line a row leads to, and whether it goes on from the row above. */
  moreOf: (row: Row) => Pick<TableRow, "line" | "goesOn"> = () => ({}),
  sums: Table["sums"] = [],
): Table | undefined {
  const made = groups.map(({ title, source, rows }) => ({
    title,
    source,
    rows: rows.map((row) => ({ ...moreOf(row), cells: columns.map((c) => cellOf(c.cell(row))) })),
  }));
  const rows = made.flatMap((group) => group.rows);
  if (rows.length === 0 && sums.length === 0) return undefined;
  const used = columns.flatMap((_, i) => (rows.some(({ cells }) => !isEmpty(cells[i]!)) ? [i] : []));
  return {
    kind: "table",
    name,
    columns: used.map((i) => {
      const { name, head, fit, label } = columns[i]!;
      return { name, head, fit, ...(label !== undefined && { label }) };
    }),
    groups: made.map((group) => ({
      ...group,
      rows: group.rows.map((row) => ({ ...row, cells: used.map((i) => row.cells[i]!) })),
    })),
    sums,
  };
}

/** One group without a title. */
export const rows = <Row>(all: readonly Row[]): readonly GroupOf<Row>[] => [
  { title: "", source: "", rows: all },
];

/** Text, or nothing for an empty one. */
export const some = (words: string | null): string | undefined =>
  words === null || words === "" ? undefined : words;

function cellOf(made: Cell | Words | undefined): Cell {
  if (made === undefined) return { words: "" };
  return typeof made === "object" && !Array.isArray(made) ? (made as Cell) : { words: made as Words };
}

export function isEmpty(cell: Cell): boolean {
  if ("ticks" in cell) return cell.ticks.length === 0;
  const all = "lines" in cell ? cell.lines : [cell.words];
  return all.every((words) => (typeof words === "string" ? words === "" : words.length === 0));
}
