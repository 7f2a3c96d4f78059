/** Things that stand on the floor, and how they tip over. */
import { HAIRLINE } from "../../solid/contact";
import { beyond, narrowest, pushToTip, type Side, sidesOf } from "../../strength/topple";
import type { Joint } from "../joints";
import type { Space } from "../space";
import { inOneLine, pushHeight, type Tip, tallTip, tipOf } from "./judge";
import { baseOf, type Stance } from "./stance";
import { type Plan, type StandingThing, standingThings } from "./things";

export { lowerHeight, reachAt, type Wider, widerBase } from "./cures";
export { pushHeight, type Tip, type Try } from "./judge";
export { marginFor } from "./limits";
export type { Stance, State } from "./stance";
export type { StandingThing } from "./things";

/** A thing that stands on the floor, with how it tips over; undefined where it was found not to, or was not looked at. */
export interface Standing extends StandingThing {
  readonly tip: Tip | undefined;
  readonly untried: "in the ground" | "no weight" | "feet in one line" | undefined;
  /** The foot about which it tips, or any of its feet; its place among all pieces. */
  readonly foot: number;
}

/**
 * All that stands on the floor, of things alike the first; none of a plan that anchors them, or that does not say yet how its
 * pieces are joined.
 */
export function standingOf(plan: Plan & { readonly joints: readonly Joint[] }): Standing[] {
  const { settings, joints, space } = plan;
  if (settings.anchoredTo !== "" || joints.length === 0) return [];
  return standingThings(plan).map((thing): Standing => {
    const { stance, why } = thing;
    const inLine = stance !== undefined && inOneLine(stance);
    const tip = stance && (inLine ? tallTip(stance) : tipOf(stance, settings.nearChildren));
    const untried = why ?? (inLine && !tip ? "feet in one line" : undefined);
    return { ...thing, tip, untried, foot: footAt(thing, space, tip?.side) };
  });
}

/** The first foot that reaches to that edge of the base. */
function footAt({ pieces }: StandingThing, space: Space, side: Side | undefined): number {
  const feet = pieces.filter((i) => space.pieces[i]!.bounds.least[2] <= HAIRLINE);
  if (!side) return feet[0]!;
  const reaches = (i: number): boolean => baseOf([space.pieces[i]!]).some((p) => beyond(side, p) > -HAIRLINE);
  return feet.find(reaches) ?? feet[0]!;
}

/** The push at its top, in kilograms, that tips a thing over once it is filled and dry; undefined of one without a fill. */
export function pushFilled({ stance }: Standing): number | undefined {
  const dry = stance?.states.find(({ state }) => state === "dry");
  return stance && dry && pushToTip(sidesOf(stance.base), dry.mass, pushHeight(stance.high))?.kg;
}

/** mm: how wide the feet stand where they stand narrowest. */
export const baseWidth = ({ base }: Stance): number => narrowest(base);
