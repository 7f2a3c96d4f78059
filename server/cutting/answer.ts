/** From bins of groups to boards of named pieces, in canonical order. */

import type { BoardAnswer, BoardJob, BoardLayout, BoardOnHand, Cut, Waste } from "./job";
import type { Bin } from "./pack";
import { badStretches, byText, type Question, type Span } from "./question";

/**
 * Boards on hand in the job's order, then bought ones: fullest first, then longest pieces first, then longer boards,
 * then by id. Pieces of one length are dealt out in that order, so the place of a piece depends on its order alone.
 */
export function answerOf(job: BoardJob, question: Question, bins: readonly Bin[]): BoardAnswer {
  const dealt = question.members.map(() => 0);
  const placed = new Set<number>();
  const cutRuns = (runs: readonly number[], from: number, cuts: Cut[]) => {
    let at = from;
    for (let r = 0; r < runs.length; r += 2) {
      const g = runs[r]!;
      const length = question.sizes[g]! - question.kerf;
      for (let n = runs[r + 1]!; n > 0; n--) {
        const piece = question.members[g]![dealt[g]!++]!;
        placed.add(piece);
        cuts.push({ pieceId: job.pieces[piece]!.id, from: at, to: at + length });
        at += question.sizes[g]!;
      }
    }
  };
  const boards: BoardLayout[] = [];
  for (const spans of byBoard(question, bins)) {
    if (spans.every(({ runs }) => runs.length === 0)) continue;
    const { board } = spans[0]!.span;
    const cuts: Cut[] = [];
    const rests = spans.flatMap(({ span, runs }) => {
      const first = cuts.length;
      cutRuns(runs, span.from, cuts);
      return restOf(cuts.slice(first), span.from, span.to, job.kerf);
    });
    boards.push(layoutOf("on hand", board, board.bad, cuts, withBad(board, rests, cuts)));
  }
  const bought = bins.filter((bin) => bin.bought).sort(canonically(question));
  const count = new Map<number, number>();
  for (const { wood, runs } of bought) {
    const { board } = question.kinds[wood]!;
    const cuts: Cut[] = [];
    cutRuns(runs, job.endTrim, cuts);
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

/** Stretches on hand with what is cut from each, board by board in the job's order. */
function byBoard(question: Question, bins: readonly Bin[]) {
  const boards = new Map<BoardOnHand, { readonly span: Span; readonly runs: readonly number[] }[]>();
  for (const { bought, wood, runs } of bins) {
    if (bought) continue;
    const span = question.spans[wood]!;
    const spans = boards.get(span.board);
    if (spans) spans.push({ span, runs });
    else boards.set(span.board, [{ span, runs }]);
  }
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
    const [boardA, boardB] = [kinds[a.wood]!.board, kinds[b.wood]!.board];
    return boardB.length - boardA.length || byText(boardA.id, boardB.id);
  };
}
