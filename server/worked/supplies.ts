/** What to buy of finish and liner for all copies: whole tins, and whole feet or metres off the roll. */
import { ifKnown } from "../plan";
import { exactly, fraction, LENGTH, type Quantity, roughly, unitNamed, VOLUME } from "../units";
import type { CoatWork } from "./coating";
import type { Finish, Tin } from "./finishes";
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
    const lengths = linings.filter((l) => l.roll === roll).map((l) => ifKnown(l.along));
    const along = lengths.reduce((sum, l) => sum + (l?.approx ?? 0), 0) * make;
    if (along <= 0) return [];
    const per = roll.price?.per ?? ONE[display.system];
    const count = Math.ceil(along / per.approx - 1e-9);
    if (!(count <= MOST_BOUGHT)) return [];
    const times = (q: Quantity): Quantity =>
      exactly(q.dim, fraction.multiply(q.exact!, fraction.rational(count)));
    return [
      {
        roll,
        along: roughly(LENGTH, along),
        complete: lengths.every((l) => l !== undefined),
        bought: times(per),
        price: roll.price && toTheCent(times(roll.price.each)),
      },
    ];
  });
}

const ONE = {
  inches: exactly(LENGTH, unitNamed("ft")!.factor),
  millimetres: exactly(LENGTH, unitNamed("m")!.factor),
} as const;

const toTheCent = (q: Quantity): Quantity =>
  exactly(q.dim, fraction.roundTo(q.exact!, fraction.rational(1, 100)));

/** Feet, metres or what it is sold by: past this nothing is bought. */
const MOST_BOUGHT = 1_000_000;
