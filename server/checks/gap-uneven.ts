import { EVEN, type UnevenRow, type Worked } from "../worked";
import type { Check, Finding } from "./check";
import { mm } from "./piece-words";

export const gapUneven: Check = {
  code: "gap-uneven",
  class: "warning",
  title: "Gaps in a row that are not even",
  page: `Boards of one part that stand side by side in a row show every gap. When their gaps differ by more than 1/16" but by less than
1/2", they were likely meant to be alike, and the eye finds the odd one. \`spread between\` makes them even.

Rows of three pieces and more are looked at, of one part, level with each other.

\`\`\`sawbuck
part slat of 1x4, length 20"
place slat across, flat, on floor, 0 from left, 0 from front
place slat across, flat, on floor, 0 from left, 4-1/2" from front
place slat across, flat, on floor, 0 from left, 9-1/4" from front
\`\`\`

\`\`\`sawbuck
part slat of 1x4, length 20"
place slat across, flat, on floor, 0 from left, 0 from front, 3 deep, 1" apart
\`\`\``,
  templates: {
    uneven:
      "The gaps in this row of {n} {part} pieces run from {least} to {most}; all alike they would be {even}.",
    here: "This one stands {gap} from the one before.",
  },
  run: (worked) => worked.rows.map((row) => findingOf(row, worked)),
};

function findingOf({ part, pieces, gaps }: UnevenRow, { space }: Worked): Finding {
  const even = gaps.reduce((a, b) => a + b, 0) / gaps.length;
  const odd = gaps.reduce(
    (best, gap, i) => (Math.abs(gap - even) > Math.abs(gaps[best]! - even) ? i : best),
    0,
  );
  const piece = space.pieces[pieces[odd + 1]!]!;
  return {
    at: piece.at,
    about: [part],
    says: "uneven",
    slots: {
      n: pieces.length,
      part,
      least: mm(Math.min(...gaps)),
      most: mm(Math.max(...gaps)),
      even: mm(even),
    },
    numbers: [
      { name: "narrowest gap", value: mm(Math.min(...gaps)), source: "worked out" },
      { name: "widest gap", value: mm(Math.max(...gaps)), source: "worked out" },
      { name: "gaps that still look even", value: mm(EVEN), source: "common practice" },
    ],
    related: [{ says: "here", slots: { gap: mm(gaps[odd]!) }, at: piece.at }],
  };
}
