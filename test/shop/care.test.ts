/** Each piece of care: a plan that calls it up, and one like it that does not. */
import { describe, expect, it, test } from "vitest";
import { care } from "../../server/trade";
import { careOf } from "../../server/worked";
import { run } from "../checks/plans";

const keys = (text: string): string[] => careOf(run(text).worked).map((c) => c.key);

const OUT = "plan A thing\n  outdoors\n";
const IN = "plan A thing\n  indoors\n";
const LEG = 'part leg 4 of 2x4, length 28"\n';
const SCREWS = `${LEG}part slat 4 of 1x4, length 28"\nfasten slat into leg, 2 #8 x 1-5/8" at each end\n`;
const BOX = (says: string): string => `box tub, inside 30" x 30" x 11"\n  ${says}\n`;
const LINED = (roll: string, drains: string): string =>
  `roll ${roll}\n  width 6'\n${BOX(drains)}line tub with ${roll}\n`;
const STAND = `${LEG.replace("4 of", "1 of")}place leg upright, wide face front, on floor, 0 from left, 0 from front\n`;
const FINISH = (name: string, says = ""): string =>
  `finish ${name}\n  covers 250 sqft per gal\n${LEG}coat leg with ${name}${says}\n`;

const CASES: Readonly<Record<string, readonly [calls: readonly string[], not: readonly string[]]>> = {
  tighten: [
    [OUT + SCREWS, `${IN}stock 2x4\n  moisture green\n${SCREWS}`, `stock 2x4\n  treated\n${SCREWS}`],
    [IN + SCREWS, SCREWS, OUT + LEG],
  ],
  bolts: [
    [
      `fastener b, bolt 1/4" x 4"\n${LEG}part slat 2 of 1x4, length 20"\nfasten slat into leg, 2 b at each end\n`,
    ],
    [SCREWS],
  ],
  oil: [[OUT + FINISH("shed-oil")], [IN + FINISH("shed-oil"), OUT + FINISH("shed-paint")]],
  "stain-rough": [
    [`${OUT}stock 2x4\n  rough\n${FINISH("shed-stain", ", 2 coats")}`],
    [`${OUT}stock 2x4\n  rough\n${FINISH("shed-stain")}`, OUT + FINISH("shed-stain", ", 2 coats")],
  ],
  "stain-smooth": [
    [OUT + FINISH("shed-stain", ", 2 coats")],
    [IN + FINISH("shed-stain"), OUT + LEG, `${OUT}stock 2x4\n  rough\n${FINISH("shed-stain", ", 1 coats")}`],
  ],
  finish: [
    [
      OUT + FINISH("shed-paint"),
      OUT + FINISH("old-mix"),
      `${OUT}stock 2x4\n  rough\n${FINISH("shed-stain", ", 1 coats")}`,
    ],
    [OUT + FINISH("shed-oil"), OUT + LEG],
  ],
  bare: [[OUT + LEG], [OUT + FINISH("shed-oil"), LEG, OUT]],
  drains: [
    [BOX("drains through the gaps"), BOX('drains by 4 holes of 1/4"')],
    [BOX("no drain"), BOX("grows lettuce"), LEG],
  ],
  liner: [[`roll cloth\n  width 3'\n${BOX("no drain")}line tub with cloth\n`], [BOX("no drain")]],
  "liner-open": [
    [LINED("pond-liner", 'drains by 4 holes of 1/4"'), LINED("pond-liner", "drains through the gaps")],
    [LINED("weed-felt", 'drains by 4 holes of 1/4"'), LINED("pond-liner", "no drain")],
  ],
  "no-drain": [[BOX("no drain")], [BOX("drains through the gaps"), BOX("no drain\n  filled with water")]],
  frost: [[OUT + BOX("filled with soil")], [IN + BOX("filled with soil"), OUT + BOX("no drain")]],
  "frost-water": [
    [OUT + BOX("filled with water")],
    [OUT + BOX("filled with soil"), IN + BOX("filled with water")],
  ],
  feet: [[OUT + STAND], [IN + STAND, OUT + LEG]],
  "treated-cuts": [[`${OUT}stock 2x4\n  treated\n${LEG}`], [OUT + LEG, `${IN}stock 2x4\n  treated\n${LEG}`]],
  hinged: [
    [`plan Yard gate\n${LEG}`, 'part lid 1 of 1x6, length 20"\n', `${LEG}note Its hinges are on the left.\n`],
    [LEG, `plan Delegate table\n${LEG}`],
  ],
  tall: [
    [STAND, STAND.replace("on floor", '40" up')],
    [`plan Gate\n${STAND}`, LEG],
  ],
  grows: [[BOX("grows lettuce")], [BOX("no drain")]],
  children: [["plan A thing\n  near children\n"], [OUT]],
  salvage: [[`stock 2x4\n  on hand 9 of 8'\n${LEG}`], [LEG]],
};

test("every row of the table has its cases", () => {
  expect(Object.keys(CASES).sort()).toEqual(care.map((c) => c.key.replace("care: ", "")).sort());
});

describe.each(Object.entries(CASES))("%s", (key, [calls, not]) => {
  it.each(calls)("is called up by %j", (text) => expect(keys(text)).toContain(`care: ${key}`));
  it.each(not)("is not called up by %j", (text) => expect(keys(text)).not.toContain(`care: ${key}`));
});

describe("the care of a plan", () => {
  it("is nothing where nothing calls it up", () => {
    expect(careOf(run("").worked)).toEqual([]);
    expect(careOf(run(IN + LEG).worked)).toEqual([]);
  });

  it("names what calls it up", () => {
    expect(careOf(run(OUT + STAND).worked).find((c) => c.key === "care: feet")?.about).toEqual(["leg"]);
  });
});
