/** Which bits a plan takes, for how many holes, and by which rule. */
import { describe, expect, it } from "vitest";
import { ifKnown } from "../../server/plan";
import { type BitNeed, bitsNeeded } from "../../server/worked";
import { run } from "../checks/plans";

const needs = (text: string): readonly BitNeed[] => bitsNeeded(run(text).worked);
const of = (text: string, kind: BitNeed["kind"]): readonly BitNeed[] =>
  needs(text).filter((n) => n.kind === kind);

const FRAME = 'part leg 4 of 2x4, length 28"\npart rail 2 of 2x4, length 40"\n';
const fasten = (how: string): string => `${FRAME}fasten rail into leg, ${how}\n`;

describe("a screw", () => {
  it("takes a pilot, a clearance, a countersink and a driver, in this order", () => {
    const found = needs(fasten('2 #8 x 2-1/2" at each end'));
    expect(found.map((n) => [n.kind, n.text])).toEqual([
      ["pilot", '3/32"'],
      ["clearance", '11/64"'],
      ["countersink", '21/64" or wider'],
      ["driver", "to fit the head"],
    ]);
    expect(found.map((n) => n.for.map((f) => [f.title, ifKnown(f.holes)]))).toEqual(
      Array(4).fill([["rail into leg", 8]]),
    );
    expect(found[0]?.for[0]?.depth?.approx).toBeCloseTo(2.5 * 25.4, 6);
    expect(found[0]?.assumed).toEqual(["leg taken as spruce-pine-fir, since the plan does not say"]);
  });

  it("takes the hole the plan gives, whatever its own marks, and says when no rule would", () => {
    const [typed] = of(fasten('2 #8 x 2-1/2" at each end, pilot 7/64"'), "pilot");
    expect(typed).toMatchObject({ text: '7/64"', source: "the plan", assumed: [] });
    const [wide] = of(fasten('2 #8 x 2-1/2" at each end, pilot 3/16"'), "pilot");
    expect(wide?.note).toContain("wider than any rule");
    const [thin] = of(fasten('2 #8 x 2-1/2" at each end, pilot 1/32"'), "pilot");
    expect(thin?.note).toContain("thinner than any rule");
  });

  it("is told to be beyond the rules in inches and in millimetres alike, whatever bits there are", () => {
    const noteIn = (units: string, hole: string) =>
      of(`plan A frame\n  units ${units}\n${fasten(`2 #8 x 2-1/2" at each end, ${hole}`)}`, "pilot")[0]?.note;
    for (const hole of ['pilot 1/8"', "pilot 3mm", "pilot 3.175mm"])
      expect(noteIn("millimetres", hole), hole).toBe(noteIn("inches", hole));
    expect(noteIn("millimetres", 'pilot 1/8"')).not.toContain("wider than any rule");
    expect(noteIn("millimetres", 'pilot 3/16"')).toContain("wider than any rule");
  });

  it("goes by the densest wood it ends in", () => {
    const oak = "stock 2x4\n  species white-oak\n";
    const [hard] = of(oak + fasten('2 #8 x 2-1/2" at each end'), "pilot");
    expect(hard).toMatchObject({ text: '1/8"', assumed: [] });
    expect(hard?.note).toBe("");
    expect(hard?.source).toContain("90% of root: NDS 12.1.5");
  });

  it("in millimetres takes bits by half millimetres", () => {
    const text = "plan A thing\n  units millimetres to 1 mm\n" + fasten("2 5 x 60mm at each end");
    expect(needs(text).map((n) => n.text)).toEqual(["3.5 mm", "5 mm", "10 mm or wider", "to fit the head"]);
  });

  it("counts for all copies, and stays unknown where its count is", () => {
    const [copies] = of(`plan A thing\n  make 3\n${fasten('2 #8 x 2-1/2" at each end')}`, "pilot");
    expect(ifKnown(copies?.for[0]?.holes)).toBe(24);
    const [unknown] = of(fasten('2 #8 x 2-1/2" at each crossing'), "pilot");
    expect(unknown?.for[0]?.holes.state).toBe("unknown");
  });

  it("shares a bit with others of the same rule, and not where the plan gives its own", () => {
    const two = `${fasten('2 #8 x 2-1/2" at each end')}fasten leg into rail, 1 #8 x 3" at each end\n`;
    expect(of(two, "pilot").map((n) => n.for.length)).toEqual([2]);
    const own = `${fasten('2 #8 x 2-1/2" at each end, pilot 3/32"')}fasten leg into rail, 1 #8 x 3" at each end\n`;
    expect(of(own, "pilot").map((n) => n.source === "the plan")).toEqual([true, false]);
  });

  it("that the line does not name takes no hole that could be told", () => {
    expect(needs(`${FRAME}fasten rail into leg\n`).map((n) => n.kind)).toEqual(["driver"]);
  });
});

describe("other holes", () => {
  it("of nails are bored in thin wood and at edges, and not in thick faces", () => {
    const nail = 'fastener box-nail, nail 0.131" x 3"\n';
    expect(of(nail + fasten("2 box-nail at each end"), "pilot")).toEqual([]);
    const edge = `${nail}${FRAME}fasten rail face into leg edge, 2 box-nail at each end\n`;
    expect(of(edge, "pilot")[0]).toMatchObject({ text: '3/32"' });
    const slat = `${nail}${FRAME}part slat 2 of 1x4, length 20"\nfasten slat into leg, 2 box-nail at each end\n`;
    expect(of(slat, "pilot").length).toBe(1);
  });

  it("of bolts go right through", () => {
    const text = `fastener long-bolt, bolt 1/4" x 4"\n${fasten("1 long-bolt at each end")}`;
    expect(needs(text).map((n) => [n.kind, n.text, n.note])).toEqual([
      ["clearance", '9/32"', "right through"],
    ]);
  });

  it("of drains are as many and as wide as the box says, for all copies", () => {
    const box = 'plan A tub\n  make 2\nbox tub, inside 20" x 10" x 10", drains by 12 holes of 1/2"\n';
    const [drain] = of(box, "drain");
    expect(drain).toMatchObject({ text: '1/2"', source: "the plan" });
    expect(ifKnown(drain?.for[0]?.holes)).toBe(24);
    expect(of('box tub, inside 20" x 10" x 10", drains through the gaps\n', "drain")).toEqual([]);
  });

  it("of drains that are nonsense raise nothing", () => {
    for (const how of ['0 holes of 1/2"', "12 holes of 3 lb", "1/3 holes of 0"])
      expect(() => needs(`box tub, inside 20" x 10" x 10", drains by ${how}\n`)).not.toThrow();
  });
});
