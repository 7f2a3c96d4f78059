/** Inches, feet and pounds for the published examples; and a value that has to be there. */
export const INCH = 25.4;
export const FOOT = 304.8;
export const POUND = 4.4482216152605;
export const PSF = POUND / FOOT ** 2;
export const PSI = POUND / INCH ** 2;
/** N/mm for each lb/in. */
export const LB_PER_INCH = POUND / INCH;
/** kg/m3 for each lb/cuft. */
export const PCF = 16.018463;
export const G = 9.80665;

/** kg/m3 of fill of so many kN/m3. */
export const fromKN = (weight: number): number => (weight * 1000) / G;

export function there<T>(value: T | undefined): T {
  if (value === undefined) throw new Error("nothing was worked out");
  return value;
}
