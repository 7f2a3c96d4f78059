/** The parts of the extension that decide without an editor: which sheet is shown, and what a sample plan needs beside it. */
import { readdirSync } from "node:fs";
import { describe, expect, test, vi } from "vitest";
import type { SheetAnswer } from "../../client/protocol";
import { filesNeeded, freeName, SHIPPED, titleOf } from "../../client/samples";
import { newsOf, notFollowing, viewOf } from "../../client/sheet-view";

vi.mock("vscode", async () => ({ l10n: (await import("./spoken")).l10n }));

const good: SheetAnswer = {
  title: "Bench",
  language: "en",
  parts: [
    { name: "head", html: "<header></header>" },
    { name: "cut-list", html: "<p>old</p>" },
  ],
  style: "p {}",
  state: "good",
  version: 1,
  complete: true,
};
const broken: SheetAnswer = {
  ...good,
  parts: [good.parts[0]!, { name: "cut-list", html: "<p>new</p>" }],
  state: "has errors",
  version: 2,
  brokenAt: 7,
};

describe("the sheet that is shown", () => {
  test("a good answer as it is", () => {
    expect(viewOf(good, undefined)).toEqual({
      title: "Bench",
      language: "en",
      parts: good.parts,
      style: "p {}",
      notice: "",
    });
  });

  test("with errors, the last good one, marked as old", () => {
    expect(viewOf(broken, good).parts).toBe(good.parts);
    expect(viewOf(broken, good).notice).toBe(
      "This sheet is from before the mistake on line 7. It follows again when the line is mended.",
    );
    expect(viewOf({ ...broken, brokenAt: undefined }, good).notice).toBe(
      "This sheet is from before the mistake. It follows again when the mistake is mended.",
    );
  });

  test("with errors and none good yet, the new one with its problems", () => {
    expect(viewOf(broken, undefined)).toMatchObject({ parts: broken.parts, notice: "" });
  });

  test("without an answer, what there was", () => {
    const kept = notFollowing(viewOf(good, undefined), "no server");
    expect(kept).toMatchObject({ title: "Bench", parts: good.parts });
    expect(kept.notice).toContain("Restart Language Server");
    expect(notFollowing(undefined, "no file").notice).toContain("the plan cannot be opened");
  });
});

describe("the page is told", () => {
  const before = viewOf(good, undefined);
  const after = viewOf(broken, undefined);

  test("everything while it shows nothing, and only the sections that changed after that", () => {
    expect(newsOf(before, undefined)).toBe(before);
    expect(newsOf(after, before)).toEqual({
      title: "Bench",
      language: "en",
      notice: "",
      parts: [{ name: "head" }, { name: "cut-list", html: "<p>new</p>" }],
    });
  });

  test("nothing when nothing changed; a section that went, and a notice that came", () => {
    expect(newsOf({ ...before }, before)).toBeUndefined();
    expect(newsOf({ ...before, parts: [good.parts[1]!] }, before)?.parts).toEqual([{ name: "cut-list" }]);
    expect(newsOf(notFollowing(before, "no server"), before)).toMatchObject({
      notice: expect.stringContaining("has stopped following"),
      parts: [{ name: "head" }, { name: "cut-list" }],
    });
  });
});

describe("sample plans", () => {
  test("those that ship are those of their folder", () => {
    expect(readdirSync("samples").filter((name) => name.endsWith(".sawbuck"))).toEqual(SHIPPED);
  });

  const text =
    "plan  Salad trough \n  budget $160\n\nshop yard.sawbuck\nbring sizes.sawbuck\nbring sizes.sawbuck\n";

  test("title and the files beside it", () => {
    expect(titleOf(text)).toBe("Salad trough");
    expect(titleOf("stock 2x4\n  plan b\n")).toBeUndefined();
    expect(filesNeeded(text)).toEqual(["yard.sawbuck", "sizes.sawbuck"]);
  });

  test("a name that is free", () => {
    expect(freeName("a.sawbuck", new Set())).toBe("a.sawbuck");
    expect(freeName("a.sawbuck", new Set(["a.sawbuck", "a-2.sawbuck"]))).toBe("a-3.sawbuck");
  });
});
