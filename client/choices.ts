/** How the sheet is shown in its panel, without touching the plan: what the reader can choose, and reading a choice that comes from outside. */

export interface Choices {
  readonly units: (typeof UNITS)[number];
  readonly reader: (typeof READERS)[number];
}

/** Units of the lengths; `plan`: as the plan has them. */
export const UNITS = ["plan", "inches", "millimetres"] as const;

/** Who the sheet is for. */
export const READERS = ["builder", "stations", "learners"] as const;

export const AS_PLANNED: Choices = { units: "plan", reader: "builder" };

/** A page may have kept them for long: what is not known any more is as planned. */
export function choicesIn(value: unknown): Choices {
  const read = typeof value === "object" && value !== null ? (value as Partial<Record<string, unknown>>) : {};
  const one = <T extends string>(known: readonly T[], name: string, otherwise: T): T =>
    known.find((key) => key === read[name]) ?? otherwise;
  return {
    units: one(UNITS, "units", AS_PLANNED.units),
    reader: one(READERS, "reader", AS_PLANNED.reader),
  };
}

export const sameChoices = (a: Choices, b: Choices): boolean => a.units === b.units && a.reader === b.reader;
