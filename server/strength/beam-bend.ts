/**
 * Bending of a beam of one section throughout, on any number of supports, with ends that reach past them: the
 * classical theory (Euler-Bernoulli; small sag, no sag by shear), exact for loads at points and loads that run
 * straight. Millimetres and newtons; nothing here knows what the beam is made of.
 */
import { type Greatest, Greatests, type Sag } from "./beam-greatest";
import { BeamPiece } from "./beam-piece";

export type { Greatest, Sag };

/** A force in N, down, at a point; or N/mm, down, at both ends of a stretch and straight between them. */
export type BeamLoad =
  | { readonly at: number; readonly force: number }
  | { readonly from: number; readonly to: number; readonly start: number; readonly end: number };

/** All places are mm from the left end. */
export interface Beam {
  readonly length: number;
  /** Pinned, in ascending order: they hold up and down, and let the beam turn. */
  readonly supports: readonly number[];
  readonly loads: readonly BeamLoad[];
  /** Ends that are built in: each is a support of its own, whether or not it is listed. */
  readonly clamped?: "left" | "both";
}

export interface Bending {
  /** N by support from the left, built-in ends among them; below 0 where the beam pulls its support up. */
  readonly reactions: readonly number[];
  readonly moment: Greatest;
  readonly shear: Greatest;
  /** The greatest for its span, which is what a limit of span / 360 or the like is compared with. */
  readonly sag: Sag;
}

/**
 * What the loads do to the beam. Undefined when it cannot stand (fewer than two supports and no end built in), when
 * supports are not in order and apart, when anything lies off the beam by more than a millionth of its length, and when
 * a number is not finite. Never throws.
 */
export function bend(beam: Beam): Bending | undefined {
  const nodes = nodesOf(beam);
  if (nodes === undefined || !beam.loads.every((load) => liesOn(load, beam.length))) return undefined;
  const steps = stepsOf(beam);
  const spans = nodes.length - 1;
  const stretches: Stretch[] = [];
  const walk = new Walk(steps);
  for (let i = -1; i <= spans; i++) {
    const from = i < 0 ? 0 : nodes[i]!;
    const to = i < spans ? nodes[i + 1]! : beam.length;
    stretches.push(walk.through(from, to, i === spans));
  }
  return measured(beam, stretches, supportMoments(stretches, beam.clamped), steps);
}

/** A stretch from one support to the next or to a free end, and what its loads alone would do by its end. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly length: number;
  readonly shear: number;
  readonly moment: number;
  readonly slope: number;
  readonly rise: number;
}

/** A place where a force acts, or a load starts or stops: what is added to load and growth there. */
interface Step {
  readonly at: number;
  readonly force: number;
  readonly load: number;
  readonly growth: number;
}

/** Walks along the beam from step to step. The load is carried over supports; all else each stretch sets anew. */
class Walk {
  readonly piece = new BeamPiece();
  private next = 0;
  constructor(private readonly steps: readonly Step[]) {}

  /** From rest to the end of a stretch. The last one takes the steps at its very end as well. */
  through(from: number, to: number, last: boolean): Stretch {
    const { piece } = this;
    piece.shear = piece.moment = piece.slope = piece.rise = 0;
    this.along(from, to, last);
    const { shear, moment, slope, rise } = piece;
    return { from, to, length: to - from, shear, moment, slope, rise };
  }

  along(from: number, to: number, last: boolean, look?: (at: number, length: number) => void): void {
    const { piece, steps } = this;
    let at = from;
    for (;;) {
      const step = steps[this.next];
      const until = step !== undefined && (step.at < to || last) ? step.at : to;
      if (until > at) {
        look?.(at, until - at);
        piece.advance(until - at);
        at = until;
      }
      if (step === undefined || !(step.at < to || last)) return;
      piece.shear -= step.force;
      piece.load += step.load;
      piece.growth += step.growth;
      this.next++;
    }
  }
}

function nodesOf({ length, supports, clamped }: Beam): number[] | undefined {
  if (!(length > 0 && length <= LONGEST)) return undefined;
  const nodes = supports.map((support) => onBeam(support, length));
  if (clamped && nodes[0] !== 0) nodes.unshift(0);
  if (clamped === "both" && nodes.at(-1) !== length) nodes.push(length);
  if (nodes.length < (clamped ? 1 : 2)) return undefined;
  const apart = length * NOTHING;
  let before = -apart;
  for (const node of nodes) {
    if (!(node - before >= apart)) return undefined;
    before = node;
  }
  return nodes;
}

/** The place, put onto the beam where it lies off it by rounding; NaN where it lies off it altogether. */
function onBeam(place: number, length: number): number {
  const slack = length * NOTHING;
  return place >= -slack && place <= length + slack ? Math.min(Math.max(place, 0), length) : Number.NaN;
}

function liesOn(load: BeamLoad, length: number): boolean {
  if ("at" in load) return onBeam(load.at, length) >= 0 && usable(load.force);
  const { from, to, start, end } = load;
  return onBeam(from, length) <= onBeam(to, length) && from <= to && usable(start) && usable(end);
}

/** In order of place. A load over a stretch of next to no length is taken for a force at a point. */
function stepsOf({ loads, length }: Beam): Step[] {
  const steps: Step[] = [];
  for (const load of loads) {
    if ("at" in load) {
      steps.push({ at: onBeam(load.at, length), force: load.force, load: 0, growth: 0 });
      continue;
    }
    const { start, end } = load;
    const from = onBeam(load.from, length);
    const to = onBeam(load.to, length);
    const growth = (end - start) / (to - from);
    if (to - from < length * NOTHING)
      steps.push({ at: from, force: ((start + end) / 2) * (to - from), load: 0, growth: 0 });
    else
      steps.push(
        { at: from, force: 0, load: start, growth },
        { at: to, force: 0, load: -end, growth: -growth },
      );
  }
  return steps.sort((a, b) => a.at - b.at);
}

/**
 * Moments over the supports, so that the beam runs on over each without a kink (the three-moment equations), level at
 * an end that is built in. `stretches` begin and end with the overhangs.
 */
function supportMoments(stretches: readonly Stretch[], clamped: Beam["clamped"]): number[] {
  const count = stretches.length - 1;
  const left = stretches[0]!;
  const right = stretches[count]!;
  const fromLeft = left.moment;
  const fromRight = right.shear * right.length - right.moment;
  if (count === 1) return [fromRight];
  const moments: number[] = [];
  const above: number[] = [];
  // Elimination downwards: each row is  before * M[i-1] + own * M[i] + after * M[i+1] = side.
  for (let i = 0; i < count; i++) {
    const before = i > 0 ? stretches[i]! : undefined;
    const after = i < count - 1 ? stretches[i + 1]! : undefined;
    let own: number;
    let side: number;
    let lower = (before?.length ?? 0) / 6;
    let upper = (after?.length ?? 0) / 6;
    if ((i === 0 && !clamped) || (i === count - 1 && clamped !== "both")) {
      own = 1;
      side = i === 0 ? fromLeft : fromRight;
      lower = upper = 0;
    } else {
      own = 2 * (lower + upper);
      side = (before ? -endSlope(before) : 0) + (after ? startSlope(after) : 0);
    }
    const pivot = own - (i > 0 ? lower * above[i - 1]! : 0);
    above.push(upper / pivot);
    moments.push((side - (i > 0 ? lower * moments[i - 1]! : 0)) / pivot);
  }
  for (let i = count - 2; i >= 0; i--) moments[i]! -= above[i]! * moments[i + 1]!;
  return moments;
}

/** Slopes at the ends of a span that its loads alone give it. */
const startSlope = ({ length, moment, rise }: Stretch): number => (moment * length) / 6 - rise / length;
const endSlope = ({ length, moment, slope, rise }: Stretch): number =>
  slope - (moment * length) / 3 - rise / length;

/** Walks again, now with the moments over the supports known. */
function measured(
  { length: whole, clamped }: Beam,
  stretches: readonly Stretch[],
  moments: readonly number[],
  steps: readonly Step[],
): Bending | undefined {
  const walk = new Walk(steps);
  const { piece } = walk;
  const greatest = new Greatests(piece);
  const reactions: number[] = [];
  const last = stretches.length - 1;
  for (let i = 0; i <= last; i++) {
    const stretch = stretches[i]!;
    const { from, to, length } = stretch;
    const over = moments[i - 1] ?? 0;
    const shearBefore = piece.shear;
    if (i === 0) {
      piece.slope = (clamped ? 0 : slopeFrom(stretches[1]!, moments[0]!, moments[1]!)) - stretch.slope;
      piece.rise = -piece.slope * length - stretch.rise;
    } else {
      if (i < last) piece.slope = slopeFrom(stretch, over, moments[i]!);
      piece.shear = i < last ? (moments[i]! - over - stretch.moment) / length : -stretch.shear;
      piece.moment = over;
      piece.rise = 0;
      reactions.push(piece.shear - shearBefore);
    }
    greatest.span = i === 0 || i === last ? 2 * length : length;
    const looked = length > whole * NOTHING ? greatest.look : undefined;
    walk.along(from, to, i === last, looked);
  }
  const { moment, shear, sag } = greatest;
  const all = [...reactions, moment.size, shear.size, sag.timesStiffness];
  return all.every(Number.isFinite) ? { reactions, moment, shear, sag } : undefined;
}

/** The slope at the start of a span that its loads and the moments at its ends give it. */
const slopeFrom = (span: Stretch, start: number, end: number): number =>
  startSlope(span) - ((2 * start + end) * span.length) / 6;

/** mm: beyond it a fourth power of a length is near the end of what numbers hold. */
const LONGEST = 1e9;
/** Of the length of a beam: what is shorter is rounding, no length. */
const NOTHING = 1e-6;
const usable = (load: number): boolean => Math.abs(load) <= 1e12;
