import { type Joint, SCREW_RULE, type ScrewFit, TOUCHING, type Worked } from "../worked";
import type { Check, Finding } from "./check";
import { phrase } from "./phrases";
import {
  aboutPath,
  layersSlot,
  otherParts,
  SCREW_TEMPLATES,
  screwedJoints,
  screwSlot,
  sizeCure,
} from "./screw-words";
import { apart } from "./writing";

export const screwHoldsLittle: Check = {
  code: "screw-holds-little",
  class: "warning",
  title: "A screw holds too little in the last piece",
  page: `A screw holds by the thread in the last piece it goes into. At least half its length, and at least 1/2" (12.7 mm), should
be in there: that is common practice. Where the pieces are too thin for half of any screw that stays inside the wood, 1/2" is
asked for alone. A screw that ends before the last piece holds nothing together at all. Take a longer one, as long as 1/8" of
wood stays over its tip.

This says nothing of how much the joint carries.

\`\`\`sawbuck
part side 4 of 1x6, length 20"
part leg 4 of 2x4, length 30"
fasten side face into leg face, 2 #8 x 1" at each end
\`\`\`

\`\`\`sawbuck
part side 4 of 1x6, length 20"
part leg 4 of 2x4, length 30"
fasten side face into leg face, 2 #8 x 1-5/8" at each end
\`\`\``,
  templates: {
    ...SCREW_TEMPLATES,
    unreached: "{Screw} does not reach {into} at all: {before} must be gone through first.",
    "under-half":
      "{Screw} goes through {before} and holds only {bite} in {into}: less than half of its {length}.",
    "under-least":
      "{Screw} goes through {before} and holds only {bite} in {into}, where {least} is the least.",
    "also-unreached": "From {first} it does not reach {into}.",
    "also-little": "From {first} it holds only {bite} in {into}.",
    turned: "Drive it from the other side, through {into} into the end of {first}.",
    shop: "Use {name} ({length}): {hold} must hold in {into}.",
    usual: "Use {a} {length} {kind}: {hold} must hold in {into}.",
  },
  run: (worked) =>
    screwedJoints(worked).flatMap(({ joint, fits }): Finding[] => {
      const little = fits
        .filter((f) => f.trouble === "unreached" || f.trouble === "little")
        .sort((a, b) => a.bite.approx - b.bite.approx);
      const worst = little[0];
      return worst ? [findingOf(joint, worst, little.slice(1), fits, worked)] : [];
    }),
};

function findingOf(
  joint: Joint,
  worst: ScrewFit,
  others: readonly ScrewFit[],
  fits: readonly ScrewFit[],
  worked: Worked,
): Finding {
  const { path, bite, half } = worst;
  const least = SCREW_RULE.bite;
  const [holds, most] = apart(bite, least, worked.settings.display);
  const about = aboutPath(joint, worst, worked);
  const says =
    worst.trouble === "unreached"
      ? "unreached"
      : bite.approx < least.approx - TOUCHING
        ? "under-least"
        : "under-half";
  const hold = phrase(half ? "half of it" : "enough of it");
  return {
    ...about,
    says,
    slots: {
      screw: screwSlot(joint),
      before: layersSlot(path.layers.slice(0, -1)),
      into: path.into,
      bite: holds,
      least: most,
      length: joint.size!.length,
    },
    related: [
      ...(about.related ?? []),
      ...otherParts(worst, others).map((f) => ({
        says: f.trouble === "unreached" ? "also-unreached" : "also-little",
        slots: { first: f.path.first, into: f.path.into, bite: f.bite },
        at: joint.at,
      })),
    ],
    cures: isEndFirst(worst)
      ? [{ says: "turned", slots: { first: path.first, into: path.into }, edits: [] }]
      : sizeCure(joint, fits, worked, "shortest", { hold, into: path.into }),
  };
}

/** Driven in through an end, which no screw gets to the other side of: an end is as deep as its piece is long. */
const isEndFirst = ({ path: { layers }, trouble }: ScrewFit): boolean =>
  trouble === "unreached" && layers.length === 2 && layers[0]!.face === "end";
