/** Known, unknown and outside-the-table values, and places in files: what every later room passes around. */
import type { Span } from "../../grammar/tree";
import { type Says, type Slots, say } from "./says";

/** A place in one of the plan's files. */
export interface At extends Span {
  readonly file: string;
}

/**
 * Why a value could not be had.
 * mistake: something reported elsewhere stands in the way, so nothing more is said;
 * placing: it follows from where pieces stand; later: its meaning is to come; unsaid: the plan does not say.
 */
export type CauseKind = "mistake" | "placing" | "later" | "unsaid";

export interface Cause {
  readonly kind: CauseKind;
  /** Goes on "… was not checked because": "no price is given for #8 x 2\"". */
  readonly why: Says;
}

export type Value<T> =
  | { readonly state: "known"; readonly value: T }
  | { readonly state: "unknown"; readonly cause: Cause }
  | { readonly state: "outside"; readonly range: string };

export const known = <T>(value: T): Value<T> => ({ state: "known", value });
/** `why` names a template of what was not looked at, which the slots fill. */
export const unknown = (kind: CauseKind, why: string, slots?: Slots): Value<never> => ({
  state: "unknown",
  cause: { kind, why: say(why, slots) },
});
export const outside = (range: string): Value<never> => ({ state: "outside", range });
export const MISTAKE = unknown("mistake", "a mistake");

/** The value, or undefined when there is none. */
export const ifKnown = <T>(v: Value<T> | undefined): T | undefined =>
  v?.state === "known" ? v.value : undefined;

/** Applies f to a known value; an unknown one stays as it is. */
export const map = <A, B>(v: Value<A>, f: (a: A) => B): Value<B> =>
  v.state === "known" ? known(f(v.value)) : v;

/** Applies f that may itself find nothing. */
export const chain = <A, B>(v: Value<A>, f: (a: A) => Value<B>): Value<B> =>
  v.state === "known" ? f(v.value) : v;

/** The version of the plan language that is read. */
export const LANGUAGE = 1;
