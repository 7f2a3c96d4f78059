/** What was not looked at of things that stand free, and why. */
import { say } from "../../plan";
import type { Unchecked } from "../fault";
import type { Worked } from "../work";

export function standingUnchecked({
  standing,
  settings,
  space,
  joints,
  pieces,
}: Pick<Worked, "standing" | "settings" | "space" | "joints" | "pieces">): Unchecked[] {
  if (!pieces.complete) return [];
  if (settings.anchoredTo !== "")
    return [
      { what: say("anchor holds"), why: say("anchor in words"), ...(settings.at && { at: settings.at }) },
    ];
  if (joints.length === 0) return [{ what: say("tips over"), why: say("nothing joined") }];
  return standing.flatMap(({ untried, foot, unweighed, boxes, stance }): Unchecked[] => {
    const { part, at } = space.pieces[foot]!;
    const what = say("thing tips over", { foot: part });
    if (untried) return [{ what, why: say(untried), at }];
    const light =
      unweighed.length > 0 ? [{ what, why: say("weighs nothing", { parts: { all: unweighed } }), at }] : [];
    const filled = stance?.states.some(({ state }) => state === "dry");
    const full = boxes.flatMap((box): Unchecked[] =>
      box.fill && !filled
        ? [
            {
              what: say("tips filled", { box: box.name }),
              why: say("fill weight unknown"),
              at: box.declared.at,
            },
          ]
        : [],
    );
    return [...light, ...full];
  });
}
