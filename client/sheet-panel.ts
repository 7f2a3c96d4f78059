/**
 * One panel with a shop sheet. After each time the server has worked the plan out it asks for the sheet anew, one question
 * at a time, and only while the panel can be seen.
 */
import * as vscode from "vscode";
import { goTo, isGoTo, pointed } from "./pointed";
import { READY, type ToPreview } from "./preview/messages";
import { type SheetAnswer, SheetRequest } from "./protocol";
import type { Running } from "./running";
import { sheetPage } from "./sheet-page";
import { NO_PLAN, notFollowing, type SheetView, viewOf } from "./sheet-view";

export interface SheetPanel {
  /** Turns to another plan; stays where it is if that file has no sheet. */
  readonly follow: (uri: vscode.Uri) => void;
  /** Asks for the sheet again. */
  readonly refresh: () => void;
  readonly follows: (uri: string) => boolean;
  /** The cursor came to this line, counted from 1: its pieces are marked in the drawing. */
  readonly point: (uri: vscode.Uri, line: number) => void;
  /** Brings the panel to the front and leaves the cursor in the text. */
  readonly reveal: () => void;
}

export const SHEET_TITLE = "Shop Sheet";

/** Without a `first` plan it waits for one to follow. `lastGood` holds, by document, the newest sheet without errors; it is read and added to. */
export function sheetPanel(
  panel: vscode.WebviewPanel,
  extensionUri: vscode.Uri,
  first: vscode.Uri | undefined,
  running: Running,
  lastGood: Map<string, SheetAnswer>,
): SheetPanel {
  let wanted = first;
  let shown: ToPreview | undefined;
  let asking = false;
  let askAgain = false;
  let gone = false;

  const marks = pointed(running, (message) => {
    if (!gone) void panel.webview.postMessage(message);
  });

  const post = (uri: vscode.Uri, view: SheetView): void => {
    const next = { uri: uri.toString(), view };
    if (gone || (shown !== undefined && sameMessage(shown, next))) return;
    const turned = shown?.uri !== next.uri;
    shown = next;
    panel.title = view.title === "" ? SHEET_TITLE : `${SHEET_TITLE}: ${view.title}`;
    void panel.webview.postMessage(next);
    if (turned) marks.turn(uri);
  };

  const showAnswer = (uri: vscode.Uri, answer: SheetAnswer): void => {
    const key = uri.toString();
    // Drawings of before are better than none, and worse than the newest that were whole.
    if (answer.state === "good" && (answer.complete || !lastGood.has(key))) lastGood.set(key, answer);
    post(uri, viewOf(answer, lastGood.get(key)));
  };

  const ask = async (): Promise<void> => {
    const uri = wanted;
    if (uri === undefined) return;
    const key = uri.toString();
    const isShown = shown?.uri === key;
    try {
      // The server answers for open documents only, and a restored panel may stand without its text.
      await vscode.workspace.openTextDocument(uri);
      const answer = await running.client().sendRequest(SheetRequest, { uri: key, soon: true });
      if (answer !== null) showAnswer(uri, answer);
      else if (isShown || shown === undefined) post(uri, NO_PLAN);
      else if (wanted === uri) wanted = vscode.Uri.parse(shown.uri); // a shop file, say
      if (answer === null || answer.complete || askAgain) return;
      const whole = await running.client().sendRequest(SheetRequest, { uri: key, soon: false });
      if (whole !== null && wanted === uri) showAnswer(uri, whole);
    } catch {
      post(uri, notFollowing(isShown ? shown?.view : undefined));
    }
  };

  const refresh = async (): Promise<void> => {
    askAgain = true;
    if (asking) return;
    asking = true;
    while (askAgain && !gone && panel.visible) {
      askAgain = false;
      await ask();
    }
    asking = false;
  };

  panel.webview.options = {
    enableScripts: true,
    localResourceRoots: [vscode.Uri.joinPath(extensionUri, "dist")],
  };
  panel.onDidDispose(() => {
    gone = true;
  });
  panel.webview.onDidReceiveMessage((message: unknown) => {
    if (isGoTo(message) && shown !== undefined)
      goTo(vscode.Uri.parse(shown.uri), message.line).catch(sayNotOpened);
    if (message !== READY) return;
    shown = undefined; // it starts empty each time it comes into view
    void refresh();
  });
  panel.webview.html = sheetPage(panel.webview, extensionUri, nonce());

  return {
    follow: (uri) => {
      if (uri.toString() === wanted?.toString()) return;
      wanted = uri;
      void refresh();
    },
    refresh: () => {
      void refresh();
      if (panel.visible) marks.again();
    },
    point: (uri, line) => {
      if (panel.visible && uri.toString() === shown?.uri) marks.at(uri, line);
    },
    follows: (uri) => uri === wanted?.toString(),
    reveal: () => panel.reveal(undefined, true),
  };
}

function sayNotOpened(reason: unknown): void {
  void vscode.window.showWarningMessage(`The plan of this sheet cannot be opened: ${reason}`);
}

function sameMessage(a: ToPreview, b: ToPreview): boolean {
  return (
    a.uri === b.uri &&
    a.view.notice === b.view.notice &&
    a.view.title === b.view.title &&
    a.view.style === b.view.style &&
    a.view.body === b.view.body
  );
}

function nonce(): string {
  return [...crypto.getRandomValues(new Uint8Array(16))]
    .map((byte) => byte.toString(16).padStart(2, "0"))
    .join("");
}
