/** The Vim files are those that the language's own tokens and forms give. What they colour is held by test/editors/vim.mjs. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { NAMES_TOO, vimFiles, vimPattern } from "../.ci/vim-syntax.mjs";
import { ENTRY_FORMS } from "../grammar/forms";
import { KEYWORDS, VOCABULARY } from "../grammar/tokens";

const ROOT = join(__dirname, "..");

test("they are as the language is: if not, run npm run vim", async () => {
  for (const [path, text] of Object.entries(await vimFiles()))
    expect(readFileSync(join(ROOT, path), "utf8"), path).toBe(text);
});

test("every token has a Vim pattern, and one without is told", () => {
  const lexed = VOCABULARY.filter(
    ({ name, PATTERN }) => PATTERN && !/^word |^Literal$|^Blank$|^Stray$/.test(name),
  );
  expect(lexed.length).toBeGreaterThan(20);
  for (const token of lexed) expect(vimPattern(token), token.name).not.toBe("");
  expect(() => vimPattern({ name: "Scribble", PATTERN: () => null })).toThrow(/Scribble has no Vim pattern/);
});

test("a pattern that would be turned wrongly is refused", () => {
  expect(vimPattern({ name: "A", PATTERN: /a(?:b|c)?(?!d)<=\/\d+%[$€]/ })).toBe(
    "a%(b|c)?%(d)@!\\<\\=/\\d+\\%[$€]",
  );
  expect(vimPattern({ name: "A", PATTERN: "(*" })).toBe("\\(\\*");
  for (const PATTERN of [/a(b)/, /a{2}/, /\w/, /^a/, /(?<=a)b/, /a$/, /(?<n>a)/])
    expect(() => vimPattern({ name: "A", PATTERN }), String(PATTERN)).toThrow(/in Vim\?/);
});

test("every first word and every opening is coloured, and words that may be names are words of the language", async () => {
  const syntax = (await vimFiles())["grammar/vim/syntax/sawbuck.vim"]!;
  for (const { word, clauses } of ENTRY_FORMS) {
    expect(syntax).toMatch(new RegExp(`syntax match sawbuckEntry .*[(|]${word}[)|]`));
    for (const { opens } of clauses.filter((c) => c.opens.length > 0))
      expect(syntax).toContain(`${opens.join("\\s+")}`);
  }
  for (const word of NAMES_TOO) expect(KEYWORDS).toContain(word);
});
