/** The layout of whole texts: before and after. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { applied, format } from "../grammar/format";
import { ENTRY_FORMS } from "../grammar/forms";
import { parse } from "../grammar/parser";
import { CHECKS } from "../server/checks";
import { formatLines } from "../server/features/format";
import { blocksOf } from "./checks/plans";
import { unmarked, worked } from "./features/plans";

const laidOut = (text: string): string => applied(text, format(parse(text)));

const ROOT = join(__dirname, "..");
const FOLDERS = ["samples", "samples/mistakes", "test/features/plans", "test/fixtures/second-builder"];
const plans = FOLDERS.flatMap((folder) =>
  readdirSync(join(ROOT, folder))
    .filter((name) => name.endsWith(".sawbuck"))
    .map((name) => [`${folder}/${name}`, readFileSync(join(ROOT, folder, name), "utf8")] as const),
);
const inDocs = ["README.md", "grammar/README.md"].flatMap((name) =>
  blocksOf(readFileSync(join(ROOT, name), "utf8")).map((text, i) => [`${name} ${i + 1}`, text] as const),
);

test.each([...plans, ...inDocs])("%s is laid out as it stands", (_, text) => {
  expect(laidOut(text)).toBe(text);
});

test("so are the examples of every form and of every problem's page", () => {
  const forms = ENTRY_FORMS.map((e) => `${e.example}\n${e.clauses.map((c) => `  ${c.example}\n`).join("")}`);
  const pages = CHECKS.flatMap((c) => blocksOf(c.page));
  expect([...forms, ...pages].filter((text) => laidOut(text) !== text && !text.includes("\0"))).toEqual([]);
});

test("a plan typed by somebody in a hurry", () => {
  const typed = `

#  A bench.
plan   Bench ,  for  two\t
\tunits inches to 1/16"


\toutdoors   # in the rain
 space 60" wide,30" deep  ,  48" high
# What the hinges need.
measure gap=(48"-7*width of slat)/6,at least 3/8"
measure low = - 2"+ gap* - 1
measure rim = min ( 30" ,gap+1" )  -  round(gap+ 1") to 1/16"
stock 2x4,sold 8' $4.20,
10' $5.60
stock 1x4
        species   western-redcedar
      # the yard has no others
        sold 6' $5.20,   8' $6.95,
  10' $8.70
        # sold 12' $11
part slat 7 of 1x4 ,  length 36"
# the left one
  # and the right one
  ends   mitered 45°
assembly gable
# its own legs
    place slat across,flat ,on floor
    10" from left
    # to the front
      0 from front


    fasten slat face   into slat edge,2 #8 x 1-1/4" at each end
place gable,on floor
must gap>=3/8"   because   it   must drain  \t
note   Two  blanks  stay ,  here   
step Oil  it,  twice # not a comment
\tuses slat
   takes 40 min,2 people



# The end.   \t


`;
  expect(laidOut(typed)).toMatchInlineSnapshot(`
    "#  A bench.
    plan Bench ,  for  two
      units inches to 1/16"

      outdoors  # in the rain
      space 60" wide, 30" deep, 48" high
    # What the hinges need.
    measure gap = (48" - 7 * width of slat) / 6, at least 3/8"
    measure low = -2" + gap * -1
    measure rim = min(30", gap + 1") - round (gap + 1") to 1/16"
    stock 2x4,sold 8' $4.20,
    10' $5.60
    stock 1x4
      species western-redcedar
      # the yard has no others
      sold 6' $5.20, 8' $6.95,
        10' $8.70
        # sold 12' $11
    part slat 7 of 1x4, length 36"
      # the left one
      # and the right one
      ends mitered 45°
    assembly gable
      # its own legs
      place slat across, flat, on floor
        10" from left
        # to the front
        0 from front

      fasten slat face into slat edge, 2 #8 x 1-1/4" at each end
    place gable, on floor
    must gap >= 3/8" because it   must drain
    note Two  blanks  stay ,  here
    step Oil  it,  twice # not a comment
      uses slat
      takes 40 min, 2 people

    # The end.
    "
  `);
});

describe("white space that counts", () => {
  test.each([
    [
      "a fraction and a subtraction",
      `measure a = 11 - 1/2"\nmeasure b = 11-1/2"\nmeasure c = 11" -1/2"\n`,
      `measure a = 11 - 1/2"\nmeasure b = 11-1/2"\nmeasure c = 11" - 1/2"\n`,
    ],
    [
      "lengths of two numbers",
      `measure a=2 1/2"\nmeasure b=6' 11-1/2"\nmeasure c=6'-11 1/2"\n`,
      `measure a = 2 1/2"\nmeasure b = 6' 11-1/2"\nmeasure c = 6'-11 1/2"\n`,
    ],
    [
      "screws and comments",
      `fasten a into b,2 #8 x 1-1/4" at each end # x\nfasten a into b,2 #8x1-1/4"\n`,
      `fasten a into b, 2 #8 x 1-1/4" at each end  # x\nfasten a into b, 2 #8x1-1/4"\n`,
    ],
    [
      "sections and sizes",
      `part a 2 of 2x4,length 30"\nsheet p,sold 48"x96" $52\nstock q,actual 2 x 4\n`,
      `part a 2 of 2x4, length 30"\nsheet p, sold 48" x 96" $52\nstock q, actual 2 x 4\n`,
    ],
    ["hyphens in names", "measure a =rim-height -  rim\n", "measure a = rim-height - rim\n"],
    [
      "a name that would become a unit",
      "ring a =  6  l\npart l  of 2x4\n",
      "ring a =  6  l\npart l of 2x4\n",
    ],
    ["sizes that would become a screw", "stock a,  actual 18  x  95mm\n", "stock a,  actual 18  x  95mm\n"],
    ["words to people", "must a<b because  a,b  c\n", "must a < b because a,b  c\n"],
  ])("%s", (_, text, better) => {
    expect(laidOut(text)).toBe(better);
  });
});

test("what cannot be read is left exactly as it is, and only that", () => {
  const broken = `prat   leg 4 of 2x4 ,length 15"
\t frobnicate   it
part leg   4 of 2x4,lenght  30"
     ends   mitered 45°
assembly   gable
\tfrobnicate   leg
\tplace leg   upright
\t\ton   floor
part slat 1.5  7 of 1x4,   length 3"  # as it is
   length   5"
`;
  expect(laidOut(broken)).toMatchInlineSnapshot(`
    "prat   leg 4 of 2x4 ,length 15"
    	 frobnicate   it
    part leg   4 of 2x4,lenght  30"
      ends mitered 45°
    assembly gable
    	frobnicate   leg
      place leg upright
        on floor
    part slat 1.5  7 of 1x4,   length 3"  # as it is
      length 5"
    "
  `);
  expect(laidOut("note one\0  \n\n\n")).toBe("note one\0  \n\n\n");
});

test.each([
  ["an empty text", "", ""],
  ["blanks alone", " \n\t\n", ""],
  ["a byte order mark", "\uFEFF\n\nnote a", "\uFEFFnote a\n"],
  ["a byte order mark alone", "\uFEFF \n", "\uFEFF"],
  ["Windows line ends", "note a\r\n\r\n\r\n\r\nnote b  \r\n\r\n", "note a\r\n\r\nnote b\r\n"],
  [
    "mostly Windows line ends",
    "note a\r\nnote b\nnote c\r\nnote d",
    "note a\r\nnote b\r\nnote c\r\nnote d\r\n",
  ],
  ["mostly others", "note a\nnote b\r\nnote c\n", "note a\nnote b\nnote c\n"],
  ["old line ends", "note a\rnote b  \r", "note a\rnote b\r"],
  [
    "a comment in a list",
    "stock 1x4\n  sold 6' $5,\n# x\n   8' $6\n",
    "stock 1x4\n  sold 6' $5,\n    # x\n    8' $6\n",
  ],
  [
    "an indented comment of the next entry",
    "part a of 2x4\n\n  # b\npart b of 2x4\n",
    "part a of 2x4\n\n# b\npart b of 2x4\n",
  ],
])("%s", (_, text, better) => {
  expect(laidOut(text)).toBe(better);
});

test("the edits are small", () => {
  const text = `part a of 2x4 ,length 3"\n  ends mitered  45°\n\n\n\nnote x`;
  expect(format(parse(text))).toMatchInlineSnapshot(`
    [
      {
        "end": 14,
        "start": 13,
        "text": "",
      },
      {
        "end": 15,
        "start": 15,
        "text": " ",
      },
      {
        "end": 41,
        "start": 40,
        "text": "",
      },
      {
        "end": 47,
        "start": 45,
        "text": "",
      },
      {
        "end": 54,
        "start": 54,
        "text": "
    ",
      },
    ]
  `);
});

test.each([
  ["one line", `note  a\n⟦note  b⟧  \nnote  c \n`, `note  a\nnote b\nnote  c \n`],
  ["from line to line", `note  a\n⟦note  b\n\n\n\n⟧note  c\n`, `note  a\nnote b\n\nnote  c\n`],
  [
    "a cursor in an entry",
    `stock  2x4\n\tspecies  hem-fir\n\tke⟦⟧ep  \nnote  c\n`,
    `stock  2x4\n  species  hem-fir\n  keep\nnote  c\n`,
  ],
  ["two of them", `note  ⟦a⟧\nnote  b\nnote  ⟦c⟧`, `note a\nnote  b\nnote c\n`],
])("a range: %s", (_, marked, better) => {
  const { text, ranges } = unmarked(marked);
  expect(applied(text, formatLines(worked(text), ranges))).toBe(better);
});

test("the text of another file begins below its line, whatever blank stands in that", () => {
  const tidy = 'enclosed sizes.sawbuck\nmeasure a = 1"\n';
  for (const blank of [" ", "\t", "\u00a0", "\u00a0 "])
    expect(laidOut(`enclosed${blank}sizes.sawbuck\n\nmeasure a = 1"\n`)).toBe(tidy);
});

test("a plan of 20,000 lines is laid out in one go", () => {
  const [, sample] = plans.find(([name]) => name === "samples/salad-trough.sawbuck")!;
  const long = sample.repeat(Math.floor(999_000 / sample.length));
  const wild = long.replaceAll(", flat", " ,  flat");
  const from = performance.now();
  const better = laidOut(wild);
  // A second where nothing else runs; what grew with the square of the lines would take minutes.
  expect(performance.now() - from).toBeLessThan(60_000);
  expect(better).toBe(long);
});
