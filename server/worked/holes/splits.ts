/**
 * Screws without a pilot hole in wood that they are apt to split: near an end, in a row along the grain, in thin boards
 * and in dense ones. Millimetres.
 */
import { ifKnown } from "../../plan";
import { seenFrom } from "../../solid/pose";
import { way } from "../../solid/ray";
import { add, dot, scaled, type Vec3 } from "../../solid/vector";
import { type Bit, isBrittle, leadHoleOver, pilotHole, placing, thinBoard } from "../../trade";
import type { Joint } from "../joints";
import { size as tableLength } from "../materials";
import { isNail } from "../operations";
import type { Part } from "../parts";
import type { Piece } from "../pieces";
import { faceName, intoEnds, nearly } from "../screw-facts";
import { nearSides } from "../screw-sides";
import type { PlacedScrew } from "../screw-way";
import { isBolt } from "../screws";
import { SHOP_ENGLISH } from "../shop-words";
import { densest, gravityOf, lastParts, nearParts, THIN } from "../splitting";
import type { Worked } from "../work";

const rule = (key: string) => placing.find((row) => row.key === key)!;
/** From the end of a piece, and from one screw to the next along the grain, in diameters. */
export const END_RULE = rule("screw end distance, pushed away from the end");
export const ROW_RULE = rule("screw spacing along the grain");
export const THIN_BOARD = tableLength(thinBoard.value, "in");

interface Common {
  readonly joint: Joint;
  readonly part: Part;
  /** The bit for the hole that is missing; undefined where the set has none so thin. */
  readonly bit: Bit | undefined;
}

export type Split = Common &
  (
    | { readonly why: "dense"; readonly gravity: number }
    | { readonly why: "thin"; readonly thick: number }
    /** Into end grain, and the plan lets it. */
    | { readonly why: "along" }
    | {
        /** `brittle`: a bored screw might stand there, and in thicker or other wood one without a hole. */
        readonly why: "end" | "brittle" | "row";
        readonly piece: Piece;
        /** From the center of the screw to the end, or from screw to screw. */
        readonly distance: number;
        readonly limit: number;
        /** Other screws of the joint that stand so. */
        readonly more: number;
      }
  );

/** Why the screws of a joint are apt to split the wood; undefined where they are not, or have a hole. */
export function splitOf(joint: Joint, worked: Worked): Split | undefined {
  const { size, entry } = joint;
  if (entry.kind !== "fasten" || !size || isBolt(joint) || isNail(joint)) return undefined;
  if (entry.clauses.some((c) => c.kind === "pilot" || c.kind === "broken")) return undefined;
  // What stands too near a side is told by itself, and a hole does not mend that.
  if (nearSides(joint, worked).length > 0) return undefined;
  const found = denseIn(joint, worked) ?? thinIn(joint, worked) ?? placedSplit(joint, worked);
  const split = found ?? alongIn(joint, worked);
  if (!split) return undefined;
  const { gauge, diameter } = size;
  const last = densest(lastParts(joint, worked), SHOP_ENGLISH).gravity;
  const gravity = split.why === "dense" ? Math.max(split.gravity, last) : last;
  const { bit } = pilotHole({ gauge, diameter: diameter.approx }, gravity, worked.settings.display.system);
  return { ...split, joint, bit };
}

type Found = Split extends infer S ? (S extends Split ? Omit<S, "joint" | "bit"> : never) : never;

/** Boards that the screw's thread meets: not those in which its shank has a hole. */
const unbored = (joint: Joint, worked: Worked): Part[] => [
  ...(joint.clearance ? [] : nearParts(joint, worked)),
  ...lastParts(joint, worked),
];

const isBoard = ({ material }: Part): boolean => material?.kind === "board";

function denseIn(joint: Joint, worked: Worked): Found | undefined {
  const dense = unbored(joint, worked)
    .filter(isBoard)
    .map((part) => ({ part, gravity: gravityOf(part.material!.wood.name) }))
    .filter(({ gravity }) => gravity > leadHoleOver.value);
  const [most] = dense.sort((a, b) => b.gravity - a.gravity);
  return most && { why: "dense", ...most };
}

function thinIn(joint: Joint, worked: Worked): Found | undefined {
  const thin = unbored(joint, worked)
    .filter(isBoard)
    .flatMap((part) => {
      const thick = ifKnown(part.thickness)?.approx;
      return thick !== undefined && thick < THIN_BOARD.approx - HAIR ? [{ part, thick }] : [];
    });
  const [least] = thin.sort((a, b) => a.thick - b.thick);
  return least && { why: "thin", ...least };
}

/** Into end grain, once the plan accepts that: until then it is told as such. */
function alongIn(joint: Joint, worked: Worked): Found | undefined {
  if (!worked.accepted.some(({ code }) => code === "screw-in-end-grain")) return undefined;
  const [path] = intoEnds(joint, worked).paths;
  const part = path && worked.parts.get(path.into);
  return part && { why: "along", part };
}

/** Wood that a screw passes across its grain: where, in the board's own frame, and how far from the nearer end. */
interface Passing {
  /** By its place among those of the joint. */
  readonly screw: number;
  readonly place: number;
  readonly part: Part;
  readonly along: number;
  /** Across the grain and the screw. */
  readonly across: number;
  readonly toEnd: number;
}

/** What follows from where the screws stand: the worst of it. */
function placedSplit(joint: Joint, worked: Worked): Found | undefined {
  const diameter = joint.size!.diameter.approx;
  const boards = passingsOf(joint, worked);
  const nearest = (near: readonly Passing[], why: "end" | "brittle", limit: number): Found | undefined => {
    const [worst] = [...near].sort((a, b) => nearly(a.toEnd, b.toEnd) || a.place - b.place);
    if (!worst) return undefined;
    const { part, place, toEnd: distance } = worst;
    return { why, part, piece: worked.space.pieces[place]!, distance, limit, more: othersOf(near) };
  };
  const [close, far] = [END_RULE.value.bored * diameter, END_RULE.value.unbored * diameter];
  const within = (limit: number) => boards.filter(({ toEnd }) => toEnd < limit - SLACK);
  const splitsSoon = ({ part: { thickness, material } }: Passing): boolean => {
    const { name } = material!.wood;
    const thick = ifKnown(thickness)?.approx ?? Number.POSITIVE_INFINITY;
    return thick < THIN + HAIR && (isBrittle(name) || gravityOf(name) >= leadHoleOver.value);
  };
  return (
    nearest(within(close), "end", close) ??
    rowIn(boards, ROW_RULE.value.bored * diameter, diameter, worked) ??
    nearest(within(far).filter(splitsSoon), "brittle", far)
  );
}

/** A millimetre less is let be: nobody sets a screw finer. */
const SLACK = 1;
/** mm: up to arithmetic. */
const HAIR = 0.05;
/** Cosine between a screw and the grain from which it goes along it. */
const ALONG = 0.5;

/** How many screws these are, but one. */
const othersOf = (passings: readonly Passing[]): number => new Set(passings.map((p) => p.screw)).size - 1;

/** Of boards alone. */
function passingsOf(joint: Joint, { space, parts }: Worked): Passing[] {
  const length = joint.size!.length.approx;
  const found: Passing[] = [];
  (joint.placed?.screws ?? []).forEach(({ crossing, start, direction, passes }, screw) => {
    for (const { piece: place, enters, leaves, sides } of passes) {
      const own = place === crossing.into || (!joint.clearance && isNear(place, crossing));
      if (!own || enters > length - HAIR || faceName(sides[0]) === "end") continue;
      const piece = space.pieces[place]!;
      const { pose } = piece;
      const part = parts.get(piece.part);
      if (!part || !isBoard(part) || Math.abs(dot(direction, pose.length)) > ALONG) continue;
      const at = add(start, scaled(direction, (Math.max(0, enters) + Math.min(leaves, length)) / 2));
      const [along, width, thick] = seenFrom(pose, at);
      const across = Math.abs(dot(direction, pose.thickness)) > Math.SQRT1_2 ? width : thick;
      found.push({ screw, place, part, along, across, toEnd: toEnd(piece, at) });
    }
  });
  return found;
}

const isNear = (place: number, { first, through }: PlacedScrew["crossing"]): boolean =>
  place === first || through.includes(place);

/** From a place in a piece along its grain to the nearer end of the wood there. */
function toEnd({ cells, pose }: Piece, at: Vec3): number {
  const [only, more] = cells;
  if (only && !more) {
    const through = way(only, at, pose.length);
    return through ? Math.min(through.leaves, -through.enters) : 0;
  }
  let [back, on] = [0, 0];
  const ways = cells.flatMap((cell) => way(cell, at, pose.length) ?? []).sort((a, b) => a.enters - b.enters);
  for (const { enters, leaves } of ways) if (enters <= on + HAIR && leaves > on) on = leaves;
  for (const { enters, leaves } of ways.reverse()) if (leaves >= back - HAIR && enters < back) back = enters;
  return Math.min(on, -back);
}

/** Three screws or more one behind the other along the grain of a piece, the closest of all such. */
function rowIn(
  passed: readonly Passing[],
  limit: number,
  diameter: number,
  { space }: Worked,
): Found | undefined {
  const byPiece = new Map<number, Passing[]>();
  for (const p of passed) {
    const list = byPiece.get(p.place);
    if (list) list.push(p);
    else byPiece.set(p.place, [p]);
  }
  const close = [...byPiece.values()]
    .flatMap((list) => linedUp(list, diameter))
    .flatMap((line) => closeGaps(line, limit, diameter));
  const [worst] = [...close].sort((a, b) => nearly(a.distance, b.distance));
  if (!worst) return undefined;
  const { distance, between } = worst;
  const [{ part, place }] = between;
  return {
    why: "row",
    part,
    piece: space.pieces[place]!,
    distance,
    limit,
    more: othersOf(close.flatMap((g) => g.between)),
  };
}

/** Across the grain nearer than this many diameters, screws are in one line with it. */
const IN_LINE = rule("screw edge distance").value.bored;

/** The screws of a piece by the lines along the grain in which they stand. */
function linedUp(list: readonly Passing[], diameter: number): Passing[][] {
  const lines: Passing[][] = [];
  for (const p of [...list].sort((a, b) => a.across - b.across)) {
    const line = lines.at(-1);
    if (line && p.across - line.at(-1)!.across < IN_LINE * diameter) line.push(p);
    else lines.push([p]);
  }
  return lines;
}

interface Gap {
  readonly distance: number;
  readonly between: readonly [Passing, Passing];
}

/** The gaps of a line that are too close and have another such beside them. */
function closeGaps(line: readonly Passing[], limit: number, diameter: number): Gap[] {
  const along = [...line].sort((a, b) => a.along - b.along);
  const places = along.filter((p, i) => i === 0 || p.along - along[i - 1]!.along > diameter);
  const gaps = places.slice(1).map((next, i): Gap => {
    const before = places[i]!;
    return { distance: next.along - before.along, between: [before, next] };
  });
  const close = (i: number): boolean => (gaps[i]?.distance ?? Number.POSITIVE_INFINITY) < limit - SLACK;
  return gaps.filter((_, i) => close(i) && (close(i - 1) || close(i + 1)));
}
