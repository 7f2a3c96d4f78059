/**
 * The layout of a plan: all of it, the lines that are chosen, and the line that Enter ends. The language has one style,
 * so none of the options that come with these requests (how wide a tab is, whether blanks stay) is asked.
 */
import type { Range, TextEdit } from "vscode-languageserver";
import type { TextDocument } from "vscode-languageserver-textdocument";
import { formatAll, formatLines, formatOnNewLine } from "../../features/format";
import { rangeIn } from "../convert";
import type { Answerer, Asked } from "./answering";

export const format: Answerer = {
  offers: ({ textDocument }) => ({
    documentFormattingProvider: true,
    documentRangeFormattingProvider: textDocument?.rangeFormatting?.rangesSupport
      ? { rangesSupport: true }
      : true,
    documentOnTypeFormattingProvider: { firstTriggerCharacter: "\n" },
  }),
  answer: ({ connection, guard, of, plans }) => {
    connection.onDocumentFormatting(
      guard(
        "format",
        (asked) => of(asked, ({ evaluated, document }) => toEdits(formatAll(evaluated), document)),
        null,
      ),
    );
    connection.onDocumentRangeFormatting(
      guard("format lines", (asked) => of(asked, (one) => inRanges(one, [asked.range])), null),
    );
    connection.onDocumentRangesFormatting(
      guard("format lines", (asked) => of(asked, (one) => inRanges(one, asked.ranges)), null),
    );
    connection.onDocumentOnTypeFormatting(
      guard(
        "format on a new line",
        ({ textDocument, position, ch }) => {
          const document = plans.document(textDocument.uri);
          if (!document || ch !== "\n") return null;
          return toEdits(formatOnNewLine(document.getText(), document.offsetAt(position)), document);
        },
        null,
      ),
    );
  },
};

const inRanges = ({ evaluated, document }: Asked, ranges: readonly Range[]): TextEdit[] => {
  const spans = ranges.map(({ start, end }) => ({
    start: document.offsetAt(start),
    end: document.offsetAt(end),
  }));
  return toEdits(formatLines(evaluated, spans), document);
};

const toEdits = (edits: readonly Edit[], document: TextDocument): TextEdit[] =>
  edits.map(({ start, end, text }) => ({ range: rangeIn(document, { start, end }), newText: text }));

type Edit = ReturnType<typeof formatAll>[number];
