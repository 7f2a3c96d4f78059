/** What is said of how a plan stands. What was not looked at is said beside “no problems found”, which approves nothing. */
import { l10n } from "vscode";
import type { Counts } from "./protocol";

/** In a line: how many problems, and how much was not checked. */
export function planText(counts: Counts): string {
  const found = problemsText(counts.errors + counts.hazards + counts.warnings + counts.hints);
  return counts.unchecked === 0 ? found : l10n.t("{0}; {1}", found, notCheckedText(counts.unchecked));
}

/** The problems by their classes, the worst first. */
export function classesText({ errors, hazards, warnings, hints }: Counts): string {
  const classes = [
    errors > 0 && (errors === 1 ? l10n.t("1 error") : l10n.t("{0} errors", errors)),
    hazards > 0 && (hazards === 1 ? l10n.t("1 hazard") : l10n.t("{0} hazards", hazards)),
    warnings > 0 && (warnings === 1 ? l10n.t("1 warning") : l10n.t("{0} warnings", warnings)),
    hints > 0 && (hints === 1 ? l10n.t("1 hint") : l10n.t("{0} hints", hints)),
  ].filter((one) => one !== false);
  return classes.length === 0 ? l10n.t("This approves nothing.") : classes.join(", ");
}

export const notCheckedText = (count: number): string =>
  count === 1 ? l10n.t("1 thing not checked") : l10n.t("{0} things not checked", count);

function problemsText(count: number): string {
  if (count === 0) return l10n.t("No problems found");
  return count === 1 ? l10n.t("1 problem") : l10n.t("{0} problems", count);
}
