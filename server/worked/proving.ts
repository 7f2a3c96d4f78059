/** What is known of how cheap the layouts of a plan are, all of them together. */
import { exactly, fraction, money, type Quantity } from "../units";
import { type BoardWork, currenciesOf, type SheetWork } from "./layouts";
import type { Worked } from "./work";

export type Cheapest =
  /** Some layout is only a first answer, or it is not known what it costs. */
  | { readonly known: "nothing" }
  | { readonly known: "cheapest" }
  /** Nothing saves more than this. */
  | { readonly known: "within"; readonly saves: Quantity };

/** Of all that is bought of boards and sheets. */
export function cheapestOf({
  boards,
  sheets,
  shopping,
}: Pick<Worked, "boards" | "sheets" | "shopping">): Cheapest {
  const buying = [...boards, ...sheets].filter(({ answer }) => answer.buy.length > 0);
  // That nothing is cheaper than nothing says nothing.
  const proofs = buying.flatMap(({ proof }) =>
    proof?.money && (proof.bound > 0 || proof.cost === 0) ? [proof] : [],
  );
  const [currency] = shopping.currencies;
  if (proofs.length < buying.length || currency === undefined || shopping.currencies.length > 1)
    return { known: "nothing" };
  const cents = proofs.reduce((sum, { cost, bound }) => sum + cost - bound, 0);
  return cents === 0 && proofs.every(({ status }) => status === "proven")
    ? { known: "cheapest" }
    : { known: "within", saves: ofCents(cents, currency) };
}

export const ofCents = (cents: number, currency: string): Quantity =>
  exactly(money(currency), fraction.rational(cents, 100));

/** The currency of what is sold of a stock; undefined where nothing of it has a price, or not all prices are in one. */
export function currencyOf({ material }: BoardWork | SheetWork): string | undefined {
  const all = currenciesOf(material);
  return all.length === 1 ? all[0] : undefined;
}
