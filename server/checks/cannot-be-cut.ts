import { ifKnown } from "../plan";
import { exactly, fraction, INCH, LENGTH, minus, type Quantity, refused } from "../units";
import {
  type BoardWork,
  longestOf,
  ofTicks,
  type Part,
  type SheetWork,
  type Worked,
  whyNothing,
} from "../worked";
import type { Check, Finding } from "./check";
import { partsOf, stockPlace } from "./stock-words";

export const cannotBeCut: Check = {
  code: "cannot-be-cut",
  class: "error",
  title: "Wood that a piece cannot be cut from",
  page: `There is wood of the right kind, and yet nothing can be cut from it: the saw takes as much with each cut as the longest
board gives, squaring the end of a bought board leaves nothing of it, or everything on hand is bad from end to end. Of
sheets: a piece that is neither longer nor wider than all of them, and fits on none, because the long ones are narrow and the
wide ones short.

\`\`\`sawbuck
plan A rail
  kerf 12'
stock 2x4, sold 8' $4.20
part rail 2 of 2x4, length 60"
\`\`\`

\`\`\`sawbuck
plan A rail
  kerf 1/8"
stock 2x4, sold 8' $4.20
part rail 2 of 2x4, length 60"
\`\`\``,
  templates: {
    kerf: "With each cut the saw would take {kerf}, and the longest {material} gives {longest}: nothing can be cut from it.",
    "kerf-usual": "Write what the saw really takes: with a common blade it is {usual}.",
    trim: "{trim} is taken off one end of each bought {material}, and the longest that is sold measures {longest}: nothing is left to cut from.",
    bad: "All {material} on hand is bad from end to end: nothing can be cut from it.",
    neither:
      "{part} is {length} x {width}: of {material}, the sheets that are long enough are too narrow for it, as the grain runs.",
    either: "{part} is {length} x {width}, and fits on no sheet of {material}, whichever way it is turned.",
    stock: "{material} is sold and on hand like this.",
    "larger-sheet": "Look for a larger sheet of {material}, or make {part} of two pieces.",
  },
  run: (worked) => [
    ...sawn(worked),
    ...[...worked.boards, ...worked.sheets].flatMap((work) => nothingLeft(work, worked)),
    ...worked.sheets.flatMap((work) => work.tooLarge.map((part) => onNoSheet(part, work))),
  ],
};

/** A common blade (server/trade, kerfs). */
const USUAL = exactly(LENGTH, fraction.divide(INCH, fraction.rational(8))!);

/** The saw is the same for all stocks, so it is told of once, by the longest of those it takes whole. */
function sawn(worked: Worked): Finding[] {
  const { kerf } = worked.settings;
  const [work] = [...worked.boards, ...worked.sheets]
    .filter((work) => whyNothing(work) === "kerf" && partsOf(work, worked).length > 0)
    .sort((a, b) => longestOf(b) - longestOf(a));
  if (!work) return [];
  const { material } = work;
  const longest = ofTicks(longestOf(work));
  return [
    {
      ...stockPlace(work, worked),
      ...(kerf.at && { at: kerf.at }),
      says: "kerf",
      slots: { kerf: kerf.value, material: material.name, longest },
      numbers: [
        { name: "kerf", value: kerf.value, source: "the plan" },
        { name: `longest ${material.name}`, value: longest, source: "the stock line" },
      ],
      related: stockLine(work),
      cures: isMore(kerf.value, USUAL) ? [{ says: "kerf-usual", slots: { usual: USUAL }, edits: [] }] : [],
    },
  ];
}

const isMore = (a: Quantity, b: Quantity): boolean => {
  const more = minus(a, b);
  return !refused(more) && more.approx > 0;
};

function nothingLeft(work: BoardWork | SheetWork, worked: Worked): Finding[] {
  const why = whyNothing(work);
  if ((why !== "trim" && why !== "bad") || partsOf(work, worked).length === 0) return [];
  const { material, job } = work;
  const longest = ofTicks(Math.max(0, ...job.sold.map(({ length }) => length)));
  return [
    {
      ...stockPlace(work, worked),
      says: why,
      slots: { material: material.name, trim: material.endTrim.value, longest },
      related: stockLine(work),
    },
  ];
}

function onNoSheet(part: Part, work: SheetWork): Finding {
  const { material } = work;
  const [length, width] = [ifKnown(part.needs)!, ifKnown(part.width)!];
  return {
    at: part.ripped ?? part.lengthAt,
    about: [part.name, material.name],
    says: material.grain === "none" ? "either" : "neither",
    slots: { part: part.name, length, width, material: material.name },
    numbers: [
      { name: `length of ${part.name}`, value: length, source: "worked out" },
      { name: `width of ${part.name}`, value: width, source: "the plan" },
    ],
    related: stockLine(work),
    cures: [{ says: "larger-sheet", slots: { material: material.name, part: part.name }, edits: [] }],
  };
}

const stockLine = ({ material }: BoardWork | SheetWork): NonNullable<Finding["related"]> =>
  material.declared ? [{ at: material.declared.at, says: "stock", slots: { material: material.name } }] : [];
