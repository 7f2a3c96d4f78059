import {
  type BoardWork,
  type SheetWork,
  savingOf,
  type WastedRest,
  type Worked,
  wastedRest,
} from "../worked";
import type { Check, Cure, Finding } from "./check";
import { firstAnswer, stockPlace } from "./stock-words";
import { markBelow, soldLength, writtenLength } from "./writing";

export const offcutWasted: Check = {
  code: "offcut-wasted",
  class: "hint",
  title: "A dear piece of a board is left over",
  page: `More than half of a board or sheet that is bought is left over in one piece. Told where it is at least 24" long, and its
share of the price comes to 5 of whatever is paid in and to a fifth of what is bought of the stock. It cannot
always be helped, but the next plan can be cut from it, if a line of your shop file says that it is there. Where another
board would save money, \`cheaper-with\` tells that instead.

\`\`\`sawbuck
stock 4x4, sold 6' $21
part post 1 of 4x4, length 32"
\`\`\`

\`\`\`sawbuck
stock 4x4, sold 6' $21, on hand 1 of 34"
part post 1 of 4x4, length 32"
\`\`\``,
  templates: {
    board: "{length} is left over of a board of {whole}: {material} for {worth}.",
    sheet: "{width} x {length} is left over of a sheet of {whole}: {material} for {worth}.",
    first: "The layout is a first answer; another may leave less.",
    keep: "Keep it, and write “on hand 1 of {written}” under {material} in your shop file: the next plan is cut from it first.",
    "keep-sheet": "Keep it for a plan that needs such a piece.",
  },
  run: (worked) =>
    [...worked.boards, ...worked.sheets].flatMap((work) => {
      const rest = savingOf(work, worked.settings.lumber) ? undefined : wastedRest(work);
      return rest ? [findingOf(work, rest, worked)] : [];
    }),
};

function findingOf(work: BoardWork | SheetWork, rest: WastedRest, worked: Worked): Finding {
  const { display } = worked.settings;
  const material = work.material.name;
  const { from, worth } = rest;
  const length = markBelow(rest.length, display);
  const width = rest.width && markBelow(rest.width, display);
  const written = [...(width ? [width] : []), length].map((side) => writtenLength(side, display));
  const keep: Cure = { says: "keep", slots: { written: written.join(" x "), material }, edits: [] };
  return {
    ...stockPlace(work, worked),
    says: width ? "sheet" : "board",
    slots: {
      length,
      ...(width && { width }),
      whole: from.width ? { row: [from.length, from.width], by: " x " } : soldLength(from.length, display),
      material,
      worth,
    },
    numbers: [
      { name: "left over", value: rest.length, source: "the layout" },
      { name: "worth", value: worth, source: "the shop's prices" },
    ],
    assumed: firstAnswer(work),
    cures: [rest.grainAcross ? { says: "keep-sheet", slots: {}, edits: [] } : keep],
  };
}
