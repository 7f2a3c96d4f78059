import { ifKnown } from "../plan";
import { soldLengths } from "../trade";
import { exactly, fraction, LENGTH, lengthText, type Quantity, roughly } from "../units";
import { type BoardWork, type Part, type SheetWork, TICKS_PER_MM, type Worked } from "../worked";
import type { Check, Cure, Finding, Says } from "./check";
import { apart } from "./writing";

export const tooLongForStock: Check = {
  code: "too-long-for-stock",
  class: "error",
  title: "A piece longer than any board",
  page: `A piece cannot be cut from boards that are all shorter. What counts is the length from tip to tip, with what is left on to
fit; of a bought board, less the end that is squared; of one on hand, the longest stretch without a bad place.

\`\`\`sawbuck
stock 2x4, sold 6' $3.10, 8' $4.20
part rail 2 of 2x4, length 100"
\`\`\`

\`\`\`sawbuck
stock 2x4, sold 6' $3.10, 8' $4.20
part rail 2 of 2x4, length 90"
\`\`\``,
  templates: {
    board: "{part} needs {needs}, but the longest piece {material} gives is {longest}: {over} too little.",
    sheet: "{part} needs {needs} along the sheet, but the longest sheet of {material} is {longest}.",
    trim: "{trim} is taken off one end of a bought board.",
    stock: "{material} is sold and on hand like this.",
    "longer-sheet": "Look for a longer sheet of {material}, or make {part} of two pieces.",
    usual: "{A} {length} board is long enough, and is a length usually sold.",
    longer: "Look for a longer board of {material}, or make {part} of two pieces.",
  },
  run: (worked) => [
    ...worked.boards.flatMap((work) => work.tooLong.map((part) => onBoards(part, work, worked))),
    ...worked.sheets.flatMap((work) => work.tooLong.map((part) => onSheets(part, work, worked))),
  ],
};

function onBoards(part: Part, work: BoardWork, { settings }: Worked): Finding {
  const { material } = work;
  const needs = ifKnown(part.needs)!;
  const longest = inTicks(work.longest ?? 0);
  const over: Quantity = roughly(LENGTH, needs.approx - longest.approx);
  const [long, most] = apart(needs, longest, settings.display);
  const trim = material.endTrim;
  const trimmed: Says[] =
    trim.assumed && material.sold.length > 0
      ? [{ says: "trim", slots: { trim: lengthText(trim.value, settings.display) } }]
      : [];
  return {
    ...common(part, work),
    cures: [...usualLength(part, work, settings), ...common(part, work).cures],
    says: "board",
    slots: { part: part.name, needs: long, material: material.name, longest: most, over },
    numbers: [
      { name: part.name, value: needs, source: "worked out" },
      { name: `longest ${material.name}`, value: longest, source: "the stock line" },
    ],
    assumed: trimmed,
  };
}

function onSheets(part: Part, work: SheetWork, { settings }: Worked): Finding {
  const needs = ifKnown(part.needs)!;
  const sheets = [...work.job.sold, ...work.job.onHand];
  const longest = inTicks(Math.max(...sheets.map((s) => s.length)));
  const [long, most] = apart(needs, longest, settings.display);
  return {
    ...common(part, work),
    says: "sheet",
    slots: { part: part.name, needs: long, material: work.material.name, longest: most },
    numbers: [
      { name: part.name, value: needs, source: "worked out" },
      { name: `longest ${work.material.name}`, value: longest, source: "the sheet line" },
    ],
  };
}

/** The shortest of the lengths usually sold from which the piece can be cut, its end squared first. */
function usualLength(part: Part, { material }: BoardWork, { lumber, display }: Worked["settings"]): Cure[] {
  const metric = lumber === "planed-metric";
  const lengths = soldLengths.find((row) => row.unit === (metric ? "mm" : "ft"))?.value ?? [];
  const wanted = ifKnown(part.needs)!.approx + material.endTrim.value.approx;
  const length = lengths.find((l) => (metric ? l : l * FOOT) >= wanted - NUMERIC);
  if (length === undefined) return [];
  const text = metric ? lengthText(inTicks(length * TICKS_PER_MM), display) : `${length}'`;
  return [{ says: "usual", slots: { length: text }, edits: [] }];
}

const FOOT = 304.8;
const NUMERIC = 1e-6;

const inTicks = (ticks: number): Quantity => exactly(LENGTH, fraction.rational(ticks, TICKS_PER_MM));

function common(
  part: Part,
  { material }: BoardWork | SheetWork,
): Pick<Finding, "at" | "about" | "related"> & { readonly cures: readonly Cure[] } {
  const slots = { material: material.name, part: part.name };
  return {
    at: part.lengthAt,
    about: [part.name, material.name],
    related: material.declared ? [{ at: material.declared.at, says: "stock", slots }] : [],
    cures: [{ says: material.kind === "sheet" ? "longer-sheet" : "longer", slots, edits: [] }],
  };
}
