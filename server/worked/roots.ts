/**
 * Whether what is planted in a box finds the room that its roots want in a container. How deep roots go in open ground is
 * told beside it, and never compared with a box.
 */
import { type At, ifKnown, say, type Value } from "../plan";
import { type Crop, cropCalled, type Row, type Source, type Span } from "../trade";
import { fraction, GALLON, INCH, LENGTH, minus, type Quantity, refused, roughly, VOLUME } from "../units";
import type { Box } from "./boxes";
import type { Unchecked } from "./fault";

/** From the least to the most that is published, with where it is. */
export interface Wanted {
  readonly least: Quantity;
  readonly most: Quantity;
  readonly source: Source;
}

export interface RootRoom {
  readonly box: Box;
  /** As the plan calls it, and where. */
  readonly crop: string;
  readonly at: At;
  /** How deep the fill is, and how much there is of it. */
  readonly depth: Quantity | undefined;
  readonly volume: Quantity | undefined;
  /** In a container. */
  readonly wantsDepth: Wanted | undefined;
  readonly wantsVolume: Wanted | undefined;
  /** In open ground. */
  readonly ground: Wanted | undefined;
  /**
   * Against what a container must have at least. "open": without a bottom, so that roots go on into the ground. "no table":
   * none names the crop, or none says what it wants in a container.
   */
  readonly state: "enough" | "less deep" | "less" | "open" | "no table" | "no room known";
  /** How much deeper the fill must be for it; undefined where it is enough. */
  readonly short: Quantity | undefined;
}

/** What every box grows, in the order of its line. */
export const rootRoom = ({ boxes }: { readonly boxes: readonly Box[] }): RootRoom[] =>
  boxes.flatMap((box) =>
    box.declared.entry.clauses.flatMap((clause) =>
      clause.kind === "grows"
        ? clause.what.map(({ text, start, end }) =>
            roomFor(box, text, { file: box.declared.at.file, start, end }),
          )
        : [],
    ),
  );

function roomFor(box: Box, name: string, at: At): RootRoom {
  const known = cropCalled(name);
  const depth = depthOf(box);
  const volume = ifKnown(box.fill ? box.filled : box.volume);
  const wants = wantedBy(known);
  const rest = { box, crop: name, at, depth, volume, ...wants };
  const state = (is: RootRoom["state"]): RootRoom => ({ ...rest, state: is, short: undefined });
  if (!known) return state("no table");
  if (isOpenBelow(box)) return state("open");
  const { wantsDepth, wantsVolume } = wants;
  if (!wantsDepth && !wantsVolume) return state("no table");
  if (!depth || !volume) return state("no room known");
  const shallow = (wantsDepth?.least.approx ?? 0) - depth.approx;
  const little = ((wantsVolume?.least.approx ?? 0) - volume.approx) / (volume.approx / depth.approx);
  const short = Math.max(shallow, little);
  if (!(short > CRUMB)) return state("enough");
  return { ...rest, state: shallow > CRUMB ? "less deep" : "less", short: roughly(LENGTH, short) };
}

/** mm: what arithmetic leaves of a depth. */
const CRUMB = 1e-6;

/** From the bottom up to the fill, or to the rim where nothing fills it. */
function depthOf({ inside, fill, fillBelowRim }: Box): Quantity | undefined {
  if (!inside?.high || (fill && !fillBelowRim)) return undefined;
  const left = fillBelowRim ? minus(inside.high, fillBelowRim) : inside.high;
  return refused(left) || !(left.approx > 0) ? undefined : left;
}

/** Walls and no bottom, and no holes in one. */
const isOpenBelow = ({ declared, drains }: Box): boolean =>
  declared.entry.clauses.some((c) => c.kind === "walls") &&
  !declared.entry.clauses.some((c) => c.kind === "floor") &&
  drains !== "holes" &&
  drains !== "nothing";

function wantedBy(known: Crop | undefined): Pick<RootRoom, "wantsDepth" | "wantsVolume" | "ground"> {
  const inches = (n: number): Quantity => roughly(LENGTH, n * fraction.toNumber(INCH));
  const gallons = (n: number): Quantity => roughly(VOLUME, n * fraction.toNumber(GALLON));
  const wanted = (row: Row<Span> | undefined, of: (n: number) => Quantity): Wanted | undefined =>
    row && { least: of(row.value.low), most: of(row.value.high), source: row.source };
  return {
    wantsDepth: wanted(known?.containerDepth, inches),
    wantsVolume: wanted(known?.container, gallons),
    ground: wanted(known?.rootDepth, inches),
  };
}

/** What is planted of which no table tells, or of whose box the inside is not known. */
export function rootsUnchecked(plan: { readonly boxes: readonly Box[] }): Unchecked[] {
  return rootRoom(plan).flatMap(({ box, crop, at, state }): Unchecked[] => {
    const what = say("roots have room", { crop, box: box.name });
    if (state === "no table") return [{ what, why: say("no table of roots", { crop }), at }];
    const cause = state === "no room known" ? causeOf(box.fill ? box.filled : box.volume) : undefined;
    return cause ? [{ what, why: cause, at }] : [];
  });
}

/** Why a value is not known, where that is no mistake of its own. */
const causeOf = (value: Value<unknown>) =>
  value.state === "unknown" && value.cause.kind !== "mistake" ? value.cause.why : undefined;
