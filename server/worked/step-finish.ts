/** What a finish asks of the order of work: that faces are open when they are coated, and that coats and glue have time. */

import { unknown, type Value } from "../plan";
import { type Bounds, HAIRLINE, TOUCHING } from "../solid/contact";
import { brushGap, cite, glueSets } from "../trade";
import { readLiteral } from "../units";
import type { Joint } from "./joints";
import { otherOf, type Space } from "./space";
import type { StepCoat } from "./step-lines";
import type { WorkStep } from "./steps";
import type { Worked } from "./work";

export interface Covered {
  readonly step: WorkStep;
  /** Pieces of which faces are covered, by their places among all. */
  readonly pieces: readonly number[];
  /** Square millimetres of them that lie on other wood. */
  readonly area: number;
  /** One of them, and what covers it. */
  readonly piece: number;
  readonly by: number;
  /** The first step that covers any of it. */
  readonly first: WorkStep;
}

/** Steps that coat faces which steps before have covered, and that no step before has coated. Glue wants bare wood. */
export function coveredFinish({ steps: work, space, joints }: Worked): Covered[] {
  const { steps, stepOf } = work;
  if (steps.every((s) => s.coats.length === 0)) return [];
  const count = space.pieces.length;
  const glued = gluedPairs(joints, count);
  const coated = builtIn(work);
  return steps.flatMap((step, n): Covered[] => {
    let area = 0;
    let best: { piece: number; by: number; area: number } | undefined;
    let first = n;
    const pieces = coated[n]!.filter((i) => {
      let own = 0;
      for (const m of space.meetingsOf[i]!) {
        const meeting = space.meetings[m]!;
        const other = otherOf(meeting, i);
        const covered = Math.max(stepOf[i]!, stepOf[other] ?? n);
        if (covered >= n || glued.has(pairOf(i, other, count))) continue;
        const size = meeting.patches.reduce((sum, p) => sum + p.area, 0);
        own += size;
        first = Math.min(first, covered);
        if (!best || size > best.area + 1) best = { piece: i, by: other, area: size };
      }
      area += own;
      return own > 0;
    });
    return best ? [{ step, pieces, area, piece: best.piece, by: best.by, first: steps[first]! }] : [];
  });
}

const gluedPairs = (joints: readonly Joint[], count: number): ReadonlySet<number> =>
  new Set(
    joints
      .filter((j) => j.entry.kind === "glue")
      .flatMap((j) => j.placed?.crossings.map((c) => pairOf(c.first, c.into, count)) ?? []),
  );

/** Two of so many pieces as one number, whichever comes first. */
const pairOf = (a: number, b: number, count: number): number => (a < b ? a * count + b : b * count + a);

/** For each step what it coats of pieces that stand already, and that no step before it has coated. */
function builtIn({ steps, stepOf }: Worked["steps"]): number[][] {
  const done = new Set<number>();
  return steps.map(({ coats }, n) => {
    const own = new Set(coats.flatMap((c) => c.pieces));
    const found = [...own].filter((i) => (stepOf[i] ?? n) < n && !done.has(i));
    for (const i of own) done.add(i);
    return found;
  });
}

export interface Narrow {
  readonly step: WorkStep;
  readonly piece: number;
  readonly other: number;
  /** mm */
  readonly gap: number;
  /** How many gaps like it there are besides. */
  readonly more: number;
}

/** mm: a gap that a brush gets into. */
export const BRUSH = readLiteral(`${brushGap.value}"`)!.approx;
/** Faces that look at each other over less than this, in square millimetres, are let be: two square inches. */
const SMALL = 2 * 645.16;

/** Faces that a step coats when they already lie in a gap too narrow for a brush, the narrowest of each step. */
export function narrowGaps({ steps: work, space }: Worked): Narrow[] {
  const { steps, stepOf } = work;
  const coated = builtIn(work);
  return steps.flatMap((step, n): Narrow[] => {
    const gaps = new Map<number, Omit<Narrow, "step" | "more">>();
    for (const piece of coated[n]!)
      for (const other of space.grid.near(space.pieces[piece]!.bounds, BRUSH)) {
        if (other === piece || (stepOf[other] ?? n) >= n) continue;
        const key = pairOf(piece, other, space.pieces.length);
        if (gaps.has(key)) continue;
        const gap = gapOf(space, piece, other, (i) => (stepOf[i] ?? n) < n);
        if (gap !== undefined) gaps.set(key, { piece, other, gap });
      }
    const all = [...gaps.values()].sort((a, b) => (Math.abs(a.gap - b.gap) < TOUCHING ? 0 : a.gap - b.gap));
    return all[0] ? [{ step, ...all[0], more: all.length - 1 }] : [];
  });
}

/**
 * The gap between two square blocks that look at each other; undefined where there is none, where a brush gets in, or
 * where what is there fills it.
 */
function gapOf(
  { pieces, grid }: Space,
  a: number,
  b: number,
  isThere: (piece: number) => boolean,
): number | undefined {
  const [p, q] = [pieces[a]!, pieces[b]!];
  const square = [p, q].every((x) => x.cells.length === 1 && x.cells[0]!.aligned);
  if (!square) return undefined;
  const over = AXES.map((k) => overlap(p.bounds, q.bounds, k));
  const axis = over.findIndex((o) => o < 0);
  if (axis < 0 || over.some((o, k) => k !== axis && o <= 0)) return undefined;
  const gap = -over[axis]!;
  if (gap <= HAIRLINE || gap >= BRUSH - HAIRLINE) return undefined;
  const empty = blockBetween(p.bounds, q.bounds);
  const faceOf = (sizes: readonly number[]) =>
    AXES.reduce<number>((area, k) => (k === axis ? area : area * Math.max(0, sizes[k]!)), 1);
  const filled = grid
    .near(empty, 0)
    .filter((i) => i !== a && i !== b && isThere(i))
    .map((i) => AXES.map((k) => overlap(pieces[i]!.bounds, empty, k)))
    .filter((sizes) => sizes[axis]! > gap / 2);
  const open = filled.reduce((area, sizes) => area - faceOf(sizes), faceOf(over));
  return open > SMALL ? gap : undefined;
}

const AXES = [0, 1, 2] as const;

/** What is between two blocks: from one to the other along a direction in which they are apart, what both have along others. */
function blockBetween(p: Bounds, q: Bounds): Bounds {
  const inner = AXES.map((k) => [Math.max(p.least[k], q.least[k]), Math.min(p.most[k], q.most[k])] as const);
  const least = inner.map(([from, to]) => Math.min(from, to)) as [number, number, number];
  const most = inner.map(([from, to]) => Math.max(from, to)) as [number, number, number];
  return { least, most };
}

const overlap = (a: Bounds, b: Bounds, k: 0 | 1 | 2): number =>
  Math.min(a.most[k], b.most[k]) - Math.max(a.least[k], b.least[k]);

export interface ShortWait {
  readonly step: WorkStep;
  readonly is: "coat" | "glue";
  /** What is coated, or one of the glued pieces by its place among all. */
  readonly coat: StepCoat | undefined;
  readonly piece: number | undefined;
  /** The step that handles it too soon. */
  readonly later: WorkStep;
  /** Minutes. */
  readonly needs: number;
  readonly has: number;
  /** What to wait after the step, in minutes. */
  readonly wait: number;
  readonly source: string;
}

/** Something that is coated or glued, of which it is not known whether it has time to dry or set. */
export interface UnknownWait {
  readonly step: WorkStep;
  readonly coat: StepCoat | undefined;
  readonly piece: number | undefined;
  readonly why: Value<never>;
}

/** What is coated or glued in a step, and handled in a later one: too soon, or it is not known how soon. */
type Wait =
  | { readonly is: "short"; readonly short: ShortWait }
  | { readonly is: "unknown"; readonly unknown: UnknownWait };

type ForWaits = Pick<Worked, "steps" | "joints" | "space">;

/** Steps after which something coated or glued is handled before it has dried or set; one for each step. */
export const shortWaits = (worked: ForWaits): ShortWait[] =>
  waitsOf(worked).flatMap((waits) => {
    const short = waits.flatMap((w) => (w.is === "short" ? [w.short] : []));
    const worst = short.reduce<ShortWait | undefined>((a, b) => (!a || b.wait > a.wait ? b : a), undefined);
    return worst ? [worst] : [];
  });

/** What a plan's own steps leave unsaid of that. */
export const unknownWaits = (worked: ForWaits): UnknownWait[] =>
  worked.steps.proposed
    ? []
    : waitsOf(worked).flatMap((waits) => waits.flatMap((w) => (w.is === "unknown" ? [w.unknown] : [])));

/** By steps. */
function waitsOf(worked: ForWaits): Wait[][] {
  const { steps, stepOf } = worked.steps;
  if (steps.every((s) => s.coats.length + s.glues.length === 0)) return [];
  const handled = steps.map((s) => handledIn(s));
  return steps.map((step, n) => [
    ...step.coats.flatMap((coat) => coatWait(coat, n, steps, handled)),
    ...glueWait(worked, n, steps, handled, stepOf),
  ]);
}

const UNTIMED = unknown("unsaid", "unsaid times");

interface Handled {
  readonly pieces: ReadonlySet<number>;
  readonly parts: ReadonlySet<string>;
}

/** What hands or tools are on in a step. */
function handledIn({ fresh, again, parts, joints, glues, coats, lines, lift }: WorkStep): Handled {
  const named = [...coats, ...lines].flatMap((thing) => thing.pieces);
  const pieces = new Set([...fresh, ...again, ...named, ...(lift?.pieces ?? [])]);
  for (const { crossings } of [...joints, ...glues])
    for (const { first, through, into } of crossings)
      for (const i of [first, ...through, into]) pieces.add(i);
  return { pieces, parts: new Set([...parts, ...coats.flatMap((c) => c.parts)]) };
}

function coatWait(
  coat: StepCoat,
  n: number,
  steps: readonly WorkStep[],
  handled: readonly Handled[],
): Wait[] {
  const { line, coats } = coat;
  if (!line) return [];
  const k = handled.findIndex(
    ({ pieces, parts }, k) =>
      k > n && (coat.pieces.some((i) => pieces.has(i)) || coat.parts.some((p) => parts.has(p))),
  );
  const time = k < 0 ? undefined : elapsed(steps, n, k);
  if (!time) return [];
  const step = steps[n]!;
  const common = { step, coat, piece: undefined };
  if (line.dries.state !== "known")
    return line.dries.state === "unknown" ? [{ is: "unknown", unknown: { ...common, why: line.dries } }] : [];
  const { least, source } = line.dries.value;
  const needs = least.approx * coats;
  const { minutes: has, told } = time;
  if (has >= needs) return [];
  if (!told) return [{ is: "unknown", unknown: { ...common, why: UNTIMED } }];
  const wait = needs - has + (step.wait?.approx ?? 0);
  return [{ is: "short", short: { ...common, is: "coat", later: steps[k]!, needs, has, wait, source } }];
}

/**
 * Minutes from the end of a step to the beginning of another: waits, and the work between; more than that where it is not
 * told how long some of the work takes. Undefined where some of it could not be read.
 */
function elapsed(
  steps: readonly WorkStep[],
  from: number,
  to: number,
): { readonly minutes: number; readonly told: boolean } | undefined {
  let minutes = 0;
  let told = true;
  for (let n = from; n < to; n++) {
    const { takes, wait, unread } = steps[n]!;
    if (unread) return undefined;
    minutes += wait?.approx ?? 0;
    if (n === from) continue;
    if (takes) minutes += takes.approx;
    else told = false;
  }
  return { minutes, told };
}

/** Glue that nothing else holds, and a later step that works on the smaller side of it. */
function glueWait(
  { joints, space }: ForWaits,
  n: number,
  steps: readonly WorkStep[],
  handled: readonly Handled[],
  stepOf: readonly (number | undefined)[],
): Wait[] {
  const step = steps[n]!;
  if (step.glues.length === 0) return [];
  const [set, cured] = [glueSets.value.low * 60, glueSets.value.high * 60];
  let weak: ReadonlySet<number> | undefined;
  for (let k = n + 1; k < steps.length; k++) {
    const time = elapsed(steps, n, k);
    if (!time || time.minutes >= set) return [];
    weak ??= weakSides(step, screwed(joints, space, stepOf, n));
    const { pieces } = handled[k]!;
    const piece = [...weak].find((i) => pieces.has(i));
    if (piece === undefined) continue;
    const common = { step, coat: undefined, piece };
    if (!time.told) return [{ is: "unknown", unknown: { ...common, why: UNTIMED } }];
    const source = cite(glueSets.source);
    const found = { needs: set, has: time.minutes, wait: cured, source };
    return [{ is: "short", short: { ...common, ...found, is: "glue", later: steps[k]! } }];
  }
  return [];
}

/** The pieces on the smaller side of all that a step glues and that no screw holds too; on both where they are as many. */
function weakSides({ glues }: WorkStep, side: (piece: number) => readonly number[]): ReadonlySet<number> {
  const weak = new Set<number>();
  for (const { crossings } of glues)
    for (const { first, into } of crossings) {
      const [a, b] = [side(first), side(into)];
      if (a === b) continue;
      for (const [own, other] of [
        [a, b],
        [b, a],
      ] as const)
        if (own.length <= other.length && !weak.has(own[0]!)) for (const i of own) weak.add(i);
    }
  return weak;
}

/** Pieces that screws hold together by the end of a step, for each piece of one. */
function screwed(
  joints: readonly Joint[],
  { pieces }: Space,
  stepOf: readonly (number | undefined)[],
  n: number,
): (piece: number) => readonly number[] {
  const group: number[][] = pieces.map((_, i) => [i]);
  for (const { placed } of joints)
    for (const { crossing } of placed?.screws ?? []) {
      const all = [crossing.first, ...crossing.through, crossing.into];
      if (!all.every((i) => stepOf[i] !== undefined && stepOf[i] <= n)) continue;
      for (const i of all) {
        const [x, y] = [group[crossing.first]!, group[i]!];
        if (x === y) continue;
        const [into, from] = x.length >= y.length ? [x, y] : [y, x];
        for (const j of from) {
          into.push(j);
          group[j] = into;
        }
      }
    }
  return (i) => group[i]!;
}
