/** Better layouts in the editor: first answers in the keystroke, the proof after it, and what is shown in the end. */
import { afterEach, describe, expect, test } from "vitest";
import type { Diagnostic } from "vscode-languageserver/node";
import { diagnosticsOf } from "../../server/features/diagnostics";
import { evaluatedBest } from "../../server/lsp/layouts/at-once";
import { inlineHost, type LayoutHost } from "../../server/lsp/layouts/host";
import { keyOf } from "../../server/lsp/layouts/kept";
import { PAUSE_MS } from "../../server/lsp/layouts/looking";
import { planText } from "../bench/layout/plan-text";
import { type Editor, editor, type Setup, uriOf, wait } from "./editor";

const PLAN = "/yard/fence.sawbuck";
const PULL = { textDocument: { diagnostic: {} }, workspace: { diagnostics: { refreshSupport: true } } };
/** Its first answer costs more than need be, and the budget tells what it costs. */
const DEAR = planText([97, 169]);
/** Proven at once. */
const EASY = `plan Rails
  budget $1
stock 1x4, sold 6' $4.00, 8' $5.00
part rail 4 of 1x4, length 30"
`;

let opened: Editor[] = [];
async function start(setup: Setup = {}): Promise<Editor> {
  const e = await editor({ layoutHost: inlineHost(), ...setup });
  opened.push(e);
  return e;
}
afterEach(() => {
  for (const e of opened) e.end();
  opened = [];
});

/** A host that notes what it is asked for. With `hold` it does nothing of it before `letGo`. */
function watched({ hold = false } = {}) {
  const inner = inlineHost();
  const [started, cancelled]: [string[], string[]] = [[], []];
  let held = hold;
  let begin = (): void => {};
  const start: LayoutHost["start"] = (job, effort, tell) => {
    const key = keyOf(job.kind, job.job);
    started.push(key);
    let cancel = (): void => {};
    begin = () => {
      cancel = inner.start(job, effort, tell);
    };
    if (!held) begin();
    return () => {
      cancelled.push(key);
      begin = () => {};
      cancel();
    };
  };
  const letGo = (): void => {
    held = false;
    begin();
  };
  const host: LayoutHost = { ...inner, start };
  return { host, started, cancelled, letGo };
}

const said = (list: readonly Diagnostic[] | undefined) =>
  list?.map(({ code, message, range }) => ({ code, message, line: range.start.line }));

/** The problems of a text with the best layouts there are. */
function best(text: string) {
  const evaluated = evaluatedBest(PLAN, text, (file) => ({ file, refused: "there is no such file" }));
  return diagnosticsOf(evaluated).map(({ code, message, range }) => ({
    code,
    message,
    line: text.slice(0, range.start).split("\n").length - 1,
  }));
}

const quiet = (e: Editor, version: number): Promise<void> =>
  e.until(() => e.layouts.some((told) => told.version === version && told.state !== "looking"));

describe("a plan whose first answer is not the cheapest", () => {
  test("is looked at until it is proven, and its problems are then those of the best layouts", async () => {
    const e = await start();
    await e.open(PLAN, DEAR);
    await e.until(() => e.pushed(PLAN) !== undefined);
    const first = said(e.pushed(PLAN));
    await quiet(e, 1);
    expect(e.layouts[0]).toEqual({
      uri: uriOf(PLAN),
      version: 1,
      state: "looking",
      looking: 2,
      priced: true,
    });
    expect(e.layouts.at(-1)).toEqual({
      uri: uriOf(PLAN),
      version: 1,
      state: "proven",
      looking: 0,
      priced: true,
      over: [],
    });
    expect(said(e.pushed(PLAN))).toEqual(best(DEAR));
    expect(said(e.pushed(PLAN))).not.toEqual(first);
    expect(e.worked.length).toBeGreaterThan(1);
    expect(e.logged).toEqual([]);
  });

  test("is told of to an editor that asks for problems, by asking it to ask again", async () => {
    const e = await start({ capabilities: PULL });
    await e.open(PLAN, DEAR);
    const first = said(await e.pull(PLAN));
    await quiet(e, 1);
    await e.until(() => e.refreshes() > 0);
    expect(said(await e.pull(PLAN))).toEqual(best(DEAR));
    expect(said(await e.pull(PLAN))).not.toEqual(first);
  });

  test("after an edit that changes no length shows its proven layout in the keystroke", async () => {
    const e = await start();
    await e.open(PLAN, DEAR);
    await quiet(e, 1);
    const proven = said(e.pushed(PLAN));
    await e.edit(PLAN, DEAR.length, DEAR.length, "# as it was\n");
    await e.until(() => e.pushes.at(-1)?.version === 2);
    expect(said(e.pushed(PLAN))).toEqual(proven);
    await e.until(() => e.layouts.at(-1)?.version === 2);
    expect(e.layouts.filter(({ version }) => version === 2)).toMatchObject([{ state: "proven" }]);
  });
});

describe("typing", () => {
  test("that does not pause begins no search", async () => {
    const { host, started } = watched();
    const e = await start({ layoutHost: host });
    await e.open(PLAN, EASY);
    const at = EASY.indexOf('30"');
    for (let i = 0; i < 8; i++) {
      await e.edit(PLAN, at, at + 2, `${31 + i}`);
      await wait(PAUSE_MS / 4);
    }
    expect(started).toEqual([]);
    await quiet(e, 9);
    expect(started.length).toBe(1);
  });

  test("leaves off what the text asks no more, and goes on with what it still asks", async () => {
    const { host, started, cancelled, letGo } = watched({ hold: true });
    const e = await start({ layoutHost: host });
    await e.open(PLAN, DEAR);
    await e.until(() => started.length === 1);
    await e.edit(PLAN, DEAR.length, DEAR.length, "# a remark\n");
    await wait(PAUSE_MS * 2);
    expect(cancelled).toEqual([]);
    const at = DEAR.indexOf("length ") + "length ".length;
    await e.edit(PLAN, at, at + 1, "1");
    await e.until(() => cancelled.length === 1);
    expect(cancelled).toEqual(started);
    letGo();
    await quiet(e, 3);
    expect(new Set(started).size).toBe(3);
    expect(said(e.pushed(PLAN))).toEqual(best(e.textOf(PLAN)));
  });

  test("that closes the plan leaves off everything", async () => {
    const { host, started, cancelled } = watched({ hold: true });
    const e = await start({ layoutHost: host });
    await e.open(PLAN, DEAR);
    await e.until(() => started.length === 1);
    await e.close(PLAN);
    await e.until(() => cancelled.length === 1);
  });
});

test("a plan with nothing to lay out says so, and a server without a host says nothing", async () => {
  const e = await start();
  await e.open(PLAN, "plan Nothing\n");
  await quiet(e, 1);
  expect(e.layouts).toMatchObject([{ state: "none", looking: 0 }]);
  const without = await editor();
  opened.push(without);
  await without.open(PLAN, EASY);
  await wait(PAUSE_MS * 3);
  expect(without.layouts).toEqual([]);
});

test("two plans that ask the same are looked at once", async () => {
  const { host, started } = watched();
  const e = await start({ layoutHost: host });
  await e.open(PLAN, EASY);
  await e.open("/yard/other.sawbuck", `# another\n${EASY}`);
  await e.until(() => e.layouts.filter(({ state }) => state === "proven").length === 2);
  expect(started.length).toBe(1);
});
