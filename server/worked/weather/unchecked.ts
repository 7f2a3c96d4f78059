/** What was not looked at of rot and rust, and why. */
import { type Says, type Slots, say } from "../../plan";
import type { Unchecked } from "../fault";
import type { Joint } from "../joints";
import type { Part } from "../parts";
import { resistanceOf } from "./resistance";
import { isTreated, tanninIn, wetJoints } from "./rust";
import { isGate, type Known, onFloor, standsOn, wetBoxes } from "./wet";

export function weatherUnchecked(worked: Known): Unchecked[] {
  const { settings, parts } = worked;
  const at = settings.at && { at: settings.at };
  const list: Unchecked[] = [];
  if (settings.place === undefined && parts.size > 0)
    list.push({ what: say("the weather"), why: say("unsaid where it stands"), ...at });
  if (settings.place === "outdoors" && isGate(settings.title) && onFloor(worked).length > 0)
    list.push({ what: say("wood at the floor"), why: say("a gate hangs"), ...at });
  return [
    ...list,
    ...wetParts(worked).flatMap(ofPart),
    ...wetJoints(worked).flatMap((w) => ofJoint(w.joint, worked)),
  ];
}

/** Parts on the floor outdoors, and against wet soil. */
function wetParts(worked: Known): Part[] {
  const floor = standsOn(worked) ? onFloor(worked).map((i) => worked.space.pieces[i]!.part) : [];
  const soil = wetBoxes(worked).flatMap((b) => (b.lined ? [] : b.parts));
  return [...new Set([...floor, ...soil])].flatMap((name) => worked.parts.get(name) ?? []);
}

function ofPart({ name, material, declared: { at } }: Part): Unchecked[] {
  if (!material) return [];
  const resists = resistanceOf(material);
  const slots = { name };
  if (resists === "treated")
    return [{ what: say("how it was treated", { material: material.name }), why: say("end tag tells"), at }];
  if (resists !== undefined) return [];
  const why = material.kind === "sheet" ? "panels are not told treated" : "no class of heartwood";
  return [{ what: say("whether it rots", slots), why: say(why), at }];
}

function ofJoint(joint: Joint, worked: Known): Unchecked[] {
  const { fastener, size, at } = joint;
  const told = (what: Says, why: string, slots?: Slots): Unchecked[] => [{ what, why: say(why, slots), at }];
  if (!fastener) return told(say("whether it rusts", { what: size!.text }), "unsaid coating");
  const { name, coating } = fastener;
  if (!COATINGS.includes(coating)) return told(say("whether it rusts", { what: name }), "unsaid coating");
  if (coating !== "coated") return [];
  const wood = isTreated(joint, worked) ? "treated" : tanninIn(joint, worked);
  if (wood === "") return [];
  const what =
    wood === "treated" ? say("coating in treated", { name }) : say("coating in wood", { name, wood });
  return told(what, "only its maker says");
}

const COATINGS: readonly string[] = ["plain", "coated", "galvanized", "stainless"];
