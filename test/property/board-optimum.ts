/** The best there is of a small board job, by trying everything. */
import type { BoardJob, BoardOnHand } from "../../server/cutting/job";

/** Fewest pieces left over, then least cents: every way to share few pieces out, all rules taken from the job anew. */
export function leastCost(job: BoardJob): readonly [unplaced: number, cost: number] {
  const { pieces, sold, kerf, endTrim } = job;
  const together = (set: number) => {
    let sum = -kerf;
    pieces.forEach(({ length }, i) => {
      if (set & (1 << i)) sum += length + kerf;
    });
    return sum;
  };
  const all = (1 << pieces.length) - 1;
  const cheapest: number[] = [0];
  for (let set = 1; set <= all; set++) {
    cheapest[set] = Number.POSITIVE_INFINITY;
    for (let part = set; part > 0; part = (part - 1) & set) {
      const prices = sold
        .filter(({ length }) => length - endTrim >= together(part))
        .map(({ price }) => price!);
      cheapest[set] = Math.min(cheapest[set]!, Math.min(...prices) + cheapest[set ^ part]!);
    }
  }
  const rooms = job.onHand.flatMap((board) => stretches(board, kerf));
  const mayGoOnHand = (i: number) =>
    job.salvage === "use up" || sold.every(({ length }) => length - endTrim < pieces[i]!.length);
  let best: readonly [number, number] = [Number.POSITIVE_INFINITY, 0];
  const share = (i: number, onHand: readonly number[], buy: number, left: number): void => {
    if (i === pieces.length) {
      const cost = cheapest[buy]!;
      if (cost < Number.POSITIVE_INFINITY && (left < best[0] || (left === best[0] && cost < best[1])))
        best = [left, cost];
      return;
    }
    share(i + 1, onHand, buy | (1 << i), left);
    if (sold.every(({ length }) => length - endTrim < pieces[i]!.length)) share(i + 1, onHand, buy, left + 1);
    if (!mayGoOnHand(i)) return;
    rooms.forEach((room, r) => {
      const set = onHand[r]! | (1 << i);
      if (together(set) <= room) share(i + 1, onHand.with(r, set), buy, left);
    });
  };
  share(
    0,
    rooms.map(() => 0),
    0,
    0,
  );
  return best;
}

/** Lengths of good wood on a board on hand, tick by tick: bad ticks, and the saw's beside a stretch thinner than it. */
function stretches({ length, bad }: BoardOnHand, kerf: number): readonly number[] {
  const lost = Array.from({ length }, () => false);
  const cutAt = new Set<number>();
  for (const { from, to } of bad) {
    for (let tick = Math.max(0, from); tick < Math.min(length, to); tick++) lost[tick] = true;
    if (from > 0 && from < length) cutAt.add(from);
  }
  for (const from of cutAt) {
    if (from > 0 && lost[from - 1]) continue;
    for (let tick = from; tick < Math.min(length, from + kerf); tick++) lost[tick] = true;
  }
  const runs: number[] = [];
  let run = 0;
  lost.forEach((gone, tick) => {
    const edge = cutAt.has(tick) && !gone;
    if (edge || gone) {
      if (run > 0) runs.push(run);
      run = 0;
    }
    if (!gone) run++;
  });
  if (run > 0) runs.push(run);
  return runs;
}
