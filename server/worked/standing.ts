/** Boards as solids in space. What stands turned alike is turned once and then only moved. */
import type { Ridge, Solid } from "../solid/board";
import { type Body, type Bounds, bodyOf, boundsOf, MovedBody } from "../solid/contact";
import { type Pose, placed, placedAt, turned } from "../solid/pose";
import { add } from "../solid/vector";

/** A board in space: its convex cells, the ridges that are seen, and the block round it. */
export interface StandingSolid {
  readonly cells: readonly Body[];
  readonly ridges: readonly Ridge[];
  readonly bounds: Bounds;
}

type Turned = Pick<StandingSolid, "cells" | "bounds">;

export class StandingSolids {
  private readonly done = new Map<Solid, Map<string, Turned>>();

  /** The solid where that pose puts it. */
  at(solid: Solid, pose: Pose): StandingSolid {
    const { cells, bounds } = this.turnedAs(solid, pose);
    const by = pose.origin;
    let ridges: readonly Ridge[] | undefined;
    // Only a drawing asks for the ridges, and never while typing.
    return {
      cells: cells.map((c) => new MovedBody(c, by)),
      get ridges() {
        ridges ??= solid.ridges.map((r) => ridgeAt(r, pose));
        return ridges;
      },
      bounds: { least: add(bounds.least, by), most: add(bounds.most, by) },
    };
  }

  private turnedAs(solid: Solid, { length, width, thickness }: Pose): Turned {
    const key = [...length, ...width, ...thickness].join();
    const ways = this.done.get(solid) ?? new Map<string, Turned>();
    this.done.set(solid, ways);
    const before = ways.get(key);
    if (before) return before;
    const pose = { length, width, thickness, origin: [0, 0, 0] } as const;
    const cells = solid.cells.map((cell) => bodyOf(placed(cell, pose)));
    const found = {
      cells,
      bounds: boundsOf(cells.flatMap((c) => [c.bounds.least, c.bounds.most])),
    };
    ways.set(key, found);
    return found;
  }
}

const ridgeAt = ({ from, to, normals }: Ridge, pose: Pose): Ridge => ({
  from: placedAt(pose, from),
  to: placedAt(pose, to),
  normals: normals.map((n) => turned(pose, n)),
});
