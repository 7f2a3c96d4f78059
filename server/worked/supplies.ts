/** What to buy of finish and liner for all copies: whole tins, and whole feet or metres off the roll. */
import { layOutRoll, type RollBand } from "../cutting/rolls";
import { ifKnown } from "../plan";
import { exactly, fraction, LENGTH, type Quantity, roughly, unitNamed, VOLUME } from "../units";
import type { CoatWork } from "./coating";
import type { Finish, Tin } from "./finishes";
import { TICKS_PER_MM, ticksUp } from "./layouts";
import type { LiningWork } from "./lining";
import type { Roll } from "./rolls";
import type { Settings } from "./settings";
import { cheapestTins } from "./tins";

export interface FinishNeed {
  readonly finish: Finish;
  /** For all coats of all copies. */
  readonly amount: Quantity;
  /** Not so where some line's amount is not known: it takes more. */
  readonly complete: boolean;
  /** None where the plan does not say how it is sold. */
  readonly tins: readonly { readonly tin: Tin; readonly count: number }[];
}

export interface LinerNeed {
  readonly roll: Roll;
  /** For all copies, as it is cut. */
  readonly along: Quantity;
  /** Boxes whose liners lie side by side on the roll, each such stretch of it once. */
  readonly sideBySide: readonly { readonly boxes: readonly string[]; readonly along: Quantity }[];
  readonly complete: boolean;
  /** Rounded up to what it is sold by: whole feet or metres, or as its price is. */
  readonly bought: Quantity;
  /** What that costs, to the cent; undefined without a price. */
  readonly price: Quantity | undefined;
}

/** Finishes that `coat` lines use, each once, in the order of the lines. */
export function finishNeeds(coats: readonly CoatWork[], { make }: Settings): FinishNeed[] {
  const used = new Set(coats.flatMap(({ finish }) => finish ?? []));
  return [...used].flatMap((finish): FinishNeed[] => {
    const amounts = coats.filter((c) => c.finish === finish).map((c) => ifKnown(c.amount));
    const amount = amounts.reduce((sum, a) => sum + (a?.approx ?? 0), 0) * make;
    if (amount <= 0) return [];
    return [
      {
        finish,
        amount: roughly(VOLUME, amount),
        complete: amounts.every((a) => a !== undefined),
        tins: cheapestTins(finish.tins, amount) ?? [],
      },
    ];
  });
}

/** Rolls that `line` entries use, each once, in the order of the entries. */
export function linerNeeds(linings: readonly LiningWork[], { make, display }: Settings): LinerNeed[] {
  const used = new Set(linings.flatMap(({ roll }) => roll ?? []));
  return [...used].flatMap((roll): LinerNeed[] => {
    const own = linings.filter((l) => l.roll === roll);
    const lengths = own.map((l) => ifKnown(l.along));
    const inARow = lengths.reduce((sum, l) => sum + (l?.approx ?? 0), 0) * make;
    if (inARow <= 0) return [];
    const bands = bandsOf(roll, own, make);
    const inBands = bands?.reduce((sum, band) => sum + band.along, 0);
    const along = inBands === undefined ? inARow : Math.min(inARow, inBands / TICKS_PER_MM);
    const per = roll.price?.per ?? ONE[display.system];
    const count = Math.ceil(along / per.approx - 1e-9);
    if (!(count <= MOST_BOUGHT)) return [];
    const times = (q: Quantity): Quantity =>
      exactly(q.dim, fraction.multiply(q.exact!, fraction.rational(count)));
    return [
      {
        roll,
        along: roughly(LENGTH, along),
        sideBySide: (bands ?? []).flatMap((band) =>
          band.pieces.length > 1
            ? [{ boxes: band.pieces.map(({ pieceId }) => boxOf(pieceId)), along: inMm(band.along) }]
            : [],
        ),
        complete: lengths.every((l) => l !== undefined),
        bought: times(per),
        price: roll.price && toTheCent(times(roll.price.each)),
      },
    ];
  });
}

/** What is cut off the roll, laid side by side where it is wide enough; undefined where that is too much to try. */
function bandsOf(roll: Roll, linings: readonly LiningWork[], make: number): readonly RollBand[] | undefined {
  const width = ifKnown(roll.width);
  const cuts = linings.flatMap((lining) =>
    (ifKnown(lining.cuts) ?? []).map((cut) => ({ ...cut, of: lining.name })),
  );
  const count = cuts.reduce((sum, cut) => sum + cut.count, 0) * make;
  if (!width || count > MOST_ON_A_ROLL) return undefined;
  const pieces = cuts.flatMap(({ of, length, width, count }, c) =>
    Array.from({ length: count * make }, (_, n) => ({
      id: `${of} / ${c + 1} / ${n + 1}`,
      along: ticksUp(length),
      across: ticksUp(width),
      turns: false,
    })),
  );
  const { bands, unplaced } = layOutRoll({ width: ticksUp(width), pieces });
  return unplaced.length === 0 ? bands : undefined;
}

const MOST_ON_A_ROLL = 200;

const boxOf = (piece: string): string => piece.split(" / ")[0]!;

const inMm = (ticks: number): Quantity => roughly(LENGTH, ticks / TICKS_PER_MM);

const ONE = {
  inches: exactly(LENGTH, unitNamed("ft")!.factor),
  millimetres: exactly(LENGTH, unitNamed("m")!.factor),
} as const;

const toTheCent = (q: Quantity): Quantity =>
  exactly(q.dim, fraction.roundTo(q.exact!, fraction.rational(1, 100)));

/** Feet, metres or what it is sold by: past this nothing is bought. */
const MOST_BOUGHT = 1_000_000;
