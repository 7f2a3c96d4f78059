/** A book of plans: what is told of each in a table of contents and on a page, made of the data of their sheets. */
import type { SheetData } from "../data";
import type { Block, Section, Table } from "../document";
import type { SheetDrawing } from "../drawings";
import { list, paragraph, rows, section, table, terms } from "../parts/blocks";
import type { SheetWords } from "../words";

export interface BookPlan {
  readonly data: SheetData;
  /** The comment at the head of its text, in one line. */
  readonly about: string;
  readonly drawing: SheetDrawing | undefined;
  /** Where its drawing lies, as seen from the book, for a book that shows it from there. */
  readonly address: string | undefined;
}

export interface Book {
  readonly language: string;
  readonly title: string;
  readonly under: string;
  readonly care: string;
  readonly contents: Table | undefined;
  readonly pages: readonly BookPage[];
  readonly words: SheetWords;
}

export interface BookPage {
  /** What a row of the contents leads to: `plan-1`. */
  readonly id: string;
  readonly title: string;
  readonly under: string;
  readonly about: string;
  readonly drawing: SheetDrawing | undefined;
  readonly address: string | undefined;
  readonly sections: readonly Section[];
}

/** What the contents and a program are told of one plan. */
export interface InShort {
  readonly file: string;
  readonly title: string;
  readonly about: string;
  /** Empty where nothing is placed. */
  readonly size: string;
  readonly pieces: number;
  readonly boards: number;
  /** Null where no price is known. */
  readonly cost: string | null;
  /** Whether the cost leaves out something without a price. */
  readonly costsMore: boolean;
  readonly weight: string | null;
  readonly problems: Readonly<Record<"error" | "hazard" | "warning" | "hint", number>>;
  readonly accepted: number;
  readonly notChecked: number;
}

/** What the comment at the head of a text says, without its marks. */
export function headComment(text: string): string {
  const [head] = /^\uFEFF?(?:[ \t]*#.*(?:\r\n?|\n|$))+/.exec(text) ?? [""];
  return head
    .replace(/^\uFEFF?[ \t]*#+[ \t]*/gm, "")
    .replace(/\s+/g, " ")
    .trim();
}

const CLASSES = ["error", "hazard", "warning", "hint"] as const;

export function inShort({ data, about }: BookPlan, { book }: SheetWords): InShort {
  const { overall, shopping, problems } = data;
  const sum = (numbers: readonly number[]): number => numbers.reduce((all, n) => all + n, 0);
  const count = (kind: (typeof CLASSES)[number]): number => problems.filter((p) => p.class === kind).length;
  return {
    file: data.file,
    title: data.title,
    about,
    size: overall ? book.wide(overall.width.text, overall.depth.text, overall.height.text) : "",
    pieces: sum(data.cutList.flatMap((group) => group.rows.map((row) => row.count))),
    boards: sum(shopping.rows.flatMap((row) => (/^(boards|sheets)\//.test(row.key) ? [row.count] : []))),
    cost: shopping.total ?? shopping.subtotal,
    costsMore: shopping.withoutPrice.length > 0,
    weight: data.weight?.text ?? null,
    problems: {
      error: count("error"),
      hazard: count("hazard"),
      warning: count("warning"),
      hint: count("hint"),
    },
    accepted: data.accepted.length,
    notChecked: data.notChecked.length,
  };
}

export function bookOf(plans: readonly BookPlan[], words: SheetWords): Book {
  const { book } = words;
  return {
    language: words.tag,
    title: book.title,
    under: book.under(plans.length),
    care: book.care,
    contents: contentsOf(plans, words),
    pages: plans.map((plan, i) => ({
      id: idOf(i),
      title: plan.data.title,
      under: plan.data.file,
      about: plan.about,
      drawing: plan.drawing,
      address: plan.address,
      sections: sectionsOf(plan, words),
    })),
    words,
  };
}

const idOf = (i: number): string => `plan-${i + 1}`;

function contentsOf(plans: readonly BookPlan[], words: SheetWords): Table | undefined {
  const { columns } = words.book;
  type Row = { readonly id: string; readonly short: InShort };
  const all = plans.map((plan, i): Row => ({ id: idOf(i), short: inShort(plan, words) }));
  const column = (
    name: keyof typeof columns,
    cell: (short: InShort) => string,
    fit: "text" | "number" | "wide" = "text",
  ) => ({
    name,
    head: columns[name],
    fit,
    label: columns[name],
    cell: ({ short }: Row) => cell(short),
  });
  return table(
    "plans",
    [
      { ...column("plan", () => ""), cell: ({ id, short }: Row) => [{ text: short.title, to: id }] },
      column("about", ({ about }) => about, "wide"),
      column("size", ({ size }) => size),
      column("pieces", ({ pieces }) => String(pieces), "number"),
      column("boards", ({ boards }) => String(boards), "number"),
      column("cost", (short) => costOf(short, words), "number"),
      column("weight", ({ weight }) => weight ?? ""),
      column("problems", (short) => problemsOf(short, words)),
      column("notChecked", ({ notChecked }) => String(notChecked), "number"),
    ],
    rows(all),
  );
}

export const costOf = ({ cost, costsMore }: InShort, { book }: SheetWords): string =>
  cost === null ? "" : costsMore ? book.andMore(cost) : cost;

export function problemsOf({ problems }: InShort, { book }: SheetWords): string {
  const told = CLASSES.flatMap((kind) => (problems[kind] > 0 ? [book.count(kind, problems[kind])] : []));
  return told.length > 0 ? told.join(", ") : book.none;
}

function sectionsOf(plan: BookPlan, words: SheetWords): Section[] {
  const { data } = plan;
  const { book, plan: said } = words;
  const { columns, headings } = book;
  const short = inShort(plan, words);
  const fact = (label: string): string => data.facts.find((f) => f.label === label)?.value ?? "";
  const facts = (pairs: readonly (readonly [string, string])[]): Block | undefined =>
    terms(pairs.flatMap(([label, value]) => (value === "" ? [] : [{ label, words: value }])));
  const pieces = data.cutList.flatMap(({ stock, rows }) => rows.map((row) => ({ stock, row })));
  const hazards = data.accepted.filter((p) => p.class === "hazard");
  return [
    ...section("figures", headings.figures, [
      facts([
        ...[said.facts.writtenBy, said.facts.licence, said.facts.language].map((l) => [l, fact(l)] as const),
        [columns.size, short.size],
        [columns.pieces, String(short.pieces)],
        [columns.boards, String(short.boards)],
        [columns.cost, costOf(short, words)],
        [columns.weight, short.weight ?? ""],
        [columns.problems, problemsOf(short, words)],
        [columns.notChecked, book.things(short.notChecked)],
      ]),
    ]),
    ...section("made-of", headings.madeOf, [
      table(
        "pieces",
        [
          { name: "mark", head: words.columns.mark, fit: "mark", cell: ({ row }) => row.mark },
          { name: "part", head: words.columns.part, fit: "text", cell: ({ row }) => row.part },
          { name: "count", head: words.columns.count, fit: "number", cell: ({ row }) => String(row.count) },
          { name: "length", head: words.columns.length, fit: "text", cell: ({ row }) => row.length?.text },
          { name: "stock", head: words.columns.stock, fit: "text", cell: ({ stock }) => stock },
        ],
        rows(pieces),
      ),
    ]),
    ...section("built-with", headings.builtWith, [
      facts([
        [book.stock, data.cutList.map(({ title }) => title).join(words.between)],
        [
          book.fasteners,
          data.fasteners
            .map((f) => (f.count === null ? f.what : book.of(f.count, f.what)))
            .join(words.between),
        ],
        [book.tools, data.tools.map(({ what }) => what).join(words.between)],
      ]),
    ]),
    ...section("accepted", headings.accepted, [
      list(
        "bullets",
        hazards.map((p) => ({
          words: [
            { text: p.message, ...(words.messages !== words.tag && { language: words.messages }) },
            { text: ` ${words.acceptedBecause}${words.colon} `, style: "strong" },
            { text: p.accepted ?? "" },
          ],
        })),
      ),
      hazards.length > 0 ? paragraph("caution", words.book.care) : undefined,
    ]),
  ];
}
