/** Rows of pieces along one direction: how many, and how far from the first one's start each begins. */

import { fraction, type Quantity } from "../../units";
import { add, compared, less, NOTHING, scaled } from "./stretch";

export type Spacing =
  | { readonly rule: "tight" }
  | { readonly rule: "apart" | "on center" | "at most apart"; readonly value: Quantity };

export interface Row {
  /** Starts of the pieces, from the start of the row. */
  readonly starts: readonly Quantity[];
  /** From the start of the first to the end of the last. */
  readonly length: Quantity;
  /** Between neighbours; undefined for a single piece. */
  readonly gap: Quantity | undefined;
}

/** `n` pieces of one size with one gap between neighbours. */
export function row(size: Quantity, n: number, gap: Quantity): Row {
  const pitch = add(size, gap);
  const starts = Array.from({ length: n }, (_, i) => scaled(pitch, i));
  return { starts, length: add(starts[n - 1] ?? NOTHING, size), gap: n > 1 ? gap : undefined };
}

/**
 * `n` pieces with even gaps, the first and the last at the ends of the span, or a gap from them; one alone stands in its
 * middle.
 */
export function spreadOver(size: Quantity, n: number, span: Quantity, endGaps: boolean): Row {
  if (endGaps) {
    const gap = scaled(less(span, scaled(size, n)), 1, n + 1);
    const { starts } = row(size, n, gap);
    return { starts: starts.map((s) => add(s, gap)), length: span, gap };
  }
  if (n === 1) return { starts: [scaled(less(span, size), 1, 2)], length: span, gap: undefined };
  const gap = scaled(less(span, scaled(size, n)), 1, n - 1);
  return { ...row(size, n, gap), length: span };
}

/** The gap that a spacing asks for between pieces of that size. */
export function gapOf(size: Quantity, spacing: Spacing | undefined): Quantity {
  if (!spacing || spacing.rule === "tight") return NOTHING;
  return spacing.rule === "on center" ? less(spacing.value, size) : spacing.value;
}

/** How many pieces fit a span: at least one, and at most `most`. */
export function asManyAsFit(
  size: Quantity,
  spacing: Spacing | undefined,
  span: Quantity,
  most: number,
  endGaps = false,
): number {
  const gap = gapOf(size, spacing);
  const pitch = add(size, gap);
  if (compared(pitch, NOTHING) <= 0) return 1;
  // n pieces have n - 1 gaps between them, or n + 1 with the two at the ends.
  const room = endGaps ? less(span, gap) : add(span, gap);
  const ratio = room.exact && pitch.exact ? fraction.divide(room.exact, pitch.exact) : undefined;
  const n = ratio ? fraction.toNumber(ratio) : room.approx / pitch.approx;
  const whole =
    spacing?.rule === "at most apart"
      ? ratio
        ? Number(-fraction.floor(fraction.negate(ratio)))
        : Math.ceil(n - 1e-9)
      : ratio
        ? Number(fraction.floor(ratio))
        : Math.floor(n + 1e-9);
  return Math.min(most, Math.max(1, whole));
}
