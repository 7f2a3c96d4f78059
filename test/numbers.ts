/** Numbers for property tests of plain geometry: within bounds, or of any odd kind; and degrees in radians. */
import fc from "fast-check";

export const real = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** Sensible lengths and angles among what is none: not a number, endless, less than nothing. */
export const odd: fc.Arbitrary<number> = fc.oneof(
  fc.double(),
  real(0, 2000),
  real(0, 90),
  fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY),
);

export const rad = (d: number): number => (d * Math.PI) / 180;
