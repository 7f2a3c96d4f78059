import { type Declared, lookUp, say, usesOf } from "../plan";
import { kindWord, type Worked } from "../worked";
import type { Check, Cure } from "./check";
import { minusIn } from "./minus";
import { entryOut } from "./writing";

/** Declarations that do something by themselves. */
const OF_ITSELF = new Set(["part", "ring", "box"]);

export const neverUsed: Check = {
  code: "never-used",
  class: "hint",
  title: "A line that nothing uses",
  page: `A measurement, a board or a screw that the plan declares and nothing uses may be a leftover, or a name misspelt somewhere
else. What a shop file offers is not held to this: it lists what could be bought. Nor is a file without parts, which is
there for other plans to bring.

\`\`\`sawbuck
measure rim = 30"
part leg 4 of 2x4, length 28"
\`\`\`

\`\`\`sawbuck
measure rim = 30"
part leg 4 of 2x4, length rim
\`\`\``,
  templates: {
    unused: "“{name}” is {kind} that nothing in this plan uses.",
    out: "Take its line out",
  },
  run: (worked) => {
    if (someLineUnread(worked) || !makesSomething(worked)) return [];
    const used = usedNames(worked);
    return (
      [...worked.scope.declared.values()]
        .filter((d) => d.role === "plan" && !OF_ITSELF.has(d.kind) && !used.has(d.name))
        // Among things that are placed, one that is not is told as cut-never-placed.
        .filter((d) => d.kind !== "assembly" || worked.placing.plan.placements.length === 0)
        .map((d) => ({
          at: d.at,
          about: [d.name],
          says: "unused",
          slots: { name: d.name, kind: say(kindWord(d.kind)) },
          cures: withoutLine(d, worked),
        }))
    );
  },
};

/** Taking the line out, where it uses nothing that would then be unused itself, and no second one has its name. */
function withoutLine({ name, entry, at }: Declared, worked: Worked): Cure[] {
  const { scope } = worked;
  if (usesOf(entry).some((u) => lookUp(scope, u.name.text)?.role === "plan")) return [];
  if (scope.twice.some(({ first }) => first.name === name)) return [];
  return [
    {
      says: "out",
      slots: {},
      get edits() {
        return [entryOut(at.file, entry, worked)];
      },
    },
  ];
}

/** Whether the file has a part, a ring or a box; one with none is there for other plans to bring. */
const makesSomething = ({ scope }: Worked): boolean =>
  [...scope.declared.values()].some((d) => d.role === "plan" && OF_ITSELF.has(d.kind));

/** Names that some line uses; a fastener also when a joint names its size. */
function usedNames(worked: Worked): Set<string> {
  const { loaded, scope, joints, faults } = worked;
  const used = new Set<string>();
  for (const { tree } of loaded.files) {
    for (const entry of tree.entries) {
      for (const use of usesOf(entry)) {
        const found = lookUp(scope, use.name.text.replace("×", "x"));
        if (found) used.add(found.name);
      }
    }
  }
  for (const joint of joints) if (joint.fastener) used.add(joint.fastener.name);
  // A misspelt name near this one was likely meant for it.
  for (const fault of faults) {
    if (fault.kind !== "unknown-name") continue;
    const minus = minusIn(fault, worked);
    for (const name of minus ? [minus.from, minus.less ?? minus.from] : fault.near)
      used.add(lookUp(scope, name)?.name ?? name);
  }
  return used;
}

/** Whether some line could not be read, and might have used the name. */
const someLineUnread = ({ loaded }: Worked): boolean =>
  loaded.files.some((f) => f.tree.complaints.length > 0);
