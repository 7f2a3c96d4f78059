/** Whole lists of what is offered, in their order; what is no longer offered once it is said; what taking an offer gives. */
import { describe, expect, test } from "vitest";
import { completionsAt } from "../../server/features/completion";
import { cropNames, fillNames, sectionNames, speciesNames } from "../../server/trade";
import { atCaret, fixture, worked } from "./plans";

const files = { "shop.sawbuck": fixture("shop") };

const BASE = `plan Bench
  lumber dry
shop shop.sawbuck
measure rim = 30"
measure sack = 40 lb
part leg 4 of 2x4, length rim
part bench 2 of 2x4, length 2 * rim
ring cap = 4 leg
assembly gable
  place leg across
box trough, walls leg, inside 10" x 10" x 10"
fill house-mix, saturated 80 lb/cuft
`;

const offered = (line: string) => {
  const { plan, offset } = atCaret(BASE + line, files);
  return completionsAt(plan, offset);
};
const labels = (line: string): string[] => offered(line).map((c) => c.label);

/** The line after taking an offer. */
function taking(line: string, label: string): string {
  const { plan, offset } = atCaret(BASE + line, files);
  const one = completionsAt(plan, offset).find((c) => c.label === label);
  if (!one) throw new Error(`${label} is not offered`);
  const text = plan.text.slice(0, one.range.start) + one.insertText + plan.text.slice(one.range.end);
  return text.slice(BASE.length);
}

describe("the whole list", () => {
  test.each<[string, readonly string[]]>([
    ["stock pallet ‸", ["of"]],
    ["ring r = leg ‸", ["and"]],
    ["fasten leg face ‸", ["and", "through", "into"]],
    ["glue leg ‸", ["face", "edge", "end", "and", "through", "to", "onto", "into"]],
    ["load leg 40 lb ‸", ["spread", "anywhere", "middle"]],
    ['must rim at most 3" ‸', ["because"]],
    ["tools\n  ‸", ["kerf", "miters to", "bevels to", "rips", "no ripping", "has"]],
    ["step Do it\n  ‸", ["uses", "coats", "lines", "takes", "then wait", "wait", "2 people"]],
    ['measure low = 3", ‸', ["at least", "at most"]],
    ["fill f, dry 20 lb/cuft, ‸", ["moist", "saturated"]],
    ['part p 4 of 2x4, length 36" long point to lo‸', ["long point", "short point"]],
    ['fasten leg into bench, 2 #8 x 2" ‸', ["at each crossing", "at each end", "along it", "in all"]],
    ["box b, filled with ‸", ["house-mix", "hillside-mix", ...fillNames()]],
    ["box b, grows ‸", cropNames()],
    ["stock 1x8, species ‸", speciesNames()],
    ["stock 1x8, moisture ‸", ["dry", "green"]],
    ["fastener f, coating ‸", ["stainless", "galvanized", "coated", "plain"]],
    ["place leg upright, centered ‸", ["left to right", "front to back", "up and down", "on"]],
    ["p, length 36‸", []],
    ["part p 4 of 2x4, length 36‸", ['36"', "36'", "36mm", "36cm"]],
    ["part p 4 of 2x4, length 3' 6‸", ['6"']],
    ["load leg 40 l‸", ["40 lb"]],
    ["plan x\n  floor limit 58‸", ["58 psf", "58 kPa"]],
    ["plan x\n  tax 8‸", ["8%"]],
    ["stock 1x8, sold 8' $4, 10‸", ['10"', "10'", "10mm", "10cm"]],
    ["plan x\n  make 6‸", []],
    ["place leg upright, long points ‸", ["left", "right", "front", "back", "top", "bottom"]],
    ["place leg on edge, leaning 10° ‸", ["left", "right", "front", "back", "top", "bottom", "in", "out"]],
  ])("%s", (line, list) => {
    expect(labels(line)).toEqual(list);
  });

  test("names in scope stand before the tables: boards by the plan's own lumber standard", () => {
    const declared = ["1x6", "2x4", "pallet-slat", "shelf-ply"];
    expect(labels("part post 4 of ‸")).toEqual([
      ...declared,
      ...sectionNames("ps20-dry").filter((name) => !declared.includes(name)),
    ]);
    const metric = atCaret("plan x\n  lumber planed metric\npart p 1 of ‸");
    expect(completionsAt(metric.plan, metric.offset).map((c) => c.label)).toEqual(
      sectionNames("planed-metric"),
    );
  });

  test("measures of the kind wanted stand before the others", () => {
    expect(labels("part p 4 of 2x4, length ‸").slice(0, 2)).toEqual(["rim", "sack"]);
    expect(labels("load leg ‸")[0]).toBe("sack");
    expect(labels("load leg ‸")).not.toContain("length of");
  });

  test("codes that are open in the plan stand first", () => {
    const line = 'fasten leg face into bench face, 2 #8 x 1-5/8" in all\naccept ‸';
    const open = new Set(worked(BASE + line.replace("‸", ""), files).problems.map((p) => p.code));
    const list = labels(line).map((code) => open.has(code));
    expect(list[0]).toBe(true);
    expect(list).toEqual([...list].sort((a, b) => Number(b) - Number(a)));
  });

  test("screws that fit stand before those that do not, and of these the shop's before the usual lengths", () => {
    const all = labels("fasten leg into bench, 2 #8 x ‸");
    // Two boards of 1-1/2": between 2" (1/2" of bite) and 2-7/8" (1/8" over the tip).
    expect(all.slice(0, 3)).toEqual(['#8 x 2-1/2"', '#8 x 2"', '#8 x 1-5/8"']);
    expect(all.every((l) => l.startsWith("#8"))).toBe(true);
  });

  test("a step may take some pieces of a name", () => {
    for (const line of ["step Do it\n  uses front ‸", "step Do it\n  coats leg and upper left ‸"])
      expect(labels(line)).toEqual(expect.arrayContaining(["leg", "legs", "bench", "benches", "cap"]));
  });

  test("a metric plan is offered millimetres first", () => {
    const { plan, offset } = atCaret("plan x\n  units millimetres\npart p 1 of 18x95, length 36‸");
    expect(completionsAt(plan, offset)[0]?.label).toBe("36mm");
  });
});

describe("once said", () => {
  test.each<[string, readonly string[], readonly string[]]>([
    ['part p 4 of 2x4, length 3", ends mitered 45°, ‸', ["length", "ends", "left end"], ["width", "notch"]],
    ['part p 4 of 2x4, notch 1" x 1" at left end, ‸', [], ["notch"]],
    ["box b, no drain, ‸", ["no drain", "drains by", "drains through"], ["walls"]],
    ["place leg upright, ‸", ["upright", "across", "flat", "on edge"], ["wide face", "on"]],
    ["place leg across, ‸", ["across", "upright"], ["flat", "on edge"]],
    ["place leg across, on floor, ‸", [], ["on", "flush with"]],
    ["place leg across, flat, long points front, ‸", [], ["long points"]],
    ['stock 1x8, treated, actual 1" x 7", ‸', ["treated", "untreated", "actual", "measured"], ["sold"]],
  ])("%s", (line, gone, left) => {
    const list = labels(line);
    expect(gone.filter((l) => list.includes(l))).toEqual([]);
    expect(left.filter((l) => !list.includes(l))).toEqual([]);
  });
});

describe("taking an offer", () => {
  test.each([
    ["pa‸rst", "part", "part "],
    ["must thick‸", "thickness of", "must thickness of "],
    ["load leg 40 l‸", "40 lb", "load leg 40 lb"],
    ["part p 4 of 2x4, length 36‸, ends square", '36"', 'part p 4 of 2x4, length 36", ends square'],
    ["fasten leg into bench, 2 #8 x 1‸", '#8 x 1-5/8"', 'fasten leg into bench, 2 #8 x 1-5/8"'],
  ])("%s", (line, label, after) => {
    expect(taking(line, label)).toBe(after);
  });
});

test("300 terms on one line are no matter", () => {
  const sum = Array.from({ length: 300 }, () => "(rim - 1)").join(" + ");
  const { plan, offset } = atCaret(`measure rim = 3"\nmeasure long = ${sum} + ‸`);
  const start = performance.now();
  expect(completionsAt(plan, offset)[0]?.label).toBe("rim");
  expect(performance.now() - start).toBeLessThan(20_000);
});

test("a range never spans lines, wherever the cursor stands in a plan", () => {
  const plan = worked(fixture("inches"), files);
  for (let offset = 0; offset <= plan.text.length; offset++)
    for (const { range } of completionsAt(plan, offset))
      expect(plan.text.slice(range.start, range.end)).not.toMatch(/[\r\n]/);
});
