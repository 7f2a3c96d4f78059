/** What a comparison of two plans says, in English. */

export const ENGLISH_CHANGES = {
  /** Over the page; the plan's title. */
  of: (title: string) => `What changed: ${title}`,
  /** Under it: the names of both files. */
  from: (old: string, now: string) => `from ${old} to ${now}`,
  isNew: (file: string) => `${file} is new`,
  isGone: (file: string) => `${file} is gone`,
  several: (plans: number) => `What changed: ${plans} plans`,
  nothing:
    "Nothing of the thing changed: pieces, joints, boards, cost, work and problems are the same. Lengths are compared to the marks of the tape.",
  before: "Before",
  now: "Now",
  planned: "As planned",
  built: "As built",
  marked: "What is gone, new or changed has a heavy outline and a tint.",

  headings: {
    drawings: "Before and now",
    plan: "The plan",
    pieces: "Pieces",
    buying: "To buy and to cut",
    joining: "Joints",
    more: "What else",
    steps: "Order of work",
    problems: "Problems",
    notChecked: "Not looked at",
  },

  leads: { gone: "Gone", new: "New", changed: "Changed", moved: "Moved", named: "Renamed" },
  /** `leg, 4 pieces of 2x4, 28-1/2"`; the length is empty where it is not known. */
  row: (part: string, pieces: string, stock: string, length: string) =>
    `${part}, ${pieces} of ${stock}${length === "" ? "" : `, ${length}`}`,
  named: (now: string, old: string) => `${now}, which was ${old}`,
  /** Before and now. */
  was: (old: string, now: string) => `${old} → ${now}`,
  come: (pieces: string) => `new: ${pieces}`,
  gone: (pieces: string) => `gone: ${pieces}`,
  /** So many of the pieces of a row. */
  some: (n: number, of: number) =>
    n < of ? `${n} of ${of}` : of === 1 ? "it" : of === 2 ? "both" : `all ${of}`,
  moved: (some: string, way: string) => `${some} moved ${way}`,
  turned: (some: string) => `${some} turned otherwise`,
  ways: {
    left: (length: string) => `${length} to the left`,
    right: (length: string) => `${length} to the right`,
    front: (length: string) => `${length} to the front`,
    back: (length: string) => `${length} to the back`,
    up: (length: string) => `${length} up`,
    down: (length: string) => `${length} down`,
  },
  cutOtherwise: "Cut otherwise",
  /** Boards or sheets of one stock. */
  cut: (old: number, now: number, same: number) =>
    old === now ? `${now - same} of ${now}` : `${old} → ${now}, ${same} just as before`,

  title: "Title",
  overall: { width: "Width over all", depth: "Depth over all", height: "Height over all" },
  countAt: (count: number, each: string) => `${count} at ${each}`,
  fromPile: "From the pile",
  withoutPrice: "Without a price",
  toCarry: "To carry home",
  note: "Note",
  order: "Order of the steps",
  fields: {
    count: "how many",
    stock: "of",
    length: "length",
    measured: "measured",
    width: "width",
    thickness: "thickness",
    ends: "ends",
    shortPoint: "short point",
    note: "note",
  },
  noLonger: "No longer told",
  newlyTold: "New",
  noLongerAccepted: "No longer accepted",
  newlyAccepted: "Accepted now",
};
