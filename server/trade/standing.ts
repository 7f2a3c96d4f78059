// What pushes at a thing that stands free, and how well it has to stand.
import { COMMON_PRACTICE, FROM_MEMORY, type Row } from "./row";

/** Gust that a thing in a yard is judged by where the plan names none. */
export const gust: Row<number> = {
  key: "gust of wind",
  value: 60,
  unit: "mph",
  source: COMMON_PRACTICE,
  range: "a hard thunderstorm; design winds of buildings are higher",
};

/** Wind pressure in psf is this times the square of its speed in miles an hour. */
export const windFactor: Row<number> = {
  key: "wind pressure, psf for each square mile an hour",
  value: 0.00256,
  unit: "psf",
  source: {
    document: "ASCE 7",
    table: "velocity pressure",
    via: "a worked example on the web",
    confidence: "read",
  },
  range: "sea level, open ground, all other factors 1",
};

export const dragCoefficient: Row<number> = {
  key: "drag of a flat panel",
  value: 1.3,
  unit: "",
  source: FROM_MEMORY,
  range: "1.2 to 1.4; lattice by the share of it that is solid",
};

/** What the weight has to hold over what tips: where grown people are, and where children are. */
export const tippingMargin: Row<number> = {
  key: "margin against tipping",
  value: 1.5,
  unit: "",
  source: {
    document: "building practice",
    table: "margin against overturning",
    via: "seaintarchive 2000a msg00967",
    confidence: "read",
  },
};
export const tippingMarginChildren: Row<number> = {
  key: "margin against tipping where children are",
  value: 2,
  unit: "",
  source: COMMON_PRACTICE,
};

export const pushAtRail: Row<number> = {
  key: "push at the highest rail in reach",
  value: 50,
  unit: "lb",
  source: FROM_MEMORY,
  range: "a person leaning or a child climbing",
};

/** Higher than so many times its narrowest base, or than this height, a thing is anchored whatever it weighs. */
export const anchorAbove = {
  timesBase: {
    key: "anchored when higher than its narrowest base by",
    value: 4,
    unit: "",
    source: FROM_MEMORY,
  },
  height: { key: "anchored when higher than", value: "60", unit: "in", source: COMMON_PRACTICE },
} as const satisfies Record<string, Row<number | string>>;

/** A lean that what stands free comes back from, as it is leaned while it is stood up or moved. */
export const leanStoodUp: Row<number> = {
  key: "lean from which it comes back by itself",
  value: 10,
  unit: "degrees",
  source: {
    document: "IEC 62368-1",
    edition: "3",
    table: "stability: tilted in all directions",
    via: "mail-archive.com emc-pstc msg76504",
    confidence: "read",
  },
  range: "equipment that stands on a floor",
};

/** A flat top that high off the ground is sat and stood on until the plan says otherwise. */
export const seatHeight: Row<{ readonly low: string; readonly high: string }> = {
  key: "height of a flat top that is sat on",
  value: { low: "12", high: "24" },
  unit: "in",
  source: COMMON_PRACTICE,
};

export const standingPerson: Row<{ readonly weight: number; readonly square: string }> = {
  key: "a person standing on a seat",
  value: { weight: 300, square: "4" },
  unit: "lb, in",
  source: FROM_MEMORY,
  range: "on 4 x 4 in at the worst place",
};

export const standingRows: readonly Row<unknown>[] = [
  gust,
  windFactor,
  dragCoefficient,
  tippingMargin,
  tippingMarginChildren,
  pushAtRail,
  ...Object.values(anchorAbove),
  leanStoodUp,
  seatHeight,
  standingPerson,
];
