/** Values of the worked-out plan as the sheet writes them. */
import { type At, toldName } from "../plan";
import {
  type Display,
  inNumbersOf,
  LENGTH,
  lengthText,
  MILLIMETRES,
  type Quantity,
  quantityText,
  roughly,
  SIXTEENTHS,
} from "../units";
import type { Marked, Place } from "./data";

/** A length to the plan's mark, with the other system beside it. */
export function marked(q: Quantity, display: Display): Marked {
  const other = inNumbersOf(display, display.system === "inches" ? MILLIMETRES : SIXTEENTHS);
  return { mm: q.approx, text: lengthText(q, display), other: lengthText(q, other) };
}

/** To a millionth of a mm: what a double has beyond that is noise of its arithmetic. */
export const withoutNoise = (mm: number): number => Math.round(mm * 1e6) / 1e6;

export const ofMm = (mm: number): Quantity => roughly(LENGTH, withoutNoise(mm));

/** Weights, volumes and pressures in both systems: `903 lb (410 kg)`. */
export function both(q: Quantity, display: Display): string {
  const inches = quantityText(q, inNumbersOf(display, SIXTEENTHS));
  const metric = quantityText(q, inNumbersOf(display, MILLIMETRES));
  return display.system === "inches" ? `${inches} (${metric})` : `${metric} (${inches})`;
}

/** Turns offsets into lines and columns from 1; one for each text. */
export class Lines {
  private readonly starts: number[] = [0];

  constructor(text: string) {
    for (let i = 0; i < text.length; i++) {
      const c = text.charCodeAt(i);
      if (c === 10 || (c === 13 && text.charCodeAt(i + 1) !== 10)) this.starts.push(i + 1);
    }
  }

  /** Line and column, from 1, of an offset. */
  at(offset: number): { line: number; column: number } {
    let low = 0;
    let high = this.starts.length - 1;
    while (low < high) {
      const mid = (low + high + 1) >> 1;
      if (this.starts[mid]! <= offset) low = mid;
      else high = mid - 1;
    }
    return { line: low + 1, column: offset - this.starts[low]! + 1 };
  }
}

/** Finds lines and columns in any of the plan's files, which are named as `named` tells. */
export function placer(
  files: readonly {
    readonly file: string;
    readonly tree: { readonly text: string };
    readonly begins: number;
  }[],
  named: (file: string) => string,
): (at: At) => Place {
  const lines = new Map(
    files.map(({ file, tree, begins }) => [file, { begins, lines: new Lines(tree.text.slice(begins)) }]),
  );
  const none = { begins: 0, lines: new Lines("") };
  return (at) => {
    const { begins, lines: found } = lines.get(at.file) ?? none;
    const from = found.at(at.start - begins);
    const to = found.at(at.end - begins);
    const [file, end] = [named(toldName(at.file)), { endLine: to.line, endColumn: to.column }];
    return { file, line: from.line, column: from.column, ...end };
  };
}

/** The unit in which the plain number of a value is. */
export function baseUnit(q: {
  dim: { length: number; weight: number; time: number; angle: number; money: number; currency: string };
}): string {
  const { length, weight, time, angle, money, currency } = q.dim;
  if (money) return currency;
  const parts = [
    weight ? "kg" : "",
    length ? `mm${Math.abs(length) > 1 ? Math.abs(length) : ""}` : "",
    time ? "min" : "",
    angle ? "deg" : "",
  ];
  if (weight && length < 0) return `kg/mm${-length}`;
  return parts.filter(Boolean).join(" ");
}
