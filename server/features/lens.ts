/**
 * What stands above the line that names a plan: its boards, what they cost, how many problems are open, and how much was
 * not checked. Read off what is worked out already, and never an approval.
 */
import type { Span } from "../../grammar/tree";
import type { Language } from "../checks";
import { quantityText } from "../units";
import { type BoardWork, countNotChecked, type SheetWork, type Worked } from "../worked";
import type { Checked } from "./checked";
import { toldOf } from "./diagnostics";
import { LENS_WORDS } from "./lens-words";

export interface Lens {
  /** The line above which it stands. */
  readonly range: Span;
  readonly title: string;
  /** Where more of it is told. */
  readonly opens: "sheet" | "problems" | "not checked";
}

/** Above the `plan` line, else above the first part; none for a file without either. */
export function lensesOf(plan: Checked, language: Language = "en"): Lens[] {
  const entries = plan.worked.loaded.files[0]?.tree.entries ?? [];
  const above = entries.find((e) => e.kind === "plan") ?? entries.find((e) => e.kind === "part");
  if (!above) return [];
  const { start, end } = above.keyword;
  const words = LENS_WORDS[language];
  const problems = toldOf(plan).length;
  const unchecked = countNotChecked(plan.worked);
  const lens = (title: string, opens: Lens["opens"]): Lens[] =>
    title === "" ? [] : [{ range: { start, end }, title, opens }];
  return [
    ...lens(woodOf(plan.worked, language), "sheet"),
    ...lens(costOf(plan.worked, language), "sheet"),
    ...lens(problems > 0 ? words.problems(problems) : "", "problems"),
    ...lens(unchecked > 0 ? words.notChecked(unchecked) : "", "not checked"),
  ];
}

/** Empty where nothing is cut. */
function woodOf({ boards, sheets }: Worked, language: Language): string {
  const used = boards.reduce((sum, { answer }) => sum + answer.boards.length, 0);
  const panels = sheets.reduce((sum, { answer }) => sum + answer.sheets.length, 0);
  const bought = [...boards, ...sheets]
    .flatMap(({ answer }) => answer.buy)
    .reduce((sum, { count }) => sum + count, 0);
  if (used + panels === 0) return "";
  return LENS_WORDS[language].wood(
    used,
    panels,
    used + panels - bought,
    [...boards, ...sheets].some(leavesOut),
  );
}

/** Pieces that no wood was found for, or that could not be laid out. */
const leavesOut = (work: BoardWork | SheetWork): boolean =>
  [work.leftOut, work.tooLong, work.answer.unplaced].some((left) => left.length > 0) ||
  ("tooWide" in work && work.tooWide.length + work.tooLarge.length > 0);

/** Empty where nothing is bought. */
function costOf({ shopping, settings, boards, sheets }: Worked, language: Language): string {
  const words = LENS_WORDS[language];
  const { rows, withoutPrice, uncounted, unmeasured, currencies, total } = shopping;
  if (currencies.length > 1) return words.currencies(currencies);
  if (!total || !rows.some(({ each }) => each))
    return withoutPrice.length > 0 ? words.noPrices(withoutPrice.length) : "";
  const { display, budget } = settings;
  const costs = quantityText(total, display);
  const cost =
    budget && budget.value.dim.currency === total.dim.currency
      ? words.costOf(costs, quantityText(budget.value, display).replace(WHOLE, ""))
      : costs;
  const more = uncounted.length + unmeasured.length > 0 || [...boards, ...sheets].some(leavesOut);
  const all = more ? words.andMore(cost) : cost;
  return withoutPrice.length > 0 ? words.withoutPrices(all, withoutPrice.length) : all;
}

/** The cents of a whole amount, as a budget is typed without them. */
const WHOLE = /\.00$/;
