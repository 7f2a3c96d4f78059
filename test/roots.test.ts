/** Room for roots in boxes: against the published minimum of a container, and never against how deep roots go in the ground. */
import { describe, expect, test } from "vitest";
import { uncheckedText } from "../server/checks";
import { hoverAt } from "../server/features/hover";
import { cropCalled, cropNames } from "../server/trade";
import { type RootRoom, rootRoom } from "../server/worked";
import { codesOf, run } from "./checks/plans";

const IN = 25.4;
const GAL = 231 * IN ** 3;
const tub = (inside: string, rest: string): string =>
  `box tub, inside ${inside}, filled with potting-mix${rest}, weighs 16 lb empty\n`;
const rooms = (text: string): RootRoom[] => rootRoom(run(text).worked);
const states = (text: string): string[] => rooms(text).map((r) => r.state);
const notChecked = (text: string): string[] =>
  run(text).worked.unchecked.map((u) => {
    const { what, why } = uncheckedText(u);
    return `${what}, since ${why}`;
  });

describe("what a crop is called", () => {
  test("by its name, its plural, or as a kitchen herb", () => {
    expect(cropCalled("tomatoes")?.name).toBe("tomato");
    expect(cropCalled("beans")?.name).toBe("bean");
    expect(cropCalled("radishes")?.name).toBe("radish");
    expect(["parsley", "chives", "herbs", "herb"].map((w) => cropCalled(w)?.name)).toEqual(
      Array(4).fill("herbs"),
    );
    expect(["lavender", "marigolds", "s", "es", ""].map(cropCalled)).toEqual(Array(5).fill(undefined));
    for (const name of cropNames()) expect(cropCalled(name)?.name).toBe(name);
  });

  test("each has what was published of it, containers apart from open ground", () => {
    // University of Maryland Extension, 2023: 8 to 10 gal and 12 to 16 in for tomatoes.
    expect(cropCalled("tomato")?.container?.value).toEqual({ low: 8, high: 10 });
    expect(cropCalled("tomato")?.containerDepth?.value).toEqual({ low: 12, high: 16 });
    expect(cropCalled("tomato")?.rootDepth?.value).toEqual({ low: 24, high: 36 });
    // Texas A&M EHT-062: 5 gal for an eggplant, 2 for broccoli, and no depth.
    expect(cropCalled("eggplant")?.container?.value).toEqual({ low: 5, high: 5 });
    expect(cropCalled("broccoli")?.containerDepth).toBeUndefined();
  });
});

describe("the room in a box", () => {
  test("is measured to the level of the fill, just on either side of the least depth", () => {
    const grown = (level: string): string => tub('20" x 20" x 16"', ` ${level}\n  grows tomato`);
    expect(states(grown('12" deep'))).toEqual(["enough"]);
    expect(states(grown('11-15/16" deep'))).toEqual(["less deep"]);
    expect(states(grown('to 4" below rim'))).toEqual(["enough"]);
    const [short] = rooms(grown('to 5" below rim'));
    expect(short!.depth!.approx / IN).toBeCloseTo(11, 9);
    expect(short!.short!.approx / IN).toBeCloseTo(1, 9);
    expect(codesOf(grown('12" deep'))).toEqual([]);
    expect(codesOf(grown('11-15/16" deep'))).toEqual(["roots-cramped"]);
  });

  test("must also hold as much as a container, just on either side", () => {
    // 8 gal are 1848 cubic inches: 12" x 12" x 12-5/6".
    expect(states(tub('12" x 12" x 12-7/8"', "\n  grows cucumber"))).toEqual(["enough"]);
    const [room] = rooms(tub('12" x 12" x 12-3/4"', "\n  grows cucumber"));
    expect(room!.state).toBe("less");
    expect(room!.volume!.approx / GAL).toBeCloseTo((144 * 12.75) / 231, 9);
    expect(room!.short!.approx / IN).toBeCloseTo(1848 / 144 - 12.75, 9);
  });

  test("is deep enough once the fill is as much deeper as it says", () => {
    for (const [wide, crop] of [
      ["11", "cucumber"],
      ["30", "tomato"],
      ["8", "eggplant"],
    ] as const) {
      const [room] = rooms(tub(`${wide}" x ${wide}" x 6"`, `\n  grows ${crop}`));
      const deeper = 6 + room!.short!.approx / IN + 1e-6;
      expect(states(tub(`${wide}" x ${wide}" x ${deeper.toFixed(7)}"`, `\n  grows ${crop}`))).toEqual([
        "enough",
      ]);
    }
  });

  test("of a box open below is that of the ground", () => {
    const bed = (bottom: string): string => `part side 2 of 1x6, length 30"
part end 2 of 1x6, length 30"
part plank 5 of 1x6, length 28-1/2"
box bed, inside 28" x 28" x 5"${bottom}, walls side and end, filled with soil, weighs 20 lb
  grows tomato
`;
    expect(states(bed(""))).toEqual(["open"]);
    expect(states(bed(", bottom plank"))).toEqual(["less deep"]);
    expect(states(bed(', drains by 4 holes of 1/2"'))).toEqual(["less deep"]);
    expect(codesOf(bed(""))).not.toContain("roots-cramped");
  });

  test("is not looked at for what no table names, and the list says so", () => {
    const plan = tub('20" x 20" x 16"', "\n  grows lavender and onions");
    expect(states(plan)).toEqual(["no table", "no table"]);
    expect(codesOf(plan)).toEqual([]);
    expect(notChecked(plan)).toEqual(
      expect.arrayContaining([
        "whether lavender finds room for its roots in tub, since no table says what lavender wants in a container",
        "whether onions finds room for its roots in tub, since no table says what onions wants in a container",
      ]),
    );
    const unplaced =
      'part side 4 of 1x6, length 20"\nbox bed, walls side, bottom side, filled with soil\n  grows lettuce\n';
    expect(states(unplaced)).toEqual(["no room known"]);
    expect(notChecked(unplaced).some((n) => n.startsWith("whether lettuce finds room"))).toBe(true);
  });

  test("one hint a box, for what wants most, the others beside it", () => {
    const { problems } = run(tub('20" x 20" x 7"', "\n  grows lettuce and tomato and carrots"));
    expect(problems.map((p) => [p.code, p.class, p.slots.crop, p.related.map((r) => r.slots.crop)])).toEqual([
      ["roots-cramped", "hint", "tomato", ["carrots"]],
    ]);
    const cures = (text: string) => run(text).problems.flatMap((p) => p.cures.map((c) => c.says));
    expect(cures(tub('20" x 20" x 14"', ' to 2-1/16" below rim\n  grows tomato'))).toEqual(["higher"]);
    expect(cures(tub('20" x 20" x 12"', ' to 1" below rim\n  grows tomato'))).toEqual(["higher"]);
    expect(cures(tub('20" x 20" x 12"', ' to 2" below rim\n  grows tomato'))).toEqual(["higher"]);
    expect(cures(tub('20" x 20" x 11"', ' to 1/2" below rim\n  grows tomato'))).toEqual(["deeper"]);
  });
});

describe("the hover over a box", () => {
  const shown = (text: string): string => {
    const plan = run(text);
    return hoverAt(plan, text.indexOf("tub") + 1)?.markdown ?? "";
  };
  test("tells what is wanted, what is here and where that is from, and of the ground apart", () => {
    const lines = shown(tub('20" x 20" x 9"', ' to 1" below rim\n  grows tomato and lettuce and lavender'))
      .split("\n")
      .filter((line) => line.includes("Grows"));
    const umd =
      "University of Maryland Extension, growing vegetables in containers 2023 (as reproduced by extension.umd.edu)";
    expect(lines).toEqual([
      `- Grows tomato, which wants 12" to 16" of depth and 8 gal to 10 gal in a container: 8" and 13.9 gal here, which is less; ${umd}. In open ground its roots go 24" to 36" deep`,
      `- Grows lettuce, which wants 4" to 6" of depth and 1 gal to 3 gal in a container: 8" and 13.9 gal here; ${umd}. In open ground its roots go 12" to 18" deep`,
      "- Grows lavender: no table says what it wants in a container.",
    ]);
  });

  test("says one number where one is published", () => {
    expect(shown(tub('20" x 20" x 9"', "\n  grows eggplant"))).toContain(
      "Grows eggplant, which wants 5 gal in a container:",
    );
  });
});
