/** The rows by which a thing that stands free is judged, in millimetres and kilograms. */
import { STANDARD_GRAVITY } from "../../strength/units";
import { windPressure } from "../../strength/wind";
import {
  anchorAbove,
  dragCoefficient,
  gust,
  leanStoodUp,
  lightThing,
  lowestPush,
  narrowBase,
  pushAtRail,
  pushReach,
  type Row,
  seatHeight,
  seatWidth,
  sliding,
  squatTimesBase,
  standingPerson,
  tippingMargin,
  tippingMarginChildren,
  windFactor,
  windHeight,
} from "../../trade";
import { fraction, POUND, readLiteral } from "../../units";

const inches = (text: string): number => readLiteral(`${text}"`)!.approx;
const LB = fraction.toNumber(POUND);
const length = ({ value }: Row<string>): number => inches(value);

/** kg and mm. */
export const PUSH = pushAtRail.value * LB;
export const REACH = length(pushReach);
export const LOWEST = length(lowestPush);
/** Shares of a weight, and how many times over. */
export const SLIDES = sliding.value;
export const marginFor = (children: boolean): number =>
  (children ? tippingMarginChildren : tippingMargin).value;
/** A level push of such a share of its weight, at its middle, is the lean that it must come back from. */
export const LEAN = Math.tan((leanStoodUp.value * Math.PI) / 180);
/** mm, and times the base. */
export const TALL = inches(anchorAbove.height.value);
export const TALL_BASES = anchorAbove.timesBase.value;
export const SQUAT_BASES = squatTimesBase.value;
/** mm: feet in a narrower stretch stand in one line. */
export const IN_LINE = length(narrowBase);
/** kg */
export const LIGHT = lightThing.value * LB;
/** kg, and mm from the edge of a top to the middle of the patch. */
export const PERSON = standingPerson.value.weight * LB;
export const INSET = inches(standingPerson.value.square) / 2;
/** mm */
export const SEAT = { low: inches(seatHeight.value.low), high: inches(seatHeight.value.high) } as const;
export const SEAT_WIDTH = length(seatWidth);
export const WINDY = length(windHeight);
/** kg on each mm2 that shows to the wind. */
export const WIND = (windPressure(gust.value, windFactor.value)! * dragCoefficient.value) / STANDARD_GRAVITY;
