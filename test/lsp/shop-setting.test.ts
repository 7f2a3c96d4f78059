/** The reader's own shop file, as the settings of an editor name it. */
import { describe, expect, test } from "vitest";
import type { CodeAction } from "vscode-languageserver/node";
import { editor, uriOf } from "./editor";

const PLAN = "/yard/bench.sawbuck";

const start = editor;

const codes = (list: readonly { code?: unknown }[] | undefined) => list?.map((d) => d.code);

describe("the reader's own shop file", () => {
  const WITH_SHOP = `plan Bench\nshop theirs.sawbuck\npart leg 4 of post, length 30"\n`;
  const STOCK = `stock post of 2x4, sold 8' $4\n`;
  const ASKED = { workspace: { configuration: true } };

  test("is taken as given at the start: from home, and from the open folder", async () => {
    for (const [shopFile, file] of [
      ["~/mine.sawbuck", "/home/mine.sawbuck"],
      ["shops/mine.sawbuck", "/yard/shops/mine.sawbuck"],
      ["/mine.sawbuck", "/mine.sawbuck"],
    ] as const) {
      const e = await start({
        disk: new Map([[file, STOCK]]),
        initializationOptions: { shopFile },
        folder: "/yard",
      });
      await e.open("/yard/plans/bench.sawbuck", WITH_SHOP);
      await e.until(() => e.pushed("/yard/plans/bench.sawbuck")?.length === 0);
    }
  });

  test("is asked of the editor, and again when settings change", async () => {
    let setting = "/mine.sawbuck";
    const e = await start({
      disk: new Map([["/mine.sawbuck", STOCK]]),
      capabilities: ASKED,
      setting: () => ({ shopFile: setting }),
    });
    await e.open(PLAN, WITH_SHOP);
    await e.until(() => e.pushed(PLAN)?.length === 0);
    setting = "";
    await e.connection.sendNotification("workspace/didChangeConfiguration", { settings: null });
    await e.until(() => codes(e.pushed(PLAN))?.includes("file-not-found") ?? false);
  });

  test("comes with the change of settings where the editor cannot be asked", async () => {
    const e = await start({ disk: new Map([["/mine.sawbuck", STOCK]]) });
    await e.open(PLAN, WITH_SHOP);
    await e.until(() => codes(e.pushed(PLAN))?.includes("file-not-found") ?? false);
    const settings = { sawbuck: { shopFile: "/mine.sawbuck" } };
    await e.connection.sendNotification("workspace/didChangeConfiguration", { settings });
    await e.until(() => e.pushed(PLAN)?.length === 0);
  });

  test("stays as given at the start where the editor tells nothing of it", async () => {
    const e = await start({
      disk: new Map([["/mine.sawbuck", STOCK]]),
      capabilities: ASKED,
      initializationOptions: { shopFile: "/mine.sawbuck" },
      setting: () => null,
    });
    await e.open(PLAN, WITH_SHOP);
    await e.until(() => e.pushed(PLAN)?.length === 0);
    await e.connection.sendNotification("workspace/didChangeConfiguration", { settings: null });
    await e.edit(PLAN, 0, 0, "# first\n");
    await e.until(() => e.pushes.some(({ version }) => version === 2));
    expect(e.pushed(PLAN)).toEqual([]);
  });

  test("asks which board is meant that it calls otherwise, mends all lines at once, and follows the plan's own", async () => {
    const plan = WITH_SHOP.replaceAll("post", "heart") + "bring rails.sawbuck\n";
    const disk = new Map([
      ["/yard/theirs.sawbuck", "stock heart of 2x4, species western-redcedar\n"],
      ["/yard/rails.sawbuck", 'part rail 2 of heart, length 20"\n'],
      ["/mine.sawbuck", "stock cedar of 2x4, species western-redcedar, sold 8' $4\n"],
    ]);
    const e = await start({
      disk,
      initializationOptions: { shopFile: "/mine.sawbuck" },
      folder: "/yard",
      capabilities: { textDocument: { codeAction: { isPreferredSupport: true } } },
    });
    await e.open(PLAN, plan);
    await e.until(() => e.pushed(PLAN)?.length === 1);
    expect(e.pushed(PLAN)?.[0]?.message).toMatch(/^Your shop has no “heart”.*Is it “cedar” here\?/);

    const actions = await e.connection.sendRequest<CodeAction[]>("textDocument/codeAction", {
      textDocument: { uri: uriOf(PLAN) },
      range: e.pushed(PLAN)![0]!.range,
      context: { diagnostics: e.pushed(PLAN), only: ["quickfix"] },
    });
    const fix = actions.find(({ title }) => title === "Write “cedar” wherever “heart” stands")!;
    expect(fix.isPreferred).toBe(true);
    const { edit } = fix.edit ? fix : await e.connection.sendRequest<CodeAction>("codeAction/resolve", fix);
    expect(Object.keys(edit?.changes ?? {}).sort()).toEqual([PLAN, "/yard/rails.sawbuck"].map(uriOf));

    disk.set("/yard/theirs.sawbuck", "stock heart of 2x4, species douglas-fir\n");
    await e.changed("/yard/theirs.sawbuck");
    await e.until(() => /nearest is “cedar” \(western-redcedar\)/.test(String(e.pushed(PLAN)?.[0]?.message)));
  });
});
