/** Changes of a plan's files as the protocol tells them: only of texts that are still what the change was made for. */
import type {
  ClientCapabilities,
  CreateFile,
  Position,
  SnippetTextEdit,
  TextDocumentEdit,
  TextEdit,
  WorkspaceEdit,
} from "vscode-languageserver";
import { TextDocument } from "vscode-languageserver-textdocument";
import type { Edit } from "../checks";
import { type Change, textAfter } from "../features/actions";
import { holderOf, type Loaded } from "../plan";
import type { Evaluated } from "../service";
import { rangeIn } from "./convert";
import type { Plans } from "./plans";

/** What an editor understands of changes. */
export interface CanEdit {
  /** Changes of a text's version, several files in one. */
  readonly versions: boolean;
  /** Files that are made. */
  readonly makes: boolean;
  /** Text in which the person goes on typing. */
  readonly snippets: boolean;
}

export function canEdit({ workspace }: ClientCapabilities): CanEdit {
  const { workspaceEdit } = workspace ?? {};
  const versions = workspaceEdit?.documentChanges ?? false;
  return {
    versions,
    makes: versions && (workspaceEdit?.resourceOperations?.includes("create") ?? false),
    snippets: versions && (workspaceEdit?.snippetEditSupport ?? false),
  };
}

/** The text of each file that a change was made for. */
export type Texts = (file: string) => string | undefined;

export const textsOf =
  (loaded: readonly Loaded[]): Texts =>
  (file) => {
    for (const { files, whole } of loaded) {
      if (files[0]?.file === file) return whole.text;
      const found = files.find((f) => f.file === file);
      if (found) return found.tree.text;
    }
    return undefined;
  };

/** Undefined where a file is another by now, or where the editor could not make a file that is asked for. */
export function toWorkspaceEdit(
  change: Pick<Change, "edits" | "makes" | "typing">,
  texts: Texts,
  plans: Plans,
  can: CanEdit,
): WorkspaceEdit | undefined {
  if (change.makes && !can.makes) return undefined;
  const edited: {
    readonly document: TextDocument;
    readonly version: number | null;
    readonly edits: Edit[];
  }[] = [];
  const all = change.edits.map((e) => ({ ...e, file: holderOf(e.file) }));
  for (const file of new Set(all.map((e) => e.file))) {
    const found = present(file, texts(file), plans);
    if (!found) return undefined;
    const edits = all.filter((e) => e.file === file);
    edited.push({ ...found, edits: edits.sort((a, b) => a.start - b.start || a.end - b.end) });
  }
  const plain = ({ document }: { readonly document: TextDocument }, e: Edit): TextEdit => ({
    range: rangeIn(document, e),
    newText: e.text,
  });
  if (!can.versions)
    return {
      changes: Object.fromEntries(edited.map((f) => [f.document.uri, f.edits.map((e) => plain(f, e))])),
    };
  const changes = edited.map(
    (f): TextDocumentEdit => ({
      textDocument: { uri: f.document.uri, version: f.version },
      edits: f.edits.map((e) =>
        can.snippets && change.typing !== undefined && takesSnippet(f.document, e)
          ? snippet(f.document, e, change.typing)
          : plain(f, e),
      ),
    }),
  );
  const made = change.makes ? madeFile(change.makes, plans) : [];
  return { documentChanges: [...made, ...changes] };
}

/** The text of a file as it is now: an open one with its version. Undefined where it is not the one that was worked out. */
function present(
  file: string,
  text: string | undefined,
  plans: Plans,
): { readonly document: TextDocument; readonly version: number | null } | undefined {
  const uri = plans.uriOf(file);
  const open = plans.document(uri);
  if (open) return open.getText() === text ? { document: open, version: open.version } : undefined;
  const found = plans.file(file);
  if ("refused" in found || found.text !== text) return undefined;
  return { document: TextDocument.create(uri, "sawbuck", 0, text), version: null };
}

const START: Position = { line: 0, character: 0 };

function madeFile(
  { file, text }: NonNullable<Change["makes"]>,
  plans: Plans,
): (CreateFile | TextDocumentEdit)[] {
  const uri = plans.uriOf(file);
  return [
    { kind: "create", uri, options: { overwrite: false, ignoreIfExists: false } },
    { textDocument: { uri, version: null }, edits: [{ range: { start: START, end: START }, newText: text }] },
  ];
}

/** Editors indent what comes after the first line of a snippet like the line it is put into: at the left edge only. */
function takesSnippet(document: TextDocument, { start, text }: Edit): boolean {
  const { line, character } = document.positionAt(start);
  const from = document.offsetAt({ line, character: 0 });
  return character === 0 || !/^[\r\n]/.test(text) || !/^[ \t]/.test(document.getText().slice(from, start));
}

function snippet(document: TextDocument, edit: Edit, typing: number): SnippetTextEdit {
  const literally = (text: string): string => text.replace(/[\\$}]/g, "\\$&");
  // Nothing is put where the person types, so that a reason is never one that nobody gave.
  const value = `${literally(edit.text.slice(0, typing))}$0${literally(edit.text.slice(typing))}`;
  return { range: rangeIn(document, edit), snippet: { kind: "snippet", value } };
}

/** Where an offset of a plan's text will be once it is changed. */
export function positionAfter(change: Change, { file, text }: Evaluated, offset: number): Position {
  const after = textAfter(change, file, text);
  return TextDocument.create("", "sawbuck", 0, after).positionAt(offset);
}
