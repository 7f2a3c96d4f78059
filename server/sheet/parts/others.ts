/** Cautions, rings, boxes, the builder's own rules, and notes. */
import type { SheetBox, SheetData, SheetRing } from "../data";
import type { Group, Section } from "../document";
import type { SheetWords } from "../words";
import { type ColumnOf, list, paragraph, rows, section, some, table, terms } from "./blocks";

export function cautionSection({ cautions }: SheetData, words: SheetWords): Section[] {
  const items = cautions.map(({ text, source }) => ({
    words: source === "" ? text : [{ text }, { text: ` (${source})`, style: "small" as const }],
  }));
  return section("cautions", words.headings.cautions, [list("bullets", items, { columns: 2 })]);
}

export function figureSections(data: SheetData, words: SheetWords): Section[] {
  const { rings, boxes, musts } = data;
  const { columns } = words;
  const ringColumns: readonly ColumnOf<SheetRing>[] = [
    { name: "ring", head: columns.ring, fit: "text", cell: ({ name }) => some(name) },
    { name: "round", head: columns.goesRound, fit: "text", cell: ({ members }) => some(members) },
    { name: "state", head: columns.comesOut, fit: "wide", cell: ({ state }) => some(state) },
  ];
  return [
    ...section("rings", words.headings.rings, [table("ring-list", ringColumns, rows(rings))]),
    ...section("boxes", words.headings.boxes, boxes.map(boxGroup)),
    ...section("musts", words.headings.musts, [
      list(
        "bullets",
        musts.map(({ rule, because, state }) => ({
          words: [{ text: rule, style: "strong" }, { text: ruleWords(because, state, words) }],
        })),
      ),
    ]),
  ];
}

/** Why a rule is made, and how it came out. */
function ruleWords(because: string, state: string, words: SheetWords): string {
  const why = because === "" ? "" : words.because(because);
  return state === "" ? why : words.said(why, state);
}

export function noteSection({ notes }: SheetData, words: SheetWords): Section[] {
  return section(
    "notes",
    words.headings.notes,
    notes.map((note) => paragraph("plain", note)),
  );
}

function boxGroup({ name, rows, caution }: SheetBox): Group {
  const figures = terms(
    rows.map(({ label, value }) => ({ label, words: value })),
    { columns: 2 },
  );
  return {
    kind: "group",
    name: "box-figures",
    heading: name,
    blocks: [...(figures ? [figures] : []), ...(caution === "" ? [] : [paragraph("caution", caution)])],
  };
}
