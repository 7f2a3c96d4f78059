/** What the status of the layouts says. */
import { l10n } from "vscode";
import type { LayoutsStanding } from "./protocol";

/** How they stand, in a line; undefined where there is nothing to lay out. */
export function layoutText({ state, priced, over }: LayoutsStanding): string | undefined {
  if (state === "none") return undefined;
  const gap = (over ?? []).reduce((all, one) => (all === "" ? one : l10n.t("{0} and {1}", all, one)), "");
  if (state === "looking") {
    if (over === undefined) return l10n.t("Layouts: looking for a cheaper way");
    return gap === ""
      ? l10n.t("Layouts: no cheaper way exists; the boards are being sorted")
      : l10n.t("Layouts: looking for a cheaper way (at most {0} over)", gap);
  }
  if (state === "proven")
    return priced
      ? l10n.t("Layouts: no cheaper way exists, checked")
      : l10n.t("Layouts: no better way exists, checked");
  if (gap === "") return l10n.t("Layouts: the best that was found; a cheaper way may exist");
  return priced
    ? l10n.t("Layouts: at most {0} over the cheapest", gap)
    : l10n.t("Layouts: at most {0} more than the least", gap);
}

/** How many stocks are still looked at. */
export const stocksLeft = (stocks: number): string =>
  stocks === 1 ? l10n.t("1 stock is looked at") : l10n.t("{0} stocks are looked at", stocks);
