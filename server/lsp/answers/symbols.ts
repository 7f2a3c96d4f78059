/** The outline of a plan. */
import { type DocumentSymbol, SymbolKind } from "vscode-languageserver";
import type { TextDocument } from "vscode-languageserver-textdocument";
import { type PlanSymbol, symbolsOf } from "../../features/symbols";
import { rangeIn } from "../convert";
import type { Answerer } from "./answering";

export const symbols: Answerer = {
  offers: () => ({ documentSymbolProvider: true }),
  answer: ({ connection, guard, of }) => {
    connection.onDocumentSymbol(
      guard(
        "symbols",
        (asked) =>
          of(asked, ({ evaluated, document }) => symbolsOf(evaluated).map((s) => toSymbol(s, document))),
        null,
      ),
    );
  },
};

export const SYMBOL_KINDS: Readonly<Record<PlanSymbol["kind"], SymbolKind>> = {
  plan: SymbolKind.Module,
  measure: SymbolKind.Variable,
  stock: SymbolKind.Constant,
  sheet: SymbolKind.Constant,
  roll: SymbolKind.Constant,
  fastener: SymbolKind.Constant,
  finish: SymbolKind.Constant,
  fill: SymbolKind.Constant,
  tools: SymbolKind.Object,
  yard: SymbolKind.Object,
  part: SymbolKind.Class,
  assembly: SymbolKind.Package,
  ring: SymbolKind.Array,
  box: SymbolKind.Struct,
  joint: SymbolKind.Event,
  load: SymbolKind.Number,
  rule: SymbolKind.Boolean,
  step: SymbolKind.Function,
  built: SymbolKind.Event,
};

const toSymbol = (s: PlanSymbol, document: TextDocument): DocumentSymbol => ({
  name: s.name,
  ...(s.detail && { detail: s.detail }),
  kind: SYMBOL_KINDS[s.kind],
  range: rangeIn(document, s.range),
  selectionRange: rangeIn(document, s.selection),
  ...(s.children.length > 0 && { children: s.children.map((c) => toSymbol(c, document)) }),
});
