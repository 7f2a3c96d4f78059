/** Sections of a sheet made by hand that are mostly tables and layouts: cuts, boards, shopping. */
import { boardScale, drawBoard } from "../../server/sheet/board-drawing";
import type { Drawing } from "../../server/sheet/display";
import type { Cell, Figure, Group, Row, Section, Table, Tick } from "../../server/sheet/document";
import { drawPanel, panelScale } from "../../server/sheet/panel-drawing";
import { trough } from "./trough";

export const words = (said: string): Cell => ({ words: said });
export const strong = (said: string): Cell => ({ words: [{ text: said, style: "strong" }] });
const NONE: Cell = { words: "" };

export const ticksFor = (what: string, count: number, done: string): readonly Tick[] =>
  Array.from({ length: count }, (_, i) => ({
    id: `${done}/${what} / ${i + 1}`,
    what: `${what} / ${i + 1}`,
    done,
  }));

export const figure = (caption: string, drawing: () => Drawing, beside = false): Figure => ({
  kind: "figure",
  caption,
  drawing,
  ...(beside && { beside }),
});

const cutTable: Table = {
  kind: "table",
  name: "cuts",
  columns: [
    { name: "tick", head: "Cut", fit: "tick" },
    { name: "mark", head: "Mark", fit: "mark" },
    { name: "count", head: "No.", fit: "number" },
    { name: "part", head: "Part", fit: "text" },
    { name: "length", head: "Length", fit: "text" },
    { name: "rip", head: "Ripped to", fit: "text", label: "ripped to" },
    { name: "wide", head: "Ends and notes", fit: "wide" },
    { name: "empty", head: "Never", fit: "text" },
  ],
  groups: trough.cutList.map(({ title, source, rows }) => ({
    title,
    source,
    rows: rows.map(
      (row): Row => ({
        line: row.place.line,
        cells: [
          { ticks: ticksFor(row.part, row.count, "cut") },
          strong(row.mark),
          words(String(row.count)),
          words(row.part),
          row.length
            ? {
                words: [
                  { text: row.length.text, style: "strong" },
                  { text: ` ${row.length.other}`, style: "small" },
                ],
              }
            : words("cut to fit"),
          row.width ? strong(row.width.text) : NONE,
          { lines: [row.measured, row.ends, ...row.notes].filter((said) => said !== "") },
          NONE,
        ],
      }),
    ),
  })),
  sums: [],
};

export const cutList: Section = {
  name: "cut-list",
  heading: "Cut list",
  newPage: true,
  blocks: [
    { kind: "paragraph", style: "key", words: "Lengths are tip to tip, before the ends are cut." },
    cutTable,
  ],
};

export const boards: Section = {
  name: "boards",
  heading: "Board layouts",
  blocks: [
    {
      kind: "paragraph",
      style: "key",
      words: "Hook the tape on the left end: every mark is counted from there.",
    },
    ...trough.boards.map(
      (plan): Group => ({
        kind: "group",
        name: "layout",
        heading: plan.title,
        blocks: [
          { kind: "paragraph", style: "source", words: plan.assumed.join("; ") },
          ...plan.boards.map((board) =>
            figure(`${board.label}, ${board.length.text}`, () =>
              drawBoard(board, {
                scale: boardScale(trough.boards.flatMap((one) => one.boards)),
                system: "inches",
              }),
            ),
          ),
        ],
      }),
    ),
    ...trough.panels.map(
      (plan): Group => ({
        kind: "group",
        name: "layout",
        heading: plan.title,
        blocks: plan.sheets.map((sheet) =>
          figure(sheet.label, () =>
            drawPanel(sheet, { scale: panelScale(trough.panels.flatMap((one) => one.sheets)) }),
          ),
        ),
      }),
    ),
  ],
};

export const shopping: Section = {
  name: "shopping",
  heading: "Shopping list",
  blocks: [
    {
      kind: "table",
      name: "shop",
      columns: [
        { name: "tick", head: "Got", fit: "tick" },
        { name: "count", head: "No.", fit: "number" },
        { name: "unit", head: "Sold as", fit: "text" },
        { name: "what", head: "What", fit: "text" },
        { name: "note", head: "Note", fit: "wide" },
        { name: "each", head: "Each", fit: "number" },
        { name: "together", head: "Together", fit: "number" },
      ],
      groups: [
        {
          title: "Lumber",
          source: "",
          rows: [
            {
              cells: [
                { ticks: ticksFor("8' board", 1, "bought") },
                words("7"),
                words("8' board"),
                words("2x4, western redcedar"),
                words("the straightest of the stack, without knots at the ends"),
                words("$9.75"),
                words("$68.25"),
              ],
            },
            {
              cells: [
                { ticks: ticksFor("10' board", 1, "bought") },
                words("12"),
                words("10' board"),
                words("1x4, western redcedar"),
                NONE,
                words("$7.20"),
                words("$86.40"),
              ],
            },
          ],
        },
        {
          title: "Hardware",
          source: "",
          rows: [
            {
              cells: [
                { ticks: ticksFor("screws", 1, "bought") },
                words("2"),
                words("box of 100"),
                words('#8 x 1-5/8", coated'),
                words("sold by the box"),
                words("no price"),
                NONE,
              ],
            },
          ],
        },
      ],
      sums: [
        { label: "Without tax", value: "$154.65" },
        { label: "With 8.25% tax", value: "$167.41" },
      ],
    },
    { kind: "paragraph", style: "source", words: "Prices are those of hillside-shop.sawbuck." },
  ],
};
