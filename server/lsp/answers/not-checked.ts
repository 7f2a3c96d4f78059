/** What was not looked at in a plan, for an editor that asks for it by `sawbuck/notChecked`; see client/protocol.ts. */
import { notCheckedOf } from "../../service";
import { textIn } from "../untyped";
import type { Answerer } from "./answering";

export const notChecked: Answerer = {
  offers: () => ({}),
  answer: ({ connection, guardLater, of, plans, shows }) => {
    connection.onRequest(
      "sawbuck/notChecked",
      guardLater(
        "what was not checked",
        async (asked: unknown) => {
          const uri = textIn(asked, "uri");
          await plans.settled(uri);
          return of({ textDocument: { uri } }, ({ evaluated, locate }) => ({
            entries: notCheckedOf(evaluated, shows.language).map(({ what, why, at }) => {
              const found = at && locate(at);
              return { what, why, ...(found && { uri: found.uri, line: found.range.start.line + 1 }) };
            }),
          }));
        },
        null,
      ),
    );
  },
};
