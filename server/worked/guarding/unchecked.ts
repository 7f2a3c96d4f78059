/** What of guards, children and food was not looked at, and why. */
import { say } from "../../plan";
import type { Unchecked } from "../fault";
import type { Worked } from "../work";
import { unknownFills } from "./climbing";
import type { Unsure } from "./food";
import { slantedParts } from "./traps";

export function uncheckedGuarding(worked: Omit<Worked, "unchecked">): Unchecked[] {
  return [...atGuard(worked), ...nearChildren(worked), ...worked.guarding.food.unsure.map(unsure)];
}

function atGuard({ settings, space, boxes, guarding }: Omit<Worked, "unchecked">): Unchecked[] {
  if (!settings.nearGuard) return [];
  const guard: Unchecked = { what: say("the guard itself"), why: say("guards are for code") };
  if (space.pieces.length === 0) return [{ what: say("climbing"), why: say("nothing placed") }, guard];
  return [
    ...unknownFills(boxes, guarding.soils).map(
      (box): Unchecked => ({
        what: say("fill is stood on", { box: box.name }),
        why: say("fill level unknown", { box: box.name }),
        at: box.declared.at,
      }),
    ),
    guard,
  ];
}

function nearChildren({ settings, space }: Omit<Worked, "unchecked">): Unchecked[] {
  if (!settings.nearChildren) return [];
  if (space.pieces.length === 0) return [{ what: say("openings for children"), why: say("nothing placed") }];
  const slanted = slantedParts(settings, space);
  return [
    ...(slanted.length > 0
      ? [{ what: say("openings beside", { names: { all: slanted } }), why: say("stands at a slant") }]
      : []),
    { what: say("open sides and points"), why: say("only closed openings") },
  ];
}

function unsure(one: Unsure): Unchecked {
  const { box } = one;
  const { at } = box.declared;
  switch (one.is) {
    case "plant":
      return {
        what: say("fit for food", { box: box.name }),
        why: say("plant unknown", { name: one.name }),
        at,
      };
    case "liner":
      return {
        what: say("liner fit for food", { roll: one.name, box: box.name }),
        why: say("unsaid food safety", { name: one.name }),
        at,
      };
    case "finish":
      return {
        what: say("finish fit for food", { finish: one.name, box: box.name }),
        why: say("no table of finishes"),
        at,
      };
    case "panel":
      return {
        what: say("panel fit for food", { panel: one.name, box: box.name }),
        why: say("panel unknown", { name: one.name }),
        at,
      };
    case "walls":
      return {
        what: say("fit for food", { box: box.name }),
        why: say("unsaid walls", { box: box.name }),
        at,
      };
  }
}
