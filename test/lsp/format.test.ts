/** The layout of a plan, asked for over a connection. */
import { expect, test } from "vitest";
import type { TextEdit } from "vscode-languageserver/node";
import { TextDocument } from "vscode-languageserver-textdocument";
import { type Editor, editor, type Setup, uriOf } from "./editor";

const PLAN = "/yard/bench.sawbuck";
const OPTIONS = { tabSize: 8, insertSpaces: false, trimTrailingWhitespace: false };

const start = async (text: string, setup: Setup = {}): Promise<Editor> => {
  const one = await editor(setup);
  await one.open(PLAN, text);
  return one;
};

/** The text as the editor has it once the answer's edits are made. */
async function after(e: Editor, method: string, more: object): Promise<string> {
  const textDocument = { uri: uriOf(PLAN) };
  const edits = await e.connection.sendRequest<TextEdit[]>(`textDocument/${method}`, {
    textDocument,
    options: OPTIONS,
    ...more,
  });
  return TextDocument.applyEdits(TextDocument.create(PLAN, "sawbuck", 1, e.textOf(PLAN)), edits);
}
const range = (line: number, end: number) => ({
  start: { line, character: 0 },
  end: { line: end, character: 0 },
});

test("a whole plan, in the one style whatever the editor is set to", async () => {
  const e = await start('measure gap=3"\r\n\r\n\r\n\r\nstock 2x4\r\n\tkeep  \r\n');
  expect(e.answer.capabilities).toMatchObject({
    documentFormattingProvider: true,
    documentRangeFormattingProvider: true,
    documentOnTypeFormattingProvider: { firstTriggerCharacter: "\n" },
  });
  expect(await after(e, "formatting", {})).toBe('measure gap = 3"\r\n\r\nstock 2x4\r\n  keep\r\n');
});

test("a range, and several where the editor has several", async () => {
  const capabilities = { textDocument: { rangeFormatting: { rangesSupport: true } } };
  const e = await start("note  a\nnote  b\nnote  c\nnote  d\n", { capabilities });
  expect(e.answer.capabilities).toMatchObject({ documentRangeFormattingProvider: { rangesSupport: true } });
  expect(await after(e, "rangeFormatting", { range: range(1, 2) })).toBe(
    "note  a\nnote b\nnote  c\nnote  d\n",
  );
  expect(await after(e, "rangesFormatting", { ranges: [range(0, 1), range(3, 4)] })).toBe(
    "note a\nnote  b\nnote  c\nnote d\n",
  );
});

test("the line that a new one was begun under", async () => {
  const e = await start("stock 2x4\r\n  part  a of 2x4\r\n  \r\nnote  b\r\n");
  const pressed = { position: { line: 2, character: 2 }, ch: "\n" };
  expect(await after(e, "onTypeFormatting", pressed)).toBe("stock 2x4\r\npart a of 2x4\r\n\r\nnote  b\r\n");
});
