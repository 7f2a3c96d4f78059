import { ifKnown } from "../plan";
import type { Quantity } from "../units";
import type { Part, Tools } from "../worked";
import type { Check, Finding } from "./check";

export const noToolForCut: Check = {
  code: "no-tool-for-cut",
  class: "error",
  title: "A cut that no tool at hand can make",
  page: `A \`tools\` line says how far the saw turns and tilts, and whether boards can be cut along their length. A cut beyond that
cannot be made with what is there. Only what the line says is judged.

\`\`\`sawbuck
tools
  miters to 47°
part brace 2 of 2x4, length 20", long point to long point, ends mitered 50°
\`\`\`

\`\`\`sawbuck
tools
  miters to 47°
part brace 2 of 2x4, length 20", long point to long point, ends mitered 45°
\`\`\``,
  templates: {
    miter: "{part} needs a miter of {angle} off square, and the saw turns only to {most}.",
    bevel: "{part} needs a bevel of {angle} off square, and the blade tilts only to {most}.",
    rip: "{part} is to be ripped to {width}, and the tools line says that nothing can be ripped.",
    tools: "The tools are told here.",
  },
  run: (worked) => {
    const { tools } = worked.settings;
    return tools ? [...worked.parts.values()].flatMap((part) => findings(part, tools)) : [];
  },
};

function findings(part: Part, tools: Tools): Finding[] {
  const found: Finding[] = [];
  const related = [{ at: tools.at, says: "tools", slots: {} }];
  const add = (
    says: "miter" | "bevel",
    angle: Quantity | undefined,
    most: Quantity | undefined,
    at: Finding["at"],
  ) => {
    if (!angle || !most || angle.approx <= most.approx + 1e-9) return;
    found.push({
      at,
      about: [part.name],
      says,
      slots: { part: part.name, angle, most },
      numbers: [
        { name: "needs", value: angle, source: "the plan" },
        { name: "most", value: most, source: "the tools line" },
      ],
      related,
    });
  };
  const ends = part.leftEnd?.at === part.rightEnd?.at ? [part.leftEnd] : [part.leftEnd, part.rightEnd];
  for (const end of ends) {
    if (!end) continue;
    add("miter", end.miter, tools.miters, end.at);
    add("bevel", end.bevel, tools.bevels, end.at);
  }
  const width = ifKnown(part.width);
  const board = part.material?.kind === "board" ? ifKnown(part.material.width) : undefined;
  // A width that is the board's own needs no cut, and a wider one is another mistake.
  if (part.ripped && board && width && width.approx < board.approx - 1e-6 && tools.rips === false) {
    found.push({
      at: part.ripped,
      about: [part.name],
      says: "rip",
      slots: { part: part.name, width },
      related,
    });
  }
  return found;
}
