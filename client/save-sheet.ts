/** “Save Shop Sheet”: in which format, under which name, and then written as the sheet's panel shows it. */
import * as vscode from "vscode";
import type { Choices } from "./choices";
import { type SheetFile, SheetFileRequest } from "./protocol";
import type { Running } from "./running";
import { isPlan, SHEET_FORMATS, type SheetFormat, sheetFileName } from "./sheet-formats";

/** Asks the reader and writes the file; tells them how it went. */
export async function saveSheet(uri: vscode.Uri, choices: Choices, running: Running): Promise<void> {
  const format = await pickFormat();
  const target = format && (await pickTarget(uri, format));
  if (!format || !target) return;
  try {
    if (isPlan(target.path) || isOpenPlan(target))
      throw new Error("that is the name of a plan, and nothing is written over a plan.");
    const content = await vscode.window.withProgress(
      { location: vscode.ProgressLocation.Window, title: "Writing the shop sheet" },
      () => contentOf(uri, choices, format, running),
    );
    await vscode.workspace.fs.writeFile(target, content);
  } catch (reason) {
    const told = reason instanceof Error ? reason.message : String(reason);
    void vscode.window.showErrorMessage(`The shop sheet was not saved: ${told}`);
    return;
  }
  const open = "Open";
  const saved = `The shop sheet is saved as ${target.path.slice(target.path.lastIndexOf("/") + 1)}.`;
  if ((await vscode.window.showInformationMessage(saved, open)) === open) await show(target, format);
}

async function pickFormat(): Promise<SheetFormat | undefined> {
  const items = SHEET_FORMATS.map((format) => ({
    label: format.label,
    description: `.${format.ending}`,
    detail: format.detail,
    format,
  }));
  const picked = await vscode.window.showQuickPick(items, {
    placeHolder: "Save the shop sheet as what?",
    matchOnDescription: true,
  });
  return picked?.format;
}

/** Beside the plan; of one that is in no folder yet, in the folder that is open. */
function pickTarget(uri: vscode.Uri, format: SheetFormat): Thenable<vscode.Uri | undefined> {
  const name = sheetFileName(uri.path.slice(uri.path.lastIndexOf("/") + 1), format);
  const folder =
    uri.scheme === "untitled" ? vscode.workspace.workspaceFolders?.[0]?.uri : vscode.Uri.joinPath(uri, "..");
  return vscode.window.showSaveDialog({
    title: "Save Shop Sheet",
    filters: { [format.label]: [format.ending] },
    ...(folder && { defaultUri: vscode.Uri.joinPath(folder, name) }),
  });
}

/** A plan may have another ending where the reader's settings say so. */
const isOpenPlan = (target: vscode.Uri): boolean =>
  vscode.workspace.textDocuments.some(
    ({ uri, languageId }) => languageId === "sawbuck" && uri.toString() === target.toString(),
  );

async function contentOf(
  uri: vscode.Uri,
  choices: Choices,
  { format }: SheetFormat,
  running: Running,
): Promise<Uint8Array> {
  // The server answers for open documents only.
  await vscode.workspace.openTextDocument(uri);
  const asked = { uri: uri.toString(), format, language: vscode.env.language, ...choices };
  const file = await running.client().sendRequest(SheetFileRequest, asked);
  if (file === null) throw new Error("there is no plan in this file to make a shop sheet from.");
  return bytesOf(file);
}

const bytesOf = (file: SheetFile): Uint8Array =>
  "text" in file
    ? new TextEncoder().encode(file.text)
    : Uint8Array.from(atob(file.base64), (letter) => letter.charCodeAt(0));

/** A page in the browser where files of this device can be shown there; else in the editor. */
async function show(target: vscode.Uri, { outside }: SheetFormat): Promise<void> {
  const here = target.scheme === "file" && vscode.env.remoteName === undefined;
  if (outside && here && vscode.env.uiKind === vscode.UIKind.Desktop) await vscode.env.openExternal(target);
  else await vscode.commands.executeCommand("vscode.open", target);
}
