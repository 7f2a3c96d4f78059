/**
 * Rows on sheets: each sheet is ripped into rows from edge to edge, each row crosscut into columns, and a column may hold
 * pieces stacked one above the other. Pieces go in by descending height, into the first sheet that has a place.
 */

export interface ShelfItem {
  readonly length: number;
  readonly width: number;
  readonly grain: "along" | "free";
  readonly count: number;
}

export interface ShelfSheet {
  readonly length: number;
  readonly width: number;
  readonly grain: boolean;
  /** What it costs in the ranking. */
  readonly weight: number;
}

export interface Rule {
  /** The sold sheet to open when it takes the piece, by place. */
  readonly prefer: number;
  /** Rows run along the sheet's length, or across it. */
  readonly rows: "along" | "across";
  /** How a piece that may be turned is laid first; in a row that does not take it so, it is turned. */
  readonly lay: "as given" | "long in the row" | "long across the row";
  /** Of the rows of a sheet the first that takes the piece, or the lowest. */
  readonly fit: "first" | "best";
}

export interface Placed {
  readonly item: number;
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
  readonly turned: boolean;
}

export interface Shelves {
  readonly sheets: readonly {
    readonly index: number;
    readonly bought: boolean;
    readonly placed: readonly Placed[];
  }[];
  /** Pieces left over, their area, weight bought, area bought: smaller is better. */
  readonly score: readonly number[];
  /** Rows and sheets looked at. */
  readonly looks: number;
}

/** Lays out all items; sheets on hand are open from the start and stay in their order. */
export function packShelves(
  items: readonly ShelfItem[],
  kinds: readonly ShelfSheet[],
  onHand: readonly ShelfSheet[],
  kerf: number,
  rule: Rule,
): Shelves {
  const sheets: Open[] = onHand.map((sheet, index) => openSheet(sheet, index, false, rule));
  const work = { looks: 0 };
  let [pieces, area] = [0, 0];
  for (const { item, u, v } of tallestFirst(items, rule)) {
    const piece = items[item]!;
    let left = piece.count;
    for (let i = 0; left > 0; ) {
      if (i === onHand.length) i = Math.max(i, sheets.length - OPEN_SHEETS);
      if (i === sheets.length) {
        const index = kindFor(piece, u, v, kinds, rule);
        if (index < 0) break;
        sheets.push(openSheet(kinds[index]!, index, true, rule));
      }
      const sheet = sheets[i]!;
      if (place(sheet, item, ways(piece, u, v, sheet.sheet, rule), kerf, rule, work)) left--;
      else i++;
    }
    pieces += left;
    area += left * piece.length * piece.width;
  }
  const used = sheets.filter(({ placed }) => placed.length > 0).map((sheet) => shrink(sheet, items, kinds));
  const bought = used.filter((sheet) => sheet.bought).map(({ index }) => kinds[index]!);
  const total = (of: (kind: ShelfSheet) => number) => bought.reduce((sum, kind) => sum + of(kind), 0);
  const score = [pieces, area, total(({ weight }) => weight), total(({ length, width }) => length * width)];
  return { sheets: used, score, looks: work.looks };
}

/** Older bought sheets, and rows of a sheet and columns of a row beyond these, take nothing more. */
const OPEN_SHEETS = 24;
const OPEN_ROWS = 48;
const OPEN_COLUMNS = 32;

/** In a row, u runs along the row and v across it. */
interface Column {
  readonly u: number;
  readonly width: number;
  top: number;
}

interface Row {
  readonly v: number;
  readonly height: number;
  end: number;
  readonly columns: Column[];
}

interface Open {
  readonly sheet: ShelfSheet;
  readonly index: number;
  readonly bought: boolean;
  readonly alongRow: number;
  readonly acrossRow: number;
  /** Where the last row ends. */
  end: number;
  readonly rows: Row[];
  readonly placed: Placed[];
}

/** How a piece would lie in a row. */
interface Way {
  readonly u: number;
  readonly v: number;
  readonly turned: boolean;
}

function openSheet(sheet: ShelfSheet, index: number, bought: boolean, { rows }: Rule): Open {
  const [alongRow, acrossRow] = rows === "along" ? [sheet.length, sheet.width] : [sheet.width, sheet.length];
  return { sheet, index, bought, alongRow, acrossRow, end: 0, rows: [], placed: [] };
}

/** Items as they are laid first, highest first, then longest in the row, then in the order given. */
function tallestFirst(items: readonly ShelfItem[], rule: Rule) {
  return items
    .map(({ length, width, grain }, item) => {
      const [u, v] = rule.rows === "along" ? [length, width] : [width, length];
      const swap = grain === "free" && rule.lay !== "as given" && (rule.lay === "long in the row") === u < v;
      return swap ? { item, u: v, v: u } : { item, u, v };
    })
    .sort((a, b) => b.v - a.v || b.u - a.u || a.item - b.item);
}

/** As laid first, then turned, as far as the grain allows it. */
function ways(piece: ShelfItem, u: number, v: number, sheet: ShelfSheet, { rows }: Rule): readonly Way[] {
  const straight = rows === "along" ? piece.length : piece.width;
  const first = { u, v, turned: u !== straight };
  if (u === v || (sheet.grain && piece.grain === "along")) return [first];
  return [first, { u: v, v: u, turned: !first.turned }];
}

function place(
  sheet: Open,
  item: number,
  tried: readonly Way[],
  kerf: number,
  rule: Rule,
  work: { looks: number },
): boolean {
  work.looks += 1 + sheet.rows.length;
  for (const way of tried) {
    let best: Row | null = null;
    for (const row of sheet.rows) {
      if (way.v > row.height || (best !== null && row.height >= best.height)) continue;
      if (row.end + kerf + way.u > sheet.alongRow && columnFor(row, way, kerf) === undefined) continue;
      best = row;
      if (rule.fit === "first") break;
    }
    if (best === null) continue;
    const column = columnFor(best, way, kerf);
    if (column) {
      put(sheet, item, way, column.u, best.v + column.top + kerf, rule);
      column.top += kerf + way.v;
    } else addColumn(sheet, best, item, way, best.end + kerf, rule);
    return true;
  }
  for (const way of tried) {
    const v = sheet.end === 0 ? 0 : sheet.end + kerf;
    if (way.u > sheet.alongRow || v + way.v > sheet.acrossRow) continue;
    const row: Row = { v, height: way.v, end: 0, columns: [] };
    sheet.rows.push(row);
    if (sheet.rows.length > OPEN_ROWS) sheet.rows.shift();
    sheet.end = v + way.v;
    addColumn(sheet, row, item, way, 0, rule);
    return true;
  }
  return false;
}

function columnFor({ columns, height }: Row, { u, v }: Way, kerf: number): Column | undefined {
  return columns.find((column) => u <= column.width && column.top + kerf + v <= height);
}

function addColumn(sheet: Open, row: Row, item: number, way: Way, u: number, rule: Rule): void {
  put(sheet, item, way, u, row.v, rule);
  row.end = u + way.u;
  if (way.v === row.height) return;
  row.columns.push({ u, width: way.u, top: way.v });
  if (row.columns.length > OPEN_COLUMNS) row.columns.shift();
}

function put(sheet: Open, item: number, way: Way, u: number, v: number, { rows }: Rule): void {
  const { turned } = way;
  sheet.placed.push(
    rows === "along"
      ? { item, x: u, y: v, dx: way.u, dy: way.v, turned }
      : { item, x: v, y: u, dx: way.v, dy: way.u, turned },
  );
}

/** The preferred sheet when it takes the piece, else the one that costs least for its area; -1 when none takes it. */
function kindFor(piece: ShelfItem, u: number, v: number, kinds: readonly ShelfSheet[], rule: Rule): number {
  const takes = (kind: ShelfSheet) => {
    const { alongRow, acrossRow } = openSheet(kind, 0, true, rule);
    return ways(piece, u, v, kind, rule).some((way) => way.u <= alongRow && way.v <= acrossRow);
  };
  const preferred = kinds[rule.prefer];
  if (preferred && takes(preferred)) return rule.prefer;
  let best = -1;
  kinds.forEach((kind, k) => {
    if (!takes(kind)) return;
    const other = kinds[best];
    const area = kind.length * kind.width;
    if (!other || kind.weight * other.length * other.width < other.weight * area) best = k;
  });
  return best;
}

/** A bought sheet as the cheapest, then the smallest, that holds what lies on it as it lies. */
function shrink(sheet: Open, items: readonly ShelfItem[], kinds: readonly ShelfSheet[]): Open {
  if (!sheet.bought) return sheet;
  const length = sheet.placed.reduce((most, { x, dx }) => Math.max(most, x + dx), 0);
  const width = sheet.placed.reduce((most, { y, dy }) => Math.max(most, y + dy), 0);
  const againstGrain = sheet.placed.some(({ item, turned }) => turned && items[item]!.grain === "along");
  let best = sheet.index;
  kinds.forEach((kind, k) => {
    const other = kinds[best]!;
    if (kind.length < length || kind.width < width || (kind.grain && againstGrain)) return;
    const smaller = kind.length * kind.width < other.length * other.width;
    if (kind.weight < other.weight || (kind.weight === other.weight && smaller)) best = k;
  });
  return { ...sheet, index: best };
}
