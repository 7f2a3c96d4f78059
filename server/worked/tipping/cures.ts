/** What would keep a thing on its feet, tried on the thing itself: feet further apart, or the whole of it lower. Millimetres. */
import { hullOf, narrowest, type Point } from "../../strength/topple";
import { Lately } from "../lately";
import { type Tip, tipOf } from "./judge";
import { INSET, marginFor } from "./limits";
import type { Stance } from "./stance";

export interface Wider {
  /** Which ways the feet go apart. */
  readonly ways: "left to right" | "front to back" | "both" | "at an angle";
  /** How much further apart, and how far from outside to outside that is, along the first of those ways. */
  readonly more: number;
  readonly base: number;
}

/** A base more than so many times as wide makes another thing of it. */
const MOST_WIDER = 3;

/** Feet spread along the way it tips, else both ways, its weight where it is, until it stands; undefined where that is too far. */
export const widerBase = (stance: Stance, { side: { outward } }: Tip, children: boolean): Wider | undefined =>
  WIDER.of([stance, outward, children]);

type Tipping = readonly [stance: Stance, outward: Point, children: boolean];

const WIDER = new Lately(200, ([stance, outward, children]: Tipping): Wider | undefined => {
  const [x, y] = outward.map(Math.abs) as [number, number];
  const level = x > SQUARE ? "left to right" : y > SQUARE ? "front to back" : "at an angle";
  const tries = [
    { ways: level, spread: (by: number) => apart(stance.base, outward, by) },
    { ways: "both" as const, spread: (by: number) => apart(apart(stance.base, [1, 0], by), [0, 1], by) },
  ] as const;
  const now = widthAlong(stance.base, outward);
  for (const { ways, spread } of tries) {
    const stands = (by: number): boolean =>
      tipOf({ ...stance, base: hullOf(spread(by)) }, children) === undefined;
    const more = least(stands, (MOST_WIDER - 1) * Math.max(now, narrowest(stance.base)));
    if (more !== undefined) return { ways, more, base: now + more };
  }
  return undefined;
});

/** Cosine from which a way counts as one of the two directions. */
const SQUARE = 0.9999;

/** Points moved apart along a way, half of it each way from the middle. */
function apart(points: readonly Point[], way: Point, by: number): Point[] {
  const at = (p: Point): number => way[0] * p[0] + way[1] * p[1];
  const all = points.map(at);
  const middle = (Math.min(...all) + Math.max(...all)) / 2;
  return points.map((p) => {
    const step = (Math.sign(at(p) - middle) * by) / 2;
    return [p[0] + way[0] * step, p[1] + way[1] * step];
  });
}

function widthAlong(points: readonly Point[], way: Point): number {
  const all = points.map((p) => way[0] * p[0] + way[1] * p[1]);
  return Math.max(...all) - Math.min(...all);
}

/** A thing less than so high is another one. */
const LEAST_LOWER = 0.5;

/** The height to which it must be cut down to stand, all of it and all its weight with it; undefined where that is too low. */
export const lowerHeight = (stance: Stance, children: boolean): number | undefined =>
  LOWER.of([stance, children]);

const LOWER = new Lately(200, ([stance, children]: readonly [Stance, boolean]): number | undefined => {
  const cut = least((by) => tipOf(lowered(stance, 1 - by), children) === undefined, 1 - LEAST_LOWER);
  return cut === undefined ? undefined : stance.high * (1 - cut);
});

/** The same thing at a share of its height and of its weight. */
function lowered(stance: Stance, share: number): Stance {
  return {
    ...stance,
    high: stance.high * share,
    states: stance.states.map(({ state, mass: { kg, at } }) => ({
      state,
      mass: { kg: kg * share, at: [at[0], at[1], at[2] * share] },
    })),
    gusts: stance.gusts.map((g) => ({ ...g, kg: g.kg * share, height: g.height * share })),
  };
}

/** How far a top may reach beyond the feet, for someone on its edge not to tip it over that way. */
export const reachAt = ({ force, wanted, at }: Tip, children: boolean): number =>
  INSET + (force * at) / (wanted * marginFor(children));

/** The least of something from nothing up to `most` from which on it holds, found by halving; undefined where it does not hold at `most`. */
function least(holds: (by: number) => boolean, most: number): number | undefined {
  if (!holds(most)) return undefined;
  let [low, high] = [0, most];
  while (high - low > most * FINE) {
    const middle = (low + high) / 2;
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}

const FINE = 1e-11;
