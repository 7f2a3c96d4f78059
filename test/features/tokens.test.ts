/** What every word of a plan is coloured as: by what it means in that plan, not by where it stands. */
import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { type Token, tokensOf } from "../../server/features/tokens";
import { worked } from "./plans";

const SAMPLES = new URL("../../samples/", import.meta.url);
const sample = (name: string): string => readFileSync(new URL(name, SAMPLES), "utf8");
const SHOP = { "hillside-shop.sawbuck": sample("hillside-shop.sawbuck") };

/** The text with what each token is behind it. */
function coloured(text: string, files: Readonly<Record<string, string>> = {}): string {
  const plan = worked(text, files);
  return marked(text, tokensOf(plan));
}

function marked(text: string, tokens: readonly Token[]): string {
  let at = 0;
  let out = "";
  for (const { start, end, type, modifiers } of tokens) {
    out += `${text.slice(at, start)}${text.slice(start, end)}⟨${[type, ...modifiers].join(".")}⟩`;
    at = end;
  }
  return out + text.slice(at);
}

/** What one word of the text is; the nth of it. */
function lookOf(text: string, word: string, nth = 0): string {
  const starts = [...text.matchAll(new RegExp(`(?<![\\w-])${word}(?![\\w-])`, "g"))].map((m) => m.index);
  const start = starts[nth]!;
  const token = tokensOf(worked(text)).find((t) => t.start === start);
  return token ? [token.type, ...token.modifiers].join(".") : "none";
}

test.each(["salad-trough", "reading-shelf", "hillside-shop"])("%s", async (name) => {
  await expect(coloured(sample(`${name}.sawbuck`), SHOP)).toMatchFileSnapshot(`snapshots/tokens-${name}.txt`);
});

test("a name is coloured by the line that declares it, and its plural alike", () => {
  const text = `measure rim = 30"
stock heart-2x4 of 2x4
part leg 4 of heart-2x4, length rim
ring seat = 6 leg
box trough, walls legs
fill mix, dry 20 lb/cuft
place legs upright, on floor
coat trough with oil
`;
  expect(lookOf(text, "rim", 1)).toBe("variable");
  expect(lookOf(text, "heart-2x4", 1)).toBe("enumMember.stock");
  expect(lookOf(text, "leg", 1)).toBe("class");
  expect(lookOf(text, "legs", 0)).toBe("class");
  expect(lookOf(text, "trough", 1)).toBe("struct");
  expect(lookOf(text, "seat")).toBe("enum.declaration");
  expect(lookOf(text, "mix")).toBe("enumMember.declaration.fill");
  expect(lookOf(text, "floor")).toBe("class.defaultLibrary");
});

test("a part may be called by a word of the language", () => {
  expect(
    coloured(`part step 2 of 2x4, length 12"
part end 2 of 2x4, length length of step
fasten end end into step edge, 2 #8 x 2" at each end
step Oil every step
  uses step and ends
`),
  ).toMatchInlineSnapshot(`
    "part⟨keyword⟩ step⟨class.declaration⟩ 2⟨number⟩ of⟨keyword.relation⟩ 2x4⟨enumMember.defaultLibrary.stock⟩, length⟨keyword.clause⟩ 12"⟨number⟩
    part⟨keyword⟩ end⟨class.declaration⟩ 2⟨number⟩ of⟨keyword.relation⟩ 2x4⟨enumMember.defaultLibrary.stock⟩, length⟨keyword.clause⟩ length⟨property⟩ of⟨keyword.relation⟩ step⟨class⟩
    fasten⟨keyword⟩ end⟨class⟩ end⟨keyword.relation⟩ into⟨keyword.relation⟩ step⟨class⟩ edge⟨keyword.relation⟩, 2⟨number⟩ #8 x 2"⟨number⟩ at⟨keyword.relation⟩ each⟨keyword.relation⟩ end⟨keyword.relation⟩
    step⟨keyword⟩ Oil every step⟨string⟩
      uses⟨keyword.clause⟩ step⟨class⟩ and⟨keyword.relation⟩ ends⟨class⟩
    "
  `);
});

test("what every plan knows is told from what a line declares", () => {
  expect(
    coloured(`stock 1x4, species western-redcedar
part slat 3 of 1x4, length 12"
part leg of 4x4, length thickness of 2x4
part rail of 2x7, length 3"
box tub, walls slat, filled with potting-mix to 1" below rim
  grows tomatoes and stones
line tub with pond-liner
fastener deck, #8 x 2" screw, coating stainless
coat slat with exterior-paint
`),
  ).toMatchInlineSnapshot(`
    "stock⟨keyword⟩ 1x4⟨enumMember.declaration.stock⟩, species⟨keyword.clause⟩ western-redcedar⟨enumMember.defaultLibrary⟩
    part⟨keyword⟩ slat⟨class.declaration⟩ 3⟨number⟩ of⟨keyword.relation⟩ 1x4⟨enumMember.stock⟩, length⟨keyword.clause⟩ 12"⟨number⟩
    part⟨keyword⟩ leg⟨class.declaration⟩ of⟨keyword.relation⟩ 4x4⟨enumMember.defaultLibrary.stock⟩, length⟨keyword.clause⟩ thickness⟨property⟩ of⟨keyword.relation⟩ 2x4⟨enumMember.defaultLibrary.stock⟩
    part⟨keyword⟩ rail⟨class.declaration⟩ of⟨keyword.relation⟩ 2x7, length⟨keyword.clause⟩ 3"⟨number⟩
    box⟨keyword⟩ tub⟨struct.declaration⟩, walls⟨keyword.clause⟩ slat⟨class⟩, filled⟨keyword.clause⟩ with⟨keyword.clause⟩ potting-mix⟨enumMember.defaultLibrary.fill⟩ to⟨keyword.relation⟩ 1"⟨number⟩ below⟨keyword.relation⟩ rim⟨keyword.relation⟩
      grows⟨keyword.clause⟩ tomatoes⟨enumMember.defaultLibrary⟩ and⟨keyword.relation⟩ stones
    line⟨keyword⟩ tub⟨struct⟩ with⟨keyword.relation⟩ pond-liner⟨enumMember.defaultLibrary.roll⟩
    fastener⟨keyword⟩ deck⟨enumMember.declaration.fastener⟩, #8 x 2"⟨number⟩ screw⟨keyword.clause⟩, coating⟨keyword.clause⟩ stainless⟨enumMember.defaultLibrary⟩
    coat⟨keyword⟩ slat⟨class⟩ with⟨keyword.relation⟩ exterior-paint⟨enumMember.defaultLibrary.finish⟩
    "
  `);
});

test("narrowing words, functions, properties, and words that are the builder's own", () => {
  expect(
    coloured(`plan Bench
  floor limit 58 psf by the engineer, and friends
  of which people 40 psf
tools
  has drill and square
part leg 4 of 2x4, length round max(12", 3 * overall width of front left legs) to 1/16"
part x 1 of 2x4, length fold(3")
accept over-budget on leg because # is no comment here, "no" number 12"
accept over-sized because of nothing
bring more # no comment
`),
  ).toMatchInlineSnapshot(`
    "plan⟨keyword⟩ Bench⟨string⟩
      floor⟨keyword.clause⟩ limit⟨keyword.clause⟩ 58 psf⟨number⟩ by⟨keyword.relation⟩ the engineer, and friends⟨string⟩
      of⟨keyword.clause⟩ which⟨keyword.clause⟩ people⟨parameter⟩ 40 psf⟨number⟩
    tools⟨keyword⟩
      has⟨keyword.clause⟩ drill⟨parameter⟩ and⟨keyword.relation⟩ square⟨parameter⟩
    part⟨keyword⟩ leg⟨class.declaration⟩ 4⟨number⟩ of⟨keyword.relation⟩ 2x4⟨enumMember.defaultLibrary.stock⟩, length⟨keyword.clause⟩ round⟨function.defaultLibrary⟩ max⟨function.defaultLibrary⟩(12"⟨number⟩, 3⟨number⟩ *⟨operator⟩ overall⟨property⟩ width⟨property⟩ of⟨keyword.relation⟩ front⟨modifier⟩ left⟨modifier⟩ legs⟨class⟩) to⟨keyword.relation⟩ 1/16"⟨number⟩
    part⟨keyword⟩ x⟨class.declaration⟩ 1⟨number⟩ of⟨keyword.relation⟩ 2x4⟨enumMember.defaultLibrary.stock⟩, length⟨keyword.clause⟩ fold(3"⟨number⟩)
    accept⟨keyword⟩ over-budget⟨event⟩ on⟨keyword.relation⟩ leg⟨class⟩ because⟨keyword⟩ # is no comment here, "no" number 12"⟨string⟩
    accept⟨keyword⟩ over-sized because⟨keyword⟩ of nothing⟨string⟩
    bring⟨keyword⟩ more # no comment⟨string⟩
    "
  `);
});

test("a name that nothing declares has no colour, and one whose line is being typed keeps it", () => {
  expect(lookOf(`part leg 4 of 2x4, length rim\n`, "rim")).toBe("none");
  expect(lookOf(`place stool upright, on floor\n`, "stool")).toBe("none");
  const typing = `part leg 4 of\nplace legs upright, on floor\nplace leg upright, on\n`;
  expect(coloured(typing)).toMatchInlineSnapshot(`
    "part⟨keyword⟩ leg⟨class.declaration⟩ 4⟨number⟩ of⟨keyword.relation⟩
    place⟨keyword⟩ legs⟨class⟩ upright⟨keyword.clause⟩, on⟨keyword.clause⟩ floor⟨class.defaultLibrary⟩
    place⟨keyword⟩ leg⟨class⟩ upright⟨keyword.clause⟩, on⟨keyword.clause⟩
    "
  `);
});

test("half-typed lines: openings stay openings, and declared names stay names", () => {
  expect(
    coloured(`part leg 4 of 2x4, length
prat leg 4 of 2x4
  length end of
place leg flush with , 2 legs up
assembly gable
  place leg across, flush with top of
  leg flat, 1,5 m
  #8 top
`),
  ).toMatchInlineSnapshot(`
    "part⟨keyword⟩ leg⟨class.declaration⟩ 4⟨number⟩ of⟨keyword.relation⟩ 2x4⟨enumMember.defaultLibrary.stock⟩, length⟨keyword.clause⟩
    prat leg⟨class⟩ 4⟨number⟩ of⟨keyword.relation⟩ 2x4⟨number⟩
      length⟨keyword.relation⟩ end⟨keyword.relation⟩ of⟨keyword.relation⟩
    place⟨keyword⟩ leg⟨class⟩ flush⟨keyword.clause⟩ with⟨keyword.clause⟩ , 2⟨number⟩ legs⟨class⟩ up⟨keyword.relation⟩
    assembly⟨keyword⟩ gable⟨namespace.declaration⟩
      place⟨keyword⟩ leg⟨class⟩ across⟨keyword.clause⟩, flush⟨keyword.clause⟩ with⟨keyword.clause⟩ top⟨keyword.relation⟩ of⟨keyword.relation⟩
      leg⟨class⟩ flat⟨keyword.relation⟩, 1,5 m⟨number⟩
      #8⟨number⟩ top⟨keyword.relation⟩
    "
  `);
});

test("a note holds what it likes, and a comment needs a blank on both sides", () => {
  expect(
    coloured(`note Don't use #8 x 2" here, 'tis 3' off # really
# it's "quoted"
part leg 4 of 2x4 # it's one
fasten leg into leg, 2 #8 x 2" at each end # #8
`),
  ).toMatchInlineSnapshot(`
    "note⟨keyword⟩ Don't use #8 x 2" here, 'tis 3' off # really⟨string⟩
    # it's "quoted"⟨comment⟩
    part⟨keyword⟩ leg⟨class.declaration⟩ 4⟨number⟩ of⟨keyword.relation⟩ 2x4⟨enumMember.defaultLibrary.stock⟩ # it's one⟨comment⟩
    fasten⟨keyword⟩ leg⟨class⟩ into⟨keyword.relation⟩ leg⟨class⟩, 2⟨number⟩ #8 x 2"⟨number⟩ at⟨keyword.relation⟩ each⟨keyword.relation⟩ end⟨keyword.relation⟩ # #8⟨comment⟩
    "
  `);
});

test("names from the shop file are known, and lines of another file are not coloured here", () => {
  const files = { "shop.sawbuck": 'stock oak-plank of 1x6\nfastener deck, #8 x 2" screw\n' };
  const text =
    'shop shop.sawbuck\npart leg of oak-plank, length 3"\nfasten leg into leg, 2 deck at each end\n';
  expect(coloured(text, files)).toMatchInlineSnapshot(`
    "shop⟨keyword⟩ shop.sawbuck⟨string⟩
    part⟨keyword⟩ leg⟨class.declaration⟩ of⟨keyword.relation⟩ oak-plank⟨enumMember.stock⟩, length⟨keyword.clause⟩ 3"⟨number⟩
    fasten⟨keyword⟩ leg⟨class⟩ into⟨keyword.relation⟩ leg⟨class⟩, 2⟨number⟩ deck⟨enumMember.fastener⟩ at⟨keyword.relation⟩ each⟨keyword.relation⟩ end⟨keyword.relation⟩
    "
  `);
});

test("emoji, combining marks and any line ends: a token is where its letters are, in units of UTF-16", () => {
  const text = '# 🪚🪵\r\nnote 🪚 cafe\u0301\rmeasure gap = ½"\r\n\r\npart leg 🪚 of 2x4\r\n';
  const tokens = tokensOf(worked(text));
  expect(tokens.map((t) => [t.type, text.slice(t.start, t.end)])).toEqual([
    ["comment", "# 🪚🪵"],
    ["keyword", "note"],
    ["string", "🪚 cafe\u0301"],
    ["keyword", "measure"],
    ["variable", "gap"],
    ["operator", "="],
    ["number", '½"'],
    ["keyword", "part"],
    ["class", "leg"],
    ["keyword", "of"],
    ["number", "2x4"],
  ]);
});

test("of a text that is no plan nothing is coloured", () => {
  expect(tokensOf(worked("part leg\0 of 2x4"))).toEqual([]);
  expect(tokensOf(worked(""))).toEqual([]);
  expect(tokensOf(worked("# only a comment"))).toHaveLength(1);
});

test("a stretch has the tokens that reach into it", () => {
  const text = `part leg 4 of 2x4\n\npart rail 2 of 1x4\n`;
  const plan = worked(text);
  const words = (start: number, end: number) =>
    tokensOf(plan, { start, end }).map((t) => text.slice(t.start, t.end));
  expect(words(text.indexOf("eg"), text.indexOf("4") + 1)).toEqual(["leg", "4"]);
  expect(words(text.indexOf("part rail"), text.length)).toEqual(["part", "rail", "2", "of", "1x4"]);
});

test("every sample: nothing is left without a colour", () => {
  const names = readdirSync(SAMPLES).filter((f) => f.endsWith(".sawbuck"));
  const files = Object.fromEntries(names.map((f) => [f, sample(f)]));
  for (const name of names) {
    const text = sample(name);
    let left = "";
    let at = 0;
    for (const { start, end } of [...tokensOf(worked(text, files)), { start: text.length, end: 0 }]) {
      left += text.slice(at, start);
      at = end;
    }
    expect(`${name} ${left.replace(/[\s,()]/g, "")}`).toBe(`${name} `);
  }
});
