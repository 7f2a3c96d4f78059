/**
 * From text to tree. Entries are told apart by column 0, clauses by commas and lines; each clause is then read by its
 * own rule, so a mistake costs that clause and nothing else. Never throws; always returns a tree.
 */
import type { IToken } from "chevrotain";
import { CLAUSES, goesOn, rules } from "./clauses";
import { clauseForm, entryForm, type Form } from "./forms";
import { emptyHead, HEADS, type ReadHead } from "./heads";
import { badName, complain, type Failure, notUnderstood, spanOf, unknownEntry } from "./messages";
import { nameOf } from "./rules-base";
import { breaksBetween, Close, Comma, endOf, Literal, Open, opensLine, tokenize, Word } from "./tokens";
import type { Clause, Complaint, Entry, Head, Name, Tree } from "./tree";

/** Longest text read, in characters. */
export const LONGEST_TEXT = 1_000_000;
/** Deepest nesting of parentheses read. */
export const DEEPEST = 40;

/** Reads a whole plan file. */
export function parse(text: string): Tree {
  const refused = refuse(text);
  if (refused) return { text, entries: [], comments: [], complaints: [refused] };
  const { tokens, comments } = tokenize(text);
  const reader: Reading = { text, complaints: [] };
  const entries: Entry[] = [];
  for (const group of splitEntries(text, tokens)) {
    if (!opensLine(text, group[0]!.startOffset)) {
      reader.complaints.push(complain(spanOf(group[0]!), "indented-alone", "indented"));
    }
    entries.push(readEntry(reader, group));
  }
  return {
    text,
    entries,
    comments: comments.map((c) => ({ text: c.image, start: c.startOffset, end: endOf(c) })),
    complaints: reader.complaints,
  };
}

interface Reading {
  readonly text: string;
  readonly complaints: Complaint[];
}

/** Tokens of one clause: what stands between commas, or on a line. */
interface Part {
  readonly tokens: IToken[];
  /** Whether it is the first on its line. */
  readonly opensLine: boolean;
}

function refuse(text: string): Complaint | undefined {
  const nothing = { start: 0, end: 0 };
  if (text.length > LONGEST_TEXT) {
    return complain(nothing, "too-big", "too-big", {
      size: (text.length / 1e6).toFixed(1),
      limit: String(LONGEST_TEXT / 1e6),
    });
  }
  const zero = text.indexOf("\0");
  if (zero < 0) return undefined;
  const line = String(text.slice(0, zero).split("\n").length);
  return complain({ start: zero, end: zero + 1 }, "not-text", "not-text", { line });
}

/** One group of tokens an entry: a token at the start of a line opens the next. */
function splitEntries(text: string, tokens: readonly IToken[]): IToken[][] {
  const groups: IToken[][] = [];
  for (const token of tokens) {
    const group = groups[groups.length - 1];
    if (!group || opensLine(text, token.startOffset)) groups.push([token]);
    else group.push(token);
  }
  return groups;
}

function readEntry(reading: Reading, tokens: IToken[]): Entry {
  const first = tokens[0]!;
  const keyword = nameOf(first);
  const whole = { start: first.startOffset, end: endOf(tokens[tokens.length - 1]!) };
  if (!Object.hasOwn(HEADS, keyword.text)) {
    reading.complaints.push(unknownEntry(first));
    return { kind: "unknown", keyword, clauses: [], ...whole };
  }
  const parts = splitClauses(reading, tokens.slice(1), first);
  const hasHead = parts[0] && !parts[0].opensLine && keyword.text !== "tools";
  const head = readHead(reading, first, hasHead ? parts.shift()!.tokens : []);
  if (head?.kind === "assembly") {
    return { ...head, body: readBody(reading, keyword, parts), keyword, clauses: [], ...whole };
  }
  const read = readClauses(reading, keyword.text, parts);
  if (!head) return { kind: "unknown", keyword, clauses: read, ...whole };
  const { lie, ...rest } = head;
  return { ...(rest as Head), keyword, clauses: lie ? [lie, ...read] : read, ...whole };
}

function readHead(reading: Reading, first: IToken, tokens: IToken[]): ReadHead | undefined {
  const entry = first.image;
  if (tokens.length === 0) {
    const empty = emptyHead(entry, endOf(first));
    if (!empty)
      fail(reading, {
        entry,
        form: { ...HEAD_FORM, example: exampleOf(entry) },
        tokens: [first],
        at: undefined,
      });
    return empty;
  }
  for (const t of tokens)
    if (t.tokenType === Word && !NAME.test(t.image)) reading.complaints.push(badName(t));
  const failure = { entry, form: { ...HEAD_FORM, example: exampleOf(entry) }, tokens: [first, ...tokens] };
  return attempt(reading, tokens, failure, () => HEADS[entry]!(tokens));
}

const NAME = /^[a-z](?:-?[a-z0-9])*$/;
const HEAD_FORM: Form = { opens: [], example: "", doc: "" };
const exampleOf = (entry: string): string => (entryForm(entry)?.example ?? "").split("\n")[0]!;

/** The lines of an assembly: each that opens with place, fasten or glue is an entry of its own. */
function readBody(reading: Reading, keyword: Name, parts: readonly Part[]): Entry[] {
  const groups: IToken[][] = [];
  for (const part of parts) {
    const opens = part.opensLine && ["place", "fasten", "glue"].includes(part.tokens[0]!.image);
    const group = groups[groups.length - 1];
    if (opens || !group) groups.push([...part.tokens]);
    else group.push({ ...COMMA_BETWEEN, startOffset: endOf(group[group.length - 1]!) }, ...part.tokens);
  }
  return groups.flatMap((group) => {
    if (["place", "fasten", "glue"].includes(group[0]!.image)) return [readEntry(reading, group)];
    fail(reading, { entry: keyword.text, form: undefined, tokens: group, at: group[0] });
    return [];
  });
}

/** A comma that stands for the end of a line, where two clauses are put back into one entry. */
const COMMA_BETWEEN: Omit<IToken, "startOffset"> = {
  image: ",",
  tokenType: Comma,
  tokenTypeIdx: Comma.tokenTypeIdx!,
} as Omit<IToken, "startOffset">;

function splitClauses(reading: Reading, tokens: readonly IToken[], before: IToken): Part[] {
  const parts: Part[] = [];
  let current: IToken[] = [];
  let opens = false;
  let depth = 0;
  let previous = before;
  const close = () => {
    if (current.length > 0) parts.push({ tokens: current, opensLine: opens });
    current = [];
    opens = false;
  };
  for (const token of tokens) {
    const newLine = breaksBetween(reading.text, endOf(previous), token.startOffset);
    if (newLine) {
      close();
      opens = true;
      depth = 0;
    }
    if (token.tokenType === Open) depth++;
    if (token.tokenType === Close) depth--;
    if (token.tokenType === Comma && depth <= 0) close();
    else current.push(token);
    previous = token;
  }
  if (previous.tokenType === Comma && previous !== before) {
    reading.complaints.push(complain(spanOf(previous), "not-understood", "comma-last"));
  }
  close();
  return parts;
}

interface Opening {
  readonly key: string;
  readonly form: Form | undefined;
  /** How many tokens the opening words take. */
  readonly length: number;
}

function openingOf(entry: string, tokens: readonly IToken[]): Opening {
  const form = clauseForm(entry, (at) => tokens[at]?.image);
  return form ? { key: form.opens.join(" "), form, length: form.opens.length } : NO_OPENING;
}

const NO_OPENING: Opening = { key: "", form: undefined, length: 0 };

const isLiteral = (t: IToken): boolean => t.tokenType.CATEGORIES?.includes(Literal) ?? false;

function readClauses(reading: Reading, entry: string, parts: readonly Part[]): Clause[] {
  const clauses: Clause[] = [];
  for (let i = 0; i < parts.length; i++) {
    const tokens = [...parts[i]!.tokens];
    const opening = openingOf(entry, tokens);
    while (
      parts[i + 1] &&
      goesOn(entry, opening.key, parts[i + 1]!.tokens[0]!, isLiteral(parts[i + 1]!.tokens[0]!))
    ) {
      tokens.push(
        { ...COMMA_BETWEEN, startOffset: endOf(tokens[tokens.length - 1]!) },
        ...parts[++i]!.tokens,
      );
    }
    clauses.push(readClause(reading, entry, tokens, opening));
  }
  return clauses;
}

function readClause(reading: Reading, entry: string, tokens: IToken[], opening: Opening): Clause {
  const span = spanOf(tokens[0]!, tokens[tokens.length - 1]!);
  const make = CLAUSES[entry]?.[opening.key];
  const form = opening.form ?? (isLiteral(tokens[0]!) ? numberForm(entry) : undefined);
  const failure = { entry, form, tokens };
  if (
    !make ||
    (opening.key === "" && entry !== "fasten" && !isLiteral(tokens[0]!) && tokens[0]!.tokenType !== Open)
  ) {
    return broken(reading, { ...failure, at: tokens[0] });
  }
  const read = attempt(reading, tokens.slice(opening.length), failure, make(tokens[0]!));
  return read
    ? ({ ...read, ...span } as Clause)
    : { kind: "broken", text: reading.text.slice(span.start, span.end), ...span };
}

const numberForm = (entry: string): Form | undefined =>
  entryForm(entry)?.clauses.find((form) => form.opens.length === 0);

function broken(reading: Reading, failure: Failure): Clause {
  fail(reading, failure);
  const span = spanOf(failure.tokens[0]!, failure.tokens[failure.tokens.length - 1]!);
  return { kind: "broken", text: reading.text.slice(span.start, span.end), ...span };
}

function fail(reading: Reading, failure: Failure): void {
  reading.complaints.push(notUnderstood(failure));
}

/** Runs one rule over tokens; on any misfit complains and gives undefined. */
function attempt<T>(
  reading: Reading,
  tokens: IToken[],
  failure: Omit<Failure, "at">,
  run: () => T,
): T | undefined {
  const deep = tooDeep(tokens);
  if (deep) {
    reading.complaints.push(complain(spanOf(deep), "too-deep", "too-deep", { limit: String(DEEPEST) }));
    return undefined;
  }
  rules.input = tokens;
  const result = run();
  const error = rules.errors[0];
  if (!error) return result;
  const at = tokens.includes(error.token) ? error.token : undefined;
  fail(reading, { ...failure, at });
  return undefined;
}

function tooDeep(tokens: readonly IToken[]): IToken | undefined {
  let depth = 0;
  let run = 0;
  for (const t of tokens) {
    if (t.tokenType === Open && ++depth > DEEPEST) return t;
    if (t.tokenType === Close) depth--;
    run = t.image === "-" ? run + 1 : 0;
    if (run > DEEPEST) return t;
  }
  return undefined;
}
