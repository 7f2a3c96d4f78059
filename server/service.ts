/**
 * The one door: everything outside (language server, command line) comes in here. Text goes in, with a reader for the
 * files it names; the worked-out plan with its problems comes out, the same for the same text whatever came before.
 */
import { CHECKS, type Judged, judge, type Language, type ProblemClass, titleOf } from "./checks";
import type { LayoutJob, Layouts } from "./cutting/improve";
import { adaptedTexts, type Wish } from "./features/adapting";
import { toldOf } from "./features/diagnostics";
import type { HoverPicture } from "./features/hover-picture";
import { bundle, holderOf, type LoadOptions, load, type Reader, saysOf } from "./plan";
import { type BookPlan, bookOf, headComment } from "./sheet/book/book";
import { bookPage } from "./sheet/book/html";
import { bookJson } from "./sheet/book/json";
import { bookMarkdown } from "./sheet/book/markdown";
import { sheetLines } from "./sheet/changes/as-lines";
import { changesOf } from "./sheet/changes/compare";
import type { SheetChanges } from "./sheet/changes/data";
import { type ChangeDrawings, changesDocument } from "./sheet/changes/document";
import { changeDrawings } from "./sheet/changes/drawings";
import { changesJson } from "./sheet/changes/json";
import { type CsvTable, sheetCsv } from "./sheet/csv";
import type { SheetData } from "./sheet/data";
import type { SheetDocument } from "./sheet/document";
import {
  type DrawingKind,
  oneDrawing,
  partDrawing,
  type Scene,
  type SheetDrawing,
  sceneIn as sceneInWorked,
  sheetDrawings,
  smallDrawing,
} from "./sheet/drawings";
import { gather } from "./sheet/gather";
import {
  type Details,
  detailsOf as detailsOn,
  type Report,
  reportOf as reportOn,
} from "./sheet/gather-problems";
import { sheetPage } from "./sheet/html";
import { sheetJson } from "./sheet/json";
import { sheetMarkdown } from "./sheet/markdown";
import { marked, ofMm } from "./sheet/marks";
import { type LeftOpen, leftOpen } from "./sheet/not-checked";
import { documentOf, type SheetReader } from "./sheet/parts";
import { svgText } from "./sheet/svg";
import { drawTeaching } from "./sheet/teach";
import { sheetText } from "./sheet/text";
import { type SheetLanguage, wordsIn } from "./sheet/words";
import { countNotChecked, laidOutAnew, shownIn, type Worked, work } from "./worked";

export type { Wish } from "./features/adapting";
export { laidOut } from "./features/format";
export type { Reader } from "./plan";
export type { BookPlan } from "./sheet/book/book";
export { type Scene, sameScene } from "./sheet/drawings";

export interface Evaluated extends Judged {
  readonly file: string;
  readonly text: string;
  readonly worked: Worked;
}

export interface EvaluateOptions extends LoadOptions {
  /** Better layouts than the first answers, where they are known. */
  readonly layouts?: Layouts;
}

/** Reads, works out and checks one plan. Never throws on any text. */
export function evaluate(file: string, text: string, read: Reader, options: EvaluateOptions = {}): Evaluated {
  const worked = work(load(file, text, read, options), options.layouts);
  return { file, text, worked, ...judge(worked) };
}

/** A plan that was evaluated, with the layouts that are known by now: what evaluating it with them would give, but sooner. */
export function withLayouts(e: Evaluated, layouts: Layouts): Evaluated {
  const worked = laidOutAnew(e.worked, layouts);
  return { ...e, worked, ...judge(worked) };
}

/** The names of all files that were read for it. */
export const filesOf = ({ worked }: Evaluated): string[] => [
  ...new Set(worked.loaded.files.map(({ file }) => holderOf(file))),
];

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

/** How many problems of each class are told of a plan, and how many things were not looked at. */
export interface Counts {
  readonly errors: number;
  readonly hazards: number;
  readonly warnings: number;
  readonly hints: number;
  readonly unchecked: number;
}

export function countsOf(e: Evaluated): Counts {
  const told = toldOf(e);
  const of = (kind: ProblemClass): number => told.filter((p) => p.class === kind).length;
  return {
    errors: of("error"),
    hazards: of("hazard"),
    warnings: of("warning"),
    hints: of("hint"),
    unchecked: countNotChecked(e.worked),
  };
}

/** What was not looked at, as the sheet lists it. */
export const notCheckedOf = ({ worked }: Evaluated, language: SheetLanguage = "en"): LeftOpen[] =>
  leftOpen(worked, wordsIn(language));

/** The questions of its boards and sheets, whose best answers take longer than a keystroke. */
export const layoutJobs = ({ worked }: Evaluated): LayoutJob[] => [
  ...worked.boards.map(({ job }): LayoutJob => ({ kind: "boards", job })),
  ...worked.sheets.map(({ job }): LayoutJob => ({ kind: "sheets", job })),
];

/**
 * The shop sheet of an evaluated plan, as plain data, its texts in that language; what the plan says stays as typed.
 * `named` tells how files are named on it; unsaid, as they were read.
 */
export const sheetOf = (
  e: Evaluated,
  named = (file: string): string => file,
  language: SheetLanguage = "en",
): SheetData => gather(e.worked, e, named, wordsIn(language));

/** Of it, its problems and what was not looked at, which is made in a fraction of the time. */
export const reportOf = (e: Evaluated): Report => reportOn(e.worked, e, (file) => file, wordsIn("en"));

/** What programs can use of its problems, in the order of the report. */
export const detailsOf = (e: Evaluated): Details[] => detailsOn(e.worked, e, wordsIn("en"));

/** The same plan with its lengths shown in other units, to the usual marks of a tape; the plan itself stays as it is. */
export const inUnits = (e: Evaluated, system: "inches" | "millimetres"): Evaluated => ({
  ...e,
  worked: { ...e.worked, settings: shownIn(e.worked.settings, system) },
});

/** The drawings of its sheet, made as they are taken; nothing in place of one where the making only pauses. */
export const drawingsInSteps = (
  { worked }: Evaluated,
  language: SheetLanguage = "en",
): Generator<SheetDrawing | undefined, void, void> => sheetDrawings(worked, wordsIn(language));

/** All of them at once. */
export const drawingsOf = (e: Evaluated, language: SheetLanguage = "en"): SheetDrawing[] =>
  [...drawingsInSteps(e, language)].filter((d) => d !== undefined);

/** All that its drawings show: by `sameScene` it is told whether they need to be made again. */
export const sceneIn = ({ worked }: Evaluated, language: SheetLanguage = "en"): Scene =>
  sceneInWorked(worked, wordsIn(language));

/** One drawing as an SVG file; in words why there is none. */
export function drawingText(
  { worked }: Evaluated,
  kind: DrawingKind,
  assembly = "",
  language: SheetLanguage = "en",
): string | { readonly refused: string } {
  const drawing = oneDrawing(worked, kind, assembly, wordsIn(language));
  return typeof drawing === "string" ? { refused: drawing } : svgText(drawing);
}

/**
 * For whom a sheet is written, and what it shows; unsaid, for a builder, in English, without drawings. The language is
 * that in which the sheet and its drawings were made.
 */
export interface SheetOptions {
  readonly drawings?: readonly SheetDrawing[];
  readonly reader?: SheetReader;
  readonly language?: SheetLanguage;
}

/** The sheet as it is read, for whoever writes it: the page, PDF. */
export const sheetDocument = (
  sheet: SheetData,
  { drawings = [], reader = "builder", language = "en" }: SheetOptions = {},
): SheetDocument => documentOf(sheet, { drawings, reader, words: wordsIn(language) });

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

export type SheetFormat = "html" | "json" | "markdown" | "text";

/** One of its tables, for a spreadsheet. */
export const writeTable = (sheet: SheetData, table: CsvTable): string => sheetCsv(sheet, table);

/** A sheet in one of its formats; only a page shows drawings. */
export function writeSheet(sheet: SheetData, format: SheetFormat, options: SheetOptions = {}): string {
  if (format === "json") return sheetJson(sheet);
  const document = sheetDocument(sheet, options);
  if (format === "html") return sheetPage(document);
  return format === "markdown" ? sheetMarkdown(document) : sheetText(document);
}

/** What a hover shows beside its words: the built thing, one piece, or what a word means; undefined where there is nothing to draw. */
export function hoverDrawing(
  { worked }: Evaluated,
  picture: HoverPicture,
  language: SheetLanguage = "en",
): HoverDrawing | undefined {
  const { title } = picture;
  const drawing =
    picture.of === "pieces"
      ? smallDrawing(worked, picture.pieces, title)
      : picture.of === "part"
        ? partDrawing(worked, picture.part, title, wordsIn(language))
        : drawTeaching(picture.drawing, title, language);
  return drawing && { title, svg: svgText(drawing).trim(), width: drawing.width, height: drawing.height };
}

/** An SVG file, and its size in mm of paper. */
export interface HoverDrawing {
  readonly title: string;
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

/** What a plan comes to, one fact a line, to be compared by lines. */
export const linesOf = (e: Evaluated, language: SheetLanguage = "en"): string =>
  sheetLines(sheetOf(e, undefined, language), wordsIn(language));

/** What differs between two plans, with their drawings where something stands. */
export interface Comparison {
  readonly changes: SheetChanges;
  readonly drawings: () => ChangeDrawings;
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
  const { display } = (now ?? old ?? nothing).worked.settings;
  const [was, is] = [old ?? nothing, now ?? nothing].map((e) => ({
    ...e,
    worked: { ...e.worked, settings: { ...e.worked.settings, display } },
  })) as [Evaluated, Evaluated];
  const words = wordsIn(language);
  const write = { ...display, numbers: words.numbers };
  const changes = changesOf(
    old && sheetOf(was, called.old, language),
    now && sheetOf(is, called.new, language),
    { ...sheetOf(nothing, undefined, language), title: "" },
    words,
    (mm) => marked(ofMm(mm), write),
  );
  return { changes, drawings: () => changeDrawings(changes, was.worked, is.worked, words) };
}

/** A plan of nothing. */
const nothing = evaluate("", "", (path) => ({ file: path, refused: "" }));

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

/** The page of every problem: code, headline, and the Markdown of the page, which is in English. */
export const problemPages = (
  language: Language = "en",
): { code: string; title: string; class: string; markdown: string }[] =>
  CHECKS.map((check) => ({
    code: check.code,
    title: titleOf(check, language),
    class: check.class,
    markdown: `# ${check.title}\n\n\`${check.code}\` (${check.class})\n\n${check.page}\n`,
  }));
