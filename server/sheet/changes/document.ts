/** What differs between two plans as something to be read: for a terminal, Markdown and a page. */
import type { Drawing } from "../display";
import type { Block, Figure, Item, Section, SheetDocument } from "../document";
import { list, paragraph, section, terms } from "../parts/blocks";
import { builtSection } from "../parts/built";
import { notCheckedItem, problemItem } from "../parts/problems";
import type { SheetWords } from "../words";
import type { PieceChange, PieceFacts, SheetChanges, Told } from "./data";

/** The whole as it was and is, turned, to one scale; undefined where nothing stands. */
export interface ChangeDrawings {
  readonly old: Drawing | undefined;
  readonly new: Drawing | undefined;
}

/** Comparisons one after the other; of several, each section says of which plan it is. */
export function changesDocument(
  all: readonly { readonly changes: SheetChanges; readonly drawings?: ChangeDrawings }[],
  words: SheetWords,
): SheetDocument {
  const { changes: says } = words;
  const [first] = all;
  const alone = all.length === 1;
  const names = all.map(({ changes }) => namesOf(changes, words));
  return {
    language: words.tag,
    title: alone && first ? says.of(names[0]!.title) : says.several(all.length),
    plan: "",
    under: alone ? names[0]!.under : names.map(({ title }) => title).join(words.between),
    sections: all.flatMap(({ changes, drawings }, i) => {
      const sections = sectionsOf(changes, words, drawings);
      const { title, under } = names[i]!;
      if (alone) return sections;
      return sections.map((own, k) => ({
        ...own,
        heading: words.said(title, own.heading),
        blocks: k === 0 ? [paragraph("key", under), ...own.blocks] : own.blocks,
        ...(k === 0 && i > 0 && { newPage: true }),
      }));
    }),
    words,
  };
}

/** What a comparison is called, and which files it compares. */
function namesOf({ plans: { old, new: now } }: SheetChanges, { changes: says }: SheetWords) {
  if (old && now) return { title: now.title, under: says.from(old.file, now.file) };
  const only = (now ?? old)!;
  return { title: only.title, under: now ? says.isNew(only.file) : says.isGone(only.file) };
}

function sectionsOf(
  changes: SheetChanges,
  words: SheetWords,
  drawings: ChangeDrawings | undefined,
): Section[] {
  const { changes: says } = words;
  const record = builtSection(changes, words);
  if (changes.same)
    return [...record, ...section("same", says.headings.plan, [paragraph("plain", says.nothing)])];
  return [
    ...record,
    ...(drawings ? drawingSection(drawings, record.length > 0, words) : []),
    ...section("plan", says.headings.plan, [toldTerms(changes.plan, words)]),
    ...section("pieces", says.headings.pieces, [pieceList(changes, words)]),
    ...buyingSection(changes, words),
    ...section("joining", says.headings.joining, [toldTerms(changes.joining, words)]),
    ...section("more", says.headings.more, [toldTerms(changes.more, words)]),
    ...section("steps", says.headings.steps, [toldTerms(changes.steps, words)]),
    ...problemSections(changes, words),
  ];
}

function drawingSection(
  { old, new: now }: ChangeDrawings,
  built: boolean,
  { changes }: SheetWords,
): Section[] {
  const [first, second] = built ? [changes.planned, changes.built] : [changes.before, changes.now];
  const figure = (caption: string, drawing: Drawing | undefined): Figure[] =>
    drawing ? [{ kind: "figure", caption, drawing: () => drawing, toScale: true }] : [];
  const figures = [...figure(first, old), ...figure(second, now)];
  return figures.length === 0
    ? []
    : section("drawings", changes.headings.drawings, [
        paragraph("key", changes.marked, []),
        { kind: "figures", figures },
      ]);
}

/** Each with what was and what is. */
const toldTerms = (told: readonly Told[], { changes: says }: SheetWords): Block | undefined =>
  terms(told.map(({ what, old, new: now }) => ({ label: what, words: wasWords(old, now, says) })));

function wasWords(old: string | null, now: string | null, says: SheetWords["changes"]): string {
  if (old && now) return says.was(old, now);
  return now ? says.come(now) : says.gone(old ?? "");
}

function buyingSection({ buying, cost, cutting }: SheetChanges, words: SheetWords): Section[] {
  const { changes: says } = words;
  return section("buying", says.headings.buying, [
    toldTerms([...buying, ...cost], words),
    terms(
      cutting.map(({ stock, old, new: now, same }) => ({
        label: words.said(says.cutOtherwise, stock),
        words: says.cut(old, now, same),
      })),
    ),
  ]);
}

/** Those that changed, one by one; then those that only stand elsewhere, by how they moved. */
function pieceList({ pieces }: SheetChanges, words: SheetWords): Block | undefined {
  const { changes: says } = words;
  const alone = new Map<string, PieceChange[]>();
  const items: Item[] = [];
  for (const change of pieces) {
    const way = movedAlone(change);
    if (way === undefined) items.push(pieceItem(change, words));
    else alone.set(way, [...(alone.get(way) ?? []), change]);
  }
  return list("leads", [
    ...items,
    ...[...alone].map(([way, changes]) => ({
      lead: says.leads.moved,
      words: words.said(way, changes.map((change) => partWords(change.new!, words)).join(", ")),
    })),
  ]);
}

/** The one way by which all pieces of a row moved to which nothing else happened. */
function movedAlone({ old, new: now, fields, pieces, moved, turned }: PieceChange): string | undefined {
  const [way, second] = moved;
  const otherwise = old?.part !== now?.part || fields.length + turned.length + pieces.new.length > 0;
  return way && !second && !otherwise && way.pieces.length === now?.count ? way.words : undefined;
}

function pieceItem({ old, new: now, fields, pieces, moved, turned }: PieceChange, words: SheetWords): Item {
  const { changes: says } = words;
  const { leads } = says;
  if (!now) return { lead: leads.gone, words: rowWords(old!, words) };
  if (!old) return { lead: leads.new, words: rowWords(now, words) };
  const renamed = old.part !== now.part;
  const changed = fields.length + pieces.old.length + pieces.new.length > 0;
  const some = (n: number): string => says.some(n, now.count);
  return {
    lead: renamed ? leads.named : changed ? leads.changed : leads.moved,
    words: renamed ? says.named(partWords(now, words), partWords(old, words)) : rowWords(now, words),
    below: [
      ...fields.map((field) => words.said(field.what, wasWords(field.old, field.new, says))),
      ...(pieces.old.length > 0 ? [says.gone(pieces.old.map(words.piece).join(", "))] : []),
      ...(pieces.new.length > 0 ? [says.come(pieces.new.map(words.piece).join(", "))] : []),
      ...moved.map((m) => says.moved(some(m.pieces.length), m.words)),
      ...(turned.length > 0 ? [says.turned(some(turned.length))] : []),
    ],
  };
}

const partWords = ({ part, hand }: PieceFacts, words: SheetWords): string =>
  hand === "" ? part : `${part}, ${words.hands[hand]}`;

const rowWords = (row: PieceFacts, words: SheetWords): string =>
  words.changes.row(partWords(row, words), words.pieces(row.count), row.stock, row.length?.text ?? "");

function problemSections(changes: SheetChanges, words: SheetWords): Section[] {
  const { changes: says } = words;
  const { problems, accepted, notChecked, plans } = changes;
  const told = (
    heading: string,
    items: readonly Item[],
    style: "leads" | "bullets" = "leads",
  ): (Block | undefined)[] =>
    items.length === 0
      ? []
      : [
          paragraph("plain", [{ text: `${heading}${words.colon}`, style: "strong" }]),
          list(
            style,
            items.map(({ line: _, ...item }) => item),
          ),
        ];
  const { file } = (plans.new ?? plans.old)!;
  const of = (list: SheetChanges["problems"]["new"]) => list.map((p) => problemItem(p, file, words));
  const briefly = (list: SheetChanges["problems"]["new"]) => of(list).map(({ below: _, ...item }) => item);
  const unchecked = (list: SheetChanges["notChecked"]["new"]) =>
    list.map((n) => notCheckedItem({ what: n.what, why: n.why }, file, words));
  return [
    ...section("problems", says.headings.problems, [
      ...told(says.newlyTold, of(problems.new)),
      ...told(says.noLonger, briefly(problems.old)),
      ...told(says.newlyAccepted, of(accepted.new)),
      ...told(says.noLongerAccepted, briefly(accepted.old)),
    ]),
    ...section("not-checked", says.headings.notChecked, [
      ...told(says.newlyTold, unchecked(notChecked.new), "bullets"),
      ...told(says.noLonger, unchecked(notChecked.old), "bullets"),
    ]),
  ];
}
