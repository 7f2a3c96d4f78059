import { ifKnown } from "../plan";
import { hopper } from "../solid/hopper";
import type { Ring as Closing } from "../solid/ring";
import { LENGTH, roughly } from "../units";
import { opensBy, type Ring, ringChanges, type Worked } from "../worked";
import type { Check, Cure, Finding } from "./check";
import { phrase } from "./phrases";
import { pieceSlot } from "./piece-words";
import { angles, faces, type RingCase, sideName, sides } from "./ring-words";

export const ringOpen: Check = {
  code: "ring-open",
  class: "error",
  title: "A ring of mitered parts does not close",
  page: `Going once round a ring, the corners must turn 360° in all, every side must begin where the last one ended, and the two cut
faces at a corner must be of one length. For sides that are all alike the angle off square is 180° divided by their number:
45° for four, 30° for six, 22.5° for eight. A small error at each end adds up: half a degree at each of the twelve ends of a
hexagon leaves 6° open at the last corner.

Openings that rounding to the plan's own marks explains are not reported, nor is anything under 1/64" (0.4 mm) or 0.05°.

\`\`\`sawbuck
part board of 1x4, length 12", ends mitered 29.5°
ring seat = 6 board
\`\`\`

\`\`\`sawbuck
part board of 1x4, length 12", ends mitered 30°
ring seat = 6 board
\`\`\``,
  templates: {
    short:
      "{ring} does not close: its {n} corners turn {turns} in all, {misfit} short of 360°, so the corner of {a} and {b} opens {heel} outside and {toe} inside, or {spread} at every corner when all share it.",
    far: "{ring} does not close: its {n} corners turn {turns} in all, {misfit} more than 360°, so at the corner of {a} and {b} they are {heel} apart outside and {toe} inside, or {spread} out at every corner when all share it.",
    square:
      "{ring} does not close: none of its ends is cut at an angle, and its {n} corners must turn 360° in all.",
    mitered:
      "{ring} does not close: it stands on edge, where bevels turn the corners, and its ends are mitered, as for a ring that lies flat.",
    beveled:
      "{ring} does not close: it lies flat, where miters turn the corners, and its ends are beveled, as for a ring that stands on edge.",
    sides: "{ring} does not close: its corners turn 360°, but {b} begins {opening} away from where {a} ends.",
    faces:
      "Where {a} ({w1} {way}, cut {x}) meets {b} ({w2} {way}, cut {y}) in {ring}, the cut faces are {m1} and {m2} long: a step of {step} on the inside.",
    "too-few": "{ring} has {sides}, and a ring needs at least three.",
    "ends-cross":
      "{ring} cannot be made: {side} is so short for its width that its two cuts cross before its inner edge.",
    unusable: "{ring} cannot be made: the size of {side} is nothing that can be cut.",
    "end-cut": "{part} is cut {angle}.",
    long: "{part} is {length} long.",
    across: "{part} is {across} {way}.",
    bevel: "Bevel its ends {angle} instead.",
    miter: "Miter its ends {angle} instead.",
    alike: "Cut all ends at {angle}: 180° divided by {n} sides.",
    "alike-told":
      "For {n} sides that are all alike, cut every end at {angle}; here the lengths do not fit each other either.",
    length: "Make {side} {to} long instead of {from}.",
    "length-outside": "Make {side} {to} long on its outer edge instead of {from}.",
    match: "Cut {a} at {x} and {b} at {y}: then both faces are of one length.",
    "in-space":
      "Where {a} meets {b} in {ring} as it stands, only {share} of the cut end lies on the other: the corner stands open.",
    leaning:
      "{ring} does not close: with its sides leaning {lean} {way}, its {n} corners turn {turns} in all instead of 360°.",
    gapes: "Where {a} meets {b} in {ring} as it stands, the cut ends gape by {opening}.",
    compound:
      "Leaning sides need a miter and a bevel together: for {n} equal sides leaning {lean}, {miter} and {bevel}.",
    "on-edge": "Its ends are beveled and not mitered, so its parts are taken to stand on edge.",
  },
  run: (worked) =>
    worked.rings.flatMap((ring) => {
      const found = findingsOf(ring, worked);
      return found.length > 0 ? found : inSpace(ring, worked);
    }),
};

/** A ring whose angles add up, but whose cut ends do not lie on each other where it stands. */
function inSpace(ring: Ring, { corners, space }: Worked): Finding[] {
  if (ifKnown(ring.closing)?.kind !== "ring") return [];
  const own = corners.filter((c) => c.ring === ring.name);
  const [worst] = own.sort((a, b) => a.share - b.share || b.opening - a.opening);
  const open = [...own].sort((a, b) => b.opening - a.opening)[0]!;
  if (!worst || (worst.share >= WHOLE && open.opening <= OPENING)) return [];
  const [first, second] = [space.pieces[worst.first]!, space.pieces[worst.second]!];
  return [
    {
      at: ring.declared.at,
      about: [ring.name, first.part, second.part],
      says: worst.share >= WHOLE ? "gapes" : "in-space",
      slots: {
        opening: roughly(LENGTH, open.opening),
        ring: ring.name,
        a: pieceSlot(first),
        b: pieceSlot(second),
        share: phrase("percent", { n: Math.round(worst.share * 100) }),
      },
      cures: compound(ring),
    },
  ];
}

const angle = (degrees: number): string => `${Number(degrees.toFixed(2))}°`;

function leaning(ring: Ring, { misfitDegrees }: Closing): Pick<Finding, "says" | "slots" | "cures"> {
  const slots = {
    ring: ring.name,
    lean: angle(Math.abs(ring.out)),
    way: phrase(ring.out > 0 ? "out" : "in"),
    n: ring.sides.length,
    turns: angle(360 + misfitDegrees),
  };
  return { says: "leaning", slots, cures: compound(ring) };
}

/** The cuts that close a ring of equal leaning sides. */
function compound(ring: Ring): Cure[] {
  const n = ring.sides.length;
  const cut = ring.out !== 0 && new Set(ring.sides).size === 1 ? hopper(n, ring.out) : undefined;
  if (!cut) return [];
  const slots = { n, lean: angle(Math.abs(ring.out)), miter: angle(cut.miter), bevel: angle(cut.tilt) };
  return [{ says: "compound", slots, edits: [] }];
}

/** A corner is whole when this share of its cut ends lies on each other, and they gape by no more than this: 1/64". */
const WHOLE = 0.97;
const OPENING = 0.4;

function findingsOf(ring: Ring, worked: Worked): Finding[] {
  const closing = ifKnown(ring.closing);
  if (!closing) return [];
  const n = ring.sides.length;
  const common = { at: ring.declared.at, about: [ring.name, ...new Set(ring.sides)] };
  if (closing.kind === "no-ring") {
    const side = closing.side === undefined ? "" : sideName(ring, closing.side);
    const known = closing.reason === "too-few" || closing.reason === "ends-cross";
    const slots = { ring: ring.name, side, sides: phrase("sides", { n }) };
    return [{ ...common, says: known ? closing.reason : "unusable", slots }];
  }
  const trouble = opensBy(closing, ring.explained?.length ?? 0);
  if (!trouble) return [];
  if (ring.out !== 0 && trouble === "angles") return [{ ...common, ...leaning(ring, closing) }];
  const changes = ringChanges(ring, worked.parts, worked.rings, worked.settings.display);
  const here: RingCase = { ring, closing, changes, worked };
  const assumed = ring.lies === "on edge" && !ring.placed ? [{ says: "on-edge", slots: {} }] : [];
  return [{ ...common, assumed, ...{ angles, sides, faces }[trouble](here) }];
}
