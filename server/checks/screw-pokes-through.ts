import { fraction, negated } from "../units";
import {
  type Joint,
  otherAngle,
  SCREW_RULE,
  type ScrewFit,
  type TipOut,
  tipOut,
  type Worked,
} from "../worked";
import type { Check, Cure, Finding, Slots } from "./check";
import { phrase } from "./phrases";
import { mm, pieceSlot } from "./piece-words";
import {
  aboutPath,
  kindSlot,
  otherParts,
  SCREW_TEMPLATES,
  screwedJoints,
  screwSlot,
  sizeCure,
  WAY,
  woodSlot,
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

It is a hazard when the tip comes out, above all into a box where hands dig, and a warning when it stays in with less than 1/8"
over it. Between placed pieces the screw is followed straight on through all wood in its line: what lies tight behind the last
piece counts, a tip may come out of an edge as well, and one that crosses a gap and ends in another piece is a warning: it
fixes what it was not meant for. Bolts are meant to come out and are not looked at.

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
    out: "{Screw} goes through {layers} and comes out {proud} proud{where}.",
    box: "{Screw} goes through {layers} and comes out {proud} proud{where}, inside {box}, where hands dig.",
    gap: "{Screw} goes through {layers}, crosses a gap of {gap} and ends in {next}, where it was not meant to go.",
    near: "{Screw} goes through {layers} and leaves only {over} of wood over its tip; {margin} must stay.",
    reaches: "{Screw} goes through {layers}, and its tip reaches the far side: no wood is left over it.",
    "also-out": "From {first} into {into} it comes out {proud} proud.",
    "also-near": "From {first} into {into} too little wood is left over its tip.",
    shop: "Use {name} ({length}): {margin} of wood must stay over the tip.",
    usual: "Use {a} {length} {kind}: {margin} of wood must stay over the tip.",
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
  const tip = worst.trouble === "out" ? tipOut(joint, worst.path, -worst.over.approx, worked) : undefined;
  const says = saysOf(worst, tip);
  return {
    ...about,
    class: worst.trouble === "out" && says !== "gap" ? "hazard" : "warning",
    says,
    slots: {
      screw: screwSlot(joint),
      layers: woodSlot(worst.path),
      proud: negated(worst.over),
      ...tipSlots(tip),
      over,
      margin,
    },
    related: [
      ...(about.related ?? []),
      ...otherParts(worst, others).map((f) => ({
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

function saysOf({ trouble, over }: ScrewFit, tip: TipOut | undefined): string {
  if (trouble === "near") return over.approx < NO_WOOD ? "reaches" : "near";
  if (tip?.next?.reached) return "gap";
  return tip?.box ? "box" : "out";
}

/** Where it comes out: of which side of which piece, and into what gap. Nothing is known of that before placing. */
function tipSlots(tip: TipOut | undefined): Slots {
  if (!tip) return { where: "", box: "", gap: "", next: "" };
  const { side, next } = tip;
  const gap = next ? mm(next.gap) : "";
  const before = next ? pieceSlot(next.piece) : "";
  const into = next && next.gap <= NARROW ? phrase("into the gap", { gap, next: before }) : "";
  const piece = pieceSlot(tip.piece);
  const where =
    side === "face"
      ? phrase("of it", { piece, into })
      : phrase("of its side", { side: phrase(side), piece, into });
  return { where, box: tip.box ?? "", gap, next: before };
}

/** A gap this wide, in mm, is a gap and no room: 2". */
const NARROW = 50.8;

function thicker(joint: Joint, { path, lastNeeds }: ScrewFit, { settings }: Worked): Cure[] {
  if (!lastNeeds) return [];
  const { face } = path.layers.at(-1)!;
  if (face === "end") return [];
  const needs = markAbove(lastNeeds, settings.display);
  const slots = { into: path.into, needs, way: phrase(WAY[face]), kind: kindSlot(joint) };
  return [{ says: "thicker", slots, edits: [] }];
}

function angled(joint: Joint, worst: ScrewFit, fits: readonly ScrewFit[]): Cure[] {
  const other = otherAngle(joint, fits);
  if (!other) return [];
  const text = `angled ${fraction.toDecimal(other.angle.exact!, 1)}°`;
  const driven = joint.entry.clauses.find((c) => c.kind === "driven");
  // Between placed pieces another angle leads through other wood: it is told, and not written.
  const edits = joint.placed
    ? []
    : joint.angledAt
      ? [edit(joint.angledAt, text)]
      : driven
        ? [editAfter({ ...joint.at, start: driven.start, end: driven.end }, `, ${text}`)]
        : [];
  const slots = { angle: other.angle, into: worst.path.into };
  return other.bites ? [{ says: "angle", slots, edits }] : [{ says: "angle-told", slots, edits: [] }];
}
