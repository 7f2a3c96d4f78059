/** `sawbuck diff`: what differs between two plans, or two versions of them, told of the thing and not of the text. */
import process from "node:process";
import { type Comparison, compare, filesRead, writeComparisons } from "../exchange";
import { evaluatedBest } from "../lsp/layouts/at-once";
import { type Evaluated, filesOf, inUnits, type SheetFormat } from "../service";
import { SHEET_LANGUAGES, type SheetLanguage } from "../sheet/words";
import { type Command, FINE, FOUND, refuse, refuseAsked } from "./command";
import { asBuiltPairs, pairsFor, type Version, type VersionPair } from "./diff-sides";
import { effortIn, readOptions, shopIn } from "./options";
import { endingOf, writeTo } from "./writing";

export const DIFF: Command = {
  name: "diff",
  usage: `  sawbuck diff OLD NEW [--format text|html|markdown|json] [--out FILE]
      [--shop FILE] [--units inches|millimetres] [--language en|fr]
  sawbuck diff [COMMIT [COMMIT]] [FILES|FOLDERS]
      Tells what changed about the thing: pieces, boards, cost, weight, joints, work,
      problems. OLD and NEW are plan files, or COMMIT:PATH as git has it. Else plans
      are compared with those of a commit (HEAD unless said), or of two commits with
      each other. Exit 0 when nothing changed, 1 when something did, 2 when something
      cannot be read.
  sawbuck diff FILE --built [DAY]
      Compares a plan with how it was built, as its “built” lines tell: on the last day,
      or on that one. Exit codes as above.
`,
  run: diff,
};

const FORMATS = ["text", "html", "markdown", "json"] as const;
const TAKES = {
  flags: ["built"],
  valued: ["shop", "out", "effort"],
  choices: { format: FORMATS, units: ["inches", "millimetres"], language: SHEET_LANGUAGES },
};

function diff(words: readonly string[]): number {
  const asked = readOptions("diff", TAKES, words);
  if ("wrong" in asked) return refuseAsked(asked.wrong, DIFF);
  const effort = effortIn(asked);
  if (typeof effort === "object") return refuseAsked(effort.wrong, DIFF);
  const { out, format, units, language } = asked.options;
  const named = endingOf(out);
  const written = (format ?? named ?? "text") as SheetFormat;
  if (!(FORMATS as readonly string[]).includes(written))
    return refuseAsked(`A comparison is not written as ${written}.`, DIFF);
  const built = asked.flags.has("built");
  if (built && (asked.files.length === 0 || asked.files.length > 2))
    return refuseAsked("“diff --built” takes one plan file, and a day.", DIFF);
  const found = built
    ? asBuiltPairs(asked.files[0]!, asked.files[1], shopIn(asked), language as SheetLanguage | undefined)
    : pairsFor(asked.files);
  if ("refused" in found) return refuse(found.refused);

  const read: string[] = [];
  const evaluated = (version: Version | undefined): Evaluated | undefined => {
    if (!version) return undefined;
    const e = evaluatedBest(version.file, version.text, version.read, shopIn(asked), effort);
    read.push(...filesOf(e));
    return units ? inUnits(e, units as "inches" | "millimetres") : e;
  };
  const readsChanged = (one: Version | undefined): boolean =>
    one !== undefined && filesRead(one.file, one.text, one.read, shopIn(asked)).some(found.differs);
  const compared = ({ old, new: now, itself, building }: VersionPair): Comparison[] => {
    if (!itself && !readsChanged(old) && !readsChanged(now)) return [];
    const called = (version: Version | undefined) => (file: string) =>
      file === version?.file ? version.called : file;
    const comparison = compare(
      evaluated(old),
      evaluated(now),
      { old: called(old), new: called(now) },
      language as SheetLanguage | undefined,
      building,
    );
    return itself || !comparison.changes.same ? [comparison] : [];
  };
  const all = found.pairs.flatMap(compared);
  const isRead = written === "text" || written === "markdown";
  const made =
    isRead && all.length === 0 ? "" : writeComparisons(all, written, language as SheetLanguage | undefined);
  if (out !== undefined) {
    const wrong = writeTo(out, made, read);
    if (wrong) return refuse(wrong);
    process.stderr.write(`The comparison is in ${out}\n`);
  } else process.stdout.write(made);
  return all.every(({ changes }) => changes.same) ? FINE : FOUND;
}
