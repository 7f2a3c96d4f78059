/** Where else something is named: marked in the open text, and listed over all plans there are. */
import { DocumentHighlightKind, type Location } from "vscode-languageserver";
import { declaredAt, highlightsAt, type Mention, mentionsIn, sizesMeant } from "../../features/references";
import { locator, rangeIn } from "../convert";
import type { Answerer } from "./answering";

export const references: Answerer = {
  offers: () => ({ referencesProvider: true, documentHighlightProvider: true }),
  answer: ({ connection, guard, guardLater, at, plans, everywhere }) => {
    connection.onDocumentHighlight(
      guard(
        "marking a name",
        (asked) =>
          at(asked, ({ evaluated, document }, offset) =>
            highlightsAt(evaluated, offset).map((h) => ({
              range: rangeIn(document, h),
              kind: h.declares ? DocumentHighlightKind.Write : DocumentHighlightKind.Read,
            })),
          ),
        null,
      ),
    );
    connection.onReferences(
      guardLater(
        "finding a name",
        ({ context, ...asked }, token) =>
          everywhere.over(token, async ({ rootsWith }) => {
            const target = at(asked, ({ evaluated }, offset) => declaredAt(evaluated, offset));
            if (!target) return null;
            const found = new Map<string, Location>();
            const add = (list: readonly Mention[], locate: (at: Mention["at"]) => Location | undefined) => {
              for (const { at, declares } of list) {
                const location = declares && !context.includeDeclaration ? undefined : locate(at);
                if (location) found.set(`${at.file}\n${at.start}`, location);
              }
            };
            for await (const root of rootsWith(target.at.file))
              add(mentionsIn(root, target), locator(root.loaded, plans.uriOf));
            for (const uri of plans.all()) {
              const evaluated = plans.evaluated(uri);
              if (evaluated)
                add(sizesMeant(evaluated, target), locator(evaluated.worked.loaded, plans.uriOf));
            }
            return [...found.values()];
          }),
        null,
      ),
    );
  },
};
