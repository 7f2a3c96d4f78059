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
      "a name of two words that another line uses as one",
      'part Top Board of 2x6, length 48"\nplace top-board across, flat, on floor, 0 from left, 0 from front',
      ["bad-name"],
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
    [
      "a joint between pieces that a mistake keeps from standing anywhere",
      `part rail of 1x6, lenght 36"
part slat of 1x4, length 12"
place rail across, on edge, on floor, 0 from left, 0 from front
place slat front to back, flat, on rail, flush with left of rail, flush with front of rail
fasten slat into rail, 2 #8 x 2" at each crossing`,
      ["not-understood"],
    ],
    [
      "an assembly that nothing places",
      `part leg of 2x4, length 28"
place leg upright, wide face front, on floor, 0 from left, 0 from front
assembly gate
  place leg upright, on floor`,
      ["cut-never-placed"],
    ],
    [
      "a gap that leaves a joined piece in the air",
      `part leg of 2x4, length 30"
part rail of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, 1/4" in front of legs, flush with left of legs, flush with top of legs
fasten rail into leg, 2 #8 x 1-5/8" at each crossing`,
      ["not-touching"],
    ],
    [
      "a piece too short for the room between two that are joined to it",
      `part side of 1x6, length 30"
part end of 1x6, length 10"
place side across, on edge, on floor, 0 from left, 0 from front, 2 deep, 10-1/2" apart
place end front to back, on edge, on floor, 0 from left, between front side and back side
place end front to back, on edge, on floor, 29-1/4" from left, between front side and back side
fasten side face into end end, 2 #8 x 3" at each crossing, angled 35°, pilot 1/8"`,
      ["not-touching"],
    ],
    [
      "an assembly that would stand inside itself",
      `part leg of 2x4, length 30"
place leg upright, wide face front, on floor, 0 from left, 0 from front
assembly gate
  place porch, on floor, 0 from left, 0 from front
assembly porch
  place gate, on floor, 0 from left, 0 from front
place gate, on floor, 20" from left, 0 from front`,
      ["in-a-circle"],
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
