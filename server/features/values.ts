/** Values as hovers tell them: in both systems, why there is none, and how a value was worked out from others. */
import type { Expression, Thing } from "../../grammar/tree";
import { causeText } from "../checks";
import { declaredAs as declaredIn, type Value } from "../plan";
import {
  type Display,
  fraction,
  LENGTH,
  lengthInFull,
  lengthText,
  MILLIMETRES,
  onTheMark,
  type Quantity,
  quantityText,
  SIXTEENTHS,
  sameDimension,
  unitNamed,
  VOLUME,
} from "../units";
import type { Measure, Worked } from "../worked";
import { COMMON } from "./hover-texts/common";
import type { Voice } from "./hover-texts/voice";
import { escaped } from "./markdown";

export type Evaluator = (e: Expression, file: string) => Value<Quantity>;

/** Works out any expression of a plan once more, by the same rules as the plan itself. */
export const evaluatorOf = (worked: Worked): Evaluator => worked.evaluate;

/** A value to the plan's marks, or in full where it is off them: `28-1/2"`, `about 6.857"`. */
export function exactText(q: Quantity, display: Display): string {
  if (!sameDimension(q.dim, LENGTH)) return quantityText(q, display);
  return onTheMark(q, display) ? lengthText(q, display) : lengthInFull(q, display);
}

/** Neither a mark of the plan, a tape fraction nor a few decimals tell the length. */
const isRounded = (q: Quantity, { system, mark }: Display): boolean =>
  exactText(q, { system, mark }).startsWith("about");

/** A length as it is where a tape fraction or a few decimals tell it, else to the plan's mark. */
function nearest(q: Quantity, display: Display): string {
  return isRounded(q, display) ? lengthText(q, display) : exactText(q, display);
}

/** What to add behind `bothTexts` for a length off the plan's marks; empty for one on a mark. */
export function offTheMark(q: Quantity, { language, display }: Voice): string {
  if (!sameDimension(q.dim, LENGTH) || onTheMark(q, display)) return "";
  const full = exactText(q, display);
  const marked = lengthText(q, display);
  if (full === marked) return "";
  const { inFull, toTheMark } = COMMON[language];
  return isRounded(q, display) ? inFull(full) : toTheMark(marked);
}

/** A value in both systems: `28-1/2" (724 mm)`, `903 lb (409.6 kg)`; one text where both say the same. */
export function bothTexts(q: Quantity, display: Display): string {
  if (sameDimension(q.dim, LENGTH)) {
    const other = display.system === "inches" ? MILLIMETRES : SIXTEENTHS;
    return `${nearest(q, display)} (${lengthText(q, other)})`;
  }
  if (sameDimension(q.dim, VOLUME)) return volumeText(q, display);
  const [own, other] = display.system === "inches" ? [SIXTEENTHS, MILLIMETRES] : [MILLIMETRES, SIXTEENTHS];
  const [here, there] = [quantityText(q, own), quantityText(q, other)];
  return here === there ? here : `${here} (${there})`;
}

/** A small diameter in both systems, finer than a tape: `1/8" (3.2 mm)`, `0.164" (4.2 mm)`. */
export function fineTexts(q: Quantity, display: Display): string {
  const tape = lengthInFull(q, SIXTEENTHS);
  const inches = tape.startsWith("about") ? `${(q.approx / 25.4).toFixed(3)}"` : tape;
  const metric = `${trimmed(q.approx)} mm`;
  return display.system === "inches" ? `${inches} (${metric})` : `${metric} (${inches})`;
}

function volumeText(q: Quantity, display: Display): string {
  const gallons = `${trimmed(q.approx / fraction.toNumber(unitNamed("gal")!.factor))} gal`;
  const cuft = quantityText(q, SIXTEENTHS);
  const litres = `${trimmed(q.approx / 1e6)} L`;
  return display.system === "inches" ? `${cuft} (${gallons}, ${litres})` : `${litres} (${cuft}, ${gallons})`;
}

const trimmed = (n: number): string => n.toFixed(1).replace(/\.0$/, "");

/** Why there is no value, as a hover says it. */
export function whyNot(value: Value<unknown>, { language }: Voice): string {
  const says = COMMON[language];
  if (value.state === "outside") return says.outsideTable(escaped(value.range));
  if (value.state === "known") return "";
  return value.cause.kind === "mistake"
    ? says.mistake
    : says.notChecked(escaped(causeText(value.cause, language)));
}

/** `Length 12" (305 mm)`, or `Length: not checked: …`. */
export const told = (what: string, value: Value<Quantity>, voice: Voice): string =>
  value.state === "known"
    ? COMMON[voice.language].worth(what, valueOr(value, voice))
    : COMMON[voice.language].lacks(what, whyNot(value, voice));

/** A value in both systems, or why there is none. */
export const valueOr = (value: Value<Quantity>, voice: Voice): string =>
  value.state === "known" ? escaped(bothTexts(value.value, voice.display)) : whyNot(value, voice);

/**
 * How a value follows from others: `rim-height - thickness of cap-side = 30" - 3/4" = 29-1/4"`, then a line for each
 * measure in it that itself follows from others. Empty for a value that is plainly typed.
 */
export function chainOf(e: Expression, file: string, worked: Worked, display: Display): string[] {
  if (e.end - e.start > MOST_LETTERS) return [];
  const evaluate = evaluatorOf(worked);
  if (evaluate(e, file).state !== "known") return [];
  const seen = new Set<string>();
  const lines: string[] = [];
  const add = (of: Expression, from: string, name: string) => {
    if (of.kind === "literal" || lines.length >= MOST_LINES) return;
    const line = steps(of, from, evaluate, display);
    if (line) lines.push(name ? `${name} = ${line}` : line);
    for (const measure of measuresIn(of, worked)) {
      const { entry, at } = measure.declared;
      if (seen.has(measure.name) || entry.kind !== "measure" || !entry.value) continue;
      seen.add(measure.name);
      add(entry.value, at.file, measure.name);
    }
  };
  add(e, file, "");
  return lines;
}

const MOST_LINES = 6;
/** Longest expression and longest line shown; more is left to the plan's own text. */
const MOST_LETTERS = 300;

function steps(e: Expression, file: string, evaluate: Evaluator, display: Display): string | undefined {
  const value = evaluate(e, file);
  const filled = written(e, (leaf) => {
    const v = evaluate(leaf, file);
    return v.state === "known" ? exactText(v.value, display) : "?";
  });
  const result = value.state === "known" ? exactText(value.value, display) : "?";
  const line = [...new Set([written(e), filled, result])].join(" = ");
  return line.length > MOST_LETTERS || !line.includes(" = ") ? undefined : line;
}

function measuresIn(e: Expression, worked: Worked): Measure[] {
  switch (e.kind) {
    case "name": {
      const measure = worked.measures.get(e.name.text);
      return measure ? [measure] : [];
    }
    case "negative":
      return measuresIn(e.value, worked);
    case "sum":
      return [...measuresIn(e.left, worked), ...measuresIn(e.right, worked)];
    case "round":
      return [...measuresIn(e.value, worked), ...measuresIn(e.step, worked)];
    case "call":
      return e.args.flatMap((arg) => measuresIn(arg, worked));
    default:
      return [];
  }
}

type Leaf = Extract<Expression, { kind: "name" | "property" }>;

/** An expression as text again; names and properties as `leaf` says, or as they are. */
export function written(e: Expression, leaf?: (e: Leaf) => string): string {
  switch (e.kind) {
    case "literal":
      return e.text;
    case "name":
      return leaf ? leaf(e) : e.name.text;
    case "property":
      return leaf ? leaf(e) : `${e.property.text} of ${thingText(e.of)}`;
    case "negative":
      return `-${inner(e.value, 3, leaf)}`;
    case "round":
      return `round ${written(e.value, leaf)} to ${inner(e.step, 3, leaf)}`;
    case "call":
      return `${e.name.text}(${e.args.map((a) => written(a, leaf)).join(", ")})`;
    case "sum": {
      const strength = RANK[e.operator];
      return `${inner(e.left, strength, leaf)} ${e.operator} ${inner(e.right, strength + 1, leaf)}`;
    }
  }
}

const RANK = { "+": 1, "-": 1, "*": 2, "/": 2 } as const;

/** In parentheses where it binds less than what stands around it. */
function inner(e: Expression, strength: number, leaf?: (e: Leaf) => string): string {
  const own = e.kind === "sum" ? RANK[e.operator] : e.kind === "round" ? 0 : 4;
  return own < strength ? `(${written(e, leaf)})` : written(e, leaf);
}

export const thingText = (t: Thing): string => [...t.where.map((w) => w.text), t.name.text].join(" ");

/** kg/mm3 in one lb/cuft. */
export const LB_CUFT = fraction.toNumber(unitNamed("lb/cuft")!.factor);

/** The declaration that a name of a plan means. */
export const declaredAs = (worked: Worked, name: string) => declaredIn(worked.scope, name);
