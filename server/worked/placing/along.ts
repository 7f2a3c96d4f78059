/** Working a place line out along one direction: the row it makes, where that starts, and the mirror images. */
import type { Clause } from "../../../grammar/tree";
import { type At, chain, known, MISTAKE, map, type Value } from "../../plan";
import { LENGTH, type Quantity } from "../../units";
import { MOST_PIECES } from "../parts";
import { type Axis, SIDES_OF } from "./axes";
import { type Claim, type Edge, mirroredIn, type Pattern } from "./clauses";
import { diagonalOf } from "./diagonal";
import { betweenClause, centredAxes, isClaimed, lostFor, openAxes, patternAxis, startsAt } from "./open";
import { asManyAsFit, gapOf, type Row, row, type Spacing } from "./pattern";
import type { Placement, Placing } from "./placing";
import { noteLoose, rowThatFits } from "./room";
import { add, compared, less, middle, NOTHING, type Stretch, scaled } from "./stretch";

/** What the row along one direction is, and where. */
export interface Along {
  readonly row: Row;
  readonly stretches: readonly Stretch[];
}

interface Fix {
  readonly edge: Edge;
  readonly at: Quantity;
  readonly clause: Clause;
}

interface RowAt {
  readonly row: Row;
  /** Where it starts, if that follows from the row itself. */
  readonly fix?: Fix;
}

export function workAlong(placing: Placing, p: Placement, axis: Axis): Value<Along> {
  if (!p.block) return MISTAKE;
  if (openAxes(placing, p).includes(axis)) return lostFor(placing, p) ?? MISTAKE;
  const size = p.block.size(axis);
  if (size.state !== "known") return size;
  const fixes = fixesOf(placing, p, axis);
  if (fixes.state !== "known") return fixes;
  const made = rowAlong(placing, p, axis, size.value, fixes.value);
  if (made.state !== "known") return made;
  const { row: line, fix } = made.value;
  const start = startOf(placing, p, axis);
  if (start && start.state !== "known") return start;
  const own = start ? [{ edge: "low", at: start.value, clause: p.entry.clauses[0] } as Fix] : [];
  const low = agreed(placing, p, axis, line.length, [...(fix ? [fix] : []), ...fixes.value, ...own]);
  if (low.state !== "known") return low;
  noteLoose(placing, p, axis, line);
  const straight = line.starts.map((s): Stretch => {
    const from = add(low.value, s);
    return { low: from, high: add(from, size.value), flipped: false };
  });
  return chain(mirrored(placing, p, axis, straight), (stretches) => known({ row: line, stretches }));
}

function rowAlong(
  placing: Placing,
  p: Placement,
  axis: Axis,
  size: Quantity,
  fixes: readonly Fix[],
): Value<RowAt> {
  const corners = p.entry.clauses.find((c) => c.kind === "corners");
  if (corners?.kind === "corners" && axis !== 2) return cornerRow(placing, p, axis, size, corners);
  const pattern = p.patterns.find((one) => patternAxis(placing, p, one) === axis);
  if (!pattern) return known({ row: row(size, 1, NOTHING) });
  const spacing = spacingOf(placing, p, pattern);
  if (spacing && spacing.state !== "known") return spacing;
  const rule = spacing?.value;
  const found = spanOf(placing, p, axis, pattern, rule, fixes);
  if (found && found.state !== "known") return found;
  const span = found?.value;
  const n = pattern.count
    ? placing.input.worker.wholeNumber(pattern.count, p.context.file, "how many", MOST_PIECES)
    : span
      ? known(asManyAsFit(size, rule, less(span.high, span.low), MOST_PIECES, pattern.endGaps))
      : MISTAKE;
  if (n.state !== "known") return n;
  if (!span?.even) return known({ row: row(size, n.value, gapOf(size, rule)) });
  const made = rowThatFits(placing, p, pattern, size, n.value, less(span.high, span.low), rule);
  return map(made, (row) => ({ row, fix: { edge: "low", at: span.low, clause: span.clause } }));
}

/** The room of a row, and whether it fills it with even gaps. */
interface Span {
  readonly low: Quantity;
  readonly high: Quantity;
  readonly even: boolean;
  readonly clause: Clause;
}

/**
 * Where a row is spread; or between what as many as fit stand; or, where no spacing is said, from the side that one clause
 * fixes to the opposite side that another does: `6 high, on floor, flush with top of posts`.
 */
function spanOf(
  placing: Placing,
  p: Placement,
  axis: Axis,
  pattern: Pattern,
  rule: Spacing | undefined,
  fixes: readonly Fix[],
): Value<Span> | undefined {
  const even = rule?.rule === "at most apart";
  const { spread } = pattern;
  if (spread?.kind === "spread over")
    return map(placing.target(p, spread.target, axis), ({ low, high }) => ({
      low,
      high,
      even: true,
      clause: spread,
    }));
  const clause = spread ?? (pattern.count ? undefined : betweenClause(placing, p, axis));
  if (clause)
    return map(placing.spanBetween(p, clause, axis), ({ low, high }) => ({
      low,
      high,
      even: even || spread !== undefined,
      clause,
    }));
  const [low, high] = (["low", "high"] as const).map((edge) => fixes.find((f) => f.edge === edge));
  if (!low || !high || (rule && pattern.count)) return undefined;
  return known({ low: low.at, high: high.at, even: even || !rule, clause: low.clause });
}

function spacingOf(placing: Placing, p: Placement, { spacing }: Pattern): Value<Spacing> | undefined {
  if (!spacing) return undefined;
  const { rule, value } = spacing;
  if (rule === "tight" || !value) return known({ rule: "tight" });
  return map(placing.input.worker.expect(value, p.context.file, LENGTH, "a length"), (v) => ({
    rule,
    value: v,
  }));
}

function cornerRow(
  placing: Placing,
  p: Placement,
  axis: Axis,
  size: Quantity,
  clause: Clause & { kind: "corners" },
): Value<RowAt> {
  const two = (length: Quantity): Row => ({
    starts: [NOTHING, less(length, size)],
    length,
    gap: less(length, scaled(size, 2)),
  });
  if (clause.target)
    return map(placing.target(p, clause.target, axis), (t) => ({
      row: two(less(t.high, t.low)),
      fix: { edge: "low", at: t.low, clause },
    }));
  const side = axis === 0 ? clause.width : clause.depth;
  if (!side) return MISTAKE;
  return map(placing.input.worker.positiveLength(side, p.context.file, "this side"), (length): RowAt => {
    const line = two(length);
    return isClaimed(placing, p, axis)
      ? { row: line }
      : { row: line, fix: { edge: "low", at: NOTHING, clause } };
  });
}

/** The mirror images added, if the line asks for them in this direction. */
function mirrored(
  placing: Placing,
  p: Placement,
  axis: Axis,
  straight: readonly Stretch[],
): Value<readonly Stretch[]> {
  const clause = mirroredIn(p.entry, axis);
  if (!clause) return known(straight);
  return map(placing.target(p, clause.about, axis), (t) => {
    const twice = add(t.low, t.high);
    const images = straight.map(
      ({ low, high }): Stretch => ({ low: less(twice, high), high: less(twice, low), flipped: true }),
    );
    return [...straight, ...images];
  });
}

/** Where the clauses of a line put it in one direction. */
function fixesOf(placing: Placing, p: Placement, axis: Axis): Value<Fix[]> {
  const found: Fix[] = [];
  const take = (edge: Edge, at: Value<Quantity>, clause: Clause): Value<never> | undefined => {
    if (at.state !== "known") return at;
    found.push({ edge, at: at.value, clause });
    return undefined;
  };
  for (const claim of p.claims) {
    const stop = claim.axis === axis && take(claim.edge, claimedAt(placing, p, claim), claim.clause);
    if (stop) return stop;
  }
  const between = betweenClause(placing, p, axis);
  if (between) {
    const stop = take(
      "low",
      map(placing.spanBetween(p, between, axis), (s) => s.low),
      between,
    );
    if (stop) return stop;
  }
  const diagonal = diagonalOf(placing, p);
  if (diagonal?.axes.includes(axis)) {
    const stop = take(
      "low",
      map(diagonal.along(axis), (s) => s.low),
      diagonal.clause,
    );
    if (stop) return stop;
  }
  for (const clause of p.entry.clauses) {
    if (clause.kind !== "centered" || clause.axis || !centredAxes(placing, p).includes(axis)) continue;
    const stop = take(
      "middle",
      map(placing.target(p, clause.target, axis), (t) => middle(t.low, t.high)),
      clause,
    );
    if (stop) return stop;
  }
  return known(found);
}

function claimedAt(placing: Placing, p: Placement, claim: Claim): Value<Quantity> {
  const base = baseOf(placing, p, claim);
  if (base.state !== "known" || !claim.distance) return base;
  const { value, sign } = claim.distance;
  return map(placing.input.worker.expect(value, p.context.file, LENGTH, "a length"), (d) =>
    sign === 1 ? add(base.value, d) : less(base.value, d),
  );
}

function baseOf(placing: Placing, p: Placement, { target, axis, clause }: Claim): Value<Quantity> {
  if (target === "own start") return known(NOTHING);
  if (target === "own end") {
    const space = p.context === placing.plan ? placing.input.space() : undefined;
    const size = axis === 0 ? space?.wide : axis === 1 ? space?.deep : space?.high;
    if (size) return known(size);
    const at = { file: p.context.file, start: clause.start, end: clause.end };
    return placing.input.worker.fault({
      kind: "no-far-side",
      at,
      side: SIDES_OF[axis][1],
      inside: p.context !== placing.plan,
    });
  }
  return map(placing.target(p, target.thing, axis), (t) =>
    target.edge === "low" ? t.low : target.edge === "high" ? t.high : middle(t.low, t.high),
  );
}

/** Where a line begins that says nothing there: the first of a plan at its start, an assembly with its floor on the floor. */
function startOf(placing: Placing, p: Placement, axis: Axis): Value<Quantity> | undefined {
  if (!startsAt(placing, p, axis)) return undefined;
  if (axis !== 2) return known(NOTHING);
  return map(placing.boundsOf(placing.assembly(p.subject), 2), (s) => s.low);
}

/** One start from all that fixes it; a fault when they disagree. */
function agreed(
  placing: Placing,
  p: Placement,
  axis: Axis,
  length: Quantity,
  fixes: readonly Fix[],
): Value<Quantity> {
  const starts = fixes.map(({ edge, at }) =>
    edge === "low" ? at : edge === "high" ? less(at, length) : less(at, scaled(length, 1, 2)),
  );
  const [first] = starts;
  if (!first) return MISTAKE;
  const other = starts.findIndex((s) => compared(s, first) !== 0);
  if (other < 0) return known(first);
  const place = ({ clause }: Fix): At => ({ file: p.context.file, start: clause.start, end: clause.end });
  // Without one of two clauses that each fix this direction alone, the line still says where it stands.
  const either =
    fixes.length === 2 && fixes.every(({ clause }) => ALONE.has(clause.kind)) ? fixes.map(place) : [];
  return placing.input.worker.fault({
    kind: "disputed",
    at: place(fixes[other]!),
    first: place(fixes[0]!),
    subject: p.subject.name,
    axis,
    starts: [first, starts[other]!],
    apart: less(starts[other]!, first),
    either,
  });
}

/** Clauses that fix one direction and nothing else. */
const ALONE: ReadonlySet<Clause["kind"]> = new Set(["touches", "flush", "inset", "from"]);
