/** Pieces packed into exactly these boards by simple rules: quick, and often enough. */
import { fullestFilling, supplyOf } from "../fullest";
import { type Bin, packDecreasing } from "../pack";
import type { Filling } from "./knapsack";
import type { Puzzle } from "./puzzle";

/** A filled place. */
export interface Filled {
  readonly place: number;
  readonly filling: Filling;
}

export interface Packed {
  readonly filled: readonly Filled[];
  /** Per group, what found no room, and its length. */
  readonly left: Int32Array;
  readonly lack: number;
}

/** The rule that leaves least over, the first among equals; as soon as one leaves nothing it is the answer. */
export function packInto(
  puzzle: Puzzle,
  demand: Int32Array,
  counts: readonly number[],
  steps: number,
): Packed {
  let best: Packed | null = null;
  for (const rule of RULES) {
    const packed = rule(puzzle, demand.slice(), counts, steps);
    if (best === null || packed.lack < best.lack) best = packed;
    if (best.lack === 0) break;
  }
  return best!;
}

type Rule = (puzzle: Puzzle, left: Int32Array, counts: readonly number[], steps: number) => Packed;

const RULES: readonly Rule[] = [
  (...asked) => fullest(...asked, "longest piece"),
  (...asked) => decreasing(...asked, "best"),
  (...asked) => fullest(...asked, "small boards"),
  (...asked) => decreasing(...asked, "first"),
];

function decreasing(
  puzzle: Puzzle,
  left: Int32Array,
  counts: readonly number[],
  _: number,
  fit: "best" | "first",
): Packed {
  const { places, sizes } = puzzle;
  const bins: Bin[] = [];
  const placeOf: number[] = [];
  // Kept wood takes only what nothing sold takes: that is packed first, while there is nothing else.
  const open = (kept: boolean) =>
    places.forEach(({ kind, room, to }, place) => {
      if (kind === "missing" || to < sizes.length !== kept) return;
      for (let n = 0; n < counts[place]!; n++) {
        bins.push({ wood: place, bought: false, room, runs: [] });
        placeOf.push(place);
      }
    });
  open(true);
  const kept = places.find(({ kind, to }) => kind === "on hand" && to < sizes.length)?.to ?? 0;
  packDecreasing(fit, sizes, left, [0, kept], bins, () => null);
  const rest: Bin[] = bins.splice(0);
  open(false);
  packDecreasing(fit, sizes, left, [kept, sizes.length], bins, () => null);
  return packedOf(
    puzzle,
    [...rest, ...bins].map(({ wood, runs }) => ({ place: wood, filling: runs })),
    left,
    counts,
  );
}

/** Board by board, as full as can be: for the longest piece left the board it fills best, or the smallest board first. */
function fullest(
  puzzle: Puzzle,
  left: Int32Array,
  counts: readonly number[],
  steps: number,
  order: "longest piece" | "small boards",
): Packed {
  const { places, sizes } = puzzle;
  const supply = supplyOf(sizes, left);
  const free = counts.map((n, p) => (places[p]!.kind === "missing" ? 0 : n));
  const filled: Filled[] = [];
  const cut = (place: number, filling: Filling) => {
    for (let i = 0; i < filling.length; i += 2) left[filling[i]!]! -= filling[i + 1]!;
    free[place]!--;
    filled.push({ place, filling });
  };
  if (order === "small boards") {
    const byRoom = places.map((_, p) => p).sort((a, b) => places[a]!.room - places[b]!.room || a - b);
    for (const p of byRoom)
      while (free[p]! > 0) {
        const filling = within(puzzle, p, fullestFilling(supply, places[p]!.room, steps, null).runs);
        if (filling.length === 0) break;
        cut(p, filling);
      }
    return packedOf(puzzle, filled, left, counts);
  }
  for (let g = supply.next(0); g < sizes.length; ) {
    let best: { place: number; filling: Filling; rest: number } | null = null;
    for (let p = 0; p < places.length; p++) {
      const { room, from, to } = places[p]!;
      if (free[p] === 0 || room < sizes[g]! || g < from || g >= to) continue;
      const { runs, used } = fullestFilling(supply, room, steps, g);
      const filling = within(puzzle, p, runs);
      const rest = filling === runs ? room - used : room;
      if (filling.length > 0 && (best === null || rest < best.rest)) best = { place: p, filling, rest };
    }
    if (best) cut(best.place, best.filling);
    g = supply.next(best ? g : g + 1);
  }
  return packedOf(puzzle, filled, left, counts);
}

/** What of it may be cut there. */
function within({ places }: Puzzle, place: number, runs: Filling): Filling {
  const { from, to } = places[place]!;
  if (runs.every((n, i) => i % 2 === 1 || (n >= from && n < to))) return runs;
  return runs.filter((_, i) => runs[i - (i % 2)]! >= from && runs[i - (i % 2)]! < to);
}

/** Pieces left over go as missing ones where that is a place and there are so many. */
function packedOf(
  puzzle: Puzzle,
  filled: readonly Filled[],
  left: Int32Array,
  counts: readonly number[],
): Packed {
  const all = filled.filter(({ filling }) => filling.length > 0);
  puzzle.places.forEach(({ kind, from }, place) => {
    if (kind !== "missing") return;
    const some = Math.min(left[from]!, counts[place]!);
    left[from]! -= some;
    for (let n = 0; n < some; n++) all.push({ place, filling: [from, 1] });
  });
  let lack = 0;
  left.forEach((n, g) => {
    lack += n * puzzle.sizes[g]!;
  });
  return { filled: all, left, lack };
}
