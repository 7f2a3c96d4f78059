/** Runs inside the shop sheet's panel: shows what the extension sends, keeps the place on the page, and what was ticked. */
import { keepTicks, type Ticks } from "../../server/sheet/page/ticks";
import { choicesIn } from "../choices";
import { controls } from "./controls";
import { linkUp } from "./links";
import type { FromPreview, KnownTicks, MarkLine, PreviewState, ShowSheet, ToPreview } from "./messages";
import { sheetOfParts } from "./parts";
import { followClicks, mark } from "./pointing";

declare function acquireVsCodeApi(): {
  postMessage(message: FromPreview): void;
  getState(): PreviewState | undefined;
  setState(state: PreviewState): void;
};

const editor = acquireVsCodeApi();
const notice = byId("notice");
const style = byId("sheet-style");
const page = byId("sheet");

/** The place to go back to once the sheet of that document is shown as far as there, unless the reader goes elsewhere. */
let before = editor.getState();
/** Where the page was scrolled to without the reader. */
let put = 0;
let uri = before?.uri;
const choices = controls(choicesIn(before?.choices), {
  chosen: (now) => {
    keepPlace();
    editor.postMessage({ choices: now });
  },
  save: () => editor.postMessage({ save: true }),
});

let marks: MarkLine = { marked: [] };
let parts = sheetOfParts(dress);
let ticks: Ticks | undefined;

window.addEventListener("message", ({ data }: MessageEvent<ToPreview>) => {
  if ("view" in data) return show(data);
  marks = data;
  mark(page, marks);
});
followClicks(page, (line) => editor.postMessage({ line }));
window.addEventListener("scroll", scrolled, { passive: true });
new ResizeObserver(([above]) => {
  const height = above?.borderBoxSize[0]?.blockSize ?? 0;
  document.documentElement.style.setProperty("--above", `${height}px`);
}).observe(byId("above"));
editor.postMessage({ ready: choices() });

function show({ uri: shown, view, ticks: known }: ShowSheet): void {
  const same = shown === uri;
  uri = shown;
  if (!same) marks = { marked: [] };
  notice.textContent = view.notice;
  notice.hidden = view.notice === "";
  if (view.style !== undefined) style.textContent = view.style;
  if (known !== undefined) begin(shown, known);
  parts.show(view);
  ticks?.again();
  if (!same) window.scrollTo(0, 0);
  else if (before !== undefined) window.scrollTo(0, before.scroll);
  put = window.scrollY;
  if (!same || put > (before?.scroll ?? 0) - 1) before = undefined;
  keepPlace();
}

/** Nothing of another plan's sheet stays. */
function begin(of: string, { ids, keeps }: KnownTicks): void {
  let ticked = ids;
  parts = sheetOfParts(dress);
  page.replaceChildren(parts.element);
  ticks = keepTicks(parts.element, {
    read: () => ticked,
    write: (now) => {
      ticked = now;
      editor.postMessage({ uri: of, ticks: now });
      return keeps;
    },
  });
}

/** Done to what comes before it is compared with what is shown, so that only what changed is touched. */
function dress(part: Element): void {
  linkUp(part);
  mark(part, marks);
}

function scrolled(): void {
  if (Math.abs(window.scrollY - put) > 1) before = undefined;
  keepPlace();
}

function keepPlace(): void {
  const scroll = before?.scroll ?? window.scrollY;
  editor.setState({ ...(uri !== undefined && { uri }), scroll, choices: choices() });
}

function byId(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no #${id}`);
  return found;
}
