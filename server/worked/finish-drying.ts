/** How long a finish dries between coats, and how many coats it wants: by its own line, else by its row in the trade's table. Minutes. */
import type { Clause, Entry, Thing } from "../../grammar/tree";
import { ifKnown, type Loaded, lookUp, type Scope } from "../plan";
import { cite, finish } from "../trade";
import { isNumber, sameDimension, TIME } from "../units";
import { chosen } from "./choose";
import type { Worker } from "./expressions";
import { partsOf } from "./groups";
import type { Space } from "./space";

/** A `coat` line: what it finishes, with what, how often, and how long each coat dries. */
export interface CoatLine {
  readonly entry: Entry & { readonly kind: "coat" | "line" };
  readonly finish: string;
  /** Places among all pieces. */
  readonly pieces: ReadonlySet<number>;
  /** Names of its parts, placed or not. */
  readonly parts: ReadonlySet<string>;
  readonly coats: number;
  /** Undefined where neither its line nor the table says. */
  readonly dries: { readonly minutes: number; readonly source: string } | undefined;
}

/** The coat lines of a plan, in their order. */
export function coatLines({ files }: Loaded, scope: Scope, worker: Worker, space: Space): CoatLine[] {
  const main = files[0]!;
  return main.tree.entries.flatMap((entry): CoatLine[] => {
    if (entry.kind !== "coat") return [];
    const declared = lookUp(scope, entry.with.text);
    const said = declared?.entry.kind === "finish" ? declared : undefined;
    const own = coatsIn(entry.clauses, main.file, worker);
    const usual = said && coatsIn(said.entry.clauses, said.at.file, worker);
    return [
      {
        entry,
        finish: entry.with.text,
        pieces: new Set(entry.things.flatMap((t) => chosen(t, space, scope))),
        parts: new Set(entry.things.flatMap((t) => partNames(t, scope))),
        coats: own ?? usual ?? 1,
        dries: said && dryingOf(said.name, said.entry.clauses, said.at.file, worker),
      },
    ];
  });
}

/** The parts a thing is made of, by name. */
export function partNames(thing: Thing, scope: Scope): string[] {
  const declared = lookUp(scope, thing.name.text);
  return declared ? partsOf(declared, scope) : [];
}

function coatsIn(clauses: readonly Clause[], file: string, worker: Worker): number | undefined {
  const clause = clauses.find((c) => c.kind === "coats of");
  const said = clause && ifKnown(worker.evaluate(clause.value, file));
  return said && isNumber(said.dim) && Number.isInteger(said.approx) && said.approx > 0
    ? Math.min(said.approx, MOST_COATS)
    : undefined;
}

const MOST_COATS = 100;

function dryingOf(name: string, clauses: readonly Clause[], file: string, worker: Worker): CoatLine["dries"] {
  const clause = clauses.find((c) => c.kind === "dries");
  const said = clause && ifKnown(worker.evaluate(clause.value, file));
  if (said && sameDimension(said.dim, TIME)) return { minutes: said.approx, source: `the line of ${name}` };
  const row = clause ? undefined : finish(name)?.recoat;
  return row && { minutes: row.value.low * 60, source: cite(row.source) };
}
