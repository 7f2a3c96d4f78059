/** Property 1 for all that an editor can ask: any text, any place, while it is typed; nothing fails, every range lies inside. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { ClientCapabilities, Position, Range, ServerCapabilities } from "vscode-languageserver/node";
import { anyText, brokenSample, madePlan, SAMPLES, SOME } from "../property/plans";
import { type Editor, editor, uriOf } from "./editor";

const FILE = "/yard/plan.sawbuck";
/** An editor that can do all that is asked for here. */
const ALL: ClientCapabilities = {
  workspace: { workspaceEdit: { documentChanges: true }, codeLens: { refreshSupport: true } },
  textDocument: {
    completion: { completionItem: { snippetSupport: true, insertReplaceSupport: true } },
    rename: { prepareSupport: true },
    codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [""] } }, disabledSupport: true },
    diagnostic: { relatedInformation: true },
    semanticTokens: {
      requests: { full: true, range: true },
      tokenTypes: [],
      tokenModifiers: [],
      formats: ["relative"],
    },
  },
};

interface Place {
  readonly position: Position;
  readonly range: Range;
}

/** What is asked, under the name by which the server offers it. */
const ASKED: Readonly<Record<string, readonly (readonly [method: string, more: (at: Place) => object])[]>> = {
  hoverProvider: [["textDocument/hover", ({ position }) => ({ position })]],
  completionProvider: [["textDocument/completion", ({ position }) => ({ position })]],
  signatureHelpProvider: [["textDocument/signatureHelp", ({ position }) => ({ position })]],
  definitionProvider: [["textDocument/definition", ({ position }) => ({ position })]],
  referencesProvider: [
    ["textDocument/references", ({ position }) => ({ position, context: { includeDeclaration: true } })],
  ],
  documentHighlightProvider: [["textDocument/documentHighlight", ({ position }) => ({ position })]],
  documentSymbolProvider: [["textDocument/documentSymbol", () => ({})]],
  workspaceSymbolProvider: [["workspace/symbol", () => ({ query: "" })]],
  documentLinkProvider: [["textDocument/documentLink", () => ({})]],
  foldingRangeProvider: [["textDocument/foldingRange", () => ({})]],
  selectionRangeProvider: [["textDocument/selectionRange", ({ position }) => ({ positions: [position] })]],
  diagnosticProvider: [["textDocument/diagnostic", () => ({})]],
  codeActionProvider: [["textDocument/codeAction", ({ range }) => ({ range, context: { diagnostics: [] } })]],
  codeLensProvider: [["textDocument/codeLens", () => ({})]],
  inlayHintProvider: [["textDocument/inlayHint", ({ range }) => ({ range })]],
  semanticTokensProvider: [["textDocument/semanticTokens/full", () => ({})]],
  documentFormattingProvider: [
    ["textDocument/formatting", () => ({ options: { tabSize: 2, insertSpaces: true } })],
  ],
  documentRangeFormattingProvider: [
    ["textDocument/rangeFormatting", ({ range }) => ({ range, options: { tabSize: 2, insertSpaces: true } })],
  ],
  documentOnTypeFormattingProvider: [
    [
      "textDocument/onTypeFormatting",
      ({ position }) => ({ position, ch: "\n", options: { tabSize: 2, insertSpaces: true } }),
    ],
  ],
};
/** Offered, but asked for elsewhere: by its own tests. */
const ELSEWHERE = ["textDocumentSync", "workspace", "renameProvider"];

const isPosition = (value: object): value is Position =>
  "line" in value && "character" in value && typeof value.line === "number";

/** Every place in an answer. */
function places(value: unknown, found: Position[] = []): Position[] {
  if (typeof value !== "object" || value === null) return found;
  if (isPosition(value)) found.push(value);
  for (const one of Object.values(value)) places(one, found);
  return found;
}

const typed = fc.oneof(
  fc.constantFrom(
    "",
    "\n",
    "\r\n",
    "\r",
    "  ",
    ",",
    '"',
    "(",
    "rim",
    "legs",
    "2x4",
    "😀",
    "e\u0301",
    "👩‍🔧",
    "½",
    "\u2028",
    "\uFEFF",
  ),
  fc.string({ maxLength: 8 }),
  madePlan,
);
const start = fc.oneof(fc.constantFrom(...SAMPLES), brokenSample, madePlan, anyText);

/** Asks for everything at a place, and sees that all of it lies inside the text. */
async function askAll(e: Editor, offers: ServerCapabilities, from: number, to: number): Promise<number> {
  const text = e.textOf(FILE);
  const lines = text.split(/\r\n|\r|\n/);
  const [start, end] = [e.positionOf(FILE, Math.min(from, to)), e.positionOf(FILE, Math.max(from, to))];
  const at: Place = { position: e.positionOf(FILE, from), range: { start, end } };
  const asks = Object.keys(offers).flatMap((name) => ASKED[name] ?? []);
  const answers = await Promise.all(
    asks.map(([method, more]) =>
      e.connection.sendRequest(method, { textDocument: { uri: uriOf(FILE) }, ...more(at) }),
    ),
  );
  answers.forEach((answer, i) => {
    for (const { line, character } of places(answer))
      if (!(line >= 0 && line < lines.length && character >= 0 && character <= lines[line]!.length))
        throw new Error(`${asks[i]![0]} tells of ${line}:${character}, which is no place in the text`);
  });
  return answers.filter((a) => a !== null).length;
}

test("everything that is offered can be asked for at any place, between any keys", async () => {
  const e = await editor({ capabilities: ALL });
  const offers = e.answer.capabilities as ServerCapabilities;
  expect(Object.keys(offers).filter((name) => !ASKED[name] && !ELSEWHERE.includes(name))).toEqual([]);
  let answered = 0;
  await fc.assert(
    fc.asyncProperty(
      start,
      fc.array(fc.tuple(fc.nat(), fc.nat(40), typed, fc.nat(), fc.nat()), { maxLength: 5 }),
      async (text, keys) => {
        await e.open(FILE, text);
        for (const [at, length, insert, from, to] of keys) {
          const size = e.textOf(FILE).length;
          const cut = at % (size + 1);
          await e.edit(FILE, cut, Math.min(cut + length, size), insert);
          const now = e.textOf(FILE).length + 1;
          answered += await askAll(e, offers, from % now, to % now);
        }
        await e.close(FILE);
        expect(e.logged).toEqual([]);
      },
    ),
    { numRuns: Math.ceil(SOME / 2) },
  );
  expect(answered).toBeGreaterThan(SOME);
  e.end();
});
