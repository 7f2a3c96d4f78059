/**
 * What may stand next. A pattern describes the words of a head or clause; matching it against the words typed so far
 * collects what could follow them. Half-typed text is the normal case: nothing here ever fails.
 */
import type { EntryForm, Form } from "../../grammar/forms";
import { Day, Length, Literal, Numeral, ScrewSize, Section, Word } from "../../grammar/tokens";
import type { DeclaredKind } from "../plan";

/** A word as the lexer gives it. */
export interface Token {
  readonly image: string;
  readonly startOffset: number;
  readonly tokenType: { readonly CATEGORIES?: readonly unknown[] };
}

export type Unit =
  | "length"
  /** The inches behind feet. */
  | "inches"
  | "angle"
  | "weight"
  | "pressure"
  | "density"
  | "area"
  | "volume"
  | "time"
  | "count"
  | "share"
  | "money"
  | "any";

/** Names of tables, beside those that plans declare. */
export type Table = "sections" | "fills" | "finishes" | "liners" | "species" | "crops" | "codes";

export type Atom =
  /** Fixed words, one after the other. */
  | {
      readonly kind: "words";
      readonly words: readonly string[];
      readonly form?: Form;
      /** Of a word that opens a line inside another entry. */
      readonly entry?: EntryForm;
      readonly about?: "narrowing" | "property";
    }
  | {
      readonly kind: "name";
      readonly declared: readonly DeclaredKind[];
      readonly table?: Table;
      readonly plurals?: boolean;
      readonly unit?: Unit;
      /** What its clause is about, where that makes some names likelier than others. */
      readonly role?: "subject" | "target" | "first" | "into";
    }
  | { readonly kind: "value"; readonly unit: Unit }
  | { readonly kind: "screw" }
  /** A new name, or anything else that is not known beforehand. */
  | { readonly kind: "free" }
  | { readonly kind: "mark"; readonly image: string };

export type Pattern =
  | Atom
  | { readonly kind: "seq" | "alt"; readonly parts: readonly Pattern[] }
  | { readonly kind: "opt" | "some"; readonly part: Pattern; readonly between?: Pattern }
  | { readonly kind: "later"; readonly part: () => Pattern };

export const words = (
  text: string,
  more: Pick<Extract<Atom, { kind: "words" }>, "entry" | "about"> = {},
): Pattern => ({ kind: "words", words: text.split(" "), ...more });
export const either = (...texts: readonly string[]): Pattern => alt(...texts.map((t) => words(t)));
export const seq = (...parts: readonly Pattern[]): Pattern => ({ kind: "seq", parts });
export const alt = (...parts: readonly Pattern[]): Pattern => ({ kind: "alt", parts });
export const opt = (...parts: readonly Pattern[]): Pattern => ({ kind: "opt", part: seq(...parts) });
/** One or more, with `between` between them. */
export const some = (part: Pattern, between?: Pattern): Pattern => ({
  kind: "some",
  part,
  ...(between && { between }),
});
export const mark = (image: string): Pattern => ({ kind: "mark", image });
export const value = (unit: Unit): Pattern => ({ kind: "value", unit });
export const named = (
  declared: readonly DeclaredKind[],
  more: Omit<Extract<Atom, { kind: "name" }>, "kind" | "declared"> = {},
): Pattern => ({ kind: "name", declared, ...more });
export const free: Pattern = { kind: "free" };
export const screw: Pattern = { kind: "screw" };

/** What could come next; of fixed words, those that are still missing. */
export type Next = Exclude<Atom, { kind: "mark" | "free" }>;

/** What the pattern could go on with after these words. */
export function nextOf(pattern: Pattern, tokens: readonly Token[]): Next[] {
  const found: Next[] = [];
  new Matching(tokens, (next) => found.push(next)).match(pattern, 0);
  return found;
}

/** Whether the words are all that the pattern needs. */
export const isWhole = (pattern: Pattern, tokens: readonly Token[]): boolean =>
  new Matching(tokens, () => {}).match(pattern, 0).includes(tokens.length);

/** The words that an offer would add, as the lexer gives them. */
export function wordsOf(next: Next): Token[] {
  const tokenOf = (image: string, tokenType: Token["tokenType"]): Token => ({
    image,
    startOffset: 0,
    tokenType,
  });
  if (next.kind === "words") return next.words.map((w) => tokenOf(w, Word));
  if (next.kind === "name") return [tokenOf("name", Word)];
  const value = next.kind === "value" && next.unit === "count" ? Numeral : Length;
  return [tokenOf("", next.kind === "screw" ? ScrewSize : value)];
}

/** Words that join; a name is not likely to be one of them. */
// biome-ignore format: a list of words
const JOINING = new Set(["of", "and", "to", "into", "onto", "through", "with", "at", "from", "because", "per", "by", "in", "on"]);

class Matching {
  private readonly done = new Map<Pattern, Map<number, readonly number[]>>();

  constructor(
    private readonly tokens: readonly Token[],
    private readonly expect: (next: Next) => void,
  ) {}

  /** Where a match that begins at a token may end; tells what is expected where the words run out. */
  match(pattern: Pattern, at: number): readonly number[] {
    const before = this.done.get(pattern) ?? new Map<number, readonly number[]>();
    this.done.set(pattern, before);
    const known = before.get(at);
    if (known) return known;
    const ends = [...new Set(this.run(pattern, at))];
    before.set(at, ends);
    return ends;
  }

  private run(pattern: Pattern, at: number): number[] {
    switch (pattern.kind) {
      case "seq":
        return pattern.parts.reduce<number[]>(
          (starts, part) => [...new Set(starts.flatMap((s) => this.match(part, s)))],
          [at],
        );
      case "alt":
        return pattern.parts.flatMap((part) => this.match(part, at));
      case "opt":
        return [at, ...this.match(pattern.part, at)];
      case "some":
        return this.some(pattern.part, pattern.between, at);
      case "later":
        return [...this.match(pattern.part(), at)];
      default:
        return this.atom(pattern, at);
    }
  }

  private some(part: Pattern, between: Pattern | undefined, at: number): number[] {
    const ends = new Set<number>();
    let fresh = [...this.match(part, at)];
    while (fresh.length > 0) {
      for (const end of fresh) ends.add(end);
      const starts = between ? fresh.flatMap((e) => this.match(between, e)) : fresh;
      fresh = starts.flatMap((s) => this.match(part, s)).filter((e) => !ends.has(e));
    }
    return [...ends];
  }

  private atom(atom: Atom, at: number): number[] {
    if (atom.kind === "words") return this.words(atom, at);
    const token = this.tokens[at];
    if (!token) {
      if (atom.kind !== "mark" && atom.kind !== "free") this.expect(atom);
      return [];
    }
    return fits(atom, token) ? [at + 1] : [];
  }

  private words(atom: Extract<Atom, { kind: "words" }>, at: number): number[] {
    for (const [i, word] of atom.words.entries()) {
      const token = this.tokens[at + i];
      if (!token) {
        this.expect(i === 0 ? atom : { ...atom, words: atom.words.slice(i) });
        return [];
      }
      if (token.image !== word) return [];
    }
    return [at + atom.words.length];
  }
}

function fits(atom: Exclude<Atom, { kind: "words" }>, token: Token): boolean {
  const { tokenType, image } = token;
  const is = (category: unknown) =>
    tokenType === category || (tokenType.CATEGORIES?.includes(category) ?? false);
  if (atom.kind === "mark") return image === atom.image || (atom.image === "x" && image === "×");
  if (atom.kind === "value" && atom.unit === "count") return tokenType === Numeral;
  if (atom.kind === "value") return is(Literal) && tokenType !== Section && tokenType !== ScrewSize;
  if (atom.kind === "screw") return tokenType === ScrewSize;
  if (atom.kind === "free" && tokenType === Day) return true;
  return tokenType === Section || (is(Word) && !JOINING.has(image));
}
