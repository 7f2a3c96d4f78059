/** `sawbuck sheet`: the shop sheet, one of its tables or one of its drawings, printed or written to a file. */
import { normalize } from "node:path";
import process from "node:process";
import { adapt } from "../exchange";
import { diskReader, readPlan } from "../lsp/disk";
import { evaluatedBest } from "../lsp/layouts/at-once";
import { pdfOf } from "../lsp/pdf-part";
import {
  drawingsOf,
  drawingText,
  type Evaluated,
  filesOf,
  inUnits,
  sheetDocument,
  sheetOf,
  writeSheet,
  writeTable,
} from "../service";
import { tables } from "../sheet/csv";
import { type Command, FINE, FOUND, refuse, refuseAsked, standsInTheWay } from "./command";
import { type AskedSheet, readSheetArguments } from "./sheet-arguments";
import { writeTo } from "./writing";

export const SHEET: Command = {
  name: "sheet",
  usage: `  sawbuck sheet FILE [--shop FILE] [--format text|html|pdf|markdown|json] [--out FILE]
      [--for builder|stations|learners] [--units inches|millimetres] [--language en|fr]
      [--paper Letter|A4] [--set NAME=VALUE] [--swap OLD=NEW]
      Prints the shop sheet, or writes it to a file, in the format its name ends with
      (.html, .pdf, .md, .json, else text) when none is asked for. --paper is for PDF.
      stations: in the order of a group that marks, cuts, drills, finishes and assembles;
      learners: with blanks for the lengths that follow from others, and an answer page.
      --set and --swap: of the plan as it would be, see adapt.
  sawbuck sheet FILE --table TABLE [--shop FILE] [--units inches|millimetres]
      [--language en|fr] [--out FILE.csv]
      Prints one of its tables as CSV:
      ${tables.join(", ")}.
  sawbuck sheet FILE --drawing turned|front|left|right|back|above|apart
      [--assembly NAME] [--shop FILE] [--units inches|millimetres] [--language en|fr]
      [--out FILE.svg]
      Prints one drawing of what is placed, or of one assembly alone, as SVG.
`,
  run: sheet,
};

async function sheet(words: readonly string[]): Promise<number> {
  const asked = readSheetArguments(words);
  if ("wrong" in asked) return refuseAsked(asked.wrong, SHEET);
  const file = normalize(asked.file);
  const read = readPlan(file);
  if ("refused" in read) return refuse(`${file}: ${read.refused}`);
  if (asked.format === "pdf" && !asked.out && process.stdout.isTTY)
    return refuse("a PDF is nothing to read on a terminal: name a file for it with --out.");
  const plan =
    asked.wishes.length === 0
      ? { text: read.text, read: diskReader }
      : adapt(file, read.text, diskReader, asked.wishes, asked.shop);
  if ("refused" in plan) return refuse(`${file}: ${plan.refused}.`);
  const evaluated = evaluatedBest(file, plan.text, plan.read, asked.shop, asked.effort);
  const made = await written(asked.units ? inUnits(evaluated, asked.units) : evaluated, asked);
  if (typeof made === "object" && "refused" in made) return refuse(`${file}: ${made.refused}`);
  if (!asked.out) {
    process.stdout.write(made);
  } else {
    const wrong = writeTo(asked.out, made, filesOf(evaluated));
    if (wrong) return refuse(wrong);
    const what = asked.drawing ? "drawing" : asked.table ? "table" : "shop sheet";
    process.stderr.write(`The ${what} is in ${asked.out}\n`);
  }
  return evaluated.problems.some(standsInTheWay) ? FOUND : FINE;
}

/** The bytes or the text of what was asked for; in words why there is none. */
async function written(
  evaluated: Evaluated,
  asked: AskedSheet,
): Promise<string | Uint8Array | { readonly refused: string }> {
  const { format, reader, language, table } = asked;
  if (asked.drawing) return drawingText(evaluated, asked.drawing, asked.assembly, language);
  const sheet = sheetOf(evaluated, undefined, language);
  if (table) return writeTable(sheet, table);
  const drawn = format === "html" || format === "pdf";
  const options = { reader, language, drawings: drawn ? drawingsOf(evaluated, language) : [] };
  if (format === "pdf") return pdfOf(sheetDocument(sheet, options), asked.paper);
  return writeSheet(sheet, format, options);
}
