/** The weights that a plan says its things carry. */
import type { Entry, Thing } from "../../../grammar/tree";
import type { At, Loaded, Value } from "../../plan";
import { type Quantity, WEIGHT } from "../../units";
import type { Worker } from "../expressions";

/** How a weight stands: over all of it, on one place of its middle, or on the worst place there is. */
export type Bearing = "spread" | "middle" | "anywhere";

export interface SaidLoad {
  readonly at: At;
  readonly thing: Thing;
  readonly weight: Value<Quantity>;
  readonly how: Bearing;
}

type LoadEntry = Entry & { readonly kind: "load" };

/** The plan's own `load` lines, in order. A weight of less than nothing is a fault. Where nothing else is said it is spread. */
export function saidLoads(loaded: Loaded, worker: Worker): SaidLoad[] {
  const { file, tree } = loaded.files[0]!;
  return tree.entries
    .filter((e): e is LoadEntry => e.kind === "load")
    .map((entry) => {
      const value = worker.expect(entry.value, file, WEIGHT, "a weight, like 40 lb,");
      return {
        at: { file, start: entry.keyword.start, end: entry.value.end },
        thing: entry.thing,
        weight: worker.notNegative(value, entry.value, file, "the load"),
        how: bearingOf(entry),
      };
    });
}

/** How it stands may be said with the weight or after it. */
function bearingOf({ clauses }: LoadEntry): Bearing {
  const said = clauses.find((c) => c.kind === "bears");
  return said?.kind === "bears" ? said.how : "spread";
}
