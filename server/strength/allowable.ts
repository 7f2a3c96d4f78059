/**
 * What a board may be stressed to where it is used. The numbers come in; which of them go with a wood and a size, graded
 * or brought down from clear wood by ASTM D245, the trade's tables say. Stresses in N/mm2.
 */

/** What a wood may bear dry, under a load of ten years in all, its size already in the bending. */
export interface WoodValues {
  readonly bending: number;
  /** Along the grain, as a bending board shears. */
  readonly shear: number;
  /** Pressed across the grain, as where a board rests. */
  readonly bearing: number;
  /** Stiffness: what sag is worked out with. */
  readonly elasticity: number;
}

/** Factors of wood that is over 19% moisture in use. */
export type WetFactors = WoodValues;

export interface InUse {
  /** Load duration, C_D: 0.9 for what never leaves, 1 for ten years, more for less. The shortest load of those together. */
  readonly duration: number;
  /** C_r, on bending, where three or more boards share the load. */
  readonly repetitive?: number;
  /** C_M, where the wood gets wet. */
  readonly wet?: WetFactors;
}

/**
 * Allowable stresses in use by the allowable-stress form of NDS (2018, Table 4.3.1): duration counts for bending and
 * shear, not for bearing and stiffness; wet service for all. Undefined unless every number is above 0.
 */
export function adjusted(values: WoodValues, use: InUse): WoodValues | undefined {
  const { duration, repetitive = 1, wet = DRY } = use;
  const allowed: WoodValues = {
    bending: values.bending * duration * repetitive * wet.bending,
    shear: values.shear * duration * wet.shear,
    bearing: values.bearing * wet.bearing,
    elasticity: values.elasticity * wet.elasticity,
  };
  return Object.values(allowed).every((one) => one > 0 && Number.isFinite(one)) ? allowed : undefined;
}

const DRY: WetFactors = { bending: 1, shear: 1, bearing: 1, elasticity: 1 };
