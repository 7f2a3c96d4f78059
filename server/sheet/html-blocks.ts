/** The blocks of a sheet as HTML. */
import type { Drawing } from "./display";
import {
  type Block,
  type Figure,
  type Group,
  type Item,
  type Links,
  type List,
  labelled,
  type Progress,
  type WriterWords,
} from "./document";
import { tableHtml } from "./html-table";
import { ticksHtml, wordsHtml } from "./html-words";
import { type Child, element, type Markup } from "./markup";
import { drawingSvg } from "./svg";

export function blockHtml(block: Block, words: WriterWords): Child {
  switch (block.kind) {
    case "paragraph":
      return element(
        "p",
        { class: block.style === "plain" ? undefined : block.style },
        wordsHtml(block.words),
      );
    case "terms":
      return element(
        "dl",
        { class: block.light ? "light" : block.columns && "columns" },
        labelled(block.rows).map(({ label, all }) =>
          element(
            "div",
            {},
            element("dt", {}, label),
            all.map((words) => element("dd", {}, wordsHtml(words))),
          ),
        ),
      );
    case "list":
      return listHtml(block, words);
    case "table":
      return tableHtml(block, words);
    case "figure":
      return figureHtml(block);
    case "figures":
      return element("div", { class: "figures" }, block.figures.map(figureHtml));
    case "group":
      return groupHtml(block, words);
    case "progress":
      return progressHtml(block);
  }
}

function listHtml({ style, columns, items }: List, words: WriterWords): Markup {
  const own = style === "bullets" || style === "numbers" ? undefined : style;
  return element(
    style === "numbers" ? "ol" : "ul",
    { class: columns ? [own, "columns"].filter(Boolean).join(" ") : own },
    items.map((item) => itemHtml(item, words)),
  );
}

function itemHtml(
  { ticks = [], lead, framed, words: said, below = [], line }: Item,
  words: WriterWords,
): Markup {
  return element(
    "li",
    { class: framed ? "framed" : undefined, "data-line": line },
    ticksHtml(ticks, words),
    lead === undefined ? null : [element("strong", { class: "lead" }, lead), " "],
    wordsHtml(said),
    below.length === 0
      ? null
      : element(
          "ul",
          { class: "below" },
          below.map((more) => element("li", {}, wordsHtml(more))),
        ),
  );
}

function figureHtml({ caption, drawing, toScale, old, beside, links, line }: Figure): Markup {
  const shown = drawing();
  // What may scroll sideways can be scrolled by keys too, and then says what it is.
  const scrolls = !beside ? { tabindex: 0, role: "group", "aria-label": caption || shown.title } : {};
  const classes = [old && "old", beside && "beside", toScale && "to-scale"].filter(Boolean).join(" ");
  return element(
    "figure",
    { class: classes || undefined, "data-line": line },
    caption === "" ? null : element("figcaption", {}, caption),
    element("div", { class: "paper", ...scrolls }, svgOf(shown, links)),
  );
}

function groupHtml({ name, ticks = [], heading, blocks, line }: Group, words: WriterWords): Markup {
  return element(
    "div",
    { class: name, "data-line": line },
    element("h3", {}, ticksHtml(ticks, words), wordsHtml(heading)),
    blocks.map((block) => blockHtml(block, words)),
  );
}

/** Hidden until a script that counts shows it. */
function progressHtml({ of, left, untick, putBack, notKept }: Progress): Markup {
  return element(
    "p",
    { class: "progress", hidden: "", "data-progress": of, "data-left": left, "data-not-kept": notKept },
    element("span", { role: "status" }),
    " ",
    element("button", { type: "button", "data-other": putBack }, untick),
  );
}

/** Written once for each drawing, while its lines stay the same: the preview asks for the same drawings over and over. */
function svgOf(drawing: Drawing, links: Links | undefined): Markup {
  if (links === undefined) return drawingSvg(drawing);
  const before = WRITTEN.get(drawing);
  if (before?.lines === links.key) return before.svg;
  const svg = drawingSvg(drawing, {
    lineOf: ({ layer, piece = "" }) => {
      if (layer === "face") return links.places.get(piece);
      return layer === "balloon" ? links.parts.get(piece) : undefined;
    },
  });
  WRITTEN.set(drawing, { lines: links.key, svg });
  return svg;
}

const WRITTEN = new WeakMap<Drawing, { readonly lines: string; readonly svg: Markup }>();
