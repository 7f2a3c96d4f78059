/** The sheet's own words in English: every heading, label and sentence that is not a plan's. Other languages have the same keys. */
import type { Language } from "../../checks";
import { briefly, cite, type Source } from "../../trade";
import { ENGLISH_NUMBERS } from "../../units";
import { SHOP_ENGLISH, type ShopWords } from "../../worked";
import { ENGLISH_BOOK } from "./english-book";
import { ENGLISH_BUILT } from "./english-built";
import { ENGLISH_CHANGES } from "./english-changes";
import { ENGLISH_DRAWINGS } from "./english-drawings";
import { ENGLISH_HOLDING } from "./english-holding";
import { ENGLISH_PLAN } from "./english-plan";
import { ENGLISH_SLIP } from "./english-slip";
import { ENGLISH_WOOD } from "./english-wood";
import { ENGLISH_WORK } from "./english-work";

/** On the sheet sources are cited without who reproduced them. */
const SHOP: ShopWords = { ...SHOP_ENGLISH, cite: (source: Source) => briefly(cite(source)) };

export const ENGLISH = {
  tag: "en",
  work: ENGLISH_WORK,
  /** The language in which the checks tell problems and what was not looked at: their words are not in this catalog. */
  messages: "en" as Language,
  numbers: ENGLISH_NUMBERS,
  plan: ENGLISH_PLAN,
  built: ENGLISH_BUILT,
  wood: ENGLISH_WOOD,
  holding: ENGLISH_HOLDING,
  drawings: ENGLISH_DRAWINGS,
  changes: ENGLISH_CHANGES,
  shop: SHOP,
  book: ENGLISH_BOOK,
  slip: ENGLISH_SLIP,

  /** What stands between a label and what it says, before a blank. */
  colon: ":",
  said: (what: string, how: string) => `${what}: ${how}`,
  /** Between things told on one line, each of several words. */
  between: "; ",
  /** Between the sides of a board or a sheet. */
  by: " x ",
  /** A piece by its identity, `leg / front left`: names of the plan, and words of the line that places it. */
  piece: (id: string) => id,

  /** `2 of 5`. */
  page: (page: number, of: number) => `${page} of ${of}`,
  tick: (what: string, done: string) => `${what}: ${done}`,
  drawing: (title: string) => `Drawing: ${title}`,

  headings: {
    drawing: "Drawing",
    about: "About this plan",
    problems: "Open problems",
    accepted: "Accepted, and why",
    notChecked: "Not looked at",
    cautions: "Before you start",
    tools: "Tools",
    bits: "Bits and holes",
    buying: "Buying trip",
    atTheYard: "Measure at the yard",
    kits: "Kits",
    cutList: "Cut list",
    boards: "Board layouts",
    panels: "Sheet layouts",
    offcuts: "Offcuts to keep",
    liners: "Liner and fabric",
    finish: "Finish",
    fasteners: "Screws and other fasteners",
    setOut: "Where the screws go",
    square: "Before you screw it tight",
    rings: "Rings",
    boxes: "Boxes",
    musts: "Rules of this plan",
    holding: "What it has to carry",
    roots: "The root room",
    gaps: "Gaps through the year",
    sittings: "When to stop",
    steps: "Order of work",
    notes: "Notes",
    built: "As built",
    care: "After it is built",
    stations: {
      mark: "First station: mark the boards",
      cut: "Second station: cut",
      drill: "Third station: drill",
      finish: "Fourth station: finish",
      assemble: "Fifth station: put together",
    },
    answers: "Answers",
  },

  /** How lengths, marks and pictures are to be read. */
  keys: {
    cutList:
      "Lengths are tip to tip, before the ends are cut. Write the mark on each piece as it comes off the saw.",
    boards:
      "Hook the tape on the left end: every mark is counted from there. The short double line stands on the waste side of a mark, where the saw runs. Lengths are to scale, widths are not.",
    boardsInText:
      "Hook the tape on the left end: every mark is counted from there. The saw runs on the waste side of a mark. xxx is waste, /// is bad wood.",
    panels: "To scale. What is hatched is left over.",
    panelsInText: "Places are counted from the lower left corner of the sheet.",
    setOut:
      "Measured on the piece that is screwed through. Left, right, front, back, top and bottom are those of the finished thing.",
    yard: "Boards differ. Measure one of each before you buy, and write down what it really is: lengths that lean on a board's width or thickness change with it.",
    kits: (make: number) =>
      `The plan is built ${make} times. Lay the pieces of each kit together as they are cut.`,
    lengthsToFind:
      "Each length follows from others. Work it out from the drawing and the rule beside it, and write it down; the answers are at the end.",
    proposed: "The plan gives no order. This one follows from its joints; your own may be better.",
    forOne: (make: number) => `For one of the ${make} that the plan makes.`,
    newIsDark: "In the small drawings, what is new is dark.",
  },

  noProblems: (accepted: boolean, left: boolean): string => {
    const found = `No ${accepted ? "open " : ""}problem that Sawbuck can name was found.`;
    if (accepted && left) return `${found} What was accepted, and what it did not look at, stand below.`;
    if (accepted) return `${found} What was accepted stands below.`;
    return left ? `${found} What it did not look at stands below.` : found;
  },
  nothingListed:
    "Nothing is listed. Sawbuck looks only for the mistakes it can name; the rest is for your own eyes.",
  classes: { error: "Error", hazard: "Hazard", warning: "Warning", hint: "Hint" },
  line: (line: number) => `line ${line}`,
  lineOf: (file: string, line: number) => `${file}, line ${line}`,
  cure: "Cure",
  assumed: "Assumed",
  see: "See",
  acceptedBecause: "Accepted because",

  /** Heads and labels of tables. */
  columns: {
    tick: "Cut",
    got: "Got",
    mark: "Mark",
    count: "No.",
    part: "Part",
    length: "Length",
    rip: "Ripped to",
    ripLabel: "ripped to",
    ends: "Ends and notes",
    soldAs: "Sold as",
    what: "What",
    note: "Note",
    each: "Each",
    eachLabel: "each",
    together: "Together",
    togetherLabel: "together",
    holes: "Holes",
    where: "Where",
    piece: "Piece",
    screws: "Screws",
    along: "Along it",
    across: "Across it",
    ring: "Ring",
    goesRound: "Goes round",
    comesOut: "How it comes out",
    rule: "How it is found",
    inOne: "In one",
    inAll: "In all",
    inKit: "In it",
    bit: "Bit",
    hole: "For",
    stock: "Board",
    takenAs: "Taken as",
    measured: "As measured",
  },

  /** Labels of terms. */
  labels: {
    fresh: "New",
    joins: "Join",
    coats: "Finish",
    linings: "Line",
    fit: "Cut to fit now",
    square: "Check",
    tools: "Tools",
    lift: "Lift",
    time: "Hands and time",
    parts: "On",
    area: "One coat",
    areaEach: "One coat of one",
    coatCount: "Coats",
    amount: "In all",
    dries: "Dries",
  },
  bits: {
    pilot: "pilot hole",
    clearance: "clearance hole",
    drain: "drain hole",
    countersink: "countersink",
    driver: "driver",
  },
  people: (n: number) => `${n} ${n === 1 ? "person" : "people"}`,
  thenWait: (time: string) => `then wait ${time}`,
  stepNo: (n: number) => `Step ${n}`,
  stepsNo: (from: number, to: number) => `Steps ${from} to ${to}`,
  waitAfter: (time: string) => `Then wait ${time}.`,
  overnight: "Stop here overnight.",
  notThere: "(not among the tools of this plan)",
  ready: "ready",
  instead: (how: string) => `Without it: ${how}`,
  thickness: "thickness",
  width: "width",
  inBox: (what: string, box: string) => (box === "" ? what : `${what} in ${box}`),
  sheetOf: (count: number, size: string, other: string) =>
    `${count > 1 ? `${count} of ` : ""}${size} (${other})`,

  inches: "inches",
  millimetres: "millimetres",
  unitsTo: (system: string, mark: string) => (mark === "" ? system : `${system} to ${mark}`),
  overall: (width: string, depth: string, height: string) =>
    `Over all: ${width} wide, ${depth} deep, ${height} high.`,
  pieces: (n: number) => `${n} piece${n === 1 ? "" : "s"}`,
  alone: (assembly: string) => `${assembly}, an assembly, alone`,
  hands: { left: "left", right: "right" },
  notKnown: "not known",
  shortPoint: (length: string) => `short point ${length}`,
  cutAlike: (label: string, count: number) => `${label}, ${count} cut alike`,
  allowedFor: (what: string) => `Allowed for: ${what}.`,
  noWoodFor: (pieces: string) => `No wood found for: ${pieces}.`,
  /** Lengths cut more than once, each with how many, marks and boards: for a stop on the saw. */
  stops: (stops: readonly string[]) => `Set a stop on the saw once for each length: ${stops.join("; ")}.`,
  stop: (length: string, count: number, marks: string, boards: number) =>
    `${count} of ${length}${marks === "" ? "" : ` (${marks})`} from ${boards} board${boards === 1 ? "" : "s"}`,
  nameRests: "Write its name on each.",
  /** What a shop file then says of each stock. */
  onHandAfter: "For the next plan, your shop file then says:",
  noPrice: "no price",
  carry: (count: number, longest: string, weight: string) => {
    const said = [
      count === 1 ? "1 board or sheet" : `${count} boards and sheets`,
      longest === "" ? "" : `the longest ${longest}`,
      weight === "" ? "" : `${weight} in all, more where the wood is wet`,
    ];
    return `To carry home: ${said.filter((one) => one !== "").join(", ")}.`;
  },
  beforeTax: "Before tax",
  tax: "Tax",
  /** That of a yard. */
  taxOf: (yard: string) => (yard === "" ? "Tax of the yard" : `Tax (${yard})`),
  total: "Total",
  budget: "Budget",
  withoutPrice: (what: string) => `Without a price, so not in the total: ${what}.`,
  leftOfBudget: "Left of the budget",
  overBudget: "Over the budget",
  fromPile: "From the pile:",
  /** Boards or sheets of one size, `2 of 41" 2x4`; `saves` is empty where there is no price. */
  piled: (what: string, pieces: number, saves: string) =>
    `${what}, for ${pieces} piece${pieces === 1 ? "" : "s"}${saves === "" ? "" : `; saves about ${saves}`}`,
  kit: (n: number, of: number) => (n === 0 ? `Each of the ${of} kits` : `Kit ${n} of ${of}`),
  allKits: (make: number) => `All ${make} kits together`,
  inKit: "in it",
  andFasteners: (what: string) => `And ${what}.`,
  because: (reason: string) => ` because ${reason}`,
  screwsInAll: (screws: number, crossings: number) =>
    `${screws} screw${screws === 1 ? "" : "s"} at ${crossings} crossing${crossings === 1 ? "" : "s"}`,
  screws: (count: number) => `${count} screw${count === 1 ? "" : "s"}`,
  /** On each of several pieces, under the head of a column that says of what. */
  onEach: (count: number) => `${count}\u00a0each`,
  onThe: (side: "edge" | "end", words: string) => `on the ${side}, ${words}`,
  andMore: (n: number) => `and ${n} more`,
  diagonals: (what: string, diagonal: string, other: string) =>
    `${what}: measure both diagonals: each ${diagonal} (${other}); equal means square.`,
  cut: "cut",
  bought: "got",
  done: "done",
  /** What a page with boxes to tick says of them; the numbers are put in for {left} and {all}. */
  leftToCut: "Left to cut: {left} of {all} pieces.",
  untick: "Untick everything",
  putBack: "Put the ticks back",
  notKept: "Ticks cannot be kept on this device: they are gone when the page is closed.",
};

export type SheetWords = typeof ENGLISH;
