/**
 * One piece of a part as it lies on the bench: its face with the lengths between its points and its width, and its edge
 * below where a cut goes through the thickness. Of a long board the middle is left out, so that its ends are seen.
 */
import type { Ridge } from "../solid/board";
import { type Body, bodyOf } from "../solid/contact";
import type { CutBoard } from "../solid/ends";
import { dot, type Vec3 } from "../solid/vector";
import { pictureOf, type Seen, type View, viewFrom } from "../solid/view";
import type { Drawing, Item, Point } from "./display";
import { type Fit, ONE_LINE, paths } from "./piece-drawing/paper";
import { onPage } from "./teach";
import { measure, shape, stroke } from "./teach/pen";

/** A piece in its own frame, as boards lie: length along x, width along y, thickness along z; mm. */
export interface LyingPiece {
  readonly cells: readonly { readonly vertices: readonly Vec3[]; readonly facets: Body["facets"] }[];
  readonly ridges: readonly Ridge[];
  readonly cut: CutBoard;
  readonly width: number;
  readonly thickness: number;
}

export interface LyingWords {
  readonly length: (mm: number) => string;
  readonly longPoints: (length: string) => string;
  readonly shortPoints: (length: string) => string;
}

export function drawPart(piece: LyingPiece, words: LyingWords, title: string): Drawing {
  const short = shortened(piece);
  const { seen, moved } = short;
  const long = moved(piece.cut.overall);
  const scale = Math.max(long / LONGEST, piece.width / HIGHEST, 1e-6);
  const face = viewed(seen, FACE, { scale, left: 0, top: piece.width });
  const edgeTop = piece.width / scale + BELOW;
  const edge = viewed(seen, EDGE, { scale, left: 0, top: piece.thickness + edgeTop * scale });
  const both = throughThickness(piece);
  const foot = both ? edgeTop + piece.thickness / scale : piece.width / scale;
  const items: Item[] = [
    ...face,
    ...(both ? edge : []),
    ...lengthsOf(piece, moved, scale, words),
    ...measure(
      [long / scale, 0],
      [long / scale, piece.width / scale],
      [1, 0],
      ASIDE,
      words.length(piece.width),
    ),
    ...(both
      ? measure([long / scale, edgeTop], [long / scale, foot], [1, 0], ASIDE, words.length(piece.thickness))
      : []),
    ...short.gaps.flatMap((x) => [
      ...broken(x / scale, 0, piece.width / scale),
      ...(both ? broken(x / scale, edgeTop, foot) : []),
    ]),
  ];
  return onPage(items, title);
}

const FACE = viewFrom(0, 90);
const EDGE = viewFrom(0, 0);

/** mm of paper: the board's length and width at most, from face to edge, and how far off measures stand. */
const LONGEST = 58;
const HIGHEST = 24;
const BELOW = 12;
const ASIDE = 5;

function viewed(piece: Seen, view: View, fit: Fit): readonly Item[] {
  const items = paths(pictureOf([piece], view, { within: ONE_LINE * fit.scale }), fit);
  return items.map((item) => {
    if (item.kind === "text") return item;
    const { kind, layer, strokes, closed, weight, fill } = item;
    return { kind, layer, strokes, closed, weight, fill };
  });
}

/** Between the long points, which is the whole; and between the short ones where an end is slanted. */
function lengthsOf(
  { cut, width }: LyingPiece,
  moved: (x: number) => number,
  scale: number,
  words: LyingWords,
): readonly Item[] {
  const { overall, setback, shortPoint } = cut;
  const at = (x: number): number => moved(x) / scale;
  const slanted = setback.left > SAME || setback.right > SAME;
  const whole = words.length(overall);
  const low = width / scale;
  return [
    ...measure([at(0), low], [at(overall), low], [0, 1], ASIDE, slanted ? words.longPoints(whole) : whole),
    ...(slanted && shortPoint > SAME
      ? measure(
          [at(setback.left), 0],
          [at(overall - setback.right), 0],
          [0, -1],
          ASIDE,
          words.shortPoints(words.length(shortPoint)),
        )
      : []),
  ];
}

const SAME = 0.01;

/** Whether the face alone does not tell the cuts: an end leans through the thickness, or a groove goes into it. */
function throughThickness({ cut, cells, thickness }: LyingPiece): boolean {
  const leans = [0, 4].some((first) => {
    const [near, far] = [cut.corners[first]!, cut.corners[first + 2]!];
    return Math.abs(near[0] - far[0]) > SAME;
  });
  const grooved = cells.some(({ vertices }) => vertices.some(([, , z]) => z > SAME && z < thickness - SAME));
  return leans || grooved;
}

/** Two lines across where wood is left out, and white between them. */
function broken(x: number, from: number, to: number): Item[] {
  const middle = (from + to) / 2;
  const at = (off: number): Point[] => [
    [x + off, from - 1],
    [x + off, middle - 1.2],
    [x + off - 0.8, middle - 0.4],
    [x + off + 0.8, middle + 0.4],
    [x + off, middle + 1.2],
    [x + off, to + 1],
  ];
  const [left, right] = [at(-0.7), at(0.7)];
  return [shape([...left, ...[...right].reverse()], "paper", 0), stroke(...left), stroke(...right)];
}

interface Shortened {
  readonly seen: Seen;
  /** Where a place along the board is drawn, in mm of wood. */
  readonly moved: (x: number) => number;
  /** Where on the drawn board some of it is left out, in mm of wood. */
  readonly gaps: readonly number[];
}

/** Without so much of its plain stretches that it is no longer than some widths, the longest first. */
function shortened(piece: LyingPiece): Shortened {
  const { cells, ridges, cut, width } = piece;
  const xs = [...new Set(cells.flatMap((c) => c.vertices.map(([x]) => x)))].sort((a, b) => a - b);
  const plain = (from: number, to: number): boolean =>
    ridges.every(({ from: [a, ay, az], to: [b, by, bz] }) => {
      const along = Math.abs(ay - by) < SAME && Math.abs(az - bz) < SAME;
      return along || Math.max(a, b) <= from + SAME || Math.min(a, b) >= to - SAME;
    });
  let spare = cut.overall - WIDTHS * width;
  const out = xs
    .map((from, i) => ({ from, to: xs[i + 1] ?? from }))
    .filter(({ from, to }) => plain(from, to))
    .sort((a, b) => b.to - b.from - (a.to - a.from))
    .flatMap(({ from, to }) => {
      const left = Math.min(spare, to - from - 2 * width);
      if (left <= width) return [];
      spare -= left;
      return [{ from, to, left }];
    });
  const moved = (x: number): number =>
    out.reduce((at, { from, to, left }) => (x > (from + to) / 2 ? at - left : at), x);
  const point = ([x, y, z]: Vec3): Vec3 => [moved(x), y, z];
  const bodies = cells.map(({ vertices, facets }) => {
    const placed = vertices.map(point);
    return bodyOf({
      vertices: placed,
      facets: facets.map((f) => ({ ...f, offset: dot(f.normal, placed[f.loop[0]!]!) })),
    });
  });
  const lines = ridges.map((r) => ({ ...r, from: point(r.from), to: point(r.to) }));
  return {
    seen: { id: "", cells: bodies, ridges: lines },
    moved,
    gaps: out.map(({ from, to, left }) => moved(from) + (to - from - left) / 2),
  };
}

/** A board that is no more than so many widths long is drawn whole. */
const WIDTHS = 6;
