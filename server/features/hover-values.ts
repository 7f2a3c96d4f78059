/** What a hover says of measures, properties, functions and values as typed. */
import type { Expression, Literal } from "../../grammar/tree";
import { ifKnown } from "../plan";
import {
  ANGLE,
  type Display,
  exactOf,
  fraction,
  isNumber,
  LENGTH,
  lengthText,
  nameOf,
  plainly,
  type Quantity,
  quantityText,
  readLiteral,
  sameDimension,
} from "../units";
import { type Measure, screwSize, type Worked } from "../worked";
import { code, escaped, list, paragraphs, strong } from "./markdown";
import { bothTexts, chainOf, evaluatorOf, fineTexts, offTheMark, thingText, valueOr, whyNot } from "./values";

export function describeMeasure(measure: Measure, worked: Worked): string {
  const { display } = worked.settings;
  const { entry, at } = measure.declared;
  const value = ifKnown(measure.value);
  const chain = entry.kind === "measure" && entry.value ? chainOf(entry.value, at.file, worked) : [];
  return paragraphs(
    value
      ? `${strong(measure.name)}, a measure: **${escaped(bothTexts(value, display))}**${escaped(offTheMark(value, display))}`
      : `${strong(measure.name)}, a measure: ${whyNot(measure.value)}`,
    chain.map(code).join("  \n"),
    list(
      measure.bounds.map((b) => {
        const bound = `${b.comparison} ${escaped(bothTexts(b.value, display))}`;
        return b.kept ? `You typed ${bound}` : `You typed ${bound}, which it breaks`;
      }),
    ),
  );
}

/** `thickness of 2x4`, on the property's own words. */
export function describeProperty(
  e: Extract<Expression, { kind: "property" }>,
  file: string,
  worked: Worked,
): string {
  const { display } = worked.settings;
  const value = evaluatorOf(worked)(e, file);
  const name = e.of.name.text.replace("×", "x");
  const material = worked.materials.find((m) => m.name === name || `${m.name}s` === name);
  return paragraphs(
    `${escaped(`${e.property.text} of ${thingText(e.of)}`)}: **${valueOr(value, display)}**`,
    PROPERTY_DOCS[e.property.text],
    material?.source && value.state === "known" ? `Size: ${escaped(material.source)}` : undefined,
  );
}

/** Values joined by operators: what they come to, and how. */
export function describeExpression(e: Expression, file: string, worked: Worked): string {
  const { display } = worked.settings;
  const value = evaluatorOf(worked)(e, file);
  if (value.state !== "known") return `What it comes to: ${whyNot(value)}`;
  return paragraphs(
    `**${escaped(bothTexts(value.value, display))}**${escaped(offTheMark(value.value, display))}`,
    chainOf(e, file, worked).map(code).join("  \n"),
  );
}

export const PROPERTY_DOCS: Readonly<Record<string, string>> = {
  length: "The piece's own length, as its line gives it.",
  width: "The board's own width.",
  thickness: "The board's own thickness.",
  count: "How many there are.",
  "overall width": "From the leftmost to the rightmost of what is placed.",
  "overall depth": "From the front to the back of what is placed.",
  "overall height": "From the lowest to the highest of what is placed.",
  "inside width": "The inside of the box, left to right.",
  "inside depth": "The inside of the box, front to back.",
  "inside height": "The inside of the box, bottom to rim.",
  top: "How high its top stands above the floor.",
  bottom: "How high its underside stands above the floor.",
  left: "How far its left side is from the plan's own left.",
  right: "How far its right side is from the plan's own left.",
  front: "How far its front is from the plan's own front.",
  back: "How far its back is from the plan's own front.",
};

export const FUNCTION_DOCS: Readonly<Record<string, { readonly form: string; readonly doc: string }>> = {
  min: { form: "min(a, b)", doc: "The least of its values." },
  max: { form: "max(a, b)", doc: "The greatest of its values." },
  diagonal: { form: "diagonal(a, b)", doc: "The long side across a square corner: the root of a² + b²." },
  sin: { form: "sin(angle)", doc: "The sine of an angle." },
  cos: { form: "cos(angle)", doc: "The cosine of an angle." },
  tan: { form: "tan(angle)", doc: "The tangent of an angle: rise over run." },
  asin: { form: "asin(number)", doc: "The angle of that sine." },
  acos: { form: "acos(number)", doc: "The angle of that cosine." },
  atan: { form: "atan(number)", doc: "The angle of that tangent." },
  floor: { form: "floor(number)", doc: "The whole number at or below." },
  ceiling: { form: "ceiling(number)", doc: "The whole number at or above." },
  round: { form: 'round a to 1/16"', doc: "The nearest multiple; halfway goes away from zero." },
};

export function describeFunction(name: string): string | undefined {
  const known = Object.hasOwn(FUNCTION_DOCS, name) ? FUNCTION_DOCS[name] : undefined;
  return known && paragraphs(code(known.form), known.doc);
}

/** A value as typed: what it is in the other system. Undefined where there is nothing to add. */
export function describeLiteral(literal: Literal, display: Display): string | undefined {
  const text = plainly(literal.text);
  if (literal.form === "section") return undefined;
  const q = readLiteral(literal.text);
  if (!q) return undefined;
  if (sameDimension(q.dim, LENGTH)) return lengthLiteral(text, q);
  if (sameDimension(q.dim, ANGLE))
    return `${code(text)}: ${escaped(quantityText(q, display))} off square, ${escaped(quantityText(offEdge(q), display))} from the edge`;
  if (isNumber(q.dim) || q.dim.money !== 0) return undefined;
  const both = bothTexts(q, display);
  return both.includes("(") ? `${code(text)}: ${nameOf(q.dim)}, ${escaped(both)}` : undefined;
}

const offEdge = (q: Quantity): Quantity => ({ dim: ANGLE, exact: null, approx: 90 - q.approx });

/** The other system to its usual mark, then exactly. */
function lengthLiteral(text: string, q: Quantity): string {
  const inches = /["']|in|ft/.test(text);
  const mm = exactOf(q);
  if (inches) {
    const exact = `${fraction.toDecimal(mm, 4)} mm`;
    const feet = /'|ft/.test(text) ? ` = ${escaped(lengthText(q, TO_64THS))}` : "";
    return `${code(text)}${feet} = **${escaped(exact)}**`;
  }
  const near = lengthText(q, TO_16THS);
  const exact = fraction.divide(mm, INCH_MM)!;
  const same = fraction.compare(fraction.roundTo(mm, TO_16THS.mark), mm) === 0;
  const metric = /mm$/.test(text) ? "" : ` = ${fraction.toDecimal(mm, 2)} mm`;
  return `${code(text)}${metric} = **${same ? "" : "about "}${escaped(near)}**${same ? "" : ` (${fraction.toDecimal(exact, 3)}")`}`;
}

const INCH_MM = fraction.fromDecimal("25.4")!;
const TO_16THS: Display = { system: "inches", mark: fraction.divide(INCH_MM, fraction.rational(16))! };
const TO_64THS: Display = { system: "inches", mark: fraction.divide(INCH_MM, fraction.rational(64))! };

/** A screw's size where no joint stands around it, as on a fastener's own line. */
export function describeScrew(literal: Literal, display: Display): string | undefined {
  const size = screwSize(literal.text);
  if (!size) return undefined;
  const shank = fineTexts(size.diameter, display);
  return paragraphs(
    `${code(plainly(literal.text))}: ${escaped(bothTexts(size.length, display))} long, shank ${escaped(shank)}`,
    escaped(size.source),
  );
}
