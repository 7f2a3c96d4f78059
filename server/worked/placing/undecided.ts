/** Telling what a place line leaves undecided: a direction, how its board lies, or in what room a row stands. */
import type { Clause } from "../../../grammar/tree";
import { axisOfSide } from "./axes";
import { ALONG } from "./frame";
import { likely } from "./likely";
import { betweenFound, openAxes, patternAxis, type Two } from "./open";
import type { Placement, Placing } from "./placing";

/** Words that cannot be meant: a wide face that looks up or down, and what is said twice. */
export function tellWords({ input }: Placing, p: Placement): void {
  const first = new Map<string, Clause>();
  for (const clause of p.entry.clauses) {
    const what = saidOnce(clause);
    const before = what === undefined ? undefined : first.get(what);
    if (what !== undefined && !before) first.set(what, clause);
    if (what === undefined || !before) continue;
    const place = ({ start, end }: Clause) => ({ file: p.context.file, start, end });
    input.worker.fault({ kind: "said-twice", at: place(clause), what, first: place(before) });
  }
  for (const clause of p.entry.clauses) {
    if (clause.kind !== "wide face" || axisOfSide(clause.side) !== 2) continue;
    const at = { file: p.context.file, start: clause.start, end: clause.end };
    input.worker.fault({ kind: "impossible", at, why: "wide face", what: clause.side });
  }
}

/** Directions that nothing fixes, unless a mistake told elsewhere is why. */
export function tellOpen(placing: Placing, p: Placement): void {
  const { worker } = placing.input;
  const { keyword, subject: thing, clauses } = p.entry;
  const { file } = p.context;
  const subject = p.subject.name;
  if (clauses.some((c) => c.kind === "broken")) return;
  const lost = clauses.filter(
    (c): c is Two => isTwo(c.kind) && betweenFound(placing, p, c as Two).lost !== undefined,
  );
  for (const { first, second } of lost) for (const t of [first, second]) placing.target(p, t, 0);
  const roomless = p.patterns.find((one) => !one.count && patternAxis(placing, p, one) === undefined);
  if (lost.length > 0 && p.block) return;
  const at = { file, start: keyword.start, end: thing.end };
  const open = openAxes(placing, p);
  if (open.length > 0 || !p.block) {
    const after = clauses.at(-1)?.end ?? thing.end;
    worker.fault({ kind: "undecided", at, subject, open, ...likely(placing.input.scope, p, open), after });
  } else if (roomless) {
    const { start, end } = roomless.clause;
    worker.fault({ kind: "room-unsaid", at: { file, start, end }, subject });
  }
}

/** What a clause says that a line can only say once. */
function saidOnce(c: Clause): string | undefined {
  switch (c.kind) {
    case "lies":
      return ALONG.includes(c.lie) ? "which way it is long" : "flat or on edge";
    case "wide face":
      return "wide face";
    case "leaning":
    case "sloping":
      return "leaning";
    case "corners":
      return "at each corner";
    case "diagonal":
      return "diagonally on";
    case "repeat":
      return c.direction && `how many ${ROWS[c.direction]}`;
    case "mirrored":
      return `mirrored ${c.axis}`;
    default:
      return undefined;
  }
}

const ROWS = { "left to right": "across", "front to back": "deep", "up and down": "high" } as const;

const isTwo = (kind: string): boolean => kind === "between" || kind === "spread";
