import { type ShortWait, shortWaits, type Worked } from "../worked";
import type { Check, Cure, Finding } from "./check";
import { phrase } from "./phrases";
import { pieceSlot } from "./piece-words";
import { clauseAdded, minutesOf, namesOf, stepSlot, timeWritten } from "./step-words";
import { edit } from "./writing";

export const waitMissing: Check = {
  code: "wait-missing",
  class: "warning",
  title: "No time to dry",
  page: `A finish dries, and glue sets, before the pieces are worked on again. How long a finish takes is read from its line (\`dries
12 h\`), else from a table of usual finishes; each of its coats takes as long. Glue is left for an hour before anything pulls
on it, and takes a day to its full strength (from memory: the can tells more), but only where no screw holds the pieces too.
The waits of the steps are added up, and the work between them where they say how long it takes; where one does not, that is
listed as not checked.

\`\`\`sawbuck
part leg of 2x4, length 30"
part rail of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
finish oil, dries 12 h
coat leg and rail with oil
step Oil every piece
  coats leg and rail
step Screw the rails on
  uses leg and rail
\`\`\`

\`\`\`sawbuck
part leg of 2x4, length 30"
part rail of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
finish oil, dries 12 h
coat leg and rail with oil
step Oil every piece
  coats leg and rail
  wait 12 h
step Screw the rails on
  uses leg and rail
\`\`\``,
  templates: {
    coat: "{finish} on “{thing}” dries {needs}{coats}, and {later} handles it {has}.",
    glue: "{piece} is glued here and held by nothing else, and {later} works on it {has}: glue wants {needs} at least.",
    handled: "It is handled in this step.",
    wait: "Write {to}",
  },
  run: (worked) => (worked.steps.proposed ? [] : shortWaits(worked).map((w) => findingOf(w, worked))),
};

function findingOf(found: ShortWait, worked: Worked): Finding {
  const { step, coat, piece, later, needs, has, source } = found;
  const common = {
    later: stepSlot(later, worked),
    needs: minutesOf(needs),
    has: has === 0 ? phrase("after no wait") : phrase("after so long", { time: minutesOf(has) }),
  };
  const slots =
    coat || piece === undefined
      ? {
          ...common,
          finish: coat!.line!.finish,
          thing: coat!.words,
          coats: coat!.coats > 1 ? phrase("for coats", { n: coat!.coats }) : "",
        }
      : { ...common, piece: pieceSlot(worked.space.pieces[piece]!) };
  return {
    at: step.at,
    about: coat ? [coat.name, coat.line!.finish] : namesOf([piece!], worked),
    says: found.is,
    slots,
    numbers: [
      { name: found.is === "coat" ? "dries" : "sets", value: minutesOf(needs), source },
      { name: "until it is handled", value: minutesOf(has), source: "as the steps say" },
    ],
    related: [{ says: "handled", slots: {}, at: later.at }],
    cures: [cureOf(found)],
  };
}

function cureOf({ step, wait }: ShortWait): Cure {
  const to = `wait ${timeWritten(wait)}`;
  const clause = step.entry?.clauses.find((c) => c.kind === "wait");
  const edits = clause
    ? [edit({ file: step.at.file, start: clause.start, end: clause.end }, to)]
    : clauseAdded(step, to);
  return { says: "wait", slots: { to }, edits };
}
