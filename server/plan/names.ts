/** Which names a plan declares, and what each use of a name means. */
import { nearest } from "../../grammar/near";
import type { Entry, Expression, JointSide, Name, Thing } from "../../grammar/tree";
import type { Loaded, PlanFile } from "./load";
import type { At } from "./value";

export type DeclaredKind =
  | "measure"
  | "stock"
  | "sheet"
  | "roll"
  | "fastener"
  | "finish"
  | "fill"
  | "part"
  | "assembly"
  | "ring"
  | "box";

export type Declaration = Extract<Entry, { kind: DeclaredKind }>;

export interface Declared {
  readonly name: string;
  readonly kind: DeclaredKind;
  readonly entry: Declaration;
  readonly role: PlanFile["role"];
  /** Where its name stands. */
  readonly at: At;
}

export interface Scope {
  readonly declared: ReadonlyMap<string, Declared>;
  /** Second declarations of a name, beside the first. */
  readonly twice: readonly { readonly first: Declared; readonly second: Declared }[];
  /** Names that a line likely declares which could not be read. */
  readonly broken: ReadonlySet<string>;
  /** A file that it names could not be read, so any name may be declared there. */
  readonly lost: boolean;
}

const KINDS = new Set<string>([
  "measure",
  "stock",
  "sheet",
  "roll",
  "fastener",
  "finish",
  "fill",
  "part",
  "assembly",
  "ring",
  "box",
]);
export const isDeclaration = (e: Entry): e is Declaration => KINDS.has(e.kind);

/** All names, the plan's own first, then what it brings, then the shop's. */
export function scopeOf(loaded: Loaded): Scope {
  const declared = new Map<string, Declared>();
  const twice: { first: Declared; second: Declared }[] = [];
  const broken = new Set<string>();
  for (const { file, role, tree } of loaded.files) {
    for (const entry of tree.entries) {
      if (entry.kind === "unknown" && entry.name) broken.add(entry.name.text);
      if (!isDeclaration(entry)) continue;
      const { name } = entry;
      const one: Declared = {
        name: name.text,
        kind: entry.kind,
        entry,
        role,
        at: { file, start: name.start, end: name.end },
      };
      const first = declared.get(one.name);
      if (first) twice.push({ first, second: one });
      else declared.set(one.name, one);
    }
  }
  return { declared, twice, broken, lost: loaded.faults.some((f) => f.kind !== "circle") };
}

/** Whether a name that nothing declares may still be right: its own line could not be read, or a file could not. */
export function mayBeDeclared(scope: Scope, name: string): boolean {
  const singles = [["", ""] as const, ...PLURALS]
    .filter(([ending]) => name.endsWith(ending))
    .map(([ending, single]) => name.slice(0, name.length - ending.length) + single);
  return scope.lost || singles.some((single) => scope.broken.has(single));
}

/** Endings of plurals, each with what stands in its place: legs, benches, shelves, knives, berries. */
const PLURALS: readonly (readonly [string, string])[] = [
  ["s", ""],
  ["es", ""],
  ["ves", "f"],
  ["ves", "fe"],
  ["ies", "y"],
];

/** What a name means: itself, or as a plural the group of all of that name. */
export function lookUp(scope: Scope, name: string): Declared | undefined {
  const exact = scope.declared.get(name);
  if (exact) return exact;
  for (const [ending, single] of PLURALS) {
    if (!name.endsWith(ending)) continue;
    const found = scope.declared.get(name.slice(0, -ending.length) + single);
    if (found) return found;
  }
  return undefined;
}

/** Declared names near a misspelt one, of the kinds that would fit there. */
export function nearNames(scope: Scope, name: string, kinds: readonly DeclaredKind[]): string[] {
  const fitting = [...scope.declared.values()].filter((d) => kinds.includes(d.kind)).map((d) => d.name);
  const near = nearest(name, fitting);
  if (near.length > 0 || !name.endsWith("s")) return near;
  // `leggs` is likely the plural of what is called `leg`.
  return nearest(name.slice(0, -1), fitting).map((n) => `${n}s`);
}

/** A use of a name: where it stands, and which kinds would fit. */
export interface Use {
  readonly name: Name;
  readonly kinds: readonly DeclaredKind[];
  /** Other words that are right here without being declared: floor, built-in fills, usual finishes, sections … */
  readonly also: "nothing" | "sections" | "fills" | "finishes" | "liners" | "floor" | "sizes" | "anything";
}

const PLACED: readonly DeclaredKind[] = ["part", "assembly", "ring", "box"];
const VALUED: readonly DeclaredKind[] = ["measure"];

/** Every use of a name in an entry, in the order written. Worked out once for each entry that was read. */
export function usesOf(entry: Entry): readonly Use[] {
  const known = USES.get(entry);
  if (known) return known;
  const found = findUses(entry);
  USES.set(entry, found);
  return found;
}

const USES = new WeakMap<Entry, readonly Use[]>();

function findUses(entry: Entry): Use[] {
  const uses: Use[] = [];
  const use = (name: Name, kinds: readonly DeclaredKind[], also: Use["also"] = "nothing") => {
    uses.push({ name, kinds, also });
  };
  const thing = (t: Thing, kinds: readonly DeclaredKind[] = PLACED, also: Use["also"] = "floor") =>
    use(t.name, kinds, also);
  const sides = (list: readonly JointSide[]) => {
    for (const s of list) thing(s.thing, PLACED, "nothing");
  };
  const expression = (e: Expression): void =>
    eachExpression(e, (part) => {
      if (part.kind === "name") use(part.name, VALUED);
      if (part.kind === "property")
        thing(part.of, [...PLACED, "stock", "sheet", "roll", "fastener"], "sections");
    });

  switch (entry.kind) {
    case "stock":
      break;
    case "part":
      use(entry.of, ["stock", "sheet"], "sections");
      break;
    case "ring":
      for (const m of entry.members) thing(m.thing, ["part"], "nothing");
      break;
    case "place":
      thing(entry.subject, PLACED, "nothing");
      break;
    case "fasten":
    case "glue":
      sides(entry.first);
      sides(entry.through);
      sides(entry.into);
      break;
    case "coat":
      for (const t of entry.things) thing(t, PLACED, "nothing");
      use(entry.with, ["finish"], "finishes");
      break;
    case "line":
      for (const t of entry.things) thing(t, ["box"], "nothing");
      use(entry.with, ["roll"], "liners");
      break;
    case "load":
      thing(entry.thing, PLACED, "nothing");
      break;
    case "accept":
      if (entry.on)
        thing(
          entry.on,
          [...PLACED, "measure", "stock", "sheet", "roll", "fastener", "finish", "fill"],
          "sections",
        );
      break;
    case "assembly":
      for (const inner of entry.body) uses.push(...usesOf(inner));
      break;
    default:
  }
  eachOwnExpression(entry, expression);
  for (const clause of entry.clauses) {
    if (clause.kind === "filled") use(clause.with, ["fill"], "fills");
    if (clause.kind === "walls" || clause.kind === "floor")
      for (const t of clause.things) thing(t, ["part"], "nothing");
    if (clause.kind === "carried") for (const t of clause.by) thing(t, PLACED, "nothing");
    if (clause.kind === "uses" || clause.kind === "coats")
      for (const t of clause.things) thing(t, PLACED, "nothing");
    if (clause.kind === "made of")
      for (const name of [clause.used, clause.planned]) use(name, ["stock", "sheet"], "sections");
    if (clause.kind === "lines") for (const t of clause.things) thing(t, ["box"], "nothing");
    if (clause.kind === "driven" && clause.fastener) use(clause.fastener, ["fastener"], "sizes");
    if ("target" in clause && clause.target) thing(clause.target);
    if (clause.kind === "mirrored") thing(clause.about);
    if (clause.kind === "between" || clause.kind === "spread") {
      thing(clause.first);
      thing(clause.second);
    }
  }
  return uses;
}

/** Calls `visit` for every expression that stands in an entry or its clauses, but not in an assembly's own lines. */
export function eachOwnExpression(node: object, visit: (e: Expression) => void): void {
  if (Array.isArray(node)) {
    for (const one of node) if (typeof one === "object") eachOwnExpression(one, visit);
    return;
  }
  for (const key in node) {
    const value = (node as Record<string, unknown>)[key];
    if (typeof value !== "object" || value === null || key === "body" || key === "name") continue;
    if (isExpression(value)) visit(value);
    else eachOwnExpression(value, visit);
  }
}

/** Calls `visit` for an expression and all inside it. */
export function eachExpression(e: Expression, visit: (e: Expression) => void): void {
  visit(e);
  if (e.kind === "sum") {
    eachExpression(e.left, visit);
    eachExpression(e.right, visit);
  } else if (e.kind === "negative") eachExpression(e.value, visit);
  else if (e.kind === "call") for (const arg of e.args) eachExpression(arg, visit);
  else if (e.kind === "round") {
    eachExpression(e.value, visit);
    eachExpression(e.step, visit);
  }
}

const EXPRESSIONS = new Set(["literal", "name", "negative", "sum", "call", "round", "property"]);
const isExpression = (value: object): value is Expression =>
  "kind" in value && typeof value.kind === "string" && EXPRESSIONS.has(value.kind) && !("clauses" in value);
