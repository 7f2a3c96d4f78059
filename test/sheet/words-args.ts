/** What the functions of the sheet's words are called with in tests, and a walk through a catalog. */

import { known, MISTAKE } from "../../server/plan";
import type { SheetWords } from "../../server/sheet/words";
import { COMMON_PRACTICE, careRows, cautionRows, FROM_MEMORY, species, tools } from "../../server/trade";
import { LENGTH, roughly, SIXTEENTHS } from "../../server/units";

/** A text or a function of a catalog, with the names that lead to it. */
export interface Leaf {
  readonly path: string;
  readonly value: string | ((...args: never[]) => unknown);
}

export function leavesOf(words: object, before = ""): Leaf[] {
  return Object.entries(words).flatMap(([key, value]): Leaf[] => {
    const path = before === "" ? key : `${before}.${key}`;
    if (typeof value === "string" || typeof value === "function")
      return [{ path, value: value as Leaf["value"] }];
    return leavesOf(value as object, path);
  });
}

/** Each thing a function can be called with; where it is not told here, a text for each argument. */
export const argumentsOf = ({ path, value }: Leaf): readonly (readonly unknown[])[] =>
  ARGUMENTS[path] ??
  (typeof value === "function"
    ? [Array.from({ length: value.length }, (_, i) => `§${String.fromCharCode(97 + i)}`)]
    : []);

/** What must be found in a text made of these arguments: texts that begin with a mark, and numbers that are one of them. */
export function wanted(args: readonly unknown[]): string[] {
  return args.flatMap((arg): string[] => {
    if (Array.isArray(arg)) return wanted(arg);
    if (typeof arg === "number") return [String(arg)];
    if (typeof arg === "object" && arg !== null) return wanted(Object.values(arg)).filter(isMarked);
    return typeof arg === "string" && arg.startsWith("§") ? [arg] : [];
  });
}

const isMarked = (text: string): boolean => text.startsWith("§");

/** Without an exact part, which no JSON holds. */
const INCH_LONG = roughly(LENGTH, 25.4);

/** Calls, with what is not a text's own argument given for what it is. */
const ARGUMENTS: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
  page: [[3, 7]],
  "numbers.withUnit": [["§", "lb"]],
  piece: [["leg / front left"]],
  noProblems: [
    [true, true],
    [true, false],
    [false, true],
    [false, false],
  ],
  "book.under": [[1], [3]],
  "book.count": (["error", "hazard", "warning", "hint"] as const).flatMap((kind) => [
    [kind, 1],
    [kind, 3],
  ]),
  "book.things": [[1], [3]],
  people: [[1], [3]],
  inBox: [
    ["§a", "§b"],
    ["§a", ""],
  ],
  sheetOf: [
    [3, "§b", "§c"],
    [2, "§b", "§c"],
  ],
  unitsTo: [
    ["§a", "§b"],
    ["§a", ""],
  ],
  "work.tinsOf": [
    [
      {
        tins: [
          { tin: { text: "§a", price: undefined }, count: 1 },
          { tin: { text: "§b", price: undefined }, count: 3 },
        ],
      },
      SIXTEENTHS,
    ],
  ],
  "work.openingOf": [
    [{ how: "whole", why: "no drain" }, SIXTEENTHS],
    [{ how: "whole", why: "lets water through" }, SIXTEENTHS],
    [{ how: "over gaps", gaps: 9, each: 3, diameter: INCH_LONG, apart: [INCH_LONG, INCH_LONG] }, SIXTEENTHS],
    [{ how: "over gaps", gaps: 1, each: 1, diameter: INCH_LONG, apart: [INCH_LONG, INCH_LONG] }, SIXTEENTHS],
    [
      {
        how: "over gaps",
        gaps: undefined,
        each: undefined,
        diameter: INCH_LONG,
        apart: [INCH_LONG, INCH_LONG],
      },
      SIXTEENTHS,
    ],
    [{ how: "over gaps", gaps: 0, each: 3, diameter: INCH_LONG, apart: [INCH_LONG, INCH_LONG] }, SIXTEENTHS],
    [{ how: "over holes", holes: known({ count: 4, diameter: INCH_LONG, grid: undefined }) }, SIXTEENTHS],
    [{ how: "over holes", holes: known({ count: 1, diameter: INCH_LONG, grid: undefined }) }, SIXTEENTHS],
    [{ how: "over holes", holes: MISTAKE }, SIXTEENTHS],
    [{ how: "unsaid" }, SIXTEENTHS],
  ],
  "work.staplesOf": [
    [{ staples: known(63), staplesApart: [INCH_LONG, INCH_LONG], stapleHeight: INCH_LONG }, SIXTEENTHS],
    [{ staples: MISTAKE, staplesApart: [INCH_LONG, INCH_LONG], stapleHeight: INCH_LONG }, SIXTEENTHS],
    [
      { staples: known(63), staplesApart: [INCH_LONG, INCH_LONG], stapleHeight: roughly(LENGTH, 0) },
      SIXTEENTHS,
    ],
  ],
  "work.time": [[40]],
  "work.coats": [[1], [3]],
  pieces: [[1], [3]],
  cutAlike: [["§a", 3]],
  stops: [[["§a", "§b"]]],
  "work.besideOnRoll": [[["§a", "§b"], "§c"]],
  "wood.layouts.sideBySide": [
    [
      [
        [2, "§a"],
        [1, "§b"],
      ],
    ],
  ],
  stop: [
    ["§a", 3, "§c", 2],
    ["§a", 2, "", 1],
  ],
  piled: [
    ["§a", 3, "§c"],
    ["§a", 1, ""],
  ],
  "wood.layouts.rest": [
    ["§a", 1, 1],
    ["§a", 2, 3],
    ["§a", 2, 5],
  ],
  carry: [
    [3, "§b", "§c"],
    [1, "", ""],
  ],
  kit: [[2, 3]],
  screwsInAll: [
    [4, 3],
    [1, 1],
  ],
  screwsOn: [
    [4, true],
    [1, false],
  ],
  onThe: [
    ["edge", "§b"],
    ["end", "§b"],
  ],
  andMore: [[1], [3]],
  "plan.limit": [
    ["§a", "§b"],
    ["§a", ""],
  ],
  "plan.kerf": [
    ["§a", "plan"],
    ["§a", "tools"],
    ["§a", "assumed"],
  ],
  "plan.must": [
    ["§a", true],
    ["§a", false],
  ],
  "plan.boxes.fill": [["dry"], ["moist"], ["saturated"]],
  "plan.boxes.source": [
    [{ document: "NDS", table: "wood screws", confidence: "secondary", via: "web pages" }],
  ],
  "plan.boxes.taken": [[125]],
  "holding.worst": [["§a", 10]],
  "holding.joint": [
    ["§a", 4, "screw", "across"],
    ["§a", 1, "screw", "pulled"],
    ["§a", 2, "nail", "pulled"],
    ["§a", 1, "bolt", "pulled"],
  ],
  "holding.tipping": (["itself", "narrow", "tall", "push", "seat", "load", "wind", "leaned"] as const).map(
    (by) => [by, "§a"],
  ),
  "holding.closed": [["§a"], [""]],
  "holding.percent": [[58]],
  "holding.times": [[12]],
  "holding.less": [[1]],
  "holding.little": [[10, "§b"]],
  "holding.taken.sag": [[240, 120]],
  "holding.taken.margin": [[2]],
  "holding.boards": [[3, "§b"]],
  "holding.liquid": [["§a gal"]],
  "plan.square.ring": [["§a", 3]],
  "work.assumed": [
    { kind: "spread", finish: "§a", smooth: { low: 200, high: 400 }, rough: { low: 100, high: 150 } },
    { kind: "spread", finish: "§a", smooth: { low: 200, high: 400 }, rough: undefined },
    { kind: "drying", hours: { low: 12, high: 48 } },
    { kind: "coats", coats: 3 },
    { kind: "end grain", times: { low: 2, high: 3 }, source: FROM_MEMORY },
    { kind: "rough wood", times: 2, source: FROM_MEMORY },
    { kind: "whole pieces", parts: ["§a", "§b"] },
    { kind: "fold", length: roughly(LENGTH, 50.8), source: FROM_MEMORY },
    { kind: "overlap", length: roughly(LENGTH, 152.4), source: COMMON_PRACTICE },
    { kind: "sloping sides" },
    { kind: "by its name", roll: "§a", holdsWater: true },
    { kind: "by its name", roll: "§a", holdsWater: false },
    { kind: "staples", least: roughly(LENGTH, 50.8), most: roughly(LENGTH, 101.6), source: FROM_MEMORY },
  ].map((one) => [one, SIXTEENTHS]),
  "wood.materials.condition": [["treated"], ["rough"]],
  "wood.materials.sizeFrom": [
    [{ source: "as measured", sizeFrom: { by: "measured" } }],
    [{ source: "as the plan says", sizeFrom: { by: "plan" } }],
    [
      {
        source: "as the plan says (no such panel in the table)",
        sizeFrom: { by: "plan, no such panel" },
      },
    ],
    [
      {
        source: "PS 20-20, dressed dry sizes: really 1 to 2 mm",
        sizeFrom: {
          by: "table",
          source: { document: "PS 20-20", table: "dressed dry sizes", confidence: "read" },
          really: { min: 1, max: 2, mark: " mm" },
        },
      },
    ],
  ],
  "wood.cuts.angled": [
    ["§a", "§b"],
    ["§a", undefined],
    [undefined, "§b"],
  ],
  "wood.cuts.longPoints": [["one"], ["opposite"]],
  "wood.cuts.toFit": [["§a"], [""]],
  "wood.cuts.notch": [
    ["notch", "§a", "§b", "at both ends", ""],
    ["dado", "§a", "§b", "from left", "§c"],
  ],
  "wood.cuts.mirror": [["left"], ["right"]],
  "wood.layouts.kerf": [
    ["§a", true],
    ["§a", false],
  ],
  "wood.layouts.trim": [
    ["§a", true],
    ["§a", false],
  ],
  "wood.layouts.spares": [[1], [3]],
  "wood.setOut": [["§a", "§b"]],
  "wood.marks": [
    ...(["left", "right", "front", "back", "bottom", "top", "each", "either"] as const).map((which) => [
      { from: "edge", which, point: false, mm: [] },
      ["§a", "§b", "§c"],
    ]),
    [{ from: "end", which: "left", point: true, mm: [] }, ["§a"]],
    [{ from: "face", which: "either", point: false, mm: [] }, ["§a"]],
  ],
  "drawings.handed": [
    ["§a", "left"],
    ["§a", "right"],
  ],
  "drawings.scale": [[8]],
  "drawings.marked": [["§a", "§b", 3]],
  "drawings.noAssembly": [
    ["§a", ["§b", "§c"]],
    ["§a", []],
  ],
  "drawings.holds": [["§a", ["§b", "§c"]]],
  "shop.listed": [[["§a", "§b", "§c"]]],
  "shop.joint.side": [
    ["§a", "face"],
    ["§a", "edge"],
    ["§a", "end"],
  ],
  "shop.joint.sides": [[["§a", "§b"]]],
  "shop.joint.title": [
    ["fasten", "§a", "§b", "§c"],
    ["glue", "§a", "", "§c"],
  ],
  "shop.joint.pattern": [
    ...(["in all", "each end", "along each", "each crossing"] as const).map((where) => [{ each: 2, where }]),
    [{ each: 2, where: "along it, spaced" }],
    [{ each: 2, where: "crossings", crossings: 7 }],
  ],
  "shop.titleOf": [
    [
      {
        title: "rail through slat into leg",
        entry: {
          kind: "fasten",
          first: [{ thing: { name: { text: "rail" } } }],
          through: [{ thing: { name: { text: "slat" } } }],
          into: [{ thing: { name: { text: "leg" } }, face: "end" }],
        },
      },
    ],
  ],
  "shop.tool": [],
  "shop.caution": cautionRows.map((row) => [row]),
  "shop.care": careRows.map((row) => [row]),
  "shop.wood": [[species("white-oak")]],
  "shop.cite": [[{ document: "NDS", table: "wood screws", confidence: "memory" }]],
  "shop.uses.notches": [[["notch", "dado"], "§b"]],
  "shop.uses.slants": [
    ["miter", ["§a", "§b"], "§c", undefined],
    ["bevel", ["§a"], undefined, "§d"],
    ["compound", ["§a"], "§c", "§d"],
  ],
  "shop.uses.sawing": [[["§a", "§b"]]],
  "shop.uses.coat": [["§a", ["§b", "§c"]]],
  "shop.uses.liner": [["§a", ["§b", "§c"]]],
  "shop.bits.cross": [[2]],
  "shop.bits.assumed": [
    ["nail", undefined, "no bit is thin enough"],
    ["screw", 5, "no table of roots has a #5: taken by its diameter"],
  ],
  "shop.taken.gravity": [[3]],
  "shop.taken.noGravity": [["§a", 3]],
};

/** Every text that a catalog gives, with the names that lead to it. */
export function textsOf(
  words: SheetWords,
): { readonly path: string; readonly args: readonly unknown[]; readonly text: string }[] {
  const own = leavesOf(words).flatMap((leaf) => {
    const { path, value } = leaf;
    if (typeof value === "string") return [{ path, args: [], text: value }];
    return argumentsOf(leaf).map((args) => ({ path, args, text: String(value(...(args as never[]))) }));
  });
  const toolTexts = tools.flatMap((row) => {
    const { name, instead } = words.shop.tool(row);
    return [
      { path: `shop.tool ${row.value.key} name`, args: [], text: name },
      { path: `shop.tool ${row.value.key} instead`, args: [], text: instead },
    ];
  });
  return [...own, ...toolTexts];
}
