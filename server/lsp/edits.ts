/** Changes of several files as an editor applies them: with the version each open text has now, where it can take that. */
import type { ClientCapabilities, TextEdit, WorkspaceEdit } from "vscode-languageserver";
import { TextDocument } from "vscode-languageserver-textdocument";
import type { Edit } from "../checks";
import { rangeIn } from "./convert";
import type { Plans } from "./plans";

/** Changes of files that cannot be read any more are left out. */
export function workspaceEdit(
  edits: readonly Edit[],
  plans: Plans,
  { workspace }: ClientCapabilities,
): WorkspaceEdit {
  const files = [...new Set(edits.map(({ file }) => file))].flatMap((file) => {
    const uri = plans.uriOf(file);
    const document = plans.document(uri) ?? closedDocument(uri, file, plans);
    if (!document) return [];
    const own: TextEdit[] = edits
      .filter((e) => e.file === file)
      .sort((a, b) => a.start - b.start)
      .map((e) => ({ range: rangeIn(document, e), newText: e.text }));
    return [{ uri, version: plans.document(uri)?.version ?? null, edits: own }];
  });
  if (workspace?.workspaceEdit?.documentChanges)
    return {
      documentChanges: files.map(({ uri, version, edits: own }) => ({
        textDocument: { uri, version },
        edits: own,
      })),
    };
  return { changes: Object.fromEntries(files.map(({ uri, edits: own }) => [uri, own])) };
}

function closedDocument(uri: string, file: string, plans: Plans): TextDocument | undefined {
  const found = plans.file(file);
  return "refused" in found ? undefined : TextDocument.create(uri, "sawbuck", 0, found.text);
}
