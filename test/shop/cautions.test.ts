/** Each caution: a plan that calls it up, and one like it that does not. */
import { describe, expect, it, test } from "vitest";
import { cautions, structuralCaution } from "../../server/trade";
import { cautionsOf } from "../../server/worked";
import { run } from "../checks/plans";

const keys = (text: string): string[] => cautionsOf(run(text).worked).map((c) => c.key);
const about = (text: string, key: string): readonly string[] | undefined =>
  cautionsOf(run(text).worked).find((c) => c.key === key)?.about;

const plan = (says: string): string => `plan A thing\n  ${says}\n`;
const tools = (says: string): string => `tools\n  ${says}\n`;
const LEG = 'part leg 4 of 2x4, length 28"\n';
const SLAT = 'part slat 4 of 1x4, length 28"\n';
const RIP = 'part a 1 of 1x6, length 40", width 3"\n';
const SCREWS = `${LEG}${SLAT}fasten slat into leg, 2 #8 x 1-5/8" at each end\n`;
const CEDAR = "stock 1x4\n  species western-redcedar\n";
const TREATED = "stock 2x4\n  treated\n";
const PILE = "stock 2x4\n  on hand 9 of 8'\n";
const BOX = (says: string): string =>
  `part wall 4 of 1x6, length 30"\nbox tub, walls wall\n  inside 30" x 30" x 11"\n  ${says}\n`;
const POST =
  'part post 1 of 4x4, length 40"\nplace post upright, wide face front, 0 from left, 0 from front, ';
const FINISH = (name: string): string =>
  `finish ${name}\n  covers 250 sqft per gal\n${LEG}coat leg with ${name}\n`;

/** Key of the caution: what calls it up, and what does not. */
const CASES: Readonly<Record<string, readonly [calls: readonly string[], not: readonly string[]]>> = {
  estimate: [[""], []],
  floor: [[plan("floor limit 40 psf"), plan("foot limit 300 lb")], [plan("outdoors")]],
  guard: [[plan("near a guard")], [plan("near children")]],
  tall: [
    [`${POST}on floor\n`, `${POST.replace('40"', '65"')}on floor\n`],
    [
      `${POST.replace('40"', '12"')}on floor\n`,
      `plan Yard gate\n${POST}on floor\n`, // it hangs
      'part post 1 of 4x4, length 40"\n', // where it stands is not said
    ],
  ],
  hung: [
    [`${POST}40" up\n`],
    [`${POST}on floor\n`, `plan Yard gate\n${POST}40" up\n`, LEG], // a gate has hinges
  ],
  "circular-saw": [
    [RIP, tools("has circular-saw") + LEG],
    [LEG, tools("has table-saw") + RIP, tools("has handsaw") + RIP],
  ],
  "table-saw": [
    [RIP, tools("has table-saw") + LEG],
    [LEG, tools("has circular-saw") + RIP],
  ],
  "push-stick": [
    [RIP, tools("has table-saw") + RIP],
    [
      LEG,
      tools("has circular-saw") + RIP,
      'sheet ply\n  plywood 3/4"\npart a 1 of ply, length 30", width 20"\n',
    ],
  ],
  rip: [
    [RIP, tools("has circular-saw") + RIP],
    [LEG, tools("has table-saw") + RIP, tools("has handsaw") + RIP],
  ],
  "short-piece": [
    ['part peg 3 of 2x2, length 5-7/8"\n', tools("has handsaw") + 'part peg 3 of 2x2, length 5"\n'],
    ['part peg 3 of 2x2, length 6"\n'],
  ],
  miter: [
    ['part a 2 of 1x4, length 8", ends mitered 45°\n', 'part a 2 of 1x4, length 8", ends beveled 30°\n'],
    [
      LEG,
      tools("has handsaw") + 'part a 2 of 1x4, length 8", ends mitered 45°\n',
      'part a 2 of 1x4, length 20", ends mitered 45°\n',
      'part a 2 of 1x4, length 5", ends mitered 10°\n', // cut from a long board
    ],
  ],
  "blade-change": [[LEG], [tools("has handsaw") + LEG, ""]],
  eyes: [[LEG, tools("has handsaw") + LEG], [""]],
  ears: [[LEG], [tools("has handsaw") + LEG]],
  splitting: [[SCREWS], [LEG + SLAT]],
  dust: [[LEG, tools("has handsaw") + LEG], [""]],
  "dust-cedar": [[CEDAR + SLAT], [CEDAR + LEG, SLAT, "stock 1x4\n  species northern-white-cedar\n" + SLAT]],
  "treated-dust": [[TREATED + LEG], [LEG, TREATED + SLAT]],
  "treated-burn": [
    [TREATED + LEG, PILE + LEG],
    [LEG, PILE.replace("on hand", "untreated\n  on hand") + LEG],
  ],
  "treated-food": [
    [`stock 1x6\n  treated\n${BOX("grows lettuce")}`],
    [`stock 1x6\n  treated\n${BOX("no drain")}`, BOX("grows lettuce")],
  ],
  "treated-contact": [[TREATED + LEG], [plan("indoors") + TREATED + LEG]],
  "treated-drying": [[TREATED + FINISH("shed-paint")], [TREATED + LEG, FINISH("shed-paint")]],
  "treated-screws": [[TREATED + SCREWS], [TREATED + LEG, SCREWS]],
  "black-stain": [
    [CEDAR + SCREWS],
    [
      SCREWS,
      plan("indoors") + CEDAR + SCREWS,
      `fastener good, #8 x 1-5/8" screw, coating stainless\n${CEDAR}${SCREWS.replace('#8 x 1-5/8"', "good")}`,
    ],
  ],
  "old-treated": [[PILE + LEG], [LEG, PILE.replace("on hand", "untreated\n  on hand") + LEG]],
  "salvage-poison": [[PILE + LEG], [LEG]],
  salvage: [
    [PILE + LEG, "stock 2x4\n  painted\n" + LEG],
    [
      LEG,
      PILE + SLAT, // on hand, but nothing is cut from it
      "stock 2x4\n  sold 8' $4\n  on hand 1 of 12\"\n" + LEG, // too short for any piece
    ],
  ],
  pallet: [
    ['stock pallet-slat of 1x4\n  on hand 9 of 40"\npart a 2 of pallet-slat, length 20"\n'],
    [PILE + LEG],
  ],
  "near-food": [
    [
      PILE.replace("2x4", "1x6") + BOX("grows lettuce"),
      `roll cloth\n  width 3'\n${BOX("grows lettuce")}line tub with cloth\n`,
      `roll cloth\n  width 3'\n${BOX("grows lettuce")}line tubs with cloth\n`,
      `finish shed-paint\n  covers 250 sqft per gal\n${BOX("grows lettuce")}coat wall with shed-paint\n`,
      `plan Bread board\n${PILE}${LEG}`,
    ],
    [
      BOX("grows lettuce"),
      PILE.replace("2x4", "1x6") + BOX("no drain"),
      `roll cloth\n  width 3'\n  food safe\n${BOX("grows lettuce")}line tub with cloth\n`,
      `roll cloth\n  width 3'\n${BOX("grows lettuce")}${BOX("no drain").replace("tub", "pond")}line pond with cloth\n`,
      PILE + LEG,
    ],
  ],
  "oily-rags": [
    [FINISH("outdoor-oil"), FINISH("deck-stain")],
    [FINISH("shed-paint"), FINISH("water-based-stain"), LEG],
  ],
  lifting: [
    [
      "part beam 1 of 6x12, length 12'\n", // one piece
      'part leg 40 of 2x4, length 48"\n', // all of it
      BOX("filled with soil"),
      'sheet ply\n  plywood 3/4"\n  sold 48" x 96" $50\npart a 1 of ply, length 40", width 30"\n', // a sheet
    ],
    [LEG, 'part beam 1 of 6x12, length 50-1/2"\n'], // 50.8 lb
  ],
  "wet-box": [[BOX("filled with soil")], [BOX("grows lettuce"), LEG]],
  digging: [
    [
      plan("outdoors") + 'part post 4 of 4x4, length 20"\n',
      `${plan("outdoors")}${LEG}step Dig the holes\n`,
      `${POST}(0" - 12") up\n`,
    ],
    [
      plan("indoors") + 'part post 4 of 4x4, length 20"\n',
      plan("outdoors\n  floor limit 40 psf by the mason") + 'part post 4 of 4x4, length 20"\n',
      plan("outdoors") + LEG,
      `${plan("outdoors")}${POST.replace('40"', '12"')}on floor\n`, // it stands on the ground
    ],
  ],
  children: [[plan("near children")], [plan("outdoors")]],
  "small-parts": [
    [`${plan("near children")}part knob 4 of 1x1, length 1"\nstock 1x1\n  actual 3/4" x 3/4"\n`],
    [
      `part knob 4 of 1x1, length 1"\nstock 1x1\n  actual 3/4" x 3/4"\n`, // no children
      plan("near children") + LEG,
    ],
  ],
};

test("every caution of the table has its cases", () => {
  expect(Object.keys(CASES).sort()).toEqual(cautions.map((c) => c.key).sort());
});

describe.each(Object.entries(CASES))("%s", (key, [calls, not]) => {
  it.each(calls)("is called up by %j", (text) => expect(keys(text)).toContain(key));
  it.each(not.length > 0 ? not : ["(always)"])("is not called up by %j", (text) => {
    if (not.length > 0) expect(keys(text)).not.toContain(key);
  });
});

describe("the cautions of a plan", () => {
  it("begin with the structural one, always", () => {
    for (const text of ["", LEG, SCREWS])
      expect(cautionsOf(run(text).worked)[0]?.text).toBe(structuralCaution.value.text);
  });

  it("name what calls them up, and nothing where it is all of it", () => {
    expect(about(`${LEG}part peg 3 of 2x2, length 5"\n`, "short-piece")).toEqual(["peg"]);
    expect(about(PILE + LEG, "salvage")).toEqual(["2x4"]);
    expect(about(`${RIP}${LEG}`, "eyes")).toEqual([]);
  });

  it("are each told once", () => {
    const found = keys(CEDAR + SCREWS);
    expect(new Set(found).size).toBe(found.length);
  });
});
