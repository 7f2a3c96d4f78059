/** What turns the inches, pounds and feet of the timber codes into millimetres, newtons and N/mm2. */

/** By definition of the inch, 1959. */
export const MM_PER_INCH = 25.4;
/** m/s2, by definition (CGPM 1901). */
export const STANDARD_GRAVITY = 9.80665;
/** By definition of the pound, 0.45359237 kg (1959). */
export const NEWTONS_PER_POUND = 0.45359237 * STANDARD_GRAVITY;
export const MPA_PER_PSI = NEWTONS_PER_POUND / MM_PER_INCH ** 2;
export const MPA_PER_PSF = MPA_PER_PSI / 144;

/** A number that is not NaN, not endless and above 0. */
export const positive = (value: number): boolean => value > 0 && value < Number.POSITIVE_INFINITY;

/** The same, or 0. */
export const notNegative = (value: number): boolean => value >= 0 && value < Number.POSITIVE_INFINITY;

/** The number, unless it overflowed or is none. */
export const finite = (value: number): number | undefined => (Number.isFinite(value) ? value : undefined);
