/** What a finish asks of the order of work: that faces are open when they are coated, and that coats and glue have time. */

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
        const gap = gapOf(space, piece, other);
        const key = pairOf(piece, other, space.pieces.length);
        if (gap !== undefined && !gaps.has(key)) gaps.set(key, { piece, other, gap });
      }
    const all = [...gaps.values()].sort((a, b) => (Math.abs(a.gap - b.gap) < TOUCHING ? 0 : a.gap - b.gap));
    return all[0] ? [{ step, ...all[0], more: all.length - 1 }] : [];
  });
}

/** The gap between two square blocks that look at each other; undefined where there is none, or a brush gets in. */
function gapOf({ pieces }: Space, a: number, b: number): number | undefined {
  const [p, q] = [pieces[a]!, pieces[b]!];
  const square = [p, q].every((x) => x.cells.length === 1 && x.cells[0]!.aligned);
  if (!square) return undefined;
  const over = ([0, 1, 2] as const).map((k) => overlap(p.bounds, q.bounds, k));
  const axis = over.findIndex((o) => o < 0);
  const gap = axis < 0 ? 0 : -over[axis]!;
  const [u, v] = over.filter((_, k) => k !== axis) as [number, number];
  const fits = gap > HAIRLINE && gap < BRUSH - HAIRLINE && u > 0 && v > 0 && u * v > SMALL;
  return fits ? gap : undefined;
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

/** Steps after which something coated or glued is handled before it has dried or set; one for each step. */
export function shortWaits(worked: Pick<Worked, "steps" | "joints" | "space">): ShortWait[] {
  const { steps, stepOf } = worked.steps;
  if (steps.every((s) => s.coats.length + s.glues.length === 0)) return [];
  const handled = steps.map((s) => handledIn(s));
  return steps.flatMap((step, n): ShortWait[] => {
    const found = [
      ...step.coats.flatMap((coat) => shortCoat(coat, n, steps, handled)),
      ...shortGlue(worked, n, steps, handled, stepOf),
    ];
    const worst = found.reduce<ShortWait | undefined>((a, b) => (!a || b.wait > a.wait ? b : a), undefined);
    return worst ? [worst] : [];
  });
}

interface Handled {
  readonly pieces: ReadonlySet<number>;
  readonly parts: ReadonlySet<string>;
}

/** What hands or tools are on in a step. */
function handledIn({ fresh, again, parts, joints, glues, coats, lift }: WorkStep): Handled {
  const pieces = new Set([...fresh, ...again, ...coats.flatMap((c) => c.pieces), ...(lift?.pieces ?? [])]);
  for (const { crossings } of [...joints, ...glues])
    for (const { first, through, into } of crossings)
      for (const i of [first, ...through, into]) pieces.add(i);
  return { pieces, parts: new Set([...parts, ...coats.flatMap((c) => c.parts)]) };
}

function shortCoat(
  coat: StepCoat,
  n: number,
  steps: readonly WorkStep[],
  handled: readonly Handled[],
): ShortWait[] {
  const { line, coats } = coat;
  if (!line?.dries) return [];
  const needs = line.dries.minutes * coats;
  const k = handled.findIndex(
    ({ pieces, parts }, k) =>
      k > n && (coat.pieces.some((i) => pieces.has(i)) || coat.parts.some((p) => parts.has(p))),
  );
  const has = k < 0 ? undefined : elapsed(steps, n, k);
  if (has === undefined || has >= needs) return [];
  const wait = needs - has + (steps[n]!.wait?.approx ?? 0);
  const piece = undefined;
  return [
    {
      step: steps[n]!,
      is: "coat",
      coat,
      piece,
      later: steps[k]!,
      needs,
      has,
      wait,
      source: line.dries.source,
    },
  ];
}

/** Minutes from the end of a step to the beginning of another: waits, and the work between. Undefined where that is not said. */
function elapsed(steps: readonly WorkStep[], from: number, to: number): number | undefined {
  let minutes = steps[from]!.wait?.approx ?? 0;
  for (const { takes, wait } of steps.slice(from + 1, to)) {
    if (!takes) return undefined;
    minutes += takes.approx + (wait?.approx ?? 0);
  }
  return minutes;
}

/** Glue that nothing else holds, and a later step that works on the smaller side of it. */
function shortGlue(
  { joints, space }: Pick<Worked, "joints" | "space">,
  n: number,
  steps: readonly WorkStep[],
  handled: readonly Handled[],
  stepOf: readonly (number | undefined)[],
): ShortWait[] {
  const { glues } = steps[n]!;
  if (glues.length === 0) return [];
  const [set, cured] = [glueSets.value.low * 60, glueSets.value.high * 60];
  for (let k = n + 1; k < steps.length; k++) {
    const has = elapsed(steps, n, k);
    if (has === undefined || has >= set) return [];
    const side = screwed(joints, space, stepOf, n);
    for (const { crossings } of glues)
      for (const { first, into } of crossings) {
        const [a, b] = [side(first), side(into)];
        if (a === b) continue;
        const weak = [...(a.length <= b.length ? a : []), ...(b.length <= a.length ? b : [])];
        const piece = weak.find((i) => handled[k]!.pieces.has(i));
        if (piece === undefined) continue;
        const step = steps[n]!;
        const source = cite(glueSets.source);
        return [
          {
            step,
            is: "glue",
            coat: undefined,
            piece,
            later: steps[k]!,
            needs: set,
            has,
            wait: cured,
            source,
          },
        ];
      }
  }
  return [];
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
