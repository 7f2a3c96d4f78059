/** What a drawing of the built thing is made from: pieces where they stand. World: x to the right, y to the back, z up; mm. */
import type { Vec3 } from "../../solid/vector";
import type { Seen } from "../../solid/view";

export interface DrawnPiece extends Seen {
  /** Text of its balloon, `A`: the same for all pieces of a row of the cut list. */
  readonly mark: string;
  /** What its row of the cut list is called: `leg`, `stile left`. */
  readonly title: string;
  /** Names of the assemblies it is in, outermost first. */
  readonly assembly: readonly string[];
  /** Direction and distance to move it when the thing is drawn apart. */
  readonly apart?: Vec3;
}

/** The pieces that stand in an assembly of that name, at any depth. */
export const ofAssembly = (pieces: readonly DrawnPiece[], name: string): readonly DrawnPiece[] =>
  pieces.filter(({ assembly }) => assembly.includes(name));
