/** One mistake, one message: what only follows from a mistake stays silent. */
import { describe, expect, test } from "vitest";
import type { Reader } from "../../server/plan";
import { run } from "./plans";

const found = (text: string, read?: Reader): string[] => run(text, read).problems.map((p) => p.code);

describe("one mistake is told once", () => {
  test.each([
    [
      "a part whose line could not be read",
      'part leg 4 2x4, length 28"\npart rail 2 of 2x4, length 20"\nfasten rail into legs, 2 #8 x 2" at each end',
      ["not-understood"],
    ],
    [
      "a measure whose line could not be read",
      'measure rim 30"\npart leg 4 of 2x4, length rim',
      ["not-understood"],
    ],
    [
      "a line whose first word is misspelt",
      'mesure rim = 30"\npart leg 4 of 2x4, length rim',
      ["unknown-entry"],
    ],
    [
      "a measure that is used in a line that could not be read",
      'measure rim = 30"\npart leg 4 of 2x4, length rim +',
      ["not-understood"],
    ],
    [
      "a measure without a unit that two lengths follow from",
      "measure rim = 30\npart leg 4 of 2x4, length rim\npart rail 2 of 2x4, length rim",
      ["unit-mismatch"],
    ],
    [
      "a measure still to be taken",
      'measure rim\npart leg 4 of 2x4, length rim\npart rail 2 of 2x4, length rim - 1"',
      ["missing-measure"],
    ],
    [
      "a minus without blanks",
      'measure rim = 30"\nmeasure overhang = 1"\npart leg 4 of 2x4, length rim-overhang',
      ["unknown-name"],
    ],
  ])("%s", (_, text, problems) => {
    expect(found(text)).toEqual(problems);
  });

  test("names that may stand in a file that was not read", () => {
    const text =
      'shop hillside-shop.sawbuck\npart slat 4 of pallet-slat, length 20"\npart rail 2 of 1x4, length 20"\nfasten slat into rail, 2 deck-2 at each end';
    expect(found(text)).toEqual(["file-not-found"]);
    expect(found(text, (path) => ({ file: path, text: "" }))).toEqual(["unknown-name", "unknown-name"]);
  });

  test("an accept line, while something else cannot be worked out", () => {
    const accept = "accept off-the-tape on rail because nobody sees it";
    expect(found(`measure rim = 30"\npart rail 2 of 2x4, length rim\n${accept}`)).toEqual(["cannot-accept"]);
    expect(found(`measure rim\npart rail 2 of 2x4, length rim\n${accept}`)).toEqual(["missing-measure"]);
  });
});
