// Boards by the name they are sold under: dressed sizes, the usual names, near names, lengths sold and saw kerfs.
import { nearestNames } from "./nearest";
import { COMMON_PRACTICE, type Row, remembered, type Source, type Span } from "./row";
import { tapeNumber } from "./tape";

export type LumberStandard = "ps20-dry" | "ps20-green" | "planed-metric";

/** A board's real size: tape text in inches, or numbers of millimetres. */
export type Section =
  | {
      readonly nominal: string;
      readonly thickness: string;
      readonly width: string;
      readonly unit: "in";
      readonly source: Source;
    }
  | {
      readonly nominal: string;
      readonly thickness: number;
      readonly width: number;
      readonly unit: "mm";
      readonly source: Source;
    };

export const lumberStandards: readonly LumberStandard[] = ["ps20-dry", "ps20-green", "planed-metric"];

/**
 * The size behind a name such as "2x4", "5/4x6" or "45x145"; undefined when no rule covers it (the thin side comes
 * first). Inch names under "planed-metric" are read as dry PS 20; a name with both numbers 12 or more is metric and
 * is its own size under every standard.
 */
export function section(name: string, standard: LumberStandard): Section | undefined {
  const sides = sidesOf(name);
  if (sides === undefined || sides.thin > sides.wide) return undefined;
  if (isMetric(sides)) return metricSection(sides);
  const state = standard === "ps20-green" ? "green" : "dry";
  const both = sides.thin >= LEAST_TIMBER ? timberSizes(sides, state) : boardSizes(sides, state);
  if (both === undefined) return undefined;
  const nominal = `${sides.thinText}x${sides.wideText}`;
  const source = nominal === "5/4x6" ? COMMON_PRACTICE : both.source;
  return { nominal, thickness: both.thickness, width: both.width, unit: "in", source };
}

/** The names usually sold under a standard, thinnest first, then narrowest. */
export function sectionNames(standard: LumberStandard): readonly string[] {
  return standard === "planed-metric" ? USUAL_METRIC : USUAL_INCH;
}

/**
 * At most `n` usual names near one that is unknown, nearest first. Two sides are compared by size (nominal, as
 * measured off a board, or the other way round), metric ones with metric names; anything else by spelling. Empty when
 * nothing is near.
 */
export function nearestSections(name: string, standard: LumberStandard, n: number): string[] {
  const sides = sidesOf(name);
  if (sides === undefined) return nearestNames(tidy(name), sectionNames(standard), n);
  const metric = isMetric(sides);
  const limit = Math.max(metric ? 25 : 1, (sides.thin + sides.wide) / 3);
  return (metric ? USUAL_METRIC : USUAL_INCH)
    .map((known, order) => ({ known, order, distance: sizeDistance(sides, known, standard) }))
    .filter(({ distance }) => distance <= limit)
    .sort((a, b) => a.distance - b.distance || a.order - b.order)
    .slice(0, Math.max(0, n))
    .map(({ known }) => known);
}

const VIA = "engineeringtoolbox.com d_1270";
const PS20: Record<"dry" | "green", Source> = {
  dry: { document: "PS 20-20", table: "dressed dry sizes", via: VIA, confidence: "read" },
  green: { document: "PS 20-20", table: "dressed green sizes", via: VIA, confidence: "read" },
};
const CSA = remembered("CSA O141", "metric names of the inch sizes");
const PLANED: Source = { document: "planed metric, sold by finished size", confidence: "common practice" };

type Sizes = readonly [nominal: string, dry: string, green: string];

const THICKNESSES: readonly Sizes[] = [
  ["1", "3/4", "25/32"],
  ["5/4", "1", "1-1/32"],
  ["6/4", "1-1/4", "1-9/32"],
  ["2", "1-1/2", "1-9/16"],
  ["2-1/2", "2", "2-1/16"],
  ["3", "2-1/2", "2-9/16"],
  ["3-1/2", "3", "3-1/16"],
  ["4", "3-1/2", "3-9/16"],
];

const WIDTHS: readonly Sizes[] = [
  ["2", "1-1/2", "1-9/16"],
  ["3", "2-1/2", "2-9/16"],
  ["4", "3-1/2", "3-9/16"],
  ["5", "4-1/2", "4-5/8"],
  ["6", "5-1/2", "5-5/8"],
  ["8", "7-1/4", "7-1/2"],
  ["10", "9-1/4", "9-1/2"],
  ["12", "11-1/4", "11-1/2"],
];

const LEAST_TIMBER = 5;

/** Timbers, 5 in and more both ways: what is dressed off, for whole nominal inches from and to. */
const TIMBERS: readonly { from: number; to: number; dry: string; green: string }[] = [
  { from: 5, to: 6, dry: "1/2", green: "1/2" },
  { from: 7, to: 15, dry: "3/4", green: "1/2" },
];

function sizeRows(kind: string, table: readonly Sizes[]): Row<string>[] {
  return table.flatMap(([nominal, dry, green]) => [
    { key: `${kind} ${nominal} dry`, value: dry, unit: "in", source: PS20.dry },
    { key: `${kind} ${nominal} green`, value: green, unit: "in", source: PS20.green },
  ]);
}

const SIZE_ROWS = new Map<string, Row<string>>(
  [
    ...sizeRows("thickness", THICKNESSES),
    ...sizeRows("width", WIDTHS),
    ...TIMBERS.flatMap(({ from, to, dry, green }) => [
      { key: `timber ${from} to ${to} dry`, value: dry, unit: "in", source: PS20.dry, range: "off the name" },
      {
        key: `timber ${from} to ${to} green`,
        value: green,
        unit: "in",
        source: PS20.green,
        range: "off the name",
      },
    ]),
  ].map((row) => [row.key, row]),
);

const USUAL_INCH: readonly string[] = [
  ...["1x2", "1x3", "1x4", "1x6", "1x8", "1x10", "1x12", "5/4x4", "5/4x6"],
  ...["2x2", "2x3", "2x4", "2x6", "2x8", "2x10", "2x12", "4x4", "4x6", "6x6"],
];
const CSA_NAMES = ["19x89", "38x89", "38x140", "38x184", "38x235", "38x286", "89x89"];
const USUAL_METRIC: readonly string[] = [
  ...["18x95", "19x89", "22x95", "28x120", "38x89", "38x140", "38x184", "38x235", "38x286"],
  ...["45x45", "45x95", "45x145", "45x195", "89x89"],
];

/** Lengths usually sold: feet for the inch standards, millimetres for the metric one. */
export const soldLengths: readonly Row<readonly number[]>[] = [
  {
    key: "lengths sold, inch lumber",
    value: [6, 8, 10, 12, 14, 16, 18, 20],
    unit: "ft",
    source: { document: "sizes.com", table: "lumber lengths", confidence: "read" },
    range: "whole feet, in steps of 2 (the steps are from memory)",
  },
  {
    key: "lengths sold, metric lumber",
    value: [1800, 2100, 2400, 2700, 3000, 3300, 3600, 3900, 4200, 4500, 4800, 5100, 5400, 5700, 6000],
    unit: "mm",
    source: remembered("metric lengths, steps of 300 mm"),
  },
];

/** What a saw turns to dust, in inches: the usual figure, and the spread where one is known. */
export const kerfs: readonly Row<string>[] = [
  kerf("circular saw, thin blade", "1/16", "0.059 to 0.067"),
  kerf("table or miter saw, thin blade", "3/32", "0.090 to 0.098"),
  kerf("table or miter saw, full blade", "1/8", "0.118 to 0.126"),
  kerf("hand saw", "1/16", "about"),
  kerf("jigsaw", "1/16", "about"),
];

/** EN 336 tolerances in mm, planed (T2): plus and minus for a side. */
export const planedTolerances: readonly Row<Span>[] = [
  tolerance("planed side up to 100 mm", 1),
  tolerance("planed side over 100 mm", 1.5),
];

export const lumberRows: readonly Row<unknown>[] = [
  ...SIZE_ROWS.values(),
  ...[...USUAL_INCH, ...USUAL_METRIC].map((name) => soldRow(name)),
  ...soldLengths,
  ...kerfs,
  ...planedTolerances,
];

interface Sides {
  readonly thin: number;
  readonly wide: number;
  readonly thinText: string;
  readonly wideText: string;
}

function tidy(name: string): string {
  return name.trim().toLowerCase().replaceAll("×", "x").replaceAll(" ", "");
}

/** The two sides as named. Quarters are one thickness under two names: 1-1/4 is 5/4, 1-1/2 is 6/4. */
function sidesOf(name: string): Sides | undefined {
  const [first = "", second = "", ...more] = tidy(name).split("x");
  const thinText = { "1-1/4": "5/4", "1-1/2": "6/4" }[first] ?? first;
  const [thin, wide] = [tapeNumber(thinText), tapeNumber(second)];
  if (thin === undefined || wide === undefined || more.length > 0) return undefined;
  return { thin, wide, thinText, wideText: second };
}

function isMetric({ thin, wide }: Sides): boolean {
  return thin >= 12 && wide >= 12;
}

function metricSection({ thin, wide }: Sides): Section {
  const nominal = `${thin}x${wide}`;
  const source = CSA_NAMES.includes(nominal) ? CSA : PLANED;
  return { nominal, thickness: thin, width: wide, unit: "mm", source };
}

interface Dressed {
  readonly thickness: string;
  readonly width: string;
  readonly source: Source;
}

function boardSizes(sides: Sides, state: "dry" | "green"): Dressed | undefined {
  const thickness = SIZE_ROWS.get(`thickness ${sides.thinText} ${state}`);
  const width = SIZE_ROWS.get(`width ${sides.wideText} ${state}`);
  if (thickness === undefined || width === undefined) return undefined;
  return { thickness: thickness.value, width: width.value, source: thickness.source };
}

function timberSizes(sides: Sides, state: "dry" | "green"): Dressed | undefined {
  const thickness = timberSide(sides.thin, state);
  const width = timberSide(sides.wide, state);
  return thickness === undefined || width === undefined
    ? undefined
    : { thickness, width, source: PS20[state] };
}

function timberSide(nominal: number, state: "dry" | "green"): string | undefined {
  const rule = TIMBERS.find(({ from, to }) => nominal >= from && nominal <= to);
  if (rule === undefined || !Number.isInteger(nominal)) return undefined;
  return `${nominal - 1}-${rule[state] === "3/4" ? "1/4" : "1/2"}`;
}

/** How far a known name is from two sides: the least of its nominal size, its real size, and its sides swapped. */
function sizeDistance({ thin, wide }: Sides, known: string, standard: LumberStandard): number {
  const nominal = sidesOf(known);
  const real = section(known, standard);
  if (nominal === undefined || real === undefined) return Number.POSITIVE_INFINITY;
  const away = (a: number, b: number) => Math.abs(a - nominal.thin) + Math.abs(b - nominal.wide);
  const [thickness, width] = [sideNumber(real.thickness), sideNumber(real.width)];
  const fromReal = Math.abs(thin - thickness) + Math.abs(wide - width);
  const measured = fromReal <= MEASURED ? fromReal : Number.POSITIVE_INFINITY;
  return Math.min(away(thin, wide), measured, away(wide, thin) + SWAPPED);
}

/** Sides this near a real size were measured off a board, in inches. */
const MEASURED = 0.25;

/** Sides written the wrong way round count a little further off than the same sides the right way. */
const SWAPPED = 0.25;

function sideNumber(side: string | number): number {
  return typeof side === "number" ? side : (tapeNumber(side) ?? Number.POSITIVE_INFINITY);
}

function soldRow(name: string): Row<string> {
  const sold = section(name, "ps20-dry");
  const value = `${sold?.thickness} x ${sold?.width}`;
  return { key: `sold ${name}`, value, unit: sold?.unit ?? "", source: sold?.source ?? COMMON_PRACTICE };
}

function kerf(key: string, value: string, range: string): Row<string> {
  return { key: `kerf of a ${key}`, value, unit: "in", source: remembered("saw blade widths"), range };
}

function tolerance(key: string, either: number): Row<Span> {
  const source: Source = {
    document: "EN 336",
    table: "tolerance class T2",
    via: "eurocode.us, section sizes",
    confidence: "read",
  };
  return { key, value: { low: -either, high: either }, unit: "mm", source };
}
