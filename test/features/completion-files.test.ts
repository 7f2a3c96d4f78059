/** Plan files offered behind `shop` and `bring`: where a path is typed, what it replaces, and which come first. ‸ marks the cursor. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fileOffers, type NearFile, pathAt } from "../../server/features/completion-files";
import { anyText } from "../property/plans";
import { withMarks } from "./plans";

const typingIn = (marked: string) => {
  const text = marked.replace("‸", "");
  const typing = pathAt(text, marked.indexOf("‸"));
  return typing && `${typing.entry} “${typing.typed}”: ${withMarks(text, [typing.range])}`;
};

test.each([
  ["shop ‸", "shop “”: shop ⟦⟧"],
  ["bring   ‸", "bring “”: bring   ⟦⟧"],
  ["bring ‸   \nplan Bench", "bring “”: bring ⟦⟧   \nplan Bench"],
  ["# a\nshop hill‸side.sawbuck  \nplan", "shop “hill”: # a\nshop ⟦hillside.sawbuck⟧  \nplan"],
  ["shop ‸ hill.sawbuck", "shop “”: shop ⟦ hill.sawbuck⟧"],
  ["bring ../my parts/y‸\r\nplan Bench", "bring “../my parts/y”: bring ⟦../my parts/y⟧\r\nplan Bench"],
  ["shop my ‸", "shop “my ”: shop ⟦my ⟧"],
  ["\uFEFFshop a‸", "shop “a”: \uFEFFshop ⟦a⟧"],
  ["shop‸", undefined],
  ["‸shop a.sawbuck", undefined],
  ["sh‸op a.sawbuck", undefined],
  ["  shop ‸", undefined],
  ["shopping ‸", undefined],
  ["plan shop ‸", undefined],
  ["shop a\n‸", undefined],
  ["shop a\n  b‸", undefined],
])("%j", (marked, found) => {
  expect(typingIn(marked)).toBe(found);
});

const FILES: readonly NearFile[] = [
  "../shared/sizes.sawbuck",
  "parts/yard.sawbuck",
  "parts/shop.sawbuck",
  "hillside-shop.sawbuck",
  "bench.sawbuck",
  "../all.sawbuck",
  "broken\n.sawbuck",
  " blank.sawbuck",
].map((path) => ({ path }));
const KNOWN: NearFile = { path: "../prices.sawbuck", shopOf: "bench.sawbuck" };
const offered = (line: string, files: readonly NearFile[] = [...FILES, KNOWN]) =>
  fileOffers(pathAt(line, line.length)!, files, "en");

describe("files", () => {
  test("for a shop: shop files of other plans, then those that are called so, then the nearest", () => {
    expect(offered("shop ").map(({ label }) => label)).toEqual([
      "../prices.sawbuck",
      "hillside-shop.sawbuck",
      "parts/shop.sawbuck",
      "bench.sawbuck",
      "parts/yard.sawbuck",
      "../all.sawbuck",
      "../shared/sizes.sawbuck",
    ]);
  });

  test("to be brought: the nearest, then shop files", () => {
    expect(offered("bring ").map(({ label }) => label)).toEqual([
      "bench.sawbuck",
      "parts/yard.sawbuck",
      "../all.sawbuck",
      "../shared/sizes.sawbuck",
      "hillside-shop.sawbuck",
      "parts/shop.sawbuck",
      "../prices.sawbuck",
    ]);
  });

  test("in the order in which they are sorted, written as they are, with whose shop file they are", () => {
    const list = offered("shop ");
    expect(list.map(({ sortText }) => sortText)).toEqual(list.map(({ sortText }) => sortText).sort());
    for (const { label, insertText, goesOn, snippet } of list)
      expect([insertText, goesOn, snippet]).toEqual([label, false, undefined]);
    expect(list.map(({ detail }) => detail).filter((d) => d !== "")).toEqual(["shop file of bench.sawbuck"]);
    const [french] = fileOffers(pathAt("shop ", 5)!, [KNOWN], "fr");
    expect(french?.detail).toBe("fichier d’atelier de bench.sawbuck");
  });
});

test("any text: what is replaced lies in the line, and holds the cursor", () => {
  const line = fc.tuple(fc.constantFrom("shop ", "bring\t", "shop  a", "\nbring b "), anyText);
  fc.assert(
    fc.property(line, fc.nat(), ([before, rest], n) => {
      const text = before + rest;
      const offset = n % (text.length + 1);
      const typing = pathAt(text, offset);
      if (!typing) return;
      const { start, end } = typing.range;
      expect(start <= offset && offset <= end && end <= text.length).toBe(true);
      expect(text.slice(start, end)).not.toMatch(/[\r\n]/);
    }),
  );
});
