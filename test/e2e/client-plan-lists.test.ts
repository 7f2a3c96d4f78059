/** How the extension lists the plan files of a folder for its server: folder by folder, what the editor shows of them. */
import { beforeEach, expect, test, vi } from "vitest";
import { plansBelow } from "../../client/plan-lists";

const FILE = 1;
const FOLDER = 2;
const LINK = 64;
const editor = vi.hoisted(() => ({
  folders: {} as Record<string, readonly (readonly [string, number])[]>,
  read: [] as string[],
}));

vi.mock("vscode", () => {
  const uri = (path: string) => ({ path, toString: () => `memfs:${encodeURI(path)}` });
  return {
    FileType: { File: 1, Directory: 2 },
    Uri: {
      parse: (address: string) => uri(decodeURI(address.slice("memfs:".length))),
      joinPath: ({ path }: { path: string }, name: string) => uri(`${path}/${name}`),
    },
    workspace: {
      fs: {
        readDirectory: async ({ path }: { path: string }) => {
          editor.read.push(path);
          const entries = editor.folders[path];
          if (!entries) throw new Error("it may not be read");
          return entries;
        },
      },
    },
  };
});

beforeEach(() => {
  editor.read = [];
});

const token = { isCancellationRequested: false, onCancellationRequested: () => ({ dispose: () => {} }) };

test("plan files at any depth, without hidden folders, node_modules, links, and folders that cannot be read", async () => {
  editor.folders = {
    "/my yard": [
      ["bench.sawbuck", FILE],
      ["notes.txt", FILE],
      ["linked.sawbuck", FILE | LINK],
      ["a.sawbuck", FOLDER],
      [".git", FOLDER],
      ["node_modules", FOLDER],
      ["closed", FOLDER],
      ["elsewhere", FOLDER | LINK],
    ],
    "/my yard/a.sawbuck": [["deep", FOLDER]],
    "/my yard/a.sawbuck/deep": [["é.sawbuck", FILE]],
  };
  expect(await plansBelow("memfs:/my%20yard", token)).toEqual({
    uris: ["memfs:/my%20yard/bench.sawbuck", "memfs:/my%20yard/a.sawbuck/deep/%C3%A9.sawbuck"],
  });
  expect(editor.read).toEqual([
    "/my yard",
    "/my yard/a.sawbuck",
    "/my yard/closed",
    "/my yard/a.sawbuck/deep",
  ]);
});

test("no more files and folders than a limit, and none for one who no longer asks", async () => {
  editor.folders = { "/yard": Array.from({ length: 6000 }, (_, i) => [`${i}.sawbuck`, FILE] as const) };
  expect((await plansBelow("memfs:/yard", token)).uris).toHaveLength(5000);
  editor.folders = { "/yard": Array.from({ length: 6000 }, (_, i) => [`${i}`, FOLDER] as const) };
  expect((await plansBelow("memfs:/yard", token)).uris).toEqual([]);
  expect(editor.read.length).toBeLessThan(5050);
  editor.read = [];
  expect(await plansBelow("memfs:/yard", { ...token, isCancellationRequested: true })).toEqual({ uris: [] });
  expect(editor.read).toEqual([]);
});
