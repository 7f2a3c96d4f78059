import { type At, ifKnown } from "../plan";
import {
  exactly,
  exactOf,
  fraction,
  LENGTH,
  lengthInFull,
  lengthText,
  onTheMark,
  type Quantity,
  roughly,
} from "../units";
import type { Part, Worked } from "../worked";
import type { Check, Cure, Finding } from "./check";
import { phrase } from "./phrases";
import { edit, writtenLength } from "./writing";

export const offTheTape: Check = {
  code: "off-the-tape",
  class: "hint",
  title: "A length between two marks of the tape",
  page: `A length that falls between the marks of the tape is cut to the nearest one; a tie goes to the longer. The sheet prints that
mark. Where several such pieces stand in a row their errors add up, so it may be worth choosing lengths that lie on a mark, or
finer marks: \`units inches to 1/32"\`.

\`\`\`sawbuck
part slat 3 of 1x4, length 20" / 3
\`\`\`

\`\`\`sawbuck
part slat 3 of 1x4, length 6-11/16"
\`\`\``,
  templates: {
    length: "{part} comes to {exact}, which is between two marks; it is cut at {mark}, {error} {way}.",
    width: "{part} is to be {exact} wide, which is between two marks; it is ripped to {mark}, {error} {way}.",
    write: "Write {mark}",
    round: "Round it to {step}",
  },
  run: (worked) =>
    [...worked.parts.values()].flatMap((part) => {
      // A length that no one wrote follows from where its piece runs: it is marked on the place, as what is cut to fit is.
      const written = part.declared.entry.clauses.some((c) => c.kind === "length");
      const is = written && !part.fit ? ifKnown(part.length) : undefined;
      const length = finding(part, is, "length", part.lengthAt, worked);
      if (length.length > 0 || !part.ripped) return length;
      return finding(part, ifKnown(part.width), "width", part.ripped, worked);
    }),
};

function finding(
  part: Part,
  is: Quantity | undefined,
  says: "length" | "width",
  at: At,
  worked: Worked,
): Finding[] {
  const { display } = worked.settings;
  if (!is || onTheMark(is, display)) return [];
  const mark = fraction.roundTo(exactOf(is), display.mark);
  const error = fraction.toNumber(mark) - is.approx;
  // A length from trigonometry is never exact; what no tape can show is no error.
  if (Math.abs(error) < INVISIBLE) return [];
  const off = roughly(LENGTH, Math.abs(error));
  return [
    {
      at,
      about: [part.name],
      says,
      slots: {
        part: part.name,
        exact: { full: is },
        mark: lengthText(is, display),
        error: lengthInFull(off, display).replace(/^about /, ""),
        way: phrase(error > 0 ? "longer" : "shorter"),
      },
      numbers: [
        { name: "comes to", value: is, source: "worked out" },
        {
          name: "off by",
          value: off,
          source: `rounded to ${lengthText({ ...is, exact: display.mark }, display)}`,
        },
      ],
      cures: cures(part, says, is, worked),
    },
  ];
}

/** The mark in place of a plain value; an expression rounded to it. */
function cures(part: Part, says: "length" | "width", is: Quantity, { loaded, settings }: Worked): Cure[] {
  const { display } = settings;
  const { entry, at } = part.declared;
  const lengths = entry.clauses.find((c) => c.kind === "length");
  const widths = entry.clauses.find((c) => c.kind === "width");
  const value = (says === "length" ? lengths : widths)?.value;
  const text = loaded.files.find((f) => f.file === at.file)?.tree.text;
  const mark = exactly(LENGTH, fraction.roundTo(exactOf(is), display.mark));
  if (!value || text === undefined || mark.approx <= 0) return [];
  const place: At = { file: at.file, start: value.start, end: value.end };
  if (value.kind === "literal") {
    const to = writtenLength(mark, display);
    return [{ says: "write", slots: { mark: to }, edits: [edit(place, to)] }];
  }
  const step = writtenLength(exactly(LENGTH, display.mark), display);
  const written = text.slice(value.start, value.end);
  return isWhole(written)
    ? [{ says: "round", slots: { step }, edits: [edit(place, `round ${written} to ${step}`)] }]
    : [];
}

/** Whether its parentheses pair: a sum's place leaves out those round its first or last term. */
function isWhole(expression: string): boolean {
  let open = 0;
  for (const mark of expression) {
    if (mark === "(") open++;
    if (mark === ")" && --open < 0) return false;
  }
  return open === 0;
}

const INVISIBLE = 0.001;
