/** How boards bend over what holds them, by the formulas of any handbook. Inches and pounds. */
import { describe, expect, test } from "vitest";
import { GRADED, inertia, modulus, see, THIN, weighs } from "./hand";

/** A board on low rails that stand on the floor, each 1-1/2" thick, their middles so far from its left end. */
const onRails = (board: string, length: number, rails: readonly number[], more: string): string => `plan Rails
${more}
part rail of 2x4, length 12"
part slat of ${board}, length ${length}"
${rails.map((at) => `place rail front to back, on edge, on floor, ${at - 0.75}" from left, 0 from front`).join("\n")}
place slat across, flat, on rails, 0 from left, 0 from front
`;

const SPAN = 38.5;
const OVER = 0.75;
const two = (more: string): string => onRails("2x6", 40, [0.75, 39.25], more);
const own = weighs(40, 5.5, 1.5);

describe('a 2x6 laid flat on two rails, 38-1/2" apart, 3/4" past each', () => {
  // 875 x 1.3 x 1.15 = 1308 psi on 5.5 x 1.5^2 / 6 = 2.0625 in3.
  const bears = GRADED["2x6"].flat * modulus(5.5, 1.5);
  const stiff = GRADED.E * inertia(5.5, 1.5);

  test("under 100 lb spread", () => {
    const slat = see(two("load slat 100 lb spread")).one("slat");
    const w = (100 + own) / 40;
    const moment = (w * SPAN ** 2) / 8 - (w * OVER ** 2) / 2;
    expect(slat.own).toBeCloseTo(own, 6);
    expect(slat.moment).toBeCloseTo(moment, 6);
    expect(slat.coming).toBe(0);
    // It stays for good: 0.9 of ten years.
    expect(slat.limit).toBeCloseTo(0.9 * bears, 4);
    expect(slat.uses).toBeCloseTo(moment / (0.9 * bears), 9);
    // 5 w L^4 / 384 E I less w a^2 L^2 / 16 E I for the ends, half as much again with the years.
    const sag = (5 * w * SPAN ** 4) / 384 / stiff - (w * OVER ** 2 * SPAN ** 2) / 16 / stiff;
    expect(slat.sag).toBeCloseTo(1.5 * sag, 9);
    expect(slat.sagLimit).toBeCloseTo(SPAN / 240, 9);
    expect(slat.links.map((l) => l.steady)).toEqual([
      expect.closeTo((100 + own) / 2, 6),
      expect.closeTo((100 + own) / 2, 6),
    ]);
  });

  test("outdoors: stiffness x 0.9, sag twice; bending x 0.85 above 1150 psi, of which 875 x 1.3 is no more", () => {
    const slat = see(two("  outdoors\nload slat 100 lb spread")).one("slat");
    const w = (100 + own) / 40;
    const sag = (5 * w * SPAN ** 4) / 384 - (w * OVER ** 2 * SPAN ** 2) / 16;
    expect(slat.sag).toBeCloseTo((2 * sag) / (0.9 * stiff), 9);
    expect(slat.limit).toBeCloseTo(0.9 * bears, 4);
    // A 2x4: 875 x 1.5 = 1312 psi.
    const thin = see(onRails("2x4", 40, [0.75, 39.25], "  outdoors\nload slat 60 lb")).one("slat");
    expect(thin.limit).toBeCloseTo(0.9 * 0.85 * GRADED["2x4"].flat * modulus(3.5, 1.5), 4);
  });

  test('under 100 lb in its middle, 4" wide: P L / 4 - P c / 8', () => {
    const slat = see(two("load slat 100 lb middle")).one("slat");
    const w = own / 40;
    const moment = (100 * SPAN) / 4 - (100 * 4) / 8 + (w * SPAN ** 2) / 8 - (w * OVER ** 2) / 2;
    expect(slat.moment).toBeCloseTo(moment, 6);
    expect(slat.uses).toBeCloseTo(moment / (0.9 * bears), 9);
  });

  test("under 100 lb anywhere: by itself in the middle, by all of its weight over each rail", () => {
    const slat = see(two("load slat 100 lb anywhere")).one("slat");
    const w = own / 40;
    const stays = (w * SPAN ** 2) / 8 - (w * OVER ** 2) / 2;
    const comes = (100 * SPAN) / 4 - (100 * 4) / 8;
    expect(slat.moment).toBeCloseTo(stays, 6);
    expect(slat.coming).toBeCloseTo(comes, 6);
    // What comes and goes is no load for good.
    expect(slat.uses).toBeCloseTo((stays + comes) / bears, 9);
    expect(slat.links.map((l) => l.moving)).toEqual([100, 100].map((n) => expect.closeTo(n, 6)));
    // P over c in the middle: P (8 L^3 - 4 L c^2 + c^3) / 384 E I; it does not grow with the years.
    const sag = (100 * (8 * SPAN ** 3 - 4 * SPAN * 16 + 64)) / 384 / stiff;
    const dead = (5 * w * SPAN ** 4) / 384 / stiff - (w * OVER ** 2 * SPAN ** 2) / 16 / stiff;
    expect(slat.sag).toBeCloseTo(1.5 * dead + sag, 6);
  });

  test("several weights anywhere: the heaviest counts, one at a time", () => {
    const slat = see(two("load slat 60 lb anywhere\nload slat 100 lb anywhere")).one("slat");
    expect(slat.coming).toBeCloseTo((100 * SPAN) / 4 - (100 * 4) / 8, 6);
    expect(slat.moving).toBeCloseTo(100, 9);
  });
});

test("a thin board is brought down from clear wood: a 1x6 bears 928 psi dry, four fifths of that wet", () => {
  const plan = (more: string): string => onRails("1x6", 40, [0.75, 39.25], `${more}load slat 20 lb`);
  const dry = see(plan("")).one("slat");
  expect(THIN.flat).toBeCloseTo(927.6, 1);
  expect(dry.limit).toBeCloseTo(0.9 * THIN.flat * modulus(5.5, 0.75), 4);
  const wet = see(plan("  outdoors\n")).one("slat");
  expect(wet.limit).toBeCloseTo((0.9 * THIN.flat * modulus(5.5, 0.75)) / 1.25, 4);
  const w = (20 + weighs(40, 5.5, 0.75)) / 40;
  const sag = ((5 * w * SPAN ** 4) / 384 - (w * OVER ** 2 * SPAN ** 2) / 16) / THIN.E / inertia(5.5, 0.75);
  expect(dry.sag).toBeCloseTo(1.5 * sag, 9);
});

test("a 2x6 on edge is its width deep, and sheared where that is worse", () => {
  const plan = `part block of 4x4, length 4"
part beam of 2x6, length 30"
place block across, flat, on floor, 0 from left, 0 from front
place block across, flat, on floor, 26" from left, 0 from front
place beam across, on edge, on blocks, 0 from left, 1" from front
load beam 2000 lb
`;
  const beam = see(plan).one("beam");
  const w = (2000 + weighs(30, 5.5, 1.5)) / 30;
  // Middles at 2" and 28": a span of 26", 2" past each. V = w L / 2, against 2/3 A Fv = 742 lb; what stands nearer to a
  // block than the beam is deep goes straight into it (NDS 3.4.3.1), of which d / L is taken off.
  const shear = 13 * w * (1 - 5.5 / 26);
  expect(beam.held.judged!.strain.what).toBe("shear");
  expect(beam.uses).toBeCloseTo(shear / (0.9 * ((2 / 3) * 5.5 * 1.5 * 135)), 6);
});

test("a board over three bearers bends over the middle one: w L^2 / 8 less half of the ends' moment", () => {
  const slat = see(onRails("2x6", 80, [0.75, 40, 79.25], "load slat 200 lb")).one("slat");
  const w = (200 + weighs(80, 5.5, 1.5)) / 80;
  const [L, a] = [39.25, 0.75];
  const middle = (w * L ** 2) / 8 - (w * a ** 2) / 4;
  expect(slat.moment).toBeCloseTo(middle, 6);
  // Ends: w a + w L / 2 - (M - w a^2 / 2) / L; the middle one has the rest.
  const end = w * a + (w * L) / 2 - (middle - (w * a ** 2) / 2) / L;
  expect(slat.links.map((l) => l.steady)).toEqual(
    [end, 80 * w - 2 * end, end].map((n) => expect.closeTo(n, 6)),
  );
});

describe("a board that reaches past its rails", () => {
  // Middles at 10" and 40" of 50": 10" past each.
  const plan = (more: string): string => onRails("2x6", 50, [10, 40], more);

  test('is bent most by a weight at its end, which lies 4" wide on it', () => {
    const slat = see(plan("load slat 100 lb anywhere")).one("slat");
    expect(slat.coming).toBeCloseTo(Math.max(100 * 8, (100 * 30) / 4 - (100 * 4) / 8), 6);
    // Its near rail then carries more than all of it: (30 + 8) / 30.
    expect(slat.links.map((l) => l.moving)).toEqual([1, 1].map(() => expect.closeTo((100 * 38) / 30, 6)));
  });

  test("bends past its end as a span of twice that", () => {
    const slat = see(plan("load slat 100 lb anywhere")).one("slat");
    // The middle of the foot 8" past: P b^2 (b + L) / 3 E I there and P b (2 L + 3 b) / 6 E I of slope for 2" more, nearly.
    const [b, L] = [8, 30];
    const stiff = GRADED.E * inertia(5.5, 1.5);
    const near = (100 * b * b * (b + L)) / 3 / stiff + ((100 * b * (2 * L + 3 * b)) / 6 / stiff) * 2;
    expect(slat.held.judged!.sag.span / 25.4).toBeCloseTo(20, 6);
    const w = weighs(50, 5.5, 1.5) / 50;
    expect(slat.sag).toBeGreaterThan(near * 0.99);
    expect(slat.sag).toBeLessThan(near * 1.02 + (1.5 * (w * 50 ** 4)) / stiff / 50);
  });

  test("lifts off the far rail under a weight at its end: unfastened it tips, fastened it pulls", () => {
    const weight = (more: string): string => `${plan(more)}part pot of 4x4, length 5-1/2"
place pot front to back, flat, on slat, flush with right of slat, 0 from front
load pot 60 lb
`;
    const loose = see(weight(""));
    // 60 lb and the block, 8.25" past the rail at 40"; the board's own 7.2 lb x 15" / 30" do not hold it down.
    expect(loose.codes).toContain("load-has-no-path");
    const tied = see(weight('fasten slat into rail, 2 #8 x 3" at each crossing'));
    expect(tied.codes).not.toContain("load-has-no-path");
    const pot = 60 + weighs(5.5, 3.5, 3.5);
    const up = (pot * 8.25 - weighs(50, 5.5, 1.5) * 15) / 30;
    expect(tied.one("slat").links[0]!.steady).toBeCloseTo(-up, 6);
    const joint = tied.joint("slat");
    expect([joint.way, joint.screws]).toEqual(["pulled", 2]);
    expect(joint.asked).toBeCloseTo(up, 6);
  });
});

describe("a panel", () => {
  const ply = (more: string): string => `sheet ply, plywood 23/32"
part deck of ply, length 48", width 24"
${more}
load deck 200 lb
`;
  const legs = `part leg of 2x4, length 10"
place leg upright, wide face front, on floor, at each corner of 48" x 24"
place deck across, flat, on legs, flush with left of legs, flush with front of legs`;
  /** 48/24 panels: 845 in lb and 440,000 in2 lb for each foot of width along the face grain, 225 and 29,500 across it. */
  const along = { strength: 845, stiffness: 440_000 };
  const across = { strength: 225, stiffness: 29_500 };

  test("on legs at its corners bends the longer way, over its whole width", () => {
    const deck = see(ply(legs)).one("deck");
    // Middles of the legs 3-1/2" wide: 1.75" and 46.25".
    const w = (200 + deck.own) / 48;
    const [L, a] = [44.5, 1.75];
    expect(deck.moment).toBeCloseTo((w * L ** 2) / 8 - (w * a ** 2) / 2, 4);
    expect(deck.limit).toBeCloseTo(0.9 * along.strength * 2, 4);
    const sag = (5 * w * L ** 4) / 384 - (w * a ** 2 * L ** 2) / 16;
    expect(deck.sag).toBeCloseTo((1.5 * sag) / (along.stiffness * 2), 6);
    expect(deck.links).toHaveLength(4);
  });

  test("on four rails bends the shorter way, across its grain", () => {
    const rails = `part rail of 2x4, length 48"
part tie of 2x4, length 21"
place rail across, on edge, on floor, 0 from left, 0 from front
place rail across, on edge, on floor, 0 from left, 22-1/2" from front
place tie front to back, on edge, on floor, between front rail and back rail, flush with left of rails
place tie front to back, on edge, on floor, between front rail and back rail, flush with right of rails
place deck across, flat, on rails, flush with left of rails, flush with front of rails`;
    const deck = see(ply(rails)).one("deck");
    expect(deck.held.carried.lie.across).toBe(true);
    expect(deck.held.carried.span / 25.4).toBeCloseTo(22.5, 6);
    expect(deck.limit).toBeCloseTo(0.9 * across.strength * 4, 4);
  });

  test("on two rails under its long sides bends across too; under its short sides along", () => {
    const sides = `part rail of 2x4, length 48"
place rail across, on edge, on floor, 0 from left, 0 from front
place rail across, on edge, on floor, 0 from left, 22-1/2" from front
place deck across, flat, on rails, flush with left of rails, flush with front of rails`;
    expect(see(ply(sides)).one("deck").held.carried.lie.across).toBe(true);
    const ends = `part rail of 2x4, length 24"
place rail front to back, on edge, on floor, 0 from left, 0 from front
place rail front to back, on edge, on floor, 46-1/2" from left, 0 from front
place deck across, flat, on rails, flush with left of rails, flush with front of rails`;
    const deck = see(ply(ends)).one("deck");
    expect(deck.held.carried.lie.across).toBe(false);
    expect(deck.limit).toBeCloseTo(0.9 * along.strength * 2, 4);
  });

  test("of no category that is printed is listed, not judged", () => {
    const odd = see(ply(legs).replace('plywood 23/32"', 'thickness 1-3/8"'));
    expect(odd.one("deck").held.member).toBeUndefined();
    expect(odd.worked.unchecked.map((u) => u.what.says)).toContain("bears its load");
  });
});
