import { type BoardWork, type SheetWork, type Shortage, shortageOf, type Worked } from "../worked";
import type { Check, Cure, Finding, Slot } from "./check";
import { phrase } from "./phrases";

export const notEnoughOnHand: Check = {
  code: "not-enough-on-hand",
  class: "error",
  title: "The pile does not hold all pieces",
  page: `Some pieces can only come from what is on hand, since nothing is sold of their stock, or nothing that is large enough. The
pile is laid out with the saw cuts between pieces and around bad places, and some pieces are left without wood. Where there
is less wood than the pieces need, or where it was proven, no other way to lay them out takes more of them.

\`\`\`sawbuck
stock old-door of 1x6, painted, on hand 3 of 28"
part shelf 3 of old-door, length 24"
part cleat 3 of old-door, length 12"
\`\`\`

\`\`\`sawbuck
stock old-door of 1x6, painted, on hand 5 of 28"
part shelf 3 of old-door, length 24"
part cleat 3 of old-door, length 12"
\`\`\``,
  templates: {
    pile: "What is on hand of {material} is not enough: there is no wood for {pieces}, {lacks} in all.",
    "pile-sure":
      "What is on hand of {material} is not enough, however the pieces are laid out: there is no wood for {pieces}, {lacks} in all.",
    large:
      "What is sold of {material} is too small for some pieces, and what is on hand does not hold them all: there is no wood for {pieces}, {lacks} in all.",
    "large-sure":
      "What is sold of {material} is too small for some pieces, and what is on hand does not hold them all, however they are laid out: there is no wood for {pieces}, {lacks} in all.",
    needs: "Pieces that only this can give need {needs}; it holds {has} of good wood.",
    unproven: "Another way to lay them out may find wood for more of them.",
    find: "Find more of it, or make fewer or smaller pieces.",
    sold: "If it can be bought, write under {material} in which lengths it is sold.",
    "sold-sheets": "If it can be bought, write under {material} in which sizes it is sold.",
  },
  run: (worked) =>
    [...worked.boards, ...worked.sheets].flatMap((work) => {
      const shortage = shortageOf(work);
      return shortage ? [findingOf(work, shortage, worked)] : [];
    }),
};

function findingOf({ material }: BoardWork | SheetWork, shortage: Shortage, { parts }: Worked): Finding {
  const { pieces, sold, sure, needs, has, lacks } = shortage;
  const { name, declared } = material;
  const buy: Cure = {
    says: material.kind === "sheet" ? "sold-sheets" : "sold",
    slots: { material: name },
    edits: [],
  };
  return {
    at: parts.get(pieces[0]!.part)!.declared.at,
    about: [name, ...pieces.map(({ part }) => part)],
    says: `${sold ? "large" : "pile"}${sure ? "-sure" : ""}`,
    slots: { material: name, pieces: { all: pieces.map(shown) }, lacks },
    numbers: [
      { name: "needed from the pile", value: needs, source: "worked out" },
      { name: "good on hand", value: has, source: "the stock line" },
    ],
    related: declared ? [{ at: declared.at, says: "needs", slots: { needs, has } }] : [],
    assumed: sure ? [] : [{ says: "unproven", slots: {} }],
    cures: [{ says: "find", slots: {}, edits: [] }, ...(sold ? [] : [buy])],
  };
}

/** `slat (2 of 40")`, as a plan writes what is on hand. */
function shown({ part, count, length, width }: Shortage["pieces"][number]): Slot {
  return width
    ? phrase("so many of a sheet", { part, n: count, length, width })
    : phrase("so many of a length", { part, n: count, length });
}
