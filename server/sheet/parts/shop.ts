/** What the shop wants to know before the first cut: tools, bits, what the boards really measure. */
import type { SheetBit, SheetData, SheetTool, SheetYard } from "../data";
import type { Item, Section, Words } from "../document";
import type { SheetWords } from "../words";
import { type ColumnOf, list, paragraph, rows, section, table } from "./blocks";

/** As an exercise, without the longest cut, which is a length to find. */
export function toolSections(data: SheetData, words: SheetWords, exercise = false): Section[] {
  const longest = words.wood.reach["longest cut along"];
  const told = ({ reach, ...tool }: SheetTool): SheetTool => ({
    ...tool,
    reach: exercise ? reach.filter((far) => !far.startsWith(longest)) : reach,
  });
  return [
    ...section("tools", words.headings.tools, [
      list(
        "ticks",
        data.tools.map((tool) => toolItem(told(tool), words)),
        { columns: 2 },
      ),
    ]),
    ...section("bits", words.headings.bits, [table("bit-list", bitColumns(words), rows(data.bits))]),
  ];
}

function toolItem({ key, what, uses, reach, have, instead }: SheetTool, words: SheetWords): Item {
  const state = have === "no" ? ` ${words.notThere}` : "";
  const said = (reach.length > 0 ? reach : uses.length > MOST_USES ? [] : uses).join(words.between);
  return {
    ticks: [{ id: `tool/${key}`, what, done: words.ready }],
    words: [
      { text: what, style: "strong" },
      { text: `${said === "" ? "" : `${words.colon} ${said}`}${state}` },
    ],
    below: have !== "yes" && instead !== "" ? [words.instead(instead)] : [],
  };
}

/** What is used for more than so many things is used all over. */
const MOST_USES = 3;

function bitColumns(words: SheetWords): readonly ColumnOf<SheetBit>[] {
  const { columns } = words;
  return [
    { name: "what", head: columns.bit, fit: "text", cell: ({ what }) => [{ text: what, style: "strong" }] },
    { name: "kind", head: columns.hole, fit: "text", cell: ({ kind }) => words.bits[kind] },
    {
      name: "count",
      head: columns.count,
      fit: "number",
      cell: ({ holes }) => (holes === null ? "" : String(holes)),
    },
    {
      name: "where",
      head: columns.where,
      fit: "wide",
      cell: ({ kind, uses, source, assumed }) => ({
        lines: [
          ...(kind === "driver" || kind === "countersink" || uses.length === 0
            ? []
            : [uses.join(words.between)]),
          ...notesOf(words, assumed, source),
        ],
      }),
    },
  ];
}

/** What is said beside, in small type. */
function notesOf(words: SheetWords, ...said: readonly string[]): readonly Words[] {
  const shown = said.filter((one) => one !== "");
  return shown.length === 0 ? [] : [[{ text: shown.join(words.between), style: "small" }]];
}

/** Blanks for what is measured at the yard. */
export function yardSection({ yard }: SheetData, words: SheetWords): Section[] {
  if (yard.length === 0) return [];
  const { columns } = words;
  const columnsOf: readonly ColumnOf<SheetYard>[] = [
    {
      name: "stock",
      head: columns.stock,
      fit: "text",
      cell: ({ stock }) => [{ text: stock, style: "strong" }],
    },
    {
      name: "taken",
      head: columns.takenAs,
      fit: "text",
      cell: ({ thickness, width }) =>
        [thickness, width].flatMap((side) => (side ? [side.text] : [])).join(words.by),
    },
    {
      name: "measured",
      head: columns.measured,
      fit: "text",
      cell: ({ width }) =>
        width
          ? [
              { text: words.thickness, style: "blank" },
              { text: words.by },
              { text: words.width, style: "blank" },
            ]
          : [{ text: words.thickness, style: "blank" }],
    },
  ];
  return section("yard", words.headings.atTheYard, [
    paragraph("key", words.keys.yard),
    table("yard-list", columnsOf, rows(yard)),
  ]);
}

export function careSection({ care }: SheetData, words: SheetWords): Section[] {
  return section("care", words.headings.care, [
    list(
      "bullets",
      care.map(({ text, source }) => ({
        words: source === "" ? text : [{ text }, { text: ` (${source})`, style: "small" as const }],
      })),
      { columns: 2 },
    ),
  ]);
}
