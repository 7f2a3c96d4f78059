/** The sheet as JSON: keys in the order of the contract, two blanks to a level, a newline at the end. */
import type { SheetData } from "./data";

/**
 * The same data gives the same bytes however its objects were put together. Control characters and direction overrides
 * inside texts are written as `\u` escapes, so that the file can be shown on a terminal.
 */
export const sheetJson = (data: SheetData): string => jsonIn(data, SHEET);

/** Any record of the sheet in the order of its keys. */
export const jsonIn = <T>(data: T, order: Order<T>): string =>
  `${JSON.stringify(ordered(data, order as AnyOrder), null, 2).replace(UNPRINTABLE, escaped)}\n`;

/** The keys of a record, in order, with the order inside each; null for what has no keys. Complete, or it does not compile. */
export type Order<T> = T extends readonly (infer Item)[]
  ? Order<Item>
  : T extends object
    ? { readonly [K in keyof T]-?: Order<NonNullable<T[K]>> }
    : null;

type AnyOrder = { readonly [key: string]: AnyOrder } | null;

export const MARKED = { mm: null, text: null, other: null };
export const PLACE = { file: null, line: null, column: null, endLine: null, endColumn: null };
export const PROBLEM = {
  code: null,
  class: null,
  message: null,
  place: PLACE,
  numbers: { name: null, value: null, unit: null, text: null, source: null },
  related: { message: null, place: PLACE },
  assumed: null,
  cures: null,
  accepted: null,
};
const PIECE = {
  id: null,
  part: null,
  mark: null,
  assemblies: null,
  from: null,
  to: null,
  place: PLACE,
};
const MARKS = { from: null, which: null, at: MARKED, words: null };
const JOINT = {
  title: null,
  what: null,
  pattern: null,
  holes: null,
  crossings: null,
  screws: null,
  setOut: {
    part: null,
    mark: null,
    pieces: null,
    screws: null,
    grids: { on: null, along: MARKS, across: MARKS },
  },
  place: PLACE,
};
const CUT_ROW = {
  mark: null,
  part: null,
  pieces: null,
  count: null,
  hand: null,
  length: MARKED,
  rule: null,
  measured: null,
  shortPoint: MARKED,
  width: MARKED,
  thickness: MARKED,
  ripped: null,
  ends: null,
  notes: null,
  place: PLACE,
};
const REST = { name: null, count: null, x: null, y: null, length: MARKED, width: MARKED };
const PROOF = {
  status: null,
  cost: null,
  bound: null,
  unit: null,
  currency: null,
  work: null,
  certificate: { worths: null, held: null, refuted: null },
};
const STOP = { length: MARKED, count: null, marks: null, boards: { label: null, count: null } };
const BOARD = {
  label: null,
  kind: null,
  count: null,
  length: MARKED,
  cuts: { piece: null, label: null, mark: null, from: MARKED, to: MARKED, length: MARKED },
  waste: { from: null, to: null, why: null },
  offcut: MARKED,
  rests: REST,
};
const PANEL = {
  label: null,
  kind: null,
  count: null,
  length: MARKED,
  width: MARKED,
  cuts: { piece: null, label: null, mark: null, x: null, y: null, length: MARKED, width: MARKED },
  rests: REST,
};
const SHOPPING = {
  rows: { aisle: null, what: null, count: null, unit: null, key: null, each: null, total: null, note: null },
  onHand: null,
  subtotal: null,
  tax: null,
  taxOf: null,
  total: null,
  budget: null,
  withoutPrice: null,
  carry: { count: null, longest: MARKED, weight: null },
  pile: { stock: null, count: null, length: MARKED, width: MARKED, pieces: null, saves: null },
  left: { amount: null, over: null },
};

const SPAN = { minutes: null, text: null };
const FINISH = {
  what: null,
  parts: null,
  area: { m2: null, text: null },
  coats: null,
  amount: { litres: null, text: null },
  dries: null,
  notes: null,
  assumed: null,
  place: PLACE,
};
const LINING = {
  what: null,
  box: null,
  cuts: { what: null, count: null, length: MARKED, width: MARKED },
  notes: null,
  assumed: null,
  place: PLACE,
};
const STEP = {
  number: null,
  title: null,
  lines: null,
  fresh: { mark: null, part: null, pieces: null, count: null },
  joins: { title: null, what: null, screws: null, holes: null },
  coats: null,
  linings: null,
  fit: null,
  square: null,
  tools: null,
  people: null,
  takes: SPAN,
  wait: SPAN,
  lift: null,
  place: PLACE,
};
const AMOUNT = { value: null, unit: null, text: null };
const HELD = {
  kind: null,
  what: null,
  load: AMOUNT,
  limit: AMOUNT,
  uses: null,
  state: null,
  place: PLACE,
};
const ROOTS = { crop: null, box: null, here: null, wants: null, ground: null, state: null, source: null };
const GAP = { row: null, built: MARKED, wettest: MARKED, driest: MARKED, where: null, place: PLACE };

const VALUE = { value: null, unit: null, text: null };
export const BUILT = {
  date: null,
  by: null,
  measured: { what: null, planned: VALUE, built: VALUE, because: null },
  boards: { planned: null, used: null, because: null },
  changed: null,
  wear: { date: null, words: null },
  place: PLACE,
};

const SHEET: Order<SheetData> = {
  format: null,
  version: null,
  language: null,
  file: null,
  title: null,
  units: { system: null, mark: null },
  make: null,
  facts: { label: null, value: null },
  notes: null,
  problems: PROBLEM,
  accepted: PROBLEM,
  notChecked: { what: null, why: null, place: PLACE },
  overall: { width: MARKED, depth: MARKED, height: MARKED },
  pieces: PIECE,
  cutList: { stock: null, title: null, source: null, rows: CUT_ROW },
  boards: {
    stock: null,
    title: null,
    boards: BOARD,
    assumed: null,
    unplaced: null,
    proof: PROOF,
    stops: STOP,
    onHandAfter: null,
  },
  panels: {
    stock: null,
    title: null,
    sheets: PANEL,
    assumed: null,
    unplaced: null,
    proof: PROOF,
    onHandAfter: null,
  },
  shopping: SHOPPING,
  fasteners: { what: null, count: null, joints: null, holes: null },
  joints: JOINT,
  square: { of: null, name: null, diagonal: MARKED, sides: MARKED, count: null, words: null },
  rings: { name: null, members: null, state: null },
  boxes: { name: null, rows: { label: null, value: null }, caution: null },
  musts: { rule: null, because: null, state: null },
  tools: { key: null, what: null, uses: null, reach: null, have: null, instead: null },
  bits: { kind: null, what: null, holes: null, uses: null, source: null, assumed: null },
  yard: { stock: null, thickness: MARKED, width: MARKED },
  finishes: FINISH,
  linings: LINING,
  weight: { kg: null, text: null },
  steps: STEP,
  stepsProposed: null,
  sittings: { from: null, to: null, takes: SPAN, wait: SPAN, overnight: null },
  care: { text: null, source: null },
  cautions: { text: null, source: null },
  holds: HELD,
  taken: { text: null, source: null },
  holdsCaution: null,
  roots: ROOTS,
  gaps: GAP,
  built: BUILT,
};

/** The same value with its keys in order; keys that the contract does not know stand last, by name. */
function ordered(value: unknown, order: AnyOrder): unknown {
  if (Array.isArray(value)) return value.map((item) => ordered(item, order));
  if (typeof value !== "object" || value === null) return value;
  const known = Object.keys(order ?? {});
  const rank = (key: string) => (known.includes(key) ? known.indexOf(key) : known.length);
  const entries = Object.entries(value).sort(([a], [b]) => rank(a) - rank(b) || (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, inner]) => [key, ordered(inner, order?.[key] ?? null)]));
}

const UNPRINTABLE = /[\u007f-\u009f\u2028-\u202e\u2066-\u2069]/g;

function escaped(c: string): string {
  return `\\u${c.charCodeAt(0).toString(16).padStart(4, "0")}`;
}
