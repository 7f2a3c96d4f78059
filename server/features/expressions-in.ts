/** The values that stand in a plan's text: where each begins and ends, what it is for, and whether two texts say the same. */
import { parse } from "../../grammar/parser";
import type { Entry, Expression, Literal, Span, Tree } from "../../grammar/tree";
import { exactOf, readLiteral } from "../units";

/** A value as it stands in an entry. */
export interface Standing {
  readonly entry: Entry;
  readonly expression: Expression;
  /** What it stands in, from the entry's clause inward; other values too. */
  readonly within: readonly object[];
  /** What it is for, alike for all that are: `part length value`. */
  readonly role: string;
  /** Whether it is itself one side of a sum, or has a minus before it. */
  readonly inSum: boolean;
}

/** Every value of an entry and what is inside it, in the order of the text. */
export function valuesIn(entry: Entry): Standing[] {
  const found: Standing[] = [];
  const visit = (node: object, within: readonly object[], role: string, inSum: boolean): void => {
    if (isExpression(node)) found.push({ entry, expression: node, within, role, inSum });
    const sums =
      isExpression(node) && (node.kind === "sum" || node.kind === "negative" || node.kind === "round");
    for (const [key, value] of Object.entries(node)) {
      for (const child of Array.isArray(value) ? value : [value]) {
        if (typeof child !== "object" || child === null || key === "body") continue;
        const kind = "kind" in child && !isExpression(child) ? ` ${String(child.kind)}` : "";
        const inner = isExpression(node) || key === "clauses" ? role : `${role} ${key}`;
        visit(child, [...within, node], `${inner}${kind}`, sums);
      }
    }
  };
  visit(entry, [], entry.kind, false);
  return found.sort((a, b) => a.expression.start - b.expression.start);
}

/** Every entry, those inside of assemblies too. */
export const entriesOf = (tree: Tree): Entry[] =>
  tree.entries.flatMap((e) => (e.kind === "assembly" ? [e, ...e.body] : [e]));

const KINDS = new Set(["literal", "name", "negative", "sum", "call", "round", "property"]);
export const isExpression = (node: object): node is Expression =>
  "kind" in node &&
  typeof node.kind === "string" &&
  KINDS.has(node.kind) &&
  "start" in node &&
  !("clauses" in node);

/** Where a value stands, with the parentheses that belong to it: a sum's own place leaves out those round its ends. */
export function wholeOf(text: string, { start, end }: Span): Span {
  let open = 0;
  let missing = 0;
  for (const mark of text.slice(start, end)) {
    if (mark === "(") open++;
    if (mark === ")" && open-- === 0) {
      open = 0;
      missing++;
    }
  }
  let [from, to] = [start, end];
  for (; missing > 0 && text.slice(0, from).trimEnd().endsWith("("); missing--) {
    from = text.slice(0, from).trimEnd().length - 1;
  }
  for (; open > 0 && /^\s*\)/.test(text.slice(to)); open--) to = text.indexOf(")", to) + 1;
  return { start: from, end: to };
}

/** The same with a pair of parentheses right round it, which then do nothing; undefined where there is none. */
export function inParentheses(text: string, { start, end }: Span): Span | undefined {
  const before = text.slice(0, start).trimEnd();
  // Behind a word they belong to a function.
  if (!before.endsWith("(") || /[\w-]$/.test(before.slice(0, -1)) || !/^\s*\)/.test(text.slice(end)))
    return undefined;
  return { start: before.length - 1, end: text.indexOf(")", end) + 1 };
}

/** What takes the place of what, when two texts are compared. */
export interface Reading {
  /** Values that stand for a measure's name. */
  readonly values?: ReadonlyMap<string, Expression>;
  /** Entries that are passed over. */
  readonly without?: (entry: Entry) => boolean;
  /** How lengths are compared: as written (unsaid), by what they measure, or not at all. */
  readonly lengths?: "measured" | "any";
}

/** All that a text says, without where it stands: two texts that say the same give the same. */
export function saidBy(tree: Tree, reading: Reading = {}): string {
  const { values, without, lengths } = reading;
  const plain = (node: unknown): unknown => {
    if (typeof node !== "object" || node === null) return node;
    if (Array.isArray(node)) return node.map(plain);
    if (isExpression(node)) {
      if (node.kind === "name") {
        const value = values?.get(node.name.text);
        if (value) return plain(value);
      }
      if (node.kind === "literal") return literalSaid(node, lengths);
    }
    return Object.fromEntries(
      Object.entries(node)
        .filter(([key]) => key !== "start" && key !== "end")
        .map(([key, value]) => [key, plain(value)]),
    );
  };
  const entries = tree.entries.filter((e) => !without?.(e));
  return JSON.stringify([entries.map(plain), tree.complaints.map((c) => [c.code, c.says])]);
}

function literalSaid({ form, text }: Literal, lengths: Reading["lengths"]): unknown {
  if (form === "length" && lengths === "any") return form;
  const value = form === "length" && lengths ? readLiteral(text) : undefined;
  if (!value) return [form, text];
  const { n, d } = exactOf(value);
  return [form, `${n}/${d}`];
}

/** Whether another text says the same as a tree, each read in its own way. */
export const saysSame = (tree: Tree, was: Reading, text: string, is: Reading): boolean =>
  saidBy(tree, was) === saidBy(parse(text), is);
