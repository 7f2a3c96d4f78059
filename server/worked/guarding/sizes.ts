/** The sizes that guarding goes by, in millimetres, from the tables of the trade. */
import {
  type Between,
  bodyWidth,
  childReach,
  clearOfGuard,
  fingerBand,
  fingerStop,
  footholdBand,
  footWidth,
  headBand,
  houseGuard,
  ledgeDepth,
  steepTop,
  tallGuard,
  toeRoom,
} from "../../trade";
import { readLiteral } from "../../units";

const inches = (tape: string): number => readLiteral(`${tape}"`)!.approx;
const band = ({ low, high }: Between): Band => ({ low: inches(low), high: inches(high) });

export interface Band {
  readonly low: number;
  readonly high: number;
}

/** Heights between which a foothold lowers a guard. */
export const FOOTHOLDS = band(footholdBand.value);
export const LEDGE = { deep: ledgeDepth.value, long: inches(footWidth.value), clear: toeRoom.value } as const;
/** Rise over run. */
export const STEEP = steepTop.value;
export const GUARDS = { house: inches(houseGuard.value), tall: inches(tallGuard.value) } as const;
export const CLEAR_OF_GUARD = inches(clearOfGuard.value);
export const FINGERS = band(fingerBand.value);
export const HEADS = band(headBand.value);
export const BODY = inches(bodyWidth.value);
export const REACH = inches(childReach.value);
export const FINGER_STOP = inches(fingerStop.value);
