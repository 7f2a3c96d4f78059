/** Cautions, shopping, fasteners, rings, boxes, rules, steps and notes. */
import type { FastenerRow, SheetBox, SheetData, SheetRing, Shopping, ShoppingRow } from "./data";
import { setOutSection, squareSection } from "./html-drawing";
import {
  type Column,
  list,
  paragraphs,
  type RowGroup,
  section,
  some,
  table,
  terms,
  unbroken,
} from "./html-parts";
import { type Child, element } from "./markup";
import { HEADINGS, hasShopping, sentence, shoppingWords, sums } from "./wording";

export function cautionSection({ cautions }: SheetData): Child {
  if (cautions.length === 0) return null;
  const items = cautions.map(({ text, source }) =>
    element("li", {}, text, source === "" ? null : [" ", element("small", {}, `(${source})`)]),
  );
  return section("cautions", HEADINGS.cautions, element("ul", {}, items));
}

export function workSections(data: SheetData): Child {
  const { shopping, fasteners, rings, boxes, musts, steps, notes } = data;
  return [
    hasShopping(shopping)
      ? section(
          "shopping",
          HEADINGS.shopping,
          table("shop", SHOP_COLUMNS, aisles(shopping), undefined, sums(shopping)),
          paragraphs("source", shoppingWords(shopping)),
        )
      : null,
    section(
      "fasteners",
      HEADINGS.fasteners,
      table("screws", FASTENER_COLUMNS, [{ title: null, rows: fasteners }]),
    ),
    setOutSection(data),
    squareSection(data),
    section("rings", HEADINGS.rings, table("ring-list", RING_COLUMNS, [{ title: null, rows: rings }])),
    section("boxes", HEADINGS.boxes, boxes.length === 0 ? null : boxes.map(box)),
    musts.length === 0
      ? null
      : section(
          "musts",
          HEADINGS.musts,
          element(
            "ul",
            {},
            musts.map(({ rule, because, state }) =>
              element(
                "li",
                {},
                element("strong", {}, unbroken(rule)),
                because === "" ? null : ` because ${because}`,
                state === "" ? null : unbroken(`: ${state}`),
              ),
            ),
          ),
        ),
    steps.length === 0
      ? null
      : section(
          "steps",
          HEADINGS.steps,
          element(
            "ol",
            {},
            steps.map(({ title, lines }) =>
              element("li", {}, element("strong", {}, sentence(title)), list(lines)),
            ),
          ),
        ),
    section("notes", HEADINGS.notes, notes.length === 0 ? null : paragraphs("note", notes)),
  ];
}

function aisles({ rows }: Shopping): readonly RowGroup<ShoppingRow>[] {
  const titles = [...new Set(rows.map(({ aisle }) => aisle))];
  return titles.map((title) => ({ title, rows: rows.filter(({ aisle }) => aisle === title) }));
}

const SHOP_COLUMNS: readonly Column<ShoppingRow>[] = [
  { head: "Got", kind: "tick", cell: () => null },
  { head: "No.", kind: "count", cell: ({ count }) => String(count) },
  { head: "Sold as", kind: "name", cell: ({ unit }) => some(unit) },
  { head: "What", kind: "what", cell: ({ what }) => some(what) },
  { head: "Note", kind: "wide", cell: ({ note }) => some(note) },
  { head: "Each", kind: "number each", label: "each", cell: ({ each }) => each ?? "no price" },
  { head: "Together", kind: "number together", label: "together", cell: ({ total }) => some(total) },
];

const FASTENER_COLUMNS: readonly Column<FastenerRow>[] = [
  { head: "No.", kind: "count", cell: ({ count }) => (count === null ? "?" : String(count)) },
  { head: "What", kind: "name", cell: ({ what }) => some(what) },
  { head: "Holes", kind: "holes", cell: ({ holes }) => some(holes) },
  { head: "Where", kind: "wide", cell: ({ joints }) => (joints.length === 0 ? null : list(joints)) },
];

const RING_COLUMNS: readonly Column<SheetRing>[] = [
  { head: "Ring", kind: "name", cell: ({ name }) => some(name) },
  { head: "Goes round", kind: "what", cell: ({ members }) => some(members) },
  { head: "How it comes out", kind: "wide", cell: ({ state }) => some(state) },
];

function box({ name, rows, caution }: SheetBox): Child {
  return element(
    "div",
    { class: "box-figures" },
    element("h3", {}, name),
    terms("figures", rows),
    caution === "" ? null : element("p", { class: "caution" }, caution),
  );
}
