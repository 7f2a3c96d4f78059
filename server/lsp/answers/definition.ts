/** Where a name is declared. */
import { definitionAt } from "../../features/definition";
import type { Answerer } from "./answering";

export const definition: Answerer = {
  offers: () => ({ definitionProvider: true }),
  answer: ({ connection, guard, at, plans }) => {
    connection.onDefinition(
      guard(
        "definition",
        (asked) =>
          at(asked, ({ evaluated, locate }, offset) => {
            const found = definitionAt(evaluated, offset, plans.reader);
            return found && locate(found);
          }),
        null,
      ),
    );
  },
};
