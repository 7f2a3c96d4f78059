// The tables of the trade: sizes, woods, screws, nails, fills, soils, wind, finishes, cautions, tools, bits and care, each row with its source.
import { bendingRows } from "./bending";
import { bitRows } from "./bits";
import { careRows } from "./care";
import { cautionRows } from "./cautions";
import { clearWoodRows } from "./clear-wood";
import { cropRows } from "./crops";
import { designRows } from "./design";
import { fastenerRows } from "./fasteners";
import { fillRows } from "./fills";
import { finishRows } from "./finishes";
import { guardingRows } from "./guarding";
import { handlingRows } from "./handling";
import { linerRows } from "./liners";
import { loadRows } from "./loads";
import { lumberRows } from "./lumber";
import { movementRows } from "./movement";
import { panelBendingRows } from "./panel-bending";
import { panelRows } from "./panels";
import { rootRows } from "./roots";
import type { Row } from "./row";
import { screwRows } from "./screws";
import { soldTogether } from "./shrinkage";
import { soilRows } from "./soils";
import { speciesRows } from "./species";
import { standingRows } from "./standing";
import { tippingRows } from "./tipping";
import { toolRows } from "./tools";
import { waterRows } from "./water";
import { weatherRows } from "./weather";

export * from "./bending";
export * from "./bits";
export * from "./care";
export * from "./cautions";
export { clearWoodBending, clearWoodReduction } from "./clear-wood";
export * from "./crops";
export * from "./design";
export * from "./fasteners";
export * from "./fills";
export * from "./finishes";
export * from "./guarding";
export * from "./handling";
export * from "./liners";
export * from "./loads";
export * from "./lumber";
export * from "./movement";
export { editDistance, nearestNames } from "./nearest";
export * from "./panel-bending";
export * from "./panels";
export * from "./roots";
export * from "./row";
export * from "./screws";
export * from "./shrinkage";
export * from "./soils";
export * from "./species";
export * from "./standing";
export * from "./tipping";
export * from "./tools";
export * from "./water";
export * from "./weather";
export { type DecayClass, type Shrinkage, type Stiffness, sapwoodDecay } from "./wood";

/** Every row of every table, in a fixed order. */
export function allRows(): readonly Row<unknown>[] {
  return [
    ...lumberRows,
    ...panelRows,
    ...panelBendingRows,
    ...speciesRows,
    ...movementRows,
    ...soldTogether,
    ...waterRows,
    ...designRows,
    ...clearWoodRows,
    ...bendingRows,
    ...screwRows,
    ...fastenerRows,
    ...fillRows,
    ...soilRows,
    ...standingRows,
    ...finishRows,
    ...linerRows,
    ...rootRows,
    ...cautionRows,
    ...toolRows,
    ...bitRows,
    ...careRows,
    ...handlingRows,
    ...loadRows,
    ...standingRows,
    ...tippingRows,
    ...guardingRows,
    ...cropRows,
    ...weatherRows,
  ];
}
