/**
 * What holds each placed piece up: what it lies on, what it is screwed, nailed, bolted or glued to, and the floor. Every
 * link leads from the piece that is held to the one that holds it, and none leads in a circle. Millimetres.
 */
import { HAIRLINE } from "../../solid/contact";
import { mean, spanAlong, type Vec3 } from "../../solid/vector";
import type { Piece } from "../pieces";
import { type Meeting, otherOf, outward, type Space } from "../space";
import type { Fixing, Fixings } from "./fixings";
import { isSteep, isUpright } from "./lie";

/** The floor, where the place of a piece is asked for. */
export const FLOOR = -1;

/** lies: on top of it, or on the floor; screwed and glued: beside it; hung: under it, by screws or glue. */
export type Hold = "lies" | "screwed" | "glued" | "hung";

export interface Link {
  /** Places among all pieces. */
  readonly piece: number;
  readonly by: number;
  readonly how: Hold;
  /** Where the two lie on each other; on the floor, the block round the piece seen from above. */
  readonly patch: readonly Vec3[];
  readonly at: Vec3;
  /** What fastens them, where something does. */
  readonly fixings: readonly Fixing[];
}

export interface Links {
  /** For each piece what holds it. */
  readonly holders: readonly (readonly Link[])[];
  /** How many links lie between a piece and the floor; undefined where none leads there. */
  readonly levels: readonly (number | undefined)[];
  /** Pieces in such an order that each comes before whatever holds it. */
  readonly order: readonly number[];
}

export function linksOf(space: Space, fixings: Fixings, isPanel: (piece: number) => boolean): Links {
  const all = candidates(space, fixings);
  const levels = levelsOf(space.pieces, all);
  const circles = inCircles(all, levels);
  const leadsDown = ({ piece, by, how }: Link): boolean => {
    if (by === FLOOR) return true;
    const [own, level] = [levels[piece]!, levels[by]];
    if (level === undefined || level > own) return false;
    // What a piece lies on may be as far from the floor as itself; what holds it otherwise must be nearer.
    return level < own || (how === "lies" && !(circles.has(piece) && circles.has(by)));
  };
  const down = all.map((links, piece) => (levels[piece] === undefined ? [] : links.filter(leadsDown)));
  const under = ({ piece, by }: Link): boolean => by === FLOOR || levels[by]! < levels[piece]!;
  const holders = down.map((links, piece) => enough(links, under, space.pieces[piece]!, isPanel(piece)));
  const late = all.flatMap((links) =>
    links.filter(
      (l) =>
        l.how === "lies" &&
        levels[l.piece] !== undefined &&
        levels[l.by] !== undefined &&
        !down[l.piece]!.includes(l),
    ),
  );
  if (late.length > 0) addLateRests(late, holders, space.pieces, isPanel);
  return { holders, levels, order: orderOf(holders) };
}

function candidates(space: Space, fixings: Fixings): Link[][] {
  return space.pieces.map((piece, i): Link[] => {
    const links = stands(piece) ? [onFloor(piece, i)] : [];
    for (const m of space.meetingsOf[i]!) {
      const link = linkOver(space.meetings[m]!, i, fixings);
      if (link) links.push(link);
    }
    return links;
  });
}

const stands = ({ bounds }: Piece): boolean => bounds.least[2] <= HAIRLINE;

const onFloor = ({ bounds: { least, most } }: Piece, piece: number): Link => {
  const [[x0, y0], [x1, y1]] = [least, most];
  return {
    piece,
    by: FLOOR,
    how: "lies",
    patch: [
      [x0, y0, 0],
      [x1, y0, 0],
      [x1, y1, 0],
      [x0, y1, 0],
    ],
    at: [(x0 + x1) / 2, (y0 + y1) / 2, 0],
    fixings: [],
  };
};

function linkOver(meeting: Meeting, piece: number, fixings: Fixings): Link | undefined {
  const by = otherOf(meeting, piece);
  const rest = meeting.patches.find((p) => isSteep(p.normal) && outward(meeting, piece, p)[2] < 0);
  const joined = fixings(piece, by);
  if (!rest && joined.length === 0) return undefined;
  const { patch, normal } = rest ?? meeting.patches[0]!;
  const beside = joined.some(({ joint }) => joint.entry.kind === "glue") ? "glued" : "screwed";
  const how = rest ? "lies" : isSteep(normal) ? "hung" : beside;
  return { piece, by, how, patch, at: mean(patch), fixings: joined };
}

/** Steps from the floor, each over the fewest links. */
function levelsOf(pieces: readonly Piece[], all: readonly (readonly Link[])[]): (number | undefined)[] {
  const levels: (number | undefined)[] = pieces.map((p) => (stands(p) ? 0 : undefined));
  const held: number[][] = pieces.map(() => []);
  for (const links of all) for (const { piece, by } of links) if (by !== FLOOR) held[by]!.push(piece);
  const queue = pieces.flatMap((_, i) => (levels[i] === 0 ? [i] : []));
  for (const one of queue)
    for (const next of held[one]!) {
      if (levels[next] !== undefined) continue;
      levels[next] = levels[one]! + 1;
      queue.push(next);
    }
  return levels;
}

/** Pieces as far from the floor as each other that lie on each other in a circle, as a shelf in the housing of a post does; and those under them. */
function inCircles(
  all: readonly (readonly Link[])[],
  levels: readonly (number | undefined)[],
): ReadonlySet<number> {
  const level = all.map((links, piece) =>
    links.filter(({ by, how }) => how === "lies" && by !== FLOOR && levels[by] === levels[piece]),
  );
  if (level.every((links) => links.length === 0)) return NONE;
  const sorted = new Set(orderOf(level));
  return new Set(all.flatMap((_, piece) => (sorted.has(piece) ? [] : [piece])));
}

const NONE: ReadonlySet<number> = new Set();

/**
 * What a piece lies on in two places holds it, and what is upright any place; else what fastens it, where that is in two
 * places; else all of it. Boards on top of each other that are fastened to the same posts do not lean on each other.
 */
function enough(links: Link[], under: (l: Link) => boolean, piece: Piece, panel: boolean): Link[] {
  if (links.length < 2) return links;
  const onFloor = links.filter(({ by }) => by === FLOOR);
  if (onFloor.length > 0) return onFloor;
  const rests = links.filter((l) => l.how === "lies");
  const below = rests.filter(under);
  const fixed = links.filter((l) => l.how !== "lies");
  if (isUpright(piece, panel)) {
    if (below.length > 0) return below;
    return fixed.length > 0 ? fixed : links;
  }
  if (below.length > 0 && isSpread(rests, piece, panel)) return rests;
  return isSpread([...fixed, ...below], piece, panel) ? [...fixed, ...below] : links;
}

/** Rests nearer to each other than this, in mm, are one place. */
const RESTS_APART = 100;

/** Whether a piece is held in two places along it, a panel across it too. */
function isSpread(links: readonly Link[], { pose }: Piece, panel: boolean): boolean {
  const isApart = (axis: Vec3): boolean => {
    let [least, most] = [Infinity, -Infinity];
    for (const { patch } of links) {
      const [from, to] = spanAlong(patch, axis);
      least = Math.min(least, from);
      most = Math.max(most, to);
    }
    return most - least > RESTS_APART;
  };
  return isApart(pose.length) && (!panel || isApart(pose.width));
}

/**
 * Adds rests on pieces further from the floor, and those in circles, where these do not lean on the piece themselves; to
 * what is held in one place before what is held well.
 */
function addLateRests(
  late: readonly Link[],
  holders: readonly Link[][],
  pieces: readonly Piece[],
  isPanel: (piece: number) => boolean,
): void {
  const leansOn = (from: number, on: number): boolean => {
    const seen = new Set([from]);
    for (const one of seen)
      for (const { by } of holders[one]!) {
        if (by === on) return true;
        if (by !== FLOOR) seen.add(by);
      }
    return false;
  };
  const isHeld = ({ piece }: Link): boolean => isSpread(holders[piece]!, pieces[piece]!, isPanel(piece));
  for (const link of [...late.filter((l) => !isHeld(l)), ...late.filter(isHeld)]) {
    const held = holders[link.piece]!;
    // What is upright and lies on something needs no more, nor does what stands on the floor.
    const stays = isUpright(pieces[link.piece]!, isPanel(link.piece)) || held.some(({ by }) => by === FLOOR);
    if (stays && held.some(({ how }) => how === "lies")) continue;
    if (!leansOn(link.by, link.piece)) held.push(link);
  }
}

/** Kahn's order: what nothing more leans on comes first; of what leans on each other in a circle, nothing comes. */
function orderOf(holders: readonly (readonly Link[])[]): number[] {
  const leaning = holders.map(() => 0);
  for (const links of holders) for (const { by } of links) if (by !== FLOOR) leaning[by]! += 1;
  const order = holders.flatMap((_, i) => (leaning[i] === 0 ? [i] : []));
  for (const one of order)
    for (const { by } of holders[one]!) {
      if (by === FLOOR) continue;
      leaning[by]! -= 1;
      if (leaning[by] === 0) order.push(by);
    }
  return order;
}
