/** What loads do to the beams of a plan, what stays and what comes and goes; alike beams are worked out once. Newtons, millimetres. */
import { TOUCHING } from "../../solid/contact";
import { type BeamLoad, type Bending, bend, type Worst, worstPlace } from "../../strength/beam";
import { Lately } from "../lately";
import type { Coming } from "./judging";
import { SEAT } from "./loads";

/** A weight that comes and goes, where something that it stands on lies on this piece. */
export interface Visit {
  readonly at: number;
  readonly force: number;
}

export interface BeamAsked {
  readonly length: number;
  readonly supports: readonly number[];
  readonly loads: readonly BeamLoad[];
  /** N: the most that may stand anywhere on it; 0 where nothing does. */
  readonly roaming: number;
  readonly visits: readonly Visit[];
}

export interface BeamBent {
  readonly steady: Bending;
  /** With the most that each support ever gets of what comes and goes. */
  readonly coming: Coming & { readonly reactions: readonly number[] };
}

export class Beams {
  private readonly done = new Map<string, BeamBent | undefined>();

  /** Undefined where it cannot stand, as on fewer than two supports. */
  of(beam: BeamAsked): BeamBent | undefined {
    const asked = straightDown(beam);
    const key = keyOf(asked);
    const before = this.done.get(key);
    if (before !== undefined || this.done.has(key)) return before;
    const { length, supports, loads } = asked;
    const steady = bend({ length, supports, loads });
    const bent = steady && { steady, coming: sweep(asked) };
    this.done.set(key, bent);
    return bent;
  }
}

/** With what lies right over a support put there: it goes down into it, and shears nothing beside it. */
function straightDown({ length, supports, loads, roaming, visits }: BeamAsked): BeamAsked {
  const placed = <T extends object>(one: T): T => {
    if (!("at" in one)) return one;
    const over = supports.find((s) => Math.abs(s - (one.at as number)) < TOUCHING);
    return over === undefined ? one : { ...one, at: over };
  };
  return { length, supports, loads: loads.map(placed), roaming, visits: visits.map(placed) };
}

/** To a millionth of a millimetre and of a newton: nearer than that, beams are alike. */
function keyOf({ length, supports, loads, roaming, visits }: BeamAsked): string {
  let key = `${Math.round(length * 1e6)}`;
  const add = (n: number): void => {
    key += ` ${Math.round(n * 1e6)}`;
  };
  for (const at of supports) add(at);
  for (const load of loads) {
    key += "|";
    if ("at" in load) {
      add(load.at);
      add(load.force);
    } else {
      add(load.from);
      add(load.to);
      // A load for each millimetre, as much all along the beam.
      add(load.start * length);
      add(load.end * length);
    }
  }
  key += "r";
  add(roaming);
  for (const { at, force } of visits) {
    key += "v";
    add(at);
    add(force);
  }
  return key;
}

/** The most that weights which come and go, one at a time, ever do to a beam, and to each of its supports. */
function sweep({ length, supports, roaming, visits }: BeamAsked): BeamBent["coming"] {
  let [moment, shear, timesStiffness, span] = [0, 0, 0, 0];
  const reactions = supports.map(() => 0);
  // What lies loose cannot pull: beyond its last holder a weight works as a lever over the whole length between the outermost.
  const [first, last] = [supports[0]!, supports.at(-1)!];
  const lever = 1 + Math.max(first, length - last) / (last - first);
  const take = (bent: Bending, force: number): void => {
    moment = Math.max(moment, bent.moment.size);
    shear = Math.max(shear, bent.shear.size);
    const { sag } = bent;
    if (sag.timesStiffness * span > timesStiffness * sag.span || span === 0)
      [timesStiffness, span] = [sag.timesStiffness, sag.span];
    bent.reactions.forEach((r, k) => {
      reactions[k] = Math.max(reactions[k]!, Math.min(r, force * lever));
    });
  };
  const beam = { length, supports, loads: [] };
  const worst = roaming > 0 ? worstStand(length, supports, roaming) : undefined;
  if (worst) {
    take(worst, roaming);
    // It may stand right over each of them.
    supports.forEach((_, k) => {
      reactions[k] = Math.max(reactions[k]!, roaming);
    });
  }
  for (const { at, force } of mostAt(visits)) {
    const bent = bend({ ...beam, loads: [{ at, force }] });
    if (bent) take(bent, force);
  }
  return { moment, shear, timesStiffness, span, reactions };
}

/** What a weight that may stand anywhere on a bare board does where it is worst, on a place as wide as a foot. */
export const worstStand = (length: number, supports: readonly number[], force: number): Worst | undefined =>
  STANDS.of([length, supports, force]);

type Stand = readonly [length: number, supports: readonly number[], force: number];

const STANDS = new Lately(500, ([length, supports, force]: Stand) =>
  worstPlace({ length, supports, loads: [] }, force, SEAT.foot),
);

/** The heaviest visit of each place. */
function mostAt(visits: readonly Visit[]): Iterable<Visit> {
  const most = new Map<number, Visit>();
  for (const visit of visits) {
    const place = Math.round(visit.at * 1e6);
    const before = most.get(place);
    if (visit.force > (before?.force ?? 0)) most.set(place, visit);
  }
  return most.values();
}
