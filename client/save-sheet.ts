/** “Save Shop Sheet”: in which format, under which name, and then written as the sheet's panel shows it. */
import * as vscode from "vscode";
import type { Choices } from "./choices";
import { type SheetFile, SheetFileRequest } from "./protocol";
import type { Running } from "./running";
import { isPlan, type SheetFormat, sheetFileName, sheetFormats } from "./sheet-formats";

/** Asks the reader and writes the file; tells them how it went. */
export async function saveSheet(uri: vscode.Uri, choices: Choices, running: Running): Promise<void> {
  let saved: { readonly target: vscode.Uri; readonly format: SheetFormat } | undefined;
  try {
    saved = await written(uri, choices, running);
  } catch (reason) {
    void vscode.window.showErrorMessage(vscode.l10n.t("The shop sheet was not saved: {0}", inWords(reason)));
  }
  if (saved === undefined) return;
  const { target, format } = saved;
  const name = target.path.slice(target.path.lastIndexOf("/") + 1);
  const open = vscode.l10n.t("Open");
  const chosen = await vscode.window.showInformationMessage(
    vscode.l10n.t("The shop sheet is saved as {0}.", name),
    open,
  );
  if (chosen !== open) return;
  try {
    await show(target, format);
  } catch (reason) {
    void vscode.window.showErrorMessage(vscode.l10n.t("{0} cannot be opened: {1}", name, inWords(reason)));
  }
}

/** What was written where; undefined where the reader thought better of it. */
async function written(uri: vscode.Uri, choices: Choices, running: Running) {
  const format = await pickFormat();
  const target = format && (await pickTarget(uri, format));
  if (!format || !target) return undefined;
  if (isPlan(target.path) || isOpenPlan(target))
    throw new Error(vscode.l10n.t("that is the name of a plan, and nothing is written over a plan."));
  const content = await vscode.window.withProgress(
    { location: vscode.ProgressLocation.Window, title: vscode.l10n.t("Writing the shop sheet") },
    () => contentOf(uri, choices, format, running),
  );
  await vscode.workspace.fs.writeFile(target, content);
  return { target, format };
}

const inWords = (reason: unknown): string => (reason instanceof Error ? reason.message : String(reason));

async function pickFormat(): Promise<SheetFormat | undefined> {
  const items = sheetFormats().map((format) => ({
    label: format.label,
    description: `.${format.ending}`,
    detail: format.detail,
    format,
  }));
  const picked = await vscode.window.showQuickPick(items, {
    placeHolder: vscode.l10n.t("Save the shop sheet as what?"),
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
    title: vscode.l10n.t("Save Shop Sheet"),
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
  if (file === null)
    throw new Error(vscode.l10n.t("there is no plan in this file to make a shop sheet from."));
  if ("refused" in file) throw new Error(file.refused);
  return bytesOf(file);
}

const bytesOf = (file: Exclude<SheetFile, { readonly refused: string }>): Uint8Array =>
  "text" in file
    ? new TextEncoder().encode(file.text)
    : Uint8Array.from(atob(file.base64), (letter) => letter.charCodeAt(0));

/** A page in the browser where files of this device can be shown there; else in the editor. */
async function show(target: vscode.Uri, { outside }: SheetFormat): Promise<void> {
  const here = target.scheme === "file" && vscode.env.remoteName === undefined;
  if (outside && here && vscode.env.uiKind === vscode.UIKind.Desktop) await vscode.env.openExternal(target);
  else await vscode.commands.executeCommand("vscode.open", target);
}
