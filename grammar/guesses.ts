/**
 * What was likely meant by a line that does not read: the habits people bring, each with the change that mends it.
 * Every guess is tried by reading the line again; only one that then reads is ever said.
 */
import type { IToken } from "chevrotain";
import { clauseForm, entryForm } from "./forms";
import { HEADS } from "./heads";
import { complain, type Failure, isWord, nameLike, QUOTES, shorten, spanOf, swap, wordsOf } from "./messages";
import { nearest } from "./near";
import { places } from "./place-words";
import {
  By,
  Close,
  Equals,
  endOf,
  Gauge,
  KEYWORDS,
  Length,
  Literal,
  Minus,
  Numeral,
  Open,
  Section,
  Slash,
  Stray,
  UNIT_WORDS,
} from "./tokens";
import type { Complaint, Span } from "./tree";

/** Guesses about a clause or a head, the most particular first. */
export function guesses(failure: Failure): Complaint[] {
  const { tokens, at } = failure;
  const i = at ? tokens.indexOf(at) : tokens.length;
  const here: Here = { ...failure, i, before: tokens[i - 1] };
  return [
    ...(failure.part === "head" ? [...names(here), ...joins(here)] : []),
    ...(at ? [...numbers(here, at), ...sizes(here, at), ...marks(here, at)] : []),
    ...places(here),
    ...unsaid(here),
    ...(at ? [...commas(here, at), ...words(here, at)] : commasBefore(here)),
  ];
}

/** Guesses about a line whose first word opens nothing; `above` is the entry word of the line before. */
export function entryGuesses(
  text: string,
  tokens: readonly IToken[],
  above: string | undefined,
): Complaint[] {
  const first = tokens[0]!;
  const word = shorten(first.image);
  const list: Complaint[] = [];
  const start = { start: first.startOffset, end: first.startOffset };
  if (above && clauseForm(above, (n) => tokens[n]?.image)) {
    const cure = { says: "indent", slots: {}, ...start, text: "  " };
    list.push(complain(spanOf(first), "unknown-entry", "goes-on", { word, entry: above }, cure));
  }
  const mark = /^(#|\/\/|--+|;)\s*(?=\S)/.exec(text.slice(first.startOffset, first.startOffset + 20));
  if (mark) {
    const span = { start: start.start, end: start.start + mark[0].length };
    const cure = { ...swap(span, "# "), slots: { text: "#" } };
    list.push(
      complain({ ...span, end: start.start + mark[1]!.length }, "unknown-entry", "note-form", {}, cure),
    );
  }
  for (const near of ["measure", "part"]) {
    const cure = { says: "insert", slots: { text: near, before: word }, ...start, text: `${near} ` };
    list.push(complain(spanOf(first), "unknown-entry", "word-missing", { word, near }, cure));
  }
  return list;
}

export interface Here extends Failure {
  /** Where `at` stands among the tokens. */
  readonly i: number;
  readonly before: IToken | undefined;
}

const literal = (t: IToken | undefined): boolean => t?.tokenType.CATEGORIES?.includes(Literal) ?? false;
const glued = (a: IToken | undefined, b: IToken | undefined): boolean =>
  a !== undefined && b !== undefined && endOf(a) === b.startOffset;
const whole = (t: IToken | undefined): boolean => t?.tokenType === Numeral && /^\d+$/.test(t.image);

/** Names of several words, or that begin with a digit. */
function* names({ tokens, text }: Here): Generator<Complaint> {
  const [, first, second, third] = tokens;
  if (first?.image === "because") yield complain(spanOf(first), "bad-name", "name-reserved");
  for (const last of [second, third]) {
    if (!first || !isWord(first) || !isWord(second) || !last || !isWord(last)) continue;
    const span = spanOf(first, last);
    yield named(span, "name-blank", wordsOf(text, span), wordsOf(text, span).replaceAll(" ", "-"));
  }
  if (first?.tokenType !== Numeral || !glued(first, second)) return;
  const last = second?.tokenType === Minus ? third : second;
  if (!last || !isWord(last)) return;
  const span = spanOf(first, last);
  yield named(span, "name-form", wordsOf(text, span), nameLike(`${last.image}-${first.image}`));
}

const named = (span: Span, says: "name-blank" | "name-form", found: string, better: string): Complaint =>
  complain(span, "bad-name", says, { found, better }, swap(span, better));

/** The words and signs that join a head: `of`, `=`, `into`. */
function* joins({ entry, at, tokens }: Here): Generator<Complaint> {
  const put = at ?? tokens[tokens.length - 1]!;
  const said = tokens[tokens.indexOf(put) - 1];
  if (entry === "part" && said && tokens.length > 3 && nearest(said.image, ["of"]).length > 0) {
    const slots = { found: shorten(said.image), near: "of" };
    yield complain(spanOf(said), "not-understood", "word-near", slots, swap(spanOf(said), "of"));
  }
  if (entry === "part" && put.image !== "of") {
    yield complain(spanOf(put), "not-understood", "of-missing", { found: put.image }, insert(put, "of"));
  }
  if (entry !== "measure" && entry !== "ring") return;
  if (at && (at.image === ":" || at.image === "is")) {
    const cure = swap(spanOf(at), at.image === ":" ? " =" : "=");
    yield complain(spanOf(at), "stray-character", "equals-wanted", { found: at.image }, cure);
  }
  yield complain(spanOf(put), "not-understood", "equals-missing", { found: put.image }, insert(put, "="));
}

const insert = (before: IToken, text: string): NonNullable<Complaint["cure"]> => ({
  says: "insert",
  slots: { text, before: shorten(before.image) },
  start: before.startOffset,
  end: before.startOffset,
  text: `${text} `,
});

/** Numbers and their units, as people write them elsewhere. */
function* numbers({ tokens, i, before, text, form }: Here, at: IToken): Generator<Complaint> {
  type Says = "blank-unit" | "mixed-number" | "inches-unmarked" | "millimetres-unmarked" | "money-behind";
  const number = (says: Says, span: Span, better: string) =>
    complain(span, "bad-number", says, { found: wordsOf(text, span), better }, swap(span, better));
  if (/^[$€£]$/.test(tokens[i + 1]?.image ?? "") && at.tokenType === Numeral) {
    const money = tokens[i + 1]!;
    yield number("money-behind", spanOf(at, money), `${money.image}${at.image}`);
  }
  if (form?.opens[0] === "sold" && at.tokenType === Numeral && before?.tokenType === Length) {
    const better = `${/[$€£]/.exec(text)?.[0] ?? "$"}${at.image}`;
    yield complain(
      spanOf(at),
      "bad-number",
      "price-unmarked",
      { found: at.image, better },
      swap(spanOf(at), better),
    );
  }
  const size = at.tokenType === Gauge || whole(at) ? tokens[i + 2] : undefined;
  if (size && tokens[i + 1]?.tokenType === By && size.tokenType === Numeral) {
    const { start } = spanOf(at);
    const long = BARE_NUMBER.exec(text.slice(spanOf(size).start))?.[0];
    const span = { start, end: spanOf(size).start + (long?.length ?? 0) };
    const written = wordsOf(text, span).replace(/ ?- ?| (?=\d+\/)/, "-");
    if (long && at.tokenType === Gauge) yield number("inches-unmarked", span, `${written}"`);
    else if (long === size.image) yield number("millimetres-unmarked", span, `${written}mm`);
  }
  const unit = UNIT_WORDS.get(at.image);
  if (before?.tokenType === Numeral && unit) {
    const inches = tokens[i + 1];
    if (unit === "'" && inches?.tokenType === Numeral) {
      const mark = tokens[i + 2];
      const last = UNIT_WORDS.get(mark?.image ?? "") === '"' ? mark! : inches;
      yield number("blank-unit", spanOf(before, last), `${before.image}' ${inches.image}"`);
    }
    yield number("blank-unit", spanOf(before, at), `${before.image}${unit}`);
  }
  const ahead = tokens[i + 1];
  if (whole(before) && at.tokenType === Numeral && UNIT_WORDS.has(ahead?.image ?? "")) {
    const better = `${before!.image}-${at.image}${UNIT_WORDS.get(ahead!.image)}`;
    yield number("blank-unit", spanOf(before!, ahead), better);
  }
  if (before?.tokenType === Length && at.tokenType === Numeral) {
    const span = spanOf(before, at);
    if (/['′’]$/.test(before.image)) yield number("inches-unmarked", span, `${before.image} ${at.image}"`);
    const fraction = /^\d+"$/.test(before.image) && at.image.includes("/");
    if (fraction) yield number("mixed-number", span, `${before.image.slice(0, -1)}-${at.image}"`);
  }
  if (at.image === "and" && (whole(before) || before?.tokenType === Length) && literal(ahead)) {
    const inches = /^\d+(?=["″]?$)/.exec(before!.image)?.[0];
    if (inches && /^\d+\/\d+["″]?$/.test(ahead!.image)) {
      yield number("mixed-number", spanOf(before!, ahead), `${inches}-${ahead!.image.replace(/["″]$/, "")}"`);
    }
  }
}

/** A whole number, a fraction or both, with no unit behind. */
const BARE_NUMBER = /^\d+(?:\/\d+| ?-? ?\d+\/\d+)?(?![\d/."'\p{L}])/u;

/** From this number up, a board's name is its size in millimetres. */
const LEAST_METRIC = 12;

/** `2" x 4"`, `2 by 4`, `2X4` where a board's name belongs. */
function* sizes({ text, tokens, i, part, entry }: Here, at: IToken): Generator<Complaint> {
  const from = part === "head" && (tokens[i - 1]?.image === "of" || (entry === "stock" && i === 1));
  if (!from || !literal(at)) return;
  const last =
    glued(at, tokens[i + 1]) && /^X\d+$/.test(tokens[i + 1]!.image) ? tokens[i + 1]! : tokens[i + 2];
  if (!last) return;
  const span = spanOf(at, last);
  const found = wordsOf(text, span);
  const plain = /^(\d+)(?:["″”]|in|mm)? ?(?:x|X|×|by) ?(\d+)(?:["″”]|in|mm)?$/.exec(found);
  if (plain) {
    const better = `${plain[1]}x${plain[2]}`;
    if (/^[\dX]+$/.test(found)) {
      yield complain(span, "not-understood", "small-letters", { found, better }, swap(span, better));
    }
    const size = /mm/.test(found) ? found : `${plain[1]}" x ${plain[2]}"`;
    const says = Number(plain[1]) < LEAST_METRIC ? "section-size" : "section-metric";
    yield complain(span, "not-understood", says, { found, better, size }, swap(span, better));
  } else if (tokens[i + 1]?.tokenType === By && literal(last)) {
    yield complain(span, "not-understood", "section-own", { found });
  }
}

/** Marks that are not needed, or are others' habits. */
function* marks({ text, tokens, i, before }: Here, at: IToken): Generator<Complaint> {
  const ahead = tokens[i + 1];
  if (QUOTES.test(at.image)) yield* quotes(text, tokens, i, before, at);
  if (at.image === ";" || at.image === ".") {
    const cure = swap(spanOf(at), ",");
    yield complain(spanOf(at), "stray-character", "semicolon-comma", { found: at.image }, cure);
  }
  if (at.image === "#" || (at.tokenType === Slash && ahead?.tokenType === Slash)) {
    const span = spanOf(at, at.image === "#" ? at : ahead);
    const cure = { ...swap(span, "# "), slots: { text: "#" } };
    yield complain(span, "stray-character", "note-blank", {}, cure);
  }
  if (at.image === "by") {
    const slots = { found: "by", near: "x" };
    yield complain(spanOf(at), "not-understood", "word-near", slots, swap(spanOf(at), "x"));
  }
  if (at.image === "x" || at.image === "×") {
    yield complain(spanOf(at), "not-understood", "times", { found: at.image }, swap(spanOf(at), "*"));
  }
  if ([Stray, Close, Equals, By].includes(at.tokenType) || at.image === "x") {
    yield complain(spanOf(at), "stray-character", "mark-extra", { found: at.image }, leaveOut(text, at));
  }
}

function* quotes(
  text: string,
  tokens: readonly IToken[],
  i: number,
  before: IToken | undefined,
  at: IToken,
): Generator<Complaint> {
  const ahead = tokens[i + 1];
  const quoted = (says: "marks-around" | "mark-before" | "two-marks", span: Span, better: string) =>
    complain(span, "stray-character", says, { better }, swap(span, better));
  if (/^\d+['′’]$/.test(before?.image ?? "") && glued(before, at)) {
    yield quoted("two-marks", spanOf(before!, at), `${before!.image.slice(0, -1)}"`);
  }
  const hyphen = /^(.+)-(\d+)$/.exec(before?.image ?? "");
  if (hyphen && before && isWord(before) && glued(before, at)) {
    const span = spanOf(before, at);
    const better = `${hyphen[1]} - ${hyphen[2]}${at.image}`;
    const slots = { found: wordsOf(text, span), better };
    yield complain(span, "not-understood", "minus-glued", slots, swap(span, better));
  }
  if (!glued(at, ahead)) return;
  const close = tokens[i + 2];
  const span = spanOf(at, ahead);
  if (ahead!.tokenType === Length) yield quoted("marks-around", span, ahead!.image.replace(/[″“”]/g, '"'));
  if (ahead!.tokenType === Numeral) yield quoted("mark-before", span, `${ahead!.image}"`);
  if (close && QUOTES.test(close.image)) yield quoted("marks-around", spanOf(at, close), ahead!.image);
}

/** Takes a token out, with one of the blanks round it. */
export function leaveOut(text: string, token: IToken): NonNullable<Complaint["cure"]> {
  const { start, end } = spanOf(token);
  const blank = text[start - 1] === " " && text[end] === " " ? 1 : 0;
  return { says: "leave-out", slots: { text: shorten(token.image) }, start, end: end + blank, text: "" };
}

/** A word that was left out, or a parenthesis; a word that says nothing. */
function* unsaid({ tokens, part, entry, form, text, at, before }: Here): Generator<Complaint> {
  const [first] = tokens;
  const last = tokens[tokens.length - 1]!;
  const span = spanOf(first!, last);
  const numbered = form === undefined || form.opens.length === 0;
  if (part === "clause" && entry === "part" && numbered && literal(first)) {
    const slots = { found: wordsOf(text, span) };
    yield complain(span, "not-understood", "length-missing", slots, insert(first!, "length"));
  }
  const filler = at ?? last;
  const ofFace = filler.image === "of" && FACES.has(before?.image ?? "");
  const article = before && ARTICLES.has(before.image) && at ? before : undefined;
  if (article) {
    const slots = { found: article.image };
    yield complain(spanOf(article), "not-understood", "word-extra", slots, leaveOut(text, article));
  }
  if (FILLERS.has(filler.image) && !ofFace) {
    const slots = { found: filler.image };
    yield complain(spanOf(filler), "not-understood", "word-extra", slots, leaveOut(text, filler));
  }
  const open = tokens.filter((t) => t.tokenType === Open);
  if (open.length > tokens.filter((t) => t.tokenType === Close).length) {
    const end = endOf(last);
    const cure = {
      says: "append",
      slots: { text: ")", after: shorten(last.image) },
      start: end,
      end,
      text: ")",
    };
    yield complain(spanOf(open[0]!, last), "not-understood", "close-missing", {}, cure);
  }
}

const ARTICLES: ReadonlySet<string> = new Set(["the", "a", "an"]);

/** `top of posts` is a face, and its `of` is meant. */
const FACES: ReadonlySet<string> = new Set(["left", "right", "front", "back", "top", "bottom"]);

/** Words that a builder says and the language leaves out. */
const FILLERS = new Set(["a", "an", "the", "of", "for", "at", "is", "each", "long", "wide", "pieces", "pcs"]);

/** A comma that is missing before the next clause. */
function* commas(here: Here, at: IToken): Generator<Complaint> {
  const { entry, tokens, i, before } = here;
  yield* commasBefore(here);
  const opens = clauseForm(entry, (n) => tokens[i + n]?.image);
  const numbered = entryForm(entry)?.clauses.some((f) => f.opens.length === 0) && literal(at);
  if (!before || (here.part === "head" && i < 2) || !(opens || numbered)) return;
  const end = endOf(before);
  const cure = {
    says: "append",
    slots: { text: ",", after: shorten(before.image) },
    start: end,
    end,
    text: ",",
  };
  const found = opens ? opens.opens.join(" ") : at.image;
  const span = opens ? spanOf(at, tokens[i + opens.opens.length - 1]) : spanOf(at);
  yield complain(span, "not-understood", "comma-missing", { found }, cure);
}

/** A comma before the clause that should be none, or an `and`. */
function* commasBefore({ entry, part, tokens, text }: Here): Generator<Complaint> {
  const first = tokens[0]!;
  // What a place line says stands in clauses of a few words each, which never go on over a comma.
  if (entry === "place") return;
  const comma = /,[ \t]*$/.exec(text.slice(Math.max(0, first.startOffset - 20), first.startOffset));
  if (part === "head" || !comma) return;
  const span = { start: first.startOffset - comma[0].length, end: first.startOffset };
  const found = shorten(first.image);
  const out = { says: "leave-out", slots: { text: "," }, ...span, text: " " };
  yield complain(spanOf(first), "not-understood", "comma-extra", { found }, out);
  if (!isWord(first) && first.tokenType !== Section) return;
  const join = { ...swap(span, " and "), slots: { text: "and" } };
  const better = `and ${found}`;
  yield complain(spanOf(first), "not-understood", "and-joins", { better }, join);
}

/** A word misspelt, or spelt as elsewhere; a line of its own that was indented. */
function* words({ entry, tokens, text, opensLine, part, form }: Here, at: IToken): Generator<Complaint> {
  const first = tokens[0]!;
  if (part === "clause" && opensLine && at === first && Object.hasOwn(HEADS, first.image)) {
    const blanks = /[ \t]*$/.exec(text.slice(Math.max(0, first.startOffset - 80), first.startOffset))![0];
    const span = { start: first.startOffset - blanks.length, end: first.startOffset };
    const cure = { says: "outdent", slots: {}, ...span, text: "" };
    yield complain(spanOf(first), "indented-alone", "indented-entry", { word: first.image, entry }, cure);
  }
  if (!isWord(at)) return;
  const small = at.image.toLowerCase();
  if (small !== at.image) {
    const slots = { found: shorten(at.image), better: small };
    yield complain(spanOf(at), "not-understood", "small-letters", slots, swap(spanOf(at), small));
  }
  const habit = HABITS.get(small);
  const opening = part === "clause" && at === first && !form;
  for (const near of [
    ...(form?.opens[0] === "lumber" && small === "metric" ? ["planed metric"] : []),
    ...(habit ? [habit] : []),
    ...(opening ? [] : nearest(small, [...KEYWORDS, "because"])),
  ]) {
    const slots = { found: shorten(at.image), near };
    yield complain(spanOf(at), "not-understood", "word-near", slots, swap(spanOf(at), near));
  }
}

/** Words of elsewhere, and the language's own. */
const HABITS: ReadonlyMap<string, string> = new Map([
  ["in", "into"],
  ["inch", "inches"],
  ["imperial", "inches"],
  ["metric", "millimetres"],
  ["miter", "mitered"],
  ["mitre", "mitered"],
  ["bevel", "beveled"],
  ["max", "at most"],
  ["min", "at least"],
  ["centre", "center"],
  ["long", "length"],
  ["thick", "thickness"],
]);
