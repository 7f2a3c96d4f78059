import type { At } from "../plan";
import type { Quantity } from "../units";
import type { Worked } from "../worked";
import type { Check, Finding } from "./check";

export const limitWithoutSource: Check = {
  code: "limit-without-source",
  class: "hint",
  title: "A limit that nobody has vouched for",
  page: `What a floor or balcony may carry is not a guess: the building's engineer, its owner or a drawing says so. Write who said it
behind the limit, so that the next reader knows. It runs to the end of the line: what other things use of the limit
(\`of which people 40 psf\`) stands on a line of its own, and a warning says so where it does not.

\`\`\`sawbuck
plan A trough
  floor limit 58 psf
\`\`\`

\`\`\`sawbuck
plan A trough
  floor limit 58 psf by the building's engineer
\`\`\``,
  templates: {
    floor: "Who says that the floor carries {value}? Write it behind the limit: by the building's engineer.",
    foot: "Who says that one foot may press {value} on the floor? Write it behind the limit: by the building's engineer.",
    swallowed:
      "Who said so runs to the end of the line, so “{text}” is taken for a part of it, and the whole {value} stands as the limit.",
    "own-line": "Put it on a line of its own",
  },
  run: (worked) =>
    (["floor", "foot"] as const).flatMap((says): Finding[] => {
      const limit = says === "floor" ? worked.settings.floorLimit : worked.settings.footLimit;
      if (!limit) return [];
      return limit.by
        ? swallowed(limit.at, limit.value, worked)
        : [{ at: limit.at, says, slots: { value: limit.value } }];
    }),
};

/** What others use of the limit, written behind who said so: it would be lost, and the box judged too kindly. */
function swallowed(at: At, value: Quantity, { loaded }: Worked): Finding[] {
  const text = loaded.files.find((f) => f.file === at.file)?.tree.text.slice(at.start, at.end) ?? "";
  const found = /,?\s*\bof which\b.*/.exec(text);
  if (!found) return [];
  const words = found[0].replace(/^,?\s*/, "");
  const start = at.start + found.index;
  const edits = [{ file: at.file, start, end: start + found[0].length, text: `\n  ${words}` }];
  return [
    {
      class: "warning",
      at: { ...at, start: start + found[0].length - words.length, end: start + found[0].length },
      says: "swallowed",
      slots: { text: words, value },
      cures: [{ says: "own-line", slots: {}, edits }],
    },
  ];
}
