/**
 * What tells one placed piece from another: words of its line and of its place in the row, never a place in the text.
 * A line is named by its own words alone, so that a new line never renames the pieces of another.
 */
import type { Clause, Thing } from "../../../grammar/tree";
import { AXES, AXIS_WORDS, type Axis } from "./axes";
import { mirroredIn } from "./clauses";
import type { Placement } from "./placing";
import type { Stretch } from "./stretch";

/** "in front of legs"; with a number when an earlier line of the same part says the same. */
export function nameOfLine(p: Placement): string {
  const before = NAMES.get(p);
  if (before !== undefined) return before;
  const seen = new Map<string, number>();
  for (const line of p.context.placements) {
    const words = wordsOf(line);
    const nth = (seen.get(`${line.subject.name} ${words}`) ?? 0) + 1;
    seen.set(`${line.subject.name} ${words}`, nth);
    NAMES.set(line, [words, ...(nth > 1 ? [String(nth)] : [])].filter(Boolean).join(" "));
  }
  return NAMES.get(p) ?? "";
}

const NAMES = new WeakMap<Placement, string>();

/** The most telling relation of a line: what it stands beside, then between, then on. Corners tell themselves. */
function wordsOf({ entry }: Placement): string {
  if (entry.clauses.some((c) => c.kind === "corners")) return "";
  let best = { rank: RANKS, words: "" };
  for (const clause of entry.clauses) {
    const found = relationWords(clause);
    if (found && found.rank < best.rank) best = found;
  }
  return best.words;
}

const RANKS = 5;
const thing = (t: Thing): string => [...t.where.map((w) => w.text), t.name.text].join(" ");
const BESIDE: readonly string[] = ["left of", "right of", "in front of", "behind"];

function relationWords(c: Clause): { readonly rank: number; readonly words: string } | undefined {
  switch (c.kind) {
    case "touches":
      return { rank: BESIDE.includes(c.relation) ? 0 : 2, words: `${c.relation} ${thing(c.target)}` };
    case "between":
    case "spread":
      return { rank: 1, words: `between ${thing(c.first)} and ${thing(c.second)}` };
    case "diagonal":
      if (c.to.length === 0) return undefined;
      return { rank: 1, words: `${c.from.join(" ")} to ${c.to.join(" ")}` };
    case "run":
      return { rank: 1, words: `${c.from.join(" ")} to ${c.to.join(" ")}` };
    case "flush":
    case "inset":
      return { rank: 3, words: `near ${c.face} of ${thing(c.target)}` };
    case "centered":
      return { rank: 3, words: `centered on ${thing(c.target)}` };
    case "from":
      return { rank: 4, words: `from ${c.datum}` };
    default:
      return undefined;
  }
}

/** "front left" for corners, "3" in a row, "2 / 3" in rows both ways, "mirrored" for a mirror image. */
export function nameOfSlot(
  p: Placement,
  [i, j, k]: readonly [number, number, number],
  counts: readonly [number, number, number],
  at: readonly [Stretch, Stretch, Stretch],
): string {
  const twice = (axis: Axis): boolean => mirroredIn(p.entry, axis) !== undefined;
  const perSide = (axis: Axis): number => counts[axis] / (twice(axis) ? 2 : 1);
  const within = (n: number, axis: Axis): number => (at[axis].flipped && twice(axis) ? n - perSide(axis) : n);
  const [x, y, z] = [within(i, 0), within(j, 1), within(k, 2)];
  const corners = p.entry.clauses.some((c) => c.kind === "corners");
  const row = (n: number, axis: Axis): string[] => (perSide(axis) > 1 ? [String(n + 1)] : []);
  const level = corners
    ? [`${y === 0 ? "front" : "back"} ${x === 0 ? "left" : "right"}`]
    : [...row(x, 0), ...row(y, 1)];
  return [...level, ...row(z, 2), ...mirroredWords(p, at)].join(" / ");
}

/** "mirrored", or in which directions where the line mirrors in several. */
function mirroredWords(p: Placement, at: readonly [Stretch, Stretch, Stretch]): string[] {
  const flipped = AXES.filter((axis) => at[axis].flipped);
  if (flipped.length === 0) return [];
  const several = AXES.filter((axis) => mirroredIn(p.entry, axis)).length > 1;
  return [several ? `mirrored ${flipped.map((axis) => AXIS_WORDS[axis]).join(" and ")}` : "mirrored"];
}
