/** From reference values to what a fastener counts for where it is: service, grain and slant. */
import { finite, notNegative } from "./units";

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
