/** A book of plans for programs: version 1, fields are only ever added. */
import type { SheetWords } from "../words";
import { type BookPlan, inShort } from "./book";

export const bookJson = (plans: readonly BookPlan[], words: SheetWords): string =>
  `${JSON.stringify({ format: "sawbuck-list", version: 1, plans: plans.map((plan) => inShort(plan, words)) }, null, 2)}\n`;
