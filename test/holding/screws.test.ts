/**
 * What screws, nails and bolts hold, against the equations of NDS 2018 written out here once more: Table 12.3.1A with the
 * terms of 12.3.1B, withdrawal by 12.2; lag screws by Table L2. Inches and pounds; spruce-pine-fir, G 0.42.
 */
import { describe, expect, test } from "vitest";
import { run, told } from "../checks/plans";
import { see, weighs } from "./hand";

const G = 0.42;

/** All that is said of a plan under a code. */
const messages = (text: string, code: string): string[] => {
  const seen = run(text);
  return seen.problems.filter((p) => p.code === code).map((p) => told(p, seen));
};

interface Yielding {
  /** Root, and shank. */
  readonly d: number;
  readonly shank: number;
  readonly side: number;
  readonly bite: number;
  /** Bending yield, psi. */
  readonly fyb: number;
  readonly nominal?: "bolt" | "lag";
}

/** Pounds across one fastener. Below 10 shanks in the main piece (lags 8; bolts go through), the value there by its share. */
function across({ d, shank, side, bite, fyb, nominal }: Yielding): number {
  const share = nominal === "bolt" ? 1 : Math.min(1, bite / ((nominal === "lag" ? 8 : 10) * shank));
  const main = bite / share;
  // Under 1/4": 16,600 G^1.84; from there up across the grain 6,100 G^1.45 / sqrt(D).
  const fe = shank < 0.25 ? 16_600 * G ** 1.84 : (6_100 * G ** 1.45) / Math.sqrt(shank);
  const kd = d <= 0.17 ? 2.2 : 10 * d + 0.5;
  // A thread whose root is under 1/4" and whose shank is not goes by the root, and across the grain a quarter more.
  const thin = d < 0.25 ? kd * (shank < 0.25 ? 1 : 1.25) : undefined;
  const [one, two, three] = [4, 3.6, 3.2].map((by) => thin ?? by * 1.25) as [number, number, number];
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

  // 3/8" lag: root .265, tip 7/32 (Table L2), bends at 45 ksi (Table I1).
  const LAG = { d: 0.265, shank: 0.375, fyb: 45_000, nominal: "lag" } as const;
  const lag = (size = '3/8" x 4"', kind = "lag screw", board = "2x6"): string =>
    hung("1 big-lag", "", board, 200).concat(`fastener big-lag, ${size} ${kind}\n`);

  test('a lag screw 3/8" x 4" through 1-1/2" into 1-1/2" counts its root, and not its tip', () => {
    const joint = see(lag()).joint("board");
    expect(joint.bite).toBeCloseTo(1.5, 9);
    // 1.28125" is less than 4 shanks, 1.5", with which the tip makes 1.71875".
    expect([joint.across, joint.holds]).toEqual([0, 0]);
    const thin = see(lag('1/4" x 4"')).joint("board");
    // 1/4": root .173, tip 5/32, 70 ksi; 1.34375" without the tip, of 8 shanks 2".
    expect(thin.across).toBeCloseTo(
      across({ d: 0.173, shank: 0.25, fyb: 70_000, nominal: "lag", side: 1.5, bite: 1.5 - 5 / 32 }),
      6,
    );
  });

  test("a lag screw by any name that says lag, at its full 8 shanks", () => {
    const deep = (kind: string): string =>
      lag('3/8" x 5"', kind).replace("part post of 2x4", "part post of 4x4");
    for (const kind of ["lag screw", "lag bolt", "lag"]) {
      const joint = see(deep(kind)).joint("board");
      expect(joint.bite).toBeCloseTo(3.5, 9);
      expect(joint.across).toBeCloseTo(across({ ...LAG, side: 1.5, bite: 3.5 - 7 / 32 }), 6);
    }
  });

  test("of a size that no table has, a lag screw is listed as not looked at", () => {
    const strange = see(lag("10mm x 100mm"));
    expect(strange.holding.unknownJoints).toHaveLength(1);
    expect(strange.worked.unchecked.map((u) => u.what.says)).toContain("screws hold");
  });

  test("under 5 lb a screw is let be", () => {
    const own = weighs(30, 5.5, 0.75);
    // 4 screws carry the board and its load: 20 lb in all.
    expect(() => see(hung('2 #8 x 2"', "", "1x6", 19.9 - own)).joint("board")).toThrow();
    expect(see(hung('2 #8 x 2"', "", "1x6", 20.1 - own)).joint("board").asked).toBeCloseTo(10.05, 6);
  });
});

describe("a lag screw four times its thickness deep, its tip left out", () => {
  // 1/4": 4 x 6.35 mm and 5/32", 3.96875 mm: 29.36875 mm of 100.
  const through = (thick: string): string =>
    hung("1 big-lag", "", "slim", 200)
      .replace("part post of 2x4", "part post of 6x6")
      .concat(`stock slim, actual ${thick} x 140mm\nfastener big-lag, 1/4" x 100mm lag screw\n`);

  test("just under, it claims nothing, and the message says of what", () => {
    const seen = see(through("70.64mm"));
    expect(seen.joint("board").across).toBe(0);
    expect(seen.codes).toContain("screw-overloaded");
    const said = messages(through("70.64mm"), "screw-overloaded");
    expect(said).toEqual([
      expect.stringContaining("4 times their thickness and the tip, no strength is claimed"),
    ]);
  });

  test("just over, half of its value", () => {
    const bite = (100 - 70.63 - 3.96875) / 25.4;
    expect(see(through("70.63mm")).joint("board").across).toBeCloseTo(
      across({ d: 0.173, shank: 0.25, fyb: 70_000, nominal: "lag", side: 70.63 / 25.4, bite }),
      6,
    );
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

  test("a stainless nail 465 G^1.5 D, in heavy wood no more than a plain one", () => {
    const nail = (coating: string, wood = ""): number =>
      see(under("eight-penny").concat(`fastener eight-penny, nail 0.131" x 2-1/2"${coating}\n${wood}`)).joint(
        "hook",
      ).pulled;
    expect(nail(", coating stainless")).toBeCloseTo(465 * G ** 1.5 * 0.131 * 1.75, 6);
    expect(nail(", coating galvanized")).toBeCloseTo(1380 * G ** 2.5 * 0.131 * 1.75, 6);
    // Where G is under 465 / 1380 = 0.337 the plain one holds less: northern white-cedar, G 0.31.
    const light = "stock 2x6, species northern-white-cedar\n";
    expect(nail(", coating stainless", light)).toBeCloseTo(1380 * 0.31 ** 2.5 * 0.131 * 1.75, 6);
  });

  test('a lag screw 1800 G^1.5 D^0.75 for each inch of thread without its tip: half its length and 1/2" is thread', () => {
    const lag = (more: string): number =>
      see(under("long-lag").concat(`fastener long-lag, 1/4" x 4" lag screw${more}\n`)).joint("hook").pulled;
    const each = 1800 * G ** 1.5 * 0.25 ** 0.75;
    // Its head is worth 690 pi x 1/2 x G^2 x 3/4 = 143 lb; 2-1/2" of thread, less 5/32", 398 lb.
    expect(lag("")).toBeCloseTo(head(0.5, 0.75), 6);
    expect(lag(', thread 3/4"')).toBeCloseTo(each * (0.75 - 5 / 32), 6);
  });
});

/** A drop under a beam, held by what goes down into its end. */
const hanger = (section: string, fasteners: string, more = ""): string => `plan Hanger
part post of 2x4, length 40"
part beam of ${section}, length 30"
part drop of ${section}, length 10"
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 26-1/2" from left, 0 from front
place beam across, flat, on posts, flush with left of posts, 0 from front
place drop upright, wide face front, under beam, 13" from left, flush with front of beam
fasten beam into drop end, ${fasteners} at each crossing
load drop 60 lb
${more}`;

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
    const seen = see(hanger("2x4", '2 #10 x 4"'));
    const joint = seen.joint("beam");
    expect([joint.way, joint.pulled, joint.holds, joint.uses]).toEqual(["pulled", 0, 0, Number.MAX_VALUE]);
    expect(seen.codes).toContain("screw-overloaded");
  });
});

describe("a lag screw into the end of a board", () => {
  const HANGER = hanger("4x4", "1 end-lag", 'fastener end-lag, 1/4" x 6" lag screw\n');

  test("keeps three quarters when it is pulled", () => {
    const seen = see(HANGER);
    // 2-1/2" deep, all of it thread but the tip; a head of 1/2" through 3-1/2" is worth as through 1-1/4".
    const thread = 1800 * G ** 1.5 * 0.25 ** 0.75 * (2.5 - 5 / 32);
    const head = 1725 * Math.PI * 0.5 ** 2 * G ** 2;
    expect(seen.joint("beam").pulled).toBeCloseTo(0.75 * Math.min(thread, head), 6);
    const said = messages(HANGER, "screw-in-end-grain");
    expect(said).toEqual([
      expect.stringContaining("67% of its strength sideways, and 75% against being pulled out"),
    ]);
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
