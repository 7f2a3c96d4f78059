/** Completion, what is said about one offer later, and the forms of an entry, over a connection. */

import { describe, expect, test } from "vitest";
import {
  type CompletionItem,
  CompletionItemKind,
  type CompletionList,
  CompletionTriggerKind,
  type SignatureHelp,
} from "vscode-languageserver";
import { editor, uriOf } from "./editor";

const TEXT = `part leg 4 of 2x4, length 28"
place leg upright, on floor, at each corner of 30" x 12"
part `;

test("an offer comes with what the editor can show, and its words when they are asked for", async () => {
  const ed = await editor({
    locale: "fr",
    capabilities: {
      textDocument: {
        completion: {
          completionItem: {
            snippetSupport: true,
            insertReplaceSupport: true,
            labelDetailsSupport: true,
            preselectSupport: true,
            documentationFormat: ["markdown"],
            resolveSupport: { properties: ["documentation"] },
          },
        },
        signatureHelp: { signatureInformation: { parameterInformation: { labelOffsetSupport: true } } },
      },
    },
    initializationOptions: { offerAgain: "again" },
  });
  await ed.open("/plan.sawbuck", TEXT);
  const textDocument = { uri: uriOf("/plan.sawbuck") };
  const at = (offset: number) => ({ textDocument, position: ed.positionOf("/plan.sawbuck", offset) });
  const list = await ed.connection.sendRequest<CompletionList>(
    "textDocument/completion",
    at(TEXT.indexOf("floor") + 2),
  );
  expect(list.isIncomplete).toBe(false);
  expect(list.items.find((i) => i.label === "floor")?.textEdit).toMatchObject({
    newText: "floor",
    insert: { start: { line: 1, character: 22 }, end: { line: 1, character: 24 } },
    replace: { start: { line: 1, character: 22 }, end: { line: 1, character: 27 } },
  });
  const words = await ed.connection.sendRequest<CompletionList>(
    "textDocument/completion",
    at(TEXT.indexOf("length")),
  );
  const length = words.items.find((i) => i.label === "length")!;
  expect(length.documentation).toBeUndefined();
  expect(length.command).toEqual({ title: "length", command: "again" });
  const told = await ed.connection.sendRequest<CompletionItem>("completionItem/resolve", length);
  expect(told.documentation).toMatchObject({ value: expect.stringContaining("Sa longueur") });
  const number = await ed.connection.sendRequest<CompletionList>(
    "textDocument/completion",
    at(TEXT.indexOf('28"') + 2),
  );
  expect(number.isIncomplete).toBe(false);
  expect(number.items[0]).not.toHaveProperty("preselect");
  const help = await ed.connection.sendRequest<SignatureHelp>("textDocument/signatureHelp", at(TEXT.length));
  expect(help.signatures[0]?.label).toMatch(/^part nom combien of /);
  expect(help.signatures[0]?.parameters?.[help.activeParameter ?? -1]?.label).toEqual([5, 8]);
  ed.end();
});

test("an editor that shows no Markdown is given words alone", async () => {
  const ed = await editor({ capabilities: { textDocument: { hover: { contentFormat: ["plaintext"] } } } });
  await ed.open("/plan.sawbuck", TEXT);
  const at = (offset: number) => ({
    textDocument: { uri: uriOf("/plan.sawbuck") },
    position: ed.positionOf("/plan.sawbuck", offset),
  });
  const help = await ed.connection.sendRequest<SignatureHelp>("textDocument/signatureHelp", at(TEXT.length));
  expect(help.signatures[0]?.documentation).toMatchObject({ kind: "plaintext" });
  const { items } = await ed.connection.sendRequest<CompletionList>(
    "textDocument/completion",
    at(TEXT.indexOf("length")),
  );
  expect(items.find((i) => i.label === "length")?.documentation).toMatchObject({ kind: "plaintext" });
});

describe("files behind shop and bring", () => {
  const PLAN = "/yard/seats/bench.sawbuck";
  const DISK = new Map(
    [
      PLAN,
      "/yard/seats/parts.sawbuck",
      "/yard/seats/more/legs.sawbuck",
      "/yard/prices.sawbuck",
      "/yard/table.sawbuck",
      "/elsewhere/hill-shop.sawbuck",
    ].map((file) => [file, "# nothing\n"]),
  );
  const start = async (text: string, setup: Parameters<typeof editor>[0] = {}) => {
    const e = await editor({ disk: DISK, folder: "/yard", ...setup });
    await e.open(PLAN, text);
    const ask = (offset = e.textOf(PLAN).length, context?: object) =>
      e.connection.sendRequest<CompletionList | null>("textDocument/completion", {
        textDocument: { uri: uriOf(PLAN) },
        position: e.positionOf(PLAN, offset),
        ...(context && { context }),
      });
    const labels = async (offset?: number) => (await ask(offset))?.items.map(({ label }) => label);
    return { e, ask, labels };
  };

  test("those of the plan's own folder of the editor, seen from the plan, but for itself and what it names", async () => {
    const { e, labels } = await start("bring ./parts.sawbuck\nshop ");
    expect(await labels()).toEqual(["more/legs.sawbuck", "../prices.sawbuck", "../table.sawbuck"]);
    // An open plan tells what is a shop file.
    await e.open("/yard/table.sawbuck", "shop prices.sawbuck\n");
    expect(await labels()).toEqual(["../prices.sawbuck", "more/legs.sawbuck", "../table.sawbuck"]);
    await e.replace(PLAN, "shop ../prices.sawbuck\nbring ./");
    expect(await labels()).toEqual(["./parts.sawbuck", "./more/legs.sawbuck", "../table.sawbuck"]);
    await e.replace(PLAN, "bring /");
    expect(await labels()).toContain("../table.sawbuck");
  });

  test("each as a file, in place of all that stands there, whatever the editor puts it in place of", async () => {
    const text = "bring old/name.sawbuck\n";
    const { ask } = await start(text, {
      capabilities: { textDocument: { completion: { completionItem: { insertReplaceSupport: true } } } },
    });
    const [first] = (await ask(text.indexOf("name")))!.items;
    const whole = { start: { line: 0, character: 6 }, end: { line: 0, character: 22 } };
    expect(first).toMatchObject({
      label: "parts.sawbuck",
      kind: CompletionItemKind.File,
      textEdit: { newText: "parts.sawbuck", insert: whole, replace: whole },
    });
  });

  test("none for a plan in no open folder, and nothing at all behind a / that divides", async () => {
    const { ask, labels, e } = await start("bring ", { folder: "/elsewhere" });
    expect(await labels()).toEqual([]);
    const typed = { triggerKind: CompletionTriggerKind.TriggerCharacter, triggerCharacter: "/" };
    await e.replace(PLAN, "measure a = 9 /");
    expect(await ask(undefined, typed)).toBeNull();
    await e.replace(PLAN, "bring a/");
    expect(await ask(undefined, typed)).toEqual({ isIncomplete: false, items: [] });
  });
});
