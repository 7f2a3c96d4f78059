/** One mistake at a time in a plan that has none: a length, an angle, a relation, a count, a stock or a screw changed, an entry dropped or doubled. */
import { parse } from "../../../grammar/parser";
import type { Clause, Entry, Literal, Span } from "../../../grammar/tree";

export type Kind = "length" | "angle" | "relation" | "count" | "stock" | "screw" | "dropped" | "doubled";

export interface Mutant {
  readonly kind: Kind;
  readonly text: string;
  /** The changed entry's own line, from 1, in the plan as it was. */
  readonly line: number;
  /** What it declares, or what it places or joins. */
  readonly names: readonly string[];
  /** "30" -> (30" + 1/8")". */
  readonly what: string;
  /** Where the changed entry now stands; undefined when it was dropped. */
  readonly at: Span | undefined;
}

/** Amounts that matter. */
const LENGTHS = ['1/8"', '1/4"', '1/2"', '1"', '3"'];
const ANGLES = ["1°", "2°", "5°"];
const SECTIONS = ["1x3", "1x4", "1x6", "2x2", "2x4", "2x6", "4x4", "5/4x6"];
const METRIC = ["18x95", "45x45", "18x70"];
const SCREWS = ['#8 x 1"', '#8 x 1-1/4"', '#8 x 1-5/8"', '#8 x 2-1/2"', '#10 x 3-1/2"'];
const OPPOSITE: readonly (readonly [RegExp, string])[] = [
  [/^on(?= )/, "under"],
  [/^under/, "on"],
  [/^left of/, "right of"],
  [/^right of/, "left of"],
  [/^in front of/, "behind"],
  [/^behind/, "in front of"],
  [/\babove\b/, "below"],
  [/\bbelow\b/, "above"],
  [/\btop of/, "bottom of"],
  [/\bbottom of/, "top of"],
  [/\bleft of/, "right of"],
  [/\bright of/, "left of"],
  [/\bfront of/, "back of"],
  [/\bback of/, "front of"],
  [/^on edge/, "flat"],
  [/^flat$/, "on edge"],
  [/^across/, "front to back"],
  [/^front to back/, "across"],
  [/\bhigh$/, "deep"],
  [/ across$/, " deep"],
  [/\bdeep$/, "across"],
  [/^wide face front/, "wide face left"],
  [/^wide face left/, "wide face front"],
];

const MUTATED = new Set<Entry["kind"]>([
  "measure",
  "part",
  "place",
  "ring",
  "box",
  "assembly",
  "fasten",
  "glue",
]);

/** Every mutant of a plan, each site once or twice; `next` picks amounts, so that the same seed gives the same list. */
export function mutantsOf(text: string, next: () => number): Mutant[] {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)]!;
  const found: Mutant[] = [];
  for (const entry of parse(text).entries.flatMap(withBody)) {
    if (!MUTATED.has(entry.kind)) continue;
    const change = (kind: Kind, span: Span, to: string): void => {
      const old = text.slice(span.start, span.end);
      if (old === to) return;
      const grown = to.length - old.length;
      found.push({
        kind,
        text: text.slice(0, span.start) + to + text.slice(span.end),
        line: lineOf(text, span.start),
        names: namesOf(entry),
        what: `${old} -> ${to}`,
        at: { start: entry.start, end: entry.end + grown },
      });
    };
    for (const literal of entry.kind === "assembly" ? [] : literalsOf(entry)) {
      const old = text.slice(literal.start, literal.end);
      if (literal.form === "length" || literal.form === "measured")
        for (const sign of ["+", "-"]) change("length", literal, `(${old} ${sign} ${pick(LENGTHS)})`);
      if (literal.form === "angle") change("angle", literal, `(${old} ${pick(["+", "-"])} ${pick(ANGLES)})`);
      if (literal.form === "number" && /^\d+$/.test(old) && isCount(entry, literal))
        for (const by of [1, -1])
          if (Number(old) + by > 0) change("count", literal, String(Number(old) + by));
    }
    if (entry.kind === "part") {
      const list = METRIC.includes(entry.of.text) ? METRIC : SECTIONS;
      change("stock", entry.of, pick(list.filter((s) => s !== entry.of.text)));
    }
    if (entry.kind === "place") for (const clause of entry.clauses) relation(text, clause, change);
    if (entry.kind === "fasten")
      for (const clause of entry.clauses)
        if (clause.kind === "driven" && (clause.size || clause.fastener)) {
          const span = clause.size ?? clause.fastener!;
          const old = text.slice(span.start, span.end);
          for (const to of [pick(SCREWS.slice(0, 2)), pick(SCREWS.slice(3))])
            if (to !== old) change("screw", span, to);
        }
    const whole = text.slice(entry.start, entry.end);
    const line = lineOf(text, entry.start);
    const names = namesOf(entry);
    const label = whole.split("\n")[0]!;
    found.push({
      kind: "dropped",
      text: text.slice(0, entry.start) + text.slice(entry.end),
      line,
      names,
      what: label,
      at: undefined,
    });
    const indent = /[^\n]*$/.exec(text.slice(0, entry.start))![0];
    found.push({
      kind: "doubled",
      text: `${text.slice(0, entry.end)}\n${indent}${whole}${text.slice(entry.end)}`,
      line,
      names,
      what: label,
      at: { start: entry.start, end: entry.end + whole.length + 1 + indent.length },
    });
  }
  return found;
}

const withBody = (entry: Entry): Entry[] => (entry.kind === "assembly" ? [entry, ...entry.body] : [entry]);

function relation(text: string, clause: Clause, change: (kind: Kind, span: Span, to: string) => void): void {
  const old = text.slice(clause.start, clause.end);
  for (const [from, to] of OPPOSITE) {
    if (!from.test(old)) continue;
    change("relation", clause, old.replace(from, to));
    return;
  }
}

/** Numbers that count pieces, sides, screws or rows. */
function isCount(entry: Entry, literal: Literal): boolean {
  const here = (e: Span | undefined): boolean => e?.start === literal.start;
  if (entry.kind === "part" && here(entry.count)) return true;
  if (entry.kind === "ring") return true;
  return entry.clauses.some(
    (c) =>
      (c.kind === "repeat" && here(c.count)) ||
      (c.kind === "driven" && (here(c.count) || (c.place?.at === "crossings" && here(c.place.count)))),
  );
}

function literalsOf(node: unknown): Literal[] {
  if (Array.isArray(node)) return node.flatMap(literalsOf);
  if (typeof node !== "object" || node === null) return [];
  const one = node as { kind?: unknown };
  if (one.kind === "literal") return [node as Literal];
  return Object.values(node).flatMap(literalsOf);
}

/** The names a mistake in an entry is about. */
export function namesOf(entry: Entry): string[] {
  if (entry.kind === "place") return [entry.subject.name.text];
  if (entry.kind === "fasten" || entry.kind === "glue")
    return [...entry.first, ...entry.through, ...entry.into].map((s) => s.thing.name.text);
  return "name" in entry && entry.name ? [entry.name.text] : [];
}

const lineOf = (text: string, at: number): number => text.slice(0, at).split("\n").length;
