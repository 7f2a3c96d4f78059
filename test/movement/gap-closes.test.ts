/** Rows of boards at the wettest of the year: just on either side of closing and pushing, worked by hand beside each. */
import { describe, expect, test } from "vitest";
import { run } from "../checks/plans";
import { notChecked } from "../finish/plans";
import { box, codes, INDOORS, OUTDOORS } from "../water/plans";

const said = (text: string): string[] => codes(text).filter((c) => c.startsWith("gap-closes"));
const CEDAR = "stock 1x6, species western-redcedar\n";
/** Four boards 5-1/2" wide, free at both ends. */
const deck = (
  gap: string,
  stock = CEDAR,
  plan = OUTDOORS,
): string => `${plan}${stock}part slat of 1x6, length 40"
place slat across, flat, on floor, 0 from left, 0 from front, 4 deep, ${gap}`;
/** The same between two kerbs; the room is what is over their four widths. */
const walk = (
  room: string,
  stock = CEDAR,
  plan = OUTDOORS,
): string => `${plan}${stock}part slat of 1x6, length 40"
part kerb of 2x4, length 40"
place kerb across, on edge, on floor, 0 from left, 0 from front
place slat across, flat, on floor, 0 from left, 1-1/2" from front, 4 deep, tight
place kerb across, on edge, on floor, 0 from left, (23-1/2" + ${room}) from front`;

describe("gaps in the open", () => {
  // Cedar 5% from 22% down: from 12 to 20.5% by (1 - 0.05 x 1.5/22) / (1 - 0.05 x 10/22) - 1 = 1.9767%, of 5.5" 0.10872".
  test.each([
    ['0.108" apart', ["gap-closes: closes"]],
    ['0.109" apart', []],
    ['1/16" apart', ["gap-closes: closes"]],
    // What no tape shows was never left as a gap.
    ['1/64" apart', []],
    ["tight", []],
  ])("%s", (gap, found) => {
    expect(said(deck(gap))).toEqual(found);
  });

  test("follow how wet the boards are when they are built in", () => {
    // From 6% to 20.5%: (1 - 0.0034091) / (1 - 0.05 x 16/22) - 1 = 3.4198%, of 5.5" 0.18809".
    const dry = (gap: string): string[] => said(deck(gap, CEDAR.replace("\n", ", moisture 6%\n")));
    expect(dry('0.188" apart')).toEqual(["gap-closes: closes"]);
    expect(dry('0.189" apart')).toEqual([]);
    for (const wet of ["moisture green", "treated", "moisture 20.5%"])
      expect(said(deck('1/32" apart', CEDAR.replace("\n", `, ${wet}\n`)))).toEqual([]);
    // Dried after treatment: from 19% to 20.5% by 0.3432%, of 5.5" 0.01888".
    expect(said(deck('1/32" apart', CEDAR.replace("\n", ", treated, moisture 19%\n")))).toEqual([]);
  });

  test("indoors stay within 12%", () => {
    expect(said(deck('1/16" apart', CEDAR, INDOORS))).toEqual([]);
    expect(said(deck('1/32" apart', CEDAR.replace("\n", ", moisture 6%\n"), INDOORS))).toEqual([
      "gap-closes: closes",
    ]);
  });

  test("of a plan that does not say where it stands go to the not-checked list where they would close", () => {
    const listed = (gap: string) =>
      notChecked(run(deck(gap, CEDAR, "")).worked).filter(({ what }) => what.includes("room to swell"));
    expect(listed('1/16" apart')).toEqual([
      {
        what: "whether slat boards side by side have room to swell",
        why: "the plan does not say whether it stands outdoors",
      },
    ]);
    expect(listed('1/4" apart')).toEqual([]);
    expect(said(deck('1/16" apart', CEDAR, ""))).toEqual([]);
  });

  test("of a wood that no table prints go there too", () => {
    const text = deck('1/16" apart', "stock 1x6, species ash\n");
    expect(said(text)).toEqual([]);
    expect(notChecked(run(text).worked)).toContainEqual({
      what: "whether slat boards side by side have room to swell",
      why: "no table says how much ash swells",
    });
  });

  test("say what is looked at no further", () => {
    expect(notChecked(run(deck('1/4" apart')).worked)).toContainEqual({
      what: "whether boards cup, and whether screws near both their edges split them as they swell",
      why: "only how much wider they become is looked at",
    });
  });
});

describe("boards between two things that hold them", () => {
  // Four times 0.10872" are 0.43488".
  test.each([
    ['0.434"', ["gap-closes: pushes"]],
    ['0.435"', []],
    ['0"', ["gap-closes: tight"]],
  ])("with %s of room", (room, found) => {
    expect(said(walk(room))).toEqual(found);
  });

  test("need not care where one end is free", () => {
    const free = walk('0"').split("\n").slice(0, -1).join("\n");
    expect(said(free)).toEqual([]);
  });

  test("indoors stay as they are", () => {
    expect(said(walk('0"', CEDAR, INDOORS))).toEqual([]);
  });

  test("stacked on each other swell up, between a floor and a cap as well", () => {
    const wall = `${OUTDOORS}${CEDAR}part side of 1x6, length 40"
part cap of 1x4, length 40"
place side across, on edge, on floor, 0 from left, 0 from front, 2 high, tight
place cap across, flat, on sides, 0 from left, 0 from front`;
    expect(said(wall)).toEqual([]);
  });

  test("stand upright or lie flat alike", () => {
    const fence = (room: string): string => `${OUTDOORS}${CEDAR}part picket of 1x6, length 40"
part post of 4x4, length 40"
place post upright, wide face front, on floor, 0 from left, 0 from front
place picket upright, wide face front, on floor, 3-1/2" from left, 0 from front, 4 across, tight
place post upright, wide face front, on floor, (25-1/2" + ${room}) from left, 0 from front`;
    expect(said(fence('0.434"'))).toEqual(["gap-closes: pushes"]);
    expect(said(fence('0.435"'))).toEqual([]);
  });

  test("by legs at the corners alone, the nearest counts", () => {
    const floor = (over: string): string => `${OUTDOORS}${CEDAR}part slat of 1x6, length 20"
part leg of 2x2, length 6"
place leg upright, wide face front, on floor, at each corner of (25" + ${over}) x 20"
place slat front to back, flat, on floor, 0 from front, 2 across, tight, right of front left leg
place slat front to back, flat, on floor, 0 from front, 2 across, tight, left of front right leg`;
    expect(said(floor('0"'))).toEqual(["gap-closes: tight"]);
    expect(said(floor('0.435"'))).toEqual([]);
  });

  test("with a board across that no edge of theirs looks at are free", () => {
    const over = walk('0"').replaceAll(
      "place kerb across, on edge, on floor",
      'place kerb across, on edge, 3/4" up',
    );
    expect(said(over)).toEqual([]);
  });

  test("panels hardly move", () => {
    const panels = walk('0"').replaceAll("1x6", "ply").replace("species western-redcedar", "");
    const text = panels
      .replace("stock ply, \n", "sheet ply, thickness 18mm\n")
      .replace('part slat of ply, length 40"', 'part slat of ply, length 40", width 5-1/2"');
    expect(said(text)).toEqual([]);
  });
});

describe("the bottom of a box", () => {
  const gaps = ", drains through the gaps";
  const six = (deep: string, boards: string): string =>
    OUTDOORS + box(deep, boards, gaps).replaceAll("1x4", "1x6");
  // In wet soil cedar grows from 12 to 22% and more by 1 / (1 - 0.05 x 10/22) - 1 = 2.3256%, of 5.5" 0.12791".
  test.each([
    // Three boards swell 0.38372".
    ['0.191"', ["gap-closes: pushes"]],
    ['0.192"', []],
  ])('three of cedar 5-1/2" wide, tight at both sides, %s apart', (gap, found) => {
    expect(said(six(`16-1/2" + 2 * ${gap}`, `3 deep, ${gap} apart`))).toEqual(found);
  });

  test("drains no more when every gap closes", () => {
    // The two boards are held at both sides.
    const wide = (gap: string): string => six(`11" + ${gap}`, `2 deep, ${gap} apart`);
    expect(said(wide('0.127"'))).toEqual(["gap-closes: drains"]);
    expect(said(wide('0.128"'))).toEqual(["gap-closes: pushes"]);
  });

  test("a liner keeps the walls out of the wet, and not the bottom", () => {
    const lined = `${OUTDOORS}${box('11-1/8"', '2 deep, 1/8" apart', gaps).replaceAll("1x4", "1x6")}line trough with pond-liner`;
    expect(said(lined)).toEqual(["gap-closes: drains"]);
  });

  test("indoors it is wet once something grows in it", () => {
    const tight = (says: string): string[] =>
      said(INDOORS + box('10-1/2"', "3 deep, tight", `, drains by 5 holes of 1/2"${says}`));
    expect(tight("")).toEqual([]);
    expect(tight(", grows basil")).toEqual(["gap-closes: tight"]);
  });
});

test("rows through the year, as plain data", () => {
  const { rows } = run(walk('1"')).worked.movement;
  expect(rows.length).toBe(1);
  const [row] = rows;
  const inches = (mm: number): number => mm / 25.4;
  expect(row?.pieces.length).toBe(4);
  expect(row?.where).toBe("outdoors");
  expect(inches(row!.swelling)).toBeCloseTo(0.43488, 4);
  expect(inches(row!.room)).toBeCloseTo(1, 9);
  expect(inches(row!.span!)).toBeCloseTo(23, 9);
  expect(row!.gaps.length).toBe(3);
  for (const { built } of row!.gaps) expect(built).toBeCloseTo(0, 9);
  expect(inches(row!.gaps[0]!.wettest)).toBeCloseTo(-0.10872, 4);
  // Driest outdoors 9.2%: (1 - 0.05 x 12.8/22) / (1 - 0.05 x 10/22) - 1 = -0.6512%, of 5.5" 0.03581".
  expect(inches(row!.gaps[0]!.driest)).toBeCloseTo(0.03581, 4);
  expect(row!.ends.map((e) => inches(e!.gap.built))).toEqual([expect.closeTo(0, 9), expect.closeTo(1, 9)]);
});
