/**
 * First-fit and best-fit decreasing over groups of equal sizes. A bin is a bought board or a usable stretch on hand.
 * O((g + b) log b) for g groups and b bins, with best fit moving up to b numbers per step (a block move).
 */

export interface Bin {
  /** The place in `kinds` of a bought board, or in `spans` of a stretch on hand. */
  readonly wood: number;
  readonly bought: boolean;
  /** What is left of its room. */
  room: number;
  /** Group and how many, group and how many …; groups ascending, that is, longest pieces first. */
  readonly runs: number[];
}

export type Fit = "first" | "best";

/** A new bin for a size of which so many are left, or null when nothing takes it. */
export type Opening = (size: number, count: number) => Bin | null;

/**
 * Puts groups `from` … `to - 1` into the bins, opening new ones (pushed to `bins`) where none has room.
 * `counts` becomes what could not be placed.
 */
export function packDecreasing(
  fit: Fit,
  sizes: Int32Array,
  counts: Int32Array,
  [from, to]: readonly [from: number, to: number],
  bins: Bin[],
  open: Opening,
): void {
  let most = bins.length;
  for (let g = from; g < to; g++) most += counts[g]!;
  const rooms = fit === "first" ? firstFitRooms(most) : bestFitRooms();
  bins.forEach((bin, i) => {
    rooms.set(i, bin.room);
  });
  for (let g = from; g < to; g++) {
    const size = sizes[g]!;
    while (counts[g]! > 0) {
      let at = rooms.find(size);
      if (at < 0) {
        const bin = open(size, counts[g]!);
        if (bin === null || bin.room < size) break;
        at = bins.length;
        bins.push(bin);
      }
      const bin = bins[at]!;
      const placed = Math.min(counts[g]!, Math.floor(bin.room / size));
      bin.runs.push(g, placed);
      bin.room -= placed * size;
      counts[g]! -= placed;
      rooms.set(at, bin.room);
    }
  }
}

/** Which bin is next. `set` is called for a new bin, or for the one that `find` gave last. */
interface Rooms {
  /** The bin to use for that size, or -1. */
  find(size: number): number;
  set(bin: number, room: number): void;
}

/** A tree of the largest room in each half, for at most so many bins. */
function firstFitRooms(most: number): Rooms {
  let leaves = 1;
  while (leaves < most) leaves *= 2;
  const largest = new Int32Array(2 * leaves).fill(-1);
  return {
    find(size) {
      if (largest[1]! < size) return -1;
      let node = 1;
      while (node < leaves) node = largest[2 * node]! >= size ? 2 * node : 2 * node + 1;
      return node - leaves;
    },
    set(bin, room) {
      let node = leaves + bin;
      largest[node] = room;
      for (node >>= 1; node >= 1; node >>= 1) {
        const value = Math.max(largest[2 * node]!, largest[2 * node + 1]!);
        if (largest[node] === value) return;
        largest[node] = value;
      }
    },
  };
}

/** Rooms and bins as one number each, in ascending order: least room first, then the bin opened first. */
function bestFitRooms(): Rooms {
  const keys: number[] = [];
  const place = (key: number) => {
    let [low, high] = [0, keys.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (keys[middle]! < key) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  return {
    find(size) {
      const at = place(size * BINS);
      if (at === keys.length) return -1;
      const [key] = keys.splice(at, 1);
      return key! % BINS;
    },
    set(bin, room) {
      const key = room * BINS + bin;
      keys.splice(place(key), 0, key);
    },
  };
}

/** More than there can be bins; rooms are below 2^28, so a key stays a whole number. */
const BINS = 2 ** 25;
