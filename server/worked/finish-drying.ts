/** The coat lines of a plan as its steps need them: on which pieces, how often, and how long each coat dries. */
import type { Entry, Thing } from "../../grammar/tree";
import { ifKnown, lookUp, MISTAKE, type Scope } from "../plan";
import type { CoatWork } from "./coating";
import type { Finish } from "./finishes";
import { partsOf } from "./groups";
import type { Space } from "./space";

/** A `coat` line: what it finishes, with what, how often, and how long each coat dries. */
export interface CoatLine {
  readonly entry: Entry & { readonly kind: "coat" };
  readonly finish: string;
  /** Places among all pieces. */
  readonly pieces: ReadonlySet<number>;
  /** Names of its parts, placed or not. */
  readonly parts: ReadonlySet<string>;
  readonly coats: number;
  readonly dries: Finish["dries"];
}

/** The coat lines of a plan, in their order. */
export function coatLines(coats: readonly CoatWork[], space: Space, scope: Scope): CoatLine[] {
  const places = new Map(space.pieces.map(({ id }, i) => [id, i]));
  return coats.map((coat) => ({
    entry: coat.entry,
    finish: coat.entry.with.text,
    pieces: new Set(coat.pieces.flatMap((id) => places.get(id) ?? [])),
    parts: new Set(coat.entry.things.flatMap((t) => partNames(t, scope))),
    // A step waits for the coats that are said; those taken for granted only say how much to buy.
    coats: coat.coatsFrom === "assumed" ? 1 : (ifKnown(coat.coats) ?? 1),
    dries: coat.finish?.dries ?? MISTAKE,
  }));
}

/** The parts a thing is made of, by name. */
export function partNames(thing: Thing, scope: Scope): string[] {
  const declared = lookUp(scope, thing.name.text);
  return declared ? partsOf(declared, scope) : [];
}
