/** Named measurements with their bounds. */
import type { Comparison, Expression } from "../../grammar/tree";
import { type At, type Declared, ifKnown, type Value } from "../plan";
import { order, type Quantity } from "../units";
import type { Worker } from "./expressions";
import { Reader } from "./settings";

export interface Bound {
  readonly comparison: Comparison;
  readonly value: Quantity;
  readonly at: At;
  readonly kept: boolean;
}

export interface Measure {
  readonly name: string;
  readonly declared: Declared;
  readonly value: Value<Quantity>;
  readonly bounds: readonly Bound[];
}

/** Where a measure's own value and its bound stand. */
function sidesOf({ entry, at }: Declared, bound: { readonly value: Expression }): readonly [At, At] {
  const value = entry.kind === "measure" ? (entry.value ?? entry.name) : entry.name;
  return [
    { file: at.file, start: value.start, end: value.end },
    { file: at.file, start: bound.value.start, end: bound.value.end },
  ];
}

export function measuresOf(declared: readonly Declared[], worker: Worker): Map<string, Measure> {
  return new Map(
    declared.map((d) => {
      const value = worker.measureValue(d, d.at);
      const read = new Reader(worker, d.at.file, d.entry.clauses);
      for (const way of ["at least", "at most"] as const)
        read.once(
          way,
          read.all("bound").filter((b) => b.comparison === way),
        );
      const bounds = read.all("bound").flatMap((clause): Bound[] => {
        const limit = ifKnown(worker.evaluate(clause.value, d.at.file));
        if (!limit) return [];
        const at = read.at(clause);
        const is = ifKnown(value);
        const o = is ? order(is, limit) : 0;
        if (is && o === "kinds")
          worker.fault({
            kind: "kinds",
            at,
            doing: "compare",
            left: is,
            right: limit,
            sides: sidesOf(d, clause),
            comparison: clause.comparison,
          });
        const kept = typeof o !== "number" || (clause.comparison === "at least" ? o >= 0 : o <= 0);
        return [{ comparison: clause.comparison, value: limit, at, kept }];
      });
      return [d.name, { name: d.name, declared: d, value, bounds }] as const;
    }),
  );
}
