import { minus, refused } from "../units";
import type { Fault } from "../worked";
import type { Check, Cure, Finding } from "./check";
import { ofKind } from "./faults";

type NoRoom = Extract<Fault, { kind: "no-room" }>;
type Row = Extract<NoRoom["why"], { is: "row" }>;

export const noRoom: Check = {
  code: "no-room",
  class: "error",
  title: "Pieces do not fit where they are put",
  page: `Pieces spread between two things need room for all of them, and a diagonal board a rectangle that is wider than itself.
Where there is none, either there are too many, or they are too wide, or a length is wrong.

\`\`\`sawbuck
part rail of 2x4, length 30"
part stop of 2x2, length 16"
part slat of 1x4, length 16"
place rail across, on edge, on floor, 0 from left, 0 from front, 2 deep, 13" apart
place stop front to back, flat, on rails, flush with left of rails, flush with front of rails
place stop front to back, flat, on rails, flush with right of rails, flush with front of rails
place slat front to back, flat, on rails, flush with front of rails, 8 across, spread between left stop and right stop
\`\`\`

\`\`\`sawbuck
part rail of 2x4, length 30"
part stop of 2x2, length 16"
part slat of 1x4, length 16"
place rail across, on edge, on floor, 0 from left, 0 from front, 2 deep, 13" apart
place stop front to back, flat, on rails, flush with left of rails, flush with front of rails
place stop front to back, flat, on rails, flush with right of rails, flush with front of rails
place slat front to back, flat, on rails, flush with front of rails, 7 across, spread between left stop and right stop
\`\`\``,
  templates: {
    row: "{count} of “{subject}” side by side take {length}, but there is only {span}: {over} too much.",
    neither:
      "{count} of “{subject}” side by side take {length}, {over} more than there is room for; {fewer} leave gaps of {gap}, wider than the {most} that the line allows.",
    "no span": "{count} of “{subject}” side by side take {length}, but there is nothing between the two.",
    diagonal:
      "“{subject}” does not run from corner to corner there: it is {width} wide, in a rectangle of {across} by {up}.",
    write: "Write {to}",
  },
  run: (worked) =>
    ofKind(worked, "no-room").map(({ at, subject, why }): Finding => {
      if (why.is === "row") return { at, about: [subject], ...row(subject, why) };
      const [across, up] = why.sides;
      return {
        at,
        about: [subject],
        says: "diagonal",
        slots: { subject, width: why.width, across, up },
        numbers: [{ name: "width", value: why.width, source: subject }],
      };
    }),
};

function row(subject: string, { count, length, span, fits, fewer: short }: Row): Omit<Finding, "at"> {
  const over = minus(length, span);
  const room = span.approx > 0 && !refused(over);
  const neither = room ? short : undefined;
  return {
    says: neither ? "neither" : room ? "row" : "no span",
    slots: {
      subject,
      count,
      length,
      ...(room && { over }),
      ...(neither
        ? { fewer: neither.n, gap: { full: neither.gap }, most: { full: neither.most } }
        : room && { span }),
    },
    numbers: [
      { name: "takes", value: length, source: `${count} of ${subject}` },
      { name: "room", value: span, source: "between the two" },
    ],
    cures: fits ? [fewer(fits)] : [],
  };
}

const fewer = ({ at, n }: NonNullable<Row["fits"]>): Cure => ({
  says: "write",
  slots: { to: n },
  edits: [{ ...at, text: String(n) }],
});
