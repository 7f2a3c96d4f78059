/** A load that may stand anywhere on a beam: a person on a bench, a pot on a shelf. */
import { type Beam, type BeamLoad, type Bending, bend, type Greatest, type Sag } from "./beam-bend";

export interface Worst extends Bending {
  /** N by support: the greatest that each carries. */
  readonly reactions: readonly number[];
  /** N by support: the least that each carries; below 0 where the beam can be made to lift off it. */
  readonly leastReactions: readonly number[];
  /** mm from the left end: where the middle of the moving load then stands. */
  readonly places: { readonly moment: number; readonly shear: number; readonly sag: number };
}

/**
 * The greatest that a load of `force` N, spread over `width` mm of the beam, does at whichever of some places is the
 * worst: near the middle of each span, at the ends of overhangs, close beside each support, and over each load at a
 * point. Between two of those places it can do a little more: a twentieth in the worst of many trials. A load wider than
 * the beam covers all of it. Undefined when the beam cannot be worked out, or the load is no number above 0.
 */
export function worstPlace(beam: Beam, force: number, width: number): Worst | undefined {
  const half = Math.min(width, beam.length) / 2;
  if (!(half > 0 && force > 0)) return undefined;
  let worst: Worst | undefined;
  for (const place of placesOn(beam, half)) {
    const moving: BeamLoad = {
      from: Math.max(0, place - half),
      to: Math.min(beam.length, place + half),
      start: force / (2 * half),
      end: force / (2 * half),
    };
    const bending = bend({ ...beam, loads: [...beam.loads, moving] });
    if (bending === undefined) return undefined;
    worst = worst === undefined ? alone(bending, place) : worseOf(worst, bending, place);
  }
  return worst;
}

/** Middles of the load, each once, the whole of it on the beam. */
function placesOn({ length, supports, loads, clamped }: Beam, half: number): Set<number> {
  const ends = [0, ...supports, length];
  const places = new Set<number>();
  const add = (place: number): void => {
    places.add(Math.min(Math.max(place, half), length - half));
  };
  add(0);
  add(length);
  for (const load of loads) if ("at" in load) add(load.at);
  for (let i = 1; i < ends.length; i++) {
    const from = ends[i - 1]!;
    const to = ends[i]!;
    if (to <= from) continue;
    add((from + to) / 2);
    // In a span that runs on past one support the worst place lies towards its other end (at 0.43 of two equal spans).
    if (supports.length > 2 || clamped) {
      add(from + 0.43 * (to - from));
      add(to - 0.43 * (to - from));
    }
    add(from + half);
    add(to - half);
  }
  return places;
}

const alone = (bending: Bending, place: number): Worst => ({
  ...bending,
  leastReactions: bending.reactions,
  places: { moment: place, shear: place, sag: place },
});

function worseOf(worst: Worst, bending: Bending, place: number): Worst {
  const moment = greater(bending.moment, worst.moment);
  const shear = greater(bending.shear, worst.shear);
  const sag = deeper(bending.sag, worst.sag);
  return {
    reactions: worst.reactions.map((most, i) => Math.max(most, bending.reactions[i]!)),
    leastReactions: worst.leastReactions.map((least, i) => Math.min(least, bending.reactions[i]!)),
    moment: moment ? bending.moment : worst.moment,
    shear: shear ? bending.shear : worst.shear,
    sag: sag ? bending.sag : worst.sag,
    places: {
      moment: moment ? place : worst.places.moment,
      shear: shear ? place : worst.places.shear,
      sag: sag ? place : worst.places.sag,
    },
  };
}

const greater = (one: Greatest, other: Greatest): boolean => one.size > other.size;
const deeper = (one: Sag, other: Sag): boolean =>
  one.timesStiffness * other.span > other.timesStiffness * one.span;
