/** How fill presses on the walls of a box, and what its screws are asked for. By hand, inches and pounds. */
import { describe, expect, test } from "vitest";
import { GRADED, IN, inertia, LB, modulus, type Seen, see } from "./hand";

/** lb/cuft: soil moist and saturated, and water at 1000 kg/m3. */
const MOIST = 100;
const WET = 125;
const WATER = 1000 / 16.018463;

/** At rest half of its weight presses sideways; with a blocked drain the water does in full, and the soil with what it weighs in it. */
const drained = 0.5 * MOIST;
const blocked = WATER + 0.5 * (WET - WATER);
/** Pounds on each inch of a board from one depth to another. */
const push = (fluid: number, from: number, to: number): number => (fluid * (to ** 2 - from ** 2)) / 2 / 1728;

/** Posts in the corners of 60" x 24", boards round them. */
const bed = (filled: string, more = "", high = 1, ends = ""): string => `plan Bed
  outdoors
part post of 4x4, length ${5.5 * high}"
part side of 2x6, length 60"
part end of 2x6, length 24"
place post upright, wide face front, on floor, at each corner of 60" x 24"
place side across, on edge, in front of posts, flush with left of posts, on floor${ends}
place side across, on edge, behind posts, flush with left of posts, on floor${ends}
place end front to back, on edge, left of posts, flush with front of posts, on floor${ends}
place end front to back, on edge, right of posts, flush with front of posts, on floor${ends}
fasten side and end into post, 3 #10 x 3" at each crossing
box bed, walls side and end
  filled with soil ${filled}
${more}`;

const wall = ({ holding, worked }: Seen, part: string, n = 0) =>
  holding.walls.filter((w) => worked.space.pieces[w.work.piece]!.part === part)[n]!;

/** Posts 3-1/2" wide: held at 1.75" and 58.25". */
const [L, a] = [56.5, 1.75];
const bent = (w: number): number => (w * L ** 2) / 8 - (w * a ** 2) / 2;

describe('a board with soil 3" deep behind it', () => {
  const seen = see(bed('3" deep'));
  const side = wall(seen, "side");

  test("bears the push of a blocked drain", () => {
    expect(side.work.depth / IN).toBeCloseTo(3, 9);
    expect(side.work.span / IN).toBeCloseTo(L, 9);
    const w = push(blocked, 0, 3);
    expect(side.work.bends!.blocked.moment.size / LB / IN).toBeCloseTo(bent(w), 2);
    // 2x6 pushed on its face; wet, 875 x 1.3 is not over 1150; 0.9 as if for good.
    const bears = 0.9 * GRADED["2x6"].flat * modulus(5.5, 1.5);
    expect(side.judged!.strain.uses).toBeCloseTo(bent(w) / bears, 4);
  });

  test("bows by moist soil at rest, twice with the years, stiffness x 0.9 when wet, 1/120 of its span at most", () => {
    const w = push(drained, 0, 3);
    const stiff = 0.9 * GRADED.E * inertia(5.5, 1.5);
    const bow = ((5 * w * L ** 4) / 384 - (w * a ** 2 * L ** 2) / 16) / stiff;
    expect(side.judged!.sag.size / IN).toBeCloseTo(2 * bow, 6);
    expect(side.judged!.sag.limit / IN).toBeCloseTo(L / 120, 9);
  });

  test("pulls at the three screws of each post with half of it", () => {
    const joint = see(bed('5" deep')).joint("side and end");
    expect([joint.way, joint.from, joint.screws]).toEqual(["pulled", "fill", 3]);
    expect(joint.asked).toBeCloseTo((push(blocked, 0, 5) * 60) / 2, 2);
    // A blocked drain is mended: no 0.9. Of 1-1/2" of thread, 2850 G^2 D, and a head of 0.38" through wood that is
    // thicker than 2.5 of it, 1725 pi D^2 G^2, the less; seven tenths of it wet.
    const thread = 2850 * 0.42 ** 2 * 0.19 * 1.5;
    const head = 1725 * Math.PI * 0.38 ** 2 * 0.42 ** 2;
    expect(joint.holds).toBeCloseTo(3 * 0.7 * Math.min(thread, head), 4);
  });

  test("deeper, by the square of the depth", () => {
    const deep = wall(see(bed('4-1/2" deep')), "side");
    expect(deep.judged!.strain.uses / side.judged!.strain.uses).toBeCloseTo(1.5 ** 2, 6);
  });
});

describe("the share of its weight with which a fill presses sideways", () => {
  const filled = (fill: string): ReturnType<typeof wall> =>
    wall(see(bed('3" deep').replace("soil", fill)), "side");

  test("is 1 - sin of its own friction angle: clay 22, gravel 36", () => {
    // Saturated 110 and 120 lb/cuft, moist 100 and 115.
    for (const [fill, angle, moist, wet] of [
      ["clay", 22, 100, 110],
      ["gravel", 36, 115, 120],
    ] as const) {
      const share = 1 - Math.sin((angle * Math.PI) / 180);
      const { work, judged } = filled(fill);
      const fluid = WATER + share * (wet - WATER);
      expect(work.bends!.blocked.moment.size / LB / IN).toBeCloseTo(bent(push(fluid, 0, 3)), 2);
      const w = push(share * moist, 0, 3);
      const bow =
        ((5 * w * L ** 4) / 384 - (w * a ** 2 * L ** 2) / 16) / (0.9 * GRADED.E * inertia(5.5, 1.5));
      expect(judged!.sag.size / IN).toBeCloseTo(2 * bow, 6);
    }
  });

  test("is half where the angle is not known", () => {
    const own = bed('3" deep')
      .replace("soil", "peat")
      .concat("fill peat, moist 40 lb/cuft, saturated 90 lb/cuft\n");
    const fluid = WATER + 0.5 * (90 - WATER);
    expect(wall(see(own), "side").work.bends!.blocked.moment.size / LB / IN).toBeCloseTo(
      bent(push(fluid, 0, 3)),
      2,
    );
  });

  test("is all of it for water, drain or no drain: 62.4 lb/cuft by its depth", () => {
    const { work } = filled("water");
    expect(work.bends!.drained.moment.size / LB / IN).toBeCloseTo(bent(push(62.4, 0, 3)), 2);
    expect(work.bends!.blocked.moment.size / LB / IN).toBeCloseTo(bent(push(WATER, 0, 3)), 2);
    // 3" of water press 62.4 x 1/4 x 1/4 / 2 = 1.95 lb on each foot of wall.
    expect(((work.loads.drained as { start: number }).start / LB) * IN * 12).toBeCloseTo(1.95, 2);
  });
});

test("of two boards on each other the lower one takes what lies below its top", () => {
  const seen = see(bed('to 0" below rim', "", 2, ", 2 high, tight"));
  const [low, high] = [wall(seen, "side", 0), wall(seen, "side", 1)];
  expect([low.work.depth / IN, high.work.depth / IN]).toEqual([
    expect.closeTo(11, 6),
    expect.closeTo(5.5, 6),
  ]);
  expect(low.work.bends!.blocked.moment.size / LB / IN).toBeCloseTo(bent(push(blocked, 5.5, 11)), 2);
  expect(high.work.bends!.blocked.moment.size / LB / IN).toBeCloseTo(bent(push(blocked, 0, 5.5)), 2);
});

describe("an upright in the middle", () => {
  const upright = `part batten of 2x4, length 5-1/2"
place batten upright, wide face front, on floor, behind front side, 28-1/4" from left
place batten upright, wide face front, on floor, in front of back side, 28-1/4" from left
fasten side into batten, 2 #10 x 2-1/2" at each crossing
`;
  test("that only the boards of one side hold goes outwards with them", () => {
    const side = wall(see(bed('3" deep', upright)), "side");
    expect(side.work.span / IN).toBeCloseTo(L, 6);
    expect(side.work.holders).toHaveLength(2);
  });

  test("tied across to the other side holds, and its screws take the push of the middle", () => {
    const tie = `part tie of 1x4, length 24"
place tie front to back, flat, on battens, behind front side, flush with left of battens
fasten tie into batten end, 2 #8 x 2" at each crossing
`;
    const seen = see(bed('3" deep', upright + tie));
    const side = wall(seen, "side");
    expect(side.work.span / IN).toBeCloseTo(L / 2, 6);
    const middle = side.work.holders.find((h) => seen.worked.space.pieces[h.piece]!.part === "batten")!;
    // 5/4 of half a span each way, less what the ends past the posts take: M over it is w l^2 / 8 - w a^2 / 4.
    const w = push(blocked, 0, 3);
    const half = L / 2;
    const over = (w * half ** 2) / 8 - (w * a ** 2) / 4;
    expect(middle.force / LB).toBeCloseTo(w * half + (2 * (over - (w * a ** 2) / 2)) / half, 2);
    expect(middle.how).toBe("pulled");
  });
});

test("a rail along a side holds it only where it is held itself", () => {
  // Inside, from post to post: fastened to the side all along, and to the posts at its ends.
  const rail = (more: string): string => `part rail of 2x2, length 53"
place rail across, on edge, behind front side, right of front left post, on floor
fasten side face into rail, 1 #8 x 2-1/2" along it
${more}`;
  const ends = wall(
    see(bed('3" deep', rail('fasten rail into post, 1 #8 x 3" at each crossing, angled 30°\n'))),
    "side",
  );
  expect(ends.work.span / IN).toBeGreaterThan(50);
  const loose = wall(see(bed('3" deep', rail(""))), "side");
  expect(loose.work.span / IN).toBeCloseTo(L, 6);
});

describe("posts outside of the boards", () => {
  const outside = `plan Outside
  outdoors
part post of 4x4, length 5-1/2"
part side of 2x6, length 60"
part end of 2x6, length 21"
place side across, on edge, on floor, 0 from left, 0 from front
place side across, on edge, on floor, 0 from left, 22-1/2" from front
place end front to back, on edge, behind front side, flush with left of sides, on floor
place end front to back, on edge, behind front side, flush with right of sides, on floor
place post upright, wide face front, on floor, in front of front side, flush with left of sides
place post upright, wide face front, on floor, in front of front side, flush with right of sides
fasten side into end, 2 #10 x 3" at each crossing
fasten post into side, 2 #10 x 4-1/2" at each crossing
box bed, walls side and end
  filled with soil 3" deep
`;
  test("that nothing ties to anything hold nothing; the ends do, by screws in end grain", () => {
    const seen = see(outside);
    const front = wall(seen, "side");
    expect(front.work.holders.map((h) => [seen.worked.space.pieces[h.piece]!.part, h.how])).toEqual([
      ["end", "pulled"],
      ["end", "pulled"],
    ]);
    const joint = see(outside.replace('3" deep', '5" deep')).joint("side");
    expect([joint.way, joint.from, joint.holds]).toEqual(["pulled", "fill", 0]);
  });

  test("and tied to each other hold it without screws", () => {
    const tied = outside.concat(`part strap of 2x4, length 60"
place strap across, on edge, in front of posts, flush with left of posts, on floor
fasten strap into post, 2 #10 x 3" at each crossing
`);
    const seen = see(tied);
    const front = wall(seen, "side");
    const [posts, ends] = ["post", "end"].map((part) =>
      front.work.holders.filter((h) => seen.worked.space.pieces[h.piece]!.part === part),
    );
    expect(posts!.map((h) => h.how)).toEqual(["outside", "outside"]);
    // Ends and posts within 3-1/2" of each other hold as one, and what stands outside takes it.
    expect(posts!.map((h) => h.force / LB)).toEqual(
      [1, 2].map(() => expect.closeTo((push(blocked, 0, 3) * 57) / 2, 2)),
    );
    expect(ends!.map((h) => h.force)).toEqual([0, 0]);
  });
});

test("walls of upright boards, and boards held in one place, are listed as not looked at", () => {
  const seen = see(
    bed('3" deep').replace(
      'fasten side and end into post, 3 #10 x 3" at each crossing\n',
      'fasten end into post, 3 #10 x 3" at each crossing\n',
    ),
  );
  expect(wall(seen, "side").work.bends).toBeUndefined();
  expect(seen.worked.unchecked.map((u) => u.what.says)).toContain("wall holds");
  const stakes = see(`plan Stakes
part plank of 2x12, length 24"
part side of 2x6, length 24"
part stake of 2x12, length 5-1/2"
place plank across, flat, on floor, 0 from left, 0 from front
place side across, on edge, on floor, in front of plank, flush with left of plank
place side across, on edge, on floor, behind plank, flush with left of plank
place stake upright, wide face left, on floor, left of plank, flush with front of plank
place stake upright, wide face left, on floor, right of plank, flush with front of plank
fasten side and stake into plank edge, 2 #10 x 3" at each crossing
box tub, walls side and stake, bottom plank, drains through the gaps
  filled with soil
`);
  expect(stakes.worked.boxes[0]!.placed).toBeDefined();
  const listed = stakes.worked.unchecked.filter((u) => u.what.says === "wall holds");
  expect(listed.map((u) => u.what.slots.name)).toContain("stake");
});

test("indoors the walls and the bottom of a filled box are wet, by whatever name the box calls them", () => {
  const inside = bed('3" deep').replace("  outdoors", "  indoors");
  const plural = inside.replace("walls side and end", "walls sides and ends");
  for (const text of [inside, plural]) {
    const seen = see(text);
    expect(seen.worked.boxes[0]!.placed).toBeDefined();
    const wet = see(text.replace('3" deep', '5" deep')).joint("side and end");
    // Seven tenths, as outdoors.
    expect(wet.pulled).toBeCloseTo(see(bed('5" deep')).joint("side and end").pulled, 9);
  }
});
