/** Measures what the architecture gives budgets for, in a fresh process, and prints each figure beside its budget. */
import { statSync } from "node:fs";
import { parse } from "../../grammar/parser";
import { completionsAt } from "../../server/features/completion";
import { hoverAt } from "../../server/features/hover";
import { PAUSE_MS } from "../../server/lsp/layouts/looking";
import type { Reader } from "../../server/plan";
import { evaluate, sheetOf, writeSheet } from "../../server/service";
import { planOf } from "./plan";
import { drawingFigures, previewFigures } from "./preview";
import { Server } from "./server";
import { solidsFigures } from "./solids";
import { type Figure, inMs, print, timed } from "./stats";

const nothing: Reader = (path) => ({ file: path, refused: "there is no such file" });
const figures: Figure[] = [];
const add = (what: string, budget: string, value: string) => figures.push({ what, budget, value });

/** The plan as it stands after the i-th key: one length that was never there before. */
const edited = (text: string, i: number): string =>
  text.replace('= 27-1/2"', `= ${20 + (i % 10)}.${1000 + i}"`);

/** The same plan with text, names, measures and joints alone: nothing is placed, and no lengths are sold to lay out. */
const flat = (text: string): string =>
  text
    .replace(/^(stock .*?), sold .*$/gm, "$1")
    .replace(/^place .*$/gm, "# not placed")
    .replace(/^part (\S+) of/gm, "part $1 4 of")
    .replace(/overall (width|depth) of leg-\d+/g, '30"');

async function main(): Promise<void> {
  const short = planOf(300);
  const long = planOf(2000);
  add("read a plan, 300 lines", "", inMs(timed(60, (i) => parse(edited(short, i)))));
  for (const [text, lines, runs, budgets] of [
    [short, "300", 60, ["8 ms", "30 ms"]],
    [long, "2,000", 30, ["60 ms", "150 ms"]],
  ] as const) {
    const [most, all] = [flat(text), text].map((plan) =>
      timed(runs, (i) => evaluate("p", edited(plan, i), nothing), 60),
    );
    add(`keystroke to problems: text, names, measures, joints, ${lines} lines`, budgets[0], inMs(most!));
    add(`keystroke to problems: everything, ${lines} lines`, budgets[1], inMs(all!));
  }
  const evaluated = evaluate("p", short, nothing);
  const at = short.indexOf("leg-7 of");
  add("hover, 300 lines", "5 ms", inMs(timed(60, () => hoverAt(evaluated, at))));
  add(
    "completion, 300 lines",
    "5 ms",
    inMs(timed(60, () => completionsAt(evaluated, short.indexOf("- thickness", at)))),
  );
  add("shop sheet as HTML, 300 lines", "", inMs(timed(20, () => writeSheet(sheetOf(evaluated), "html"))));
  figures.push(...solidsFigures());
  figures.push(...drawingFigures());
  await overStdio(short, long);
  figures.push(...(await previewFigures()));
  add("extension package", "3 MB", `${(statSync("dist/sawbuck.vsix").size / 1e6).toFixed(2)} MB`);
  print(figures);
}

const URI = "file:///bench.sawbuck";

async function overStdio(short: string, long: string): Promise<void> {
  const starts: number[] = [];
  for (let i = 0; i < 7; i++) {
    const start = performance.now();
    const server = new Server();
    await server.open(URI, short);
    await server.request("textDocument/diagnostic", { textDocument: { uri: URI } });
    starts.push(performance.now() - start);
    server.close();
  }
  add("start to first problems, bundled server", "200 ms", inMs(starts));
  for (const [text, lines, runs, budget] of [
    [short, "300", 60, "30 ms"],
    [long, "2,000", 30, "150 ms"],
  ] as const) {
    const server = new Server();
    await server.open(URI, text);
    const times: number[] = [];
    for (let i = 0; i < runs + 10; i++) times.push(await edit(server, edited(text, i), i + 2));
    add(`keystroke to problems over stdio, everything, ${lines} lines`, budget, inMs(times.slice(10)));
    server.close();
  }
  await typedFor(600, short);
  await whileLayoutsRun(short);
  await memory(short);
}

/** Much of a server's first minute goes into compiling what is used often: the last 100 of so many keys. */
async function typedFor(keys: number, text: string): Promise<void> {
  const server = new Server();
  await server.open(URI, text);
  const times: number[] = [];
  for (let i = 0; i < keys; i++) times.push(await edit(server, edited(text, i), i + 2));
  const what = `keystroke to problems over stdio, everything, 300 lines, after ${keys - 100} keys`;
  add(what, "30 ms", inMs(times.slice(-100)));
  server.close();
}

/** The same plan after a key that leaves what is cut as it is. */
const editedElsewhere = (text: string, i: number): string =>
  text.replace("must height-0 at most 48", `must height-0 at most ${50 + (i % 10)}.${1000 + i}`);

/** Typed so slowly that a search has begun again before each key, and as slowly where there is nothing left to look for. */
async function whileLayoutsRun(text: string): Promise<void> {
  for (const [edits, how] of [
    [editedElsewhere, "after pauses"],
    [edited, "after pauses, while layouts run"],
  ] as const) {
    let looking = Number.NaN;
    const server = new Server((method, params) => {
      if (method === "sawbuck/layouts") looking = (params as { looking: number }).looking;
    });
    await server.open(URI, text);
    await server.request("textDocument/diagnostic", { textDocument: { uri: URI } });
    while (looking !== 0) await pause(PAUSE_MS);
    const times: number[] = [];
    let busy = 0;
    for (let i = 0; i < 70; i++) {
      await pause(PAUSE_MS * 1.6);
      if (looking > 0 && i >= 10) busy++;
      times.push(await edit(server, edits(text, i), i + 2));
    }
    const value = `${inMs(times.slice(10))}, something looked for before ${busy} of 60 keys`;
    add(`keystroke to problems over stdio, everything, 300 lines, ${how}`, "30 ms", value);
    server.close();
  }
}

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** Milliseconds from sending a whole changed text to having its problems. */
async function edit(server: Server, text: string, version: number): Promise<number> {
  const start = performance.now();
  server.notify("textDocument/didChange", {
    textDocument: { uri: URI, version },
    contentChanges: [{ text }],
  });
  await server.request("textDocument/diagnostic", { textDocument: { uri: URI } });
  return performance.now() - start;
}

async function memory(text: string): Promise<void> {
  const server = new Server();
  await server.open(URI, text);
  const after: string[] = [];
  for (let i = 1; i <= 5000; i++) {
    await edit(server, edited(text, i), i + 1);
    if (i === 1000 || i === 3000 || i === 5000) after.push(`${server.memory().toFixed(0)} MB after ${i}`);
  }
  add("memory after 5,000 edits", "under 150 MB and flat", after.join(", "));
  server.close();
}

void main();
