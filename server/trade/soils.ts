// How loose fill presses sideways: friction angles of fills, the share of the weight that presses on a wall.
import { FROM_MEMORY, type Row } from "./row";

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

/** A box is stiff, so its fill presses at rest: 1 - sin(phi). This is for 30 degrees, where a fill's own angle is not known. */
export const atRestShare: Row<number> = {
  key: "share of its weight with which loose fill presses sideways",
  value: 0.5,
  unit: "",
  source: {
    document: "Jaky, 1 - sin(phi)",
    via: "geoeqdoc.pages.dev",
    confidence: "read",
  },
  range: "at rest, friction angle 30; 0.41 to 0.63 for angles from 36 to 22",
};

export const soilRows: readonly Row<unknown>[] = [...frictionAngles, atRestShare];
