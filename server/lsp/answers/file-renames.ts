/** A plan file or a folder gets another name: the `shop` and `bring` lines that lead there, or from there, follow. */
import type { Edit } from "../../checks";
import { namedPaths } from "../everywhere";
import { pathBetween } from "../paths";
import { canEdit, toWorkspaceEdit } from "../workspace-edit";
import type { Answerer } from "./answering";

export const fileRenames: Answerer = {
  offers: ({ workspace }) =>
    workspace?.fileOperations?.willRename
      ? {
          workspace: {
            fileOperations: {
              willRename: {
                filters: [
                  { pattern: { glob: "**/*.sawbuck", matches: "file" } },
                  { pattern: { glob: "**", matches: "folder" } },
                ],
              },
            },
          },
        }
      : {},
  answer: ({ connection, params, guardLater, plans, everywhere, toFile }) => {
    connection.workspace.onWillRenameFiles(
      guardLater(
        "renaming files",
        async (asked, token) => {
          const moves = asked.files.map((f) => ({ from: toFile(f.oldUri), to: toFile(f.newUri) }));
          /** The name that a file will have. */
          const after = (file: string): string => {
            const move = moves.find(
              ({ from }) =>
                file === from || (/^[\\/]/.test(file.slice(from.length)) && file.startsWith(from)),
            );
            return move ? move.to + file.slice(move.from.length) : file;
          };
          const edits: Edit[] = [];
          const texts = new Map<string, string>();
          const follow = (file: string): void => {
            const read = plans.file(file);
            if ("refused" in read) return;
            texts.set(file, read.text);
            for (const { path, start } of namedPaths(read.text)) {
              const leadsTo = plans.reader(path, file, file).file;
              const [from, to] = [after(file), after(leadsTo)];
              if (from === file && to === leadsTo) continue;
              if (plans.reader(path, from, from).file === to) continue;
              const text = pathBetween(from, to, path);
              edits.push({ file, start, end: start + path.length, text });
            }
          };
          return everywhere.over(token, async ({ files }) => {
            await everywhere.through(files, token, follow);
            if (edits.length === 0) return null;
            const text = (file: string): string | undefined => texts.get(file);
            return toWorkspaceEdit({ edits }, text, plans, canEdit(params.capabilities)) ?? null;
          });
        },
        null,
      ),
    );
  },
};
