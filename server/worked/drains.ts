/** Holes that boxes drain by, as their lines say. */
import { chain, known, MISTAKE, unknown, type Value } from "../plan";
import { LENGTH, type Quantity, sameDimension } from "../units";
import type { Box } from "./boxes";
import type { Worked } from "./work";

/** A box that drains by bored holes. */
export interface Drains {
  readonly box: Box;
  readonly count: Value<number>;
  readonly size: Value<Quantity>;
}

export function drainsOf({ boxes, evaluate }: Worked): Drains[] {
  return boxes.flatMap((box): Drains[] => {
    const clause = box.declared.entry.clauses.find((c) => c.kind === "drains");
    if (clause?.kind !== "drains" || clause.how !== "holes") return [];
    const { file } = box.declared.at;
    const count = clause.count ? evaluate(clause.count, file) : unknown("unsaid", "unsaid how many");
    const bore = clause.size ? evaluate(clause.size, file) : unknown("unsaid", "unsaid how wide");
    return [
      {
        box,
        count: chain(count, (n) =>
          Number.isSafeInteger(n.approx) && n.approx > 0 ? known(n.approx) : MISTAKE,
        ),
        size: chain(bore, (s) => (sameDimension(s.dim, LENGTH) && s.approx > 0 ? known(s) : MISTAKE)),
      },
    ];
  });
}
