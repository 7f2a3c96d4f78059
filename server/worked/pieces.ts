/** The placed pieces of a plan: each with its part, its pose, its solid in space and its identity. */
import { type At, ifKnown, lookUp, type Value } from "../plan";
import type { Ridge } from "../solid/board";
import { type Body, type Bounds, bodyOf, boundsOf } from "../solid/contact";
import { isMirrored, type Pose, placed, placedAt, turned } from "../solid/pose";

import { boardSolid, boardsAt, type Owner, type Placement, type Placing } from "./placing";

export interface Piece {
  /** `leg / front left`, `side / in front of legs / 1`: never a place in the text. */
  readonly id: string;
  readonly part: string;
  /** Cut as the mirror image of how the part is drawn. */
  readonly mirrored: boolean;
  readonly pose: Pose;
  /** In the world; empty when notches leave nothing. */
  readonly cells: readonly Body[];
  readonly ridges: readonly Ridge[];
  readonly bounds: Bounds;
  /** The ring or the assemblies it belongs to, outermost first. */
  readonly owners: readonly Owner[];
  /** The key of the place line that put it there; inside an assembly, the assembly's own line. */
  readonly line: string;
  /** The line of the plan itself that put it there. */
  readonly at: At;
}

export interface PlacedLine {
  readonly placement: Placement;
  readonly pieces: readonly Piece[];
}

export interface Pieces {
  readonly lines: readonly PlacedLine[];
  readonly all: readonly Piece[];
  /** Every line could be worked out: what is missing is not for a mistake. */
  readonly complete: boolean;
}

export const NO_PIECES: Pieces = { lines: [], all: [], complete: false };

/** Every piece that the plan's own lines place, in the order of the lines. */
export function piecesOf(placing: Placing): Pieces {
  const lines: PlacedLine[] = [];
  let complete = placing.plan.placements.length > 0;
  for (const placement of placing.plan.placements) {
    const boards = ifKnown(boardsAt(placing, placement));
    complete &&= boards !== undefined;
    const { keyword, subject } = placement.entry;
    const at: At = { file: placement.context.file, start: keyword.start, end: subject.end };
    const pieces = (boards ?? []).flatMap((board): Piece[] => {
      const declared = lookUp(placing.input.scope, board.part);
      const solid = declared && boardSolid(placing.input.shapes.of(declared));
      if (!solid) return [];
      const cells = solid.cells.map((cell) => bodyOf(placed(cell, board.pose)));
      return [
        {
          id: board.path,
          part: board.part,
          mirrored: isMirrored(board.pose),
          pose: board.pose,
          cells,
          ridges: solid.ridges.map((r) => ridgeAt(r, board.pose)),
          bounds: boundsOf(cells.flatMap((c) => [c.bounds.least, c.bounds.most])),
          owners: board.owners,
          line: board.line,
          at,
        },
      ];
    });
    lines.push({ placement, pieces });
  }
  return { lines, all: lines.flatMap((l) => l.pieces), complete };
}

const ridgeAt = ({ from, to, normals }: Ridge, pose: Pose): Ridge => ({
  from: placedAt(pose, from),
  to: placedAt(pose, to),
  normals: normals.map((n) => turned(pose, n)),
});

/** How many pieces of each part are placed; unknown counts where a line could not be worked out. */
export function placedCounts(placing: Placing): ReadonlyMap<string, Value<number>> {
  const counts = new Map<string, Value<number>>();
  const add = (part: string, n: Value<number>): void => {
    const before = counts.get(part);
    if (!before) counts.set(part, n);
    else if (before.state === "known")
      counts.set(part, n.state === "known" ? { state: "known", value: before.value + n.value } : n);
  };
  const visit = (p: Placement, times: Value<number>): void => {
    if (p.subject.kind === "part") {
      add(p.subject.name, times);
      return;
    }
    const product = (n: number): Value<number> =>
      times.state === "known" ? { state: "known", value: times.value * n } : times;
    if (p.subject.kind === "ring") {
      for (const m of placing.input.rings.get(p.subject.name) ?? []) add(m.part, product(m.count));
      return;
    }
    for (const inner of placing.assembly(p.subject).placements) {
      const n = placing.countOf(inner);
      visit(inner, n.state === "known" ? product(n.value) : n);
    }
  };
  for (const p of placing.plan.placements) visit(p, placing.countOf(p));
  return counts;
}
