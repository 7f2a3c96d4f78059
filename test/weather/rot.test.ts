/** Which wood rots: where it stands, against what, and how it resists. By hand; classes from the table of decay. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { problemText } from "../../server/checks";
import { speciesNames } from "../../server/trade";
import { applied } from "../checks/curing";
import { run } from "../checks/plans";
import { ON_SLABS, OUTDOORS, of, says, unlooked } from "./plans";

const ROT = "will-rot";
const post = (stock: string, place = "on floor", plan = OUTDOORS, more = ""): string =>
  `${plan}${stock}part post of 2x4, length 20"\nplace post upright, wide face front, ${place}, 0 from left, 0 from front\n${more}`;

describe("on the ground outdoors", () => {
  test.each([
    ["a stock that says nothing", "", ["ground"]],
    ["treated", "stock 2x4, treated\n", []],
    ["untreated", "stock 2x4, untreated\n", ["ground"]],
    // Bought boards are sapwood, whatever the wood.
    ["black locust, bought", "stock 2x4, species black-locust\n", ["ground"]],
    ["black locust heartwood: exceptional", "stock 2x4, species black-locust, heartwood\n", []],
    ["cedar heartwood: resistant", "stock 2x4, species western-redcedar, heartwood\n", []],
    ["Douglas-fir heartwood: moderate", "stock 2x4, species douglas-fir, heartwood\n", ["ground"]],
    ["redwood heartwood: young growth is moderate", "stock 2x4, species redwood, heartwood\n", ["ground"]],
    ["spruce heartwood: slight", "stock 2x4, species sitka-spruce, heartwood\n", ["ground"]],
    ["heartwood of no named wood: not known", "stock 2x4, heartwood\n", []],
    ["a finish helps nothing", "coat post with oil-finish\n", ["ground"]],
  ])("%s", (_, stock, found) => {
    expect(says(ROT, post(stock))).toEqual(found);
  });

  test("not indoors, nor where the plan does not say", () => {
    expect(says(ROT, post("", "on floor", "plan Thing\n  indoors\n"))).toEqual([]);
    const unsaid = post("", "on floor", "");
    expect(says(ROT, unsaid)).toEqual([]);
    expect(unlooked(unsaid, /rots and/)).toEqual([
      "whether its wood rots and its fasteners rust: the plan does not say whether it stands indoors or outdoors",
    ]);
  });

  test("what stands higher is only rained on", () => {
    const on = `${OUTDOORS}stock 2x4, treated\npart post of 2x4, length 20"\npart slat of 1x4, length 20"\nplace post upright, wide face front, on floor, 0 from left, 0 from front\nplace slat across, flat, on post, flush with left of post, flush with front of post\n`;
    expect(says(ROT, on)).toEqual([]);
    expect(
      says(ROT, on.replace("on post", "on floor").replace("flush with left of post", '5" from left')),
    ).toEqual(["ground"]);
  });

  test("a gate hangs: its pieces at the floor are listed instead", () => {
    const gate = post("", "on floor", "plan Yard gate\n  outdoors\n");
    expect(says(ROT, gate)).toEqual([]);
    expect(unlooked(gate, /at the floor/)).toHaveLength(1);
  });

  test("panels and heartwood of no named wood are listed, treated wood by its tag", () => {
    const panel = `${OUTDOORS}sheet ply, plywood 3/4", sold 48" x 96" $60\npart wall of ply, length 20", width 10"\nplace wall upright, wide face front, on floor, 0 from left, 0 from front`;
    expect(says(ROT, panel)).toEqual([]);
    expect(unlooked(panel, /wall rots/)).toEqual([
      "whether wall rots where it is wet: no line can tell how a panel is treated",
    ]);
    expect(unlooked(post("stock 2x4, heartwood\n"), /post rots/)).toHaveLength(1);
    expect(unlooked(post("stock 2x4, treated\n"), /contact with the ground/)).toHaveLength(1);
  });

  test("pieces of one stock are told once, with how many", () => {
    const four = post(
      "",
      'on floor, 4 across, 3" apart',
      OUTDOORS,
      'part foot of 4x4, length 9"\nplace foot flat, across, on floor, 40" from left, 0 from front',
    );
    const found = of(ROT, four);
    expect(found.map((p) => p.about)).toEqual([["post"], ["foot"]]);
    expect(found[0]!.slots.more).toMatchObject({ slots: { n: 3, material: "2x4" } });
  });
});

describe("on a floor that someone built", () => {
  test.each([
    ["bare sapwood", "", "", ["floor"]],
    ["coated", "", "coat post with oil-finish\n", []],
    ["moderate heartwood", "stock 2x4, species douglas-fir, heartwood\n", "", []],
    ["slight heartwood", "stock 2x4, species hem-fir, heartwood\n", "", ["floor"]],
    ["treated", "stock 2x4, treated\n", "", []],
  ])("%s", (_, stock, more, found) => {
    expect(says(ROT, post(stock, "on floor", ON_SLABS, more))).toEqual(found);
  });

  test("a coat of some of them leaves the others", () => {
    const two = post("", 'on floor, 2 across, 9" apart', ON_SLABS, "coat left post with oil-finish\n");
    const [problem] = of(ROT, two);
    expect(problem!.slots.more).toBe("");
    const cure = problem!.cures.find((c) => c.says === "coat")!;
    expect(says(ROT, applied(two, cure.edits))).toEqual([]);
  });
});

const bed = (stock: string, box: string, plan = "", more = ""): string =>
  `${plan}${stock}part side 2 of 1x6, length 30"\npart end 2 of 1x6, length 10"\nbox bed, inside 28" x 10" x 5", walls side and end\n  ${box}\n${more}`;

describe("against the wet soil of a box", () => {
  test.each([
    ["one that drains", "filled with soil, drains through the gaps", "", ["soil"]],
    ["one that grows something", "filled with soil\n  grows beans", "", ["soil"]],
    ["one indoors that is a dry store", "filled with soil\n  no drain", "plan Thing\n  indoors\n", []],
    ["one that holds water", "filled with water\n  no drain", "plan Thing\n  indoors\n", ["soil"]],
    ["the same outdoors", "filled with soil\n  no drain", OUTDOORS, ["soil"]],
    ["one of which nothing is said", "filled with soil", "", []],
    ["an empty one", "drains through the gaps", OUTDOORS, []],
  ])("%s", (_, box, plan, found) => {
    expect(says(ROT, bed("", box, plan))).toEqual(found);
  });

  test("a liner that holds water keeps it off, fabric does not", () => {
    const wet = "filled with soil\n  grows beans";
    expect(says(ROT, bed("", wet, "", "line bed with pond-liner"))).toEqual([]);
    const fabric = bed("", wet, "", "line bed with landscape-fabric");
    expect(says(ROT, fabric)).toEqual(["soil"]);
    const [cure] = of(ROT, fabric)[0]!.cures;
    expect(says(ROT, applied(fabric, cure!.edits))).toEqual([]);
  });

  test("a stake in the soil is of it, a leg beside the box is not", () => {
    const placed = (x: string) =>
      `stock 1x6, treated\npart side of 1x6, length 30"\npart end of 1x6, length 10-1/2"\npart stake of 2x2, length 12"\nplace side across, on edge, on floor, 0 from left, 0 from front\nplace side across, on edge, on floor, 0 from left, 11-1/4" from front\nplace end front to back, on edge, on floor, behind front side, flush with left of sides\nplace end front to back, on edge, on floor, behind front side, flush with right of sides\nplace stake upright, on floor, ${x} from left, 4" from front\nbox bed, walls side and end\n  filled with soil\n  drains through the gaps`;
    expect(of(ROT, placed('10"')).map((p) => p.slots.parts)).toEqual([{ all: ["stake"] }]);
    expect(says(ROT, placed('31"'))).toEqual([]);
    // It lies against the end from outside, and reaches no soil.
    expect(says(ROT, placed('30"'))).toEqual([]);
  });

  test("on bare ground a liner alone is no way out", () => {
    const frame = (plan: string) =>
      `${plan}part side of 2x8, length 40"\npart end of 2x8, length 20"\nplace side across, on edge, on floor, 0 from left, 0 from front, 2 deep, 20" apart\nplace end front to back, on edge, on floor, between front side and back side, flush with left of sides\nplace end front to back, on edge, on floor, between front side and back side, flush with right of sides\nbox bed, walls side and end\n  filled with soil`;
    const [ground] = of(ROT, frame(OUTDOORS));
    expect([ground!.says, ...ground!.cures.map((c) => c.says)]).toEqual(["soil-ground", "ask"]);
    expect(of(ROT, frame(OUTDOORS))).toHaveLength(1);
    const [slabs] = of(ROT, frame(ON_SLABS));
    expect([slabs!.says, ...slabs!.cures.map((c) => c.says)]).toEqual(["soil", "line", "ask"]);
  });
});

describe("the stock to take instead", () => {
  const shop = (more: string): string => post(`stock 2x4, species hem-fir, sold 8' $5\n${more}`);
  const taken = (text: string): unknown => of(ROT, text)[0]?.cures[0]?.edits.map((e) => e.text);

  test("the cheapest by its length", () => {
    const two =
      "stock cedar of 2x4, species western-redcedar, heartwood, sold 8' $9\nstock ground of 2x4, treated, sold 10' $10\n";
    expect(taken(shop(two))).toEqual(["ground"]);
    expect(taken(shop(two.replace("$9", "$7.90")))).toEqual(["cedar"]);
  });

  test.each([
    ["another section", "stock ground of 2x6, treated, sold 8' $9\n"],
    ["a stock that rots as well", "stock oak of 2x4, species white-oak, sold 8' $9\n"],
    ["one too short", "stock ground of 2x4, treated, sold 1.5' $9\n"],
    ["one that is not sold", "stock ground of 2x4, treated\n"],
  ])("not %s", (_, stock) => {
    expect(of(ROT, shop(stock))[0]!.cures.map((c) => c.says)).toEqual(["ask", "foot"]);
  });

  test("the same size by another name", () => {
    expect(taken(shop("stock ground, actual 38.1mm x 88.9mm, treated, sold 8' $9\n"))).toEqual(["ground"]);
    expect(
      of(ROT, shop("stock ground, actual 38.1mm x 92mm, treated, sold 8' $9\n"))[0]!.cures[0]!.says,
    ).toBe("ask");
  });

  test("no treated wood where something to eat may grow", () => {
    const stocks =
      "stock ground of 1x6, treated, sold 8' $6\nstock heart of 1x6, species western-redcedar, heartwood, sold 8' $17\n";
    const box = (grows: string) => bed(stocks, `filled with soil, drains through the gaps${grows}`);
    const name = (text: string) => of(ROT, text)[0]!.cures[1]!.edits[0]!.text;
    expect(name(box("\n  grows beans"))).toBe("heart");
    expect(name(box(""))).toBe("ground");
  });

  test("one of the shop file, of which no other fault is told", () => {
    const shop = "stock ground of 2x4, species no-such-wood, treated, sold 8' $9\n";
    const plan = `shop yard.sawbuck\n${post("")}`;
    const { problems } = run(plan, (file) => ({ file, text: shop }));
    expect(problems.map((p) => p.code)).toEqual([ROT]);
    expect(problems[0]!.cures[0]!.edits.map((e) => e.text)).toEqual(["ground"]);
  });
});

test("moved or mirrored, a plan is told the same", () => {
  const legs = (dx: number, dy: number, mirrored: boolean) => {
    const at = mirrored ? [40, 10, 0] : [0, 30, 40];
    return `${OUTDOORS}part leg of 2x4, length 20"\n${at
      .map((x) => `place leg upright, wide face front, on floor, ${x + dx}" from left, ${dy}" from front`)
      .join("\n")}`;
  };
  fc.assert(
    fc.property(
      fc.nat(40),
      fc.nat(40),
      fc.boolean(),
      fc.constantFrom(...speciesNames()),
      (dx, dy, m, wood) => {
        const stock = `stock 2x4, species ${wood}, heartwood\n`;
        const told = (text: string) =>
          of(ROT, text.replace("part leg", `${stock}part leg`)).map((p) =>
            problemText(p.code, p, run(text).worked.settings.display).replace(
              /leg \d \(.*?\)|leg \(.*?\)|leg/,
              "leg",
            ),
          );
        const [plain, moved] = [told(legs(0, 0, false)), told(legs(dx, dy, m))];
        expect(moved).toEqual(plain);
        expect(plain.join()).not.toMatch(/NaN|undefined|Infinity/);
      },
    ),
    { numRuns: Number(process.env.FC_RUNS ?? 100) },
  );
});
