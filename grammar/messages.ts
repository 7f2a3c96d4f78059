/**
 * What is said about the form of the text: templates with named slots, and the choice among them. They speak of what
 * the builder wrote and show the form where it broke; no word of the parser's own reaches anyone.
 */
import type { IToken } from "chevrotain";
import { ENTRY_FORMS, entryForm, type Form } from "./forms";
import { nearest } from "./near";
import { CommaNumber, endOf, Gauge, Length, Numeral, Stray, Word } from "./tokens";
import type { Complaint, Span } from "./tree";

export const SYNTAX_TEMPLATES = {
  "unknown-entry": "No line opens with “{word}”. It could be {words}.",
  "unknown-entry-near": "No line opens with “{word}”. Did you mean “{near}”?",
  "number-opens":
    "A line opens with a word that says what it is, such as part, place or fasten; “{word}” is not one.",
  "clause-near": "“{word}” is not part of a {entry} line. Did you mean “{near}”?",
  "clause-unknown": "“{word}” is not part of a {entry} line. It could go on with {words}.",
  "clause-none": "A {entry} line ends here; “{word}” is one thing too many. Write it like: {example}",
  "more-wanted": "Something is missing after “{after}”. Write it like: {example}",
  "too-much": "“{found}” does not fit here. Write it like: {example}. A comma starts the next thing to say.",
  "comma-number":
    "“{found}” has a comma in the number. Write {better}: a comma starts the next thing to say.",
  "blank-unit": "“{found}” has a blank before its unit. Write {better}.",
  "gauge-alone": '“{found}” says how thick the screw is. How long is it? Write it like: {found} x 1-1/4"',
  stray: "“{found}” means nothing here. Write it like: {example}",
  "lone-mark": '“{found}” stands without a number before it. Write lengths like 36" or 6\' 2-1/2".',
  "glued-minus":
    '“{found}” is not a length. If you are taking one away, put a blank on both sides of the minus: a - 1".',
  "name-form":
    "“{found}” cannot be a name. Names are small letters, digits and hyphens, and begin with a letter: {better}",
  indented: "This line is indented, so it should go on from a line above, but there is none.",
  "comma-last": "The line ends with a comma and nothing follows it.",
  "not-text": "This file is not plain text: it has a byte of value 0 at line {line}. Nothing in it was read.",
  "too-big":
    "This file has {size} million characters; Sawbuck reads up to {limit} million. Nothing in it was read.",
  "too-deep":
    "There are more than {limit} parentheses inside one another here. Name a part of it with a measure line.",
} as const;

export type SyntaxTemplate = keyof typeof SYNTAX_TEMPLATES;

/** What went wrong while reading a clause, and with what. */
export interface Failure {
  readonly entry: string;
  /** The form being read, when its opening words were known. */
  readonly form: Form | undefined;
  /** All tokens of the clause. */
  readonly tokens: readonly IToken[];
  /** The first token that did not fit; undefined when the clause ended too soon. */
  readonly at: IToken | undefined;
}

export const spanOf = (from: IToken, to: IToken = from): Span => ({
  start: from.startOffset,
  end: endOf(to),
});

export function complain(
  span: Span,
  code: Complaint["code"],
  says: SyntaxTemplate,
  slots: Record<string, string> = {},
  cure?: Complaint["cure"],
): Complaint {
  return { code, says, slots, start: span.start, end: span.end, ...(cure && { cure }) };
}

export const swap = (span: Span, text: string): NonNullable<Complaint["cure"]> => ({
  title: `Write “${text}”`,
  start: span.start,
  end: span.end,
  text,
});

/** The complaint about an entry whose first word opens nothing. */
export function unknownEntry(first: IToken): Complaint {
  const span = spanOf(first);
  const word = shorten(first.image);
  if (!/^[A-Za-z]/.test(first.image)) return complain(span, "unknown-entry", "number-opens", { word });
  const known = ENTRY_FORMS.map((e) => e.word);
  const near = nearest(first.image.toLowerCase(), known)[0];
  return near
    ? complain(span, "unknown-entry", "unknown-entry-near", { word, near }, swap(span, near))
    : complain(span, "unknown-entry", "unknown-entry", {
        word,
        words: listed(["part", "stock", "measure", "place", "fasten", "box"]),
      });
}

/** The complaint about a clause or head that could not be read. */
export function notUnderstood(failure: Failure): Complaint {
  const { at, tokens, entry, form } = failure;
  const wrong = tokens.find((t) => t.tokenType === CommaNumber);
  if (wrong) {
    const better = wrong.image.replace(",", ".").replace(/ +/, "");
    return complain(
      spanOf(wrong),
      "bad-number",
      "comma-number",
      { found: wrong.image, better },
      swap(spanOf(wrong), better),
    );
  }
  const first = tokens[0]!;
  if (!form) {
    const unknown = unknownClause(failure, first);
    if (unknown) return unknown;
  }
  const example = form?.example ?? entryForm(entry)?.example ?? "";
  const last = tokens[tokens.length - 1]!;
  if (!at) {
    if (last.tokenType === Gauge)
      return complain(spanOf(last), "bad-number", "gauge-alone", { found: last.image });
    return complain(spanOf(last), "not-understood", "more-wanted", { after: shorten(last.image), example });
  }
  const before = tokens[tokens.indexOf(at) - 1];
  if (at.tokenType === Gauge) return complain(spanOf(at), "bad-number", "gauge-alone", { found: at.image });
  if (before?.tokenType === Numeral && UNIT_WORDS.has(at.image)) {
    const better = `${before.image}${UNIT_WORDS.get(at.image)}`;
    const span = spanOf(before, at);
    return complain(
      span,
      "bad-number",
      "blank-unit",
      { found: `${before.image} ${at.image}`, better },
      swap(span, better),
    );
  }
  if (at.tokenType === Stray) {
    const mark = /["'″′”’“‘]/.test(at.image);
    if (mark && before?.tokenType === Word && endOf(before) === at.startOffset) {
      return complain(spanOf(before, at), "not-understood", "glued-minus", {
        found: before.image + at.image,
      });
    }
    if (mark) return complain(spanOf(at), "stray-character", "lone-mark", { found: at.image });
    return complain(spanOf(at), "stray-character", "stray", { found: at.image, example });
  }
  return complain(spanOf(at, last), "not-understood", "too-much", {
    found: shorten(textFrom(at, tokens)),
    example,
  });
}

function unknownClause({ entry }: Failure, first: IToken): Complaint | undefined {
  const forms = entryForm(entry)?.clauses ?? [];
  const word = shorten(first.image);
  const isWord = /^[A-Za-zÀ-ÿ_]/.test(first.image);
  if (!isWord && forms.some((f) => f.opens.length === 0)) return undefined;
  if (forms.length === 0) {
    return complain(spanOf(first), "not-understood", "clause-none", { word, entry, example: oneLine(entry) });
  }
  const openings = [...new Set(forms.filter((f) => f.opens.length > 0).map((f) => f.opens[0]!))];
  const near = isWord ? nearest(first.image.toLowerCase(), openings)[0] : undefined;
  if (near && near !== first.image) {
    return complain(
      spanOf(first),
      "not-understood",
      "clause-near",
      { word, entry, near },
      swap(spanOf(first), near),
    );
  }
  if (forms.some((f) => f.opens.length === 0 && entry === "fasten")) return undefined;
  const words = listed(
    forms
      .filter((f) => f.opens.length > 0)
      .map((f) => f.opens.join(" "))
      .slice(0, 6),
  );
  return complain(spanOf(first), "not-understood", "clause-unknown", { word, entry, words });
}

const oneLine = (entry: string): string => (entryForm(entry)?.example ?? "").split("\n")[0]!;

/** Names must be small letters, digits and hyphens. */
export function badName(token: IToken): Complaint {
  const better =
    token.image
      .normalize("NFD")
      .replace(/[\u0300-\u036f]/g, "")
      .toLowerCase()
      .replace(/[^a-z0-9-]+/g, "-")
      .replace(/^[^a-z]+|-+$/g, "") || "leg";
  const span = spanOf(token);
  return complain(span, "bad-name", "name-form", { found: shorten(token.image), better }, swap(span, better));
}

/** Unit words that people write after a blank, and the form that is read. */
const UNIT_WORDS: ReadonlyMap<string, string> = new Map([
  ["in", '"'],
  ["inch", '"'],
  ["inches", '"'],
  ["ft", "'"],
  ["foot", "'"],
  ["feet", "'"],
  ["mm", "mm"],
  ["cm", "cm"],
  ["m", "m"],
  ["millimetres", "mm"],
  ["metre", "m"],
  ["metres", "m"],
  ["degrees", "°"],
]);

export const isLength = (t: IToken): boolean => t.tokenType === Length;

function textFrom(at: IToken, tokens: readonly IToken[]): string {
  return tokens
    .slice(tokens.indexOf(at))
    .map((t) => t.image)
    .join(" ");
}

const shorten = (text: string): string => (text.length > 40 ? `${text.slice(0, 39)}…` : text);

/** `a, b or c` */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} or ${words[words.length - 1]}`;

/** Fills a template's slots. Slots are plain text: nothing in them is read as a template again. */
export function fill(template: string, slots: Readonly<Record<string, string>>): string {
  return template.replace(/\{([a-zA-Z0-9-]+)\}/g, (whole, name: string) => slots[name] ?? whole);
}
