/**
 * The plan to practise on, which comes with two problems, and what the buttons of the walkthrough do with it. They work
 * without a folder and in any order: each opens the plan where it is not open, beside the walkthrough.
 */
import * as vscode from "vscode";
import type { Running } from "./running";

export function practice(running: Running, extensionUri: vscode.Uri): vscode.Disposable {
  let uri: string | undefined;

  const open = async (): Promise<vscode.TextEditor> => {
    const there = vscode.workspace.textDocuments.find((one) => one.uri.toString() === uri && !one.isClosed);
    const document = there ?? (await freshPlan(extensionUri));
    uri = document.uri.toString();
    return vscode.window.showTextDocument(document, { viewColumn: columnFor(document) });
  };

  /** With the cursor at the end of what the first of `finds` finds that finds anything. */
  const openAt = async (...finds: readonly RegExp[]): Promise<vscode.TextEditor> => {
    const editor = await open();
    const text = editor.document.getText();
    const found = finds.map((find) => find.exec(text)).find((one) => one !== null);
    if (found) {
      const at = editor.document.positionAt(found.index + found[0].length);
      editor.selection = new vscode.Selection(at, at);
      editor.revealRange(new vscode.Range(at, at), vscode.TextEditorRevealType.InCenterIfOutsideViewport);
    }
    return editor;
  };

  const steps: Readonly<Record<string, () => Promise<unknown>>> = {
    "sawbuck.openPractice": open,
    "sawbuck.practice.mend": async () => {
      await openAt(SCREW);
      await vscode.commands.executeCommand("workbench.panel.markers.view.focus");
    },
    "sawbuck.practice.hover": async () => {
      await openAt(NAME);
      await vscode.commands.executeCommand("editor.action.showHover");
    },
    "sawbuck.practice.place": async () => {
      const editor = await openAt(PLACED, MISSING);
      // The hover of the step before would lie over the list; older editors cannot put it away.
      await vscode.commands.executeCommand("editor.action.hideHover").then(undefined, () => {});
      if (!PLACED.test(editor.document.getText())) {
        const end = await beginLine(editor, "place lip ");
        editor.selection = new vscode.Selection(end, end);
        editor.revealRange(new vscode.Range(end, end));
      }
      await vscode.commands.executeCommand("editor.action.triggerSuggest");
    },
    "sawbuck.practice.sheet": async () => {
      await open();
      await vscode.commands.executeCommand("sawbuck.openSheet");
    },
  };

  // Pressed twice, a button would else begin its line twice.
  let last: Promise<unknown> = Promise.resolve();
  const inTurn = (step: () => Promise<unknown>) => (): Promise<unknown> => {
    last = last.then(step, step);
    return last;
  };

  return vscode.Disposable.from(
    ...Object.entries(steps).map(([id, step]) => vscode.commands.registerCommand(id, inTurn(step))),
    running.onWorked((worked) => {
      if (worked.uri !== uri || worked.counts.errors > 0) return;
      if (worked.counts.hazards === 0) tick("sawbuck.practice.mended");
      if (worked.counts.warnings === 0) tick("sawbuck.practice.placed");
    }),
  );
}

/** A step of the walkthrough is done once its context is set. */
function tick(context: string): void {
  void vscode.commands.executeCommand("setContext", context, true);
}

/** The line of the screws that are too long, as far as their length; any other length once that is mended. */
export const SCREW = /^fasten slat face into rail face.*? x [\d-]+/m;
/** A name to rest the pointer on. */
export const NAME = /^part sl/m;
/** The line of the lip, as far as it is written. */
const PLACED = /^place lip .*/m;
/** Where that line is missing: below the remark that says so. */
export const MISSING = /^# .*\blip\b.*\r?\n(?:#.*\r?\n)*/m;

/** At the cursor, below the remark; where that was deleted, on a line of its own at the end. Where the text then ends. */
async function beginLine(editor: vscode.TextEditor, start: string): Promise<vscode.Position> {
  const { document } = editor;
  const text = document.getText();
  if (MISSING.test(text)) {
    const at = editor.selection.active;
    await editor.edit((edit) => edit.insert(at, start));
    return at.translate(0, start.length);
  }
  const before = /[^\n]$/.test(text) ? "\n" : "";
  await editor.edit((edit) => edit.insert(document.positionAt(text.length), before + start));
  return document.positionAt(document.getText().length);
}

async function freshPlan(extensionUri: vscode.Uri): Promise<vscode.TextDocument> {
  const ending = /^fr\b/i.test(vscode.env.language) ? ".fr.sawbuck" : ".sawbuck";
  const file = vscode.Uri.joinPath(extensionUri, "client", "practice", `boot-rack${ending}`);
  const content = new TextDecoder().decode(await vscode.workspace.fs.readFile(file));
  return vscode.workspace.openTextDocument({ language: "sawbuck", content });
}

/** Where it is shown already; else beside what is no text, which is the walkthrough. */
function columnFor(document: vscode.TextDocument): vscode.ViewColumn {
  const shown = vscode.window.visibleTextEditors.find((editor) => editor.document === document);
  if (shown?.viewColumn !== undefined) return shown.viewColumn;
  const inPage =
    vscode.window.activeTextEditor === undefined &&
    vscode.window.tabGroups.activeTabGroup.activeTab !== undefined;
  return inPage ? vscode.ViewColumn.Beside : vscode.ViewColumn.Active;
}
