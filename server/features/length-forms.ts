/** A length written in the other system: exactly where that can be, else to a mark of the tape. */
import {
  type Display,
  fraction,
  lengthInFull,
  lengthText,
  MILLIMETRES,
  plainly,
  type Quantity,
  readLiteral,
  SIXTEENTHS,
  unitNamed,
} from "../units";

export type System = Display["system"];

/** In which system a length is written; undefined for what is no length. */
export function systemOf(literal: string): System | undefined {
  const text = plainly(literal);
  if (/['"]|(in|ft)$/.test(text)) return "inches";
  return /m$/.test(text) ? "millimetres" : undefined;
}

export interface Rewritten {
  readonly text: string;
  readonly exact: boolean;
}

/** The length of a literal in that system; undefined where it is none, or would come out as nothing. */
export function rewritten(literal: string, to: System, display: Display): Rewritten | undefined {
  const q = readLiteral(literal);
  if (!q?.exact) return undefined;
  const exactly = to === "millimetres" ? decimal(q.exact, MOST_PLACES, "mm") : onTape(q);
  if (exactly !== undefined) return { text: exactly, exact: true };
  const marks = display.system === to ? display : to === "inches" ? SIXTEENTHS : MILLIMETRES;
  const text = lengthText(q, { system: to, mark: marks.mark }).replace(" mm", "mm");
  return /[1-9]/.test(text) ? { text, exact: false } : undefined;
}

/** 1/64 of an inch takes six places of a millimetre, and 1/128 one more. */
const MOST_PLACES = 8;
/** As screws and wires are measured: 0.131". */
const PLACES_OF_INCH = 3;

function onTape(q: Quantity): string | undefined {
  const full = lengthInFull(q, SIXTEENTHS);
  if (!full.startsWith("about")) return full;
  return decimal(fraction.divide(q.exact!, unitNamed("in")!.factor)!, PLACES_OF_INCH, '"');
}

/** A number with its unit, where so many places tell it exactly. */
function decimal(n: fraction.Rational, places: number, unit: string): string | undefined {
  const text = fraction.toDecimal(n, places);
  return fraction.compare(fraction.fromDecimal(text)!, n) === 0 ? `${text}${unit}` : undefined;
}
