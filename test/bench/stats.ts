/** Figures beside their budgets. */
export interface Figure {
  readonly what: string;
  readonly budget: string;
  readonly value: string;
}

const median = (list: readonly number[]): number => at(list, 0.5);
export const p95 = (list: readonly number[]): number => at(list, 0.95);

function at(list: readonly number[], share: number): number {
  const sorted = [...list].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

/** Runs f so often after a warm-up, and gives the milliseconds of each run. */
export function timed(runs: number, f: (i: number) => unknown, warmUp = 10): number[] {
  for (let i = 0; i < warmUp; i++) f(i);
  return Array.from({ length: runs }, (_, i) => {
    const start = performance.now();
    f(i + warmUp);
    return performance.now() - start;
  });
}

export const inMs = (list: readonly number[]): string =>
  `${median(list).toFixed(1)} ms (p95 ${p95(list).toFixed(1)})`;

export function print(figures: readonly Figure[]): void {
  const wide = Math.max(...figures.map((f) => f.what.length));
  const budget = Math.max(...figures.map((f) => f.budget.length));
  console.log(`${"what".padEnd(wide)}  ${"budget".padEnd(budget)}  measured: median`);
  for (const f of figures) console.log(`${f.what.padEnd(wide)}  ${f.budget.padEnd(budget)}  ${f.value}`);
}
