/** Where the heads of a joint's screws are marked on the bench: measured on the piece that is screwed through, from its ends and edges. */
import type { BoardSide } from "../solid/convex";
import { seenFrom } from "../solid/pose";
import { dot, type Vec3 } from "../solid/vector";
import type { Joint } from "./joints";
import type { Piece } from "./pieces";
import type { PlacedScrew } from "./screw-way";
import type { Space } from "./space";

/** A side of a piece as it stands in the finished thing. */
export type StandingSide = "left" | "right" | "front" | "back" | "bottom" | "top";

/** Distances in one direction, and what they are measured from. */
export interface MarkedFrom {
  readonly from: "end" | "edge" | "face";
  /** The side to hook the tape on; `each`: the same from both; `either`: it does not matter from which. */
  readonly which: StandingSide | "each" | "either";
  /** The end is slanted, and the tape is hooked on its long point. */
  readonly point: boolean;
  /** mm, rising. */
  readonly mm: readonly number[];
}

/** Screws in rows and columns on one side of the piece. */
export interface MarkGrid {
  readonly on: "face" | "edge" | "end";
  readonly along: MarkedFrom;
  readonly across: MarkedFrom;
}

/** Pieces that are marked alike. */
export interface SetOut {
  readonly part: string;
  /** Places among all pieces. */
  readonly pieces: readonly number[];
  /** On each of them. */
  readonly screws: number;
  readonly grids: readonly MarkGrid[];
}

/** The marks of a placed joint's screws, pieces that are marked alike together; none without screws. */
export function setOutOf({ placed }: Joint, { pieces }: Space): SetOut[] {
  const byPiece = new Map<number, PlacedScrew[]>();
  for (const screw of placed?.screws ?? []) {
    const list = byPiece.get(screw.crossing.first);
    if (list) list.push(screw);
    else byPiece.set(screw.crossing.first, [screw]);
  }
  const alike: SetOut[] = [];
  for (const [place, screws] of byPiece) {
    const piece = pieces[place]!;
    const grids = gridsOf(piece, place, screws);
    const same = alike.findIndex((other) => other.part === piece.part && areAlike(other.grids, grids));
    const before = alike[same];
    if (before) alike[same] = { ...before, pieces: [...before.pieces, place] };
    else alike.push({ part: piece.part, pieces: [place], screws: screws.length, grids });
  }
  return alike;
}

const areAlike = (a: readonly MarkGrid[], b: readonly MarkGrid[]): boolean =>
  a.length === b.length &&
  a.every(({ on, along, across }, i) => {
    const other = b[i]!;
    return on === other.on && isAlike(along, other.along) && isAlike(across, other.across);
  });

const isAlike = (a: MarkedFrom, b: MarkedFrom): boolean =>
  a.which === b.which && a.point === b.point && areNear(a.mm, b.mm);

/** mm: marks nearer than this are one. */
const SAME = 0.1;

const SIDES: Readonly<Record<BoardSide, { on: MarkGrid["on"]; along: 0 | 1; across: 1 | 2 }>> = {
  "under face": { on: "face", along: 0, across: 1 },
  "upper face": { on: "face", along: 0, across: 1 },
  "near edge": { on: "edge", along: 0, across: 2 },
  "far edge": { on: "edge", along: 0, across: 2 },
  "left end": { on: "end", along: 1, across: 2 },
  "right end": { on: "end", along: 1, across: 2 },
};
const FROM = ["end", "edge", "face"] as const;

function gridsOf(piece: Piece, place: number, screws: readonly PlacedScrew[]): MarkGrid[] {
  const bySide = new Map<BoardSide, Vec3[]>();
  for (const { start, passes } of screws) {
    const side = passes.find((p) => p.piece === place)?.sides[0] ?? "upper face";
    bySide.set(side, [...(bySide.get(side) ?? []), seenFrom(piece.pose, start)]);
  }
  return [...bySide].flatMap(([side, heads]) => {
    const { on, along, across } = SIDES[side];
    const measured = (k: 0 | 1 | 2, at: readonly number[]) => measuredFrom(piece, k, at, k === along);
    return rowsOf(heads, along, across).map(
      ({ alongs, acrosses }): MarkGrid => ({
        on,
        along: measured(along, alongs),
        across: measured(across, acrosses),
      }),
    );
  });
}

/** Places along the piece that have the same places across it. */
function rowsOf(heads: readonly Vec3[], along: 0 | 1, across: 1 | 2) {
  const columns = merged(heads.map((h) => h[along])).map((at) => ({
    at,
    acrosses: merged(heads.filter((h) => Math.abs(h[along] - at) < SAME).map((h) => h[across])),
  }));
  const rows: { alongs: number[]; acrosses: readonly number[] }[] = [];
  for (const { at, acrosses } of columns) {
    const row = rows.find((r) => areNear(r.acrosses, acrosses));
    if (row) row.alongs.push(at);
    else rows.push({ alongs: [at], acrosses });
  }
  return rows;
}

const areNear = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((x, i) => Math.abs(x - b[i]!) < SAME);

const merged = (list: readonly number[]): number[] =>
  [...list].sort((a, b) => a - b).filter((x, i, all) => i === 0 || x - all[i - 1]! > SAME);

/** `each` of two ends where that says it in half the marks; else from the side on which the first mark is nearer, and from a square end before a slanted one. */
function measuredFrom(piece: Piece, k: 0 | 1 | 2, at: readonly number[], isAlong: boolean): MarkedFrom {
  const all = piece.cells.flatMap((c) => c.vertices.map((v) => seenFrom(piece.pose, v)[k]));
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const near = at.map((x) => x - low);
  const far = [...at].reverse().map((x) => high - x);
  const from = FROM[k];
  const slanted = ENDS.map((end) => k === 0 && isSlanted(piece, end)) as [boolean, boolean];
  const [point] = slanted;
  if (point === slanted[1] && near.every((x, i) => Math.abs(x - far[i]!) < SAME)) {
    if (!isAlong || at.length === 1) return { from, which: "either", point, mm: near };
    if (at.length <= MOST_HALVED)
      return { from, which: "each", point, mm: near.filter((x) => x < (high - low) / 2 + SAME) };
  }
  const fromLow = point === slanted[1] ? near[0]! <= far[0]! + SAME : !point;
  const which = standing(piece, k, fromLow ? -1 : 1);
  return { from, which, point: point && slanted[1], mm: fromLow ? near : far };
}

/** Marks in one direction up to which halves are told from each end. */
const MOST_HALVED = 4;
const ENDS = ["left end", "right end"] as const;

const isSlanted = ({ cells, pose }: Piece, end: BoardSide): boolean =>
  cells.some(({ facets }) =>
    facets.some((f) => f.side === end && !f.inner && Math.abs(dot(f.normal, pose.length)) < SQUARE),
  );
const SQUARE = 1 - 1e-6;

/** Which way a side of the piece looks in the finished thing, to the nearest of the six. */
function standing({ pose }: Piece, k: 0 | 1 | 2, sign: 1 | -1): StandingSide {
  const axis = [pose.length, pose.width, pose.thickness][k]!;
  const larger = (best: 0 | 1 | 2, n: 0 | 1 | 2) =>
    Math.abs(axis[n]) > Math.abs(axis[best]) + 1e-6 ? n : best;
  const way = ([1, 2] as const).reduce<0 | 1 | 2>(larger, 0);
  return NAMES[way][axis[way] * sign > 0 ? 1 : 0];
}

const NAMES = [
  ["left", "right"],
  ["front", "back"],
  ["bottom", "top"],
] as const;
