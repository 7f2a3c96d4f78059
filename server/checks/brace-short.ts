import { ifKnown } from "../plan";
import { ANGLE, fraction, LENGTH, lengthText, roughly } from "../units";
import type { Part, Worked } from "../worked";
import type { Check, Finding } from "./check";
import { edit, tellApart } from "./writing";

export const braceShort: Check = {
  code: "brace-short",
  class: "error",
  title: "A brace that does not reach from corner to corner",
  page: `A board placed diagonally runs from one corner of a face to the opposite one, and its length from long point to long point
follows from that face and from its own width. A length that is typed as well is compared. Leave the length out, and it is
worked out with both end cuts.

\`\`\`sawbuck
part post of 2x4, length 36"
part brace of 1x4, length 40", ends mitered 45°, long points on opposite edges
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 32-1/2" from left, 0 from front
place brace, diagonally on front of posts, from bottom left to top right
\`\`\`

\`\`\`sawbuck
part post of 2x4, length 36"
part brace of 1x4
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 32-1/2" from left, 0 from front
place brace, diagonally on front of posts, from bottom left to top right
\`\`\``,
  templates: {
    short: "{part} is {typed} from tip to tip, but from corner to corner it takes {needs}.",
    long: "{part} is {typed} from tip to tip, but only {needs} fit from corner to corner.",
    miter: "{part} has ends mitered {typed}, but to lie level in its corners they take {needs}.",
    write: "Write {to}",
    leave: "Leave the length and the cuts of its ends out: they follow from where the brace runs.",
  },
  run: (worked) => [...worked.parts.values()].flatMap((part) => findingsOf(part.name, worked)),
};

function findingsOf(name: string, worked: Worked): Finding[] {
  const part = worked.parts.get(name)!;
  const needs = ifKnown(worked.placing.diagonalCut(name));
  const cut = ifKnown(part.cut);
  const written = part.declared.entry.clauses.some((c) => c.kind === "length");
  if (!needs || !cut) return [];
  return [
    ...(written ? lengthOf(part, cut.overall, needs.length, worked) : []),
    ...miterOf(part, needs.miter),
  ];
}

function lengthOf(part: Part, typed: number, needs: number, { settings }: Worked): Finding[] {
  const { display } = settings;
  const rounding = Math.max(LEAST, fraction.toNumber(display.mark) / 2 + LEAST / 10);
  if (Math.abs(typed - needs) <= rounding) return [];
  const [a, b] = tellApart(roughly(LENGTH, typed), roughly(LENGTH, needs), display);
  const to = lengthText(roughly(LENGTH, needs), display);
  const tips = part.measured === "overall" || part.measured === "long to long";
  return [
    {
      at: part.lengthAt,
      about: [part.name],
      says: typed < needs ? "short" : "long",
      slots: { part: part.name, typed: a, needs: b },
      numbers: [
        { name: "as written", value: roughly(LENGTH, typed), source: "as the plan says" },
        { name: "from corner to corner", value: roughly(LENGTH, needs), source: "worked out" },
      ],
      cures: [
        ...(tips ? [{ says: "write", slots: { to }, edits: [edit(part.lengthAt, to)] }] : []),
        { says: "leave", slots: {}, edits: [] },
      ],
    },
  ];
}

function miterOf(part: Part, needs: number): Finding[] {
  const end = [part.leftEnd, part.rightEnd].find(
    (e) => e && Math.abs((e.miter?.approx ?? 0) - needs) > DEGREES,
  );
  if (!end) return [];
  const slots = { part: part.name, typed: end.miter ?? roughly(ANGLE, 0), needs: roughly(ANGLE, needs) };
  const cures = [{ says: "leave", slots: {}, edits: [] }];
  return [{ at: end.at, about: [part.name], says: "miter", slots, cures }];
}

/** Lengths that differ by less, in mm, agree whatever the plan's marks are: 1/64". */
const LEAST = 0.4;
/** Angles that differ by less agree: a saw is set to a quarter of a degree at best. */
const DEGREES = 0.25;
