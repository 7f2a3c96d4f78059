/** Names of files that are known by addresses, and the paths that lead from one to another. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addressOfName, isInFolder, nameOfAddress, pathFrom } from "../../server/lsp/addresses";
import { RUNS } from "../property/plans";

describe("a path", () => {
  test.each([
    [
      "vscode-vfs://github/yard/plans/bench.sawbuck",
      "shop.sawbuck",
      "vscode-vfs://github/yard/plans/shop.sawbuck",
    ],
    [
      "vscode-vfs://github/yard/plans/bench.sawbuck",
      "../yard.sawbuck",
      "vscode-vfs://github/yard/yard.sawbuck",
    ],
    ["vscode-vfs://github/a.sawbuck", "../../../b.sawbuck", "vscode-vfs://github/b.sawbuck"],
    ["vscode-vfs://github/yard/a.sawbuck", "/b.sawbuck", "vscode-vfs://github/b.sawbuck"],
    [
      "vscode-vfs://github/yard/a.sawbuck",
      "//elsewhere/b.sawbuck",
      "vscode-vfs://github/elsewhere/b.sawbuck",
    ],
    [
      "vscode-vfs://github/yard/a.sawbuck",
      "file:///etc/b.sawbuck",
      "vscode-vfs://github/yard/file:/etc/b.sawbuck",
    ],
    ["vscode-test-web://mount/a.sawbuck", "./b//c.sawbuck", "vscode-test-web://mount/b/c.sawbuck"],
    ["memfs:/yard/a.sawbuck", "Shop.SAWBUCK", "memfs:/yard/Shop.SAWBUCK"],
    ["memfs:/a.sawbuck", "/b.sawbuck", "memfs:/b.sawbuck"],
    ["memfs:/yard/a.sawbuck?ref=main#top", "b.sawbuck", "memfs:/yard/b.sawbuck"],
    ["memfs:/yard/a.sawbuck", "was ist.sawbuck", "memfs:/yard/was ist.sawbuck"],
    ["memfs:/yard/a.sawbuck", "what?#50%.sawbuck", "memfs:/yard/what%3F%2350%25.sawbuck"],
    ["memfs:/yard/a.sawbuck", "%41.sawbuck", "memfs:/yard/%2541.sawbuck"],
  ])("seen from %s, %s is %s", (from, path, found) => {
    expect(pathFrom(path, nameOfAddress(from))).toBe(found);
  });

  test("never leaves the scheme and the authority, whatever it is", () => {
    const from = fc.constantFrom("vscode-vfs://github/yard/plans/a.sawbuck", "memfs:/a.sawbuck", "x-y://h");
    const path = fc.oneof(
      fc.string({ unit: "binary", maxLength: 30 }),
      fc
        .array(fc.constantFrom("..", ".", "", "a", "//b", "c:", "file:", "%2e%2e", "\ud800", "?", "#"))
        .map((all) => all.join("/")),
    );
    fc.assert(
      fc.property(from, path, (from, path) => {
        if (!isInFolder(from)) return;
        const root = from.slice(
          0,
          from.indexOf("/", from.indexOf("//") < 0 ? 0 : from.indexOf("//") + 2) + 1,
        );
        const found = pathFrom(path, from);
        expect(found.startsWith(root)).toBe(true);
        expect(found.slice(root.length).split("/")).not.toContain("..");
        const address = addressOfName(found);
        expect(address.startsWith(root)).toBe(true);
        expect(new URL(address).href).toBe(address);
        expect(nameOfAddress(address)).toBe(found);
      }),
      { numRuns: RUNS },
    );
  });
});

describe("a file", () => {
  test.each([
    ["memfs:/Garten%20Plan/B%C3%A4nk%27s.sawbuck", "memfs:/Garten Plan/Bänk's.sawbuck"],
    ["memfs:/100%25.sawbuck", "memfs:/100%25.sawbuck"],
    ["file:///c%3A/yard/a.sawbuck", "file:///c:/yard/a.sawbuck"],
    ["git:/yard/a.sawbuck?%7B%22ref%22%3A%22~%22%7D", "git:/yard/a.sawbuck?%7B%22ref%22%3A%22~%22%7D"],
    ["untitled:Untitled-1", "untitled:Untitled-1"],
    ["untitled:/yard/a%20b.sawbuck", "untitled:/yard/a%20b.sawbuck"],
  ])("with the address %s is named %s, and found again", (address, name) => {
    expect(nameOfAddress(address)).toBe(name);
    expect(addressOfName(name)).toBe(address);
  });

  test("has one name, however its address was written", () => {
    for (const address of ["memfs:/a%28b%29.sawbuck", "memfs:/a(b).sawbuck", "memfs:/%61(b%29.sawbuck"])
      expect(nameOfAddress(address)).toBe("memfs:/a(b).sawbuck");
    expect(nameOfAddress("memfs:/100%.sawbuck")).toBe("memfs:/100%25.sawbuck");
    expect(addressOfName("memfs:/\ud800.sawbuck")).toBe("memfs:/%EF%BF%BD.sawbuck");
  });

  test("that was never saved, or is on a disk, is in no folder of an editor's", () => {
    for (const name of [
      "untitled:Untitled-1",
      "untitled:/yard/a.sawbuck",
      "/yard/a.sawbuck",
      "C:\\yard\\a",
      "a",
    ])
      expect(isInFolder(name)).toBe(false);
  });
});
