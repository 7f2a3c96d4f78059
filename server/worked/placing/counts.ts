/** How many pieces of a part the lines of a context put there, through assemblies and rings too. */
import { type Declared, known, type Value } from "../../plan";
import type { Context, Placement, Placing } from "./placing";

export class Counts {
  private readonly done = new Map<Context, Map<string, Value<number> | undefined>>();

  constructor(private readonly placing: Placing) {}

  /** Undefined for a part that no line of the context puts anywhere. Asks only for the lines that do. */
  of(part: Declared, context: Context): Value<number> | undefined {
    const done = this.done.get(context) ?? new Map<string, Value<number> | undefined>();
    this.done.set(context, done);
    if (done.has(part.name)) return done.get(part.name);
    let total: Value<number> | undefined;
    for (const line of context.placements) {
      const one = this.perCopy(part, line);
      if (one) total = sum(total, product(one, line, this.placing));
    }
    done.set(part.name, total);
    return total;
  }

  /** How many are in one copy of what a line places. */
  private perCopy(part: Declared, { subject }: Placement): Value<number> | undefined {
    if (subject.kind === "part") return subject.name === part.name ? known(1) : undefined;
    if (subject.kind === "assembly") return this.of(part, this.placing.assembly(subject));
    const members = this.placing.input.rings.get(subject.name) ?? [];
    const n = members.reduce((all, m) => (m.part === part.name ? all + m.count : all), 0);
    return n > 0 ? known(n) : undefined;
  }
}

const sum = (a: Value<number> | undefined, b: Value<number>): Value<number> =>
  !a ? b : a.state !== "known" ? a : b.state === "known" ? known(a.value + b.value) : b;

function product(n: Value<number>, line: Placement, placing: Placing): Value<number> {
  if (n.state !== "known") return n;
  const times = placing.countOf(line);
  return times.state === "known" ? known(n.value * times.value) : times;
}
