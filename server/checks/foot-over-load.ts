import { type Foot, SEAT, type Worked } from "../worked";
import type { Check, Finding } from "./check";
import { aboutPiece, caution, load, pieceIn } from "./holding-words";
import { phrase } from "./phrases";
import { pieceSlot } from "./piece-words";

/** Within this share under the limit a warning is worth saying: nothing is weighed on a scale. */
const NEAR = 0.95;

export const footOverLoad: Check = {
  code: "foot-over-load",
  class: "hazard",
  title: "One foot presses too hard on the floor",
  page: `A floor that carries a box as a whole can still be broken through by one of its feet. What each foot presses follows from what
stands on it: the thing's own weight, its fill when it is full and wet, the loads you said, and somebody who sits or stands on a
seat, where that is worst for this foot. It is compared in pounds with the \`foot limit\` that you typed, never with a limit for
each square foot.

This is a screen, not approval. Ask whoever knows the floor; local code and a licensed professional decide.

\`\`\`sawbuck
plan Plank on the porch
  foot limit 143 lb by the porch's builder
part leg of 4x4, length 30"
part plank of 2x12, length 24"
place leg upright, wide face front, on floor, at each corner of 24" x 11-1/4"
place plank across, flat, on legs, centered on legs
load plank 620 lb spread
\`\`\`

\`\`\`sawbuck
plan Plank on the porch
  foot limit 143 lb by the porch's builder
part leg of 4x4, length 30"
part plank of 2x12, length 24"
place leg upright, wide face front, on floor, at each corner of 24" x 11-1/4"
place plank across, flat, on legs, centered on legs
load plank 320 lb spread
\`\`\``,
  templates: {
    over: "{piece} presses {load} on the floor, over the {limit} that you typed as the limit of one foot{more}.",
    near: "{piece} presses {load} on the floor, close to the {limit} that you typed as the limit of one foot{more}.",
    limit: "The limit of one foot is {limit}, as said by {by}.",
    "limit-unsaid": "The limit of one foot is {limit}; the plan does not say who said so.",
    usual: "Somebody who sits or stands on it is counted with {weight}, where that is worst for this foot.",
    spread:
      "A plate under it, or more feet, would spread the load; {n} feet as heavy would stay within the limit.",
    caution: "{caution}",
  },
  run: (worked) => {
    const limit = worked.settings.footLimit;
    if (!limit) return [];
    const most = (limit.value.approx * 9.80665) as number;
    const feet = worked.holding.feet.filter((f) => pressOf(f) >= most * NEAR);
    const worst = feet.reduce<Foot | undefined>(
      (w, f) => (w && pressOf(w) >= pressOf(f) - 1e-6 ? w : f),
      undefined,
    );
    return worst ? [findingOf(worst, feet.length - 1, most, worked)] : [];
  },
};

const pressOf = ({ steady, moving }: Foot): number => steady + moving;

function findingOf(foot: Foot, more: number, most: number, worked: Worked): Finding {
  const { display, footLimit } = worked.settings;
  const limit = footLimit!;
  const piece = pieceIn(worked, foot.piece);
  const over = pressOf(foot) > most * (1 + 1e-9);
  const all = worked.holding.feet.reduce((sum, f) => sum + f.steady, 0) + foot.moving;
  return {
    at: piece.at,
    class: over ? "hazard" : "warning",
    about: aboutPiece(piece),
    says: over ? "over" : "near",
    slots: {
      piece: pieceSlot(piece),
      load: load(pressOf(foot), display),
      limit: limit.value,
      more: more > 0 ? phrase("as of more like it", { n: more }) : "",
    },
    numbers: [
      { name: "load", value: load(pressOf(foot), display), source: "worked out" },
      { name: "limit of one foot", value: limit.value, source: limit.by || "the plan" },
    ],
    related: [
      {
        at: limit.at,
        says: limit.by ? "limit" : "limit-unsaid",
        slots: { limit: limit.value, by: limit.by },
      },
    ],
    assumed: [
      ...(foot.moving >= SEAT.force - 1
        ? [{ says: "usual", slots: { weight: load(SEAT.force, display) } }]
        : []),
      caution(),
    ],
    cures: over ? [{ says: "spread", slots: { n: Math.ceil(all / most) }, edits: [] }] : [],
  };
}
