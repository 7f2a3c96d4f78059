/** Whether a row fits the room it is put in: too long for a span, or too short to touch both sides of it. */
import type { Clause, Thing } from "../../../grammar/tree";
import { type At, ifKnown, known, type Value } from "../../plan";
import { exactly, fraction, LENGTH, type Quantity } from "../../units";
import type { Axis } from "./axes";
import type { Pattern } from "./clauses";
import { betweenClause, patternAxis } from "./open";
import { asManyAsFit, type Row, type Spacing, spreadOver } from "./pattern";
import type { Placement, Placing } from "./placing";
import { compared, less, NOTHING, scaled } from "./stretch";

/** A gap that is worth a word: 1/64". */
const LOOSE = exactly(LENGTH, fraction.rational(127, 320));

/** The pieces spread over a span; a fault when they are together longer than it. */
export function rowThatFits(
  placing: Placing,
  p: Placement,
  pattern: Pattern,
  size: Quantity,
  n: number,
  span: Quantity,
  rule: Spacing | undefined,
): Value<Row> {
  const length = scaled(size, n);
  if (compared(length, span) <= 0) return known(spreadOver(size, n, span, pattern.endGaps));
  const { count, spread, clause } = pattern;
  const room = compared(span, size) < 0 ? 0 : asManyAsFit(size, undefined, span, n);
  const at = (c: { start: number; end: number }): At => ({
    file: p.context.file,
    start: c.start,
    end: c.end,
  });
  const fits = count?.kind === "literal" && room > 0 ? { at: at(count), n: room } : undefined;
  return placing.input.worker.fault({
    kind: "no-room",
    at: at(spread ?? clause),
    subject: p.subject.name,
    why: { is: "row", count: n, length, span, fits, fewer: fewerThan(n, rule, size, span, pattern) },
  });
}

/** With one piece fewer the gaps are wider than the line lets them be: neither number fits. */
function fewerThan(
  n: number,
  rule: Spacing | undefined,
  size: Quantity,
  span: Quantity,
  { count, endGaps }: Pattern,
): { n: number; gap: Quantity; most: Quantity } | undefined {
  if (count || rule?.rule !== "at most apart" || n < 3) return undefined;
  const { gap } = spreadOver(size, n - 1, span, endGaps);
  return gap && { n: n - 1, gap, most: rule.value };
}

/** Tells a row that stands between two things and is too short to touch both; a row of as many as fit may leave room. */
export function noteLoose(placing: Placing, p: Placement, axis: Axis, row: Row): void {
  const clause = betweenClause(placing, p, axis);
  if (!clause || p.patterns.some((one) => !one.count && patternAxis(placing, p, one) === axis)) return;
  const span = ifKnown(placing.spanBetween(p, clause, axis));
  const gap = span && less(less(span.high, span.low), row.length);
  if (!gap || compared(gap, LOOSE) <= 0 || compared(row.length, NOTHING) <= 0) return;
  placing.input.worker.fault({
    kind: "loose",
    at: placeOf(p, clause),
    subject: p.subject.name,
    gap,
    axis,
    first: wordsOf(clause.first),
    second: wordsOf(clause.second),
  });
}

const placeOf = (p: Placement, { start, end }: Clause): At => ({ file: p.context.file, start, end });
const wordsOf = ({ where, name }: Thing): string => [...where, name].map((w) => w.text).join(" ");
