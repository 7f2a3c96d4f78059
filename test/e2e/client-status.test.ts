/** How a plan stands, beside its language: in which words, how grave, busy or not, and what a click does. */
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { LanguageStatusItem } from "vscode";
import { planStatus } from "../../client/plan-status";
import { classesText, planText } from "../../client/plan-words";
import type { Counts, Worked } from "../../client/protocol";
import type { Running } from "../../client/running";
import { speak } from "./spoken";

type Heard = (what?: unknown) => void;
type Item = Partial<LanguageStatusItem> & { id: string; gone?: boolean };
const editor = vi.hoisted(() => ({
  active: undefined as { uri: string; version: number } | undefined,
  items: [] as Item[],
  /** How often a property of an item was set. */
  sets: 0,
  heard: {} as Record<string, Heard>,
}));
vi.mock("vscode", async () => ({
  l10n: (await import("./spoken")).l10n,
  Disposable: { from: () => ({}) },
  LanguageStatusSeverity: { Information: 0, Warning: 1, Error: 2 },
  languages: {
    createLanguageStatusItem: (id: string) => {
      const item: Item = new Proxy<Item>(
        {
          id,
          dispose: () => {
            item.gone = true;
          },
        },
        {
          set: (...what) => {
            editor.sets++;
            return Reflect.set(...what);
          },
        },
      );
      editor.items.push(item);
      return item;
    },
  },
  window: {
    get activeTextEditor() {
      return editor.active && { document: editor.active };
    },
    onDidChangeActiveTextEditor: (tell: Heard) => {
      editor.heard.turns = tell;
    },
  },
  workspace: {
    onDidChangeTextDocument: (tell: Heard) => {
      editor.heard.changes = tell;
    },
    onDidCloseTextDocument: (tell: Heard) => {
      editor.heard.closes = tell;
    },
  },
}));

const NONE: Counts = { errors: 0, hazards: 0, warnings: 0, hints: 0, unchecked: 0 };
const worked = (counts: Partial<Counts>, uri = "a", version = 1): Worked => ({
  uri,
  version,
  counts: { ...NONE, ...counts },
});

afterEach(() => speak("en"));

test.each<[Partial<Counts>, string, string, string, string]>([
  [{}, "No problems found", "This approves nothing.", "Aucun problème trouvé", "Cela n’approuve rien."],
  [
    { unchecked: 3 },
    "No problems found; 3 things not checked",
    "This approves nothing.",
    "Aucun problème trouvé\u00a0; 3 points non vérifiés",
    "Cela n’approuve rien.",
  ],
  [
    { hints: 1, unchecked: 1 },
    "1 problem; 1 thing not checked",
    "1 hint",
    "1 problème\u00a0; 1 point non vérifié",
    "1 conseil",
  ],
  [
    { errors: 1, hazards: 2, warnings: 3, hints: 4 },
    "10 problems",
    "1 error, 2 hazards, 3 warnings, 4 hints",
    "10 problèmes",
    "1 erreur, 2 dangers, 3 avertissements, 4 conseils",
  ],
  [
    { errors: 2, hazards: 1, warnings: 1 },
    "4 problems",
    "2 errors, 1 hazard, 1 warning",
    "4 problèmes",
    "2 erreurs, 1 danger, 1 avertissement",
  ],
])("%j in words, of which none approves", (counts, text, detail, texte, details) => {
  const { counts: all } = worked(counts);
  expect([planText(all), classesText(all)]).toEqual([text, detail]);
  expect(`${text} ${detail}`).not.toMatch(/\bok\b|\bsafe|\bpass|\bgood\b|\bfine\b/i);
  speak("fr");
  expect([planText(all), classesText(all)]).toEqual([texte, details]);
});

describe("the status", () => {
  const { heard } = editor;
  const on = (name: string) => (tell: Heard) => {
    heard[name] = tell;
  };
  const running = {
    onStarting: on("starting"),
    onReady: on("ready"),
    onGone: on("gone"),
    onWorked: on("worked"),
  } as unknown as Running;
  const shown = () =>
    editor.items
      .filter(({ gone }) => !gone)
      .map(({ text, busy, severity, command }) => [text, busy ?? false, severity ?? 0, command?.command]);
  const PROBLEMS = "workbench.panel.markers.view.focus";
  beforeEach(() => {
    vi.useFakeTimers();
    editor.items.length = 0;
    editor.active = { uri: "a", version: 1 };
    planStatus(running);
    return () => vi.useRealTimers();
  });

  test("is busy until the server has started and looked at the plan", () => {
    const starting = ["Starting: plans are not checked yet", true, 0, PROBLEMS];
    expect(shown()).toEqual([starting]);
    heard.ready!();
    expect(shown()).toEqual([["Looking at this plan", true, 0, PROBLEMS]]);
    heard.worked!(worked({}));
    expect(shown()).toEqual([["No problems found", false, 0, PROBLEMS]]);
    heard.starting!();
    expect(shown()).toEqual([starting]);
  });

  test("is as grave as the worst class, and a second one leads to what was not checked", () => {
    heard.ready!();
    for (const [counts, severity] of [
      [{ hints: 2 }, 0],
      [{ warnings: 1, hints: 2 }, 1],
      [{ hazards: 1 }, 2],
      [{ errors: 1, warnings: 1 }, 2],
    ] as const) {
      heard.worked!(worked(counts));
      expect(shown().map(([, , grave]) => grave)).toEqual([severity]);
    }
    heard.worked!(worked({ unchecked: 2 }));
    expect(shown()).toEqual([
      ["No problems found; 2 things not checked", false, 0, PROBLEMS],
      ["2 things not checked", false, 0, "sawbuck.showNotChecked"],
    ]);
    heard.worked!(worked({}));
    expect(shown()).toHaveLength(1);
  });

  test("is that of the plan in the active editor", () => {
    heard.ready!();
    heard.worked!(worked({ errors: 1 }));
    heard.worked!(worked({ errors: 2, unchecked: 1 }, "b"));
    expect(shown().map(([text]) => text)).toEqual(["1 problem"]);
    editor.active = { uri: "b", version: 1 };
    heard.turns!();
    expect(shown().map(([text]) => text)).toEqual(["2 problems; 1 thing not checked", "1 thing not checked"]);
    heard.closes!({ uri: "b" });
    heard.turns!();
    expect(shown().map(([text]) => text)).toEqual(["Looking at this plan"]);
    editor.active = undefined;
    heard.turns!();
    expect(shown()).toHaveLength(1);
  });

  test("keeps what it says while a key is answered, and is busy only when that takes long", () => {
    heard.ready!();
    heard.worked!(worked({ errors: 1 }));
    editor.active!.version = 2;
    heard.changes!({ document: editor.active });
    vi.advanceTimersByTime(300);
    expect(shown()).toEqual([["1 problem", false, 2, PROBLEMS]]);
    vi.advanceTimersByTime(300);
    expect(shown()).toEqual([["1 problem", true, 2, PROBLEMS]]);
    const { sets } = editor;
    editor.active!.version = 3;
    heard.changes!({ document: editor.active });
    expect(editor.sets).toBe(sets);
    heard.worked!(worked({ errors: 1 }, "a", 3));
    vi.advanceTimersByTime(1000);
    expect(shown()).toEqual([["1 problem", false, 2, PROBLEMS]]);
  });

  test("says that nothing is checked when the server is gone, and starts it again", () => {
    heard.ready!();
    heard.worked!(worked({ unchecked: 2 }));
    heard.gone!();
    expect(shown()).toEqual([["Not running: plans are not checked", false, 2, "sawbuck.restartServer"]]);
  });

  test("is in French where the editor is", () => {
    speak("fr");
    heard.gone!();
    expect(shown().map(([text]) => text)).toEqual(["À l’arrêt\u00a0: les plans ne sont pas vérifiés"]);
  });
});
