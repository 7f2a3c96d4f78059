/** Of the layouts on the boards that are the cheapest, one that leaves most boards of an earlier layout as they were. */
import type { Held } from "../answer";
import type { BoardJob } from "../job";
import { Cover } from "./cover";
import { diveFor } from "./dive";
import { type Packed, packInto } from "./fill";
import { isSpent, type Pausing } from "./pausing";
import { repaired } from "./repair";
import type { State } from "./state";

/**
 * The emptiest boards of `before`, few at first, then more, are given up and their pieces cut with the new ones from what
 * the best answer of `state` buys beside the others. Null where nothing but a wholly new layout was found.
 */
export function* nearest(
  job: BoardJob,
  state: State,
  before: readonly Held[],
): Pausing<readonly Held[] | null> {
  const { puzzle, work, bins } = state;
  const { question, places } = puzzle;
  const groupOf = new Map(question.members.flatMap((group, g) => group.map((p) => [p, g] as const)));
  const placeOf = ({ bought, wood }: Held) =>
    places.findIndex(({ kind, woods }) => kind === (bought ? "sold" : "on hand") && woods.includes(wood));
  const have = places.map(({ kind, woods }) => (kind === "on hand" ? woods.length : 0));
  for (const { bought, wood } of bins) if (bought) have[placeOf({ bought, wood, pieces: [] })]!++;
  const byRest = before
    .filter(({ pieces }) => pieces.length > 0)
    .map((held) => {
      const place = placeOf(held);
      const used = held.pieces.reduce((sum, p) => sum + question.sizes[groupOf.get(p)!]!, 0);
      return { held, place, rest: places[place]!.room - used };
    })
    .sort((a, b) => a.rest - b.rest || a.held.pieces[0]! - b.held.pieces[0]!);
  for (let given = 1; given < byRest.length && !isSpent(work); given = Math.ceil(given * MORE)) {
    const free = [...have];
    const demand = puzzle.demand.slice();
    const kept: Held[] = [];
    for (const { held, place } of byRest.slice(0, -given)) {
      if (free[place] === 0) continue;
      free[place]!--;
      for (const p of held.pieces) demand[groupOf.get(p)!]!--;
      kept.push(held);
    }
    const packed = yield* packedInto({ ...state, puzzle: { ...puzzle, demand } }, free);
    if (packed?.lack === 0) return [...kept, ...dealtOut(job, state, kept, packed)];
  }
  return null;
}

const MORE = 1.25;
const STEPS = 100;
const DIVES = 5;
const REPAIRS = 60;

function* packedInto({ puzzle, work, pool }: State, free: readonly number[]): Pausing<Packed | null> {
  const room = free.reduce((sum, n, p) => sum + n * puzzle.places[p]!.room, 0);
  if (puzzle.demand.reduce((sum, n, g) => sum + n * puzzle.sizes[g]!, 0) > room) return null;
  const quick = packInto(puzzle, puzzle.demand, free, STEPS);
  work.done += 1000 + STEPS * quick.filled.length;
  if (quick.lack === 0) return quick;
  const cover = new Cover(puzzle, free, [...pool], work);
  if ((yield* cover.covers()) !== "all") return null;
  const packed = yield* diveFor(puzzle, free, cover, DIVES, work);
  return packed && (yield* repaired(puzzle, free, packed, REPAIRS, work));
}

/** Pieces that are on none of the kept boards, dealt out in their order to the packed ones. */
function dealtOut(
  job: BoardJob,
  { puzzle }: State,
  kept: readonly Held[],
  { filled }: Packed,
): readonly Held[] {
  const { question, places } = puzzle;
  const taken = new Set(kept.flatMap(({ pieces }) => pieces));
  const rest = question.members.map((group) => group.filter((p) => !taken.has(p)));
  const spans = new Set(kept.flatMap(({ bought, wood }) => (bought ? [] : [wood])));
  return filled.map(({ place, filling }): Held => {
    const { kind, woods } = places[place]!;
    const wood = kind === "sold" ? woods[0]! : woods.find((w) => !spans.has(w))!;
    if (kind !== "sold") spans.add(wood);
    const pieces: number[] = [];
    for (let i = 0; i < filling.length; i += 2) pieces.push(...rest[filling[i]!]!.splice(0, filling[i + 1]!));
    pieces.sort((a, b) => job.pieces[b]!.length - job.pieces[a]!.length || a - b);
    return { bought: kind === "sold", wood, pieces };
  });
}
