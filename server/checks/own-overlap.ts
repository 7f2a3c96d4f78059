/** Pieces that one place line puts into each other: those of a row, at corners, or a piece and its mirror image. */
import { AXIS_WORDS, HAIRLINE, lieOf, type Overlap, type Piece } from "../worked";
import type { Cure } from "./check";
import { phrase } from "./phrases";
import { mm, pieceSlot, wayWords } from "./piece-words";

const AXES = [0, 1, 2] as const;
type Axis = (typeof AXES)[number];

/**
 * Told in the direction in which the line sets the two apart, even where another one is shallower: there it can set them
 * further apart.
 */
export function alongItsLine(overlap: Overlap): Overlap {
  const { pieces, axis } = overlap;
  const [a, b] = pieces;
  const apart = AXES.filter((k) => Math.abs(middle(b, k) - middle(a, k)) > HAIRLINE);
  if (axis === undefined || apart.includes(axis)) return overlap;
  const ways = apart.map((k) => ({ axis: k, depth: inside(pieces, k) }));
  const least = ways.reduce((best, way) => (best && best.depth <= way.depth ? best : way), ways[0]);
  if (!least) return overlap;
  return {
    ...overlap,
    ...least,
    out: along(least.axis, Math.sign(middle(b, least.axis) - middle(a, least.axis))),
  };
}

/** What sets them further apart; and where boards stand upright, turning them, which does it too where they are thin enough. */
export function curesOfOwn(overlap: Overlap): Cure[] {
  const { depth, axis } = overlap;
  if (axis === undefined) return [{ says: "askew", slots: { depth: mm(depth) }, edits: [] }];
  const way = phrase(AXIS_WORDS[axis]);
  const image = asMirrored(overlap, axis);
  const move: Cure = image
    ? { says: "mirror", slots: image, edits: [] }
    : { says: "row", slots: { depth: mm(depth), way }, edits: [] };
  const thin = turned(overlap, axis);
  const facing = axis === 0 ? "left" : "front";
  return thin === undefined
    ? [move]
    : [{ says: "turn", slots: { facing, thin: mm(thin), way }, edits: [] }, move];
}

/** The piece and how far it must go, where the other one is its mirror image and the line has no row. */
function asMirrored(overlap: Overlap, axis: Axis): Cure["slots"] | undefined {
  const piece = mirroredPiece(overlap);
  if (!piece) return undefined;
  const toward = phrase(wayWords(along(axis, sideOf(piece, overlap, axis))));
  return { piece: pieceSlot(piece), half: mm(overlap.depth / 2), toward };
}

/** The one that the line itself places, of two that are mirror images. */
function mirroredPiece({ lines, pieces }: Overlap): Piece | undefined {
  const { placement } = lines[0];
  if (!placement || placement.patterns.length > 0) return undefined;
  const image = pieces.find(({ id }) => /\bmirrored\b/.test(id));
  return image && pieces.find((one) => one !== image);
}

/** 1 where it is the farther one of the two in that direction, -1 where it is the nearer. */
const sideOf = (piece: Piece, { pieces: [a, b] }: Overlap, axis: Axis): number =>
  Math.sign(middle(piece, axis) - (middle(a, axis) + middle(b, axis)) / 2);

/** How thin they are that way (mm) once turned a quarter round, where they then stand clear of each other. */
function turned(overlap: Overlap, axis: Axis): number | undefined {
  const { lines, pieces, depth } = overlap;
  const { placement } = lines[0];
  if (axis === 2 || !placement || !lieOf(placement.entry.clauses).startsWith("upright")) return undefined;
  const [wide, thin] = [size(pieces[0], axis), size(pieces[0], axis === 0 ? 1 : 0)];
  const piece = mirroredPiece(overlap);
  const edge = placement.claims.find((claim) => claim.axis === axis)?.edge;
  // The edge that the line places stays where it is: past the middle, the whole of it has to get past.
  const staysPast = piece && edge === (sideOf(piece, overlap, axis) < 0 ? "high" : "low");
  return (staysPast ? thin <= depth / 2 : depth <= wide - thin) ? thin : undefined;
}

const middle = ({ bounds }: Piece, k: Axis): number => (bounds.least[k] + bounds.most[k]) / 2;
const size = ({ bounds }: Piece, k: Axis): number => bounds.most[k] - bounds.least[k];
const inside = ([a, b]: Overlap["pieces"], k: Axis): number =>
  Math.min(a.bounds.most[k], b.bounds.most[k]) - Math.max(a.bounds.least[k], b.bounds.least[k]);
const along = (axis: Axis, sign: number): Overlap["out"] => [
  axis === 0 ? sign : 0,
  axis === 1 ? sign : 0,
  axis === 2 ? sign : 0,
];
