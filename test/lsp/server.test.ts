/** The language server as an editor meets it: over a connection, in messages of the protocol. */
import { describe, expect, test } from "vitest";
import { HOLD_MS } from "../../server/lsp/hold";
import { type Editor, editor, uriOf, wait } from "./editor";

const PLAN = "/yard/bench.sawbuck";
const SHOP = "/yard/shop.sawbuck";
const GOOD = `plan Bench
measure rim = 30"
part leg 4 of 2x4, length rim - 1"
`;
const PULL = { textDocument: { diagnostic: {} }, workspace: { diagnostics: { refreshSupport: true } } };

const start = editor;

const codes = (list: readonly { code?: unknown }[] | undefined) => list?.map((d) => d.code);

describe("pushed problems", () => {
  test("stand in the editor with code, page, severity and cure, and clear once mended", async () => {
    const e = await start({ initializationOptions: { pageScheme: "sawbuck-page", shopFile: "" } });
    expect(e.answer.capabilities).not.toHaveProperty("diagnosticProvider");
    await e.open(PLAN, GOOD.replace("rim -", "rimm -"));
    await e.until(() => (e.pushed(PLAN)?.length ?? 0) > 0);
    expect(e.pushed(PLAN)).toMatchInlineSnapshot(`
      [
        {
          "code": "unknown-name",
          "codeDescription": {
            "href": "sawbuck-page:/unknown-name.md",
          },
          "message": "Nothing here is called “rimm”. Did you mean “rim”?
      Cure: Write “rim”",
          "range": {
            "end": {
              "character": 30,
              "line": 2,
            },
            "start": {
              "character": 26,
              "line": 2,
            },
          },
          "severity": 1,
          "source": "sawbuck",
        },
      ]
    `);
    const at = e.textOf(PLAN).indexOf("rimm");
    await e.edit(PLAN, at, at + 4, "rim");
    await e.until(() => e.pushed(PLAN)?.length === 0);
  });

  test("a new problem on the line being typed is held, one that vanishes is not", async () => {
    const e = await start();
    await e.open(PLAN, `${GOOD.replace("rim -", "rimm -")}part foot 4 of 2x4, length rim\n`);
    await e.until(() => e.pushed(PLAN)?.length === 1);
    const from = performance.now();
    const at = e.textOf(PLAN).indexOf("rimm");
    await e.edit(PLAN, at, at + 4, "zz");
    await e.until(() => e.pushes.length === 3);
    expect(performance.now() - from).toBeGreaterThanOrEqual(HOLD_MS - 20);
    expect(e.pushes.map((p) => [p.version, p.diagnostics.map((d) => d.message)])).toEqual([
      [1, [expect.stringContaining("rimm")]],
      [2, []],
      [2, [expect.stringContaining("zz")]],
    ]);
  });

  test("a problem elsewhere than on the line being typed comes at once", async () => {
    const e = await start();
    await e.open(PLAN, GOOD);
    await e.until(() => e.pushed(PLAN)?.length === 0);
    const at = e.textOf(PLAN).indexOf("rim =");
    await e.edit(PLAN, at, at + 3, "rum");
    await e.until(() => e.pushes.length > 1);
    expect(e.pushes[1]?.version).toBe(2);
    expect(codes(e.pushes[1]?.diagnostics)).toContain("unknown-name");
  });

  test("problems of an old version are never shown after those of a newer one", async () => {
    const e = await start();
    await e.open(PLAN, GOOD);
    for (let i = 0; i < 20; i++)
      await e.edit(PLAN, e.textOf(PLAN).length, e.textOf(PLAN).length, `note ${i}\n`);
    await e.until(() => e.pushes[e.pushes.length - 1]?.version === 21);
    const versions = e.pushes.map((p) => p.version ?? 0);
    expect(versions).toEqual([...versions].sort((a, b) => a - b));
  });

  test("a closed plan shows none", async () => {
    const e = await start();
    await e.open(PLAN, "prat x\n");
    await e.until(() => e.pushed(PLAN)?.length === 1);
    await e.close(PLAN);
    await e.until(() => e.pushed(PLAN)?.length === 0);
  });
});

describe("pulled problems", () => {
  test("are given when asked for and never pushed", async () => {
    const e = await start({ capabilities: PULL });
    expect(e.answer.capabilities).toHaveProperty("diagnosticProvider.interFileDependencies", true);
    await e.open(PLAN, GOOD.replace("rim -", "rimm -"));
    expect(codes(await e.pull(PLAN))).toContain("unknown-name");
    const at = e.textOf(PLAN).indexOf("rimm");
    await e.edit(PLAN, at, at + 4, "rim");
    expect(await e.pull(PLAN)).toEqual([]);
    await wait(HOLD_MS + 50);
    expect(e.pushes).toEqual([]);
  });

  test("a new one on the line being typed comes when the editor is told to ask again", async () => {
    const e = await start({ capabilities: PULL });
    await e.open(PLAN, GOOD);
    expect(await e.pull(PLAN)).toEqual([]);
    const at = e.textOf(PLAN).indexOf("rim -");
    await e.edit(PLAN, at, at + 3, "rimm");
    expect(codes(await e.pull(PLAN))).not.toContain("unknown-name");
    await e.until(() => e.refreshes() > 0);
    expect(codes(await e.pull(PLAN))).toContain("unknown-name");
  });

  test("an editor that cannot be told to ask again gets all at once", async () => {
    const e = await start({ capabilities: { textDocument: { diagnostic: {} } } });
    await e.open(PLAN, GOOD);
    const at = GOOD.indexOf("rim -");
    await e.edit(PLAN, at, at + 3, "rimm");
    expect(codes(await e.pull(PLAN))).toContain("unknown-name");
  });
});

describe("files that a plan names", () => {
  const WITH_SHOP = `plan Bench\nshop shop.sawbuck\npart leg 4 of post, length 30"\n`;
  const STOCK = `stock post of 2x4, sold 8' $4\n`;

  test("a shop file mended on disk clears the plan's problems", async () => {
    const disk = new Map([[SHOP, "# empty\n"]]);
    const e = await start({ disk });
    await e.open(PLAN, WITH_SHOP);
    await e.until(() => (e.pushed(PLAN)?.length ?? 0) > 0);
    disk.set(SHOP, STOCK);
    await e.connection.sendNotification("workspace/didChangeWatchedFiles", {
      changes: [{ uri: uriOf(SHOP), type: 2 }],
    });
    await e.until(() => e.pushed(PLAN)?.length === 0);
  });

  test("a shop file that appears clears them too", async () => {
    const disk = new Map<string, string>();
    const e = await start({ disk });
    await e.open(PLAN, WITH_SHOP);
    await e.until(() => codes(e.pushed(PLAN))?.includes("file-not-found") ?? false);
    disk.set(SHOP, STOCK);
    await e.connection.sendNotification("workspace/didChangeWatchedFiles", {
      changes: [{ uri: uriOf(SHOP), type: 1 }],
    });
    await e.until(() => e.pushed(PLAN)?.length === 0);
  });

  test("an open text is read before the one on disk, and typing in it works the plan out anew", async () => {
    const e = await start({ disk: new Map([[SHOP, STOCK]]) });
    await e.open(PLAN, WITH_SHOP);
    await e.until(() => e.pushed(PLAN)?.length === 0);
    await e.open(SHOP, "# empty\n");
    await e.until(() => (e.pushed(PLAN)?.length ?? 0) > 0);
    await e.edit(SHOP, 0, 8, STOCK);
    await e.until(() => e.pushed(PLAN)?.length === 0);
    await e.edit(SHOP, 0, e.textOf(SHOP).length, "");
    await e.until(() => (e.pushed(PLAN)?.length ?? 0) > 0);
    await e.close(SHOP);
    await e.until(() => e.pushed(PLAN)?.length === 0);
  });

  test("a plan whose shop changes asks a pulling editor to ask again", async () => {
    const e = await start({ disk: new Map([[SHOP, STOCK]]), capabilities: PULL });
    await e.open(PLAN, WITH_SHOP);
    expect(await e.pull(PLAN)).toEqual([]);
    await e.open(SHOP, "# empty\n");
    await e.until(() => e.refreshes() > 0);
    expect((await e.pull(PLAN)).length).toBeGreaterThan(0);
  });

  test("a problem inside a shop file is told at the line that names it, with its place", async () => {
    const e = await start({
      disk: new Map([[SHOP, `${STOCK}stock wide of 2x4, sold 8' $4, lenght 3\n`]]),
      capabilities: { textDocument: { publishDiagnostics: { relatedInformation: true } } },
    });
    await e.open(PLAN, WITH_SHOP);
    await e.until(() => (e.pushed(PLAN)?.length ?? 0) > 0);
    const [told] = e.pushed(PLAN)!;
    expect(told?.message).toMatch(/^In shop\.sawbuck, line 2: /);
    expect(told?.range.start).toEqual({ line: 1, character: 5 });
    expect(told?.relatedInformation?.[0]?.location.uri).toBe(uriOf(SHOP));
    expect(told?.relatedInformation?.[0]?.location.range.start.line).toBe(1);
  });

  test("a text in no folder says so of the files it names", async () => {
    const e = await start();
    const uri = "untitled:Untitled-1";
    await e.connection.sendNotification("textDocument/didOpen", {
      textDocument: { uri, languageId: "sawbuck", version: 1, text: WITH_SHOP },
    });
    await e.until(() => e.pushes.some((p) => p.uri === uri));
    expect(JSON.stringify(e.pushes[0]?.diagnostics)).toContain("save it first");
  });
});

describe("questions", () => {
  const ask = (e: Editor, method: string, offset: number) =>
    e.connection.sendRequest<unknown>(method, {
      textDocument: { uri: uriOf(PLAN) },
      position: e.positionOf(PLAN, offset),
    });

  test("hover tells the length in both systems and how it follows", async () => {
    const e = await start();
    await e.open(PLAN, GOOD);
    const hover = (await ask(e, "textDocument/hover", GOOD.indexOf("leg") + 1)) as {
      contents: { kind: string; value: string };
      range: object;
    };
    expect(hover.contents.kind).toBe("markdown");
    // 29" is 736.6 mm.
    expect(hover.contents.value).toContain('29" (737 mm)');
    expect(hover.contents.value.replace(/\\/g, "")).toContain('rim - 1" = 30" - 1" = 29"');
    expect(hover.range).toEqual({ start: { line: 2, character: 5 }, end: { line: 2, character: 8 } });
  });

  test("definition leads to the declaration, completion offers entries, symbols outline", async () => {
    const e = await start();
    await e.open(PLAN, GOOD);
    expect(await ask(e, "textDocument/definition", GOOD.indexOf("rim -"))).toEqual({
      uri: uriOf(PLAN),
      range: { start: { line: 1, character: 8 }, end: { line: 1, character: 11 } },
    });
    const { items } = (await ask(e, "textDocument/completion", GOOD.length)) as {
      items: { label: string }[];
    };
    expect(items.map((i) => i.label)).toEqual(expect.arrayContaining(["part", "measure", "fasten"]));
    const symbols = await e.connection.sendRequest<object[]>("textDocument/documentSymbol", {
      textDocument: { uri: uriOf(PLAN) },
    });
    expect(symbols).toMatchObject([
      {
        name: "Bench",
        children: [
          { name: "rim", detail: '30"' },
          { name: "leg", detail: '4 of 2x4, 29"' },
        ],
      },
    ]);
  });

  test("the answer is of the newest text, not of the one last shown", async () => {
    const e = await start();
    await e.open(PLAN, GOOD);
    const at = GOOD.indexOf('30"');
    await e.edit(PLAN, at, at + 2, "41");
    const hover = (await ask(e, "textDocument/hover", GOOD.indexOf("leg") + 1)) as {
      contents: { value: string };
    };
    expect(hover.contents.value).toContain('40" (1016 mm)');
  });

  test("a document that is not open, and a place beyond the text, are answered with nothing", async () => {
    const e = await start();
    for (const method of ["hover", "definition", "completion"]) {
      const textDocument = { uri: "file:///nowhere.sawbuck" };
      const position = { line: 3, character: 3 };
      expect(await e.connection.sendRequest(`textDocument/${method}`, { textDocument, position })).toBeNull();
    }
    await e.open(PLAN, "plan x\n");
    const position = { line: 900, character: 900 };
    const asked = { textDocument: { uri: uriOf(PLAN) }, position };
    expect(await e.connection.sendRequest("textDocument/hover", asked)).toBeNull();
  });
});

describe("the extension's own messages", () => {
  test("the sheet of a good plan, and of one with an error", async () => {
    const e = await start();
    await e.open(PLAN, GOOD);
    const sheet = () => e.connection.sendRequest<object>("sawbuck/sheet", { uri: uriOf(PLAN) });
    expect(await sheet()).toMatchObject({
      title: "Bench",
      state: "good",
      version: 1,
      parts: expect.arrayContaining([{ name: "cut-list", html: expect.stringContaining("leg") }]),
      style: expect.stringContaining(".sheet"),
    });
    const at = GOOD.indexOf("rim -");
    await e.edit(PLAN, at, at + 3, "rimm");
    const broken = await sheet();
    expect(broken).toMatchObject({ state: "has errors", version: 2, brokenAt: 3 });
    // The page is handed on: it names the plan, and not the folders of whoever printed it.
    expect(JSON.stringify(broken)).toContain("line 3");
    expect(JSON.stringify(broken)).not.toContain("/yard");
  });

  test("a shop file and a document that is not open have no sheet", async () => {
    const e = await start();
    await e.open(SHOP, `stock post of 2x4, sold 8' $4\n`);
    expect(await e.connection.sendRequest("sawbuck/sheet", { uri: uriOf(SHOP) })).toBeNull();
    expect(await e.connection.sendRequest("sawbuck/sheet", { uri: "file:///x" })).toBeNull();
    expect(await e.connection.sendRequest("sawbuck/sheet", {})).toBeNull();
  });

  test("the pages, and a word after each time a plan is worked out", async () => {
    const e = await start();
    const { pages } = await e.connection.sendRequest<{ pages: { code: string; markdown: string }[] }>(
      "sawbuck/problemPages",
      {},
    );
    expect(pages.find((p) => p.code === "unknown-name")?.markdown).toMatch(/^# /);
    await e.open(PLAN, GOOD);
    await e.until(() => e.worked.length > 0);
    expect(e.worked[0]).toMatchObject({ uri: uriOf(PLAN), version: 1 });
    await e.edit(PLAN, 0, 0, "# x\n");
    await e.until(() => e.worked.length > 1);
    expect(e.worked[1]).toMatchObject({ uri: uriOf(PLAN), version: 2 });
  });

  test("one text is worked out once, however many ask", async () => {
    const e = await start();
    await e.open(PLAN, GOOD);
    for (let i = 0; i < 5; i++) await e.connection.sendRequest("sawbuck/sheet", { uri: uriOf(PLAN) });
    await e.until(() => e.pushed(PLAN) !== undefined);
    expect(e.worked).toHaveLength(1);
  });
});

test("a request that fails is logged and answered with nothing, and the next ones are answered", async () => {
  class Failing extends Map<string, string> {
    override get(): never {
      throw new Error("the disk is on fire");
    }
  }
  const e = await start({ disk: new Failing(), capabilities: PULL });
  await e.open(PLAN, `shop shop.sawbuck\n${GOOD}`);
  expect(await e.pull(PLAN)).toEqual([]);
  const position = e.positionOf(PLAN, e.textOf(PLAN).indexOf("rim"));
  expect(
    await e.connection.sendRequest("textDocument/hover", { textDocument: { uri: uriOf(PLAN) }, position }),
  ).toBeNull();
  expect(e.logged.join("\n")).toContain("the disk is on fire");
  await e.replace(PLAN, GOOD.replace("rim -", "rimm -"));
  expect(codes(await e.pull(PLAN))).toEqual(["unknown-name"]);
});
