/** What stands in each of the sheet's CSV tables: heads and cells. A head is never renamed; columns are only ever added, last. */
import type {
  BoardPlan,
  CutRow,
  FastenerRow,
  Marked,
  NotChecked,
  PanelPlan,
  Place,
  SheetBoard,
  SheetCut,
  SheetData,
  SheetHeld,
  SheetPanel,
  SheetPiece,
  SheetProblem,
  ShoppingRow,
} from "./data";
import { withoutNoise } from "./marks";

export type CsvTable =
  | "cut-list"
  | "layouts"
  | "shopping"
  | "fasteners"
  | "pieces"
  | "holds"
  | "problems"
  | "not-checked";

/** What stands in a cell: a number, text, or nothing. */
export type Cell = string | number | null;

interface Table {
  readonly heads: readonly string[];
  readonly rows: (data: SheetData) => readonly (readonly Cell[])[];
}

/** A head, and what stands under it. */
type Column<Row> = readonly [head: string, cell: (row: Row) => Cell];

function table<Row>(rows: (data: SheetData) => readonly Row[], columns: readonly Column<Row>[]): Table {
  return {
    heads: columns.map(([head]) => head),
    rows: (data) => rows(data).map((row) => columns.map(([, cell]) => cell(row))),
  };
}

/** A length in two columns: exact millimetres, and as it is marked. */
const length = <Row>(head: string, of: (row: Row) => Marked | null | undefined): Column<Row>[] => [
  [`${head} mm`, (row) => of(row)?.mm ?? null],
  [head, (row) => of(row)?.text ?? null],
];

/** Money in two columns: a plain number, and as it is written. */
const money = <Row>(head: string, of: (row: Row) => string | null): Column<Row>[] => [
  [`${head} amount`, (row) => amount(of(row))],
  [head, of],
];

/** `$7.40` as 7.4; null for what is not written as money. */
function amount(text: string | null): number | null {
  const [, minus, digits] = /^(-?)[^\d.-]*(\d+\.\d\d)$/.exec(text ?? "") ?? [];
  return digits === undefined ? null : Number(`${minus}${digits}`);
}

const place = <Row>(of: (row: Row) => Place | undefined): Column<Row>[] => [
  ["file", (row) => of(row)?.file ?? null],
  ["line", (row) => of(row)?.line ?? null],
  ["column", (row) => of(row)?.column ?? null],
  ["end line", (row) => of(row)?.endLine ?? null],
  ["end column", (row) => of(row)?.endColumn ?? null],
];

const several = (texts: readonly string[]): string => texts.join("; ");

const CUT_LIST = table<CutRow & { readonly stock: string }>(
  ({ cutList }) => cutList.flatMap(({ stock, rows }) => rows.map((row) => ({ stock, ...row }))),
  [
    ["stock", ({ stock }) => stock],
    ["mark", ({ mark }) => mark],
    ["part", ({ part }) => part],
    ["hand", ({ hand }) => hand],
    ["count", ({ count }) => count],
    ...length<CutRow>("length", (row) => row.length),
    ["measured", ({ measured }) => measured],
    ...length<CutRow>("short point", (row) => row.shortPoint),
    ...length<CutRow>("width", (row) => row.width),
    ...length<CutRow>("thickness", (row) => row.thickness),
    ["ripped", ({ ripped }) => (ripped ? "yes" : "no")],
    ["ends", ({ ends }) => ends],
    ["notes", ({ notes }) => several(notes)],
    ["pieces", ({ pieces }) => several(pieces)],
    ...place<CutRow>((row) => row.place),
  ],
);

/** A cut of a board or a sheet, counted from its left end or lower left corner; or a piece that found no wood. */
interface LaidOut {
  readonly stock: string;
  /** Counted in its stock from 1. */
  readonly number: number | null;
  readonly from: SheetBoard | SheetPanel | null;
  readonly piece: string;
  readonly board: SheetCut | null;
  readonly panel: SheetPanel["cuts"][number] | null;
}

const LAYOUTS = table<LaidOut>(
  ({ boards, panels }) => [...boards.flatMap(laidOnBoards), ...panels.flatMap(laidOnPanels)],
  [
    ["stock", ({ stock }) => stock],
    ["board", ({ number }) => number],
    ["label", ({ from }) => from?.label ?? "no wood found"],
    ["kind", ({ from }) => from?.kind ?? null],
    ["alike", ({ from }) => from?.count ?? null],
    ...length<LaidOut>("board length", ({ from }) => from?.length),
    ...length<LaidOut>("board width", ({ from }) => (from && "width" in from ? from.width : null)),
    ["mark", ({ board, panel }) => (board ?? panel)?.mark ?? null],
    ["part", ({ board, panel }) => (board ?? panel)?.label ?? null],
    ["piece", ({ piece }) => piece],
    ["from mm", ({ board, panel }) => board?.from.mm ?? panel?.x ?? null],
    ["from", ({ board }) => board?.from.text ?? null],
    ["to mm", ({ board, panel }) => board?.to.mm ?? (panel && withoutNoise(panel.x + panel.length.mm))],
    ["to", ({ board }) => board?.to.text ?? null],
    ["up from mm", ({ panel }) => panel?.y ?? null],
    ["up to mm", ({ panel }) => panel && withoutNoise(panel.y + panel.width.mm)],
    ...length<LaidOut>("cut length", ({ board, panel }) => (board ?? panel)?.length),
    ...length<LaidOut>("cut width", ({ panel }) => panel?.width),
  ],
);

function laidOnBoards({ stock, boards, unplaced }: BoardPlan): LaidOut[] {
  const laid = boards.flatMap((from, i) =>
    from.cuts.map((board) => ({ stock, number: i + 1, from, piece: board.piece, board, panel: null })),
  );
  return [...laid, ...unplaced.map((piece) => withoutWood(stock, piece))];
}

function laidOnPanels({ stock, sheets, unplaced }: PanelPlan): LaidOut[] {
  const laid = sheets.flatMap((from, i) =>
    from.cuts.map((panel) => ({ stock, number: i + 1, from, piece: panel.piece, board: null, panel })),
  );
  return [...laid, ...unplaced.map((piece) => withoutWood(stock, piece))];
}

const withoutWood = (stock: string, piece: string): LaidOut => {
  return { stock, number: null, from: null, piece, board: null, panel: null };
};

const SHOPPING = table<ShoppingRow>(
  ({ shopping }) => shopping.rows,
  [
    ["aisle", ({ aisle }) => aisle],
    ["what", ({ what }) => what],
    ["count", ({ count }) => count],
    ["unit", ({ unit }) => unit],
    ...money<ShoppingRow>("each", ({ each }) => each),
    ...money<ShoppingRow>("total", ({ total }) => total),
    ["note", ({ note }) => note],
  ],
);

const FASTENERS = table<FastenerRow>(
  ({ fasteners }) => fasteners,
  [
    ["what", ({ what }) => what],
    ["count", ({ count }) => count],
    ["holes", ({ holes }) => holes],
    ["joints", ({ joints }) => several(joints)],
  ],
);

const PIECES = table<SheetPiece>(
  ({ pieces }) => pieces,
  [
    ["piece", ({ id }) => id],
    ["part", ({ part }) => part],
    ["mark", ({ mark }) => mark],
    ["assemblies", ({ assemblies }) => several(assemblies)],
    ["from left mm", ({ from: [x] }) => x],
    ["from front mm", ({ from: [, y] }) => y],
    ["from floor mm", ({ from: [, , z] }) => z],
    ["to right mm", ({ to: [x] }) => x],
    ["to back mm", ({ to: [, y] }) => y],
    ["to top mm", ({ to: [, , z] }) => z],
    ...place<SheetPiece>((piece) => piece.place),
  ],
);

const HOLDS = table<SheetHeld>(
  ({ holds }) => holds,
  [
    ["kind", ({ kind }) => kind],
    ["what", ({ what }) => what],
    ["load value", ({ load }) => load?.value ?? null],
    ["load", ({ load }) => load?.text ?? null],
    ["limit value", ({ limit }) => limit?.value ?? null],
    ["limit", ({ limit }) => limit?.text ?? null],
    ["unit", ({ load, limit }) => (load ?? limit)?.unit ?? null],
    ["uses", ({ uses }) => uses],
    ["state", ({ state }) => state],
    ...place<SheetHeld>((row) => row.place ?? undefined),
  ],
);

const PROBLEMS = table<SheetProblem>(
  ({ problems, accepted }) => [...problems, ...accepted],
  [
    ["code", ({ code }) => code],
    ["class", (problem) => problem.class],
    ["message", ({ message }) => message],
    ["state", ({ accepted }) => (accepted === undefined ? "open" : "accepted")],
    ["accepted because", ({ accepted }) => accepted ?? null],
    ["cures", ({ cures }) => several(cures)],
    ["assumed", ({ assumed }) => several(assumed)],
    ...place<SheetProblem>((problem) => problem.place),
  ],
);

const NOT_CHECKED = table<NotChecked>(
  ({ notChecked }) => notChecked,
  [["what", ({ what }) => what], ["why", ({ why }) => why], ...place<NotChecked>((entry) => entry.place)],
);

export const TABLES: Readonly<Record<CsvTable, Table>> = {
  "cut-list": CUT_LIST,
  layouts: LAYOUTS,
  shopping: SHOPPING,
  fasteners: FASTENERS,
  pieces: PIECES,
  holds: HOLDS,
  problems: PROBLEMS,
  "not-checked": NOT_CHECKED,
};

/** All of them, in the order of the sheet. */
export const tables = Object.keys(TABLES) as readonly CsvTable[];
