/** The look of every name and value word of an entry, by where it begins: names by what is declared, not by where they stand. */
import type { Clause, Entry, Expression, Name, Span } from "../../grammar/tree";
import { checkOf } from "../checks";
import { type DeclaredKind, isDeclaration, type Use, usesOf } from "../plan";
import { fillNames, finishNames, linerNames, plantUse, section, species } from "../trade";
import { FUNCTIONS, type Worked } from "../worked";
import { BUILT_IN, DECLARED, LOOKS, type Look, USED } from "./token-looks";
import { declaredAs } from "./values";

/** A stretch of text that is a name; it has no look where nothing declares it. */
export interface Named extends Span {
  readonly look: Look | undefined;
}

/** Finds out what the names of one plan look like. */
export class Names {
  private readonly known = new Map<string, Look | undefined>();
  /** What lines declare that could not be read to their end: while one is typed, its name keeps its colour. */
  private readonly halfTyped = new Map<string, DeclaredKind>();

  constructor(
    private readonly worked: Worked,
    entries: readonly Entry[],
  ) {
    for (const entry of entries) {
      const typed = halfTyped(entry);
      if (typed) this.halfTyped.set(typed.name.text, typed.kind);
    }
  }

  /** The names of entries and of their clauses by their starts. */
  in(entries: readonly Entry[]): ReadonlyMap<number, Named> {
    const found = new Map<number, Named>();
    const put = (name: Span, look: Look | undefined) => {
      if (!found.has(name.start)) found.set(name.start, { start: name.start, end: name.end, look });
    };
    for (const entry of entries) this.putAll(entry, put);
    return found;
  }

  private putAll(entry: Entry, put: Put): void {
    if (isDeclaration(entry)) put(entry.name, DECLARED[entry.kind]);
    const typed = halfTyped(entry);
    if (typed) put(typed.name, DECLARED[typed.kind]);
    if (entry.kind === "stock" && entry.of) put(entry.of, this.materialLook(entry.of.text));
    if (entry.kind === "accept") put(entry.code, checkOf(entry.code.text) && LOOKS.code);
    for (const use of usesOf(entry)) put(use.name, this.ofUse(use));
    putInner(entry, put);
  }

  /** What a name means that stands where a line could not be read. */
  ofName(text: string): Look | undefined {
    if (!this.known.has(text)) this.known.set(text, this.find(text));
    return this.known.get(text);
  }

  private find(text: string): Look | undefined {
    const declared = declaredAs(this.worked, text);
    if (declared) return USED[declared.kind];
    const kind = this.halfTyped.get(text) ?? this.halfTyped.get(text.replace(/s$/, ""));
    return kind && USED[kind];
  }

  private ofUse({ name: { text }, also }: Use): Look | undefined {
    const declared = this.ofName(text);
    if (declared) return declared;
    switch (also) {
      case "sections":
        return this.sectionLook(text);
      case "fills":
        return fillNames().includes(text) ? BUILT_IN.fill : undefined;
      case "finishes":
        return finishNames().includes(text) ? BUILT_IN.finish : undefined;
      case "liners":
        return linerNames().includes(text) ? BUILT_IN.roll : undefined;
      case "floor":
        return text === "floor" ? LOOKS.floor : undefined;
      default:
        return undefined;
    }
  }

  private materialLook(text: string): Look | undefined {
    return this.ofName(text) ?? this.sectionLook(text);
  }

  private sectionLook(text: string): Look | undefined {
    return section(text.replace("×", "x"), this.worked.settings.lumber) && BUILT_IN.stock;
  }
}

/** What a line declares by its first word, though its head could not be read. */
function halfTyped(entry: Entry): { readonly name: Name; readonly kind: DeclaredKind } | undefined {
  if (entry.kind !== "unknown" || !entry.name || !Object.hasOwn(DECLARED, entry.keyword.text))
    return undefined;
  return { name: entry.name, kind: entry.keyword.text as DeclaredKind };
}

type Put = (name: Span, look: Look | undefined) => void;

/** What stands in an entry and its clauses beside names of things. */
function putInner(node: object, put: Put): void {
  if (Array.isArray(node)) {
    for (const one of node) if (typeof one === "object") putInner(one, put);
    return;
  }
  if ("where" in node && Array.isArray(node.where)) {
    for (const word of node.where as readonly Name[]) put(word, LOOKS.narrowing);
    return;
  }
  if ("kind" in node) putOf(node as Expression | Clause, put);
  for (const key in node) {
    const value = (node as Record<string, unknown>)[key];
    if (typeof value === "object" && value !== null && !WITHOUT_MORE.has(key)) putInner(value, put);
  }
}

const WITHOUT_MORE: ReadonlySet<string> = new Set(["keyword", "name", "title", "because", "by", "path"]);

/** The words of one clause or expression that are neither names of things nor words of the language. */
function putOf(node: Expression | Clause, put: Put): void {
  switch (node.kind) {
    case "property":
      put(node.property, LOOKS.property);
      break;
    case "call":
      put(node.name, FUNCTIONS.includes(node.name.text) ? LOOKS.function : undefined);
      break;
    case "round":
      put({ start: node.start, end: node.start + "round".length }, LOOKS.function);
      break;
    case "species":
      put(node.name, species(node.name.text) && LOOKS.usual);
      break;
    case "coating":
      put(node.word, COATINGS.has(node.word.text) ? LOOKS.usual : undefined);
      break;
    case "fits":
      for (const word of node.what) put(word, FASTENED_BY.has(word.text) ? LOOKS.clause : undefined);
      break;
    case "grows":
      for (const crop of node.what) put(crop, plantUse(crop.text) && LOOKS.usual);
      break;
    case "of which":
      put(node.what, LOOKS.label);
      break;
    case "has":
      for (const tool of node.names) put(tool, LOOKS.label);
      break;
    case "glue with":
      put(node.name, LOOKS.label);
      break;
    case "price":
    case "covers":
      put(node.per, LOOKS.relation);
      break;
    default:
  }
}

const COATINGS: ReadonlySet<string> = new Set(["stainless", "galvanized", "coated", "plain"]);
const FASTENED_BY: ReadonlySet<string> = new Set(["screw", "nail", "bolt"]);
