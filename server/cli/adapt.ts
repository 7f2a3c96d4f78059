/** `sawbuck adapt`: what would come of a plan with other measures or other wood; written into it when that is asked for. */
import { realpathSync } from "node:fs";
import { normalize } from "node:path";
import process from "node:process";
import { adapt, compare, writeComparisons } from "../exchange";
import { diskReader, readPlan } from "../lsp/disk";
import { evaluatedBest } from "../lsp/layouts/at-once";
import { filesOf, inUnits, type SheetFormat } from "../service";
import { SHEET_LANGUAGES, type SheetLanguage } from "../sheet/words";
import { type Command, FINE, FOUND, refuse, refuseAsked, standsInTheWay } from "./command";
import { effortIn, readOptions, shopIn } from "./options";
import { replaced } from "./replacing";
import { WISHES, wishesIn } from "./wishes";
import { endingOf, writeTo } from "./writing";

export const ADAPT: Command = {
  name: "adapt",
  usage: `  sawbuck adapt FILE [--set NAME=VALUE] [--swap OLD=NEW] [--write]
      [--format text|html|markdown|json] [--out FILE] [--shop FILE]
      [--units inches|millimetres] [--language en|fr]
      Tells what would change of a plan with another value for a measure (or for
      “length of leg”), or with another board or sheet wherever OLD is used; both may be
      given several times. Changes nothing of the plan but with --write. Exit codes as
      for check, of the plan as it would be.
`,
  run,
};

const FORMATS = ["text", "html", "markdown", "json"] as const;
const TAKES = {
  valued: ["shop", "out", "effort"],
  many: WISHES,
  flags: ["write"],
  choices: { format: FORMATS, units: ["inches", "millimetres"], language: SHEET_LANGUAGES },
};

function run(words: readonly string[]): number {
  const asked = readOptions("adapt", TAKES, words);
  if ("wrong" in asked) return refuseAsked(asked.wrong, ADAPT);
  const effort = effortIn(asked);
  if (typeof effort === "object") return refuseAsked(effort.wrong, ADAPT);
  const wishes = wishesIn(asked);
  if ("wrong" in wishes) return refuseAsked(wishes.wrong, ADAPT);
  const [name, second] = asked.files;
  if (name === undefined || second !== undefined) return refuseAsked("“adapt” takes one plan file.", ADAPT);
  if (wishes.length === 0) return refuseAsked("“adapt” wants --set or --swap.", ADAPT);
  const { out, format, units, language } = asked.options as {
    readonly out?: string;
    readonly format?: SheetFormat;
    readonly units?: "inches" | "millimetres";
    readonly language?: SheetLanguage;
  };
  const written = format ?? endingOf(out) ?? "text";
  if (!(FORMATS as readonly string[]).includes(written))
    return refuseAsked(`A comparison is not written as ${written}.`, ADAPT);

  const file = normalize(name);
  const read = readPlan(file);
  if ("refused" in read) return refuse(`${file}: ${read.refused}`);
  const made = adapt(file, read.text, diskReader, wishes, shopIn(asked));
  if ("refused" in made) return refuse(`${file}: ${made.refused}.`);
  const before = evaluatedBest(file, read.text, diskReader, shopIn(asked), effort);
  const after = evaluatedBest(file, made.text, made.read, shopIn(asked), effort);
  const [old, now] = units ? [inUnits(before, units), inUnits(after, units)] : [before, after];
  const comparison = writeComparisons([compare(old, now, {}, language)], written as SheetFormat, language);
  if (out === undefined) process.stdout.write(comparison);
  else {
    const wrong = writeTo(out, comparison, filesOf(before));
    if (wrong) return refuse(wrong);
  }
  if (asked.flags.has("write")) {
    for (const [one, text] of made.texts) {
      const wrong = replaced(realpathSync(one), text);
      if (wrong) return refuse(`${one}: ${wrong.refused}`);
      process.stderr.write(`Written: ${one}\n`);
    }
  }
  return after.problems.some(standsInTheWay) ? FOUND : FINE;
}
