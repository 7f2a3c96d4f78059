/**
 * What `built` entries tell of the thing as it stands: nothing of the plan is worked out from it. Each value that came out
 * stands beside the one planned, so that the sheet can show both.
 */
import type { Clause, Entry, Name } from "../../grammar/tree";
import {
  type At,
  type Declared,
  ifKnown,
  type Loaded,
  lookUp,
  type Scope,
  usesOf,
  type Value,
} from "../plan";
import { nearestSections, section } from "../trade";
import { nameOf, type Quantity } from "../units";
import type { Worker } from "./expressions";
import type { Part } from "./parts";
import { lumberOf } from "./settings";

/** A measure, or the length of a part, as it came out. */
export interface CameOut {
  readonly at: At;
  readonly of: "measure" | "length";
  readonly name: string;
  readonly planned: Value<Quantity>;
  readonly found: Value<Quantity>;
  /** As it was typed. */
  readonly typed: string;
  readonly because: string;
}

/** A board or a sheet in the place of another. */
export interface MadeOf {
  readonly at: At;
  readonly used: string;
  readonly planned: string;
  readonly because: string;
}

export interface Wear {
  /** Where its day stands. */
  readonly at: At;
  readonly date: string;
  readonly words: string;
}

export interface AsBuilt {
  readonly entry: BuiltEntry;
  readonly at: At;
  readonly date: string;
  readonly by: string;
  readonly cameOut: readonly CameOut[];
  readonly madeOf: readonly MadeOf[];
  readonly changed: readonly string[];
  readonly wear: readonly Wear[];
  readonly unclear: readonly Unclear[];
}

export type BuiltEntry = Entry & { readonly kind: "built" };

/** What a line says that does not fit the plan. */
export interface Unclear {
  readonly at: At;
  readonly why: "no length" | "not measured" | "not used" | "same";
  readonly name: string;
}

interface Asked {
  readonly loaded: Loaded;
  readonly scope: Scope;
  readonly worker: Worker;
  readonly parts: ReadonlyMap<string, Part>;
}

/** Those of the plan's own file, in the order written. */
export function builtOf(asked: Asked): AsBuilt[] {
  const { file, tree } = asked.loaded.files[0]!;
  return tree.entries.flatMap((entry) => (entry.kind === "built" ? [oneOf(entry, file, asked)] : []));
}

function oneOf(entry: BuiltEntry, file: string, asked: Asked): AsBuilt {
  const unclear: Unclear[] = [];
  const at = ({ start, end }: { start: number; end: number }): At => ({ file, start, end });
  const first = new Map<string, At>();
  /** Whether it was said before of the same thing; the first counts. */
  const again = (clause: Clause, what: string): boolean => {
    const before = first.get(what);
    if (before) asked.worker.fault({ kind: "said-twice", at: at(clause), what, first: before });
    else first.set(what, at(clause));
    return before !== undefined;
  };
  const cameOut: CameOut[] = [];
  const madeOf: MadeOf[] = [];
  for (const clause of entry.clauses) {
    if (clause.kind === "came out") {
      const { what, value, because } = clause;
      const found = measuredThing(clause, asked);
      if (!found) continue;
      if ("why" in found) {
        unclear.push({ ...found, at: at(what) });
        continue;
      }
      const { of, name, planned } = found;
      if (again(clause, of === "length" ? `measured length of ${name}` : `measured ${name}`)) continue;
      const is = ifKnown(planned);
      const out = is && asked.worker.expect(value, file, is.dim, nameOf(is.dim));
      cameOut.push({
        at: at(clause),
        of,
        name,
        planned,
        found: out ?? asked.worker.evaluate(value, file),
        typed: value.text,
        because: because?.text ?? "",
      });
    }
    if (clause.kind === "made of") {
      const [used, planned] = [plain(clause.used), plain(clause.planned)];
      checkSection(clause.used, at(clause.used), asked);
      if (again(clause, `used … instead of ${planned}`)) continue;
      if (used === planned) unclear.push({ why: "same", name: used, at: at(clause) });
      else if (!isUsed(planned, asked))
        unclear.push({ why: "not used", name: planned, at: at(clause.planned) });
      madeOf.push({ at: at(clause), used, planned, because: clause.because?.text ?? "" });
    }
  }
  return {
    entry,
    at: at(entry.keyword),
    date: entry.date.text,
    by: entry.by?.text ?? "",
    cameOut,
    madeOf,
    changed: entry.clauses.flatMap((c) => (c.kind === "changed" ? [c.text.text] : [])),
    wear: entry.clauses.flatMap((c) =>
      c.kind === "wear" ? [{ at: at(c.date), date: c.date.text, words: c.text.text }] : [],
    ),
    unclear,
  };
}

const plain = ({ text }: Name): string => text.replace("×", "x");

/** What is measured, and what the plan says of it; undefined where its name is told as a mistake elsewhere. */
function measuredThing(
  { what }: Clause & { readonly kind: "came out" },
  { scope, worker, parts }: Asked,
): Pick<CameOut, "of" | "name" | "planned"> | Pick<Unclear, "why" | "name"> | undefined {
  if (what.kind === "name") {
    const declared = scope.declared.get(what.name.text);
    if (declared?.kind !== "measure") return undefined;
    return { of: "measure", name: declared.name, planned: worker.measureValue(declared, declared.at) };
  }
  if (what.kind !== "property") return undefined;
  const { property, of } = what;
  const declared = lookUp(scope, of.name.text);
  const said = `${property.text} of ${[...of.where, of.name].map(({ text }) => text).join(" ")}`;
  if (property.text !== "length" || of.where.length > 0) return { why: "not measured", name: said };
  if (!declared) return undefined;
  if (declared.kind !== "part") return { why: "not measured", name: said };
  const part = parts.get(declared.name);
  if (!part || !saysLength(declared)) return { why: "no length", name: declared.name };
  return { of: "length", name: declared.name, planned: part.length };
}

const saysLength = ({ entry }: Declared): boolean => entry.clauses.some(({ kind }) => kind === "length");

function checkSection(name: Name, at: At, { loaded, scope, worker }: Asked): void {
  const text = plain(name);
  const lumber = lumberOf(loaded);
  if (!/^\d/.test(text) || lookUp(scope, text) || section(text, lumber)) return;
  worker.fault({ kind: "unknown-section", at, name: text, near: nearestSections(text, lumber, 3) });
}

/** Whether anything but what was built names it. */
const isUsed = (name: string, { loaded }: Asked): boolean =>
  loaded.files.some(({ tree }) =>
    tree.entries.some(
      (entry) => entry.kind !== "built" && usesOf(entry).some((use) => plain(use.name) === name),
    ),
  );
