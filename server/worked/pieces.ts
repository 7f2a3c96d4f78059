/** The placed pieces of a plan: each with its part, its pose, its solid in space and its identity. */
import { type At, ifKnown, lookUp, type Value } from "../plan";
import { isMirrored, type Pose } from "../solid/pose";
import { type BoardIn, boardSolid, boardsAt, type Owner, type Placement, type Placing } from "./placing";
import { type StandingSolid, StandingSolids } from "./standing";

/** A piece, with its solid in the world. */
export interface Piece extends StandingSolid {
  /** `leg / front left`, `side / in front of legs / 1`: never a place in the text. */
  readonly id: string;
  readonly part: string;
  /** Cut as the mirror image of how the part is drawn. */
  readonly mirrored: boolean;
  readonly pose: Pose;
  /** The ring or the assemblies it belongs to, outermost first. */
  readonly owners: readonly Owner[];
  /** The key of the place line that put it there; inside an assembly, the assembly's own line. */
  readonly line: string;
  /** The line of the plan itself that put it there. */
  readonly at: At;
}

export interface PlacedLine {
  readonly placement: Placement;
  /** Its boards, or why it is not known where they stand. */
  readonly stands: Value<readonly BoardIn[]>;
  readonly pieces: readonly Piece[];
}

export interface Pieces {
  readonly lines: readonly PlacedLine[];
  readonly all: readonly Piece[];
  /** Every line could be worked out: what is missing is not for a mistake. */
  readonly complete: boolean;
}

export const NO_PIECES: Pieces = { lines: [], all: [], complete: false };

/** Every piece that the plan's own lines place, in the order of the lines; none for a board of which notches leave nothing. */
export function piecesOf(placing: Placing): Pieces {
  const lines: PlacedLine[] = [];
  const solids = new StandingSolids();
  let complete = placing.plan.placements.length > 0;
  for (const placement of placing.plan.placements) {
    const stands = boardsAt(placing, placement);
    const boards = ifKnown(stands);
    complete &&= boards !== undefined;
    const { keyword, subject } = placement.entry;
    const at: At = { file: placement.context.file, start: keyword.start, end: subject.end };
    const pieces = (boards ?? []).flatMap((board): Piece[] => {
      const declared = lookUp(placing.input.scope, board.part);
      const solid = declared && boardSolid(placing.input.shapes.of(declared));
      if (!solid) return [];
      const { cells, ridges, bounds } = solids.at(solid, board.pose);
      return [
        {
          cells,
          ridges,
          bounds,
          id: board.path,
          part: board.part,
          mirrored: isMirrored(board.pose),
          pose: board.pose,
          owners: board.owners,
          line: board.line,
          at,
        },
      ];
    });
    lines.push({ placement, stands, pieces });
  }
  return { lines, all: lines.flatMap((l) => l.pieces), complete };
}
