/** What tells one placed piece from another: words of its line and of its place in the row, never a place in the text. */
import type { Clause, Thing } from "../../../grammar/tree";
import { AXIS_WORDS } from "./axes";
import type { Placement } from "./placing";
import type { Stretch } from "./stretch";

/** "in front of legs"; with a number when an earlier line of the same part says the same; empty for the only line of a part. */
export function nameOfLine(p: Placement): string {
  const same = p.context.placements.filter((o) => o.subject.name === p.subject.name);
  if (same.length === 1) return "";
  const words = same.map(wordsOf);
  const mine = words[same.indexOf(p)]!;
  const alike = words.filter((w) => w === mine);
  if (alike.length === 1 && mine) return mine;
  const nth = words.slice(0, same.indexOf(p) + 1).filter((w) => w === mine).length;
  return [mine, String(nth)].filter(Boolean).join(" ");
}

/** The words of the first relation that tells this line from others of its part. */
function wordsOf(p: Placement): string {
  const others = p.context.placements.filter((o) => o !== p && o.subject.name === p.subject.name);
  const said = p.entry.clauses.map(relationWords).filter(Boolean);
  const elsewhere = new Set(others.flatMap((o) => o.entry.clauses.map(relationWords)));
  return said.find((w) => !elsewhere.has(w)) ?? said[0] ?? "";
}

const thing = (t: Thing): string => [...t.where.map((w) => w.text), t.name.text].join(" ");

function relationWords(c: Clause): string {
  if (c.kind === "touches") return `${c.relation} ${thing(c.target)}`;
  if (c.kind === "flush" || c.kind === "inset")
    return `${c.kind === "flush" ? "" : "near "}${c.face} of ${thing(c.target)}`;
  if (c.kind === "between" || c.kind === "spread") return `between ${thing(c.first)} and ${thing(c.second)}`;
  if (c.kind === "centered") return `centered on ${thing(c.target)}`;
  if (c.kind === "diagonal") return `${c.from.join(" ")} to ${c.to.join(" ")}`;
  return c.kind === "from" ? `from ${c.datum}` : "";
}

/** "front left" for corners, "3" in a row, "2 / 3" in rows both ways, "mirrored" for a mirror image. */
export function nameOfSlot(
  p: Placement,
  [i, j, k]: readonly [number, number, number],
  counts: readonly [number, number, number],
  at: readonly [Stretch, Stretch, Stretch],
): string {
  const corners = p.entry.clauses.some((c) => c.kind === "corners");
  const mirrored = at.some((s) => s.flipped);
  if (corners) {
    const corner = `${j === 0 ? "front" : "back"} ${i === 0 ? "left" : "right"}`;
    return counts[2] > 1 ? `${corner} / ${k + 1}` : corner;
  }
  const half = (n: number, axis: 0 | 1 | 2): number =>
    isMirrorAxis(p, axis) && at[axis].flipped ? n / 2 : 0;
  const places = [i - half(counts[0], 0), j - half(counts[1], 1), k - half(counts[2], 2)];
  const rows = [0, 1, 2].filter((axis) => {
    const n = counts[axis]!;
    return n > (isMirrorAxis(p, axis) ? 2 : 1);
  });
  const numbers = rows.map((axis) => String(places[axis]! + 1));
  return [...numbers, ...(mirrored ? ["mirrored"] : [])].join(" / ");
}

function isMirrorAxis(p: Placement, axis: number): boolean {
  const clause = p.entry.clauses.find((c) => c.kind === "mirrored");
  return clause?.kind === "mirrored" && AXIS_WORDS[axis] === clause.axis;
}
