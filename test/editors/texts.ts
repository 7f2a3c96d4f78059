/**
 * Texts that every editor's colours are tried on: the samples, every form of the language, and awkward lines; and what the
 * lexer says each character of a text belongs to.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { piecesOf } from "../../grammar/chunks";
import { ENTRY_FORMS, entryForm } from "../../grammar/forms";
import { type Sort, sortOf } from "../../grammar/sorts";
import { opensLine, tokenize } from "../../grammar/tokens";

/** The top of the repository, from where tests are run. */
const ROOT = process.cwd();

/** Every entry with its example, and every clause with its own on a line by itself. */
export const FORMS = ENTRY_FORMS.map(
  ({ example, clauses }) => `${example}\n${clauses.map((c) => `  ${c.example}\n`).join("")}`,
).join("\n");

const plansIn = (folder: string): [string, string][] =>
  readdirSync(join(ROOT, folder))
    .filter((file) => file.endsWith(".sawbuck"))
    .map((file) => [`${folder}/${file}`, readFileSync(join(ROOT, folder, file), "utf8")]);

/** Names and texts. */
export const TEXTS: readonly (readonly [string, string])[] = [
  ...plansIn("samples"),
  ...plansIn("samples/mistakes"),
  ["every form", FORMS],
  ...plansIn("test/editors"),
];

/**
 * A letter for each character: comment, number, words to people, the word that opens an entry, `because`, sign, any other
 * word, or a blank for what is none of them.
 */
export type Letter = "c" | "n" | "s" | "e" | "b" | "o" | "w" | " ";

/** What the lexer says of every character of a text, read in pieces as the parser does. */
export function lettersOf(text: string): string {
  const letters: Letter[] = new Array(text.length).fill(" ");
  const starts = piecesOf(text);
  for (const [i, at] of starts.entries()) {
    const own = text.slice(at, starts[i + 1] ?? text.length);
    const { tokens, comments } = tokenize(own);
    for (const { image, startOffset } of comments) fill(letters, at + startOffset, image, "c");
    for (const { image, startOffset, tokenType } of tokens) {
      const opens =
        (opensLine(own, startOffset) && entryForm(image) !== undefined) ||
        (IN_ASSEMBLIES.has(image) && /(?:^|[\r\n])[ \t]+$/.test(own.slice(0, startOffset)));
      fill(letters, at + startOffset, image, opens ? "e" : LETTERS[sortOf(tokenType)]);
    }
  }
  return letters.join("");
}

const IN_ASSEMBLIES: ReadonlySet<string> = new Set(["place", "fasten", "glue"]);

const LETTERS: Readonly<Record<Sort, Letter>> = {
  word: "w",
  keyword: "w",
  because: "b",
  number: "n",
  sign: "o",
  "words to people": "s",
  none: " ",
};

function fill(letters: Letter[], start: number, image: string, letter: Letter): void {
  letters.fill(letter, start, start + image.length);
}

/** Where two strings of letters tell different things of a text, in words; blanks of the text count for nothing. */
export function differences(text: string, wanted: string, found: string): string[] {
  const told: string[] = [];
  for (let i = 0; i < text.length; i++) {
    if (wanted[i] === found[i] || /\s/.test(text[i]!)) continue;
    const start = i;
    while (
      i + 1 < text.length &&
      wanted[i + 1] === wanted[start] &&
      found[i + 1] === found[start] &&
      !/\s/.test(text[i + 1]!)
    )
      i++;
    const line = text.slice(0, start).split(/\r\n|\r|\n/).length;
    told.push(`line ${line}: “${text.slice(start, i + 1)}” is ${wanted[start]}, coloured as ${found[start]}`);
  }
  return told;
}
