/** Runs inside the shop sheet's panel: shows what the extension sends, and keeps the place on the page. */
import { type GoTo, type MarkPieces, type PreviewState, READY, type ToPreview } from "./messages";
import { patch } from "./patch";
import { dress, followClicks } from "./pointing";

declare function acquireVsCodeApi(): {
  postMessage(message: string | GoTo): void;
  getState(): PreviewState | undefined;
  setState(state: PreviewState): void;
};

const editor = acquireVsCodeApi();
const notice = byId("notice");
const style = byId("sheet-style");
const sheet = byId("sheet");

/** The place to go back to once the sheet of that document is shown. */
let before = editor.getState();
let uri = before?.uri;

/** The pieces of the sheet shown that are marked, by their identities. */
let marked: ReadonlySet<string> = new Set();

window.addEventListener("message", ({ data }: MessageEvent<ToPreview | MarkPieces>) => {
  if ("view" in data) return show(data);
  marked = new Set(data.marked);
  dress(sheet, marked);
});
followClicks(sheet, (line) => editor.postMessage({ line }));
window.addEventListener("scroll", keepPlace, { passive: true });
editor.postMessage(READY);

function show({ uri: shown, view }: ToPreview): void {
  const same = shown === uri;
  uri = shown;
  if (!same) marked = new Set();
  notice.textContent = view.notice;
  notice.hidden = view.notice === "";
  if (style.textContent !== view.style) style.textContent = view.style;
  patchSheet(view.body);
  if (!same) window.scrollTo(0, 0);
  else if (before !== undefined) window.scrollTo(0, before.scroll);
  before = undefined;
  keepPlace();
}

function patchSheet(body: string): void {
  // Parsed in a document of its own, where nothing loads or runs.
  const parsed = new DOMParser().parseFromString(`<main id="sheet">${body}</main>`, "text/html");
  const wanted = parsed.getElementById("sheet");
  if (wanted !== null) patch(sheet, document.adoptNode(wanted));
  dress(sheet, marked);
}

function keepPlace(): void {
  if (uri !== undefined && before === undefined) editor.setState({ uri, scroll: window.scrollY });
}

function byId(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no #${id}`);
  return found;
}
