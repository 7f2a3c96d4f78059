/** What is offered at each place of a plan, half-typed lines above all. ‸ marks the cursor. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ENTRY_FORMS } from "../../grammar/forms";
import { completionsAt } from "../../server/features/completion";
import { anyText, RUNS } from "../property/plans";
import { atCaret, fixture, worked } from "./plans";

const FILES = { "shop.sawbuck": fixture("shop") };
const HEAD = `shop shop.sawbuck
measure rim = 30"
part leg 4 of 2x4, length 20"
part cap 4 of 1x4, length 20", ends mitered 45°
ring top = 4 cap
box tub, inside 9" x 9" x 9"
`;

function offered(marked: string) {
  const { plan, offset } = atCaret(HEAD + marked, FILES);
  return completionsAt(plan, offset).map((c) => ({
    ...c,
    replaces: plan.text.slice(c.range.start, c.range.end),
  }));
}
const labels = (marked: string): string[] => offered(marked).map((c) => c.label);

describe("at the start of a line", () => {
  test("every word that opens an entry, with its doc and an example", () => {
    const list = offered("‸");
    const entries = list.filter((c) => c.kind === "entry").map((c) => c.label);
    // A plan has one shop, and this one has it.
    const words = ENTRY_FORMS.map((f) => f.word).filter((w) => w !== "shop");
    expect([...entries].sort()).toEqual([...words].sort());
    for (const form of ENTRY_FORMS.filter((f) => f.word !== "shop")) {
      const one = list.find((c) => c.label === form.word);
      expect(one?.documentation()).toContain(form.doc);
      expect(one?.documentation()).toContain(form.example);
    }
  });

  test("a half-typed word is replaced whole", () => {
    expect(new Set(offered("pa‸").map((c) => c.replaces))).toEqual(new Set(["pa"]));
    expect(new Set(offered("fas‸ten leg into cap").map((c) => c.replaces))).toEqual(new Set(["fasten"]));
  });
});

describe("inside an entry", () => {
  test.each(
    ENTRY_FORMS.filter((f) => f.clauses.length > 0 && !/^(glue|coat|line|must|accept)$/.test(f.word)),
  )("$word: every clause that it takes", ({ word, example, clauses }) => {
    const head = word === "tools" ? "tools" : word === "place" ? "place leg" : example.split(/[\n,]/)[0]!;
    const list = labels(`${head}\n  ‸`);
    for (const { opens } of clauses) if (opens.length > 0) expect(list).toContain(opens.join(" "));
  });

  test("in an assembly, the lines that it is made of", () => {
    expect(labels("assembly gable\n  ‸")).toEqual(["place", "fasten", "glue"]);
    expect(labels("assembly gable\n  place leg upright, ‸")).toContain("flush with");
  });
});

describe("a name, by its kind", () => {
  test.each([
    [
      "what a part is cut from",
      "part a 2 of ‸",
      ["2x4", "pallet-slat", "shelf-ply", "5/4x6"],
      ["leg", "tub", "rim"],
    ],
    ["a board", "stock thin of ‸", ["1x2", "2x6"], ["leg", "shelf-ply"]],
    ["the first of a joint", "fasten ‸", ["leg", "cap", "top"], ["rim", "2x4", "deck-mid"]],
    ["the last of a joint", "fasten leg into ‸", ["leg", "cap"], ["rim"]],
    ["what is placed", "place ‸", ["leg", "tub"], ["rim", "2x4"]],
    ["what it stands on", "place leg upright, on ‸", ["cap", "caps", "floor"], ["rim", "leg", "legs"]],
    ["what is coated", "coat ‸", ["leg", "tub"], ["outdoor-oil"]],
    ["with what", "coat leg with ‸", ["outdoor-oil", "oil-finish"], ["leg", "pond-liner"]],
    ["what is lined", "line ‸", ["tub"], ["leg"]],
    ["with which roll", "line tub with ‸", ["pond-liner", "landscape-fabric"], ["outdoor-oil"]],
    ["a box's walls", "box b, walls ‸", ["leg", "cap"], ["tub", "top"]],
    ["a second wall", "box b, walls leg and ‸", ["cap"], ["tub"]],
    ["a fill", "box b, filled with ‸", ["hillside-mix", "soil"], ["leg"]],
    ["a ring's parts", "ring r = ‸", ["leg", "cap"], ["tub"]],
    ["after how many", "ring r = 4 ‸", ["cap"], ["tub"]],
    ["what a step uses", "step Do it\n  uses ‸", ["leg", "tub"], ["rim"]],
    ["what carries a weight", "load ‸", ["leg"], ["rim"]],
    ["a species", "stock 1x8, species ‸", ["western-redcedar", "douglas-fir"], ["leg"]],
    ["a problem's code", "accept ‸", ["over-budget", "never-used"], ["unknown-name", "leg"]],
    ["what it is accepted on", "accept never-used on ‸", ["leg", "rim"], ["never-used"]],
  ])("%s", (_, marked, some, none) => {
    const list = labels(marked);
    expect(list).toEqual(expect.arrayContaining(some));
    expect(list.filter((l) => none.includes(l))).toEqual([]);
  });
});

describe("a value", () => {
  test.each([
    ["after a clause's opening", "part a 2 of 2x4, length ‸"],
    ["after a sign", "part a 2 of 2x4, length rim - ‸"],
    ["in parentheses", "part a 2 of 2x4, length 2 * (‸"],
    ["in a function", "measure m = min(rim, ‸"],
    ["of a measure", "measure m = ‸"],
    ["in a rule", "must ‸"],
    ["on its other side", "must rim at most ‸"],
  ])("%s: measures first, then properties and functions", (_, marked) => {
    const list = labels(marked);
    expect(list[0]).toBe("rim");
    expect(list).toEqual(expect.arrayContaining(["thickness of", "max"]));
  });

  test("what a property may be asked of", () => {
    expect(labels("measure m = thickness of ‸")).toEqual(expect.arrayContaining(["leg", "2x4", "shelf-ply"]));
    expect(labels("measure m = inside width of ‸")).toEqual(["tub"]);
    expect(labels("measure m = inside ‸")).toEqual(["width of", "depth of", "height of"]);
  });

  test.each([
    ["a length", "part a 2 of 2x4, length 4‸", ['4"', "4mm"], ["4 lb", "4°"]],
    ["a half-typed unit", "part a 2 of 2x4, length 4 m‸", ["4mm"], ['4"']],
    ["an angle", 'part a 2 of 2x4, length 9", ends mitered 45‸', ["45°"], ['45"']],
    ["a weight", "load leg 40 ‸", ["40 lb", "40 kg"], ["40 min"]],
    ["a time", "step Do it\n  takes 4 ‸", ["4 min", "4 h"], ["4 lb"]],
    ["a density", "fill f, saturated 40 ‸", ["40 lb/cuft", "40 kg/m3"], ["40 lb"]],
  ])("the units of %s", (_, marked, some, none) => {
    const list = labels(marked);
    expect(list).toEqual(expect.arrayContaining(some));
    expect(list.filter((l) => none.includes(l))).toEqual([]);
  });
});

describe("half-typed sizes", () => {
  test.each(["part a 2 of 2x‸", "part a 2 of 2‸", "part a 2 of 5/4‸"])("a section: %s", (marked) => {
    const list = offered(marked);
    expect(list.map((c) => c.label)).toEqual(expect.arrayContaining(["2x4", "5/4x6"]));
    expect(new Set(list.map((c) => c.replaces))).toEqual(new Set([marked.slice(12, -1)]));
  });

  test.each(["#", "#8", "#8 x ", "#8 x 1"])("a screw: 2 %s", (typed) => {
    const list = offered(`fasten leg into cap, 2 ${typed}‸`);
    // Among the usual lengths of a #8 wood screw (common practice).
    expect(list.map((c) => c.label)).toEqual(expect.arrayContaining(['#8 x 1-1/4"', '#8 x 2"']));
    expect(new Set(list.map((c) => c.replaces))).toEqual(new Set([typed]));
  });

  test("a screw's place", () => {
    expect(labels('fasten leg into cap, 2 #8 x 2" ‸')).toEqual(
      expect.arrayContaining(["at each end", "in all"]),
    );
    expect(labels('fasten leg into cap, 2 #8 x 2" at ‸')).toEqual(["each crossing", "each end"]);
  });

  test("how many, then what", () => {
    expect(labels("fasten leg into cap, 2 ‸")).toEqual(expect.arrayContaining(["deck-mid", '#8 x 2"']));
  });
});

describe("words that are wanted", () => {
  test.each([
    ["part a 2 ‸", ["of"]],
    ["part a 2 of 2x4, ends ‸", ["square", "mitered", "beveled"]],
    ["plan X\n  units ‸", ["inches", "millimetres"]],
    ["fasten leg ‸", ["face", "edge", "end", "and", "through", "into"]],
    ["must rim ‸", ["at most", "at least", "less than", "more than", "exactly"]],
    ["accept never-used ‸", ["on", "because"]],
    ['box b, filled with soil to 1" ‸', ["below rim", "deep"]],
  ])("%s", (marked, list) => {
    expect([...labels(marked)].sort()).toEqual([...list].sort());
  });

  test("the rest of a clause of several words", () => {
    expect(labels("part a 2 of 2x4, long ‸")).toEqual(
      expect.arrayContaining(["point to long point", "point to short point", "points on"]),
    );
  });
});

describe("nothing", () => {
  test.each([
    "plan Sal‸",
    "plan ‸",
    "note Water it ‸",
    "step Oil the ‸",
    "shop ‸",
    "bring ya‸",
    "# a part ‸",
    'part a 2 of 2x4, length 9" # the le‸',
    'must rim at most 3" because the ‸',
    "accept never-used because ‸",
    "plan X\n  written by ‸",
    "plan X\n  licence CC ‸",
    "plan X\n  floor limit 40 psf by the ‸",
    "part ‸",
    "measure ‸",
    "nonsense ‸",
    "part a 2 of 2x4, # ‸",
  ])("at %s", (marked) => {
    expect(labels(marked)).toEqual([]);
  });
});

test.each(["\n", "\n ", "\r\n  ", "\n\n", " \n ", ""])("ends on a text of blanks: %j", (text) => {
  const plan = worked(text);
  for (let offset = 0; offset <= text.length; offset++)
    for (const { range } of completionsAt(plan, offset)) expect(range.end).toBeLessThanOrEqual(text.length);
});

test("an offer's range holds the cursor, its order is that of the list, and nothing is offered twice", () => {
  let some = 0;
  fc.assert(
    fc.property(anyText, fc.nat(), (text, n) => {
      const offset = n % (text.length + 2);
      const list = completionsAt(worked(text, FILES), offset);
      if (list.length > 0) some++;
      for (const { range } of list)
        expect(
          0 <= range.start && range.start <= offset && offset <= range.end && range.end <= text.length,
        ).toBe(true);
      expect(list.map((c) => c.sortText)).toEqual(list.map((c) => c.sortText).sort());
      expect(new Set(list.map((c) => c.label)).size).toBe(list.length);
    }),
    { numRuns: Math.min(RUNS, 1000) },
  );
  expect(some).toBeGreaterThan(0);
});
