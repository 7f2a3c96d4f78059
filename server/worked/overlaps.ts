/** Which place lines put pieces into each other: the clashes of solids, by the lines that cause them. Millimetres. */
import { type At, lookUp } from "../plan";
import { HAIRLINE, TOUCHING } from "../solid/contact";
import type { Vec3 } from "../solid/vector";
import type { Piece, PlacedLine } from "./pieces";
import type { Placement } from "./placing";
import type { Clash } from "./space";
import type { Worked } from "./work";

type Axis = 0 | 1 | 2;
const AXES = [0, 1, 2] as const;

/** A place line, inside an assembly or not, and where it is written. */
export interface LineAt {
  readonly placement: Placement | undefined;
  readonly at: At;
}

/** All clashes of the pieces of two place lines, or of one line with itself. */
export interface Overlap {
  readonly worst: Clash;
  /** The piece of the earlier line, and that of the later. */
  readonly pieces: readonly [Piece, Piece];
  readonly lines: readonly [LineAt, LineAt];
  /** mm, and the way the later piece would have to go to be clear. */
  readonly depth: number;
  readonly out: Vec3;
  /** The axis it runs along; undefined at an angle. */
  readonly axis: Axis | undefined;
  /** How many pairs of pieces clash like that. */
  readonly count: number;
}

/** Overlaps deeper than a hairline, by the lines that cause them. Those at the corners of a ring are the ring's own: it does not close. */
export function overlapsOf(worked: Worked): Overlap[] {
  const { pieces, clashes } = worked.space;
  if (clashes.length === 0) return [];
  const outer = linesOfPieces(worked);
  const corners = new Set(
    worked.corners.flatMap((c) => [`${c.first} ${c.second}`, `${c.second} ${c.first}`]),
  );
  const groups = new Map<string, Overlap>();
  for (const clash of clashes) {
    if (clash.depth <= HAIRLINE || corners.has(`${clash.a} ${clash.b}`)) continue;
    const [a, b] = [pieces[clash.a]!, pieces[clash.b]!];
    const [p, q] = blamed(worked, outer, a, b);
    const later = q.at.file === p.at.file && q.at.start >= p.at.start;
    const key = [p, q]
      .map((l) => `${l.at.file} ${l.at.start}`)
      .sort()
      .join("\n");
    const before = groups.get(key);
    const count = (before?.count ?? 0) + 1;
    if (before && before.depth >= clash.depth - TOUCHING) {
      groups.set(key, { ...before, count });
      continue;
    }
    const out: Vec3 = later
      ? clash.direction
      : [-clash.direction[0], -clash.direction[1], -clash.direction[2]];
    groups.set(key, {
      worst: clash,
      pieces: later ? [a, b] : [b, a],
      lines: later ? [p, q] : [q, p],
      depth: clash.depth,
      out,
      axis: AXES.find((k) => Math.abs(out[k]) > ALONG),
      count,
    });
  }
  return [...groups.values()];
}

/** Cosine from which a direction counts as one of the three. */
const ALONG = 0.9998;

/** The lines to blame: those of the plan, or of the assembly where both stand in one copy of it. */
function blamed(
  worked: Worked,
  outer: ReadonlyMap<Piece, PlacedLine>,
  a: Piece,
  b: Piece,
): readonly [LineAt, LineAt] {
  const [p, q] = [a, b].map((piece): LineAt => ({ placement: outer.get(piece)?.placement, at: piece.at }));
  const copy = a.owners[0];
  const inside = copy && copy.id === b.owners[0]?.id;
  return inside ? [innerLine(worked, a) ?? p!, innerLine(worked, b) ?? q!] : [p!, q!];
}

function innerLine({ placing, scope }: Worked, piece: Piece): LineAt | undefined {
  const names = [piece.part, ...piece.owners.map((o) => o.name)];
  const placement = names.flatMap((n) => placing.linesOf(n)).find((l) => l.key === piece.line);
  if (!placement || !lookUp(scope, placement.subject.name)) return undefined;
  const { keyword, subject } = placement.entry;
  return { placement, at: { file: placement.context.file, start: keyword.start, end: subject.end } };
}

/** The plan's own line that places a piece. */
export const lineOfPiece = ({ pieces }: Worked, piece: Piece): LineAt => ({
  placement: pieces.lines.find((l) => l.pieces.includes(piece))?.placement,
  at: piece.at,
});

const linesOfPieces = ({ pieces }: Worked): ReadonlyMap<Piece, PlacedLine> =>
  new Map(pieces.lines.flatMap((line) => line.pieces.map((p) => [p, line] as const)));
