// What the scenarios know of the sample plan: its text as it is, the changes they type, and what must be read then.

export const PLAN = {
  file: "salad-trough.sawbuck",
  title: "Salad trough",

  /** A part, and what its hover must say. */
  part: { name: "leg", line: "part leg of 2x4", hover: /29-1\/4"/ },

  /** A name used in one line and made in another. */
  use: { line: "fasten side into ledger", name: "ledger", madeAt: "part ledger of" },

  /** A screw that is too long. */
  screw: {
    line: 'fasten side into ledger, #8 x 1-5/8"',
    find: '1-5/8"',
    type: '4"',
    hoverOn: "#8",
    code: "screw-pokes-through",
    message: /proud/,
    page: /screw/i,
  },

  /** A name that nothing has. */
  name: {
    line: "place end-floor front to back",
    find: "end-floor",
    type: "end-flor",
    code: "unknown-name",
    message: /end-floor/,
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
