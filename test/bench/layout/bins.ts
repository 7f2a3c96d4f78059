/** Bins of one size: those of the OR-Library, and triplets of the project's own making. */
import { existsSync, readFileSync } from "node:fs";
import type { BoardJob } from "../../../server/cutting/job";
import { randomFrom } from "./random";

export interface BinInstance {
  readonly name: string;
  readonly job: BoardJob;
  /** The fewest bins there can be. */
  readonly best: number;
}

/** The headers' best is one too many for four of them (shared/bench/README.md). */
const STALE: Readonly<Record<string, number>> = { u120_08: 50, u120_19: 49, u250_07: 103, u250_12: 105 };

/** OR-Library binpack1 to 4 (E. Falkenauer 1996; J. E. Beasley); undefined where the file is not there. */
export function orLibrary(n: number, folder: string): BinInstance[] | undefined {
  const file = `${folder}/orlib/binpack${n}.txt`;
  if (!existsSync(file)) return undefined;
  const [count, ...words] = readFileSync(file, "utf8").split(/\s+/).filter(Boolean);
  let at = 0;
  const next = () => words[at++]!;
  return Array.from({ length: Number(count) }, () => {
    const [name, capacity, items, known] = [next(), Number(next()), Number(next()), Number(next())];
    const sizes = Array.from({ length: items }, () => Number(next()));
    return { name, job: binsOf(sizes, capacity), best: STALE[name] ?? known };
  });
}

/**
 * Items of which three fill a bin of 1000 exactly: one of 380 to 490, one of at least 250 and less than half of what is
 * left, and the rest, so that n / 3 bins are the fewest (after the classes of Falkenauer 1996).
 */
export function triplets(items: number, seed: number): BinInstance {
  const random = randomFrom(seed);
  const sizes = Array.from({ length: items / 3 }, () => {
    const first = random.whole(380, 490);
    const second = random.whole(250, Math.floor((1000 - first) / 2));
    return [first, second, 1000 - first - second];
  }).flat();
  return { name: `t${items} seed ${seed}`, job: binsOf(sizes, 1000), best: items / 3 };
}

const binsOf = (sizes: readonly number[], capacity: number): BoardJob => ({
  pieces: sizes.map((length, i) => ({ id: String(i), length })),
  sold: [{ id: "bin", length: capacity, price: 1 }],
  onHand: [],
  kerf: 0,
  endTrim: 0,
  salvage: "keep",
});
