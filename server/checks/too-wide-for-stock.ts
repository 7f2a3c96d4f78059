import { ifKnown } from "../plan";
import type { Part, Worked } from "../worked";
import type { Check, Finding } from "./check";
import { apart } from "./writing";

export const tooWideForStock: Check = {
  code: "too-wide-for-stock",
  class: "error",
  title: "A piece wider than its board",
  page: `A board can be ripped narrower, never wider. A 1x6 is 5-1/2" wide, whatever its name says; a piece of a sheet must fit the
sheet with its grain the right way.

\`\`\`sawbuck
part panel 2 of 1x6, length 20", width 6"
\`\`\`

\`\`\`sawbuck
part panel 2 of 1x8, length 20", width 6"
\`\`\``,
  templates: {
    board: "{part} is to be ripped to {width}, but {material} is only {has} wide.",
    sheet: "{part} is {width} wide, and no sheet of {material} is that wide the way its grain runs.",
  },
  run: (worked) => [...ripped(worked), ...panels(worked)],
};

function ripped(worked: Worked): Finding[] {
  return [...worked.parts.values()].flatMap((part): Finding[] => {
    const width = ifKnown(part.width);
    const has = ifKnown(part.material?.width);
    if (!part.ripped || !width || !has || width.approx <= has.approx + NUMERIC) return [];
    const [wide, most] = apart(width, has, worked.settings.display);
    return [
      {
        at: part.ripped,
        about: [part.name],
        says: "board",
        slots: { part: part.name, width: wide, material: part.material!.name, has: most },
        numbers: [
          { name: part.name, value: width, source: "the plan" },
          { name: part.material!.name, value: has, source: part.material!.source },
        ],
      },
    ];
  });
}

const NUMERIC = 1e-6;

const panels = (worked: Worked): Finding[] =>
  worked.sheets.flatMap((work) =>
    work.tooWide.map((part: Part) => ({
      at: part.ripped ?? part.declared.at,
      about: [part.name],
      says: "sheet",
      slots: { part: part.name, width: ifKnown(part.width)!, material: work.material.name },
    })),
  );
