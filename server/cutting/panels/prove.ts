/**
 * The proof for sheets: which sheets to buy is settled by an exact search over counts (`least.ts`), subject to needs; a
 * purchase that meets them is either filled (`search.ts`) or refuted by a new need (`relax.ts`). What is reported as a
 * bound, or as proven, the independent check (`certify-sheets.ts`) has accepted.
 */
import { type Dice, diceFrom } from "../dice";
import { isLess, leastPurchase, type Price, type Purchase } from "../proof/least";
import { answerOf, bestShelves, type SheetAnswer, type SheetJob } from "../sheets";
import { partings } from "./bundles";
import { checkingBound, MOST_VECTORS, type SheetCertificate } from "./certify-sheets";
import { type BundleShelf, shareOut, slackOf, stock } from "./exhaust";
import type { Column } from "./master";
import { needOf, type RoomKind, roomKinds, type WorthNeed } from "./needs";
import { type Lie, laidOf, type Sheet } from "./pack";
import { bestPattern } from "./pattern";
import { type Laid, type Meter, type PanelQuestion, readPanels } from "./question";
import { relax, relaxHolding } from "./relax";
import { leftOf, repack } from "./repack";
import { searchPacking } from "./search";

export interface SheetProof {
  /** "proven": no answer leaves over fewer pieces, and none of those costs less, or as much with less area bought. */
  readonly status: "proven" | "bounded";
  /** What the answer buys and the least that any answer with as few pieces left over must: cents when `money`, else area. */
  readonly cost: number;
  readonly bound: number;
  readonly money: boolean;
  /** Counted work so far. */
  readonly work: number;
  /** What `bound` rests on; null as long as it is 0. */
  readonly certificate: SheetCertificate | null;
}

export interface SheetProgress {
  readonly answer: SheetAnswer;
  readonly proof: SheetProof;
}

/**
 * Better and better answers with what is known about the least cost: one after each step that changes either, and some in
 * between so that a host can stop or go on. Ends when proven or when `effort`, in counted steps of about a nanosecond, is
 * spent. The same job and effort give the same progress. Never throws, whatever numbers the job holds.
 */
export function* proveSheets(job: SheetJob, effort: number): Generator<SheetProgress, SheetProgress, void> {
  const state = stateOf(job, effort);
  for (const steps = improve(state); !steps.next().done; ) yield progressOf(state);
  return progressOf(state);
}

interface Best {
  readonly answer: SheetAnswer;
  readonly left: number;
  readonly price: Price;
}

interface State {
  readonly question: PanelQuestion;
  readonly kinds: readonly RoomKind[];
  readonly effort: number;
  readonly meter: Meter;
  readonly dice: Dice;
  readonly needs: WorthNeed[];
  readonly pool: Column[];
  readonly shelf: BundleShelf;
  /** Purchases that do not take all pieces, found by trying everything. */
  readonly refuted: (readonly number[])[];
  /** Pieces to be placed, per group. */
  counts: readonly number[];
  /** No answer leaves over fewer. */
  leastLeft: number;
  best: Best;
  /** No purchase that meets the needs is below it. */
  bound: Price;
  certified: { readonly bound: number; readonly certificate: SheetCertificate } | null;
  proven: boolean;
}

function stateOf(job: SheetJob, effort: number): State {
  const question = readPanels(job);
  const { sheets } = bestShelves(question.reading, job.kerf);
  const counts = question.groups.map(() => 0);
  for (const { item } of sheets.flatMap(({ placed }) => placed)) counts[item]!++;
  return {
    question,
    kinds: roomKinds(question),
    effort,
    meter: { used: 0, pause: 0 },
    dice: diceFrom(SEED),
    needs: [],
    pool: [],
    shelf: { grain: null, plain: null },
    refuted: [],
    counts,
    leastLeft: question.hopeless,
    best: bestOf(question, sheets),
    bound: [0, 0],
    certified: null,
    proven: false,
  };
}

const SEED = 20_260;
/** Steps of the search over counts. */
const MOST_STEPS = 2_000_000;
/** Work for filling a purchase: at first, and before it is first tried in earnest. */
const QUICK = 10_000_000;
const EARNEST = 100_000_000;

function bestOf({ job, reading }: PanelQuestion, sheets: readonly Laid[]): Best {
  const answer = answerOf(job, reading, { sheets });
  let [weight, area] = [0, 0];
  for (const { index, bought } of sheets) {
    const kind = reading.kinds[index];
    if (!bought || !kind) continue;
    weight += kind.weight;
    area += kind.length * kind.width;
  }
  return { answer, left: answer.unplaced.length, price: [weight, area] };
}

function progressOf({ question, meter, best, certified, proven }: State): SheetProgress {
  return {
    answer: best.answer,
    proof: {
      status: proven ? "proven" : "bounded",
      cost: best.price[0],
      bound: certified?.bound ?? 0,
      money: question.reading.priced,
      work: meter.used,
      certificate: certified?.certificate ?? null,
    },
  };
}

function* improve(state: State): Generator<void, void, void> {
  const { question, kinds, meter, effort, needs } = state;
  yield;
  yield* leaveFewer(state);
  needs.push(yield* needOf(question, kinds, areas(question), [], [], meter));
  const settled = new Set<string>();
  const large =
    question.groups.length > MOST_GROUPS || state.counts.reduce((sum, n) => sum + n, 0) > MOST_PIECES;
  while (meter.used < effort) {
    const next = cheapestLeft(state);
    if (next === undefined) return;
    if (next === null) {
      state.bound = state.best.price;
      yield* certify(state);
      return;
    }
    if (isLess(state.bound, next.price)) state.bound = next.price;
    if (!large && (yield* fill(state, next.counts, QUICK))) continue;
    yield* certify(state);
    if (large) return;
    const key = next.counts.join(" ");
    if (settled.has(key)) yield* fillAny(state);
    else if (!(yield* settle(state, next.counts))) settled.add(key);
  }
}

/** Whether the purchase was filled or failed a new need, or trying everything refuted it. */
function* settle(state: State, counts: readonly number[]): Generator<void, boolean, void> {
  const { question, kinds, needs, pool, meter, effort } = state;
  const relaxed = yield* relax(question, kinds, counts, [], pool, meter, effort);
  if (!relaxed.fits) {
    needs.push(relaxed.need);
    return true;
  }
  for (const { partings, pricing } of LEVELS) {
    if (yield* tryAll(state, counts, partings)) return true;
    if (yield* fill(state, counts, EARNEST)) return true;
    const need = yield* relaxHolding(question, kinds, counts, relaxed, pricing, pool, meter, effort);
    if (need) needs.push(need);
    if (need) return true;
  }
  return false;
}

/** Larger jobs keep the first answer and are only bounded by what their area tells. */
const MOST_GROUPS = 250;
const MOST_PIECES = 2000;
/** How far to go in trying everything, and in work for pricing with held groups, at first and at last. */
const LEVELS = [
  { partings: 2_000_000, pricing: 50_000_000 },
  { partings: 80_000_000, pricing: 500_000_000 },
] as const;

function waresOf({ reading }: PanelQuestion) {
  return reading.kinds.map(({ length, width, weight }) => ({
    weight,
    size: length * width,
    supply: Number.POSITIVE_INFINITY,
  }));
}

function cheapestLeft(state: State): Purchase | null | undefined {
  const { question, best, bound, meter, needs, refuted } = state;
  if (refuted.length > 0) {
    const left = purchasesLeft(state);
    return left && (left[0] ?? null);
  }
  const steps = { left: MOST_STEPS };
  const next = leastPurchase(waresOf(question), needs, best.price, bound, steps);
  meter.used += (MOST_STEPS - steps.left) * (10 + needs.length);
  return next;
}

/** Worths by area, in whole numbers. */
function areas({ groups, sellable }: PanelQuestion): readonly number[] {
  const largest = groups.reduce((most, { length, width }) => Math.max(most, length * width), 1);
  return groups.map(({ length, width }, g) =>
    sellable.includes(g) ? Math.floor((length * width * 500_000) / largest + 0.5) : 0,
  );
}

/** Has the bound checked, resting on as few needs as will do. */
function* certify(state: State): Generator<void, void, void> {
  const { question, best, bound, needs, refuted } = state;
  const full = bound[0] === best.price[0] && bound[1] === best.price[1];
  const price: Price = full ? bound : [bound[0], 0];
  if (!full && bound[0] <= (state.certified?.bound ?? 0)) return;
  const enough = (some: readonly WorthNeed[]) =>
    refuted.length > 0
      ? purchasesLeft(state, price, some)?.length === 0
      : leastPurchase(waresOf(question), some, price, [0, 0], { left: MOST_STEPS }) === null;
  let kept: readonly WorthNeed[] = needs;
  for (const need of needs) {
    const fewer = kept.filter((other) => other !== need);
    if (enough(fewer)) kept = fewer;
  }
  if (kept.length > MOST_VECTORS) return;
  const worths = kept.map((need) => question.sellable.map((g) => need.worths[g]!));
  const held = kept.map((need) => need.held.map((g) => question.sellable.indexOf(g)));
  const certificate = { worths, held, refuted: [...refuted] };
  const steps = checkingBound(question.job, certificate, price);
  let step = steps.next();
  const until = Math.max(state.effort, state.meter.used + CHECK);
  for (; !step.done && state.meter.used < until; step = steps.next()) {
    state.meter.used += CHECK_SLICE;
    yield;
  }
  if (!step.done || !step.value) return;
  state.certified = { bound: price[0], certificate };
  state.proven = full && best.left === state.leastLeft;
  yield;
}

/** Work of a slice of the check, and for one check even where the effort is spent. */
const CHECK_SLICE = 12_000_000;
const CHECK = 500_000_000;

/** The sheets on hand, then those bought. */
function sheetsFor({ question }: State, counts: readonly number[]): readonly Sheet[] {
  const { own, sold } = question;
  return [
    ...own.map((room, index) => ({ room, index, bought: false })),
    ...counts.flatMap((count, index) =>
      Array.from({ length: count }, () => ({ room: sold[index]!, index, bought: true })),
    ),
  ];
}

/** Whether all pieces to be placed were brought onto this purchase; if so, that is the best answer. */
function* fill(state: State, counts: readonly number[], work: number): Generator<void, boolean, void> {
  const { question, meter, effort, dice } = state;
  const { groups } = question;
  const sheets = sheetsFor(state, counts);
  const until = Math.min(effort, meter.used + work);
  while (meter.used < until) {
    const some = Math.min(until, meter.used + QUICK);
    const packing = yield* searchPacking(groups, sheets, state.counts, 0, dice, meter, some);
    if (packing.left.length === 0) return yield* take(state, sheets, packing.lies);
    const lies = yield* repack(groups, sheets, state.counts, packing, dice, meter, until);
    if (leftOf(state.counts, lies).every((n) => n === 0)) return yield* take(state, sheets, lies);
  }
  return false;
}

/** Makes the packing the best answer if it is better. */
function* take(state: State, sheets: readonly Sheet[], lies: readonly Lie[]): Generator<void, boolean, void> {
  const { question, best } = state;
  const found = bestOf(question, laidOf(question, sheets, lies));
  if (found.left > best.left || (found.left === best.left && !isLess(found.price, best.price))) return false;
  state.best = found;
  yield;
  return true;
}

/** Tries all purchases left below the best answer, cheapest first, longer and longer, until one is filled. */
function* fillAny(state: State): Generator<void, void, void> {
  for (let work = EARNEST; state.meter.used < state.effort; work *= 2)
    for (const { counts } of purchasesLeft(state)?.slice(0, MOST_PURCHASES) ?? [])
      if (state.meter.used < state.effort && (yield* fill(state, counts, work))) return;
}

const MOST_PURCHASES = 24;

/** What meets the needs, is not refuted and costs less, cheapest first; undefined when there are too many. */
function purchasesLeft(
  { question, needs: all, refuted, best, meter }: State,
  below: Price = best.price,
  needs: readonly WorthNeed[] = all,
): readonly Purchase[] | undefined {
  const wares = waresOf(question);
  const found: Purchase[] = [];
  let looks = 0;
  const add = (counts: readonly number[], price: Price): void => {
    if (looks++ > MOST_LOOKS) return;
    const w = counts.length;
    if (w < wares.length) {
      const { weight, size } = wares[w]!;
      for (let n = 0; looks <= MOST_LOOKS; n++) {
        const dearer: Price = [price[0] + n * weight, price[1] + n * size];
        if (!isLess(dearer, below)) break;
        add([...counts, n], dearer);
      }
      return;
    }
    const meets = needs.every(
      ({ gives, least }) => counts.reduce((sum, n, i) => sum + n * gives[i]!, 0) >= least,
    );
    if (meets && !refuted.some((some) => counts.every((n, i) => n <= some[i]!)))
      found.push({ counts, price });
  };
  add([], [0, 0]);
  meter.used += looks * 100;
  if (looks > MOST_LOOKS) return undefined;
  return found.sort((a, b) => (isLess(a.price, b.price) ? -1 : isLess(b.price, a.price) ? 1 : 0));
}

const MOST_LOOKS = 20_000;

/** Whether trying everything either filled the purchase or refuted it; not with more than `most` partings. */
function* tryAll(state: State, counts: readonly number[], most: number): Generator<void, boolean, void> {
  const { question, kinds, meter, effort, refuted } = state;
  const { groups, onlyOwn, sellable } = question;
  const some = groups.map(({ count }, g) => (sellable.includes(g) ? count : 0));
  if (partings(some) > most) return false;
  const until = Math.min(effort, meter.used + ALL);
  const everySheet = kinds.map(({ room }, index) => ({ room, index, bought: true }));
  const sheets = sheetsFor(state, counts);
  const slack = slackOf(groups, sheets, some);
  const shelf: BundleShelf = { grain: null, plain: null };
  if (!(yield* stock(groups, everySheet, some, slack, shelf, meter, until))) return false;
  const shared = yield* shareOut(sheets, some, 0, shelf, meter, until);
  if (shared === undefined) return false;
  if (shared === null) {
    refuted.push(counts);
    return true;
  }
  return onlyOwn.length === 0 && (yield* take(state, sheets, shared.lies));
}

/** Work for trying everything. */
const ALL = 800_000_000;

/** Of the pieces that only sheets on hand take, as many as can be are placed there. */
function* leaveFewer(state: State): Generator<void, void, void> {
  const { question, kinds, meter, effort, dice } = state;
  const { groups, onlyOwn, hopeless, sold } = question;
  if (onlyOwn.length === 0) return;
  const counts = groups.map(({ count }, g) => (onlyOwn.includes(g) ? count : 0));
  const ones = groups.map((_, g) => (onlyOwn.includes(g) ? 1 : 0));
  let due = counts.reduce((sum, n) => sum + n, 0);
  for (const { room, sold, supply } of kinds)
    if (sold < 0) due -= supply * (yield* bestPattern(room, groups, ones, [], meter)).value;
  state.leastLeft = hopeless + Math.max(0, due);
  if (state.best.left <= state.leastLeft) return;
  const sheets = sheetsFor(
    state,
    sold.map(() => 0),
  );
  const until = Math.min(effort, meter.used + QUICK);
  const packing = yield* searchPacking(groups, sheets, counts, Math.max(0, due), dice, meter, until);
  if (hopeless + packing.left.length >= state.best.left) return;
  const placed = groups.map(({ count }, g) => (onlyOwn.includes(g) ? 0 : count));
  for (const { item } of laidOf(question, sheets, packing.lies).flatMap((sheet) => sheet.placed))
    placed[item]!++;
  const before = state.counts;
  state.counts = placed.map((n, g) => (onlyOwn.includes(g) || question.sellable.includes(g) ? n : 0));
  const bought = sold.map(
    (_, s) => state.best.answer.buy.find(({ id }) => id === question.reading.sold[s]!.id)?.count ?? 0,
  );
  for (let more = 0; more <= MOST_MORE && meter.used < effort; more++)
    for (let s = 0; s < Math.max(1, sold.length); s++)
      if (
        yield* fill(
          state,
          bought.map((n, i) => (i === s ? n + more : n)),
          QUICK,
        )
      )
        return;
  state.counts = before;
}

const MOST_MORE = 6;
