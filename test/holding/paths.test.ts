/** How weight goes down to the feet: through bottoms, ledgers, walls and legs. By hand, pounds. */
import { describe, expect, test } from "vitest";
import { balance, LB, see, weighs } from "./hand";

const near = (n: number) => expect.closeTo(n, 6);

describe("from the fill to the feet", () => {
  const trough = `plan Trough
  outdoors
part leg of 2x4, length 20"
part side of 2x8, length 40"
part end of 2x8, length 13"
part ledger of 2x2, length 33"
part plank of 1x6, length 13"
place leg upright, wide face front, on floor, at each corner of 40" x 13"
place side across, on edge, in front of legs, flush with left of legs, flush with top of legs
place side across, on edge, behind legs, flush with left of legs, flush with top of legs
place end front to back, on edge, left of legs, flush with front of legs, flush with top of legs
place end front to back, on edge, right of legs, flush with front of legs, flush with top of legs
place ledger across, on edge, behind front side, right of front left leg, flush with bottom of sides
place ledger across, on edge, in front of back side, right of front left leg, flush with bottom of sides
place plank front to back, flat, on ledgers, flush with front of legs, 5 across, spread between left legs and right legs
fasten side face and end face into leg, 2 #10 x 3" at each crossing
fasten side into ledger, #10 x 2-1/2", 6" on center
fasten plank into ledger, 2 #8 x 1-5/8" at each crossing
box trough, walls side and end, bottom plank, drains through the gaps
  filled with soil to 1" below rim
`;
  const seen = see(trough);

  test("all that is put in and all that it weighs stands on the four legs", () => {
    const { put, feet } = balance(seen);
    // 7-1/4" less the ledger and the boards is 5"; 4" of soil in 40" x 13" between the walls, at 125 lb/cuft.
    const soil = (40 * 13 * 4 * 125) / 1728;
    const wood =
      4 * weighs(20, 3.5, 1.5) +
      2 * weighs(40, 7.25, 1.5) +
      2 * weighs(13, 7.25, 1.5) +
      2 * weighs(33, 1.5, 1.5) +
      5 * weighs(13, 5.5, 0.75);
    expect(put).toBeCloseTo(soil + wood, 6);
    expect(feet).toBeCloseTo(put, 6);
    expect(seen.feet("leg").map((f) => f.steady)).toEqual([1, 1, 1, 1].map(() => near((soil + wood) / 4)));
  });

  test("each on its way: boards half on each ledger, ledgers on their side by screws, sides on their legs by screws", () => {
    const soil = (40 * 13 * 4 * 125) / 1728;
    const plank = seen.one("plank");
    expect(plank.fill).toBeCloseTo(soil / 5, 6);
    expect(plank.links.map(({ by, how, steady }) => [by, how, steady])).toEqual(
      [1, 2].map(() => ["ledger", "lies", near((soil / 5 + weighs(13, 5.5, 0.75)) / 2)]),
    );
    const bottom = soil + 5 * weighs(13, 5.5, 0.75);
    const ledger = seen.one("ledger");
    expect(ledger.passed).toBeCloseTo(bottom / 2, 6);
    expect(ledger.links.map(({ by, how }) => [by, how])).toEqual([["side", "screwed"]]);
    const side = seen.one("side");
    expect(side.passed).toBeCloseTo(bottom / 2 + weighs(33, 1.5, 1.5), 6);
    expect(side.links.map(({ by, how, steady }) => [by, how, steady])).toEqual(
      [1, 2].map(() => ["leg", "screwed", near((side.passed + weighs(40, 7.25, 1.5)) / 2)]),
    );
  });

  test("what hangs on a leg is shared by the screws of that crossing", () => {
    // Wet soil pushes on these screws too, so that it may be more, and never less.
    const weight = seen.holding.joints.find((j) => j.joint.title.startsWith("side face"))!;
    expect(weight.screws).toBe(2);
    expect(weight.asked / LB).toBeGreaterThanOrEqual(seen.one("side").links[0]!.steady - 1e-6);
  });
});

describe("boards on each other", () => {
  const wall = (fasten: string): string => `plan Wall
part post of 4x4, length 20"
part board of 2x6, length 40"
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 36-1/2" from left, 0 from front
place board across, on edge, in front of posts, flush with left of posts, 4" up, 2 high, tight
${fasten}
load board 50 lb
`;

  test("both screwed to posts do not lean on each other: each hangs on its own screws", () => {
    const seen = see(wall('fasten board into post, 2 #10 x 3" at each crossing'));
    for (const board of seen.all("board"))
      expect(board.links.map(({ by, how }) => [by, how])).toEqual([
        ["post", "screwed"],
        ["post", "screwed"],
      ]);
    const [low, high] = seen.all("board");
    // The load stands on the upper one alone; nothing of it comes to the lower.
    expect(low!.said + low!.passed).toBe(0);
    expect(high!.said).toBeCloseTo(50, 9);
  });

  test("with only the lower one screwed, the upper one lies on it", () => {
    const seen = see(wall('fasten bottom board into post, 2 #10 x 3" at each crossing'));
    const [low, high] = seen.all("board");
    expect(high!.links.map(({ by, how }) => [by, how])).toEqual([["board", "lies"]]);
    expect(low!.passed).toBeCloseTo(50 + weighs(40, 5.5, 1.5), 6);
  });
});

describe("bearing before screws", () => {
  test("a top on posts and rails lies on all of them, and asks nothing of its screws", () => {
    const seen = see(`plan Table
  indoors
part leg of 4x4, length 28-1/2"
part rail of 2x4, length 33"
part top of 2x12, length 40"
place leg upright, wide face front, on floor, at each corner of 40" x 11-1/4"
place rail across, on edge, right of left legs, flush with front of legs, flush with top of legs
place top across, flat, on legs, flush with left of legs, flush with front of legs
fasten rail into leg, 2 #10 x 3" at each crossing, angled 30°
fasten top into leg and rail, 2 #10 x 3" at each crossing
load top 100 lb
`);
    const top = seen.one("top");
    expect(top.links.map((l) => l.how)).toEqual(["lies", "lies", "lies", "lies", "lies"]);
    expect(() => seen.joint("top")).toThrow();
    const { put, feet } = balance(seen);
    expect(feet).toBeCloseTo(put, 6);
  });

  /** A board 5-1/2" wide lies on one low wall, and is screwed to a post at its other end. */
  const ledge = `plan Ledge
  indoors
part wall of 2x12, length 12"
part post of 2x4, length 30"
part shelf of 1x6, length 30"
place wall front to back, on edge, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 25" from left, 6" from front
place shelf across, flat, on wall, flush with left of wall, in front of post
fasten shelf edge into post, 2 #8 x 2" at each crossing
load shelf 40 lb
`;
  test("a wide board that lies on one thing alone still hangs on the screws at its other end", () => {
    const seen = see(ledge);
    const shelf = seen.one("shelf");
    expect(seen.codes).not.toContain("load-has-no-path");
    expect(shelf.links.map(({ by, how }) => [by, how]).sort()).toEqual([
      ["post", "screwed"],
      ["wall", "lies"],
    ]);
    // Middles at 0.75" and 26.75": by their arms about the wall.
    const all = 40 + weighs(30, 5.5, 0.75);
    const post = (all * (15 - 0.75)) / 26;
    expect(shelf.links.find((l) => l.by === "post")!.steady).toBeCloseTo(post, 6);
    expect(seen.joint("shelf").asked).toBeCloseTo(post, 6);
  });

  test("an upright that stands on a board stands there, whatever else it is screwed to", () => {
    const seen = see(`plan Upright
part base of 2x12, length 40"
part post of 4x4, length 30"
part mate of 4x4, length 31-1/2"
place base across, flat, on floor, 0 from left, 0 from front
place post upright, wide face front, on base, 0 from left, 0 from front
place mate upright, wide face front, on floor, 0 from left, 11-1/4" from front
place post upright, wide face front, on base, 0 from left, in front of mate
fasten post into mate, 3 #10 x 5" at each crossing
`);
    expect(seen.all("post").map((p) => p.links.map((l) => l.by))).toEqual([["base"], ["base"]]);
  });
});

describe("shelves let in", () => {
  test("a notched end lies in its notch, not on screws", () => {
    const seen = see(`plan Notched
  indoors
part post of 4x4, length 20"
  notch 3-1/2" x 1-1/2" at right end
part rail of 2x4, length 36"
place post upright, wide face left, on floor, 0 from left, 0 from front
place post upright, wide face left, on floor, 32-1/2" from left, 0 from front
place rail across, on edge, flush with left of posts, flush with front of posts, flush with top of posts
fasten rail into post, 2 #10 x 2-1/2" at each crossing
load rail 100 lb
`);
    const rail = seen.one("rail");
    expect(rail.links.map((l) => l.how)).toEqual(["lies", "lies"]);
    expect(seen.holding.joints).toEqual([]);
    expect(balance(seen).feet).toBeCloseTo(balance(seen).put, 6);
  });

  /** A post on a foot, with a shelf in a housing of the post: each lies on the other, and neither on itself. */
  const housed = (at: number): string => `plan Housed
  indoors
part base of 2x12, length 60"
part foot of 2x8, length 14"
part post of 2x12, length 30"
  dado 1-1/2" x 3/8" at ${at}" from left
part shelf of 2x12, length 24-3/4"
part leg of 2x12, length ${at + 1.5}"
place base across, flat, on floor, 0 from left, 0 from front
place foot front to back, flat, on base, 3" from left, 0 from front
place post upright, wide face left, on foot, 3" from left, 0 from front
place shelf across, flat, 4-1/8" from left, 0 from front, ${at + 3}" up
place leg upright, wide face left, on base, 25" from left, 0 from front
load shelf 40 lb spread
`;
  test.each([8, 20])(
    'a shelf in a housing %i" up lies in it, though wood of the post lies on the shelf',
    (at) => {
      const seen = see(housed(at));
      expect(seen.codes).not.toContain("pieces-overlap");
      expect(
        seen
          .one("shelf")
          .links.map((l) => l.by)
          .sort(),
      ).toEqual(["leg", "post"]);
      expect(seen.one("post").links.map((l) => l.by)).toEqual(["foot"]);
      expect(balance(seen).feet).toBeCloseTo(balance(seen).put, 6);
    },
  );
});

describe("assemblies and rings", () => {
  const frames = `plan Frames
  indoors
part leg of 2x4, length 16-1/2"
part rail of 2x4, length 14"
part seat of 2x6, length 40"
assembly trestle
  place leg upright, wide face front, on floor, at each corner of 14" x 3-1/2"
  place rail across, flat, on legs, flush with left of legs, flush with front of legs
  fasten rail into leg end, 2 #10 x 3" at each crossing
place trestle, front to back, 0 from left, 0 from front
place trestle, front to back, 36-1/2" from left, 0 from front
place seat across, flat, on trestles, flush with left of trestles, 1" from front, 2 deep, 1" apart
fasten seat into rail, 2 #10 x 3" at each crossing
`;
  test("hand on what they carry, each copy its share", () => {
    const seen = see(`${frames}load seat 200 lb`);
    expect(seen.codes).not.toContain("load-has-no-path");
    const { put, feet } = balance(seen);
    expect(feet).toBeCloseTo(put, 6);
    expect(seen.all("seat").map((s) => s.said)).toEqual([near(100), near(100)]);
  });

  test("a weight on an assembly stands on the highest level pieces of each copy", () => {
    const seen = see(frames.replace(/place seat.*\nfasten seat.*\n/, "").concat("load trestle 100 lb"));
    expect(seen.all("rail").map((s) => s.said)).toEqual([near(50), near(50)]);
    expect(seen.all("leg").map((s) => s.said)).toEqual([0, 0, 0, 0, 0, 0, 0, 0]);
  });

  test("a weight on each level of a part is all of it; on a box it stands on the bottom", () => {
    const shelves = see(`plan Shelves
  indoors
part side of 2x12, length 40"
part shelf of 2x12, length 27"
place side upright, wide face left, on floor, 0 from left, 0 from front
place side upright, wide face left, on floor, 28-1/2" from left, 0 from front
place shelf across, flat, right of left side, 0 from front, 10" up, 2 high, 12" apart
fasten side into shelf end, 3 #10 x 3" at each crossing
load shelf 60 lb
`);
    expect(shelves.all("shelf").map((s) => s.said)).toEqual([near(60), near(60)]);
    const box = see(`plan Chest
  indoors
part plank of 2x12, length 24"
part side of 2x6, length 27"
part end of 2x6, length 11-1/4"
place plank across, flat, on floor, 1-1/2" from left, 1-1/2" from front
place end front to back, on edge, left of plank, flush with front of plank, on floor
place end front to back, on edge, right of plank, flush with front of plank, on floor
place side across, on edge, in front of plank, flush with left of ends, on floor
place side across, on edge, behind plank, flush with left of ends, on floor
fasten side into end, 2 #10 x 3" at each crossing
box chest, walls side and end, bottom plank, drains through the gaps
load chest 80 lb
`);
    expect(box.one("plank").said).toBeCloseTo(80, 6);
    expect([...box.all("side"), ...box.all("end")].map((s) => s.said)).toEqual([0, 0, 0, 0]);
  });

  test("a ring on legs hands its weight on", () => {
    const seen = see(`plan Cap
  indoors
part leg of 4x4, length 20"
part long of 2x6, length 40", ends mitered 45°
part short of 2x6, length 20", ends mitered 45°
ring cap = long and short and long and short
place leg upright, wide face front, on floor, at each corner of 40" x 20"
place cap flat, on legs, centered on legs
load cap 80 lb
`);
    const { put, feet } = balance(seen);
    expect(feet).toBeCloseTo(put, 6);
    // By their faces seen from above, which are blocks here: 40 x 5.5 and 20 x 5.5.
    expect(
      seen
        .all("long")
        .concat(seen.all("short"))
        .reduce((sum, s) => sum + s.said, 0),
    ).toBeCloseTo(80, 6);
  });
});

describe("a weight in the middle", () => {
  const slats = (count: number): string => `plan Slats
  indoors
part rail of 2x4, length 40"
part slat of 2x4, length 20"
place rail across, on edge, on floor, 0 from left, 0 from front
place rail across, on edge, on floor, 0 from left, 18-1/2" from front
place slat front to back, flat, on rails, flush with front of rails, 0 from left, ${count} across, 1" apart
load slat 90 lb middle
`;
  test("of three slats is the middle one's; of four, the middle two share it", () => {
    expect(
      see(slats(3))
        .all("slat")
        .map((s) => s.said),
    ).toEqual([0, 90, 0].map(near));
    expect(
      see(slats(4))
        .all("slat")
        .map((s) => s.said),
    ).toEqual([0, 45, 45, 0].map(near));
  });
});

describe("glue", () => {
  test("holds, is carried by, and is not judged", () => {
    const seen = see(`plan Glued
  indoors
part post of 2x4, length 30"
part rail of 2x4, length 36"
place post upright, wide face front, on floor, 0 from left, 1-1/2" from front
place post upright, wide face front, on floor, 32-1/2" from left, 1-1/2" from front
place rail across, on edge, in front of posts, flush with left of posts, flush with top of posts
glue rail to post, with wood-glue
load rail 4000 lb
`);
    expect(seen.one("rail").links.map((l) => l.how)).toEqual(["glued", "glued"]);
    expect(seen.holding.joints).toEqual([]);
    expect(seen.holding.unknownJoints).toEqual([]);
    expect(seen.codes).not.toContain("screw-overloaded");
  });
});

describe("what is not looked at", () => {
  const listed = (text: string): string[] =>
    see(text).worked.unchecked.flatMap((u) =>
      u.what.says === "bears its load" ? [`${u.what.slots.name}: ${u.why.says}`] : [],
    );
  const table = (more: string): string => `plan Table
  indoors
part post of 4x4, length 16"
part top of 2x12, length 12"
place post upright, wide face front, on floor, 4" from left, 4" from front
place top across, flat, on post, 0 from left, 0 from front
${more}`;

  test("a top on one post is listed where somebody sits on it, or the plan puts something there", () => {
    expect(listed(table(""))).toEqual(["top: held in few places"]);
    expect(listed(table("load top 20 lb"))).toEqual(["top: held in few places"]);
    expect(listed(table("").replace('length 16"', 'length 30"'))).toEqual([]);
  });

  test("a load on something that stands nowhere is listed, one on several by their plural is not", () => {
    expect(listed(table('part lid of 1x6, length 9"\nload lid 20 lb'))).toContain("lid: no piece placed");
    const plural = see(table("load tops 20 lb"));
    expect(plural.one("top").said).toBeCloseTo(20, 9);
    expect(listed(table("load tops 20 lb"))).toEqual(["top: held in few places"]);
  });
});
