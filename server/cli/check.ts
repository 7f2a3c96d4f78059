/** `sawbuck check`: every problem of every plan, and what was not looked at. */
import process from "node:process";
import { diskReader, readPlan } from "../lsp/disk";
import { evaluatedBest } from "../lsp/layouts/at-once";
import { sheetOf } from "../service";
import type { SheetData, SheetProblem } from "../sheet/data";
import { type Command, FINE, FOUND, REFUSED, refuseAsked, standsInTheWay } from "./command";
import { findPlans } from "./find";
import { effortIn, readOptions, shopIn } from "./options";

export const CHECK: Command = {
  name: "check",
  usage: `  sawbuck check FILES|FOLDERS [--shop FILE] [--format text|json]
      Finds the mistakes it can name. Exit 0 when there are no errors and no hazards,
      1 when there are, 2 when something cannot be read.
`,
  run: check,
};

const FORMATS = ["text", "json"] as const;
const TAKES = { valued: ["shop", "effort"], choices: { format: FORMATS } };

function check(words: readonly string[]): number {
  const asked = readOptions("check", TAKES, words);
  if ("wrong" in asked) return refuseAsked(asked.wrong, CHECK);
  const effort = effortIn(asked);
  if (typeof effort === "object") return refuseAsked(effort.wrong, CHECK);
  if (asked.files.length === 0) return refuseAsked("“check” wants files or folders.", CHECK);
  const { files, refused } = findPlans(asked.files);
  const unread = [...refused];
  const sheets: SheetData[] = [];
  for (const file of files) {
    const read = readPlan(file);
    if ("refused" in read) {
      unread.push(`${file}: ${read.refused}`);
      continue;
    }
    const evaluated = evaluatedBest(file, read.text, diskReader, shopIn(asked), effort);
    sheets.push(sheetOf(evaluated));
  }
  if (asked.options.format === "json") process.stdout.write(asJson(sheets, unread));
  else process.stdout.write(asText(sheets));
  for (const line of unread) process.stderr.write(`sawbuck: ${line}\n`);
  if (unread.length > 0 || (files.length === 0 && refused.length === 0)) {
    if (files.length === 0 && refused.length === 0)
      process.stderr.write("sawbuck: no *.sawbuck file was found there\n");
    return REFUSED;
  }
  return sheets.some((s) => s.problems.some(standsInTheWay)) ? FOUND : FINE;
}

function asJson(sheets: readonly SheetData[], unread: readonly string[]): string {
  const plans = sheets.map(({ file, title, problems, accepted, notChecked }) => ({
    file,
    title,
    problems,
    accepted,
    notChecked,
  }));
  return `${JSON.stringify({ format: "sawbuck-check", version: 1, plans, unread }, null, 2)}\n`;
}

function asText(sheets: readonly SheetData[]): string {
  return sheets.map(planText).join("\n");
}

function planText(sheet: SheetData): string {
  const lines = [`${sheet.file}: ${tally(sheet.problems)}`];
  for (const p of sheet.problems) {
    lines.push(`  ${p.place.file}:${p.place.line}:${p.place.column}  ${p.class}  ${p.message}  [${p.code}]`);
    for (const r of p.related) lines.push(`      ${r.place.file}:${r.place.line}: ${r.message}`);
    for (const a of p.assumed) lines.push(`      taken for granted: ${a}`);
    for (const c of p.cures) lines.push(`      cure: ${c}`);
  }
  for (const p of sheet.accepted)
    lines.push(`  accepted, ${p.class}: ${p.message}  [${p.code}] because ${p.accepted}`);
  if (sheet.notChecked.length > 0) lines.push("  Not checked:");
  for (const n of sheet.notChecked) lines.push(`    ${n.what}: ${n.why}`);
  return `${lines.join("\n")}\n`;
}

function tally(problems: readonly SheetProblem[]): string {
  if (problems.length === 0) return "no problem that Sawbuck can name was found";
  const counts = (["error", "hazard", "warning", "hint"] as const).flatMap((kind) => {
    const n = problems.filter((p) => p.class === kind).length;
    return n === 0 ? [] : [`${n} ${kind}${n === 1 ? "" : "s"}`];
  });
  return counts.join(", ");
}
