/**
 * Whether what bears a load is strong and stiff enough: each board against what its wood may be stressed to and how far it
 * may bend. Newtons, millimetres, N/mm2.
 */
import { adjusted, type WoodValues } from "../../strength/allowable";
import type { Bending } from "../../strength/beam";
import { longTermSag } from "../../strength/creep";
import { rectangle, shearStress } from "../../strength/section";
import { MM_PER_INCH } from "../../strength/units";
import {
  type BendingValues,
  bendingValues,
  bowLimit,
  categoriesMeasuring,
  creepFactors,
  durationFactors,
  type PanelCapacity,
  type PanelValues,
  panelValues,
  type Source,
  sagLimit,
  species,
} from "../../trade";
import type { Material } from "../materials";
import type { Lie } from "./lie";

/** What a board or a strip of a panel is, to bend. */
export interface Member {
  readonly wide: number;
  /** The way it bends. */
  readonly deep: number;
  readonly wet: boolean;
  /** The most it may be bent, N·mm, under a load of ten years, and how stiff it is, N·mm2; wet where it gets wet. */
  readonly moment: number;
  readonly stiffness: number;
  /** N; undefined where a board bends long before it shears. */
  readonly shear: number | undefined;
  /** N/mm2; undefined for a panel, whose strength is told for its width. */
  readonly stress: { readonly bending: number; readonly modulus: number } | undefined;
  /** Printed for lumber of that grade, brought down from clear wood, or the capacity of a panel. */
  readonly kind: "graded" | "clear wood" | "panel";
  /** The wood as a builder reads it, or the panel; and the wood whose values they are, where that is another one. */
  readonly of: string;
  readonly by: string | undefined;
  /** The same woods by the names of their species; undefined for a panel. */
  readonly species: { readonly of: string; readonly by: string | undefined } | undefined;
  readonly from: Source;
  /** What it is worked out from, before it gets wet: of its wood, or of a strip of a panel. */
  readonly values: BendingValues | undefined;
  readonly panel: { readonly capacity: PanelCapacity; readonly wet: PanelValues["wet"] } | undefined;
}

export interface Strain {
  readonly what: "bending" | "shear";
  /** N·mm or N. */
  readonly size: number;
  readonly limit: number;
  /** Of the limit; over 1 is too much. */
  readonly uses: number;
  /** It is the load that stays which uses the most, not all of it together. */
  readonly lasting: boolean;
}

/** mm */
export interface Sag {
  readonly size: number;
  readonly limit: number;
  readonly span: number;
  readonly uses: number;
}

export interface Judged {
  readonly strain: Strain;
  readonly sag: Sag;
}

/** Sizes of what bends; `along` the face grain of a panel. */
export interface Section {
  readonly wide: number;
  readonly deep: number;
  readonly flat: boolean;
  readonly alongGrain: boolean;
}

export const sectionOf = ({ wide, deep, flat, across }: Lie): Section => ({
  wide,
  deep,
  flat,
  alongGrain: !across,
});

/** What pieces are to bend, alike ones worked out once. */
export class Members {
  private readonly done = new Map<Material | undefined, Map<string, Member | undefined>>();

  of(material: Material | undefined, section: Section, wet: boolean): Member | undefined {
    const { wide, deep, flat, alongGrain } = section;
    const key = `${Math.round(wide * 1e6)} ${Math.round(deep * 1e6)} ${flat} ${alongGrain} ${wet}`;
    const known = this.done.get(material) ?? new Map<string, Member | undefined>();
    this.done.set(material, known);
    if (!known.has(key)) known.set(key, memberOf(material, section, wet));
    return known.get(key);
  }
}

/** What a piece of that material is to bend; undefined where no published value is known for its wood and size. */
export function memberOf(material: Material | undefined, section: Section, wet: boolean): Member | undefined {
  if (!material) return undefined;
  return material.kind === "sheet" ? panelOf(material, section, wet) : boardOf(material, section, wet);
}

function boardOf(material: Material, { wide, deep, flat }: Section, wet: boolean): Member | undefined {
  const values = bendingValues(material.wood.name, flat ? deep : wide, flat ? wide : deep, flat);
  const section = rectangle(wide, deep);
  const use: WoodValues | undefined =
    values && adjusted(values, { duration: 1, ...(wet && { wet: values.wet }) });
  if (!values || !section || !use) return undefined;
  return {
    wide,
    deep,
    wet,
    moment: use.bending * section.modulus,
    stiffness: use.elasticity * section.inertia,
    shear: Math.min(wide, deep) >= SHEARS ? use.shear / shearStress(1, section) : undefined,
    stress: { bending: use.bending, modulus: section.modulus },
    kind: values.kind,
    of: material.wood.title,
    by: values.of === material.wood.name ? undefined : (species(values.of)?.title ?? values.of),
    species: {
      of: material.wood.name,
      by: values.of === material.wood.name ? undefined : values.of,
    },
    from: values.from,
    values,
    panel: undefined,
  };
}

/** Shear is looked at in boards at least this thick, in mm (1-3/8"): thinner ones have no published value of their own. */
const SHEARS = 34.9;

function panelOf(material: Material, { wide, deep, alongGrain }: Section, wet: boolean): Member | undefined {
  const row = panelRow(material, deep);
  if (!row) return undefined;
  const { along, across, wet: factors } = row.value;
  const capacity = alongGrain && material.grain !== "none" ? along : across;
  return {
    wide,
    deep,
    wet,
    moment: capacity.strength * wide * (wet ? factors.strength : 1),
    stiffness: capacity.stiffness * wide * (wet ? factors.stiffness : 1),
    shear: undefined,
    stress: undefined,
    kind: "panel",
    of: `${row.value.category}"`,
    by: undefined,
    species: undefined,
    from: row.source,
    values: undefined,
    panel: { capacity, wet: factors },
  };
}

/** Plywood by its category, or by the thinnest one that measures so; what is no plywood by name has no row. */
function panelRow({ sizeFrom }: Material, thick: number): ReturnType<typeof panelValues> {
  const plywood = sizeFrom.by === "table" ? sizeFrom.really : undefined;
  if (!plywood) return undefined;
  return [plywood.name, ...categoriesMeasuring(thick / MM_PER_INCH)]
    .map(panelValues)
    .find((row) => row !== undefined);
}

/** What a weight that comes and goes adds: N·mm, N, and N·mm3 to be divided by the stiffness, over its span. */
export interface Coming {
  readonly moment: number;
  readonly shear: number;
  readonly timesStiffness: number;
  readonly span: number;
}

/**
 * The steady load alone in the long run, and all of it together; whichever uses more. `part` of its span it may bend.
 * Shear is looked at where the longest span is told, in mm.
 */
export function judge(
  member: Member,
  steady: Bending,
  coming: Coming = NONE,
  part: number = sagLimit.value,
  span = 0,
): Judged {
  const strain = (what: Strain["what"], own: number, other: number, bears: number): Strain => {
    const lasting = own / (bears * durationFactors.permanent.value);
    const all = (own + other) / (bears * durationFactors.tenYears.value);
    return lasting >= all
      ? { what, size: own, limit: bears * durationFactors.permanent.value, uses: lasting, lasting: true }
      : { what, size: own + other, limit: bears * durationFactors.tenYears.value, uses: all, lasting: false };
  };
  const bends = strain("bending", steady.moment.size, coming.moment, member.moment);
  // What stands nearer to a support than the board is deep goes straight into it (NDS 3.4.3.1).
  const beyond = Math.max(0, 1 - member.deep / span);
  const shears =
    span > 0 &&
    member.shear &&
    strain("shear", steady.shear.size * beyond, coming.shear * beyond, member.shear);
  return {
    strain: shears && shears.uses > bends.uses ? shears : bends,
    sag: sagging(member, steady, coming, part),
  };
}

const NONE: Coming = { moment: 0, shear: 0, timesStiffness: 0, span: 0 };

/** Each load's sag as a part of the span it lies in, added up as if both were in one; told for the one that bends more. */
function sagging(member: Member, steady: Bending, coming: Coming, part: number): Sag {
  const creep = (member.wet ? creepFactors.wet : creepFactors.seasonedDry).value;
  const own = longTermSag(steady.sag.timesStiffness / member.stiffness, 0, creep) ?? 0;
  const other = coming.timesStiffness / member.stiffness;
  const ofSpan = (sag: number, span: number): number => (sag > 0 ? sag / span : 0);
  const [lasts, comes] = [ofSpan(own, steady.sag.span), ofSpan(other, coming.span)];
  const span = lasts >= comes ? steady.sag.span : coming.span;
  const size = (lasts + comes) * span;
  return { size, limit: span / part, span, uses: (lasts + comes) * part };
}

/** A wall must bear a blocked drain, and that as if for good; drained, it bows in the long run. */
export function judgeWall(member: Member, drained: Bending, blocked: Bending): Judged {
  return { strain: judge(member, blocked).strain, sag: judge(member, drained, NONE, bowLimit.value).sag };
}
