/** The measuring-up slip: what to measure at another place, filled in beside the plan, and written into it on request alone. */
import * as vscode from "vscode";
import { type Beside, beside, type Talk } from "./beside";
import { type Measured, SlipRequest, SlipWriteRequest } from "./protocol";
import type { Running } from "./running";
import { pageAround } from "./sheet-page";
import { opens } from "./sheet-panel";
import { notFollowing } from "./sheet-view";
import type { SlipState, ToSlip } from "./slip/messages";

export function measuring(running: Running, extensionUri: vscode.Uri): vscode.Disposable {
  const title = vscode.l10n.t("Measuring-Up Slip");
  return beside(running, extensionUri, {
    command: "sawbuck.measureUp",
    viewType: "sawbuck.slip",
    title,
    needsPlan: vscode.l10n.t("Open a plan (a .sawbuck file) first, then its measuring-up slip."),
    script: "slip.js",
    page: (script, nonce) => pageAround(script, nonce, title, { form: form() }),
    begin: (panel) => talkOf(panel, running),
  });
}

/** The rows come with the plan; all that is fixed stands here. */
const form = (): string => `<form id="slip" hidden>
<h1 id="title"></h1>
<p id="key"></p>
<table>
<thead><tr><th class="number">${vscode.l10n.t("No.")}</th><th>${vscode.l10n.t("What")}</th><th class="now">${vscode.l10n.t("In the plan")}</th><th>${vscode.l10n.t("Bounds")}</th><th>${vscode.l10n.t("Measured here")}</th></tr></thead>
<tbody id="rows"></tbody>
</table>
<button id="write" type="submit" disabled>${vscode.l10n.t("Write Into the Plan")}</button>
</form>
`;

function talkOf({ webview, plan, now }: Beside, running: Running): Talk {
  let typed: SlipState = { uri: "", measured: {} };
  let waiting: ReturnType<typeof setTimeout> | undefined;

  const send = (message: ToSlip): void => void webview.webview.postMessage(message);
  const asked = (uri: vscode.Uri) => {
    const key = uri.toString();
    return {
      uri: key,
      language: vscode.env.language,
      measured: typed.uri === key ? typed.measured : {},
    };
  };

  const write = async (state: SlipState): Promise<void> => {
    typed = state;
    const uri = plan();
    if (uri === undefined || uri.toString() !== state.uri) return;
    try {
      const answer = await running.client().sendRequest(SlipWriteRequest, asked(uri));
      if (answer === null || answer.written === 0) return sayNotWritten();
      typed = { uri: state.uri, measured: {} };
      send({ written: true });
      void vscode.window.showInformationMessage(
        answer.written === 1
          ? vscode.l10n.t("1 measure is written into the plan. Undo takes it back.")
          : vscode.l10n.t("{0} measures are written into the plan. Undo takes them back.", answer.written),
      );
    } catch {
      sayNotWritten();
    }
  };

  return {
    ask: async (uri) => {
      const say = (notice: string): void => {
        if (uri === plan()) send({ notice });
      };
      if (!(await opens(uri))) return say(notFollowing(undefined, "no file").notice);
      try {
        const slip = await running.client().sendRequest(SlipRequest, asked(uri));
        if (slip === null || uri !== plan()) return; // a newer text is on its way, and asks again
        webview.title = slip.title;
        send({ uri: uri.toString(), slip });
        say("");
      } catch {
        say(notFollowing(undefined, "no server").notice);
      }
    },
    hear: (message) => {
      const said = message as Partial<Record<"ready" | "write", unknown>>;
      const toWrite = stateIn(said.write);
      if (toWrite) return void write(toWrite);
      const state = stateIn(said.ready ?? message);
      if (state === undefined) return;
      typed = state;
      clearTimeout(waiting);
      waiting = setTimeout(now, TYPING);
    },
  };
}

/** So long after a key in the slip, in ms, nothing is asked for. */
const TYPING = 250;

/** What the page says was typed. */
function stateIn(message: unknown): SlipState | undefined {
  if (typeof message !== "object" || message === null) return undefined;
  const { uri, measured } = message as Partial<Record<keyof SlipState, unknown>>;
  if (typeof uri !== "string" || typeof measured !== "object" || measured === null) return undefined;
  const texts = Object.entries(measured).filter(([, value]) => typeof value === "string");
  return { uri, measured: Object.fromEntries(texts) as Measured };
}

function sayNotWritten(): void {
  void vscode.window.showWarningMessage(
    vscode.l10n.t("Nothing was written into the plan: it has changed meanwhile, or it cannot be changed."),
  );
}
