/** The bits a plan takes: for pilot, clearance and drain holes, for heads, and for driving; each with its holes. */
import { chain, ifKnown, known, MISTAKE, map, type Value } from "../plan";
import {
  type Bit,
  bitAtLeast,
  boltHole,
  clearanceHole,
  crossBit,
  drainHoles,
  flatHead,
  type Hole,
  type HoleLimits,
  headWidth,
  nailHole,
  pilotHole,
} from "../trade";
import { type Display, lengthInFull, type Quantity } from "../units";
import type { Drainage } from "./drainage";
import type { Size } from "./fasteners";
import type { Joint } from "./joints";
import { size } from "./materials";
import { operationsOf, sortOf } from "./operations";
import { SHOP_ENGLISH, type ShopWords } from "./shop-words";
import { type Dense, densest, lastParts, nearParts, splitsEasily } from "./splitting";
import type { Worked } from "./work";

/** Holes bored with one bit in one place: all copies of the plan together. */
export interface HolesFor {
  /** Of a joint, "side into leg", or a box. */
  readonly title: string;
  readonly holes: Value<number>;
  /** Where the depth stop goes: the screw's length from the near face; undefined for holes right through. */
  readonly depth: Quantity | undefined;
}

export interface BitNeed {
  readonly kind: "pilot" | "clearance" | "drain" | "countersink" | "driver";
  /** Undefined where the head decides, and where no bit of a usual set is thin enough. */
  readonly size: Quantity | undefined;
  /** As it is sold, never rounded to the plan's marks: `7/64"`, `2.5 mm`, "to fit the head". */
  readonly text: string;
  /** Bits from the least to the largest that the published rules allow. */
  readonly band: { readonly least: Quantity; readonly most: Quantity } | undefined;
  readonly for: readonly HolesFor[];
  /** "the plan", or the rule with its source. */
  readonly source: string;
  /** What was taken for granted; empty where nothing was. */
  readonly assumed: readonly string[];
  /** More to know: that strength alone asks for no hole, or that the plan's hole is beyond the published rules. */
  readonly note: string;
}

/** In the order they are used: pilots, clearances, drains, countersinks, drivers. */
export function bitsNeeded(worked: Worked, words: ShopWords = SHOP_ENGLISH): readonly BitNeed[] {
  const does = operationsOf(worked);
  const joints = [...does.screwed, ...does.nailed, ...does.bolted].filter((j) => j.size);
  const borings = [
    ...joints.flatMap((j) => pilotIn(j, worked, words)),
    ...joints.flatMap((j) => clearanceIn(j, worked, words)),
  ];
  const bored = grouped(borings, boringKey).map((alike) => boredNeed(alike, worked, words));
  return [
    ...grouped(bored, needKey).map((alike) => joined(alike, worked, words)),
    ...worked.drainage.filter(({ how }) => how === "holes").map((d) => drainNeed(d, worked, words)),
    ...countersinkOf(does.screwed, worked, words),
    ...grouped(does.screwed, (j) => `${crossOf(j)?.value.bit}`).map((alike) =>
      driverOf(alike, worked, words),
    ),
  ];
}

/** A hole that every screw, nail or bolt of a joint takes. */
interface Boring {
  readonly kind: "pilot" | "clearance";
  readonly joint: Joint;
  readonly size: Size;
  readonly by: "screw" | "nail" | "bolt";
  /** As the plan gives it. */
  readonly typed: Quantity | undefined;
  readonly wood: Dense;
}

/** In the order of the first of each group. */
function grouped<T>(list: readonly T[], key: (one: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const one of list) {
    const group = groups.get(key(one));
    if (group) group.push(one);
    else groups.set(key(one), [one]);
  }
  return [...groups.values()];
}

const boringKey = ({ kind, by, size: { gauge, diameter }, typed, wood }: Boring): string =>
  [kind, by, gauge, diameter.approx, typed?.approx, wood.gravity].join(" ");

const needKey = ({ kind, text, band, source, note }: BitNeed): string =>
  [kind, text, band?.least.approx, band?.most.approx, source, note].join("\n");

/** Needs that are told in the same words, with their joints in the plan's order. */
function joined(alike: readonly BitNeed[], { joints }: Worked, { titleOf }: ShopWords): BitNeed {
  const [first] = alike as [BitNeed];
  if (alike.length === 1) return first;
  const order = new Map(joints.map((j, i) => [titleOf(j), i]));
  const all = alike.flatMap((n) => n.for).sort((a, b) => order.get(a.title)! - order.get(b.title)!);
  return { ...first, for: all, assumed: [...new Set(alike.flatMap((n) => n.assumed))] };
}

function pilotIn(joint: Joint, worked: Worked, words: ShopWords): Boring[] {
  const by = sortOf(joint);
  // A nail in wood that does not split easily wants none.
  if (by === "bolt" || (by === "nail" && !joint.pilot && !splitsEasily(joint, worked))) return [];
  const wood = densest(lastParts(joint, worked), words);
  return [{ kind: "pilot", joint, size: joint.size!, by, typed: joint.pilot, wood }];
}

function clearanceIn(joint: Joint, worked: Worked, words: ShopWords): Boring[] {
  const by = sortOf(joint);
  if (by === "nail" && !joint.clearance) return [];
  const wood = densest(nearParts(joint, worked), words);
  return [{ kind: "clearance", joint, size: joint.size!, by, typed: joint.clearance, wood }];
}

/** Joints whose pieces are bored. */
export const isBored = (joint: Joint, worked: Worked): boolean =>
  joint.size !== undefined &&
  (sortOf(joint) !== "nail" ||
    joint.pilot !== undefined ||
    joint.clearance !== undefined ||
    splitsEasily(joint, worked));

function boredNeed(alike: readonly Boring[], worked: Worked, words: ShopWords): BitNeed {
  const { display } = worked.settings;
  const [first] = alike as [Boring];
  const { kind, typed, by, size } = first;
  const { bits } = words;
  const hole = holeOf(first, display);
  const bit = typed ?? (hole.bit && quantityOf(hole.bit));
  const [least, most] = [hole.least, hole.most].map((b) => b && quantityOf(b));
  const band = least && most && { least, most };
  const untabled = hole.assumed === "" ? "" : bits.assumed(by, size.gauge, hole.assumed);
  const taken = kind === "pilot" ? [...alike.map((b) => b.wood.assumed), untabled] : [];
  return {
    kind,
    size: bit,
    text: bit ? lengthInFull(bit, display) : bits.headless,
    band,
    for: alike.map(({ joint, size: { length } }) => ({
      title: words.titleOf(joint),
      holes: ofAll(joint.count, worked),
      depth: kind === "pilot" ? length : undefined,
    })),
    source: typed ? bits.thePlan : bits.rule(hole.rule, words.cite(hole.source)),
    assumed: typed ? [] : [...new Set(taken)].filter((a) => a !== ""),
    note: (typed && band && beyond(typed, hole.limits, band, display, words)) || noteOf(first, hole, words),
  };
}

function holeOf({ kind, by, size: { gauge, diameter }, wood }: Boring, { system }: Display): Hole {
  const screw = { gauge, diameter: diameter.approx };
  if (by === "bolt") return boltHole(screw.diameter, system);
  if (kind === "clearance") return clearanceHole(screw, wood.gravity, system);
  return by === "nail"
    ? nailHole(screw.diameter, wood.gravity, system)
    : pilotHole(screw, wood.gravity, system);
}

function noteOf({ kind, by }: Boring, hole: Hole, { bits }: ShopWords): string {
  if (by === "bolt") return bits.through;
  if (kind === "clearance") return bits.near;
  return hole.noneForStrength ? bits.splits : "";
}

/** A hole that the plan gives and no published rule does, whatever bits are told in. */
function beyond(
  typed: Quantity,
  limits: HoleLimits,
  { least, most }: NonNullable<BitNeed["band"]>,
  display: Display,
  { bits }: ShopWords,
): string {
  const range = [lengthInFull(least, display), lengthInFull(most, display)] as const;
  if (typed.approx < limits.least - SAME) return bits.thinner(...range);
  return typed.approx > limits.most + SAME ? bits.wider(...range) : "";
}

/** mm: up to arithmetic. */
const SAME = 1e-9;

const quantityOf = (bit: Bit): Quantity => size(bit.size, bit.unit);

const ofAll = (count: Value<number>, { settings }: Worked): Value<number> =>
  chain(count, (n) => known(n * settings.make));

function drainNeed({ box, holes = MISTAKE }: Drainage, worked: Worked, words: ShopWords): BitNeed {
  const { bits } = words;
  const { display } = worked.settings;
  const usual = size(drainHoles.value.diameter, "in");
  const typed = ifKnown(holes)?.diameter;
  return {
    kind: "drain",
    size: typed ?? usual,
    text: lengthInFull(typed ?? usual, display),
    band: undefined,
    for: [
      {
        title: box.name,
        holes: ofAll(
          map(holes, ({ count }) => count),
          worked,
        ),
        depth: undefined,
      },
    ],
    source: typed ? bits.thePlan : bits.rule(drainHoles.key, words.cite(drainHoles.source)),
    assumed: typed ? [] : [bits.drainsSize],
    note: bits.bottom,
  };
}

/** One for all screws: it takes the widest head, and goes less deep for the others. */
function countersinkOf(screwed: readonly Joint[], worked: Worked, words: ShopWords): BitNeed[] {
  const { bits } = words;
  const { display } = worked.settings;
  const sized = screwed.filter((j) => j.size);
  const widest = Math.max(...sized.map((j) => headWidth(j.size!.diameter.approx)));
  if (sized.length === 0) return [];
  const least = quantityOf(bitAtLeast(widest, display.system));
  return [
    {
      kind: "countersink",
      size: least,
      text: bits.orWider(lengthInFull(least, display)),
      band: undefined,
      for: sized.map((j) => ({ title: words.titleOf(j), holes: ofAll(j.count, worked), depth: undefined })),
      source: bits.rule(flatHead.key, words.cite(flatHead.source)),
      assumed: [bits.flatHeads],
      note: bits.countersink,
    },
  ];
}

const crossOf = ({ size: s }: Joint) => (s?.gauge === undefined ? undefined : crossBit(s.gauge));

function driverOf(alike: readonly Joint[], worked: Worked, words: ShopWords): BitNeed {
  const { bits } = words;
  const cross = crossOf(alike[0]!);
  return {
    kind: "driver",
    size: undefined,
    text: bits.toFit,
    band: undefined,
    for: alike.map((j) => ({ title: words.titleOf(j), holes: ofAll(j.count, worked), depth: undefined })),
    source: cross ? words.cite(cross.source) : "",
    assumed: [],
    note: cross ? bits.cross(cross.value.bit) : "",
  };
}
