/** What is offered while a line is typed: from the words before the cursor, and the plan worked out so far. */
import { type EntryForm, entryForm } from "../../grammar/forms";
import { lineStart } from "../../grammar/lines";
import { breaksBetween, Close, endOf, Literal, tokenize, Word, Words } from "../../grammar/tokens";
import type { Language } from "../checks";
import type { Checked } from "./checked";
import { entryOffers } from "./completion-entries";
import { exampleOffers } from "./completion-examples";
import { CLAUSE_PATTERNS, goingOn, HEAD_PATTERNS, stillOpen } from "./completion-forms";
import { type Asking, type Completion, distinct, type Offer, RANK } from "./completion-offer";
import { offersFor } from "./completion-offers";
import { alt, isWhole, type Next, nextOf, type Pattern, words, wordsOf } from "./completion-patterns";
import { clauseRank, faceRank, openClauses, openIn } from "./completion-place";
import { holeOffers, screwOffers, unlessDriven } from "./completion-screws";
import { concernedNames, soldOffers } from "./completion-tables";
import { type Lexed, readTyped, type Typed, upTo } from "./completion-typed";
import { unitOffers } from "./completion-units";

export type { Completion } from "./completion-offer";

/** Longest entry looked at, in characters. */
export const LONGEST_ENTRY = 20_000;

/** What may be typed at an offset of the plan's own file, best first. */
export function completionsAt(plan: Checked, offset: number, language: Language = "en"): Completion[] {
  const { text } = plan;
  if (offset < 0 || offset > text.length) return [];
  const line = lineStart(text, offset);
  const typed = text.slice(line, offset).replace(/^\uFEFF/, "");
  if (/^(?:[A-Za-z][\w-]*)?$/.test(typed)) {
    const start = offset - typed.length;
    const offers = entryOffers({ plan, language, typed: undefined }, start);
    return placed({ offers, text, start, offset });
  }
  const start = entryStart(text, line);
  if (start === undefined || offset - start > LONGEST_ENTRY) return [];
  return insideEntry({ plan, language, typed: undefined }, start, offset);
}

/** The start of the line in column 0 that a line belongs to; blank lines and comments belong to no other. */
export function entryStart(text: string, line: number): number | undefined {
  for (let at = line; ; at = lineStart(text, at - 1)) {
    const first = text[at] === "\uFEFF" ? text[at + 1] : text[at];
    if (first !== undefined && /[^\s#]/.test(first)) return at;
    if (at === 0) return undefined;
  }
}

interface Placing {
  readonly offers: readonly Offer[];
  readonly text: string;
  readonly start: number;
  readonly offset: number;
  /** How many stand before these. */
  readonly before?: number;
}

/** Gives offers their place and their order. */
function placed({ offers, text, start, offset, before = 0 }: Placing): Completion[] {
  const rest = /^[\p{L}\p{N}_-]*/u.exec(text.slice(offset, offset + 60))?.[0].length ?? 0;
  const inWord = /[\p{L}\p{N}_-]/u.test(text[start < offset ? offset - 1 : offset] ?? "");
  const end = inWord ? offset + rest : offset;
  const more = /^[^\S\r\n]/.test(text.slice(end, end + 1)) ? "" : " ";
  return offers.map(({ rank, ...o }, i) => ({
    ...o,
    insertText: o.goesOn && !o.insertText.endsWith("(") ? o.insertText + more : o.insertText,
    range: { start, end },
    sortText: String(before + i).padStart(4, "0"),
    preselect: before + i === 0 && rank < RANK.open,
  }));
}

function insideEntry(about: Asking, start: number, offset: number): Completion[] {
  const { text } = about.plan;
  const before = text.slice(start, offset);
  const { tokens, comments } = tokenize(before);
  const end = offset - start;
  const last = tokens[tokens.length - 1];
  // A lone # may yet become a screw's size.
  const said = comments[comments.length - 1];
  if (said && said.startOffset < end && endOf(said) === end && said.image !== "#") return [];
  if (!last || (last.tokenType === Words && !breaksBetween(before, endOf(last), end))) return [];
  const standing = (from: number) => standingAt(about, before, tokens, start, from);
  const put = (offers: readonly Offer[], from: number) =>
    placed({ offers, text, start: start + from, offset });
  const screw = /#(?:\d+(?: ?[x×] ?[\d ./-]*)?)?$|(?<![\w./-])\d+(?:\.\d+)? ?[x×] ?[\d.]*m?$/.exec(before);
  if (screw) {
    const { expected, asking } = standing(screw.index);
    if (expected.some((n) => n.kind === "screw")) return put(screwOffers(screw[0], asking), screw.index);
  }
  if (said?.image === "#" && endOf(said) === end) return [];
  const section = /(?<![\w.'"/-])\d[\d/]*[x×]?[\d/]*$/.exec(before);
  if (section) {
    const { expected, asking } = standing(section.index);
    const sections = expected.filter((n) => n.kind === "name" && n.table === "sections");
    if (sections.length > 0) {
      const offers = offersFor(sections, asking, () => false).filter((o) => /^\d/.test(o.label));
      return put(offers, section.index);
    }
  }
  const units = unitsAt(before, standing);
  const withUnits = units ? put(units.offers, units.from) : [];
  if (units?.inNumber || (units && /[A-Za-z]$/.test(before) && withUnits.length > 0)) return withUnits;
  // Right behind a value or a parenthesis a blank comes first.
  if (endOf(last) === end && (isA(last, Literal) || last.tokenType === Close)) return withUnits;
  const partial = isA(last, Word) && endOf(last) === end;
  const from = partial ? last.startOffset : end;
  const others = offersAt(standing(from));
  return [
    ...withUnits,
    ...placed({ offers: others, text, start: start + from, offset, before: withUnits.length }),
  ];
}

/**
 * The units that the number before the cursor may take. `inNumber` while the cursor stands in it; behind a blank only
 * units of which some letters are typed, or that follow a blank.
 */
function unitsAt(before: string, standing: (from: number) => Standing) {
  const number = /(?<![\w.'"#/-])(\d[\d./-]*)( ?)([A-Za-z/²³°]*)$/.exec(before);
  if (!number) return undefined;
  const [whole, digits = "", blank, letters] = number;
  const { expected, asking } = standing(number.index);
  const squeezed = whole.replace(/\s/g, "");
  if (/\d['′’] ?-?$/.test(before.slice(0, number.index)))
    return {
      offers: unitOffers(digits, ["inches"], asking),
      from: number.index,
      inNumber: blank === "",
    };
  const units = expected.flatMap((n) => (n.kind === "value" ? [n.unit] : []));
  const offers = unitOffers(digits, units, asking).filter(
    (o) => o.label.replace(/\s/g, "").startsWith(squeezed) && (!blank || letters || o.label.includes(" ")),
  );
  return { offers, from: number.index, inNumber: blank === "" };
}

const isA = (t: Lexed[number], category: typeof Word): boolean =>
  t.tokenType === category || (t.tokenType.CATEGORIES?.includes(category) ?? false);

/** What could follow the words before a place in the entry. */
interface Standing {
  readonly asking: Asking;
  readonly expected: readonly Next[];
  /** Whether more is needed behind it. */
  readonly goesOn: (next: Next) => boolean;
}

function standingAt(about: Asking, before: string, tokens: Lexed, start: number, end: number): Standing {
  const read = readTyped(before, upTo(tokens, end), end);
  if (!read) return { asking: about, expected: [], goesOn: () => false };
  const typed: Typed = { ...read, at: start + read.at };
  const pattern = patternAt(typed);
  return {
    asking: { ...about, typed },
    expected: pattern ? expectedIn(typed, pattern) : [],
    goesOn: (next) => {
      const whole = clausePattern(typed, next) ?? pattern?.all;
      const said = typed.inHead && whole !== pattern?.all ? [] : typed.current;
      return whole !== undefined && !isWhole(whole, [...said, ...wordsOf(next)]);
    },
  };
}

/** The one clause that opening words belong to: none of the others is then meant. */
const clausePattern = ({ entry }: Typed, next: Next): Pattern | undefined =>
  next.kind === "words" && next.form
    ? CLAUSE_PATTERNS.get(entry)?.find(({ form }) => form === next.form)?.pattern
    : undefined;

interface Patterns {
  readonly all: Pattern;
  /** What the clause before goes on with, where it is a list. */
  readonly more: Pattern | undefined;
}

function patternAt({ entry, inHead, opensInner, previous }: Typed): Patterns | undefined {
  if (inHead) {
    const head = HEAD_PATTERNS[entry];
    return head && { all: head, more: undefined };
  }
  const inner = opensInner ? INNER.map((form) => words(form.word, { entry: form })) : [];
  const clauses = (CLAUSE_PATTERNS.get(entry) ?? []).map((f) => f.pattern);
  return { all: alt(...inner, ...clauses), more: goingOn(entry, previous) };
}

/** The entries that stand inside an assembly. */
const INNER = ["place", "fasten", "glue"].map(entryForm).filter((f): f is EntryForm => f !== undefined);

function expectedIn({ entry, current, inHead, said }: Typed, { all, more }: Patterns): Next[] {
  if (inHead) return nextOf(all, current);
  // Where a list may go on but nothing of it is typed, only its numbers are of use.
  const going = more ? nextOf(more, current).filter((n) => current.length > 0 || n.kind === "value") : [];
  const shut = (n: Next) => n.kind === "words" && n.form && !stillOpen(entry, n.form.opens.join(" "), said);
  return [...nextOf(all, current), ...going].filter((n) => !shut(n));
}

/** Everything that fits, with what this plan makes likely before the rest. */
function offersAt({ asking, expected, goesOn }: Standing): Offer[] {
  const { typed } = asking;
  if (!typed) return [];
  const open = typed.entry === "place" ? openIn(asking) : undefined;
  const atStart = !typed.inHead && typed.current.length === 0;
  const first = typed.current[0]?.image;
  const concerned = typed.entry === "accept" && first ? concernedNames(asking) : undefined;
  const wanted = typed.entry === "fasten" && atStart ? unlessDriven(expected, typed) : expected;
  const ranked = offersFor(wanted, asking, goesOn).map((o) => {
    if (open && (atStart || typed.inHead) && o.kind === "clause")
      return { ...o, rank: clauseRank(o.label, o.rank, open) };
    if (open && first === "flush" && / of$/.test(o.label))
      return { ...o, rank: faceRank(o.label.split(" ")[0]!, open) };
    return concerned?.has(o.label) ? { ...o, rank: RANK.likely } : o;
  });
  const likely = [
    ...(open && atStart ? openClauses(asking, open) : []),
    ...(first === "sold" &&
    expected.some((n) => n.kind === "value" && n.unit === "length") &&
    typed.entry === "stock"
      ? soldOffers(asking)
      : []),
    ...((first === "pilot" || first === "clearance") && typed.current.length === 1
      ? holeOffers(first, asking)
      : []),
    ...(atStart ? exampleOffers(asking, typed, open) : []),
  ];
  return distinct([...likely, ...ranked]);
}
