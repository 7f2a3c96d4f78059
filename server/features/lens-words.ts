/** What stands above a plan, in every language. None of it says that a plan is right: that nothing was found is no approval. */
import type { Language } from "../checks";

interface LensWords {
  /** How many boards and sheets are cut; `onHand` of them are there already; `more`, where some pieces are not laid out. */
  readonly wood: (boards: number, sheets: number, onHand: number, more: boolean) => string;
  readonly costOf: (total: string, budget: string) => string;
  /** The total leaves something out of which it is not known how much it takes. */
  readonly andMore: (cost: string) => string;
  readonly withoutPrices: (cost: string, count: number) => string;
  readonly noPrices: (count: number) => string;
  /** Prices that cannot be added up. */
  readonly currencies: (signs: readonly string[]) => string;
  readonly problems: (count: number) => string;
  readonly notChecked: (count: number) => string;
}

const several = (count: number, one: string, other: string): string =>
  `${count} ${count === 1 ? one : other}`;
const listed = (...texts: readonly string[]): string => texts.filter((t) => t !== "").join(", ");

const ENGLISH: LensWords = {
  wood: (boards, sheets, onHand, more) =>
    (more ? "at least " : "") +
    listed(
      boards > 0 ? several(boards, "board", "boards") : "",
      sheets > 0 ? several(sheets, "sheet", "sheets") : "",
      onHand > 0 ? `${onHand} of them on hand` : "",
    ),
  costOf: (total, budget) => `${total} of ${budget}`,
  andMore: (cost) => `at least ${cost}`,
  withoutPrices: (cost, count) => `${cost}, ${several(count, "price", "prices")} missing`,
  noPrices: (count) => several(count, "price is missing", "prices are missing"),
  currencies: (signs) => `prices in ${signs.join(" and ")}`,
  problems: (count) => several(count, "problem", "problems"),
  notChecked: (count) => several(count, "thing not checked", "things not checked"),
};

/** French counts 0 and 1 as one. */
const many = (count: number, one: string, other: string): string => `${count} ${count < 2 ? one : other}`;

const FRENCH: LensWords = {
  wood: (boards, sheets, onHand, more) =>
    (more ? "au moins " : "") +
    listed(
      boards > 0 ? many(boards, "planche", "planches") : "",
      sheets > 0 ? many(sheets, "panneau", "panneaux") : "",
      onHand > 0 ? `dont ${onHand} en réserve` : "",
    ),
  costOf: (total, budget) => `${total} sur ${budget}`,
  andMore: (cost) => `au moins ${cost}`,
  withoutPrices: (cost, count) => `${cost}, ${count} prix ${count < 2 ? "manquant" : "manquants"}`,
  noPrices: (count) => `${count} prix ${count < 2 ? "manque" : "manquent"}`,
  currencies: (signs) => `prix en ${signs.join(" et en ")}`,
  problems: (count) => many(count, "problème", "problèmes"),
  notChecked: (count) => many(count, "point non vérifié", "points non vérifiés"),
};

export const LENS_WORDS: Readonly<Record<Language, LensWords>> = { en: ENGLISH, fr: FRENCH };
