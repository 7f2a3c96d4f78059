import { ifKnown } from "../plan";
import { fill as fillNamed } from "../trade";
import { AREA, bothLengths, PRESSURE, type Quantity, roughly } from "../units";
import { type Box, depthAtLimit, floorShare, type Worked } from "../worked";
import type { Check, Cure, Finding, Says } from "./check";
import { phrase } from "./phrases";

/** The source of a weight that the plan itself gives. */
const FROM_PLAN = "as the plan says";

/** What a fill of one's own is taken as. */
const soil = fillNamed("soil")!;

/** Within this share under the limit a warning is worth saying: fills are not weighed on a scale. */
const NEAR = 0.95;

export const boxOverLoad: Check = {
  code: "box-over-load",
  class: "hazard",
  title: "A filled box is too heavy for the floor",
  page: `Wet soil is heavy: a cubic foot weighs as much as a grown person. The box is judged full of saturated fill, since one
blocked drain or one long rain makes it so, and its weight is spread over its outline. That is compared with the floor limit
you typed, less what else uses that floor (\`of which people 40 psf\`).

This is a screen, not approval. Ask whoever knows the floor; local code and a licensed professional decide.

\`\`\`sawbuck
plan Trough on the porch
  floor limit 57 psf by the porch's builder
box trough, inside 48" x 24" x 18"
  filled with soil
  weighs 62 lb empty
\`\`\`

\`\`\`sawbuck
plan Trough on the porch
  floor limit 57 psf by the porch's builder
box trough, inside 48" x 24" x 4"
  filled with potting-mix
  weighs 38 lb empty
\`\`\``,
  templates: {
    over: "{box}, full and wet, presses {pressure} on the floor, over the {limit} that {whose}.",
    none: "{box}, full and wet, presses {pressure} on the floor, and nothing is left of the {limit} you typed as its limit.",
    near: "{box}, full and wet, presses {pressure} on the floor, close to the {limit} that {whose}.",
    limit: "The floor's limit is {limit}, as said by {by}.",
    "limit-unsaid": "The floor's limit is {limit}; the plan does not say who said so.",
    share: "Of that limit {what} uses {value}.",
    volume: "{box} holds {volume} of {fill}: {weights} ({source}).",
    "fill-assumed": "{fill} is {assumed}.",
    empty: "The box itself weighs {own} ({from}).",
    "no-empty": "The box itself is left out: the plan does not say what it weighs empty.",
    outline: "Its outline is {wide} x {deep} ({from}).",
    caution: "{caution}",
    depth: "The limit you typed would be reached with {depth} of {fill} in it.",
    spread: "Spread over {area}, the same weight would press {limit}.",
  },
  run: (worked) => worked.boxes.flatMap((box) => finding(box, worked)),
};

function finding(box: Box, worked: Worked): Finding[] {
  const { settings } = worked;
  const pressure = ifKnown(box.pressure);
  const share = floorShare(settings);
  const limit = settings.floorLimit;
  if (!pressure || !share || !limit || !box.fill) return [];
  if (pressure.approx < share.approx * NEAR) return [];
  const over = pressure.approx > share.approx * (1 + 1e-9);
  const whose = phrase(
    settings.shares.length > 0 ? "is left of the limit you typed" : "you typed as its limit",
  );
  return [
    {
      at: box.fillAt ?? box.declared.at,
      class: over ? "hazard" : "warning",
      about: [box.name],
      says: share.approx <= 0 ? "none" : over ? "over" : "near",
      slots: { box: box.name, pressure, limit: share.approx <= 0 ? limit.value : share, whose },
      numbers: [
        { name: "pressure", value: pressure, source: box.fill.source },
        { name: "floor limit", value: limit.value, source: limit.by || "the plan" },
        { name: "left of it", value: share, source: "the plan" },
      ],
      related: [
        {
          at: limit.at,
          says: limit.by ? "limit" : "limit-unsaid",
          slots: { limit: limit.value, by: limit.by },
        },
        ...settings.shares.map(({ what, value, at }) => ({ at, says: "share", slots: { what, value } })),
      ],
      assumed: assumed(box, worked),
      cures: cures(box, share, pressure),
    },
  ];
}

function assumed(box: Box, { settings }: Worked): Says[] {
  const fill = box.fill!;
  const weights = (["dry", "moist", "saturated"] as const).flatMap((wetness) => {
    const weight = ifKnown(box.weights[wetness]);
    return weight ? [phrase(wetness, { weight })] : [];
  });
  const own = ifKnown(box.own);
  const outline = box.outline!;
  const from = {
    said: "as the plan says",
    placed: "around its walls as they stand",
    "inside and walls": "its inside and its walls",
    inside: "its inside alone",
  } as const;
  return [
    {
      says: "volume",
      slots: {
        box: box.name,
        volume: ifKnown(box.filled)!,
        fill: fill.name,
        weights: { row: weights, by: ", " },
        source: fill.source === FROM_PLAN ? phrase(FROM_PLAN) : fill.source,
      },
    },
    ...(fill.assumed
      ? [
          {
            says: "fill-assumed",
            slots: { fill: fill.name, assumed: phrase("taken like soil", { n: soil.saturated.value }) },
          },
        ]
      : []),
    own
      ? {
          says: "empty",
          slots: { own, from: phrase(box.ownFrom === "said" ? "as the plan says" : "from its parts") },
        }
      : { says: "no-empty", slots: {} },
    {
      says: "outline",
      slots: {
        wide: bothLengths(outline.wide, settings.display),
        deep: bothLengths(outline.deep, settings.display),
        from: phrase(from[outline.from]),
      },
    },
    { says: "caution", slots: { caution: phrase("structural caution") } },
  ];
}

/** Facts, not advice: what depth would reach the limit, and what outline would spread it. No limit is raised. */
function cures(box: Box, share: Quantity, pressure: Quantity): Cure[] {
  if (pressure.approx <= share.approx || share.approx <= 0) return [];
  const list: Cure[] = [];
  const depth = depthAtLimit(box, share);
  if (depth) list.push({ says: "depth", slots: { depth, fill: box.fill!.name }, edits: [] });
  const { wide, deep } = box.outline!;
  const area = roughly(AREA, (wide.approx * deep.approx * pressure.approx) / share.approx);
  list.push({ says: "spread", slots: { area, limit: roughly(PRESSURE, share.approx) }, edits: [] });
  return list;
}
