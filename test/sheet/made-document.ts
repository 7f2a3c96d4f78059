/** A sheet's document made by hand, with every kind of block: the bench by the potting shed. */
import { type Drawing, line, rectangle, text } from "../../server/sheet/display";
import type { Group, Item, Section, SheetDocument, WriterWords } from "../../server/sheet/document";
import { boards, cutList, figure, shopping, strong, ticksFor, words } from "./made-tables";

export const WORDS: WriterWords = {
  page: (page, of) => `${page} of ${of}`,
  tick: (what, done) => `${what}: ${done}`,
  colon: ":",
  between: "; ",
  drawing: (title) => `Drawing: ${title}`,
};

/** A drawing with each kind of item: tints, weights, upright and anchored type, a halo. */
export function smallDrawing(title: string, width = 62, height = 44): Drawing {
  return {
    title,
    width,
    height,
    items: [
      rectangle("face", 0, { left: 6, top: 8, right: width - 8, bottom: height - 8 }, "pale"),
      rectangle("face", 0, { left: 6, top: 8, right: width / 2, bottom: height - 8 }, "marked"),
      line("edge", 0.4, [6, 8], [width - 8, 8], [width - 8, height - 8], [6, height - 8], [6, 8]),
      line("hidden", 0.15, [6, height / 2], [width - 8, height / 2]),
      text("dimension", width / 2, height - 2, '24-1/2"', { anchor: "middle" }),
      text("dimension", width - 2, height / 2, '18"', { anchor: "middle", upright: true }),
      text("label", width / 2, height / 2 + 1.4, "halo", { anchor: "middle", bold: true, halo: true }),
    ],
  };
}

const drawings: Section = {
  name: "drawings",
  heading: "Drawing",
  blocks: [
    { kind: "paragraph", style: "plain", words: 'Over all: 50" wide, 20" deep, 30" high.' },
    figure("From the front, 1 : 10", () => smallDrawing("The bench from the front", 120, 90)),
    {
      kind: "list",
      style: "marks",
      items: "leg spacer side end ledger end-ledger floor-board end-floor cap-side cap-end drip-strip"
        .split(" ")
        .map((part, i) => ({ lead: "ABCDEFGHIJK"[i]!, words: `${part}, ${i + 2} pieces` })),
    },
  ],
};

const about: Section = {
  name: "about",
  heading: "About this plan",
  blocks: [
    {
      kind: "terms",
      rows: [
        { label: "Drawn by", words: "the gardening class of the hillside school" },
        { label: "Stands", words: "outdoors, near children" },
        {
          label: "Space",
          words: '60" wide, 30" deep, 48" high; the way in is 1220 mm wide, or 1190 mm where the post is',
        },
        {
          label: "Checked by hand",
          words: [
            { text: "who looked at it", style: "blank" },
            { text: " on " },
            { text: "the day", style: "blank" },
          ],
        },
      ],
    },
  ],
};

const PROBLEM: Item = {
  lead: "Hazard",
  framed: true,
  line: 58,
  words:
    '#8 x 2" goes through floor-board (3/4") and ledger (1-1/2" on edge, 3/4" where it is notched) and comes out 1/2" proud inside the trough, where hands dig.',
  below: [
    "line 58, screw-pokes-through",
    [{ text: "Cure: ", style: "strong" }, { text: 'use #8 x 1-1/4"' }],
    [
      { text: "Assumed: ", style: "strong" },
      { text: '1/8" of wood must stay over the tip (common practice)' },
    ],
  ],
};

const problems: Section = {
  name: "problems",
  heading: "Open problems",
  blocks: [
    {
      kind: "list",
      style: "bullets",
      items: [
        PROBLEM,
        {
          lead: "Hint",
          words: 'The gap between two floor boards is 1/2".',
          below: ["line 44, gap-for-fingers"],
        },
      ],
    },
    {
      kind: "list",
      style: "bullets",
      items: [
        {
          words: [
            { text: "Where the shelf stands", style: "strong" },
            { text: ": its place says left to right and up, but not front to back (line 49)" },
          ],
        },
        {
          words:
            'Bending of the floor boards: there is no published value for 3/4" boards of western redcedar',
        },
      ],
    },
    {
      kind: "paragraph",
      style: "caution",
      words:
        "A wet box of 57 lb is not moved by one person: these figures are an estimate for small builds; local code and a licensed professional decide.",
    },
  ],
};

const STEPS = ["Cut the legs", "Screw the ends together", "Hang the sides"];

const steps: Section = {
  name: "steps",
  heading: "Order of work",
  newPage: true,
  blocks: [
    ...STEPS.map(
      (title, i): Group => ({
        kind: "group",
        name: "step",
        ticks: ticksFor(title, 1, "done"),
        heading: `${i + 1}. ${title}`,
        blocks: [
          figure(i === 1 ? "The end, from inside" : "", () => smallDrawing(`Step ${i + 1} shown`), true),
          {
            kind: "list",
            style: "ticks",
            items: [
              { ticks: ticksFor("leg", 4, "done"), words: 'leg, 29-1/4", with the long points on one edge' },
              {
                ticks: ticksFor("spacer", 1, "done"),
                words:
                  "hold the pieces with two clamps, and measure both diagonals: they are the same to 2 mm",
                below: ['the clamps of the shed open to 36"'],
              },
            ],
          },
          {
            kind: "paragraph",
            style: "plain",
            words: 'Screws stand 3/4" from the edge; drill 7/64" through the near piece first.',
          },
          ...(i === 2
            ? [
                {
                  kind: "table" as const,
                  name: "set-outs",
                  columns: [
                    { name: "mark", head: "Mark", fit: "mark" as const },
                    { name: "along", head: "Along it", fit: "text" as const },
                    { name: "across", head: "Across it", fit: "text" as const },
                  ],
                  groups: [
                    {
                      title: "",
                      source: "",
                      rows: [
                        {
                          cells: [
                            strong("A"),
                            words('1-3/4", 5-1/4" and 8-3/4" from the left end'),
                            words("in the middle"),
                          ],
                        },
                      ],
                    },
                  ],
                  sums: [],
                },
              ]
            : []),
        ],
      }),
    ),
    {
      kind: "list",
      style: "numbers",
      items: [{ words: "Lift it in with two people." }, { words: "Fill it in layers of a hand's breadth." }],
    },
  ],
};

export const made: SheetDocument = {
  language: "en",
  plan: "made",
  title: "Salad trough for the yard",
  under: 'salad-trough.sawbuck, inches to 1/16"',
  words: WORDS,
  sections: [drawings, about, problems, cutList, boards, shopping, steps],
};
