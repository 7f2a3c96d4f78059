/** The plain board of the same size that a part could be cut from instead of salvage. Millimetres. */
import { ifKnown } from "../../plan";
import { section } from "../../trade";
import type { Part } from "../parts";
import type { Worked } from "../work";

/**
 * The section that the part's stock is of, where that is bought new: as large as the stock, and long enough where the plan
 * or its shop says what lengths are sold. Undefined else.
 */
export function plainStock({ material, needs }: Part, worked: Worked): string | undefined {
  const { scope, settings, evaluate } = worked;
  const entry = material?.declared?.entry;
  const name = entry?.kind === "stock" ? entry.of?.text.replace("×", "x") : undefined;
  const own = name === undefined ? undefined : section(name, settings.lumber);
  // A board that is measured is its own size.
  if (!own || entry!.clauses.some((c) => c.kind === "measured" || c.kind === "actual")) return undefined;
  const declared = scope.declared.get(name!);
  if (!declared) return name;
  const { clauses } = declared.entry;
  const resized = clauses.some((c) => c.kind === "measured" || c.kind === "actual" || c.kind === "on hand");
  const old = clauses.some((c) => c.kind === "condition" && c.word === "painted");
  const sold = clauses.flatMap((c) =>
    c.kind === "sold"
      ? c.offers.flatMap((o) => ifKnown(evaluate(o.length, declared.at.file))?.approx ?? [])
      : [],
  );
  const long = ifKnown(needs)?.approx;
  const enough = long !== undefined && sold.some((length) => length - MOST_TRIM >= long);
  return declared.kind === "stock" && !resized && !old && enough ? name : undefined;
}

/** No more than this is cut off a board's end to square it, in mm: 2". */
const MOST_TRIM = 50.8;
