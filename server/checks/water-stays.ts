import { cite, drainHoles, drainSpacing, leastDrainGap, runOff } from "../trade";
import { count } from "../units";
import { type FlatTop, HAIRLINE, type WaterPath, type WaterStop, type Worked } from "../worked";
import type { Check, Finding } from "./check";
import { phrase } from "./phrases";
import { mm, pieceSlot } from "./piece-words";
import { holesOf, newHoles, respaced } from "./water-words";
import { markAbove } from "./writing";

export const waterStays: Check = {
  code: "water-stays",
  class: "warning",
  title: "Water that does not run off",
  page: `Water that gets in must get out by itself. Of boxes of soil that stand outdoors, or in which something grows:

- gaps between bottom boards drain from 1/8" up (common practice): narrower ones swell shut, tight boards at once;
- holes: four or more of at least 1/4" around a small bottom (Iowa State), one in every 8" along a longer one (from memory);
- a bottom that lies flat on the floor outdoors shuts its own drain: it wants runners or feet. On bare earth that takes the
  water, \`accept\` it.

And plywood that lies level outdoors with nothing over it: rain stands on it and creeps in at its edges. A fall of 1 in 50
lets it run off (common practice). Panels with a side under 6" are let be.

What runs over the bottom, past fabric that clogs, or into holes that lie on a bearer is not worked out.

\`\`\`sawbuck
plan Tub by the door
  outdoors
box tub, inside 40" x 12" x 10", filled with potting-mix, drains by 3 holes of 1/2"
\`\`\`

\`\`\`sawbuck
plan Tub by the door
  outdoors
box tub, inside 40" x 12" x 10", filled with potting-mix, drains by 5 holes of 1/2"
\`\`\``,
  templates: {
    tight:
      "{box} drains through the gaps, but its bottom boards lie tight: wet wood swells, and nothing runs through.",
    narrow:
      "{box} drains through the gaps, but the widest at its bottom is {gap}: under {least} they swell shut, and water stays.",
    few: {
      by: "n",
      one: "{box} drains by {n} hole: it takes four at the least, and one in every {apart} of a long bottom, here {needed}.",
      other:
        "{box} drains by {n} holes: it takes four at the least, and one in every {apart} of a long bottom, here {needed}.",
    },
    small: "The drain holes of {box} are {size} wide: under {least} soil clogs them, and water stays.",
    floor: "The bottom of {box} lies flat on the floor, which shuts {drain}: the water has no way out below.",
    flat: "{piece} is plywood and lies level in the rain{more}: water stands on it, and creeps in at its edges.",
    holes: "Write “{clause}”.",
    fewer:
      "Leave one board out: {count} in the same room leave gaps of {gap}, which drain when they are wet too.",
    narrower:
      "Rip the {count} boards to {width} and share out the room: gaps of {gap} drain when they are wet too.",
    feet: "Set it on two runners or on feet, so that the water runs away below.",
    bare: "If it stands on bare earth, say so: “accept water-stays on {box} because it stands on bare earth”.",
    slope: "Let it fall {fall} over its {across}, 1 in 50, or use boards with gaps in its place.",
  },
  run: (worked) => [
    ...worked.water.boxes.flatMap((path) => ofBox(path, worked)),
    ...worked.water.flatTops.map((top) => ofTop(top, worked)),
  ],
};

type Told = Pick<Finding, "says" | "slots"> & Partial<Pick<Finding, "numbers" | "cures">>;

function ofBox(path: WaterPath, worked: Worked): Finding[] {
  const { box, at, stop } = path;
  const told = stop && toldOf(path, stop, worked);
  return told ? [{ at, about: [box.name], ...told, slots: { box: box.name, ...told.slots } }] : [];
}

/** Undefined for a box that has no way out at all: that is another problem. */
function toldOf(path: WaterPath, stop: WaterStop, worked: Worked): Told | undefined {
  switch (stop.is) {
    case "gaps narrow":
      return {
        says: stop.widest < HAIRLINE ? "tight" : "narrow",
        slots: { gap: mm(stop.widest), least: mm(stop.least) },
        numbers: [
          { name: "widest gap", value: mm(stop.widest), source: "worked out" },
          { name: "narrowest gap that drains", value: mm(stop.least), source: cite(leastDrainGap.source) },
        ],
        cures: [...respaced(path, worked), newHoles(path, worked)],
      };
    case "holes few":
      return {
        says: "few",
        slots: { n: stop.count, needed: stop.needed, apart: mm(stop.apart) },
        numbers: [
          { name: "length of the bottom", value: mm(stop.long), source: "worked out" },
          { name: "from hole to hole", value: mm(stop.apart), source: cite(drainSpacing.source) },
          {
            name: "holes at the least",
            value: count(drainHoles.value.count),
            source: cite(drainHoles.source),
          },
        ],
        cures: [holesOf(path, stop.needed, mm(stop.diameter), worked)],
      };
    case "holes small":
      return {
        says: "small",
        slots: { size: mm(stop.diameter), least: mm(stop.least) },
        numbers: [
          { name: "width of a hole", value: mm(stop.diameter), source: "as the plan says" },
          { name: "least width", value: mm(stop.least), source: cite(drainHoles.source) },
        ],
        cures: [holesOf(path, stop.count, mm(stop.least), worked)],
      };
    case "on the floor": {
      const drain = phrase(path.out === "holes" ? "its holes" : "its gaps");
      return {
        says: "floor",
        slots: { drain },
        cures: [
          { says: "feet", slots: {}, edits: [] },
          { says: "bare", slots: { box: path.box.name }, edits: [] },
        ],
      };
    }
    default:
      return undefined;
  }
}

function ofTop({ part, pieces, across, fall }: FlatTop, { space, settings }: Worked): Finding {
  const first = space.pieces[pieces[0]!]!;
  const least = markAbove(mm(fall), settings.display);
  return {
    at: first.at,
    about: [part],
    says: "flat",
    slots: {
      piece: pieceSlot(first),
      more: pieces.length > 1 ? phrase("and so do other pieces", { n: pieces.length - 1 }) : "",
    },
    numbers: [
      { name: "fall", value: mm(0), source: "worked out" },
      { name: "least fall", value: least, source: cite(runOff.source) },
    ],
    cures: [{ says: "slope", slots: { fall: least, across: mm(across) }, edits: [] }],
  };
}
