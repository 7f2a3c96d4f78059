/** What is said of a ring that does not close: by its angles, by its sides, or by faces of unequal length. */
import { ifKnown } from "../plan";
import type { Ring as Closing } from "../solid/ring";
import { fraction, type Quantity } from "../units";
import type { Part, Ring, RingChange, Worked } from "../worked";
import type { Cure, Edit, Finding, ProblemNumber } from "./check";
import { phrase } from "./phrases";
import { degrees, mm } from "./piece-words";
import { edit, tellApart, writtenLength } from "./writing";

export interface RingCase {
  readonly ring: Ring;
  readonly closing: Closing;
  readonly changes: readonly RingChange[];
  readonly worked: Worked;
}

type Told = Pick<Finding, "says" | "slots" | "numbers" | "related" | "cures">;

/** `rail`, or `rail 2` where the ring has more than one of it. */
export function sideName(ring: Ring, side: number): string {
  const part = ring.sides[side]!;
  const before = ring.sides.slice(0, side + 1).filter((s) => s === part).length;
  return ring.sides.filter((s) => s === part).length > 1 ? `${part} ${before}` : part;
}

/** Cut square as it stands: not at all, or the other way. */
function squareEnds(here: RingCase): "square" | "mitered" | "beveled" {
  const ways = partsOf(here).flatMap((part) => [part.leftEnd, part.rightEnd]);
  if (here.ring.lies === "on edge") return ways.some((end) => end?.miter) ? "mitered" : "square";
  return ways.some((end) => end?.bevel) ? "beveled" : "square";
}

export function angles(here: RingCase): Told {
  const { ring, closing, changes } = here;
  const n = ring.sides.length;
  const last = closing.corners.at(-1)!;
  const square = closing.sides.every((s) => s.startAngle === 0 && s.endAngle === 0);
  const is = square ? squareEnds(here) : undefined;
  const slots = {
    ...ends(ring),
    misfit: degrees(Math.abs(closing.misfitDegrees)),
    turns: degrees(closing.misfitDegrees + 360),
    heel: mm(last.heel),
    toe: mm(last.toe),
    spread: mm(last.spread),
  };
  const alike = changes.find((c) => c.cure.kind === "ends-alike");
  const angle = degrees(180 / n);
  return {
    says: is ?? (closing.misfitDegrees < 0 ? "short" : "far"),
    slots,
    numbers: [
      number("turn of all corners", slots.turns),
      number("opening outside", slots.heel),
      number("opening inside", slots.toe),
      number("opening at each corner when shared", slots.spread),
    ],
    related: partsOf(here).flatMap((part) =>
      [part.leftEnd, part.rightEnd].flatMap((end, i, both) => {
        const cut = ring.lies === "flat" ? end?.miter : end?.bevel;
        const again = i === 1 && both[0]?.at.start === end?.at.start;
        return end && cut && !again
          ? [{ says: "end-cut", slots: { part: part.name, angle: cut }, at: end.at }]
          : [];
      }),
    ),
    cures:
      is === "mitered" || is === "beveled"
        ? [{ says: is === "mitered" ? "bevel" : "miter", slots: { angle }, edits: [] }]
        : [{ says: alike ? "alike" : "alike-told", slots: { n, angle }, edits: editsOf(alike, here) }],
  };
}

/** More ways out than these only confuse. */
const MOST_CURES = 3;

export function sides(here: RingCase): Told {
  const opening = mm(here.closing.opening);
  return {
    says: "sides",
    slots: { ...ends(here.ring), opening },
    numbers: [number("opening", opening)],
    related: partsOf(here).flatMap((part) => {
      const length = ifKnown(part.length);
      return length ? [{ says: "long", slots: { part: part.name, length }, at: part.lengthAt }] : [];
    }),
    cures: here.changes.flatMap((c) => lengthCure(c, here)).slice(0, MOST_CURES),
  };
}

function lengthCure(change: RingChange, here: RingCase): Cure[] {
  const { cure, changes } = change;
  if (cure.kind !== "side-length") return [];
  const { ring, worked } = here;
  const [written] = changes;
  const length = ifKnown(worked.parts.get(ring.sides[cure.side]!)?.length);
  const [from, to] = written && length ? [length, written.value] : [mm(cure.from), mm(cure.to)];
  const [fromText, toText] = tellApart(from, to, worked.settings.display);
  const slots = { side: sideName(ring, cure.side), from: fromText, to: toText };
  return [{ says: written ? "length" : "length-outside", slots, edits: editsOf(change, here) }];
}

export function faces(here: RingCase): Told {
  const { ring, closing, changes } = here;
  const corner = closing.corners.reduce((a, b) => (b.lengthMismatch > a.lengthMismatch + 1e-9 ? b : a));
  const [i, j] = corner.between;
  const [first, second] = [closing.sides[i]!, closing.sides[j]!];
  const way = phrase(ring.lies === "flat" ? "wide" : "thick");
  const [w1, w2] = [mm(first.width), mm(second.width)];
  const change = changes.find((c) => c.cure.kind === "corner-angles");
  const match =
    change?.cure.kind === "corner-angles"
      ? change.cure.corners.find((c) => c.between[0] === i && c.between[1] === j)
      : undefined;
  const names = { a: sideName(ring, i), b: sideName(ring, j) };
  return {
    says: "faces",
    slots: {
      ...names,
      ring: ring.name,
      way,
      w1,
      w2,
      x: degrees(first.endAngle),
      y: degrees(second.startAngle),
      m1: mm(corner.miters[0]),
      m2: mm(corner.miters[1]),
      step: mm(corner.lengthMismatch),
    },
    numbers: [
      number(`cut face of ${names.a}`, mm(corner.miters[0])),
      number(`cut face of ${names.b}`, mm(corner.miters[1])),
      number("step inside", mm(corner.lengthMismatch)),
    ],
    related: partsOf(here).flatMap((part) => {
      const across = ifKnown(ring.lies === "flat" ? part.width : part.thickness);
      return across
        ? [{ says: "across", slots: { part: part.name, across, way }, at: part.declared.at }]
        : [];
    }),
    cures: match
      ? [
          {
            says: "match",
            slots: { ...names, x: degrees(match.endAngle), y: degrees(match.startAngle) },
            edits: editsOf(change, here),
          },
        ]
      : [],
  };
}

/** The last side and the first: where the ring is left open. */
const ends = (ring: Ring) => ({
  ring: ring.name,
  n: ring.sides.length,
  a: sideName(ring, ring.sides.length - 1),
  b: sideName(ring, 0),
});

const partsOf = ({ ring, worked }: RingCase): Part[] =>
  [...new Set(ring.sides)].flatMap((name) => worked.parts.get(name) ?? []);

function editsOf(change: RingChange | undefined, { worked }: RingCase): Edit[] {
  return (change?.changes ?? []).map(({ at, value }) =>
    edit(
      at,
      value.dim.length === 1
        ? writtenLength(value, worked.settings.display)
        : `${fraction.toDecimal(value.exact!, 3)}°`,
    ),
  );
}

const number = (name: string, value: Quantity): ProblemNumber => ({ name, value, source: "worked out" });
