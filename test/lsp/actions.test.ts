/** Code actions over a connection: what an editor gets by what it can do, and that no edit lands in another text. */
import { afterEach, describe, expect, test } from "vitest";
import type {
  ClientCapabilities,
  CodeAction,
  CodeActionContext,
  SnippetTextEdit,
  TextDocumentEdit,
} from "vscode-languageserver/node";
import { TextDocument } from "vscode-languageserver-textdocument";
import { type Editor, editor, type Setup, uriOf } from "./editor";

const FILE = "/yard/plan.sawbuck";
const SHOP = "/yard/shop.sawbuck";

const codeAction = {
  codeActionLiteralSupport: { codeActionKind: { valueSet: [] } },
  isPreferredSupport: true,
  disabledSupport: true,
  dataSupport: true,
  resolveSupport: { properties: ["edit", "command"] },
};
const workspaceEdit = {
  documentChanges: true,
  resourceOperations: ["create" as const],
  snippetEditSupport: true,
};
const ALL: ClientCapabilities = { textDocument: { codeAction }, workspace: { workspaceEdit } };
const PLAIN: ClientCapabilities = {
  textDocument: { codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [] } } } },
};

let open: Editor | undefined;
afterEach(() => open?.end());

async function start(text: string, setup: Setup): Promise<Editor> {
  open = await editor(setup);
  await open.open(FILE, text);
  return open;
}

/** Asks where that stands in the text. */
async function ask(
  e: Editor,
  where: string,
  context: Partial<CodeActionContext> = {},
): Promise<CodeAction[]> {
  const at = e.positionOf(FILE, e.textOf(FILE).indexOf(where));
  return (
    (await e.connection.sendRequest<CodeAction[] | null>("textDocument/codeAction", {
      textDocument: { uri: uriOf(FILE) },
      range: { start: at, end: at },
      context: { diagnostics: [], ...context },
    })) ?? []
  );
}

const resolve = (e: Editor, action: CodeAction | undefined): Promise<CodeAction> =>
  e.connection.sendRequest<CodeAction>("codeAction/resolve", action);

const changesOf = (action: CodeAction): TextDocumentEdit[] =>
  (action.edit?.documentChanges ?? []).filter((c): c is TextDocumentEdit => "edits" in c);

const MISSPELT = 'part leg 4 of 2x4, lenght 28"\n';

describe("what the server offers", () => {
  test("its kinds, to an editor that knows actions", async () => {
    const e = await start("", { capabilities: ALL });
    expect(e.answer.capabilities).toMatchObject({
      codeActionProvider: {
        resolveProvider: true,
        codeActionKinds: [
          "quickfix",
          "source.fixAll.sawbuck",
          "refactor.extract.measure",
          "refactor.inline.measure",
          "refactor.rewrite.units",
          "refactor.move.shop",
        ],
      },
    });
  });

  test("nothing to one that knows only commands", async () => {
    const e = await start("", {});
    expect(e.answer.capabilities).not.toHaveProperty("codeActionProvider");
  });
});

describe("a quick fix", () => {
  test("is linked to the editor's own diagnostic, and changed only when it is taken", async () => {
    const e = await start(MISSPELT, { capabilities: ALL });
    await e.until(() => (e.pushed(FILE)?.length ?? 0) > 0);
    const diagnostics = [...e.pushed(FILE)!];
    const [action] = await ask(e, "lenght", { diagnostics, only: ["quickfix"] });
    expect(action).toMatchObject({ title: "Write “length”", kind: "quickfix", isPreferred: true });
    expect(action?.edit).toBeUndefined();
    expect(action?.diagnostics?.map((d) => d.code)).toEqual(["not-understood"]);
    const [change] = changesOf(await resolve(e, action));
    expect(change?.textDocument).toEqual({ uri: uriOf(FILE), version: 1 });
    expect(TextDocument.applyEdits(TextDocument.create("", "", 0, MISSPELT), change!.edits as never)).toBe(
      'part leg 4 of 2x4, length 28"\n',
    );
  });

  test("never lands in a text that has changed meanwhile", async () => {
    const e = await start(MISSPELT, { capabilities: ALL });
    const [action] = await ask(e, "lenght", { only: ["quickfix"] });
    await e.edit(FILE, 0, 0, "# first\n");
    const late = await resolve(e, action);
    expect(late.edit).toBeUndefined();
    expect(late.disabled?.reason).toBe("The text has changed meanwhile: ask again.");
    await e.close(FILE);
    expect((await resolve(e, action)).edit).toBeUndefined();
  });

  test("comes whole to an editor that takes nothing later, without what it does not know", async () => {
    const e = await start(MISSPELT, { capabilities: PLAIN });
    const [action] = await ask(e, "lenght", { only: ["quickfix"] });
    expect(action?.edit?.changes?.[uriOf(FILE)]).toHaveLength(1);
    expect(action).not.toHaveProperty("isPreferred");
    expect(action).not.toHaveProperty("data");
  });

  test("of a closed file has no version, of an open one its own, and none when the file is another by now", async () => {
    const disk = new Map([[SHOP, "stock post of 2x4, sold 8' $4, lenght 3\nstock 1x4, slod 8' $4\n"]]);
    const e = await start('plan x\nshop shop.sawbuck\npart leg 4 of post, length 9"\n', {
      capabilities: ALL,
      disk,
    });
    const fix = async () => (await ask(e, "shop.sawbuck", { only: ["quickfix"] }))[0];
    expect(changesOf(await resolve(e, await fix()))[0]?.textDocument).toEqual({
      uri: uriOf(SHOP),
      version: null,
    });
    const before = await fix();
    const text = disk.get(SHOP)!;
    disk.set(SHOP, `# new\n${text}`);
    expect((await resolve(e, before)).edit).toBeUndefined();
    await e.open(SHOP, text);
    expect(changesOf(await resolve(e, await fix()))[0]?.textDocument).toEqual({
      uri: uriOf(SHOP),
      version: 1,
    });
  });
});

describe("letting something stand", () => {
  const BUDGET = "plan x\n  budget $1\nstock 2x4, sold 8' $4\npart leg 4 of 2x4, length 28\"\n";
  const accept = (list: CodeAction[]) => list.find((a) => a.title.includes("accept over-budget"));

  test("puts the cursor where the reason goes, with nothing in it", async () => {
    const e = await start(BUDGET, { capabilities: ALL });
    const taken = await resolve(e, accept(await ask(e, "$1")));
    const [edit] = changesOf(taken)[0]!.edits as SnippetTextEdit[];
    expect(edit?.snippet).toEqual({ kind: "snippet", value: "accept over-budget because $0\n" });
    expect(edit?.range.start).toEqual({ line: 2, character: 0 });
  });

  test("is a plain line elsewhere, which counts for nothing until it has a reason", async () => {
    const e = await start(BUDGET, { capabilities: PLAIN });
    const edits = accept(await ask(e, "$1"))!.edit!.changes![uriOf(FILE)]!;
    const now = TextDocument.applyEdits(TextDocument.create("", "", 0, BUDGET), edits);
    expect(now).toContain("\naccept over-budget because \nstock");
    await e.replace(FILE, now);
    await e.until(() => e.pushes.at(-1)?.version === 2);
    const codes = e.pushed(FILE)!.map((d) => d.code);
    expect(codes).toContain("over-budget");
    expect(codes).toContain("not-understood");
  });
});

describe("other ways to write it", () => {
  test("why one cannot be done is told only to an editor that shows it", async () => {
    const text = 'measure rim = 30", at least 24"\npart leg 4 of 2x4, length rim\n';
    const e = await start(text, { capabilities: ALL });
    const [refused] = await ask(e, "rim", { only: ["refactor.inline"] });
    expect(refused?.disabled?.reason).toContain("would be lost");
    e.end();
    const plain = await start(text, { capabilities: PLAIN });
    expect(await ask(plain, "rim", { only: ["refactor.inline"] })).toEqual([]);
  });

  test("a new name is changed at once where the editor can", async () => {
    const text = 'part leg 4 of 2x4, length 28"\n';
    const e = await start(text, { capabilities: ALL, initializationOptions: { commands: true } });
    const taken = await resolve(e, (await ask(e, "28", { only: ["refactor.extract"] }))[0]);
    expect(taken.command).toMatchObject({
      command: "sawbuck.renameThere",
      arguments: [uriOf(FILE), { line: 1, character: 26 }],
    });
    e.end();
    const other = await start(text, { capabilities: ALL });
    const [same] = await ask(other, "28", { only: ["refactor.extract"] });
    expect((await resolve(other, same)).command).toBeUndefined();
  });

  test("a shop file is made where the editor makes files", async () => {
    const text = "plan x\nstock 2x4, sold 8' $4\npart leg 4 of 2x4, length 28\"\n";
    const e = await start(text, { capabilities: ALL });
    const taken = await resolve(e, (await ask(e, "stock", { only: ["refactor.move"] }))[0]);
    expect(taken.edit?.documentChanges?.[0]).toMatchObject({ kind: "create", uri: uriOf(SHOP) });
    const [made, plan] = changesOf(taken);
    expect(made?.edits).toMatchObject([{ newText: "stock 2x4, sold 8' $4\n" }]);
    expect(TextDocument.applyEdits(TextDocument.create("", "", 0, text), plan!.edits as never)).toBe(
      'plan x\nshop shop.sawbuck\npart leg 4 of 2x4, length 28"\n',
    );
  });

  test("in French", async () => {
    const e = await start('part leg 4 of 2x4, length 28"\n', { capabilities: ALL, locale: "fr" });
    const titles = (await ask(e, "28", { only: ["refactor"] })).map((a) => a.title);
    expect(titles).toEqual([
      'Donner un nom à cette mesure\u00a0: leg-length = 28"',
      'Écrire 711.2mm à la place de 28"',
    ]);
  });
});
