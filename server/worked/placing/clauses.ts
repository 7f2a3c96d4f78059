/** What the clauses of a place line claim: which of its sides lies where, in which direction. Read, not worked out. */
import type { Clause, Entry, Expression, Thing } from "../../../grammar/tree";
import { type Axis, axisOfSide, axisWritten, isFar } from "./axes";

/** Which part of what is placed a clause fixes: its lower side, its far side, or its middle. */
export type Edge = "low" | "high" | "middle";

type Of<K extends Clause["kind"]> = Clause & { readonly kind: K };
export type PlaceEntry = Entry & { readonly kind: "place" };

/** A clause that says where, in a direction that its words alone tell. */
export interface Claim {
  readonly axis: Axis;
  readonly edge: Edge;
  readonly clause: Clause;
  /** The side of the target that counts: its lower, its far one, or its middle. */
  readonly target: { readonly thing: Thing; readonly edge: Edge } | "own start" | "own end";
  /** Added to (1) or taken from (-1) it. */
  readonly distance?: { readonly value: Expression; readonly sign: 1 | -1 };
}

const RELATIONS = {
  on: [2, "low"],
  above: [2, "low"],
  under: [2, "high"],
  below: [2, "high"],
  "left of": [0, "high"],
  "right of": [0, "low"],
  "in front of": [1, "high"],
  behind: [1, "low"],
} as const;

const opposite = (edge: "low" | "high"): "low" | "high" => (edge === "low" ? "high" : "low");

/** The claims of a line whose direction its words tell. */
export function claimsOf(clauses: readonly Clause[]): Claim[] {
  return clauses.flatMap((clause): Claim[] => {
    switch (clause.kind) {
      case "touches": {
        const [axis, edge] = RELATIONS[clause.relation];
        const target = { thing: clause.target, edge: opposite(edge) };
        const distance = clause.distance && {
          distance: { value: clause.distance, sign: edge === "low" ? (1 as const) : (-1 as const) },
        };
        return [{ axis, edge, clause, target, ...distance }];
      }
      case "flush":
      case "inset": {
        const axis = axisOfSide(clause.face);
        const edge = isFar(clause.face) ? "high" : "low";
        const target = { thing: clause.target, edge } as const;
        if (clause.kind === "flush") return [{ axis, edge, clause, target }];
        const inwards = edge === "low" ? 1 : -1;
        const sign = clause.past ? (inwards === 1 ? -1 : 1) : inwards;
        return [{ axis, edge, clause, target, distance: { value: clause.distance, sign } }];
      }
      case "from": {
        if (clause.datum === "floor")
          return [
            {
              axis: 2,
              edge: "low",
              clause,
              target: "own start",
              distance: { value: clause.distance, sign: 1 },
            },
          ];
        const axis = axisOfSide(clause.datum);
        const far = isFar(clause.datum);
        return [
          {
            axis,
            edge: far ? "high" : "low",
            clause,
            target: far ? "own end" : "own start",
            distance: { value: clause.distance, sign: far ? -1 : 1 },
          },
        ];
      }
      case "centered":
        return clause.axis
          ? [
              {
                axis: axisWritten(clause.axis),
                edge: "middle",
                clause,
                target: { thing: clause.target, edge: "middle" },
              },
            ]
          : [];
      case "diagonal": {
        const axis = axisOfSide(clause.face);
        const edge = isFar(clause.face) ? "low" : "high";
        return [{ axis, edge, clause, target: { thing: clause.target, edge: opposite(edge) } }];
      }
      default:
        return [];
    }
  });
}

/** The clause that adds a mirror image in that direction. */
export const mirroredIn = (entry: PlaceEntry, axis: Axis): Of<"mirrored"> | undefined =>
  entry.clauses.find((c): c is Of<"mirrored"> => c.kind === "mirrored" && axisWritten(c.axis) === axis);

/** A clause that puts a row evenly between two things, or over one. */
export type Spread = Clause & { readonly kind: "spread" | "spread over" };

/** One `3 high, tight`: how many, in which direction, how far apart. */
export interface Pattern {
  /** Undefined: as many as fit. */
  readonly count: Expression | undefined;
  readonly axis: Axis | undefined;
  readonly spacing: Of<"spacing"> | undefined;
  readonly spread: Spread | undefined;
  /** A spread row begins and ends with a gap. */
  readonly endGaps: boolean;
  readonly clause: Clause;
}

/** The patterns of a line: what stands after a count belongs to it. */
export function patternsOf(clauses: readonly Clause[]): Pattern[] {
  const found: { -readonly [K in keyof Pattern]: Pattern[K] }[] = [];
  const endGaps = clauses.some((c) => c.kind === "end gaps");
  let early: Pick<Pattern, "spacing" | "spread"> = { spacing: undefined, spread: undefined };
  for (const clause of clauses) {
    const last = found[found.length - 1];
    if (clause.kind === "repeat") {
      const axis = clause.direction && axisWritten(clause.direction);
      found.push({ count: clause.count, axis, ...early, endGaps, clause });
      early = { spacing: undefined, spread: undefined };
    } else if (clause.kind === "spacing") {
      if (last) last.spacing ??= clause;
      else early = { ...early, spacing: clause };
    } else if (isSpread(clause)) {
      if (last) last.spread ??= clause;
      else early = { ...early, spread: clause };
    }
  }
  return found;
}

const isSpread = (c: Clause): c is Spread => c.kind === "spread" || c.kind === "spread over";

/** Left and right, front and back, top and bottom in a thing's words tell a direction. */
export function axisNamed(things: readonly Thing[]): Axis | undefined {
  const axes = things.map((t) => {
    const words = t.where.flatMap(({ text }) => NARROWING[text] ?? []);
    return words.length === 1 ? words[0]!.axis : undefined;
  });
  return axes.every((a) => a !== undefined && a === axes[0]) ? axes[0] : undefined;
}

/** What the words before a name choose: those before (false) or beyond (true) the group's middle. */
export const NARROWING: Readonly<Record<string, { readonly axis: Axis; readonly far: boolean }>> = {
  left: { axis: 0, far: false },
  right: { axis: 0, far: true },
  front: { axis: 1, far: false },
  back: { axis: 1, far: true },
  bottom: { axis: 2, far: false },
  lower: { axis: 2, far: false },
  top: { axis: 2, far: true },
  upper: { axis: 2, far: true },
};
