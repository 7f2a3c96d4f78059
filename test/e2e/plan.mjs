// What the scenarios know of the sample plan: its text as it is, the changes they type, and what must be read then.

export const PLAN = {
  file: "salad-trough.sawbuck",
  title: "Salad trough",

  /** A part, and what its hover must say. */
  part: { name: "leg", line: "part leg of heart-2x4", hover: /29-1\/4"/ },

  /** A name used in one line and made in another. */
  use: { line: "fasten side into ledger", name: "ledger", madeAt: "part ledger of" },

  /** A screw that is too long. */
  screw: {
    line: 'fasten side face into leg face, 3 #8 x 2"',
    find: '2"',
    type: '4"',
    hoverOn: "#8",
    code: "screw-pokes-through",
    message: /proud/,
    page: /screw/i,
  },

  /** Too few screws for what hangs on them: the load and what they hold are both told, and the number that would do. */
  load: {
    line: 'fasten side face into leg face, 3 #8 x 2"',
    find: "3 #8",
    type: "1 #8",
    hoverOn: "#8",
    code: "screw-overloaded",
    message: /61 lb hangs on one #8 x 2" screw .* can hold 27 lb/,
    cure: /Use 3 screws there instead of 1/,
  },

  /** A name that nothing has. */
  name: {
    line: "fasten floor-board into ledger",
    find: "floor-board",
    type: "flor-board",
    code: "unknown-name",
    message: /floor-board/,
    title: "Write “floor-board”",
  },

  /** What is let stand of the screw that is too long: the line that comes, and the reason typed behind it. */
  accept: {
    title: "accept screw-pokes-through on side",
    begun: "accept screw-pokes-through on side because ",
    reason: "the tips are filed flush",
  },

  /** A length in a line, what is offered for it, and the line that is made of it. */
  measured: {
    line: "place leg upright",
    find: "46-1/2",
    title: "Name this measurement: leg-width",
    made: 'measure leg-width = 46-1/2"',
  },

  /** A piece that is seen in the middle of its outline from the front, its lines, and the measure over all that follows `measure`. */
  drawn: {
    piece: "leg / front left",
    placedAt: "place leg upright",
    balloon: "B",
    partOf: "part side of",
    other: "side / in front of legs / 1",
    first: "part leg of",
    before: '30"',
    after: '28"',
  },

  /** A box to tick, and what is left to cut before and after. */
  ticked: {
    id: "cut/leg / front left",
    other: "cleat",
    before: /^Left to cut: (\d+) of \1 pieces/,
    after: /^Left to cut: (?!(\d+) of \1 )/,
  },

  /** A change that other parts follow than those that are ticked, and what is then read over all. */
  apart: { line: 'measure overhang = 1"', find: '1"', type: '2"', after: '52" wide' },

  /** What is read in millimetres in the row that follows the measure, and over all. */
  metric: { row: /743 mm/, overall: "762 mm" },

  /** A measure that the cut list follows. */
  measure: {
    line: 'measure rim-height = 30"',
    find: '30"',
    type: '28"',
    row: /leg/,
    before: /29-1\/4"/,
    after: /27-1\/4"/,
  },

  /** A length that follows from others with what it comes to, how many there are, and what stands above the plan. */
  hints: {
    line: "part floor-board of 1x4",
    behind: "overall depth of legs",
    before: '= 16-1/2"',
    type: ' - 1"',
    after: '= 15-1/2"',
    count: "10 of them",
    lens: "13 boards",
    withoutPrices: /\d+ prices missing/,
    problems: /^\d+ problems?$/,
  },

  /** What is read of it in French. */
  french: {
    language: "Plan Sawbuck",
    lens: "13 planches",
    hover: /Longueur 29-1\/4"/,
    problem: /dépasse de/,
    openSheet: "Ouvrir la feuille d’atelier",
    cutList: "Fiche de débit",
  },
};

// A plan that takes a measure from a file beside it, and a name that is something else there already.
export const SHARED = {
  plan: "tree-seat.sawbuck",
  file: "yard-measures.sawbuck",
  measure: "seat-height",
  line: "part outer-leg of ground-4x4",
  uses: "length seat-height",
  taken: { name: "slat", says: /“slat” is a part already/ },
};
