/**
 * The one door: everything outside (language server, command line) comes in here. Text goes in, with a reader for the
 * files it names; the worked-out plan with its problems comes out, the same for the same text whatever came before. What
 * is done with several plans, or with one for somebody else, stands beside it in `exchange.ts`.
 */
import { CHECKS, type Judged, judge, type Language, type ProblemClass, titleOf } from "./checks";
import type { LayoutJob, Layouts } from "./cutting/improve";
import { toldOf } from "./features/diagnostics";
import type { HoverPicture } from "./features/hover-picture";
import { holderOf, type LoadOptions, load, type Reader } from "./plan";
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
import { type LeftOpen, leftOpen } from "./sheet/not-checked";
import { documentOf, type SheetReader } from "./sheet/parts";
import { svgText } from "./sheet/svg";
import { drawTeaching } from "./sheet/teach";
import { sheetText } from "./sheet/text";
import { type SheetLanguage, wordsIn } from "./sheet/words";
import { countNotChecked, laidOutAnew, shownIn, type Worked, work } from "./worked";

export { laidOut } from "./features/format";
export type { Reader } from "./plan";
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
