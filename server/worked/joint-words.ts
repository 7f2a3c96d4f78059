/** How a joint is named and how its screws are set out, in words. English where no other words are given. */
import type { Entry, JointSide } from "../../grammar/tree";

/** What a joint's line says of how many screws go where; a number is undefined where it is not known. */
export interface JointSetting {
  readonly each: number | undefined;
  readonly where:
    | "nowhere"
    | "along it, spaced"
    | "in all"
    | "each end"
    | "along each"
    | "crossings"
    | "each crossing"
    | "unsaid";
  readonly crossings?: number | undefined;
}

type Face = NonNullable<JointSide["face"]>;

export const JOINT_ENGLISH = {
  side: (name: string, face: Face | undefined): string => name + (face ? ` ${face}` : ""),
  sides: (sides: readonly string[]): string => sides.join(" and "),
  /** `through` is empty where nothing lies between. */
  title: (kind: "fasten" | "glue", first: string, through: string, into: string): string =>
    `${first}${through === "" ? "" : ` through ${through}`} ${kind === "glue" ? "to" : "into"} ${into}`,
  pattern: ({ each, where, crossings }: JointSetting): string => {
    const n = each ?? "?";
    switch (where) {
      case "nowhere":
        return "";
      case "along it, spaced":
        return "along it";
      case "in all":
        return `${n} in all`;
      case "each end":
        return `${n} at each end`;
      case "along each":
        return `${n} along each`;
      case "crossings":
        return `${n} at each of ${crossings ?? "?"} crossings`;
      case "each crossing":
        return `${n} at each crossing`;
      case "unsaid":
        return `${n}`;
    }
  },
};

export type JointWords = typeof JOINT_ENGLISH;

/** "side and end into leg". */
export function jointTitle(
  { kind, first, through, into }: Entry & { kind: "fasten" | "glue" },
  words: JointWords = JOINT_ENGLISH,
): string {
  const list = (sides: readonly JointSide[]): string =>
    words.sides(sides.map((s) => words.side(s.thing.name.text, s.face)));
  return words.title(kind, list(first), list(through), list(into));
}
