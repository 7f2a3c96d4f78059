/** Other numbers and other distances for a row of pieces whose gaps catch a finger or a head, tried on the row. Millimetres. */
import type { Expression } from "../../../grammar/tree";
import { type At, ifKnown } from "../../plan";
import { NUMERIC } from "../../solid/angle";
import { type Bounds, boundsApart, HAIRLINE } from "../../solid/contact";
import { fraction, LENGTH, type Quantity, roughly } from "../../units";
import { leansOn } from "../moving";
import type { Piece, PlacedLine } from "../pieces";
import type { Pattern } from "../placing/clauses";
import { patternAxis } from "../placing/open";
import { asManyAsFit, type Row } from "../placing/pattern";
import type { Worked } from "../work";
import type { Opening } from "./openings";
import { FINGERS, HEADS } from "./sizes";
import type { Trap } from "./traps";

export interface RowChange {
  readonly is: "count" | "apart" | "at most" | "on center";
  /** What is to be written at its place: a number of pieces, or mm. */
  readonly to: number;
  readonly at: At;
  readonly pieces: number;
  readonly gap: number;
  /** The number of pieces that the part's own line must say then. */
  readonly count: { readonly at: At; readonly to: number } | undefined;
}

/** A gap that catches neither. */
export const isHarmless = (gap: number): boolean =>
  gap < FINGERS.low - NUMERIC ||
  (gap > FINGERS.high + NUMERIC && gap <= HEADS.low + NUMERIC) ||
  gap >= HEADS.high - NUMERIC;

/** The least changes of the row's own line, to fewer and to more pieces, or to a wider and to a narrower gap; none where the gap is of no row. */
export function rowChanges({ catches, opening }: Trap, worked: Worked): RowChange[] {
  const found = rowOf(opening, worked);
  if (!found) return [];
  const { pattern, row } = found;
  const rule = pattern.spacing?.rule;
  if (rule === "apart" || rule === "on center") return spacings(found, rule, worked);
  const even = pattern.spread !== undefined || rule === "at most apart" || rule === undefined;
  if (!even || !row.gap) return [];
  // The cheaper first; but pickets that keep a head out are there for more.
  return (catches === "finger" ? [fewer, more] : [more, fewer]).flatMap((counts) => {
    for (const n of counts(row.starts.length)) {
      const change = withCount(found, n, worked);
      if (change) return [change];
    }
    return [];
  });
}

const fewer = (n: number): number[] => Array.from({ length: n - 2 }, (_, i) => n - 1 - i);
const more = (n: number): number[] => Array.from({ length: n }, (_, i) => n + 1 + i);

interface RowIn {
  readonly line: PlacedLine;
  readonly pattern: Pattern;
  readonly row: Row;
  readonly axis: Opening["axis"];
  readonly size: number;
  /** Where the first piece begins. */
  readonly start: number;
}

/** The row that both pieces stand in, if one line of the plan makes it and no mirror image is added. */
function rowOf({ first, second, axis, gap }: Opening, { space, pieces, placing }: Worked): RowIn | undefined {
  const [p, q] = [space.pieces[first]!, space.pieces[second]!];
  const line = pieces.lines.find((l) => l.pieces.includes(p) && l.pieces.includes(q));
  if (line?.placement.subject.kind !== "part") return undefined;
  const { placement } = line;
  const pattern = placement.patterns.find((one) => patternAxis(placing, placement, one) === axis);
  const along = ifKnown(placing.along(placement, axis));
  if (!pattern || !along || along.stretches.length !== along.row.starts.length) return undefined;
  const { row, stretches } = along;
  if (!row.gap || Math.abs(row.gap.approx - gap) > NUMERIC) return undefined;
  const [begin] = stretches;
  const size = begin!.high.approx - begin!.low.approx;
  return { line, pattern, row, axis, size, start: begin!.low.approx - (row.starts[0]?.approx ?? 0) };
}

function withCount(found: RowIn, n: number, worked: Worked): RowChange | undefined {
  const { pattern, row, size, start } = found;
  const span = row.length.approx;
  const gap = (span - n * size) / (pattern.endGaps ? n + 1 : n - 1);
  if (gap < markOf(worked) - NUMERIC || !isHarmless(gap)) return undefined;
  const first = start + (pattern.endGaps ? gap : 0);
  if (pattern.endGaps && leansOn(worked, found.line.placement)) return undefined;
  if (
    !stands(
      found,
      Array.from({ length: n }, (_, i) => first + i * (size + gap)),
      worked,
    )
  )
    return undefined;
  const count = partCount(found, n, worked);
  if (count === "typed otherwise") return undefined;
  const same = { pieces: n, gap, count };
  if (pattern.count) {
    const at = literalAt(pattern.count, found);
    return at && { is: "count", to: n, at, ...same };
  }
  // As many as fit: the most that is let be between them makes that number.
  const value = pattern.spacing?.value;
  const at = value && literalAt(value, found);
  const most = Math.ceil(gap / markOf(worked) - NUMERIC) * markOf(worked);
  const rule = { rule: "at most apart", value: lengthOf(most) } as const;
  const fits = at && asManyAsFit(lengthOf(size), rule, lengthOf(span), n + 1, pattern.endGaps) === n;
  return fits ? { is: "at most", to: most, at, ...same } : undefined;
}

function spacings(found: RowIn, is: "apart" | "on center", worked: Worked): RowChange[] {
  const { pattern, row, size, line } = found;
  const at = pattern.spacing?.value && literalAt(pattern.spacing.value, found);
  const mark = markOf(worked);
  const old = row.gap!.approx;
  if (!at || leansOn(worked, line.placement)) return [];
  const written = (gap: number): number => (is === "apart" ? gap : gap + size);
  const gapFor = (value: number): number => (is === "apart" ? value : value - size);
  const tried = (step: 1 | -1): RowChange[] => {
    const from = written(old) / mark;
    const first = step > 0 ? Math.floor(from + NUMERIC) : Math.ceil(from - NUMERIC);
    for (
      let k = first + step;
      gapFor(k * mark) >= mark - NUMERIC && gapFor(k * mark) < 2 * HEADS.high;
      k += step
    ) {
      const gap = gapFor(k * mark);
      if (!isHarmless(gap)) continue;
      const n = row.starts.length;
      const begin = startFor(found, n * size + (n - 1) * gap);
      const starts = begin === undefined ? [] : Array.from({ length: n }, (_, i) => begin + i * (size + gap));
      return starts.length > 0 && stands(found, starts, worked)
        ? [{ is, to: k * mark, at, pieces: n, gap, count: undefined }]
        : [];
    }
    return [];
  };
  return [...tried(-1), ...tried(1)];
}

/** Where a row of another length begins, by the side that its line holds; undefined where it holds both. */
function startFor({ line, axis, row, start }: RowIn, length: number): number | undefined {
  const edges = new Set(line.placement.claims.filter((c) => c.axis === axis).map((c) => c.edge));
  const old = row.length.approx;
  if (edges.size > 1) return undefined;
  if (edges.has("high")) return start + old - length;
  const centred = edges.has("middle") || line.placement.entry.clauses.some((c) => c.kind === "centered");
  if (edges.has("low") || !centred) return start;
  return start + (old - length) / 2;
}

/** Whether the row's pieces, begun at these places, stay clear of all others, and each touches as many as those of now do. */
function stands({ line, axis }: RowIn, starts: readonly number[], { space }: Worked): boolean {
  const own = new Set(line.pieces);
  const met = (bounds: Bounds): { touching: number; clear: boolean } => {
    let [touching, clear] = [0, true];
    for (const i of space.grid.near(bounds, HAIRLINE)) {
      const piece = space.pieces[i]!;
      if (own.has(piece)) continue;
      if (boundsApart(piece.bounds, bounds) < -HAIRLINE) clear = false;
      else touching++;
    }
    return { touching, clear };
  };
  const rows = new Map<string, Piece[]>();
  for (const piece of line.pieces) {
    const key = [0, 1, 2]
      .filter((k) => k !== axis)
      .map((k) => Math.round(piece.bounds.least[k as 0 | 1 | 2] * 10))
      .join(" ");
    const row = rows.get(key);
    if (row) row.push(piece);
    else rows.set(key, [piece]);
  }
  return [...rows.values()].every((row) => {
    const now = row.map((p) => met(p.bounds));
    const least = Math.min(...now.map((m) => m.touching));
    return starts.every((at) => {
      const { touching, clear } = met(movedTo(row[0]!.bounds, axis, at));
      return clear && touching >= least;
    });
  });
}

function movedTo({ least, most }: Bounds, axis: Opening["axis"], at: number): Bounds {
  const [from, to]: [number, number, number][] = [[...least], [...most]];
  to![axis] += at - least[axis];
  from![axis] = at;
  return { least: from!, most: to! };
}

/** What the part's own line must say for its count to agree; undefined where it says none. */
function partCount(
  { line, row }: RowIn,
  n: number,
  { parts }: Worked,
): RowChange["count"] | "typed otherwise" {
  const part = parts.get(line.placement.subject.name);
  const entry = part?.declared.entry;
  if (!part || entry?.kind !== "part" || entry.clauses.some((c) => c.kind === "handed"))
    return "typed otherwise";
  if (!entry.count) return undefined;
  const lines = line.pieces.length / row.starts.length;
  if (entry.count.kind !== "literal" || part.statedCount === undefined) return "typed otherwise";
  const { start, end } = entry.count;
  const to = part.statedCount + (n - row.starts.length) * lines;
  return { at: { file: part.declared.at.file, start, end }, to };
}

/** Where a number or a length stands that is typed as it is. */
function literalAt(e: Expression, { line }: RowIn): At | undefined {
  const { file } = line.placement.context;
  return e.kind === "literal" ? { file, start: e.start, end: e.end } : undefined;
}

/** The finest mark of the plan's tape. */
const markOf = ({ settings: { display } }: Worked): number => fraction.toNumber(display.mark);
const lengthOf = (mm: number): Quantity => roughly(LENGTH, mm);
