/** What could be typed next. */
import { type CompletionItem, CompletionItemKind, InsertTextFormat, MarkupKind } from "vscode-languageserver";
import type { TextDocument } from "vscode-languageserver-textdocument";
import { type Completion, completionsAt } from "../../features/completion";
import { rangeIn, type Shows } from "../convert";
import type { Answerer } from "./answering";

export const completion: Answerer = {
  offers: () => ({ completionProvider: { triggerCharacters: [" ", "#"] } }),
  answer: ({ connection, guard, at, shows }) => {
    connection.onCompletion(
      guard(
        "completion",
        (asked) =>
          at(asked, ({ evaluated, document }, offset): CompletionItem[] =>
            completionsAt(evaluated, offset).map((c) => toCompletion(c, document, shows)),
          ),
        null,
      ),
    );
  },
};

const COMPLETES = {
  entry: CompletionItemKind.Keyword,
  clause: CompletionItemKind.Property,
  word: CompletionItemKind.Keyword,
  section: CompletionItemKind.Constant,
  measure: CompletionItemKind.Variable,
  property: CompletionItemKind.Field,
  function: CompletionItemKind.Function,
  unit: CompletionItemKind.Unit,
  size: CompletionItemKind.Value,
  code: CompletionItemKind.EnumMember,
  thing: CompletionItemKind.Class,
} as const satisfies Readonly<Record<Completion["kind"], CompletionItemKind>>;

function toCompletion(c: Completion, document: TextDocument, { snippets }: Shows): CompletionItem {
  const snippet = snippets ? c.snippet : undefined;
  return {
    label: c.label,
    kind: COMPLETES[c.kind],
    ...(c.detail && { detail: c.detail }),
    ...(c.documentation && { documentation: { kind: MarkupKind.Markdown, value: c.documentation } }),
    sortText: c.sortText,
    filterText: c.label,
    ...(snippet !== undefined && { insertTextFormat: InsertTextFormat.Snippet }),
    textEdit: { range: rangeIn(document, c.range), newText: snippet ?? c.insertText },
  };
}
