/** From what the features give, with offsets, to what the protocol wants, with lines and columns inside the document. */
import {
  type CompletionItem,
  CompletionItemKind,
  type Diagnostic,
  DiagnosticSeverity,
  type DocumentSymbol,
  type Hover,
  InsertTextFormat,
  type Location,
  MarkupKind,
  type Range,
  SymbolKind,
} from "vscode-languageserver";
import { TextDocument } from "vscode-languageserver-textdocument";
import type { Completion } from "../features/completion";
import type { Diagnostic as Found } from "../features/diagnostics";
import type { Hover as Told } from "../features/hover";
import type { PlanSymbol } from "../features/symbols";
import type { At } from "../plan";
import type { Evaluated, HoverDrawing } from "../service";

/** What an editor can show, as it said when it started. */
export interface Shows {
  readonly snippets: boolean;
  readonly related: boolean;
  readonly markdown: boolean;
  /** Pictures in Markdown, given as `data:` addresses. */
  readonly pictures: boolean;
  /** The address of the page about a code, if there is one. */
  readonly page: (code: string) => string | undefined;
}

interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** Offsets beyond the text end at its end. */
export const rangeIn = (document: TextDocument, { start, end }: Stretch): Range => ({
  start: document.positionAt(start),
  end: document.positionAt(Math.max(start, end)),
});

/** Finds the places of any of a plan's files; undefined for a file that the plan did not read. */
export function locator(
  evaluated: Evaluated,
  uriOf: (file: string) => string,
): (at: At) => Location | undefined {
  const documents = new Map<string, TextDocument>();
  return (at) => {
    let document = documents.get(at.file);
    if (!document) {
      const file = evaluated.worked.loaded.files.find((f) => f.file === at.file);
      if (!file) return at.end === 0 ? { uri: uriOf(at.file), range: START } : undefined;
      document = TextDocument.create(uriOf(at.file), "sawbuck", 0, file.tree.text);
      documents.set(at.file, document);
    }
    return { uri: document.uri, range: rangeIn(document, at) };
  };
}

const START: Range = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

const SEVERITY = {
  error: DiagnosticSeverity.Error,
  hazard: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  hint: DiagnosticSeverity.Information,
} as const;

export function toDiagnostic(
  found: Found,
  document: TextDocument,
  locate: (at: At) => Location | undefined,
  shows: Shows,
): Diagnostic {
  const href = shows.page(found.code);
  const related = found.related.flatMap(({ at, message }) => {
    const location = locate(at);
    return location ? [{ location, message }] : [];
  });
  return {
    range: rangeIn(document, found.range),
    severity: SEVERITY[found.class],
    source: "sawbuck",
    code: found.code,
    ...(href !== undefined && { codeDescription: { href } }),
    message: found.message,
    ...(shows.related && related.length > 0 && { relatedInformation: related }),
  };
}

/** A drawing stands under the words where the editor shows pictures in them. */
export const toHover = (
  told: Told,
  document: TextDocument,
  { markdown }: Shows,
  picture: HoverDrawing | undefined,
): Hover => ({
  contents: markdown
    ? { kind: MarkupKind.Markdown, value: `${told.markdown}${picture ? imageOf(picture) : ""}` }
    : { kind: MarkupKind.PlainText, value: told.markdown },
  range: rangeIn(document, told.range),
});

/** As an address that holds the picture itself, with its size as VS Code reads it; nothing for one that would make the hover large. */
function imageOf({ title, svg, width, height }: HoverDrawing): string {
  const bytes = new TextEncoder().encode(svg);
  let letters = "";
  for (const byte of bytes) letters += String.fromCharCode(byte);
  const data = btoa(letters);
  if (data.length > LARGEST_PICTURE) return "";
  return `\n\n![${title.replace(/[^\p{L}\p{N} -]/gu, "")}](data:image/svg+xml;base64,${data}|width=${pixels(width)},height=${pixels(height)})`;
}

const pixels = (mm: number): number => Math.ceil((mm * 96) / 25.4);

/** Letters of a picture's address. */
const LARGEST_PICTURE = 28_000;

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

export function toCompletion(c: Completion, document: TextDocument, { snippets }: Shows): CompletionItem {
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

const KINDS: Readonly<Record<PlanSymbol["kind"], SymbolKind>> = {
  plan: SymbolKind.Module,
  measure: SymbolKind.Variable,
  stock: SymbolKind.Constant,
  sheet: SymbolKind.Constant,
  roll: SymbolKind.Constant,
  fastener: SymbolKind.Constant,
  finish: SymbolKind.Constant,
  fill: SymbolKind.Constant,
  tools: SymbolKind.Object,
  part: SymbolKind.Class,
  assembly: SymbolKind.Package,
  ring: SymbolKind.Array,
  box: SymbolKind.Struct,
  joint: SymbolKind.Event,
  load: SymbolKind.Number,
  rule: SymbolKind.Boolean,
  step: SymbolKind.Function,
};

export const toSymbol = (s: PlanSymbol, document: TextDocument): DocumentSymbol => ({
  name: s.name,
  ...(s.detail && { detail: s.detail }),
  kind: KINDS[s.kind],
  range: rangeIn(document, s.range),
  selectionRange: rangeIn(document, s.selection),
  ...(s.children.length > 0 && { children: s.children.map((c) => toSymbol(c, document)) }),
});
