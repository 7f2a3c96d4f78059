/** Runs inside the panel of the measuring-up slip: rows to fill in, and under them what comes of it. */
import { sheetOfParts } from "../preview/parts";
import type { SlipRow } from "../protocol";
import type { FromSlip, SlipState, ToSlip } from "./messages";

declare function acquireVsCodeApi(): {
  postMessage(message: FromSlip): void;
  getState(): SlipState | undefined;
  setState(state: SlipState): void;
};

const editor = acquireVsCodeApi();
const notice = byId("notice");
const style = byId("sheet-style");
const form = byId("slip");
const title = byId("title");
const how = byId("key");
const rows = byId("rows");
const write = byId("write") as HTMLButtonElement;
const parts = sheetOfParts(() => {});
byId("sheet").append(parts.element);

let uri = editor.getState()?.uri ?? "";
let measured: Record<string, string> = { ...editor.getState()?.measured };

window.addEventListener("message", ({ data }: MessageEvent<ToSlip>) => {
  if ("slip" in data) {
    if (data.uri !== uri) turnTo(data.uri);
    show(data.slip);
  } else if ("written" in data) turnTo(uri);
  else {
    notice.textContent = data.notice;
    notice.hidden = data.notice === "";
  }
});
form.addEventListener("submit", (event) => {
  event.preventDefault();
  editor.postMessage({ write: state() });
});
editor.postMessage({ ready: state() });

/** Nothing is filled in of another plan, or of one into which it was written. */
function turnTo(plan: string): void {
  uri = plan;
  measured = {};
  for (const input of rows.querySelectorAll("input")) input.value = "";
  keep();
}

function show({ title: of, key, rows: all, style: css, language, parts: sections }: Slip): void {
  title.textContent = of;
  how.textContent = key;
  form.hidden = all.length === 0;
  if (style.textContent !== css) style.textContent = css;
  const there = new Map([...rows.children].map((row) => [row.getAttribute("data-what"), row]));
  const next = all.map((row) => filled(there.get(row.what) ?? rowOf(row.what), row));
  // Whoever types keeps the cursor: rows that stay are not moved.
  if (next.length !== rows.children.length || next.some((row, i) => rows.children[i] !== row))
    rows.replaceChildren(...next);
  write.disabled = !all.some(({ what, wrong }) => wrong === undefined && (measured[what] ?? "") !== "");
  parts.show({ title: of, language, parts: sections, notice: "" });
}

type Slip = Extract<ToSlip, { readonly slip: unknown }>["slip"];

function rowOf(what: string): Element {
  const row = document.createElement("tr");
  row.setAttribute("data-what", what);
  for (const name of ["number", "label", "now", "bounds", "measured"]) {
    const cell = row.appendChild(document.createElement(name === "label" ? "th" : "td"));
    cell.className = name;
  }
  const input = document.createElement("input");
  input.type = "text";
  input.autocomplete = "off";
  input.spellcheck = false;
  input.value = measured[what] ?? "";
  input.addEventListener("input", () => typed(what, input.value));
  const wrong = document.createElement("span");
  wrong.className = "wrong";
  wrong.setAttribute("role", "status");
  cellOf(row, "measured").append(input, wrong);
  return row;
}

function filled(row: Element, { number, label, now, bounds, wrong }: SlipRow): Element {
  const words: [string, string][] = [
    ["number", String(number)],
    ["label", label],
    ["now", now],
    ["bounds", bounds],
  ];
  for (const [name, text] of words) cellOf(row, name).textContent = text;
  const input = row.querySelector("input");
  input?.setAttribute("aria-label", [label, bounds].filter((text) => text !== "").join(", "));
  input?.setAttribute("aria-invalid", String(wrong !== undefined));
  const said = row.querySelector(".wrong");
  if (said !== null) said.textContent = wrong ?? "";
  return row;
}

function typed(what: string, value: string): void {
  measured[what] = value;
  keep();
}

function keep(): void {
  editor.setState(state());
  editor.postMessage(state());
}

function state(): SlipState {
  return { uri, measured: { ...measured } };
}

function cellOf(row: Element, name: string): Element {
  const cell = row.querySelector(`.${name}`);
  if (cell === null) throw new Error(`the row has no ${name}`);
  return cell;
}

function byId(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no #${id}`);
  return found;
}
