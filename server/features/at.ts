/**
 * What stands at an offset of a plan: the entry and clause there, and the name, value or word under the cursor. Looks at
 * the tree alone; every other feature starts here.
 */
import { clauseForm, type Form } from "../../grammar/forms";
import { endOf, tokenize } from "../../grammar/tokens";
import type { Clause, Comment, Entry, Expression, Literal, Name, Span, Text, Tree } from "../../grammar/tree";
import { isDeclaration, type Use, usesOf } from "../plan";

type Property = Extract<Expression, { kind: "property" }>;

/** The smallest thing of meaning at the offset. */
export type Spot =
  | { readonly is: "entry word"; readonly span: Name }
  | { readonly is: "declared"; readonly span: Name }
  | { readonly is: "use"; readonly span: Name; readonly use: Use }
  | { readonly is: "code"; readonly span: Name }
  | { readonly is: "path"; readonly span: Text }
  | { readonly is: "screw" | "literal"; readonly span: Literal }
  | { readonly is: "property"; readonly span: Name; readonly property: Property }
  | { readonly is: "function"; readonly span: Name }
  /** An operator, or what else joins values to one: the whole of what it joins. */
  | { readonly is: "expression"; readonly span: Span; readonly expression: Expression }
  | { readonly is: "opening"; readonly span: Span; readonly form: Form }
  /** A word that names nothing declared: a species, a crop, `front` before legs. */
  | { readonly is: "word"; readonly span: Name }
  | { readonly is: "words to people"; readonly span: Span }
  | { readonly is: "nothing" };

export interface Standing {
  /** The innermost entry: inside an assembly, the `place` or `fasten` line. */
  readonly entry: Entry | undefined;
  readonly assembly: Entry | undefined;
  readonly clause: Clause | undefined;
  readonly spot: Spot;
}

const NOWHERE: Standing = {
  entry: undefined,
  assembly: undefined,
  clause: undefined,
  spot: { is: "nothing" },
};

/** What stands at an offset; just behind a word counts as on it where nothing else begins there. */
export function standingAt(tree: Tree, offset: number): Standing {
  const on = look(tree, (s) => s.start <= offset && offset < s.end);
  if (on.spot.is !== "nothing" && !(on.spot.is === "expression" && /\s/.test(tree.text[offset] ?? "")))
    return on;
  const behind = look(tree, (s) => s.start < offset && offset <= s.end);
  return behind.spot.is === "nothing" || on.spot.is === behind.spot.is ? on : behind;
}

type Covers = (span: Span) => boolean;

function look(tree: Tree, covers: Covers): Standing {
  const comment = tree.comments.find((c: Comment) => covers(c));
  const outer = tree.entries.find((e) => covers(e));
  if (comment) return { ...NOWHERE, entry: outer, spot: { is: "words to people", span: comment } };
  if (!outer) return NOWHERE;
  const inner = outer.kind === "assembly" ? outer.body.find((e) => covers(e)) : undefined;
  const entry = inner ?? outer;
  const clause = entry.clauses.find((c) => covers(c));
  const spot = spotIn(tree, entry, clause, covers);
  return { entry, assembly: inner && outer, clause, spot };
}

function spotIn(tree: Tree, entry: Entry, clause: Clause | undefined, covers: Covers): Spot {
  const path = pathTo(entry, covers);
  const last = path[path.length - 1];
  if (!last) return { is: "nothing" };
  const parent = path[path.length - 2]?.node;
  if (isExpression(last.node)) return spotInExpression(tree, last.node, covers);
  if (isNamed(last.node)) return spotOfName(entry, last.key, last.node, parent);
  return clause ? openingOf(tree, entry, clause, covers) : { is: "nothing" };
}

interface Step {
  readonly key: string;
  readonly node: Span;
}

/** The chain of nodes with a place in the text that cover it, outermost first; without the entry itself. */
function pathTo(node: object, covers: Covers): Step[] {
  for (const [key, value] of Object.entries(node)) {
    for (const child of Array.isArray(value) ? value : [value]) {
      if (key === "body" || child === null || typeof child !== "object") continue;
      if (!isSpan(child)) {
        const below = pathTo(child, covers);
        if (below.length > 0) return below;
      } else if (covers(child)) {
        return [{ key, node: child }, ...pathTo(child, covers)];
      }
    }
  }
  return [];
}

const isSpan = (node: object): node is Span =>
  "start" in node && typeof node.start === "number" && "end" in node && typeof node.end === "number";
const isNamed = (node: object): node is Name =>
  "text" in node && typeof node.text === "string" && !("kind" in node);
const EXPRESSIONS = new Set(["literal", "name", "negative", "sum", "call", "round", "property"]);
const isExpression = (node: object): node is Expression =>
  "kind" in node && typeof node.kind === "string" && EXPRESSIONS.has(node.kind);

function spotInExpression(tree: Tree, e: Expression, covers: Covers): Spot {
  if (e.kind === "literal") return { is: e.form === "screw" ? "screw" : "literal", span: e };
  if (e.kind === "property") {
    const spot = propertySpot(e);
    return covers(spot.span) ? spot : { is: "nothing" };
  }
  if (e.kind === "round") {
    const word = { text: "round", start: e.start, end: e.start + "round".length };
    return covers(word) ? { is: "function", span: word } : joined(tree, e);
  }
  return e.kind === "name" ? { is: "nothing" } : joined(tree, e);
}

/** Values joined to one, with the parentheses around its first and its last. */
function joined({ text }: Tree, expression: Expression): Spot {
  let { start, end } = expression;
  let [open, closed] = [0, 0];
  for (const letter of text.slice(start, end))
    if (letter === "(") open++;
    else if (letter === ")" && open > 0) open--;
    else if (letter === ")") closed++;
  for (; closed > 0; closed--) start = Math.max(0, text.lastIndexOf("(", start - 1));
  for (; open > 0; open--) {
    const at = text.indexOf(")", end);
    if (at >= 0) end = at + 1;
  }
  return { is: "expression", span: { start, end }, expression };
}

/** `thickness of`, in front of the thing. */
const propertySpot = (e: Property) =>
  ({
    is: "property",
    span: { ...e.property, end: Math.max(e.property.end, e.of.start - 1) },
    property: e,
  }) as const;

const TO_PEOPLE = new Set(["title", "because", "by", "text"]);

function spotOfName(entry: Entry, key: string, name: Name, parent: Span | undefined): Spot {
  if (TO_PEOPLE.has(key)) return { is: "words to people", span: name };
  if (key === "path") return { is: "path", span: name };
  if (key === "keyword") return { is: "entry word", span: name };
  if (key === "code") return { is: "code", span: name };
  if (isDeclaration(entry) && entry.name === name) return { is: "declared", span: name };
  if (key === "property" && parent && isExpression(parent) && parent.kind === "property")
    return propertySpot(parent);
  const use = usesOf(entry).find((u) => u.name.start === name.start);
  if (use) return { is: "use", span: name, use };
  if (parent && isExpression(parent) && parent.kind === "call") return { is: "function", span: name };
  return { is: "word", span: name };
}

function openingOf(tree: Tree, entry: Entry, clause: Clause, covers: Covers): Spot {
  const { tokens } = tokenize(tree.text.slice(clause.start, clause.end));
  const form = clauseForm(entry.keyword.text, (i) => tokens[i]?.image);
  const last = form && tokens[form.opens.length - 1];
  if (!last) return { is: "nothing" };
  const span = { start: clause.start, end: clause.start + endOf(last) };
  return covers(span) ? { is: "opening", span, form } : { is: "nothing" };
}
