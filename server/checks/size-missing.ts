import type { At } from "../plan";
import type { Worked } from "../worked";
import type { Check } from "./check";
import { ofKind } from "./faults";

export const sizeMissing: Check = {
  code: "size-missing",
  class: "error",
  title: "A size that is not said",
  page: `A part needs a length; a piece cut from a sheet needs a width too; a board that is no standard one needs its thickness and
width; an inside needs three sides. Without it, nothing can be cut or reckoned.

\`\`\`sawbuck
part leg 4 of 2x4
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
\`\`\``,
  templates: {
    length: "How long is “{name}”? Its line says no length.",
    width: "How wide is “{name}”? A piece of a sheet says its width.",
    thickness: "How thick is “{name}”? Its line says neither thickness nor plywood.",
    board: "How thick and how wide is “{name}”? Its line says what it is made from, or “actual” with both.",
    inside: "The inside of “{name}” needs three sides: how wide, how deep, how high.",
  },
  run: (worked) =>
    ofKind(worked, "size-missing")
      .filter(({ at }) => !goesOnUnread(at, worked))
      .map(({ at, name, what }) => ({
        at,
        about: [name],
        says: what,
        slots: { name },
      })),
};

/** Whether the next line was meant to go on from this one and was not read: the size may stand there. */
function goesOnUnread({ file, start }: At, { loaded }: Worked): boolean {
  const tree = loaded.files.find((f) => f.file === file)?.tree;
  const next = tree?.entries.find((e) => e.start > start);
  return tree?.complaints.some((c) => c.says === "goes-on" && c.start === next?.start) ?? false;
}
