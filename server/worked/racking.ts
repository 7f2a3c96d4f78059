/**
 * What keeps uprights upright: for each level direction, whether the frames of uprights and rails that run that way are
 * held by a diagonal, a panel or a stiff corner.
 */
import type { Joint } from "./joints";
import type { Part } from "./parts";
import type { Piece } from "./pieces";
import { otherOf, type Space } from "./space";

export interface Frame {
  /** The way it would lean: 0 left to right, 1 front to back. */
  readonly axis: 0 | 1;
  /** Places among all pieces. */
  readonly uprights: readonly number[];
  readonly rails: readonly number[];
  readonly heldBy: "diagonal" | "panel" | "corner" | undefined;
  /** The furthest that screws of one rail, or of rails tight on each other, stand apart up and down an upright, in mm. */
  readonly spread: number;
  /** Some screw joins a rail to an upright. */
  readonly screwed: boolean;
}

/** An upright shorter than this, in mm, is a block and no leg: 12". */
const LEG = 304.8;
/** A corner is stiff when its screws reach over this much of the upright, in mm (common practice: 2-1/2"). */
export const STIFF = 63.5;

/** The frames of a plan: of each thing that stands by itself one for each level direction in which rails join its uprights. */
export function framesOf(space: Space, joints: readonly Joint[], parts: ReadonlyMap<string, Part>): Frame[] {
  const isUpright = space.pieces.map((p) => lies(p, 2) && tall(p) >= LEG);
  const isPanel = space.pieces.map((p) => parts.get(p.part)?.material?.kind === "sheet");
  const screws = screwsAt(joints);
  return ([0, 1] as const).flatMap((axis) => frameAlong(axis, space, isUpright, isPanel, screws));
}

/** For each piece, the screws that join it: the other piece, and how high each is. */
type Screws = ReadonlyMap<number, readonly { readonly other: number; readonly height: number }[]>;

function screwsAt(joints: readonly Joint[]): Screws {
  const found = new Map<number, { other: number; height: number }[]>();
  const add = (piece: number, other: number, height: number): void => {
    const list = found.get(piece);
    if (list) list.push({ other, height });
    else found.set(piece, [{ other, height }]);
  };
  for (const joint of joints)
    for (const { crossing, start } of joint.placed?.screws ?? []) {
      add(crossing.into, crossing.first, start[2]);
      add(crossing.first, crossing.into, start[2]);
    }
  return found;
}

function frameAlong(
  axis: 0 | 1,
  space: Space,
  isUpright: readonly boolean[],
  isPanel: readonly boolean[],
  screws: Screws,
): Frame[] {
  const { pieces } = space;
  const uprights = new Set<number>();
  const rails = new Set<number>();
  pieces.forEach((p, i) => {
    if (!lies(p, axis) || isPanel[i]) return;
    const met = neighbours(space, i).filter((n) => isUpright[n]);
    if (met.length < 2) return;
    rails.add(i);
    for (const u of met) uprights.add(u);
  });
  const done = new Set<number>();
  return [...uprights].flatMap((one): Frame[] => {
    if (done.has(one)) return [];
    const thing = connected(space, one);
    for (const i of thing) done.add(i);
    const own = thing.filter((i) => uprights.has(i));
    const diagonal = thing.some((i) => isDiagonal(pieces[i]!, axis));
    const panel = thing.some((i) => isPanel[i] && facesAway(pieces[i]!, axis));
    const spread = own.reduce((most, u) => Math.max(most, spreadAt(u, axis, space, screws)), 0);
    const heldBy = diagonal ? "diagonal" : panel ? "panel" : spread >= STIFF ? "corner" : undefined;
    const crossing = thing.filter((i) => rails.has(i));
    const isScrewed = (u: number): boolean => (screws.get(u) ?? []).some((s) => crossing.includes(s.other));
    return [{ axis, uprights: own, rails: crossing, heldBy, spread, screwed: own.some(isScrewed) }];
  });
}

const lies = ({ pose }: Piece, axis: 0 | 1 | 2): boolean => Math.abs(pose.length[axis]) > 0.95;
const tall = ({ bounds }: Piece): number => bounds.most[2] - bounds.least[2];
const neighbours = (space: Space, i: number): number[] =>
  space.meetingsOf[i]!.map((m) => otherOf(space.meetings[m]!, i));

/** Runs both up and along: between 15° and 75° off level, in that plane. */
function isDiagonal({ pose }: Piece, axis: 0 | 1): boolean {
  const [level, up] = [Math.abs(pose.length[axis]), Math.abs(pose.length[2])];
  return level > 0.25 && up > 0.25 && Math.hypot(level, up) > 0.98;
}

/** A panel that stands upright along the direction. */
const facesAway = ({ pose }: Piece, axis: 0 | 1): boolean =>
  Math.abs(pose.thickness[axis === 0 ? 1 : 0]) > 0.95;

/** Everything that touches it, through others too; in the order of the pieces. */
function connected(space: Space, from: number): number[] {
  const seen = new Set([from]);
  for (const one of seen) for (const next of neighbours(space, one)) seen.add(next);
  return [...seen].sort((a, b) => a - b);
}

/** How far up and down an upright the screws reach of boards that run along the direction, tight boards as one. */
function spreadAt(upright: number, axis: 0 | 1, space: Space, screws: Screws): number {
  const heights = new Map<number, number[]>();
  for (const { other, height } of screws.get(upright) ?? []) {
    if (!lies(space.pieces[other]!, axis)) continue;
    const list = heights.get(other);
    if (list) list.push(height);
    else heights.set(other, [height]);
  }
  let most = 0;
  const done = new Set<number>();
  for (const rail of heights.keys()) {
    if (done.has(rail)) continue;
    const stack = stackOf(rail, heights, space);
    for (const one of stack) done.add(one);
    const all = stack.flatMap((one) => heights.get(one)!);
    most = Math.max(most, Math.max(...all) - Math.min(...all));
  }
  return most;
}

/** Rails on one upright that lie tight on each other. */
function stackOf(rail: number, heights: ReadonlyMap<number, number[]>, space: Space): number[] {
  const stack = [rail];
  for (const one of stack)
    for (const next of neighbours(space, one))
      if (heights.has(next) && !stack.includes(next)) stack.push(next);
  return stack;
}
