/** Another name for something, in all plans there are; refused with the reason where a plan would suffer. */
import { LSPErrorCodes, ResponseError, type WorkspaceEdit } from "vscode-languageserver";
import type { Edit } from "../../checks";
import type { Root } from "../../features/references";
import { badName, renamable, renamed, suffers } from "../../features/rename";
import { RENAME_WORDS } from "../../features/rename-words";
import { rangeIn } from "../convert";
import { canEdit, textsOf, toWorkspaceEdit } from "../workspace-edit";
import type { Answerer } from "./answering";

const refuse = (why: string): ResponseError => new ResponseError(LSPErrorCodes.RequestFailed, why);

export const rename: Answerer = {
  offers: ({ textDocument }) => ({
    renameProvider: textDocument?.rename?.prepareSupport ? { prepareProvider: true } : true,
  }),
  answer: ({ connection, params, guard, guardLater, at, plans, everywhere, shows: { language } }) => {
    connection.onPrepareRename(
      guard(
        "looking at a name",
        (asked) =>
          at(asked, ({ evaluated, document }, offset) => {
            const found = renamable(evaluated, offset, language);
            if ("refused" in found) return refuse(found.refused);
            return { range: rangeIn(document, found.range), placeholder: found.declared.name };
          }),
        null,
      ),
    );
    connection.onRenameRequest(
      guardLater<
        Parameters<Parameters<typeof connection.onRenameRequest>[0]>[0],
        WorkspaceEdit | ResponseError | null
      >(
        "renaming",
        ({ newName, ...asked }, token) =>
          everywhere.over(token, async ({ rootsWith }) => {
            const to = newName.trim();
            const found = at(asked, ({ evaluated }, offset) => ({
              found: renamable(evaluated, offset, language),
              wrong: badName(to, evaluated, language),
              display: evaluated.worked.settings.display,
            }));
            if (!found) return null;
            if ("refused" in found.found) return refuse(found.found.refused);
            const target = found.found.declared;
            if (to === target.name) return { changes: {} };
            if (found.wrong !== undefined) return refuse(found.wrong);

            const roots: Root[] = [];
            const edits = new Map<string, Edit>();
            for await (const root of rootsWith(target.at.file)) {
              roots.push(root);
              for (const edit of renamed(root, target, to)) edits.set(`${edit.file}\n${edit.start}`, edit);
            }
            const all = [...edits.values()];
            let why: string | undefined;
            await everywhere.through(roots, token, (root) => {
              why ??= suffers(root, all, target, to, found.display, language);
            });
            if (token.isCancellationRequested) return new ResponseError(LSPErrorCodes.RequestCancelled, "");
            if (why !== undefined) return refuse(why);
            // A key may have been pressed while plans were read.
            const texts = textsOf(roots.map(({ loaded }) => loaded));
            const edit = toWorkspaceEdit({ edits: all }, texts, plans, canEdit(params.capabilities));
            return edit ?? refuse(RENAME_WORDS[language].changed);
          }),
        null,
      ),
    );
  },
};
