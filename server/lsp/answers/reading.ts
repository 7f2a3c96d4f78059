/** What helps to get about in one text: links, folding, selections that grow. */
import { type DocumentLink, FoldingRangeKind, type SelectionRange } from "vscode-languageserver";
import { type Fold, foldsOf } from "../../features/folding";
import { linksOf } from "../../features/links";
import { selectionsAt } from "../../features/selection";
import { rangeIn } from "../convert";
import type { Answerer } from "./answering";

const KINDS: Readonly<Record<Fold["kind"], FoldingRangeKind | undefined>> = {
  entry: undefined,
  notes: FoldingRangeKind.Comment,
  files: FoldingRangeKind.Imports,
  "under a heading": FoldingRangeKind.Region,
};

export const reading: Answerer = {
  offers: () => ({ documentLinkProvider: {}, foldingRangeProvider: true, selectionRangeProvider: true }),
  answer: ({ connection, guard, guardLater, of, plans, shows }) => {
    connection.onDocumentLinks(
      guardLater(
        "links",
        async (asked) => {
          await plans.settled(asked.textDocument.uri);
          return of(asked, ({ evaluated, document }) =>
            linksOf(evaluated, plans.reader).flatMap(({ range, to }): DocumentLink[] => {
              const target = "file" in to ? plans.uriOf(to.file) : shows.page(to.code);
              return target === undefined ? [] : [{ range: rangeIn(document, range), target }];
            }),
          );
        },
        null,
      ),
    );
    connection.onFoldingRanges(
      guard(
        "folding",
        (asked) =>
          of(asked, ({ evaluated }) => {
            const tree = evaluated.worked.loaded.whole;
            return (
              tree &&
              foldsOf(tree).map(({ first, last, kind }) => ({
                startLine: first,
                endLine: last,
                ...(KINDS[kind] && { kind: KINDS[kind] }),
              }))
            );
          }),
        null,
      ),
    );
    connection.onSelectionRanges(
      guard(
        "selecting",
        (asked) =>
          of(asked, ({ evaluated, document }) => {
            const tree = evaluated.worked.loaded.whole;
            return (
              tree &&
              asked.positions.map(
                (position) =>
                  selectionsAt(tree, document.offsetAt(position)).reduceRight<SelectionRange | undefined>(
                    (parent, span) => ({ range: rangeIn(document, span), ...(parent && { parent }) }),
                    undefined,
                  ) ?? { range: { start: position, end: position } },
              )
            );
          }),
        null,
      ),
    );
  },
};
