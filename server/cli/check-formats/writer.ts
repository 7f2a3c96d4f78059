/** What `check` prints, plan by plan, so that a large folder need not be held in memory. */
import type { Details, Report } from "../../sheet/gather-problems";

export interface Writer {
  readonly begin: () => string;
  readonly plan: (report: Report, details?: readonly Details[]) => string;
  /** `unread`: what could not be read, each with its reason. */
  readonly end: (unread: readonly string[]) => string;
}

/** One thing after another in JSON, so far in, as `JSON.stringify` with two blanks writes a list of them. */
export function jsonList(depth: number): { next: (things: readonly unknown[]) => string; end: () => string } {
  const blanks = "  ".repeat(depth);
  let any = false;
  return {
    next: (things) => {
      const texts = things.map((thing) => {
        const before = any ? "," : "[";
        any = true;
        return `${before}\n${JSON.stringify(thing, null, 2).replace(/^/gm, `${blanks}  `)}`;
      });
      return texts.join("");
    },
    end: () => (any ? `\n${blanks}]` : "[]"),
  };
}
