/** What follows from places, and what places follow from: sizes, counts, boxes, circles, the order of lines, names of pieces. */
import { describe, expect, test } from "vitest";
import { uncheckedText } from "../../server/checks";
import { type Says, say } from "../../server/plan";
import type { Worked } from "../../server/worked";
import { allWhere, evaluated, faultsOf, inch, plan, STOCK, spansOf, whereIs } from "./plans";

const inches = (text: string, measure: string): number | undefined => {
  const value = evaluated(STOCK + text).worked.measures.get(measure)!.value;
  return value.state === "known" ? inch(value.value.approx) : undefined;
};

/** What is asked of a line, where it leads round to itself. */
const across = (name: string): Says => say("where stands", { name, way: say("left to right") });

/** The not-checked list, a line for each. */
const linesOf = ({ unchecked }: Worked): string[] =>
  unchecked.map((u) => uncheckedText(u)).map(({ what, why }) => `${what}: ${why}`);

describe("expressions ask for placed things", () => {
  const FOUR =
    'place post upright, wide face front, 5" up, at each corner of 46-1/2" x 16-1/2", 2" from left, 3" from front\n';
  test.each([
    ["overall width of posts", 46.5],
    ["overall depth of posts", 16.5],
    ["overall height of posts", 20],
    ["overall width of front posts", 46.5],
    ["overall width of left posts", 4],
    ["left of posts", 2],
    ["right of posts", 48.5],
    ["front of posts", 3],
    ["back of posts", 19.5],
    ["bottom of posts", 5],
    ["top of posts", 25],
    ["left of front right post", 44.5],
    ["back of front left post", 4],
    ["top of floor", 0],
  ])("%s", (value, wanted) => {
    expect(inches(`${FOUR}measure m = ${value}`, "m")).toBe(wanted);
  });

  test("of a ring, an assembly, a box", () => {
    const text = `part side of b, length 12", ends mitered 45°
ring top = 4 side
assembly gate
  place post upright, 3" from left, 0 from front, on floor
place top flat, 0 from left, 0 from front, 30" up
place gate, 10" from left, 0 from front, on floor, 2 across, 5" apart
measure a = overall width of top
measure b-2 = overall width of gates
measure c = top of side`;
    expect(inches(text, "a")).toBe(12);
    expect(inches(text, "b-2")).toBe(13);
    expect(inches(text, "c")).toBe(31);
  });

  test("what stands nowhere has no size, and the floor no sides", () => {
    expect(inches("measure m = overall width of posts", "m")).toBeUndefined();
    expect(faultsOf("measure m = overall width of posts")).toEqual([]);
    expect(inches("measure m = left of floor", "m")).toBeUndefined();
    expect(faultsOf("measure m = left of floor")).toEqual(["unplaced"]);
  });
});

describe("the inside of a box follows from its walls", () => {
  const BOX = `part side of b, length 40"
part end of b, length 18"
part floor-board of b, length 38"
place side across, on edge, 0 from left, 0 from front, on floor, 2 high, tight
place side across, on edge, 0 from left, 19" from front, on floor, 2 high, tight
place end front to back, on edge, 0 from left, 1" from front, on floor, 2 high, tight
place end front to back, on edge, 39" from left, 1" from front, on floor, 2 high, tight
place floor-board across, flat, 1" from left, 1" from front, 1" up, 4 deep, spread between front sides and back sides
`;
  test("between the walls, and from the bottom to the rim", () => {
    for (const [side, wanted] of [
      ["width", 38],
      ["depth", 18],
      // Bottom from 1 to 2, rim at 8.
      ["height", 6],
    ] as const)
      expect(
        inches(
          `${BOX}box tub, walls side and end, bottom floor-board\nmeasure m = inside ${side} of tub`,
          "m",
        ),
      ).toBe(wanted);
  });
});

describe("counts follow from places", () => {
  test.each([
    ['place post upright, on floor, at each corner of 40" x 20"', 4],
    ['place post upright, on floor, 0 from left, 0 from front, 3 across, 5" apart, 2 deep, 7" apart', 6],
    [
      "place post upright, on floor, 0 from left, 0 from front\nplace post across, flat, on post, 0 from left, 0 from front",
      2,
    ],
  ])("%s", (lines, count) => {
    const { parts } = plan(lines).worked;
    expect(parts.get("post")).toMatchObject({ count: { state: "known", value: count }, counted: "placed" });
  });

  test("a count that another line asks for, though it places a row of its own by it", () => {
    const text = `place post upright, on floor, 0 from left, 0 from front, 3 across, 5" apart
measure n = count of posts
place slat across, flat, on posts, 0 from left, 0 from front, (n) high, tight`;
    expect(faultsOf(text)).toEqual([]);
    expect(plan(text).worked.pieces.all.length).toBe(6);
  });
});

describe("lines lean on each other in any order, and a circle is told along its path", () => {
  const LINES = [
    'place post upright, wide face front, on floor, at each corner of 40" x 20"',
    "part top-rail of b, length overall width of posts",
    "place top-rail across, on edge, in front of posts, flush with left of posts, flush with top of posts, 2 high, tight",
    "part shelf of b, length overall depth of top-rails + overall depth of posts",
    "place shelf front to back, flat, on top-rails, flush with front of top-rails, 5 across, spread between left posts and right posts",
  ];
  test("turned round, the same pieces", () => {
    const forth = allWhere(plan(LINES.join("\n")));
    const back = allWhere(plan([...LINES].reverse().join("\n")));
    expect(Object.keys(forth).length).toBe(11);
    expect(back).toEqual(forth);
  });

  test("two lines that lean on each other in different directions are no circle", () => {
    const text = `place post upright, on floor, flush with left of slat, 0 from front
place slat across, flat, on post, 5" from left, behind post`;
    expect(faultsOf(text)).toEqual([]);
    expect(whereIs("post", text)).toEqual([
      [5, 9],
      [0, 1],
      [0, 20],
    ]);
    expect(whereIs("slat", text)).toEqual([
      [5, 17],
      [1, 5],
      [20, 21],
    ]);
  });

  test("measure → place → length → place", () => {
    const text = `measure reach = right of arm
part arm of b, length reach
part hand of b, length 5"
place hand across, flat, 10" from left, 0 from front, on floor
place arm across, flat, right of hand, 0 from front, on floor`;
    const [fault, ...more] = evaluated(STOCK + text).worked.faults;
    expect(more).toEqual([]);
    expect(fault).toMatchObject({ kind: "circle" });
    const names = fault!.kind === "circle" ? fault!.path.map((p) => p.name) : [];
    expect(names).toEqual(["reach", across("arm"), "length of arm", "reach"]);
  });

  test("two lines round each other in one direction", () => {
    const text = `place post upright, on floor, right of slat, 0 from front
place slat across, flat, on floor, right of post, 5" from front`;
    const [fault, ...more] = plan(text).worked.faults;
    expect(more).toEqual([]);
    expect(fault!.kind === "circle" && fault!.path.map((p) => p.name)).toEqual([
      across("post"),
      across("slat"),
      across("post"),
    ]);
  });
});

describe("what is not known and no mistake", () => {
  test("a line that leans on an unknown stands on the not-checked list with the cause", () => {
    const { worked } = plan(
      "place slat across, flat, (overall width of posts) from left, 0 from front, on floor",
    );
    expect(worked.faults).toEqual([]);
    expect(worked.pieces.all).toEqual([]);
    expect(linesOf(worked)).toContain("where slat stands: post is placed nowhere");
  });

  test("nor is a direction undecided that only the unknown leaves open", () => {
    const { worked } = plan(`place post upright, on floor, (overall width of slats) from left, 0 from front
part mark of b, length 3"
place mark upright, on floor, 40" from left, 0 from front
place rail across, flat, between post and mark, 5" up, centered front to back on mark`);
    expect(worked.faults).toEqual([]);
    const lines = linesOf(worked);
    expect(lines).toContain("where post stands: slat is placed nowhere");
    expect(lines).toContain("where rail stands: slat is placed nowhere");
  });

  test("a mistake that is told elsewhere stays off it", () => {
    const { worked } = plan("place slat across, flat, on posts, 0 from left, 0 from front");
    expect(worked.faults.map((f) => f.kind)).toEqual(["unplaced"]);
    expect(linesOf(worked).filter((line) => line.startsWith("where"))).toEqual([]);
  });
});

describe("said twice in one line: the first counts", () => {
  test.each([
    ["upright, across", "upright"],
    ["across, flat, on edge", "across, flat"],
    ["upright, wide face left, wide face front", "upright, wide face left"],
    ["upright, 2 high, tight, 3 high", "upright, 2 high, tight"],
  ])("%s", (both, first) => {
    const at = ", 0 from left, 0 from front, on floor";
    expect(faultsOf(`place post ${both}${at}`)).toEqual(["said-twice"]);
    expect(allWhere(plan(`place post ${both}${at}`))).toEqual(allWhere(plan(`place post ${first}${at}`)));
  });
});

describe("identity", () => {
  const FIRST = "place slat across, flat, on floor, 0 from left, 0 from front, 2 high, tight";
  const ids = (lines: string): string[] => plan(lines).worked.pieces.all.map((p) => p.id);
  test.each([
    [
      "behind it",
      'place slat across, flat, 5" up, right of post, 0 from front\nplace post upright, on floor, 90" from left, 0 from front',
    ],
    ["that says the same", 'place slat across, flat, on floor, 30" from left, 0 from front'],
    ["of another part", "place post upright, on floor, behind slats, 0 from left"],
  ])("a line added %s renames nothing", (_, more) => {
    const before = ids(FIRST);
    const after = ids(`${FIRST}\n${more}`);
    expect(after.slice(0, before.length)).toEqual(before);
    expect(new Set(after).size).toBe(after.length);
    const above = ids(`place rail across, flat, 60" from left, 0 from front, on floor\n${FIRST}`);
    expect(above.slice(1)).toEqual(before);
  });

  test("a line of other words put in front renames nothing", () => {
    const before = ids(FIRST);
    const front =
      'place slat across, flat, 5" up, left of post, 0 from front\nplace post upright, on floor, 90" from left, 0 from front\n';
    expect(ids(front + FIRST)).toEqual(expect.arrayContaining(before));
  });
});

describe("two clauses that disagree", () => {
  test("by how much, and where each puts it", () => {
    const text = `place post upright, on floor, 0 from left, 0 from front
place slat across, flat, on post, flush with top of post, 0 from left, 0 from front`;
    const [fault, ...more] = plan(text).worked.faults;
    expect(more).toEqual([]);
    expect(fault).toMatchObject({ kind: "disputed", subject: "slat", axis: 2 });
    if (fault!.kind !== "disputed") return;
    expect(fault!.starts.map((s) => inch(s.approx))).toEqual([20, 19]);
    expect(inch(fault!.apart.approx)).toBe(-1);
    expect(fault!.either.length).toBe(2);
  });

  test("what only arithmetic with doubles makes differ is no dispute", () => {
    const text = `place post upright, leaning 17° back, on floor, 0 from left, 0 from front
part prop of b, length 20"
place prop upright, leaning 17° back, on floor, right of post, flush with front of post, flush with back of post`;
    expect(faultsOf(text)).toEqual([]);
  });
});

test("pieces of one line are at the line's own place in the text", () => {
  const { worked, text } = plan("place post upright, on floor, 0 from left, 0 from front");
  const [piece] = worked.pieces.all;
  expect(text.slice(piece!.at.start, piece!.at.end)).toBe("place post");
  expect(spansOf(piece!)).toEqual([
    [0, 4],
    [0, 1],
    [0, 20],
  ]);
});

test("a line read before, whose neighbours changed, is worked out anew", () => {
  // The rail's entry is the same text at the same place in both, and is read once: only the posts move.
  const text = (second: string): string => `place rail across, flat, between one and two, 5" up
part one of 2x4, length 20"
part two of 2x4, length 20"
part rail of 2x4, length 30"
place one upright, on floor, 0 from left, 0 from front
place two upright, on floor, ${second}`;
  const open = (second: string) =>
    evaluated(text(second)).worked.faults.map((f) => (f.kind === "undecided" ? f.open : f.kind));
  expect(open('33-1/2" from left, 0 from front')).toEqual([[1]]);
  expect(open('0 from left, 5" from front')).toEqual([[0]]);
});

test("a name that every object of the program has is no property of a leg or a box", () => {
  for (const name of ["post", "bin"])
    expect(
      evaluated(`stock b, actual 1" x 4"
part post of b, length 20"
measure odd = constructor of ${name}
box bin, walls post
place post upright, wide face front, on floor`).worked.faults.map((f) => f.kind),
    ).toEqual(["unknown-name"]);
});
