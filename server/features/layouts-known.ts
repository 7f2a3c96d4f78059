/** What is known of the layouts of a plan: whether there is anything cheaper, and how much at most. */
import type { LayoutJob } from "../cutting/improve";
import { AREA, exactly, fraction, money, plus, type Quantity, quantityText, refused } from "../units";
import { type BoardWork, ofTicks, type SheetWork, TICKS_PER_MM } from "../worked";
import type { Checked } from "./checked";

export interface LayoutsKnown {
  /** Of each stock that something is cut from. */
  readonly jobs: readonly LayoutJob["job"][];
  /** There is no better way for any of them. */
  readonly proven: boolean;
  /** All stocks have their prices: it is about money, else about wood too. */
  readonly priced: boolean;
  /**
   * What all of it may be over the least there can be, in the plan's money, and in lengths and areas of what has no price;
   * unsaid while of some stock nothing is known.
   */
  readonly over?: readonly string[];
}

export function layoutsKnown({ worked }: Checked): LayoutsKnown {
  const { display } = worked.settings;
  const laid: Laid[] = [
    ...worked.boards.flatMap((work) =>
      work.answer.boards.length > 0 ? [{ kind: "boards" as const, work }] : [],
    ),
    ...worked.sheets.flatMap((work) =>
      work.answer.sheets.length > 0 ? [{ kind: "sheets" as const, work }] : [],
    ),
  ];
  const proofs = laid.map(({ work }) => work.proof);
  const known = proofs.every((proof) => proof !== null && (proof.bound > 0 || proof.cost === 0));
  return {
    jobs: laid.map(({ work }) => work.job),
    proven: proofs.every((proof) => proof?.status === "proven"),
    priced: laid.every(({ work }) => work.job.sold.every(({ price }) => price !== null)),
    ...(known && { over: summed(laid.flatMap(gapOf)).map((gap) => quantityText(gap, display)) }),
  };
}

interface Laid {
  readonly kind: LayoutJob["kind"];
  readonly work: BoardWork | SheetWork;
}

/** What one stock may be over the least. */
function gapOf({ kind, work: { proof, material } }: Laid): Quantity[] {
  const gap = proof === null ? 0 : proof.cost - proof.bound;
  if (proof === null || gap === 0) return [];
  if (proof.money) {
    const currency = material.sold.find(({ price }) => price)?.price?.dim.currency ?? "";
    return [exactly(money(currency), fraction.rational(gap, 100))];
  }
  return kind === "boards" ? [ofTicks(gap)] : [exactly(AREA, fraction.rational(gap, TICKS_PER_MM ** 2))];
}

/** Those of one kind together, in the order of the first of each. */
function summed(quantities: readonly Quantity[]): Quantity[] {
  const sums: Quantity[] = [];
  for (const quantity of quantities) {
    const at = sums.findIndex((sum) => !refused(plus(sum, quantity)));
    if (at < 0) sums.push(quantity);
    else sums[at] = plus(sums[at]!, quantity) as Quantity;
  }
  return sums;
}
