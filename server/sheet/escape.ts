/** The one place that makes text safe to show: cleaned of what no page or terminal should be sent, escaped for HTML and XML. */

/**
 * Text with line ends made one kind, and without control characters, direction overrides, stray surrogates and
 * noncharacters: what is left means the same to an HTML parser, an XML parser and a terminal.
 */
export function cleanText(text: string): string {
  if (PLAIN.test(text)) return text;
  return text
    .replace(LINE_ENDS, "\n")
    .replace(CONTROLS, (c) => (c === "\n" || c === "\t" ? c : ""))
    .replace(DIRECTION_OVERRIDES, "")
    .replace(NOT_CHARACTERS, "\u{fffd}");
}

/** The same on one line, with single blanks: for a label, a table cell, a terminal. Blanks that join words stay. */
export function oneLine(text: string): string {
  return cleanText(text)
    .replace(/[^\S\u00a0\u202f]+/gu, " ")
    .trim();
}

/** Text between tags. */
export function escapeText(text: string): string {
  return cleanText(text).replace(/[&<>]/g, (c) => ENTITIES[c] ?? "");
}

/** Text between the double quotes of an attribute. */
export function escapeAttribute(text: string): string {
  return cleanText(text).replace(/[&<>"'\n\t]/g, (c) => ENTITIES[c] ?? "");
}

/**
 * Text inside a line of Markdown: read as the words it is, never as a mark, a tag, a cell's end or an address. Where a
 * reader would make an address of bare text, an empty comment stands inside it.
 */
export function escapeMarkdown(text: string): string {
  return oneLine(text)
    .replace(/[\\`*_[\]<>|~&$]/g, (c) => ESCAPED[c] ?? `\\${c}`)
    .replace(/^(#{1,6}|[-+=:]|\d{1,9}(?=[.)]))/, (start) => (/\d/.test(start) ? start : `\\${start}`))
    .replace(/^(\d{1,9})([.)])/, "$1\\$2")
    .replace(/:\/\/|www\.|@|mailto:|xmpp:/gi, (address) => `${address[0]}<!-- -->${address.slice(1)}`);
}

const ESCAPED: Readonly<Record<string, string>> = { "<": "&lt;", ">": "&gt;", "&": "&amp;" };

/** Most texts: nothing to clean. */
const PLAIN = /^[ -~]*$/;
const LINE_ENDS = /\r\n?|[\u0085\u2028\u2029]/g;
const CONTROLS = /\p{Cc}/gu;
const DIRECTION_OVERRIDES = /[\u202a-\u202e\u2066-\u2069]/g;
const NOT_CHARACTERS = /[\p{Cs}\p{Noncharacter_Code_Point}]/gu;

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
  "\n": "&#10;",
  "\t": "&#9;",
};
