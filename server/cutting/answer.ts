/** From bins of groups to boards of named pieces, in canonical order. */

import type { BoardAnswer, BoardForSale, BoardJob, BoardLayout, BoardOnHand, Cut, Waste } from "./job";
import type { Bin } from "./pack";
import { badStretches, byText, type Question, type Span } from "./question";

/** A bought board, or a stretch of one on hand, and the pieces cut from it as places in `job.pieces`. */
export interface Held {
  readonly bought: boolean;
  /** The place in `kinds` of a bought board, or in `spans` of a stretch on hand. */
  readonly wood: number;
  /** Longest first, equal ones in the job's order: as they are cut. */
  readonly pieces: readonly number[];
}

/** The answer whose pieces of one length are dealt out in their order, so that who lies where depends on it alone. */
export function answerOf(job: BoardJob, question: Question, bins: readonly Bin[]): BoardAnswer {
  return answerFrom(job, question, dealt(question, bins));
}

/** Pieces for the bins' groups: boards on hand come first, in the job's order, then bought ones in canonical order. */
export function dealt(question: Question, bins: readonly Bin[]): readonly Held[] {
  const next = question.members.map(() => 0);
  const onHand = bins.filter(({ bought }) => !bought).sort((a, b) => a.wood - b.wood);
  const bought = bins.filter((bin) => bin.bought).sort(canonically(question));
  return [...onHand, ...bought].map(({ bought, wood, runs }) => {
    const pieces: number[] = [];
    for (let r = 0; r < runs.length; r += 2)
      for (let n = runs[r + 1]!; n > 0; n--) pieces.push(question.members[runs[r]!]![next[runs[r]!]!++]!);
    return { bought, wood, pieces };
  });
}

/**
 * Boards on hand in the job's order, then bought ones: fullest first, then longest pieces first, then longer boards,
 * then by id, then by their pieces.
 */
export function answerFrom(job: BoardJob, question: Question, held: readonly Held[]): BoardAnswer {
  const placed = new Set(held.flatMap(({ pieces }) => pieces));
  const cutsOf = (pieces: readonly number[], from: number): Cut[] => {
    let at = from;
    return pieces.map((piece) => {
      const { id, length } = job.pieces[piece]!;
      const cut = { pieceId: id, from: at, to: at + length };
      at += length + job.kerf;
      return cut;
    });
  };
  const boards: BoardLayout[] = [];
  for (const spans of byBoard(question, held)) {
    if (spans.every(({ pieces }) => pieces.length === 0)) continue;
    const { board } = spans[0]!.span;
    const cuts = spans.map(({ span, pieces }) => cutsOf(pieces, span.from));
    const rests = spans.flatMap(({ span }, i) => restOf(cuts[i]!, span.from, span.to, job.kerf));
    boards.push(layoutOf("on hand", board, board.bad, cuts.flat(), withBad(board, rests, cuts.flat())));
  }
  const bought = held.filter((one) => one.bought).sort(inOrder(job, question));
  const count = new Map<number, number>();
  for (const { wood, pieces } of bought) {
    const { board } = question.kinds[wood]!;
    const cuts = cutsOf(pieces, job.endTrim);
    const trim: Waste[] = job.endTrim > 0 ? [{ from: 0, to: job.endTrim, why: "trim" }] : [];
    const rest = restOf(cuts, job.endTrim, board.length, job.kerf);
    boards.push(layoutOf("bought", board, [], cuts, [...trim, ...rest]));
    count.set(wood, (count.get(wood) ?? 0) + 1);
  }
  const buy = [...count]
    .map(([wood, n]) => ({ board: question.kinds[wood]!.board, n }))
    .sort((a, b) => a.board.length - b.board.length || byText(a.board.id, b.board.id))
    .map(({ board: { id, price }, n }) => ({ id, count: n, price: price === null ? null : n * price }));
  return {
    boards,
    unplaced: job.pieces.filter((_, i) => !placed.has(i)).map(({ id }) => id),
    buy,
    cost: buy.reduce<number | null>(
      (sum, { price }) => (sum === null || price === null ? null : sum + price),
      0,
    ),
    length: bought.reduce((sum, { wood }) => sum + question.kinds[wood]!.board.length, 0),
  };
}

function layoutOf(
  kind: BoardLayout["kind"],
  { id, length }: { readonly id: string; readonly length: number },
  bad: BoardLayout["bad"],
  cuts: readonly Cut[],
  waste: readonly Waste[],
): BoardLayout {
  let offcut = 0;
  for (const { why, from, to } of waste) if (why === "offcut") offcut = Math.max(offcut, to - from);
  return { boardId: id, kind, length, bad, cuts, waste, offcut };
}

/** Kerfs between the cuts of a stretch and, unless the last ends where it does, a kerf and what remains. */
function restOf(cuts: readonly Cut[], from: number, to: number, kerf: number): readonly Waste[] {
  if (cuts.length === 0) return to > from ? [{ from, to, why: "offcut" }] : [];
  return cuts.flatMap((cut, i): Waste[] => {
    const end = cuts[i + 1]?.from ?? to;
    const sawn = Math.min(end, cut.to + kerf);
    return [
      ...(sawn > cut.to ? [{ from: cut.to, to: sawn, why: "kerf" } as const] : []),
      ...(end > sawn ? [{ from: sawn, to: end, why: "offcut" } as const] : []),
    ];
  });
}

/** With the bad stretches, and the kerf beside each that is thinner than the saw: a crack alone is all kerf. */
function withBad(board: BoardOnHand, rests: readonly Waste[], cuts: readonly Cut[]): readonly Waste[] {
  const bad = badStretches(board) ?? [];
  const known: (Waste | Cut)[] = [
    ...bad.map(({ from, to }): Waste => ({ from, to, why: "bad" })),
    ...rests,
    ...cuts,
  ];
  known.sort((a, b) => a.from - b.from);
  const waste: Waste[] = [];
  let at = 0;
  for (const stretch of [...known, { from: board.length, to: board.length }]) {
    if (stretch.from > at) waste.push({ from: at, to: stretch.from, why: "kerf" });
    if ("why" in stretch && stretch.to > stretch.from) waste.push(stretch);
    at = stretch.to;
  }
  return waste;
}

/** Boards on hand in the job's order, each with all its stretches and what is cut from them. */
function byBoard(question: Question, held: readonly Held[]) {
  const cut = new Map(held.flatMap(({ bought, wood, pieces }) => (bought ? [] : [[wood, pieces] as const])));
  const boards = new Map<BoardOnHand, { readonly span: Span; readonly pieces: readonly number[] }[]>();
  question.spans.forEach((span, wood) => {
    const spans = boards.get(span.board) ?? [];
    boards.set(span.board, [...spans, { span, pieces: cut.get(wood) ?? [] }]);
  });
  return boards.values();
}

function canonically({ kinds }: Question): (a: Bin, b: Bin) => number {
  const used = ({ wood, room }: Bin) => kinds[wood]!.room - room;
  return (a, b) => {
    if (used(a) !== used(b)) return used(b) - used(a);
    for (let i = 0; i < Math.min(a.runs.length, b.runs.length); i += 2) {
      if (a.runs[i] !== b.runs[i]) return a.runs[i]! - b.runs[i]!;
      if (a.runs[i + 1] !== b.runs[i + 1]) return b.runs[i + 1]! - a.runs[i + 1]!;
    }
    return byBoardSold(kinds[a.wood]!.board, kinds[b.wood]!.board);
  };
}

const byBoardSold = (a: BoardForSale, b: BoardForSale): number => b.length - a.length || byText(a.id, b.id);

/** The same order for pieces that are dealt out already. */
function inOrder({ pieces, kerf }: BoardJob, { kinds }: Question): (a: Held, b: Held) => number {
  const used = (held: Held) => held.pieces.reduce((sum, p) => sum + pieces[p]!.length + kerf, 0);
  return (a, b) => {
    if (used(a) !== used(b)) return used(b) - used(a);
    for (let i = 0; i < Math.min(a.pieces.length, b.pieces.length); i++) {
      const longer = pieces[b.pieces[i]!]!.length - pieces[a.pieces[i]!]!.length;
      if (longer !== 0) return longer;
    }
    return byBoardSold(kinds[a.wood]!.board, kinds[b.wood]!.board) || a.pieces[0]! - b.pieces[0]!;
  };
}
