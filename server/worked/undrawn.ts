/** What no drawing shows: it is on the list of what was not checked, before what the working out left open. */
import type { Worked } from "./work";

/** Why there is no drawing at all, or the parts that are on none. */
type Undrawn = { readonly all: "unknown" | "unplaced" } | { readonly parts: readonly string[] };

/** Undefined where all of the plan's own parts are drawn, or it has none. */
export function undrawn({ parts, pieces, loaded }: Worked): Undrawn | undefined {
  const own = [...parts.values()].filter((p) => p.declared.at.file === loaded.files[0]!.file);
  if (own.length === 0) return undefined;
  if (pieces.all.length === 0) return { all: pieces.lines.length > 0 ? "unknown" : "unplaced" };
  const standing = new Set(pieces.all.map((p) => p.part));
  const missing = own.filter((p) => !standing.has(p.name)).map((p) => p.name);
  return missing.length === 0 ? undefined : { parts: missing };
}

/** How many entries that list has, without any being put in words: it is asked at each key. */
export const countNotChecked = (worked: Worked): number =>
  worked.unchecked.length + (undrawn(worked) ? 1 : 0);
