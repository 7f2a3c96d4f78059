import type { At } from "../plan";
import { negated } from "../units";
import type { Fault, Worked } from "../worked";
import type { Check, Cure, Finding } from "./check";
import { ofKind } from "./faults";
import { apart, clauseOut, textAt } from "./writing";

type Disputed = Extract<Fault, { kind: "disputed" }>;

export const placeDisputed: Check = {
  code: "place-disputed",
  class: "error",
  title: "Two clauses put a piece in two places",
  page: `Each clause of a \`place\` line puts one side of what it places somewhere. Two of them that speak of the same direction must
agree, whatever the sizes come to; where they do not, one of them is wrong, or a length is.

\`\`\`sawbuck
part leg 1 of 2x4, length 28"
part shelf 1 of 1x6, length 30"
place leg upright, on floor, 0 from left, 0 from front
place shelf across, flat, behind leg, 0 from left, 14" up, flush with top of leg
\`\`\`

\`\`\`sawbuck
part leg 1 of 2x4, length 28"
part shelf 1 of 1x6, length 30"
place leg upright, on floor, 0 from left, 0 from front
place shelf across, flat, behind leg, 0 from left, flush with top of leg
\`\`\``,
  templates: {
    "left to right":
      "“{subject}” cannot stand in two places: “{first}” puts its left side {was} from the left, “{second}” {is}; they are {apart} apart.",
    "front to back":
      "“{subject}” cannot stand in two places: “{first}” puts its front {was} from the front, “{second}” {is}; they are {apart} apart.",
    "up and down":
      "“{subject}” cannot stand in two places: “{first}” puts its bottom {was} above the floor, “{second}” {is}; they are {apart} apart.",
    first: "The other place is said here.",
    "take-out": "Take out “{text}”",
  },
  run: (worked) => ofKind(worked, "disputed").map((fault) => tell(fault, worked)),
};

const DIRECTIONS = ["left to right", "front to back", "up and down"] as const;

function tell(fault: Disputed, worked: Worked): Finding {
  const { at, first, subject, axis, starts } = fault;
  const { display } = worked.settings;
  const [was, is] = apart(starts[0], starts[1], display);
  const between = fault.apart.approx < 0 ? negated(fault.apart) : fault.apart;
  return {
    at,
    about: [subject],
    says: DIRECTIONS[axis],
    slots: { subject, first: textAt(worked, first), second: textAt(worked, at), was, is, apart: between },
    numbers: [
      { name: "first", value: starts[0], source: textAt(worked, first) },
      { name: "second", value: starts[1], source: textAt(worked, at) },
    ],
    related: [{ at: first, says: "first", slots: {} }],
    cures: fault.either.flatMap((clause) => withoutClause(clause, worked)),
  };
}

/** The line without one of its clauses. */
function withoutClause(clause: At, worked: Worked): Cure[] {
  const edits = clauseOut(clause, worked);
  return edits.length > 0 ? [{ says: "take-out", slots: { text: textAt(worked, clause) }, edits }] : [];
}
