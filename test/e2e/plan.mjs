// What the scenarios know of the sample plan: its text as it is, the changes they type, and what must be read then.

export const PLAN = {
  file: "salad-trough.sawbuck",
  title: "Salad trough",

  /** A part, and what its hover must say. */
  part: { name: "leg", line: "part leg 4 of 2x4", hover: /29-1\/4"/ },

  /** A name used in one line and made in another. */
  use: { line: "fasten side face into ledger", name: "ledger", madeAt: "part ledger 2 of" },

  /** A screw that is too long. */
  screw: {
    line: 'fasten side face into leg face, 2 #8 x 1-5/8"',
    find: '1-5/8"',
    type: '4"',
    hoverOn: "#8",
    code: "screw-pokes-through",
    message: /proud/,
    page: /screw/i,
  },

  /** A name that nothing has. */
  name: {
    line: "fasten floor-board face into ledger face",
    find: "floor-board",
    type: "flor-board",
    code: "unknown-name",
    message: /floor-board/,
  },

  /** A measure that the cut list follows. */
  measure: {
    line: 'measure rim-height = 30"',
    find: '30"',
    type: '28"',
    row: /leg/,
    before: /29-1\/4"/,
    after: /27-1\/4"/,
  },
};
