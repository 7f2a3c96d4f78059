/** Between the cursor and the sheet: what the line under the cursor is about, and the line that a click asks for. */
import * as vscode from "vscode";
import type { MarkLine } from "./preview/messages";
import { PiecesAtRequest } from "./protocol";
import type { Running } from "./running";

export interface Pointed {
  /** The cursor is on this line, counted from 1, of the document that is shown; asked again when the plan was worked out anew. */
  readonly at: (uri: vscode.Uri, line: number) => void;
  readonly again: () => void;
  /** The page turned to this document, and shows it without marks. */
  readonly turn: (uri: vscode.Uri) => void;
}

/** One question at a time, the newest last; `post` is told only what is news, and nothing of a document turned away from. */
export function pointed(running: Running, post: (marks: MarkLine) => void): Pointed {
  let wanted: { readonly uri: string; readonly line: number } | undefined;
  let told = NOTHING;
  let asking = false;
  let askAgain = false;

  const ask = async (): Promise<void> => {
    const asked = wanted;
    if (asked === undefined) return;
    try {
      const { pieces: marked, lines } = await running.client().sendRequest(PiecesAtRequest, asked);
      const marks: MarkLine = { marked, ...(lines && { lines }) };
      const words = JSON.stringify(marks);
      if (words === told || wanted?.uri !== asked.uri) return;
      told = words;
      post(marks);
    } catch {
      // Without a server the sheet itself says that it does not follow.
    }
  };

  const again = async (): Promise<void> => {
    askAgain = true;
    if (asking) return;
    asking = true;
    while (askAgain) {
      askAgain = false;
      await ask();
    }
    asking = false;
  };

  return {
    at: (uri, line) => {
      wanted = { uri: uri.toString(), line };
      void again();
    },
    again: () => void again(),
    turn: (uri) => {
      told = NOTHING;
      const cursor = editorOf(uri)?.selection.active;
      if (cursor !== undefined) wanted = { uri: uri.toString(), line: cursor.line + 1 };
      else if (wanted?.uri !== uri.toString()) wanted = undefined;
      void again();
    },
  };
}

/** As a page is told that shows no marks. */
const NOTHING = JSON.stringify({ marked: [] } satisfies MarkLine);

/** Puts the cursor at the start of a line, counted from 1, in the editor that shows the document, or in a new one. */
export async function goTo(uri: vscode.Uri, line: number): Promise<void> {
  const document = await vscode.workspace.openTextDocument(uri);
  const at = document.lineAt(Math.min(Math.max(line, 1), document.lineCount) - 1);
  const start = new vscode.Position(at.lineNumber, at.firstNonWhitespaceCharacterIndex);
  await vscode.window.showTextDocument(document, {
    viewColumn: editorOf(uri)?.viewColumn ?? vscode.ViewColumn.One,
    selection: new vscode.Range(start, start),
  });
}

const editorOf = (uri: vscode.Uri): vscode.TextEditor | undefined =>
  vscode.window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri.toString());
