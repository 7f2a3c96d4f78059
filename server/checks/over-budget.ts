import { minus, type Quantity, refused } from "../units";
import { type Cheapest, cheapestOf, whyNothing } from "../worked";
import type { Check } from "./check";

export const overBudget: Check = {
  code: "over-budget",
  class: "warning",
  title: "It costs more than the budget",
  page: `What is bought (whole boards, sheets, boxes and tins, and lengths off a roll, with tax) is added up and compared with the budget. Things without a price
are left out, so it may be more still. While you type, boards are laid out by a first answer, and a cheaper way may exist; a
better one is looked for in the background, and then it is told how much could be saved at most, or that nothing could.

\`\`\`sawbuck
plan A rail
  budget $5
stock 2x4, sold 8' $4.20
part rail 2 of 2x4, length 60"
\`\`\`

\`\`\`sawbuck
plan A rail
  budget $10
stock 2x4, sold 8' $4.20
part rail 2 of 2x4, length 60"
\`\`\``,
  templates: {
    over: "It costs {total}, {more} over the budget of {budget}.",
    "over-cheapest":
      "It costs {total}, {more} over the budget of {budget}, and no cheaper way to cut it exists at these prices.",
    "over-within":
      "It costs {total}, {more} over the budget of {budget}; cutting it otherwise could save {saves} at most.",
    least: "It costs {total} and more, {more} over the budget of {budget}: no price is known for {without}.",
    "least-cheapest":
      "It costs {total} and more, {more} over the budget of {budget}: no price is known for {without}, and no cheaper way to cut it exists at these prices.",
    "least-within":
      "It costs {total} and more, {more} over the budget of {budget}: no price is known for {without}; cutting it otherwise could save {saves} at most.",
    other: "The prices are in {currency}, so they cannot be compared with the budget of {budget}.",
    uncounted: "How many {what} it takes is not known, so they are not all in this.",
    unmeasured: "How much {what} it takes is not known, so it is not all in this.",
    first: "The boards are laid out by a first answer; a cheaper way may exist.",
  },
  run: (worked) => {
    const { settings, shopping } = worked;
    const { budget } = settings;
    const { withoutPrice, uncounted, unmeasured } = shopping;
    const total = shopping.total ?? shopping.subtotal;
    const laid = [...worked.boards, ...worked.sheets];
    // Where nothing can be cut from a stock, what it costs is no news.
    if (!budget || !total || shopping.rows.length === 0 || laid.some(whyNothing)) return [];
    const more = minus(total, budget.value);
    if (refused(more)) {
      const slots = { currency: total.dim.currency, budget: budget.value };
      return [{ at: budget.at, says: "other", slots }];
    }
    if (more.approx <= 0) return [];
    const buysWood = laid.some(({ answer }) => answer.buy.length > 0);
    const cut: Cheapest = buysWood ? cheapestOf(worked) : { known: "nothing" };
    return [
      {
        at: budget.at,
        says: `${withoutPrice.length > 0 ? "least" : "over"}${cut.known === "nothing" ? "" : `-${cut.known}`}`,
        slots: {
          total,
          more: more as Quantity,
          budget: budget.value,
          without: { row: withoutPrice, by: ", " },
          ...(cut.known === "within" && { saves: cut.saves }),
        },
        numbers: [
          { name: "costs", value: total, source: "the shop's prices" },
          { name: "budget", value: budget.value, source: "the plan" },
        ],
        assumed: [
          ...(cut.known === "nothing" && buysWood ? [{ says: "first", slots: {} }] : []),
          ...uncounted.map((what) => ({ says: "uncounted", slots: { what } })),
          ...unmeasured.map((what) => ({ says: "unmeasured", slots: { what } })),
        ],
      },
    ];
  },
};
