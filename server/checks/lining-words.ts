/** Liners, drains and tins in words, as hovers and the sheet tell them. */
import { ifKnown } from "../plan";
import { cite } from "../trade";
import {
  type Display,
  fraction,
  LENGTH,
  lengthText,
  moneyText,
  type Quantity,
  roughly,
  unitNamed,
} from "../units";
import type { Drainage, DrainHoles, FinishNeed, LinerOpening, LinerSheet, LiningWork } from "../worked";

/** `70" x 40"`. */
export const sheetWords = ({ length, width }: LinerSheet, display: Display): string =>
  `${lengthText(length, display)} x ${lengthText(width, display)}`;

/** `one sheet 70" x 40"`, or the strips side by side; empty where it is not known. */
export function cutWords({ cuts, overlap }: LiningWork, display: Display): string {
  const list = ifKnown(cuts) ?? [];
  const over = ifKnown(overlap);
  const [first] = list;
  if (!first) return "";
  if (first.what === "sheet") return `one sheet ${sheetWords(first, display)}`;
  const strips = list.map((c) => `${c.count === 1 ? "one" : c.count} of ${sheetWords(c, display)}`);
  const laid = over ? `, side by side, each ${lengthText(over, display)} over the next` : "";
  return `strips: ${strips.join(" and ")}${laid}`;
}

/** Where the top edge is stapled, and how often. */
export function stapleWords(
  { staples, staplesApart: [close, wide], stapleHeight }: LiningWork,
  display: Display,
): string {
  const count = ifKnown(staples);
  const apart = `${lengthText(close, display)} apart (${lengthText(wide, display)} at the most)`;
  const where =
    stapleHeight.approx > 0
      ? `${lengthText(stapleHeight, display)} below the rim, above the fill`
      : "on top of the rim, since the fill reaches it";
  return `${count === undefined ? "" : `${count}: `}${apart}, ${where}`;
}

/** How the liner is opened over the drain. */
export function openingWords(opening: LinerOpening, display: Display): string {
  switch (opening.how) {
    case "whole":
      return opening.why === "no drain"
        ? "the liner stays whole, since the box is not to drain"
        : "it lets water through, so it is not cut";
    case "over gaps": {
      const { gaps, each, diameter, apart } = opening;
      const over = gaps === undefined ? "every gap" : gaps === 1 ? "the gap" : `each of the ${gaps} gaps`;
      const holes = each === undefined ? "holes" : each === 1 ? "one hole" : `${each} holes`;
      const spaced =
        each === 1 ? "" : `, ${lengthText(apart[0], display)} to ${lengthText(apart[1], display)} apart`;
      if (gaps === 0)
        return "no gap was found between the bottom boards; it is cut open where the water is to leave";
      return `over ${over} between the bottom boards cut ${holes} of ${lengthText(diameter, display)}${spaced}`;
    }
    case "over holes": {
      const holes = ifKnown(opening.holes);
      if (!holes) return "over every hole of the bottom cut one as large";
      const { count, diameter } = holes;
      const which = count === 1 ? "the hole" : `each of the ${count} holes`;
      return `over ${which} of the bottom cut one of ${lengthText(diameter, display)}`;
    }
    case "unsaid":
      return "nothing is said of cutting it open, since the box does not say how it drains";
  }
}

/** What the plan says of the drain, and where its holes go. */
export function drainWords({ how, holes, gaps }: Drainage, display: Display): string {
  if (how === undefined) return "the plan does not say how";
  if (how === "nothing") return "not at all, so the heaviest the fill can be is what counts";
  if (how === "gaps")
    return `through the gaps between its bottom boards${gaps ? gapWords(gaps, display) : ""}`;
  const known = holes && ifKnown(holes);
  return known ? holeWords(known, display) : "by drilled holes";
}

function gapWords({ count, least, most, long }: NonNullable<Drainage["gaps"]>, display: Display): string {
  if (count === 0) return ", of which none was found";
  const [from, to] = [lengthText(least, display), lengthText(most, display)];
  const wide = from === to ? from : `${from} to ${to}`;
  return `: ${count} of ${wide}, ${lengthText(long, display)} long`;
}

function holeWords({ count, diameter, grid }: DrainHoles, display: Display): string {
  const holes = `by ${count === 1 ? "one hole" : `${count} holes`} of ${lengthText(diameter, display)}`;
  if (!grid || count === 1) return holes;
  const { rows, inRow, apartInRow, apartRows } = grid;
  const near = (q: Quantity): string => lengthText(roughly(LENGTH, q.approx), display);
  const row = `${inRow} along the bottom, ${near(apartInRow)} apart`;
  const spread =
    rows === 1 ? `one row of ${row}` : `${rows} rows of ${row}, the rows ${near(apartRows)} apart`;
  return `${holes}: ${spread}, half as far from its sides`;
}

/** What is usual for a box of that size: told, never judged. */
export function advisedWords({ advised }: Drainage, display: Display): string {
  const { count, diameter, apart, source } = advised;
  const few = count <= 4 ? "or more holes" : "holes";
  const spaced =
    count <= 4 ? "" : `, ${lengthText(apart[0], display)} to ${lengthText(apart[1], display)} apart`;
  return `${count} ${few} of ${lengthText(diameter, display)}${spaced} (${cite(source)})`;
}

/** A length bought off a roll: `13'` or `4 m` where it is whole, else to the plan's mark. */
export function rollWords(q: Quantity, display: Display): string {
  const [unit, mark] = display.system === "inches" ? ["ft", "'"] : ["m", " m"];
  const whole = q.exact && fraction.divide(q.exact, unitNamed(unit)!.factor);
  return whole?.d === 1n ? `${whole.n}${mark}` : lengthText(q, display);
}

/** `2 tins of 1 qt for $18.00 each`. */
export const tinWords = ({ tins }: FinishNeed): string =>
  tins
    .map(({ tin, count }) => {
      const price = tin.price ? ` for ${moneyText(tin.price)}${count > 1 ? " each" : ""}` : "";
      return `${count === 1 ? "one tin" : `${count} tins`} of ${tin.text}${price}`;
    })
    .join(" and ");
