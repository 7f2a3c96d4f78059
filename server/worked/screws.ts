/**
 * How well a joint's screws fit the pieces they join, and which other length or angle would. Two rules of common
 * practice: 1/8" of wood stays over the tip, and the last piece holds at least half the screw and 1/2" of it. Where
 * the pieces are too thin for half of any screw that stays in, 1/2" is asked for alone: a 1-1/4" screw is right for
 * two 3/4" boards.
 */
import { ifKnown } from "../plan";
import { cos, NUMERIC } from "../solid/angle";
import { TOUCHING } from "../solid/contact";
import { angleForMargin, longestStraight } from "../solid/screw";
import { leastBite, leastBiteShare, toeAngle, usualScrewLengths, woodOverTip } from "../trade";
import { ANGLE, exactly, fraction, LENGTH, type Quantity, roughly } from "../units";
import { type Fastener, type Size, screwSize } from "./fasteners";
import type { Joint } from "./joints";
import { size as tableLength } from "./materials";
import { drive, type Layer, type Path } from "./paths";

/** What is asked of a screw. */
export const SCREW_RULE = {
  margin: tableLength(woodOverTip.value, "in"),
  bite: tableLength(leastBite.value, "in"),
  share: leastBiteShare.value,
} as const;

/**
 * out: the tip stands proud; near: too little wood over it; unreached: it ends before the last piece; little: the
 * last piece holds too little of it.
 */
export type ScrewTrouble = "out" | "near" | "unreached" | "little";

export interface ScrewFit {
  readonly path: Path;
  readonly trouble: ScrewTrouble | undefined;
  /** Wood between the tip and the far side; less than nothing where the tip stands proud. */
  readonly over: Quantity;
  /** The screw's own length in the last piece. */
  readonly bite: Quantity;
  /** Half the screw must be in the last piece; not so where the pieces are too thin for that. */
  readonly half: boolean;
  /** What the last layer must measure for this screw to keep its wood over the tip; undefined where it would not bite then. */
  readonly lastNeeds: Quantity | undefined;
}

/** Lengths of screw, in mm, that bite enough and leave wood over the tip. */
export interface LengthWindow {
  readonly least: number;
  readonly most: number;
}

export interface OtherSize {
  readonly size: Size;
  /** The shop's own, if it has that size. */
  readonly fastener: Fastener | undefined;
}

/** What is known of each way through a joint; nothing for bolts, which are meant to come out. */
export function screwFits(joint: Joint): ScrewFit[] {
  const { size, angle } = joint;
  return size && !isBolt(joint) ? fitsAt(joint.paths, size, angle) : [];
}

export const isBolt = (joint: Joint): boolean =>
  /\bbolts?\b/.test(joint.fastener?.kind ?? "") && !isLag(joint);

/** A lag screw, which some call a lag bolt. */
export const isLag = (joint: Joint): boolean => /\blags?\b/.test(joint.fastener?.kind ?? "");

/** The lengths that do for all of these paths at that angle; undefined when none does. */
export function lengthWindow(fits: readonly ScrewFit[], angle: Quantity): LengthWindow | undefined {
  const windows = fits.map((f) => windowOf(f.path, angle));
  if (windows.some((w) => !w)) return undefined;
  const least = Math.max(...windows.map((w) => w!.least));
  const most = Math.min(...windows.map((w) => w!.most));
  return least <= most + NUMERIC ? { least, most } : undefined;
}

/**
 * The size to use instead: one the shop has, else one usually sold in that gauge. The longest that does where the
 * tip comes too far, the shortest where it holds too little.
 */
export function otherSize(
  joint: Joint,
  fasteners: readonly Fastener[],
  window: LengthWindow,
  want: "longest" | "shortest",
): OtherSize | undefined {
  const { size } = joint;
  if (!size) return undefined;
  const kind = joint.fastener?.kind ?? "screw";
  const fitting = (s: Size): boolean =>
    s.length.approx >= window.least - NUMERIC && s.length.approx <= window.most + NUMERIC;
  const shop = fasteners.flatMap((fastener): OtherSize[] =>
    fastener.size && fastener.kind === kind && fastener.size.diameter.approx === size.diameter.approx
      ? [{ size: fastener.size, fastener }]
      : [],
  );
  return best(shop, fitting, want) ?? best(kind === "screw" ? usual(size) : [], fitting, want);
}

/**
 * The least angle off square, to the half degree, at which every tip keeps its wood, and whether it then still bites;
 * undefined when there is none short of a toe screw's.
 */
export function otherAngle(
  joint: Joint,
  fits: readonly ScrewFit[],
): { readonly angle: Quantity; readonly bites: boolean } | undefined {
  const { size } = joint;
  if (!size) return undefined;
  const needed = fits.map((f) =>
    angleForMargin(size.length.approx, woodOf(f.path), SCREW_RULE.margin.approx),
  );
  if (needed.some((a) => a === undefined)) return undefined;
  const halves = Math.ceil(Math.max(...needed.map((a) => a!)) * 2 - NUMERIC);
  if (halves / 2 > 90 - toeAngle.value || halves / 2 <= joint.angle.approx) return undefined;
  const angle = exactly(ANGLE, fraction.rational(halves, 2));
  return { angle, bites: fitsAt(joint.paths, size, angle).every((f) => !f.trouble) };
}

/** How a screw of that size would fit these ways through wood. */
export function fitsAt(paths: readonly Path[], size: Size, angle: Quantity): ScrewFit[] {
  return paths.flatMap((path): ScrewFit[] => {
    const driven = ifKnown(path.driven) && ifKnown(drive(size, angle, path.layers));
    if (!driven) return [];
    const half = halfCanHold(path);
    const over = driven.tip.woodOverTip + path.behind;
    const last = lastOf(path);
    const inLast = size.length.approx - beforeLast(path) / cos(angle.approx);
    const needs = inLast >= SCREW_RULE.bite.approx - NUMERIC;
    return [
      {
        path,
        trouble: troubleOf(over, driven.bite, half ? size.length.approx * SCREW_RULE.share : 0),
        over: roughly(LENGTH, over),
        bite: roughly(LENGTH, driven.bite),
        half,
        lastNeeds: needs ? roughly(LENGTH, last - over + SCREW_RULE.margin.approx) : undefined,
      },
    ];
  });
}

function troubleOf(over: number, bite: number, half: number): ScrewTrouble | undefined {
  // A tip at the far face neither stands proud nor has wood over it.
  if (over < -TOUCHING) return "out";
  if (over < SCREW_RULE.margin.approx - NUMERIC) return "near";
  if (bite <= NUMERIC) return "unreached";
  return bite < Math.max(SCREW_RULE.bite.approx, half) - NUMERIC ? "little" : undefined;
}

const depthOf = (layers: readonly Layer[]): number => layers.reduce((sum, l) => sum + l.depth.approx, 0);
const beforeLast = ({ layers }: Path): number => depthOf(layers.slice(0, -1));
const lastOf = ({ layers }: Path): number => layers.at(-1)?.depth.approx ?? 0;
/** All the wood in line: the layers, and what lies tight behind the last. */
const woodOf = ({ layers, behind }: Path): number => depthOf(layers) + behind;
const deepest = (path: Path): number => longestStraight(woodOf(path), SCREW_RULE.margin.approx) ?? 0;

/** Whether the last layer by itself, less the wood over the tip, can hold its share of a screw. */
const halfCanHold = (path: Path): boolean =>
  (longestStraight(depthOf(path.layers), SCREW_RULE.margin.approx) ?? 0) * (1 - SCREW_RULE.share) >=
  beforeLast(path) - NUMERIC;

function windowOf(path: Path, angle: Quantity): LengthWindow | undefined {
  const lean = cos(angle.approx);
  const before = beforeLast(path) / lean;
  const half = halfCanHold(path);
  const most = (half ? Math.min(deepest(path), lastOf(path) / SCREW_RULE.share) : deepest(path)) / lean;
  const least = Math.max(before + SCREW_RULE.bite.approx, half ? before / (1 - SCREW_RULE.share) : 0);
  return least <= most + NUMERIC ? { least, most } : undefined;
}

function best(
  sizes: readonly OtherSize[],
  fitting: (s: Size) => boolean,
  want: "longest" | "shortest",
): OtherSize | undefined {
  const sign = want === "longest" ? -1 : 1;
  return sizes
    .filter((s) => fitting(s.size))
    .sort((a, b) => sign * (a.size.length.approx - b.size.length.approx))[0];
}

const usual = ({ gauge }: Size): OtherSize[] => (gauge === undefined ? [] : usualSizes(gauge));

/** The sizes of a gauge that are usually sold. */
export function usualSizes(gauge: number): OtherSize[] {
  const lengths = usualScrewLengths(gauge) ?? [];
  return lengths.flatMap((l): OtherSize[] => {
    const size = screwSize(`#${gauge} x ${l}"`);
    return size ? [{ size, fastener: undefined }] : [];
  });
}
