/**
 * The colours of a plan's text: tokens in order, none over another, none across lines, by what every word means in this
 * plan. A word that means nothing here, such as a name that no line declares, has none.
 */
import { piecesOf } from "../../grammar/chunks";
import { clauseForm, entryForm } from "../../grammar/forms";
import type { Entry, Span } from "../../grammar/tree";
import type { Checked } from "./checked";
import { type Lexeme, lexed } from "./lexed";
import { LOOKS, type Look } from "./token-looks";
import { type Named, Names } from "./token-names";

export { TOKEN_MODIFIERS, TOKEN_TYPES } from "./token-looks";

export interface Token extends Look, Span {}

/** All tokens of the plan's own text, or those that lie at least in part in a stretch of it. */
export function tokensOf({ worked }: Checked, within?: Span): Token[] {
  const tree = worked.loaded.whole;
  // Of a text that is no plan at all, nothing was read.
  if (tree.entries.length === 0 && tree.comments.length === 0) return [];
  const { text, entries } = tree;
  const names = new Names(worked, entries);
  const found: Token[] = [];
  const starts = piecesOf(text);
  let next = 0;
  for (const [i, start] of starts.entries()) {
    const end = starts[i + 1] ?? text.length;
    const from = next;
    while (next < entries.length && entries[next]!.start < end) next++;
    if (within && (end <= within.start || start >= within.end)) continue;
    colourPiece(text.slice(start, end), start, entries.slice(from, next), names, found);
  }
  return within ? found.filter((t) => t.end > within.start && t.start < within.end) : found;
}

/** The tokens of one piece of the text, which is read by itself, as the plan was. */
function colourPiece(own: string, at: number, entries: readonly Entry[], names: Names, found: Token[]): void {
  const words = lexed(own);
  const parts = entries.flatMap(partsOf);
  const named = names.in(entries);
  let [part, opensUntil] = [-1, 0];
  let held: Named | undefined;
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    const start = at + word.start;
    while (part + 1 < parts.length && parts[part + 1]!.start <= start) {
      const { form } = parts[++part]!;
      opensUntil = i + (form ? (clauseForm(form, (k) => words[i + k]?.image)?.opens.length ?? 0) : 0);
    }
    const here = parts[part];
    held = named.get(start) ?? (held && start < held.end ? held : undefined);
    let look: Look | undefined;
    if (held) look = held.look;
    else if (here?.keyword === start) look = entryForm(word.image) && LOOKS.entry;
    else if (BY_SORT[word.sort]) look = BY_SORT[word.sort];
    else if (word.sort === "none") look = undefined;
    else if (i < opensUntil) look = LOOKS.clause;
    // What is no name in a line that was read is a word of the language.
    else if (here?.read && start < here.end) look = LOOKS.relation;
    else look = names.ofName(word.image) ?? (word.sort === "keyword" ? LOOKS.relation : undefined);
    if (look)
      found.push({ start, end: start + word.image.length, type: look.type, modifiers: look.modifiers });
  }
}

/** What looks the same wherever it stands. */
const BY_SORT: Readonly<Partial<Record<Lexeme["sort"], Look>>> = {
  comment: LOOKS.comment,
  number: LOOKS.number,
  sign: LOOKS.operator,
  because: LOOKS.entry,
  "words to people": LOOKS.words,
};

/** A head or a clause. */
interface Part extends Span {
  /** Where the word stands that opens the entry; nowhere in a clause. */
  readonly keyword?: number;
  /** The first word of its entry, where a clause may open with words of its own. */
  readonly form?: string;
  readonly read: boolean;
}

/** The heads and clauses of an entry in order; after an assembly's head, those of its own lines. */
function partsOf(entry: Entry): Part[] {
  const { keyword, clauses, start } = entry;
  const read = entry.kind !== "unknown";
  if (entry.kind === "assembly") {
    const head = { start, end: entry.name.end, keyword: keyword.start, read };
    return [head, ...entry.body.flatMap(partsOf)];
  }
  const end = clauses[0]?.start ?? entry.end;
  return [
    { start, end, keyword: keyword.start, read },
    ...clauses.map((c) => ({ start: c.start, end: c.end, form: keyword.text, read: c.kind !== "broken" })),
  ];
}
