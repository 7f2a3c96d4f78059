/** Which cautions a plan itself calls up: by its cuts, its wood, its weights, where it stands. */
import { ifKnown } from "../plan";
import { NUMERIC } from "../solid/angle";
import { type CautionTag, cautionsFor, finishKind } from "../trade";
import { digs, isHung, isTall } from "./anchoring";
import { type Called, Calls, namesBehind } from "./calls";
import { partsOf } from "./groups";
import type { Material } from "./materials";
import { type Operations, operationsOf, SHORT_MM } from "./operations";
import type { Part } from "./parts";
import { SHOP_ENGLISH, type ShopWords } from "./shop-words";
import { LIFTS } from "./step-lift";
import { weightOf } from "./weight";
import type { Worked } from "./work";

/** A caution, with the names of what calls it up; none where it is the plan as a whole. */
export interface CalledCaution {
  readonly key: string;
  readonly text: string;
  readonly source: string;
  readonly about: readonly string[];
}

/** The cautions of a plan, in the order of their table; the structural one always. */
export function cautionsOf(worked: Worked, words: ShopWords = SHOP_ENGLISH): readonly CalledCaution[] {
  const called = calledUp(worked);
  return cautionsFor(called.keys()).map((row) => ({
    key: row.key,
    text: words.caution(row),
    source: words.cite(row.source),
    about: namesBehind(called, row.value.when),
  }));
}

/** mm: the tube that a piece which a small child could swallow fits into (16 CFR 1501, from memory). */
const TUBE = { wide: 31.75, deep: 57.15 } as const;

function calledUp(worked: Worked): Called<CautionTag> {
  const calls = new Calls<CautionTag>();
  const does = operationsOf(worked);
  sawing(does, calls);
  fastening(does, worked, calls);
  wood(does, worked, calls);
  weights(worked, calls);
  standing(worked, calls);
  return calls.called;
}

function sawing(
  { saws, boards, panels, slanted, ripped, short }: Operations,
  calls: Calls<CautionTag>,
): void {
  const sawn = boards.length + panels.length > 0;
  const power = saws.power !== "no";
  const along = names([...ripped, ...panels]);
  calls.when(sawn, "sawing");
  calls.when(sawn && power, "power-saw");
  if (!power) {
    calls.by("short-piece", names(short));
    return;
  }
  calls.by("miter", names(slanted.map((s) => s.part).filter(isSmall)));
  calls.by("short-piece", names(short));
  calls.when(sawn && saws.circular, "circular-saw");
  calls.when(sawn && saws.table, "table-saw");
  // Which saw rips them is not said: what holds for either is told.
  const either = !saws.circular && !saws.table;
  if (either || saws.circular) calls.by("rip", along);
  if (either || saws.table) calls.by("push-stick", names(ripped));
  if (either) {
    calls.by("circular-saw", along);
    calls.by("table-saw", along);
  }
}

/** Small to hold at a saw that turns, and not so short that it is cut from a long board. */
const isSmall = ({ needs }: Part): boolean => {
  const long = ifKnown(needs)?.approx ?? SMALL_MM;
  return long >= SHORT_MM - NUMERIC && long < SMALL_MM - NUMERIC;
};
/** 12 in: two of the shortest that is held (from memory). */
const SMALL_MM = 2 * SHORT_MM;

const names = (parts: readonly Part[]): string[] => parts.map((p) => p.name);

function fastening({ screwed, nailed, bolted }: Operations, worked: Worked, calls: Calls<CautionTag>): void {
  calls.when(screwed.length > 0, "screws");
  calls.when(nailed.length > 0, "nails");
  if (worked.settings.place === "indoors") return;
  const steel = [...screwed, ...nailed, ...bolted].filter(
    (j) => !/stainless/.test(j.fastener?.coating ?? ""),
  );
  const met = new Set(steel.flatMap((j) => j.paths.flatMap((p) => p.layers.map((l) => l.part))));
  const woods = [...met].flatMap((name) => worked.parts.get(name) ?? []);
  calls.by("stains-iron", names(woods.filter((p) => STAINS.test(p.material?.wood.name ?? ""))));
}

const STAINS = /cedar|redwood|oak/;
const REDCEDAR = /western-redcedar|western-cedars/;

function wood(does: Operations, worked: Worked, calls: Calls<CautionTag>): void {
  const { woods, salvage, coats, screwed, nailed, bolted } = does;
  const treated = woods.filter((m) => m.conditions.includes("treated"));
  const outdoors = worked.settings.place !== "indoors";
  calls.by("dust-cedar", called(woods.filter((m) => REDCEDAR.test(m.wood.name))));
  calls.by("treated", called(treated));
  if (outdoors) calls.by("treated-soil", called(treated));
  if (coats.length > 0) calls.by("treated-finish", called(treated));
  if (screwed.length + nailed.length + bolted.length > 0) calls.by("treated-screws", called(treated));
  calls.by("salvage", called(salvage));
  calls.by("salvage-unknown", called(salvage.filter((m) => !m.conditions.includes("untreated"))));
  calls.by("pallet", called(salvage.filter((m) => PALLET.test(m.name))));
  const oils = coats.filter((c) => /^(oil|stain)$/.test(finishKind(c.with) ?? ""));
  calls.by(
    "oil-finish",
    oils.map((c) => c.with),
  );
  food(does, treated, worked, calls);
}

const PALLET = /pallet|crate/;
const FOOD = /\b(food|bread|chopping|serving|fruit|cheese)\b/i;
const called = (materials: readonly Material[]): string[] => materials.map((m) => m.name);

/** What is not known to be safe beside what is eaten; nothing where nothing grows and nothing touches food. */
function food(
  does: Operations,
  treated: readonly Material[],
  worked: Worked,
  calls: Calls<CautionTag>,
): void {
  const growing = worked.boxes.filter((b) => b.grows.length > 0);
  const eats = FOOD.test([worked.settings.title, ...worked.parts.keys()].join(" "));
  if (growing.length === 0 && !eats) return;
  // A box that does not say what it is made of may be made of any of the parts.
  const walls = growing.map((b) => partsOf(b.declared, worked.scope));
  const any = eats || walls.some((w) => w.length === 0);
  const near = any ? [...worked.parts.keys()] : walls.flat();
  const materials = new Set(near.flatMap((n) => worked.parts.get(n)?.material ?? []));
  const unsure = [...does.salvage, ...treated].filter((m) => materials.has(m));
  const coats = does.coats.filter((c) => c.parts.some((p) => near.includes(p)));
  const liners = worked.linings.filter((l) => l.box && growing.includes(l.box) && l.roll?.foodSafe !== true);
  calls.by("food", [...called(unsure), ...coats.map((c) => c.with), ...liners.map((l) => l.entry.with.text)]);
  calls.by("treated-food", called(treated.filter((m) => materials.has(m))));
}

function weights(worked: Worked, calls: Calls<CautionTag>): void {
  const { parts, atLeast, bought } = weightOf(worked);
  const whole = worked.settings.title || "the whole of it";
  const heavy = (kg: number | undefined): boolean => (kg ?? 0) > LIFTS;
  calls.by(
    "lift-over-51lb",
    parts.filter((p) => heavy(ifKnown(p.each)?.approx)).map((p) => p.part),
  );
  calls.by(
    "lift-over-51lb",
    bought.filter((b) => heavy(b.heaviest?.approx)).map((b) => b.material.name),
  );
  if (heavy(atLeast.approx)) calls.by("lift-over-51lb", [whole]);
  const boxes = worked.boxes.filter((b) => heavy(ifKnown(b.weights.saturated)?.approx)).map((b) => b.name);
  calls.by("wet-box", boxes);
  calls.by("lift-over-51lb", boxes);
}

function standing(worked: Worked, calls: Calls<CautionTag>): void {
  const { settings } = worked;
  calls.when(settings.floorLimit !== undefined || settings.footLimit !== undefined, "floor");
  calls.when(settings.nearGuard, "near-guard");
  calls.when(settings.nearChildren, "children");
  if (settings.nearChildren) calls.by("small-parts", names([...worked.parts.values()].filter(isSwallowed)));
  calls.when(isTall(worked), "tall");
  calls.when(isHung(worked), "hung");
  calls.when(digs(worked), "dig");
}

/** Whether a piece fits the tube in some way it can be turned: its section's diagonal across, its length along. */
function isSwallowed({ needs, width, thickness }: Part): boolean {
  const sides = [needs, width, thickness].map((v) => ifKnown(v)?.approx ?? Number.POSITIVE_INFINITY);
  const [least, middle, most] = sides.sort((a, b) => a - b) as [number, number, number];
  return Math.hypot(least, middle) <= TUBE.wide && most <= TUBE.deep;
}
