/** Which pieces the open sheet marks: those of the cursor's line in the plan that is shown, and of no other plan. */
import { beforeEach, describe, expect, test, vi } from "vitest";
import type { Uri } from "vscode";
import { goTo, pointed } from "../../client/pointed";
import type { Running } from "../../client/running";

interface Shown {
  readonly document: { readonly uri: { toString(): string } };
  readonly selection: { readonly active: { readonly line: number } };
  readonly viewColumn?: number;
}
const editor = vi.hoisted(() => ({ visible: [] as Shown[], opened: [] as unknown[] }));
vi.mock("vscode", async () => ({
  l10n: (await import("./spoken")).l10n,
  ViewColumn: { One: 1 },
  Position: class {
    constructor(
      readonly line: number,
      readonly character: number,
    ) {}
  },
  Range: class {
    constructor(
      readonly start: unknown,
      readonly end: unknown,
    ) {}
  },
  window: {
    get visibleTextEditors() {
      return editor.visible;
    },
    showTextDocument: async (_: unknown, how: unknown) => editor.opened.push(how),
  },
  workspace: {
    openTextDocument: async () => ({
      lineCount: 3,
      lineAt: (lineNumber: number) => ({ lineNumber, firstNonWhitespaceCharacterIndex: 2 }),
    }),
  },
}));
vi.mock("../../client/protocol", () => ({ PiecesAtRequest: "sawbuck/piecesAt" }));

const uri = (path: string): Uri => ({ toString: () => path }) as unknown as Uri;
const [A, B] = [uri("a"), uri("b")];
const shows = (of: Uri, line: number, viewColumn?: number): void => {
  editor.visible = [{ document: { uri: of }, selection: { active: { line } }, viewColumn }];
};

/** A server that answers when it is told to. */
function server() {
  const waiting: { asked: { uri: string; line: number }; answer: (pieces: string[]) => Promise<void> }[] = [];
  const client = {
    sendRequest: (_: unknown, asked: { uri: string; line: number }) =>
      new Promise((resolve) => {
        const answer = async (pieces: string[]): Promise<void> => {
          resolve({ pieces });
          await new Promise((soon) => setTimeout(soon, 0));
        };
        waiting.push({ asked, answer });
      }),
  };
  return { running: { client: () => client } as unknown as Running, waiting };
}

beforeEach(() => {
  editor.visible = [];
  editor.opened = [];
});

describe("the marks", () => {
  const begin = () => {
    const { running, waiting } = server();
    const told: (readonly string[])[] = [];
    return { waiting, told, marks: pointed(running, ({ marked }) => told.push(marked)) };
  };

  test("are asked for where the cursor stands when the sheet turns to a plan", async () => {
    const { waiting, told, marks } = begin();
    shows(A, 4);
    marks.turn(A);
    expect(waiting.map((w) => w.asked)).toEqual([{ uri: "a", line: 5 }]);
    await waiting[0]!.answer(["leg / 1"]);
    expect(told).toEqual([["leg / 1"]]);
  });

  test("of a plan turned away from are dropped, and that plan is not asked of again", async () => {
    const { waiting, told, marks } = begin();
    marks.at(A, 5);
    shows(B, 0);
    marks.turn(B);
    await waiting[0]!.answer(["leg / 1"]);
    expect(told).toEqual([]);
    await waiting[1]!.answer([]);
    marks.again();
    expect(waiting.map((w) => w.asked.uri)).toEqual(["a", "b", "b"]);
  });

  test("are none where no editor shows the plan turned to, and stay those of the plan turned back to", async () => {
    const { waiting, told, marks } = begin();
    marks.at(A, 5);
    await waiting[0]!.answer(["leg / 1"]);
    marks.turn(A); // it came into view again, and is empty
    await waiting[1]!.answer(["leg / 1"]);
    expect(told).toEqual([["leg / 1"], ["leg / 1"]]);
    marks.turn(B);
    expect(waiting).toHaveLength(2);
  });

  test("are told when they are news, one question at a time, the newest last", async () => {
    const { waiting, told, marks } = begin();
    marks.at(A, 1);
    marks.at(A, 2);
    marks.at(A, 3);
    expect(waiting).toHaveLength(1);
    await waiting[0]!.answer(["leg / 1"]);
    await waiting[1]!.answer(["leg / 1"]);
    expect(waiting.map((w) => w.asked.line)).toEqual([1, 3]);
    expect(told).toEqual([["leg / 1"]]);
  });
});

test("a line that is asked for is shown in the editor that has the plan, within its lines", async () => {
  shows(A, 0, 2);
  await goTo(A, 99);
  const start = { line: 2, character: 2 };
  expect(editor.opened).toMatchObject([{ viewColumn: 2, selection: { start, end: start } }]);
});
