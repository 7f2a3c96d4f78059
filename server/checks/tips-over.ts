import {
  anchorAbove,
  cite,
  gust,
  leanStoodUp,
  pushAtRail,
  sliding,
  standingPerson,
  tippingMargin,
  tippingMarginChildren,
} from "../trade";
import { type Display, readLiteral } from "../units";
import {
  baseWidth,
  lowerHeight,
  marginFor,
  pushFilled,
  reachAt,
  type Standing,
  type Tip,
  type Wider,
  type Worked,
  widerBase,
} from "../worked";
import type { Check, Cure, Finding, Says } from "./check";
import { phrase } from "./phrases";
import { degrees, mm, pieceSlot, wayWords } from "./piece-words";
import { kilos, namesOf } from "./step-words";
import { markAbove, markBelow } from "./writing";

export const tipsOver: Check = {
  code: "tips-over",
  class: "hazard",
  title: "It tips over",
  page: `What stands on the floor by its feet is tried as it is placed: empty, with its fill dry, wet on one side only, and with the
plan's own loads on it. It is pushed at its top, or 60" above the floor, with 50 lb; someone of 300 lb sits on the edge of any
flat top that is 12" to 24" high; and outdoors a gust of 60 mph blows at what is higher than 4 ft. What holds it down must be
1.5 times what tips it, and twice where children are. No push is taken as more than 0.7 of the weight, at which a thing slides
and does not tip; what is no higher than 18" is not pushed. A push is a warning where the thing is no more than twice as high as its
base and no children are near, and is let be there while the thing weighs less than 30 lb.

Leaned ${leanStoodUp.value}° without fill or load, as it is while it is stood up or moved, it must come back by itself
(${cite(leanStoodUp.source)}, for equipment that stands on a floor); where it weighs
less than 30 lb and no children are near, that is a warning.

Whatever is higher than 4 times its base, or over 5 ft, is anchored always. Say to what under \`plan\`: \`anchored to the wall of
the shed\`. Then it is not judged, and neither is the anchor.

\`\`\`sawbuck
plan Book stand
  indoors
part side of 1x12, length 40"
part shelf of 1x10, length 30"
part back of 1x6, length 31-1/2"
place side upright, wide face left, on floor, 0 from left, 0 from front
place side upright, wide face left, on floor, 30-3/4" from left, 0 from front
place shelf across, flat, 6" up, right of left side, 0 from front
place shelf across, flat, 26" up, right of left side, 0 from front
place back across, on edge, behind sides, flush with left of sides, flush with top of sides
place back across, on edge, behind sides, flush with left of sides, on floor
fasten side into shelf, 3 #8 x 2" at each crossing, pilot 3/32"
fasten back into side, 2 #8 x 2" at each crossing, pilot 3/32"
accept screw-in-end-grain because the shelves are glued as well
\`\`\`

\`\`\`sawbuck
plan Book stand
  indoors
  anchored to the wall by two angles
part side of 1x12, length 40"
part shelf of 1x10, length 30"
part back of 1x6, length 31-1/2"
place side upright, wide face left, on floor, 0 from left, 0 from front
place side upright, wide face left, on floor, 30-3/4" from left, 0 from front
place shelf across, flat, 6" up, right of left side, 0 from front
place shelf across, flat, 26" up, right of left side, 0 from front
place back across, on edge, behind sides, flush with left of sides, flush with top of sides
place back across, on edge, behind sides, flush with left of sides, on floor
fasten side into shelf, 3 #8 x 2" at each crossing, pilot 3/32"
fasten back into side, 2 #8 x 2" at each crossing, pilot 3/32"
accept screw-in-end-grain because the shelves are glued as well
\`\`\``,
  templates: {
    push: "A push of {force}, {height} above the floor, tips it over {way} about {foot}, {state}; it must stand {wanted} there with a margin of {margin}, or slide first.",
    seat: "{force} on the edge of {on}, {over} outside its feet, tips it over {way} about {foot}, {state}; someone of {wanted} may sit or stand there, to be stood with a margin of {margin}.",
    load: "{force} on {on}, {over} outside its feet, tips it over {way} about {foot}, {state}; the plan puts {wanted} there, to be stood with a margin of {margin}.",
    wind: "A gust of {mph} mph presses {wanted} on it, and {force} there tips it over {way} about {foot}, {state}; it must stand the gust with a margin of {margin}.",
    itself: "It tips over {way} about {foot} by itself, {state}: its middle hangs {over} outside its feet.",
    "itself-edge":
      "It tips over {way} about {foot} by itself, {state}: its middle is just above the edge of its feet.",
    leaned:
      "Leaned {lean} {way}, as it may be while it is stood up or moved, it no longer comes back, {state}: it tips over about {foot}. It must come back from {least}.",
    narrow:
      "It is {high} high on a base of {base}: what is higher than {times} times its base is anchored always. A push of {force}, {height} above the floor, tips it over {way} about {foot}.",
    tall: "It is {high} high: what is higher than {limit} is anchored always. A push of {force}, {height} above the floor, tips it over {way} about {foot}.",
    weight: "It weighs {weight}, {state}; screws are left out.",
    slides: "What is pushed with more than {share} of its weight slides, and does not tip.",
    filled: "Filled and dry, it takes a push of {force}.",
    caution: "{caution}",
    anchor:
      "Anchor it at its top to something that stands firm, and say to what under “plan”: “anchored to …”.",
    wider:
      "Set its feet further apart {way}: {base} from outside to outside, {more} more, with the same weight.",
    both: "Set its feet {more} further apart both left to right and front to back, with the same weight.",
    lower: "Make it no higher than {high}.",
    less: "Let {on} reach no further than {reach} beyond its feet.",
  },
  run: (worked) => worked.standing.flatMap((thing) => (thing.tip ? [finding(thing, thing.tip, worked)] : [])),
};

const STATES = {
  standing: "as it stands",
  empty: "while it is empty",
  dry: "with its fill dry",
  "wet on one side": "with its fill wet on one side",
  loaded: "with its load on it",
} as const;

function finding(thing: Standing, tip: Tip, worked: Worked): Finding {
  const { space, settings } = worked;
  const { side, by } = tip;
  const foot = space.pieces[thing.foot]!;
  const state = phrase(STATES[tip.state]);
  const margin = marginFor(settings.nearChildren);
  const stance = thing.stance!;
  // To a tenth, and never up to what it must come back from.
  const lean = degrees(Math.floor(Math.atan(tip.force / tip.weight) * (1800 / Math.PI)) / 10);
  const least = degrees(leanStoodUp.value);
  return {
    at: foot.at,
    class: tip.class,
    about: namesOf(thing.pieces, worked),
    says: by === "itself" && tip.at < EDGE ? "itself-edge" : by,
    slots: {
      way: phrase(wayWords([side.outward[0], side.outward[1], 0])),
      foot: pieceSlot(foot),
      state,
      force: kilos(tip.force),
      wanted: kilos(tip.wanted),
      height: mm(tip.at),
      over: mm(tip.at),
      on: tip.on,
      margin,
      mph: gust.value,
      high: mm(stance.high),
      base: mm(baseWidth(stance)),
      times: anchorAbove.timesBase.value,
      lean,
      least,
      limit: readLiteral(`${anchorAbove.height.value}"`)!,
    },
    numbers:
      by === "leaned"
        ? [
            { name: "comes back from", value: lean, source: "worked out" },
            { name: "must come back from", value: least, source: cite(leanStoodUp.source) },
          ]
        : [
            { name: "tips it", value: kilos(tip.force), source: "worked out" },
            {
              name: "must stand",
              value: kilos(tip.wanted * margin),
              source: sourceOf(tip, settings.nearChildren),
            },
          ],
    assumed: assumed(thing, tip),
    cures: cures(thing, tip, worked),
  };
}

/** mm: a middle no further outside is said to be above the edge. */
const EDGE = 1;

function sourceOf({ by }: Tip, children: boolean): string {
  const margin = cite((children ? tippingMarginChildren : tippingMargin).source);
  const pressed = by === "seat" ? standingPerson : by === "wind" ? gust : pushAtRail;
  return by === "load" ? margin : `${cite(pressed.source)}; ${margin}`;
}

function assumed(thing: Standing, tip: Tip): Says[] {
  const filled = tip.by === "push" && tip.state === "empty" ? pushFilled(thing) : undefined;
  return [
    { says: "weight", slots: { weight: kilos(tip.weight), state: phrase(STATES[tip.state]) } },
    ...(filled === undefined ? [] : [{ says: "filled", slots: { force: kilos(filled) } }]),
    ...(tip.by === "push" ? [{ says: "slides", slots: { share: sliding.value } }] : []),
    { says: "caution", slots: { caution: phrase("structural caution") } },
  ];
}

/** The cheapest first. */
function cures({ stance }: Standing, tip: Tip, { settings }: Worked): Cure[] {
  const { display, nearChildren } = settings;
  const anchor: Cure = { says: "anchor", slots: {}, edits: [] };
  const found = widerBase(stance!, tip, nearChildren);
  const wider = found ? [widerCure(found, display)] : [];
  if (tip.by === "load" || tip.by === "itself") return [...wider, anchor];
  if (tip.by === "seat") {
    const reach = markBelow(mm(reachAt(tip, nearChildren)), display);
    return [{ says: "less", slots: { on: tip.on, reach }, edits: [] }, ...wider, anchor];
  }
  const high = lowerHeight(stance!, nearChildren);
  const lower: Cure[] =
    high === undefined ? [] : [{ says: "lower", slots: { high: markBelow(mm(high), display) }, edits: [] }];
  return tip.by === "leaned" ? [...wider, ...lower, anchor] : [anchor, ...wider, ...lower];
}

function widerCure({ ways, more, base }: Wider, display: Display): Cure {
  const spread = markAbove(mm(more), display);
  if (ways === "both") return { says: "both", slots: { more: spread }, edits: [] };
  const slots = { way: phrase(ways), more: spread, base: markAbove(mm(base), display) };
  return { says: "wider", slots, edits: [] };
}
