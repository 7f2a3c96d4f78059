/** The few pieces of Markdown that hovers and completion are made of. A plan's own words are always escaped. */

/** Words of a plan as Markdown that shows just those words, blanks that hold kept as they are: no emphasis, link, image, heading or HTML comes of them. */
export function escaped(text: string): string {
  return text
    .replace(/[^\S\u00a0]+/g, " ")
    .replace(/[\\`*_[\]<>~&@]/g, "\\$&")
    .replace(/:(?=\/\/)/g, "\\:")
    .replace(/\b(www)\./gi, "$1\\.")
    .replace(/^(\s*)([#+=-])(?=[#+=\s-]|$)/, "$1\\$2")
    .replace(/^(\s*\d+)([.)])(?=\s|$)/, "$1\\$2");
}

/** Text in a code span, whatever it holds. */
export function code(text: string): string {
  const flat = text.replace(/\s+/g, " ");
  const longest = Math.max(0, ...[...flat.matchAll(/`+/g)].map((m) => m[0].length));
  const fence = "`".repeat(longest + 1);
  const pad = flat.startsWith("`") || flat.endsWith("`") ? " " : "";
  return `${fence}${pad}${flat}${pad}${fence}`;
}

/** A block of plan text. */
export const planBlock = (text: string): string => `\`\`\`sawbuck\n${text.replace(/`{3,}/g, "``")}\n\`\`\``;

export const strong = (text: string): string => `**${escaped(text)}**`;

/** Paragraphs, the empty ones left out. */
export const paragraphs = (...parts: readonly (string | undefined)[]): string =>
  parts.filter((p) => p !== undefined && p !== "").join("\n\n");

/** A list, the empty items left out; empty without any. */
export const list = (items: readonly (string | undefined)[]): string =>
  items
    .filter((i) => i !== undefined && i !== "")
    .map((i) => `- ${i}`)
    .join("\n");

/** A table of two columns, rows without a value left out; empty without any. Cells are Markdown already. */
export function table(rows: readonly (readonly [label: string, value: string | undefined])[]): string {
  const said = rows.filter(([, value]) => value !== undefined && value !== "");
  if (said.length === 0) return "";
  const cell = (text: string | undefined): string => (text ?? "").replace(/\|/g, "\\|");
  return [
    "| | |",
    "| --- | --- |",
    ...said.map(([label, value]) => `| ${cell(label)} | ${cell(value)} |`),
  ].join("\n");
}
