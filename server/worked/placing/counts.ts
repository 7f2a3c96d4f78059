/** How many pieces of a part the lines of a context put there, through assemblies and rings too. */
import { type Declared, known, type Value } from "../../plan";
import type { Context, Placement, Placing } from "./placing";

export class Counts {
  private readonly done = new Map<Context, Map<string, Value<number> | undefined>>();
  private readonly lines = new Map<Context, Map<string, Placement[]>>();

  constructor(private readonly placing: Placing) {}

  /** Undefined for a part that no line of the context puts anywhere. Asks only for the lines that do. */
  of(part: Declared, context: Context): Value<number> | undefined {
    const done = this.done.get(context) ?? new Map<string, Value<number> | undefined>();
    this.done.set(context, done);
    if (done.has(part.name)) return done.get(part.name);
    let total: Value<number> | undefined;
    for (const line of this.linesFor(part, context)) {
      const one = this.perCopy(part, line);
      if (one) total = sum(total, product(one, line, this.placing));
    }
    done.set(part.name, total);
    return total;
  }

  /** The lines that place the part itself, and those that may hold it inside. */
  private linesFor(part: Declared, context: Context): readonly Placement[] {
    const lines = this.lines.get(context) ?? new Map<string, Placement[]>();
    if (lines.size === 0)
      for (const p of context.placements) {
        const key = p.subject.kind === "part" ? p.subject.name : "";
        const same = lines.get(key);
        if (same) same.push(p);
        else lines.set(key, [p]);
      }
    this.lines.set(context, lines);
    return [...(lines.get(part.name) ?? []), ...(lines.get("") ?? [])];
  }

  /** How many pieces a line puts there, of all parts together. */
  all(line: Placement): Value<number> {
    const { input } = this.placing;
    const parts = [...input.scope.declared.values()].filter((d) => d.kind === "part");
    const each = parts.map((d) => this.perCopy(d, line)).filter((n) => n !== undefined);
    return product(
      each.reduce((a, b) => sum(a, b), known(0)),
      line,
      this.placing,
    );
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
