/** What hovers tell of loads: word for word, and numbers by hand. */
import { describe, expect, test } from "vitest";
import { hoverAt } from "../../server/features/hover";
import { MPA_PER_PSI } from "../../server/strength/units";
import { bendingValues, speciesNames, structuralCaution } from "../../server/trade";
import { fixture, worked } from "./plans";

const text = fixture("carried");
const plan = worked(text);

/** Over the first of these words behind the start of that line. */
const over = (line: string, word = line): string => {
  const from = text.indexOf(`\n${line}`) + 1;
  return hoverAt(plan, text.indexOf(word, from))?.markdown ?? "";
};

describe("hovers over what carries something", () => {
  test.each([
    ["rail", "part rail", "rail"],
    ["slat", "part slat", "slat"],
    ["leg", "part leg", "leg"],
    ["place-slat", "place slat", "place"],
    ["rail-joint", "fasten rail", "fasten"],
    ["side", "part side", "side"],
    ["side-joint", "fasten side", "fasten"],
    ["box", "box herbs", "herbs"],
    ["load", "load shelf", "load"],
    ["shelf", "part shelf", "shelf"],
  ])("of %s", async (name, line, word) => {
    await expect(`${over(line, word)}\n`).toMatchFileSnapshot(`snapshots/holds-${name}.txt`);
  });
});

describe("the numbers of a hover", () => {
  test("a slat that somebody stands on: by hand", () => {
    // 300 lb on 4" in the middle of 18-1/2": 300 x 18.5 / 4 - 300 x 4 / 8 = 1238 in-lb, and some 6 of its own 2.7 lb.
    // 5-1/2 x 1-1/2^2 / 6 = 2.06 in3; 875 x 1.3 x 1.15 = 1308 psi (NDS Supplement, Table 4A), wet without loss up to 1150.
    const hover = over("part slat", "slat");
    expect(hover).toContain('Bending over 18-1/2": M 1240 in-lb / S 2.06 in3 = 603 psi of 1310 psi allowed');
    expect(hover).toContain("875 psi x size 1.3 x laid flat 1.15");
    expect(hover).toContain("| Uses | 46% |");
  });

  test("a shelf of thin cedar under a load that stays: by hand", () => {
    // 20 lb on 4" in the middle of 34-1/2": 20 x 34.5 / 4 - 20 x 4 / 8 = 162.5 in-lb, and 2.1 x 34.5 / 8 = 9 of its own.
    // 5-1/2 x 3/4^2 / 6 = 0.516 in3; 5200 x 0.7368 / 2.1 x 0.45 x 1.25 / 1.25 x 0.9 = 739 psi (ASTM D245).
    const hover = over("part shelf", "shelf");
    expect(hover).toContain("M 171 in-lb / S 0.516 in3 = 332 psi of 739 psi allowed");
    // 20 x 34.5^3 / 48 E I = 0.085", and 0.003" of its own weight; E 1.11 x 0.9, twice in the long run.
    expect(hover).toContain('Bends 3/16" of the 1/8" it may, 1/240 of 34-1/2"');
  });

  test("two wet screws: what one holds, times its factors, times two", () => {
    const hover = over("fasten rail", "fasten");
    expect(hover).toContain("107 lb across by NDS yield mode IV");
    expect(hover).toContain("107 lb x wet 0.7 x 2 screws = 150 lb");
  });

  test("a foot against the limit that was typed", () => {
    expect(over("part leg", "leg")).toContain("700 lb is the foot limit you typed, uses 45%");
  });

  test("the caution stands with every one", () => {
    const caution = structuralCaution.value.text.slice(0, 40);
    for (const [line, word] of [
      ["part rail", "rail"],
      ["part leg", "leg"],
      ["place slat", "place"],
      ["fasten rail", "fasten"],
      ["part side", "side"],
      ["box herbs", "herbs"],
      ["load shelf", "load"],
    ] as const)
      expect(over(line, word), line).toContain(caution);
  });

  test("the factors that are told make what a board may be stressed to", () => {
    const sizes = [
      [19.05, 139.7],
      [25.4, 139.7],
      [38.1, 88.9],
      [38.1, 235],
      [88.9, 88.9],
    ] as const;
    let told = 0;
    for (const wood of speciesNames())
      for (const [thick, broad] of sizes)
        for (const flat of [true, false]) {
          const values = bendingValues(wood, thick, broad, flat);
          if (!values) continue;
          const { printed, times } = values.steps;
          const product = times.reduce((all, { by }) => all * by, printed) * MPA_PER_PSI;
          expect(product / values.bending, `${wood} ${thick} x ${broad}`).toBeCloseTo(1, 9);
          told += 1;
        }
    expect(told).toBeGreaterThan(200);
  });
});
