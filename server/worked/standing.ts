/** Boards as solids in space. What stands turned alike is turned once and then only moved. */
import type { Ridge, Solid } from "../solid/board";
import { type Body, type Bounds, bodyOf, boundsOf } from "../solid/contact";
import { type Pose, placed, placedAt, turned } from "../solid/pose";
import { dot, type Vec3 } from "../solid/vector";

/** A board in space: its convex cells, the ridges that are seen, and the block round it. */
export interface StandingSolid {
  readonly cells: readonly Body[];
  readonly ridges: readonly Ridge[];
  readonly bounds: Bounds;
}

export class StandingSolids {
  private readonly done = new Map<Solid, Map<string, StandingSolid>>();

  /** The solid where that pose puts it. */
  at(solid: Solid, pose: Pose): StandingSolid {
    const { cells, ridges, bounds } = this.turnedAs(solid, pose);
    const by = pose.origin;
    return {
      cells: cells.map((c) => moved(c, by)),
      ridges: ridges.map((r) => ({ from: sum(r.from, by), to: sum(r.to, by), normals: r.normals })),
      bounds: { least: sum(bounds.least, by), most: sum(bounds.most, by) },
    };
  }

  private turnedAs(solid: Solid, { length, width, thickness }: Pose): StandingSolid {
    const key = [...length, ...width, ...thickness].join();
    const ways = this.done.get(solid) ?? new Map<string, StandingSolid>();
    this.done.set(solid, ways);
    const before = ways.get(key);
    if (before) return before;
    const pose = { length, width, thickness, origin: [0, 0, 0] } as const;
    const cells = solid.cells.map((cell) => bodyOf(placed(cell, pose)));
    const found = {
      cells,
      ridges: solid.ridges.map((r) => ridgeAt(r, pose)),
      bounds: boundsOf(cells.flatMap((c) => [c.bounds.least, c.bounds.most])),
    };
    ways.set(key, found);
    return found;
  }
}

const sum = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

const moved = (body: Body, by: Vec3): Body => ({
  ...body,
  vertices: body.vertices.map((v) => sum(v, by)),
  facets: body.facets.map((f) => ({ ...f, offset: f.offset + dot(f.normal, by) })),
  bounds: { least: sum(body.bounds.least, by), most: sum(body.bounds.most, by) },
});

const ridgeAt = ({ from, to, normals }: Ridge, pose: Pose): Ridge => ({
  from: placedAt(pose, from),
  to: placedAt(pose, to),
  normals: normals.map((n) => turned(pose, n)),
});
