/** How the wood of a part resists rot, as far as the plan tells. */
import { type DecayClass, decayOf, lastsInSoil, lastsOnFloor, species } from "../../trade";
import type { Material } from "../materials";

/** `treated`, or the class of its heartwood; bought boards are sapwood. */
export type Resistance = "treated" | DecayClass;

/** Undefined where nothing tells: of a panel, and of heartwood of no named wood or of one that no table has. */
export function resistanceOf({ kind, conditions, wood }: Material): Resistance | undefined {
  if (kind === "sheet") return undefined;
  if (conditions.includes("treated")) return "treated";
  const heartwood = conditions.includes("heartwood");
  if (heartwood && wood.assumed !== "") return undefined;
  const found = species(wood.name);
  return found && decayOf(found, heartwood)?.value;
}

/** Whether wood lasts on the ground, and against wet soil. */
export const isForSoil = (resists: Resistance): boolean =>
  resists === "treated" || lastsInSoil.value.includes(resists);

/** Whether bare wood lasts on a built floor outdoors. */
export const isForFloor = (resists: Resistance): boolean =>
  resists === "treated" || lastsOnFloor.value.includes(resists);
