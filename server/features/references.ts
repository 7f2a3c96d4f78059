/** Where else something is named: in the plan's own file for an editor to mark, and in all of its files. */
import type { Span } from "../../grammar/tree";
import {
  type At,
  type Declared,
  holderOf,
  type Loaded,
  type Occurrence,
  occurrencesIn,
  type Scope,
} from "../plan";
import { standingAt } from "./at";
import type { Checked } from "./checked";
import { declaredBy } from "./definition";

/** A place where it is declared, or where it is used. */
export interface Mention {
  readonly at: At;
  readonly declares: boolean;
}

/** A plan with all its files, read but perhaps not worked out. */
export interface Root {
  readonly loaded: Loaded;
  readonly scope: Scope;
}

/** What was declared as the name at an offset; undefined where nothing was. */
export function declaredAt(plan: Checked, offset: number): Declared | undefined {
  return declaredBy(plan, standingAt(plan.worked.loaded.whole, offset));
}

/** The same thing in another plan: that which is declared in the same place. */
export const sameIn = ({ scope }: Root, { name, at }: Declared): Declared | undefined => {
  const found = scope.declared.get(name);
  return found && samePlace(found.at, at) ? found : undefined;
};

/** All places in a plan's files that name it, whether or not the plan declares it otherwise. */
export function mentionsIn(root: Root, target: Declared): Mention[] {
  const same = sameIn(root, target);
  if (!same) return [];
  return occurrencesIn(root.loaded, root.scope)
    .filter(({ declared }) => declared === same)
    .map(({ at, declares }) => ({ at, declares }));
}

/** Joints of a plan that name the size of a fastener instead of it. */
export function sizesMeant({ worked }: Checked, target: Declared): Mention[] {
  return worked.joints.flatMap(({ fastener, sizeAt }) =>
    fastener && sizeAt && samePlace(fastener.declared.at, target.at) ? [{ at: sizeAt, declares: false }] : [],
  );
}

/** What to mark in the plan's own file while the cursor is at an offset. A word that nothing declares is marked where it is used alike. */
export function highlightsAt(plan: Checked, offset: number): (Span & { readonly declares: boolean })[] {
  const { worked, file } = plan;
  const { whole } = worked.loaded;
  const standing = standingAt(whole, offset);
  // On `length of` the thing itself stands further on.
  const target = standing.spot.is === "property" ? undefined : declaredBy(plan, standing);
  const own = (list: readonly Mention[]) =>
    list.flatMap(({ at: { start, end, file: of }, declares }) =>
      holderOf(of) === file ? [{ start, end, declares }] : [],
    );
  if (target) {
    const sizes = sizesMeant(plan, target);
    const named = mentionsIn(worked, target).filter(({ at }) => !sizes.some((s) => samePlace(s.at, at)));
    return own([...named, ...sizes]).sort((a, b) => a.start - b.start);
  }
  if (standing.spot.is !== "use") return [];
  const { text } = standing.spot.span;
  return own(
    occurrencesIn(
      { ...worked.loaded, files: [{ file, role: "plan", tree: whole, begins: 0 }] },
      worked.scope,
    ).filter(usedAs(text)),
  );
}

const usedAs =
  (text: string) =>
  ({ text: other, declared }: Occurrence): boolean =>
    declared === undefined && other.replace("×", "x") === text.replace("×", "x");

const samePlace = (a: At, b: At): boolean => a.file === b.file && a.start === b.start;
