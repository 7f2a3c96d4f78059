/** What of a plan leads elsewhere: the files it names, and the page of each problem that it lets stand. */
import type { Span } from "../../grammar/tree";
import { checkOf } from "../checks";
import { enclosedBy, type Reader } from "../plan";
import type { Checked } from "./checked";

export interface Link {
  readonly range: Span;
  readonly to: { readonly file: string } | { readonly code: string };
}

/** In the order written. `read` finds the files; one that cannot be read, or is enclosed, is no link. */
export function linksOf({ worked, file }: Checked, read: Reader): Link[] {
  const { whole } = worked.loaded;
  return whole.entries.flatMap((entry): Link[] => {
    if (entry.kind === "shop" || entry.kind === "bring") {
      const { start, end, text } = entry.path;
      const found = text === "" || enclosedBy(whole, start, text) ? undefined : read(text, file, file);
      return !found || "refused" in found ? [] : [{ range: { start, end }, to: { file: found.file } }];
    }
    if (entry.kind !== "accept" || !checkOf(entry.code.text)) return [];
    const { start, end, text } = entry.code;
    return [{ range: { start, end }, to: { code: text } }];
  });
}
