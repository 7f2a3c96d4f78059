/** Reads the words after `sheet`. */

import type { Wish } from "../exchange";
import type { SheetFormat } from "../service";
import { type CsvTable, tables } from "../sheet/csv";
import type { DrawingKind } from "../sheet/drawings";
import type { SheetReader } from "../sheet/parts";
import { SHEET_LANGUAGES, type SheetLanguage } from "../sheet/words";
import { effortIn, readOptions, shopIn, type Wrong } from "./options";
import { WISHES, wishesIn } from "./wishes";
import { endingOf, type Format } from "./writing";

export interface AskedSheet {
  readonly file: string;
  readonly shop: { readonly shop?: string; readonly shopFrom?: string };
  /** Of the whole sheet, where it is neither one drawing nor one table. */
  readonly format: SheetFormat | "pdf";
  readonly out: string | undefined;
  /** One drawing in place of the whole sheet. */
  readonly drawing: DrawingKind | undefined;
  /** The assembly it shows; empty for the whole. */
  readonly assembly: string;
  /** For whom the sheet is. */
  readonly reader: SheetReader;
  /** Unsaid, as the plan has them. */
  readonly units: "inches" | "millimetres" | undefined;
  readonly language: SheetLanguage;
  readonly paper: "Letter" | "A4";
  /** Which of the sheet's tables. */
  readonly table: CsvTable | undefined;
  /** Counted work for each stock's layouts. */
  readonly effort: number;
  /** Of the plan as it would be. */
  readonly wishes: readonly Wish[];
}

/** Options whose value is one of a few words; the first is taken where nothing is said. */
const CHOICES = {
  drawing: ["turned", "front", "left", "right", "back", "above", "apart"],
  for: ["builder", "stations", "learners"],
  units: ["inches", "millimetres"],
  language: SHEET_LANGUAGES,
  paper: ["Letter", "A4"],
  table: tables,
} as const satisfies Readonly<Record<string, readonly string[]>>;

const TAKES = { valued: ["shop", "format", "out", "assembly", "effort"], many: WISHES, choices: CHOICES };

const FORMATS: readonly Format[] = ["text", "html", "pdf", "markdown", "csv", "json"];

/** Options that only some formats have a use for; in the others they would be silently without effect. */
const ONLY_FOR = [
  { option: "assembly", formats: ["svg"], use: "for a drawing: ask for one with --drawing" },
  { option: "paper", formats: ["pdf"], use: "for --format pdf" },
  {
    option: "for",
    formats: ["text", "html", "pdf", "markdown"],
    use: "for a sheet that is read: text, html, pdf or markdown",
  },
] as const satisfies readonly { option: string; formats: readonly Format[]; use: string }[];

/** What was asked, or in words what is wrong with it. */
export function readSheetArguments(words: readonly string[]): AskedSheet | Wrong {
  const read = readOptions("sheet", TAKES, words);
  if ("wrong" in read) return read;
  const { files, options } = read;
  const chosen = <K extends keyof typeof CHOICES>(name: K): (typeof CHOICES)[K][number] | undefined =>
    options[name] as (typeof CHOICES)[K][number] | undefined;
  const [drawing, table] = [chosen("drawing"), chosen("table")];
  if (drawing && table) return { wrong: "--drawing and --table are two things: ask for one at a time." };
  const format = formatOf(options, drawing, table);
  if (typeof format === "object") return format;
  const effort = effortIn(read);
  if (typeof effort === "object") return effort;
  const wishes = wishesIn(read);
  if ("wrong" in wishes) return wishes;
  const [file, second] = files;
  if (file === undefined) return { wrong: "“sheet” wants a plan file." };
  if (second !== undefined) return { wrong: "“sheet” takes one plan file." };
  return {
    file,
    shop: shopIn(read),
    format: drawing || table ? "text" : (format as AskedSheet["format"]),
    out: options.out,
    drawing,
    assembly: options.assembly ?? "",
    reader: chosen("for") ?? "builder",
    units: chosen("units"),
    language: chosen("language") ?? "en",
    paper: chosen("paper") ?? "Letter",
    table,
    effort,
    wishes,
  };
}

/** The format asked for, or that of the name that is written to. */
function formatOf(
  options: Readonly<Record<string, string | undefined>>,
  drawing: string | undefined,
  table: string | undefined,
): Format | Wrong {
  const named = endingOf(options.out);
  const format = options.format ?? (drawing ? "svg" : table ? "csv" : (named ?? "text"));
  if (format === "svg" && !drawing)
    return { wrong: "An SVG file holds one drawing: say which with --drawing." };
  if (drawing && format !== "svg") return { wrong: `A drawing is written as svg, not as “${format}”.` };
  if (!drawing && !(FORMATS as readonly string[]).includes(format))
    return { wrong: `--format is ${FORMATS.join(", ")}; “${format}” is none of them.` };
  if (format === "csv" && table === undefined)
    return { wrong: `A CSV file holds one table: say which with --table ${tables.join("|")}.` };
  if (table !== undefined && format !== "csv") return { wrong: "--table is for --format csv." };
  const idle = ONLY_FOR.find(
    ({ option, formats: only }) =>
      options[option] !== undefined && !(only as readonly string[]).includes(format),
  );
  if (idle) return { wrong: `--${idle.option} is ${idle.use}.` };
  const ownEnding =
    named === undefined || named === format || (options.format !== undefined && named !== "svg");
  return ownEnding
    ? (format as Format)
    : { wrong: `${options.out} would hold ${format}: give its name the ending .${format}.` };
}
