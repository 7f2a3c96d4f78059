/** The cut list, with a box to tick for each piece; as an exercise, its lengths are lines to write on. */
import type { CutRow, SheetData } from "../data";
import type { Cell, Section, Tick, Words } from "../document";
import type { SheetWords } from "../words";
import { type ColumnOf, paragraph, rows, section, some, table } from "./blocks";
import { lengthWords, partWords, rowId, rowsByMark, rowWords } from "./names";
import { lineIn } from "./problems";

export function cutListSection(data: SheetData, words: SheetWords, exercise = false): Section[] {
  const { cutList, file } = data;
  if (cutList.length === 0) return [];
  const blocks = [
    paragraph("key", words.keys.cutList),
    {
      kind: "progress" as const,
      of: "cut",
      left: words.leftToCut,
      untick: words.untick,
      putBack: words.putBack,
      notKept: words.notKept,
    },
    ...(exercise ? [paragraph("key", words.keys.lengthsToFind)] : []),
    table(
      "cuts",
      columnsOf(words, exercise),
      cutList.map(({ title, source, rows }) => ({ title, source, rows })),
      ({ place }) => lineIn(place, file),
    ),
  ];
  return section("cut-list", words.headings.cutList, blocks, { onePage: true });
}

/** The lengths that an exercise leaves blank. */
export function answerSection(data: SheetData, words: SheetWords): Section[] {
  const { mark, part, length } = columnsBy(words);
  const measured = column("measured", words.columns.ends, "wide", (row) => some(measureWords(row, words)));
  return section(
    "answers",
    words.headings.answers,
    [
      table(
        "answers",
        [mark, part, length, ruleColumn(words), measured],
        rows(rowsByMark(data).filter(isFound)),
      ),
    ],
    { newPage: true },
  );
}

/** Whether the length follows from others, and is not a plain measure typed for it. */
const isFound = ({ rule }: CutRow): boolean => rule !== "";

const columnsBy = (words: SheetWords) => ({
  tick: column("tick", words.columns.tick, "tick", (row) => ({ ticks: ticksOf(row, words) })),
  mark: column("mark", words.columns.mark, "mark", ({ mark }) => strong(mark)),
  count: column("count", words.columns.count, "number", ({ count }) => String(count)),
  part: column("part", words.columns.part, "text", (row) => partWords(row, words)),
  length: column("length", words.columns.length, "text", ({ length, measured }) =>
    length ? lengthWords(length) : strong(measured || words.notKnown),
  ),
});

function columnsOf(words: SheetWords, exercise: boolean): readonly ColumnOf<CutRow>[] {
  const { tick, mark, count, part, length } = columnsBy(words);
  const blank = column("length", words.columns.length, "text", (row) =>
    isFound(row) ? [{ text: words.columns.length, style: "blank" }] : length.cell(row),
  );
  return [
    mark,
    count,
    part,
    exercise ? blank : length,
    tick,
    {
      ...column("rip", words.columns.rip, "text", ({ ripped, width }) =>
        ripped && width ? lengthWords(width) : undefined,
      ),
      label: words.columns.ripLabel,
    },
    ...(exercise ? [ruleColumn(words)] : []),
    column("ends", words.columns.ends, "wide", (row) => {
      const said = [exercise && isFound(row) ? "" : measureWords(row, words), row.ends, ...row.notes];
      return { lines: said.filter((line) => line !== "") };
    }),
  ];
}

const ruleColumn = (words: SheetWords): ColumnOf<CutRow> =>
  column("rule", words.columns.rule, "wide", ({ rule }) => some(rule));

/** How the length is measured, as far as it is not said already. */
export function measureWords({ length, measured, shortPoint }: CutRow, words: SheetWords): string {
  const short = shortPoint ? words.shortPoint(shortPoint.text) : "";
  return [length ? measured : "", short].filter((said) => said !== "").join(", ");
}

/** A box for each piece; one for all of them where there are very many. */
function ticksOf(row: CutRow, words: SheetWords): readonly Tick[] {
  const { pieces } = row;
  const each = pieces.map((id) => ({ id: `cut/${id}`, what: words.piece(id), done: words.cut }));
  if (each.length <= MOST_TICKS) return each;
  const what = rowWords(row, words);
  return [{ id: `cut/all/${rowId(row)}/${pieces.length}`, what, done: words.cut, pieces: pieces.length }];
}
const MOST_TICKS = 48;

const column = (
  name: string,
  head: string,
  fit: ColumnOf<CutRow>["fit"],
  cell: (row: CutRow) => Cell | Words | undefined,
): ColumnOf<CutRow> => ({ name, head, fit, cell });

const strong = (text: string): Words => (text === "" ? "" : [{ text, style: "strong" }]);
