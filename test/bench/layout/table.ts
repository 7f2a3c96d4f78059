/** A table of layouts: how many are proven, how soon, and with how much counted work. */
import { inMs, p95 } from "../stats";

export interface Row {
  readonly set: string;
  readonly target: string;
  readonly instances: number;
  /** Null where nothing was to be proven. */
  readonly proven: number | null;
  readonly times: readonly number[];
  /** Counted work of each; empty where it is not counted. */
  readonly work: readonly number[];
  /** What else there is to say of them. */
  readonly said?: string;
  /** One line an instance. */
  readonly details: readonly string[];
}

export function printTable(rows: readonly Row[]): void {
  const cells = rows.map((row) => [
    row.set,
    row.proven === null ? "" : `${row.proven} of ${row.instances}`,
    `${inMs(row.times)}, max ${Math.max(...row.times).toFixed(0)}`,
    row.work.length > 0
      ? `${millions(median(row.work))} (p95 ${millions(p95(row.work))}, max ${millions(Math.max(...row.work))})`
      : "",
    row.target,
    row.said ?? "",
  ]);
  const heads = ["set", "proven", "time: median", "counted work, millions: median", "target", ""];
  const wide = heads.map((head, c) => Math.max(head.length, ...cells.map((row) => row[c]!.length)));
  for (const row of [heads, ...cells])
    console.log(
      row
        .map((cell, c) => cell.padEnd(wide[c]!))
        .join("  ")
        .trimEnd(),
    );
}

const millions = (work: number): string => (work / 1e6).toFixed(1);

const median = (list: readonly number[]): number =>
  list.toSorted((a, b) => a - b)[Math.floor(list.length / 2)] ?? Number.NaN;
