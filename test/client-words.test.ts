/**
 * Everything that the extension says is said in the editor's language: no string that a person reads goes around `l10n.t`,
 * and the French bundles are complete, without leftovers, with the same blanks to fill and in French typography.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import { FRENCH_PHRASES } from "../server/checks/french/phrases";

const ROOT = join(__dirname, "..");
const json = (path: string) => JSON.parse(readFileSync(join(ROOT, path), "utf8")) as Record<string, string>;
const BUNDLE = json("client/l10n/bundle.l10n.fr.json");
const MANIFEST = { en: json("package.nls.json"), fr: json("package.nls.fr.json") };
const sources = (readdirSync(join(ROOT, "client"), { recursive: true }) as string[])
  .filter((name) => name.endsWith(".ts"))
  .map((name) => join(ROOT, "client", name));

/** Names and formats that are the same in every language. */
const NAMES = ["Sawbuck", "Sawbuck Language Server", "Markdown", "JSON", "Enter"];

interface Said {
  readonly at: string;
  readonly text: string;
  /** An argument of `l10n.t`: the text to translate, unless it is not written out there. */
  readonly key?: boolean;
}

/** All strings of a file but addresses, types, what is logged, and faults of the program's own. */
function stringsOf(path: string, text = readFileSync(path, "utf8")): Said[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: Said[] = [];
  const at = (node: ts.Node): string =>
    `${relative(ROOT, path)}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}`;
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isTypeNode(node)) return;
    if (ts.isCallExpression(node)) {
      const called = node.expression.getText();
      if (/\bl10n\.t$/.test(called)) {
        const [key, ...filled] = node.arguments;
        const written = key !== undefined && ts.isStringLiteralLike(key);
        found.push({
          at: at(node),
          text: written ? key.text : `${key?.getText()}, which is not written out`,
          key: written,
        });
        for (const one of filled) visit(one);
        return;
      }
      if (/^(log|console)\b/.test(called)) return;
    }
    if (ts.isStringLiteralLike(node)) found.push({ at: at(node), text: node.text });
    if (ts.isTemplateExpression(node)) {
      const parts = [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)];
      found.push({ at: at(node), text: parts.join("…") });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Two words in a row, or a capital before small letters. Of markup only what stands between its tags, and what a screen reader reads. */
function readsLikeWords(text: string): boolean {
  const shown = /<\w+[^>]*>/.test(text)
    ? [...text.matchAll(/>([^<>]*)<|(?:aria-label|title|alt)="([^"]*)"/g)].map((m) => m[1] ?? m[2]).join("\n")
    : text;
  return /\p{L}{2,} \p{L}{2,}|^\p{Lu}\p{Ll}+/mu.test(shown);
}

/** What the program or a plan knows something by. */
const KEYS = ["place lip ", "pdf Letter", "no file", "no server"];
/** Codes of the editor's file systems. */
const FILE_CODES = ["FileNotFound", "FileNotADirectory", "NoPermissions", "FileIsADirectory"];

/** A reason why there is no file: the server has it in every language. */
const isPhrase = (text: string): boolean => Object.hasOwn(FRENCH_PHRASES, text);

/** Styles and selectors, which look like words and are none. */
const isStyle = ({ at, text }: Said): boolean =>
  at.startsWith("client/sheet-frame.ts") || /^client\/(preview|slip)\//.test(at) || /^[.:#[]/.test(text);

const all = sources.flatMap((path) => stringsOf(path));
const keys = new Set(all.filter(({ key }) => key === true).map(({ text }) => text));

describe("the extension", () => {
  test("is looked through", () => {
    expect(sources.length).toBeGreaterThan(20);
    expect(keys.size).toBeGreaterThan(60);
  });

  test("says nothing around the bundle", () => {
    const around = all.filter(
      (one) =>
        one.key !== true &&
        ![...NAMES, ...KEYS, ...FILE_CODES].includes(one.text) &&
        !isPhrase(one.text) &&
        !isStyle(one) &&
        readsLikeWords(one.text),
    );
    expect(around.map(({ at, text }) => `${at}: ${text}`)).toEqual([]);
  });

  test("and what goes around it would be found", () => {
    const wrong = (code: string): string[] =>
      stringsOf(join(ROOT, "client/x.ts"), code)
        .filter((one) => one.key !== true && readsLikeWords(one.text))
        .map(({ text }) => text);
    expect(wrong('say("Open a plan first")')).toEqual(["Open a plan first"]);
    expect(wrong(`say(\`the plan \${name} is gone\`)`)).toEqual(["the plan … is gone"]);
    expect(wrong(`const page = \`<b>\${x}</b><i>Save</i>\``)).toHaveLength(1);
    expect(wrong("l10n.t(words)")).toEqual(["words, which is not written out"]);
    expect(wrong('const which: "no file" = why(l10n.t("Save"), "sawbuck.sheet")')).toEqual([]);
  });

  test("has nothing to read in the script of its panel", () => {
    const read = all
      .filter(({ at }) => at.startsWith("client/preview/"))
      .filter(({ text }) => /^\p{Lu}\p{Ll}+ |\p{L}{2,}[.!?]$/u.test(text));
    expect(read).toEqual([]);
  });
});

const isKey = (text: string): boolean => /^%.+%$/.test(text) && text.slice(1, -1) in MANIFEST.en;
const blanks = (text: string): string[] => [...text.matchAll(/\{\d+\}/g)].map(([blank]) => blank).sort();

/** What French typography asks: no-break spaces within and before marks, round apostrophes, its own quotation marks. */
function wrongInFrench(text: string): string[] {
  // Links, and what is written in a plan, are not French.
  const words = text
    .replace(/\]\([^)]*\)/g, "]")
    .replace(/`[^`]*`/g, "x")
    .replace(/\d"/g, "x");
  return [
    ...(words.match(/[^\u00a0\u202f«(][:;?!»](?=\s|$|»)/g) ?? []),
    ...(words.match(/«[^\u00a0]/g) ?? []),
    ...(words.match(/['"“”]|\.\.\./g) ?? []),
    ...(words.match(/ {2}|^ | $|\u00a0 | \u00a0/g) ?? []),
  ];
}

describe("French", () => {
  test("has every string of the extension, and no other", () => {
    expect(Object.keys(BUNDLE).filter((key) => !keys.has(key))).toEqual([]);
    expect([...keys].filter((key) => !(key in BUNDLE))).toEqual([]);
  });

  test("has every string of the manifest, and no other", () => {
    expect(Object.keys(MANIFEST.fr)).toEqual(Object.keys(MANIFEST.en));
  });

  test.each([
    ["extension", Object.entries(BUNDLE)],
    ["manifest", Object.entries(MANIFEST.en).map(([key, english]) => [english, MANIFEST.fr[key]!])],
  ] as [string, [string, string][]][])("of the %s fills the same blanks, and says something", (_, pairs) => {
    for (const [english, french] of pairs) {
      expect([english, blanks(french)]).toEqual([english, blanks(english)]);
      expect(french.trim()).not.toBe("");
    }
  });

  test("can be had of every description that the manifest contributes", () => {
    const plain: string[] = [];
    const look = (value: unknown): void => {
      if (typeof value !== "object" || value === null) return;
      for (const [key, inside] of Object.entries(value)) {
        if (/description$/i.test(key) && typeof inside === "string" && !isKey(inside)) plain.push(inside);
        look(inside);
      }
    };
    look(json("package.json").contributes);
    expect(plain).toEqual([]);
  });

  test("links to the same commands", () => {
    const links = (text: string): string[] => [...text.matchAll(/\]\(([^)]+)\)/g)].map((m) => m[1]!);
    for (const [key, english] of Object.entries(MANIFEST.en))
      expect([key, links(MANIFEST.fr[key]!)]).toEqual([key, links(english)]);
  });

  test("is in French typography", () => {
    const texts = [...Object.values(BUNDLE), ...Object.values(MANIFEST.fr)];
    expect(texts.flatMap((text) => wrongInFrench(text).map((mark) => `${mark} in ${text}`))).toEqual([]);
    expect(
      ["Attention : ici", "« ici »", "l'atelier", "Quoi?"].map((t) => wrongInFrench(t).length > 0),
    ).toEqual(Array(4).fill(true));
  });
});
