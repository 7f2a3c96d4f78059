/** Which rule reads the head of an entry: what stands on its first line before the first comma. */
import type { IToken } from "chevrotain";
import { rules } from "./clauses";
import { entryForm } from "./forms";
import type { Clause, Entry, Head, Name } from "./tree";

/** A head, with the clause that may stand in it (`load shelf 40 lb spread`). */
export type ReadHead = Head & { readonly lie?: Clause };

type HeadReader = (tokens: readonly IToken[]) => ReadHead | undefined;

const NOTHING: Name = { text: "", start: 0, end: 0 };
/** A name that is missing in a half-typed head, where it would be. */
export const missingAt = (at: number): Name => ({ ...NOTHING, start: at, end: at });

const named =
  (kind: "sheet" | "roll" | "fastener" | "finish" | "fill" | "box"): HeadReader =>
  () => ({ kind, name: rules.name() });
const titled =
  (kind: "plan" | "note" | "step" | "yard"): HeadReader =>
  () => ({ kind, title: rules.text() });
const path =
  (kind: "shop" | "bring" | "enclosed"): HeadReader =>
  () => ({ kind, path: rules.text() });
const extra = (tokens: readonly IToken[], body: object): Clause => {
  const last = tokens[tokens.length - 1]!;
  return { ...body, start: last.startOffset, end: last.startOffset + last.image.length } as Clause;
};

export const HEADS: Readonly<Record<string, HeadReader>> = {
  plan: titled("plan"),
  note: titled("note"),
  step: titled("step"),
  yard: titled("yard"),
  shop: path("shop"),
  bring: path("bring"),
  enclosed: path("enclosed"),
  measure: () => ({ kind: "measure", ...rules.measureHead() }),
  stock: () => ({ kind: "stock", ...rules.stockHead() }),
  sheet: named("sheet"),
  roll: named("roll"),
  fastener: named("fastener"),
  finish: named("finish"),
  fill: named("fill"),
  box: named("box"),
  tools: () => ({ kind: "tools" }),
  part: () => ({ kind: "part", ...rules.partHead() }),
  assembly: () => ({ kind: "assembly", name: rules.name(), body: [] }),
  ring: () => ({ kind: "ring", ...rules.ringHead() }),
  place: () => {
    const subject = rules.thing();
    return subject && { kind: "place", subject };
  },
  fasten: () => ({ kind: "fasten", ...rules.jointHead() }),
  glue: () => ({ kind: "glue", ...rules.jointHead() }),
  coat: () => ({ kind: "coat", ...rules.withHead() }),
  line: () => ({ kind: "line", ...rules.withHead() }),
  load: (tokens) => {
    const { thing, value, how } = rules.loadHead() ?? {};
    if (!thing || !value) return undefined;
    return { kind: "load", thing, value, ...(how && { lie: extra(tokens, { kind: "bears", how }) }) };
  },
  must: () => ({ kind: "must", ...rules.mustHead() }),
  accept: () => ({ kind: "accept", ...rules.acceptHead() }),
  built: () => ({ kind: "built", ...rules.builtHead() }),
};

/** Entries that are complete without a head, or whose head is not yet typed. */
export function emptyHead(kind: string, at: number): ReadHead | undefined {
  if (kind === "tools") return { kind: "tools" };
  if (kind === "plan" || kind === "note" || kind === "step" || kind === "yard")
    return { kind, title: missingAt(at) };
  return undefined;
}

/** How many lines before one are looked at for the line that it was meant to go on from. */
const MOST_BACK = 8;

/**
 * The first word of the entry before the next one. Lines that were themselves meant to go on from an entry, and were not
 * read, lead to that one. `before` is the first word of what stands before all of them.
 */
export function aboveOf(entries: readonly Entry[], before?: string): string | undefined {
  const words = [
    ...(before === undefined ? [] : [before]),
    ...entries.slice(-MOST_BACK).map((e) => e.keyword.text),
  ];
  const last = words[words.length - 1];
  const from = words.findLastIndex((word) => Object.hasOwn(HEADS, word));
  const clauses = entryForm(words[from] ?? "")?.clauses ?? [];
  const goOn = words.slice(from + 1).every((word) => clauses.some((f) => f.opens[0] === word));
  return goOn ? words[from] : last;
}
