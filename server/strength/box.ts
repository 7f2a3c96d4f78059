/**
 * What a box holds and how heavily it stands: inside volume straight or tapered, full or filled part way, the
 * weight of the fill, and the pressure averaged over the outline on the floor. Millimetres, kilograms, m3.
 */

/** Inside sizes of a box of four flat walls. The height is upright, not along a sloping wall. */
export interface BoxInside {
  /** At the rim. */
  readonly length: number;
  readonly width: number;
  readonly height: number;
  /** At the bottom; as at the rim when left out. */
  readonly bottomLength?: number;
  readonly bottomWidth?: number;
  /** How high it is filled, above the bottom or below the rim; to the rim when left out. */
  readonly fill?: { readonly height: number } | { readonly belowRim: number };
}

export interface BoxVolume {
  readonly kind: "volume";
  readonly mm3: number;
  readonly m3: number;
  /** The depth of the fill, from the bottom up. */
  readonly depth: number;
}

export interface NoBoxVolume {
  readonly kind: "impossible";
  /** Not a usable number; a rim or height not above 0; a bottom below 0; a fill above the rim or below the bottom. */
  readonly reason: "number" | "size" | "bottom" | "fill";
}

/**
 * The volume up to the fill, by the prismatoid's h/6 (A1 + 4 Am + A2), which is exact for flat walls
 * whether the box is straight, a frustum or tapers one way only. Never throws.
 */
export function boxVolume(box: BoxInside): BoxVolume | NoBoxVolume {
  const { length, width, height, bottomLength = length, bottomWidth = width } = box;
  const depth = fillDepth(height, box.fill);
  if (![length, width, height, bottomLength, bottomWidth, depth].every(usable))
    return { kind: "impossible", reason: "number" };
  if (length <= 0 || width <= 0 || height <= 0) return { kind: "impossible", reason: "size" };
  if (bottomLength < 0 || bottomWidth < 0) return { kind: "impossible", reason: "bottom" };
  if (depth < 0 || depth > height) return { kind: "impossible", reason: "fill" };
  const areaAt = (z: number): number => {
    const up = z / height;
    return (bottomLength + (length - bottomLength) * up) * (bottomWidth + (width - bottomWidth) * up);
  };
  const mm3 = (depth / 6) * (areaAt(0) + 4 * areaAt(depth / 2) + areaAt(depth));
  return { kind: "volume", mm3, m3: mm3 / MM3_PER_M3, depth };
}

/** Kilograms of a fill of so many m3 at kg/m3; undefined unless both are numbers not below 0. */
export function fillWeight(volumeM3: number, densityKgPerM3: number): number | undefined {
  const kg = volumeM3 * densityKgPerM3;
  return volumeM3 >= 0 && densityKgPerM3 >= 0 && Number.isFinite(kg) ? kg : undefined;
}

export interface Pressure {
  readonly kgfPerM2: number;
  readonly pascals: number;
  readonly psf: number;
}

/**
 * A weight averaged over the outline it stands within: what is compared with a floor's limit in psf or kPa.
 * It says nothing of what a single foot presses. Undefined when the weight is below 0 or the outline has no area.
 */
export function outlinePressure(
  weightKg: number,
  outlineLength: number,
  outlineWidth: number,
): Pressure | undefined {
  const kgfPerM2 = weightKg / ((outlineLength * outlineWidth) / MM2_PER_M2);
  if (!(weightKg >= 0 && outlineLength > 0 && outlineWidth > 0 && Number.isFinite(kgfPerM2)))
    return undefined;
  const pascals = kgfPerM2 * STANDARD_GRAVITY;
  return { kgfPerM2, pascals, psf: pascals / PASCALS_PER_PSF };
}

/** A floor's limit in pounds per square foot, in pascals. */
export const pascalsFromPsf = (psf: number): number => psf * PASCALS_PER_PSF;

/** Neither NaN nor so large (beyond 1000 km, in mm) that a product of three overflows. */
const usable = (mm: number): boolean => Math.abs(mm) <= 1e9;

function fillDepth(height: number, fill: BoxInside["fill"]): number {
  if (fill === undefined) return height;
  return "height" in fill ? fill.height : height - fill.belowRim;
}

const MM3_PER_M3 = 1e9;
const MM2_PER_M2 = 1e6;
/** m/s2, by definition (CGPM 1901). */
const STANDARD_GRAVITY = 9.80665;
/** By definition of the pound (0.45359237 kg) and the foot (0.3048 m), 1959. */
const PASCALS_PER_PSF = (0.45359237 * STANDARD_GRAVITY) / (0.3048 * 0.3048);
