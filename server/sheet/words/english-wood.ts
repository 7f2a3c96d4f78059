/** What the sheet says of wood: what it is, how it is cut, laid out and bought; and of the screws that hold it. */
import { marksWords } from "../../checks/set-out-words";
import { setOutWords } from "../../checks/writing";
import { briefly } from "../../trade";
import type { MarkedFrom, Material, ToolSetting } from "../../worked";

const REACH: Readonly<Record<ToolSetting["what"], string>> = {
  miter: "miter",
  bevel: "bevel",
  "longest cut along": "longest cut along",
  "widest cut across": "widest cut across",
  "thickest cut": "thickest cut",
};

export const ENGLISH_WOOD = {
  materials: {
    thick: (length: string) => `${length} thick`,
    /** `treated` and the like, as plans write it. */
    condition: (condition: string) => condition,
    sizeFrom: ({ source }: Material) => briefly(source),
  },

  cuts: {
    longToLong: "long point to long point",
    square: "square",
    angled: (miter: string | undefined, bevel: string | undefined) =>
      [miter && `${miter} miter`, bevel && `${bevel} bevel`].filter(Boolean).join(" and "),
    bothEnds: (end: string) => `${end} both ends`,
    ends: (left: string, right: string) => `left end ${left}, right end ${right}`,
    longPoints: (edges: "one" | "opposite") =>
      `long points on ${edges === "one" ? "one edge" : "opposite edges"}`,
    /** `left` is empty where nothing is left on. */
    toFit: (left: string) => `cut to fit when the rest stands${left === "" ? "" : `, ${left} is left on`}`,
    /** `where` as plans write it: "at left end", or "from left" with a distance, which is empty for an end. */
    notch: (kind: "notch" | "dado", along: string, into: string, where: string, distance: string) =>
      `${kind} ${along} along, ${into} in, ${distance === "" ? where : `${distance} ${where}`}`,
    mirror: (hand: "left" | "right") =>
      `${hand} piece: the mirror image of the ${hand === "left" ? "right" : "left"} one`,
    pointsAssumed: "the plan does not say between which points; long point to long point is taken",
    spares: (n: number) => `and ${n} spare`,
  },

  layouts: {
    board: (length: string) => `${length} board`,
    boardOnHand: (length: string) => `on hand, ${length}`,
    sheet: (size: string) => `${size} sheet`,
    sheetOnHand: (size: string) => `on hand, ${size} sheet`,
    spare: (part: string) => `${part} (spare)`,
    kerf: (kerf: string, assumed: boolean) =>
      `${kerf} is lost to each saw cut${assumed ? " (the plan gives no kerf)" : ""}`,
    trim: (trim: string, assumed: boolean) =>
      `${trim} is cut off one end of each bought board to square it${assumed ? " (the plan does not say)" : ""}`,
    spares: (n: number) => `${n} spare ${n === 1 ? "piece is" : "pieces are"} laid out too`,
    useUp: "what is on hand is used first",
    keep: "what is on hand is kept for what nothing sold can do",
    wholeWidth: "a ripped piece takes the whole width of its board here",
    sharedWidth:
      "ripped pieces of one length lie side by side where the board is wide enough: cut to length first, then rip",
    edgeToEdge: "every cut goes from edge to edge",
    tipToTip:
      "a piece with a slanted end is laid out from tip to tip: two such ends made by one saw cut are not counted on",
    sideBySide: (counts: readonly (readonly [count: number, part: string])[]): string =>
      `${counts.map(([n, part]) => `${n} ${part}`).join(", ")} side by side`,
    firstAnswer: "this is a first answer, and a cheaper way may exist",
    /** What is known of a layout. */
    cheapest: "checked: with these saw cuts, trims, spares and prices, no cheaper way to cut it exists",
    leastWood:
      "checked: with these saw cuts, trims and spares, no way to cut it takes less wood; a price is missing",
    withinMoney: (most: string) =>
      `with these saw cuts, trims, spares and prices, it costs at most ${most} over the cheapest possible`,
    withinWood: (most: string) =>
      `with these saw cuts, trims and spares, it takes at most ${most} more than the least possible; a price is missing`,
    /** What is left over, by its number among those of its stock. */
    rest: (stock: string, from: number, to: number) =>
      from === to
        ? `${stock} rest ${from}`
        : `${stock} rests ${from} ${to === from + 1 ? "and" : "to"} ${to}`,
  },

  /** By the aisle's name in the data. */
  aisles: {
    boards: "boards",
    sheets: "sheets",
    fasteners: "fasteners",
    finish: "finish",
    liner: "liner",
  } as Readonly<Record<string, string>>,
  boxOf: (count: number) => `box of ${count}`,
  pile: (count: number, length: string, stock: string) => `${count} of ${length} ${stock}`,

  holes: {
    pilot: (size: string) => `pilot ${size}`,
    clearance: (size: string) => `clearance ${size}`,
    drain: (size: string) => `drain holes ${size}`,
  },
  offSquare: (angle: string) => `${angle} off square`,
  /** `spacing` is empty where the line gives none. */
  setOut: (pattern: string, spacing: string) => setOutWords(pattern, spacing),
  marks: (from: MarkedFrom, lengths: readonly string[]) => marksWords(from, lengths),

  reach: REACH,
  asDrawn: (angle: string) => `(${angle} as drawn)`,
  /** A hole for a joint or in a box, and how far it goes. */
  holeDeep: (where: string, depth: string) => `${where}, ${depth} deep`,
};
