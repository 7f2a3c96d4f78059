/** Reads the words after a command. */
import { EFFORT } from "../cutting/improve";
import type { SheetFormat } from "../service";
import { type CsvTable, tables } from "../sheet/csv";
import type { DrawingKind } from "../sheet/drawings";
import type { SheetReader } from "../sheet/parts";
import { SHEET_LANGUAGES, type SheetLanguage } from "../sheet/words";

/** A sheet, one of its tables (csv) or of its drawings (svg). */
type Format = SheetFormat | "pdf" | "csv" | "svg";

export interface Asked {
  readonly files: readonly string[];
  readonly shop: string | undefined;
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

const FORMATS = {
  check: ["text", "json"],
  sheet: ["text", "html", "pdf", "markdown", "csv", "json"],
} as const satisfies Readonly<Record<string, readonly Format[]>>;

const OPTIONS: Readonly<Record<keyof typeof FORMATS, readonly string[]>> = {
  check: ["shop", "format", "effort"],
  sheet: ["shop", "format", "out", "assembly", "effort", ...Object.keys(CHOICES)],
};

/** What a file's ending asks for; any other is written as text. */
const ENDINGS: ReadonlyMap<string, Format> = new Map([
  ["html", "html"],
  ["htm", "html"],
  ["pdf", "pdf"],
  ["md", "markdown"],
  ["markdown", "markdown"],
  ["csv", "csv"],
  ["json", "json"],
  ["svg", "svg"],
]);

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
export function readArguments(
  command: keyof typeof FORMATS,
  words: readonly string[],
): Asked | { readonly wrong: string } {
  const read = readOptions(command, words);
  if ("wrong" in read) return read;
  const { files, options } = read;
  for (const [name, choices] of Object.entries(CHOICES)) {
    const value = options[name];
    if (value !== undefined && !(choices as readonly string[]).includes(value))
      return { wrong: `--${name} is ${choices.join(", ")}; “${value}” is none of them.` };
  }
  const chosen = <K extends keyof typeof CHOICES>(name: K): (typeof CHOICES)[K][number] | undefined =>
    options[name] as (typeof CHOICES)[K][number] | undefined;
  const [drawing, table] = [chosen("drawing"), chosen("table")];
  if (drawing && table) return { wrong: "--drawing and --table are two things: ask for one at a time." };
  const named = endingOf(options.out);
  const format = options.format ?? (drawing ? "svg" : table ? "csv" : (named ?? "text"));
  if (format === "svg" && !drawing)
    return { wrong: "An SVG file holds one drawing: say which with --drawing." };
  const formats: readonly string[] = drawing ? ["svg"] : FORMATS[command];
  if (!formats.includes(format))
    return {
      wrong: drawing
        ? `A drawing is written as svg, not as “${format}”.`
        : `--format is ${formats.join(", ")}; “${format}” is none of them.`,
    };
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
  if (!ownEnding)
    return { wrong: `${options.out} would hold ${format}: give its name the ending .${format}.` };
  const effort = options.effort === undefined ? EFFORT : effortIn(options.effort);
  if (effort === undefined)
    return {
      wrong: `--effort is a number of millions of steps, such as 0, 50 or 1000; “${options.effort}” is none.`,
    };
  if (files.length === 0)
    return { wrong: `“${command}” wants ${command === "check" ? "files or folders" : "a plan file"}.` };
  if (command === "sheet" && files.length > 1) return { wrong: "“sheet” takes one plan file." };
  return {
    files,
    shop: options.shop,
    format: drawing || table ? "text" : (format as Asked["format"]),
    out: options.out,
    drawing,
    assembly: options.assembly ?? "",
    reader: chosen("for") ?? "builder",
    units: chosen("units"),
    language: chosen("language") ?? "en",
    paper: chosen("paper") ?? "Letter",
    table,
    effort,
  };
}

/** Millions of steps, as steps; undefined for what is no number from 0 up. */
const effortIn = (text: string): number | undefined =>
  /^\d{1,9}(\.\d+)?$/.test(text) ? Math.round(Number(text) * MILLION) : undefined;
const MILLION = 1_000_000;

interface Read {
  readonly files: readonly string[];
  readonly options: Readonly<Record<string, string | undefined>>;
}

function readOptions(
  command: keyof typeof FORMATS,
  words: readonly string[],
): Read | { readonly wrong: string } {
  const files: string[] = [];
  const options: Record<string, string> = {};
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    if (word === "--") {
      files.push(...words.slice(i + 1));
      break;
    }
    if (!word.startsWith("--")) {
      files.push(word);
      continue;
    }
    const [name, inline] = splitOption(word);
    if (!OPTIONS[command].includes(name)) return { wrong: `“${command}” has no option --${name}.` };
    const value = inline ?? words[++i];
    if (value === undefined || value === "") return { wrong: `--${name} wants a value after it.` };
    options[name] = value;
  }
  return { files, options };
}

/** Undefined for a name that asks for nothing. */
function endingOf(out = ""): Format | undefined {
  return ENDINGS.get(/\.([a-z]+)$/i.exec(out)?.[1]?.toLowerCase() ?? "");
}

function splitOption(word: string): [name: string, value: string | undefined] {
  const equals = word.indexOf("=");
  return equals < 0 ? [word.slice(2), undefined] : [word.slice(2, equals), word.slice(equals + 1)];
}
