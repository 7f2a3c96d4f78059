/** The greatest moment, shear and sag of a beam, gathered piece by piece as it is walked along. */
import type { BeamPiece } from "./beam-piece";

export interface Greatest {
  /** Without its sign: N mm of a moment, N of a shear. */
  readonly size: number;
  readonly at: number;
}

/** Downwards only: where a beam rises, as the unloaded end beyond a support does, it does not sag. */
export interface Sag {
  /** N mm3: divided by E I (N mm2) it is mm. 0 when it sags nowhere. */
  readonly timesStiffness: number;
  readonly at: number;
  /** mm of the span that it lies in; twice the overhang where it lies past the last support. */
  readonly span: number;
}

export class Greatests {
  moment: Greatest = { size: 0, at: 0 };
  shear: Greatest = { size: 0, at: 0 };
  sag: Sag = { timesStiffness: 0, at: 0, span: 0 };
  /** Of the stretch that the next pieces lie in, as a sag's span is counted. */
  span = 0;
  private from = 0;
  private readonly places: number[] = [0, 0, 0, 0];

  constructor(private readonly piece: BeamPiece) {}

  /** Looks over the piece as it stands, so many mm long, whose start is at `from`. */
  readonly look = (from: number, length: number): void => {
    const { piece, places } = this;
    this.from = from;
    const count = piece.shearless(length, places);
    places[count + 1] = length;
    this.sees(0);
    this.seesShear(piece.growth === 0 ? -1 : -piece.load / piece.growth, length);
    for (let i = 0; i <= count; i++) this.between(places[i]!, places[i + 1]!);
  };

  /** From one place to another the moment only rises or only falls; where it passes 0, the slope turns. */
  private between(from: number, to: number): void {
    const { piece } = this;
    this.sees(to);
    if (piece.momentAt(from) * piece.momentAt(to) < 0) {
      const middle = piece.momentless(from, to);
      this.level(from, middle);
      this.level(middle, to);
    } else this.level(from, to);
  }

  private level(from: number, to: number): void {
    const { piece } = this;
    if (piece.slopeAt(from) * piece.slopeAt(to) < 0) this.seesSag(piece.level(from, to));
  }

  private sees(x: number): void {
    const size = Math.abs(this.piece.momentAt(x));
    if (size > this.moment.size) this.moment = { size, at: this.from + x };
    this.seesShear(x, Number.POSITIVE_INFINITY);
    this.seesSag(x);
  }

  private seesShear(x: number, length: number): void {
    if (!(x >= 0 && x < length)) return;
    const size = Math.abs(this.piece.shearAt(x));
    if (size > this.shear.size) this.shear = { size, at: this.from + x };
  }

  private seesSag(x: number): void {
    const sunk = -this.piece.riseAt(x);
    const { sag, span } = this;
    if (sag.span === 0 || sunk * sag.span > sag.timesStiffness * span)
      this.sag = { timesStiffness: Math.max(0, sunk), at: this.from + x, span };
  }
}
