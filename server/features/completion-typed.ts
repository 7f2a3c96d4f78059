/** Which entry and clause the text before the cursor stands in, and what of them is said: read from the words alone, however half-typed. */
import { clauseForm, entryForm } from "../../grammar/forms";
import { breaksBetween, Close, Comma, endOf, Open, type tokenize } from "../../grammar/tokens";
import type { Token } from "./completion-patterns";

export type Lexed = ReturnType<typeof tokenize>["tokens"];

export interface Typed {
  readonly entry: string;
  /** Where the entry begins, from where the text does; inside an assembly, the inner line. */
  readonly at: number;
  /** The words of the clause at the cursor, or of the head. */
  readonly current: readonly Token[];
  /** The head's words, without the one that opens the entry. */
  readonly head: readonly Token[];
  readonly inHead: boolean;
  /** The opening of the clause just before, and of all others. */
  readonly previous: string;
  readonly said: ReadonlySet<string>;
  /** The words of the clauses before, one list for each. */
  readonly clauses: readonly (readonly Token[])[];
  /** At the start of a line inside an assembly. */
  readonly opensInner: boolean;
}

/** What the tokens before `end` come to; undefined where they open no entry. */
export function readTyped(before: string, tokens: Lexed, end: number): Typed | undefined {
  const [first, ...rest] = tokens;
  if (!first || !entryForm(first.image)) return undefined;
  const parts = partsOf(before, first, rest, end);
  if (first.image === "assembly" && parts.length > 1) return insideAssembly(parts, first.startOffset);
  const inHead = parts.length === 1 && !parts[0]!.opensLine && first.image !== "tools";
  return typedIn({
    entry: first.image,
    at: first.startOffset,
    head: parts[0]!.tokens,
    others: parts.slice(1, -1),
    current: parts[parts.length - 1]!.tokens,
    inHead,
    opensInner: false,
  });
}

/** The tokens before an offset. */
export const upTo = (tokens: Lexed, offset: number): Lexed => tokens.filter((t) => t.startOffset < offset);

interface Read extends Pick<Typed, "entry" | "at" | "current" | "head" | "inHead" | "opensInner"> {
  readonly others: readonly Part[];
}

function typedIn({ others, ...read }: Read): Typed {
  const openings = others.map((p) => openingOf(read.entry, p.tokens));
  const said = new Set(openings);
  // `place leg upright, …`: how it lies was said in the head.
  if (read.entry === "place" && !read.inHead) {
    const images = read.head.map((t) => t.image).join(" ");
    const lie = LIES.find((l) => images.endsWith(` ${l}`));
    if (lie) said.add(lie);
  }
  // A list goes on over commas, and what goes on opens with a number.
  const previous = openings.findLast((o) => o !== "") ?? "";
  return { ...read, previous, said, clauses: others.map((p) => p.tokens) };
}

const LIES = ["upright", "across", "front to back", "flat", "on edge"];

interface Part {
  readonly tokens: Lexed;
  readonly opensLine: boolean;
}

const INNER = new Set(["place", "fasten", "glue"]);

function insideAssembly(parts: readonly Part[], at: number): Typed | undefined {
  const last = parts[parts.length - 1]!;
  const opens = (p: Part) => p.opensLine && INNER.has(p.tokens[0]?.image ?? "");
  const from = parts.findLastIndex(opens);
  const atStart = last.opensLine && last.tokens.length === 0;
  if (from < 0) {
    const nothing = { at, current: [], head: [], others: [], inHead: false };
    return atStart ? typedIn({ ...nothing, entry: "assembly", opensInner: true }) : undefined;
  }
  const [keyword, ...head] = parts[from]!.tokens;
  const read = { entry: keyword!.image, at: keyword!.startOffset, head };
  if (from === parts.length - 1)
    return typedIn({ ...read, current: head, others: [], inHead: true, opensInner: false });
  const others = parts.slice(from + 1, -1);
  return typedIn({ ...read, current: last.tokens, others, inHead: false, opensInner: atStart });
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
