/** A sheet written by hand for the yard of the hillside school: a salad trough with a shelf under it. */
import type { Place, SheetData, SheetProblem, SheetProof } from "../../server/sheet/data";
import { letters } from "../../server/sheet/identity";
import { inches, board as plainBoard, panel as plainPanel } from "./made";

const FILE = "salad-trough.sawbuck";

function at(line: number, column = 1, endColumn = 40): Place {
  return { file: FILE, line, column, endLine: line, endColumn };
}

const FIRST: SheetProof = {
  status: "first",
  cost: 2400,
  bound: null,
  unit: "cents",
  currency: "$",
  work: 0,
  certificate: null,
};
const BOUNDED: SheetProof = {
  ...FIRST,
  status: "bounded",
  cost: 2438.4,
  bound: 2012.5,
  unit: "mm",
  currency: "",
  work: 120_000,
  certificate: { worths: [[3, 1]], held: [], refuted: [] },
};
const PROVEN: SheetProof = {
  ...FIRST,
  status: "proven",
  bound: 2400,
  work: 4_000_000,
  certificate: { worths: [[8, 8, 1, 5, 1, 2]], held: [[0, 4]], refuted: [[0]] },
};

const POKES: SheetProblem = {
  code: "screw-pokes-through",
  class: "hazard",
  message:
    '#8 x 2" goes through floor-board (3/4") and ledger (1-1/2" on edge, 3/4" where it is notched) and comes out 1/2" proud inside the trough, where hands dig.',
  place: at(58, 27, 35),
  numbers: [{ name: "proud", value: 12.7, unit: "mm", text: '1/2"', source: "worked out" }],
  related: [{ message: "the ledger is notched here", place: at(21) }],
  assumed: ['1/8" of wood must stay over the tip (common practice)'],
  cures: ['use #8 x 1-1/4"', "leave the notch out where the screw goes in"],
};

const GAP: SheetProblem = {
  code: "gap-for-fingers",
  class: "hint",
  message:
    'The gap between two floor boards is 1/2"; small fingers may be caught in openings of 5/16" to 1".',
  place: at(44),
  numbers: [],
  related: [],
  assumed: [],
  cures: [],
};

const NO_PRICE: SheetProblem = {
  code: "no-price",
  class: "warning",
  message: "outdoor-oil has no price, so the total leaves it out.",
  place: { ...at(9), file: "hillside-shop.sawbuck" },
  numbers: [],
  related: [],
  assumed: [],
  cures: [],
};

const END_GRAIN: SheetProblem = {
  code: "screw-in-end-grain",
  class: "warning",
  message: "The screws of the cap go into the end grain of the legs and hold little there.",
  place: at(61),
  numbers: [],
  related: [],
  assumed: [],
  cures: [],
  accepted: "the cap only covers the rim and carries nothing",
};

const board: typeof plainBoard = (spec) => {
  const made = plainBoard(spec);
  return { ...made, cuts: lettered(made.cuts) };
};
const panel: typeof plainPanel = (...spec) => {
  const made = plainPanel(...spec);
  return { ...made, cuts: lettered(made.cuts) };
};

const PLAIN = {
  hand: "",
  rule: "",
  measured: "",
  shortPoint: null,
  ripped: false,
  ends: "",
  notes: [],
} as const;
const IDLE = {
  fresh: [],
  joins: [],
  coats: [],
  linings: [],
  fit: [],
  square: [],
  tools: [],
  people: null,
  takes: null,
  wait: null,
  lift: "",
} as const;
const CEDAR = "western redcedar";

function pieces(part: string, count: number): readonly string[] {
  return Array.from({ length: count }, (_, i) => `${part} / ${i + 1}`);
}

/** Letters in the order of the parts in the text. */
const PARTS = [
  "leg spacer side end ledger end-ledger floor-board end-floor cap-side cap-end drip-strip",
  "shelf shelf-edge back gusset tall-strip",
].flatMap((names) => names.split(" "));

const markOf = (part: string): string => letters(PARTS.indexOf(part));

function lettered<Cut extends { readonly label: string; readonly mark: string }>(
  cuts: readonly Cut[],
): Cut[] {
  return cuts.map((cut) => ({ ...cut, mark: markOf(cut.label) }));
}

function row(part: string, count: number, length: number, line: number) {
  return {
    ...PLAIN,
    mark: markOf(part),
    part,
    count,
    pieces: pieces(part, count),
    length: inches(length),
    width: null,
    thickness: null,
    place: at(line),
  };
}

export const trough: SheetData = {
  format: "sawbuck-sheet",
  version: 1,
  language: 1,
  file: FILE,
  title: "Salad trough for the yard",
  units: { system: "inches", mark: '1/16"' },
  make: 1,
  facts: [
    { label: "Drawn by", value: "the gardening class of the hillside school" },
    { label: "Licence", value: "copy it and change it as you like" },
    { label: "Stands", value: "outdoors, near children" },
    { label: "Space", value: '60" wide, 30" deep, 48" high; way in 32" wide' },
    { label: "Floor limit", value: "57 psf, by the engineer of the yard (invented)" },
    { label: "Lumber", value: "PS 20, dressed dry" },
  ],
  notes: [
    "Ask the caretaker for the key to the shed before the saw comes out.",
    "The trough stands where the old sandpit was.",
  ],
  problems: [POKES, NO_PRICE, GAP],
  accepted: [END_GRAIN],
  notChecked: [
    {
      what: "Where the shelf stands",
      why: "its place says left to right and up, but not front to back",
      place: at(49),
    },
    {
      what: "Bending of the floor boards",
      why: 'there is no published value for 3/4" boards of western redcedar',
    },
  ],
  overall: { width: inches(50), depth: inches(20), height: inches(30) },
  pieces: ["front left", "front right", "back left", "back right"].map((corner, i) => ({
    id: `leg / ${corner}`,
    part: "leg",
    mark: "A",
    assemblies: [],
    from: [i % 2 === 0 ? 0 : 1092.2, i < 2 ? 0 : 381, 0],
    to: [i % 2 === 0 ? 88.9 : 1181.1, i < 2 ? 38.1 : 419.1, 742.95],
    place: at(24),
  })),
  cutList: [
    {
      stock: "2x4",
      title: `2x4, 1-1/2" x 3-1/2", ${CEDAR}`,
      source: "PS 20-20, dressed dry",
      rows: [
        row("leg", 4, 29.25, 12),
        { ...row("spacer", 6, 3, 13), notes: ["cut from a long board, clamped"] },
      ],
    },
    {
      stock: "2x2",
      title: `2x2, 1-1/2" x 1-1/2", ${CEDAR}`,
      source: "PS 20-20, dressed dry",
      rows: [
        { ...row("ledger", 2, 39.5, 15), notes: ['notch 3/4" deep, 1-1/2" wide, 19" from the left end'] },
        row("end-ledger", 2, 13.5, 16),
      ],
    },
    {
      stock: "1x6",
      title: `1x6, 3/4" x 5-1/2", ${CEDAR}`,
      source: "PS 20-20, dressed dry",
      rows: [row("side", 4, 46.5, 13), row("end", 4, 18, 14)],
    },
    {
      stock: "1x4",
      title: `1x4, 3/4" x 3-1/2", ${CEDAR}`,
      source: "PS 20-20, dressed dry",
      rows: [
        row("floor-board", 10, 16.5, 17),
        { ...row("end-floor", 2, 13.5, 18), ripped: true, width: inches(2.75) },
        {
          ...row("cap-side", 2, 50, 19),
          measured: "long point to long point",
          shortPoint: inches(43),
          ends: "45° miter both ends, long points on one edge",
        },
        {
          ...row("cap-end", 2, 20, 20),
          measured: "long point to long point",
          shortPoint: inches(13),
          ends: "45° miter both ends, long points on one edge",
        },
        {
          ...row("drip-strip", 1, 47, 21),
          hand: "left",
          length: null,
          measured: "cut to fit",
          notes: ['leave 1/2" to fit'],
        },
      ],
    },
    {
      stock: "ply",
      title: 'Plywood 3/4", exterior',
      source: "",
      rows: [
        { ...row("shelf", 2, 46.5, 30), ripped: true, width: inches(16.5) },
        { ...row("shelf-edge", 2, 46.5, 31), ripped: true, width: inches(2) },
        { ...row("back", 1, 60, 32), ripped: true, width: inches(12) },
        { ...row("gusset", 2, 8, 33), ripped: true, width: inches(8) },
        { ...row("tall-strip", 1, 29, 34), ripped: true, width: inches(4) },
      ],
    },
  ],
  boards: [
    {
      stock: "2x4",
      title: `2x4, ${CEDAR}`,
      boards: [
        board({
          label: "8' board",
          kind: "bought",
          length: 96,
          trim: 0.5,
          keep: false,
          cuts: [
            ["leg", 29.25],
            ["leg", 29.25],
            ["leg", 29.25],
            ["spacer", 3],
          ],
        }),
        board({
          label: 'on hand, 54"',
          kind: "on hand",
          length: 54,
          trim: 0,
          keep: false,
          cuts: [
            ["spacer", 3],
            ["spacer", 3],
            ["spacer", 3],
            ["spacer", 3],
            ["spacer", 3],
            ["bad", 18, 23.5],
            ["leg", 29.25],
          ],
        }),
      ],
      assumed: ['1/8" lost to each saw cut', '1/2" trimmed off each bought end'],
      unplaced: [],
      proof: FIRST,
      stops: [],
      onHandAfter: "",
    },
    {
      stock: "2x2",
      title: `2x2, ${CEDAR}`,
      boards: [
        board({
          label: "8' board",
          kind: "bought",
          length: 96,
          trim: 0.5,
          keep: false,
          cuts: [
            ["ledger", 39.5],
            ["ledger", 39.5],
            ["end-ledger", 13.5],
          ],
        }),
        board({
          label: 'on hand, 41"',
          kind: "on hand",
          length: 41,
          trim: 0,
          keep: true,
          cuts: [["end-ledger", 13.5]],
        }),
      ],
      assumed: ['1/8" lost to each saw cut'],
      unplaced: [],
      proof: BOUNDED,
      stops: [{ length: inches(39.5), count: 2, marks: "C", boards: [{ label: "8' board", count: 1 }] }],
      onHandAfter: 'on hand 1 of 27-3/8"',
    },
    {
      stock: "1x6",
      title: `1x6, ${CEDAR}`,
      boards: [
        board({
          label: "8' board",
          kind: "bought",
          count: 2,
          length: 96,
          trim: 0.5,
          keep: false,
          cuts: [
            ["side", 46.5],
            ["side", 46.5],
          ],
        }),
        board({
          label: "8' board",
          kind: "bought",
          length: 96,
          trim: 0.5,
          keep: true,
          cuts: [
            ["end", 18],
            ["end", 18],
            ["end", 18],
            ["end", 18],
          ],
        }),
      ],
      assumed: ['1/8" lost to each saw cut'],
      unplaced: [],
      proof: FIRST,
      stops: [],
      onHandAfter: "",
    },
    {
      stock: "1x4",
      title: `1x4, ${CEDAR}`,
      boards: [
        board({
          label: "8' board",
          kind: "bought",
          count: 2,
          length: 96,
          trim: 0.5,
          keep: false,
          cuts: [
            ["cap-side", 50],
            ["cap-end", 20],
            ["floor-board", 16.5],
          ],
        }),
        board({
          label: "8' board",
          kind: "bought",
          length: 96,
          trim: 0.5,
          keep: true,
          cuts: [
            ["floor-board", 16.5],
            ["floor-board", 16.5],
            ["floor-board", 16.5],
            ["floor-board", 16.5],
          ],
        }),
        board({
          label: "8' board",
          kind: "bought",
          length: 96,
          trim: 0.5,
          keep: false,
          cuts: [
            ["floor-board", 16.5],
            ["floor-board", 16.5],
            ["floor-board", 16.5],
            ["floor-board", 16.5],
            ["end-floor", 13.5],
            ["end-floor", 13.5],
          ],
        }),
      ],
      assumed: ['1/8" lost to each saw cut'],
      unplaced: ["drip-strip / 1"],
      proof: FIRST,
      stops: [],
      onHandAfter: "",
    },
  ],
  panels: [
    {
      stock: "ply",
      title: 'Plywood 3/4", exterior',
      sheets: [
        panel("4x8 sheet", 96, 48, [
          ["shelf", 0, 0, 46.5, 16.5],
          ["shelf", 46.625, 0, 46.5, 16.5],
          ["shelf-edge", 0, 16.625, 46.5, 2],
          ["shelf-edge", 46.625, 16.625, 46.5, 2],
          ["back", 0, 18.75, 60, 12],
          ["gusset", 60.125, 18.75, 8, 8],
          ["gusset", 68.25, 18.75, 8, 8],
          ["tall-strip", 77, 18.75, 4, 29],
        ]),
      ],
      assumed: ['1/8" lost to each saw cut', "cuts run from edge to edge"],
      unplaced: [],
      proof: PROVEN,
      onHandAfter: "",
    },
  ],
  shopping: {
    rows: [
      {
        aisle: "boards",
        what: `2x4, ${CEDAR}`,
        count: 1,
        unit: "8' board",
        key: "boards/2x4/2438.4",
        each: "$11.20",
        total: "$11.20",
        note: "",
      },
      {
        aisle: "boards",
        what: `2x2, ${CEDAR}`,
        count: 1,
        unit: "8' board",
        key: "boards/2x2/2438.4",
        each: "$6.85",
        total: "$6.85",
        note: "",
      },
      {
        aisle: "boards",
        what: `1x6, ${CEDAR}`,
        count: 3,
        unit: "8' board",
        key: "boards/1x6/2438.4",
        each: "$9.40",
        total: "$28.20",
        note: "",
      },
      {
        aisle: "boards",
        what: `1x4, ${CEDAR}`,
        count: 4,
        unit: "8' board",
        key: "boards/1x4/2438.4",
        each: "$7.40",
        total: "$29.60",
        note: "one more if the old ones are split",
      },
      {
        aisle: "sheets",
        what: 'plywood 3/4", exterior',
        count: 1,
        unit: "4x8 sheet",
        key: "sheets/plywood/2438.4/1219.2",
        each: "$48.00",
        total: "$48.00",
        note: "",
      },
      {
        aisle: "fasteners",
        what: '#8 x 1-5/8", coated',
        count: 2,
        unit: "box of 100",
        key: "fasteners/deck-mid/100",
        each: "$8.10",
        total: "$16.20",
        note: "138 needed",
      },
      {
        aisle: "finish",
        what: "outdoor-oil",
        count: 1,
        unit: "1 qt tin",
        key: "finish/outdoor-oil/1 qt",
        each: null,
        total: null,
        note: "two coats on 41 sqft",
      },
      {
        aisle: "liner",
        what: "pond-liner, 5' wide",
        count: 1,
        unit: "7' off the roll",
        key: "liner/pond-liner/2133.6",
        each: "$10.50",
        total: "$10.50",
        note: "",
      },
    ],
    onHand: ['1 of 54" 2x4', '1 of 41" 2x2'],
    subtotal: "$150.55",
    tax: "$10.54",
    taxOf: null,
    total: "$161.09",
    budget: "$160.00",
    carry: { count: 10, longest: inches(96), weight: "52 lb (24 kg)" },
    withoutPrice: ["outdoor-oil"],
    pile: [
      { stock: "2x4", count: 1, length: inches(54), width: null, pieces: 6, saves: "$3.20" },
      { stock: "2x2", count: 1, length: inches(41), width: null, pieces: 1, saves: null },
    ],
    left: { amount: "$1.09", over: true },
  },
  fasteners: [
    {
      what: '#8 x 1-5/8"',
      count: 138,
      joints: [
        "side and end into leg: 2 at each crossing",
        "floor-board into ledger: 2 at each crossing",
        "cap-side and cap-end into leg: 1 at each crossing",
      ],
      holes: 'pilot 1/8"',
    },
    { what: '#8 x 2"', count: null, joints: ["shelf into leg: 2 at each end"], holes: "" },
  ],
  joints: [
    {
      title: "side face into leg face",
      what: '#8 x 1-5/8"',
      pattern: "2 at each crossing",
      holes: 'pilot 1/8"',
      crossings: 8,
      screws: 16,
      setOut: [
        {
          part: "side",
          mark: "C",
          pieces: [1, 2].flatMap((n) => [`side / in front of legs / ${n}`, `side / behind legs / ${n}`]),
          screws: 4,
          grids: [
            {
              on: "face",
              along: { from: "end", which: "each", at: [inches(1.75)], words: 'from each end: 1-3/4"' },
              across: {
                from: "edge",
                which: "either",
                at: [inches(1.375), inches(4.125)],
                words: 'from either edge: 1-3/8" and 4-1/8"',
              },
            },
          ],
        },
      ],
      place: at(58),
    },
  ],
  square: [
    {
      of: "ring",
      name: "cap",
      diagonal: inches(53.875),
      sides: [inches(50), inches(20)],
      count: 1,
      words: "cap, from outside corner to outside corner",
    },
  ],
  rings: [{ name: "cap", members: "cap-side, cap-end, cap-side, cap-end", state: "closes" }],
  boxes: [
    {
      name: "trough",
      rows: [
        { label: "Inside", value: '45" x 15", filled 8-3/4" deep' },
        { label: "Volume", value: "3.4 cuft (97 L)" },
        { label: "Weight, filled", value: "dry 119 lb, moist 187 lb, saturated 256 lb" },
        { label: "On the floor", value: "uses 54 of the 57 psf you typed" },
        { label: "Push on the long side", value: "27 psf at the bottom, with the drain blocked" },
      ],
      caution: "An estimate for small builds; local code and a licensed professional decide.",
    },
  ],
  musts: [
    { rule: 'rim-height at most 32"', because: "small children must reach the soil", state: 'it is 30"' },
  ],
  tools: [
    {
      key: "miter",
      what: "miter saw",
      uses: ["miters of cap-side and cap-end, 45°"],
      reach: ["miter 45°"],
      have: "yes",
      instead: "",
    },
    {
      key: "stapler",
      what: "staple gun",
      uses: ["the liner"],
      reach: [],
      have: "no",
      instead: "round-headed tacks, driven with a light hammer",
    },
    {
      key: "tape",
      what: "tape",
      uses: [],
      reach: [],
      have: "unsaid",
      instead: "a stick on which the lengths are marked",
    },
  ],
  bits: [
    {
      kind: "pilot",
      what: '1/8" bit',
      holes: 92,
      uses: ["side into leg"],
      source: "as the plan says",
      assumed: "",
    },
    {
      kind: "driver",
      what: "a bit that fits the heads",
      holes: null,
      uses: [],
      source: "",
      assumed: "the drive of the screws is not said",
    },
  ],
  yard: [{ stock: "2x4", thickness: inches(1.5), width: inches(3.5) }],
  finishes: [
    {
      what: "outdoor-oil",
      parts: ["C side", "A leg"],
      area: { m2: 3.81, text: "41 sqft (3.8 m2)" },
      coats: 2,
      amount: { litres: 1.24, text: "1.3 qt (1.2 L)" },
      dries: "12 h",
      notes: ["what touches other wood is left out: 9 sqft"],
      assumed: ["end grain is taken to drink 3 times what a face does"],
      place: at(64),
    },
  ],
  linings: [
    {
      what: "pond-liner",
      box: "trough",
      cuts: [{ what: "one sheet", count: 1, length: inches(68), width: inches(38) }],
      notes: ['fold 3" over at the top, and staple it above the soil, every 3"'],
      assumed: ['staples 2" to 4" apart; from memory'],
      place: at(63),
    },
  ],
  weight: { kg: 24.5, text: "54 lb (24.5 kg)" },
  steps: [
    {
      ...IDLE,
      number: 1,
      title: "Oil every piece but the floor and let it dry",
      lines: ["coats side, end, leg, cap", "takes 40 min, then wait 12 h"],
      coats: ["C side, A leg: outdoor-oil, 2 coats"],
      takes: { minutes: 40, text: "40 min" },
      wait: { minutes: 720, text: "12 h" },
      place: at(70),
    },
    {
      ...IDLE,
      number: 2,
      title: "Build the two ends flat on the ground",
      lines: ["uses leg, end, end-ledger", "takes 45 min, 1 person"],
      fresh: [{ mark: "A", part: "leg", pieces: pieces("leg", 4), count: 4 }],
      joins: [{ title: "end into leg", what: '#8 x 1-5/8"', screws: 16, holes: 'pilot 1/8"' }],
      square: ["the feet, from outside corner to outside corner"],
      tools: ["drill", "square"],
      people: 1,
      takes: { minutes: 45, text: "45 min" },
      place: at(73),
    },
    {
      ...IDLE,
      number: 3,
      title: "Stand the ends up and fix the sides",
      lines: ["uses side, ledger", "takes 1 h, 2 people"],
      fit: ["drip-strip: hold it where it goes, mark it and cut it"],
      linings: ["trough with pond-liner"],
      people: 2,
      lift: "an end with its legs, 18 lb",
      place: at(76),
    },
  ],
  stepsProposed: false,
  sittings: [
    {
      from: 1,
      to: 1,
      takes: { minutes: 40, text: "40 min of work" },
      wait: { minutes: 720, text: "12 h" },
      overnight: true,
    },
    { from: 2, to: 3, takes: null, wait: null, overnight: false },
  ],
  care: [{ text: "Tighten the screws after the first dry summer.", source: "common practice" }],
  cautions: [
    { text: "Wear eye and ear protection at the saw.", source: "common practice" },
    {
      text: "Dust of western redcedar can make breathing hard: work outdoors or with a mask.",
      source: "from memory",
    },
    {
      text: 'Pieces under 6" are cut from a long board, and the board is clamped.',
      source: "common practice",
    },
    {
      text: "Oily rags can heat themselves until they burn: lay them flat outdoors, or drown them in water.",
      source: "common practice",
    },
  ],
  holds: [
    {
      kind: "board",
      what: "floor-board, the worst of 10",
      load: { value: 26.3, unit: "kg", text: "58 lb" },
      limit: { value: 46.7, unit: "kg", text: "103 lb" },
      uses: 0.5631,
      state: "within",
      place: at(44),
    },
    {
      kind: "wall",
      what: "side, as a wall of trough",
      load: { value: 20, unit: "kg", text: '44 lb, bends 1/8"' },
      limit: { value: 16, unit: "kg", text: '35 lb, a bend of 1/16"' },
      uses: 1.25,
      state: "bends too far",
      place: at(40),
    },
    {
      kind: "joint",
      what: "side face into leg face: 2 screws, loaded across",
      load: { value: 9, unit: "kg", text: "20 lb" },
      limit: { value: 0, unit: "kg", text: "nothing" },
      uses: null,
      state: "claims nothing",
      place: at(61),
    },
    {
      kind: "foot",
      what: "leg, the foot that presses hardest",
      load: { value: 120, unit: "kg", text: "265 lb" },
      limit: null,
      uses: null,
      state: "no limit typed",
      place: null,
    },
  ],
  taken: [{ text: "What stands outdoors is taken as wet, and weaker.", source: "NDS Supplement 2018" }],
  holdsCaution: "An estimate, not approval.",
  roots: [
    {
      crop: "lettuce",
      box: "trough",
      here: '9-1/4" deep',
      wants: '6" to 8" deep',
      ground: '18" to 24" deep',
      state: "within",
      source: "from memory",
    },
  ],
  gaps: [
    {
      row: "10 of floor-board",
      built: { mm: 6.35, text: '1/4"', other: "6 mm" },
      wettest: { mm: -1.5875, text: '-1/16"', other: "-2 mm" },
      driest: { mm: 7.9375, text: '5/16"', other: "8 mm" },
      where: "in wet soil",
      place: at(44),
    },
  ],
  built: [
    {
      date: "2026-05-09",
      by: "Ms Okoro's group",
      measured: [
        {
          what: "rim-height",
          planned: { value: 762, unit: "mm", text: '30"' },
          built: { value: 698.5, unit: "mm", text: '27-1/2"' },
          because: "the wall leans",
        },
      ],
      boards: [{ planned: "1x6", used: "fir-1x6", because: "" }],
      changed: ["Two more screws in each corner"],
      wear: [{ date: "2027-04-01", words: "The lower slat is soft" }],
      place: at(60),
    },
  ],
};

/** A sheet with nothing on it. */
export const empty: SheetData = {
  ...trough,
  title: "Nothing yet",
  facts: [],
  notes: [],
  problems: [],
  accepted: [],
  notChecked: [],
  overall: null,
  pieces: [],
  cutList: [],
  boards: [],
  panels: [],
  shopping: {
    rows: [],
    onHand: [],
    pile: [],
    left: null,
    subtotal: null,
    tax: null,
    taxOf: null,
    total: null,
    budget: null,
    withoutPrice: [],
    carry: null,
  },
  fasteners: [],
  joints: [],
  square: [],
  rings: [],
  boxes: [],
  musts: [],
  tools: [],
  bits: [],
  yard: [],
  finishes: [],
  linings: [],
  weight: null,
  steps: [],
  stepsProposed: false,
  sittings: [],
  care: [],
  cautions: [],
  holds: [],
  taken: [],
  holdsCaution: "",
  roots: [],
  gaps: [],
  built: [],
};
