/** From what the features give, with offsets, to what the protocol wants, with lines and columns inside the document. */
import {
  type Diagnostic,
  DiagnosticSeverity,
  type Location,
  type MarkupContent,
  MarkupKind,
  type Range,
} from "vscode-languageserver";
import { TextDocument } from "vscode-languageserver-textdocument";
import type { Language } from "../checks";
import type { Diagnostic as Found } from "../features/diagnostics";
import type { At, Loaded } from "../plan";

/** What an editor can show, as it said when it started. */
export interface Shows {
  /** In which all texts are told. */
  readonly language: Language;
  readonly snippets: boolean;
  readonly related: boolean;
  readonly markdown: boolean;
  /** Pictures in Markdown, given as `data:` addresses. */
  readonly pictures: boolean;
  /** It has the commands of the extension, and those of its own editor. */
  readonly commands: boolean;
  /** The address of the page about a code, if there is one. */
  readonly page: (code: string) => string | undefined;
}

/** Markdown, as words alone for an editor that shows no other. */
export const markup = (value: string, { markdown }: Shows): MarkupContent => ({
  kind: markdown ? MarkupKind.Markdown : MarkupKind.PlainText,
  value,
});

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
export function locator(loaded: Loaded, uriOf: (file: string) => string): (at: At) => Location | undefined {
  const documents = new Map<string, TextDocument>();
  return (at) => {
    let document = documents.get(at.file);
    if (!document) {
      const file = loaded.files.find((f) => f.file === at.file);
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
