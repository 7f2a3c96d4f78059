/** Words and boxes to tick as HTML. */
import { runsOf, type Tick, type Words, type WriterWords } from "./document";
import { type Child, element, linkTo } from "./markup";

/** Lengths are kept on one line each: `1-3/4"` is never broken at its hyphen. */
export function wordsHtml(words: Words): Child {
  return runsOf(words).map(({ text, style, language, to }): Child => {
    if (to !== undefined) return linkTo(to, text);
    if (style === "blank") return element("span", { class: "blank", role: "img", "aria-label": text });
    if (style !== undefined) return element(style, { lang: language }, unbroken(text));
    return language === undefined ? unbroken(text) : element("span", { lang: language }, unbroken(text));
  });
}

/** Boxes that a pencil ticks on paper, and a finger on a screen. */
export function ticksHtml(ticks: readonly Tick[], words: WriterWords): Child {
  return ticks.map(({ id, what, done, pieces }) => {
    const label = words.tick(what, done);
    const box = { type: "checkbox", "data-tick": id, "data-pieces": pieces, "aria-label": label };
    return element("label", { class: "tick-box" }, element("input", box));
  });
}

function unbroken(words: string): Child {
  return words
    .split(/((?<!\d)\d+(?:-\d+\/\d+"?| mm))/)
    .map((part, i) => (i % 2 === 0 ? part : element("span", { class: "whole" }, part)));
}
