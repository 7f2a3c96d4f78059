/** The colouring grammar agrees with the lexer: whatever the lexer reads as a literal, a comment or words, an editor colours as such. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { loadWASM, OnigScanner, OnigString } from "vscode-oniguruma";
import {
  type IToken as ColouredToken,
  type IGrammar,
  INITIAL,
  parseRawGrammar,
  Registry,
} from "vscode-textmate";
import { ENTRY_FORMS } from "../grammar/forms";
import { Literal, opensLine, tokenize, Words } from "../grammar/tokens";

const ROOT = join(__dirname, "..");
const SCOPES: Readonly<Record<string, string>> = {
  ScrewSize: "screw",
  Section: "section",
  Length: "length",
  Angle: "angle",
  Measured: "measured",
  Money: "money",
  Share: "share",
  Numeral: "number",
};
let grammar: IGrammar;

beforeAll(async () => {
  const wasm = readFileSync(join(ROOT, "node_modules/vscode-oniguruma/release/onig.wasm"));
  await loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength) as ArrayBuffer);
  const file = join(ROOT, "grammar/sawbuck.tmLanguage.json");
  const registry = new Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new OnigScanner(patterns),
      createOnigString: (text) => new OnigString(text),
    }),
    loadGrammar: async () => parseRawGrammar(readFileSync(file, "utf8"), file),
  });
  grammar = (await registry.loadGrammar("source.sawbuck"))!;
});

/** The innermost scope at an offset of the whole text. */
function colours(text: string): (offset: number) => string {
  const lines: { start: number; tokens: ColouredToken[] }[] = [];
  let state = INITIAL;
  let start = 0;
  for (const line of text.split("\n")) {
    const result = grammar.tokenizeLine(line, state);
    lines.push({ start, tokens: result.tokens });
    state = result.ruleStack;
    start += line.length + 1;
  }
  return (offset) => {
    const line = lines.findLast((l) => l.start <= offset)!;
    const token = line.tokens.find(
      (t) => t.startIndex <= offset - line.start && offset - line.start < t.endIndex,
    );
    return token?.scopes[token.scopes.length - 1] ?? "";
  };
}

const samples = readdirSync(join(ROOT, "samples"))
  .filter((f) => f.endsWith(".sawbuck"))
  .map((f) => [f, readFileSync(join(ROOT, "samples", f), "utf8")] as const);
const forms = ENTRY_FORMS.map(
  (e) =>
    [`the forms of ${e.word}`, `${e.example}\n${e.clauses.map((c) => `  ${c.example}\n`).join("")}`] as const,
);

test.each([...samples, ...forms])("%s", (_, text) => {
  const at = colours(text);
  const wrong: string[] = [];
  const { tokens, comments } = tokenize(text);
  for (const comment of comments) {
    if (!at(comment.startOffset).startsWith("comment"))
      wrong.push(`${comment.image}: ${at(comment.startOffset)}`);
  }
  for (const token of tokens) {
    const scope = at(token.startOffset);
    const kind = token.tokenType;
    if (kind === Words && !scope.startsWith("string.unquoted")) wrong.push(`${token.image}: ${scope}`);
    if (kind.CATEGORIES?.includes(Literal) && scope !== `constant.numeric.${SCOPES[kind.name]}.sawbuck`) {
      wrong.push(`${token.image}: ${scope}`);
    }
    if (opensLine(text, token.startOffset) && scope !== "keyword.control.entry.sawbuck")
      wrong.push(`${token.image}: ${scope}`);
  }
  expect(tokens.length).toBeGreaterThan(0);
  expect(wrong).toEqual([]);
});

test("every clause opening is coloured as one at the start of a line and after a comma", () => {
  const wrong: string[] = [];
  for (const entry of ENTRY_FORMS) {
    for (const form of entry.clauses) {
      if (form.opens.length === 0) continue;
      for (const text of [
        `${entry.word} a\n  ${form.example}`,
        `${["plan", "step"].includes(entry.word) ? "part" : entry.word} a, ${form.example}`,
      ]) {
        const scope = colours(text)(text.indexOf(form.example));
        if (scope !== "keyword.other.clause.sawbuck") wrong.push(`${text}: ${scope}`);
      }
    }
  }
  expect(wrong).toEqual([]);
});
