import { order } from "../units";
import type { Box, Worked } from "../worked";
import type { Check, Finding } from "./check";
import { phrase } from "./phrases";
import { mm, pieceSlot } from "./piece-words";
import { tellApart } from "./writing";

export const boxOpen: Check = {
  code: "box-open",
  class: "error",
  title: "A box with an opening",
  page: `The walls and the bottom of a box that is filled must leave nothing open for the fill to come out: no more than 1/8" in a
wall and 5/8" in the bottom, where gaps are how it drains (common practice). The placed walls are looked at from each side up
to the rim, the bottom from above. A box that is never filled may be as open as it likes.

An inside that is typed is compared with what the placed walls make.

\`\`\`sawbuck
stock 1x6, species western-redcedar, heartwood
stock 1x4, species western-redcedar, heartwood
part side of 1x6, length 30"
part end of 1x6, length 10-1/2"
part plank of 1x4, length 28-1/2"
place side across, on edge, on floor, 0 from left, 0 from front
place side across, on edge, on floor, 0 from left, 11-1/4" from front
place end front to back, on edge, on floor, 0 from left, between front side and back side
place end front to back, on edge, on floor, 29-1/4" from left, between front side and back side
place plank across, flat, on floor, between left end and right end, behind front side, 2 deep, tight
box bed, walls side and end, bottom plank, filled with soil, drains through the gaps
\`\`\`

\`\`\`sawbuck
stock 1x6, species western-redcedar, heartwood
stock 1x4, species western-redcedar, heartwood
part side of 1x6, length 30"
part end of 1x6, length 10-1/2"
part plank of 1x4, length 28-1/2"
place side across, on edge, on floor, 0 from left, 0 from front
place side across, on edge, on floor, 0 from left, 11-1/4" from front
place end front to back, on edge, on floor, 0 from left, between front side and back side
place end front to back, on edge, on floor, 29-1/4" from left, between front side and back side
place plank across, flat, on floor, between left end and right end, behind front side, 3 deep, tight
box bed, walls side and end, bottom plank, filled with soil, drains through the gaps
\`\`\``,
  templates: {
    wall: "{box} is open {where}: a gap {narrow} by {long} in its wall lets the fill out, where up to {limit} may stay open.",
    bottom:
      "{box} is open below: a gap {narrow} by {long} in its bottom lets the fill out, where up to {limit} may stay open.",
    inside: "The line says {box} is {typed} {side} inside, but its walls stand {placed} apart.",
    deep: "The line says {box} is {typed} high inside, but from its bottom to its rim it is {placed}.",
    here: "{piece} is the nearest to it.",
  },
  run: (worked) => worked.boxes.flatMap((box) => [...openings(box), ...typed(box, worked)]),
};

function openings(box: Box): Finding[] {
  const { placed, declared } = box;
  if (!placed || !box.fill) return [];
  return placed.openings.slice(0, 1).map(({ where, size, pieces, limit }): Finding => {
    const [narrow, long] = size;
    const piece = pieces[0]!;
    return {
      at: declared.at,
      about: [box.name, ...new Set(pieces.map((p) => p.part))],
      says: where === "bottom" ? "bottom" : "wall",
      slots: {
        box: box.name,
        ...(where !== "bottom" && { where: phrase(`at the ${where}`) }),
        narrow: mm(narrow),
        long: mm(long),
        limit: mm(limit),
      },
      numbers: [
        { name: "gap", value: mm(narrow), source: "worked out" },
        { name: "let be", value: mm(limit), source: "common practice" },
      ],
      related: [{ says: "here", slots: { piece: pieceSlot(piece) }, at: piece.at }],
    };
  });
}

const SIDES = ["wide", "deep", "high"] as const;

/** A typed inside beside what the walls make. */
function typed(box: Box, { settings }: Worked): Finding[] {
  const { placed, declared } = box;
  if (!placed || !box.typed) return [];
  const clause = declared.entry.clauses.find((c) => c.kind === "inside");
  const at = clause ? { ...declared.at, start: clause.start, end: clause.end } : declared.at;
  return SIDES.flatMap((side): Finding[] => {
    const [said, made] = [box.typed?.[side], placed.inside[side]];
    if (!said || !made || Math.abs(said.approx - made.approx) < ROUNDING || order(said, made) === 0)
      return [];
    const [a, b] = tellApart(said, made, settings.display);
    return [
      {
        at,
        about: [box.name],
        says: side === "high" ? "deep" : "inside",
        slots: { box: box.name, typed: a, placed: b, ...(side !== "high" && { side: phrase(side) }) },
      },
    ];
  }).slice(0, 1);
}

/** Sizes that differ by less, in mm, agree: 1/64". */
const ROUNDING = 0.4;
