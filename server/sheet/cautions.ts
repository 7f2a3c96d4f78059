/** Which cautions a plan itself calls up: by its cuts, its wood, its weights. */
import { ifKnown } from "../plan";
import type { CautionTag } from "../trade";
import type { Worked } from "../worked";

/** Lifting limit of the NIOSH equation under the best conditions, 51 lb (23 kg). */
const LIFT_KG = 23;
/** Shorter pieces are cut from a long board and clamped: 6 in (trade-facts section 9). */
const SHORT_MM = 6 * 25.4;

export function cautionTags(worked: Worked): CautionTag[] {
  const tags = new Set<CautionTag>();
  const add = (when: boolean, ...names: CautionTag[]) => {
    if (when) for (const name of names) tags.add(name);
  };
  const parts = [...worked.parts.values()];
  add(parts.length > 0, "power-saw", "dust");
  add(
    worked.joints.some((j) => j.entry.kind === "fasten"),
    "screws",
  );
  for (const part of parts) {
    add(Boolean(part.leftEnd?.miter || part.rightEnd?.miter), "miter");
    add(Boolean(part.ripped), "rip");
    add((ifKnown(part.needs)?.approx ?? Number.POSITIVE_INFINITY) < SHORT_MM, "short-piece");
    add((ifKnown(part.weight)?.approx ?? 0) > LIFT_KG, "lift-over-51lb");
  }
  for (const material of worked.materials) {
    add(material.conditions.includes("treated"), "treated");
    add(material.conditions.includes("painted") || material.onHand.length > 0, "salvage");
    add(/cedar/.test(material.wood.name), "dust-cedar");
    add(/cedar|redwood|oak/.test(material.wood.name), "stains-iron");
  }
  for (const box of worked.boxes) {
    const heavy = (ifKnown(box.weights.saturated)?.approx ?? 0) > LIFT_KG;
    add(heavy, "wet-box", "lift-over-51lb");
    add(box.grows.length > 0, "food");
  }
  add(
    worked.loaded.files[0]!.tree.entries.some((e) => e.kind === "coat"),
    "oil-finish",
  );
  add(worked.settings.floorLimit !== undefined || worked.settings.footLimit !== undefined, "floor");
  add(worked.settings.nearGuard, "near-guard");
  return [...tags];
}
