import { type BoardWork, type Saving, type SheetWork, savingOf, type Worked } from "../worked";
import type { Check, Finding, Slot } from "./check";
import { firstAnswer, stockPlace } from "./stock-words";
import { markAbove, soldLength, writtenLength } from "./writing";

export const cheaperWith: Check = {
  code: "cheaper-with",
  class: "hint",
  title: "Another board would save money",
  page: `A board is bought whole for a little that is cut from it. A length that yards usually sell, and this shop's lines do not
name, would do; or one more piece on hand would. Told where it saves at least 5 of whatever is paid in, and a tenth of what
the stock costs. The other length is taken to cost as much by length as the sold ones nearest to it, and wood on hand to cost
nothing.

\`\`\`sawbuck
stock 4x4, sold 8' $28
part post 2 of 4x4, length 68"
\`\`\`

\`\`\`sawbuck
stock 4x4, sold 6' $21, 8' $28
part post 2 of 4x4, length 68"
\`\`\``,
  templates: {
    length: {
      by: "n",
      one: "One board of {material} could be {length} long instead of {instead}, and that would save {saves}.",
      other: "{n} boards of {material} could be {length} long, and that would save {saves}.",
    },
    hand: "One more {material} on hand, at least {length} long, would save {saves}: a board of {instead} is bought for no more than that.",
    sheet:
      "One more {material} on hand, at least {width} x {length}, would save {saves}: a sheet of {instead} is bought for no more than that.",
    "sheet-grain":
      "One more {material} on hand, at least {length} along its grain and {width} across, would save {saves}: a sheet of {instead} is bought for no more than that.",
    price: "A board of {length} is taken to cost {price}, as much by length as one of {near} at {paid}.",
    free: "What is on hand costs nothing, and it is good from end to end.",
    first: "The layout is a first answer; another may need fewer boards.",
    ask: "Ask the yard for {length}. If it has them, write them with their price among what is sold of {material}.",
    look: "Look through the pile. What lies there belongs under {material}, as “on hand 1 of {written}”.",
  },
  run: (worked) =>
    [...worked.boards, ...worked.sheets].flatMap((work) => {
      const saving = savingOf(work, worked.settings.lumber);
      return saving ? [findingOf(work, saving, worked)] : [];
    }),
};

function findingOf(work: BoardWork | SheetWork, saving: Saving, worked: Worked): Finding {
  const { display } = worked.settings;
  const material = work.material.name;
  const { saves } = saving;
  const common = {
    ...stockPlace(work, worked),
    numbers: [{ name: "saves", value: saves, source: "the shop's prices" }],
  };
  if (saving.by === "length") {
    const { count, price, near } = saving;
    const length = soldLength(saving.length, display);
    return {
      ...common,
      says: "length",
      slots: { material, n: count, length, instead: soldLength(saving.instead.length, display), saves },
      assumed: [
        {
          says: "price",
          slots: { length, price, near: soldLength(near.length, display), paid: near.price! },
        },
        ...firstAnswer(work),
      ],
      cures: [{ says: "ask", slots: { length, material }, edits: [] }],
    };
  }
  // What must be there is never told shorter than it is.
  const length = markAbove(saving.length, display);
  const width: Record<string, Slot> = saving.width ? { width: markAbove(saving.width, display) } : {};
  const { instead } = saving;
  const whole = instead.width
    ? { row: [instead.length, instead.width], by: " x " }
    : soldLength(instead.length, display);
  const grained = work.material.grain !== "none";
  return {
    ...common,
    says: saving.width ? (grained ? "sheet-grain" : "sheet") : "hand",
    slots: { material, length, ...width, saves, instead: whole },
    assumed: [{ says: "free", slots: {} }, ...firstAnswer(work)],
    cures: saving.width
      ? []
      : [{ says: "look", slots: { material, written: writtenLength(length, display) }, edits: [] }],
  };
}
