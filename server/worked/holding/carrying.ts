/**
 * How what stands on the pieces goes down to the floor: each piece, from the top down, hands what it carries to what holds
 * it, as a beam over its supports or straight down. What may stand anywhere goes along by itself, each piece and each
 * link with the most that it ever gets of it. Newtons and millimetres.
 */
import type { BeamLoad, Bending } from "../../strength/beam";
import type { Piece } from "../pieces";
import { type BeamBent, Beams, type Visit } from "./beams";
import type { Coming } from "./judging";
import { type Lie, placeAlong, reachAlong } from "./lie";
import { FLOOR, type Link, type Links } from "./links";
import type { PieceLoads, Steady } from "./loads";
import { bestLie, longest, POINT, type Support, supportsOf } from "./supports";

export interface LinkLoad {
  readonly link: Link;
  /** Newtons: what stays, and the most that comes and goes. Below 0 where the piece lifts off its holder. */
  readonly steady: number;
  readonly moving: number;
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
  /** Nothing holds it, or what holds it is not on both sides of its weight. */
  readonly trouble: "held by nothing" | "held at one place" | undefined;
}

/** What other pieces hand down to a piece. */
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
  const beams = new Beams();
  const found: Carried[] = [];
  for (const i of order) {
    const carried = carriedByOne(pieces[i]!, lies[i]!, holders[i]!, loads[i]!, arriving[i]!, beams);
    found[i] = carried;
    for (const load of carried.links) handDown(load, lies, arriving);
  }
  return found;
}

function carriedByOne(
  piece: Piece,
  lie: Lie,
  links: readonly Link[],
  { steady, roaming }: PieceLoads,
  { steady: handed, passed, visits }: Arriving,
  beams: Beams,
): Carried {
  const loads = lie.is === "beam" ? [...steady.map((s) => along(lie, s, piece)), ...handed] : handed;
  const weighs = {
    own: sumOf(steady, "own"),
    fill: sumOf(steady, "fill"),
    said: sumOf(steady, "said"),
    passed,
  };
  const total = weighs.own + weighs.fill + weighs.said + passed;
  const roams = roaming.reduce((most, r) => Math.max(most, r.force), 0);
  const moving = visits.reduce((most, v) => Math.max(most, v.force), roams);
  const evenly = (trouble: Carried["trouble"], supports: readonly Support[] = []): Carried => {
    const shared = links.map((link) => ({ link, steady: total / links.length, moving }));
    return { lie, links: shared, supports, span: 0, bends: undefined, weighs, loads, moving, trouble };
  };
  if (links.length === 0) return evenly("held by nothing");
  if (lie.is === "upright" || links.some(({ by }) => by === FLOOR)) return evenly(undefined);
  const supports = supportsOf(lie, links);
  const at = supports.map((s) => s.at);
  const bent = beams.of({ length: lie.length, supports: at, loads, roaming: roams, visits });
  if (!bent) return evenly(isBalanced(lie, links, loads) ? undefined : "held at one place", supports);
  const shared = linkLoads(links, supports, bent, moving);
  const tips = shared.some((l) => l.steady < 0 && isLoose(l)) && !isBalanced(lie, links, loads);
  return {
    lie,
    links: shared,
    supports,
    span: longest(at),
    bends: bent,
    weighs,
    loads,
    moving,
    trouble: tips ? "held at one place" : undefined,
  };
}

const sumOf = (steady: readonly Steady[], from: Steady["from"]): number =>
  steady.reduce((sum, s) => (s.from === from ? sum + s.force : sum), 0);

const isLoose = ({ link }: LinkLoad): boolean => link.fixings.length === 0;

/**
 * What stays is shared by the links of a support; each may get all that comes and goes there, and one along which a panel
 * bends all that comes at all.
 */
function linkLoads(
  links: readonly Link[],
  supports: readonly Support[],
  bent: BeamBent,
  comes: number,
): LinkLoad[] {
  const steady = links.map(() => 0);
  const moving: (number | undefined)[] = links.map(() => undefined);
  supports.forEach(({ links: own }, k) => {
    for (const n of own) {
      steady[n]! += bent.steady.reactions[k]! / own.length;
      moving[n] = Math.max(moving[n] ?? 0, bent.coming.reactions[k]!);
    }
  });
  return links.map((link, n) => ({ link, steady: steady[n]!, moving: moving[n] ?? comes }));
}

/** Whether a board's weight is over what holds it, so that it stays there even where nothing fastens it. */
function isBalanced(lie: Lie, links: readonly Link[], loads: readonly BeamLoad[]): boolean {
  let [force, moment] = [0, 0];
  for (const load of loads) {
    const one = resultant(load);
    force += one.force;
    moment += one.force * one.at;
  }
  if (force <= 0) return true;
  const reach = links.map(({ patch }) => reachAlong(lie, patch));
  const middle = moment / force;
  const [from, to] = [Math.min(...reach.map((r) => r[0])), Math.max(...reach.map((r) => r[1]))];
  return middle >= from - SAME && middle <= to + SAME;
}

/** mm */
const SAME = 1;

/** Loads that are spread are as heavy all along. */
function resultant(load: BeamLoad): { readonly force: number; readonly at: number } {
  if ("force" in load) return load;
  const { from, to, start } = load;
  return { force: start * (to - from), at: (from + to) / 2 };
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
  const isLong = high - low > POINT;
  to.passed += steady;
  if (steady !== 0) to.steady.push(isLong ? evenly(steady, low, high) : { at: middle, force: steady });
  if (moving > 0)
    for (const at of isLong ? [low, (low + high) / 2, high] : [middle]) to.visits.push({ at, force: moving });
}
