/** What came out otherwise when it was built, and what wear was found. */
import { type At, ifKnown } from "../plan";
import { type Quantity, quantityText } from "../units";
import type { Worked } from "../worked";
import type { Place, SheetBuilt, SheetValue } from "./data";
import { baseUnit, withoutNoise } from "./marks";
import type { SheetWords } from "./words";

/** In the order of their days; those of one day as the plan has them. */
export function builtRows(
  { built, settings }: Worked,
  place: (at: At) => Place,
  { built: says }: SheetWords,
): SheetBuilt[] {
  const told = (q: Quantity): SheetValue => ({
    value: withoutNoise(q.approx),
    unit: baseUnit(q),
    text: quantityText(q, settings.display),
  });
  const rows = built.map(
    (one): SheetBuilt => ({
      date: one.date,
      by: one.by,
      measured: one.cameOut.flatMap(({ of, name, planned, found, because }) => {
        const [was, is] = [ifKnown(planned), ifKnown(found)];
        const what = of === "length" ? says.lengthOf(name) : name;
        return is ? [{ what, planned: was ? told(was) : null, built: told(is), because }] : [];
      }),
      boards: one.madeOf.map(({ planned, used, because }) => ({ planned, used, because })),
      changed: one.changed,
      wear: inOrder(one.wear.map(({ date, words }) => ({ date, words }))),
      place: place(one.at),
    }),
  );
  return inOrder(rows);
}

/** The days are written so that letters order them. */
const inOrder = <T extends { readonly date: string }>(rows: readonly T[]): T[] =>
  [...rows].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
