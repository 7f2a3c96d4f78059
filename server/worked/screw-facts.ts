/**
 * What problems say of screws between placed pieces, read off their ways through wood: which miss, which go in by an end,
 * which cannot be driven for what stands behind them, and where a tip comes out. Millimetres.
 */
import type { BoardSide } from "../solid/convex";
import { dot, type Vec3 } from "../solid/vector";
import type { Joint } from "./joints";
import { standsAlready } from "./order-of-work";
import type { Path } from "./paths";
import type { Piece } from "./pieces";
import { DRIVER, type PlacedScrew } from "./screw-way";
import { isBolt } from "./screws";
import type { Worked } from "./work";

/** Wood nearer than this is one, in mm. */
export const TIGHT = 0.05;

export interface Missing {
  readonly screw: PlacedScrew;
  /** The last wood on its way, and how much of that there is, in mm. */
  readonly last: Piece;
  readonly through: number;
  /** It ends in that wood; else it comes out of it. */
  readonly ends: boolean;
}

/** Screws whose straight way does not enter the piece they are meant for, as far as it was followed. */
export function missingScrews({ placed, size }: Joint, { space }: Worked): Missing[] {
  return (placed?.screws ?? []).flatMap((screw): Missing[] => {
    const { first, into } = screw.crossing;
    if (screw.passes.some((p) => p.piece === into)) return [];
    const pass = screw.passes.at(-1);
    const through = pass ? pass.leaves - Math.max(0, pass.enters) : 0;
    const ends = pass !== undefined && size !== undefined && pass.leaves >= size.length.approx - TIGHT;
    return [{ screw, last: space.pieces[pass?.piece ?? first]!, through, ends }];
  });
}

/** Order of two distances; those that arithmetic alone tells apart keep theirs. */
export const nearly = (a: number, b: number): number => (Math.abs(a - b) < TIGHT ? 0 : a - b);

export const faceName = (side: BoardSide): "edge" | "end" | "face" =>
  side.endsWith("end") ? "end" : side.endsWith("edge") ? "edge" : "face";

/** Ways of a joint that enter the last piece by its end, and how many of its screws do; unknown before placing. */
export function intoEnds(
  joint: Joint,
  { space }: Worked,
): {
  readonly paths: readonly Path[];
  readonly count: number | undefined;
  readonly pieces: readonly Piece[];
} {
  const straight = joint.angle.approx < TOE && !isBolt(joint);
  const paths = straight ? joint.paths.filter((p) => p.layers.at(-1)?.face === "end") : [];
  const screws = (joint.placed?.screws ?? []).filter((screw) => {
    const pass = screw.passes.find((p) => p.piece === screw.crossing.into);
    return pass && faceName(pass.sides[0]) === "end";
  });
  const pieces = screws.flatMap(({ crossing }) => [crossing.first, crossing.into]);
  return {
    paths,
    count: joint.placed && screws.length,
    pieces: [...new Set(pieces)].map((i) => space.pieces[i]!),
  };
}

/** A screw that leans this much, in degrees off square, crosses the grain. */
const TOE = 30;

export interface Blocked {
  readonly screw: PlacedScrew;
  readonly by: Piece;
  readonly room: number;
}

/** Screws behind whose heads something stands already, nearer than a drill is long; the least room first. */
export function blockedScrews(worked: Worked): ReadonlyMap<Joint, readonly Blocked[]> {
  const stands = standsAlready(worked);
  const { pieces } = worked.space;
  const found = new Map<Joint, Blocked[]>();
  for (const joint of worked.joints) {
    const screws =
      joint.placed?.screws.filter((s) => s.behind && s.behind.room < DRIVER.length - TIGHT) ?? [];
    if (screws.length === 0) continue;
    const standing = stands(joint);
    const blocked = screws.flatMap((screw): Blocked[] => {
      const { behind, crossing } = screw;
      return behind && standing(crossing, behind.piece)
        ? [{ screw, by: pieces[behind.piece]!, room: behind.room }]
        : [];
    });
    if (blocked.length > 0)
      found.set(
        joint,
        blocked.sort((a, b) => nearly(a.room, b.room)),
      );
  }
  return found;
}

/** Where a tip comes out of wood. */
export interface TipOut {
  readonly piece: Piece;
  readonly side: "edge" | "end" | "face";
  /** What stands further on in its line, how far from the wood it leaves, and whether the tip gets into it. */
  readonly next: { readonly piece: Piece; readonly gap: number; readonly reached: boolean } | undefined;
  /** The box in whose inside the tip stands. */
  readonly box: string | undefined;
}

/** Where the tips of the screws of a path come out; undefined before placing, or when they stay in. */
export function tipOut(joint: Joint, path: Path, proud: number, worked: Worked): TipOut | undefined {
  const { pieces } = worked.space;
  const length = joint.size?.length.approx ?? 0;
  for (const screw of joint.placed?.screws ?? []) {
    const { crossing, passes, start, direction } = screw;
    if (pieces[crossing.first]!.part !== path.first || pieces[crossing.into]!.part !== path.into) continue;
    const to = passes.findIndex((p) => p.piece === crossing.into);
    let last = passes[to];
    if (!last) continue;
    for (const p of passes.slice(to + 1))
      if (p.enters <= last.leaves + TIGHT && p.leaves > last.leaves) last = p;
    const { leaves } = last;
    const lean = Math.abs(dot(direction, crossing.normal));
    if (Math.abs((length - leaves) * lean - proud) > TIGHT) continue;
    const beyond = passes.find((p) => p.enters > leaves + TIGHT);
    const tip: Vec3 = [0, 1, 2].map((k) => start[k]! + direction[k]! * length) as unknown as Vec3;
    const { piece, sides } = last;
    const next = beyond && {
      piece: pieces[beyond.piece]!,
      gap: beyond.enters - leaves,
      reached: length > beyond.enters + TIGHT,
    };
    return { piece: pieces[piece]!, side: faceName(sides[1]), next, box: boxAround(tip, worked) };
  }
  return undefined;
}

function boxAround([x, y, z]: Vec3, { boxes }: Worked): string | undefined {
  return boxes.find(({ placed }) => {
    if (!placed) return false;
    const { rim, low, high } = placed.room;
    const inside = x > rim[0].from && x < rim[0].to && y > rim[1].from && y < rim[1].to;
    return inside && z > low && z < high;
  })?.name;
}
