/** The fasteners, where each is driven, and what is measured corner to corner before it is. */
import type { FastenerRow, SheetData, SheetJoint, SheetSetOut } from "../data";
import type { Row, Section, Table, TableGroup } from "../document";
import type { SheetWords } from "../words";
import { type ColumnOf, list, ofOne, paragraph, rows, section, some, table } from "./blocks";
import { lineIn } from "./problems";

/** Nothing where all of them are set out: how many they are is told there. */
export function fastenerSection(data: SheetData, words: SheetWords): Section[] {
  const { columns } = words;
  if (allSetOut(data)) return [];
  const columnsOf: readonly ColumnOf<FastenerRow>[] = [
    {
      name: "count",
      head: columns.count,
      fit: "number",
      cell: ({ count }) => (count === null ? "?" : String(count)),
    },
    { name: "what", head: columns.what, fit: "text", cell: ({ what }) => some(what) },
    { name: "holes", head: columns.holes, fit: "text", cell: ({ holes }) => some(holes) },
    { name: "where", head: columns.where, fit: "wide", cell: ({ joints }) => ({ lines: joints }) },
  ];
  return section("fasteners", words.headings.fasteners, [table("screws", columnsOf, rows(data.fasteners))]);
}

const allSetOut = ({ joints }: SheetData): boolean =>
  joints.length > 0 && joints.every(({ setOut }) => setOut.length > 0);

export function setOutSection(data: SheetData, words: SheetWords): Section[] {
  const groups = data.joints.filter(({ setOut }) => setOut.length > 0);
  if (groups.length === 0) return [];
  const counts = data.fasteners.map(({ count, what }) => `${count ?? "?"} ${what}`);
  return section("set-out", words.headings.setOut, [
    allSetOut(data)
      ? paragraph("plain", words.said(words.columns.inAll, counts.join(words.between)))
      : undefined,
    paragraph("key", words.keys.setOut),
    ...ofOne(data, words),
    setOutTable(groups, data.file, words),
  ]);
}

/** The marks of these joints. */
export function setOutTable(
  joints: readonly SheetJoint[],
  file: string,
  words: SheetWords,
): Table | undefined {
  const { columns } = words;
  const columnsOf: readonly ColumnOf<GridRow>[] = [
    {
      name: "mark",
      head: columns.mark,
      fit: "mark",
      cell: ({ mark }) => (mark === "" ? "" : [{ text: mark, style: "strong" }]),
    },
    { name: "piece", head: columns.piece, fit: "text", cell: ({ piece }) => piece },
    {
      name: "per",
      head: columns.screws,
      label: columns.screws,
      fit: "text",
      cell: ({ screws }) => screws,
    },
    { name: "along", head: columns.along, fit: "wide", cell: ({ along }) => along },
    { name: "across", head: columns.across, fit: "wide", cell: ({ across }) => across },
  ];
  return table(
    "set-outs",
    columnsOf,
    joints.map((joint) => groupOf(joint, file, words)),
    ({ more }) => more,
  );
}

/** A grid of marks; what is said of its piece stands with the first. */
interface GridRow {
  readonly mark: string;
  readonly piece: string;
  readonly screws: string;
  readonly along: string;
  readonly across: string;
  readonly more: Pick<Row, "line" | "goesOn">;
}

function groupOf(
  joint: SheetJoint,
  file: string,
  words: SheetWords,
): Pick<TableGroup, "title" | "source"> & { readonly rows: readonly GridRow[] } {
  const line = lineIn(joint.place, file);
  const grids = joint.setOut.flatMap((set) =>
    set.grids.map(({ on, along, across }, i): GridRow => {
      const first = i === 0;
      return {
        mark: first ? set.mark : "",
        piece: first ? pieceWords(set, joint, words) : "",
        screws: first ? screwsOf(set, words) : "",
        along: on === "face" ? along.words : words.onThe(on, along.words),
        across: across.words,
        more: { ...line, ...(!first && i < MOST_TOGETHER && { goesOn: true }) },
      };
    }),
  );
  return { title: jointWords(joint, words), source: "", rows: grids };
}

const screwsOf = ({ screws, pieces }: SheetSetOut, words: SheetWords): string =>
  pieces.length > 1 ? words.onEach(screws) : `${screws}`;

/** Of a piece with very many grids, the others may stand on the next page. */
const MOST_TOGETHER = 6;

/** `side face into leg face: 16 screws at 8 crossings, deck-mid (#8 x 1-5/8"), pilot 1/8"`. */
export function jointWords(joint: SheetJoint, words: SheetWords): string {
  const { title, what, pattern, holes, screws, crossings } = joint;
  const count = screws === null || crossings === null ? pattern : words.screwsInAll(screws, crossings);
  return words.said(title, [count, what, holes].filter((said) => said !== "").join(", "));
}

/** `side, 4 pieces`; which ones, where not all of the part are marked alike. */
function pieceWords(set: SheetSetOut, joint: SheetJoint, words: SheetWords): string {
  const all = joint.setOut.filter((other) => other.part === set.part).length === 1;
  const count = set.pieces.length > 1 ? `, ${words.pieces(set.pieces.length)}` : "";
  return `${set.part}${count}${all ? "" : `, ${namesOf(set, words)}`}`;
}

/** What tells these pieces from the others of their part. */
function namesOf({ part, pieces }: SheetSetOut, words: SheetWords): string {
  const told = pieces.map(words.piece);
  const names = told.map((name) => (name.startsWith(`${part} / `) ? name.slice(part.length + 3) : name));
  const shown = names.slice(0, MOST_NAMES).join(words.between);
  return names.length > MOST_NAMES ? `${shown} ${words.andMore(names.length - MOST_NAMES)}` : shown;
}
const MOST_NAMES = 2;

/** What no step tells to measure. */
export function squareSection({ square, steps }: SheetData, words: SheetWords): Section[] {
  const told = new Set(steps.flatMap((step) => step.square));
  const all = square.map((row) => words.diagonals(row.words, row.diagonal.text, row.diagonal.other));
  return section("square", words.headings.square, [
    list(
      "bullets",
      all.filter((said) => !told.has(said)).map((said) => ({ words: said })),
    ),
  ]);
}
