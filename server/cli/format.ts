/** `sawbuck format`: lays plans out in the one style of the language, in their files or from standard input. */
import { readFileSync, realpathSync } from "node:fs";
import process from "node:process";
import { readPlan } from "../lsp/disk";
import { laidOut } from "../service";
import { type Command, FINE, FOUND, REFUSED, refuse, refuseAsked } from "./command";
import { findPlans } from "./find";
import { readOptions } from "./options";
import { type Refused, replaced } from "./replacing";

export const FORMAT: Command = {
  name: "format",
  usage: `  sawbuck format FILES|FOLDERS|- [--check]
      Lays plans out in the one style of the language and says which were changed; a line
      that it cannot read stays as it is. “-” reads standard input and prints it laid out.
      With --check nothing is written. Exit 0; 1 where --check finds any that would change;
      2 when something cannot be read or written.
`,
  run: format,
};

function format(words: readonly string[]): number {
  const asked = readOptions("format", { flags: ["check"] }, words);
  if ("wrong" in asked) return refuseAsked(asked.wrong, FORMAT);
  const only = asked.flags.has("check");
  if (asked.files.length === 0) return refuseAsked("“format” wants files or folders, or “-”.", FORMAT);
  if (asked.files.includes("-"))
    return asked.files.length > 1
      ? refuseAsked("“-” is given alone, without files.", FORMAT)
      : formatInput(only);
  const { files, refused } = findPlans(asked.files);
  const wrong = [...refused];
  let changed = 0;
  for (const file of files) {
    const done = formatFile(file, only);
    if (typeof done === "object") wrong.push(`${file}: ${done.refused}`);
    else if (done) {
      changed++;
      process.stdout.write(`${file}${only ? " would be laid out anew" : " is laid out anew"}\n`);
    }
  }
  if (files.length === 0 && refused.length === 0) wrong.push("no *.sawbuck file was found there");
  for (const line of wrong) process.stderr.write(`sawbuck: ${line}\n`);
  if (wrong.length > 0) return REFUSED;
  return only && changed > 0 ? FOUND : FINE;
}

function formatInput(only: boolean): number {
  let bytes: Buffer;
  try {
    bytes = readFileSync(process.stdin.fd);
  } catch {
    return refuse("standard input cannot be read.");
  }
  const text = bytes.toString("utf8");
  const wanted = wantedOf(text, bytes);
  if (typeof wanted === "object") return refuse(`standard input: ${wanted.refused}`);
  if (only) return wanted === text ? FINE : FOUND;
  process.stdout.write(wanted);
  return FINE;
}

/** Whether it was, or would be, changed. */
function formatFile(file: string, only: boolean): boolean | Refused {
  const read = readPlan(file);
  if ("refused" in read) return read;
  try {
    // Written beside the file itself, wherever a link leads.
    const real = realpathSync(file);
    const wanted = wantedOf(read.text, readFileSync(real));
    if (typeof wanted === "object") return wanted;
    if (wanted === read.text) return false;
    return only || (replaced(real, wanted) ?? true);
  } catch (error) {
    return { refused: `it cannot be written: ${(error as NodeJS.ErrnoException).code}` };
  }
}

/** Never of bytes that would not be the same again. */
function wantedOf(text: string, bytes: Buffer): string | Refused {
  if (!Buffer.from(text).equals(bytes)) return { refused: "it is not text in UTF-8; nothing was written" };
  const made = laidOut(text);
  return "refused" in made ? { refused: `${made.refused}; nothing was written` } : made.text;
}
