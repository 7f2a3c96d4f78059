/**
 * One panel with a shop sheet. After each time the server has worked the plan out it asks for the sheet anew, one question
 * at a time, and only while the panel can be seen.
 */
import * as vscode from "vscode";
import { AS_PLANNED, type Choices, sameChoices } from "./choices";
import { hear } from "./from-preview";
import type { KeptTicks } from "./kept-ticks";
import { goTo, pointed } from "./pointed";
import type { ToPreview } from "./preview/messages";
import { type SheetAnswer, SheetRequest } from "./protocol";
import type { Running } from "./running";
import { newNonce, sheetPage } from "./sheet-page";
import { newsOf, noPlan, notFollowing, notYet, type SheetView, viewOf } from "./sheet-view";

export interface SheetPanel {
  /** Turns to another plan; stays where it is if that file has no sheet. */
  readonly follow: (uri: vscode.Uri) => void;
  /** Asks for the sheet again. */
  readonly refresh: () => void;
  /** The plan is found under another address now, and its ticks with it. */
  readonly moved: (to: vscode.Uri) => void;
  readonly follows: (uri: string) => boolean;
  /** The plan that is shown, or else the one that is to be. */
  readonly plan: () => vscode.Uri | undefined;
  readonly choices: () => Choices;
  /** Whether the reader is in it. */
  readonly isActive: () => boolean;
  /** The cursor came to this line, counted from 1: what it is about is marked. */
  readonly point: (uri: vscode.Uri, line: number) => void;
  /** Brings the panel to the front and leaves the cursor in the text. */
  readonly reveal: () => void;
}

/** The newest sheet of a document without errors, and how it was to be shown. */
export interface LastGood {
  readonly answer: SheetAnswer;
  readonly choices: Choices;
}

/** What a panel needs of the extension around it. */
export interface Around {
  readonly extensionUri: vscode.Uri;
  readonly running: Running;
  readonly ticks: KeptTicks;
  /** By document; read and added to. */
  readonly lastGood: Map<string, LastGood>;
  readonly save: () => void;
}

/** Of a panel that shows a plan of that title; empty where there is none. */
export const sheetTitle = (plan: string): string =>
  plan === "" ? vscode.l10n.t("Shop Sheet") : vscode.l10n.t("Shop Sheet: {0}", plan);

/** Without a `first` plan it waits for one to follow. */
export function sheetPanel(
  panel: vscode.WebviewPanel,
  first: vscode.Uri | undefined,
  { extensionUri, running, ticks, lastGood, save }: Around,
): SheetPanel {
  let wanted = first;
  let choices = AS_PLANNED;
  let shown: { readonly uri: string; readonly view: SheetView } | undefined;
  let asking = false;
  let askAgain = false;
  let gone = false;
  /** The page has told its choices. What was said to it earlier would be shown as planned. */
  let heard = false;
  /** It may show nothing any more. */
  let tellAll = false;
  /** The plans it has shown. */
  const plans = new Set<string>();

  const send = (message: ToPreview): void => {
    if (!gone) void panel.webview.postMessage(message);
  };
  const marks = pointed(running, send);

  const post = (uri: vscode.Uri, view: SheetView): void => {
    const key = uri.toString();
    const same = shown?.uri === key && !tellAll;
    const news = newsOf(view, same ? shown?.view : undefined);
    if (gone || news === undefined) return;
    shown = { uri: key, view };
    tellAll = false;
    plans.add(key);
    panel.title = sheetTitle(view.title);
    send({ uri: key, view: news, ...(!same && { ticks: ticks.of(key) }) });
    if (!same) marks.turn(uri);
  };

  const showAnswer = (uri: vscode.Uri, answer: SheetAnswer, asked: Choices): void => {
    const key = uri.toString();
    const last = lastGood.get(key);
    const good = last && sameChoices(last.choices, asked) ? last.answer : undefined;
    // Drawings of before are better than none, and worse than the newest that were whole.
    const better = answer.state === "good" && (answer.complete || good === undefined);
    if (better) lastGood.set(key, { answer, choices: asked });
    post(uri, viewOf(answer, better ? answer : good));
  };

  /** Not of a plan that the reader has left before it was shown. */
  const say = (uri: vscode.Uri, view: SheetView): void => {
    if (wanted === uri || shown?.uri === uri.toString()) post(uri, view);
  };

  const ask = async (): Promise<void> => {
    const uri = wanted;
    if (uri === undefined) return send({ uri: "", view: notYet() });
    const key = uri.toString();
    const isShown = shown?.uri === key;
    const asked = choices;
    const before = (): SheetView | undefined => {
      const last = lastGood.get(key)?.answer;
      return (isShown ? shown?.view : undefined) ?? (last && viewOf(last, undefined));
    };
    // The server answers for open documents only, and a restored panel may stand without its text.
    if (!(await opens(uri))) return say(uri, notFollowing(before(), "no file"));
    const request = (soon: boolean): Promise<SheetAnswer | null> =>
      running.client().sendRequest(SheetRequest, { uri: key, soon, language: vscode.env.language, ...asked });
    try {
      const answer = await request(true);
      if (answer !== null) showAnswer(uri, answer, asked);
      else if (isShown || shown === undefined) post(uri, noPlan());
      else if (wanted === uri) wanted = vscode.Uri.parse(shown.uri); // a shop file, say
      if (answer === null || answer.complete || askAgain) return;
      const whole = await request(false);
      if (whole !== null && wanted === uri) showAnswer(uri, whole, asked);
    } catch {
      say(uri, notFollowing(before(), "no server"));
    }
  };

  const refresh = async (): Promise<void> => {
    askAgain = true;
    if (asking) return;
    asking = true;
    while (askAgain && !gone && heard && panel.visible) {
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
  panel.onDidChangeViewState(() => {
    if (!panel.visible) tellAll = true;
  });
  panel.webview.onDidReceiveMessage((message: unknown) =>
    hear(message, {
      ready: (kept) => {
        heard = true;
        choices = kept;
        shown = undefined; // it starts empty each time it comes into view
        void refresh();
      },
      chosen: (now) => {
        choices = now;
        void refresh();
      },
      goTo: (line) => {
        if (shown !== undefined) goTo(vscode.Uri.parse(shown.uri), line).catch(sayNotOpened);
      },
      ticked: (uri, ids) => {
        if (plans.has(uri)) ticks.set(uri, ids).then(undefined, sayNotKept);
      },
      save,
    }),
  );
  const script = panel.webview.asWebviewUri(vscode.Uri.joinPath(extensionUri, "dist", "preview.js"));
  panel.webview.html = sheetPage(script.toString(), newNonce());

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
    moved: (to) => {
      wanted = to;
      shown = undefined; // so that the page is told its ticks
      void refresh();
    },
    point: (uri, line) => {
      if (panel.visible && uri.toString() === shown?.uri) marks.at(uri, line);
    },
    follows: (uri) => uri === wanted?.toString(),
    plan: () => (shown === undefined ? wanted : vscode.Uri.parse(shown.uri)),
    choices: () => choices,
    isActive: () => panel.active,
    reveal: () => panel.reveal(undefined, true),
  };
}

export const opens = (uri: vscode.Uri): Promise<boolean> =>
  Promise.resolve(vscode.workspace.openTextDocument(uri)).then(
    () => true,
    () => false,
  );

function sayNotOpened(reason: unknown): void {
  void vscode.window.showWarningMessage(
    vscode.l10n.t("The plan of this sheet cannot be opened: {0}", String(reason)),
  );
}

/** Of ticks that could not be written. */
export function sayNotKept(reason: unknown): void {
  void vscode.window.showWarningMessage(
    vscode.l10n.t("What was ticked on the shop sheet could not be kept: {0}", String(reason)),
  );
}
