// How loose fill presses sideways: friction angles of fills, the share of the weight that presses on a wall, guide soils.
import { FROM_MEMORY, type Row, type Source } from "./row";

/** Friction angle in degrees of a fill by its name in the table of fills; undefined for water and what is not known. */
export function frictionAngle(fill: string): Row<number> | undefined {
  return frictionAngles.find(({ key }) => key === `${fill} friction angle`);
}

export const frictionAngles: readonly Row<number>[] = (
  [
    ["soil", 30, "28 to 34, loose and moist"],
    ["topsoil", 30, "28 to 34, loose and moist"],
    ["raised-bed-mix", 30, "28 to 34"],
    ["potting-mix", 30, "30 to 40"],
    ["compost", 30, "30 to 40"],
    ["sand", 32, "30 to 36, loose"],
    ["gravel", 36, "34 to 40"],
    ["clay", 22, "18 to 26, soft"],
  ] as const
).map(([fill, value, range]) => ({
  key: `${fill} friction angle`,
  value,
  unit: "deg",
  source: FROM_MEMORY,
  range,
}));

/** A box is stiff, so its fill presses at rest: 1 - sin(30), for loose fill of no known angle. */
export const atRestShare: Row<number> = {
  key: "share of its weight with which loose fill presses sideways",
  value: 0.5,
  unit: "",
  source: {
    document: "Jaky, 1 - sin(phi)",
    table: "phi 30",
    via: "geoeqdoc.pages.dev",
    confidence: "read",
  },
  range: "at rest; 0.41 to 0.63 for friction angles from 36 to 22",
};

/** Active share, weight in lb/cuft, and the weight of the fluid that presses alike. */
export interface GuideSoil {
  readonly share: number;
  readonly weight: number;
  readonly fluid: number;
}

const HUD: Source = {
  document: "HUD Residential Structural Design Guide",
  table: "Table 3.5, guide soils",
  via: "1library.net",
  confidence: "read",
};

export const guideSoils: readonly Row<GuideSoil>[] = (
  [
    ["sand and gravel", 0.26, 115, 30],
    ["silty sand", 0.35, 100, 35],
    ["clay and silt", 0.45, 100, 45],
    ["clay", 0.6, 100, 60],
  ] as const
).map(([soil, share, weight, fluid]) => ({
  key: `guide soil, ${soil}`,
  value: { share, weight, fluid },
  unit: "lb/cuft",
  source: HUD,
  range: "walls that give way; no load on the surface, no water",
}));

export const soilRows: readonly Row<unknown>[] = [...frictionAngles, atRestShare, ...guideSoils];
