/** How layouts on boards do: how many are proven, how soon, with how much counted work. */
import { verifyLayout } from "../../../server/cutting/check";
import { improve } from "../../../server/cutting/improve";
import { type BoardAnswer, type BoardJob, layOut } from "../../../server/cutting/job";
import { type Progress, prove } from "../../../server/cutting/proof/prove";
import type { BinInstance } from "./bins";
import { boardPlan } from "./board-plans";
import type { Row } from "./table";

const EFFORT = 4_000_000_000;

interface Run {
  readonly name: string;
  readonly job: BoardJob;
  readonly end: Progress;
  readonly ms: number;
}

function proven(name: string, job: BoardJob): Run {
  const start = performance.now();
  const run = prove(job, EFFORT);
  let step = run.next();
  while (!step.done) step = run.next();
  const ms = performance.now() - start;
  const wrong = verifyLayout(job, step.value.answer);
  if (wrong.length > 0) throw new Error(`${name}: ${wrong.join("; ")}`);
  return { name, job, end: step.value, ms };
}

const detail = ({ name, end: { proof }, ms }: Run): string =>
  `${name}: ${proof.status}, cost ${proof.cost}, bound ${proof.bound}, work ${(proof.work / 1e6).toFixed(1)} M, ${ms.toFixed(0)} ms`;

const rowOf = (set: string, target: string, runs: readonly Run[]): Row => ({
  set,
  target,
  instances: runs.length,
  proven: runs.filter(({ end }) => end.proof.status === "proven").length,
  times: runs.map(({ ms }) => ms),
  work: runs.map(({ end }) => end.proof.work),
  details: runs.map(detail),
});

/** Each instance's count is compared with the best that is known. */
export function binRows(set: string, target: string, instances: readonly BinInstance[]): Row {
  const runs = instances.map(({ name, job }) => proven(name, job));
  const off = runs.filter(({ end }, i) => end.answer.cost !== instances[i]!.best);
  return { ...rowOf(set, target, runs), said: `${off.length} not at the best known count` };
}

/** First answers and their proofs; how far the first are from the cheapest. */
export function planRows(seed: number, count: number): Row[] {
  const names = Array.from({ length: count }, (_, i) => seed + i);
  // As elsewhere in the benches, after a warm-up.
  for (const n of names) layOut(boardPlan(n));
  const firsts = names.map((n) => {
    const job = boardPlan(n);
    const start = performance.now();
    return { answer: layOut(job), ms: performance.now() - start };
  });
  const runs = names.map((n) => proven(`plan ${n}`, boardPlan(n)));
  const gaps = runs.map(({ end }, i) =>
    end.proof.cost === 0 ? 0 : (100 * (firsts[i]!.answer.cost! - end.proof.cost)) / end.proof.cost,
  );
  const at = (share: number) => gaps.toSorted((a, b) => a - b)[Math.floor(gaps.length * share)]!.toFixed(2);
  return [
    rowOf(`plans from seed ${seed}`, "all; median 50 ms, p95 500 ms, max 10 s", runs),
    {
      set: "  their first answers",
      target: "p99 10 ms; gap under 3% at p95",
      instances: count,
      proven: gaps.filter((gap) => gap === 0).length,
      times: firsts.map(({ ms }) => ms),
      work: [],
      details: [],
      said: `p99 ${p99(firsts.map(({ ms }) => ms)).toFixed(1)} ms; gap median ${at(0.5)}%, p95 ${at(0.95)}%, max ${at(1 - 1 / count)}%`,
    },
  ];
}

/** One part more at the end of each plan: boards that stay byte for byte, where no fewer of any length are bought. */
export function addedRow(seed: number, count: number): Row {
  const times: number[] = [];
  let [same, all, plans] = [0, 0, 0];
  for (let n = seed; n < seed + count; n++) {
    const job = boardPlan(n);
    const last = job.pieces.at(-1)!.length;
    const end = job.pieces.findLastIndex(({ length }) => length !== last) + 1;
    const before = laid({ ...job, pieces: job.pieces.slice(0, end) });
    const start = performance.now();
    const after = laid(job);
    times.push(performance.now() - start);
    const bought = new Map(after.buy.map((row) => [row.id, row.count]));
    if (before.buy.some((row) => row.count > (bought.get(row.id) ?? 0))) continue;
    const later = after.boards.map((board) => JSON.stringify(board));
    same += before.boards.filter((board) => later.includes(JSON.stringify(board))).length;
    all += before.boards.length;
    plans++;
  }
  return {
    set: "  a part added at their ends, settled again",
    target: "boards it does not need stay",
    instances: count,
    proven: null,
    times,
    work: [],
    details: [],
    said: `${same} of ${all} boards as before, in the ${plans} plans that buy no fewer of any length`,
  };
}

const p99 = (list: readonly number[]): number =>
  list.toSorted((a, b) => a - b)[Math.floor(list.length * 0.99)]!;

function laid(job: BoardJob): BoardAnswer {
  const run = improve({ kind: "boards", job });
  for (;;) {
    const { value, done } = run.next();
    if (done) return value.answer as BoardAnswer;
  }
}
