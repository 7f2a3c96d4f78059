/** “Compare With Last Commit” on the editor's side: when it asks, and what it says where there is no answer. */
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { Uri } from "vscode";
import { PAUSE } from "../../client/beside";
import { comparing } from "../../client/comparing";
import type { ShowSheet } from "../../client/preview/messages";
import type { Compared } from "../../client/protocol";
import { address, besidePanel, editor } from "./beside-editor";
import { speak } from "./spoken";

vi.mock("vscode", async () => (await import("./beside-editor")).vscode);
vi.mock("vscode-languageclient", () => ({ State: { Stopped: 1, Running: 2 } }));
vi.mock("../../client/protocol", () => ({ CompareRequest: "compare" }));

const [A, B] = [address("/a.sawbuck"), address("/b.sawbuck")];
const answer = (title: string): Compared => ({
  title,
  language: "en",
  parts: [{ name: "head", html: `<h1>${title}</h1>` }],
  style: "",
  version: 1,
});

const rest = (): Promise<unknown> => vi.advanceTimersByTimeAsync(PAUSE + 1);

/** A window in which `server` answers, or throws. */
function begin(server: (uri: string) => Compared | null) {
  const window = besidePanel<ShowSheet, { uri: string }>(
    comparing,
    "sawbuck.compareWithLastCommit",
    (_, { uri }) => server(uri),
  );
  return {
    ...window,
    plans: () => window.asked.map(([, { uri }]) => uri),
    compare: async (plan: Uri) => {
      window.run(plan);
      window.page({ ready: {} });
      await rest();
    },
  };
}

beforeEach(() => {
  vi.useFakeTimers();
  editor.trusted = true;
  editor.said.length = 0;
  return () => vi.useRealTimers();
});
afterEach(() => speak("en"));

describe("the comparison", () => {
  test("is asked for when the plan has been worked out and nobody types, and of no other plan", async () => {
    const one = begin((uri) => answer(`What changed: ${uri}`));
    await one.compare(A);
    expect([one.asked.length > 0, one.panel.title]).toEqual([true, "What changed: /a.sawbuck"]);
    const before = one.asked.length;
    one.worked(A);
    one.worked(A);
    one.worked(B);
    await vi.advanceTimersByTimeAsync(PAUSE - 1);
    expect(one.asked.length).toBe(before);
    await rest();
    expect(one.asked.length).toBe(before + 1);
    expect(one.told).toHaveLength(1); // the page shows that already
    one.run(B);
    await rest();
    expect(one.panel.title).toBe("What changed: /b.sawbuck");
    expect(one.told.at(-1)).toMatchObject({ uri: "/b.sawbuck", ticks: { ids: [] } });
    one.close();
    const last = one.asked.length;
    one.worked(B);
    await rest();
    expect([one.asked.length, one.plans().at(-1)]).toEqual([last, "/b.sawbuck"]);
  });

  test("says what the server says, and what stood there stays when the server is gone", async () => {
    let works = true;
    const one = begin(() => {
      if (!works) throw new Error("gone");
      return answer("What changed");
    });
    await one.compare(A);
    works = false;
    one.worked(A);
    await rest();
    expect(one.told.at(-1)?.view).toMatchObject({
      notice: expect.stringContaining("Restart Language Server"),
      parts: [{ name: "head" }],
    });
    const refused = begin(() => ({ refused: "There is nothing to compare with." }));
    await refused.compare(A);
    expect(refused.told.at(-1)?.view).toMatchObject({
      notice: "There is nothing to compare with.",
      parts: [],
    });
  });

  test("asks no git in a folder that is not trusted", async () => {
    editor.trusted = false;
    const one = begin(() => answer("What changed"));
    await one.compare(A);
    expect([one.asked, one.told.at(-1)?.view.notice]).toMatchInlineSnapshot(`
      [
        [],
        "There is nothing to compare with: git is not asked in a folder that you do not trust. “Workspaces: Manage Workspace Trust” changes that.",
      ]
    `);
  });

  test("needs a plan", () => {
    begin(() => null).run();
    speak("fr");
    begin(() => null).run();
    expect(editor.said).toMatchInlineSnapshot(`
      [
        "Open a plan (a .sawbuck file) first, then compare it.",
        "Ouvrez d’abord un plan (un fichier .sawbuck), puis comparez-le.",
      ]
    `);
  });
});
