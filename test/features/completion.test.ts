/** What is offered at every kind of place, and what must hold of it whatever is typed. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ENTRY_FORMS } from "../../grammar/forms";
import { parse } from "../../grammar/parser";
import { type Completion, completionsAt } from "../../server/features/completion";
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

function offered(line: string): Completion[] {
  const { plan, offset } = atCaret(BASE + line, files);
  return completionsAt(plan, offset);
}
const labels = (line: string): string[] => offered(line).map((c) => c.label);

/** The text after taking an offer. */
function taking(line: string, label: string): string {
  const { plan, offset } = atCaret(BASE + line, files);
  const one = completionsAt(plan, offset).find((c) => c.label === label);
  if (!one) throw new Error(`${label} is not offered`);
  return (plan.text.slice(0, one.range.start) + one.insertText + plan.text.slice(one.range.end)).slice(
    BASE.length,
  );
}

const LENGTHS = [
  "length of",
  "width of",
  "thickness of",
  "overall width of",
  "overall depth of",
  "overall height of",
];
const INSIDES = ["inside width of", "inside depth of", "inside height of"];

describe("at the start of a line", () => {
  test.each(["‸", "pa‸", "unheard-o‸"])("the words that open an entry: %s", (line) => {
    expect(labels(line)).toEqual(ENTRY_FORMS.map((e) => e.word));
  });

  test("each with its sentence and an example", () => {
    const part = offered("‸").find((c) => c.label === "part");
    expect(part).toMatchObject({
      kind: "entry",
      insertText: "part ",
      detail: 'part leg 4 of 2x4, length 28-1/2"',
    });
    expect(part?.documentation).toContain("A piece that is cut");
    expect(part?.documentation).toContain("```sawbuck\npart leg");
  });

  test("the whole half-typed word is replaced, behind the cursor too", () => {
    expect(taking("pa‸rst", "part")).toBe("part ");
  });
});

describe("in a head", () => {
  test.each<[string, string[]]>([
    ["part post ‸", ["of"]],
    ["part post 4 ‸", ["of"]],
    ["stock pallet ‸", ["of"]],
    ["measure low ‸", []],
    ["ring r = 4 ‸", ["leg", "bench"]],
    ["ring r = leg ‸", ["and"]],
    ["fasten ‸", ["leg", "bench", "cap", "gable", "trough"]],
    ["fasten leg ‸", ["face", "edge", "end", "and", "through", "into"]],
    ["fasten leg face ‸", ["and", "through", "into"]],
    ["fasten leg through ‸", ["leg", "bench", "cap", "gable", "trough"]],
    ["glue leg ‸", ["face", "edge", "end", "and", "through", "to", "onto", "into"]],
    ["coat leg ‸", ["and", "with"]],
    ["coat leg with ‸", ["outdoor-oil"]],
    ["line ‸", ["trough"]],
    ["line trough with ‸", ["pond-liner"]],
    ["load leg 40 lb ‸", ["spread", "anywhere", "middle"]],
    ["must rim ‸", ["at most", "at least", "less than", "more than", "exactly"]],
    ['must rim at most 3" ‸', ["because"]],
    ["accept screw-holds-little ‸", ["on", "because"]],
    ["place leg ‸", ["upright", "across", "front to back", "flat", "on edge"]],
  ])("%s", (line, expected) => {
    expect(labels(line)).toEqual(expected);
  });

  test("boards and panels: those declared first, then the names of the lumber standard", () => {
    const all = labels("part post 4 of ‸");
    const declared = ["1x6", "2x4", "pallet-slat", "shelf-ply"];
    expect(all.slice(0, 4)).toEqual(declared);
    expect(all.slice(4)).toEqual(sectionNames("ps20-dry").filter((name) => !declared.includes(name)));
  });

  test("names of boards follow the standard of the plan", () => {
    const { plan, offset } = atCaret("plan x\n  lumber planed metric\npart p 1 of ‸");
    expect(completionsAt(plan, offset).map((c) => c.label)).toEqual(sectionNames("planed-metric"));
  });

  test("codes of problems: the open ones first, and never an error's", () => {
    const line = 'fasten leg face into bench face, 2 #8 x 1-5/8" in all\naccept ‸';
    const [first, ...rest] = offered(line);
    expect(first?.label).toBe("screw-holds-little");
    const kinds = [first!, ...rest].map((c) => c.detail.split(":")[0]);
    expect([...new Set(kinds)].every((k) => ["hazard", "warning", "hint"].includes(k!))).toBe(true);
    expect(rest.map((c) => c.label)).not.toContain("unknown-name");
  });
});

describe("at the start of a clause", () => {
  test.each(["part post 4 of 2x4, ‸", "part post 4 of 2x4\n  ‸", "part post 4 of 2x4,\n  le‸"])(
    "all that a part takes: %s",
    (line) => {
      expect(labels(line)).toEqual([
        "length",
        "overall",
        "long point to long point",
        "short point to short point",
        "long point to short point",
        "cut to fit",
        "width",
        "ends",
        "left end",
        "right end",
        "long points on",
        "notch",
        "dado",
        "in pairs",
        "2 left and 2 right",
      ]);
    },
  );

  test("each with its sentence and an example", () => {
    expect(offered("part post of 2x4, ‸")[0]).toMatchObject({ kind: "clause", detail: 'length 28-1/2"' });
  });

  test("what was said is not offered again, nor what it shuts out", () => {
    const rest = labels('part post 4 of 2x4, length 3", ends mitered 45°, notch 1" x 1" at left end, ‸');
    expect(rest).not.toContain("length");
    expect(rest).not.toContain("ends");
    expect(rest).not.toContain("left end");
    expect(rest).toContain("notch");
    const box = labels("box b, no drain, ‸");
    expect(box).not.toContain("drains by");
    expect(box).toContain("walls");
    expect(labels("place leg upright, ‸")).not.toContain("flat");
    expect(labels("place leg across, ‸")).toContain("flat");
  });

  test.each<[string, string[]]>([
    ["tools\n  ‸", ["kerf", "miters to", "bevels to", "rips", "no ripping", "has"]],
    ["step Do it\n  ‸", ["uses", "coats", "takes", "then wait", "wait", "2 people"]],
    ['measure low = 3", ‸', ["at least", "at most"]],
    ["fill f, dry 20 lb/cuft, ‸", ["moist", "saturated"]],
    ["assembly a\n  ‸", ["place", "fasten", "glue"]],
    ["load leg 40 lb, ‸", []],
  ])("%s", (line, expected) => {
    expect(labels(line)).toEqual(expected);
  });

  test("a joint is offered the shop's screws before all others", () => {
    expect(labels("fasten leg into bench, ‸").slice(0, 6)).toEqual([
      "deck-mid",
      "gate-bolt",
      '#8 x 1-5/8"',
      "pilot",
      "clearance",
      "angled",
    ]);
  });
});

describe("inside a clause", () => {
  test("where a length is wanted: measures of that kind, then properties, then functions", () => {
    const all = labels("part post 4 of 2x4, length ‸");
    expect(all[0]).toBe("rim");
    expect(all.indexOf("sack")).toBe(1);
    expect(all.slice(2, 11)).toEqual([...LENGTHS, ...INSIDES]);
    expect(all).toContain("min");
    expect(all).not.toContain("count of");
  });

  test.each(["rim - ", "(rim + ", "2 * (rim - (", "min(rim, ", "-", "round "])(
    "the same after %s",
    (begun) => {
      expect(labels(`part post 4 of 2x4, length ${begun}‸`).slice(0, 3)).toEqual([
        "rim",
        "sack",
        "length of",
      ]);
    },
  );

  test("a weight is wanted: the measure that is one comes first", () => {
    expect(labels("load leg ‸")[0]).toBe("sack");
    expect(labels("load leg ‸")).not.toContain("length of");
  });

  test.each<[string, string[]]>([
    ["part post 4 of 2x4, length count of ‸", []],
    ["part post 4 of 2x4, length inside width of ‸", ["trough"]],
    [
      'part post 4 of 2x4, length 36" ‸',
      ["overall", "long point to long point", "short point to short point", "long point to short point"],
    ],
    ['part post 4 of 2x4, length 36" long ‸', ["point to long point", "point to short point"]],
    ['part post 4 of 2x4, length 36" long point to lo‸', ["long point", "short point"]],
    ["part post 4 of 2x4, ends ‸", ["square", "mitered", "beveled"]],
    ["part post 4 of 2x4, long points on ‸", ["one edge", "opposite edges"]],
    ['fasten leg into bench, 2 #8 x 2" ‸', ["at each crossing", "at each end", "along it", "in all"]],
    ['fasten leg into bench, 2 #8 x 2" at each ‸', ["crossing", "end"]],
    ["box b, walls ‸", ["leg", "bench"]],
    ["box b, walls leg ‸", ["and"]],
    ["box b, filled with ‸", ["house-mix", "hillside-mix", ...fillNames()]],
    ['box b, filled with soil to 1" ‸', ["below rim", "deep"]],
    ["box b, grows ‸", [...cropNames()]],
    ["box b, drains through ‸", ["the gaps"]],
    ["stock 1x8, species ‸", [...speciesNames()]],
    ["stock 1x8, moisture ‸", ["dry", "green"]],
    ["fastener f, coating ‸", ["stainless", "galvanized", "coated", "plain"]],
    ["plan x\n  units ‸", ["inches", "millimetres"]],
    ["plan x\n  lumber ‸", ["dry", "green", "planed metric"]],
    ["place leg upright, wide face ‸", ["left", "right", "front", "back", "top", "bottom"]],
    ["place leg upright, flush with top ‸", ["of"]],
    ["place leg upright, centered ‸", ["left to right", "front to back", "up and down", "on"]],
    ["step Do it\n  uses leg ‸", ["and"]],
  ])("%s", (line, expected) => {
    expect(labels(line)).toEqual(expected);
  });

  test("what a place touches: singly, together, the floor, or narrowed", () => {
    const all = labels("place leg upright, on ‸");
    expect(all.slice(0, 5)).toEqual(["leg", "bench", "cap", "gable", "trough"]);
    expect(all.slice(5, 10)).toEqual(["legs", "benches", "caps", "gables", "troughs"]);
    expect(all).toContain("floor");
    expect(all).toContain("front");
    expect(labels("place leg upright, on front ‸")).toContain("legs");
  });

  test("a property's words, half typed", () => {
    expect(labels("must overall ‸")).toContain("width of");
    expect(taking("must thick‸", "thickness of")).toBe("must thickness of ");
  });
});

describe("units after a number", () => {
  test.each<[string, string[]]>([
    ["part post 4 of 2x4, length 36‸", ['36"', "36'", "36mm", "36cm"]],
    ["part post 4 of 2x4, length 3/4‸", ['3/4"', "3/4'", "3/4mm", "3/4cm"]],
    ["part post 4 of 2x4, length 36m‸", ["36mm"]],
    ["part post 4 of 2x4, length 3' 6‸", ['6"']],
    ["part post 4 of 2x4, ends mitered 45‸", ["45°"]],
    ["load leg 40‸", ["40 lb", "40 kg"]],
    ["load leg 40 ‸", ["40 lb", "40 kg", "spread", "anywhere", "middle"]],
    ["load leg 40 l‸", ["40 lb"]],
    ["plan x\n  floor limit 58‸", ["58 psf", "58 kPa"]],
    ["fill f, dry 20‸", ["20 lb/cuft", "20 kg/m3"]],
    ["finish f, covers 250‸", ["250 sqft", "250 m2"]],
    ["step Do it\n  takes 40‸", ["40 min", "40 h", "40 days"]],
    ["plan x\n  tax 8‸", ["8%"]],
    ["stock 1x8, sold 8' $4, 10‸", ['10"', "10'", "10mm", "10cm"]],
    ["part post 4‸", []],
    ["plan x\n  make 6‸", []],
  ])("%s", (line, expected) => {
    expect(labels(line)).toEqual(expected);
  });

  test("a metric plan is offered millimetres first", () => {
    const { plan, offset } = atCaret("plan x\n  units millimetres\npart p 1 of 18x95, length 36‸");
    expect(completionsAt(plan, offset)[0]?.label).toBe("36mm");
  });

  test("the number is replaced with its unit", () => {
    expect(taking("load leg 40 l‸", "40 lb")).toBe("load leg 40 lb");
    expect(taking("part post 4 of 2x4, length 36‸, ends square", '36"')).toBe(
      'part post 4 of 2x4, length 36", ends square',
    );
  });
});

describe("screw sizes", () => {
  const usual8 = ['#8 x 3/4"', '#8 x 1"', '#8 x 1-1/4"', '#8 x 1-1/2"', '#8 x 2"', '#8 x 2-1/2"', '#8 x 3"'];

  test.each(["#8‸", "#8 x‸", "#8 x ‸", "#8 x 1‸", "#8 x 1-5/‸"])(
    "the shop's, then the usual lengths: %s",
    (typed) => {
      expect(labels(`fasten leg into bench, 2 ${typed}`)).toEqual(['#8 x 1-5/8"', ...usual8]);
    },
  );

  test("what is typed of it is replaced", () => {
    expect(taking("fasten leg into bench, 2 #8 x 1‸", '#8 x 1-5/8"')).toBe(
      'fasten leg into bench, 2 #8 x 1-5/8"',
    );
  });
});

describe("nothing is offered", () => {
  test.each([
    "plan The lo‸",
    "note place ‸",
    "step Fasten le‸",
    "shop hill‸",
    "bring ‸",
    "part post 4 of 2x4 # the ‸",
    "# ‸",
    'must rim at most 3" because the ‸',
    "grow ‸",
    "measure ‸",
    "part ‸",
    'part post 4 of 2x4, length 36"‸',
  ])("%s", (line) => {
    expect(labels(line)).toEqual([]);
  });

  test("in an empty plan but for the words that open entries", () => {
    const { plan } = atCaret("‸");
    expect(completionsAt(plan, 0).map((c) => c.label)).toEqual(ENTRY_FORMS.map((e) => e.word));
    const indented = atCaret("  ‸");
    expect(completionsAt(indented.plan, indented.offset)).toEqual([]);
  });
});

describe("what is offered", () => {
  test("every opening of every clause is offered where it may stand", () => {
    for (const entry of ENTRY_FORMS) {
      const head = entry.example.split("\n")[0]!.split(",")[0]!;
      const all = labels(`${head}\n  ‸`);
      for (const form of entry.clauses) {
        const opening = form.opens.join(" ") || form.example;
        const inHead = ["upright"].some((lie) => head.endsWith(` ${lie}`));
        if (inHead && ["upright", "across", "front to back", "flat", "on edge"].includes(opening)) continue;
        expect(all, `${entry.word}: ${opening}`).toContain(opening);
      }
    }
  });

  test("taken at the end of every clause's own example, reads without complaint about what stood before", () => {
    for (const entry of ENTRY_FORMS) {
      const [first = ""] = entry.example.split("\n");
      expect(parse(entry.example).complaints, first).toEqual([]);
    }
  });

  test("comes in one order, each once, and its place lies in the text", () => {
    const plan = worked(fixture("inches"), files);
    for (let offset = 0; offset <= plan.text.length; offset++) {
      const all = completionsAt(plan, offset);
      const sorted = [...all].sort((a, b) => (a.sortText < b.sortText ? -1 : 1));
      if (all.every((c) => c.range.start === all[0]?.range.start)) {
        expect(sorted.map((c) => c.label)).toEqual(all.map((c) => c.label));
        expect(new Set(all.map((c) => c.label)).size).toBe(all.length);
      }
      for (const { range } of all) {
        expect(range.start <= offset && offset <= range.end && range.end <= plan.text.length).toBe(true);
        expect(plan.text.slice(range.start, range.end)).not.toMatch(/[\r\n]/);
      }
    }
  });

  test("never fails, wherever a plan is cut or scrambled", () => {
    const text = fixture("inches");
    const at = fc.nat({ max: text.length });
    const junk = fc.oneof(
      fc.string({ maxLength: 6 }),
      fc.constantFrom("((((", "\r", "\t#8 x", " of of ", "½″", "\n  "),
    );
    fc.assert(
      fc.property(at, at, junk, (a, b, between) => {
        const plan = worked(text.slice(0, a) + between + text.slice(b), files);
        completionsAt(plan, Math.min(a + between.length, plan.text.length));
        completionsAt(plan, Math.min(b, plan.text.length));
      }),
      { numRuns: Number(process.env.FC_RUNS ?? 200) },
    );
  });

  test("is found quickly at the end of a very long line", () => {
    const sum = Array.from({ length: 1500 }, () => "(rim - 1)").join(" + ");
    const { plan, offset } = atCaret(`measure rim = 3"\nmeasure long = ${sum} + ‸`);
    const start = performance.now();
    expect(completionsAt(plan, offset)[0]?.label).toBe("rim");
    expect(performance.now() - start).toBeLessThan(2000);
  });
});
