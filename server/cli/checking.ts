/** Checks one plan file, in whichever thread, and gives plain data of it. */
import { diskReader, readPlan } from "../lsp/disk";
import { evaluatedForProblems } from "../lsp/layouts/at-once";
import { detailsOf, reportOf } from "../service";
import type { Details, Report } from "../sheet/gather-problems";
import { isSame } from "./writing";

export interface AskedCheck {
  readonly shop: { readonly shop?: string; readonly shopFrom?: string };
  /** Counted work for each stock's layouts; undefined: what its problems ask for. */
  readonly effort: number | undefined;
  /** Whether more than its texts is wanted of every problem. */
  readonly details: boolean;
}

/** What is told of one plan; in words why there is nothing. */
export type Checked =
  | { readonly report: Report; readonly details?: readonly Details[] }
  | { readonly file: string; readonly refused: string };

/** Never throws. */
export function checkedPlan(file: string, { shop, effort, details }: AskedCheck): Checked {
  try {
    const read = readPlan(file);
    if ("refused" in read) return { file, refused: read.refused };
    // The shop file itself, found in the folder, is read as it is.
    const own = shop.shop !== undefined && isSame(shop.shop, file) ? {} : shop;
    const evaluated = evaluatedForProblems(file, read.text, diskReader, own, effort);
    return { report: reportOf(evaluated), ...(details && { details: detailsOf(evaluated) }) };
  } catch (error) {
    return brokenDown(file, String(error));
  }
}

export const brokenDown = (file: string, why: string): Checked => ({
  file,
  refused: `it was not checked. This should not happen, and is a fault of Sawbuck's own: ${why.slice(0, 300)}`,
});
