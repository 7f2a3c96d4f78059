/**
 * How a word or a value is coloured: a type and modifiers of the protocol, of which the types are all standard ones, so
 * that every editor knows a colour for them. What is made (parts, rings, boxes), what is bought, and measures differ.
 */
import type { DeclaredKind } from "../plan";

/** In the order in which the protocol numbers them. */
export const TOKEN_TYPES = [
  "keyword",
  "string",
  "comment",
  "number",
  "operator",
  "variable",
  "class",
  "enum",
  "struct",
  "namespace",
  "enumMember",
  "property",
  "function",
  "modifier",
  "parameter",
  "event",
] as const;

/**
 * Likewise. Ours are `clause` and `relation`, which tell the words that open a clause and those inside one from the word
 * that opens an entry, and what a thing that is bought is.
 */
export const TOKEN_MODIFIERS = [
  "declaration",
  "defaultLibrary",
  "clause",
  "relation",
  "stock",
  "sheet",
  "roll",
  "fastener",
  "finish",
  "fill",
] as const;

export type TokenType = (typeof TOKEN_TYPES)[number];
export type TokenModifier = (typeof TOKEN_MODIFIERS)[number];

export interface Look {
  readonly type: TokenType;
  readonly modifiers: readonly TokenModifier[];
}

const look = (type: TokenType, ...modifiers: TokenModifier[]): Look => ({ type, modifiers });

/** Looks that do not depend on the plan. */
export const LOOKS = {
  entry: look("keyword"),
  clause: look("keyword", "clause"),
  relation: look("keyword", "relation"),
  words: look("string"),
  comment: look("comment"),
  number: look("number"),
  operator: look("operator"),
  property: look("property"),
  function: look("function", "defaultLibrary"),
  narrowing: look("modifier"),
  /** A word of the builder's own that names nothing in the plan: another tool, what else is on the floor. */
  label: look("parameter"),
  code: look("event"),
  /** A species, a crop, a coating. */
  usual: look("enumMember", "defaultLibrary"),
  floor: look("class", "defaultLibrary"),
} as const satisfies Readonly<Record<string, Look>>;

/** A name that is used, by what it is declared as. */
export const USED: Readonly<Record<DeclaredKind, Look>> = {
  measure: look("variable"),
  part: look("class"),
  ring: look("enum"),
  box: look("struct"),
  assembly: look("namespace"),
  stock: look("enumMember", "stock"),
  sheet: look("enumMember", "sheet"),
  roll: look("enumMember", "roll"),
  fastener: look("enumMember", "fastener"),
  finish: look("enumMember", "finish"),
  fill: look("enumMember", "fill"),
};

const withMore = (modifier: TokenModifier): typeof USED => {
  const more = (kind: DeclaredKind): Look => ({
    type: USED[kind].type,
    modifiers: [modifier, ...USED[kind].modifiers],
  });
  return {
    measure: more("measure"),
    part: more("part"),
    ring: more("ring"),
    box: more("box"),
    assembly: more("assembly"),
    stock: more("stock"),
    sheet: more("sheet"),
    roll: more("roll"),
    fastener: more("fastener"),
    finish: more("finish"),
    fill: more("fill"),
  };
};

/** A name where it is declared. */
export const DECLARED = withMore("declaration");
/** A name that every plan knows without declaring it. */
export const BUILT_IN = withMore("defaultLibrary");
