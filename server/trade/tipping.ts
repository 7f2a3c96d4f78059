// What is taken of a push, a seat and the wind when a thing that stands free is judged; margins stand in standing.ts.
import { COMMON_PRACTICE, type Row, remembered } from "./row";

/** No push reaches higher above the floor. */
export const pushReach: Row<string> = {
  key: "highest push above the floor",
  value: "60",
  unit: "in",
  source: COMMON_PRACTICE,
};

/** What is no higher is stepped over and not pushed. */
export const lowestPush: Row<string> = {
  key: "height up to which a thing is not pushed",
  value: "18",
  unit: "in",
  source: COMMON_PRACTICE,
};

/** Share of its weight that a push reaches before a thing slides. */
export const sliding: Row<number> = {
  key: "share of its weight at which a thing slides",
  value: 0.7,
  unit: "",
  source: COMMON_PRACTICE,
  range: "wood on a rough floor; on a smooth one it slides sooner",
};

/** Up to so many times its base a thing that a push tips is to be looked at, and no hazard where no children are. */
export const squatTimesBase: Row<number> = {
  key: "height against base up to which a thing is squat",
  value: 2,
  unit: "",
  source: COMMON_PRACTICE,
};

/** A squat thing lighter than this does little harm as it falls. */
export const lightThing: Row<number> = {
  key: "weight from which a thing that tips is judged",
  value: 30,
  unit: "lb",
  source: remembered("16 CFR 1261", "scope, furniture that tips"),
};

/** How wide a flat top must be to sit or stand on. */
export const seatWidth: Row<string> = {
  key: "narrowest top that is sat and stood on",
  value: "2-1/2",
  unit: "in",
  source: COMMON_PRACTICE,
};

/** Feet in a narrower stretch stand in one line. */
export const narrowBase: Row<string> = {
  key: "base of feet that stand in one line",
  value: "4",
  unit: "in",
  source: COMMON_PRACTICE,
};

/** Wind is looked at from this height up. */
export const windHeight: Row<string> = {
  key: "height from which wind is looked at",
  value: "48",
  unit: "in",
  source: COMMON_PRACTICE,
};

export const tippingRows: readonly Row<unknown>[] = [
  pushReach,
  lowestPush,
  sliding,
  squatTimesBase,
  lightThing,
  seatWidth,
  narrowBase,
  windHeight,
];
