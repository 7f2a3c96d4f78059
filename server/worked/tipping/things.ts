/** The things of a plan that stand on the floor, each with how it stands: pieces that lead from one to the other by contact. */
import type { Thing } from "../../../grammar/tree";
import { ifKnown } from "../../plan";
import { HAIRLINE } from "../../solid/contact";
import { DisjointSets } from "../../solid/disjoint-sets";
import { type Mass, type Point, together } from "../../strength/topple";
import { sameDimension, WEIGHT } from "../../units";
import type { Box } from "../boxes";
import { boxPieces, chosen } from "../choose";
import type { Piece } from "../pieces";
import type { Worked } from "../work";
import { fillsOf } from "./fill";
import { INSET, PERSON, WINDY } from "./limits";
import {
  baseOf,
  cornersOf,
  gustsOf,
  massOfPiece,
  type Perch,
  type Stance,
  type State,
  seatsOf,
} from "./stance";

export type Plan = Pick<Worked, "space" | "parts" | "boxes" | "settings" | "loaded" | "scope" | "evaluate">;

export interface StandingThing {
  /** Places among all pieces. */
  readonly pieces: readonly number[];
  /** Undefined where it goes into the ground, or nothing of it has a known weight. */
  readonly stance: Stance | undefined;
  readonly why: "in the ground" | "no weight" | undefined;
  /** Parts whose weight is not known, and counts as nothing. */
  readonly unweighed: readonly string[];
  /** Boxes of it, and of those the ones of which no wall is placed: where their fill is is not known. */
  readonly boxes: readonly Box[];
}

/** Everything that stands on the floor, of things alike the first. */
export function standingThings(plan: Plan): StandingThing[] {
  const { space } = plan;
  const loads = loadsOf(plan);
  const seen = new Set<string>();
  return groupsOf(space).flatMap((group): StandingThing[] => {
    const key = keyOf(group.map((i) => space.pieces[i]!));
    if (seen.has(key)) return [];
    seen.add(key);
    return [thingOf(group, plan, loads)];
  });
}

function groupsOf({ pieces, meetings }: Worked["space"]): number[][] {
  const sets = new DisjointSets<number>();
  for (const { a, b } of meetings) sets.join(a, b);
  const groups = new Map<number, number[]>();
  pieces.forEach((_, i) => {
    const top = sets.topOf(i);
    const group = groups.get(top);
    if (group) group.push(i);
    else groups.set(top, [i]);
  });
  return [...groups.values()].filter((g) => g.some((i) => pieces[i]!.bounds.least[2] <= HAIRLINE));
}

/** The same for things of as many pieces of the same parts, as large. */
function keyOf(pieces: readonly Piece[]): string {
  const counts = new Map<string, number>();
  let [from, to] = [
    [Infinity, Infinity, Infinity],
    [-Infinity, -Infinity, -Infinity],
  ];
  for (const { part, bounds } of pieces) {
    counts.set(part, (counts.get(part) ?? 0) + 1);
    from = from.map((x, k) => Math.min(x, bounds.least[k]!));
    to = to.map((x, k) => Math.max(x, bounds.most[k]!));
  }
  const size = to.map((x, k) => Math.round(x - from[k]!)).join(" x ");
  return [size, ...[...counts].map(([part, n]) => `${n} ${part}`).sort()].join("\n");
}

/** A load of the plan's own, with the pieces that carry it. */
interface Carried {
  readonly thing: Thing;
  readonly pieces: readonly number[];
  readonly kg: number;
  readonly anywhere: boolean;
}

function loadsOf({ loaded, space, scope, evaluate }: Plan): Carried[] {
  const { file, tree } = loaded.files[0]!;
  return tree.entries.flatMap((entry): Carried[] => {
    if (entry.kind !== "load") return [];
    const value = ifKnown(evaluate(entry.value, file));
    if (!value || !sameDimension(value.dim, WEIGHT) || !(value.approx > 0)) return [];
    const anywhere = entry.clauses.some((c) => c.kind === "bears" && c.how === "anywhere");
    const pieces = chosen(entry.thing, space, scope);
    return [{ thing: entry.thing, pieces, kg: value.approx, anywhere }];
  });
}

function thingOf(group: readonly number[], plan: Plan, loads: readonly Carried[]): StandingThing {
  const { space, parts, boxes, scope, settings } = plan;
  const pieces = group.map((i) => space.pieces[i]!);
  const within = new Set(group);
  const kg = (part: string): number | undefined => ifKnown(parts.get(part)?.weight)?.approx;
  const unweighed = [...new Set(pieces.map((p) => p.part))].filter((part) => kg(part) === undefined);
  const own = boxes.flatMap((box) => {
    const walls = boxPieces(box.declared, space, scope);
    return walls.some((i) => within.has(i)) ? [{ box, walls: walls.map((i) => space.pieces[i]!) }] : [];
  });
  const rest = { pieces: group, unweighed, boxes: own.map(({ box }) => box) };
  if (pieces.some((p) => p.bounds.least[2] < -HAIRLINE))
    return { ...rest, stance: undefined, why: "in the ground" };
  const masses = pieces.map((p) => massOfPiece(p, kg(p.part) ?? 0));
  const wood = together(masses);
  if (!wood) return { ...rest, stance: undefined, why: "no weight" };
  const high = pieces.reduce((most, p) => Math.max(most, p.bounds.most[2]), 0);
  const perches = [...seats(pieces), ...perched(loads, within, space.pieces)];
  const stance = {
    base: baseOf(pieces),
    high,
    states: statesOf(wood, own, perches),
    perches,
    gusts: settings.place === "outdoors" && high > WINDY ? gustsOf(pieces) : [],
    weighed: unweighed.length === 0,
  };
  return { ...rest, stance, why: undefined };
}

/** Someone on each part that has a top to sit on. */
function seats(pieces: readonly Piece[]): Perch[] {
  const tops = new Map<string, { points: Point[]; height: number }>();
  for (const piece of pieces)
    for (const { points, height } of seatsOf(piece)) {
      const top = tops.get(piece.part);
      if (top) top.points.push(...points);
      else tops.set(piece.part, { points: [...points], height });
    }
  return [...tops].map(([on, top]) => ({ is: "seat", on, kg: PERSON, inset: INSET, ...top }));
}

/** Loads of the plan: in the middle of what carries them, or, where they may come anywhere, on its corners. */
function perched(loads: readonly Carried[], within: ReadonlySet<number>, all: readonly Piece[]): Perch[] {
  return loads.flatMap(({ thing, pieces, kg, anywhere }): Perch[] => {
    const under = pieces.filter((i) => within.has(i)).map((i) => all[i]!);
    if (under.length === 0) return [];
    const corners = under.flatMap((p) => cornersOf(p.bounds));
    const height = Math.max(...under.map((p) => p.bounds.most[2]));
    const points = anywhere ? corners : [middleOf(corners)];
    return [{ is: "load", on: thing.name.text, kg, points, inset: 0, height }];
  });
}

function middleOf(points: readonly Point[]): Point {
  const half = (k: 0 | 1): number =>
    (points.reduce((m, p) => Math.min(m, p[k]), Infinity) +
      points.reduce((m, p) => Math.max(m, p[k]), -Infinity)) /
    2;
  return [half(0), half(1)];
}

/** As it stands, or empty and filled; and with each load on it, at the edge where it may come there. */
function statesOf(
  wood: Mass,
  boxes: readonly { readonly box: Box; readonly walls: readonly Piece[] }[],
  perches: readonly Perch[],
): Stance["states"] {
  const filled = boxes.filter(({ box }) => box.fill !== undefined);
  const states: { state: State; mass: Mass }[] = [
    { state: filled.length > 0 ? "empty" : "standing", mass: wood },
  ];
  for (const { state, masses } of fillsOf(filled)) states.push({ state, mass: together([wood, ...masses])! });
  for (const { is, kg, points, height } of perches)
    if (is === "load")
      for (const [x, y] of outermost(points))
        states.push({ state: "loaded", mass: together([wood, { kg, at: [x, y, height] }])! });
  return states;
}

/** Of many points those that lie furthest to the left, right, front and back. */
function outermost(points: readonly Point[]): Point[] {
  const ends = ([0, 1] as const).flatMap((k) => [
    points.reduce((a, b) => (b[k] < a[k] ? b : a)),
    points.reduce((a, b) => (b[k] > a[k] ? b : a)),
  ]);
  return [...new Set(ends)];
}
