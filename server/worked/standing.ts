/** Boards as solids in space. What stands turned alike is turned once and then only moved. */

import { BlockBody, isSquare } from "../solid/block-body";
import type { Ridge, Solid } from "../solid/board";
import { type Body, type Bounds, bodyOf, boundsOf, MovedBody } from "../solid/contact";
import { type Pose, placed, placedAt, turned } from "../solid/pose";
import { add, type Vec3 } from "../solid/vector";

/** A board in space: its convex cells, the block round it, and the ridges that are seen: only a drawing asks for these, never while typing. */
export interface StandingSolid {
  readonly cells: readonly Body[];
  readonly ridges: () => readonly Ridge[];
  readonly bounds: Bounds;
}

interface Turned extends Pick<StandingSolid, "cells" | "bounds"> {
  readonly pose: Pose;
}

export class StandingSolids {
  /** The ways in which each solid stands, the newest first, and not many. */
  private readonly done = new Map<Solid, Turned[]>();

  /** The solid where that pose puts it. */
  at(solid: Solid, pose: Pose): StandingSolid {
    const { cells, bounds } = this.turnedAs(solid, pose);
    const by = pose.origin;
    let ridges: readonly Ridge[] | undefined;
    const moved = cells.map((c) => new MovedBody(c, by));
    return {
      cells: moved,
      ridges: () => {
        ridges ??= solid.ridges.map((r) => ridgeAt(r, pose));
        return ridges;
      },
      bounds:
        moved.length === 1 ? moved[0]!.bounds : { least: add(bounds.least, by), most: add(bounds.most, by) },
    };
  }

  private turnedAs(solid: Solid, { length, width, thickness }: Pose): Turned {
    const ways = this.done.get(solid) ?? [];
    this.done.set(solid, ways);
    const before = ways.find(
      ({ pose }) => same(pose.length, length) && same(pose.width, width) && same(pose.thickness, thickness),
    );
    if (before) return before;
    const pose = { length, width, thickness, origin: [0, 0, 0] } as const;
    const cells: Body[] =
      solid.block && isSquare(pose)
        ? [new BlockBody(solid.block, pose)]
        : solid.cells.map((cell) => bodyOf(placed(cell, pose)));
    const found: Turned = {
      pose,
      cells,
      bounds: boundsOf(cells.flatMap((c) => [c.bounds.least, c.bounds.most])),
    };
    ways.unshift(found);
    ways.length = Math.min(ways.length, MOST_WAYS);
    return found;
  }
}

/** More are rare, and looking through them would take longer than turning the solid again. */
const MOST_WAYS = 16;

const same = (a: Vec3, b: Vec3): boolean => a === b || (a[0] === b[0] && a[1] === b[1] && a[2] === b[2]);

const ridgeAt = ({ from, to, normals }: Ridge, pose: Pose): Ridge => ({
  from: placedAt(pose, from),
  to: placedAt(pose, to),
  normals: normals.map((n) => turned(pose, n)),
});
