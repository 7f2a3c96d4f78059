/** Whether water has a way out of a box at all: just on either side of each limit, and where nothing is to be said. */
import { describe, expect, test } from "vitest";
import { run } from "../checks/plans";
import { notChecked } from "../finish/plans";
import { box, codes, INDOORS, OUTDOORS } from "./plans";

const TUB = 'box tub, inside 24" x 12" x 10"';
const said = (text: string): string[] => codes(text).filter((c) => c.startsWith("no-drain"));

describe("no drain said", () => {
  test.each([
    ["in the rain", `${OUTDOORS}${TUB}, filled with soil, no drain`, ["no-drain: said"]],
    ["watered inside", `${INDOORS}${TUB}, filled with soil, grows basil, no drain`, ["no-drain: said"]],
    ["watered somewhere", `${TUB}, filled with soil, grows basil, no drain`, ["no-drain: said"]],
    ["dry inside", `${INDOORS}${TUB}, filled with sand, no drain`, []],
    ["nobody says where", `${TUB}, filled with sand, no drain`, []],
    ["empty in the rain", `${OUTDOORS}${TUB}, no drain`, []],
    ["a basin is to hold water", `${OUTDOORS}${TUB}, filled with water, no drain`, []],
  ])("%s", (_, text, found) => {
    expect(said(text)).toEqual(found);
  });
});

describe("nothing said", () => {
  test.each([
    ["tight boards", box('10-1/2"', "3 deep, tight", ""), ["no-drain: tight"]],
    // Room of 10-11/16": the two gaps are 3/32", too narrow to drain.
    ['gaps of 3/32"', box('10-11/16"', '3 deep, 3/32" apart', ""), ["no-drain: tight"]],
    ['gaps of 1/8"', box('10-3/4"', '3 deep, 1/8" apart', ""), []],
    ['one gap of 1/8" at the back', box('10-5/8"', "3 deep, tight", ""), []],
  ])("%s", (_, text, found) => {
    expect(said(OUTDOORS + text)).toEqual(found);
  });

  test("a box without a placed bottom is put on the not-checked list", () => {
    const { problems, worked } = run(`${OUTDOORS}${TUB}, filled with soil`);
    expect(problems).toEqual([]);
    expect(notChecked(worked)).toContainEqual({
      what: "whether water can leave tub",
      why: "it does not say how it drains, and no bottom of it is placed between its walls",
    });
  });

  test("so is one of which nobody says whether it stands outdoors", () => {
    expect(notChecked(run(`${TUB}, filled with soil`).worked)).toContainEqual({
      what: "whether water can leave tub",
      why: "the plan does not say whether it stands outdoors",
    });
    const inside = notChecked(run(`${INDOORS}${TUB}, filled with soil`).worked);
    expect(inside.filter(({ what }) => what.startsWith("whether water"))).toEqual([]);
  });
});

describe("a liner", () => {
  const lined = (says: string, roll: string): string[] =>
    said(`${OUTDOORS}${TUB}, filled with soil${says}\nline tub with ${roll}`);

  test("that holds water is opened only over a drain that is said", () => {
    expect(lined("", "pond-liner")).toEqual(["no-drain: liner"]);
    expect(lined(', drains by 4 holes of 1/4"', "pond-liner")).toEqual([]);
    expect(lined(", drains through the gaps", "pond-liner")).toEqual([]);
  });

  test("of fabric, felt or mesh lets it through", () => {
    expect(lined("", "landscape-fabric")).toEqual([]);
    const mesh = `${OUTDOORS}roll wire-mesh, width 3'\n${TUB}, filled with soil\nline tub with wire-mesh`;
    const foil = mesh.replaceAll("wire-mesh", "black-foil");
    expect(said(mesh)).toEqual([]);
    expect(said(foil)).toEqual(["no-drain: liner"]);
  });

  test("is one mistake with no drain, and told as that", () => {
    expect(lined(", no drain", "pond-liner")).toEqual(["no-drain: said"]);
  });

  test("over boards with gaps is cured by saying that these drain", () => {
    const text = `${OUTDOORS}${box('11-1/4"', '3 deep, 3/8" apart', "")}line trough with pond-liner`;
    const [problem] = run(text).problems;
    expect(problem?.cures.map((c) => c.edits.map((e) => e.text))).toEqual([[", drains through the gaps"]]);
  });
});

test("the layers of a box, from the fill outward", () => {
  const text = `${OUTDOORS}${TUB}, filled with soil, drains by 4 holes of 1/4"\nline tub with landscape-fabric\nline tub with pond-liner`;
  const [path] = run(text).worked.water.boxes;
  expect(path).toMatchObject({ water: "rain", out: "holes", wet: true });
  expect(path?.layers).toEqual([
    { roll: "landscape-fabric", holdsWater: false, opened: false },
    { roll: "pond-liner", holdsWater: true, opened: true },
  ]);
});
