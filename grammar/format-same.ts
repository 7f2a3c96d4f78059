/** Whether two texts mean the same: their trees are equal but for where things stand. */
import type { Tree } from "./tree";

export const sameMeaning = (a: Said, b: Said): boolean =>
  same(a.entries, b.entries) && same(a.complaints, b.complaints);

type Said = Pick<Tree, "entries" | "complaints">;

function same(a: unknown, b: unknown): boolean {
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return a === b;
  if (a === b) return true;
  const [x, y] = [a as Record<string, unknown>, b as Record<string, unknown>];
  const keys = Object.keys(x);
  return (
    keys.length === Object.keys(y).length &&
    keys.every((key) => PLACES.has(key) || (key in y && (same(x[key], y[key]) || sameUnread(x, y, key))))
  );
}

const PLACES: ReadonlySet<string> = new Set(["start", "end"]);

/** What could not be read is held as its text, in which a line may have ended otherwise. */
const sameUnread = (x: Record<string, unknown>, y: Record<string, unknown>, key: string): boolean =>
  key === "text" && x.kind === "broken" && squeezed(x.text) === squeezed(y.text);

const squeezed = (text: unknown): string => String(text).replace(/\s+/g, " ");
