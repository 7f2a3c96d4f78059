/** Which fasteners rust: by their coating, the wood they hold, and where it stands. */
import { describe, expect, test } from "vitest";
import { applied } from "../checks/curing";
import { OUTDOORS, of, unlooked } from "./plans";

const RUST = "fastener-rusts";
const rail = (fasteners: string, stock = "", plan = OUTDOORS, screw = "own"): string =>
  `${plan}${stock}${fasteners}part post 2 of 4x4, length 30"\npart rail 2 of 2x4, length 40"\nfasten rail face into post face, 2 ${screw} at each end\n`;
const own = (coating: string): string =>
  `fastener own, #8 x 3" screw, box of 100 $9.00${coating && `, coating ${coating}`}\n`;
const found = (text: string): string[] => of(RUST, text).map((p) => `${p.says} ${p.class}`);

const CEDAR = "stock 2x4, species western-redcedar\n";
const TREATED = "stock 4x4, treated\n";

describe("outdoors", () => {
  test.each([
    ["plain", "", ["outdoors warning"]],
    ["coated", "", []],
    ["galvanized", "", []],
    ["stainless", "", []],
    ["plain", CEDAR, ["outdoors warning"]],
    ["galvanized", CEDAR, ["stains hint"]],
    ["galvanized", "stock 2x4, species white-oak\n", ["stains hint"]],
    ["galvanized", "stock 2x4, species redwood-old-growth\n", ["stains hint"]],
    ["galvanized", "stock 2x4, species douglas-fir\n", []],
    ["stainless", CEDAR, []],
    ["coated", CEDAR, []],
    ["plain", TREATED, ["outdoors warning"]],
    ["galvanized", TREATED, []],
    ["coated", TREATED, []],
  ])("%s with %j", (coating, stock, told) => {
    expect(found(rail(own(coating), stock))).toEqual(told);
  });

  test("a coating of which only its maker can tell is listed, and one that nothing tells", () => {
    expect(unlooked(rail(own("coated"), TREATED), /own/)).toEqual([
      "whether the coating of own lasts in treated wood: only its maker tells which woods it is for",
    ]);
    expect(unlooked(rail(own("coated"), CEDAR), /own/)).toHaveLength(1);
    expect(unlooked(rail(own("coated")), /own/)).toEqual([]);
    const unsaid = "whether own rusts: nothing says what it is coated with";
    expect(unlooked(rail(own("")), /own/)).toEqual([unsaid]);
    expect(unlooked(rail(own("blue")), /own/)).toEqual([unsaid]);
    expect(unlooked(rail("", "", OUTDOORS, '#8 x 3"'), /rusts/)).toEqual([
      'whether #8 x 3" rusts: nothing says what it is coated with',
    ]);
  });
});

describe("elsewhere", () => {
  const box = (more: string): string =>
    `box bed, inside 28" x 10" x 5", walls rail\n  filled with soil\n  ${more}\n`;

  test("indoors only in the wet soil of a box", () => {
    const indoors = rail(own("plain"), "", "plan Thing\n  indoors\n");
    expect(found(indoors)).toEqual([]);
    expect(found(`${indoors}${box("grows beans")}`)).toEqual(["soil warning"]);
    expect(found(`${indoors}${box("no drain")}`)).toEqual([]);
    const tank = `${indoors}${box("no drain").replace("with soil", "with water")}`;
    expect(of(RUST, tank)[0]!.slots.fill).toMatchObject({ says: "water" });
    expect(unlooked(rail(own(""), "", "plan Thing\n  indoors\n"), /rusts/)).toEqual([]);
  });

  test("where the plan does not say, nothing", () => {
    expect(found(rail(own("plain"), "", ""))).toEqual([]);
  });
});

describe("what to take instead", () => {
  const other = (name: string, coating: string, price: string, size = '#8 x 3"'): string =>
    `fastener ${name}, ${size} screw, coating ${coating}, box of 100 ${price}\n`;
  const taken = (text: string): string | undefined => of(RUST, text)[0]!.cures[0]!.edits[0]?.text;
  const ALL =
    other("deck", "coated", "$8") + other("zinc", "galvanized", "$9") + other("steel", "stainless", "$20");

  test.each([
    ["the cheapest that lasts", "", "deck"],
    ["in treated wood no coating that says no more", TREATED, "zinc"],
    ["in cedar no zinc", CEDAR, "deck"],
    ["in both", CEDAR + TREATED, "steel"],
  ])("%s", (_, stock, name) => {
    const text = rail(own("plain") + ALL, stock);
    expect(taken(text)).toBe(name);
    expect(found(applied(text, of(RUST, text)[0]!.cures[0]!.edits))).toEqual([]);
  });

  test("none of another size or kind: then the builder is told what to ask for", () => {
    const long =
      own("plain") +
      other("deck", "coated", "$8", '#8 x 2-1/2"') +
      other("thick", "coated", "$8", '#10 x 3"');
    expect(taken(rail(`${long}fastener pin, nail 0.164" x 3", coating galvanized\n`))).toBeUndefined();
    expect(of(RUST, rail(long))[0]!.cures[0]!.says).toBe("ask");
  });

  test("in every line that drives it, also by its size", () => {
    const text = `${rail(own("plain") + ALL)}fasten post face into rail edge, 2 #8 x 3" at each end\n`;
    const [problem, ...more] = of(RUST, text);
    expect(more).toEqual([]);
    expect(problem!.cures[0]!.edits.map((e) => e.text)).toEqual(["deck", "deck"]);
  });
});
