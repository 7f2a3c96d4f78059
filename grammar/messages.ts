/**
 * What is said about the form of the text: templates with named slots, and the choice among them. They speak of what
 * the builder wrote and show the form where it broke; no word of the parser's own reaches anyone.
 */
import type { IToken } from "chevrotain";
import { dayInWords, isDay, meantBy } from "./calendar";
import { ENTRY_FORMS, entryForm, type Form } from "./forms";
import { nearest } from "./near";
import { EVENLY, placeHabit } from "./place-words";
import { CommaNumber, endOf, Gauge, Stray, Word } from "./tokens";
import type { Complaint, Span, SyntaxCode } from "./tree";

/** The titles of cures, which every code may use. */
const CURES = {
  write: "Write “{text}”",
  insert: "Put “{text}” before “{before}”",
  append: "Put “{text}” after “{after}”",
  "leave-out": "Leave out “{text}”",
  indent: "Begin the line with two blanks",
  outdent: "Begin the line at the left edge",
} as const;

/** Every text of every code of the form. */
export const SYNTAX_TEMPLATES = {
  "unknown-entry": {
    ...CURES,
    unknown: "No line opens with “{word}”. A line opens with a word that says what it is, such as {words}.",
    near: "No line opens with “{word}”. Did you mean “{near}”?",
    "small-letters": "“{found}” is written in small letters: {better}.",
    "mark-opens": "A line opens with a word that says what it is, such as {words}, not with “{word}”.",
    "word-missing": "No line opens with “{word}”. If it is a {near}, write “{near} {word}”.",
    "goes-on":
      "“{word}” goes on from the {entry} line above, so its line begins with two blanks; nothing on it was read.",
    "note-form": "A note to yourself opens with “#” and a blank.",
  },
  "not-understood": {
    ...CURES,
    "clause-near": "“{word}” is not part of {a} {entry} line. Did you mean “{near}”?",
    "clause-unknown": "“{word}” is not part of {a} {entry} line. It can go on with {words}.",
    "clause-begun": "“{word}” goes on as {words}, not as “{found}”.",
    "spread-form":
      "To set a row out evenly, say between what or over what: spread between left legs and right legs, or spread over posts.",
    "assembly-line":
      "The lines inside an assembly open with place, fasten or glue, and not with “{word}”. Anything else stands on a line of its own, at the left edge.",
    "clause-none":
      "{A} {entry} line has nothing after a comma, but here comes “{word}”. Write it like: {example}",
    "word-near": "“{found}” does not fit here. Did you mean “{near}”?",
    "small-letters": "“{found}” is written in small letters: {better}.",
    "more-wanted": "Something is missing after “{after}”. Write it like: {example}",
    "too-much": "“{found}” does not fit here. Write it like: {example}",
    "comma-missing": "A comma is missing before “{found}”: it starts the next thing to say.",
    "word-extra": "“{found}” is not needed here.",
    "comma-extra": "No comma belongs before “{found}”.",
    "comma-last": "The line ends with a comma and nothing follows it.",
    "and-joins": "A comma starts the next thing to say; “and” joins names: {better}.",
    "of-missing": "“of” is missing before “{found}”: a part says what it is cut of.",
    "equals-missing": "“=” is missing before “{found}”.",
    "length-missing": "What “{found}” measures is not said. Is it the length?",
    "close-missing": "A “(” is opened and not closed.",
    "section-size":
      "“{found}” is a size, but a board goes by the name it is sold under: {better}, which is really thinner and narrower. For a board of exactly that size, write a stock line with “actual {size}”.",
    "section-metric":
      "“{found}” is a size, but a board goes by the name it is sold under: {better}. For any other board, write a stock line with “actual {size}”.",
    "section-own":
      "“{found}” is a size, but a board goes by a name. Write a line like “stock my-board, actual {found}”, and use that name here.",
    times: "“{found}” stands between two sizes. To multiply, write “*”.",
    "minus-glued":
      "“{found}” is not a length: a hyphen belongs to the name. To take one away, put a blank on both sides: {better}.",
  },
  "stray-character": {
    ...CURES,
    stray: "“{found}” means nothing here. Write it like: {example}",
    "mark-extra": "“{found}” is not needed here.",
    "semicolon-comma": "“{found}” means nothing here. A comma starts the next thing to say.",
    "equals-wanted": "“{found}” means nothing here. Write “=” between the name and its value.",
    "lone-mark": '“{found}” stands without a number before it. Lengths are written like 36" or 6\' 2-1/2".',
    "mark-before": "The inch mark stands behind its number: {better}.",
    "marks-around": "Nothing is put in quotation marks; the mark means inches. Write {better}.",
    "two-marks": "Two foot marks do not make an inch mark. Write {better}.",
    "note-blank": "A note to yourself opens with “#” and a blank.",
  },
  "bad-name": {
    ...CURES,
    "name-form":
      "“{found}” cannot be a name. Names are small letters, digits and hyphens, and begin with a letter, like {better}.",
    "small-letters": "“{found}” is written in small letters: {better}.",
    "name-blank": "A name is one word, so “{found}” is written {better}.",
    "name-reserved": "“because” opens a reason, so nothing can be called that.",
  },
  "bad-number": {
    ...CURES,
    "comma-number":
      "“{found}” has a comma in the number, and a comma starts the next thing to say. Write {better}.",
    "blank-unit": "“{found}” has a blank before its unit. Write {better}.",
    "mixed-number": "“{found}” is one length. Write {better}.",
    "money-behind": "The currency stands before the number: {better}.",
    "inches-unmarked": "“{found}” does not say what its last number is. If it is inches, write {better}.",
    "price-unmarked": "“{found}” has no unit. If it is a price, write {better}.",
    "millimetres-unmarked":
      "“{found}” does not say what its last number is. If it is millimetres, write {better}.",
    "gauge-alone": '“{found}” says how thick the screw is, not how long. Write it like: {found} x 1-1/4"',
  },
  "bad-date": {
    ...CURES,
    order: "A date is written with the year first, then the month, then the day: {better}.",
    either:
      "“{found}” may be two days. A date is written with the year first, then the month, then the day: {better} or {other}.",
    "no-month":
      "“{found}” is no date: a year has 12 months. The year comes first, then the month, then the day.",
    "no-day": "“{found}” is no date: that month has {days} days.",
    missing: "After “{after}” comes the date, with the year first, then the month, then the day: {example}",
  },
  "indented-alone": {
    ...CURES,
    indented: "This line is indented, so it should go on from a line above, but there is none.",
    "indented-entry":
      "This line is indented, so it goes on from the {entry} line above; but “{word}” opens a line of its own.",
  },
  "merge-conflict": {
    named:
      "Two versions of the same lines stand here, one of which has to go. Until then the plan is read with the first, “{called}”.",
    unnamed:
      "Two versions of the same lines stand here, one of which has to go. Until then the plan is read with the first.",
    "keep-first": "Keep the first version, and take the other out",
  },
  "not-text": {
    "not-text":
      "This file is not plain text: it has a byte of value 0 in line {line}. Nothing in it was read.",
  },
  "too-big": {
    "too-big":
      "This file has {size} million characters; Sawbuck reads up to {limit} million. Nothing in it was read.",
  },
  "too-deep": {
    "too-deep":
      "Here are more than {limit} parentheses inside one another. Work a part of it out in a measure line, and use its name.",
    "sum-too-long":
      "More than {limit} values are reckoned together here. Work a part of it out in a measure line, and use its name.",
  },
} as const satisfies Readonly<Record<SyntaxCode, Readonly<Record<string, string>>>>;

/** What went wrong while reading a clause or a head, and with what. */
export interface Failure {
  /** The whole file's text. */
  readonly text: string;
  readonly entry: string;
  readonly part: "head" | "clause";
  /** Whether the clause is the first on its line. */
  readonly opensLine: boolean;
  /** The form being read, when its opening words were known. */
  readonly form: Form | undefined;
  /** All tokens of the clause; a head's begin with the entry's own word. */
  readonly tokens: readonly IToken[];
  /** The first token that did not fit; undefined when the clause ended too soon. */
  readonly at: IToken | undefined;
}

export const spanOf = (from: IToken, to: IToken = from): Span => ({
  start: from.startOffset,
  end: endOf(to),
});

/** A complaint of one code in one of its own templates. */
export function complain<C extends SyntaxCode>(
  span: Span,
  code: C,
  says: keyof (typeof SYNTAX_TEMPLATES)[C] & string,
  slots: Complaint["slots"] = {},
  cure?: Complaint["cure"],
): Complaint {
  return { code, says, slots, start: span.start, end: span.end, ...(cure && { cure }) };
}

type Cure = NonNullable<Complaint["cure"]>;
/** Writes other words over a span. */
export const swap = (span: Span, text: string): Cure => ({
  says: "write",
  slots: { text },
  start: span.start,
  end: span.end,
  text,
});

const FEW_ENTRIES = ["part", "stock", "measure", "place", "fasten", "box"];

/** The complaint about an entry whose first word opens nothing. */
export function unknownEntry(first: IToken): Complaint {
  const span = spanOf(first);
  const word = shorten(first.image);
  const words = { any: FEW_ENTRIES };
  if (!/^\p{L}/u.test(first.image)) return complain(span, "unknown-entry", "mark-opens", { word, words });
  const known = ENTRY_FORMS.map((e) => e.word);
  const small = first.image.toLowerCase();
  if (known.includes(small)) {
    const slots = { found: word, better: small };
    return complain(span, "unknown-entry", "small-letters", slots, swap(span, small));
  }
  const near = ENTRY_HABITS.get(small) ?? nearest(small, known)[0];
  return near
    ? complain(span, "unknown-entry", "near", { word, near }, swap(span, near))
    : complain(span, "unknown-entry", "unknown", { word, words });
}

/** First words that people bring, and the language's own. */
const ENTRY_HABITS: ReadonlyMap<string, string> = new Map([
  ...["screw", "screws", "nail", "nails", "bolt", "bolts"].map((word) => [word, "fastener"] as const),
  ...["wood", "lumber", "timber", "board", "boards"].map((word) => [word, "stock"] as const),
  ...["piece", "cut"].map((word) => [word, "part"] as const),
  ...["plywood", "panel"].map((word) => [word, "sheet"] as const),
  ...["attach", "join"].map((word) => [word, "fasten"] as const),
  ...["put", "position"].map((word) => [word, "place"] as const),
  ...["paint", "stain"].map((word) => [word, "coat"] as const),
  ["let", "measure"],
  ["soil", "fill"],
  ["rule", "must"],
]);

/** The complaint about a clause or head that could not be read, where nothing better was guessed. */
export function notUnderstood(failure: Failure): Complaint {
  const { at, tokens, entry, form, text } = failure;
  const wrong = tokens.find((t) => t.tokenType === CommaNumber);
  if (wrong) {
    const better = wrong.image.replace(",", ".").replace(/ +/, "");
    const slots = { found: wrong.image, better };
    return complain(spanOf(wrong), "bad-number", "comma-number", slots, swap(spanOf(wrong), better));
  }
  const gauge = at ?? tokens[tokens.length - 1]!;
  if (gauge.tokenType === Gauge)
    return complain(spanOf(gauge), "bad-number", "gauge-alone", { found: gauge.image });
  const unknown = form ? undefined : unknownClause(failure, tokens[0]!);
  if (unknown) return unknown;
  const example = form?.example ?? exampleOf(entry);
  const last = tokens[tokens.length - 1]!;
  const dated = at ? tokens[tokens.indexOf(at) - 1] : last;
  if (entry === "built" && dated === tokens[0] && (failure.part === "head" || dated?.image === "wear"))
    return dayMissing(tokens, at, example);
  if (!at) {
    return complain(spanOf(last), "not-understood", "more-wanted", { after: shorten(last.image), example });
  }
  if (at.tokenType === Stray) {
    return QUOTES.test(at.image)
      ? complain(spanOf(at), "stray-character", "lone-mark", { found: at.image })
      : complain(spanOf(at), "stray-character", "stray", { found: at.image, example });
  }
  const span = spanOf(at, last);
  return complain(span, "not-understood", "too-much", { found: wordsOf(text, span), example });
}

/** Where a day is due and something else stands, or nothing. */
function dayMissing(tokens: readonly IToken[], at: IToken | undefined, example: string): Complaint {
  const better = dayInWords(tokens.slice(1, 4).map(({ image }) => image));
  if (!better) {
    const after = tokens[0]!.image;
    return complain(spanOf(at ?? tokens[0]!), "bad-date", "missing", { after, example });
  }
  const span = spanOf(tokens[1]!, tokens[3]);
  return complain(span, "bad-date", "order", { better }, swap(span, better));
}

/** What is wrong with a day as it was typed, three numbers with one mark between them. */
export function wrongDay(token: IToken): Complaint | undefined {
  const found = token.image;
  if (isDay(found)) return undefined;
  const span = spanOf(token);
  const { days, inMonth } = meantBy(found);
  const [better, other] = days;
  if (better && other) return complain(span, "bad-date", "either", { found, better, other });
  if (better) return complain(span, "bad-date", "order", { better }, swap(span, better));
  return inMonth === undefined
    ? complain(span, "bad-date", "no-month", { found })
    : complain(span, "bad-date", "no-day", { found, days: String(inMonth) });
}

/** Marks that people put round words, or behind a number of feet or inches. */
export const QUOTES = /^["'″′”’“‘„«»]$/;

function unknownClause({ entry, text, tokens }: Failure, first: IToken): Complaint | undefined {
  const forms = entryForm(entry)?.clauses ?? [];
  const word = shorten(first.image);
  const span = spanOf(first);
  if (first.tokenType === Stray) return undefined;
  const isWord = /^[\p{L}_]/u.test(first.image);
  if (!isWord && forms.some((f) => f.opens.length === 0)) return undefined;
  if (entry === "assembly") {
    const inside = ["place", "fasten", "glue"];
    const near = ENTRY_HABITS.get(first.image.toLowerCase()) ?? nearest(first.image.toLowerCase(), inside)[0];
    if (!near || !inside.includes(near)) return complain(span, "not-understood", "assembly-line", { word });
    return complain(span, "not-understood", "clause-near", { word, entry, near }, swap(span, near));
  }
  if (forms.length === 0) {
    const slots = { word, entry, example: exampleOf(entry) };
    return complain(span, "not-understood", "clause-none", slots);
  }
  const habit = entry === "place" ? placeHabit(tokens) : undefined;
  if (habit) {
    const whole = spanOf(first, tokens[habit.words - 1]);
    const slots = { word: wordsOf(text, whole), entry, near: habit.near };
    return complain(whole, "not-understood", "clause-near", slots, swap(whole, habit.near));
  }
  if (entry === "place" && EVENLY.has(first.image.toLowerCase()))
    return complain(spanOf(first, tokens[tokens.length - 1]!), "not-understood", "spread-form");
  const begun = forms.filter(({ opens }) => opens.length > 1 && opens[0] === first.image);
  if (begun.length > 0 && tokens.length > 1) {
    const whole = spanOf(first, tokens[Math.min(tokens.length, begun[0]!.opens.length) - 1]);
    const any = [...new Set(begun.map(({ opens }) => opens.join(" ")))].slice(0, 6);
    return complain(whole, "not-understood", "clause-begun", {
      word,
      words: { any },
      found: wordsOf(text, whole),
    });
  }
  const openings = [...new Set(forms.flatMap((f) => f.opens.slice(0, 1)))];
  const near = isWord ? nearest(first.image.toLowerCase(), openings)[0] : undefined;
  if (near && near !== first.image) {
    return complain(span, "not-understood", "clause-near", { word, entry, near }, swap(span, near));
  }
  const any = forms.flatMap((f) => (f.opens.length > 0 ? [f.opens.join(" ")] : [])).slice(0, 6);
  if (entry === "fasten" || any.length === 0) return undefined;
  const found = isWord ? word : wordsOf(text, spanOf(first, tokens[tokens.length - 1]!));
  return complain(span, "not-understood", "clause-unknown", { word: found, entry, words: { any } });
}

/** The first line of an entry's example. */
export const exampleOf = (entry: string): string => (entryForm(entry)?.example ?? "").split("\n")[0]!;

export const NAME = /^[a-z](?:-?[a-z0-9])*$/;

/** Names must be small letters, digits and hyphens. */
export function badName(token: IToken): Complaint {
  const span = spanOf(token);
  const small = token.image.toLowerCase();
  const says = NAME.test(small) ? "small-letters" : "name-form";
  const better = says === "small-letters" ? small : nameLike(token.image);
  const slots = { found: shorten(token.image), better };
  return complain(span, "bad-name", says, slots, swap(span, better));
}

/** `Front Leg 4 of 2x4`: the words before a count, an `of` or an `=`. */
export function nameOfWords(entry: string, tokens: readonly IToken[]): IToken[] {
  if (entry !== "part" && entry !== "measure") return [];
  const end = tokens.findIndex((t) => !isWord(t) || t.image === "of");
  return tokens.slice(0, end < 0 ? tokens.length : end);
}

/** A name of several words is one word, in small letters. */
export function nameInWords(text: string, words: readonly IToken[]): Complaint {
  const span = spanOf(words[0]!, words[words.length - 1]);
  const slots = { found: wordsOf(text, span), better: nameLike(text.slice(span.start, span.end)) };
  return complain(span, "bad-name", "name-blank", slots, swap(span, slots.better));
}

/** The nearest text that can be a name. */
export function nameLike(text: string): string {
  const plain = text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^[^a-z]+|-+$/g, "");
  return plain || "leg";
}

/** The words of a span as a message shows them: on one line, and not too many. */
export const wordsOf = (text: string, span: Span): string =>
  shorten(text.slice(span.start, span.end).replace(/\s+/g, " "));

/** No half of a letter is left at its end. */
export const shorten = (text: string): string =>
  text.length > 40 ? `${text.slice(0, 39).replace(/[\uD800-\uDBFF]$/, "")}…` : text;

/** `a` or `an`, by how the word or the number behind it is said: `an assembly`, `an 8' board`. */
const article = (word: string, a: "a" | "A"): string =>
  /^(?:8|1[18](?!\d)|[aeio])/i.test(word) ? `${a}n` : a;

/** Whether a token is a word, a keyword too. */
export const isWord = (t: IToken | undefined): boolean =>
  t !== undefined && (t.tokenType === Word || (t.tokenType.CATEGORIES?.includes(Word) ?? false));

/**
 * Fills a template's slots with what `slot` gives for their names; one it does not know stays as it is. `{a}` before a
 * slot is the article of what fills that. What is put in is plain text: nothing in it is read as a template again.
 */
export function fill(
  template: string,
  slot: (name: string) => string | undefined,
  articleOf: (word: string, a: "a" | "A") => string = article,
): string {
  return template.replace(
    /(?:\{([aA])\} )?\{([a-zA-Z0-9-]+)\}/g,
    (whole, a: "a" | "A" | undefined, name: string) => {
      const text = slot(name);
      if (text === undefined) return whole;
      return a ? `${articleOf(text, a)} ${text}` : text;
    },
  );
}
