/** What soil for food may lie against, by hand: each word of a stock and of a roll, and each kind of plant. */
import { describe, expect, test } from "vitest";
import { uncheckedText } from "../../server/checks";
import { plantNames, plantUse } from "../../server/trade";
import { run } from "../checks/plans";

const bed = (stock: string, more = "", grows = "lettuce"): string => `stock wall-wood of 1x6, ${stock}
part side 2 of wall-wood, length 30"
part end 2 of wall-wood, length 12"
box bed, walls side and end, inside 30" x 10-1/2" x 5-1/2", filled with soil, grows ${grows}
${more}`;
const found = (text: string): string[] =>
  run(text).problems.flatMap((p) => (p.code === "not-for-food" ? [`${p.says} ${p.class}`] : []));
const unchecked = (text: string): string[] =>
  run(text).worked.unchecked.map((u) => {
    const { what, why } = uncheckedText(u);
    return `${what}, since ${why}`;
  });

describe("wood", () => {
  test.each([
    ["sold 8' $5", []],
    ["treated, sold 8' $5", []],
    ["sold 8' $5, on hand 4 of 40\"", []],
    ["treated, sold 8' $5, on hand 4 of 40\"", []],
    ['untreated, on hand 4 of 40"', []],
    ['on hand 4 of 40"', ["unknown hazard"]],
    ['heartwood, on hand 4 of 40"', ["unknown hazard"]],
    ['treated, on hand 4 of 40"', ["old treated hazard"]],
    ['painted, on hand 4 of 40"', ["painted hazard"]],
    ['painted, untreated, on hand 4 of 40"', ["painted hazard"]],
    ["painted, sold 8' $5", ["painted hazard"]],
  ])("%s", (stock, problems) => {
    expect(found(bed(stock))).toEqual(problems);
  });

  test("of the bottom too, and of the sides of a ring; each stock once", () => {
    const ring = `stock old of 1x6, painted, on hand 9 of 40"
stock dock of 1x6, on hand 9 of 40"
part side of old, length 30", long point to long point, ends mitered 45°
part plank 3 of dock, length 28"
ring frame = 4 side
box bed, walls frame, bottom plank, inside 28" x 28" x 5", filled with soil, grows lettuce`;
    expect(found(ring)).toEqual(["painted hazard", "unknown hazard"]);
  });

  test("of other things than the box is not looked at", () => {
    const apart = `stock old of 1x6, painted, on hand 9 of 40"\npart shelf 2 of old, length 30"\n`;
    expect(found(apart + bed("sold 8' $5"))).toEqual([]);
  });
});

describe("plants", () => {
  const painted = 'painted, on hand 4 of 40"';
  test.each([
    ["lettuce", 1],
    ["tomatoes", 1],
    ["radishes", 1],
    ["strawberries", 1],
    ["potatoes and marigolds", 1],
    ["marigolds", 0],
    ["marigolds and lavender", 0],
    ["mandrake", 0],
  ])("%s", (grows, count) => {
    expect(found(bed(painted, "", grows))).toHaveLength(count);
  });

  test("a plant of no table stays unknown", () => {
    expect(unchecked(bed(painted, "", "mandrake"))).toContain(
      "whether bed is fit for what grows in it, since no table says whether mandrake is eaten",
    );
  });

  test("the tables have each plant once, by its singular", () => {
    const names = plantNames();
    expect(names.length).toBeGreaterThan(150);
    expect(names).toEqual([...new Set(names)]);
    for (const [name, use] of [
      ["spinach", "eaten"],
      ["peas", "eaten"],
      ["chives", "eaten"],
      ["cress", "eaten"],
      ["asparagus", "eaten"],
      ["pansies", "looked at"],
      ["irises", "looked at"],
      ["glass", undefined],
    ] as const)
      expect(plantUse(name), name).toBe(use);
  });
});

describe("liners", () => {
  const lined = (roll: string, name = "pond-liner"): string =>
    `roll ${name}, width 6'${roll}\nline bed with ${name}\n`;
  const painted = 'painted, on hand 4 of 40"';

  test.each([
    // What lets no water through keeps soil and wood apart.
    ["pond-liner", ", food safe", []],
    ["pond-liner", ", not food safe", ["liner hazard"]],
    ["pond-liner", "", []],
    // Water that goes through a fabric has been at the paint.
    ["felt", ", food safe", ["painted hazard"]],
    ["felt", ", not food safe", ["liner hazard", "painted hazard"]],
    ["felt", "", ["painted hazard"]],
  ])("%s%s before old paint", (name, words, problems) => {
    expect(found(bed(painted, lined(words, name))).sort()).toEqual(problems);
  });

  test("one of which nothing is said stays unknown", () => {
    expect(unchecked(bed("sold 8' $5", lined("")))).toContain(
      "whether pond-liner in bed is fit for what grows there, since neither the plan nor the shop says whether pond-liner is food safe",
    );
    expect(found(bed("sold 8' $5", "line bed with landscape-fabric\n"))).toEqual([]);
  });

  test("flowers mind none", () => {
    expect(found(bed("sold 8' $5", lined(", not food safe"), "marigolds"))).toEqual([]);
  });
});

describe("what else stays unknown", () => {
  test("a finish on walls that soil lies against, not behind a liner", () => {
    const coat = "finish oil, dries 12 h\ncoat side with oil\n";
    const says =
      "whether oil on bed is fit for what grows there, since no table here says what a dry finish gives off";
    expect(unchecked(bed("sold 8' $5", coat))).toContain(says);
    const lined = `${coat}roll pond-liner, width 6', food safe\nline bed with pond-liner\n`;
    expect(unchecked(bed("sold 8' $5", lined))).not.toContain(says);
  });

  test("a panel that is only on hand", () => {
    const panel = `sheet ply, thickness 18mm, on hand 1 of 48" x 48"
part side 4 of ply, length 30", width 6"
box bed, walls side, inside 28" x 28" x 6", filled with soil, grows kale`;
    expect(found(panel)).toEqual([]);
    expect(unchecked(panel)).toContain(
      "whether ply in bed is fit for what grows there, since nobody says what ply, which is only on hand, was treated with",
    );
  });

  test("a box that names no walls", () => {
    expect(unchecked('box tub, inside 20" x 20" x 12", filled with soil, grows kale')).toContain(
      "whether tub is fit for what grows in it, since the plan names neither the walls nor the bottom of tub",
    );
  });
});

describe("ways out", () => {
  const cures = (text: string) =>
    run(text)
      .problems.filter((p) => p.code === "not-for-food")
      .flatMap((p) => p.cures.map((c) => [c.says, c.edits.length]));

  test("a plain board where one is sold that is as large and long enough", () => {
    const old = 'painted, on hand 4 of 40"';
    const shop = (sold: string): string => `stock 1x6, ${sold}\npart lip 1 of 1x6, length 9"\n`;
    expect(cures(bed(old, shop("sold 8' $5")))).toContainEqual(["plain", 2]);
    expect(cures(bed(old, shop('sold 31" $5')))).toContainEqual(["new", 0]);
    expect(cures(bed(old, shop('actual 1" x 6", sold 8\' $5')))).toContainEqual(["new", 0]);
    expect(cures(bed(old, shop("painted, sold 8' $5")))).toContainEqual(["new", 0]);
  });

  test("a roll of the shop that is food safe and lets no water through", () => {
    const old = 'painted, on hand 4 of 40"';
    expect(cures(bed(old, "roll pond-liner, width 6', food safe\n"))).toContainEqual(["line", 1]);
    expect(cures(bed(old, "roll felt, width 6', food safe\n"))).toContainEqual(["no roll", 0]);
    expect(cures(bed(old, "roll pond-liner, width 6'\n"))).toContainEqual(["no roll", 0]);
  });

  test("a line that lines two boxes is told, not written over", () => {
    const two = `box tub, inside 20" x 20" x 12", filled with soil
roll tarp, width 6', not food safe
roll pond-liner, width 6', food safe
line bed and tub with tarp`;
    expect(cures(bed("sold 8' $5", two))).toEqual([["reline", 0]]);
  });
});
