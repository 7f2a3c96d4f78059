import { ifKnown } from "../plan";
import type { Check } from "./check";
import { countCures } from "./placed";
import { counted } from "./telling";

export const placedNeverCut: Check = {
  code: "placed-never-cut",
  class: "error",
  title: "More pieces stand than are cut",
  page: `A number that is typed beside a part is compared with the places it stands in. Where it is smaller, pieces would be missing
in the middle of the work. Without a number the part is counted by its places.

\`\`\`sawbuck
part leg 3 of 2x4, length 28"
place leg upright, on floor, at each corner of 30" x 16"
\`\`\`

\`\`\`sawbuck
part leg of 2x4, length 28"
place leg upright, on floor, at each corner of 30" x 16"
\`\`\``,
  templates: {
    short: counted(
      "stated",
      "“{part}” stands in {placed} places, but only {stated} is cut.",
      "“{part}” stands in {placed} places, but only {stated} are cut.",
    ),
    write: "Write {to}",
    drop: "Leave the number out, so that its places count",
  },
  run: (worked) =>
    [...worked.parts.values()].flatMap((part) => {
      const { statedCount: stated, name } = part;
      const placed = ifKnown(part.placed);
      if (stated === undefined || placed === undefined || stated >= placed) return [];
      return [
        {
          at: part.declared.at,
          about: [name],
          says: "short",
          slots: { part: name, placed, stated },
          cures: countCures(part, placed, worked),
        },
      ];
    }),
};
