/** Files that the editor reads: what is known of them, when, and that a plan ends as with the files that there are. */
import fc from "fast-check";
import { afterEach, describe, expect, test, vi } from "vitest";
import { diagnosticsOf } from "../../server/features/diagnostics";
import { editorFiles, type FileRead, fileReadIn, readerOf } from "../../server/lsp/editor-files";
import { evaluate } from "../../server/service";
import { RUNS } from "../property/plans";
import { type Editor, editor, wait } from "./editor";

const ROOT = "memfs:/yard";
const PLAN = `${ROOT}/plan.sawbuck`;
const SHOP = `${ROOT}/shop.sawbuck`;

/** An editor whose answers are given one by one. */
function asked() {
  const questions: {
    readonly file: string;
    readonly answer: (read: FileRead) => void;
    readonly fail: () => void;
  }[] = [];
  const news: string[] = [];
  const files = editorFiles(
    (file) =>
      new Promise((answer, fail) => questions.push({ file, answer, fail: () => fail(new Error("no")) })),
    (file) => news.push(file),
  );
  return { files, questions, news };
}

describe("a file", () => {
  afterEach(() => {
    vi.useRealTimers();
  });

  test("is asked for once, and is there when it was answered", async () => {
    const { files, questions, news } = asked();
    const reading = { file: SHOP, refused: "it is still being read" };
    expect(files.read("shop.sawbuck", PLAN)).toEqual(reading);
    expect(files.read("../yard/shop.sawbuck", PLAN)).toEqual(reading);
    expect(questions.map(({ file }) => file)).toEqual([SHOP]);
    expect(files.pending(SHOP)).toBe(true);
    const next = files.next(2000);
    questions[0]!.answer({ text: "stock 2x4" });
    await next;
    expect(news).toEqual([SHOP]);
    expect(files.pending(SHOP)).toBe(false);
    expect(files.read("shop.sawbuck", PLAN)).toEqual({ file: SHOP, text: "stock 2x4" });
  });

  test("that changed stays as it was until it is read again, and only the last answer counts", async () => {
    const { files, questions, news } = asked();
    files.read("shop.sawbuck", PLAN);
    questions[0]!.answer({ text: "1" });
    await wait(0);
    files.changed(SHOP);
    files.changed(SHOP);
    expect(files.read("shop.sawbuck", PLAN)).toEqual({ file: SHOP, text: "1" });
    questions[2]!.answer({ text: "3" });
    await wait(0);
    questions[1]!.answer({ text: "2" });
    await wait(0);
    expect(files.read("shop.sawbuck", PLAN)).toEqual({ file: SHOP, text: "3" });
    files.changed(SHOP);
    questions[3]!.answer({ text: "3" });
    await wait(0);
    expect(news).toEqual([SHOP, SHOP]);
  });

  test("that nobody asked for is not read when it changes", () => {
    const { files, questions } = asked();
    files.changed(SHOP);
    expect(questions).toEqual([]);
  });

  test("that does not come is said to be still being read, and is taken when it comes after all", async () => {
    vi.useFakeTimers();
    const { files, questions, news } = asked();
    files.read("shop.sawbuck", PLAN);
    const next = files.next(2000);
    await vi.advanceTimersByTimeAsync(1499);
    expect(files.pending(SHOP)).toBe(true);
    await vi.advanceTimersByTimeAsync(1);
    await next;
    expect(files.pending(SHOP)).toBe(false);
    expect(files.read("shop.sawbuck", PLAN)).toMatchObject({ refused: "it is still being read" });
    questions[0]!.answer({ text: "stock 2x4" });
    await vi.advanceTimersByTimeAsync(0);
    expect(news).toEqual([SHOP, SHOP]);
    expect(files.read("shop.sawbuck", PLAN)).toMatchObject({ text: "stock 2x4" });
  });

  test("is waited for no longer than is asked for", async () => {
    vi.useFakeTimers();
    const { files } = asked();
    files.read("shop.sawbuck", PLAN);
    let woken = false;
    void files.next(400).then(() => {
      woken = true;
    });
    await vi.advanceTimersByTimeAsync(399);
    expect(woken).toBe(false);
    await vi.advanceTimersByTimeAsync(1);
    expect([woken, files.pending(SHOP)]).toEqual([true, true]);
  });

  test("that no plan needs any more is forgotten, with whoever waits for it woken", async () => {
    const { files, questions, news } = asked();
    files.read("shop.sawbuck", PLAN);
    const next = files.next(2000);
    files.keepOnly(() => false);
    await next;
    questions[0]!.answer({ text: "late" });
    await wait(0);
    expect(news).toEqual([]);
    expect(files.read("shop.sawbuck", PLAN)).toMatchObject({ refused: "it is still being read" });
    expect(questions).toHaveLength(2);
  });

  test("that an editor fails to read cannot be read; a drive leads nowhere", async () => {
    const { files, questions } = asked();
    files.read("shop.sawbuck", PLAN);
    questions[0]!.fail();
    await wait(0);
    expect(files.read("shop.sawbuck", PLAN)).toMatchObject({ refused: "it cannot be read" });
    for (const path of ["C:\\shop.sawbuck", "c:/shop.sawbuck", "\\\\there\\shop.sawbuck"])
      expect(files.read(path, PLAN)).toEqual({
        file: path,
        refused: "a path with a drive leads nowhere from this folder",
      });
    expect(questions).toHaveLength(1);
  });
});

test("paths of a disk are read from it, and others by the editor where it reads files", () => {
  const disk = (path: string) => ({ file: path, text: "disk" });
  const { files } = asked();
  const [both, alone] = [readerOf(disk, files), readerOf(disk, undefined)];
  for (const read of [both, alone]) {
    expect(read("a", "/yard/plan.sawbuck", undefined)).toEqual({ file: "a", text: "disk" });
    expect(read("a", "C:\\yard\\plan.sawbuck", undefined)).toEqual({ file: "a", text: "disk" });
    expect(read("/a", "untitled:Untitled-1", undefined)).toEqual({ file: "/a", text: "disk" });
    const refused = "this text is in no folder yet: save it first";
    expect(read("a", "untitled:Untitled-1", undefined)).toEqual({ file: "a", refused });
  }
  expect(both("/a", PLAN, undefined)).toEqual({ file: "memfs:/a", refused: "it is still being read" });
  const refused = "this editor cannot read files in this folder";
  expect(alone("/a", PLAN, undefined)).toEqual({ file: "memfs:/a", refused });
});

test("whatever an editor answers is a file or why there is none", () => {
  expect(fileReadIn({ text: "" })).toEqual({ text: "" });
  expect(fileReadIn({ refused: "it is a folder" })).toEqual({ refused: "it is a folder" });
  for (const answer of [undefined, null, "text", 5, {}, { text: 5 }, { refused: "" }])
    expect(fileReadIn(answer)).toEqual({ refused: "it cannot be read" });
});

/** A yard whose plan names a shop file, which brings another. */
const START: Readonly<Record<string, string>> = {
  "plan.sawbuck": "shop shop.sawbuck\nbring sizes.sawbuck\npart leg 4 of heart, length tall\n",
  "shop.sawbuck": "bring more.sawbuck\nstock heart of 2x4\n  sold 8' $5\n",
  "sizes.sawbuck": 'measure tall = 28"\n',
  "more.sawbuck": "stock 1x6\n  sold 8' $5\n",
};

describe("over a connection", () => {
  let e: Editor | undefined;
  afterEach(() => {
    e?.end();
    e = undefined;
  });
  const codes = (file: string): unknown[] => (e!.pushed(file) ?? []).map(({ code }) => code);
  const open = (text = START["plan.sawbuck"]!) => e!.open(PLAN, text);

  test("problems are shown first when the files are there, and only then", async () => {
    const yard = new Map(Object.entries(START));
    e = await editor({ read: slowly(yard) });
    await open();
    await e.until(() => e!.pushed(PLAN) !== undefined);
    expect(e.pushes.map(({ diagnostics }) => diagnostics.map(({ code }) => code))).toEqual([freshOf(yard)]);
  });

  test("an editor that asks for problems is answered when the files are there", async () => {
    const yard = new Map(Object.entries(START));
    e = await editor({
      capabilities: { textDocument: { diagnostic: {} } },
      read: slowly(yard),
    });
    await open();
    expect((await e.pull(PLAN)).map(({ code }) => code)).toEqual(freshOf(yard));
  });

  test("a file that does not come is told as such within two seconds, and comes", async () => {
    let give: (read: FileRead) => void = () => {};
    e = await editor({ read: () => new Promise((resolve) => (give = resolve)) });
    await open("shop shop.sawbuck\n");
    const from = performance.now();
    await e.until(() => codes(PLAN).includes("file-not-found"));
    expect(performance.now() - from).toBeGreaterThan(1000);
    expect(e.pushed(PLAN)?.map(({ message }) => message)).toEqual([
      "shop.sawbuck was not read: it is still being read.",
    ]);
    give({ text: "" });
    await e.until(() => codes(PLAN).length === 0);
  });

  test("a file that another names doubles no patience: problems, answers and counts are there after one", async () => {
    for (const pull of [false, true]) {
      e = await editor({
        ...(pull && { capabilities: { textDocument: { diagnostic: {} } } }),
        read: async (uri) => {
          if (!uri.endsWith("/shop.sawbuck")) return new Promise(() => {});
          await wait(1200);
          return { text: "bring more.sawbuck\n" };
        },
      });
      const from = performance.now();
      await open("shop shop.sawbuck\n");
      await e.connection.sendRequest("sawbuck/notChecked", { uri: PLAN });
      if (pull) expect(await e.pull(PLAN)).toHaveLength(1);
      else await e.until(() => codes(PLAN).length === 1);
      await e.until(() => e!.worked.length > 0);
      const took = performance.now() - from;
      expect(took).toBeGreaterThan(1400);
      // One patience after the other would take 2700.
      expect(took).toBeLessThan(2600);
      expect(e.worked.map(({ counts }) => counts.errors)).toEqual([1]);
      e.end();
      e = undefined;
    }
  });

  test("until they are there, counts, lists and links wait, and nothing stands above the plan or is offered", async () => {
    let give = (): void => {};
    const given = new Promise<void>((resolve) => {
      give = resolve;
    });
    e = await editor({
      capabilities: {
        textDocument: { codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [] } } } },
        workspace: { codeLens: { refreshSupport: true } },
      },
      read: async () => {
        await given;
        return { text: "" };
      },
    });
    let refreshed = 0;
    e.connection.onRequest("workspace/codeLens/refresh", () => {
      refreshed++;
      return null;
    });
    await open("shop shop.sawbuck\nplan Leg\npart leg 4 of 2x4, lenght 28\n");
    const textDocument = { uri: PLAN };
    const ask = <A>(method: string, more: object = {}): Promise<A[]> =>
      e!.connection.sendRequest(`textDocument/${method}`, { textDocument, ...more });
    const at = { line: 2, character: 20 };
    const offered = (triggerKind: number) =>
      ask("codeAction", { range: { start: at, end: at }, context: { diagnostics: [], triggerKind } });
    expect([await ask("codeLens"), await offered(2)]).toEqual([[], []]);
    expect(await offered(1)).not.toEqual([]);
    const later: string[] = [];
    const asked = [
      ask("documentLink").then((links) => later.push(`${links.length} link`)),
      e.connection.sendRequest("sawbuck/notChecked", { uri: PLAN }).then(() => later.push("not checked")),
    ];
    await wait(50);
    expect([later, e.worked, refreshed]).toEqual([[], [], 0]);
    give();
    await Promise.all(asked);
    expect(later.sort()).toEqual(["1 link", "not checked"]);
    await e.until(() => e!.worked.length > 0 && refreshed > 0);
    expect(e.worked).toHaveLength(1);
    expect(await ask("codeLens")).not.toEqual([]);
    expect(await offered(2)).not.toEqual([]);
  });

  test("what is refused is told in the editor's words, and in French", async () => {
    e = await editor({ locale: "fr", read: async () => ({ refused: "it is a folder" }) });
    await open("shop shop.sawbuck\n");
    await e.until(() => e!.pushed(PLAN) !== undefined);
    expect(e.pushed(PLAN)?.map(({ message }) => message)).toEqual([
      "shop.sawbuck n’a pas été lu\u00a0: c’est un dossier.",
    ]);
  });

  test("a file that changes reaches the plan; an open text comes before it, and goes with its editor", async () => {
    const yard = new Map(Object.entries(START));
    e = await editor({ read: async (uri) => found(yard, uri) });
    await open();
    await e.until(() => e!.pushed(PLAN) !== undefined);
    expect(codes(PLAN)).not.toContain("file-not-found");
    yard.delete("sizes.sawbuck");
    await e.changed(`${ROOT}/sizes.sawbuck`);
    await e.until(() => codes(PLAN).includes("file-not-found"));
    await e.open(`${ROOT}/sizes.sawbuck`, 'measure tall = 30"\n');
    await e.until(() => !codes(PLAN).includes("file-not-found"));
    await e.close(`${ROOT}/sizes.sawbuck`);
    await e.until(() => codes(PLAN).includes("file-not-found"));
  });

  test("in the end the problems are those of a fresh run with the files as they are", async () => {
    const texts: Readonly<Record<string, fc.Arbitrary<string | undefined>>> = {
      "shop.sawbuck": fc.constantFrom(
        START["shop.sawbuck"],
        "",
        "bring more.sawbuck\n",
        "stock hart of 2x4\n",
        undefined,
      ),
      "sizes.sawbuck": fc.constantFrom(
        START["sizes.sawbuck"],
        'measure tall = "\n',
        "shop more.sawbuck\n",
        undefined,
      ),
      "more.sawbuck": fc.constantFrom(
        START["more.sawbuck"],
        'measure tall = 9"\n',
        "bring shop.sawbuck\n",
        undefined,
      ),
    };
    const change = fc
      .constantFrom(...Object.keys(texts))
      .chain((name) =>
        fc.record({ name: fc.constant(name), text: texts[name]!, delay: fc.nat(4), pause: fc.nat(3) }),
      );
    const yard = new Map<string, string>();
    let delays: number[] = [];
    let reading = 0;
    e = await editor({
      read: async (uri) => {
        const before = found(yard, uri);
        reading++;
        await wait(delays.pop() ?? 0);
        reading--;
        return before; // what was there when it was asked, told late
      },
    });
    /** All that was said to the server before has been heard. */
    const heard = () =>
      e!.connection.sendRequest("textDocument/hover", {
        textDocument: { uri: PLAN },
        position: { line: 0, character: 0 },
      });
    await fc.assert(
      fc.asyncProperty(fc.array(change, { maxLength: 8 }), fc.array(fc.nat(6)), async (changes, late) => {
        yard.clear();
        for (const [name, text] of Object.entries(START)) yard.set(name, text);
        delays = late;
        e!.pushes.length = 0;
        await open();
        for (const { name, text, pause } of changes) {
          if (text === undefined) yard.delete(name);
          else yard.set(name, text);
          await e!.changed(`${ROOT}/${name}`);
          if (pause > 0) await wait(pause);
        }
        const wanted = freshOf(yard);
        await heard();
        await e!.until(() => reading === 0);
        await heard();
        await e!.until(() => reading === 0 && String(codes(PLAN)) === String(wanted));
        await wait(5);
        expect(codes(PLAN)).toEqual(wanted);
        await e!.close(PLAN);
      }),
      { numRuns: Math.ceil(RUNS / 10) },
    );
  });
});

/** The codes of the plan's problems, with these files. */
function freshOf(yard: ReadonlyMap<string, string>): string[] {
  const fresh = evaluate("plan.sawbuck", START["plan.sawbuck"]!, (path) => {
    const text = yard.get(path);
    return text === undefined ? { file: path, refused: "there is no such file" } : { file: path, text };
  });
  return diagnosticsOf(fresh).map(({ code }) => code);
}

const slowly =
  (yard: ReadonlyMap<string, string>) =>
  async (uri: string): Promise<FileRead> => {
    await wait(30);
    return found(yard, uri);
  };

const found = (yard: ReadonlyMap<string, string>, uri: string): FileRead => {
  const text = yard.get(uri.slice(uri.lastIndexOf("/") + 1));
  return text === undefined ? { refused: "there is no such file" } : { text };
};
