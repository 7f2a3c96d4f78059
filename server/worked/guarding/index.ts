/** What could hurt a child or whoever eats from it: what is climbed at a guard, openings that catch, soil against the wrong wood. */
import type { Loaded } from "../../plan";
import type { Settings } from "../settings";
import type { Space } from "../space";
import { type Climb, climbOf } from "./climbing";
import { type Food, type FoodInput, foodOf } from "./food";
import { type Soil, soilIn } from "./soil";
import { type Trap, trapsOf } from "./traps";

export type { Climb } from "./climbing";
export type { Unfit } from "./food";
export type { Foothold } from "./footholds";
export { plainStock } from "./plain-stock";
export { type RowChange, rowChanges } from "./row-changes";
export * from "./sizes";
export type { Trap } from "./traps";

export interface Guarding {
  readonly soils: readonly Soil[];
  /** Undefined where the plan stands near no guard, or nothing of it is climbed. */
  readonly climb: Climb | undefined;
  readonly traps: readonly Trap[];
  readonly food: Food;
}

export interface GuardingInput extends FoodInput {
  readonly loaded: Loaded;
  readonly settings: Settings;
  readonly space: Space;
}

export function guardingOf(input: GuardingInput): Guarding {
  const { loaded, settings, space, boxes } = input;
  const soils = settings.nearGuard || settings.nearChildren ? soilIn(boxes) : [];
  return {
    soils,
    climb: climbOf(loaded, settings, space, soils),
    traps: trapsOf(settings, space, soils),
    food: foodOf(input),
  };
}
