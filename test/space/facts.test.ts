/** What the solids of small plans say, against numbers worked by hand beside each. */
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { ifKnown, load } from "../../server/plan";
import { work } from "../../server/worked";
import { evaluated, inch } from "../placing/plans";

const SAMPLES = resolve(__dirname, "../../samples");
const sample = (name: string) =>
  work(
    load(name, readFileSync(resolve(SAMPLES, name), "utf8"), (path) => ({
      file: path,
      text: readFileSync(resolve(SAMPLES, path), "utf8"),
    })),
  );

describe("the trough", () => {
  const trough = sample("salad-trough.sawbuck");

  test("is 28 pieces and a cap of 4, none in another, none loose", () => {
    expect(trough.pieces.all).toHaveLength(32);
    expect(trough.space.clashes).toEqual([]);
    expect(trough.space.hanging).toEqual([]);
    expect(trough.loose).toEqual([]);
  });

  test("has half an inch between its floor boards: ten of 3-1/2 in 39-1/2 leave nine gaps of 1/2", () => {
    const boards = trough.pieces.all.filter((p) => p.part === "floor-board");
    const gaps = boards.slice(1).map((b, i) => inch(b.bounds.least[0] - boards[i]!.bounds.most[0]));
    expect(gaps).toEqual(Array.from({ length: 9 }, () => 0.5));
  });

  test("is 8-3/4 from floor to rim, 46-1/2 by 16-1/2 inside", () => {
    const box = trough.boxes[0]!;
    const [wide, deep, high] = [box.inside!.wide!, box.inside!.deep!, box.inside!.high!].map((q) =>
      inch(q.approx),
    );
    expect([wide, deep, high]).toEqual([46.5, 16.5, 8.75]);
    // Cubic inches: 46.5 * 16.5 * 8.75.
    expect(ifKnown(box.volume)!.approx / 25.4 ** 3).toBeCloseTo(6713.4375, 6);
  });

  test("takes 3 screws at each of the 8 crossings of its four sides and its four legs", () => {
    const joint = trough.joints.find((j) => j.title === "side face into leg face")!;
    expect(joint.placed!.crossings).toHaveLength(8);
    expect(ifKnown(joint.count)).toBe(24);
  });
});

describe("a hopper", () => {
  const lean = 15;
  const tan = Math.tan((lean * Math.PI) / 180);
  const cos = Math.cos((lean * Math.PI) / 180);

  test("is narrower at the bottom by its height times the tangent of the lean, on each side", () => {
    const { worked } = evaluated(`stock b, actual 3/4" x 5-1/2"
part wall of b, length 24", ends mitered 14.5108° and beveled 43.0795°
part plank of b, length 12"
ring bin = 4 wall
place bin on edge, leaning ${lean}° out, on floor, 0 from left, 0 from front
box bin-box, walls wall, filled with soil, no drain`);
    const { room } = worked.boxes[0]!.placed!;
    const height = 5.5 * cos + 0.75 * Math.sin((lean * Math.PI) / 180);
    expect(inch(room.high - room.low)).toBeCloseTo(height, 4);
    const rim = room.rim[0].to - room.rim[0].from;
    const foot = room.foot[0].to - room.foot[0].from;
    expect(inch(rim - foot)).toBeCloseTo(2 * height * tan, 4);
  });
});

describe("a frame of four legs", () => {
  const frame = (rail: string, screws: string): string => `stock b, actual 1" x 4"
stock r, actual 3/4" x ${rail}
part leg of b, length 20"
part apron of r, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place apron across, on edge, in front of legs, flush with left of legs, flush with top of legs
fasten apron into leg, ${screws} at each crossing`;

  test("is held by a rail whose two screws stand half its width apart: 5 wide, 2-1/2", () => {
    const held = evaluated(frame('5"', '2 #8 x 1-1/2"')).worked.frames;
    expect(held.map((f) => [f.axis, f.heldBy, inch(f.spread)])).toEqual([[0, "corner", 2.5]]);
  });

  test("racks on a rail of 4-7/8, whose screws stand 2-7/16 apart", () => {
    const open = evaluated(frame('4-7/8"', '2 #8 x 1-1/2"')).worked.frames;
    expect(open.map((f) => [f.heldBy, inch(f.spread)])).toEqual([[undefined, 2.4375]]);
  });

  test("is not held by the brace of another thing that stands apart", () => {
    const braced = `
part post of b, length 20"
part tie of r, length 34"
part brace of r
place post upright, wide face front, on floor, 60" from left, 0 from front, 2 across, 30" on center
place tie across, on edge, in front of posts, flush with left of posts, flush with top of posts
place brace diagonally on back of posts, from bottom left to top right`;
    const { frames } = evaluated(frame('4-7/8"', '2 #8 x 1-1/2"') + braced).worked;
    expect(frames.map((f) => [f.uprights.length, f.heldBy])).toEqual([
      [2, undefined],
      [2, "diagonal"],
    ]);
  });
});

describe("gaps", () => {
  const row = (second: string) =>
    evaluated(`stock b, actual 1" x 4"
part slat of b, length 12"
place slat across, flat, on floor, 0 from left, 0 from front
place slat across, flat, on floor, 0 from left, 5" from front
place slat across, flat, on floor, 0 from left, ${second} from front`).worked.rows;

  test("of 1 and 1-1/8 are uneven, of 1 and 1-1/16 look even, of 1 and 2 were meant", () => {
    expect(row('10-1/8"').map((r) => r.gaps.map(inch))).toEqual([[1, 1.125]]);
    expect(row('10-1/16"')).toEqual([]);
    expect(row('11"')).toEqual([]);
  });
});

describe("a gap between joined faces", () => {
  const gaps = (gap: string): number[] =>
    evaluated(`stock b, actual 1" x 4"
part leg of b, length 20"
part rail of b, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, ${gap} in front of legs, flush with left of legs, on floor
fasten rail into leg, 2 #8 x 1-1/2" at each crossing`).worked.joints.flatMap((j) =>
      j.placed!.misses.map((m) => inch(m.gap)),
    );

  test("of 1/64 is none, of 1/32 and of 1 is one, of 2 was never meant to touch", () => {
    expect(gaps('1/64"')).toEqual([]);
    expect(gaps('1/32"')).toEqual([0.03125]);
    expect(gaps('1"')).toEqual([1]);
    expect(gaps('2"')).toEqual([]);
  });
});
