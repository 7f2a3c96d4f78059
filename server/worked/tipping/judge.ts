/** The rules by which a thing tips over: the first that it breaks, worst before others. */
import {
  beyond,
  marginAgainst,
  narrowest,
  nearestSide,
  pushToTip,
  type Side,
  sidesOf,
  weightToTip,
} from "../../strength/topple";
import {
  IN_LINE,
  LEAN,
  LIGHT,
  LOWEST,
  marginFor,
  PERSON,
  PUSH,
  REACH,
  SLIDES,
  SQUAT_BASES,
  TALL,
  TALL_BASES,
} from "./limits";
import type { Perch, Stance, State } from "./stance";

/** That, and how, a thing tips over. Kilograms and millimetres. */
export interface Tip {
  readonly by: "itself" | "narrow" | "tall" | Perch["is"] | "wind" | "push" | "leaned";
  readonly class: "hazard" | "warning";
  readonly state: State;
  /** What the thing weighs in that state. */
  readonly weight: number;
  /** The edge it tips about. */
  readonly side: Side;
  /** What tips it: a push (of a lean, one as hard), a weight on an edge, or the gust that it stands. Nothing where it tips by itself. */
  readonly force: number;
  /** What it must stand, the margin left out: the push, the weight, the gust. */
  readonly wanted: number;
  /** How high above the floor that comes, or how far outside the feet it hangs. */
  readonly at: number;
  /** The part on which a weight comes. */
  readonly on: string;
}

/** How high a push comes: at the top, and no higher than hands reach. */
export const pushHeight = (high: number): number => Math.min(high, REACH);

/** Too narrow a base to say anything of: feet in one line. */
export const inOneLine = ({ base }: Stance): boolean => narrowest(base) < IN_LINE - CRUMB;

/** That a thing whose feet stand in one line is too high to stand free; undefined of a low one. */
export function tallTip(stance: Stance): Tip | undefined {
  const sides = sidesOf(stance.base);
  return sides.length > 0 && stance.high > TALL + CRUMB ? tall(stance, sides)[0] : undefined;
}

/** The worst way in which it tips over; undefined where none was found. */
export function tipOf(stance: Stance, children: boolean): Tip | undefined {
  const sides = sidesOf(stance.base);
  if (sides.length === 0) return undefined;
  const found = [
    ...byItself(stance, sides),
    ...tall(stance, sides),
    ...leaned(stance, sides, children),
    ...pressed(stance, sides, children),
  ];
  return found.reduce<Tip | undefined>(
    (worst, tip) => (worst && !worse(tip, worst) ? worst : tip),
    undefined,
  );
}

/** What arithmetic leaves of lengths, in mm, and of shares. */
const CRUMB = 1e-6;

const RANK: Readonly<Record<Tip["by"], number>> = {
  itself: 0,
  tall: 1,
  narrow: 1,
  load: 2,
  seat: 2,
  wind: 2,
  push: 2,
  leaned: 2,
};

/** By what is told first, hazards before warnings, and then by how far it falls short. */
function worse(a: Tip, b: Tip): boolean {
  if (RANK[a.by] !== RANK[b.by]) return RANK[a.by] < RANK[b.by];
  if (a.class !== b.class) return a.class === "hazard";
  return a.force / a.wanted < b.force / b.wanted - CRUMB;
}

function byItself({ states }: Stance, sides: readonly Side[]): Tip[] {
  return states.flatMap(({ state, mass }): Tip[] => {
    // That a load of the plan's own tips it is told of the load.
    if (state === "loaded") return [];
    const side = nearestSide(sides, mass)!;
    const over = beyond(side, mass.at);
    if (over < -CRUMB) return [];
    return [{ ...told("itself", state, mass.kg, side), at: over }];
  });
}

function tall({ states, high, base }: Stance, sides: readonly Side[]): Tip[] {
  const over = high > TALL + CRUMB;
  if (!over && high <= TALL_BASES * narrowest(base) + CRUMB) return [];
  return states.slice(0, 1).map(({ state, mass }) => {
    const { side, kg } = pushToTip(sides, mass, pushHeight(high))!;
    return { ...told(over ? "tall" : "narrow", state, mass.kg, side), force: kg, at: pushHeight(high) };
  });
}

/** Leaned a little, without fill or load, as it is while it is stood up or moved, it comes back. */
function leaned({ states, weighed }: Stance, sides: readonly Side[], children: boolean): Tip[] {
  return states.slice(0, 1).flatMap(({ state, mass }): Tip[] => {
    const at = mass.at[2];
    const tips = pushToTip(sides, mass, at);
    const wanted = LEAN * mass.kg;
    if (!tips || tips.kg < 0 || tips.kg > wanted * (1 - CRUMB)) return [];
    const light = weighed && mass.kg < LIGHT && !children;
    const tip = told("leaned", state, mass.kg, tips.side);
    return [{ ...tip, class: light ? "warning" : "hazard", force: tips.kg, wanted, at }];
  });
}

/** What presses a thing over, and what share of what it stands that is, the margin in it: over 1 it tips. */
export interface Try extends Tip {
  readonly uses: number;
}

/** Of all that presses on it, what it stands least of; undefined where nothing does, or it tips by itself. */
export function leastSteady(stance: Stance, children: boolean): Try | undefined {
  const tries = triesOf(stance, sidesOf(stance.base), children);
  return tries.reduce<Try | undefined>((most, t) => (most && most.uses >= t.uses ? most : t), undefined);
}

const pressed = (stance: Stance, sides: readonly Side[], children: boolean): Tip[] =>
  triesOf(stance, sides, children).filter(({ uses }) => uses * (1 - CRUMB) > 1);

function triesOf(stance: Stance, sides: readonly Side[], children: boolean): Try[] {
  const margin = marginFor(children);
  const steady = stance.states.filter(({ mass }) => {
    const side = nearestSide(sides, mass);
    return side !== undefined && beyond(side, mass.at) < -CRUMB;
  });
  return steady.flatMap(({ state, mass }) => [
    ...perched(stance, sides, state, mass, margin),
    ...blown(stance, sides, state, mass, margin),
    ...pushed(stance, sides, state, mass, children),
  ]);
}

type Held = Stance["states"][number]["mass"];

function perched(
  { perches }: Stance,
  sides: readonly Side[],
  state: State,
  mass: Held,
  margin: number,
): Try[] {
  return perches.flatMap(({ is, on, kg, points, inset }): Try[] => {
    if (is === "load" && state === "loaded") return [];
    const tips = weightToTip(sides, mass, points, inset);
    if (!tips) return [];
    const uses = (kg * margin) / tips.kg;
    return [{ ...told(is, state, mass.kg, tips.side), force: tips.kg, wanted: kg, at: tips.over, on, uses }];
  });
}

function blown({ gusts }: Stance, sides: readonly Side[], state: State, mass: Held, margin: number): Try[] {
  return gusts.flatMap((gust): Try[] => {
    const stands = marginAgainst(sides, mass, gust);
    if (!stands) return [];
    return [
      {
        ...told("wind", state, mass.kg, stands.side),
        force: gust.kg * stands.margin,
        wanted: gust.kg,
        at: gust.height,
        uses: margin / stands.margin,
      },
    ];
  });
}

/** A push, which no thing that slides first has to stand; one that is squat and light falls without much harm. */
function pushed(
  { high, base, weighed }: Stance,
  sides: readonly Side[],
  state: State,
  mass: Held,
  children: boolean,
): Try[] {
  if (high <= LOWEST + CRUMB) return [];
  const squat = high <= SQUAT_BASES * narrowest(base) + CRUMB;
  if (squat && weighed && mass.kg < LIGHT) return [];
  const height = pushHeight(high);
  const { side, kg } = pushToTip(sides, mass, height)!;
  const wanted = Math.min(PUSH * marginFor(children), SLIDES * mass.kg);
  return [
    {
      ...told("push", state, mass.kg, side),
      class: squat && !children ? "warning" : "hazard",
      force: kg,
      wanted: PUSH,
      at: height,
      uses: wanted / kg,
    },
  ];
}

const told = (by: Tip["by"], state: State, weight: number, side: Side): Tip => ({
  by,
  class: "hazard",
  state,
  weight,
  side,
  force: 0,
  wanted: by === "seat" ? PERSON : PUSH,
  at: 0,
  on: "",
});
