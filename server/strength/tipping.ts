/** What keeps a thing on its feet, about one edge that it could tip over. Newtons, millimetres, N/mm2. */
import { finite, MPA_PER_PSF, notNegative, positive } from "./units";

/** A weight, and how far inside the edge it stands (below 0: beyond it, where it helps to tip). */
export interface Standing {
  readonly newtons: number;
  readonly armMm: number;
}

/** A level push, and how high above the edge. */
export interface Push {
  readonly newtons: number;
  readonly heightMm: number;
}

export type TipMargin =
  /** What holds it down over what tips it; below 1 it goes over. */
  | {
      readonly kind: "margin";
      readonly ratio: number;
      readonly restoring: number;
      readonly overturning: number;
    }
  /** Nothing tips it over this edge. */
  | { readonly kind: "steady"; readonly restoring: number };

/** Restoring over overturning moments (N mm) about an edge; undefined when a force or height is below 0, or no number. */
export function tipMargin(standing: readonly Standing[], pushes: readonly Push[]): TipMargin | undefined {
  let restoring = 0;
  let overturning = 0;
  for (const { newtons, armMm } of standing) {
    if (!notNegative(newtons) || !Number.isFinite(armMm)) return undefined;
    if (armMm >= 0) restoring += newtons * armMm;
    else overturning -= newtons * armMm;
  }
  for (const { newtons, heightMm } of pushes) {
    if (!notNegative(newtons) || !notNegative(heightMm)) return undefined;
    overturning += newtons * heightMm;
  }
  if (!Number.isFinite(restoring) || !Number.isFinite(overturning)) return undefined;
  if (overturning === 0) return { kind: "steady", restoring };
  const ratio = finite(restoring / overturning);
  return ratio === undefined ? undefined : { kind: "margin", ratio, restoring, overturning };
}

/** The level push at a height that just tips a weight standing so far inside the edge; 0 when it stands on or beyond it. */
export function forceToTip(weightN: number, armMm: number, heightMm: number): number | undefined {
  if (!notNegative(weightN) || !Number.isFinite(armMm) || !positive(heightMm)) return undefined;
  return finite((weightN * Math.max(0, armMm)) / heightMm);
}

/** Pressure of wind, N/mm2: 0.00256 V^2 psf, V in miles an hour (ASCE 7's velocity pressure with all factors 1). */
export function windPressure(
  speed: { readonly mph: number } | { readonly metresPerSecond: number },
): number | undefined {
  const mph = "mph" in speed ? speed.mph : speed.metresPerSecond / MS_PER_MPH;
  return notNegative(mph) ? finite(0.00256 * mph ** 2 * MPA_PER_PSF) : undefined;
}

/** Newtons of wind on a face: pressure, outline area in mm2, drag coefficient, and the share of the outline that is solid. */
export function windForce(
  pressureMpa: number,
  areaMm2: number,
  drag: number,
  solid: number,
): number | undefined {
  if (![pressureMpa, areaMm2, drag, solid].every(notNegative) || solid > 1) return undefined;
  return finite(pressureMpa * areaMm2 * drag * solid);
}

/** How many times its narrowest base a thing is high. */
export function heightToBase(heightMm: number, baseMm: number): number | undefined {
  return notNegative(heightMm) && positive(baseMm) ? finite(heightMm / baseMm) : undefined;
}

/** By definition of the mile, 1609.344 m. */
const MS_PER_MPH = 0.44704;
