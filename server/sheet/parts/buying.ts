/** What to buy, by aisle, and what it comes to. */
import type { SheetData, Shopping, ShoppingRow } from "../data";
import type { Section } from "../document";
import { pileWords } from "../gather-work";
import type { SheetWords } from "../words";
import { type ColumnOf, list, paragraph, section, some, table } from "./blocks";

export function buyingSection({ shopping }: SheetData, words: SheetWords): Section[] {
  const { rows, pile, withoutPrice, carry } = shopping;
  if (rows.length + pile.length + withoutPrice.length === 0) return [];
  const aisles = [...new Set(rows.map(({ aisle }) => aisle))];
  return section("shopping", words.headings.buying, [
    ...(carry
      ? [paragraph("key", words.carry(carry.count, carry.longest?.text ?? "", carry.weight ?? ""))]
      : []),
    table(
      "shop",
      columnsOf(words),
      aisles.map((aisle) => ({
        title: Object.hasOwn(words.wood.aisles, aisle) ? words.wood.aisles[aisle]! : aisle,
        source: "",
        rows: rows.filter((row) => row.aisle === aisle),
      })),
      undefined,
      sums(shopping, words),
    ),
    ...(withoutPrice.length > 0 ? [paragraph("source", words.withoutPrice(withoutPrice.join(", ")))] : []),
    ...(pile.length > 0 ? [paragraph("plain", words.fromPile)] : []),
    list(
      "bullets",
      pile.map((one) => ({ words: words.piled(pileWords(one, words), one.pieces, one.saves ?? "") })),
    ),
  ]);
}

function columnsOf(words: SheetWords): readonly ColumnOf<ShoppingRow>[] {
  const { columns } = words;
  return [
    {
      name: "tick",
      head: columns.got,
      fit: "tick",
      // Four of a size that are got are not the five that another plan wants.
      cell: ({ key, count, unit, what }) => ({
        ticks: [{ id: `buy/${key}/${count}`, what: `${unit} ${what}`.trim(), done: words.bought }],
      }),
    },
    { name: "count", head: columns.count, fit: "number", cell: ({ count }) => String(count) },
    { name: "sold", head: columns.soldAs, fit: "text", cell: ({ unit }) => some(unit) },
    { name: "what", head: columns.what, fit: "text", cell: ({ what }) => some(what) },
    { name: "note", head: columns.note, fit: "wide", cell: ({ note }) => some(note) },
    {
      name: "each",
      head: columns.each,
      fit: "number",
      label: columns.eachLabel,
      cell: ({ each }) => each ?? words.noPrice,
    },
    {
      name: "together",
      head: columns.together,
      fit: "number",
      label: columns.togetherLabel,
      cell: ({ total }) => some(total),
    },
  ];
}

/** The sums that are known. */
function sums({ subtotal, tax, taxOf, total, budget, left }: Shopping, words: SheetWords) {
  const all = [
    // Without a tax it is the total.
    { label: words.beforeTax, value: tax === null ? null : subtotal },
    { label: taxOf === null ? words.tax : words.taxOf(taxOf), value: tax },
    { label: words.total, value: total },
    { label: words.budget, value: budget },
    { label: left?.over ? words.overBudget : words.leftOfBudget, value: left?.amount ?? null },
  ];
  return all.flatMap(({ label, value }) => (value === null ? [] : [{ label, value }]));
}
