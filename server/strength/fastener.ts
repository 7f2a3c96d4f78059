/** From reference values to what a fastener counts for where it is: service, grain, slant, and two pulls at once. */
import { finite, notNegative, positive } from "./units";

/** Factors of the NDS on a reference value (Table 11.3.1); 1 when left out. What they are stands with the trade's tables. */
export interface FastenerFactors {
  /** Load duration: 0.9 for what rests there for good. */
  readonly duration?: number;
  /** Over 19% moisture in service. */
  readonly wet?: number;
  /** Driven into end grain: 0 in withdrawal. */
  readonly endGrain?: number;
  /** Driven at a slant. */
  readonly toe?: number;
}

/** Newtons (or N/mm) of a reference value times its factors; undefined when one is below 0 or no number. */
export function adjusted(reference: number, factors: FastenerFactors): number | undefined {
  const { duration = 1, wet = 1, endGrain = 1, toe = 1 } = factors;
  const all = [reference, duration, wet, endGrain, toe];
  return all.every(notNegative) ? finite(all.reduce((product, one) => product * one, 1)) : undefined;
}

/**
 * Newtons that a fastener holds when pulled at an angle to the wood's face (0 along it, 90 straight out): Hankinson's
 * form for lags (NDS 12.4-1), the straight one for wood screws and nails (12.4-2). Both values are adjusted ones, of
 * the whole fastener; undefined when one is below 0 or the angle is not from 0 to 90 degrees.
 */
export function angledPull(
  withdrawalN: number,
  lateralN: number,
  angleDeg: number,
  fastener: "lag" | "screw" | "nail",
): number | undefined {
  if (![withdrawalN, lateralN, angleDeg].every(notNegative) || angleDeg > 90) return undefined;
  const angle = (angleDeg * Math.PI) / 180;
  const power = fastener === "lag" ? 2 : 1;
  const [along, out] = angleDeg === 90 ? [0, 1] : [Math.cos(angle) ** power, Math.sin(angle) ** power];
  const used = (along === 0 ? 0 : along / lateralN) + (out === 0 ? 0 : out / withdrawalN);
  return used === 0 ? undefined : finite(1 / used);
}

export interface ToeReach {
  /** Length taken as the side piece's thickness. */
  readonly side: number;
  /** Square to the joint, in the main piece. */
  readonly main: number;
}

/**
 * How a toe-driven fastener lies (NDS 12.1.6.3 and Figure 12A): it starts a share of its length from the joint and
 * leans off the face, so that L cos(angle) less the start is in the main piece. Millimetres; undefined when nothing is.
 */
export function toeReach(lengthMm: number, angleDeg: number, startShare: number): ToeReach | undefined {
  if (!positive(lengthMm) || !notNegative(angleDeg) || angleDeg >= 90 || !notNegative(startShare))
    return undefined;
  const side = lengthMm * startShare;
  const main = lengthMm * Math.cos((angleDeg * Math.PI) / 180) - side;
  return main > 0 && Number.isFinite(main) ? { side, main } : undefined;
}
