/** Completion, what is said about one offer later, and the forms of an entry, over a connection. */

import { expect, test } from "vitest";
import type { CompletionItem, CompletionList, SignatureHelp } from "vscode-languageserver";
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
