/** Colours as an editor asks for them: all, a stretch, and what has changed. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import {
  SemanticTokenModifiers,
  type SemanticTokens,
  type SemanticTokensDelta,
  SemanticTokenTypes,
} from "vscode-languageserver";
import { TOKEN_MODIFIERS, TOKEN_TYPES } from "../../server/features/tokens";
import { type Editor, editor, uriOf } from "./editor";

const PLAN = "/yard/bench.sawbuck";
const SHOP = "/yard/shop.sawbuck";

const start = editor;

const textDocument = { uri: uriOf(PLAN) };
const full = (e: Editor) =>
  e.connection.sendRequest<SemanticTokens>("textDocument/semanticTokens/full", { textDocument });
const delta = (e: Editor, previousResultId: string | undefined) =>
  e.connection.sendRequest<SemanticTokensDelta | SemanticTokens>("textDocument/semanticTokens/full/delta", {
    textDocument,
    previousResultId,
  });

/** What an editor makes of the numbers: the words with their types. */
function words(e: Editor, data: readonly number[]): string[] {
  const { tokenTypes, tokenModifiers } = (
    e.answer.capabilities as {
      semanticTokensProvider: { legend: { tokenTypes: string[]; tokenModifiers: string[] } };
    }
  ).semanticTokensProvider.legend;
  const lines = e.textOf(PLAN).split(/\r\n|\r|\n/);
  let [line, column] = [0, 0];
  const found: string[] = [];
  for (let i = 0; i < data.length; i += 5) {
    const [down, right, length, type, bits] = data.slice(i, i + 5) as [
      number,
      number,
      number,
      number,
      number,
    ];
    column = down > 0 ? right : column + right;
    line += down;
    const modifiers = tokenModifiers.filter((_, bit) => bits & (1 << bit));
    found.push(
      `${lines[line]!.slice(column, column + length)} ${[tokenTypes[type], ...modifiers].join(".")}`,
    );
  }
  return found;
}

test("lines and columns are those of the editor, whatever the line ends, and letters beyond the first 65,536", async () => {
  const e = await start();
  await e.open(
    PLAN,
    '# 🪚\r\nnote 🪵🪵 cafe\u0301\rpart leg 4 of 2x4, length ½" # 🪚\r\n\r\nplace leg upright',
  );
  const { data } = await full(e);
  expect(words(e, data)).toMatchInlineSnapshot(`
    [
      "# 🪚 comment",
      "note keyword",
      "🪵🪵 café string",
      "part keyword",
      "leg class.declaration",
      "4 number",
      "of keyword.relation",
      "2x4 enumMember.defaultLibrary.stock",
      "length keyword.clause",
      "½" number",
      "# 🪚 comment",
      "place keyword",
      "leg class",
      "upright keyword.clause",
    ]
  `);
});

test("a stretch on the screen has its own", async () => {
  const e = await start();
  await e.open(PLAN, 'measure rim = 30"\npart leg 4 of 2x4, length rim\nplace leg upright\n');
  const range = { start: { line: 1, character: 0 }, end: { line: 2, character: 0 } };
  const { data } = await e.connection.sendRequest<SemanticTokens>("textDocument/semanticTokens/range", {
    textDocument,
    range,
  });
  expect(words(e, data).map((w) => w.split(" ")[0])).toEqual([
    "part",
    "leg",
    "4",
    "of",
    "2x4",
    "length",
    "rim",
  ]);
});

test("what has changed since is told as one change, which leads to what is there now", async () => {
  const e = await start();
  await e.open(PLAN, 'measure rim = 30"\npart leg 4 of 2x4, length rim\nplace leg upright\n');
  let before = await full(e);
  for (const [find, type] of [
    ["rim = ", "rim-height = "],
    ["part", "# a comment\npart"],
    ["place leg upright\n", ""],
    ["4 of", "4 of"],
  ] as const) {
    const at = e.textOf(PLAN).indexOf(find);
    await e.edit(PLAN, at, at + find.length, type);
    const change = (await delta(e, before.resultId)) as SemanticTokensDelta;
    const data = [...before.data];
    expect(change.edits.length).toBeLessThanOrEqual(1);
    for (const edit of change.edits) data.splice(edit.start, edit.deleteCount, ...(edit.data ?? []));
    expect(data).toEqual((await full(e)).data);
    const unchanged = await delta(e, "of another time");
    expect((unchanged as SemanticTokens).data).toEqual(data);
    before = unchanged as SemanticTokens;
  }
});

test("a plan that was closed, or never opened, has none; opened again it is given whole", async () => {
  const e = await start();
  expect(await full(e)).toEqual({ data: [] });
  await e.open(PLAN, 'measure rim = 30"\n');
  const { resultId } = await full(e);
  await e.close(PLAN);
  expect(await delta(e, resultId)).toEqual({ data: [] });
  await e.open(PLAN, 'measure rim = 30"\n');
  expect(await delta(e, resultId)).toHaveProperty("data");
});

test("colours are asked for again when a file that the plan names has changed", async () => {
  const e = await start({
    disk: new Map([[SHOP, "stock plank of 1x6\n"]]),
    capabilities: { workspace: { semanticTokens: { refreshSupport: true } } },
  });
  let asked = 0;
  e.connection.onRequest("workspace/semanticTokens/refresh", () => {
    asked++;
    return null;
  });
  await e.open(PLAN, 'shop shop.sawbuck\npart leg 4 of plank, length 3"\n');
  expect(words(e, (await full(e)).data)).toContain("plank enumMember.stock");
  await e.open(SHOP, "stock board of 1x6\n");
  await e.until(() => asked > 0);
  expect(words(e, (await full(e)).data).some((w) => w.startsWith("plank"))).toBe(false);
});

test("all types are the protocol's own, and package.json says what our modifiers are and which scopes looks have", () => {
  const { contributes } = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8"));
  const [ownTypes, ownModifiers] = [Object.values(SemanticTokenTypes), Object.values(SemanticTokenModifiers)];
  expect(TOKEN_TYPES.filter((type) => !(ownTypes as string[]).includes(type))).toEqual([]);
  expect(contributes.semanticTokenModifiers.map(({ id }: { id: string }) => id)).toEqual(
    TOKEN_MODIFIERS.filter((modifier) => !(ownModifiers as string[]).includes(modifier)),
  );
  for (const look of Object.keys(contributes.semanticTokenScopes[0].scopes)) {
    const [type, ...modifiers] = look.split(".");
    expect(TOKEN_TYPES).toContain(type);
    for (const modifier of modifiers) expect(TOKEN_MODIFIERS).toContain(modifier);
  }
});
