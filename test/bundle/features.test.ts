/** What an editor does in a bundle: each feature reaches what is enclosed, at its place in the one document. */
import { expect, test } from "vitest";
import type { Location, WorkspaceEdit } from "vscode-languageserver/node";
import { TextDocument } from "vscode-languageserver-textdocument";
import { applied } from "../../grammar/format";
import { definitionAt } from "../../server/features/definition";
import { diagnosticsOf } from "../../server/features/diagnostics";
import { foldsOf } from "../../server/features/folding";
import { formatAll } from "../../server/features/format";
import { hoverAt } from "../../server/features/hover";
import { linksOf } from "../../server/features/links";
import { highlightsAt } from "../../server/features/references";
import { symbolsOf } from "../../server/features/symbols";
import { tokensOf } from "../../server/features/tokens";
import { evaluate } from "../../server/service";
import { editor, uriOf } from "../lsp/editor";
import { among } from "./round";

const TEXT = `plan P
bring deep/a.sawbuck
shop s.sawbuck
part leg 4 of 2x4, length tall
enclosed deep/a.sawbuck
# How tall.
measure tall =  2 * low
bring b.sawbuck
measure wide = lwo
enclosed deep/b.sawbuck
measure low = 9"
enclosed s.sawbuck
stock 2x4, sold 8'
`;
const FILE = "/yard/p.sawbuck";
const plan = evaluate(FILE, TEXT, among({}));
const spot = (words: string, inside: string): number => TEXT.indexOf(words) + words.indexOf(inside);
const shown = ({ start, end }: { start: number; end: number }): string => TEXT.slice(start, end);

test("a name leads to where it is declared, and a path to the text that is enclosed", () => {
  const leads = (words: string, inside: string) => {
    const found = definitionAt(plan, spot(words, inside), among({}));
    return found && TEXT.slice(found.start, TEXT.indexOf("\n", found.start));
  };
  expect(leads("length tall", "tall")).toBe("tall =  2 * low");
  expect(leads("2 * low", "low")).toBe('low = 9"');
  expect(leads("bring deep/a", "deep")).toBe("deep/a.sawbuck");
  expect(leads("bring b.sawbuck", "b.saw")).toBe("deep/b.sawbuck");
  expect(leads("enclosed s.sawbuck", "s.saw")).toBeUndefined();
  expect(linksOf(plan, among({ "/yard/deep/b.sawbuck": "" }))).toEqual([]);
});

test("hovers, marks, colours, outline, folds and the layout reach what is enclosed", () => {
  expect(hoverAt(plan, spot("measure low", "low"))?.markdown).toContain('9"');
  expect(highlightsAt(plan, spot("measure tall", "tall")).map(shown)).toEqual(["tall", "tall"]);
  expect(tokensOf(plan).map(shown)).toEqual(expect.arrayContaining(["low", "sold"]));
  expect(symbolsOf(plan)[0]!.children.map(({ name }) => name)).toEqual(["leg", "tall", "wide", "low", "2x4"]);
  expect(foldsOf(plan.worked.loaded.whole)).toEqual([
    { first: 1, last: 2, kind: "files" },
    { first: 4, last: 8, kind: "entry" },
    { first: 9, last: 10, kind: "entry" },
    { first: 11, last: 12, kind: "entry" },
  ]);
  expect(applied(TEXT, formatAll(plan))).toBe(TEXT.replace("=  2", "= 2"));
});

test("a problem is told where it stands", () => {
  const [first] = diagnosticsOf(plan).filter(({ code }) => code === "unknown-name");
  expect(first && shown(first.range)).toBe("lwo");
  expect(first?.message).toMatch(/^Nothing here is called “lwo”/);
});

test("renaming changes the one document, and the reader's own files not at all", async () => {
  const disk = new Map([["/yard/deep/b.sawbuck", 'measure low = 1"\n']]);
  const e = await editor({
    disk,
    folder: "/yard",
    capabilities: { workspace: { workspaceEdit: { documentChanges: true } } },
  });
  await e.open(FILE, TEXT);
  const at = { textDocument: { uri: uriOf(FILE) }, position: e.positionOf(FILE, spot("2 * low", "low")) };
  const places = await e.connection.sendRequest<Location[]>("textDocument/references", {
    ...at,
    context: { includeDeclaration: true },
  });
  expect(places.map(({ uri, range }) => [uri, range.start.line])).toEqual([
    [uriOf(FILE), 6],
    [uriOf(FILE), 10],
  ]);
  const edit = await e.connection.sendRequest<WorkspaceEdit>("textDocument/rename", {
    ...at,
    newName: "short",
  });
  const [change, ...more] = edit.documentChanges ?? [];
  expect(more).toEqual([]);
  if (!change || !("edits" in change)) throw new Error("no edit of a text");
  const document = TextDocument.create("", "sawbuck", 0, TEXT);
  const edits = change.edits.flatMap((one) => ("newText" in one ? [one] : []));
  expect(TextDocument.applyEdits(document, edits)).toBe(TEXT.replaceAll("low", "short"));
});
