/**
 * A reader of markup that forgives nothing, written apart from the builder it judges: every `<` opens or closes an
 * element of the list, every attribute is on the list and quoted, every `&` is a known entity, elements nest and close.
 */

export interface Read {
  /** Decoded texts between tags, in order. */
  readonly texts: readonly string[];
  /** Decoded attribute values, in order. */
  readonly values: readonly string[];
  /** Elements opened, in order, with their attribute names. */
  readonly elements: readonly { readonly tag: string; readonly attributes: readonly string[] }[];
  /** The texts of styles and scripts, in order. */
  readonly raw: readonly string[];
}

export function readStrictly(markup: string): Read {
  const texts: string[] = [];
  const values: string[] = [];
  const elements: { tag: string; attributes: string[] }[] = [];
  const raw: string[] = [];
  const open: string[] = [];
  let at = markup.startsWith(DOCTYPE) ? DOCTYPE.length : 0;
  while (at < markup.length) {
    const next = markup.indexOf("<", at);
    const text = markup.slice(at, next < 0 ? markup.length : next);
    if (text.includes(">")) throw new Error(`a bare > in ${JSON.stringify(text)}`);
    if (text !== "") texts.push(decoded(text));
    if (next < 0) break;
    TAG.lastIndex = next;
    const tag = TAG.exec(markup);
    if (tag === null) throw new Error(`no tag at ${JSON.stringify(markup.slice(next, next + 60))}`);
    const [whole, closing, name, attributes, empty] = tag;
    if (!ELEMENTS.has(name!)) throw new Error(`element ${name}`);
    at = next + whole.length;
    if (closing) {
      if (open.pop() !== name || attributes || empty) throw new Error(`</${name}> closes something else`);
      continue;
    }
    const pairs = [...attributes!.matchAll(ATTRIBUTE)];
    const names = pairs.map((pair) => pair[1]!);
    for (const attribute of names) if (!ATTRIBUTES.has(attribute)) throw new Error(`attribute ${attribute}`);
    if (new Set(names).size < names.length) throw new Error(`attribute twice in ${whole}`);
    values.push(...pairs.map((pair) => decoded(pair[2]!)));
    elements.push({ tag: name!, attributes: names });
    if (name === "script" || name === "style") {
      // Its text is read as it is, up to its end.
      const end = markup.indexOf("</", at);
      if (!markup.startsWith(`</${name}>`, end)) throw new Error(`a ${name} without an end`);
      raw.push(markup.slice(at, end));
      at = end;
    }
    if (!empty) open.push(name!);
  }
  if (open.length > 0) throw new Error(`never closed: ${open.join(", ")}`);
  return { texts, values, elements, raw };
}

const DOCTYPE = "<!DOCTYPE html>\n";
const TAG = /<(\/?)([a-z][a-z0-9]*)((?: [A-Za-z-]+="[^"<>]*")*)(\/?)>/y;
const ATTRIBUTE = / ([A-Za-z-]+)="([^"<>]*)"/g;

const ELEMENTS = new Set(
  (
    "html head meta title style body main header section h1 h2 h3 p ol ul li dl div dt dd figure figcaption " +
    "table thead tbody tr th td strong small span svg path text label input button script"
  ).split(" "),
);

/** No `style`, no `on…`, no `href`, no `src`. */
const ATTRIBUTES = new Set(
  (
    "lang charset name content http-equiv class scope colspan role aria-label aria-hidden data-piece data-line data-label " +
    "xmlns width height viewBox d fill stroke stroke-width stroke-linecap stroke-linejoin paint-order x y transform " +
    "font-family font-size font-weight text-anchor tabindex hidden type data-plan data-tick data-pieces data-progress " +
    "data-left data-other data-not-kept"
  ).split(" "),
);

const ENTITIES: Readonly<Record<string, string>> = {
  "&amp;": "&",
  "&lt;": "<",
  "&gt;": ">",
  "&quot;": '"',
  "&#39;": "'",
  "&#10;": "\n",
  "&#9;": "\t",
};

function decoded(text: string): string {
  return text.replace(/&[^;]{0,5};?/g, (entity) => {
    const meant = ENTITIES[entity];
    if (meant === undefined) throw new Error(`entity ${JSON.stringify(entity)}`);
    return meant;
  });
}
