/** What the wood of a plan weighs: one copy of the thing, its heaviest piece, and what is carried home from the yard. */
import { ifKnown, known, MISTAKE, unknown, type Value } from "../plan";
import { woodWeight } from "../strength/weight";
import { assumedSpecies, cite, treatedWet } from "../trade";
import { type Quantity, roughly, WEIGHT } from "../units";
import type { BoardWork, SheetWork } from "./layouts";
import type { Material } from "./materials";
import type { Worked } from "./work";

export interface PartWeight {
  readonly part: string;
  /** One piece. What notches take out of it still counts. */
  readonly each: Value<Quantity>;
  readonly count: Value<number>;
}

/** What is bought of one stock or sheet, in all its lengths. */
export interface BoughtWeight {
  readonly material: Material;
  readonly aisle: "boards" | "sheets";
  readonly count: number;
  /** The longest side of any of them; undefined when nothing is bought. */
  readonly longest: Quantity | undefined;
  /** All of them, at the moisture taken for this wood. */
  readonly weight: Value<Quantity>;
  /** The heaviest single one. */
  readonly heaviest: Quantity | undefined;
  /** Why it may weigh more than that: green or freshly treated wood. Empty for dry wood. */
  readonly wetter: string;
}

export interface Weights {
  /** All wood of one copy, in kilograms as a weight: without screws, finish and fill. */
  readonly own: Value<Quantity>;
  /** As far as it is known; nothing is left out when `own` is known. */
  readonly atLeast: Quantity;
  readonly unknown: readonly PartWeight[];
  readonly parts: readonly PartWeight[];
  readonly heaviest: { readonly part: string; readonly weight: Quantity } | undefined;
  readonly bought: readonly BoughtWeight[];
  /** Everything bought of wood. */
  readonly trip: Value<Quantity>;
}

/** Weights follow from sizes as cut and the density of each wood at its moisture; an unknown part leaves the sum unknown. */
export function weightOf(worked: Worked): Weights {
  const parts = [...worked.parts.values()].map(
    ({ name, weight, count }): PartWeight => ({ part: name, each: weight, count }),
  );
  const bought = [
    ...worked.boards.map((w) => boughtOf(w, "boards")),
    ...worked.sheets.map((w) => boughtOf(w, "sheets")),
  ].filter(({ count }) => count > 0);
  const totals = parts.map((p) => ({ ...p, total: totalOf(p) }));
  const pieces = parts.flatMap(({ part, each }) => {
    const weight = ifKnown(each);
    return weight ? [{ part, weight }] : [];
  });
  return {
    own: sumOf(totals.map((t) => t.total)),
    atLeast: roughly(
      WEIGHT,
      totals.reduce((kg, t) => kg + (ifKnown(t.total)?.approx ?? 0), 0),
    ),
    unknown: totals
      .filter((t) => t.total.state !== "known")
      .map(({ part, each, count }) => ({ part, each, count })),
    parts,
    heaviest: pieces.reduce<(typeof pieces)[number] | undefined>(
      (most, p) => (most && most.weight.approx >= p.weight.approx ? most : p),
      undefined,
    ),
    bought,
    trip: sumOf(bought.map((b) => b.weight)),
  };
}

function totalOf({ each, count }: PartWeight): Value<Quantity> {
  if (count.state !== "known") return count;
  return each.state === "known" ? known(roughly(WEIGHT, each.value.approx * count.value)) : each;
}

/** The sum, or the first cause for which there is none; a mistake comes before other causes. */
function sumOf(values: readonly Value<Quantity>[]): Value<Quantity> {
  const missing = values.filter((v) => v.state !== "known");
  const mistake = missing.find((v) => v.state === "unknown" && v.cause.kind === "mistake");
  const [first] = mistake ? [mistake] : missing;
  if (first) return first;
  return known(
    roughly(
      WEIGHT,
      values.reduce((kg, v) => kg + ifKnown(v)!.approx, 0),
    ),
  );
}

function boughtOf({ material, answer }: BoardWork | SheetWork, aisle: BoughtWeight["aisle"]): BoughtWeight {
  const lots = answer.buy.map(({ id, count }) => {
    const { length, width } = material.sold[Number(id.slice("sold ".length))]!;
    return { count, length, width, weight: oneOf(material, length, width) };
  });
  const sides = lots.flatMap(({ length, width }) => (width ? [length, width] : [length]));
  return {
    material,
    aisle,
    count: lots.reduce((sum, l) => sum + l.count, 0),
    longest: largestOf(sides),
    weight: sumOf(
      lots.map(({ count, weight }) =>
        weight.state === "known" ? known(roughly(WEIGHT, weight.value.approx * count)) : weight,
      ),
    ),
    heaviest: largestOf(lots.flatMap(({ weight }) => ifKnown(weight) ?? [])),
    wetter: wetterThan(material),
  };
}

const largestOf = (values: readonly Quantity[]): Quantity | undefined =>
  values.reduce<Quantity | undefined>((most, q) => (most && most.approx >= q.approx ? most : q), undefined);

/** One board or sheet as it is sold. A sheet without a width is square. */
function oneOf(material: Material, length: Quantity, wide: Quantity | undefined): Value<Quantity> {
  const { wood, thickness } = material;
  const width = material.kind === "board" ? material.width : known(wide ?? length);
  if (thickness.state !== "known") return thickness;
  if (width?.state !== "known") return width ?? MISTAKE;
  if (!wood.density) return unknown("unsaid", "no weight of wood", { wood: wood.title });
  const kg = woodWeight(length.approx * width.value.approx * thickness.value.approx, wood.density);
  return kg === undefined ? MISTAKE : known(roughly(WEIGHT, kg));
}

/** Why boards of that stock may weigh more than was worked out. */
function wetterThan(material: Material): string {
  const { low, high } = treatedWet.value;
  if (material.conditions.includes("treated"))
    return `freshly treated wood is wet: ${low} to ${high} lb/cuft (${cite(treatedWet.source)})`;
  return isGreen(material) ? "wood sold green is wet, and heavier than this until it has dried" : "";
}

/** Whether boards of that stock are not dry: treated, said to be green, or with more moisture than boards sold dry may have. */
export const isGreen = ({ conditions, wood, declared }: Material): boolean =>
  conditions.includes("treated") ||
  wood.moisture > MOST_DRY ||
  (declared?.entry.clauses.some((c) => c.kind === "moisture" && c.state === "green") ?? false);

/** Percent: PS 20 calls boards dry up to this, which is also what is taken for boards sold green. */
const MOST_DRY = assumedSpecies.value.greenMoisture;
