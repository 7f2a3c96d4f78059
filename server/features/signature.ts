/** What the entry under the cursor may say, while it is typed: its head and clauses, or the values that a function takes. */
import { clauseForm, type EntryForm, entryForm, type Form } from "../../grammar/forms";
import { lineStart } from "../../grammar/lines";
import { breaksBetween, Close, Comma, endOf, Open, tokenize, Words } from "../../grammar/tokens";
import type { Language } from "../checks";
import type { Checked } from "./checked";
import { entryStart, LONGEST_ENTRY } from "./completion";
import { stillOpen } from "./completion-forms";
import type { Token } from "./completion-patterns";
import { type Lexed, readTyped, type Typed } from "./completion-typed";
import { formText, functionForm, functionText } from "./form-words";
import { paragraphs, planBlock } from "./markdown";
import { CLAUSES, HEADS, isPart, type Written } from "./signature-forms";
import { SIGNATURE_WORDS } from "./signature-words";

export interface Signature {
  readonly label: string;
  /** Markdown. */
  readonly documentation: string;
  /** Stretches of the label. */
  readonly parameters: readonly Parameter[];
}

export interface Parameter {
  readonly start: number;
  readonly end: number;
  readonly documentation: string;
}

export interface Signatures {
  readonly signatures: readonly Signature[];
  readonly active: number;
  /** The one being typed; undefined at the start of a clause, where all may be meant. */
  readonly parameter: number | undefined;
}

/** The forms of what is typed at an offset of the plan's own file; undefined on an empty line, in comments and in words to people. */
export function signatureAt(
  { text }: Checked,
  offset: number,
  language: Language = "en",
): Signatures | undefined {
  if (offset <= 0 || offset > text.length) return undefined;
  const line = lineStart(text, offset);
  if (/^[\s\uFEFF]*$/.test(text.slice(line, offset))) return undefined;
  const start = entryStart(text, line);
  if (start === undefined || offset - start > LONGEST_ENTRY) return undefined;
  const before = text.slice(start, offset);
  const { tokens, comments } = tokenize(before);
  const last = tokens[tokens.length - 1];
  const end = offset - start;
  const said = comments[comments.length - 1];
  if (!last || (said && endOf(said) === end)) return undefined;
  if (last.tokenType === Words && !breaksBetween(before, endOf(last), end)) return undefined;
  const call = callAt(tokens);
  if (call) return ofFunction(call, language);
  const typed = readTyped(before, tokens, end);
  if (!typed || typed.opensInner || (endOf(last) - last.image.length === typed.at && endOf(last) === end))
    return undefined;
  return ofEntry(typed, before, language);
}

interface Call {
  readonly name: string;
  readonly argument: number;
}

/** The function whose values are being typed: the innermost that is still open. */
function callAt(tokens: Lexed): Call | undefined {
  const open: { name: string; argument: number }[] = [];
  tokens.forEach((token, i) => {
    if (token.tokenType === Open) open.push({ name: tokens[i - 1]?.image ?? "", argument: 0 });
    else if (token.tokenType === Close) open.pop();
    else if (token.tokenType === Comma && open.length > 0) open[open.length - 1]!.argument++;
  });
  const inner = open.findLast(({ name }) => functionForm(name) !== undefined && name !== "round");
  if (inner) return inner;
  const comma = tokens.findLastIndex((t) => t.tokenType === Comma);
  const round = tokens.findLastIndex((t, i) => t.image === "round" && i > comma);
  if (round < 1) return undefined;
  const to = tokens.findIndex((t, i) => i > round && t.image === "to");
  // Behind the step it rounds to, the clause goes on.
  if (to >= 0 && tokens.length > to + 2) return undefined;
  return { name: "round", argument: to < 0 ? 0 : 1 };
}

function ofFunction({ name, argument }: Call, language: Language): Signatures | undefined {
  const form = functionForm(name)?.form;
  if (!form) return undefined;
  const inside = name === "round" ? /(?<=round )a|1\/16"/g : /(?<=[(,] ?)[a-z]+(?=[,)])/g;
  const label = name === "min" || name === "max" ? `${form.slice(0, -1)}, …)` : form;
  const documentation = functionText(name, language) ?? "";
  const parameters = [...form.matchAll(inside)].map((m) => ({
    start: m.index,
    end: m.index + m[0].length,
    documentation: "",
  }));
  const parameter = Math.min(argument, parameters.length - 1);
  return { signatures: [{ label, documentation, parameters }], active: 0, parameter };
}

/** Clauses that are told beside the one being typed. */
const MOST_CLAUSES = 8;

function ofEntry(typed: Typed, before: string, language: Language): Signatures | undefined {
  const entry = entryForm(typed.entry);
  if (!entry) return undefined;
  const written = HEADS[entry.word] ?? [{ text: "" }];
  const here = typed.inHead ? undefined : clauseOf(entry, typed);
  const forms: readonly Written[] = here
    ? (CLAUSES[entry.word]?.[here.opens.join(" ")] ?? [{ text: "" }])
    : [{ text: "" }];
  const from = typed.current[0]?.startOffset ?? before.length;
  const text = before.slice(from).trimEnd();
  const active = Math.max(
    0,
    forms.findLastIndex(({ when }) => when?.test(text)),
  );
  // The word that is still typed leads no further.
  const whole = /\s$/.test(before) ? typed.current : typed.current.slice(0, -1);
  const built = forms.map((form) =>
    build(entry, written[0]!, here && { clause: here, form }, typed, language),
  );
  const headed = built[active]!;
  return {
    signatures: built.map((b) => b.signature),
    active,
    parameter: typed.inHead ? headPart(written[0]!.text, whole, headed.head) : headed.active,
  };
}

/** The clause being typed: of one that opens with a number, only once that is there or nothing else can be meant. */
function clauseOf(entry: EntryForm, { current }: Typed): Form | undefined {
  const numbered = entry.clauses.find((c) => c.opens.length === 0);
  if (current.length === 0) return entry.word === "fasten" ? numbered : undefined;
  const found = clauseForm(entry.word, (i) => current[i]?.image);
  return found ?? (/^[\d#(½¼¾]/.test(current[0]!.image) ? numbered : undefined);
}

interface Built {
  readonly signature: Signature;
  /** How many parameters are of the head. */
  readonly head: number;
  readonly active: number | undefined;
}

function build(
  entry: EntryForm,
  head: Written,
  here: { readonly clause: Form; readonly form: Written } | undefined,
  typed: Typed,
  language: Language,
): Built {
  const parameters: Parameter[] = [];
  let label = entry.word;
  const add = (text: string, documentation: string): void => {
    parameters.push({ start: label.length, end: label.length + text.length, documentation });
    label += text;
  };
  const sentence = paragraphs(formText(entry, language), planBlock(entry.example));
  for (const piece of head.text.split(/(\{[^}]+\})/).filter((p) => p !== "")) {
    if (label === entry.word) label += " ";
    if (piece.startsWith("{")) add(wordsFor(piece.slice(1, -1), language), "");
    else label += piece;
  }
  const heads = parameters.length;
  let active: number | undefined;
  const open = entry.clauses.filter(
    (c) => c !== here?.clause && stillOpen(entry.word, c.opens.join(" "), typed.said),
  );
  const documented = (c: Form) => paragraphs(formText(c, language), planBlock(c.example));
  if (here) {
    label += entry.word === "tools" && heads === 0 ? " " : ", ";
    active = parameters.length;
    const rest = here.form.text.replace(/\{([^}]+)\}/g, (_, part: string) => wordsFor(part, language));
    add([...here.clause.opens, rest].filter(Boolean).join(" "), documented(here.clause));
  }
  for (const clause of open.slice(0, MOST_CLAUSES)) {
    label += entry.word === "tools" && parameters.length === 0 ? " " : ", ";
    add(clause.opens.length > 0 ? clause.opens.join(" ") : clause.example, documented(clause));
  }
  if (open.length > MOST_CLAUSES) label += ", …";
  return { signature: { label, documentation: sentence, parameters }, head: heads, active };
}

function wordsFor(part: string, language: Language): string {
  const words = SIGNATURE_WORDS[language];
  return isPart(part, words) ? words[part] : part;
}

/** Which place of the head the cursor stands in: the words before it lead from one place to the next. */
function headPart(text: string, done: readonly Token[], parts: number): number | undefined {
  if (parts === 0) return undefined;
  const pieces = text.split(/\s+(?![^{]*\})/);
  const isPlace = (i: number): boolean => pieces[i]?.startsWith("{") ?? false;
  let at = 0;
  for (const { image } of done) {
    const fixed = pieces.findIndex((p, i) => i >= at && p === image);
    if (fixed >= 0) at = fixed + 1;
    else if (isPlace(at) && isPlace(at + 1)) at++;
  }
  return Math.max(0, pieces.slice(0, at + 1).filter((_, i) => isPlace(i)).length - 1);
}
