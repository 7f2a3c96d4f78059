/** What is asked over all plans there are: names, their other places, their renaming, and files that get other names. */
import { describe, expect, test } from "vitest";
import type { WorkspaceEdit } from "vscode-languageserver/node";
import { TextDocument } from "vscode-languageserver-textdocument";
import { type Editor, editor, type Setup, uriOf } from "./editor";

const DISK = {
  "/yard/bench.sawbuck":
    "plan Bench\nbring parts/yard.sawbuck\nshop shop.sawbuck\npart leg 4 of 2x4, length rim\n",
  "/yard/table.sawbuck": 'bring ./parts/yard.sawbuck\npart top of 1x6, length rim\nmeasure low = rim - 2"\n',
  "/yard/parts/yard.sawbuck": 'measure rim = 30"\n',
  "/yard/shelf.sawbuck": 'measure rim = 9"\npart board of 1x6, length rim\n',
  "/yard/shop.sawbuck": "stock 2x4, sold 8' $4\n",
};
const CAN = {
  workspace: {
    workspaceEdit: { documentChanges: true },
    fileOperations: { willRename: true },
    workspaceFolders: true,
  },
  textDocument: { rename: { prepareSupport: true } },
};

const start = async (setup: Setup = {}): Promise<Editor> => {
  const one = await editor({
    disk: new Map(Object.entries(DISK)),
    folder: "/yard",
    capabilities: CAN,
    ...setup,
  });
  return one;
};

const opened = async (file: keyof typeof DISK, setup?: Setup): Promise<Editor> => {
  const e = await start(setup);
  await e.open(file, DISK[file]);
  return e;
};
const asked = (e: Editor, file: string, word: string) => ({
  textDocument: { uri: uriOf(file) },
  position: e.positionOf(file, e.textOf(file).indexOf(word)),
});

/** All files after an edit, those that change alone. */
function textsAfter(e: Editor, edit: WorkspaceEdit | null): Record<string, string> {
  const changes = edit?.documentChanges ?? [];
  return Object.fromEntries(
    changes.map((change) => {
      if (!("edits" in change)) throw new Error("not an edit of a text");
      const file = change.textDocument.uri.slice("file://".length);
      const text = e.textOf(file) || DISK[file as keyof typeof DISK];
      const edits = change.edits.map((one) => {
        if (!("newText" in one)) throw new Error("a snippet");
        return one;
      });
      return [file, TextDocument.applyEdits(TextDocument.create(file, "sawbuck", 0, text), edits)];
    }),
  );
}

describe("a name over all plans of the folder", () => {
  test("its other places, with and without where it is declared", async () => {
    const e = await opened("/yard/bench.sawbuck");
    const found = async (includeDeclaration: boolean) => {
      const list = await e.connection.sendRequest<{ uri: string; range: { start: { line: number } } }[]>(
        "textDocument/references",
        { ...asked(e, "/yard/bench.sawbuck", "rim"), context: { includeDeclaration } },
      );
      return list.map(({ uri, range }) => `${uri.slice(7)}:${range.start.line + 1}`).sort();
    };
    expect(await found(true)).toEqual([
      "/yard/bench.sawbuck:4",
      "/yard/parts/yard.sawbuck:1",
      "/yard/table.sawbuck:2",
      "/yard/table.sawbuck:3",
    ]);
    expect(await found(false)).not.toContain("/yard/parts/yard.sawbuck:1");
  });

  test("another name, with the versions of what is open", async () => {
    const e = await opened("/yard/bench.sawbuck");
    const at = asked(e, "/yard/bench.sawbuck", "rim");
    expect(await e.connection.sendRequest("textDocument/prepareRename", at)).toEqual({
      range: { start: { line: 3, character: 26 }, end: { line: 3, character: 29 } },
      placeholder: "rim",
    });
    const edit = await e.connection.sendRequest<WorkspaceEdit>("textDocument/rename", {
      ...at,
      newName: "height",
    });
    expect(edit.documentChanges?.map((c) => "textDocument" in c && c.textDocument.version)).toEqual([
      1,
      null,
      null,
    ]);
    expect(textsAfter(e, edit)).toEqual({
      "/yard/bench.sawbuck": DISK["/yard/bench.sawbuck"].replace("rim", "height"),
      "/yard/parts/yard.sawbuck": 'measure height = 30"\n',
      "/yard/table.sawbuck": DISK["/yard/table.sawbuck"].replaceAll("rim", "height"),
    });
  });

  test("an open text counts before what lies on disk, saved or not", async () => {
    const e = await opened("/yard/bench.sawbuck");
    await e.open("/yard/table.sawbuck", "bring parts/yard.sawbuck\npart top of 1x6, length rim + rim\n");
    const edit = await e.connection.sendRequest<WorkspaceEdit>("textDocument/rename", {
      ...asked(e, "/yard/bench.sawbuck", "rim"),
      newName: "height",
    });
    expect(textsAfter(e, edit)["/yard/table.sawbuck"]).toContain("height + height");
  });

  test("refused with the reason, also where only a closed plan would suffer", async () => {
    const e = await opened("/yard/bench.sawbuck");
    const rename = (newName: string) =>
      e.connection.sendRequest("textDocument/rename", { ...asked(e, "/yard/bench.sawbuck", "rim"), newName });
    await expect(rename("low")).rejects.toThrow("“low” is a measure already, in table.sawbuck, line 3.");
    await expect(rename("Rim")).rejects.toThrow("small letters");
    await expect(
      e.connection.sendRequest("textDocument/prepareRename", asked(e, "/yard/bench.sawbuck", "length")),
    ).rejects.toThrow("There is no name here");
    expect(await rename("rim")).toEqual({ changes: {} });
  });

  test("for an editor without versions, and without a folder", async () => {
    const e = await editor({ disk: new Map(Object.entries(DISK)), capabilities: {} });
    await e.open("/yard/bench.sawbuck", DISK["/yard/bench.sawbuck"]);
    const edit = await e.connection.sendRequest<WorkspaceEdit>("textDocument/rename", {
      ...asked(e, "/yard/bench.sawbuck", "rim"),
      newName: "height",
    });
    expect(Object.keys(edit.changes ?? {}).sort()).toEqual([
      "file:///yard/bench.sawbuck",
      "file:///yard/parts/yard.sawbuck",
    ]);
  });

  test("names of all plans, and of a folder that is opened later", async () => {
    const e = await start({ disk: new Map(Object.entries({ ...DISK, "/rack.sawbuck": "stock 2x2\n" })) });
    const names = async (query: string) =>
      (
        await e.connection.sendRequest<{ name: string; location: { uri: string } }[]>("workspace/symbol", {
          query,
        })
      ).map(({ name, location }) => `${name} ${location.uri.slice(7)}`);
    expect(await names("rim")).toEqual(["rim /yard/parts/yard.sawbuck", "rim /yard/shelf.sawbuck"]);
    expect(await names("2x")).toEqual(["2x4 /yard/shop.sawbuck"]);
    await e.connection.sendNotification("workspace/didChangeWorkspaceFolders", {
      event: { added: [{ uri: uriOf("/"), name: "all" }], removed: [{ uri: uriOf("/yard"), name: "yard" }] },
    });
    expect(await names("2x")).toEqual(["2x4 /yard/shop.sawbuck", "2x2 /rack.sawbuck"]);
  });
});

describe("files that get other names", () => {
  const moved = async (e: Editor, ...pairs: (readonly [string, string])[]) =>
    textsAfter(
      e,
      await e.connection.sendRequest<WorkspaceEdit | null>("workspace/willRenameFiles", {
        files: pairs.map(([from, to]) => ({ oldUri: uriOf(from), newUri: uriOf(to) })),
      }),
    );
  const paths = (files: Record<string, string>) =>
    Object.fromEntries(
      Object.entries(files).map(([file, text]) => [
        file,
        text.split("\n").filter((l) => /^(shop|bring)/.test(l)),
      ]),
    );

  test("a file, where it stands and elsewhere: lines that lead there follow, in their own style", async () => {
    const e = await opened("/yard/bench.sawbuck");
    expect(paths(await moved(e, ["/yard/parts/yard.sawbuck", "/yard/parts/all.sawbuck"]))).toEqual({
      "/yard/bench.sawbuck": ["bring parts/all.sawbuck", "shop shop.sawbuck"],
      "/yard/table.sawbuck": ["bring ./parts/all.sawbuck"],
    });
    expect(paths(await moved(e, ["/yard/parts/yard.sawbuck", "/yard.sawbuck"]))).toEqual({
      "/yard/bench.sawbuck": ["bring ../yard.sawbuck", "shop shop.sawbuck"],
      "/yard/table.sawbuck": ["bring ../yard.sawbuck"],
    });
  });

  test("a folder", async () => {
    const e = await opened("/yard/bench.sawbuck");
    expect(paths(await moved(e, ["/yard/parts", "/yard/shared"]))).toEqual({
      "/yard/bench.sawbuck": ["bring shared/yard.sawbuck", "shop shop.sawbuck"],
      "/yard/table.sawbuck": ["bring ./shared/yard.sawbuck"],
    });
  });

  test("a plan that moves: its own lines follow; one that only gets another name has nothing to change", async () => {
    const e = await opened("/yard/bench.sawbuck");
    expect(paths(await moved(e, ["/yard/bench.sawbuck", "/yard/seats/bench.sawbuck"]))).toEqual({
      "/yard/bench.sawbuck": ["bring ../parts/yard.sawbuck", "shop ../shop.sawbuck"],
    });
    expect(await moved(e, ["/yard/bench.sawbuck", "/yard/seat.sawbuck"])).toEqual({});
  });

  test("all of it at once, so that nothing has to change", async () => {
    const e = await opened("/yard/bench.sawbuck");
    expect(
      paths(
        await moved(
          e,
          ["/yard/bench.sawbuck", "/old/bench.sawbuck"],
          ["/yard/table.sawbuck", "/old/table.sawbuck"],
          ["/yard/parts", "/old/parts"],
          ["/yard/shop.sawbuck", "/old/shop.sawbuck"],
        ),
      ),
    ).toEqual({});
  });

  test("is offered only to an editor that asks before it renames", async () => {
    const e = await start({ capabilities: {} });
    expect(e.answer.capabilities).not.toHaveProperty("workspace.fileOperations");
  });
});

test("links, folds, growing selections and marks come in lines and columns", async () => {
  const e = await opened("/yard/bench.sawbuck");
  const textDocument = { uri: uriOf("/yard/bench.sawbuck") };
  const at = asked(e, "/yard/bench.sawbuck", "rim");
  expect(
    await e.connection.sendRequest("textDocument/documentLink", { textDocument }),
  ).toMatchInlineSnapshot(`
    [
      {
        "range": {
          "end": {
            "character": 24,
            "line": 1,
          },
          "start": {
            "character": 6,
            "line": 1,
          },
        },
        "target": "file:///yard/parts/yard.sawbuck",
      },
      {
        "range": {
          "end": {
            "character": 17,
            "line": 2,
          },
          "start": {
            "character": 5,
            "line": 2,
          },
        },
        "target": "file:///yard/shop.sawbuck",
      },
    ]
  `);
  expect(
    await e.connection.sendRequest("textDocument/foldingRange", { textDocument }),
  ).toMatchInlineSnapshot(`
    [
      {
        "endLine": 2,
        "kind": "imports",
        "startLine": 1,
      },
    ]
  `);
  expect(
    await e.connection.sendRequest("textDocument/selectionRange", { textDocument, positions: [at.position] }),
  ).toMatchInlineSnapshot(`
    [
      {
        "parent": {
          "parent": {
            "parent": {
              "range": {
                "end": {
                  "character": 0,
                  "line": 4,
                },
                "start": {
                  "character": 0,
                  "line": 0,
                },
              },
            },
            "range": {
              "end": {
                "character": 29,
                "line": 3,
              },
              "start": {
                "character": 0,
                "line": 3,
              },
            },
          },
          "range": {
            "end": {
              "character": 29,
              "line": 3,
            },
            "start": {
              "character": 19,
              "line": 3,
            },
          },
        },
        "range": {
          "end": {
            "character": 29,
            "line": 3,
          },
          "start": {
            "character": 26,
            "line": 3,
          },
        },
      },
    ]
  `);
  expect(await e.connection.sendRequest("textDocument/documentHighlight", at)).toMatchInlineSnapshot(`
    [
      {
        "kind": 2,
        "range": {
          "end": {
            "character": 29,
            "line": 3,
          },
          "start": {
            "character": 26,
            "line": 3,
          },
        },
      },
    ]
  `);
});
