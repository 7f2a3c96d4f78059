/** Every place where something declared is named, in all files of a plan. */
import type { Entry, Name } from "../../grammar/tree";
import type { Loaded, PlanFile } from "./load";
import { type Declared, isDeclaration, lookUp, type Scope, usesOf } from "./names";
import type { At } from "./value";

/** A place where a name stands, and what it means there; undefined for a use of what nothing declares. */
export interface Occurrence {
  readonly at: At;
  /** As it stands there: the name, or a plural of it. */
  readonly text: string;
  readonly declared: Declared | undefined;
  /** It is the declaration itself, the first one or one that should not be. */
  readonly declares: boolean;
}

/** All names in all files of a plan, in the order written, the plan's own file first. */
export function occurrencesIn({ files }: Loaded, scope: Scope): Occurrence[] {
  return files.flatMap((file) => file.tree.entries.flatMap((entry) => inEntry(entry, file, scope)));
}

function inEntry(entry: Entry, { file }: PlanFile, scope: Scope): Occurrence[] {
  const at = ({ start, end }: Name): At => ({ file, start, end });
  const uses = usesOf(entry)
    .filter(({ name }) => name.text !== "")
    .map(({ name }) => ({
      at: at(name),
      text: name.text,
      declared: declaredAs(scope, name.text),
      declares: false,
    }));
  if (!isDeclaration(entry) || entry.name.text === "") return uses;
  const { name } = entry;
  const own = { at: at(name), text: name.text, declared: scope.declared.get(name.text), declares: true };
  return [own, ...uses].sort((a, b) => a.at.start - b.at.start);
}

/** What a name means, sections under their plain spelling. */
export const declaredAs = (scope: Scope, name: string): Declared | undefined =>
  lookUp(scope, name.replace("×", "x"));

/** The plural that people write: legs, benches, shelves, knives, berries. */
export function pluralOf(name: string): string {
  if (/[^aeiou]y$/.test(name)) return `${name.slice(0, -1)}ies`;
  if (/(?:s|x|z|ch|sh)$/.test(name)) return `${name}es`;
  if (/(?:l|ea|oa)f$/.test(name)) return `${name.slice(0, -1)}ves`;
  if (/ife$/.test(name)) return `${name.slice(0, -2)}ves`;
  return `${name}s`;
}
