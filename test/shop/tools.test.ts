/** Which tools a plan takes, how far they must reach, and when they are said to be at hand. */
import { describe, expect, it } from "vitest";
import { type ToolNeed, toolsNeeded } from "../../server/worked";
import { run } from "../checks/plans";

const needs = (text: string): readonly ToolNeed[] => toolsNeeded(run(text).worked);
const need = (text: string, tool: ToolNeed["tool"]): ToolNeed | undefined =>
  needs(text).find((n) => n.tool === tool);
const reach = (text: string, tool: ToolNeed["tool"], what: string): number | undefined =>
  need(text, tool)?.settings.find((s) => s.what === what)?.value.approx;

const LEG = 'part leg 4 of 2x4, length 28"\n';
const CAP = 'part cap 4 of 1x4, length 30", ends mitered 45°\n';

describe("a plan that", () => {
  it("cuts nothing takes no tools", () => {
    expect(needs("")).toEqual([]);
    expect(needs("plan A thing\n")).toEqual([]);
  });

  it("only cuts boards takes a tape, a pencil, a square and a saw", () => {
    expect(needs(LEG).map((n) => n.tool)).toEqual([
      ...["eyes", "ears", "dust", "sawhorses", "tape", "pencil", "square", "crosscut"],
    ]);
    expect(need(LEG, "crosscut")).toMatchObject({ for: ["leg"], have: "unsaid" });
    expect(need(LEG, "crosscut")?.instead).not.toBe("");
  });

  it("uses what is on hand takes pincers for its old nails, unless a claw hammer is at hand", () => {
    const pile = `stock 2x4\n  on hand 9 of 8'\n${LEG}`;
    expect(need(pile, "pincers")).toMatchObject({ for: ["old nails in 2x4"], have: "unsaid" });
    expect(need(pile, "pincers")?.instead).toMatch(/^A claw hammer .*\.$/);
    expect(need(`tools\n  has claw-hammer\n${pile}`, "pincers")).toMatchObject({ have: "yes", instead: "" });
    expect(need(LEG, "pincers")).toBeUndefined();
  });

  it("miters takes a saw that turns, and as wide as the slant", () => {
    const miter = need(`${CAP}part sill 1 of 1x6, length 30", left end mitered 30°\n`, "miter");
    expect(miter?.for).toEqual(["miters of cap, 45°", "miters of sill, 30°"]);
    expect(miter?.settings[0]).toMatchObject({
      what: "miter",
      value: { approx: 45 },
      drawn: { approx: 45 },
    });
    // 5-1/2" at 30° is wider than 3-1/2" at 45°.
    expect(miter?.settings[1]?.value.approx).toBeCloseTo((5.5 * 25.4) / Math.cos(Math.PI / 6), 6);
    expect(need(LEG, "miter")).toBeUndefined();
  });

  it("cuts the same miter on several parts tells them together", () => {
    const text = `${CAP}part lip 4 of 1x4, length 20", ends mitered 45°\n`;
    expect(need(text, "miter")?.for).toEqual(["miters of cap and lip, 45°"]);
  });

  it("tells bevels and both at once apart, in a saw's terms and as drawn", () => {
    const text = `part a 2 of 1x6, length 20", ends beveled 30°\npart b 2 of 1x6, length 20", ends mitered 10° and beveled 40°\n`;
    expect(need(text, "bevel")?.settings[0]).toMatchObject({ value: { approx: 30 }, drawn: { approx: 60 } });
    expect(need(text, "compound")?.for).toEqual(["slanted ends of b, miter 10° with bevel 40°"]);
    expect(need(text, "miter")).toBeUndefined();
  });

  it("rips takes a saw that cuts along, and a width that is the board's own does not", () => {
    expect(reach('part a 1 of 1x6, length 40", width 3"\n', "rip", "longest cut along")).toBeCloseTo(1016, 6);
    expect(need('part a 1 of 1x6, length 40", width 5-1/2"\n', "rip")).toBeUndefined();
  });

  it("cuts sheets takes a saw for sheets, told by the longer side", () => {
    const text = 'sheet ply\n  plywood 3/4"\npart a 1 of ply, length 11", width 30", right end mitered 10°\n';
    expect(reach(text, "sheet", "longest cut along")).toBeCloseTo(762, 6);
    expect(need(text, "sheet")?.for).toEqual(["a, right end 10°"]);
    expect(need(text, "miter")).toBeUndefined();
  });

  it("notches takes a chisel", () => {
    const text = 'part a 1 of 2x4, length 20", notch 2" x 1" at left end, dado 1" x 1/2" at 10" from left\n';
    expect(need(text, "chisel")?.for).toEqual(["notches and dadoes of a"]);
  });

  it("glues, pins, bolts, coats and lines takes what these take", () => {
    const text = `${LEG}part slat 2 of 1x4, length 20"
fastener small-nail, nail 2mm x 30mm
fastener long-bolt, bolt 1/4" x 4"
finish shed-oil
  covers 250 sqft per gal
roll cloth
  width 3'
box tub, inside 20" x 10" x 10"
glue slat to leg, with glue
fasten slat into leg, small-nail
fasten slat into leg, 2 long-bolt at each end
coat slat with shed-oil
line tub with cloth
`;
    const found = needs(text).map((n) => n.tool);
    for (const tool of ["clamps", "hammer", "wrench", "level", "brush", "rags", "knife", "stapler"] as const)
      expect(found).toContain(tool);
    expect(found).not.toContain("driver");
    expect(need(text, "brush")?.for).toEqual(["shed-oil on slat"]);
    const front = text.replace("coat slat", "coat front slat");
    expect(need(front, "brush")?.for).toEqual(["shed-oil on front slat"]);
  });

  it("hangs, stands on legs or is a box takes a level, told once", () => {
    const post =
      'part post 1 of 4x4, length 40"\nplace post upright, wide face front, 0 from left, 0 from front, ';
    expect(need(`plan Coat rack\n${post}40" up\n`, "level")?.for).toEqual(["Coat rack"]);
    expect(need(`plan Stake\n${post}on floor\n`, "level")).toBeUndefined();
    const legs =
      'part leg of 2x4, length 20"\npart rail of 1x6, length 30"\nplace leg upright, wide face front, on floor, at each corner of 30" x 12"\nplace rail across, on edge, in front of legs, flush with left of legs, flush with top of legs\nfasten rail into leg, 2 #8 x 2" at each crossing\n';
    expect(need(`plan Stand\n${legs}`, "level")?.for).toEqual(["Stand"]);
    expect(need(`plan Stand\n${legs}box tub, inside 20" x 10" x 10"\n`, "level")?.for).toEqual(["Stand"]);
    expect(need('box tub, inside 20" x 10" x 10"\n', "level")?.for).toEqual(["tub"]);
  });

  it("has pieces under 6 in takes clamps to saw them", () => {
    expect(need('part peg 3 of 2x2, length 5"\n', "clamps")?.for).toEqual(["sawing peg"]);
    expect(need('part peg 3 of 2x2, length 6"\n', "clamps")).toBeUndefined();
  });
});

describe("what is at hand", () => {
  const tools = (says: string): string => `tools\n  ${says}\n`;

  it("is unsaid without a tools line, and where that line leaves it out", () => {
    expect(needs(LEG).every((n) => n.have === "unsaid")).toBe(true);
    expect(need(tools("has drill") + LEG, "tape")?.have).toBe("unsaid");
  });

  it("is told by any of its words, and then no way round is told", () => {
    const tape = need(tools("has tape-measure and hand-saw") + LEG, "tape");
    expect(tape).toMatchObject({ have: "yes", instead: "" });
    expect(need(tools("has tape-measure and hand-saw") + LEG, "crosscut")?.have).toBe("yes");
  });

  it("is a no for an angle beyond the saw's, with a way round", () => {
    const miter = need(tools("miters to 40°") + CAP, "miter");
    expect(miter?.have).toBe("no");
    expect(miter?.instead).toContain("hand saw");
    expect(need(tools("miters to 45°") + CAP, "miter")?.have).toBe("yes");
    expect(need(tools("has drill") + CAP, "miter")?.have).toBe("unsaid");
  });

  it("takes both a turn and a tilt for a compound cut", () => {
    const part = 'part b 2 of 1x6, length 20", ends mitered 10° and beveled 40°\n';
    expect(need(tools("miters to 45°\n  bevels to 45°") + part, "compound")?.have).toBe("yes");
    expect(need(tools("miters to 45°") + part, "compound")?.have).toBe("unsaid");
    expect(need(tools("miters to 45°\n  bevels to 30°") + part, "compound")?.have).toBe("no");
  });

  it("goes by rips and no ripping", () => {
    const part = 'part a 1 of 1x6, length 40", width 3"\n';
    expect(need(tools("rips") + part, "rip")?.have).toBe("yes");
    expect(need(tools("no ripping") + part, "rip")?.have).toBe("no");
    expect(need(tools("has drill") + part, "rip")?.have).toBe("unsaid");
  });

  it("needs no ear protection where only hand saws are told", () => {
    expect(need(tools("has handsaw") + LEG, "ears")).toBeUndefined();
    expect(need(tools("has handsaw and circular-saw") + LEG, "ears")).toBeDefined();
    expect(need(tools("has drill") + LEG, "ears")).toBeDefined();
  });
});
