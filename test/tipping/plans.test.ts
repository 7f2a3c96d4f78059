/** Things of plans: what stands by itself, where its weight is, its states, what anchors it, and what was not looked at. */
import { describe, expect, test } from "vitest";
import { uncheckedText } from "../../server/checks";
import type { Worked } from "../../server/worked";
import { codesOf, run } from "../checks/plans";

const LB = 0.45359237;
const IN = 25.4;
const standing = (text: string): Worked["standing"] => run(text).worked.standing;
const notChecked = (text: string): string[] =>
  run(text).worked.unchecked.map((u) => {
    const { what, why } = uncheckedText(u);
    return `${what}, since ${why}`;
  });

/** Two 4x4 skids and a 2x12 on them, all spruce-pine-fir at 28 lb/cuft or so: only ratios matter. */
const SLAB = `part skid 2 of 4x4, length 20"
part board 1 of 2x12, length 40"
place skid front to back, on edge, on floor, 0 from left, 0 from front
place skid front to back, on edge, on floor, 36-1/2" from left, 0 from front
place board across, flat, on skids, 0 from left, 0 from front
fasten board into skid, 2 #10 x 3" at each crossing
`;

/** A bed of boards on the ground, filled. */
const BED = `part side 2 of 2x12, length 40"
part end 2 of 2x12, length 17"
part plank 3 of 2x6, length 37"
place side across, on edge, on floor, 0 from left, 0 from front
place side across, on edge, on floor, 0 from left, 18-1/2" from front
place end front to back, on edge, on floor, behind front side, flush with left of front side
place end front to back, on edge, on floor, behind front side, flush with right of front side
place plank across, flat, on floor, right of left end, behind front side, 3 deep, spread between front side and back side
fasten side into end, 2 #8 x 3-1/2" at each crossing
box bed, walls side and end, bottom plank, drains through the gaps
  filled with potting-mix to 1" below rim
`;

describe("how a thing stands", () => {
  test("its middle is that of its pieces' volumes", () => {
    const [thing] = standing(SLAB);
    const skid = 20 * 3.5 * 3.5;
    const board = 40 * 11.25 * 1.5;
    const middle = (a: number, b: number, c: number) => (skid * (a + b) + board * c) / (2 * skid + board);
    const { mass, state } = thing!.stance!.states[0]!;
    expect(state).toBe("standing");
    expect(mass.at[0] / IN).toBeCloseTo(middle(1.75, 38.25, 20), 9);
    expect(mass.at[1] / IN).toBeCloseTo(middle(10, 10, 5.625), 9);
    expect(mass.at[2] / IN).toBeCloseTo(middle(1.75, 1.75, 4.25), 9);
    expect(thing!.stance!.base.map((p) => p.map((x) => x / IN))).toEqual([
      [0, 0],
      [40, 0],
      [40, 20],
      [0, 20],
    ]);
  });

  test("a board with its ends cut has its middle where the cut leaves it", () => {
    // A right triangle cut off: 24" long, 3-1/2" wide, mitered 45° at one end.
    const plan = `part wedge 1 of 2x4, length 24", right end mitered 45°
part cleat 1 of 2x4, length 24"
place wedge across, flat, on floor, 0 from left, 0 from front
place cleat across, flat, on wedge, 0 from left, 0 from front
fasten cleat into wedge, 2 #8 x 2-1/2" at each crossing
`;
    const { mass } = standing(plan)[0]!.stance!.states[0]!;
    const whole = 24 * 3.5;
    const cut = (3.5 * 3.5) / 2;
    const wedge = (whole * 12 - cut * (24 - 3.5 / 3)) / (whole - cut);
    const share = (whole - cut) / (2 * whole - cut);
    expect(mass.at[0] / IN).toBeCloseTo(share * wedge + (1 - share) * 12, 6);
  });

  test("things that do not touch are judged each by itself, and alike ones once", () => {
    const far = SLAB.replace("skid 2", "skid 4").replace("board 1", "board 2");
    const twice = `${far}place skid front to back, on edge, on floor, 100" from left, 0 from front
place skid front to back, on edge, on floor, 136-1/2" from left, 0 from front
place board across, flat, on skids, 100" from left, 0 from front
`;
    expect(standing(twice)).toHaveLength(1);
    const longer = `${SLAB}part log 1 of 4x4, length 30"
place log front to back, on edge, on floor, 100" from left, 0 from front
`;
    expect(standing(longer).map((t) => t.pieces.length)).toEqual([3, 1]);
  });

  test("a fill lies between the walls: dry in the middle, wet on one side with half of each weight", () => {
    const states = standing(BED)[0]!.stance!.states;
    expect(states.map((s) => s.state)).toEqual([
      "empty",
      "dry",
      ...Array.from({ length: 4 }, () => "wet on one side"),
    ]);
    const [empty, dry, left] = states.map((s) => s.mass);
    // 37" x 17" inside, from 1-1/2" up to 10-1/4": 5504 in3, at 12 and at 75 lb/cuft.
    const cuft = (37 * 17 * 8.75) / 1728;
    expect((dry!.kg - empty!.kg) / LB).toBeCloseTo(cuft * 12, 6);
    expect((left!.kg - empty!.kg) / LB).toBeCloseTo(cuft * (12 + 75) * 0.5, 6);
    // A quarter of 37" to the left and to the right of the middle.
    const moment = (20 - 9.25) * 37.5 + (20 + 9.25) * 6;
    const share = (left!.kg - empty!.kg) / left!.kg;
    expect(left!.at[0] / IN).toBeCloseTo((1 - share) * 20 + share * (moment / 43.5), 6);
  });
});

describe("turned and mirrored", () => {
  test("a plan tips as easily", () => {
    const across = `part leg of 4x4, length 30"
part rail of 2x6, length 60"
part tie of 2x6, length 20"
place leg upright, wide face front, on floor, at each corner of 60" x 17"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
place tie front to back, on edge, left of legs, flush with front of rails, flush with top of legs
place tie front to back, on edge, right of legs, flush with front of rails, flush with top of legs
fasten rail and tie into leg, 2 #10 x 3" at each crossing
`;
    const turned = across
      .replace('60" x 17"', '17" x 60"')
      .replace("rail across, on edge, in front of", "rail front to back, on edge, left of")
      .replace("rail across, on edge, behind", "rail front to back, on edge, right of")
      .replaceAll("flush with left of legs, flush with top", "flush with front of legs, flush with top")
      .replace("tie front to back, on edge, left of", "tie across, on edge, in front of")
      .replace("tie front to back, on edge, right of", "tie across, on edge, behind")
      .replaceAll("flush with front of rails", "flush with left of rails");
    const [one, other] = [standing(across)[0]!, standing(turned)[0]!];
    expect(one.tip!.by).toBe("push");
    expect(other.tip!.force).toBeCloseTo(one.tip!.force, 9);
    expect(other.tip!.weight).toBeCloseTo(one.tip!.weight, 9);
    expect(other.tip!.side.outward.map(Math.abs)).toEqual([1, 0]);
  });
});

describe("what anchors it, and what was not looked at", () => {
  const TALL = `part side 2 of 2x12, length 50"
part back 2 of 1x6, length 39"
place side upright, wide face left, on floor, 0 from left, 0 from front
place side upright, wide face left, on floor, 37-1/2" from left, 0 from front
place back across, on edge, behind sides, flush with left of sides, flush with top of sides
place back across, on edge, behind sides, flush with left of sides, on floor
fasten back into side, 2 #8 x 2" at each crossing
`;
  const plan = (clause: string): string => `plan Stand\n  indoors${clause}\n${TALL}`;

  test("the clause ends the judging, and the list says that the anchor was not looked at", () => {
    expect(codesOf(plan(""))).toContain("tips-over");
    expect(codesOf(plan("\n  anchored to the wall, by 2 angles # and screws"))).not.toContain("tips-over");
    expect(run(plan("\n  anchored to the wall, by 2 angles")).worked.settings.anchoredTo).toBe(
      "the wall, by 2 angles",
    );
    expect(notChecked(plan("\n  anchored to the wall"))).toContain(
      "whether its anchor holds, since the plan tells of it only in words",
    );
    expect(notChecked(plan(""))).not.toContain(
      "whether its anchor holds, since the plan tells of it only in words",
    );
  });

  test("said twice, the first counts", () => {
    const twice = plan("\n  anchored to the wall\n  anchored to the post");
    expect(codesOf(twice)).toContain("said-twice");
    expect(run(twice).worked.settings.anchoredTo).toBe("the wall");
  });

  test("feet in one line, what goes into the ground, and wood of no known weight are listed", () => {
    const line = `part leg 1 of 2x4, length 20"\npart arm 1 of 2x4, length 20"
place leg upright, wide face front, on floor, 0 from left, 0 from front
place arm across, flat, on leg, 0 from left, 0 from front
fasten arm into leg, 1 #8 x 3" at each crossing
`;
    expect(notChecked(line)).toContain(
      "whether what stands on leg tips over, since its feet stand in one line",
    );
    // Over 60" it is anchored whatever its feet: 58-1/2" and 1-1/2".
    const long = (length: string): string[] => codesOf(line.replace('length 20"', `length ${length}`));
    expect(long('58-1/2"')).not.toContain("tips-over");
    expect(long('58-5/8"')).toContain("tips-over");
    const buried = SLAB.replaceAll("on floor", '2" below floor');
    expect(standing(buried).map((t) => t.untried)).toEqual(["in the ground"]);
    const strange = `stock 4x4, species catalpa\n${SLAB}`;
    expect(notChecked(strange)).toContain(
      "whether what stands on skid tips over, since the weight of skid is not known, and counts as nothing",
    );
    expect(standing(strange)[0]!.stance!.weighed).toBe(false);
    expect(standing(`stock 2x12, species catalpa\n${strange}`).map((t) => t.untried)).toEqual(["no weight"]);
    expect(notChecked(SLAB.replace(/fasten.*/, ""))).toContain(
      "whether it tips over, since no line says how its pieces are joined",
    );
  });

  test("a fill of unknown weight is listed", () => {
    const own = BED.replace("potting-mix", "bark").concat("fill bark, saturated 40 lb/cuft\n");
    expect(notChecked(own)).toContain(
      "whether it tips over once bed is filled, since what its fill weighs dry and saturated is not known",
    );
    expect(notChecked(BED).filter((n) => n.includes("once bed is filled"))).toEqual([]);
  });
});

describe("loads and people", () => {
  const bench = (more: string): string => `part leg of 4x4, length 16"
part rail of 2x6, length 36"
part top of 2x12, length 60"
place leg upright, wide face front, on floor, at each corner of 36" x 11-1/4"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
place top across, flat, on legs, 4" past left of legs, flush with front of legs
fasten rail into leg, 2 #10 x 3" at each crossing
fasten top into leg, 2 #10 x 3" at each crossing
${more}`;

  test("a load in the middle, or spread, is taken in the middle; one anywhere at the worst edge", () => {
    const tipped = (load: string) => standing(bench(load))[0]!.stance!.perches.find((p) => p.is === "load")!;
    expect(tipped("load top 80 lb spread").points.map(([x, y]) => [x / IN - 26, y / IN - 5.625])).toEqual([
      [expect.closeTo(0, 9), expect.closeTo(0, 9)],
    ]);
    expect(tipped("load top 80 lb anywhere").points).toHaveLength(4);
    expect(tipped("load top 80 lb").kg).toBeCloseTo(80 * LB, 9);
    expect(standing(bench("load top 80 in"))[0]!.stance!.perches.some((p) => p.is === "load")).toBe(false);
  });

  test("a top between 12 in and 24 in, and as wide as 2-1/2 in, is sat on", () => {
    const seats = (text: string): string[] =>
      standing(text)[0]!.stance!.perches.flatMap((p) => (p.is === "seat" ? [p.on] : []));
    expect(seats(bench(""))).toEqual(["leg", "top"]);
    expect(seats(bench("").replace('length 16"', 'length 22-1/2"'))).toEqual(["leg", "top"]);
    expect(seats(bench("").replace('length 16"', 'length 23"'))).toEqual(["leg"]);
    expect(seats(bench("").replace('length 16"', 'length 10"'))).toEqual([]);
    expect(seats(bench("").replace('length 16"', 'length 10-1/2"'))).toEqual(["top"]);
    expect(seats(bench("").replace("top of 2x12", "top of 2x2"))).toEqual(["leg"]);
  });
});
