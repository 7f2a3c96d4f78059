/** Boxes: how much they hold, what that weighs dry, moist and saturated, and what it presses on the floor. */

import { nearest } from "../../grammar/near";
import type { Name } from "../../grammar/tree";
import { type At, type Declared, ifKnown, known, MISTAKE, type Scope, unknown, type Value } from "../plan";
import { boxVolume, fillWeight, outlinePressure } from "../strength/box";
import { cite, fill, fillNames, type Source } from "../trade";
import {
  DENSITY,
  exactly,
  fraction,
  LENGTH,
  minus,
  PRESSURE,
  type Quantity,
  refused,
  roughly,
  unitNamed,
  VOLUME,
  WEIGHT,
} from "../units";
import { type BoxInSpace, boxInSpace } from "./box-placed";
import type { Worker } from "./expressions";
import { declaredThing } from "./groups";
import type { Part } from "./parts";
import type { Pieces } from "./pieces";
import type { Placing } from "./placing";
import { type Extent3, Reader, type Settings } from "./settings";

export type Wetness = "dry" | "moist" | "saturated";

export interface FillInfo {
  readonly name: string;
  readonly density: Readonly<Record<Wetness, Quantity | undefined>>;
  /** Where the heaviest number comes from; the row it comes from, undefined for the plan's own. */
  readonly source: string;
  readonly from: Source | undefined;
  /** The saturated weight was taken from the usual soil, since the fill does not say. */
  readonly assumed: string;
  /** That weight, lb/cuft; undefined where nothing was taken. */
  readonly taken: number | undefined;
}

export interface Box {
  readonly name: string;
  readonly declared: Declared;
  readonly inside: Extent3 | undefined;
  /** The inside as the line says it, to compare with what its walls make. */
  readonly typed: Extent3 | undefined;
  readonly placed: BoxInSpace | undefined;
  readonly bottom: Extent3 | undefined;
  readonly fill: FillInfo | undefined;
  readonly fillAt: At | undefined;
  readonly level: string;
  /** How far below the rim the fill ends; undefined without a fill, or where that is not known. */
  readonly fillBelowRim: Quantity | undefined;
  readonly volume: Value<Quantity>;
  /** Up to the fill's own level. */
  readonly filled: Value<Quantity>;
  readonly weights: Readonly<Record<Wetness, Value<Quantity>>>;
  /** The box without its fill. */
  readonly own: Value<Quantity>;
  readonly ownFrom: "said" | "parts";
  readonly outline:
    | {
        readonly wide: Quantity;
        readonly deep: Quantity;
        readonly from: "said" | "placed" | "inside and walls" | "inside";
      }
    | undefined;
  /** Saturated fill and box over the outline. */
  readonly pressure: Value<Quantity>;
  readonly drains: "gaps" | "holes" | "nothing" | undefined;
  readonly grows: readonly string[];
}

const LB_CUFT = fraction.toNumber(unitNamed("lb/cuft")!.factor);

export function workBox(
  declared: Declared,
  scope: Scope,
  worker: Worker,
  parts: ReadonlyMap<string, Part>,
  placing: Placing,
  pieces: Pieces,
): Box {
  const { entry, at } = declared;
  const { file } = at;
  const read = new Reader(worker, file, entry.clauses);
  const placed = pieces.complete ? boxInSpace(declared, placing, pieces.all) : undefined;
  const typed = read.extents("inside");
  const inside = typed ?? placed?.inside;
  const bottom = read.extents("tapering") ?? (typed ? undefined : placed?.foot);
  const filling = read.clause("filled");
  const info = filling && fillInfo(filling.with, file, scope, worker);
  const level = filling?.level;
  const levelValue = level && ifKnown(worker.expect(level.value, file, LENGTH, "a length"));
  const fillLevel =
    !level || !levelValue
      ? undefined
      : level.how === "deep"
        ? { height: levelValue.approx }
        : { belowRim: levelValue.approx };
  const volume = volumeOf(declared, inside, bottom, undefined, worker);
  const levelAt = level && { file, start: level.value.start, end: level.value.end };
  const filled =
    fillLevel && levelAt && levelValue && volume.state === "known"
      ? filledOf(declared, inside, bottom, { ...fillLevel, at: levelAt, value: levelValue }, worker)
      : volume;
  const walls = namedParts(read, "walls", file, scope, worker);
  const floor = namedParts(read, "floor", file, scope, worker);
  const said = read.amount("weighs", WEIGHT, "a weight, like 60 lb,", "what it weighs empty");
  const own = said ?? weightOfParts([...walls, ...floor], parts);
  const weight = (wetness: Wetness) =>
    fillWeightOf(filled, filling ? info : undefined, wetness, Boolean(filling));
  const weights = { dry: weight("dry"), moist: weight("moist"), saturated: weight("saturated") };
  const outline = outlineOf(read, inside, walls, parts, typed ? undefined : placed?.outline);
  return {
    name: declared.name,
    declared,
    inside,
    typed,
    placed,
    bottom,
    fill: info,
    fillAt: filling && read.at(filling),
    level: level && levelValue ? level.how : "",
    fillBelowRim: filling && belowRim(level?.how, levelValue, inside?.high),
    volume,
    filled,
    weights,
    own,
    ownFrom: said ? "said" : "parts",
    outline,
    pressure: pressureOf(weights.saturated, own, outline),
    drains: read.clause("drains")?.how,
    grows: read.all("grows").flatMap((c) => c.what.map((n) => n.text)),
  };
}

/** Filled to the rim where the line gives no level. */
function belowRim(
  how: "below rim" | "deep" | undefined,
  value: Quantity | undefined,
  high: Quantity | undefined,
): Quantity | undefined {
  if (how === undefined) return exactly(LENGTH, fraction.ZERO);
  if (how === "below rim") return value;
  const left = value && high && minus(high, value);
  return left === undefined || refused(left) ? undefined : left;
}

type Level = { readonly height: number } | { readonly belowRim: number };

/** The volume up to the fill; a fault at the level when that lies above the rim or below the bottom. */
function filledOf(
  declared: Declared,
  inside: Extent3 | undefined,
  bottom: Extent3 | undefined,
  level: Level & { readonly at: At; readonly value: Quantity },
  worker: Worker,
): Value<Quantity> {
  const most = inside?.high;
  const { at, value } = level;
  const what = declared.name;
  if (most && (value.approx < 0 || value.approx > most.approx)) {
    const over = "height" in level === value.approx > most.approx;
    const why = over ? "overfilled" : "underfilled";
    return worker.fault({ kind: "impossible", at, why, what, found: value, most });
  }
  return volumeOf(declared, inside, bottom, level, worker);
}

function volumeOf(
  declared: Declared,
  inside: Extent3 | undefined,
  bottom: Extent3 | undefined,
  level: Level | undefined,
  worker: Worker,
): Value<Quantity> {
  if (!inside) return unknown("placing", "inside from walls");
  const { wide, deep, high } = inside;
  if (!wide || !deep || !high) {
    if (declared.entry.clauses.some((c) => c.kind === "broken") || allSaid(declared)) return MISTAKE;
    return worker.fault({ kind: "size-missing", at: declared.at, name: declared.name, what: "inside" });
  }
  const result = boxVolume({
    length: wide.approx,
    width: deep.approx,
    height: high.approx,
    ...(bottom?.wide && { bottomLength: bottom.wide.approx }),
    ...(bottom?.deep && { bottomWidth: bottom.deep.approx }),
    ...(level && { fill: level }),
  });
  if (result.kind === "volume") return known(roughly(VOLUME, result.mm3));
  return worker.fault({ kind: "impossible", at: declared.at, why: "no inside", what: declared.name });
}

/** Whether the line names all three sides, so that one without a value has a mistake of its own. */
function allSaid({ entry }: Declared): boolean {
  const inside = entry.clauses.find((c) => c.kind === "inside");
  const sides =
    inside?.kind === "inside" ? inside.extents.map((e) => (e.side === "long" ? "wide" : e.side)) : [];
  return (["wide", "deep", "high"] as const).every((side) => sides.includes(side));
}

/** What a fill weighs: the plan's own, or the built-in table; the saturated default of the table where only that is missing. */
function fillInfo(name: Name, file: string, scope: Scope, worker: Worker): FillInfo | undefined {
  const declared = scope.declared.get(name.text);
  const built = fill(name.text);
  if (declared?.kind === "fill") {
    const read = new Reader(worker, declared.at.file, declared.entry.clauses);
    const own = (wetness: Wetness) => {
      const clause = read.once(
        wetness,
        read.all("density").filter((c) => c.state === wetness),
      );
      return (
        clause &&
        ifKnown(worker.expect(clause.value, declared.at.file, DENSITY, "a density, like 75 lb/cuft,"))
      );
    };
    const saturated = own("saturated");
    const soil = fill("soil")!.saturated;
    return {
      name: name.text,
      density: { dry: own("dry"), moist: own("moist"), saturated: saturated ?? density(soil.value) },
      source: saturated ? "as the plan says" : cite(soil.source),
      from: saturated ? undefined : soil.source,
      taken: saturated ? undefined : soil.value,
      assumed: saturated
        ? ""
        : `taken as ${soil.value} lb/cuft when saturated, like soil, since the plan does not say`,
    };
  }
  const at = { file, start: name.start, end: name.end };
  if (declared) {
    worker.fault({ kind: "wrong-kind", at, name: name.text, found: declared.kind, wants: "a fill" });
    return undefined;
  }
  if (!built) {
    worker.fault({
      kind: "unknown-name",
      at,
      name: name.text,
      near: nearest(name.text, fillNames()),
      wants: "a fill",
    });
    return undefined;
  }
  return {
    name: name.text,
    density: {
      dry: density(built.dry.value),
      moist: built.moist && density(built.moist.value),
      saturated: density(built.saturated.value),
    },
    source: cite(built.saturated.source),
    from: built.saturated.source,
    assumed: "",
    taken: undefined,
  };
}

const density = (lbPerCuft: number): Quantity => roughly(DENSITY, lbPerCuft * LB_CUFT);

function fillWeightOf(
  volume: Value<Quantity>,
  info: FillInfo | undefined,
  wetness: Wetness,
  hasFill: boolean,
): Value<Quantity> {
  if (!hasFill) return unknown("unsaid", "unsaid fill");
  if (!info) return MISTAKE;
  if (volume.state !== "known") return volume;
  const per = info.density[wetness];
  if (!per) return unknown("unsaid", `no ${wetness} weight`, { name: info.name });
  const kg = fillWeight(volume.value.approx / 1e9, per.approx * 1e9);
  return kg === undefined ? MISTAKE : known(roughly(WEIGHT, kg));
}

function namedParts(
  read: Reader,
  kind: "walls" | "floor",
  file: string,
  scope: Scope,
  worker: Worker,
): string[] {
  return read.all(kind).flatMap((c) =>
    c.things.flatMap((t) => {
      const found = declaredThing(t, file, ["part"], "a part", scope, worker);
      return found ? [found.name] : [];
    }),
  );
}

function weightOfParts(names: readonly string[], parts: ReadonlyMap<string, Part>): Value<Quantity> {
  if (names.length === 0) return unknown("unsaid", "unsaid empty weight");
  let kg = 0;
  for (const name of new Set(names)) {
    const part = parts.get(name);
    if (!part) return MISTAKE;
    if (part.count.state !== "known") return part.count;
    if (part.weight.state !== "known") return part.weight;
    kg += part.count.value * part.weight.value.approx;
  }
  return known(roughly(WEIGHT, kg));
}

function outlineOf(
  read: Reader,
  inside: Extent3 | undefined,
  walls: readonly string[],
  parts: ReadonlyMap<string, Part>,
  placed: Extent3 | undefined,
): Box["outline"] {
  const said = read.extents("outline");
  if (said?.wide && said.deep) return { wide: said.wide, deep: said.deep, from: "said" };
  if (placed?.wide && placed.deep) return { wide: placed.wide, deep: placed.deep, from: "placed" };
  if (!inside?.wide || !inside.deep) return undefined;
  const thick = Math.min(...walls.map((w) => ifKnown(parts.get(w)?.thickness)?.approx ?? 0));
  const wall = Number.isFinite(thick) ? thick : 0;
  return {
    wide: roughly(LENGTH, inside.wide.approx + 2 * wall),
    deep: roughly(LENGTH, inside.deep.approx + 2 * wall),
    from: wall > 0 ? "inside and walls" : "inside",
  };
}

function pressureOf(
  fillWeight: Value<Quantity>,
  own: Value<Quantity>,
  outline: Box["outline"],
): Value<Quantity> {
  if (fillWeight.state !== "known") return fillWeight;
  if (!outline) return unknown("placing", "outline from parts");
  const kg = fillWeight.value.approx + (ifKnown(own)?.approx ?? 0);
  const pressure = outlinePressure(kg, outline.wide.approx, outline.deep.approx);
  return pressure ? known(roughly(PRESSURE, pressure.kgfPerM2 / 1e6)) : MISTAKE;
}

/** The floor's limit less what else uses it; undefined without a limit. */
export function floorShare(settings: Settings): Quantity | undefined {
  if (!settings.floorLimit) return undefined;
  const used = settings.shares.reduce((sum, s) => sum + s.value.approx, 0);
  return roughly(PRESSURE, settings.floorLimit.value.approx - used);
}

/** How deep the saturated fill of a straight-sided box is when the floor's share is reached; undefined for others. */
export function depthAtLimit(box: Box, share: Quantity): Quantity | undefined {
  const wet = box.fill?.density.saturated;
  const { inside, outline } = box;
  if (!wet || !outline || box.bottom || !inside?.wide || !inside.deep) return undefined;
  const carried = share.approx * outline.wide.approx * outline.deep.approx - (ifKnown(box.own)?.approx ?? 0);
  const depth = carried / (wet.approx * inside.wide.approx * inside.deep.approx);
  return depth > 0 ? roughly(LENGTH, depth) : undefined;
}
