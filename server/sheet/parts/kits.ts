/** Where a plan is built more than once: what goes into each kit, and into all of them. */
import type { CutRow, FastenerRow, SheetData } from "../data";
import type { Group, Section } from "../document";
import type { SheetWords } from "../words";
import { type ColumnOf, paragraph, rows, section, table } from "./blocks";
import { lengthWords, partWords, rowId, rowsByMark } from "./names";

export function kitSection(data: SheetData, words: SheetWords): Section[] {
  const { make } = data;
  if (make < 2) return [];
  const own = rowsByMark(data);
  const each =
    make > MOST_LISTS
      ? [kitOf(data, own, 0, words)]
      : indexes(make).map((n) => kitOf(data, own, n + 1, words));
  return section("kits", words.headings.kits, [
    paragraph("key", words.keys.kits(make)),
    ...each,
    allOf(data, own, words),
  ]);
}

/** A list for each copy up to so many; beyond, one that holds for all. */
const MOST_LISTS = 24;

/** The nth kit; 0 for any of them. */
function kitOf(data: SheetData, own: readonly CutRow[], n: number, words: SheetWords): Group {
  const { columns } = words;
  const share = (count: number): number => count / data.make;
  const columnsOf: readonly ColumnOf<CutRow>[] = [
    { name: "mark", head: columns.mark, fit: "mark", cell: ({ mark }) => [{ text: mark, style: "strong" }] },
    { name: "count", head: columns.count, fit: "number", cell: ({ count }) => String(share(count)) },
    { name: "part", head: columns.part, fit: "text", cell: (row) => partWords(row, words) },
    {
      name: "length",
      head: columns.length,
      fit: "text",
      cell: ({ length }) => (length ? lengthWords(length) : undefined),
    },
    {
      name: "tick",
      head: columns.inKit,
      fit: "tick",
      cell: (row) => ({
        ticks: [
          {
            id: `kit/${n}/${rowId(row)}/${share(row.count)}`,
            what: `${words.kit(n, data.make)}, ${partWords(row, words)}`,
            done: words.inKit,
          },
        ],
      }),
    },
  ];
  const screws = data.fasteners.map(({ what, count }) => `${count === null ? "?" : share(count)} ${what}`);
  const kit = table("kit", columnsOf, rows(own));
  return {
    kind: "group",
    name: "kit-list",
    heading: words.kit(n, data.make),
    blocks: [
      ...(kit ? [kit] : []),
      ...(screws.length > 0 ? [paragraph("source", words.andFasteners(screws.join(", ")))] : []),
    ],
  };
}

interface Sum {
  readonly mark: string;
  readonly what: string;
  readonly all: number | null;
}

function allOf(data: SheetData, own: readonly CutRow[], words: SheetWords): Group {
  const { columns } = words;
  const sums: readonly Sum[] = [
    ...own.map((row) => ({ mark: row.mark, what: partWords(row, words), all: row.count })),
    ...data.fasteners.map(({ what, count }: FastenerRow) => ({ mark: "", what, all: count })),
  ];
  const columnsOf: readonly ColumnOf<Sum>[] = [
    { name: "mark", head: columns.mark, fit: "mark", cell: ({ mark }) => mark },
    { name: "what", head: columns.what, fit: "text", cell: ({ what }) => what },
    {
      name: "one",
      head: columns.inOne,
      fit: "number",
      cell: ({ all }) => (all === null ? "?" : String(all / data.make)),
    },
    {
      name: "all",
      head: columns.inAll,
      fit: "number",
      cell: ({ all }) => (all === null ? "?" : String(all)),
    },
  ];
  const all = table("all-kits", columnsOf, rows(sums));
  return { kind: "group", name: "kit-list", heading: words.allKits(data.make), blocks: all ? [all] : [] };
}

const indexes = (n: number): readonly number[] => Array.from({ length: n }, (_, i) => i);
