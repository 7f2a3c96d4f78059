/** The order of work. */
import type { SheetData } from "../data";
import type { Section } from "../document";
import type { SheetWords } from "../words";
import { list, section } from "./blocks";
import { sentence } from "./names";

export function stepSection({ steps }: SheetData, words: SheetWords): Section[] {
  return section("steps", words.headings.steps, [
    list(
      "numbers",
      steps.map(({ title, lines }) => ({
        words: [{ text: sentence(title), style: "strong" }],
        below: lines,
      })),
    ),
  ]);
}
