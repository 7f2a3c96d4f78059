/** What the shop wants to know before the first cut, and what the thing wants after the last: tools, bits, boards, weight, care. */
import { ifKnown } from "../plan";
import { COMMON_PRACTICE, FROM_MEMORY } from "../trade";
import { type Display, lengthText, quantityText } from "../units";
import {
  aisleFacts,
  type BitNeed,
  bitsNeeded,
  careOf,
  type ToolNeed,
  toolsNeeded,
  type Worked,
  weightOf,
} from "../worked";
import type { SheetBit, SheetData, SheetTool } from "./data";
import { both, marked } from "./marks";
import type { SheetWords } from "./words";

type Shop = Pick<SheetData, "tools" | "bits" | "yard" | "weight" | "care">;

export function shopOf(worked: Worked, words: SheetWords): Shop {
  const { display } = worked.settings;
  const own = ifKnown(weightOf(worked).own);
  return {
    tools: toolsNeeded(worked, words.shop).map((need) => toolRow(need, display, words)),
    bits: bitsNeeded(worked, words.shop).map((need) => bitRow(need, display, words)),
    yard: aisleFacts(worked)
      .rows.filter(({ aisle }) => aisle === "boards")
      .map(({ name, taken: { thickness, width } }) => ({
        stock: name,
        thickness: thickness ? marked(thickness, display) : null,
        width: width ? marked(width, display) : null,
      })),
    weight: own && own.approx > 0 ? { kg: own.approx, text: both(own, display) } : null,
    care: careOf(worked, words.shop).map(({ text, source }) => ({ text, source: documented(source, words) })),
  };
}

/** Where a sentence comes from; that somebody remembers it, or does it so, is left out. */
export const documented = (source: string, { shop }: SheetWords): string =>
  [COMMON_PRACTICE, FROM_MEMORY].some((plain) => shop.cite(plain) === source) ? "" : source;

function toolRow(
  { tool, name, for: uses, settings, have, instead }: ToolNeed,
  display: Display,
  { wood }: SheetWords,
): SheetTool {
  const reach = settings.map(({ what, value, drawn }) => {
    const as = drawn ? ` ${wood.asDrawn(quantityText(drawn, display))}` : "";
    return `${wood.reach[what]} ${quantityText(value, display)}${as}`;
  });
  return { key: tool, what: name, uses, reach, have, instead };
}

function bitRow(
  { kind, text: size, for: joints, source, assumed, note }: BitNeed,
  display: Display,
  { wood, between }: SheetWords,
): SheetBit {
  const counts = joints.map(({ holes }) => ifKnown(holes));
  return {
    kind,
    what: size,
    holes: counts.every((c) => c !== undefined) ? counts.reduce((sum, c) => sum + c, 0) : null,
    uses: joints.map(({ title, depth }) =>
      depth ? wood.holeDeep(title, lengthText(depth, display)) : title,
    ),
    source,
    assumed: [...assumed, note].filter((said) => said !== "").join(between),
  };
}

/** Boards and sheets to carry home from the yard. */
export function carryOf(worked: Worked): SheetData["shopping"]["carry"] {
  const { display } = worked.settings;
  const { count, longest, weight } = aisleFacts(worked);
  const known = ifKnown(weight);
  if (count === 0) return null;
  return {
    count,
    longest: longest ? marked(longest, display) : null,
    weight: known ? both(known, display) : null,
  };
}
