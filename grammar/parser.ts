/**
 * From text to tree. Entries are told apart by column 0, clauses by commas and lines; each clause is then read by its
 * own rule, so a mistake costs that clause and nothing else. Never throws; always returns a tree.
 */
import type { IToken, TokenType } from "chevrotain";
import { detached, moved, type Piece, piecesOf, Shelf } from "./chunks";
import { CLAUSES, goesOn, rules } from "./clauses";
import { merged, withoutConflicts } from "./conflicts";
import { clauseForm, entryForm, type Form } from "./forms";
import { entryGuesses, guesses } from "./guesses";
import { aboveOf, emptyHead, HEADS, type ReadHead } from "./heads";
import {
  badName,
  complain,
  exampleOf,
  type Failure,
  isWord,
  NAME,
  nameInWords,
  nameOfWords,
  notUnderstood,
  spanOf,
  unknownEntry,
  wrongDay,
} from "./messages";
import { opensWithValue, placeHabit } from "./place-words";
import { nameOf } from "./rules-base";
import { type Draft, settle } from "./settle";
import {
  breaksBetween,
  Close,
  Comma,
  Day,
  endOf,
  Literal,
  Minus,
  Open,
  opensLine,
  Plus,
  Section,
  Slash,
  Star,
  tokenize,
} from "./tokens";
import type { Clause, Complaint, Entry, Head, Name, Tree } from "./tree";

/** Longest text read, in characters. */
export const LONGEST_TEXT = 1_000_000;
/** Deepest nesting of parentheses read. */
export const DEEPEST = 40;
/** The most signs (+ - * /) in one clause. */
export const LONGEST_SUM = 200;

/** Reads a whole plan file. The tree depends on the text alone; the shelf of entries read lately only makes it quicker. */
export function parse(text: string, shelf: Shelf = lately): Tree {
  const refused = refuse(text);
  if (refused) return { text, entries: [], comments: [], complaints: [refused] };
  shelf.expect(text.length);
  const { told, conflicts } = withoutConflicts(text);
  const { entries, comments, drafts } = read(told, shelf);
  const complaints = settle(told, entries, drafts, (part) => read(part, shelf).drafts.length);
  return { text, entries, comments, complaints: merged(complaints, conflicts) };
}

const lately = new Shelf();

interface Reading {
  readonly text: string;
  readonly drafts: Draft[];
}

/** Reads text piece by piece, each from the shelf if it was read lately. */
function read(text: string, shelf: Shelf): Pick<Tree, "entries" | "comments"> & Pick<Reading, "drafts"> {
  const entries: Entry[] = [];
  const comments: Tree["comments"][number][] = [];
  const drafts: Draft[] = [];
  const starts = piecesOf(text);
  for (const [i, at] of starts.entries()) {
    let own = text.slice(at, starts[i + 1] ?? text.length);
    let piece = shelf.find(own, at);
    if (!piece) {
      const above = aboveOf(entries);
      own = detached(own);
      const fresh = readPiece(own, above);
      piece = moved({ entries: fresh.entries, comments: fresh.comments }, at);
      // A complaint may lean on the entry above, so only what reads well is kept.
      if (fresh.drafts.length === 0) shelf.put(own, at, piece);
      for (const d of fresh.drafts) drafts.push(movedDraft(d, at));
    }
    entries.push(...piece.entries);
    comments.push(...piece.comments);
  }
  return { entries, comments, drafts };
}

const movedDraft = ({ complaint, guesses }: Draft, by: number): Draft => ({
  complaint: moved(complaint, by),
  guesses: () => guesses().map((c) => moved(c, by)),
});

/** Reads the text of one entry; `above` is the first word of the entry before it. */
function readPiece(text: string, above: string | undefined): Piece & Pick<Reading, "drafts"> {
  const { tokens, comments } = tokenize(text);
  const reading: Reading = { text, drafts: [] };
  const entries: Entry[] = [];
  for (const group of splitEntries(text, tokens)) {
    const first = group[0]!;
    if (!opensLine(text, first.startOffset)) {
      const blanks = /[ \t]*$/.exec(text.slice(0, first.startOffset))![0];
      const start = first.startOffset - blanks.length;
      const cure = { says: "outdent", slots: {}, start, end: first.startOffset, text: "" };
      put(reading, complain(spanOf(first), "indented-alone", "indented", {}, cure));
    }
    entries.push(readEntry(reading, group, aboveOf(entries, above)));
  }
  return {
    entries,
    comments: comments.map((c) => ({ text: c.image, start: c.startOffset, end: endOf(c) })),
    drafts: reading.drafts,
  };
}

const NONE = (): readonly Complaint[] => [];
const put = (reading: Reading, complaint: Complaint, more: Draft["guesses"] = NONE): void => {
  reading.drafts.push({ complaint, guesses: more });
};

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

/** Reads one entry; `above` is the first word of the entry before it. */
function readEntry(reading: Reading, tokens: IToken[], above?: string): Entry {
  const first = tokens[0]!;
  const keyword = nameOf(first);
  const whole = { start: first.startOffset, end: endOf(tokens[tokens.length - 1]!) };
  const named = isWord(tokens[1]) || tokens[1]?.tokenType === Section ? { name: nameOf(tokens[1]!) } : {};
  if (!Object.hasOwn(HEADS, keyword.text)) {
    put(reading, unknownEntry(first), () => entryGuesses(reading.text, tokens, above));
    return { kind: "unknown", ...named, keyword, clauses: [], ...whole };
  }
  const before = reading.drafts.length;
  const { parts, comma } = splitClauses(reading.text, tokens.slice(1), first);
  const hasHead = parts[0] && !parts[0].opensLine && keyword.text !== "tools";
  if (hasHead && keyword.text === "place") parts.splice(0, 1, ...placeParts(parts[0]!));
  const head = readHead(reading, first, hasHead ? parts.shift()!.tokens : []);
  if (head?.kind === "assembly") {
    return { ...head, body: readBody(reading, keyword, parts), keyword, clauses: [], ...whole };
  }
  const clauses = readClauses(reading, keyword.text, parts);
  if (comma && reading.drafts.length === before) put(reading, commaLast(comma));
  if (!head) return { kind: "unknown", ...named, keyword, clauses, ...whole };
  const { lie, ...rest } = head;
  return { ...(rest as Head), keyword, clauses: lie ? [lie, ...clauses] : clauses, ...whole };
}

/** `place leg upright`, `place cap on legs`: the first clause may follow the name without a comma. */
function placeParts(head: Part): Part[] {
  const [subject, ...rest] = head.tokens;
  const opens =
    rest.length > 0 &&
    (openingOf("place", rest) !== NO_OPENING || isLiteral(rest[0]!) || placeHabit(rest) !== undefined);
  if (!subject || !isWord(subject) || !opens) return [head];
  return [
    { ...head, tokens: [subject] },
    { tokens: rest, opensLine: false },
  ];
}

function commaLast(comma: IToken): Complaint {
  const cure = { says: "leave-out", slots: { text: "," }, ...spanOf(comma), text: "" };
  return complain(spanOf(comma), "not-understood", "comma-last", {}, cure);
}

function readHead(reading: Reading, first: IToken, tokens: IToken[]): ReadHead | undefined {
  const entry = first.image;
  const form: Form = { opens: [], example: exampleOf(entry), doc: "" };
  const failure = { entry, part: "head", opensLine: true, form, tokens: [first, ...tokens] } as const;
  if (tokens.length === 0) {
    const empty = emptyHead(entry, endOf(first));
    if (!empty) fail(reading, { ...failure, at: undefined });
    return empty;
  }
  // In what was built nothing is named on its first line.
  const names = entry === "built" ? [] : tokens;
  const wrong = names.filter((t, i) => isWord(t) && !NAME.test(t.image) && !followsNumber(tokens, i));
  const name = nameOfWords(entry, tokens);
  const whole = name.length > 1 && name.some((t) => wrong.includes(t)) ? name : [];
  if (whole.length > 0) put(reading, nameInWords(reading.text, whole));
  for (const t of wrong) if (!whole.includes(t)) put(reading, badName(t));
  return attempt(reading, tokens, failure, () => HEADS[entry]!(tokens), wrong.length > 0);
}

/** `2X4`: the second half of what was meant as one word. */
const followsNumber = (tokens: readonly IToken[], i: number): boolean =>
  i > 0 && isLiteral(tokens[i - 1]!) && endOf(tokens[i - 1]!) === tokens[i]!.startOffset;

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
    const failure = { entry: keyword.text, part: "clause", opensLine: true, form: undefined } as const;
    fail(reading, { ...failure, tokens: group, at: group[0] });
    return [];
  });
}

/** A comma that stands for the end of a line, where two clauses are put back into one entry. */
const COMMA_BETWEEN: Omit<IToken, "startOffset"> = {
  image: ",",
  tokenType: Comma,
  tokenTypeIdx: Comma.tokenTypeIdx!,
} as Omit<IToken, "startOffset">;

function splitClauses(
  text: string,
  tokens: readonly IToken[],
  before: IToken,
): { parts: Part[]; comma: IToken | undefined } {
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
    const newLine = breaksBetween(text, endOf(previous), token.startOffset);
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
  close();
  return { parts, comma: previous.tokenType === Comma && previous !== before ? previous : undefined };
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
  let astray = false;
  for (let i = 0; i < parts.length; i++) {
    const { tokens: own, opensLine: opens } = parts[i]!;
    const tokens = [...own];
    const opening = openingOf(entry, tokens);
    while (parts[i + 1] && goesOn(entry, opening.key, isLiteral(parts[i + 1]!.tokens[0]!))) {
      tokens.push(
        { ...COMMA_BETWEEN, startOffset: endOf(tokens[tokens.length - 1]!) },
        ...parts[++i]!.tokens,
      );
    }
    const before = reading.drafts.length;
    clauses.push(readClause(reading, entry, tokens, opening, opens));
    // What follows a line of its own that was indented is of that line: once it stands at the edge, it is read.
    const strays = opens && opening === NO_OPENING && Object.hasOwn(HEADS, own[0]!.image);
    if (astray && !strays) reading.drafts.length = before;
    astray ||= strays;
  }
  return clauses;
}

function readClause(
  reading: Reading,
  entry: string,
  tokens: IToken[],
  opening: Opening,
  opensLine: boolean,
): Clause {
  const span = spanOf(tokens[0]!, tokens[tokens.length - 1]!);
  const make = CLAUSES[entry]?.[opening.key];
  const value = isLiteral(tokens[0]!) || opensWithValue(entry, tokens);
  const form = opening.form ?? (value ? numberForm(entry) : undefined);
  const failure = { entry, part: "clause", opensLine, form, tokens } as const;
  if (!make || (opening.key === "" && entry !== "fasten" && !value && tokens[0]!.tokenType !== Open)) {
    return broken(reading, { ...failure, at: tokens[0] });
  }
  const read = attempt(reading, tokens.slice(opening.length), failure, make(tokens[0]!));
  return read
    ? ({ ...read, ...span } as Clause)
    : { kind: "broken", text: reading.text.slice(span.start, span.end), ...span };
}

const numberForm = (entry: string): Form | undefined =>
  entryForm(entry)?.clauses.find((form) => form.opens.length === 0);

function broken(reading: Reading, failure: Omit<Failure, "text">): Clause {
  fail(reading, failure);
  const span = spanOf(failure.tokens[0]!, failure.tokens[failure.tokens.length - 1]!);
  return { kind: "broken", text: reading.text.slice(span.start, span.end), ...span };
}

function fail(reading: Reading, failure: Omit<Failure, "text">): void {
  const whole = { ...failure, text: reading.text };
  put(reading, notUnderstood(whole), () => guesses(whole));
}

/** Runs one rule over tokens; on any misfit complains (unless silent) and gives undefined. */
function attempt<T>(
  reading: Reading,
  tokens: IToken[],
  failure: Omit<Failure, "at" | "text">,
  run: () => T,
  silent = false,
): T | undefined {
  const deep = tooDeep(tokens);
  if (deep) {
    put(reading, deep);
    return undefined;
  }
  for (const token of tokens) {
    const wrong = token.tokenType === Day && wrongDay(token);
    if (wrong) put(reading, wrong);
  }
  rules.input = tokens;
  const result = run();
  const error = rules.errors[0];
  if (!error) return result;
  const at = tokens.includes(error.token) ? error.token : undefined;
  if (!silent) fail(reading, { ...failure, at });
  return undefined;
}

/** The complaint about parentheses nested too deep, or a sum of too many values, either of which would overflow. */
function tooDeep(tokens: readonly IToken[]): Complaint | undefined {
  let depth = 0;
  let signs = 0;
  for (const t of tokens) {
    if (t.tokenType === Open && ++depth > DEEPEST) {
      return complain(spanOf(t), "too-deep", "too-deep", { limit: String(DEEPEST) });
    }
    if (t.tokenType === Close) depth--;
    if (SIGNS.has(t.tokenType) && ++signs > LONGEST_SUM) {
      return complain(spanOf(t), "too-deep", "sum-too-long", { limit: String(LONGEST_SUM) });
    }
  }
  return undefined;
}

const SIGNS: ReadonlySet<TokenType> = new Set([Plus, Minus, Star, Slash]);
