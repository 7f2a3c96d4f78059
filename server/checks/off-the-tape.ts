import { type At, ifKnown } from "../plan";
import {
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
import type { Check, Finding } from "./check";

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
  },
  run: (worked) =>
    [...worked.parts.values()].flatMap((part) => [
      ...finding(part, ifKnown(part.length), "length", part.lengthAt, worked),
      ...finding(part, part.ripped && ifKnown(part.width), "width", part.ripped ?? part.declared.at, worked),
    ]),
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
        exact: lengthInFull(is, display),
        mark: lengthText(is, display),
        error: lengthInFull(off, display).replace(/^about /, ""),
        way: error > 0 ? "longer" : "shorter",
      },
      numbers: [
        { name: "comes to", value: is, source: "worked out" },
        {
          name: "off by",
          value: off,
          source: `rounded to ${lengthText({ ...is, exact: display.mark }, display)}`,
        },
      ],
    },
  ];
}

const INVISIBLE = 0.001;
