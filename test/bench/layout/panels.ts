/**
 * How layouts on sheets do: values of single sheets and bins of the published sets in `../shared/bench/guillotine`, and
 * seeded plywood plans. Each function gives rows for a table; times are milliseconds, `work` is counted work.
 */
import { existsSync, readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { bestPattern } from "../../../server/cutting/panels/pattern";
import { proveSheets, type SheetProof } from "../../../server/cutting/panels/prove";
import type { SheetJob } from "../../../server/cutting/sheets";
import { verifySheets } from "../../../server/cutting/sheets-check";
import { panelPlan } from "./panel-plans";
import type { Row } from "./table";

export interface GuillotineSet {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  readonly items: readonly { readonly length: number; readonly width: number; readonly value: number }[];
}

/** Beside the project, which is where benches and tests are run. */
const FOLDER = new URL("../shared/bench/guillotine/", pathToFileURL(`${process.cwd()}/`));

/** gcut1 to gcut12 (J. E. Beasley 1985), or none where the folder is absent. */
export function guillotineSets(folder: URL = FOLDER): readonly GuillotineSet[] {
  return Array.from({ length: 12 }, (_, i) => `gcut${i + 1}`).flatMap((name) => {
    const file = new URL(`${name}.txt`, folder);
    if (!existsSync(file)) return [];
    const [count = 0, length = 0, width = 0, ...rest] = readFileSync(file, "utf8")
      .split(/\s+/)
      .filter(Boolean)
      .map(Number);
    const items = Array.from({ length: count }, (_, k) => ({
      length: rest[3 * k]!,
      width: rest[3 * k + 1]!,
      value: rest[3 * k + 2]!,
    }));
    return [{ name, length, width, items }];
  });
}

/** The most value of one sheet by edge-to-edge cuts, every item as often as wished, none turned. */
export function unlimitedValue({ length, width, items }: GuillotineSet): { value: number; work: number } {
  const meter = { used: 0, pause: 0 };
  const groups = items.map((item) => ({ ...item, free: false, count: Number.POSITIVE_INFINITY }));
  const values = items.map(({ value }) => value);
  const steps = bestPattern({ length, width, grain: true }, groups, values, [], meter);
  for (let step = steps.next(); ; step = steps.next())
    if (step.done) return { value: step.value.value, work: meter.used };
}

/** Each item once, one size of sheet, none turned. */
export function binJob({ length, width, items }: GuillotineSet): SheetJob {
  return {
    pieces: items.map((item, i) => ({
      id: String(i + 1),
      length: item.length,
      width: item.width,
      grain: "along",
    })),
    sold: [{ id: "sheet", length, width, grain: true, price: 1 }],
    onHand: [],
    kerf: 0,
  };
}

export function unlimitedRows(sets = guillotineSets()): readonly Row[] {
  const results = sets.map((set) => {
    const start = performance.now();
    const { value, work } = unlimitedValue(set);
    return { ms: performance.now() - start, work, proven: true, over: false, detail: `${set.name} ${value}` };
  });
  return [rowOf("gcut1 to 12, one sheet, items without limit", "exact values, each under 1 s", results)];
}

export function binRows(effort: number, sets = guillotineSets()): readonly Row[] {
  return [
    rowOf(
      "gcut1 to 12, each item once",
      "none more than one sheet over its bound",
      sets.map((set) => measured(set.name, binJob(set), effort)),
    ),
  ];
}

export function planRows(seed: number, count: number, effort: number): readonly Row[] {
  const results = Array.from({ length: count }, (_, i) =>
    measured(`plan ${seed + i}`, panelPlan(seed + i), effort),
  );
  return [rowOf(`plywood plans from seed ${seed}`, "90% in 2 s, none more than one sheet over", results)];
}

interface Result {
  readonly ms: number;
  readonly work: number;
  readonly proven: boolean;
  readonly over: boolean;
  readonly detail: string;
}

function measured(name: string, job: SheetJob, effort: number): Result {
  const start = performance.now();
  const steps = proveSheets(job, effort);
  let step = steps.next();
  const first = step.value.proof.cost;
  while (!step.done) step = steps.next();
  const ms = performance.now() - start;
  const { answer, proof } = step.value;
  const wrong = verifySheets(job, answer);
  if (wrong.length > 0) throw new Error(`${name}: ${wrong.join("; ")}`);
  const dearest = Math.max(...job.sold.map(({ price }) => price ?? 0));
  return {
    ms,
    work: proof.work,
    proven: proof.status === "proven",
    over: proof.cost - proof.bound > dearest,
    detail: `${name}: ${told(proof, first)}, ${ms.toFixed(0)} ms`,
  };
}

function told({ status, cost, bound, work }: SheetProof, first: number): string {
  return `${status}, first ${first}, cost ${cost}, bound ${bound}, work ${(work / 1e6).toFixed(0)} M`;
}

function rowOf(set: string, target: string, results: readonly Result[]): Row {
  const over = results.filter((r) => r.over).length;
  return {
    set,
    target,
    instances: results.length,
    proven: results.filter(({ proven }) => proven).length,
    times: results.map(({ ms }) => ms),
    work: results.map(({ work }) => work),
    details: results.map(({ detail }) => detail),
    said: `${results.filter(({ proven, ms }) => proven && ms <= 2000).length} proven within 2 s; ${over} more than one sheet over the bound`,
  };
}
