import type { At } from "../plan";
import { type Display, lengthText, type Quantity } from "../units";
import { builtSides, goesThrough, loads, type Sides, type Worked } from "../worked";
import type { Check, Finding, Slot } from "./check";
import { phrase } from "./phrases";
import { mm } from "./piece-words";

export const wontGoIn: Check = {
  code: "wont-go-in",
  class: "error",
  title: "It does not go in by the way in",
  page: `What is built in a shop must still go through the door. Everything as it stands is taken as one block, carried straight
through and turned on any of its sides: its two smallest measurements against the way in. What sticks out counts, and
corners behind the door are not looked at. Where the way in gives one side only, the smallest measurement must be no more.

When the whole does not go in but every piece does, that is a warning: build it where it stands. Assemblies and rings are then
told by themselves, since they may be put together before. A single piece that does not go in is an error.

\`\`\`sawbuck
plan A table
  way in 16" wide, 30" high
sheet top-ply, plywood 3/4", sold 48" x 96" $60
part top of top-ply, length 60", width 40"
place top across, flat, on floor, 0 from left, 0 from front
\`\`\`

\`\`\`sawbuck
plan A table
  way in 32" wide, 78" high
sheet top-ply, plywood 3/4", sold 48" x 96" $60
part top of top-ply, length 60", width 40"
place top across, flat, on floor, 0 from left, 0 from front
\`\`\``,
  templates: {
    built:
      "Built, it measures {sides} and does not go in: however it is turned it takes {need}, and the way in is {have} there; build it where it stands, since every piece goes in by itself.",
    piece:
      "{part} measures {sides} and does not go in: however it is turned it takes {need}, and the way in is {have} there.",
    "way-in": "The way in is {opening}.",
    "group-fits": "{group}, put together, measures {sides} and goes in.",
    "group-not": "{group}, put together, measures {sides} and does not go in either.",
    "cut-smaller": "Make {part} of two pieces that are joined inside.",
  },
  run: (worked) => {
    const { wayIn } = worked.settings;
    const built = builtSides(worked);
    if (!wayIn || !built) return [];
    const given = [wayIn.wide, wayIn.high, wayIn.deep].filter((q) => q !== undefined);
    const opening = [...given].sort((a, b) => a.approx - b.approx);
    const limits = opening.map((q) => q.approx);
    if (limits.length === 0) return [];
    const { pieces, groups } = loads(worked);
    const stuck = pieces.filter((p) => !goesThrough(p.sides, limits));
    if (stuck.length > 0)
      return stuck.map(({ piece, sides }): Finding => {
        const part = worked.parts.get(piece.part);
        const { says, ...told } = toldOf(sides, opening, worked, "piece");
        return {
          ...told,
          says,
          at: part?.declared.at ?? piece.at,
          about: [piece.part],
          slots: { ...told.slots, part: piece.part },
          cures: [{ says: "cut-smaller", slots: { part: piece.part }, edits: [] }],
        };
      });
    if (goesThrough(built, limits)) return [];
    const told = toldOf(built, opening, worked, "built");
    const also = groups.flatMap(({ name, sides }) => {
      const at = worked.scope.declared.get(name)?.at;
      const says = goesThrough(sides, limits) ? "group-fits" : "group-not";
      return at
        ? [{ says, slots: { group: name, sides: sidesText(sides, worked.settings.display) }, at }]
        : [];
    });
    return [{ ...told, class: "warning", at: wayInAt(worked)!, related: also }];
  },
};

function toldOf(
  sides: Sides,
  opening: readonly Quantity[],
  worked: Worked,
  says: "built" | "piece",
): Pick<Finding, "says" | "slots" | "numbers" | "related"> {
  const i = opening.findIndex(
    (_, n) =>
      !goesThrough(
        sides,
        opening.slice(0, n + 1).map((q) => q.approx),
      ),
  );
  const [need, have] = [mm(sides[i]!), opening[i]!];
  const at = wayInAt(worked);
  return {
    says,
    slots: { sides: sidesText(sides, worked.settings.display), need, have },
    numbers: [
      { name: "takes", value: need, source: "worked out" },
      { name: "way in", value: have, source: "the plan" },
    ],
    related: at ? [{ says: "way-in", slots: { opening: openingSlot(worked) }, at }] : [],
  };
}

const sidesText = (sides: Sides, display: Display): string =>
  [...sides]
    .reverse()
    .map((s) => lengthText(mm(s), display))
    .join(" x ");

function openingSlot({ settings: { wayIn } }: Worked): Slot {
  const sides = (["wide", "high", "deep"] as const).flatMap((side) => {
    const value = wayIn?.[side];
    return value ? [phrase("measured", { value, side: phrase(side) })] : [];
  });
  return { all: sides };
}

/** Where the plan says what it goes in by. */
function wayInAt({ loaded }: Worked): At | undefined {
  const { file, tree } = loaded.files[0]!;
  const plan = tree.entries.find((e) => e.kind === "plan");
  const clause = plan?.clauses.find((c) => c.kind === "way in");
  return clause && { file, start: clause.start, end: clause.end };
}
