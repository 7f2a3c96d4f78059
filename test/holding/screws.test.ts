/**
 * What screws, nails and bolts hold, against the equations of NDS 2018 written out here once more: Table 12.3.1A with the
 * terms of 12.3.1B, withdrawal by 12.2. Inches and pounds; spruce-pine-fir, G 0.42.
 */
import { describe, expect, test } from "vitest";
import { see, weighs } from "./hand";

const G = 0.42;

interface Yielding {
  /** Root, and shank. */
  readonly d: number;
  readonly shank: number;
  readonly side: number;
  readonly bite: number;
  /** Bending yield, psi. */
  readonly fyb: number;
  readonly nominal?: "bolt";
}

/** Pounds across one fastener. Below 10 shanks in the main piece (bolts go through), the value at 10 by its share. */
function across({ d, shank, side, bite, fyb, nominal }: Yielding): number {
  const share = nominal ? 1 : Math.min(1, bite / (10 * shank));
  const main = bite / share;
  // Under 1/4": 16,600 G^1.84; from there up across the grain 6,100 G^1.45 / sqrt(D).
  const fe = shank < 0.25 ? 16_600 * G ** 1.84 : (6_100 * G ** 1.45) / Math.sqrt(shank);
  const kd = d <= 0.17 ? 2.2 : 10 * d + 0.5;
  const [one, two, three] = shank < 0.25 ? [kd, kd, kd] : [4 * 1.25, 3.6 * 1.25, 3.2 * 1.25];
  const rt = main / side;
  // Both pieces are of one wood: Re = 1.
  const k1 = (Math.sqrt(1 + 2 * (1 + rt + rt ** 2) + rt ** 2) - (1 + rt)) / 2;
  const k2 = -1 + Math.sqrt(4 + (2 * fyb * 3 * d ** 2) / (3 * fe * main ** 2));
  const k3 = -1 + Math.sqrt(4 + (2 * fyb * 3 * d ** 2) / (3 * fe * side ** 2));
  const modes = [
    (d * main * fe) / one,
    (d * side * fe) / one,
    (k1 * d * side * fe) / two,
    (k2 * d * main * fe) / (3 * three),
    (k3 * d * side * fe) / (3 * three),
    (d ** 2 / three) * Math.sqrt((2 * fe * fyb) / 6),
  ];
  return share * Math.min(...modes);
}

/** #8 and #10: shank 0.060 + 0.013 n; root by NDS Appendix L; bending yield by NDS Table I1. */
const N8 = { d: 0.131, shank: 0.164, fyb: 90_000 };
const N10 = { d: 0.152, shank: 0.19, fyb: 80_000 };

/** A board across two posts, 3-1/2" wide and 1-1/2" thick, with so many screws at each. */
const hung = (screws: string, more = "", board = "1x6", load = 80): string => `plan Hung
${more}
part post of 2x4, length 40"
part board of ${board}, length 30"
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 26-1/2" from left, 0 from front
place board across, on edge, in front of posts, flush with left of posts, flush with top of posts
fasten board into post, ${screws} at each crossing
load board ${load} lb
`;

describe("screws across their length", () => {
  test('#8 x 2" through 3/4" into 1-1/2": 1-1/4" deep, of 10 shanks 1.64"', () => {
    const value = across({ ...N8, side: 0.75, bite: 1.25 });
    // The reference value at full depth is 69 lb (a table worked out with the same equations).
    expect(across({ ...N8, side: 0.75, bite: 1.64 })).toBeCloseTo(69, 0);
    const joint = see(hung('2 #8 x 2"')).joint("board");
    expect(joint.across).toBeCloseTo(value, 6);
    expect(joint.bite).toBeCloseTo(1.25, 9);
    expect([joint.way, joint.from, joint.screws]).toEqual(["across", "weight", 2]);
    // For good: 0.9. Half of the weight hangs on each post.
    expect(joint.holds).toBeCloseTo(2 * value * 0.9, 6);
    expect(joint.asked).toBeCloseTo((80 + weighs(30, 5.5, 0.75)) / 2, 6);
    expect(joint.uses).toBeCloseTo(joint.asked / joint.holds, 9);
  });

  test("outdoors seven tenths of that", () => {
    const value = across({ ...N8, side: 0.75, bite: 1.25 });
    expect(see(hung('2 #8 x 2"', "  outdoors")).joint("board").across).toBeCloseTo(0.7 * value, 6);
  });

  test('#10 x 3" through 1-1/2" into 1-1/2": 1-1/2" of it counts, though it comes out', () => {
    const value = across({ ...N10, side: 1.5, bite: 1.5 });
    expect(see(hung('2 #10 x 3-1/2"', "", "2x6")).joint("board").across).toBeCloseTo(value, 6);
  });

  test("what comes and goes is no load for good", () => {
    const value = across({ ...N8, side: 0.75, bite: 1.25 });
    const joint = see(hung('2 #8 x 2"').replace("80 lb", "80 lb anywhere")).joint("board");
    expect(joint.holds).toBeCloseTo(2 * value, 6);
    expect(joint.asked).toBeCloseTo(80 + weighs(30, 5.5, 0.75) / 2, 6);
  });

  test("a metric screw: its root is 0.65 of 5 mm", () => {
    const mm = 25.4;
    const value = across({
      d: (0.65 * 5) / mm,
      shank: 5 / mm,
      side: 0.75,
      bite: Math.min((60 - 19.05) / mm, 1.5),
      fyb: 80_000,
    });
    expect(see(hung("2 5 x 60mm")).joint("board").across).toBeCloseTo(value, 6);
  });

  test("a nail counts its whole shank, and bends at 100 ksi", () => {
    const value = across({ d: 0.131, shank: 0.131, side: 0.75, bite: 1.5, fyb: 100_000 });
    const plan = hung("2 eight-penny").concat('fastener eight-penny, nail 0.131" x 2-1/2"\n');
    expect(see(plan).joint("board").across).toBeCloseTo(value, 6);
  });

  test("a bolt goes through both, and bends at 45 ksi", () => {
    const value = across({ d: 0.375, shank: 0.375, side: 1.5, bite: 1.5, fyb: 45_000, nominal: "bolt" });
    const plan = hung("1 through-bolt", "", "2x6", 200).concat('fastener through-bolt, bolt 3/8" x 4"\n');
    expect(see(plan).joint("board").across).toBeCloseTo(value, 6);
  });

  test("under 5 lb a screw is let be", () => {
    const own = weighs(30, 5.5, 0.75);
    // 4 screws carry the board and its load: 20 lb in all.
    expect(() => see(hung('2 #8 x 2"', "", "1x6", 19.9 - own)).joint("board")).toThrow();
    expect(see(hung('2 #8 x 2"', "", "1x6", 20.1 - own)).joint("board").asked).toBeCloseTo(10.05, 6);
  });
});

describe("six times its thickness deep", () => {
  // #8: 0.984", 24.99 mm; #8 x 1-3/4" is 44.45 mm.
  const through = (thick: string): string =>
    hung('2 #8 x 1-3/4"', "", "slim").concat(`stock slim, actual ${thick} x 140mm\n`);

  test("just under, it claims nothing, and is asked for too much whatever it is asked for", () => {
    const seen = see(through("19.46mm"));
    const joint = seen.joint("board");
    expect([joint.across, joint.holds, joint.uses]).toEqual([0, 0, Number.MAX_VALUE]);
    expect(seen.codes).toContain("screw-overloaded");
  });

  test("just over, it claims six tenths of its value", () => {
    const joint = see(through("19.45mm")).joint("board");
    const bite = (44.45 - 19.45) / 25.4;
    expect(joint.bite / 0.164).toBeGreaterThan(6);
    expect(joint.across).toBeCloseTo(across({ ...N8, side: 19.45 / 25.4, bite }), 6);
  });

  test("at the very edge it is the one or the other, never unknown", () => {
    const seen = see(through("19.4564mm"));
    expect(seen.holding.unknownJoints).toEqual([]);
    expect(seen.joint("board").across).toBeCloseTo(across({ ...N8, side: 19.4564 / 25.4, bite: 0.984 }), 4);
  });
});

describe("pulled out", () => {
  /** A block under a beam, hung on screws that go up through it. */
  const under = (screw: string, more = ""): string => `plan Under
${more}
part post of 4x4, length 30"
part beam of 2x6, length 36"
part hook of 1x4, length 20"
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 32-1/2" from left, 0 from front
place beam across, on edge, on posts, flush with left of posts, 1" in from front of posts
place hook across, flat, under beam, 8" from left, flush with front of beam
fasten hook into beam edge, 4 ${screw} along it
load hook 100 lb
`;
  /** 2850 G^2 D for each inch of thread; the head, twice the shank wide, through 3/4": 690 pi D G^2 t. */
  const out = (shank: number, thread: number): number => 2850 * G ** 2 * shank * thread;
  const head = (wide: number, thick: number): number =>
    690 * Math.PI * wide * G ** 2 * Math.min(thick, 2.5 * wide);

  test("by the thread in the second piece: two thirds of the screw at most", () => {
    const joint = see(under('#8 x 2"')).joint("hook");
    expect([joint.way, joint.screws]).toEqual(["pulled", 4]);
    expect(joint.pulled).toBeCloseTo(Math.min(out(0.164, 1.25), head(2 * 0.164, 0.75)), 6);
    expect(joint.holds).toBeCloseTo(0.9 * 4 * joint.pulled, 6);
    expect(joint.asked).toBeCloseTo(100 + weighs(20, 3.5, 0.75), 6);
    // 3": 2-1/4" deep, of which 2" is thread.
    expect(see(under('#8 x 3"')).joint("hook").pulled).toBeCloseTo(
      Math.min(out(0.164, 2), head(2 * 0.164, 0.75)),
      6,
    );
  });

  test("a declared thread counts instead", () => {
    const plan = under("short-thread").concat('fastener short-thread, #8 x 2" screw, thread 3/4"\n');
    expect(see(plan).joint("hook").pulled).toBeCloseTo(out(0.164, 0.75), 6);
  });

  test("outdoors seven tenths; a nail a quarter of 1380 G^2.5 D", () => {
    expect(see(under('#8 x 2"', "  outdoors")).joint("hook").pulled).toBeCloseTo(
      0.7 * Math.min(out(0.164, 1.25), head(2 * 0.164, 0.75)),
      6,
    );
    const nail = see(
      under("eight-penny", "  outdoors").concat('fastener eight-penny, nail 0.131" x 2-1/2"\n'),
    );
    expect(nail.joint("hook").pulled).toBeCloseTo(0.25 * 1380 * G ** 2.5 * 0.131 * 1.75, 6);
  });
});

describe("into the end of a board", () => {
  const between = (more = ""): string => `plan Between
part post of 2x4, length 40"
part rail of 2x4, length 30"
place post upright, wide face left, on floor, 0 from left, 0 from front
place post upright, wide face left, on floor, 31-1/2" from left, 0 from front
place rail across, on edge, right of left post, flush with front of posts, flush with top of posts
fasten post into rail end, 2 #10 x 3-1/2" at each crossing
load rail 60 lb
${more}`;

  test("two thirds across it", () => {
    const joint = see(between()).joint("post");
    expect(joint.across).toBeCloseTo(0.67 * across({ ...N10, side: 1.5, bite: 2 }), 6);
    expect(joint.way).toBe("across");
  });

  test("nothing when pulled", () => {
    const seen = see(
      `plan Hanger
part post of 2x4, length 40"
part beam of 2x4, length 30"
part drop of 2x4, length 10"
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 26-1/2" from left, 0 from front
place beam across, flat, on posts, flush with left of posts, 0 from front
place drop upright, wide face front, under beam, 13" from left, flush with front of beam
fasten beam into drop end, 2 #10 x 4" at each crossing
load drop 60 lb
`,
    );
    const joint = seen.joint("beam");
    expect([joint.way, joint.pulled, joint.holds, joint.uses]).toEqual(["pulled", 0, 0, Number.MAX_VALUE]);
    expect(seen.codes).toContain("screw-overloaded");
  });
});

test("a toe screw holds 0.83 of it across", () => {
  const seen = see(`plan Toe
part post of 4x4, length 40"
part rail of 2x4, length 30"
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 33-1/2" from left, 0 from front
place rail across, on edge, right of left post, flush with front of posts, flush with top of posts
fasten rail end into post face, 2 #10 x 3" at each crossing, angled 30°
load rail 60 lb
`);
  const joint = seen.joint("rail");
  // What is not in the post is in the rail.
  const value = across({ ...N10, side: 3 - joint.bite, bite: joint.bite });
  expect(joint.bite).toBeGreaterThan(1.14);
  expect(joint.across).toBeCloseTo(0.83 * value, 6);
});

test("of a wood with no gravity in the tables, and of screws of no size, nothing is judged, and the list says so", () => {
  const strange = see(hung('2 #8 x 2"').concat("stock 1x6, species catalpa\n"));
  expect(strange.holding.joints).toEqual([]);
  expect(strange.holding.unknownJoints).toHaveLength(1);
  expect(strange.worked.unchecked.map((u) => u.what.says)).toContain("screws hold");
});
