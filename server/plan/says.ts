/** What is to be said, as data: the name of a template and what fills it. Its text is made only when it is shown. */
import type { Quantity } from "../units";

/**
 * What fills a template. A string is words of the plan, a name or a figure, the same in every language; a value is
 * written in the plan's own units. All else is said in the language of the text it stands in.
 */
export type Slot = string | number | Quantity | InFull | Several | Says;
export type Slots = Readonly<Record<string, Slot>>;

/** A length as it is, and not to the plan's mark. */
export interface InFull {
  readonly full: Quantity;
}

/** `all`: a, b and c; `any`: a, b or c; `row`: with the same sign between all. */
export type Several =
  | { readonly all: readonly Slot[] }
  | { readonly any: readonly Slot[] }
  | { readonly row: readonly Slot[]; readonly by: string };

/** A template's name with its slots. One that no table has is its own English text. */
export interface Says {
  readonly says: string;
  readonly slots: Slots;
}

/** Something said without slots may be its name alone. */
export type Told = string | Says;

const NONE: Slots = {};
export const say = (says: string, slots: Slots = NONE): Says => ({ says, slots });
export const asSays = (told: Told): Says => (typeof told === "string" ? say(told) : told);

/** The name that something told is about, the words themselves where it says none. */
export const nameIn = (told: Told): string => {
  if (typeof told === "string") return told;
  const { name } = told.slots;
  return typeof name === "string" ? name : told.says;
};
