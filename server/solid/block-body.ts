/** A board without end cuts and notches that lies square to the world: its sizes say all that most questions ask of it. */
import { AXES, type Body, type Bounds } from "./contact";
import { block, type Convex, type Facet } from "./convex";
import { type Pose, placed } from "./pose";
import type { Vec3 } from "./vector";

/** Corners and faces are only worked out when they are asked for. */
export class BlockBody implements Body {
  readonly aligned = true;
  readonly normals = AXES;
  readonly edges = AXES;
  readonly sides = SIDES;
  readonly bounds: Bounds;
  readonly looks: readonly number[];
  private solid: Convex | undefined;

  /** `size` is the board's length, width and thickness; the pose must be square to the world. */
  constructor(
    private readonly size: Vec3,
    private readonly pose: Pose,
  ) {
    const least: [number, number, number] = [...pose.origin];
    const most: [number, number, number] = [...pose.origin];
    const looks: number[] = [];
    waysOf(pose).forEach((way, own) => {
      const axis = way.findIndex((x) => x !== 0) as 0 | 1 | 2;
      const up = way[axis] > 0;
      if (up) most[axis] += size[own]!;
      else least[axis] -= size[own]!;
      // The faces of a block come in pairs: where a direction begins, and where it ends.
      looks[2 * axis] = 2 * own + (up ? 0 : 1);
      looks[2 * axis + 1] = 2 * own + (up ? 1 : 0);
    });
    this.bounds = { least, most };
    this.looks = looks;
  }

  get vertices(): readonly Vec3[] {
    return this.whole().vertices;
  }

  get facets(): readonly Facet[] {
    return this.whole().facets;
  }

  private whole(): Convex {
    this.solid ??= placed(block([0, 0, 0], this.size), this.pose);
    return this.solid;
  }
}

const waysOf = ({ length, width, thickness }: Pose): readonly Vec3[] => [length, width, thickness];

/** Whether each of its directions is one of the world's, without a crumb beside. */
export const isSquare = (pose: Pose): boolean =>
  waysOf(pose).every((way) => way.every((x) => x === 0 || x === 1 || x === -1));

const SIDES: Body["sides"] = block([0, 0, 0], [1, 1, 1]).facets.map(({ side, inner }) => ({ side, inner }));
