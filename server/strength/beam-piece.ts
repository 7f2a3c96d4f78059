/**
 * A piece of beam between two places where something starts, stops or rests: the load runs straight, so shear,
 * moment, slope and rise are polynomials of the distance into it. N and mm; slope and rise are times stiffness (E I).
 */
export class BeamPiece {
  /** Load at its start, N/mm down, and how it grows, N/mm per mm. */
  load = 0;
  growth = 0;
  /** At its start: shear (N), sagging moment (N mm), slope and rise, both up. */
  shear = 0;
  moment = 0;
  slope = 0;
  rise = 0;

  loadAt(x: number): number {
    return this.load + this.growth * x;
  }

  shearAt(x: number): number {
    return this.shear - x * (this.load + (x / 2) * this.growth);
  }

  momentAt(x: number): number {
    return this.moment + x * (this.shear - (x / 2) * (this.load + (x / 3) * this.growth));
  }

  slopeAt(x: number): number {
    return (
      this.slope + x * (this.moment + (x / 2) * (this.shear - (x / 3) * (this.load + (x / 4) * this.growth)))
    );
  }

  riseAt(x: number): number {
    const curve = this.moment + (x / 3) * (this.shear - (x / 4) * (this.load + (x / 5) * this.growth));
    return this.rise + x * (this.slope + (x / 2) * curve);
  }

  /** Moves its start along by `x`. */
  advance(x: number): void {
    const rise = this.riseAt(x);
    const slope = this.slopeAt(x);
    const moment = this.momentAt(x);
    this.shear = this.shearAt(x);
    this.load = this.loadAt(x);
    this.moment = moment;
    this.slope = slope;
    this.rise = rise;
  }

  /** The places within (0, length) where the shear is 0, ascending, into `places` from 1 on; how many there are. */
  shearless(length: number, places: number[]): number {
    const { shear, load, growth } = this;
    // shear - load x - growth x^2 / 2 = 0, solved so that neither root loses its digits.
    const inside = load * load + 2 * growth * shear;
    if (!(inside >= 0)) return 0;
    const q = load + (load < 0 ? -1 : 1) * Math.sqrt(inside);
    if (q === 0) return 0;
    const one = (2 * shear) / q;
    const other = growth === 0 ? -1 : -q / growth;
    let count = 0;
    for (const x of one < other ? [one, other] : [other, one]) if (x > 0 && x < length) places[++count] = x;
    return count;
  }

  /** Where the moment passes 0 between two places between which it only rises or only falls. */
  momentless(from: number, to: number): number {
    return crossing(
      from,
      to,
      (x) => this.momentAt(x),
      (x) => this.shearAt(x),
    );
  }

  /** Where the beam runs level between two places between which its slope only rises or only falls. */
  level(from: number, to: number): number {
    return crossing(
      from,
      to,
      (x) => this.slopeAt(x),
      (x) => this.momentAt(x),
    );
  }
}

/** Newton's steps kept within a bracket that halves when they leave it. The ends have opposite signs. */
function crossing(
  from: number,
  to: number,
  value: (x: number) => number,
  steepness: (x: number) => number,
): number {
  let low = from;
  let high = to;
  const rising = value(to) > 0;
  const close = (to - from) * 1e-12;
  let x = (from + to) / 2;
  for (let i = 0; i < 60 && high - low > close; i++) {
    const here = value(x);
    if (here === 0) return x;
    if (here > 0 === rising) high = x;
    else low = x;
    const next = x - here / steepness(x);
    const step = next > low && next < high ? next : (low + high) / 2;
    if (Math.abs(step - x) <= close) return step;
    x = step;
  }
  return x;
}
