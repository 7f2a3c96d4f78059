/**
 * Working expressions out: values with dimensions, exact while only + − × ÷ are asked for. Names are worked out when
 * first needed, so the order of lines does not matter; a circle is a fault told along its path.
 */

import { nearest } from "../../grammar/near";
import type { Expression, Literal, Name, Thing } from "../../grammar/tree";
import {
  type At,
  type Declared,
  known,
  MISTAKE,
  mayBeDeclared,
  nearNames,
  type Scope,
  say,
  type Told,
  type Value,
} from "../plan";
import {
  ANGLE,
  count,
  type Dimension,
  diagonal,
  fraction,
  isNumber,
  LENGTH,
  minus,
  NUMBER,
  negated,
  type Outcome,
  order,
  over,
  plainly,
  plus,
  type Quantity,
  readLiteral,
  refused,
  rounded,
  sameDimension,
  times,
  trigonometric,
} from "../units";
import type { Fault } from "./fault";

/** Finds a property of a named thing: `thickness of 2x4`. Undefined when the thing has no such property. */
export type PropertyFinder = (thing: Thing, property: string, at: At) => Value<Quantity> | undefined;

/** One run over one plan: the scope, the faults found, and what was already worked out. */
export class Worker {
  readonly faults: Fault[] = [];
  /** By what is worked out, then by the thing it is worked out of. */
  private readonly done = new Map<string, Map<string, Value<unknown>>>();
  private readonly underWay: { what: string; of: string; name: Told; at: At }[] = [];

  constructor(
    readonly scope: Scope,
    private readonly find: PropertyFinder,
  ) {}

  /** Keeps a fault, unless it follows from another: a name whose own line could not be read. */
  fault(fault: Fault): Value<never> {
    const follows =
      (fault.kind === "unknown-name" && !fault.fixed && mayBeDeclared(this.scope, fault.name)) ||
      (fault.kind === "unknown-section" && this.scope.lost);
    if (!follows) this.faults.push(fault);
    return MISTAKE;
  }

  /**
   * Works `run` out once for that thing: the `length` of `leg`. `name` and `at` tell where it stands, should it lead round
   * to itself.
   */
  once<T>(what: string, of: string, name: Told, at: At, run: () => Value<T>): Value<T> {
    const done = this.done.get(what) ?? new Map<string, Value<unknown>>();
    if (done.size === 0) this.done.set(what, done);
    const before = done.get(of);
    // One thing's property is only ever asked for by one function, with one kind of value.
    if (before) return before as Value<T>;
    const from = this.underWay.findIndex((u) => u.of === of && u.what === what);
    if (from >= 0) {
      const path = [...this.underWay.slice(from).map((u) => ({ name: u.name, at: u.at })), { name, at }];
      return this.fault({ kind: "circle", at, path });
    }
    if (this.underWay.length > DEEPEST)
      return this.fault({ kind: "impossible", at, why: "too long a chain", what: name });
    this.underWay.push({ what, of, name, at });
    const value = run();
    this.underWay.pop();
    done.set(of, value);
    return value;
  }

  /** The value of an expression that stands in `file`. */
  evaluate(e: Expression, file: string): Value<Quantity> {
    switch (e.kind) {
      case "literal":
        return this.literal(e, file);
      case "name":
        return this.measure(e.name, file);
      case "negative":
        return mapped(this.evaluate(e.value, file), negated);
      case "sum":
        return this.sum(e, file);
      case "call":
        return this.call(e, file);
      case "round":
        return this.both(e.value, e.step, file, (a, b) =>
          this.outcome(rounded(a, b), e, file, "round", a, b),
        );
      case "property":
        return this.property(e, file);
    }
  }

  /** An expression that must be of one kind; `what` names it in the complaint: "a length". */
  expect(e: Expression, file: string, wanted: Dimension, what: Told): Value<Quantity> {
    const value = this.evaluate(e, file);
    if (value.state !== "known" || sameDimension(value.value.dim, wanted)) return value;
    const zero = isNumber(value.value.dim) && value.value.approx === 0;
    if (zero) return known({ ...value.value, dim: wanted });
    const at = { file, start: e.start, end: e.end };
    const meant = mixedNumber(e);
    return this.fault({
      kind: "wanted",
      at,
      what,
      wanted,
      found: value.value,
      text: e.kind === "literal" ? e.text : "",
      ...(meant && sameDimension(wanted, LENGTH) && { meant }),
    });
  }

  /** A length more than nothing. */
  positiveLength(e: Expression, file: string, what: Told): Value<Quantity> {
    return this.positive(this.expect(e, file, LENGTH, what), e, file, what);
  }

  /** A whole number from 1 to `most`. */
  wholeNumber(e: Expression, file: string, what: Told, most: number): Value<number> {
    const value = this.expect(e, file, NUMBER, what);
    if (value.state !== "known") return value;
    const at = { file, start: e.start, end: e.end };
    const n = value.value.approx;
    if (n > most) return this.fault({ kind: "too-many", at, what, found: n, limit: most });
    if (!Number.isInteger(n) || n < 1) {
      return this.fault({ kind: "impossible", at, why: "whole number", what, found: value.value });
    }
    return known(n);
  }

  /** An angle from 0 to just under 90° off square. */
  angle(e: Expression, file: string): Value<Quantity> {
    const value = this.expect(e, file, ANGLE, "an angle");
    if (value.state !== "known") return value;
    const at = { file, start: e.start, end: e.end };
    return value.value.approx < 0 || value.value.approx >= 90
      ? this.fault({ kind: "impossible", at, why: "angle", what: "an angle", found: value.value })
      : value;
  }

  /** The same value if it is not less than nothing; else a fault at its expression. */
  notNegative(value: Value<Quantity>, e: Expression, file: string, what: Told): Value<Quantity> {
    return value.state === "known" && value.value.approx === 0 ? value : this.positive(value, e, file, what);
  }

  /** The same value if it is more than nothing; else a fault at its expression. */
  positive(value: Value<Quantity>, e: Expression, file: string, what: Told): Value<Quantity> {
    if (value.state !== "known" || value.value.approx > 0) return value;
    const at = { file, start: e.start, end: e.end };
    const why = value.value.approx === 0 ? "nothing" : "less than nothing";
    return this.fault({ kind: "impossible", at, why, what, found: value.value });
  }

  private literal(e: Literal, file: string): Value<Quantity> {
    const value = e.form === "section" || e.form === "screw" ? undefined : readLiteral(e.text);
    if (value) return known(value);
    const at = { file, start: e.start, end: e.end };
    return this.fault({
      kind: "impossible",
      at,
      why: "not a number",
      what: plainly(e.text),
    });
  }

  private measure(name: Name, file: string): Value<Quantity> {
    const at = { file, start: name.start, end: name.end };
    const declared = this.scope.declared.get(name.text);
    if (!declared) {
      const near = nearNames(this.scope, name.text, ["measure"]);
      return this.fault({ kind: "unknown-name", at, name: name.text, near, wants: "a measure" });
    }
    if (declared.entry.kind !== "measure") {
      return this.fault({
        kind: "wrong-kind",
        at,
        name: name.text,
        found: declared.kind,
        wants: "a measure",
      });
    }
    return this.measureValue(declared, at);
  }

  /** What a declared measure is worth; `at` is the use that asks. */
  measureValue(declared: Declared, at: At): Value<Quantity> {
    const { entry } = declared;
    if (entry.kind !== "measure") return MISTAKE;
    return this.once("measure", declared.name, declared.name, at, () => {
      if (entry.value) return this.evaluate(entry.value, declared.at.file);
      return this.fault({ kind: "missing-measure", at: declared.at, name: declared.name });
    });
  }

  private property(e: Extract<Expression, { kind: "property" }>, file: string): Value<Quantity> {
    const at = { file, start: e.property.start, end: e.property.end };
    const found = this.find(e.of, e.property.text, { file, start: e.of.start, end: e.of.end });
    if (found) return found;
    const near = nearest(e.property.text, PROPERTIES);
    return this.fault({
      kind: "unknown-name",
      at,
      name: e.property.text,
      near,
      wants: say("something of", { name: e.of.name.text }),
      fixed: true,
    });
  }

  private sum(e: Extract<Expression, { kind: "sum" }>, file: string): Value<Quantity> {
    return this.both(e.left, e.right, file, (a, b) => {
      if (e.operator === "+") return this.outcome(plus(a, b), e, file, "add", a, b);
      if (e.operator === "-") return this.outcome(minus(a, b), e, file, "subtract", a, b);
      if (e.operator === "*") return this.outcome(times(a, b), e, file, "multiply", a, b);
      return this.outcome(over(a, b), e, file, "divide", a, b);
    });
  }

  private call(e: Extract<Expression, { kind: "call" }>, file: string): Value<Quantity> {
    const at = { file, start: e.name.start, end: e.name.end };
    const name = e.name.text;
    if (!FUNCTIONS.includes(name)) {
      return this.fault({
        kind: "unknown-name",
        at,
        name,
        near: nearest(name, FUNCTIONS),
        wants: "a function",
        fixed: true,
      });
    }
    const wanted = name === "diagonal" ? 2 : name === "min" || name === "max" ? 0 : 1;
    if (wanted > 0 && e.args.length !== wanted) {
      const found = count(e.args.length);
      const most = count(wanted);
      return this.fault({
        kind: "impossible",
        at: { ...at, end: e.end },
        why: "too few values",
        what: name,
        found,
        most,
      });
    }
    const args: Quantity[] = [];
    for (const arg of e.args) {
      const value = this.evaluate(arg, file);
      if (value.state !== "known") return value;
      args.push(value.value);
    }
    const [first, second] = args;
    if (name === "diagonal")
      return this.outcome(diagonal(first!, second!), e, file, "put together", first!, second!);
    if (name === "min" || name === "max") return this.least(args, name === "min" ? -1 : 1, e, file);
    if (name === "floor" || name === "ceiling") return this.whole(first!, name, e, file);
    return this.outcome(trigonometric(name, first!), e, file, "put together", first!, first!);
  }

  private least(args: readonly Quantity[], sign: 1 | -1, e: Expression, file: string): Value<Quantity> {
    let best = args[0]!;
    for (const arg of args.slice(1)) {
      const o = order(arg, best);
      if (o === "kinds") return this.outcome("kinds", e, file, "compare", best, arg);
      if (o * sign > 0) best = arg;
    }
    return known(best);
  }

  private whole(q: Quantity, name: string, e: Expression, file: string): Value<Quantity> {
    if (!isNumber(q.dim)) return this.outcome("kinds", e, file, "round", q, count(1));
    const exact = q.exact
      ? Number(name === "floor" ? fraction.floor(q.exact) : -fraction.floor(fraction.negate(q.exact)))
      : undefined;
    return known(
      count(exact ?? (name === "floor" ? Math.floor(q.approx + 1e-9) : Math.ceil(q.approx - 1e-9))),
    );
  }

  private both(
    left: Expression,
    right: Expression,
    file: string,
    f: (a: Quantity, b: Quantity) => Value<Quantity>,
  ): Value<Quantity> {
    const a = this.evaluate(left, file);
    const b = this.evaluate(right, file);
    if (a.state !== "known") return a;
    return b.state === "known" ? f(a.value, b.value) : b;
  }

  private outcome(
    o: Outcome,
    e: Expression,
    file: string,
    doing: Extract<Fault, { kind: "kinds" }>["doing"],
    left: Quantity,
    right: Quantity,
  ): Value<Quantity> {
    const at = { file, start: e.start, end: e.end };
    if (!refused(o)) {
      // Fractions that grow without end are let go as doubles, so that long chains stay quick.
      const long = o.exact && (o.exact.n > HUGE || o.exact.n < -HUGE || o.exact.d > HUGE);
      return Math.abs(o.approx) > 1e30
        ? this.fault({ kind: "impossible", at, why: "too large", what: "the number" })
        : known(long ? { ...o, exact: null } : o);
    }
    if (o === "zero") return this.fault({ kind: "impossible", at, why: "by zero", what: "" });
    if (o === "range") return this.fault({ kind: "impossible", at, why: "no value", what: "" });
    const meant = mixedNumber(e);
    const place = (side: Expression): At => ({ file, start: side.start, end: side.end });
    const sides = e.kind === "sum" ? ([place(e.left), place(e.right)] as const) : undefined;
    return this.fault({
      kind: "kinds",
      at,
      doing,
      left,
      right,
      ...(sides && { sides }),
      ...(meant && { meant }),
    });
  }
}

const DEEPEST = 500;
const HUGE = 10n ** 60n;
export const FUNCTIONS = [
  "min",
  "max",
  "diagonal",
  "sin",
  "cos",
  "tan",
  "asin",
  "acos",
  "atan",
  "floor",
  "ceiling",
];
export const PROPERTIES = [
  "length",
  "width",
  "thickness",
  "count",
  "overall width",
  "overall depth",
  "overall height",
  "inside width",
  "inside depth",
  "inside height",
  "top",
  "bottom",
  "left",
  "right",
  "front",
  "back",
];

/** `11 - 1/2"`, `28-1/2` and `28.1/2"` were likely meant as `11-1/2"` and `28-1/2"`. */
function mixedNumber(e: Expression): string | undefined {
  if (e.kind !== "sum" || e.left.kind !== "literal" || e.right.kind !== "literal") return undefined;
  const { left, right } = e;
  if (left.form !== "number") return undefined;
  if (e.operator === "-" && /^\d+$/.test(left.text) && /^\d+\/\d+["″”]?$/.test(right.text)) {
    return `${left.text}-${right.text.replace(/["″”]$/, "")}"`;
  }
  const [, inches, top] = /^(\d+)\.(\d+)$/.exec(left.text) ?? [];
  const below = /^(\d+)["″”]$/.exec(right.text)?.[1];
  return e.operator === "/" && inches && below ? `${inches}-${top}/${below}"` : undefined;
}

const mapped = (v: Value<Quantity>, f: (q: Quantity) => Quantity): Value<Quantity> =>
  v.state === "known" ? known(f(v.value)) : v;
