/** The same plan with its lengths typed in the other system, each exactly as long as it was. */
import { parse } from "../../grammar/parser";
import type { Literal } from "../../grammar/tree";
import { readLiteral } from "../../server/units";
import { type Fraction, of } from "./fractions";

export type System = "inches" | "millimetres";

/** Every typed length of a text but plywood's, whose number is a name. */
function lengthsIn(text: string): Literal[] {
  const found: Literal[] = [];
  const visit = (node: unknown): void => {
    if (typeof node !== "object" || node === null) return;
    if ("kind" in node && node.kind === "plywood") return;
    if ("kind" in node && node.kind === "literal" && "form" in node && node.form === "length")
      found.push(node as Literal);
    for (const value of Object.values(node)) visit(value);
  };
  visit(parse(text).entries);
  return [...new Map(found.map((one) => [one.start, one])).values()];
}

const common = (a: bigint, b: bigint): bigint => (b === 0n ? a : common(b, a % b));

/** `711.2mm`, or `127/15mm` where no decimal is exact. */
function inMillimetres({ n, d }: Fraction): string {
  for (let places = 0n; places <= 9n; places++) {
    const scale = 10n ** places;
    if ((n * scale) % d !== 0n) continue;
    const digits = ((n * scale) / d).toString().padStart(Number(places) + 1, "0");
    const at = digits.length - Number(places);
    return `${digits.slice(0, at)}${places > 0n ? `.${digits.slice(at)}` : ""}mm`;
  }
  return `${n}/${d}mm`;
}

/** `28"`, `28-1/2"`, and `5/127"` for a millimetre: an inch is 254/10 of it. */
function inInches({ n, d }: Fraction): string {
  const [top, bottom] = [n * 10n, d * 254n];
  const by = common(top, bottom);
  const [whole, rest, share] = [top / bottom, (top % bottom) / by, bottom / by];
  if (rest === 0n) return `${whole}"`;
  return `${whole > 0n ? `${whole}-` : ""}${rest}/${share}"`;
}

/** `2 - ` before `30/127"` may be one number with blanks in it, which is asked about. */
const ENDS_WHOLE = /\d\s*-?\s*$/;

export interface Rewritten {
  readonly text: string;
  /** How many lengths are written otherwise. */
  readonly changed: number;
}

export function rewrittenIn(text: string, to: System): Rewritten {
  let [now, changed] = [text, 0];
  for (const { start, end, text: typed } of lengthsIn(text).sort((a, b) => b.start - a.start)) {
    const exact = readLiteral(typed)?.exact;
    if (!exact) continue;
    const { n, d } = exact;
    const written = to === "millimetres" ? inMillimetres(of(n, d)) : inInches(of(n, d));
    if (written.length > 40 || written === typed) continue;
    if (/^\d+\//.test(written) && ENDS_WHOLE.test(text.slice(0, start))) continue;
    now = now.slice(0, start) + written + now.slice(end);
    changed++;
  }
  return { text: now, changed };
}
