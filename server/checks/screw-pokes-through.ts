import { fraction, negated } from "../units";
import { type Joint, otherAngle, SCREW_RULE, type ScrewFit, type Worked } from "../worked";
import type { Check, Cure, Finding } from "./check";
import {
  aboutPath,
  kindOf,
  layersText,
  SCREW_TEMPLATES,
  screwedJoints,
  screwName,
  sizeCure,
  WAY,
} from "./screw-words";
import { apart, edit, editAfter, markAbove } from "./writing";

export const screwPokesThrough: Check = {
  code: "screw-pokes-through",
  class: "hazard",
  title: "A screw comes out of the far side",
  page: `A screw that is longer than the wood it goes through comes out of the far side, where its tip can tear a hand. Even one
that only just stays in may show as a bump, or come out when the wood dries. Leave 1/8" (3 mm) of wood over the tip: that is
common practice. A shorter screw is the first cure, as long as enough of it holds in the last piece; then a thicker piece; then
driving it at an angle.

It is a hazard when the tip comes out, and a warning when it stays in with less than 1/8" over it. Bolts are meant to come
out and are not looked at.

\`\`\`sawbuck
part slat 4 of 1x4, length 20"
part rail 2 of 1x4, length 30"
fasten slat face into rail face, 2 #8 x 2" at each end
\`\`\`

\`\`\`sawbuck
part slat 4 of 1x4, length 20"
part rail 2 of 1x4, length 30"
fasten slat face into rail face, 2 #8 x 1-1/4" at each end
\`\`\``,
  templates: {
    ...SCREW_TEMPLATES,
    out: "{screw} goes through {layers} and comes out {proud} proud.",
    near: "{screw} goes through {layers} and leaves only {over} of wood over its tip; {margin} must stay.",
    reaches: "{screw} goes through {layers}, and its tip reaches the far side: no wood is left over it.",
    "also-out": "From {first} into {into} it comes out {proud} proud.",
    "also-near": "From {first} into {into} too little wood is left over its tip.",
    shop: "Use {name} ({length}): {margin} of wood must stay over the tip.",
    usual: "Use a {length} {kind}: {margin} of wood must stay over the tip.",
    thicker: "Or use a thicker piece: {into} at least {needs} {way} takes this {kind}.",
    angle: "Or drive it {angle} off square.",
    "angle-told":
      "Driven {angle} off square its tip would stay in, but then too little of it would hold in {into}.",
  },
  run: (worked) =>
    screwedJoints(worked).flatMap(({ joint, fits }): Finding[] => {
      const far = fits
        .filter((f) => f.trouble === "out" || f.trouble === "near")
        .sort((a, b) => a.over.approx - b.over.approx);
      const worst = far[0];
      return worst ? [findingOf(joint, worst, far.slice(1), fits, worked)] : [];
    }),
};

function findingOf(
  joint: Joint,
  worst: ScrewFit,
  others: readonly ScrewFit[],
  fits: readonly ScrewFit[],
  worked: Worked,
): Finding {
  const [over, margin] = apart(worst.over, SCREW_RULE.margin, worked.settings.display);
  const about = aboutPath(joint, worst, worked);
  const reaches = worst.trouble === "near" && worst.over.approx < NO_WOOD;
  return {
    ...about,
    class: worst.trouble === "out" ? "hazard" : "warning",
    says: reaches ? "reaches" : worst.trouble === "out" ? "out" : "near",
    slots: {
      screw: screwName(joint, worked),
      layers: layersText(worst.path.layers, worked),
      proud: negated(worst.over),
      over,
      margin,
    },
    related: [
      ...(about.related ?? []),
      ...others.map((f) => ({
        says: f.trouble === "out" ? "also-out" : "also-near",
        slots: { first: f.path.first, into: f.path.into, proud: negated(f.over) },
        at: joint.at,
      })),
    ],
    cures: [
      ...sizeCure(joint, fits, worked, "longest", { margin: SCREW_RULE.margin }),
      ...thicker(joint, worst, worked),
      ...angled(joint, worst, fits),
    ],
  };
}

/** Wood this thin over a tip is none, in mm. */
const NO_WOOD = 0.05;

function thicker(joint: Joint, { path, lastNeeds }: ScrewFit, { settings }: Worked): Cure[] {
  if (!lastNeeds) return [];
  const { face } = path.layers.at(-1)!;
  const needs = markAbove(lastNeeds, settings.display);
  const slots = { into: path.into, needs, way: WAY[face], kind: kindOf(joint) };
  return [{ says: "thicker", slots, edits: [] }];
}

function angled(joint: Joint, worst: ScrewFit, fits: readonly ScrewFit[]): Cure[] {
  const other = otherAngle(joint, fits);
  if (!other) return [];
  const text = `angled ${fraction.toDecimal(other.angle.exact!, 1)}°`;
  const driven = joint.entry.clauses.find((c) => c.kind === "driven");
  const edits = joint.angledAt
    ? [edit(joint.angledAt, text)]
    : driven
      ? [editAfter({ ...joint.at, start: driven.start, end: driven.end }, `, ${text}`)]
      : [];
  const slots = { angle: other.angle, into: worst.path.into };
  return other.bites ? [{ says: "angle", slots, edits }] : [{ says: "angle-told", slots, edits: [] }];
}
