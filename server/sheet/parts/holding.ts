/** What has to carry something and what it can bear, the room that roots find, and gaps through the year. */
import { shownPercent } from "../../worked";
import type { Marked, SheetData, SheetGap, SheetHeld, SheetRoots } from "../data";
import type { Section, Words } from "../document";
import type { SheetWords } from "../words";
import { type ColumnOf, list, paragraph, rows, section, some, table } from "./blocks";
import { lengthWords } from "./names";
import { lineIn } from "./problems";

/** What uses less than so many percent is told in one line. */
const LITTLE = 10;

export function holdingSection(data: SheetData, words: SheetWords): Section[] {
  const { holds, taken, holdsCaution, file } = data;
  const small = holds.filter(({ uses, load }) => load && uses !== null && uses < LITTLE / 100);
  const told = holds.filter((row) => !small.includes(row));
  return section("holding", words.headings.holding, [
    table("holds", columnsOf(words), rows(told), ({ place }) => (place ? lineIn(place, file) : {})),
    small.length > 0
      ? paragraph("plain", words.holding.little(LITTLE, small.map(({ what }) => what).join(words.between)))
      : undefined,
    holdsCaution === "" ? undefined : paragraph("caution", holdsCaution),
    list(
      "bullets",
      taken.map(({ text, source }) => ({ words: withSource(text, source) })),
      { columns: 2 },
    ),
  ]);
}

function columnsOf(words: SheetWords): readonly ColumnOf<SheetHeld>[] {
  const { columns } = words.holding;
  return [
    { name: "what", head: columns.what, fit: "text", cell: ({ what }) => some(what) },
    { name: "load", head: columns.load, fit: "text", cell: ({ load }) => some(load?.text ?? "") },
    { name: "limit", head: columns.limit, fit: "text", cell: ({ limit }) => some(limit?.text ?? "") },
    { name: "uses", head: columns.uses, fit: "number", cell: ({ uses }) => some(usesWords(uses, words)) },
    {
      name: "state",
      head: columns.state,
      fit: "text",
      cell: ({ state }) => [{ text: state, style: "strong" }],
    },
  ];
}

/** `58%`, `under 1%`, `12 times`. */
function usesWords(uses: number | null, { holding }: SheetWords): string {
  if (uses === null) return "";
  const percent = shownPercent(uses);
  if (percent >= MANY) return holding.times(Math.round(uses));
  return percent < 1 ? holding.less(1) : holding.percent(percent);
}

/** From ten times on nobody counts percent. */
const MANY = 1000;

export function rootSection({ roots }: SheetData, words: SheetWords): Section[] {
  const { columns, inBox } = words.holding;
  const sources = [...new Set(roots.flatMap(({ source }) => some(source) ?? []))].join(words.between);
  const columnsOf: readonly ColumnOf<SheetRoots>[] = [
    { name: "crop", head: columns.crop, fit: "text", cell: ({ crop, box }) => some(inBox(crop, box)) },
    { name: "here", head: columns.here, fit: "text", cell: ({ here }) => some(here) },
    { name: "wants", head: columns.wants, fit: "text", cell: ({ wants }) => some(wants) },
    { name: "ground", head: columns.ground, fit: "text", cell: ({ ground }) => some(ground) },
    { name: "state", head: columns.state, fit: "text", cell: ({ state }) => some(state) },
  ];
  return section("roots", words.headings.roots, [
    table("root-list", columnsOf, rows(roots)),
    sources === "" ? undefined : paragraph("source", words.holding.rootsFrom(sources)),
  ]);
}

export function gapSection({ gaps, file }: SheetData, words: SheetWords): Section[] {
  const { columns } = words.holding;
  const columnsOf: readonly ColumnOf<SheetGap>[] = [
    { name: "row", head: columns.row, fit: "text", cell: ({ row }) => some(row) },
    { name: "built", head: columns.built, fit: "text", cell: ({ built }) => gapWords(built, words) },
    { name: "wettest", head: columns.wettest, fit: "text", cell: ({ wettest }) => gapWords(wettest, words) },
    { name: "driest", head: columns.driest, fit: "text", cell: ({ driest }) => gapWords(driest, words) },
    { name: "where", head: columns.where, fit: "text", cell: ({ where }) => some(where) },
  ];
  return section("gaps", words.headings.gaps, [
    table("gap-list", columnsOf, rows(gaps), ({ place }) => lineIn(place, file)),
  ]);
}

/** A gap that is less than nothing is closed. */
const gapWords = (gap: Marked, { holding }: SheetWords): Words =>
  gap.mm > 0 ? lengthWords(gap) : holding.closed(gap.text.replace(/^-/, ""));

const withSource = (text: string, source: string): Words =>
  source === "" ? text : [{ text }, { text: ` (${source})`, style: "small" }];
