/** The plan that a command is about. */
import * as vscode from "vscode";

/** The plan in the active editor. */
export function activePlan(): vscode.Uri | undefined {
  const document = vscode.window.activeTextEditor?.document;
  return document?.languageId === "sawbuck" ? document.uri : undefined;
}

/** That one, or else one that can be seen: where the reader is in a page beside it, no text is active. */
export const planInSight = (): vscode.Uri | undefined =>
  activePlan() ??
  vscode.window.visibleTextEditors.find(({ document }) => document.languageId === "sawbuck")?.document.uri;
