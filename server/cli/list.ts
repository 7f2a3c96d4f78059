/** `sawbuck list`: a book of all plans of a folder, for a README or the wall. */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import process from "node:process";
import { type BookPlan, bookPlan, isPlan, svgOf, writeBook } from "../exchange";
import { diskReader, readPlan } from "../lsp/disk";
import { evaluatedBest } from "../lsp/layouts/at-once";
import { inUnits } from "../service";
import { SHEET_LANGUAGES, type SheetLanguage } from "../sheet/words";
import { type Command, FINE, FOUND, REFUSED, refuse, refuseAsked, standsInTheWay } from "./command";
import { findPlans } from "./find";
import { effortIn, readOptions, shopIn } from "./options";
import { cannotWrite, isSame, whyNotWritten } from "./writing";

export const LIST: Command = {
  name: "list",
  usage: `  sawbuck list FILES|FOLDERS [--format markdown|html|json] [--out FILE] [--drawings FOLDER]
      [--shop FILE] [--units inches|millimetres] [--language en|fr]
      A book of plans: a table of contents, and a page for each. In Markdown its drawings
      are SVG files in the folder that --drawings names. Exit codes as for check.
`,
  run: list,
};

const CHOICES = {
  format: ["markdown", "html", "json"],
  units: ["inches", "millimetres"],
  language: SHEET_LANGUAGES,
} as const;
const TAKES = { valued: ["out", "drawings", "shop", "effort"], choices: CHOICES };

function list(words: readonly string[]): number {
  const asked = readOptions("list", TAKES, words);
  if ("wrong" in asked) return refuseAsked(asked.wrong, LIST);
  const effort = effortIn(asked);
  if (typeof effort === "object") return refuseAsked(effort.wrong, LIST);
  if (asked.files.length === 0) return refuseAsked("“list” wants files or folders.", LIST);
  const { out, drawings: folder, units, format = "markdown" } = asked.options;
  if (folder !== undefined && format !== "markdown")
    return refuseAsked("--drawings is for --format markdown: a page holds its drawings itself.", LIST);
  const language = (asked.options.language ?? "en") as SheetLanguage;
  const shop = shopIn(asked);
  const { files, refused } = findPlans(asked.files);
  const unread = [...refused];
  const plans: BookPlan[] = [];
  const read = new Set(files);
  const named = new Set<string>();
  for (const file of files) {
    const text = readPlan(file);
    if ("refused" in text) {
      unread.push(`${file}: ${text.refused}`);
      continue;
    }
    const own = shop.shop !== undefined && isSame(shop.shop, file) ? {} : shop;
    const evaluated = evaluatedBest(file, text.text, diskReader, own, effort);
    for (const { file } of evaluated.worked.loaded.files) read.add(file);
    if (!isPlan(evaluated)) continue;
    const shown = units ? inUnits(evaluated, units as "inches" | "millimetres") : evaluated;
    const plan = bookPlan(shown, language, format !== "json");
    const picture = folder !== undefined && plan.drawing ? pictureName(file, named) : undefined;
    plans.push({ ...plan, ...(picture && { address: addressOf(join(folder!, picture), out) }) });
    if (picture) {
      const wrong = written(join(folder!, picture), svgOf(plan.drawing!), [...read]);
      if (wrong) return refuse(wrong);
    }
  }
  if (plans.length === 0) unread.push("no plan was found there");
  else {
    const book = writeBook(plans, format as (typeof CHOICES.format)[number], language);
    const wrong = out === undefined ? void process.stdout.write(book) : written(out, book, [...read]);
    if (wrong) return refuse(wrong);
  }
  for (const line of unread) process.stderr.write(`sawbuck: ${line}\n`);
  if (unread.length > 0) return REFUSED;
  return plans.some(({ data }) => data.problems.some(standsInTheWay)) ? FOUND : FINE;
}

/** In words why it was not written. */
function written(out: string, text: string, plans: readonly string[]): string | undefined {
  try {
    const wrong = cannotWrite(out, plans);
    if (wrong) return wrong;
    if (out.endsWith(".svg")) mkdirSync(dirname(out), { recursive: true });
    writeFileSync(out, text);
    return undefined;
  } catch (error) {
    return `${out} cannot be written: ${whyNotWritten(error)}`;
  }
}

/** Of the plan's own path, in plain letters, so that it stays the same when other plans come and go. */
function pictureName(file: string, named: Set<string>): string {
  const plain = relative(".", file)
    .replace(/\.sawbuck$/, "")
    .replace(/[^\p{L}\p{N}_-]+/gu, "-")
    .replace(/^-+/, "");
  let name = plain;
  for (let n = 2; named.has(name.toLowerCase()); n++) name = `${plain}-${n}`;
  named.add(name.toLowerCase());
  return `${name}.svg`;
}

/** As seen from the book. */
const addressOf = (file: string, out = "."): string =>
  relative(out === "." ? "." : dirname(out), file)
    .split(sep)
    .map(encodeURIComponent)
    .join("/");
