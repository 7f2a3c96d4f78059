/**
 * A board as a solid in its own frame: its two end cuts, and what notches take out. Convex cells that meet in whole
 * faces, so that a face is either surface or shared; and the ridges that are seen.
 */
import { NUMERIC } from "./angle";
import { block, type Convex, cut, type Facet, type HalfSpace } from "./convex";
import type { CutBoard } from "./ends";
import { cross, dot, mean, subtract, unit, type Vec3 } from "./vector";

/** Wood taken out: a block from one corner to the opposite, in the board's frame. */
export interface TakenOut {
  readonly from: Vec3;
  readonly to: Vec3;
}

export interface BoardShape {
  readonly cut: CutBoard;
  readonly width: number;
  readonly thickness: number;
  readonly takenOut: readonly TakenOut[];
}

/** An edge between two faces of the surface that are not in one plane. */
export interface Ridge {
  readonly from: Vec3;
  readonly to: Vec3;
  /** Outward normals of the faces beside it. */
  readonly normals: readonly Vec3[];
}

export interface Solid {
  /** The whole of it is one block, from the origin to this corner. */
  readonly block: Vec3 | undefined;
  readonly cells: readonly Convex[];
  readonly ridges: readonly Ridge[];
}

/** The solid of a board. Notches that leave nothing leave no cells. */
export function solidOf({ cut: ends, width, thickness, takenOut }: BoardShape): Solid {
  const size: Vec3 = [ends.overall, width, thickness];
  const halves = endCuts(ends);
  return new LazySolid(halves.length + takenOut.length === 0 ? size : undefined, () => {
    const whole = halves.reduce<Convex | undefined>(
      (solid, half) => solid && cut(solid, half),
      block([0, 0, 0], size),
    );
    if (!whole) return [];
    return takenOut.length === 0 ? [whole] : apartFrom(whole, takenOut);
  });
}

/** Worked out when asked for: of a plain block its size says most, and only a drawing asks for ridges. */
class LazySolid implements Solid {
  private madeCells: readonly Convex[] | undefined;
  private madeRidges: readonly Ridge[] | undefined;

  constructor(
    readonly block: Vec3 | undefined,
    private readonly make: () => readonly Convex[],
  ) {}

  get cells(): readonly Convex[] {
    this.madeCells ??= this.make();
    return this.madeCells;
  }

  get ridges(): readonly Ridge[] {
    this.madeRidges ??= ridgesOf(this.cells);
    return this.madeRidges;
  }
}

/** The half-spaces of both ends, where they are not square. */
function endCuts({ corners, overall }: CutBoard): HalfSpace[] {
  const end = (first: number, side: "left end" | "right end", outward: Vec3, at: number): HalfSpace[] => {
    const [a, b, c] = [corners[first]!, corners[first + 1]!, corners[first + 2]!];
    const square = [0, 1, 2, 3].every((i) => Math.abs(corners[first + i]![0] - at) < NUMERIC);
    const across = unit(cross(subtract(b, a), subtract(c, a)));
    if (square || !across) return [];
    const normal: Vec3 = dot(across, outward) < 0 ? [-across[0], -across[1], -across[2]] : across;
    return [{ side, normal, offset: dot(normal, a) }];
  };
  return [...end(0, "left end", [-1, 0, 0], 0), ...end(4, "right end", [1, 0, 0], overall)];
}

/** The solid less some blocks: cut along all their sides, what lies in a block left out, faces between cells marked. */
function apartFrom(whole: Convex, blocks: readonly TakenOut[]): Convex[] {
  let cells = [whole];
  for (const k of AXES) {
    const normal: Vec3 = [k === 0 ? 1 : 0, k === 1 ? 1 : 0, k === 2 ? 1 : 0];
    const back: Vec3 = [-normal[0], -normal[1], -normal[2]];
    for (const at of new Set(blocks.flatMap((b) => [b.from[k], b.to[k]])))
      cells = cells.flatMap((cell) => {
        const low = cut(cell, { normal, offset: at, side: SIDES[k][1] });
        const high = cut(cell, { normal: back, offset: -at, side: SIDES[k][0] });
        return low && high ? [low, high] : [cell];
      });
  }
  const kept = cells.filter((cell) => !blocks.some((b) => lies(middleOf(cell), b)));
  const shared = new Map<string, number>();
  const keyOf = (cell: Convex, { loop }: Facet): string => spot(mean(loop.map((i) => cell.vertices[i]!)));
  for (const cell of kept)
    for (const facet of cell.facets) {
      const key = keyOf(cell, facet);
      shared.set(key, (shared.get(key) ?? 0) + 1);
    }
  return kept.map((cell) => ({
    ...cell,
    facets: cell.facets.map((f) => (shared.get(keyOf(cell, f))! > 1 ? { ...f, inner: true } : f)),
  }));
}

const lies = (p: Vec3, { from, to }: TakenOut): boolean => AXES.every((k) => p[k] > from[k] && p[k] < to[k]);
const middleOf = ({ vertices, facets }: Convex): Vec3 =>
  mean([...new Set(facets.flatMap((f) => f.loop))].map((i) => vertices[i]!));

/** The same text for points nearer than the arithmetic tells apart. */
const spot = (p: Vec3): string => p.map((x) => Math.round(x * 1e4 + ASIDE)).join(" ");
/** Keeps the fractions of an inch, many of which end in half of what is rounded to, away from where rounding turns. */
const ASIDE = 0.137;

function ridgesOf(cells: readonly Convex[]): Ridge[] {
  const edges = new Map<string, { from: Vec3; to: Vec3; normals: Vec3[] }>();
  for (const { vertices, facets } of cells)
    for (const { loop, normal, inner } of facets) {
      if (inner) continue;
      loop.forEach((a, i) => {
        const [from, to] = [vertices[a]!, vertices[loop[(i + 1) % loop.length]!]!];
        const [p, q] = [spot(from), spot(to)];
        const key = p < q ? `${p} ${q}` : `${q} ${p}`;
        const edge = edges.get(key);
        if (edge) edge.normals.push(normal);
        else edges.set(key, { from, to, normals: [normal] });
      });
    }
  return [...edges.values()].filter(({ normals }) => normals.some((n) => dot(n, normals[0]!) < 1 - NUMERIC));
}

const AXES = [0, 1, 2] as const;
const SIDES = [
  ["left end", "right end"],
  ["near edge", "far edge"],
  ["under face", "upper face"],
] as const;
