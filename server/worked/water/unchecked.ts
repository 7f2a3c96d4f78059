/** What is not looked at of the water in boxes. */
import { say } from "../../plan";
import type { Unchecked } from "../fault";
import type { WaterWork } from "./path";

export function waterUnchecked({ boxes }: WaterWork): Unchecked[] {
  return boxes.flatMap(({ box, at, water, unsaid, stop, notSeen }): Unchecked[] => {
    const slots = { box: box.name };
    const leaves = say("water leaves", slots);
    if (unsaid) return [{ what: leaves, why: say("unsaid place"), at }];
    if (notSeen) return [{ what: leaves, why: say(notSeen), at }];
    if (!water || stop) return [];
    return [{ what: say("how water runs", slots), why: say("only ways out"), at }];
  });
}
