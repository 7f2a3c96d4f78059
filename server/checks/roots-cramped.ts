import { briefly, cite } from "../trade";
import { type Display, liquidText } from "../units";
import { type RootRoom, rootRoom, type Worked } from "../worked";
import type { Check, Cure, Finding, Says } from "./check";
import { mm } from "./piece-words";
import { markAbove } from "./writing";

export const rootsCramped: Check = {
  code: "roots-cramped",
  class: "hint",
  title: "Too little room for roots",
  page: `What a box grows (\`grows tomato\`) wants some depth of fill and some of it in a container, by the tables that extension
services publish. The fill is measured from the bottom of the box up to its own level. In open ground roots go deeper than a
container must be: that is told beside it, and not compared. A box with walls and no bottom is open to the ground, and is
let be.

\`\`\`sawbuck
box tub, inside 20" x 20" x 9", filled with potting-mix to 1" below rim, weighs 16 lb empty
  grows tomato
\`\`\`

\`\`\`sawbuck
box tub, inside 20" x 20" x 13", filled with potting-mix to 1" below rim, weighs 20 lb empty
  grows tomato
\`\`\``,
  templates: {
    shallow: "{box} holds {depth} of depth for {crop}, which wants at least {least} in a container.",
    little: "{box} holds {volume} for {crop}, which wants at least {least} in a container.",
    also: "{crop} finds too little room here as well.",
    source: "What a container must have is taken from {source}.",
    ground: "In open ground its roots go {least} to {most} deep: that is another matter, and not compared.",
    higher: "Fill it {more} higher.",
    deeper: "Make {box} {more} deeper.",
  },
  run: (worked) => worked.boxes.flatMap((box) => findings(crampedIn(worked, box.name), worked)),
};

/** What finds too little room in a box, what wants most first. */
const crampedIn = (worked: Worked, box: string): RootRoom[] =>
  rootRoom(worked)
    .filter((room) => room.box.name === box && room.short !== undefined)
    .sort((a, b) => b.short!.approx - a.short!.approx);

function findings([worst, ...others]: readonly RootRoom[], { settings }: Worked): Finding[] {
  if (!worst) return [];
  const { display } = settings;
  const { box, crop, at } = worst;
  const shallow = worst.state === "less deep";
  const wanted = (shallow ? worst.wantsDepth : worst.wantsVolume)!;
  const here = (shallow ? worst.depth : worst.volume)!;
  return [
    {
      at,
      about: [box.name],
      says: shallow ? "shallow" : "little",
      slots: {
        box: box.name,
        crop,
        depth: worst.depth!,
        volume: liquidText(worst.volume!, display),
        least: shallow ? wanted.least : liquidText(wanted.least, display),
      },
      numbers: [
        { name: "here", value: here, source: "worked out" },
        { name: "wanted", value: wanted.least, source: cite(wanted.source) },
      ],
      related: others.map((other) => ({ at: other.at, says: "also", slots: { crop: other.crop } })),
      assumed: assumed(worst, briefly(cite(wanted.source))),
      cures: [cure(worst, display)],
    },
  ];
}

const assumed = ({ ground }: RootRoom, source: string): Says[] => [
  { says: "source", slots: { source } },
  ...(ground ? [{ says: "ground", slots: { least: ground.least, most: ground.most } }] : []),
];

/** More fill where there is room for it under the rim, else a deeper box. */
function cure({ box, short }: RootRoom, display: Display): Cure {
  const more = markAbove(mm(short!.approx), display);
  const room = box.fill ? (box.fillBelowRim?.approx ?? 0) : 0;
  return room >= more.approx
    ? { says: "higher", slots: { more }, edits: [] }
    : { says: "deeper", slots: { box: box.name, more }, edits: [] };
}
