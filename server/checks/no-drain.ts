import { cite, leastDrainGap } from "../trade";
import type { WaterPath, WaterStop, Worked } from "../worked";
import type { Check, Finding } from "./check";
import { phrase } from "./phrases";
import { mm } from "./piece-words";
import { drainSaid, newHoles, respaced } from "./water-words";

export const noDrain: Check = {
  code: "no-drain",
  class: "warning",
  title: "A filled box that no water can leave",
  page: `A box of soil outdoors is filled by the rain, and one in which something grows is watered wherever it stands. What cannot run
off stays: roots drown, the box becomes far heavier, and its bottom rots from inside. The water is followed from the fill
through the liner to the bottom: a liner that holds water must be opened, which the sheet tells how to do once the box says
how it drains, and the bottom must have holes, or gaps of 1/8" and more between its boards (narrower ones swell shut).
Fabric, felt and mesh let water through. A box that is filled with water is to hold it, and one without a named bottom may
stand open on the ground: nothing is said of these.

A note that the liner is cut open is not read: say how the box drains.

\`\`\`sawbuck
plan Tub by the door
  outdoors
box tub, inside 24" x 12" x 10", filled with potting-mix, no drain
\`\`\`

\`\`\`sawbuck
plan Tub by the door
  outdoors
box tub, inside 24" x 12" x 10", filled with potting-mix, drains by 4 holes of 1/2"
\`\`\``,
  templates: {
    said: "{box} is filled with {fill} and has no drain: {water} stays in it, and it grows heavy and rots.",
    liner:
      "{roll} in {box} holds water, and nothing says how the box drains, so the liner is cut open nowhere: {water} stays in it.",
    tight:
      "{box} does not say how it drains, and its bottom leaves no gap of {least}: {water} stays in it, and it grows heavy and rots.",
    fewer:
      "Leave one board out: {count} in the same room leave gaps of {gap}, which drain when they are wet too.",
    narrower:
      "Rip the {count} boards to {width} and share out the room: gaps of {gap} drain when they are wet too.",
    holes: "Drill holes: write “{clause}”.",
    gaps: "Write “drains through the gaps”: the sheet then tells where the liner is cut open.",
  },
  run: (worked) => worked.water.boxes.flatMap((path) => findings(path, worked)),
};

function findings(path: WaterPath, worked: Worked): Finding[] {
  const { box, at, stop, water } = path;
  const says = stop && SAYS[stop.is];
  if (!stop || !says) return [];
  const gaps = stop.is === "liner whole" && path.gapsDrain === true;
  return [
    {
      at,
      about: [box.name, ...(stop.is === "liner whole" ? [stop.roll] : [])],
      says,
      slots: {
        box: box.name,
        fill: box.fill?.name ?? "",
        water: phrase(water === "rain" ? "rain" : "what it is watered with"),
        ...(stop.is === "liner whole" && { roll: stop.roll }),
        ...(stop.is === "bottom tight" && { least: mm(stop.least) }),
      },
      numbers:
        stop.is === "bottom tight"
          ? [
              { name: "widest gap", value: mm(path.widestGap ?? 0), source: "worked out" },
              {
                name: "narrowest gap that drains",
                value: mm(stop.least),
                source: cite(leastDrainGap.source),
              },
            ]
          : [],
      cures: gaps
        ? [{ says: "gaps", slots: {}, edits: drainSaid(path, "drains through the gaps") }]
        : [...(stop.is === "bottom tight" ? respaced(path, worked) : []), newHoles(path, worked)],
    },
  ];
}

const SAYS: Readonly<Partial<Record<WaterStop["is"], string>>> = {
  "no drain": "said",
  "liner whole": "liner",
  "bottom tight": "tight",
};
