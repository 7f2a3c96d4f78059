/** What the extension keeps and hears: ticks by plan, choices, the messages of the page, and the names of saved sheets. */
import { describe, expect, test, vi } from "vitest";
import type { Memento } from "vscode";
import { AS_PLANNED, choicesIn } from "../../client/choices";
import { hear } from "../../client/from-preview";
import { keptTicks } from "../../client/kept-ticks";
import { isPlan, sheetFileName, sheetFormats } from "../../client/sheet-formats";
import { sheetFormat } from "../../server/lsp/sheet-files";

vi.mock("vscode", async () => ({ l10n: (await import("./spoken")).l10n }));

function storage(first?: unknown): Memento & { readonly size: () => number } {
  const kept = new Map<string, unknown>(first === undefined ? [] : [["ticks", first]]);
  return {
    keys: () => [...kept.keys()],
    get: (key: string, otherwise?: unknown) => kept.get(key) ?? otherwise,
    update: async (key: string, value: unknown) => void kept.set(key, JSON.parse(JSON.stringify(value))),
    size: () => JSON.stringify([...kept]).length,
  } as Memento & { readonly size: () => number };
}

const ids = (count: number, of = "leg"): string[] =>
  Array.from({ length: count }, (_, i) => `cut/${of} / ${i}`);

describe("ticks", () => {
  test("are kept by plan, and come back with the next start", async () => {
    const device = storage();
    await keptTicks(device).set("file:///a.sawbuck", ["cut/leg / 1"]);
    await keptTicks(device).set("file:///b.sawbuck", ["cut/leg / 2"]);
    expect(keptTicks(device).of("file:///a.sawbuck")).toEqual({ ids: ["cut/leg / 1"], keeps: true });
    expect(keptTicks(device).of("file:///c.sawbuck")).toEqual({ ids: [], keeps: true });
    await keptTicks(device).set("file:///a.sawbuck", []);
    expect(keptTicks(device).of("file:///a.sawbuck").ids).toEqual([]);
  });

  test("of a text without a name are not kept, since the next one is called the same", async () => {
    const ticks = keptTicks(storage());
    await ticks.set("untitled:Untitled-1", ["cut/leg / 1"]);
    expect(ticks.of("untitled:Untitled-1")).toEqual({ ids: [], keeps: false });
  });

  test("of a plan are those set last, and of plans those ticked last", async () => {
    const ticks = keptTicks(storage());
    await ticks.set("file:///large", [...ids(3500), "x".repeat(1000)]);
    expect([ticks.of("file:///large").ids.length, ticks.of("file:///large").ids[0]]).toEqual([
      3000,
      "cut/leg / 500",
    ]);
    for (let i = 0; i < 320; i++) await ticks.set(`file:///${i}`, ids(1));
    expect(ticks.of("file:///large").ids).toEqual([]);
    expect([ticks.of("file:///19").ids.length, ticks.of("file:///20").ids.length]).toEqual([0, 1]);
  });

  test("of all plans together do not fill the storage", async () => {
    const device = storage();
    const ticks = keptTicks(device);
    for (let i = 0; i < 40; i++) await ticks.set(`file:///${i}`, ids(3000));
    expect(device.size()).toBeLessThan(800_000);
    expect(ticks.of("file:///39").ids.length).toBe(3000);
    expect(ticks.of("file:///0").ids.length).toBe(0);
  });

  test("go with a plan that is renamed, and with a folder; a plan that was overwritten has none of its own left", async () => {
    const ticks = keptTicks(storage());
    for (const name of ["yard/a", "yard/b", "yard-2/a"]) await ticks.set(`file:///${name}`, [`cut/${name}`]);
    await ticks.move("file:///yard/a", "file:///yard/b");
    await ticks.move("file:///yard", "file:///shed");
    await ticks.move("file:///nowhere", "file:///yard-2");
    const kept = ["yard/a", "yard/b", "shed/a", "shed/b", "yard-2/a"].map(
      (name) => ticks.of(`file:///${name}`).ids,
    );
    expect(kept).toEqual([[], [], [], ["cut/yard/a"], ["cut/yard-2/a"]]);
  });

  test("that are not as they were written are none", () => {
    for (const strange of ["x", 3, {}, [3, null, { plan: "file:///a", ids: [3] }]])
      expect(keptTicks(storage(strange)).of("file:///a").ids).toEqual([]);
  });
});

test("choices that are not known any more are as planned", () => {
  for (const strange of [undefined, null, 3, {}, { units: "cubits", reader: "toString" }])
    expect(choicesIn(strange)).toEqual(AS_PLANNED);
  expect(choicesIn({ units: "millimetres", reader: "learners" })).toEqual({
    units: "millimetres",
    reader: "learners",
  });
});

test("the page is heard, and nothing else", () => {
  const heard: unknown[] = [];
  const hears = {
    ready: (c: unknown) => heard.push(["ready", c]),
    chosen: (c: unknown) => heard.push(["chosen", c]),
    goTo: (line: number) => heard.push(["go to", line]),
    ticked: (uri: string, ids: readonly string[]) => heard.push(["ticked", uri, ids]),
    save: () => heard.push("save"),
  };
  const metric = { units: "millimetres", reader: "builder" };
  for (const said of [
    ...["ready", null, 3, {}, { line: "1" }, { line: 1.5 }, { ticks: ["a"] }, { save: "yes" }],
    ...[{ ready: metric }, { choices: {} }, { line: 4 }, { uri: "u", ticks: ["a", 3] }, { save: true }],
  ])
    hear(said, hears);
  expect(heard).toEqual([
    ["ready", metric],
    ["chosen", AS_PLANNED],
    ["go to", 4],
    ["ticked", "u", ["a"]],
    "save",
  ]);
});

describe("a saved sheet", () => {
  test("is called after its plan, and never like one", () => {
    const called = (plan: string, wanted: string) =>
      sheetFileName(plan, sheetFormats().find(({ format }) => format === wanted)!);
    expect(called("salad-trough.sawbuck", "html")).toBe("salad-trough-sheet.html");
    expect(called("salad-trough.sawbuck", "csv cut-list")).toBe("salad-trough-cut-list.csv");
    expect(called("Untitled-1", "markdown")).toBe("shop-sheet.md");
    expect([isPlan("/yard/a.sawbuck"), isPlan("/yard/a.SAWBUCK"), isPlan("/yard/a.sawbuck.html")]).toEqual([
      true,
      true,
      false,
    ]);
    for (const { ending } of sheetFormats()) expect(isPlan(`a.${ending}`)).toBe(false);
  });

  test("is in formats that the server knows, each once", () => {
    const formats = sheetFormats().map(({ format }) => format);
    expect(formats.filter((format) => sheetFormat(format) === undefined)).toEqual([]);
    expect(new Set(formats).size).toBe(formats.length);
    expect(new Set(sheetFormats().map(({ label }) => label)).size).toBe(formats.length);
  });
});
