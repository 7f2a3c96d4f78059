/** When counts, cuts and marks are left alone: what is placed again, needs no cut, or was told already. */
import { describe, expect, test } from "vitest";
import { run } from "./plans";

const found = (text: string): string[] => run(text).problems.map((p) => p.code);

describe("a count beside what rings take", () => {
  const ring = (count: number, more = ""): string =>
    `part board ${count} of 1x4, length 12", ends mitered 30°\nring seat = 6 board\n${more}`;
  const AT = "0 from left, 0 from front";
  const once = `place seat flat, on floor, ${AT}\n`;

  test.each([
    ["six in a ring placed once", ring(6, once), []],
    ["more than a ring takes that is placed once", ring(12, once), ["cut-never-placed"]],
    [
      "more, where the ring is placed on two lines",
      ring(12, `${once}place seat flat, on floor, 90" from left, 0 from front\n`),
      [],
    ],
    [
      "more, where the ring is placed in a pattern",
      ring(12, `place seat flat, on floor, ${AT}, 2 high, tight\n`),
      [],
    ],
    [
      "more, where an assembly has the ring",
      ring(
        12,
        `assembly seats\n  ${once}place seats, on floor, ${AT}\nplace seats, on floor, 90" from left, 0 from front\n`,
      ),
      [],
    ],
    [
      "more, where others are placed by themselves",
      ring(8, `${once}place board across, flat, on seat, 3" from left, 1" from front, 2 deep, tight\n`),
      [],
    ],
    ["fewer than its places", ring(5, once), ["placed-never-cut"]],
    ["fewer than a ring takes that is not placed", ring(5), ["count-differs"]],
  ])("%s", (_, text, problems) => {
    expect(found(text)).toEqual(problems);
  });
});

describe("a part without a count", () => {
  test.each([
    [
      "that a line places",
      'part leg of 2x4, length 30"\nplace leg upright, on floor, 0 from left, 0 from front',
      [],
    ],
    [
      "that a line in an assembly places",
      'part leg of 2x4, length 30"\nassembly gate\n  place leg upright, on floor, 0 from left, 0 from front\nplace gate, on floor, 0 from left, 0 from front',
      [],
    ],
    ["that a ring counts", 'part board of 1x4, length 12", ends mitered 30°\nring seat = 6 board', []],
    [
      "that a misspelt ring would count: the name is told, and nothing else",
      'part board of 1x4, length 12", ends mitered 30°\nring seat = 6 bord',
      ["unknown-name"],
    ],
    ["that nothing counts", 'part leg of 2x4, length 30"', ["count-missing"]],
  ])("%s", (_, text, problems) => {
    expect(found(text)).toEqual(problems);
  });
});

describe("a saw that cannot rip", () => {
  test.each([
    ['3"', ["no-tool-for-cut"]],
    ['3-1/2"', []],
    // Too wide is one mistake, not two.
    ['4"', ["too-wide-for-stock"]],
  ])("a 1x4 at a width of %s", (width, problems) => {
    expect(found(`tools\n  no ripping\npart slat 4 of 1x4, length 20", width ${width}`)).toEqual(problems);
  });
});

describe("between two marks of the tape", () => {
  test("is told once for a part, its length first", () => {
    const { problems } = run('part slat 3 of 1x6, length 20" / 3, width 10" / 3');
    expect(problems.map((p) => `${p.code} ${p.says}`)).toEqual(["off-the-tape length"]);
  });

  test("a length from trigonometry on a mark is on it", () => {
    expect(found('part brace 2 of 1x4, length diagonal(3", 4")')).toEqual([]);
  });

  test.each([
    ['20-1/50"', 'length 20"'],
    ['diagonal(5", 5")', 'length round diagonal(5", 5") to 1/16"'],
    ['20" / 3', 'length round 20" / 3 to 1/16"'],
    ['(20" + 1" / 3)', 'length (round 20" + 1" / 3 to 1/16")'],
  ])("%s is cured in the text", (length, cured) => {
    const text = `part brace 2 of 1x4, length ${length}`;
    const [edit] = run(text).problems[0]!.cures[0]!.edits;
    const after = text.slice(0, edit!.start) + edit!.text + text.slice(edit!.end);
    expect(after).toBe(`part brace 2 of 1x4, ${cured}`);
    expect(found(after)).toEqual([]);
  });

  test("a sum whose place lacks its parentheses is not touched", () => {
    expect(run('part brace 2 of 1x4, length (20" + 1") / 13').problems[0]!.cures).toEqual([]);
  });
});
