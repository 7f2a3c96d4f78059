/**
 * The cures of a ring as changes of what its parts say: which written angle or length becomes which. Only where that
 * is written as a plain value, belongs to this ring alone, and has been tried: with the new values, rounded as they
 * will be written, the ring closes.
 */
import type { EndCut, Literal } from "../../grammar/tree";
import { type At, ifKnown } from "../plan";
import { NUMERIC } from "../solid/angle";
import { type Ring as Closing, closeRing, type RingSide } from "../solid/ring";
import { applyCure, type RingCure } from "../solid/ring-cures";
import { ANGLE, type Display, exactly, exactOf, fraction, LENGTH, type Quantity, roughly } from "../units";
import type { Part } from "./parts";
import { opensBy, type Ring } from "./rings";

export interface Change {
  readonly at: At;
  /** A length on the plan's marks, or an angle to the thousandth of a degree. */
  readonly value: Quantity;
}

export interface RingChange {
  readonly cure: RingCure;
  /** Empty where it can only be told. */
  readonly changes: readonly Change[];
}

/** What each of the ring's cures changes in the text. */
export function ringChanges(
  ring: Ring,
  parts: ReadonlyMap<string, Part>,
  rings: readonly Ring[],
  display: Display,
): RingChange[] {
  const closing = ifKnown(ring.closing);
  if (closing?.kind !== "ring") return [];
  const shared = ring.sides.some((s) => rings.some((r) => r !== ring && r.sides.includes(s)));
  return ring.cures.map((cure) => ({
    cure,
    changes: shared ? [] : changesOf(cure, ring, closing, parts, display),
  }));
}

function changesOf(
  cure: RingCure,
  ring: Ring,
  closing: Closing,
  parts: ReadonlyMap<string, Part>,
  display: Display,
): readonly Change[] {
  if (cure.kind === "side-length") return lengthChange(cure, ring, closing, parts, display);
  const wanted = applyCure(closing.sides, cure).map((s) => ({
    ...s,
    startAngle: thousandth(s.startAngle),
    endAngle: thousandth(s.endAngle),
  }));
  if (!closesWell(wanted, ring, closing)) return [];
  const changes: Change[] = [];
  for (const name of new Set(ring.sides)) {
    const asked = wanted.filter((_, i) => ring.sides[i] === name);
    const alike = asked.every(
      (s) => same(s.startAngle, asked[0]!.startAngle) && same(s.endAngle, asked[0]!.endAngle),
    );
    const change = alike && angleChanges(parts.get(name), asked[0]!, ring.lies);
    if (!change) return [];
    changes.push(...change);
  }
  return changes;
}

function lengthChange(
  cure: Extract<RingCure, { kind: "side-length" }>,
  ring: Ring,
  closing: Closing,
  parts: ReadonlyMap<string, Part>,
  display: Display,
): readonly Change[] {
  const name = ring.sides[cure.side]!;
  const part = parts.get(name);
  const length = ifKnown(part?.length);
  const at = part && literalAt(part.declared.at.file, lengthClause(part)?.value);
  if (!length || !at || ring.sides.filter((s) => s === name).length > 1) return [];
  const meant = roughly(LENGTH, length.approx + cure.to - cure.from);
  const value = exactly(LENGTH, fraction.roundTo(exactOf(meant), display.mark));
  const outsideLength = cure.from + value.approx - length.approx;
  const sides = closing.sides.map((s, i) => (i === cure.side ? { ...s, outsideLength } : s));
  return value.approx > 0 && closesWell(sides, ring, closing) ? [{ at, value }] : [];
}

/** The changes that give a part these angles; undefined where they are not written as plain values, or its length would shift. */
function angleChanges(part: Part | undefined, side: RingSide, lies: Ring["lies"]): Change[] | undefined {
  if (!part || (part.measured !== "long to long" && part.measured !== "overall")) return undefined;
  const how = lies === "flat" ? "mitered" : "beveled";
  const left = cutOf(part, "left", how);
  const right = cutOf(part, "right", how);
  if (!left || !right || (left === right && !same(side.startAngle, side.endAngle))) return undefined;
  const both: readonly (readonly [EndCut, number])[] = [
    [left, side.startAngle],
    [right, side.endAngle],
  ];
  const wanted = left === right ? both.slice(0, 1) : both;
  const changes: Change[] = [];
  for (const [cut, degrees] of wanted) {
    const at = literalAt(part.declared.at.file, cut.angle);
    if (!at || degrees < 0) return undefined;
    changes.push({ at, value: exactly(ANGLE, fraction.rational(Math.round(degrees * 1000), 1000)) });
  }
  return changes;
}

/** The cut that holds for that end: the last one said. */
function cutOf(part: Part, end: "left" | "right", how: EndCut["how"]): EndCut | undefined {
  const clauses = part.declared.entry.clauses.filter((c) => c.kind === "ends");
  const last = clauses.filter((c) => c.which === "both" || c.which === end).at(-1);
  return last?.cuts.find((c) => c.how === how);
}

const lengthClause = (part: Part) => part.declared.entry.clauses.find((c) => c.kind === "length");

const literalAt = (
  file: string,
  e: { kind: string; start: number; end: number } | undefined,
): At | undefined =>
  e?.kind === ("literal" satisfies Literal["kind"]) ? { file, start: e.start, end: e.end } : undefined;

const closesWell = (sides: readonly RingSide[], ring: Ring, { tolerance }: Closing): boolean => {
  const after = closeRing(sides, tolerance);
  return after.kind === "ring" && opensBy(after, ring.explained?.length ?? 0) === undefined;
};

const thousandth = (degrees: number): number => Math.round(degrees * 1000) / 1000;
const same = (a: number, b: number): boolean => Math.abs(a - b) < NUMERIC;
