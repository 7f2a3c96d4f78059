/**
 * The pictures of the walkthrough, made of what the program says of the practice plan: its lines, what is underlined, the
 * texts of problems and hovers, the drawing, the cut list. In colours of the reader's theme; attributes only, since the page
 * that shows them takes no styles.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { diagnosticsOf } from "../../server/features/diagnostics";
import { hoverAt } from "../../server/features/hover";
import { diskReader } from "../../server/lsp/disk";
import { drawingText, type Evaluated, evaluate, sheetOf } from "../../server/service";
import { wordsIn } from "../../server/sheet/words";

export type Language = "en" | "fr";
export const STEPS = ["open", "mend", "hover", "place", "sheet", "shop"] as const;

const ROOT = join(__dirname, "../..");
const read = (path: string): string => readFileSync(join(ROOT, path), "utf8").replace(/\r\n/g, "\n");

export const practiceFile = (language: Language): string =>
  `client/practice/boot-rack${language === "en" ? "" : `.${language}`}.sawbuck`;
export const practiceText = (language: Language): string => read(practiceFile(language));
/** As a reader leaves it who has done the second step, and the fourth. */
export const mended = (text: string): string => text.replace('2 #8 x 4"', '2 #8 x 2"');
export const PLACE = [
  "place lip across, on edge, on slats,",
  "  flush with left of slats, flush with back of slats",
];
export const placed = (text: string): string =>
  mended(text).replace(/(\n#.*\n)\n\n(fasten)/, `$1${PLACE.join("\n")}\n\n$2`);
export const workedOut = (text: string): Evaluated => evaluate("/boot-rack.sawbuck", text, diskReader);

/** One picture as a whole SVG file. */
export function picture(step: (typeof STEPS)[number], language: Language): string {
  const texts = JSON.parse(read(language === "en" ? "package.nls.json" : `package.nls.${language}.json`));
  const [head, ...rest] = drawn(step, language).split("\n");
  return [head, `<title>${escaped(texts[`walkthrough.${step}.alt`])}</title>`, ...rest].join("\n");
}

function drawn(step: (typeof STEPS)[number], language: Language): string {
  const text = practiceText(language);
  const before = workedOut(text);
  if (step === "open") return page(16 * LINE, lines(before, "plan ", 16, language));
  if (step === "mend") {
    const [told] = diagnosticsOf(before, language).filter((d) => d.code === "screw-pokes-through");
    const said = told!.message.split("\n").slice(0, 2);
    return page(7.5 * LINE, lines(before, "fasten slat face into rail", 2, language) + box(2.6 * LINE, said));
  }
  if (step === "hover") {
    const { markdown } = hoverAt(before, before.text.indexOf("slat of"), language)!;
    const said = markdown
      .replace(/[*`\\]|^[-#>] /gm, "")
      .split("\n")
      .filter((line) => line.trim() !== "");
    return page(9.5 * LINE, lines(before, "part slat", 1, language) + box(1.6 * LINE, said.slice(0, 5)));
  }
  if (step === "place") {
    const after = workedOut(placed(text));
    const drawing = drawingOf(after, language, 400, 230);
    return page(
      16 * LINE,
      `${lines(after, "place lip", 2, language)}${paper(3.2 * LINE, 252)}${at(90, 3.6 * LINE, drawing)}`,
    );
  }
  if (step === "sheet") return page(15 * LINE, sheetPicture(workedOut(placed(text)), language));
  return page(16 * LINE, lines(workedOut(read("samples/hillside-shop.sawbuck")), "stock 2x4", 15, language));
}

const WIDTH = 580;
const LINE = 20;
/** Width of one letter of the plan. */
const LETTER = 7.83;
const LEFT = 46;
const ON_A_LINE = 62;
const FOREGROUND = "var(--vscode-editor-foreground, #333)";
const CODE = 'font-family="var(--vscode-editor-font-family, monospace), monospace" font-size="13"';
const WORDS = 'font-family="var(--vscode-font-family, sans-serif), sans-serif" font-size="13"';

const page = (
  height: number,
  content: string,
): string => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height + 24}" width="${WIDTH}" height="${height + 24}">
<rect x="0.5" y="0.5" width="${WIDTH - 1}" height="${height + 23}" rx="4" fill="var(--vscode-editor-background, #fff)" stroke="var(--vscode-editorWidget-border, #888)"/>
${content}</svg>
`;

const at = (x: number, y: number, content: string): string =>
  `<g transform="translate(${x} ${y})">${content}</g>\n`;

/** The lines from one that begins so, with their numbers, and underlined where a problem is told. */
function lines(plan: Evaluated, first: string, count: number, language: Language): string {
  const begin = `\n${plan.text}`.indexOf(`\n${first}`);
  const number = plan.text.slice(0, begin).split("\n").length;
  let offset = begin;
  return plan.text
    .slice(begin)
    .split("\n")
    .slice(0, count)
    .map((line, i) => {
      const y = 30 + i * LINE;
      const start = offset;
      offset += line.length + 1;
      const under = diagnosticsOf(plan, language).filter(
        ({ range }) => range.start >= start && range.start < offset,
      );
      return `<text x="32" y="${y}" text-anchor="end" fill="var(--vscode-editorLineNumber-foreground, #888)" ${CODE}>${number + i}</text>
${coloured(line, y)}${under.map(({ range, class: kind }) => squiggle(range.start - start, Math.min(range.end, offset - 1) - start, y, kind)).join("")}`;
    })
    .join("");
}

/** The first word as the editor marks it, remarks dimmed; letters are set one by one, so that every font fits. */
function coloured(line: string, y: number): string {
  const place = (from: number, to: number): string =>
    Array.from({ length: to - from }, (_, i) => (LEFT + (from + i) * LETTER).toFixed(1)).join(" ");
  const run = (from: number, to: number, fill: string, more = ""): string =>
    to > from
      ? `<text x="${place(from, to)}" y="${y}" fill="${fill}"${more} ${CODE} xml:space="preserve">${escaped(line.slice(from, to))}</text>\n`
      : "";
  if (line.startsWith("#"))
    return run(0, line.length, "var(--vscode-descriptionForeground, #717171)", ' font-style="italic"');
  const word = /^\s*[a-z]+/.exec(line)?.[0].length ?? 0;
  return (
    run(0, word, "var(--vscode-textLink-foreground, #005fb8)", ' font-weight="bold"') +
    run(word, line.length, FOREGROUND)
  );
}

function squiggle(from: number, to: number, y: number, kind: string): string {
  const [x, end] = [LEFT + from * LETTER, LEFT + to * LETTER];
  const waves = Array.from(
    { length: Math.floor((end - x) / 4) },
    (_, i) => `l4 ${i % 2 === 0 ? -3 : 3}`,
  ).join("");
  const colour = kind === "warning" ? "Warning" : kind === "hint" ? "Info" : "Error";
  return `<path d="M${x.toFixed(1)} ${y + 6}${waves}" fill="none" stroke="var(--vscode-editor${colour}-foreground, #c00)" stroke-width="1.4"/>\n`;
}

/** What the editor shows over the text when the pointer rests there. */
function box(y: number, said: readonly string[]): string {
  const wrapped = said.flatMap((one) => wrap(one, ON_A_LINE));
  const text = wrapped.map(
    (line, i) =>
      `<text x="${LEFT + 14}" y="${y + 38 + i * LINE}" fill="var(--vscode-editorHoverWidget-foreground, ${FOREGROUND})" ${WORDS}>${escaped(line)}</text>\n`,
  );
  return `<rect x="${LEFT}" y="${y + 16}" width="${WIDTH - LEFT - 14}" height="${wrapped.length * LINE + 14}" rx="3" fill="var(--vscode-editorHoverWidget-background, #f8f8f8)" stroke="var(--vscode-editorHoverWidget-border, #888)"/>
${text.join("")}`;
}

const paper = (y: number, height: number): string =>
  `<rect x="${LEFT}" y="${y}" width="${WIDTH - LEFT - 14}" height="${height}" fill="#fff" stroke="#888"/>\n`;

/** The drawing of the built thing, fitted into a frame of that size. No picture within the picture: the page that shows it moves each to its own middle. */
function drawingOf(plan: Evaluated, language: Language, width: number, height: number): string {
  const drawing = drawingText(plan, "turned", "", language);
  if (typeof drawing !== "string") throw new Error(drawing.refused);
  const [, wide, high, content] = /viewBox="0 0 ([\d.]+) ([\d.]+)"[^>]*>([\s\S]*)<\/svg>/.exec(drawing)!;
  const scale = Math.min(width / Number(wide), height / Number(high));
  return `<g transform="scale(${scale.toFixed(3)})" font-family="sans-serif">${content}</g>`;
}

/** The cut list on paper, each piece with its box, and the drawing beside it. */
function sheetPicture(plan: Evaluated, language: Language): string {
  const words = wordsIn(language);
  const sheet = sheetOf(plan, undefined, language);
  const ink = (x: number, y: number, text: string, more = ""): string =>
    `<text x="${x}" y="${y}" fill="#000" ${WORDS}${more}>${escaped(text)}</text>\n`;
  let y = 66;
  const rows = sheet.cutList.flatMap((group) => {
    y += 26;
    const head = ink(LEFT + 16, y, group.title, ' font-style="italic"');
    const own = group.rows.map((row) => {
      y += 22;
      return `<rect x="${LEFT + 18}" y="${y - 11}" width="12" height="12" fill="#fff" stroke="#000"/>
${ink(LEFT + 42, y, row.mark, ' font-weight="bold"')}${ink(LEFT + 64, y, `${row.count} × ${row.part}`)}${ink(LEFT + 150, y, row.length?.text ?? "")}`;
    });
    return [head, ...own];
  });
  return `${paper(12, 15 * LINE)}${ink(LEFT + 16, 42, sheet.title, ' font-weight="bold"')}${ink(LEFT + 16, 64, words.headings.cutList, ' font-weight="bold"')}${rows.join("")}${at(LEFT + 200, 104, drawingOf(plan, language, 310, 200))}`;
}

function wrap(text: string, most: number): string[] {
  const rows: string[] = [];
  for (const word of text.trim().split(" ")) {
    const last = rows.at(-1);
    if (last !== undefined && last.length + word.length < most) rows[rows.length - 1] = `${last} ${word}`;
    else rows.push(word);
  }
  return rows;
}

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
