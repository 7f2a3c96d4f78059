/** What the section of a board gives against bending. Millimetres. */

export interface Section {
  /** mm2. */
  readonly area: number;
  /** Second moment of area, mm4: with the stiffness of the wood it says how far the board sags. */
  readonly inertia: number;
  /** Section modulus, mm3: a bending moment divided by it is the stress at the faces. */
  readonly modulus: number;
}

/**
 * A board of rectangular section, `thick` being its depth the way it bends: b h^3 / 12 and b h^2 / 6.
 * A board laid flat has its thickness there, one on edge its width. Undefined unless both are above 0.
 */
export function rectangle(width: number, thick: number): Section | undefined {
  const inertia = (width * thick ** 3) / 12;
  if (!(width > 0 && thick > 0 && Number.isFinite(inertia))) return undefined;
  return { area: width * thick, inertia, modulus: (width * thick ** 2) / 6 };
}

/** The greatest shear stress in a rectangle, N/mm2, from a force in N: half as much again as the average. */
export const shearStress = (force: number, { area }: Section): number => (1.5 * force) / area;
