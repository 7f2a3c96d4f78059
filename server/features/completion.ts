/** What is offered while a line is typed: from the words before the cursor, and the plan worked out so far. */
import { clauseForm, ENTRY_FORMS, entryForm } from "../../grammar/forms";
import {
  breaksBetween,
  Close,
  Comma,
  endOf,
  Literal,
  Open,
  tokenize,
  Word,
  Words,
} from "../../grammar/tokens";
import type { Checked } from "./checked";
import { CLAUSE_PATTERNS, goingOn, HEAD_PATTERNS, stillOpen } from "./completion-forms";
import {
  type Completion,
  distinct,
  type Offer,
  offer,
  offersFor,
  screwOffers,
  unitOffers,
} from "./completion-offers";
import { alt, type Next, nextOf, type Pattern, type Token, words } from "./completion-patterns";
import { paragraphs, planBlock } from "./markdown";

export type { Completion } from "./completion-offers";

/** Longest entry looked at, in characters. */
const LONGEST = 20_000;

/** What may be typed at an offset of the plan's own file, best first. */
export function completionsAt(plan: Checked, offset: number): Completion[] {
  const { text } = plan;
  if (offset < 0 || offset > text.length) return [];
  const line = lineStart(text, offset);
  const typed = text.slice(line, offset).replace(/^\uFEFF/, "");
  if (/^[A-Za-z-]*$/.test(typed)) return placed(entryOffers(), text, offset - typed.length, offset);
  const start = entryStart(text, line);
  if (start === undefined || offset - start > LONGEST) return [];
  return insideEntry(plan, start, offset);
}

/** Where the line of an offset begins; a search from before the text would look at its first letter. */
const lineStart = (text: string, offset: number): number =>
  offset <= 0 ? 0 : Math.max(text.lastIndexOf("\n", offset - 1), text.lastIndexOf("\r", offset - 1)) + 1;

/** The start of the line in column 0 that a line belongs to; blank lines and comments belong to no other. */
function entryStart(text: string, line: number): number | undefined {
  for (let at = line; ; at = lineStart(text, at - 1)) {
    const first = text[at] === "\uFEFF" ? text[at + 1] : text[at];
    if (first !== undefined && /[^\s#]/.test(first)) return at;
    if (at === 0) return undefined;
  }
}

function entryOffers(): Offer[] {
  return ENTRY_FORMS.map((form, i) =>
    offer(form.word, "entry", i / 100, {
      detail: form.example.split("\n")[0]!,
      documentation: paragraphs(form.doc, planBlock(form.example)),
      insertText: form.word === "tools" ? form.word : `${form.word} `,
    }),
  );
}

/** Gives offers their place and their order, behind so many `before` them. */
function placed(
  offers: readonly Offer[],
  text: string,
  start: number,
  offset: number,
  before = 0,
): Completion[] {
  const rest = /^[A-Za-z0-9-]*/.exec(text.slice(offset, offset + 60))?.[0].length ?? 0;
  const end = start < offset && /[A-Za-z0-9-]/.test(text[offset - 1] ?? "") ? offset + rest : offset;
  return offers.map(({ rank, ...o }, i) => ({
    ...o,
    range: { start, end },
    sortText: String(before + i).padStart(4, "0"),
  }));
}

type Lexed = ReturnType<typeof tokenize>["tokens"];

function insideEntry(plan: Checked, start: number, offset: number): Completion[] {
  const { text } = plan;
  const before = text.slice(start, offset);
  const { tokens, comments } = tokenize(before);
  const end = offset - start;
  const last = tokens[tokens.length - 1];
  // A lone # may yet become a screw's size.
  const said = comments[comments.length - 1];
  if (said && said.startOffset < end && endOf(said) === end && said.image !== "#") return [];
  if (!last || (last.tokenType === Words && !breaksBetween(before, endOf(last), end))) return [];
  const screw = /#(?:\d+(?: ?[x×] ?[\d ./-]*)?)?$|(?<![\w./-])\d+(?:\.\d+)? ?[x×] ?[\d.]*m?$/.exec(before);
  if (screw) {
    const expected = expectedAfter(before, tokens, screw.index);
    if (expected.some((n) => n.kind === "screw"))
      return placed(screwOffers(screw[0], plan), text, start + screw.index, offset);
  }
  if (said?.image === "#" && endOf(said) === end) return [];
  const section = /(?<![\w.'"/-])\d[\d/]*[x×]?[\d/]*$/.exec(before);
  if (section) {
    const expected = expectedAfter(before, upTo(tokens, section.index), section.index);
    const sections = expected.filter((n) => n.kind === "name" && n.table === "sections");
    if (sections.length > 0) {
      const offers = distinct(offersFor(sections, plan)).filter((o) => /^\d/.test(o.label));
      return placed(offers, text, start + section.index, offset);
    }
  }
  const units = unitsAt(plan, before, tokens);
  const withUnits = units ? placed(units.offers, text, start + units.from, offset) : [];
  if (units?.inNumber || (units && /[A-Za-z]$/.test(before) && withUnits.length > 0)) return withUnits;
  // Right behind a value or a parenthesis a blank comes first.
  if (endOf(last) === end && (isA(last, Literal) || last.tokenType === Close)) return withUnits;
  const partial = isA(last, Word) && endOf(last) === end;
  const from = partial ? last.startOffset : end;
  const expected = expectedAfter(before, tokens, from);
  const others = distinct([...offersFor(expected, plan), ...exampleOffers(before, tokens, from)]);
  return [...withUnits, ...placed(others, text, start + from, offset, withUnits.length)];
}

/**
 * The units that the number before the cursor may take. `inNumber` while the cursor stands in it; behind a blank only
 * units of which some letters are typed, or that follow a blank.
 */
function unitsAt(plan: Checked, before: string, tokens: Lexed) {
  const number = /(?<![\w.'"#/-])(\d[\d./-]*)( ?)([A-Za-z/²³°]*)$/.exec(before);
  if (!number) return undefined;
  const [whole, digits = "", blank, letters] = number;
  const units = unitsOf(expectedAfter(before, tokens, number.index));
  const squeezed = whole.replace(/\s/g, "");
  if (/\d['′’] ?-?$/.test(before.slice(0, number.index)))
    return { offers: unitOffers(digits, ["inches"], plan), from: number.index, inNumber: blank === "" };
  const offers = unitOffers(digits, units, plan).filter(
    (o) => o.label.replace(/\s/g, "").startsWith(squeezed) && (!blank || letters || o.label.includes(" ")),
  );
  return { offers, from: number.index, inNumber: blank === "" };
}

const upTo = (tokens: Lexed, offset: number): Lexed => tokens.filter((t) => t.startOffset < offset);
const isA = (t: Lexed[number], category: typeof Word): boolean =>
  t.tokenType === category || (t.tokenType.CATEGORIES?.includes(category) ?? false);
const unitsOf = (expected: readonly Next[]) => expected.flatMap((n) => (n.kind === "value" ? [n.unit] : []));

interface Typed {
  readonly entry: string;
  /** The words of the clause at the cursor, or of the head. */
  readonly current: readonly Token[];
  readonly inHead: boolean;
  /** The opening of the clause just before, and of all others. */
  readonly previous: string;
  readonly said: ReadonlySet<string>;
  /** At the start of a line inside an assembly. */
  readonly opensInner: boolean;
}

/** What could follow the tokens before `end`. */
function expectedAfter(before: string, tokens: Lexed, end: number): Next[] {
  const typed = readTyped(before, upTo(tokens, end), end);
  if (!typed) return [];
  const { entry, current, inHead, previous, said } = typed;
  if (inHead) {
    const head = HEAD_PATTERNS[entry];
    return head ? nextOf(head, current) : [];
  }
  const forms = CLAUSE_PATTERNS.get(entry) ?? [];
  const inner: Pattern[] = typed.opensInner
    ? ["place", "fasten", "glue"].map((word) => words(word, entryForm(word)?.doc))
    : [];
  // Where a list may go on but nothing of it is typed, only its numbers are of use.
  const more = goingOn(entry, previous);
  const going = more ? nextOf(more, current).filter((n) => current.length > 0 || n.kind === "value") : [];
  const all = [...nextOf(alt(...inner, ...forms.map((f) => f.pattern)), current), ...going];
  const shut = (n: Next) => n.kind === "words" && n.form && !stillOpen(entry, n.form.opens.join(" "), said);
  return all.filter((n) => !shut(n));
}

/** Clauses that open with a number are offered by their example, at the start of a clause. */
function exampleOffers(before: string, tokens: Lexed, end: number): Offer[] {
  const typed = readTyped(before, upTo(tokens, end), end);
  if (!typed || typed.inHead || typed.current.length > 0) return [];
  return (CLAUSE_PATTERNS.get(typed.entry) ?? [])
    .filter(({ form }) => form.opens.length === 0 && stillOpen(typed.entry, "", typed.said))
    .map(({ form }) => offer(form.example, "clause", 6, { documentation: form.doc }));
}

function readTyped(before: string, tokens: Lexed, end: number): Typed | undefined {
  const [first, ...rest] = tokens;
  if (!first || !entryForm(first.image)) return undefined;
  const parts = partsOf(before, first, rest, end);
  if (first.image === "assembly" && parts.length > 1) return insideAssembly(parts);
  const inHead = parts.length === 1 && !parts[0]!.opensLine && first.image !== "tools";
  const others = parts.slice(1, -1);
  const typed = typedIn(first.image, parts[parts.length - 1]!.tokens, others, inHead, false);
  return first.image === "place" && !inHead ? lyingSaid(typed, parts[0]!.tokens) : typed;
}

function typedIn(
  entry: string,
  current: Lexed,
  others: readonly Part[],
  inHead: boolean,
  opensInner: boolean,
): Typed {
  const openings = others.map((p) => openingOf(entry, p.tokens));
  return {
    entry,
    current,
    inHead,
    previous: openings[openings.length - 1] ?? "",
    said: new Set(openings),
    opensInner,
  };
}

/** `place leg upright, …`: how it lies was said in the head. */
function lyingSaid(typed: Typed, head: Lexed): Typed {
  const images = head.map((t) => t.image).join(" ");
  const lie = ["upright", "across", "front to back", "flat", "on edge"].find((l) => images.endsWith(` ${l}`));
  return lie ? { ...typed, said: new Set([...typed.said, lie]) } : typed;
}

interface Part {
  readonly tokens: Lexed;
  readonly opensLine: boolean;
}

const INNER = new Set(["place", "fasten", "glue"]);

function insideAssembly(parts: readonly Part[]): Typed | undefined {
  const last = parts[parts.length - 1]!;
  const opens = (p: Part) => p.opensLine && INNER.has(p.tokens[0]?.image ?? "");
  const from = parts.findLastIndex(opens);
  const atStart = last.opensLine && last.tokens.length === 0;
  if (from < 0) return atStart ? typedIn("assembly", [], [], false, true) : undefined;
  const entry = parts[from]!.tokens[0]!.image;
  if (from === parts.length - 1) return typedIn(entry, last.tokens.slice(1), [], true, false);
  const typed = typedIn(entry, last.tokens, parts.slice(from + 1, -1), false, atStart);
  return entry === "place" ? lyingSaid(typed, parts[from]!.tokens) : typed;
}

function openingOf(entry: string, tokens: Lexed): string {
  return clauseForm(entry, (i) => tokens[i]?.image)?.opens.join(" ") ?? "";
}

/** The tokens between commas and line ends; the last part is the one at the cursor. */
function partsOf(text: string, first: Lexed[number], tokens: Lexed, end: number): Part[] {
  const parts: { tokens: Lexed; opensLine: boolean }[] = [{ tokens: [], opensLine: false }];
  let depth = 0;
  let previous = first;
  for (const token of [...tokens, undefined]) {
    const at = token?.startOffset ?? end;
    if (breaksBetween(text, endOf(previous), at)) {
      depth = 0;
      parts.push({ tokens: [], opensLine: true });
    }
    if (!token) break;
    if (token.tokenType === Open) depth++;
    if (token.tokenType === Close) depth--;
    if (token.tokenType === Comma && depth <= 0) parts.push({ tokens: [], opensLine: false });
    else parts[parts.length - 1]!.tokens.push(token);
    previous = token;
  }
  // A comma at the end of a line and the line's end make one new clause, not two.
  return parts.filter((p, i) => i === 0 || i === parts.length - 1 || p.tokens.length > 0);
}
