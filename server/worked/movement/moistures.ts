/** How wet boards are when they are built in, and through the year; and how much they grow in width by that. */
import { ifKnown } from "../../plan";
import { growth } from "../../strength/swelling";
import {
  fiberSaturation,
  type Row,
  type ShrinkageOf,
  shrinkageOf,
  shrinksBelow,
  type Wetting,
  yearlyMoisture,
} from "../../trade";
import type { Material } from "../materials";
import type { Part } from "../parts";
import type { BoardSize } from "./rows";

/** Moistures in percent. */
export interface Moistures {
  readonly where: Wetting;
  readonly built: number;
  readonly wettest: Row<number>;
  readonly driest: Row<number>;
}

/** How the boards of a part move across their width. */
export interface Movement extends Moistures {
  readonly part: string;
  /** The name of its wood, and whether the plan says it. */
  readonly wood: string;
  readonly woodSaid: boolean;
  /** Across a flat-sawn board: tangential, the most there is. */
  readonly shrinkage: ShrinkageOf;
  /** Moisture from which down that wood shrinks. */
  readonly saturation: Row<number>;
  /** By what share of its width it is wider at its wettest, nothing at the least; and narrower at its driest. */
  readonly swells: number;
  readonly shrinks: number;
}

/** Undefined for what is no board or has a mistake; `undefined` shrinkage where no table prints it. */
export function partMovement(part: Part, where: Wetting): Movement | "no table" | undefined {
  const { material } = part;
  if (material?.kind !== "board") return undefined;
  const built = builtMoisture(material);
  if (built === undefined) return undefined;
  const shrinkage = shrinkageOf(material.wood.name);
  if (!shrinkage) return "no table";
  const { wettest, driest } = yearlyMoisture[where];
  const saturation = shrinksBelow(shrinkage.row.key);
  const to = (moisture: number): number =>
    growth(shrinkage.row.value.tangential, built, moisture, saturation.value);
  return {
    part: part.name,
    wood: material.wood.name,
    woodSaid: material.wood.assumed === "",
    where,
    built,
    wettest,
    driest,
    shrinkage,
    saturation,
    swells: Math.max(0, to(wettest.value)),
    shrinks: Math.max(0, -to(driest.value)),
  };
}

/** As the stock says it. What is sold green or treated is taken as wet through: from there it only shrinks. */
export function builtMoisture({ wood, declared, conditions }: Material): number | undefined {
  const clause = declared?.entry.clauses.find((c) => c.kind === "moisture");
  const typed = clause?.kind === "moisture" ? clause : undefined;
  const wet = typed?.state === "green" || (!typed && conditions.includes("treated"));
  const built = wet ? fiberSaturation.value : wood.moisture;
  return Number.isFinite(built) && built >= 0 ? built : undefined;
}

/** The sizes of a board, mm: its length from tip to tip. Undefined for panels, and where one is not known. */
export function boardSize(part: Part | undefined): BoardSize | undefined {
  if (part?.material?.kind !== "board") return undefined;
  const [cut, width, thickness] = [ifKnown(part.cut), ifKnown(part.width), ifKnown(part.thickness)];
  if (!cut || !width || !thickness) return undefined;
  return { length: cut.overall, width: width.approx, thickness: thickness.approx };
}
