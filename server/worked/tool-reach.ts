/** How far the saws of a plan must reach: the largest angle, the widest and the longest cut. */
import { ifKnown } from "../plan";
import { cos } from "../solid/angle";
import type { ToolKey } from "../trade";
import { ANGLE, exactly, fraction, LENGTH, minus, type Quantity, refused, roughly } from "../units";
import type { Operations, SlantedEnd } from "./operations";
import type { Part } from "./parts";

export interface ToolSetting {
  /** The largest of its kind. Angles are off square, as a saw shows them. */
  readonly what: "miter" | "bevel" | "longest cut along" | "widest cut across" | "thickest cut";
  readonly value: Quantity;
  /** An angle as it is drawn at the long point: 90° less what the saw shows. */
  readonly drawn?: Quantity;
}

/** Nothing for tools whose reach is no matter. */
export function reachOf(key: ToolKey, does: Operations): ToolSetting[] {
  const slanted = does.slanted.filter((s) => s.kind === key);
  switch (key) {
    case "crosscut":
      return [...across(does.boards, () => 1), ...thickest(does.boards)];
    case "miter":
      return [
        ...angle("miter", slanted),
        ...across(slanted.map(partOf), (i) => 1 / cos(slanted[i]!.angles.miter!.approx)),
      ];
    case "bevel":
      return [...angle("bevel", slanted), ...thickest(slanted.map(partOf))];
    case "compound":
      return [...angle("miter", slanted), ...angle("bevel", slanted), ...thickest(slanted.map(partOf))];
    case "rip":
      return along(does.ripped);
    case "sheet":
      return along(does.panels);
    default:
      return [];
  }
}

const partOf = ({ part }: SlantedEnd): Part => part;
const RIGHT = exactly(ANGLE, fraction.rational(90));

const largest = (values: readonly (Quantity | undefined)[]): Quantity | undefined =>
  values.reduce((most, v) => (v && (!most || v.approx > most.approx) ? v : most), undefined);

const setting = (what: ToolSetting["what"], value: Quantity | undefined): ToolSetting[] =>
  value ? [{ what, value }] : [];

function angle(what: "miter" | "bevel", ends: readonly SlantedEnd[]): ToolSetting[] {
  return setting(what, largest(ends.map((e) => e.angles[what]))).map((one) => {
    const drawn = minus(RIGHT, one.value);
    return refused(drawn) ? one : { ...one, drawn };
  });
}

/** The widest cut of boards, each as wide as it is bought and as much wider as its slant makes it. */
function across(parts: readonly Part[], wider: (i: number) => number): ToolSetting[] {
  const cuts = parts.map((p, i) => {
    const width = ifKnown(p.material?.width ?? p.width);
    const by = wider(i);
    return width && by !== 1 ? roughly(LENGTH, width.approx * by) : width;
  });
  return setting("widest cut across", largest(cuts));
}

const thickest = (parts: readonly Part[]): ToolSetting[] =>
  setting("thickest cut", largest(parts.map((p) => ifKnown(p.thickness))));

const along = (parts: readonly Part[]): ToolSetting[] =>
  setting("longest cut along", largest(parts.flatMap((p) => [ifKnown(p.needs), sideOf(p)])));

/** The other side of a piece of a sheet, which is sawn out as well. */
const sideOf = ({ material, width }: Part): Quantity | undefined =>
  material?.kind === "sheet" ? ifKnown(width) : undefined;
