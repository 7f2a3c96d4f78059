/** Angles in degrees, as a saw and a builder state them, and the ratios a layout needs from them. */
export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
export const degrees = (radians: number): number => (radians * 180) / Math.PI;
export const sin = (degrees: number): number => Math.sin(radians(degrees));
export const cos = (degrees: number): number => Math.cos(radians(degrees));
export const tan = (degrees: number): number => Math.tan(radians(degrees));

/** A number that a plan could mean: neither NaN nor so large (beyond 1000 km, in mm) that sums of it overflow. */
export const usable = (value: number): boolean => Math.abs(value) <= 1e9;

/** Two lengths nearer than this, in millimetres, are the same but for the arithmetic. */
export const NUMERIC = 1e-6;
