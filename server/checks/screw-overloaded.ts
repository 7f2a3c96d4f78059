import { lagPenetration, leastPenetration } from "../trade";
import { type HeldJoint, isLag, jointCures, type Worked } from "../worked";
import type { Check, Cure, Finding } from "./check";
import { aboutPiece, caution, length, load, pieceIn } from "./holding-words";
import { phrase } from "./phrases";
import { pieceSlot } from "./piece-words";
import { kindSlot } from "./screw-words";
import { edit } from "./writing";

export const screwOverloaded: Check = {
  code: "screw-overloaded",
  class: "hazard",
  title: "Screws are asked for more than they hold",
  page: `What a piece carries, and does not lie on something with, hangs on its screws. Each holds so much across its length, and so
much when it is pulled out, by its thickness, the wood of both pieces and how far it goes in (NDS chapter 12: yield equations and
withdrawal). Wet wood takes three tenths of that, end grain a third across and all when pulled (of a lag screw a quarter). A
screw that goes in less than 6 times its thickness (a lag screw 4 times, its tip left out) claims nothing. Loads under 5 lb a
screw are let be. Glue is not judged, and where there is some it holds before the screws do.

The cheapest cure is often no screw at all: let the piece lie on something.

\`\`\`sawbuck
plan Shelf between two posts
  indoors
part post of 2x4, length 40"
part rail of 2x6, length 36"
place post upright, wide face front, on floor, at each corner of 36" x 6"
place rail across, on edge, in front of posts, flush with left of posts, flush with top of posts
fasten rail into post, 2 #8 x 2-1/2" at each crossing, pilot 1/8"
load rail 480 lb spread
\`\`\`

\`\`\`sawbuck
plan Shelf between two posts
  indoors
part post of 2x4, length 40"
part rail of 2x6, length 36"
place post upright, wide face front, on floor, at each corner of 36" x 6"
place rail across, on edge, on posts, flush with front of posts, flush with left of posts
load rail 480 lb spread
\`\`\``,
  templates: {
    hangs: "{load} hangs on {screws} between {piece} and {by}, which can hold {holds}.",
    pulled: "{load} pulls at {screws} between {piece} and {by}, which can hold {holds}.",
    nothing:
      "{load} hangs on {screws} between {piece} and {by}: they go in {bite}, and below {least}, {thick}, no strength is claimed for them.",
    "nothing-pulled":
      "{load} pulls at {screws} between {piece} and {by}: they go in {bite}, and below {least}, {thick}, no strength is claimed for them.",
    "end-grain":
      "{load} pulls at {screws} between {piece} and {by}: they sit in end grain, which holds no screw that is pulled.",
    pushes: "The push is that of wet fill with a blocked drain.",
    caution: "{caution}",
    more: "Use {count} {kind}s there instead of {now}.",
    shop: "Use {name} ({length}) instead: as many hold it then.",
    usual: "Use {size} screws instead: as many hold it then.",
    rest: "Let {piece} lie on something that stands on the floor or on {by}, such as a cleat or a notch, so that nothing hangs on screws.",
    "or-rest":
      "Or let {piece} lie on something that stands on the floor or on {by}, such as a cleat or a notch, so that nothing hangs on screws.",
  },
  run: (worked) =>
    worked.holding.joints.filter((h) => h.uses > 1 + 1e-9).map((held) => findingOf(held, worked)),
};

function findingOf(held: HeldJoint, worked: Worked): Finding {
  const { joint, demand, screws, grip, asked, holds } = held;
  const { display } = worked.settings;
  const [piece, by] = [pieceIn(worked, demand.piece), pieceIn(worked, demand.by)];
  const pulled = demand.way === "pulled";
  const short = grip.least > 0 && grip.bite < grip.least - 1e-6;
  const says = short
    ? pulled
      ? "nothing-pulled"
      : "nothing"
    : pulled
      ? holds > 0
        ? "pulled"
        : "end-grain"
      : "hangs";
  return {
    at: joint.sizeAt ?? joint.at,
    about: [...new Set([...aboutPiece(piece), ...aboutPiece(by)])],
    says,
    slots: {
      load: load(asked, display),
      screws: phrase("so many screws", { n: screws, size: sizeOf(joint), kind: kindSlot(joint) }),
      piece: pieceSlot(piece),
      by: pieceSlot(by),
      holds: load(holds, display),
      bite: { full: length(grip.bite) },
      least: { full: length(grip.least) },
      thick: isLag(joint)
        ? phrase("times their thickness and the tip", { n: lagPenetration.value.least })
        : phrase("times their thickness", { n: leastPenetration.value }),
    },
    numbers: [
      { name: "load", value: load(asked, display), source: "worked out" },
      { name: "what the screws hold", value: load(holds, display), source: "NDS 2018, chapter 12" },
    ],
    assumed: [...(demand.from === "fill" ? [{ says: "pushes", slots: {} }] : []), caution()],
    cures: curesOf(held, worked),
  };
}

/** By the name that its line gives it, else by its size. */
const sizeOf = ({ fastener, size, entry }: HeldJoint["joint"]): string =>
  fastener && entry.clauses.some((c) => c.kind === "driven" && c.fastener) ? fastener.name : size!.text;

function curesOf(held: HeldJoint, worked: Worked): Cure[] {
  const { joint, demand } = held;
  const [piece, by] = [pieceIn(worked, demand.piece), pieceIn(worked, demand.by)];
  return jointCures(held, worked).map((cure, i): Cure => {
    if (cure.kind === "more")
      return { says: "more", slots: { count: cure.count, now: cure.now, kind: kindSlot(joint) }, edits: [] };
    if (cure.kind === "rest")
      return { says: i > 0 ? "or-rest" : "rest", slots: { piece: piece.part, by: by.part }, edits: [] };
    const text = cure.fastener?.name ?? cure.size.text;
    const edits = joint.sizeAt ? [edit(joint.sizeAt, text)] : [];
    if (!cure.fastener) return { says: "usual", slots: { size: cure.size.text }, edits };
    return { says: "shop", slots: { name: text, length: { full: cure.size.length } }, edits };
  });
}
