/** How checks speak of loads, of boards that bear them, and of what would make these hold. */
import { cite } from "../trade";
import { type Display, LENGTH, type Quantity, roughly } from "../units";
import {
  type HeldPiece,
  type HeldWall,
  shownLoad as load,
  loadOn,
  type Member,
  type MemberCure,
  type Piece,
  SEAT,
  type Worked,
} from "../worked";
import type { Cure, ProblemNumber, Says } from "./check";
import { phrase } from "./phrases";

export { shownLoad as load } from "../worked";

export const length = (mm: number): Quantity => roughly(LENGTH, mm);

/** What is taken for granted, and what would do, wherever the bending of a board is told. */
export const MEMBER_TEMPLATES = { assumed: "{what}", cure: "{what}", caution: "{caution}" } as const;

export const caution = (): Says => ({ says: "caution", slots: { caution: phrase("structural caution") } });

const TAKEN_AS = {
  graded: "as graded lumber",
  "clear wood": "as clear wood",
  panel: "as a panel",
} as const;

/** What was taken for granted of a board that bears something. */
export function assumedOf(member: Member, held: HeldPiece | undefined, display: Display): Says[] {
  const wood =
    member.by === undefined ? member.of : phrase("wood by another", { wood: member.of, by: member.by });
  const usual = held?.loads.roaming.some((r) => r.from === "usual");
  return [
    phrase(TAKEN_AS[member.kind], { wood, source: cite(member.from) }),
    ...(member.wet ? [phrase("weak when wet")] : []),
    ...(usual ? [phrase("somebody on it", { weight: load(SEAT.force, display) })] : []),
  ]
    .map((what): Says => ({ says: "assumed", slots: { what } }))
    .concat(caution());
}

const MORE = {
  held: { 1: "hold it once more", 2: "hold it twice more" },
  wall: { 1: "one upright more", 2: "two uprights more" },
} as const;

/** Cures that were tried, the one with the least wood first. */
export function memberCures(cures: readonly MemberCure[], part: string, way: "held" | "wall"): Cure[] {
  const told = cures.map((cure) =>
    cure.kind === "held"
      ? phrase(MORE[way][cure.more], { span: length(cure.span) })
      : phrase(cure.shop ? "cut from a stronger board of the shop" : "cut from a stronger board", {
          part,
          section: cure.section,
        }),
  );
  const all = told.length > 0 ? told : [phrase("nothing that was tried")];
  return all.map((what) => ({ says: "cure", slots: { what }, edits: [] }));
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
