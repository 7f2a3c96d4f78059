/**
 * How what stands on the pieces goes down to the floor: each piece, from the top down, hands what it carries to what holds
 * it, as a beam over its supports or straight down. What may stand anywhere goes along by itself, each piece and each
 * link with the most that it ever gets of it. Newtons and millimetres.
 */
import { type BeamLoad, type Bending, bend, worstPlace } from "../../strength/beam";
import type { Piece } from "../pieces";
import type { Coming } from "./judging";
import { type Lie, lieOf, placeAlong, reachAlong } from "./lie";
import { FLOOR, type Link, type Links } from "./links";
import type { PieceLoads, Steady } from "./loads";

export interface LinkLoad {
  readonly link: Link;
  /** Newtons: what stays, and the most that comes and goes. */
  readonly steady: number;
  readonly moving: number;
}

export interface Support {
  /** mm from the end of the piece. */
  readonly at: number;
  /** Places among the links of the piece: what stands close together holds as one, each link as much. */
  readonly links: readonly number[];
}

export interface Carried {
  readonly lie: Lie;
  readonly links: readonly LinkLoad[];
  readonly supports: readonly Support[];
  /** The longest stretch between two of them, mm; 0 for what does not bend. */
  readonly span: number;
  /** Undefined for what does not bend: upright, on the floor, or held at one place. */
  readonly bends: { readonly steady: Bending; readonly coming: Coming } | undefined;
  /** Newtons, by where they come from; `passed` is what other pieces hand down. */
  readonly weighs: Readonly<Record<Steady["from"] | "passed", number>>;
  readonly loads: readonly BeamLoad[];
  /** The most of a weight that may stand anywhere, here or on what it holds. */
  readonly moving: number;
  /** It carries something and nothing holds it, or what holds it is not on both sides of its weight. */
  readonly trouble: "held by nothing" | "held at one place" | undefined;
}

/** A weight that comes and goes, where something that it stands on lies on this piece. */
interface Visit {
  readonly at: number;
  readonly force: number;
}

interface Arriving {
  readonly steady: BeamLoad[];
  passed: number;
  readonly visits: Visit[];
}

export function carriedBy(
  pieces: readonly Piece[],
  { holders, order }: Links,
  loads: readonly PieceLoads[],
  isPanel: (piece: number) => boolean,
): Carried[] {
  const lies = pieces.map((p, i) => bestLie(p, holders[i]!, isPanel(i)));
  const arriving: Arriving[] = pieces.map(() => ({ steady: [], passed: 0, visits: [] }));
  const found: Carried[] = [];
  for (const i of order) {
    const carried = carriedBy1(pieces[i]!, lies[i]!, holders[i]!, loads[i]!, arriving[i]!);
    found[i] = carried;
    for (const load of carried.links) handDown(load, lies, arriving);
  }
  return found;
}

/**
 * A panel bends the shorter way, where what holds it runs along its other side; held at its corners alone it bends the
 * longer way.
 */
function bestLie(piece: Piece, links: readonly Link[], panel: boolean): Lie {
  const lie = lieOf(piece, panel);
  if (!panel || lie.is === "upright") return lie;
  const other = lieOf(piece, panel, true);
  const ways = [lie, other].map((way, i) => ({
    way,
    gap: widestGap(way, links),
    held: coverage(i === 0 ? other : lie, links) >= HELD_ALONG,
  }));
  const [a, b] = [ways[0]!, ways[1]!];
  if (a.held !== b.held) return a.held ? a.way : b.way;
  return a.gap <= b.gap === a.held ? a.way : b.way;
}

/** What share of its length something holds it on. */
const HELD_ALONG = 0.5;

function coverage(lie: Lie, links: readonly Link[]): number {
  const reaches = links.map(({ patch }) => reachAlong(lie, patch)).sort((a, b) => a[0] - b[0]);
  let [sum, end] = [0, 0];
  for (const [from, to] of reaches) {
    sum += Math.max(0, to - Math.max(from, end));
    end = Math.max(end, to);
  }
  return sum / lie.length;
}

function widestGap(lie: Lie, links: readonly Link[]): number {
  const at = supportsOf(lie, links).map((s) => s.at);
  return at.length < 2 ? Infinity : longest(at);
}

/** The longest stretch between places in order. */
export const longest = (at: readonly number[]): number =>
  at.slice(1).reduce((most, a, i) => Math.max(most, a - at[i]!), 0);

/** Where links hold a piece, along it, in order: in the middle of a short one, at both ends and between of a long one. */
function supportsOf(lie: Lie, links: readonly Link[]): Support[] {
  const found = links.flatMap(({ patch, fixings, how }, link): { at: number; link: number }[] => {
    const [from, to] = reachAlong(lie, patch);
    if (to - from <= POINT) return [{ at: (from + to) / 2, link }];
    const screws = how === "screwed" ? fixings.flatMap((f) => f.screws) : [];
    if (screws.length > 0)
      return screws.map((s) => ({ at: Math.min(to, Math.max(from, placeAlong(lie, s.start))), link }));
    const n = Math.max(1, Math.ceil((to - from) / STEP));
    return Array.from({ length: n + 1 }, (_, k) => ({ at: from + ((to - from) * k) / n, link }));
  });
  found.sort((a, b) => a.at - b.at);
  const groups: { at: number; link: number }[][] = [];
  for (const one of found) {
    const group = groups.at(-1);
    if (group && one.at - group[0]!.at <= ONE_PLACE) group.push(one);
    else groups.push([one]);
  }
  return groups.map((group) => ({
    at: group.reduce((sum, g) => sum + g.at, 0) / group.length,
    links: [...new Set(group.map((g) => g.link))],
  }));
}

/** What lies on something no longer than this, in mm, lies on one place; on more, on places no further apart than that. */
const POINT = 200;
const STEP = 300;
/** Holders no further apart than this, in mm (3-1/2"), hold as one: wood gives way before it works as a lever between them. */
const ONE_PLACE = 89;

function carriedBy1(
  piece: Piece,
  lie: Lie,
  links: readonly Link[],
  { steady, roaming }: PieceLoads,
  arriving: Arriving,
): Carried {
  const own = lie.is === "beam" ? steady.map((s) => along(lie, s, piece)) : [];
  const loads = [...own, ...arriving.steady];
  const sum = (from: Steady["from"]): number =>
    steady.reduce((all, s) => all + (s.from === from ? s.force : 0), 0);
  const weighs = { own: sum("own"), fill: sum("fill"), said: sum("said"), passed: arriving.passed };
  const total = weighs.own + weighs.fill + weighs.said + weighs.passed;
  const roams = Math.max(0, ...roaming.map((r) => r.force));
  const moving = Math.max(roams, ...arriving.visits.map((v) => v.force));
  const base = { lie, weighs, loads, moving, supports: [], span: 0, bends: undefined };
  if (links.length === 0) return { ...base, links: [], trouble: "held by nothing" };
  const onFloor = links.some(({ by }) => by === FLOOR);
  if (lie.is === "upright" || onFloor) {
    const shared = onFloor ? links.filter(({ by }) => by === FLOOR) : links;
    const each = shared.map((link) => ({ link, steady: total / shared.length, moving }));
    return { ...base, links: each, trouble: undefined };
  }
  const supports = supportsOf(lie, links);
  const at = supports.map((s) => s.at);
  const bending = bend({ length: lie.length, supports: at, loads });
  if (!bending) {
    const each = links.map((link) => ({ link, steady: total / links.length, moving }));
    return { ...base, supports, links: each, trouble: oneSided(lie, links, loads) };
  }
  const swept = sweep(lie, at, roaming, arriving.visits);
  return {
    ...base,
    supports,
    span: longest(at),
    links: links.map((link, n) => ({
      link,
      steady: byLink(supports, bending.reactions, n, (a, b) => a + b, true),
      moving: byLink(supports, swept.reactions, n, Math.max, false),
    })),
    bends: { steady: bending, coming: swept },
    trouble: undefined,
  };
}

const byLink = (
  supports: readonly Support[],
  values: readonly number[],
  link: number,
  put: (a: number, b: number) => number,
  shared: boolean,
): number =>
  supports.reduce(
    (all, { links }, k) =>
      links.includes(link) ? put(all, (values[k] ?? 0) / (shared ? links.length : 1)) : all,
    0,
  );

/** A board that is held at one place stays there only with its weight over it. */
function oneSided(lie: Lie, links: readonly Link[], loads: readonly BeamLoad[]): Carried["trouble"] {
  const [force, moment] = loads.reduce(
    ([f, m], load) => {
      const { force: own, at } = resultant(load);
      return [f + own, m + own * at];
    },
    [0, 0],
  );
  if (force <= 0) return undefined;
  const reach = links.map(({ patch }) => reachAlong(lie, patch));
  const middle = moment / force;
  const [from, to] = [Math.min(...reach.map((r) => r[0])), Math.max(...reach.map((r) => r[1]))];
  return middle >= from - 1 && middle <= to + 1 ? undefined : "held at one place";
}

function resultant(load: BeamLoad): { readonly force: number; readonly at: number } {
  if ("force" in load) return load;
  const { from, to, start, end } = load;
  const force = ((start + end) / 2) * (to - from);
  const at = start + end > 0 ? from + ((to - from) * (start + 2 * end)) / (3 * (start + end)) : from;
  return { force, at };
}

/** A weight that lies on a piece, as a load along it. */
function along(lie: Lie, { force, over, middle }: Steady, { bounds }: Piece): BeamLoad {
  if (middle !== undefined) {
    const half = Math.min(middle, lie.length) / 2;
    return evenly(force, lie.length / 2 - half, lie.length / 2 + half);
  }
  const axis = Math.abs(lie.along[0]) > 0.99 ? 0 : Math.abs(lie.along[1]) > 0.99 ? 1 : undefined;
  if (!over || axis === undefined) return evenly(force, 0, lie.length);
  const low = Math.max(bounds.least[axis], over[axis][0]) - bounds.least[axis];
  const high = Math.min(bounds.most[axis], over[axis][1]) - bounds.least[axis];
  if (high <= low) return evenly(force, 0, lie.length);
  return lie.along[axis] > 0 ? evenly(force, low, high) : evenly(force, lie.length - high, lie.length - low);
}

const evenly = (force: number, from: number, to: number): BeamLoad => ({
  from,
  to,
  start: force / (to - from),
  end: force / (to - from),
});

/** The most that weights which come and go ever do to a beam, and to each of its supports. */
function sweep(
  lie: Lie,
  supports: readonly number[],
  roaming: PieceLoads["roaming"],
  visits: readonly Visit[],
): Coming & { readonly reactions: readonly number[] } {
  let [moment, shear, timesStiffness, span] = [0, 0, 0, 0];
  const reactions = supports.map(() => 0);
  // What lies loose cannot pull: beyond its last holder a weight works as a lever over the whole length between the outermost.
  const [first, last] = [supports[0]!, supports.at(-1)!];
  const lever = 1 + Math.max(first, lie.length - last) / (last - first);
  const hold = (b: Bending, force: number): void =>
    b.reactions.forEach((r, k) => {
      reactions[k] = Math.max(reactions[k]!, Math.min(r, force * lever));
    });
  const take = (b: Bending, force: number): void => {
    moment = Math.max(moment, b.moment.size);
    shear = Math.max(shear, b.shear.size);
    if (b.sag.timesStiffness > timesStiffness) [timesStiffness, span] = [b.sag.timesStiffness, b.sag.span];
    hold(b, force);
  };
  const beam = { length: lie.length, supports, loads: [] };
  const most = roaming.reduce<PieceLoads["roaming"][number] | undefined>(
    (m, r) => (m && m.force >= r.force ? m : r),
    undefined,
  );
  if (most) {
    const worst = worstPlace(beam, most.force, most.foot);
    if (worst) {
      take(worst, most.force);
      supports.forEach((_, k) => {
        reactions[k] = Math.max(reactions[k]!, most.force);
      });
    }
  }
  for (const { at, force } of fewest(visits)) {
    const b = bend({ ...beam, loads: [{ at, force }] });
    if (b) take(b, force);
  }
  return { moment, shear, timesStiffness, span, reactions };
}

/** Visits at different places, no more than tell what matters: the first, the last, and some between. */
function fewest(visits: readonly Visit[]): readonly Visit[] {
  const sorted = [...visits].filter((v) => v.force > 0).sort((a, b) => a.at - b.at);
  const apart: Visit[] = [];
  for (const v of sorted) {
    const last = apart.at(-1);
    if (last && v.at - last.at < NEAR) {
      if (v.force > last.force) apart[apart.length - 1] = v;
    } else apart.push(v);
  }
  if (apart.length <= MOST_VISITS) return apart;
  const step = (apart.length - 1) / (MOST_VISITS - 1);
  return Array.from({ length: MOST_VISITS }, (_, k) => apart[Math.round(k * step)]!);
}

const MOST_VISITS = 9;
/** mm */
const NEAR = 10;

/** Puts what a link carries on the piece that holds it: spread where the two lie along each other. */
function handDown(
  { link, steady, moving }: LinkLoad,
  lies: readonly Lie[],
  arriving: readonly Arriving[],
): void {
  if (link.by === FLOOR) return;
  const [lie, to] = [lies[link.by]!, arriving[link.by]!];
  const [low, high] = reachAlong(lie, link.patch);
  const middle = Math.min(lie.length, Math.max(0, placeAlong(lie, link.at)));
  to.passed += steady;
  if (steady !== 0)
    to.steady.push(high - low > POINT ? evenly(steady, low, high) : { at: middle, force: steady });
  if (moving > 0) {
    const at = high - low > POINT ? [low, (low + high) / 2, high] : [middle];
    for (const a of at) to.visits.push({ at: a, force: moving });
  }
}
