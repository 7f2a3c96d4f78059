/**
 * The door for what is done with several plans, or with one for somebody else: versions compared, a plan adapted, put into
 * one file, listed in a book.
 */
import { adaptedTexts, type Wish, wishesOf } from "./features/adapting";
import { bundle, holderOf, type Loaded, type LoadOptions, load, type Reader, saysOf, scopeOf } from "./plan";
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
import type { SheetDrawing } from "./sheet/drawings";
import { SHEET_STYLE, type SheetParts, sheetPage, sheetParts } from "./sheet/html";
import { sheetMarkdown } from "./sheet/markdown";
import { marked, ofMm } from "./sheet/marks";
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
 * tells them. `called` tells how the files of each are named; unsaid, as they were read. `building`: the new one is the old
 * as it was built then.
 */
export function compare(
  old: Evaluated | undefined,
  now: Evaluated | undefined,
  called: { readonly old?: (file: string) => string; readonly new?: (file: string) => string } = {},
  language: SheetLanguage = "en",
  building?: Building,
): Comparison {
  const [before, after] = [old ?? ofNothing(), now ?? ofNothing()].map((e) =>
    building ? withoutRecord(e) : e,
  ) as [Evaluated, Evaluated];
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
    building && (({ built }) => built.filter(({ date }) => date === building.date)[building.nth]),
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

/** One of the times a plan tells that it was built: its day, and which of that day in the order of the text. */
export interface Building {
  readonly date: string;
  readonly nth: number;
}

/** Without what is wrong with the record itself, which is no difference of the thing. */
const withoutRecord = (e: Evaluated): Evaluated => ({
  ...e,
  problems: e.problems.filter(({ code }) => code !== "built-unclear"),
  accepted: e.accepted.filter(({ problem }) => problem.code !== "built-unclear"),
});

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
  return adaptedTo(load(file, text, read, options), text, read, wishes);
}

function adaptedTo(
  loaded: Loaded,
  text: string,
  read: Reader,
  wishes: readonly Wish[],
): Adapted | { readonly refused: string } {
  const texts = adaptedTexts(loaded, wishes);
  if ("refused" in texts) return texts;
  const overlay: Reader = (...asked) => {
    const found = read(...asked);
    const now = texts.get(found.file);
    return now === undefined || "refused" in found ? found : { ...found, text: now };
  };
  return { text: texts.get(loaded.files[0]!.file) ?? text, read: overlay, texts };
}

/**
 * A plan as it was built on that day, or on the last day it tells of; once for each time that it was built then. In words
 * why it cannot be told.
 */
export function asBuilt(
  file: string,
  text: string,
  read: Reader,
  day: string | undefined,
  options: LoadOptions = {},
): readonly (Adapted & { readonly building: Building })[] | { readonly refused: string } {
  const loaded = load(file, text, read, options);
  const all = loaded.files[0]!.tree.entries.flatMap((e) => (e.kind === "built" ? [e] : []));
  const days = [...new Set(all.map(({ date }) => date.text))].sort();
  const date = day ?? days.at(-1);
  if (date === undefined)
    return { refused: "it does not say that it was built; a line like “built 2026-05-09” does" };
  if (!days.includes(date))
    return {
      refused: `it does not say that it was built on ${date}${days.length > 0 ? `, but on ${days.join(", ")}` : ""}`,
    };
  const scope = scopeOf(loaded);
  const made: (Adapted & { readonly building: Building })[] = [];
  for (const [nth, entry] of all.filter((e) => e.date.text === date).entries()) {
    const adapted = adaptedTo(loaded, text, read, wishesOf(entry, scope));
    if ("refused" in adapted) return adapted;
    made.push({ ...adapted, building: { date, nth } });
  }
  return made;
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
