/** What one place line puts somewhere, before it is put: how large it is in each direction, and the boards in it. */
import type { Value } from "../../plan";
import type { Pose } from "../../solid/pose";
import type { Quantity } from "../../units";
import type { Axis } from "./axes";
import type { Stretch } from "./stretch";

/** One ring or assembly where it is placed: its name, and the identity of that one copy of it. */
export interface Owner {
  readonly name: string;
  readonly id: string;
}

/** A board somewhere in a block: from the block's lowest left front corner, millimetres. */
export interface BoardIn {
  readonly part: string;
  /** What tells it from other boards of the block: `post / on floor`. Empty for a part placed by itself. */
  readonly path: string;
  readonly pose: Pose;
  /** The ring or the assemblies it belongs to, outermost first. */
  readonly owners: readonly Owner[];
  /** The place line that put it there, as an entry's key. */
  readonly line: string;
}

/** Pieces of one name inside a block, whose places along the three directions do not depend on each other. */
export interface Inside {
  /** From the block's lower side. */
  readonly stretches: (axis: Axis) => Value<readonly Stretch[]>;
  /** Whether its thickness points in that direction: never for boards that stand askew. */
  readonly thin: (axis: Axis) => boolean;
}

export interface Block {
  readonly size: (axis: Axis) => Value<Quantity>;
  readonly thin: (axis: Axis) => boolean;
  /** Boards of that part inside it; undefined for a block that is the part itself. */
  readonly inside: (part: string) => readonly Inside[];
  readonly boards: () => Value<readonly BoardIn[]>;
}
