/** `sawbuck bundle`: a plan with all that it brings in one file, to give away. */
import { existsSync, writeFileSync } from "node:fs";
import { normalize } from "node:path";
import process from "node:process";
import { bundled } from "../exchange";
import { diskReader, readPlan } from "../lsp/disk";
import { type Command, FINE, refuse, refuseAsked } from "./command";
import { readOptions } from "./options";
import { cannotReplace, whyNotWritten } from "./writing";

export const BUNDLE: Command = {
  name: "bundle",
  usage: `  sawbuck bundle FILE [--out FILE.sawbuck]
      Puts a plan and all it brings, its shop file too, into one plan file that gives the
      same sheet, without prices and what is on hand. Exit 0 when it is written, else 2.
`,
  run: bundle,
};

function bundle(words: readonly string[]): number {
  const asked = readOptions("bundle", { valued: ["out"] }, words);
  if ("wrong" in asked) return refuseAsked(asked.wrong, BUNDLE);
  const [named, second] = asked.files;
  if (named === undefined) return refuseAsked("“bundle” wants a plan file.", BUNDLE);
  if (second !== undefined) return refuseAsked("“bundle” takes one plan file.", BUNDLE);
  const file = normalize(named);
  const read = readPlan(file);
  if ("refused" in read) return refuse(`${file}: ${read.refused}`);
  const made = bundled(file, read.text, diskReader);
  if ("refused" in made) return refuse(`${file} cannot be bundled: ${made.refused}`);
  const { out } = asked.options;
  if (out === undefined) process.stdout.write(made.text);
  else {
    try {
      const wrong = cannotHold(out, made.files);
      if (wrong) return refuse(wrong);
      writeFileSync(out, made.text);
    } catch (error) {
      return refuse(`${out} cannot be written: ${whyNotWritten(error)}`);
    }
    process.stderr.write(`The bundle is in ${out}\n`);
  }
  for (const note of made.notes) process.stderr.write(`Note: ${note}\n`);
  return FINE;
}

/** A bundle is written over nothing but a bundle. */
function cannotHold(out: string, files: readonly string[]): string | undefined {
  if (!/\.sawbuck$/.test(out)) return `${out} would hold a plan: give its name the ending .sawbuck.`;
  const wrong = cannotReplace(out, files);
  if (wrong || !existsSync(out)) return wrong;
  const there = readPlan(out);
  return "text" in there && /^enclosed[^\S\r\n]/m.test(there.text)
    ? undefined
    : `${out} is there already, and is no bundle; nothing was written.`;
}
