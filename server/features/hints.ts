/**
 * Hints: small figures that stand in the text where something follows from something else. What a measure or a length
 * comes to, how many pieces, screws and gaps there are. Nothing that the text itself says, and nothing unknown.
 */
import type { Clause, Entry, Expression, Span } from "../../grammar/tree";
import type { Language } from "../checks";
import { ifKnown, lookUp, type Value } from "../plan";
import { TOUCHING } from "../solid/contact";
import {
  exactOf,
  fraction,
  LENGTH,
  onTheMark,
  type Quantity,
  quantityText,
  readLiteral,
  sameDimension,
} from "../units";
import type { Joint, Part, Worked } from "../worked";
import type { Placement } from "../worked/placing";
import { patternAxis } from "../worked/placing/open";
import type { Checked } from "./checked";
import { HINT_WORDS } from "./hints-words";

export interface Hint {
  /** Behind the words that it is about. */
  readonly offset: number;
  readonly text: string;
  /** A length or another value, or how many of something. */
  readonly kind: "length" | "count";
  /** On which a hover tells more of it. */
  readonly about: number;
}

/** Which kinds are wanted. */
export type HintKinds = Readonly<Record<"lengths" | "counts", boolean>>;

/** Longer ones are left out: they would push the text aside. */
export const WIDEST_HINT = 26;

/** The hints in a stretch of the plan's own file, in the order of the text. */
export function hintsOf(
  { file, worked }: Checked,
  range: Span,
  kinds: HintKinds,
  language: Language = "en",
): Hint[] {
  const { entries } = worked.loaded.whole;
  const within = ({ start, end }: Span): boolean => start <= range.end && end >= range.start;
  const looked: Looked = { file, worked, language, joints: undefined };
  return entries
    .filter(within)
    .flatMap((e) => (e.kind === "assembly" ? e.body.filter(within) : [e]))
    .flatMap((e) => ofEntry(e, looked))
    .filter(({ offset, text, kind }) => {
      const inside = range.start <= offset && offset <= range.end;
      return inside && text.length <= WIDEST_HINT && (kind === "length" ? kinds.lengths : kinds.counts);
    })
    .sort((a, b) => a.offset - b.offset);
}

/** What hints are read off. */
interface Looked {
  readonly file: string;
  readonly worked: Worked;
  readonly language: Language;
  /** By their lines, once the first is asked for. */
  joints: ReadonlyMap<Entry, Joint> | undefined;
}

function ofEntry(entry: Entry, looked: Looked): Hint[] {
  switch (entry.kind) {
    case "measure": {
      const measure = looked.worked.measures.get(entry.name.text);
      if (measure?.declared.entry !== entry) return [];
      return worth(entry.value, measure.value, looked, entry.name.start);
    }
    case "part":
      return ofPart(entry, looked);
    case "box": {
      const box = looked.worked.boxes.find((b) => b.declared.entry === entry);
      const { holds } = HINT_WORDS[looked.language];
      return shown(box?.volume, looked).map((volume) =>
        hint("length", entry.name.end, holds(volume), entry.name.start),
      );
    }
    case "place":
      return ofPlace(entry, looked);
    case "fasten":
      return ofJoint(entry, looked);
    case "load":
      return worth(entry.value, undefined, looked, entry.keyword.start);
    case "must": {
      const must = looked.worked.musts.find((m) => m.entry === entry);
      if (!must) return [];
      const about = entry.keyword.start;
      return [
        ...worth(entry.left, must.left, looked, about),
        ...worth(entry.right, must.right, looked, about),
      ];
    }
    default:
      return [];
  }
}

const hint = (kind: Hint["kind"], offset: number, text: string, about: number): Hint => ({
  offset,
  text,
  kind,
  about,
});

/** ` = 29-1/4"` behind an expression; nothing behind what is plainly typed. `value` where it is known already. */
function worth(
  e: Expression | undefined,
  value: Value<Quantity> | undefined,
  looked: Looked,
  about: number,
): Hint[] {
  if (!e || isTyped(e)) return [];
  const { worked, file } = looked;
  return shown(value ?? worked.evaluate(e, file), looked).map((text) =>
    hint("length", behind(e, worked), `= ${text}`, about),
  );
}

const isTyped = (e: Expression): boolean =>
  e.kind === "literal" || (e.kind === "negative" && e.value.kind === "literal");

/** The end of an expression, with the parentheses round it. */
function behind({ end }: Span, { loaded }: Worked): number {
  const closing = /(?:[ \t]*\))*/y;
  closing.lastIndex = end;
  return end + (closing.exec(loaded.whole.text)?.[0].length ?? 0);
}

/** A value to the plan's mark, with a word where that rounds it; nothing where it is not known. */
function shown(value: Value<Quantity> | undefined, { worked, language }: Looked): string[] {
  const q = ifKnown(value);
  if (!q) return [];
  const { display } = worked.settings;
  const text = quantityText(q, display);
  const full = sameDimension(q.dim, LENGTH) ? onTheMark(q, display) : isWhole(q, text);
  return [full ? text : HINT_WORDS[language].about(text)];
}

/** Whether a text gives the value as it is. */
function isWhole(q: Quantity, text: string): boolean {
  const [minus, number] = text.startsWith("-") ? [true, text.slice(1)] : [false, text];
  const read = readLiteral(number);
  if (q.exact === null || !read) return false;
  const said = exactOf(read);
  return fraction.compare(minus ? fraction.negate(said) : said, q.exact) === 0;
}

type Of<K extends Clause["kind"]> = Clause & { readonly kind: K };
const first = <K extends Clause["kind"]>(clauses: readonly Clause[], kind: K): Of<K> | undefined =>
  clauses.find((c): c is Of<K> => c.kind === kind);

function ofPart(entry: Entry & { readonly kind: "part" }, looked: Looked): Hint[] {
  const part = looked.worked.parts.get(entry.name.text);
  if (part?.declared.entry !== entry) return [];
  const words = HINT_WORDS[looked.language];
  const about = entry.name.start;
  const count = ifKnown(part.count);
  const fit = first(entry.clauses, "cut to fit");
  const width = first(entry.clauses, "width");
  return [
    ...(count === undefined
      ? []
      : !entry.count
        ? [hint("count", entry.of.end, words.pieces(count), about)]
        : isTyped(entry.count)
          ? []
          : [hint("count", behind(entry.count, looked.worked), `= ${count}`, about)]),
    ...lengthOf(entry, part, looked),
    ...(width ? worth(width.value, part.width, looked, about) : []),
    ...(fit?.allowance
      ? shown(part.needs, looked).map((length) =>
          hint("length", behind(fit, looked.worked), words.cutFirst(length), about),
        )
      : []),
  ];
}

/** Behind the length's own words; of a diagonal, which has none, behind what it is cut from. */
function lengthOf(entry: Entry & { readonly kind: "part" }, part: Part, looked: Looked): Hint[] {
  const clause = first(entry.clauses, "length");
  if (clause) return worth(clause.value, part.length, looked, entry.name.start);
  const { long } = HINT_WORDS[looked.language];
  return shown(part.length, looked).map((length) =>
    hint("length", entry.of.end, long(length), entry.name.start),
  );
}

/** Of each row: how many there are and the gap between them, as far as the line does not say so. */
function ofPlace(entry: Entry & { readonly kind: "place" }, looked: Looked): Hint[] {
  const { placing, scope } = looked.worked;
  const name = lookUp(scope, entry.subject.name.text)?.name ?? entry.subject.name.text;
  const line = placing.linesOf(name).find((p) => p.entry === entry);
  return line ? line.patterns.flatMap((pattern) => ofRow(line, pattern, looked)) : [];
}

function ofRow(line: Placement, pattern: Placement["patterns"][number], looked: Looked): Hint[] {
  const { placing } = looked.worked;
  const axis = patternAxis(placing, line, pattern);
  const row = axis === undefined ? undefined : ifKnown(placing.along(line, axis))?.row;
  if (!row) return [];
  const { count, spacing, spread, clause } = pattern;
  const words = HINT_WORDS[looked.language];
  const gap = row.gap && !saysGap(spacing) ? gapText(row.gap, looked) : [];
  const text = [...(count && isTyped(count) ? [] : [words.row(row.starts.length)]), ...gap].join(", ");
  if (text === "") return [];
  const end = Math.max(...[clause, spacing, spread].flatMap((c) => (c ? [behind(c, looked.worked)] : [])));
  return [hint("count", end, text, line.entry.keyword.start)];
}

/** A spacing on center is not turned into a gap: it is what is marked on the wood. */
function saysGap(spacing: Placement["patterns"][number]["spacing"]): boolean {
  if (!spacing || spacing.rule === "at most apart") return false;
  return spacing.rule !== "apart" || !spacing.value || isTyped(spacing.value);
}

/** Nothing for pieces that overlap, which is told as a problem. */
function gapText(gap: Quantity, looked: Looked): string[] {
  const words = HINT_WORDS[looked.language];
  if (Math.abs(gap.approx) < TOUCHING) return [words.tight];
  return gap.approx < 0 ? [] : shown({ state: "known", value: gap }, looked).map(words.apart);
}

/** How many screws a line takes, where it does not say so itself. */
function ofJoint(entry: Entry, looked: Looked): Hint[] {
  looked.joints ??= new Map(looked.worked.joints.map((j) => [j.entry, j]));
  const joint = looked.joints.get(entry);
  const count = ifKnown(joint?.count);
  const driven = first(entry.clauses, "driven");
  if (!joint || !driven || count === undefined) return [];
  const typed = joint.setting.where === "in all" && (!driven.count || isTyped(driven.count));
  if (typed) return [];
  const where = [driven, first(entry.clauses, "joint place"), first(entry.clauses, "joint spacing")];
  const end = Math.max(...where.flatMap((c) => (c ? [behind(c, looked.worked)] : [])));
  return [hint("count", end, HINT_WORDS[looked.language].inAll(count), entry.keyword.start)];
}
