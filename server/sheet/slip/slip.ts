/** A measuring-up slip: what to measure at another place, in which order and where, with room to write. */
import { finished, type Steps } from "../../solid/steps";
import { exactly, LENGTH, lengthText, quantityText } from "../../units";
import type { Worked } from "../../worked";
import type { Drawing } from "../display";
import type { Block, Figure, Section, SheetDocument } from "../document";
import { drawnPieces } from "../drawn";
import { identitiesOf } from "../identity";
import { list, rows as oneGroup, paragraph, section, table } from "../parts/blocks";
import { drawMeasured, type ToMeasure } from "../piece-drawing";
import type { SheetWords } from "../words";
import type { SlipRow } from "./rows";
import type { Span } from "./spans";

/** What is measured, and where it is seen, by what it is called. */
export interface Slip {
  readonly rows: readonly SlipRow[];
  readonly spans: ReadonlyMap<string, Span>;
}

/** What a row is called, its value in the plan and its bounds, in words; empty where there are none. */
export interface RowWords {
  readonly number: number;
  readonly label: string;
  readonly now: string;
  readonly bounds: string;
}

export function rowWords({ rows }: Slip, worked: Worked, { slip: says, numbers }: SheetWords): RowWords[] {
  const display = { ...worked.settings.display, numbers };
  return rows.map(({ what, side, value, least, most }, i) => {
    const [low, high] = [least, most].map((bound) => bound && quantityText(bound, display));
    return {
      number: i + 1,
      label: side ? says.sides[side.of][side.side] : what,
      now: quantityText(value, display),
      bounds: low && high ? says.between(low, high) : low ? says.least(low) : high ? says.most(high) : "",
    };
  });
}

/**
 * The front, and the left side where something is measured from front to back; none where nothing stands. In each line is
 * its number, and what was measured, or room for it.
 */
export function* slipDrawings(
  { rows, spans }: Slip,
  measured: ReadonlyMap<string, string>,
  worked: Worked,
  { drawings: says }: SheetWords,
): Steps<Drawing[]> {
  const pieces = drawnPieces(worked, identitiesOf(worked), says);
  if (pieces.length === 0) return [];
  const { title, display } = worked.settings;
  const options = { name: title || says.thePlan, says, system: display.system };
  const lines = rows.flatMap(({ what }, i): ToMeasure[] => {
    const span = spans.get(what);
    return span ? [{ ...span, words: `${i + 1} ${measured.get(what) ?? ROOM}` }] : [];
  });
  const back = lines.filter(({ axis }) => axis === 1);
  return [
    yield* drawMeasured(pieces, "front", lines, options),
    ...(back.length > 0 ? [yield* drawMeasured(pieces, "left", back, options)] : []),
  ];
}
const ROOM = "________";

/** To be filled in by hand. `file` is as the plan is told; `drawn`: with drawings. */
export function slipDocument(
  slip: Slip,
  worked: Worked,
  file: string,
  words: SheetWords,
  drawn: boolean,
): SheetDocument {
  const { slip: says } = words;
  const { title, display } = worked.settings;
  const drawings = drawn ? finished(slipDrawings(slip, new Map(), worked, words)) : [];
  const columns = [
    {
      name: "number",
      head: says.columns.number,
      fit: "mark" as const,
      cell: (row: RowWords) => String(row.number),
    },
    { name: "what", head: says.columns.what, fit: "text" as const, cell: (row: RowWords) => row.label },
    { name: "now", head: says.columns.now, fit: "number" as const, cell: (row: RowWords) => row.now },
    { name: "bounds", head: says.columns.bounds, fit: "text" as const, cell: (row: RowWords) => row.bounds },
    {
      name: "measured",
      head: says.columns.measured,
      fit: "text" as const,
      cell: (row: RowWords) => [{ text: row.label, style: "blank" as const }],
    },
  ];
  const own = rowWords(slip, worked, words);
  const sections =
    own.length === 0
      ? section("measure", says.headings.rows, [paragraph("plain", says.nothing)])
      : [
          ...section("measure", says.headings.rows, [
            paragraph("key", says.key),
            table("slip", columns, oneGroup(own)),
          ]),
          ...drawingSection(drawings, words),
          ...section("before", says.headingTips, [
            list(
              "bullets",
              says.tips.map((tip) => ({ words: tip })),
            ),
          ]),
        ];
  const name = title || file;
  return {
    language: words.tag,
    title: says.of(name),
    plan: "",
    under: `${file}, ${words.unitsTo(words[display.system], lengthText(exactly(LENGTH, display.mark), display))}`,
    sections,
    words,
  };
}

/** Side by side where there is room. */
export function drawingSection(drawings: readonly Drawing[], { slip: says }: SheetWords): Section[] {
  const figures = drawings.map(
    (drawing): Figure => ({ kind: "figure", caption: "", drawing: () => drawing }),
  );
  const blocks: Block[] = figures.length === 0 ? [] : [{ kind: "figures", figures }];
  return section("drawings", says.headings.drawings, blocks);
}
