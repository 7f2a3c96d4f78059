/**
 * An independent check of a board answer: it shares no code with what lays the pieces out, knows nothing of how they
 * were placed, and measures every board with whole numbers only. It judges that an answer can be cut and adds up, not
 * that it is cheap.
 */
import type { BoardAnswer, BoardJob, BoardLayout } from "./job";
import { MOST } from "./job";

/** What is wrong with the answer, one line each; empty when nothing is. */
export function verifyLayout(job: BoardJob, answer: BoardAnswer): string[] {
  return [
    ...wrongPieces(job, answer),
    ...answer.boards.flatMap((b) => wrongBoard(job, b)),
    ...wrongSums(job, answer),
  ];
}

function wrongPieces(job: BoardJob, { boards, unplaced }: BoardAnswer): string[] {
  const wrong: string[] = [];
  const due = new Map<string, number[]>();
  for (const { id, length } of job.pieces) due.set(id, [...(due.get(id) ?? []), length]);
  const settle = (id: string, fits: (length: number) => boolean) => {
    const lengths = due.get(id) ?? [];
    const at = lengths.findIndex(fits);
    if (at < 0) wrong.push(`piece ${id} is not in the job like this, or once too often`);
    else lengths.splice(at, 1);
  };
  for (const { cuts } of boards)
    for (const { pieceId, from, to } of cuts) settle(pieceId, (length) => length > 0 && length === to - from);
  const sound = [job.kerf, job.endTrim].every((n) => Number.isInteger(n) && n >= 0 && n <= MOST);
  const longest = sound ? Math.max(0, ...sold(job).map(({ length }) => length - job.endTrim)) : 0;
  for (const id of unplaced)
    settle(id, (length) => !(Number.isInteger(length) && length > 0 && length <= longest));
  for (const [id, lengths] of due) if (lengths.length > 0) wrong.push(`piece ${id} is missing`);
  return wrong;
}

function wrongBoard(job: BoardJob, board: BoardLayout): string[] {
  const { boardId, kind, length, bad, cuts, waste } = board;
  const wrong: string[] = [];
  const must = (holds: boolean, what: string) => {
    if (!holds) wrong.push(`board ${boardId}: ${what}`);
  };
  const known = (kind === "bought" ? sold(job) : job.onHand).find(({ id }) => id === boardId);
  const knownBad = known && "bad" in known ? known.bad : [];
  must(
    known?.length === length && JSON.stringify(knownBad) === JSON.stringify(bad),
    "is not one of the job's",
  );
  must(cuts.length > 0, "nothing is cut from it");
  const start = kind === "bought" ? job.endTrim : 0;
  const trims = waste.filter(({ why }) => why === "trim");
  must(
    JSON.stringify(trims) === JSON.stringify(start > 0 ? [{ from: 0, to: start, why: "trim" }] : []),
    "trim",
  );
  cuts.forEach(({ from, to }, i) => {
    must(from >= start && to <= length, "a piece lies in the trim or off the board");
    must(i === 0 || from >= cuts[i - 1]!.to + job.kerf, "no kerf between pieces, or pieces out of order");
    must(
      knownBad.every((b) => to <= b.from || from >= b.to),
      "a piece lies in a bad stretch",
    );
  });
  let at = 0;
  for (const stretch of [...cuts, ...waste].sort((a, b) => a.from - b.from)) {
    must(stretch.from === at && stretch.to > at, "its stretches leave a gap or overlap");
    at = stretch.to;
  }
  must(at === length, "its stretches do not end where it does");
  must(
    waste.every(({ from }, i) => i === 0 || from > waste[i - 1]!.from),
    "waste out of order",
  );
  for (const { from, to, why } of waste) {
    const sawn = [...cuts.map((cut) => [cut.to, cut.to]), ...merged(knownBad, length)].filter(
      ([a]) => a! > 0,
    );
    if (why === "bad")
      must(
        merged(knownBad, length).some(([a, b]) => a === from && b === to),
        "good wood called bad",
      );
    else
      must(
        knownBad.every((b) => b.to <= from || b.from >= to),
        "bad wood called something else",
      );
    if (why === "kerf")
      must(
        sawn.some(([a, b]) => from === b && to <= a! + job.kerf),
        "a kerf where no saw runs",
      );
    if (why === "offcut")
      must(
        sawn.every(([a]) => from >= a! + job.kerf || to <= a!),
        "an offcut where the saw runs",
      );
  }
  const rests = waste.filter(({ why }) => why === "offcut").map(({ from, to }) => to - from);
  must(board.offcut === Math.max(0, ...rests), "its offcut is not the longest rest");
  return wrong;
}

function wrongSums(job: BoardJob, { boards, buy, cost, length }: BoardAnswer): string[] {
  const wrong: string[] = [];
  const bought = boards.filter(({ kind }) => kind === "bought").map(({ boardId }) => boardId);
  const used = boards.filter(({ kind }) => kind === "on hand").map(({ boardId }) => boardId);
  if (new Set(used).size < used.length) wrong.push("a board on hand is used twice");
  let [cents, ticks, count]: [number | null, number, number] = [0, 0, 0];
  for (const row of buy) {
    const board = sold(job).find(({ id }) => id === row.id);
    const price = board?.price == null ? null : board.price * row.count;
    if (row.count < 1 || bought.filter((id) => id === row.id).length !== row.count || price !== row.price)
      wrong.push(`bought ${row.id}: the count or the price is wrong`);
    cents = cents === null || price === null ? null : cents + price;
    ticks += (board?.length ?? 0) * row.count;
    count += row.count;
  }
  if (cents !== cost || ticks !== length || count !== bought.length) wrong.push("the totals do not add up");
  return wrong;
}

/** Boards that can be bought: sound numbers, the first of each id. */
function sold({ sold }: BoardJob): BoardJob["sold"] {
  const amount = (n: number) => Number.isInteger(n) && n >= 0 && n <= MOST;
  return sold.filter(
    ({ id, length, price }, i) =>
      amount(length) && (price === null || amount(price)) && sold.findIndex((other) => other.id === id) === i,
  );
}

/** Bad stretches on the board, those that touch made one. */
function merged(bad: BoardLayout["bad"], length: number): [from: number, to: number][] {
  const joined: [number, number][] = [];
  for (const { from, to } of [...bad].sort((a, b) => a.from - b.from)) {
    const last = joined.at(-1);
    if (to < 0 || from > length) continue;
    if (last && from <= last[1]) last[1] = Math.max(last[1], Math.min(to, length));
    else joined.push([Math.max(0, from), Math.min(to, length)]);
  }
  return joined;
}
