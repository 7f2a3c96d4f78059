// What a board of a wood and a size may be stressed to: as lumber of grade No. 2 where NDS has it, else from clear wood.
import {
  clearWoodBending,
  clearWoodFactors,
  clearWoodReduction,
  greenRuptures,
  otherElasticities,
} from "./clear-wood";
import {
  type DesignValues,
  designValues,
  flatUseFactor,
  sizeFactor,
  southernPineBending,
  wetBendingExempt,
  wetFactors,
} from "./design";
import { MPA_PER_PSI } from "./metric";
import { type Row, remembered, type Source } from "./row";
import { groupOf, stiffnesses } from "./wood";

/** Stresses, or factors on them. */
export interface Stresses {
  readonly bending: number;
  readonly shear: number;
  /** Across the grain. */
  readonly bearing: number;
  readonly elasticity: number;
}

/** N/mm2, dry, under a load of ten years in all; the size of the board is in the bending. */
export interface BendingValues extends Stresses {
  /** What the board is taken to be: no stamp is looked for. */
  readonly grade: "No. 2";
  /** "graded": values printed for lumber of that grade. "clear wood": averages of clear wood, brought down. */
  readonly kind: "graded" | "clear wood";
  /** Where the bending comes from. */
  readonly from: Source;
  readonly elasticityFrom: Source;
  /** Where shear and bearing come from. */
  readonly shearFrom: Source;
  /** The name whose values they are: the wood itself, its group, or the weakest wood of the group. */
  readonly of: string;
  /** What each is multiplied by where the wood gets wet. */
  readonly wet: Stresses;
  /** How the bending came about: what is printed, in psi, times each of these. */
  readonly steps: BendingSteps;
}

export interface BendingSteps {
  readonly printed: number;
  readonly times: readonly BendingFactor[];
}

/**
 * size: of the board's width. flat use: laid on its wide face. one in twenty: the weaker pieces. margin: ten years, and for
 * safety. knots: of a No. 2 board. dry: seasoned wood is stronger than green.
 */
export interface BendingFactor {
  readonly what: "size" | "flat use" | "one in twenty" | "margin" | "knots" | "dry";
  readonly by: number;
}

/**
 * Values of a board, sizes in mm as they really are, `flat` when its thickness is the depth that bends. Lumber 1-1/2 in
 * and thicker takes NDS Table 4A; thinner boards, which that table does not cover, their clear wood by ASTM D245 (see
 * `clearWoodBending`), though never more than lumber of their width, with the shear and bearing of their group and the
 * average stiffness at 12% moisture as printed.
 * A wood with no row of its own takes its group's, a group the weakest of its woods. Undefined when nothing is printed:
 * no such wood, a timber thicker than 4 in nominal, lumber wider than 12.
 */
export function bendingValues(
  species: string,
  thickness: number,
  broad: number,
  flat: boolean,
): BendingValues | undefined {
  const thick = Math.min(thickness, broad);
  const width = Math.max(thickness, broad);
  if (!(thick > 0 && thick < TIMBER)) return undefined;
  const group = stampOf(species);
  const printed = designValues(group);
  if (printed === undefined) return undefined;
  return thick < LUMBER
    ? ofClearWood(species, printed, thick, width, flat)
    : ofLumber(printed, width, flat && thick < FLAT_USE);
}

function ofLumber(
  { key, value, source }: Row<DesignValues>,
  width: number,
  flat: boolean,
): BendingValues | undefined {
  const nominal = nominalWidth(width);
  const isPine = key === "southern-pine";
  const pine = isPine ? (southernPineBending(nominal) ?? southernPineBending(nominal + 1)) : undefined;
  const size = pine ? 1 : (sizeFactor(nominal)?.value ?? Number.NaN);
  const sized = (pine?.value ?? value.bending) * size;
  if (Number.isNaN(sized)) return undefined;
  const laid = flat ? (flatUseFactor(nominal)?.value ?? 1) : 1;
  const wet = sized > wetBendingExempt.value ? wetFactors.bending.value : 1;
  return {
    grade: value.grade,
    kind: "graded",
    bending: sized * laid * MPA_PER_PSI,
    ...inMpa(value),
    elasticity: value.elasticity * MPA_PER_PSI,
    from: pine?.source ?? source,
    elasticityFrom: source,
    shearFrom: source,
    of: key,
    wet: { ...WET, bending: wet },
    steps: {
      printed: pine?.value ?? value.bending,
      times: [
        { what: "size" as const, by: size },
        { what: "flat use" as const, by: laid },
      ].filter(({ by }) => by !== 1),
    },
  };
}

function ofClearWood(
  species: string,
  printed: Row<DesignValues>,
  thick: number,
  width: number,
  flat: boolean,
): BendingValues | undefined {
  const woods = CLEAR.has(species)
    ? [species]
    : (MEMBERS.get(species) ?? MEMBERS.get(stampOf(species)) ?? []);
  const known = woods
    .flatMap((name) => CLEAR.get(name) ?? [])
    .sort((a, b) => a.rupture.value - b.rupture.value);
  const weakest = known[0];
  if (weakest === undefined) return undefined;
  const limpest = known.reduce((a, b) => (b.elasticity.value < a.elasticity.value ? b : a)).elasticity;
  const depth = flat ? thick : width;
  const bending = clearWoodBending(weakest.rupture.value, depth) * MPA_PER_PSI;
  const lumber = ofLumber(printed, width, flat);
  const capped = lumber !== undefined && lumber.bending < bending;
  return {
    grade: printed.value.grade,
    kind: "clear wood",
    bending: capped ? lumber.bending : bending,
    ...inMpa(printed.value),
    elasticity: limpest.value * MPA_PER_PSI,
    from: capped ? lumber.from : weakest.rupture.source,
    elasticityFrom: limpest.source,
    shearFrom: printed.source,
    of: weakest.rupture.key,
    wet: { ...WET, bending: 1 / clearWoodReduction.seasoning.value },
    steps: capped ? lumber.steps : { printed: weakest.rupture.value, times: clearWoodFactors(depth) },
  };
}

const inMpa = ({ shear, bearing }: DesignValues): Pick<Stresses, "shear" | "bearing"> => ({
  shear: shear * MPA_PER_PSI,
  bearing: bearing * MPA_PER_PSI,
});

/** The name that a design table has for a wood: its own, the group's it is surely stamped with, or the weaker of several. */
function stampOf(species: string): string {
  if (designValues(species) !== undefined) return species;
  return STAMPS.get(species) ?? species;
}

/** The next listed width, in nominal inches, at or above a real one in mm, green lumber included. */
function nominalWidth(mm: number): number {
  return WIDTHS.find(([real]) => mm <= real)?.[1] ?? Number.NaN;
}

/** Real widths of green lumber, the widest that each nominal one has, and a hair. */
const WIDTHS: readonly (readonly [mm: number, nominal: number])[] = [
  [90.6, 4],
  [117.6, 5],
  [143, 6],
  [190.7, 8],
  [241.5, 10],
  [292.3, 12],
];
/** mm: lumber of nominal 2 in is 38.1 dry, 38 by its metric name; nominal 3 in is 63.5 or, green, 65.1, nominal 4 is 88.9. */
const LUMBER = 37.5;
const FLAT_USE = 70;
/** mm: nominal 5 in is 114.3 and more, and another table's. */
const TIMBER = 110;

const WET: Stresses = {
  bending: wetFactors.bending.value,
  shear: wetFactors.shear.value,
  bearing: wetFactors.bearing.value,
  elasticity: wetFactors.elasticity.value,
};

const STAMP_SOURCE = remembered("NDS", "species groups");

/** Groups in whose lumber a wood is sold, where it has no row of its own: of several, the weaker. */
export const lumberStamps: readonly Row<string>[] = (
  [
    ["douglas-fir-interior-south", "douglas-fir-larch"],
    ["western-hemlock", "hem-fir"],
    ["grand-fir", "hem-fir"],
    ["noble-fir", "hem-fir"],
    ["pacific-silver-fir", "hem-fir"],
    ["white-fir", "hem-fir"],
    ["engelmann-spruce", "spruce-pine-fir-south"],
    ["white-spruce", "spruce-pine-fir-south"],
    ["black-spruce", "spruce-pine-fir-south"],
    ["red-spruce", "spruce-pine-fir-south"],
    ["sitka-spruce", "spruce-pine-fir-south"],
    ["balsam-fir", "spruce-pine-fir-south"],
    ["lodgepole-pine", "spruce-pine-fir-south"],
    ["red-pine", "spruce-pine-fir-south"],
    ["subalpine-fir", "western-woods"],
    ["ponderosa-pine", "western-woods"],
    ["port-orford-cedar", "western-cedars"],
    ["redwood-old-growth", "redwood"],
    ["redwood-young-growth", "redwood"],
  ] as const
).map(([key, value]) => ({ key, value, unit: "", source: STAMP_SOURCE }));

/** Woods that may lie under a group's stamp: a thin board of the group is taken for the weakest of them. */
export const groupMembers: readonly Row<readonly string[]>[] = (
  [
    [
      "spruce-pine-fir",
      ["engelmann-spruce", "white-spruce", "lodgepole-pine", "subalpine-fir", "balsam-fir"],
    ],
    ["spruce-pine-fir-south", ["engelmann-spruce", "white-spruce", "lodgepole-pine", "balsam-fir"]],
    ["hem-fir", ["western-hemlock", "grand-fir", "noble-fir", "pacific-silver-fir", "white-fir"]],
    ["douglas-fir-larch", ["douglas-fir", "douglas-fir-interior-north", "western-larch"]],
    ["southern-pine", ["loblolly-pine", "longleaf-pine", "shortleaf-pine", "slash-pine"]],
    ["western-cedars", ["western-redcedar", "port-orford-cedar"]],
    ["redwood", ["redwood-young-growth", "redwood-old-growth"]],
    ["eastern-hemlock-tamarack", ["eastern-hemlock", "tamarack"]],
  ] as const
).map(([key, value]) => ({ key, value, unit: "", source: STAMP_SOURCE }));

const STAMPS = new Map([...groupOf, ...lumberStamps].map(({ key, value }) => [key, value]));
const MEMBERS = new Map(groupMembers.map(({ key, value }) => [key, value]));

interface ClearWood {
  readonly rupture: Row<number>;
  readonly elasticity: Row<number>;
}

const ELASTICITIES = new Map(
  [...stiffnesses.map((row) => ({ ...row, value: row.value.elasticity })), ...otherElasticities].map(
    (row) => [row.key, row],
  ),
);

const CLEAR: ReadonlyMap<string, ClearWood> = new Map(
  greenRuptures.flatMap((rupture) => {
    const elasticity = ELASTICITIES.get(rupture.key);
    return elasticity === undefined ? [] : [[rupture.key, { rupture, elasticity }] as const];
  }),
);

export const bendingRows: readonly Row<unknown>[] = [...lumberStamps, ...groupMembers];
