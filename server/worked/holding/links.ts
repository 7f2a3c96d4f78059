/**
 * What holds each placed piece up: what it lies on, what it is screwed, nailed, bolted or glued to, and the floor. Every
 * link leads from the piece that is held to the one that holds it, so that no load can run in a circle. Millimetres.
 */
import { HAIRLINE } from "../../solid/contact";
import { mean, type Vec3 } from "../../solid/vector";
import type { Joint } from "../joints";
import type { Piece } from "../pieces";
import type { PlacedScrew } from "../screw-way";
import { type Meeting, otherOf, outward, type Space } from "../space";

/** The floor, where the place of a piece is asked for. */
export const FLOOR = -1;

/** lies: on top of it, or on the floor; screwed and glued: beside it; hung: under it, by screws or glue. */
export type Hold = "lies" | "screwed" | "glued" | "hung";

export interface Link {
  /** Places among all pieces. */
  readonly piece: number;
  readonly by: number;
  readonly how: Hold;
  /** Where the two lie on each other; none on the floor. */
  readonly patch: readonly Vec3[];
  readonly at: Vec3;
  readonly area: number;
  /** What fastens them, where something does. */
  readonly fixings: readonly Fixing[];
}

/** The screws of one joint between two pieces that lie on each other; none of a glued one. */
export interface Fixing {
  readonly joint: Joint;
  readonly screws: readonly PlacedScrew[];
}

export interface Links {
  /** For each piece what holds it. */
  readonly holders: readonly (readonly Link[])[];
  /** How many links lie between a piece and the floor; undefined where none leads there. */
  readonly levels: readonly (number | undefined)[];
  /** Pieces in such an order that each comes before whatever holds it. */
  readonly order: readonly number[];
}

export function linksOf(space: Space, fixings: Fixings): Links {
  const all = candidates(space, fixings);
  const levels = levelsOf(space.pieces, all);
  const holders = all.map((links, piece) => {
    const own = levels[piece];
    if (own === undefined) return [];
    const down = links.filter((l) => leadsDown(l, own, levels));
    return enough(down, space.pieces[piece]!, (l) => levels[l.by]!, own);
  });
  addLateRests(all, levels, holders);
  return { holders, levels, order: orderOf(holders) };
}

/** How steep a face may be that something lies on: the cosine of about 45°. */
const LEVEL = Math.SQRT1_2;

const keyOf = (a: number, b: number): string => (a < b ? `${a} ${b}` : `${b} ${a}`);

/** What fastens two pieces, by both of them. */
export type Fixings = (a: number, b: number) => readonly Fixing[];

/** Between any two pieces that follow on each other along a screw. */
export function fixingsOf(joints: readonly Joint[]): Fixings {
  const found = new Map<string, Map<Joint, PlacedScrew[]>>();
  for (const joint of joints) {
    const screws = new Map<unknown, PlacedScrew[]>();
    for (const screw of joint.placed?.screws ?? []) {
      const list = screws.get(screw.crossing);
      if (list) list.push(screw);
      else screws.set(screw.crossing, [screw]);
    }
    for (const crossing of joint.placed?.crossings ?? []) {
      const own = screws.get(crossing) ?? [];
      // Where none is dealt to it; screws whose size is not known, or that are too many to set out, still hold.
      const setOut = joint.size && joint.placed?.tooMany === undefined;
      if (joint.entry.kind === "fasten" && setOut && own.length === 0) continue;
      const along = [crossing.first, ...crossing.through, crossing.into];
      along.slice(1).forEach((next, i) => {
        const key = keyOf(along[i]!, next);
        const pair = found.get(key) ?? new Map<Joint, PlacedScrew[]>();
        found.set(key, pair);
        pair.set(joint, [...(pair.get(joint) ?? []), ...own]);
      });
    }
  }
  const lists = new Map(
    [...found].map(([key, pair]) => [key, [...pair].map(([joint, screws]) => ({ joint, screws }))]),
  );
  return (a, b) => lists.get(keyOf(a, b)) ?? [];
}

function candidates(space: Space, fixings: Fixings): Link[][] {
  return space.pieces.map((piece, i): Link[] => {
    const links = space.meetingsOf[i]!.flatMap((m) => linkOver(space.meetings[m]!, i, fixings) ?? []);
    return stands(piece) ? [onFloor(piece, i), ...links] : links;
  });
}

export const stands = ({ bounds }: Piece): boolean => bounds.least[2] <= HAIRLINE;

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
    area: (x1 - x0) * (y1 - y0),
    fixings: [],
  };
};

function linkOver(meeting: Meeting, piece: number, fixings: Fixings): Link | undefined {
  const by = otherOf(meeting, piece);
  const joined = fixings(piece, by);
  const facing = meeting.patches.map((p) => ({ ...p, down: -outward(meeting, piece, p)[2] }));
  const rest = facing.find((p) => p.down > LEVEL);
  const patch = rest ?? facing[0]!;
  const link = { piece, by, patch: patch.patch, at: mean(patch.patch), area: patch.area, fixings: joined };
  if (rest) return { ...link, how: "lies" };
  if (joined.length === 0) return undefined;
  if (patch.down < -LEVEL) return { ...link, how: "hung" };
  return { ...link, how: joined.some(({ joint }) => joint.entry.kind === "glue") ? "glued" : "screwed" };
}

/** Steps from the floor, each over the fewest links. */
function levelsOf(pieces: readonly Piece[], all: readonly (readonly Link[])[]): (number | undefined)[] {
  const levels: (number | undefined)[] = pieces.map((p) => (stands(p) ? 0 : undefined));
  const held = new Map<number, number[]>();
  for (const { piece, by } of all.flat()) {
    const list = held.get(by);
    if (list) list.push(piece);
    else held.set(by, [piece]);
  }
  const queue = pieces.flatMap((_, i) => (levels[i] === 0 ? [i] : []));
  for (const one of queue)
    for (const next of held.get(one) ?? []) {
      if (levels[next] !== undefined) continue;
      levels[next] = levels[one]! + 1;
      queue.push(next);
    }
  return levels;
}

/** What a piece lies on may be as far from the floor as itself; what holds it otherwise must be nearer. */
function leadsDown({ by, how }: Link, own: number, levels: readonly (number | undefined)[]): boolean {
  if (by === FLOOR) return true;
  const level = levels[by];
  return level !== undefined && (how === "lies" ? level <= own : level < own);
}

/**
 * What a piece lies on in two places holds it; else what fastens it, where that is in two places; else all of it. Boards on
 * top of each other that are fastened to the same posts do not lean on each other.
 */
function enough(links: Link[], piece: Piece, level: (l: Link) => number, own: number): Link[] {
  const rests = links.filter((l) => l.how === "lies");
  const under = rests.filter((l) => l.by === FLOOR || level(l) < own);
  if (under.some(({ by }) => by === FLOOR)) return rests.filter(({ by }) => by === FLOOR);
  const isSpread = (some: readonly Link[]): boolean => apartAlong(some, piece) > RESTS_APART;
  if (under.length > 0 && isSpread(rests)) return rests;
  const fixed = links.filter((l) => l.how !== "lies");
  if (isSpread([...fixed, ...under])) return [...fixed, ...under];
  return links;
}

/** Rests nearer to each other than this, in mm, are one place. */
const RESTS_APART = 100;

function apartAlong(links: readonly Link[], { pose }: Piece): number {
  if (links.length === 0) return 0;
  const reach = [pose.length, pose.width, pose.thickness].map((v) => {
    const at = links.flatMap((l) => l.patch.map((p) => p[0] * v[0] + p[1] * v[1] + p[2] * v[2]));
    return Math.max(...at) - Math.min(...at);
  });
  return Math.max(...reach);
}

/** Adds rests on pieces further from the floor, where these do not lean on the piece themselves. */
function addLateRests(
  all: readonly (readonly Link[])[],
  levels: readonly (number | undefined)[],
  holders: readonly Link[][],
): void {
  const leansOn = (from: number, on: number): boolean => {
    const seen = new Set([from]);
    for (const one of seen)
      for (const { by } of holders[one] ?? []) {
        if (by === on) return true;
        if (by !== FLOOR) seen.add(by);
      }
    return false;
  };
  for (const links of all)
    for (const link of links) {
      const [own, other] = [levels[link.piece], levels[link.by]];
      if (own === undefined || other === undefined || link.how !== "lies" || other <= own) continue;
      const held = holders[link.piece]!;
      if (!held.some(({ by }) => by === FLOOR) && !leansOn(link.by, link.piece)) held.push(link);
    }
}

/** Kahn's order: what nothing more leans on comes first. */
function orderOf(holders: readonly (readonly Link[])[]): number[] {
  const leaning = holders.map(() => 0);
  for (const { by } of holders.flat()) if (by !== FLOOR) leaning[by]! += 1;
  const order = holders.flatMap((_, i) => (leaning[i] === 0 ? [i] : []));
  for (const one of order)
    for (const { by } of holders[one]!) {
      if (by === FLOOR) continue;
      leaning[by]! -= 1;
      if (leaning[by] === 0) order.push(by);
    }
  return order;
}
