import { ifKnown } from "../plan";
import type { Part, Worked } from "../worked";
import type { Check, Finding } from "./check";
import { ofKind } from "./faults";
import { countCures, isPlaced, ringsWith } from "./placed";
import { counted } from "./telling";

export const cutNeverPlaced: Check = {
  code: "cut-never-placed",
  class: "warning",
  title: "Pieces are cut that stand nowhere",
  page: `In a plan that says where its pieces stand, a piece that is cut and placed nowhere is wood wasted, or a \`place\` line
forgotten. So is a ring or an assembly that no line places. Spares are asked for by \`spare\` in the plan line, not by a larger
number.

\`\`\`sawbuck
part leg 6 of 2x4, length 28"
place leg upright, on floor, at each corner of 30" x 16"
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
place leg upright, on floor, at each corner of 30" x 16"
\`\`\``,
  templates: {
    more: counted(
      "placed",
      "{stated} of “{part}” are cut, but only {placed} stands anywhere.",
      "{stated} of “{part}” are cut, but only {placed} stand anywhere.",
    ),
    none: counted(
      "stated",
      "{stated} of “{part}” is cut, but no line places it.",
      "{stated} of “{part}” are cut, but no line places them.",
    ),
    whole: "“{name}” is put together, but no line places it.",
    write: "Write {to}",
    drop: "Leave the number out, so that its places count",
  },
  run: (worked) => {
    if (worked.placing.plan.placements.length === 0 || someLineUnread(worked)) return [];
    return [...[...worked.parts.values()].flatMap((part) => tell(part, worked)), ...wholes(worked)];
  },
};

/** Rings and assemblies of the plan itself that stand nowhere. */
function wholes(worked: Worked): Finding[] {
  // What would stand inside itself is told as that.
  const circling = ofKind(worked, "circle").flatMap(({ path }) => path.map((p) => p.name));
  return [...worked.scope.declared.values()].flatMap(({ kind, name, role, at }): Finding[] => {
    const put = kind === "ring" || kind === "assembly";
    if (!put || role !== "plan" || isPlaced(name, worked) || circling.includes(name)) return [];
    return [{ at, about: [name], says: "whole", slots: { name } }];
  });
}

function tell(part: Part, worked: Worked): Finding[] {
  const { statedCount: stated, name, declared } = part;
  if (stated === undefined || declared.role !== "plan") return [];
  const place = { at: declared.at, about: [name] };
  if (!part.placed) {
    // A ring that stands nowhere may still be made of it.
    if (ringsWith(name, worked).length > 0) return [];
    return [{ ...place, says: "none", slots: { part: name, stated } }];
  }
  const placed = ifKnown(part.placed);
  if (placed === undefined || stated <= placed) return [];
  const slots = { part: name, stated, placed };
  return [{ ...place, says: "more", slots, cures: countCures(part, placed, worked) }];
}

/** Whether some line could not be read, and might have placed it. */
const someLineUnread = ({ loaded }: Worked): boolean =>
  loaded.files.some((f) => f.tree.complaints.length > 0);
