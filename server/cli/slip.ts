/** `sawbuck slip`: what to measure at another place, on paper, before a plan is built there. */
import { normalize } from "node:path";
import process from "node:process";
import { diskReader, readPlan } from "../lsp/disk";
import { evaluate, filesOf, inUnits, type SheetFormat } from "../service";
import { SHEET_LANGUAGES, type SheetLanguage } from "../sheet/words";
import { slipOf, writeSlip } from "../slips";
import { type Command, FINE, refuse, refuseAsked } from "./command";
import { readOptions, shopIn } from "./options";
import { endingOf, writeTo } from "./writing";

export const SLIP: Command = {
  name: "slip",
  usage: `  sawbuck slip FILE [--format text|html|markdown] [--out FILE]
      [--shop FILE] [--units inches|millimetres] [--language en|fr]
      Prints a slip to take along with the tape: what to measure where the thing is to
      stand, in which order, within which bounds, with room to write. What was measured
      then goes to “adapt” or “sheet”.
`,
  run,
};

const FORMATS = ["text", "html", "markdown"] as const;
const TAKES = {
  valued: ["shop", "out"],
  choices: { format: FORMATS, units: ["inches", "millimetres"], language: SHEET_LANGUAGES },
};

function run(words: readonly string[]): number {
  const asked = readOptions("slip", TAKES, words);
  if ("wrong" in asked) return refuseAsked(asked.wrong, SLIP);
  const [name, second] = asked.files;
  if (name === undefined || second !== undefined) return refuseAsked("“slip” takes one plan file.", SLIP);
  const { out, format, units, language } = asked.options;
  const written = (format ?? endingOf(out) ?? "text") as SheetFormat;
  if (written === "json" || !FORMATS.includes(written))
    return refuseAsked(`A slip is not written as ${written}.`, SLIP);
  const file = normalize(name);
  const read = readPlan(file);
  if ("refused" in read) return refuse(`${file}: ${read.refused}`);
  const worked = evaluate(file, read.text, diskReader, shopIn(asked));
  const shown = units ? inUnits(worked, units as "inches" | "millimetres") : worked;
  const made = writeSlip(
    slipOf(shown, diskReader, shopIn(asked)),
    shown,
    file,
    written,
    language as SheetLanguage | undefined,
  );
  if (out === undefined) {
    process.stdout.write(made);
    return FINE;
  }
  const wrong = writeTo(out, made, filesOf(worked));
  if (wrong) return refuse(wrong);
  process.stderr.write(`The slip is in ${out}\n`);
  return FINE;
}
