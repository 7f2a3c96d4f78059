/** The words of every head and clause as patterns: what completion reads beside the forms of grammar/forms.ts. */
import { ENTRY_FORMS, type Form } from "../../grammar/forms";
import type { DeclaredKind } from "../plan";
import { FUNCTIONS, PROPERTIES } from "../worked";
import {
  alt,
  either,
  free,
  mark,
  named,
  opt,
  type Pattern,
  screw,
  seq,
  some,
  type Unit,
  value,
  words,
} from "./completion-patterns";

const PLACED: readonly DeclaredKind[] = ["part", "assembly", "ring", "box"];
const NARROWING = alt(
  ...["front", "back", "left", "right", "top", "bottom", "middle", "upper", "lower"].map((w) =>
    words(w, { about: "narrowing" }),
  ),
);
const SIDES = either("left", "right", "front", "back", "top", "bottom");
const AND = words("and");

const narrowed = (name: Pattern): Pattern => alt(name, seq(some(NARROWING), name));
/** What a place line names: pieces singly or together, or the floor. */
const target = alt(narrowed(named(PLACED, { plurals: true, role: "target" })), words("floor"));
const things = (kinds: readonly DeclaredKind[]): Pattern => some(named(kinds), AND);
/** Pieces that a step is about: all of a name, or some of them. */
const pieces = some(narrowed(named(PLACED, { plurals: true })), AND);

const PROPERTY_OF: Readonly<Record<string, Pattern>> = {
  length: named(["part", "fastener"]),
  width: named(["part", "stock", "roll"], { table: "sections" }),
  thickness: named(["part", "stock", "sheet"], { table: "sections" }),
  count: named(["part"]),
  "inside width": named(["box"]),
  "inside depth": named(["box"]),
  "inside height": named(["box"]),
};
const COUNTED = new Set(["count"]);

const OPERATOR = alt(mark("+"), mark("-"), mark("*"), mark("/"));
const expressions = new Map<Unit, Pattern>();

/** Any value of that kind: typed, named, asked of a thing, or a sum of such. */
function expression(unit: Unit): Pattern {
  const known = expressions.get(unit);
  if (known) return known;
  const again: Pattern = { kind: "later", part: () => expression(unit) };
  const measured = unit === "length" || unit === "any" || unit === "count";
  const properties = PROPERTIES.filter((p) => unit === "any" || COUNTED.has(p) === (unit === "count")).map(
    (p) => seq(words(`${p} of`, { about: "property" }), PROPERTY_OF[p] ?? target),
  );
  const factor: Pattern = {
    kind: "later",
    part: () => factorOf,
  };
  const factorOf: Pattern = alt(
    value(unit),
    named(["measure"], { unit }),
    ...(measured ? properties : []),
    ...FUNCTIONS.map((f) => seq(words(`${f} (`), some(again, mark(",")), mark(")"))),
    seq(words("round"), again, words("to"), factor),
    seq(mark("("), again, mark(")")),
    seq(mark("-"), factor),
  );
  const whole = some(factorOf, OPERATOR);
  expressions.set(unit, whole);
  return whole;
}

/** A value that a clause opens with: typed first, so that names are not offered in its place. */
const typed = (unit: Unit): Pattern =>
  alt(
    seq(value(unit), opt(OPERATOR, expression(unit))),
    seq(mark("("), expression(unit), mark(")"), opt(OPERATOR, expression(unit))),
  );

const length = expression("length");
const COMPARISONS = either("at most", "at least", "less than", "more than", "exactly");
const COMPARED = alt(COMPARISONS, ...["<=", ">=", "<", ">", "=", "≤", "≥"].map(mark));
const POINTS = either(
  "overall",
  "long point to long point",
  "short point to short point",
  "long point to short point",
);
const SIZES = some(length, mark("x"));
const EXTENTS = some(seq(SIZES, opt(either("wide", "deep", "high"))), mark(","));
const LIMIT = (unit: Unit): Pattern => seq(expression(unit), opt(words("by")));
const AXES = either("left to right", "front to back", "up and down");
const FACE_OF = seq(either("left of", "right of", "front of", "back of", "top of", "bottom of"), target);
const FACED = (kinds: Pattern): Pattern => some(seq(kinds, opt(either("face", "edge", "end"))), AND);
const FIRST = FACED(narrowed(named(PLACED, { role: "first" })));
const INTO = FACED(narrowed(named(PLACED, { role: "into" })));
const CUTS = alt(words("square"), some(seq(either("mitered", "beveled"), expression("angle")), opt(AND)));
const NOTCH = seq(
  length,
  mark("x"),
  length,
  words("at"),
  alt(either("left end", "right end", "both ends"), seq(length, words("from"), either("left", "right"))),
);
const OFFERS = some(seq(SIZES, opt(value("money"))), mark(","));
const ON_HAND = some(
  seq(value("count"), words("of"), SIZES, opt(words("bad"), some(seq(length, words("to"), length), AND))),
  mark(","),
);
const SPECIES = named([], { table: "species" });
const JOINT_PLACE = alt(
  either("at each crossing", "at each end", "along it", "in all"),
  seq(mark("at"), value("count"), words("crossings")),
);
const DRIVEN = alt(
  seq(opt(value("count")), alt(screw, named(["fastener"])), opt(JOINT_PLACE)),
  seq(typed("length"), words("on center")),
);
const MEASURED_PLACE = alt(
  seq(value("count"), either("high", "across", "deep")),
  seq(
    typed("length"),
    alt(
      seq(either("above", "below", "behind", "left of", "right of", "in front of"), target),
      seq(either("in from", "past"), FACE_OF),
      seq(words("from"), alt(SIDES, words("floor"))),
      either("apart", "up", "on center"),
    ),
  ),
);

/** What stands on an entry's first line, up to its first comma. None for those that go on in words to people. */
export const HEAD_PATTERNS: Readonly<Record<string, Pattern>> = {
  measure: seq(free, opt(mark("="), expression("any"))),
  stock: seq(named([], { table: "sections" }), opt(words("of"), named([], { table: "sections" }))),
  part: seq(
    free,
    opt(
      alt(
        value("count"),
        named(["measure"], { unit: "count" }),
        seq(mark("("), expression("count"), mark(")")),
      ),
    ),
    words("of"),
    named(["stock", "sheet"], { table: "sections" }),
  ),
  ring: seq(free, mark("="), some(seq(opt(value("count")), named(["part"])), AND)),
  place: seq(
    named(["part", "assembly", "ring", "box"], { role: "subject" }),
    // A comma stands before every clause but the first.
    opt({ kind: "later", part: () => FIRST_OF_PLACE }),
  ),
  fasten: seq(FIRST, opt(words("through"), INTO), words("into"), INTO),
  glue: seq(FIRST, opt(words("through"), INTO), either("to", "onto", "into"), INTO),
  coat: seq(things(PLACED), words("with"), named(["finish"], { table: "finishes" })),
  line: seq(things(["box"]), words("with"), named(["roll"], { table: "liners" })),
  load: seq(narrowed(named(PLACED)), expression("weight"), opt(either("spread", "anywhere", "middle"))),
  must: seq(expression("any"), COMPARED, expression("any"), opt(words("because"))),
  built: seq(free, opt(words("by"))),
  accept: seq(
    named([], { table: "codes" }),
    opt(
      words("on"),
      narrowed(named([...PLACED, "measure", "stock", "sheet", "roll", "fastener", "finish", "fill"])),
    ),
    opt(words("because")),
  ),
};

/** What follows a clause's opening words, by entry and opening; "" for the one that opens with a number. */
const AFTER: Readonly<Record<string, Readonly<Record<string, Pattern>>>> = {
  plan: {
    language: value("count"),
    units: seq(either("inches", "millimetres"), opt(words("to"), length)),
    space: EXTENTS,
    "way in": EXTENTS,
    "floor limit": LIMIT("pressure"),
    "foot limit": LIMIT("weight"),
    "of which": seq(free, expression("pressure")),
    budget: expression("money"),
    tax: value("share"),
    spare: seq(value("count"), words("in"), value("count")),
    kerf: length,
    make: expression("count"),
    lumber: either("dry", "green", "planed metric"),
  },
  measure: { "at least": expression("any"), "at most": expression("any") },
  stock: {
    actual: SIZES,
    measured: SIZES,
    species: SPECIES,
    moisture: alt(either("dry", "green"), value("share")),
    sold: OFFERS,
    "on hand": ON_HAND,
    "end trim": length,
  },
  sheet: {
    thickness: length,
    plywood: length,
    species: SPECIES,
    sold: OFFERS,
    "on hand": ON_HAND,
    "grain along": either("length", "width"),
  },
  roll: { width: length, price: seq(value("money"), words("per"), either("foot", "yard", "metre")) },
  fastener: {
    "": seq(alt(screw, seq(typed("length"), mark("x"), length)), either("screw", "nail", "bolt")),
    nail: SIZES,
    bolt: SIZES,
    thread: length,
    coating: either("stainless", "galvanized", "coated", "plain"),
    "box of": seq(value("count"), opt(value("money"))),
    "on hand": value("count"),
  },
  finish: {
    covers: seq(value("area"), words("per"), either("gal", "qt", "L")),
    "": seq(value("count"), words("coats")),
    dries: value("time"),
    "tin of": seq(value("volume"), opt(value("money"))),
  },
  fill: { dry: value("density"), moist: value("density"), saturated: value("density") },
  yard: { tax: value("share") },
  tools: { kerf: length, "miters to": value("angle"), "bevels to": value("angle"), has: some(free, AND) },
  part: {
    length: seq(length, opt(POINTS)),
    "cut to fit": opt(words("plus"), length),
    width: length,
    ends: CUTS,
    "left end": CUTS,
    "right end": CUTS,
    "long points on": either("one edge", "opposite edges"),
    notch: NOTCH,
    dado: NOTCH,
    "": some(seq(value("count"), either("left", "right")), AND),
  },
  box: {
    walls: things(["part"]),
    bottom: things(["part"]),
    inside: EXTENTS,
    outline: EXTENTS,
    "tapering to": EXTENTS,
    "filled with": seq(
      named(["fill"], { table: "fills" }),
      opt(opt(words("to")), length, either("below rim", "deep")),
    ),
    "carried by": things(PLACED),
    "drains through": words("the gaps"),
    "drains by": seq(opt(value("count")), words("holes"), opt(words("of"), length)),
    grows: some(named([], { table: "crops" }), AND),
    weighs: seq(expression("weight"), opt(words("empty"))),
  },
  place: {
    "wide face": SIDES,
    "long points": SIDES,
    leaning: seq(expression("angle"), alt(SIDES, either("in", "out"))),
    sloping: seq(expression("angle"), words("down to the"), SIDES),
    on: target,
    under: target,
    "left of": target,
    "right of": target,
    "in front of": target,
    behind: target,
    "flush with": FACE_OF,
    between: seq(target, AND, target),
    centered: seq(opt(AXES), words("on"), target),
    "at each corner of": alt(target, seq(length, mark("x"), length)),
    "diagonally on": FACE_OF,
    from: seq(some(SIDES), words("to"), some(SIDES)),
    "": MEASURED_PLACE,
    "spread between": seq(target, AND, target),
    "spread over": target,
    "at most": seq(length, words("apart")),
    mirrored: seq(AXES, words("about"), target),
  },
  fasten: { "": DRIVEN, pilot: length, clearance: length, angled: expression("angle") },
  glue: { with: free },
  coat: { "": seq(value("count"), words("coats")) },
  line: { fold: length, overlap: length },
  step: {
    uses: pieces,
    coats: pieces,
    lines: things(["box"]),
    takes: value("time"),
    "then wait": value("time"),
    wait: value("time"),
    "": seq(value("count"), either("people", "person")),
  },
  built: {
    measured: seq(
      alt(named(["measure"]), seq(words("length of", { about: "property" }), named(["part"]))),
      mark("="),
      value("any"),
      opt(words("because")),
    ),
    used: seq(
      named(["stock", "sheet"], { table: "sections" }),
      words("instead of"),
      named(["stock", "sheet"], { table: "sections" }),
      opt(words("because")),
    ),
    wear: free,
  },
};

/** Lists that go on over commas. */
const GOES_ON: Readonly<Record<string, readonly string[]>> = {
  plan: ["space", "way in"],
  stock: ["sold", "on hand"],
  sheet: ["sold", "on hand"],
  box: ["inside", "outline", "tapering to"],
};

/** All clauses of an entry, one pattern each. */
export const CLAUSE_PATTERNS: ReadonlyMap<
  string,
  readonly { readonly form: Form; readonly pattern: Pattern }[]
> = new Map(
  ENTRY_FORMS.map((entry) => [
    entry.word,
    entry.clauses.map((form) => {
      const after = AFTER[entry.word]?.[form.opens.join(" ")];
      const opening: Pattern[] = form.opens.length > 0 ? [{ kind: "words", words: form.opens, form }] : [];
      return { form, pattern: seq(...opening, ...(after ? [after] : [])) };
    }),
  ]),
);

const FIRST_OF_PLACE = alt(...(CLAUSE_PATTERNS.get("place") ?? []).map(({ pattern }) => pattern));

/** What may stand after a comma besides a new clause: the list of the clause before goes on. */
export function goingOn(entry: string, opening: string): Pattern | undefined {
  return GOES_ON[entry]?.includes(opening) ? AFTER[entry]?.[opening] : undefined;
}

/** Clauses of which an entry takes one: each stands for what it says, and shuts the others of its row out. */
// biome-ignore format: a table
const ONE_OF: readonly (readonly string[])[] = [
  ["outdoors", "indoors"], ["actual", "measured"], ["use up", "keep"], ["treated", "untreated"],
  ["thickness", "plywood"], ["grain along", "no grain"], ["food safe", "not food safe"], ["rips", "no ripping"],
  ["overall", "long point to long point", "short point to short point", "long point to short point"],
  ["drains through", "drains by", "no drain"], ["upright", "across", "front to back"], ["upright", "flat", "on edge"],
  ["then wait", "wait"], ["nail", "bolt", ""], ["ends", "left end"], ["ends", "right end"], ["in pairs", ""],
];
/** Clauses that may be said again. */
// biome-ignore format: a list of words
const AGAIN = new Set([
  "of which", "notch", "dado", "has", "tin of", "on", "under", "left of", "right of", "in front of", "behind", "flush with",
  "centered", "long points",
]);

/** Whether one more clause of that opening makes sense beside those already said. */
export function stillOpen(entry: string, opening: string, said: ReadonlySet<string>): boolean {
  const again =
    AGAIN.has(opening) || entry === "built" || (opening === "" && (entry === "place" || entry === "fasten"));
  if (said.has(opening) && !again) return false;
  return !ONE_OF.some((row) => row.includes(opening) && row.some((o) => o !== opening && said.has(o)));
}
