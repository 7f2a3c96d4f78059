/** What a measuring-up slip says, in English. */

export const ENGLISH_SLIP = {
  /** Over the page; the plan's title. */
  of: (title: string) => `Measuring up: ${title}`,
  headings: { drawings: "Where it is measured", rows: "To measure, in this order" },
  key: "Write what your own tape says. Lines in the drawings have these numbers, where a measure is seen on the thing itself.",
  columns: { number: "No.", what: "What", now: "In the plan", bounds: "Bounds", measured: "Measured here" },
  sides: {
    space: { wide: "the space: width", deep: "the space: depth", high: "the space: height" },
    "way in": { wide: "the way in: width", deep: "the way in: depth", high: "the way in: height" },
  },
  between: (least: string, most: string) => `${least} to ${most}`,
  least: (least: string) => `at least ${least}`,
  most: (most: string) => `at most ${most}`,
  tips: [
    "Measure a space at both ends and in the middle: the smallest counts. Two diagonals of the same length say that it is square (common practice).",
    "Hook the tape on the same edge each time, and read it straight on. A bent tape in a corner reads long.",
    "Leave a row empty where the plan's own measure is to stay.",
  ],
  headingTips: "Before you measure",
  /** What comes of it. */
  headingOutcome: "What comes of it",
  empty:
    "Nothing is filled in yet. Fill a row in, and this tells what becomes of the plan. The plan itself stays as it is until you write the measures into it.",
  cost: "Cost",
  problems: "Problems",
  unreadable: (text: string) => `“${text}” is no measure such as 28-1/2" or 724 mm`,
  nothing: "This plan has no measure of its own: nothing on it is to be measured at another place.",
};
