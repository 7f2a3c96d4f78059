/**
 * The builder through which all HTML and SVG is made. Only the elements and attributes named here exist, every text and
 * every value is escaped on its way in, and each element closes: the output is well-formed as HTML and as XML.
 */
import { escapeAttribute, escapeText } from "./escape";

export type Tag =
  | ("html" | "head" | "meta" | "title" | "body" | "main" | "header" | "section" | "figure")
  | ("h1" | "h2" | "h3" | "p" | "ol" | "ul" | "li" | "dl" | "div" | "dt" | "dd" | "figcaption")
  | ("table" | "thead" | "tbody" | "tr" | "th" | "td" | "strong" | "small" | "span")
  | ("label" | "input" | "button")
  | ("svg" | "path" | "text");

export type Attribute =
  | ("lang" | "charset" | "name" | "content" | "http-equiv" | "class" | "scope" | "colspan")
  | (
      | "id"
      | "role"
      | "aria-label"
      | "tabindex"
      | "hidden"
      | "type"
      | "data-piece"
      | "data-line"
      | "data-label"
    )
  | (
      | "data-plan"
      | "data-tick"
      | "data-pieces"
      | "data-progress"
      | "data-left"
      | "data-other"
      | "data-not-kept"
    )
  | ("xmlns" | "width" | "height" | "viewBox" | "d" | "fill" | "stroke" | "stroke-width")
  | ("stroke-linecap" | "stroke-linejoin" | "paint-order" | "x" | "y" | "transform")
  | ("font-family" | "font-size" | "font-weight" | "text-anchor");

export type Attributes = Readonly<Partial<Record<Attribute, string | number | undefined>>>;

/** A finished element: only this file can make one. */
export interface Markup {
  readonly [finished]: string;
}

/** Text, an element, several of them, or nothing. */
export type Child = string | Markup | readonly Child[] | null;

/** An element with its attributes (undefined ones left out) and what stands in it. */
export function element(tag: Tag, attributes: Attributes, ...children: readonly Child[]): Markup {
  let start = `<${tag}`;
  for (const name in attributes) {
    const value = attributes[name as Attribute];
    if (value !== undefined) start += ` ${name}="${escapeAttribute(String(value))}"`;
  }
  return { [finished]: EMPTY.has(tag) ? `${start}/>` : `${start}>${inside(children)}</${tag}>` };
}

/** Words that lead to an element of the same page: the only address that markup can hold. */
export const linkTo = (id: string, ...children: readonly Child[]): Markup => ({
  [finished]: `<a href="#${escapeAttribute(id)}">${inside(children)}</a>`,
});

/** A style or script whose text is the program's own, and never a plan's: it is not escaped, and must not close itself. */
export function rawElement(tag: "style" | "script", text: string): Markup {
  if (/<\/|<!--/.test(text)) throw new Error(`a ${tag} may not hold the end of a ${tag}`);
  return { [finished]: `<${tag}>${text}</${tag}>` };
}

/** The written markup of these, one after the other. */
export function markupText(...children: readonly Child[]): string {
  return inside(children);
}

/** A whole HTML file. */
export function htmlFile(root: Markup): string {
  return `<!DOCTYPE html>\n${root[finished]}\n`;
}

const finished = Symbol("finished");

const EMPTY: ReadonlySet<Tag> = new Set<Tag>(["meta", "input"]);

function inside(children: readonly Child[]): string {
  let text = "";
  for (const child of children) text += written(child);
  return text;
}

function written(child: Child): string {
  if (child === null) return "";
  if (typeof child === "string") return escapeText(child);
  return finished in child ? child[finished] : inside(child);
}
