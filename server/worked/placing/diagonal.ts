/** A board that runs from one corner of a face to the opposite one: its rectangle, its length and its end cuts. */
import type { Clause, Side } from "../../../grammar/tree";
import { chain, type Declared, known, map, type Value } from "../../plan";
import { cos, degrees, radians, sin, tan } from "../../solid/angle";
import type { Pose } from "../../solid/pose";
import { cross, type Vec3 } from "../../solid/vector";
import type { Quantity } from "../../units";
import type { DiagonalCut } from "../shapes";
import { AXES, type Axis, axisOfSide, isFar } from "./axes";
import type { Block, BoardIn } from "./block";
import type { PlaceEntry } from "./clauses";
import { betweenAxis } from "./open";
import type { Placement, Placing } from "./placing";
import { less, type Stretch } from "./stretch";

export type DiagonalClause = Clause & { readonly kind: "diagonal" };

/** The rectangle in which a diagonal runs. */
export interface Diagonal {
  readonly clause: DiagonalClause;
  /** The two directions of the face: level (or across, on a level face) first. */
  readonly axes: readonly [Axis, Axis];
  readonly along: (axis: Axis) => Value<Stretch>;
  /** The direction in which two things bound it, if the line names them. */
  readonly between: Axis | undefined;
}

/** The diagonal of a line: over the whole of a face, or between two things along one of its directions. */
export function diagonalOf(placing: Placing, p: Placement): Diagonal | undefined {
  const clause = diagonalClause(p.entry);
  if (!clause) return undefined;
  const between = p.entry.clauses.find((c): c is Clause & { kind: "between" } => c.kind === "between");
  const bound = between && betweenAxis(placing, p, between);
  const along = (axis: Axis): Value<Stretch> =>
    between && axis === bound
      ? placing.spanBetween(p, between, axis)
      : placing.target(p, clause.target, axis);
  return { clause, axes: faceAxes(clause.face), along, between: bound };
}

/** The length and the miters that the first diagonal place of a part asks for; undefined when it has none. */
export function diagonalCut(placing: Placing, p: Placement): Value<DiagonalCut> | undefined {
  const diagonal = diagonalOf(placing, p);
  if (!diagonal) return undefined;
  return map(runIn(placing, p, diagonal), ({ run, across, up, width }) => cutOf(run, across, up, width));
}

interface RunIn {
  readonly run: Run;
  /** Sides of the rectangle, along the first direction of the face and the second; and the board's width. */
  readonly across: number;
  readonly up: number;
  readonly width: number;
}

/** How the board of a diagonal line runs; a fault where its rectangle has no room for it. */
function runIn(placing: Placing, p: Placement, diagonal: Diagonal): Value<RunIn> {
  const { clause, axes, along, between } = diagonal;
  const [u, v] = axes;
  return chain(along(u), (x) =>
    chain(along(v), (y) =>
      chain(placing.input.shapes.width(p.subject), (w) => {
        const sides = [less(x.high, x.low), less(y.high, y.low)] as const;
        const [across, up] = [sides[0].approx, sides[1].approx];
        const run = runOf(across, up, w.approx, isLevel(across, up, between, v));
        if (run) return known({ run, across, up, width: w.approx });
        const at = { file: p.context.file, start: clause.start, end: clause.end };
        const why = { is: "diagonal", width: w, sides } as const;
        return placing.input.worker.fault({ kind: "no-room", at, subject: p.subject.name, why });
      }),
    ),
  );
}

export const diagonalClause = (entry: PlaceEntry): DiagonalClause | undefined =>
  entry.clauses.find((c): c is DiagonalClause => c.kind === "diagonal");

/** From which corner to which a diagonal runs. */
type Corners = Pick<DiagonalClause, "from" | "to">;

/** As its own clause says, or the words behind the face; nothing said is from bottom left to top right. */
const cornersOf = (entry: PlaceEntry): Corners =>
  entry.clauses.find((c): c is Clause & { kind: "run" } => c.kind === "run") ?? diagonalClause(entry)!;

/** The two directions of a face. */
export function faceAxes(face: Side): readonly [Axis, Axis] {
  const [u, v] = AXES.filter((a) => a !== axisOfSide(face));
  return [u!, v!];
}

/** A board of one width in a rectangle, cut level (or plumb) at both ends so that its corners lie in those of the rectangle. */
export interface Run {
  /** Degrees from the first direction of the face. */
  readonly rise: number;
  /** The ends lie along the first direction (level cuts); else along the second (plumb cuts). */
  readonly level: boolean;
}

/** How the board runs; undefined where the rectangle is too small for it. */
export function runOf(across: number, up: number, width: number, level: boolean): Run | undefined {
  const straight = Math.hypot(across, up);
  if (!(straight > width) || across <= 0 || up <= 0) return undefined;
  const turn = degrees(Math.asin(width / straight));
  const rise = degrees(Math.atan2(up, across)) + (level ? turn : -turn);
  return rise > 0 && rise < 90 ? { rise, level } : undefined;
}

/** Tip to tip, and the miter of both ends. */
export function cutOf(run: Run, across: number, up: number, width: number): DiagonalCut {
  const miter = run.level ? 90 - run.rise : run.rise;
  const edge = run.level ? up / sin(run.rise) : across / cos(run.rise);
  return { length: edge + width * tan(miter), miter };
}

/** Whether the ends of a diagonal are cut level: they meet rails above and below, or it is steep. */
export const isLevel = (across: number, up: number, between: Axis | undefined, v: Axis): boolean =>
  between === undefined ? up >= across : between === v;

/** The block of a diagonal: its rectangle, as thick as the board. The line is found when it is first asked for. */
export function diagonalBlock(placing: Placing, part: Declared, key: string, line: () => Placement): Block {
  const thickness = () => placing.input.shapes.thickness(part);
  const diagonal = () => diagonalOf(placing, line())!;
  const size = (axis: Axis): Value<Quantity> =>
    axis === axisOfSide(diagonal().clause.face)
      ? thickness()
      : map(diagonal().along(axis), (s) => less(s.high, s.low));
  const boards = (): Value<readonly BoardIn[]> =>
    chain(runIn(placing, line(), diagonal()), ({ run, across }) =>
      map(thickness(), (t) => {
        const pose = poseOf(diagonal().clause, cornersOf(line().entry), run, [across, t.approx]);
        return [{ part: part.name, path: "", pose, owners: [], line: key }];
      }),
    );
  return { size, thin: () => false, inside: () => [], boards };
}

/** From the lowest corner of the rectangle, which is so wide, and a board so thick. */
function poseOf(
  clause: DiagonalClause,
  words: Corners,
  run: Run,
  [across, thick]: readonly [number, number],
): Pose {
  const [u, v] = faceAxes(clause.face);
  const n = axisOfSide(clause.face);
  // Runs towards the far side of the first direction while it climbs the second, or the other way.
  const endsFar = (axis: Axis): boolean => {
    const along = (s: Side): boolean => axisOfSide(s) === axis;
    const [to, from] = [words.to.find(along), words.from.find(along)];
    return to ? isFar(to) : !from || !isFar(from);
  };
  const forward = endsFar(u) === endsFar(v);
  const inFace = (x: number, y: number): Vec3 => {
    const at: [number, number, number] = [0, 0, 0];
    at[u] = forward ? x : -x;
    at[v] = y;
    return at;
  };
  const [c, s] = [Math.cos(radians(run.rise)), Math.sin(radians(run.rise))];
  const length = inFace(c, s);
  const width = run.level ? inFace(s, -c) : inFace(-s, c);
  const thickness = cross(length, width);
  const origin: [number, number, number] = [0, 0, 0];
  origin[u] = forward ? 0 : across;
  origin[n] = thickness[n] < 0 ? thick : 0;
  return { length, width, thickness, origin };
}
