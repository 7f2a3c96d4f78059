/** The measuring-up slip on the editor's side: what it asks, and what is written. */
import { beforeEach, describe, expect, test, vi } from "vitest";
import { measuring } from "../../client/measuring";
import type { OfSlip, SlipAnswer } from "../../client/protocol";
import type { ToSlip } from "../../client/slip/messages";
import { address, besidePanel, editor } from "./beside-editor";

vi.mock("vscode", async () => (await import("./beside-editor")).vscode);
vi.mock("vscode-languageclient", () => ({ State: { Stopped: 1, Running: 2 } }));
vi.mock("../../client/protocol", () => ({ SlipRequest: "slip", SlipWriteRequest: "write" }));

const SLIP: SlipAnswer = {
  title: "Measuring up",
  key: "",
  language: "en",
  rows: [],
  parts: [],
  style: "",
  version: 1,
};

/** A window with the slip of plan A; so many rows are written when that is asked. */
function begin(written: number | null) {
  const window = besidePanel<ToSlip, OfSlip>(measuring, "sawbuck.measureUp", (what) =>
    what === "slip" ? SLIP : written === null ? null : { written },
  );
  window.run(address("/a.sawbuck"));
  const page = async (message: unknown): Promise<void> => {
    window.page(message);
    await vi.advanceTimersByTimeAsync(1000);
  };
  return { ...window, page };
}

beforeEach(() => {
  vi.useFakeTimers();
  editor.said.length = 0;
  return () => vi.useRealTimers();
});

describe("the slip", () => {
  test("is asked for with what was typed for this very plan, once whoever types rests", async () => {
    const { told, asked, page } = begin(0);
    await page({ ready: { uri: "/other.sawbuck", measured: { tall: "9" } } });
    expect(asked.at(-1)).toEqual(["slip", { uri: "/a.sawbuck", language: "en", measured: {} }]);
    expect(told).toContainEqual({ uri: "/a.sawbuck", slip: SLIP });
    const before = asked.length;
    await page({ uri: "/a.sawbuck", measured: { tall: "28", odd: 3 } });
    expect(asked.slice(before)).toEqual([
      ["slip", { uri: "/a.sawbuck", language: "en", measured: { tall: "28" } }],
    ]);
    await page("nonsense");
    await page({ measured: null, uri: 3 });
    expect(asked).toHaveLength(before + 1);
  });

  test("is written into the plan on request, which is told; then its rows are empty", async () => {
    const { told, asked, page } = begin(2);
    await page({ ready: { uri: "", measured: {} } });
    const state = { uri: "/a.sawbuck", measured: { tall: "28", wide: "30" } };
    await page({ write: { ...state, uri: "/other.sawbuck" } });
    expect(asked.some(([what]) => what === "write")).toBe(false);
    await page({ write: state });
    expect(asked.at(-1)).toEqual(["write", { ...state, language: "en" }]);
    expect(told.at(-1)).toEqual({ written: true });
    const one = begin(1);
    await one.page({ ready: state });
    await one.page({ write: state });
    expect(editor.said).toMatchInlineSnapshot(`
      [
        "2 measures are written into the plan. Undo takes them back.",
        "1 measure is written into the plan. Undo takes it back.",
      ]
    `);
  });

  test("says that nothing was written", async () => {
    const { told, page } = begin(null);
    const state = { uri: "/a.sawbuck", measured: { tall: "28" } };
    await page({ ready: state });
    await page({ write: state });
    expect(editor.said).toMatchInlineSnapshot(`
      [
        "Nothing was written into the plan: it has changed meanwhile, or it cannot be changed.",
      ]
    `);
    expect(told).not.toContainEqual({ written: true });
  });
});
