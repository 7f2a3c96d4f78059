/** How checks speak of loads, of boards that bear them, and of what would make these hold. */
import { cite } from "../trade";
import { type Display, LENGTH, type Quantity, roughly, WEIGHT } from "../units";
import {
  type HeldPiece,
  type HeldWall,
  loadOn,
  type Member,
  type MemberCure,
  type Piece,
  SEAT,
  type Worked,
} from "../worked";
import type { Cure, ProblemNumber, Says } from "./check";
import { phrase } from "./phrases";

/** Newtons as a weight, to three figures of the unit it is shown in: nothing here is known any better. */
export function load(newtons: number, { system }: Display): Quantity {
  const kg = newtons / 9.80665;
  const unit = system === "inches" ? 0.45359237 : 1;
  const shown = kg / unit;
  const rounded =
    Math.abs(shown) >= 100 ? Number(shown.toPrecision(3)) : Math.abs(shown) >= 10 ? Math.round(shown) : shown;
  return roughly(WEIGHT, rounded * unit);
}

export const length = (mm: number): Quantity => roughly(LENGTH, mm);

/** What is taken for granted wherever the bending of a board is told. */
export const MEMBER_TEMPLATES = {
  graded: "{wood}, as lumber of grade No. 2, with no stamp looked for ({source}).",
  "clear wood":
    "{wood} as a thin board, brought down from the strength of clear wood, since no table has one ({source}).",
  panel: "A {wood} panel, by its capacity in bending ({source}).",
  wet: "It gets wet in use, which makes wood weaker.",
  usual: "Somebody sits or stands on it: {weight} at the worst place, since no load line says otherwise.",
  "held-1":
    "Hold it up in one more place, in the middle of its longest span: {span} are then left, and the same board will do.",
  "held-2":
    "Hold it up in two more places on its longest span: {span} are then left, and the same board will do.",
  "wall-1":
    "Fasten an upright on it in the middle of its longest span, and tie that to the other side: {span} are then left, and the same board will do.",
  "wall-2":
    "Fasten two uprights on it on its longest span, and tie them to the other side: {span} are then left, and the same board will do.",
  board: "Cut {part} from {section} instead.",
  "board-shop": "Cut {part} from {section} instead: the shop has it.",
  "no-cure": "Neither two more holders nor a board up to 2.4 times as thick would do: carry it another way.",
  caution: "{caution}",
} as const;

export const caution = (): Says => ({ says: "caution", slots: { caution: phrase("structural caution") } });

/** What was taken for granted of a board that bears something. */
export function assumedOf(member: Member, held: HeldPiece | undefined, display: Display): Says[] {
  const wood =
    member.by === undefined ? member.of : phrase("wood by another", { wood: member.of, by: member.by });
  const usual = held?.loads.roaming.some((r) => r.from === "usual");
  return [
    { says: member.kind, slots: { wood, source: cite(member.from) } },
    ...(member.wet ? [{ says: "wet", slots: {} }] : []),
    ...(usual ? [{ says: "usual", slots: { weight: load(SEAT.force, display) } }] : []),
    caution(),
  ];
}

/** Cures that were tried, the one with the least wood first. */
export function memberCures(cures: readonly MemberCure[], part: string, way: "held" | "wall"): Cure[] {
  if (cures.length === 0) return [{ says: "no-cure", slots: {}, edits: [] }];
  return cures.map((cure): Cure => {
    if (cure.kind === "held")
      return { says: `${way}-${cure.more}`, slots: { span: length(cure.span) }, edits: [] };
    return { says: cure.shop ? "board-shop" : "board", slots: { part, section: cure.section }, edits: [] };
  });
}

/** The strength of a board, for the record: what is asked of it, and what it bears. */
export const memberNumbers = (
  asked: number,
  bears: number,
  member: Member,
  display: Display,
): ProblemNumber[] => [
  { name: "load", value: load(asked, display), source: "worked out" },
  { name: "load it can bear so", value: load(bears, display), source: cite(member.from) },
];

/** One of each part, the worst, with how many more of it there are. */
export function worstOfEach<T extends HeldPiece | HeldWall>(
  all: readonly T[],
  uses: (one: T) => number,
  pieceOf: (one: T) => Piece,
): { readonly worst: T; readonly piece: Piece; readonly more: number }[] {
  const groups = new Map<string, T[]>();
  for (const one of all) {
    if (!(uses(one) > 1)) continue;
    const { part } = pieceOf(one);
    groups.set(part, [...(groups.get(part) ?? []), one]);
  }
  return [...groups.values()].map((group) => {
    const worst = group.reduce((most, one) => (uses(one) > uses(most) * (1 + 1e-9) ? one : most));
    return { worst, piece: pieceOf(worst), more: group.length - 1 };
  });
}

/** Newtons that bend a board: all that stands on it, or what stays alone where that uses more of it. */
export const askedOf = (held: HeldPiece): number =>
  held.judged?.strain.lasting ? loadOn(held) - held.carried.moving : loadOn(held);

export const aboutPiece = ({ part, owners }: Piece): string[] => [part, ...owners.map((o) => o.name)];

export const pieceIn = ({ space }: Worked, piece: number): Piece => space.pieces[piece]!;
