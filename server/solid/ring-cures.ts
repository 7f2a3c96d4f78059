/**
 * The single changes that make a ring of mitred parts close or its mitred faces match. Each one offered
 * has been tried: with it alone the ring closes within its own tolerance.
 */
import { cos, degrees, NUMERIC, sin } from "./angle";
import { closeRing, type Ring, type RingSide } from "./ring";

export type RingCure =
  /** Cut all ends alike, at this angle off square: 180 / n. */
  | { readonly kind: "ends-alike"; readonly degrees: number }
  /** Make one side this long on the outside; `leaves` is the opening that then remains. */
  | {
      readonly kind: "side-length";
      readonly side: number;
      readonly from: number;
      readonly to: number;
      readonly leaves: number;
    }
  /** Where boards of unequal width meet: the two angles that give both the same mitred face, turn unchanged. */
  | { readonly kind: "corner-angles"; readonly corners: readonly CornerAngles[] };

export interface CornerAngles {
  readonly between: readonly [number, number];
  readonly endAngle: number;
  readonly startAngle: number;
}

/**
 * The cures of a ring that does not close, or whose mitred faces differ by more than its tolerance; none for
 * one that is right, and none where two things are wrong at once. Side lengths come best first: what
 * leaves least, then a shorter side before a longer one.
 */
export function curesFor(ring: Ring): readonly RingCure[] {
  if (ring.closes) return [cornerAngles(ring)].filter((c) => c !== undefined);
  return [endsAlike(ring), ...sideLengths(ring)].filter((c) => c !== undefined);
}

/** The sides with the cure carried out. */
export function applyCure(sides: readonly RingSide[], cure: RingCure): readonly RingSide[] {
  switch (cure.kind) {
    case "ends-alike":
      return sides.map((s) => ({ ...s, startAngle: cure.degrees, endAngle: cure.degrees }));
    case "side-length":
      return sides.map((s, i) => (i === cure.side ? { ...s, outsideLength: cure.to } : s));
    case "corner-angles":
      return sides.map((s, i) => ({
        ...s,
        endAngle: cure.corners.find((c) => c.between[0] === i)?.endAngle ?? s.endAngle,
        startAngle: cure.corners.find((c) => c.between[1] === i)?.startAngle ?? s.startAngle,
      }));
  }
}

/**
 * The end angle of the first board and the start angle of the second for boards of widths w1 and w2 that
 * meet at this turn: tan b1 = (w2 / w1 - cos t) / sin t, a2 = t - b1. Undefined when there is no such
 * corner: a turn not between 0 and 180, a width not above 0, or an angle that no saw cuts.
 */
export function unequalMiter(
  w1: number,
  w2: number,
  turn: number,
): { readonly endAngle: number; readonly startAngle: number } | undefined {
  if (!(w1 > 0 && w2 > 0 && turn > 0 && turn < 180)) return undefined;
  const endAngle = degrees(Math.atan((w2 / w1 - cos(turn)) / sin(turn)));
  const startAngle = turn - endAngle;
  return Math.abs(startAngle) < 90 && Math.abs(endAngle) < 90 ? { endAngle, startAngle } : undefined;
}

const worstMismatch = (ring: Ring): number => Math.max(...ring.corners.map((c) => c.lengthMismatch));

/** The ring after a cure, if the cure does all it should. */
function cured(ring: Ring, cure: RingCure): Ring | undefined {
  const after = closeRing(applyCure(ring.sides, cure), ring.tolerance);
  if (after.kind !== "ring" || !after.closes) return undefined;
  return worstMismatch(after) <= Math.max(worstMismatch(ring), ring.tolerance.length) ? after : undefined;
}

function endsAlike(ring: Ring): RingCure | undefined {
  const cure: RingCure = { kind: "ends-alike", degrees: 180 / ring.sides.length };
  return cured(ring, cure) ? cure : undefined;
}

function sideLengths(ring: Ring): readonly RingCure[] {
  const found = ring.sides.flatMap((s, side) => {
    const heading = ring.headings[side]!;
    const change = -(ring.gap[0] * cos(heading) + ring.gap[1] * sin(heading));
    const cure = { kind: "side-length", side, from: s.outsideLength, to: s.outsideLength + change } as const;
    const after = cured(ring, { ...cure, leaves: 0 });
    return after ? [{ ...cure, leaves: after.opening }] : [];
  });
  const micro = (mm: number): number => Math.round(mm / NUMERIC);
  const longer = (c: (typeof found)[number]): number => Number(c.to > c.from);
  return found.sort((a, b) => micro(a.leaves) - micro(b.leaves) || longer(a) - longer(b) || a.side - b.side);
}

function cornerAngles(ring: Ring): RingCure | undefined {
  const corners = ring.corners.flatMap((c): CornerAngles[] => {
    if (c.lengthMismatch <= ring.tolerance.length) return [];
    const angles = unequalMiter(ring.sides[c.between[0]]!.width, ring.sides[c.between[1]]!.width, c.turn);
    return angles ? [{ between: c.between, ...angles }] : [];
  });
  if (corners.length === 0) return undefined;
  const cure: RingCure = { kind: "corner-angles", corners };
  return cured(ring, cure) ? cure : undefined;
}
