/** What any plan of the open folders declares, found by a few letters of its name. */
import type { SymbolInformation } from "vscode-languageserver";
import { TextDocument } from "vscode-languageserver-textdocument";
import { symbolsMatching } from "../../features/workspace-symbols";
import { rangeIn } from "../convert";
import type { Answerer } from "./answering";
import { SYMBOL_KINDS } from "./symbols";

/** More would not be read. */
const MOST = 2_000;

export const workspaceSymbols: Answerer = {
  offers: () => ({ workspaceSymbolProvider: true }),
  answer: ({ connection, guardLater, plans, everywhere }) => {
    connection.onWorkspaceSymbol(
      guardLater(
        "finding names",
        async ({ query }, token) => {
          const found: SymbolInformation[] = [];
          const look = (file: string): void => {
            const read = plans.file(file);
            if ("refused" in read || found.length >= MOST) return;
            const document = TextDocument.create(plans.uriOf(file), "sawbuck", 0, read.text);
            for (const { name, kind, range, within } of symbolsMatching(read.text, query))
              found.push({
                name,
                kind: SYMBOL_KINDS[kind],
                location: { uri: document.uri, range: rangeIn(document, range) },
                ...(within !== "" && { containerName: within }),
              });
          };
          await everywhere.over(token, ({ files }) => everywhere.through(files, token, look));
          return found;
        },
        null,
      ),
    );
  },
};
