/** The status of the layouts: its words, and for which plan it stands. */
import { beforeEach, describe, expect, test, vi } from "vitest";
import type { LanguageStatusItem } from "vscode";
import { layoutStatus } from "../../client/layout-status";
import { layoutText } from "../../client/layout-words";
import type { LayoutsStanding } from "../../client/protocol";
import type { Running } from "../../client/running";

type Heard = (what?: unknown) => void;
const editor = vi.hoisted(() => ({
  active: undefined as string | undefined,
  items: [] as (Partial<LanguageStatusItem> & { gone?: boolean })[],
  turns: (() => {}) as Heard,
  closes: (() => {}) as Heard,
}));
vi.mock("vscode", async () => ({
  l10n: (await import("./spoken")).l10n,
  Disposable: { from: () => ({}) },
  languages: {
    createLanguageStatusItem: () => {
      const item: (typeof editor.items)[number] = {
        dispose: () => {
          item.gone = true;
        },
      };
      editor.items.push(item);
      return item;
    },
  },
  window: {
    get activeTextEditor() {
      return editor.active && { document: { uri: editor.active } };
    },
    onDidChangeActiveTextEditor: (tell: Heard) => {
      editor.turns = tell;
    },
  },
  workspace: {
    onDidCloseTextDocument: (tell: Heard) => {
      editor.closes = tell;
    },
  },
}));

const standing = (told: Partial<LayoutsStanding>): LayoutsStanding => ({
  uri: "a",
  version: 1,
  state: "proven",
  looking: 0,
  priced: true,
  ...told,
});

describe("what it says", () => {
  test.each<[Partial<LayoutsStanding>, string | undefined]>([
    [{ state: "none" }, undefined],
    [{ state: "looking", looking: 2 }, "Layouts: looking for a cheaper way"],
    [
      { state: "looking", looking: 1, over: ["$1.40"] },
      "Layouts: looking for a cheaper way (at most $1.40 over)",
    ],
    [
      { state: "looking", looking: 1, over: [] },
      "Layouts: no cheaper way exists; the boards are being sorted",
    ],
    [{ over: [] }, "Layouts: no cheaper way exists, checked"],
    [{ over: [], priced: false }, "Layouts: no better way exists, checked"],
    [{ state: "bounded", over: ["$1.40"] }, "Layouts: at most $1.40 over the cheapest"],
    [
      { state: "bounded", over: ["$1.40", '24"'], priced: false },
      'Layouts: at most $1.40 and 24" more than the least',
    ],
    [{ state: "bounded" }, "Layouts: the best that was found; a cheaper way may exist"],
  ])("%j", (told, text) => {
    expect(layoutText(standing(told))).toBe(text);
  });
});

describe("it stands", () => {
  const heard: Record<string, Heard> = {};
  const running = {
    onLayouts: (tell: Heard) => {
      heard.layouts = tell;
    },
    onReady: () => {},
    onGone: (tell: Heard) => {
      heard.gone = tell;
    },
  } as unknown as Running;
  const shown = () =>
    editor.items.filter(({ gone }) => !gone).map(({ text, busy, detail }) => [text, busy, detail]);
  beforeEach(() => {
    editor.items.length = 0;
    editor.active = "a";
    layoutStatus(running);
  });

  test("for the plan in the active editor, busy while it is looked at", () => {
    heard.layouts!(standing({ state: "looking", looking: 2 }));
    heard.layouts!(standing({ uri: "b" }));
    expect(shown()).toEqual([["Layouts: looking for a cheaper way", true, "2 stocks are looked at"]]);
    editor.active = "b";
    editor.turns();
    expect(shown()).toEqual([["Layouts: no cheaper way exists, checked", false, ""]]);
    expect(editor.items.length).toBe(1);
  });

  test("not for a plan without layouts, for no plan, or without a server", () => {
    heard.layouts!(standing({ state: "none" }));
    expect(shown()).toEqual([]);
    heard.layouts!(standing({}));
    expect(shown().length).toBe(1);
    editor.active = undefined;
    editor.turns();
    expect(shown()).toEqual([]);
    editor.active = "a";
    editor.turns();
    expect(shown().length).toBe(1);
    heard.gone!();
    expect(shown()).toEqual([]);
  });

  test("no more for a plan that was closed", () => {
    heard.layouts!(standing({}));
    editor.closes({ uri: "a" });
    editor.turns();
    expect(shown()).toEqual([]);
  });
});
