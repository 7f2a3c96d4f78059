/** What to know in the aisle: how many of which boards and sheets, how long, how heavy, and which real size the plan took. */
import { ifKnown, type Value } from "../plan";
import type { Quantity } from "../units";
import { type BoughtWeight, weightOf } from "./weight";
import type { Worked } from "./work";

export interface AisleRow {
  readonly aisle: "boards" | "sheets";
  /** The nominal name, or what the plan calls it. */
  readonly name: string;
  /** Empty where the plan does not say which wood. */
  readonly wood: string;
  readonly conditions: readonly string[];
  readonly count: number;
  readonly longest: Quantity;
  readonly weight: Value<Quantity>;
  readonly wetter: string;
  /** The real section that all lengths were worked out with: to compare with a board measured at the yard. */
  readonly taken: {
    readonly thickness: Quantity | undefined;
    /** Of boards; a sheet has none of its own. */
    readonly width: Quantity | undefined;
    readonly source: string;
  };
}

export interface AisleFacts {
  readonly rows: readonly AisleRow[];
  /** Boards and sheets in all. */
  readonly count: number;
  /** The longest thing to carry home; undefined when nothing is bought. */
  readonly longest: Quantity | undefined;
  readonly weight: Value<Quantity>;
}

export function aisleFacts(worked: Worked): AisleFacts {
  const { bought, trip } = weightOf(worked);
  const rows = bought.flatMap(rowOf);
  return {
    rows,
    count: rows.reduce((sum, r) => sum + r.count, 0),
    longest: rows.reduce<Quantity | undefined>(
      (most, r) => (most && most.approx >= r.longest.approx ? most : r.longest),
      undefined,
    ),
    weight: trip,
  };
}

function rowOf({ material, aisle, count, longest, weight, wetter }: BoughtWeight): AisleRow[] {
  if (!longest) return [];
  const { name, wood, conditions, thickness, width, source } = material;
  return [
    {
      aisle,
      name,
      wood: wood.assumed ? "" : wood.title,
      conditions,
      count,
      longest,
      weight,
      wetter,
      taken: { thickness: ifKnown(thickness), width: ifKnown(width), source },
    },
  ];
}
