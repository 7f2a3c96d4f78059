/**
 * What would make a board or a joint hold, found by trying it: one more holder in the middle of its longest span, a thicker
 * or a wider board, more screws, a longer or a thicker one. Of boards, what takes the least wood comes first.
 */
import { type BeamLoad, bend, type Worst } from "../../strength/beam";
import { type LumberStandard, section, sectionNames, usualScrewLengths } from "../../trade";
import { type Fastener, type Size, screwSize } from "../fasteners";
import type { Joint } from "../joints";
import { type Material, size } from "../materials";
import { isBolt, screwFits } from "../screws";
import type { Worked } from "../work";
import { worstStand } from "./beams";
import { type HeldJoint, heldWith } from "./demands";
import type { HeldPiece, HeldWall } from "./index";
import { type Coming, type Judged, judge, judgeWall, type Member, memberOf } from "./judging";
import { longest } from "./supports";

export type MemberCure =
  /** Another holder, or two, on its longest span, which is then so long, in mm. */
  | { readonly kind: "held"; readonly more: 1 | 2; readonly span: number; readonly wood: number }
  /** Cut from another board. */
  | { readonly kind: "board"; readonly section: string; readonly shop: boolean; readonly wood: number };

/** What is tried must come out at this share of its limit or less. */
type Wanted = (judged: Judged) => number;

const strong: Wanted = ({ strain }) => strain.uses;
const stiff: Wanted = ({ sag }) => sag.uses;
/** A cure of the one must not leave the other. */
const both: Wanted = (j) => Math.max(strong(j), stiff(j));

/** Of a board that bears a load; the one that takes the least wood first, no more than one of each kind. */
export function memberCures(held: HeldPiece, limit: number, worked: Worked): MemberCure[] {
  const { carried, member, part } = held;
  if (!member || !carried.bends || !part?.material) return [];
  const { length } = carried.lie;
  const supports = carried.supports.map((s) => s.at);
  // What comes by way of other boards stands where these lie, and is taken for the worst place.
  const { moving } = carried;
  const coming = new Map<readonly number[], Coming | undefined>();
  const comingOn = (at: readonly number[]): Coming | undefined => {
    if (moving > 0 && !coming.has(at)) {
      const worst = worstStand(length, at, moving);
      coming.set(at, worst && comingOf(worst));
    }
    return coming.get(at);
  };
  const tried = (as: Member, at: readonly number[]): Judged | undefined => {
    const heavier = (carried.weighs.own * areaOf(as)) / areaOf(member) - carried.weighs.own;
    const each = heavier / length;
    const more: BeamLoad = { from: 0, to: length, start: each, end: each };
    const steady = bend({ length, supports: at, loads: [...carried.loads, more] });
    return steady && judge(as, steady, comingOn(at), limit, longest(at));
  };
  return curesOf(member, supports, tried, {
    material: part.material,
    flat: carried.lie.flat,
    length,
    row: rowOf(held, worked),
    worked,
  });
}

/** Of a wall board. */
export function wallCures({ work, member, part }: HeldWall, worked: Worked): MemberCure[] {
  if (!member || !work.bends || !part?.material) return [];
  const { supports } = work;
  const tried = (as: Member, at: readonly number[]): Judged | undefined => {
    const bent = (load: BeamLoad) => bend({ length: work.lie.length, supports: at, loads: [load] });
    const [drained, blocked] = [bent(work.loads.drained), bent(work.loads.blocked)];
    return drained && blocked && judgeWall(as, drained, blocked);
  };
  return curesOf(member, supports, tried, {
    material: part.material,
    flat: true,
    length: work.lie.length,
    row: { count: 1, reach: work.lie.wide },
    worked,
  });
}

const areaOf = ({ wide, deep }: Member): number => wide * deep;

const comingOf = ({ moment, shear, sag }: Worst): Coming => ({
  moment: moment.size,
  shear: shear.size,
  timesStiffness: sag.timesStiffness,
  span: sag.span,
});

interface Trying {
  readonly material: Material;
  readonly flat: boolean;
  readonly length: number;
  /** How many such boards there are, and how far they reach across, in mm. */
  readonly row: { readonly count: number; readonly reach: number };
  readonly worked: Worked;
}

function curesOf(
  member: Member,
  supports: readonly number[],
  tried: (as: Member, at: readonly number[]) => Judged | undefined,
  trying: Trying,
): MemberCure[] {
  const holds = (as: Member, at: readonly number[]): boolean => {
    const judged = tried(as, at);
    return judged !== undefined && both(judged) <= 1;
  };
  const cures: MemberCure[] = [];
  for (const more of [1, 2] as const) {
    const at = withMore(supports, more);
    if (!at || !holds(member, at)) continue;
    cures.push({ kind: "held", more, span: longest(at), wood: more * BEARER * trying.row.reach });
    break;
  }
  const board = boards(member, trying).find(({ wide, deep }) => {
    const as = memberOf(trying.material, { wide, deep, flat: trying.flat, alongGrain: true }, member.wet);
    return as !== undefined && holds(as, supports);
  });
  if (board) cures.push({ kind: "board", section: board.name, shop: board.shop, wood: board.wood });
  return cures.sort((a, b) => a.wood - b.wood);
}

/** mm2: a 2x4 stands for whatever is put under it. */
const BEARER = 38.1 * 88.9;

function withMore(supports: readonly number[], more: 1 | 2): number[] | undefined {
  const span = longest(supports);
  const from = supports.findIndex((a, i) => i + 1 < supports.length && supports[i + 1]! - a === span);
  if (from < 0 || span / (more + 1) < LEAST_SPAN) return undefined;
  const start = supports[from]!;
  const added = Array.from({ length: more }, (_, k) => start + (span * (k + 1)) / (more + 1));
  return [...supports, ...added].sort((a, b) => a - b);
}

/** mm: no one puts holders nearer to each other. */
const LEAST_SPAN = 150;

interface OtherBoard {
  readonly name: string;
  readonly shop: boolean;
  /** mm, as it lies. */
  readonly wide: number;
  readonly deep: number;
  readonly wood: number;
}

/** Thicker boards of at least its width, those with the least wood first; the shop's before others of that size. */
function boards(member: Member, { material, flat, length, row, worked }: Trying): OtherBoard[] {
  if (material.kind === "sheet") return [];
  const own = flat ? { thick: member.deep, broad: member.wide } : { thick: member.wide, broad: member.deep };
  const inShop = new Set(worked.materials.flatMap((m) => (m.sold.length > 0 ? [m.name] : [])));
  const found = sizesOf(worked).flatMap(({ name, thick, broad }): OtherBoard[] => {
    if (thick < own.thick - SAME || thick > own.thick * MOST_TIMES + SAME) return [];
    const fits = flat ? Math.abs(broad - own.broad) < NEARLY : broad <= own.broad * MOST_TIMES + SAME;
    const wider = flat ? own.broad : broad;
    const more = thick * wider - own.thick * own.broad;
    if (more < SAME || !fits) return [];
    const [wide, deep] = flat ? [wider, thick] : [thick, wider];
    return [{ name, shop: inShop.has(name), wide, deep, wood: more * length * row.count }];
  });
  return found.sort((a, b) => a.wood - b.wood || Number(b.shop) - Number(a.shop));
}

/** Thicker than that, the rest of the thing would change too. */
const MOST_TIMES = 2.4;
const SAME = 0.5;
/** mm */
const NEARLY = 10;

interface BoardSize {
  readonly name: string;
  /** mm */
  readonly thick: number;
  readonly broad: number;
}

/** The plan's own boards that a standard knows, and those usually sold. */
function sizesOf({ materials, settings: { lumber } }: Worked): BoardSize[] {
  const usual = usualSizes(lumber);
  const named = new Set(usual.map(({ name }) => name));
  const own = materials.flatMap(({ name }) => (named.has(name) ? [] : (sizeOf(name, lumber) ?? [])));
  return [...own, ...usual];
}

/** Those of each standard, worked out when first asked for. */
const USUAL_SIZES = new Map<LumberStandard, readonly BoardSize[]>();

function usualSizes(lumber: LumberStandard): readonly BoardSize[] {
  const before = USUAL_SIZES.get(lumber);
  if (before) return before;
  const sizes = sectionNames(lumber).flatMap((name) => sizeOf(name, lumber) ?? []);
  USUAL_SIZES.set(lumber, sizes);
  return sizes;
}

function sizeOf(name: string, lumber: LumberStandard): BoardSize | undefined {
  const found = section(name, lumber);
  if (!found) return undefined;
  const { thickness, width, unit } = found;
  return { name, thick: size(thickness, unit).approx, broad: size(width, unit).approx };
}

/** Boards of the same part that lie as high. */
function rowOf({ piece, carried }: HeldPiece, { space }: Worked): Trying["row"] {
  const own = space.pieces[piece]!;
  const row = (space.named.get(own.part) ?? []).map((i) => space.pieces[i]!);
  const level = row.filter((p) => Math.abs(p.bounds.most[2] - own.bounds.most[2]) < 6);
  const axis = Math.abs(carried.lie.along[0]) > Math.abs(carried.lie.along[1]) ? 1 : 0;
  const reach =
    Math.max(...level.map((p) => p.bounds.most[axis])) - Math.min(...level.map((p) => p.bounds.least[axis]));
  return { count: level.length, reach };
}

export type JointCure =
  /** So many screws where there are so many now. */
  | { readonly kind: "more"; readonly count: number; readonly now: number }
  | { readonly kind: "size"; readonly size: Size; readonly fastener: Fastener | undefined }
  /** The piece must lie on something instead. */
  | { readonly kind: "rest" };

/** Of a joint whose screws are asked for more than they hold: more of them, another size, or wood underneath. */
export function jointCures(held: HeldJoint, worked: Worked): JointCure[] {
  const { joint, screws, holds, asked } = held;
  const cures: JointCure[] = [];
  const other = sizeThatHolds(held, worked);
  if (other) cures.push(other);
  const each = holds / screws;
  const count = each > 0 ? Math.ceil(asked / each - 1e-9) : Number.POSITIVE_INFINITY;
  if (count <= Math.max(4, screws * MOST_MORE) && joint.entry.kind === "fasten")
    cures.push({ kind: "more", count, now: screws });
  if (held.demand.way === "across" && held.demand.from === "weight") cures.push({ kind: "rest" });
  return cures;
}

const MOST_MORE = 2.5;

/** A screw of the shop, else one usually sold, that holds it with as many and stays in the wood. */
function sizeThatHolds(held: HeldJoint, worked: Worked): JointCure | undefined {
  const { joint } = held;
  const { size: own } = joint;
  if (!own || isBolt(joint)) return undefined;
  const kind = joint.fastener?.kind ?? "screw";
  const shop = worked.fasteners.filter((f) => f.kind === kind && f.size);
  const usual = kind === "screw" ? USUAL_SCREWS : [];
  const all = [
    ...shop.map((fastener) => ({ size: fastener.size!, fastener: fastener as Fastener | undefined })),
    ...usual.map((s) => ({ size: s, fastener: undefined })),
  ].filter(({ size: s }) => s.text !== own.text && s.diameter.approx >= own.diameter.approx - 1e-6);
  all.sort(
    (a, b) =>
      a.size.diameter.approx - b.size.diameter.approx ||
      a.size.length.approx - b.size.length.approx ||
      Number(b.fastener !== undefined) - Number(a.fastener !== undefined),
  );
  const found = all.find(({ size: s, fastener }) => {
    const other = { ...joint, size: s, fastener };
    return staysIn(other) && heldWith(held, other, worked) <= 1;
  });
  return found && { kind: "size", ...found };
}

/** Its tip keeps its wood and its bite on all its ways. */
const staysIn = (joint: Joint): boolean => screwFits(joint).every((f) => !f.trouble);

const USUAL_SCREWS: readonly Size[] = [8, 10].flatMap((gauge) =>
  (usualScrewLengths(gauge) ?? []).flatMap((l) => screwSize(`#${gauge} x ${l}"`) ?? []),
);
