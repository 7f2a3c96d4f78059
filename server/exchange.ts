/**
 * The door for what is done with several plans, or with one for somebody else: versions compared, a plan adapted, put into
 * one file, listed in a book.
 */
import { adaptedTexts, textChanges, type Wish } from "./features/adapting";
import { bundle, holderOf, type LoadOptions, load, type Reader, saysOf } from "./plan";
import { drawingsInSteps, type Evaluated, evaluate, type SheetFormat, sheetOf } from "./service";
import { type BookPlan, bookOf, headComment } from "./sheet/book/book";
import { bookPage } from "./sheet/book/html";
import { bookJson } from "./sheet/book/json";
import { bookMarkdown } from "./sheet/book/markdown";
import { sheetLines } from "./sheet/changes/as-lines";
import { changesOf } from "./sheet/changes/compare";
import type { SheetChanges } from "./sheet/changes/data";
import { type ChangeDrawings, changesDocument } from "./sheet/changes/document";
import { changeDrawings, changeDrawingsInSteps } from "./sheet/changes/drawings";
import { changesJson } from "./sheet/changes/json";
import type { Drawing } from "./sheet/display";
import type { SheetDrawing } from "./sheet/drawings";
import { SHEET_STYLE, type SheetParts, sheetPage, sheetParts } from "./sheet/html";
import { sheetMarkdown } from "./sheet/markdown";
import { marked, ofMm } from "./sheet/marks";
import { asMeasured } from "./sheet/slip/measured";
import { outcomeSections } from "./sheet/slip/outcome";
import { slipRows } from "./sheet/slip/rows";
import {
  drawingSection,
  type RowWords,
  rowWords,
  type Slip,
  slipDocument,
  slipDrawings,
} from "./sheet/slip/slip";
import { type Span, spanOf } from "./sheet/slip/spans";
import { svgText } from "./sheet/svg";
import { sheetText } from "./sheet/text";
import { type SheetLanguage, wordsIn } from "./sheet/words";

export type { Wish } from "./features/adapting";
export type { BookPlan } from "./sheet/book/book";

/** What a plan comes to, one fact a line, to be compared by lines. */
export const linesOf = (e: Evaluated, language: SheetLanguage = "en"): string =>
  sheetLines(sheetOf(e, undefined, language), wordsIn(language));

/** What differs between two plans, with their drawings where something stands. */
export interface Comparison {
  readonly changes: SheetChanges;
  readonly drawings: () => ChangeDrawings;
  readonly drawingsInSteps: () => ReturnType<typeof changeDrawingsInSteps>;
}

/**
 * Of the thing, not of the text; undefined for a plan that was not there, or is gone. Lengths are told as the new plan
 * tells them. `called` tells how the files of each are named; unsaid, as they were read.
 */
export function compare(
  old: Evaluated | undefined,
  now: Evaluated | undefined,
  called: { readonly old?: (file: string) => string; readonly new?: (file: string) => string } = {},
  language: SheetLanguage = "en",
): Comparison {
  const [before, after] = [old ?? ofNothing(), now ?? ofNothing()];
  const { display } = (now ?? before).worked.settings;
  const [was, is] = [before, after].map((e) => ({
    ...e,
    worked: { ...e.worked, settings: { ...e.worked.settings, display } },
  })) as [Evaluated, Evaluated];
  const words = wordsIn(language);
  const write = { ...display, numbers: words.numbers };
  const changes = changesOf(
    { sheet: sheetOf(was, called.old, language), isThere: old !== undefined },
    { sheet: sheetOf(is, called.new, language), isThere: now !== undefined },
    words,
    (mm) => marked(ofMm(mm), write),
  );
  const drawn = [changes, was.worked, is.worked, words] as const;
  return {
    changes,
    drawings: () => changeDrawings(...drawn),
    drawingsInSteps: () => changeDrawingsInSteps(...drawn),
  };
}

/** The sections of a comparison, for a page that changes only those that differ, with its style. */
export function comparisonParts(
  { changes }: Comparison,
  drawings: ChangeDrawings,
  language: SheetLanguage,
): SheetParts & { readonly title: string; readonly style: string } {
  const document = changesDocument([{ changes, drawings }], wordsIn(language));
  return { title: document.title, ...sheetParts(document), style: SHEET_STYLE };
}

/** What a plan that is not there is compared as. */
const ofNothing = (): Evaluated => evaluate("", "", (path) => ({ file: path, refused: "" }));

/** Comparisons, one after the other, in one of the formats of a sheet; only a page shows drawings. */
export function writeComparisons(
  all: readonly Comparison[],
  format: SheetFormat,
  language: SheetLanguage = "en",
): string {
  if (format === "json") return changesJson(all.map(({ changes }) => changes));
  const document = changesDocument(
    all.map(({ changes, drawings }) => ({ changes, ...(format === "html" && { drawings: drawings() }) })),
    wordsIn(language),
  );
  if (format === "html") return sheetPage(document);
  return format === "markdown" ? sheetMarkdown(document) : sheetText(document);
}

/** The files that a plan reads, by their names, itself the first: found without working it out. */
export const filesRead = (file: string, text: string, read: Reader, options: LoadOptions = {}): string[] =>
  load(file, text, read, options).files.map((one) => holderOf(one.file));

/** A plan to which something was done: its own text, and the files it names as it then reads them. */
export interface Adapted {
  readonly text: string;
  readonly read: Reader;
  /** The texts that are others now, by their files. */
  readonly texts: ReadonlyMap<string, string>;
}

/** Does what is wished for to the texts of a plan, wherever a measure or a board stands; in words why it cannot be done. */
export function adapt(
  file: string,
  text: string,
  read: Reader,
  wishes: readonly Wish[],
  options: LoadOptions = {},
): Adapted | { readonly refused: string } {
  const texts = adaptedTexts(load(file, text, read, options), wishes);
  if ("refused" in texts) return texts;
  const overlay: Reader = (...asked) => {
    const found = read(...asked);
    const now = texts.get(found.file);
    return now === undefined || "refused" in found ? found : { ...found, text: now };
  };
  return { text: texts.get(file) ?? text, read: overlay, texts };
}

/**
 * A plan and all that it brings as one text, without prices and what is on hand; in words why there is none. `files` were
 * read for it, `notes` say what whoever gets it will miss.
 */
export function bundled(
  file: string,
  text: string,
  read: Reader,
):
  | { readonly text: string; readonly files: readonly string[]; readonly notes: readonly string[] }
  | { readonly refused: string } {
  const made = bundle(file, text, read);
  if ("refused" in made) return made;
  const { author, licence } = saysOf(text);
  const notes = [
    ...(author ? [] : ["the plan does not say who wrote it: add “written by …” under its plan line."]),
    ...(licence
      ? []
      : ["the plan does not say what others may do with it: add “licence …” under its plan line."]),
  ];
  return { ...made, notes };
}

/** Whether it declares parts: a shop file, and one of measures alone, is no plan of a thing. */
export const isPlan = ({ worked }: Evaluated): boolean =>
  worked.parts.size > 0 || worked.loaded.files[0]!.tree.complaints.length > 0;

/** What a book of plans tells of one; `drawn`: with a drawing, where something is placed. */
export function bookPlan(e: Evaluated, language: SheetLanguage, drawn: boolean): BookPlan {
  let drawing: SheetDrawing | undefined;
  if (drawn)
    for (const made of drawingsInSteps(e, language)) {
      drawing = made;
      if (drawing) break;
    }
  return { data: sheetOf(e, undefined, language), about: headComment(e.text), drawing, address: undefined };
}

export const svgOf = ({ drawing }: SheetDrawing): string => svgText(drawing);

/** A book of plans. */
export function writeBook(
  plans: readonly BookPlan[],
  format: "markdown" | "html" | "json",
  language: SheetLanguage,
): string {
  const words = wordsIn(language);
  if (format === "json") return bookJson(plans, words);
  return format === "html" ? bookPage(bookOf(plans, words)) : bookMarkdown(bookOf(plans, words));
}

export type { Slip } from "./sheet/slip/slip";

/**
 * What is to be measured at another place, with where it is seen: the plan is worked out once more for each measure, with
 * room between for other work. `read` and `options` are those it was worked out with.
 */
export function* slipInSteps(
  { file, text, worked }: Evaluated,
  read: Reader,
  options: LoadOptions = {},
): Generator<undefined, Slip, void> {
  const rows = slipRows(worked);
  const spans = new Map<string, Span>();
  const { system } = worked.settings.display;
  const [longer, more] = system === "inches" ? ['1/16"', 25.4 / 16] : ["1 mm", 1];
  for (const { what, value, at } of worked.pieces.all.length === 0 ? [] : rows) {
    const source = worked.loaded.files.find((one) => one.file === at.file)!.tree.text.slice(at.start, at.end);
    const made = adapt(file, text, read, [{ kind: "set", what, value: `(${source}) + ${longer}` }], options);
    if ("refused" in made) continue;
    const span = spanOf(worked, evaluate(file, made.text, made.read, options).worked, value.approx, more);
    if (span) spans.set(what, span);
    yield;
  }
  return { rows, spans };
}

/** One row as it is filled in: what it is called in a wish, its words, and in words what is wrong with what was typed. */
export interface FilledRow extends RowWords {
  readonly what: string;
  readonly wrong?: string;
}

export interface Filled {
  readonly rows: readonly FilledRow[];
  /** What is to be set, of the rows that can be read. */
  readonly wishes: readonly Wish[];
}

/** `typed` is what stands in the rows, by what they are called; a number alone is in the plan's own units. */
export function filledSlip(
  slip: Slip,
  { worked }: Evaluated,
  typed: (what: string) => string,
  language: SheetLanguage,
): Filled {
  const words = wordsIn(language);
  const wishes: Wish[] = [];
  const rows = rowWords(slip, worked, words).map((row, i): FilledRow => {
    const { what, value } = slip.rows[i]!;
    const text = typed(what).trim();
    if (text === "") return { ...row, what };
    const measured = asMeasured(text, value, worked.settings.display.system);
    if (measured === undefined) return { ...row, what, wrong: words.slip.unreadable(text) };
    wishes.push({ kind: "set", what, value: measured });
    return { ...row, what };
  });
  return { rows, wishes };
}

/** The page of a slip that is being filled in: the drawings with what is known, and what comes of it. */
export function slipParts(
  before: Evaluated,
  after: Evaluated | undefined,
  drawings: readonly Drawing[],
  language: SheetLanguage,
): SheetParts & { readonly title: string; readonly key: string; readonly style: string } {
  const words = wordsIn(language);
  const changes = after && compare(before, after, {}, language).changes;
  const data = (e: Evaluated) => sheetOf(e, undefined, language);
  const title = words.slip.of(before.worked.settings.title);
  const sections = [
    ...outcomeSections(data(before), after && changes && { data: data(after), changes }, words),
    ...drawingSection(drawings, words),
  ];
  const { parts } = sheetParts({ language: words.tag, title, plan: "", under: "", sections, words });
  // Its head stands above the rows.
  return { title, key: words.slip.key, language: words.tag, parts: parts.slice(1), style: SHEET_STYLE };
}

/** The drawings of a slip, in steps; `typed` as for `filledSlip`. */
export const slipDrawingsInSteps = (
  slip: Slip,
  { worked }: Evaluated,
  { wishes }: Filled,
  language: SheetLanguage,
): ReturnType<typeof slipDrawings> =>
  slipDrawings(
    slip,
    new Map(wishes.flatMap((wish) => (wish.kind === "set" ? [[wish.what, wish.value] as const] : []))),
    worked,
    wordsIn(language),
  );

/** The changes of the plan's texts that are wished for. */
export const wishedChanges = ({ worked }: Evaluated, wishes: readonly Wish[]) =>
  textChanges(worked.loaded, wishes);

/** A slip to be filled in by hand; `called` is how the plan's file is told. */
export function writeSlip(
  slip: Slip,
  { worked }: Evaluated,
  called: string,
  format: Exclude<SheetFormat, "json">,
  language: SheetLanguage = "en",
): string {
  const document = slipDocument(slip, worked, called, wordsIn(language), format === "html");
  if (format === "html") return sheetPage(document);
  return format === "markdown" ? sheetMarkdown(document) : sheetText(document);
}
