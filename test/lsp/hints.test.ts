/** Hints and lenses over a connection: what is offered, asked for, switched off, and asked for again. */
import { describe, expect, test } from "vitest";
import { inlineHost } from "../../server/lsp/layouts/host";
import { type Editor, editor, type Setup, uriOf, wait } from "./editor";

const PLAN = "/yard/bench.sawbuck";
const SHOP = "/yard/shop.sawbuck";
const TEXT = `plan Bench
shop shop.sawbuck
measure rim = 30"
part leg 4 of post, length rim - 1"
part foot of post, length 2"
place foot across, flat, on floor
`;
const disk = () => new Map([[SHOP, "stock post of 2x4, sold 8' $4\n"]]);
const REFRESHED = {
  workspace: {
    configuration: true,
    inlayHint: { refreshSupport: true },
    codeLens: { refreshSupport: true },
  },
};

const start = async (setup: Setup = {}): Promise<Editor & { again: { hints: number; lenses: number } }> => {
  const one = await editor({ disk: disk(), ...setup });
  const again = { hints: 0, lenses: 0 };
  one.connection.onRequest("workspace/inlayHint/refresh", () => {
    again.hints++;
    return null;
  });
  one.connection.onRequest("workspace/codeLens/refresh", () => {
    again.lenses++;
    return null;
  });
  return { ...one, again };
};

interface Hint {
  readonly position: { readonly line: number; readonly character: number };
  readonly label: string;
  readonly tooltip?: { readonly kind: string; readonly value: string };
}
interface Lens {
  readonly range: { readonly start: { readonly line: number } };
  readonly command: { readonly title: string; readonly command: string };
}

const hintsIn = (e: Editor, from = 0, to = 100): Promise<Hint[] | null> =>
  e.connection.sendRequest("textDocument/inlayHint", {
    textDocument: { uri: uriOf(PLAN) },
    range: { start: { line: from, character: 0 }, end: { line: to, character: 0 } },
  });
const labels = async (e: Editor): Promise<string[]> => ((await hintsIn(e)) ?? []).map(({ label }) => label);
const lenses = (e: Editor): Promise<Lens[] | null> =>
  e.connection.sendRequest("textDocument/codeLens", { textDocument: { uri: uriOf(PLAN) } });
const titles = async (e: Editor): Promise<string[]> =>
  ((await lenses(e)) ?? []).map(({ command }) => command.title);

describe("hints", () => {
  test("stand behind the words that they are about, in the range asked for", async () => {
    const e = await start();
    await e.open(PLAN, TEXT);
    expect(await hintsIn(e)).toMatchObject([
      { position: { line: 3, character: 35 }, label: '= 29"', kind: 1, paddingLeft: true },
      { position: { line: 4, character: 17 }, label: "just 1", kind: 2, paddingLeft: true },
    ]);
    expect((await hintsIn(e, 4, 5))?.map((h) => h.label)).toEqual(["just 1"]);
    expect(await hintsIn(e, 0, 2)).toEqual([]);
  });

  test("count in UTF-16 units, and none are given for a text that is not open", async () => {
    const e = await start();
    expect(await hintsIn(e)).toBeNull();
    await e.open(PLAN, `note 🪚\nmeasure a = 1" + 1" # 🪚\n`);
    expect(await hintsIn(e)).toMatchObject([{ position: { line: 1, character: 19 }, label: '= 2"' }]);
  });

  test("tell more when asked, unless the text has changed", async () => {
    const resolveSupport = { properties: ["tooltip"] };
    const e = await start({ capabilities: { textDocument: { inlayHint: { resolveSupport } } } });
    expect(e.answer.capabilities).toHaveProperty("inlayHintProvider", { resolveProvider: true });
    await e.open(PLAN, TEXT);
    const [length] = (await hintsIn(e))!;
    const more = await e.connection.sendRequest<Hint>("inlayHint/resolve", length);
    expect(more.tooltip?.kind).toBe("markdown");
    expect(more.tooltip?.value.replaceAll("\\", "")).toContain('rim - 1" = 30" - 1" = 29"');
    await e.edit(PLAN, 0, 0, "# first\n");
    expect(await e.connection.sendRequest("inlayHint/resolve", length)).toEqual(length);
    expect(await e.connection.sendRequest("inlayHint/resolve", { label: "x" })).toEqual({ label: "x" });
  });

  test("come without more where an editor cannot ask for it", async () => {
    const e = await start();
    expect(e.answer.capabilities).toHaveProperty("inlayHintProvider", { resolveProvider: false });
  });

  test("are switched off by the settings of the editor, which asks again", async () => {
    let setting: unknown = { shopFile: "", hints: { lengths: true, counts: true }, lens: true };
    const e = await start({ capabilities: REFRESHED, setting: () => setting });
    await e.open(PLAN, TEXT);
    expect(await labels(e)).toEqual(['= 29"', "just 1"]);
    setting = { hints: { lengths: false } };
    await e.connection.sendNotification("workspace/didChangeConfiguration", { settings: null });
    await e.until(() => e.again.hints === 1);
    expect(await labels(e)).toEqual(["just 1"]);
    setting = { "hints.counts": false };
    await e.connection.sendNotification("workspace/didChangeConfiguration", { settings: null });
    await e.until(() => e.again.hints === 2);
    expect(await labels(e)).toEqual(['= 29"']);
    await wait(150);
    expect(e.again).toEqual({ hints: 2, lenses: 0 });
  });

  test("are switched off from the start, and by a change of settings that is sent", async () => {
    const e = await start({ initializationOptions: { hints: { counts: false } } });
    await e.open(PLAN, TEXT);
    expect(await labels(e)).toEqual(['= 29"']);
    const change = { settings: { sawbuck: { hints: { lengths: false, counts: true } } } };
    await e.connection.sendNotification("workspace/didChangeConfiguration", change);
    expect(await labels(e)).toEqual(["just 1"]);
    await e.connection.sendNotification("workspace/didChangeConfiguration", { settings: {} });
    expect(await labels(e)).toEqual(["just 1"]);
  });

  test("are in the language that the editor speaks", async () => {
    const e = await start({ locale: "fr" });
    await e.open(PLAN, TEXT);
    expect(await labels(e)).toEqual(['= 29"', "une seule"]);
  });
});

describe("lenses", () => {
  test("stand above the plan, as words alone in an editor without the commands", async () => {
    const e = await start();
    await e.open(PLAN, `# first\n${TEXT}`);
    const found = (await lenses(e))!;
    expect(found[0]).toEqual({
      range: { start: { line: 1, character: 0 }, end: { line: 1, character: 4 } },
      command: { title: "2 boards", command: "" },
    });
    expect(found.every(({ command }) => command.command === "")).toBe(true);
  });

  test("open the sheet, the list of problems and that of what was not checked, where those can be opened", async () => {
    const e = await start({ initializationOptions: { commands: true } });
    await e.open(PLAN, `${TEXT}prat x\n`);
    const commands = Object.fromEntries(
      (await lenses(e))!.map(({ command: { title, command } }) => [title, command]),
    );
    expect(commands).toMatchObject({
      "2 boards": "sawbuck.openSheet",
      "$8.00": "sawbuck.openSheet",
      "1 problem": "workbench.panel.markers.view.focus",
    });
    const notChecked = Object.keys(commands).filter((title) => title.endsWith(" not checked"));
    expect(notChecked.map((title) => commands[title])).toEqual(["sawbuck.showNotChecked"]);
  });

  test("are switched off by a setting", async () => {
    let setting: unknown = null;
    const e = await start({ capabilities: REFRESHED, setting: () => setting });
    await e.open(PLAN, TEXT);
    expect((await titles(e)).length).toBeGreaterThan(1);
    setting = { lens: false };
    await e.connection.sendNotification("workspace/didChangeConfiguration", { settings: null });
    await e.until(() => e.again.lenses === 1);
    expect(await titles(e)).toEqual([]);
    expect(e.again.hints).toBe(0);
  });
});

describe("an editor is told to ask again", () => {
  test("when another file changes what a plan comes to, and not for its own typing", async () => {
    const files = disk();
    const e = await start({ disk: files, capabilities: REFRESHED });
    await e.open(PLAN, TEXT);
    expect(await titles(e)).toContain("$8.00");
    await e.edit(PLAN, 0, 0, "# first\n");
    await wait(150);
    expect(e.again).toEqual({ hints: 0, lenses: 0 });
    files.set(SHOP, "stock post of 2x4, sold 8' $5\n");
    const changes = [{ uri: uriOf(SHOP), type: 2 }];
    await e.connection.sendNotification("workspace/didChangeWatchedFiles", { changes });
    await e.until(() => e.again.hints === 1 && e.again.lenses === 1);
    expect(await titles(e)).toContain("$10.00");
    await e.open(SHOP, "stock post of 2x4, sold 8' $6\n");
    await e.until(() => e.again.lenses === 2);
    expect(await titles(e)).toContain("$12.00");
  });

  test("for lenses, when better layouts have come", async () => {
    const e = await start({ capabilities: REFRESHED, layoutHost: inlineHost() });
    await e.open(PLAN, TEXT);
    await e.until(() => e.again.lenses > 0);
    // 29" four times, and a foot: one board of 8' gives three of the legs at most.
    expect(await titles(e)).toContain("2 boards");
    expect(e.again.hints).toBe(0);
  });

  test("only where it can be told", async () => {
    const e = await start();
    await e.open(PLAN, TEXT);
    await e.open(SHOP, "stock post of 2x4, sold 8' $6\n");
    await wait(150);
    expect(e.again).toEqual({ hints: 0, lenses: 0 });
    expect(await titles(e)).toContain("$12.00");
  });
});

describe("files on disk", () => {
  const WATCHES = { workspace: { didChangeWatchedFiles: { dynamicRegistration: true } } };

  test("are watched by an editor that can be asked to", async () => {
    const e = await start({ capabilities: WATCHES });
    await e.until(() => e.registered.length > 0);
    expect(e.registered).toEqual([
      {
        method: "workspace/didChangeWatchedFiles",
        registerOptions: { watchers: [{ globPattern: "**/*.sawbuck" }] },
      },
    ]);
  });

  test("are left alone by one that cannot", async () => {
    const e = await start();
    await e.open(PLAN, TEXT);
    await hintsIn(e);
    expect(e.registered).toEqual([]);
  });

  test("an editor that refuses is let be", async () => {
    const e = await start({ capabilities: WATCHES, refuses: true });
    await e.until(() => e.logged.some((line) => line.includes("will not tell of changes of the files")));
    await e.open(PLAN, TEXT);
    expect(await labels(e)).toEqual(['= 29"', "just 1"]);
  });
});
