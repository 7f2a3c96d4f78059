/**
 * Every form of an entry and of its clauses: how it opens, one example, and one sentence about it. Messages teach from
 * this table, completion offers from it, and the language reference is tested against it.
 */
export interface Form {
  /** The words the clause opens with; an empty list for one that opens with a number. */
  readonly opens: readonly string[];
  readonly example: string;
  readonly doc: string;
}

export interface EntryForm {
  readonly word: string;
  readonly example: string;
  readonly doc: string;
  readonly clauses: readonly Form[];
}

const f = (opens: string, example: string, doc: string): Form => ({
  opens: opens === "" ? [] : opens.split(" "),
  example,
  doc,
});

export const ENTRY_FORMS: readonly EntryForm[] = [
  {
    word: "plan",
    example: "plan Salad trough",
    doc: "Names the plan and says what holds for all of it.",
    clauses: [
      f("language", "language 1", "The version of the plan language this file is written in."),
      f(
        "units",
        'units inches to 1/16"',
        "How lengths are shown: inches or millimetres, and the finest mark on the tape.",
      ),
      f("outdoors", "outdoors", "It stands in the weather."),
      f("indoors", "indoors", "It stands inside."),
      f("near children", "near children", "Children play within reach of it."),
      f("near a guard", "near a guard", "It stands within 4 ft of a railing or a drop."),
      f(
        "anchored to",
        "anchored to the wall of the shed",
        "It is fixed at its top, so that it cannot tip; to what, in words.",
      ),
      f("space", 'space 60" wide, 30" deep, 48" high', "The space it must fit."),
      f("way in", 'way in 32" wide', "The narrowest door or gate on the way there."),
      f(
        "floor limit",
        "floor limit 58 psf by the building's engineer",
        "What the floor may carry, and who said so.",
      ),
      f(
        "foot limit",
        "foot limit 500 lb by the building's engineer",
        "What one foot may press on the floor, and who said so.",
      ),
      f("of which", "of which people 40 psf", "The part of the floor limit that other things already use."),
      f("budget", "budget $160", "What buying everything may cost."),
      f("tax", "tax 8%", "Sales tax, added to the shopping list."),
      f("spare", "spare 1 in 10", "Extra pieces to cut, for knots and mistakes."),
      f("kerf", 'kerf 1/8"', "The width of wood each saw cut turns to dust."),
      f("make", "make 6", "How many of the whole thing to build."),
      f(
        "lumber",
        "lumber dry",
        "Which sizes the yard sells: dry (PS 20 surfaced dry), green (PS 20 surfaced green) or planed metric.",
      ),
      f("written by", "written by the garden class", "Who wrote the plan."),
      f("licence", "licence CC BY 4.0", "What others may do with the plan."),
    ],
  },
  {
    word: "shop",
    example: "shop hillside-shop.sawbuck",
    doc: "Names the file with stock, fasteners and prices; each reader swaps it for their own.",
    clauses: [],
  },
  {
    word: "bring",
    example: "bring yard-measures.sawbuck",
    doc: "Brings the measures, parts and assemblies of another plan file.",
    clauses: [],
  },
  {
    word: "measure",
    example: 'measure rim-height = 30"',
    doc: "Names a measurement, or a length that follows from others.",
    clauses: [
      f("at least", 'at least 24"', "The least it may be."),
      f("at most", 'at most 32"', "The most it may be."),
    ],
  },
  {
    word: "stock",
    example: "stock 2x4, sold 8' $4.20, 10' $5.60",
    doc: "A kind of board: what is sold, and what is on hand.",
    clauses: [
      f(
        "actual",
        'actual 1-1/2" x 3-1/2"',
        "The real thickness and width, when they are not the standard ones.",
      ),
      f("measured", 'measured 1/2" x 3-7/16"', "The thickness and width as measured on the wood at hand."),
      f("species", "species western-redcedar", "The kind of wood."),
      f("moisture", "moisture dry", "How wet the wood is: dry, green, or a share such as 12%."),
      f("treated", "treated", "Pressure-treated wood."),
      f("untreated", "untreated", "Wood known to be untreated."),
      f("heartwood", "heartwood", "All heartwood, no sapwood."),
      f("rough", "rough", "Not planed."),
      f("painted", "painted", "Old paint on it."),
      f("sold", "sold 8' $4.20, 10' $5.60", "The lengths the yard sells, each with its price."),
      f(
        "on hand",
        'on hand 3 of 41", 1 of 8\' bad 30" to 36"',
        "What is already there, with stretches that cannot be used.",
      ),
      f("end trim", 'end trim 1/2"', "What is cut off the end of a bought board to square it."),
      f("use up", "use up", "Use the wood on hand first."),
      f("keep", "keep", "Keep the wood on hand for what nothing sold can do."),
    ],
  },
  {
    word: "sheet",
    example: 'sheet shelf-ply, plywood 1/2", sold 48" x 96" $38.00',
    doc: "A kind of panel.",
    clauses: [
      f("thickness", "thickness 12mm", "How thick the panel really is."),
      f("plywood", 'plywood 23/32"', "Plywood by its PS 1 performance category."),
      f("species", "species douglas-fir", "The kind of wood."),
      f("sold", 'sold 48" x 96" $38.00', "The sizes the yard sells, each with its price."),
      f("on hand", 'on hand 1 of 20" x 48"', "Panels and offcuts already there."),
      f(
        "grain along",
        "grain along length",
        "The face grain runs along the length (or the width) of the sheet.",
      ),
      f("no grain", "no grain", "Pieces may be turned either way."),
    ],
  },
  {
    word: "roll",
    example: "roll pond-liner, width 6', price $2.10 per foot",
    doc: "Liner, fabric or mesh, bought by the length.",
    clauses: [
      f("width", "width 6'", "How wide the roll is."),
      f("price", "price $2.10 per foot", "What a length of it costs."),
      f("food safe", "food safe", "The maker says it may touch soil for food."),
      f("not food safe", "not food safe", "It must not touch soil for food."),
    ],
  },
  {
    word: "fastener",
    example: 'fastener deck-2, #8 x 2" screw, box of 100 $9.80',
    doc: "A screw, nail or bolt the shop has.",
    clauses: [
      f("", '#8 x 2" screw', "Gauge or thickness, length, and what it is: screw, nail or bolt."),
      f("nail", 'nail 0.131" x 2-1/2"', "A nail by its thickness and length."),
      f("bolt", 'bolt 1/4" x 4"', "A bolt by its thickness and length."),
      f("thread", 'thread 1-1/4"', "How much of it is threaded."),
      f(
        "coating",
        "coating stainless",
        "What keeps it from rusting: stainless, galvanized, coated or plain.",
      ),
      f("box of", "box of 100 $9.80", "How it is sold."),
      f("on hand", "on hand 40", "How many are already there."),
    ],
  },
  {
    word: "finish",
    example: "finish outdoor-oil, covers 250 sqft per gal, 2 coats, dries 12 h, tin of 1 qt $18",
    doc: "Oil, stain or paint.",
    clauses: [
      f("covers", "covers 250 sqft per gal", "How far it goes."),
      f("", "2 coats", "How many coats."),
      f("dries", "dries 12 h", "How long a coat dries."),
      f("tin of", "tin of 1 qt $18", "How it is sold."),
    ],
  },
  {
    word: "fill",
    example: "fill potting-mix, dry 20 lb/cuft, moist 45 lb/cuft, saturated 75 lb/cuft",
    doc: "What goes into a box, and how heavy it is.",
    clauses: [
      f("dry", "dry 20 lb/cuft", "Its weight when dry."),
      f("moist", "moist 45 lb/cuft", "Its weight when watered and drained."),
      f("saturated", "saturated 75 lb/cuft", "Its weight when it can hold no more water."),
    ],
  },
  {
    word: "tools",
    example: 'tools\n  kerf 1/8"\n  miters to 47°',
    doc: "What the builder has to cut with.",
    clauses: [
      f("kerf", 'kerf 1/8"', "The width of the saw cut."),
      f("miters to", "miters to 47°", "The largest miter the saw can cut, off square."),
      f("bevels to", "bevels to 45°", "The largest tilt of the blade, off square."),
      f("rips", "rips", "Boards can be cut along their length."),
      f("no ripping", "no ripping", "Boards cannot be cut along their length."),
      f("has", "has drill and square", "Other tools at hand."),
    ],
  },
  {
    word: "yard",
    example: "yard Hillside timber yard\n  tax 6%",
    doc: "Where the wood is bought, and what holds for all that is bought there.",
    clauses: [f("tax", "tax 6%", "Sales tax there, for plans that name none of their own.")],
  },
  {
    word: "part",
    example: 'part leg 4 of 2x4, length 28-1/2"',
    doc: "A piece that is cut: how many, of what, how long.",
    clauses: [
      f("length", 'length 28-1/2"', "How long it is; `long point to long point` and the like may follow."),
      f("overall", "overall", "The length is from tip to tip."),
      f(
        "long point to long point",
        "long point to long point",
        "The length is between the far tips of the mitered ends.",
      ),
      f(
        "short point to short point",
        "short point to short point",
        "The length is between the near corners of the mitered ends.",
      ),
      f(
        "long point to short point",
        "long point to short point",
        "The length is along one edge, between like ends cut the same way.",
      ),
      f("cut to fit", 'cut to fit plus 1/2"', "Leave it long and cut it when the rest stands."),
      f("width", 'width 2-1/2"', "The board is ripped to this width."),
      f(
        "ends",
        "ends mitered 45°",
        "Both ends: mitered (across the width), beveled (through the thickness) or both; off square.",
      ),
      f("left end", "left end mitered 30°", "One end's cut."),
      f("right end", "right end beveled 45°", "One end's cut."),
      f(
        "long points on",
        "long points on opposite edges",
        "Whether the long points lie on one edge or on opposite edges.",
      ),
      f(
        "notch",
        'notch 1-1/2" x 3/4" at left end',
        "Wood taken out at an end or an edge: along the board, then into it.",
      ),
      f("dado", 'dado 3/4" x 3/8" at 12" from left', "A groove across: along the board, then how deep."),
      f("in pairs", "in pairs", "Half of them are cut as mirror images."),
      f("", "2 left and 2 right", "How many are left and right pieces."),
    ],
  },
  {
    word: "assembly",
    example: "assembly gable\n  place rafter across, flat, on floor",
    doc: "Parts placed once and used many times; its own `place` lines follow, indented.",
    clauses: [],
  },
  {
    word: "ring",
    example: "ring seat = 6 board",
    doc: "Mitered parts in order, that must close.",
    clauses: [],
  },
  {
    word: "box",
    example: 'box trough, inside 44" x 14" x 16"',
    doc: "Walls and a bottom that hold something.",
    clauses: [
      f("walls", "walls side and end", "The parts that hold the fill in."),
      f("bottom", "bottom floor-board", "The parts the fill stands on."),
      f("inside", 'inside 44" x 14" x 16"', "Its inside: length, depth, height."),
      f("tapering to", 'tapering to 40" x 10"', "The inside at the bottom, when the sides slope."),
      f("outline", 'outline 48" x 18"', "The outside on the floor."),
      f("filled with", 'filled with potting-mix to 1" below rim', "What is in it, and how high."),
      f("carried by", "carried by ledger", "What the bottom rests on."),
      f(
        "drains through",
        "drains through the gaps",
        "Water leaves through the gaps between the bottom boards.",
      ),
      f("drains by", 'drains by 12 holes of 1/2"', "Water leaves by drilled holes."),
      f("no drain", "no drain", "Water does not leave."),
      f("grows", "grows lettuce and tomato", "What is planted."),
      f("weighs", "weighs 60 lb empty", "Its own weight, when it is not worked out from its parts."),
    ],
  },
  {
    word: "place",
    example: "place leg upright, wide face front, on floor",
    doc: "Puts a part somewhere by what it touches.",
    clauses: [
      f("upright", "upright", "The length points up."),
      f("across", "across", "The length runs left to right."),
      f("front to back", "front to back", "The length runs front to back."),
      f("flat", "flat", "The wide face is level."),
      f("on edge", "on edge", "The wide face is upright."),
      f("wide face", "wide face front", "Which way the wide face of an upright board looks."),
      f(
        "long points",
        "long points top",
        "The side on which the long edge (of mitered ends) or the long face (of beveled ones) lies.",
      ),
      f("leaning", "leaning 10° back", "Tipped off upright; a ring may lean `out` or `in` all round."),
      f("sloping", "sloping 5° down to the right", "Tipped off level."),
      f("on", "on floor", "Rests on top of it."),
      f("under", "under seat", "Touches its underside."),
      f("left of", "left of legs", "Touches its left."),
      f("right of", "right of legs", "Touches its right."),
      f("in front of", "in front of legs", "Touches its front."),
      f("behind", "behind legs", "Touches its back."),
      f("flush with", "flush with top of legs", "Level with that face."),
      f("between", "between left legs and right legs", "Touches both."),
      f("centered", "centered on legs", "In the middle of it, in the directions still open."),
      f(
        "at each corner of",
        'at each corner of 46-1/2" x 16-1/2"',
        "Four, one in each corner, outside to outside.",
      ),
      f("diagonally on", "diagonally on front of legs", "A brace across it, with `from … to …`."),
      f("from", "from bottom left to top right", "From which corner to which a diagonal runs."),
      f(
        "",
        '3" above seat',
        'So far from that face; or `1" in from left of T`, `1" past front of T`, `10" from left`, `14" up`, `2 high`, `3" apart`, `16" on center`.',
      ),
      f("tight", "tight", "Repeats touch."),
      f(
        "spread between",
        "spread between left legs and right legs",
        "Repeats with even gaps over that span.",
      ),
      f("spread over", "spread over posts", "Repeats with even gaps from its one side to its other."),
      f("with a gap at each end", "with a gap at each end", "A spread row begins and ends with a gap."),
      f("as many as fit", 'as many as fit, at most 4" apart', "As many repeats as the span takes."),
      f("at most", 'at most 4" apart', "The largest gap between repeats."),
      f("mirrored", "mirrored left to right about seat", "A mirror image as well."),
    ],
  },
  {
    word: "fasten",
    example: 'fasten side face into leg edge, 2 #8 x 1-5/8" at each end',
    doc: "Joins parts: through the first, into the second.",
    clauses: [
      f(
        "",
        '2 #8 x 1-5/8" at each crossing',
        'How many, of what, and where: at each crossing, at each end, at 8 crossings, along it, in all; or `6" on center`.',
      ),
      f("pilot", 'pilot 1/8"', "The hole drilled for the thread."),
      f("clearance", 'clearance 3/16"', "The hole drilled in the near piece for the shank."),
      f("angled", "angled 30°", "Driven at a slant, off square to the face."),
    ],
  },
  {
    word: "glue",
    example: "glue slat to rail, with waterproof-glue",
    doc: "Joins parts with glue.",
    clauses: [f("with", "with waterproof-glue", "Which glue.")],
  },
  {
    word: "coat",
    example: "coat side and end with outdoor-oil",
    doc: "Which parts are finished, and with what.",
    clauses: [f("", "2 coats", "How many coats.")],
  },
  {
    word: "line",
    example: 'line trough with pond-liner, fold 3"',
    doc: "Which box is lined, and with what.",
    clauses: [
      f("fold", 'fold 3"', "What is folded over at the rim."),
      f("overlap", 'overlap 6"', "How much two widths overlap."),
    ],
  },
  {
    word: "load",
    example: "load shelf 40 lb spread",
    doc: "A weight that something carries.",
    clauses: [],
  },
  {
    word: "must",
    example: 'must rim-height at most 32" because small children must reach the soil',
    doc: "Your own rule, and why.",
    clauses: [],
  },
  {
    word: "accept",
    example: "accept over-budget because the class raised the rest",
    doc: "Lets a warning or hazard stand; the reason is printed on the sheet.",
    clauses: [],
  },
  {
    word: "note",
    example: "note The gate is locked after four.",
    doc: "A line for whoever reads the sheet.",
    clauses: [],
  },
  {
    word: "step",
    example: "step Oil every piece and let it dry",
    doc: "One step of the work, in order.",
    clauses: [
      f("uses", "uses leg and end", "The parts that go in."),
      f("coats", "coats side and end", "The parts that are finished."),
      f("lines", "lines trough", "The box that is lined."),
      f("takes", "takes 40 min", "How long the work takes."),
      f("then wait", "then wait 12 h", "How long to wait after it."),
      f("wait", "wait 12 h", "How long to wait after it."),
      f("", "2 people", "How many hands it needs."),
    ],
  },
  {
    word: "built",
    example: "built 2026-05-09 by the garden class",
    doc: "That it was built, when and by whom; what came out otherwise and what wear was found follows. It changes nothing of the plan.",
    clauses: [
      f(
        "measured",
        'measured rim-height = 27-1/2" because the wall leans',
        "A measure, or the `length of` a part, as it came out.",
      ),
      f("used", "used fir-1x4 instead of 1x4", "A board or a sheet that took the place of another."),
      f("changed", "changed Two more screws in each corner", "What else was done otherwise, in words."),
      f("wear", "wear 2027-04-01 The lower slat is soft", "What wear was found, and when."),
    ],
  },
  {
    word: "enclosed",
    example: "enclosed yard-measures.sawbuck",
    doc: "The text of another file, in this one: all lines from here to the next such line, or to the end.",
    clauses: [],
  },
];

const BY_WORD = new Map(ENTRY_FORMS.map((e) => [e.word, e]));

/** The forms of the entry that opens with that word, or undefined. */
export const entryForm = (word: string): EntryForm | undefined => BY_WORD.get(word);

/** The clause form of an entry whose opening words these are the start of (the longest that fits). */
export function clauseForm(entry: string, word: (at: number) => string | undefined): Form | undefined {
  const first = word(0);
  if (first === undefined) return undefined;
  let best: Form | undefined;
  for (const form of OPENINGS.get(entry)?.get(first) ?? []) {
    const longer = form.opens.length > (best?.opens.length ?? 0);
    if (longer && form.opens.every((w, i) => word(i) === w)) best = form;
  }
  return best;
}

/** The forms of each entry by their first word. */
const OPENINGS = new Map(
  ENTRY_FORMS.map((entry) => {
    const byFirst = new Map<string, Form[]>();
    for (const form of entry.clauses) {
      const [first] = form.opens;
      if (first === undefined) continue;
      byFirst.set(first, [...(byFirst.get(first) ?? []), form]);
    }
    return [entry.word, byFirst] as const;
  }),
);
