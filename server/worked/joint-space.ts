/** A joint between placed pieces: where it crosses, its screws, and which pieces it does not reach. */
import type { Entry, JointPlace, JointSide, Thing } from "../../grammar/tree";
import type { Scope } from "../plan";
import { cos } from "../solid/angle";
import { HAIRLINE } from "../solid/contact";
import type { BoardSide } from "../solid/convex";
import { LENGTH, type Quantity, roughly } from "../units";
import { chosen } from "./choose";
import { type Crossing, crossingsOf } from "./crossings";
import { screwCount, screwsOf } from "./driving";
import type { Size } from "./fasteners";
import { type NearMiss, nearMisses } from "./near";
import { drive, type Face, type Layer, type Path } from "./paths";
import type { Piece } from "./pieces";
import type { Passed, PlacedScrew } from "./screw-way";
import { copiesOf, type Space } from "./space";

export interface JointInSpace {
  readonly crossings: readonly Crossing[];
  /** None where they are `tooMany`. */
  readonly screws: readonly PlacedScrew[];
  /** How many they would be, where that is more than are set out one by one. */
  readonly tooMany: number | undefined;
  /** Pieces of the first things that lie on none of the last, by their places among all pieces. */
  readonly lonely: readonly number[];
  /** Pieces that stand a little apart where they should lie on each other. */
  readonly misses: readonly NearMiss[];
  /** Things the line names of which no piece crosses any other. */
  readonly unmet: readonly { readonly name: string; readonly thing: Thing }[];
}

interface Driving {
  readonly size: Size;
  readonly angle: Quantity;
  readonly count: number;
  readonly place: JointPlace | undefined;
  readonly spacing: number | undefined;
  /** So many screws are set out one by one, and no more. */
  readonly most: number;
}

/** Undefined when some of its things are placed nowhere. */
export function jointInSpace(
  entry: Entry & { kind: "fasten" | "glue" },
  within: string,
  scope: Scope,
  space: Space,
  driving: Driving | undefined,
): JointInSpace | undefined {
  // For the plan's own joints everything at once; for an assembly's, the pieces of each copy of it by themselves.
  const sets = within
    ? copiesOf(space, within).map((copy) => new Set(copy))
    : space.pieces.length > 0
      ? [undefined]
      : [];
  const sides: readonly JointSide[] = [...entry.first, ...entry.through, ...entry.into];
  const crossings: Crossing[] = [];
  const lonely: number[] = [];
  const misses: NearMiss[] = [];
  const unmet = new Map<Thing, boolean>();
  for (const copy of sets) {
    const all = sides.map((s) => chosen(s.thing, space, scope, copy));
    if (all.some((g) => g.length === 0)) return undefined;
    const layered = entry.first.length + entry.through.length;
    const firsts = joined(all.slice(0, entry.first.length));
    const through = joined(all.slice(entry.first.length, layered));
    const last = joined(all.slice(layered));
    const found = crossingsOf(space, firsts, through.length > 0 ? [through] : [], last);
    const met = new Set<number>();
    for (const crossing of found) {
      crossings.push(crossing);
      met.add(crossing.first).add(crossing.into);
      for (const i of crossing.through) met.add(i);
    }
    for (const i of firsts) if (!met.has(i)) lonely.push(i);
    misses.push(...nearMisses(space, firsts, through.length > 0 ? through : last));
    sides.forEach(({ thing }, n) => {
      unmet.set(thing, (unmet.get(thing) ?? true) && !all[n]!.some((i) => met.has(i)));
    });
  }
  if (sets.length === 0) return undefined;
  const pattern = driving && {
    count: driving.count,
    place: driving.place,
    spacing: driving.spacing,
    angle: driving.angle.approx,
    length: driving.size.length.approx,
    diameter: driving.size.diameter.approx,
  };
  const many = pattern ? screwCount(space, crossings, pattern) : 0;
  const tooMany = driving && many > driving.most ? many : undefined;
  const screws = pattern && tooMany === undefined ? screwsOf(space, crossings, pattern) : [];
  const nowhere = [...unmet].flatMap(([thing, never]) => (never ? [{ name: thing.name.text, thing }] : []));
  return { crossings, screws, tooMany, lonely, misses, unmet: nowhere };
}

const joined = (groups: readonly (readonly number[])[]): readonly number[] =>
  groups.length === 1 ? groups[0]! : groups.flat();

/** The ways of a joint's screws through wood: each kind once. */
export function pathsInSpace(
  { screws }: JointInSpace,
  { pieces }: Space,
  size: Size,
  angle: Quantity,
): Path[] {
  const paths = new Map<string, Path>();
  let before: PlacedScrew | undefined;
  for (const screw of screws) {
    // Most screws of a joint go just the same way as the one before.
    const again = before && sameWay(before, screw, pieces);
    before = screw;
    if (again) continue;
    const path = pathOf(screw, pieces, size, angle);
    const layers = path.layers.map((l) => `${l.part} ${l.face} ${l.depth.approx.toFixed(3)}`);
    const key = [path.behind.toFixed(3), ...layers].join("\n");
    if (!paths.has(key)) paths.set(key, path);
  }
  return [...paths.values()];
}

function sameWay(a: PlacedScrew, b: PlacedScrew, pieces: readonly Piece[]): boolean {
  if (a.passes.length !== b.passes.length) return false;
  const partOf = (i: number): string => pieces[i]!.part;
  const role = ({ crossing: { first, into } }: PlacedScrew, piece: number): number =>
    piece === first ? 0 : piece === into ? 1 : 2;
  return a.passes.every((p, i) => {
    const q = b.passes[i]!;
    return (
      Math.abs(p.enters - q.enters) < ONE_WAY &&
      Math.abs(p.leaves - q.leaves) < ONE_WAY &&
      p.sides[0] === q.sides[0] &&
      role(a, p.piece) === role(b, q.piece) &&
      partOf(p.piece) === partOf(q.piece)
    );
  });
}

/** mm */
const ONE_WAY = 1e-6;

function pathOf(screw: PlacedScrew, pieces: readonly Piece[], size: Size, angle: Quantity): Path {
  const { crossing, passes } = screw;
  const lean = cos(angle.approx);
  const from = passes.findIndex((s) => s.piece === crossing.first);
  const to = passes.findIndex((s) => s.piece === crossing.into);
  const mid = (s: Passed): number => (Math.max(0, s.enters) + s.leaves) / 2;
  const used =
    to < 0
      ? []
      : passes.slice(Math.max(0, from), to + 1).filter((s, i, l) => i === 0 || mid(s) > mid(l[i - 1]!));
  const layers = used.map(
    (s): Layer => ({
      part: pieces[s.piece]!.part,
      face: faceOf(s.sides[0]),
      depth: roughly(LENGTH, (s.leaves - Math.max(0, s.enters)) * lean),
    }),
  );
  const end = used.at(-1)?.leaves ?? 0;
  const last = passes
    .slice(to + 1)
    .reduce((at, s) => (s.enters <= at + HAIRLINE ? Math.max(at, s.leaves) : at), end);
  return {
    first: pieces[crossing.first]!.part,
    into: pieces[crossing.into]!.part,
    layers,
    behind: (last - end) * lean,
    driven: drive(size, angle, layers),
  };
}

const faceOf = (side: BoardSide): Face =>
  side === "left end" || side === "right end"
    ? "end"
    : side === "near edge" || side === "far edge"
      ? "edge"
      : "face";
