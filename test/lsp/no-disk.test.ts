/** Folders that are on no disk: what is asked over all plans there are reaches those that the editor lists. */
import { describe, expect, test } from "vitest";
import { CancellationTokenSource, type Location, type WorkspaceEdit } from "vscode-languageserver/node";
import { TextDocument } from "vscode-languageserver-textdocument";
import { type Editor, editor, type Setup, uriOf, wait } from "./editor";

const BENCH = "memfs:/yard/bench.sawbuck";
const START: Readonly<Record<string, string>> = {
  [BENCH]: "plan Bench\nbring parts/yard.sawbuck\nshop shop.sawbuck\npart leg 4 of 2x4, length rim\n",
  "memfs:/yard/table (old).sawbuck": "bring ./parts/yard.sawbuck\npart top of 1x6, length rim\n",
  "memfs:/yard/parts/yard.sawbuck": 'measure rim = 30"\n',
  "memfs:/yard/shelf.sawbuck": 'measure rim = 9"\n',
  "memfs:/yard/shop.sawbuck": "bring parts/yard.sawbuck\nstock 2x4, sold 8' $4\nmeasure high = rim\n",
};
const TABLE = "memfs:/yard/table (old).sawbuck";
const YARD = "memfs:/yard/parts/yard.sawbuck";
const CAPABILITIES = {
  workspace: { workspaceEdit: { documentChanges: true }, fileOperations: { willRename: true } },
};

/** A yard in memory, what an editor answers of it after some time, and what it was asked. */
function yardOf(files: Readonly<Record<string, string>> = START, delay = 5) {
  const yard = new Map(Object.entries(files));
  const read: string[] = [];
  const listed: string[] = [];
  const setup: Setup = {
    folder: "memfs:/yard",
    capabilities: CAPABILITIES,
    read: async (uri) => {
      const text = yard.get(decodeURIComponent(uri));
      read.push(decodeURIComponent(uri));
      await wait(delay);
      return text === undefined ? { refused: "there is no such file" } : { text };
    },
    list: async (uri) => {
      listed.push(uri);
      return { uris: [...yard.keys()].filter((file) => file.startsWith("memfs:/yard/")).map(uriOf) };
    },
  };
  return { yard, read, listed, setup };
}

async function opened(setup: Setup, file = BENCH): Promise<Editor> {
  const e = await editor(setup);
  await e.open(file, START[file]!);
  return e;
}
const at = (e: Editor, file: string, word: string) => ({
  textDocument: { uri: uriOf(file) },
  position: e.positionOf(file, e.textOf(file).indexOf(word)),
});
const placesOf = async (e: Editor, file = BENCH): Promise<string[]> => {
  const asked = { ...at(e, file, "rim"), context: { includeDeclaration: true } };
  const found = await e.connection.sendRequest<Location[]>("textDocument/references", asked);
  return found.map(({ uri, range }) => `${decodeURIComponent(uri)}:${range.start.line + 1}`).sort();
};
const renamed = (e: Editor, newName: string): Promise<WorkspaceEdit> =>
  e.connection.sendRequest("textDocument/rename", { ...at(e, BENCH, "rim"), newName });

/** The files that an edit changes, as they are then. */
const textsAfter = ({ documentChanges = [] }: WorkspaceEdit): Record<string, string> =>
  Object.fromEntries(
    documentChanges.map((change) => {
      if (!("edits" in change)) throw new Error("not an edit of a text");
      const file = decodeURIComponent(change.textDocument.uri);
      const edits = change.edits.filter((edit) => "newText" in edit);
      return [file, TextDocument.applyEdits(TextDocument.create(file, "sawbuck", 0, START[file]!), edits)];
    }),
  );

/** What is found from the bench with all plans of the folder, and with the open ones and what they name. */
const EVERYWHERE = [`${BENCH}:4`, "memfs:/yard/shop.sawbuck:3", `${YARD}:1`, `${TABLE}:2`].sort();
const FROM_OPEN = EVERYWHERE.filter((place) => !place.startsWith(TABLE));

describe("an editor that lists plans", () => {
  test("finds a name in plans that are closed, and in what they name outside of the folder", async () => {
    const { setup, listed, read } = yardOf();
    const e = await opened(setup);
    expect(await placesOf(e)).toEqual(EVERYWHERE);
    expect(listed).toEqual(["memfs:/yard"]);
    expect(new Set(read)).toEqual(new Set(Object.keys(START)));
  });

  test("gives it another name there, and refuses where only a closed plan would suffer", async () => {
    const { yard, setup } = yardOf();
    const e = await opened(setup);
    expect(textsAfter(await renamed(e, "height"))).toEqual(
      Object.fromEntries(
        [BENCH, YARD, TABLE, "memfs:/yard/shop.sawbuck"].map((f) => [f, START[f]!.replace("rim", "height")]),
      ),
    );
    yard.set(TABLE, `${START[TABLE]}measure low = 2"\n`);
    await expect(renamed(e, "low")).rejects.toThrow(
      "“low” is a measure already, in table (old).sawbuck, line 3.",
    );
  });

  test("finds the names of all plans", async () => {
    const e = await opened(yardOf().setup, "memfs:/yard/shelf.sawbuck");
    const found = await e.connection.sendRequest<{ name: string; location: Location }[]>("workspace/symbol", {
      query: "leg",
    });
    expect(found.map(({ name, location }) => [name, location.uri])).toEqual([["leg", BENCH]]);
  });

  test("has the lines of closed plans follow a file and a folder that move", async () => {
    const e = await opened(yardOf().setup, "memfs:/yard/shelf.sawbuck");
    const moved = async (from: string, to: string) => {
      const files = [{ oldUri: uriOf(from), newUri: uriOf(to) }];
      const edit = await e.connection.sendRequest<WorkspaceEdit | null>("workspace/willRenameFiles", {
        files,
      });
      const texts = Object.entries(textsAfter(edit ?? {}));
      return Object.fromEntries(texts.map(([file, text]) => [file, /^bring .*/m.exec(text)?.[0]]));
    };
    expect(await moved(YARD, "memfs:/yard/all.sawbuck")).toEqual({
      [BENCH]: "bring all.sawbuck",
      "memfs:/yard/shop.sawbuck": "bring all.sawbuck",
      [TABLE]: "bring ./all.sawbuck",
    });
    expect(await moved("memfs:/yard/parts", "memfs:/yard/shared parts")).toEqual({
      [BENCH]: "bring shared parts/yard.sawbuck",
      "memfs:/yard/shop.sawbuck": "bring shared parts/yard.sawbuck",
      [TABLE]: "bring ./shared parts/yard.sawbuck",
    });
  });

  test("has its files offered behind shop and bring, none of which is read for it", async () => {
    const { setup, read, listed } = yardOf();
    const e = await opened({ ...setup, initializationOptions: { listsPlans: true } });
    await e.replace(BENCH, "bring ");
    const list = await e.connection.sendRequest<{ items: { label: string }[] }>("textDocument/completion", {
      textDocument: { uri: BENCH },
      position: { line: 0, character: 6 },
    });
    expect(list.items.map(({ label }) => label)).toEqual([
      "shelf.sawbuck",
      "table (old).sawbuck",
      "parts/yard.sawbuck",
      "shop.sawbuck",
    ]);
    expect([listed, read]).toEqual([["memfs:/yard"], []]);
  });

  test("that takes long to list them has those offered that it found by then", async () => {
    const { setup } = yardOf();
    const e = await opened({
      ...setup,
      list: (_uri, token) =>
        new Promise((found) => token.onCancellationRequested(() => found({ uris: [uriOf(TABLE)] }))),
    });
    await e.replace(BENCH, "bring ");
    const from = performance.now();
    const list = await e.connection.sendRequest<{ items: { label: string }[] }>("textDocument/completion", {
      textDocument: { uri: BENCH },
      position: { line: 0, character: 6 },
    });
    expect(list.items.map(({ label }) => label)).toEqual(["table (old).sawbuck"]);
    expect(performance.now() - from).toBeGreaterThan(900);
  });

  test("keeps nothing of it: the next who asks sees the files as they are then", async () => {
    const { yard, read, setup } = yardOf();
    const e = await opened(setup);
    await placesOf(e);
    const before = read.length;
    yard.set(TABLE, "part top of 1x6, length 9\n");
    yard.set("memfs:/yard/new.sawbuck", "bring parts/yard.sawbuck\n\nmeasure two = 2 * rim\n");
    expect(await placesOf(e)).toEqual([...FROM_OPEN, "memfs:/yard/new.sawbuck:3"].sort());
    // What the open plan needs is watched, and not read again.
    expect(read.slice(before)).toEqual(expect.arrayContaining([TABLE, "memfs:/yard/shelf.sawbuck"]));
    expect(read.slice(before)).not.toContain(YARD);
  });

  test("waits for files that take longer than the problems of a plan would wait", async () => {
    const e = await opened(yardOf(START, 1700).setup);
    expect(await placesOf(e)).toEqual(EVERYWHERE);
  }, 20_000);

  test("is answered at once when it no longer wants to know, and asks again", async () => {
    const { setup } = yardOf();
    let hangs = true;
    const read: Setup["read"] = (uri) => (hangs ? new Promise(() => {}) : setup.read!(uri));
    const e = await opened({ ...setup, read });
    const gone = new CancellationTokenSource();
    const asked = e.connection.sendRequest(
      "textDocument/rename",
      { ...at(e, BENCH, "leg"), newName: "post" },
      gone.token,
    );
    await wait(50);
    gone.cancel();
    await expect(asked).rejects.toThrow();
    hangs = false;
    await e.close(BENCH);
    await e.open(BENCH, START[BENCH]!);
    expect(await placesOf(e)).toEqual(EVERYWHERE);
  });

  test("is believed only of plan files in that folder, and reaches the open plans where it lists none", async () => {
    const inside = [
      ...Object.keys(START).map(uriOf),
      uriOf(TABLE),
      "memfs:/yard/parts/../../else.sawbuck",
      5,
    ];
    const strange = ["other:/yard/a.sawbuck", "memfs:/yardarm/a.sawbuck", "memfs:/yard/a.txt", ...inside];
    for (const [answer, places] of [
      [{ uris: strange }, EVERYWHERE],
      [undefined, FROM_OPEN],
      [{ uris: "memfs:/yard" }, FROM_OPEN],
      [new Error("no"), FROM_OPEN],
    ] as const) {
      const { setup, read } = yardOf();
      const e = await opened({
        ...setup,
        list: async () => {
          if (answer instanceof Error) throw answer;
          return answer;
        },
      });
      expect(await placesOf(e)).toEqual(places);
      expect(read.filter((file) => !(file in START))).toEqual([]);
      expect(e.logged.filter((said) => said.includes("did not list"))).toHaveLength(
        answer instanceof Error ? 1 : 0,
      );
      e.end();
    }
  });
});

test("an editor that does not list plans is asked for none: names reach the open plans and what they name", async () => {
  const { setup, listed } = yardOf();
  const e = await opened({ ...setup, initializationOptions: { readsFiles: true } });
  await e.until(() => e.pushed(BENCH) !== undefined);
  expect(await placesOf(e)).toEqual(FROM_OPEN);
  expect(listed).toEqual([]);
});

test("a folder of a disk is listed by the server, and one that is on none beside it by the editor", async () => {
  const { setup, listed } = yardOf();
  const e = await editor({
    ...setup,
    folder: "/yard",
    disk: new Map([["/yard/a.sawbuck", 'measure deep = 9"\n']]),
  });
  const event = { added: [{ uri: "memfs:/yard", name: "yard" }], removed: [] };
  await e.connection.sendNotification("workspace/didChangeWorkspaceFolders", { event });
  const found = await e.connection.sendRequest<{ name: string }[]>("workspace/symbol", { query: "e" });
  expect(found.map(({ name }) => name).sort()).toEqual(["Bench", "deep", "leg"]);
  expect(listed).toEqual(["memfs:/yard"]);
});
