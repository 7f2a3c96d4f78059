// Plywood: what a named thickness really measures, the usual sheets, and the properties of a foot of panel width.
import { COMMON_PRACTICE, type Row, remembered, type Source } from "./row";
import { tapeNumber } from "./tape";

/** A panel thickness with its published bounds: tape text in inches, or numbers of millimetres. */
export type Panel =
  | {
      readonly name: string;
      readonly thickness: string;
      readonly min: string;
      readonly max: string;
      readonly unit: "in";
      readonly source: Source;
    }
  | {
      readonly name: string;
      readonly thickness: number;
      readonly min: number;
      readonly max: number;
      readonly unit: "mm";
      readonly source: Source;
    };

/** The panel of a performance category such as "23/32" (tape text, as stamped); undefined when it has no row. */
export function panel(category: string): Panel | undefined {
  const row = categories.find(({ key }) => key === category);
  if (row === undefined) return undefined;
  const [min, max] = row.value;
  return { name: category, thickness: category, min, max, unit: "in", source: row.source };
}

/** The panel usually sold at so many millimetres, with the bounds of a sanded face; undefined when not usual. */
export function metricPanel(mm: number): Panel | undefined {
  const row = metricThicknesses.find(({ value }) => value === mm);
  if (row === undefined) return undefined;
  const min = thousandths(mm - 0.4 - 0.03 * mm);
  const max = thousandths(mm + 0.2 + 0.03 * mm);
  return { name: row.key, thickness: mm, min, max, unit: "mm", source: EN315 };
}

/** Names of the panel thicknesses known, thinnest first, inch ones before metric ones. */
export function panelNames(): readonly string[] {
  return [...categories.map(({ key }) => key), ...metricThicknesses.map(({ key }) => key)];
}

/** The category that is usually handed over when a builder asks for this inch thickness; undefined for others. */
export function usuallySoldAs(thickness: string): Row<string> | undefined {
  return soldAs.find(({ key }) => key === thickness);
}

/** The categories whose published bounds hold a measured thickness in inches, thinnest first. */
export function categoriesMeasuring(inches: number): readonly string[] {
  const holds = ([min, max]: readonly [string, string]) =>
    inches >= (tapeNumber(min) ?? Number.POSITIVE_INFINITY) && inches <= (tapeNumber(max) ?? 0);
  return categories.filter(({ value }) => holds(value)).map(({ key }) => key);
}

const PS1: Source = {
  document: "PS 1",
  table: "performance categories, unsanded or touch-sanded, at 9% moisture",
  via: "apawood-europe.org, performance category",
  confidence: "read",
};
const EN315 = remembered("EN 315", "tolerances of sanded plywood");

/** Category to the least and greatest thickness that may be stamped with it. */
export const categories: readonly Row<readonly [min: string, max: string]>[] = (
  [
    ["1/4", "0.219", "0.281"],
    ["11/32", "0.313", "0.375"],
    ["3/8", "0.344", "0.406"],
    ["7/16", "0.406", "0.469"],
    ["15/32", "0.438", "0.500"],
    ["1/2", "0.469", "0.531"],
    ["19/32", "0.563", "0.625"],
    ["5/8", "0.594", "0.656"],
    ["23/32", "0.688", "0.750"],
    ["3/4", "0.719", "0.781"],
    ["7/8", "0.831", "0.919"],
    ["1-1/8", "1.069", "1.181"],
  ] as const
).map(([key, min, max]) => ({ key, value: [min, max], unit: "in", source: PS1 }));

export const metricThicknesses: readonly Row<number>[] = [6.5, 9, 12, 15, 18, 21, 24].map((value) => ({
  key: `${value}mm`,
  value,
  unit: "mm",
  source: remembered("metric plywood thicknesses usually sold"),
}));

/** What the yard hands over for a plain name. */
export const soldAs: readonly Row<string>[] = (
  [
    ["1/2", "15/32"],
    ["5/8", "19/32"],
    ["3/4", "23/32"],
  ] as const
).map(([key, value]) => ({
  key,
  value,
  unit: "in",
  source: COMMON_PRACTICE,
  range: "sheathing",
}));

/** The usual sheet, longer side last. */
export const sheetSizes: readonly [Row<readonly [string, string]>, Row<readonly [number, number]>] = [
  { key: "sheet, inches", value: ["48", "96"], unit: "in", source: COMMON_PRACTICE },
  { key: "sheet, metric", value: [1220, 2440], unit: "mm", source: remembered("usual metric sheet") },
];

/** Inertia (in^4) and section modulus (in^3) of one foot of panel width. */
export interface PanelSection {
  readonly thickness: number;
  readonly inertia: number;
  readonly modulus: number;
}

export const panelSections: readonly Row<PanelSection>[] = (
  [
    ["15/32", { thickness: 0.469, inertia: 0.103, modulus: 0.44 }],
    ["23/32", { thickness: 0.719, inertia: 0.371, modulus: 1.033 }],
    ["3/4", { thickness: 0.75, inertia: 0.422, modulus: 1.125 }],
  ] as const
).map(([category, value]) => ({
  key: `foot of panel, ${category}`,
  value,
  unit: "in, in^4, in^3",
  source: {
    document: "plywood design-capacity table",
    via: "an open-source structural library (xc)",
    confidence: "read",
  },
}));

export const panelRows: readonly Row<unknown>[] = [
  ...categories,
  ...metricThicknesses,
  ...soldAs,
  ...sheetSizes,
  ...panelSections,
];

function thousandths(mm: number): number {
  return Math.round(mm * 1000) / 1000;
}
