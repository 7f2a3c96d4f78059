/** Which pieces the words of a joint choose, and what is read off where they touch. */
import { describe, expect, test } from "vitest";
import { fieldOf } from "../../server/solid/setout";
import { dot, type Vec3 } from "../../server/solid/vector";
import { evaluated, inch, plan } from "../placing/plans";

const STOCK = 'stock b, actual 1" x 4"\n';

describe("words before a name", () => {
  const joined = (lines: string) => {
    const { worked } = evaluated(STOCK + lines);
    return worked.joints.map((j) => j.placed?.crossings.map((c) => worked.pieces.all[c.into]!.id));
  };

  test("choose as they do in place lines: the middle of three legs", () => {
    const [middle, left] = joined(`part leg of b, length 20"
part top of b, length 44"
place leg upright, wide face left, on floor, 3 across, 16" on center
place top across, flat, on legs, flush with left of legs, flush with front of legs
fasten top into middle leg, 1 #8 x 2" at each crossing
fasten top into left leg, 1 #8 x 2" at each crossing`);
    expect(middle).toEqual(["leg / on floor / 2"]);
    expect(left).toEqual(["leg / on floor / 1"]);
  });

  test("choose whole copies of an assembly", () => {
    const [left, middle] = joined(`part leg of b, length 20"
part top of b, length 51"
assembly frame
  place leg upright, wide face left, on floor, 0 from left, 0 from front, 2 across, 10" on center
place frame, 0 from left, 0 from front, 3 across, 20" on center
place top across, flat, on frames, flush with left of frames, flush with front of frames
fasten top into left frame, 1 #8 x 2" at each crossing
fasten top into middle frame, 1 #8 x 2" at each crossing`);
    expect(left).toHaveLength(2);
    expect(middle).toHaveLength(2);
    expect(middle!.every((id) => id.includes("/ 2 /"))).toBe(true);
  });
});

describe("faces that are not quite parallel", () => {
  const corner = (left: string) =>
    evaluated(`${STOCK}part side of b, length 10", ends mitered 44.95°
ring r = 4 side
place r flat, on floor, ${left} from left, 0 from front`).worked.corners.map((c) => [
      c.share.toFixed(3),
      inch(c.opening).toFixed(4),
    ]);

  test("meet wherever the ring stands: the last corner gapes by 0.0494", () => {
    expect(corner("0")[3]).toEqual(["1.000", "0.0494"]);
    expect(corner('300"')).toEqual(corner("0"));
  });

  test("stand as far apart wherever they stand: 1/4 and half of what 20 up lean over at 0.5°", () => {
    const gaps = (left: string): number[] =>
      plan(`place post upright, wide face front, on floor, ${left} from left, ${left} from front
place rail upright, wide face front, leaning 0.5° back, 1/4" behind post, flush with left of post, on floor
fasten rail into post, 2 #8 x 1-1/2" at each crossing`).worked.joints.flatMap((j) =>
        j.placed!.misses.map((m) => inch(m.gap)),
      );
    expect(gaps("0")[0]).toBeCloseTo(0.25 + 10 * Math.sin((0.5 * Math.PI) / 180), 3);
    expect(gaps('300"')).toEqual(gaps("0"));
  });
});

test("a board that butts against a face squarely is set out along the longest side of the patch, in its plane", () => {
  const normal: Vec3 = [Math.cos(0.3), 0, Math.sin(0.3)];
  const up: Vec3 = [-Math.sin(0.3), 0, Math.cos(0.3)];
  const patch = [
    [0, 0],
    [10, 0],
    [10, 30],
    [0, 30],
  ].map(([x, y]): Vec3 => [0, 1, 2].map((k) => (k === 1 ? x! : 0) + y! * up[k]!) as unknown as Vec3);
  // The same direction by other sums: it differs in its last digits only.
  const field = fieldOf(patch, normal, [Math.cos(0.1 + 0.2), 0, Math.sin(0.1 + 0.2)]);
  expect(dot(field.long, normal)).toBeCloseTo(0, 9);
  expect(field.halfLong).toBeCloseTo(15, 9);
});

describe("a box", () => {
  test("of six sides has no inside of four", () => {
    const { worked } = evaluated(`${STOCK}part side of b, length 20", ends beveled 30°
ring r = 6 side
place r on edge, on floor
box tub, walls side, no drain`);
    expect(worked.boxes[0]!.placed).toBeUndefined();
    expect(worked.boxes[0]!.volume).toMatchObject({ state: "unknown", cause: { kind: "placing" } });
  });
});

test("a joint of an assembly that stands nowhere takes screws for the parts it places", () => {
  const { worked } = evaluated(`${STOCK}part rail 2 of b, length 20"
part post 1 of b, length 10"
assembly frame
  place rail across, flat, on floor
fasten frame into post, 2 #8 x 1-5/8" at each end`);
  expect(worked.joints[0]!.count).toEqual({ state: "known", value: 8 });
  expect(worked.joints[0]!.paths).toHaveLength(1);
});

test("the length of a bolt may be worked out", () => {
  const { worked } = evaluated(`measure rail = 3"
fastener bolts, bolt 1/4" x rail + 1"
measure hole = length of bolts`);
  expect(worked.measures.get("hole")!.value).toMatchObject({ state: "known", value: { approx: 101.6 } });
});

test("no fewer than none are left or right pieces", () => {
  const { worked } = evaluated(`${STOCK}part side 1 of b, length 20"
  notch 1" x 1" at left end
  dado 1" x 1/2" at 5" from left
place side across, flat, on floor, 0 from left, 0 from front
  mirrored left to right about post
  mirrored front to back about post
part post 1 of b, length 10"
place post across, flat, on floor, 30" from left, 10" from front`);
  const { left, right } = worked.parts.get("side")!;
  expect([left, right]).toEqual([0, 1]);
});

test.each([
  ["unplaced", "at each end", ""],
  [
    "placed",
    "at each crossing",
    "place post across, flat, on floor\nplace rail across, flat, on post, flush with left of post, flush with front of post",
  ],
])("how many screws a joint takes is not known where their number cannot be: %s", (_, where, lines) => {
  const { worked } = evaluated(`${STOCK}part rail 1 of b, length 20"
part post 1 of b, length 20"
fasten rail into post, 2.5 #8 x 1-5/8" ${where}
${lines}`);
  expect(worked.joints[0]!.count).toMatchObject({ state: "unknown", cause: { kind: "mistake" } });
});
