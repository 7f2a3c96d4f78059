/** `check --format text`: what is read on a terminal. */
import type { SheetProblem } from "../../sheet/data";
import type { Report } from "../../sheet/gather-problems";
import type { Writer } from "./writer";

export function textWriter(): Writer {
  let any = false;
  return {
    begin: () => "",
    plan: (report) => {
      const between = any ? "\n" : "";
      any = true;
      return `${between}${planText(report)}`;
    },
    end: () => "",
  };
}

function planText(report: Report): string {
  const lines = [`${report.file}: ${tally(report.problems)}`];
  for (const p of report.problems) {
    lines.push(`  ${p.place.file}:${p.place.line}:${p.place.column}  ${p.class}  ${p.message}  [${p.code}]`);
    for (const r of p.related) lines.push(`      ${r.place.file}:${r.place.line}: ${r.message}`);
    for (const a of p.assumed) lines.push(`      taken for granted: ${a}`);
    for (const c of p.cures) lines.push(`      cure: ${c}`);
  }
  for (const p of report.accepted)
    lines.push(`  accepted, ${p.class}: ${p.message}  [${p.code}] because ${p.accepted}`);
  if (report.notChecked.length > 0) lines.push("  Not checked:");
  for (const n of report.notChecked) lines.push(`    ${n.what}: ${n.why}`);
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
