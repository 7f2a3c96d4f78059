/** What a hover says of measures, properties, functions and values as typed. */
import type { Expression, Literal } from "../../grammar/tree";
import { type Language, phraseText } from "../checks";
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
import { functionForm, functionText, propertyText } from "./form-words";
import { COMMON } from "./hover-texts/common";
import { VALUES } from "./hover-texts/values";
import type { Voice } from "./hover-texts/voice";
import { code, escaped, list, paragraphs, strong } from "./markdown";
import { bothTexts, chainOf, evaluatorOf, fineTexts, offTheMark, thingText, valueOr, whyNot } from "./values";

export function describeMeasure(measure: Measure, worked: Worked, voice: Voice): string {
  const { language, display } = voice;
  const says = VALUES[language];
  const { entry, at } = measure.declared;
  const value = ifKnown(measure.value);
  const chain = entry.kind === "measure" && entry.value ? chainOf(entry.value, at.file, worked, display) : [];
  return paragraphs(
    says.measure(strong(measure.name), value ? boldText(value, voice) : whyNot(measure.value, voice)),
    chain.map(code).join("  \n"),
    list(measure.bounds.map((b) => says.typed(b.comparison, escaped(bothTexts(b.value, display)), b.kept))),
  );
}

const boldText = (value: Quantity, voice: Voice): string =>
  `**${escaped(bothTexts(value, voice.display))}**${escaped(offTheMark(value, voice))}`;

/** `thickness of 2x4`, on the property's own words. */
export function describeProperty(
  e: Extract<Expression, { kind: "property" }>,
  file: string,
  worked: Worked,
  voice: Voice,
): string {
  const { language } = voice;
  const common = COMMON[language];
  const value = evaluatorOf(worked)(e, file);
  const name = e.of.name.text.replace("×", "x");
  const material = worked.materials.find((m) => m.name === name || `${m.name}s` === name);
  return paragraphs(
    VALUES[language].property(`${e.property.text} of ${thingText(e.of)}`, valueOr(value, voice)),
    propertyText(e.property.text, language),
    material?.source && value.state === "known" ? common.size(escaped(common.sizeOf(material))) : undefined,
  );
}

/** Values joined by operators: what they come to, and how. */
export function describeExpression(e: Expression, file: string, worked: Worked, voice: Voice): string {
  const value = evaluatorOf(worked)(e, file);
  if (value.state !== "known") return COMMON[voice.language].comesTo(whyNot(value, voice));
  return paragraphs(
    boldText(value.value, voice),
    chainOf(e, file, worked, voice.display).map(code).join("  \n"),
  );
}

export function describeFunction(name: string, language: Language): string | undefined {
  const known = functionForm(name);
  return known && paragraphs(code(known.form), functionText(name, language));
}

/** A value as typed: what it is in the other system. Undefined where there is nothing to add. */
export function describeLiteral(literal: Literal, { language, display }: Voice): string | undefined {
  const says = VALUES[language];
  const text = plainly(literal.text);
  if (literal.form === "section") return undefined;
  const q = readLiteral(literal.text);
  if (!q) return undefined;
  if (sameDimension(q.dim, LENGTH)) return lengthLiteral(text, q, language);
  if (sameDimension(q.dim, ANGLE))
    return says.angle(
      code(text),
      escaped(quantityText(q, display)),
      escaped(quantityText(offEdge(q), display)),
    );
  if (isNumber(q.dim) || q.dim.money !== 0) return undefined;
  const both = bothTexts(q, display);
  const kind = phraseText(nameOf(q.dim), display, language);
  return both.includes("(") ? says.kind(code(text), kind, escaped(both)) : undefined;
}

const offEdge = (q: Quantity): Quantity => ({ dim: ANGLE, exact: null, approx: 90 - q.approx });

/** The other system to its usual mark, then exactly. */
function lengthLiteral(text: string, q: Quantity, language: Language): string {
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
  const about = same ? escaped(near) : COMMON[language].about(escaped(near));
  return `${code(text)}${metric} = **${about}**${same ? "" : ` (${fraction.toDecimal(exact, 3)}")`}`;
}

const INCH_MM = fraction.fromDecimal("25.4")!;
const TO_16THS: Display = { system: "inches", mark: fraction.divide(INCH_MM, fraction.rational(16))! };
const TO_64THS: Display = { system: "inches", mark: fraction.divide(INCH_MM, fraction.rational(64))! };

/** A screw's size where no joint stands around it, as on a fastener's own line. */
export function describeScrew(literal: Literal, { language, display }: Voice): string | undefined {
  const size = screwSize(literal.text);
  if (!size) return undefined;
  return paragraphs(
    VALUES[language].screw(
      code(plainly(literal.text)),
      escaped(bothTexts(size.length, display)),
      escaped(fineTexts(size.diameter, display)),
    ),
    escaped(COMMON[language].screwSize(size)),
  );
}
