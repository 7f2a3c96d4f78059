/** What a sheet says, in rows that are known by what they are about: to be compared with those of another. Nothing here says a mark, which is another letter wherever a part comes in between. */
import type { SheetBuilt, SheetData, SheetStep } from "../data";
import { sentence } from "../parts/names";
import type { SheetWords } from "../words";
import type { Line } from "./rows";

/** The plan's title and facts, and its size over all. */
export function planLines({ title, facts, overall }: SheetData, words: SheetWords): Line[] {
  const { changes } = words;
  return [
    ...(title === "" ? [] : [{ what: changes.title, text: title }]),
    ...facts.map(({ label, value }) => ({ what: label, text: value })),
    ...(overall
      ? (["width", "depth", "height"] as const).map((side) => ({
          what: changes.overall[side],
          text: overall[side].text,
        }))
      : []),
  ];
}

/** Each thing to buy, and what is taken from the pile. */
export function buyingLines({ shopping: { rows, onHand } }: SheetData, words: SheetWords): Line[] {
  return [
    ...rows.map(({ what, unit, count, each }) => ({
      what: [what, unit].filter(Boolean).join(", "),
      text: each === null ? String(count) : words.changes.countAt(count, each),
    })),
    ...(onHand.length > 0 ? [{ what: words.changes.fromPile, text: onHand.join(", ") }] : []),
  ];
}

export function costLines({ shopping }: SheetData, words: SheetWords): Line[] {
  const { subtotal, tax, total, left, withoutPrice, carry } = shopping;
  return lines([
    [words.beforeTax, total === subtotal ? null : subtotal],
    [words.tax, tax],
    [words.total, total],
    [words.leftOfBudget, left && !left.over ? left.amount : null],
    [words.overBudget, left?.over ? left.amount : null],
    [words.changes.withoutPrice, withoutPrice.join(", ")],
    [words.changes.toCarry, carry?.weight ?? null],
  ]);
}

export function joiningLines({ joints, fasteners }: SheetData, words: SheetWords): Line[] {
  return [
    ...joints.map(({ title, what, pattern, holes, crossings, screws }) => ({
      what: title,
      text: [
        what,
        pattern,
        holes,
        crossings === null || screws === null ? "" : words.screwsInAll(screws, crossings),
      ]
        .filter(Boolean)
        .join(", "),
    })),
    ...fasteners.map(({ what, count }) => ({ what, text: count === null ? words.notKnown : String(count) })),
  ];
}

/** Each tool with what it is taken up for. */
export const toolLines = ({ tools }: SheetData): Line[] =>
  tools.map(({ what, uses }) => ({ what, text: uses.join("; ") }));

/** Rings, boxes, finishes, liners, rules and notes. */
export function moreLines(data: SheetData, words: SheetWords): Line[] {
  const { changes } = words;
  return [
    ...data.rings.map(({ name, members, state }) => ({ what: name, text: words.said(members, state) })),
    ...data.boxes.flatMap(({ name, rows }) =>
      rows.map(({ label, value }) => ({ what: words.said(name, label), text: value })),
    ),
    ...data.finishes.map(({ what, parts, area, coats, amount }) => ({
      what: words.said(what, parts.map(withoutMark).join(", ")),
      text: [words.work.coats(coats), area?.text ?? "", amount?.text ?? ""].filter(Boolean).join(", "),
    })),
    ...data.linings.map(({ what, box, cuts }) => ({
      what: words.inBox(what, box),
      text: cuts.map((c) => `${c.count} ${c.what}, ${c.length.text}${words.by}${c.width.text}`).join("; "),
    })),
    ...data.musts.map(({ rule, state }) => ({ what: rule, text: state })),
    ...data.notes.map((note) => ({ what: changes.note, text: note })),
    ...data.built.map((one) => ({ what: words.built.on(one.date, one.by), text: builtText(one, words) })),
  ];
}

/** A step by its title; none where they only follow from the joints. */
export function stepLines({ steps, stepsProposed }: SheetData, words: SheetWords): Line[] {
  if (stepsProposed) return [];
  return steps.map((step) => ({ what: step.title, text: stepText(step, words) }));
}

/** The order of the steps that both have. */
export function orderOfSteps({ steps, stepsProposed }: SheetData, both: ReadonlySet<string>): string {
  const titles = steps.map(({ title }) => title).filter((title) => both.has(title));
  return stepsProposed ? "" : titles.map(sentence).join(" ");
}

const stepText = (
  { fresh, joins, coats, linings, takes, wait, people }: SheetStep,
  words: SheetWords,
): string =>
  [
    ...fresh.map(({ part, count }) => `${count} ${part}`),
    ...joins.map(({ title, what, screws }) =>
      [title, what, screws === null ? "" : words.screws(screws)].filter(Boolean).join(", "),
    ),
    ...coats,
    ...linings,
    people === null ? "" : words.people(people),
    takes?.text ?? "",
    wait ? words.thenWait(wait.text) : "",
  ]
    .filter(Boolean)
    .join("; ");

/** What came out, without what was planned: that is the plan's. */
const builtText = ({ measured, boards, changed, wear }: SheetBuilt, words: SheetWords): string =>
  [
    ...measured.map(({ what, built }) => words.said(what, built.text)),
    ...boards.map(({ used, planned }) => words.built.insteadOf(used, planned)),
    ...changed,
    ...wear.map(({ date, words: found }) => words.said(words.built.wear(date), found)),
  ].join(words.between) || words.built.asPlanned;

const lines = (rows: readonly (readonly [what: string, text: string | null])[]): Line[] =>
  rows.flatMap(([what, text]) => (text ? [{ what, text }] : []));

/** `leg` of `A leg`: names are in small letters. */
const withoutMark = (marked: string): string => marked.replace(/^[A-Z]+ /, "");
