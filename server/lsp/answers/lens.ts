/** What stands above a plan, and what a click on it opens in an editor that has the commands for it. */
import type { CodeLens } from "vscode-languageserver";
import { type Lens, lensesOf } from "../../features/lens";
import { rangeIn } from "../convert";
import type { Settings } from "../settings";
import type { Answerer } from "./answering";

export const lens: Answerer = {
  offers: () => ({ codeLensProvider: { resolveProvider: false } }),
  answer: ({ connection, guard, of, plans, shows, settings, refresh }) => {
    const answered = new Map<string, boolean>();
    connection.onCodeLens(
      guard(
        "lenses",
        (asked) =>
          of(asked, ({ evaluated, document }): CodeLens[] => {
            const wanted = isWanted(document.uri, settings);
            answered.set(document.uri, wanted);
            // Once its files are there, the editor is told to ask again.
            if (!wanted || plans.waits(document.uri)) return [];
            return lensesOf(evaluated, shows.language).map(({ range, title, opens }) => ({
              range: rangeIn(document, range),
              command: { title, command: shows.commands ? COMMANDS[opens] : "" },
            }));
          }),
        null,
      ),
    );
    plans.onClosed((uri) => answered.delete(uri));
    settings.onChange((uris) => {
      if (uris.some((uri) => answered.has(uri) && answered.get(uri) !== isWanted(uri, settings)))
        refresh.lenses();
    });
  },
};

const isWanted = (uri: string, settings: Settings): boolean => settings.yes(uri, "lens", true);

/** Of the extension, and of its editor. An editor without them is given none, and shows the words alone. */
const COMMANDS: Readonly<Record<Lens["opens"], string>> = {
  sheet: "sawbuck.openSheet",
  problems: "workbench.panel.markers.view.focus",
  "not checked": "sawbuck.showNotChecked",
};
