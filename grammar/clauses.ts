/**
 * Which rule reads what follows a clause's opening words, and what node it becomes. The key "" is the clause that opens
 * with a number (or with a name, where the entry allows one).
 */
import type { IToken } from "chevrotain";
import { type ClauseBody, PlanRules } from "./rules-work";
import type { Comparison, Expression, Lie, Relation, Side } from "./tree";

export const rules = new PlanRules();

/** Runs one rule over the tokens in hand. Undefined when they do not fit; `rules.errors` then says where. */
type Reader = () => ClauseBody;

/** A clause that needs nothing more. */
const just =
  (body: ClauseBody): Reader =>
  () => {
    rules.nothing();
    return body;
  };
type ValueKind = Extract<ClauseBody, { value: Expression }>["kind"];
const value =
  (kind: ValueKind): Reader =>
  () =>
    ({ kind, value: rules.expression() }) as ClauseBody;
const bound =
  (comparison: Comparison): Reader =>
  () => ({ kind: "bound", comparison, value: rules.expression() });
const lies = (lie: Lie): Reader => just({ kind: "lies", lie });
const touches =
  (relation: Relation): Reader =>
  () => ({ kind: "touches", relation, target: rules.thing() });
const extents =
  (kind: "space" | "way in" | "inside" | "outline" | "tapering"): Reader =>
  () => ({
    kind,
    extents: rules.extents(),
  });
const density =
  (state: "dry" | "moist" | "saturated"): Reader =>
  () => ({
    kind: "density",
    state,
    value: rules.expression(),
  });
const per =
  (kind: "price" | "covers"): Reader =>
  () => ({ kind, ...rules.per() });
const sold: Reader = () => ({ kind: "sold", offers: rules.offers() });
const onHand: Reader = () => ({ kind: "on hand", items: rules.onHand() });
const species: Reader = () => ({ kind: "species", name: rules.name() });
const fits =
  (what?: string, at?: IToken): Reader =>
  () => {
    const read = rules.fits();
    const named =
      what && at ? [{ text: what, start: at.startOffset, end: at.startOffset + what.length }] : [];
    return { kind: "fits", ...read, what: [...named, ...(read?.what ?? [])] };
  };

export const CLAUSES: Readonly<Record<string, Readonly<Record<string, (opening: IToken) => Reader>>>> = {
  plan: {
    language: () => value("language"),
    units: () => () => ({ kind: "units", ...rules.units() }),
    outdoors: () => just({ kind: "setting", where: "outdoors" }),
    indoors: () => just({ kind: "setting", where: "indoors" }),
    "near children": () => just({ kind: "near", what: "children" }),
    "near a guard": () => just({ kind: "near", what: "guard" }),
    space: () => extents("space"),
    "way in": () => extents("way in"),
    "floor limit": () => () => ({ kind: "floor limit", ...rules.limit() }),
    "foot limit": () => () => ({ kind: "foot limit", ...rules.limit() }),
    "of which": () => () => ({ kind: "of which", ...rules.ofWhich() }),
    budget: () => value("budget"),
    tax: () => value("tax"),
    spare: () => () => ({ kind: "spare", ...rules.spare() }),
    kerf: () => value("kerf"),
    make: () => value("make"),
    lumber: () => () => ({ kind: "lumber", ...rules.lumber() }),
    "anchored to": () => () => ({ kind: "anchored", text: rules.text() }),
    "written by": () => () => ({ kind: "written by", text: rules.text() }),
    licence: () => () => ({ kind: "licence", text: rules.text() }),
  },
  measure: { "at least": () => bound("at least"), "at most": () => bound("at most") },
  stock: {
    actual: () => () => ({ kind: "actual", sides: rules.sizes() }),
    measured: () => () => ({ kind: "measured", sides: rules.sizes() }),
    species: () => species,
    moisture: () => () => ({ kind: "moisture", ...rules.moisture() }),
    treated: () => just({ kind: "condition", word: "treated" }),
    untreated: () => just({ kind: "condition", word: "untreated" }),
    heartwood: () => just({ kind: "condition", word: "heartwood" }),
    rough: () => just({ kind: "condition", word: "rough" }),
    painted: () => just({ kind: "condition", word: "painted" }),
    sold: () => sold,
    "on hand": () => onHand,
    "end trim": () => value("end trim"),
    "use up": () => just({ kind: "salvage", rule: "use up" }),
    keep: () => just({ kind: "salvage", rule: "keep" }),
  },
  sheet: {
    thickness: () => value("thickness"),
    plywood: () => value("plywood"),
    species: () => species,
    sold: () => sold,
    "on hand": () => onHand,
    "grain along": () => () => ({ kind: "grain", ...rules.grain() }),
    "no grain": () => just({ kind: "grain", along: "none" }),
  },
  roll: {
    width: () => value("width"),
    price: () => per("price"),
    "food safe": () => just({ kind: "food", safe: true }),
    "not food safe": () => just({ kind: "food", safe: false }),
  },
  fastener: {
    "": () => fits(),
    nail: (at) => fits("nail", at),
    bolt: (at) => fits("bolt", at),
    thread: () => value("thread"),
    coating: () => () => ({ kind: "coating", word: rules.name() }),
    "box of": () => () => {
      const { size, price } = rules.priced() ?? {};
      return { kind: "pack", count: size!, ...(price && { price }) };
    },
    "on hand": () => () => ({ kind: "on hand", items: [], count: rules.expression() }),
  },
  finish: {
    covers: () => per("covers"),
    "": () => () => ({ kind: "coats of", value: rules.coatCount() }),
    dries: () => value("dries"),
    "tin of": () => () => {
      const { size, price } = rules.priced() ?? {};
      return { kind: "tin", size: size!, ...(price && { price }) };
    },
  },
  fill: { dry: () => density("dry"), moist: () => density("moist"), saturated: () => density("saturated") },
  tools: {
    kerf: () => value("kerf"),
    "miters to": () => value("miters to"),
    "bevels to": () => value("bevels to"),
    rips: () => just({ kind: "rips", can: true }),
    "no ripping": () => just({ kind: "rips", can: false }),
    has: () => () => ({ kind: "has", names: rules.names() }),
  },
  yard: { tax: () => value("tax") },
  part: {
    length: () => () => ({ kind: "length", ...rules.partLength() }),
    overall: () => just({ kind: "points", points: "overall" }),
    "long point to long point": () => just({ kind: "points", points: "long to long" }),
    "short point to short point": () => just({ kind: "points", points: "short to short" }),
    "long point to short point": () => just({ kind: "points", points: "long to short" }),
    "cut to fit": () => () => {
      const allowance = rules.allowance();
      return { kind: "cut to fit", ...(allowance && { allowance }) };
    },
    width: () => value("width"),
    ends: () => () => ({ kind: "ends", which: "both", cuts: rules.ends() }),
    "left end": () => () => ({ kind: "ends", which: "left", cuts: rules.ends() }),
    "right end": () => () => ({ kind: "ends", which: "right", cuts: rules.ends() }),
    "long points on": () => () => ({ kind: "long points", ...rules.edges() }),
    notch: () => () => ({ kind: "notch", ...rules.notch() }),
    dado: () => () => ({ kind: "dado", ...rules.notch() }),
    "in pairs": () => just({ kind: "handed", pairs: true }),
    "": () => () => ({ kind: "handed", ...rules.handed() }),
  },
  box: {
    walls: () => () => ({ kind: "walls", things: rules.things() }),
    bottom: () => () => ({ kind: "floor", things: rules.things() }),
    inside: () => extents("inside"),
    "tapering to": () => extents("tapering"),
    outline: () => extents("outline"),
    "filled with": () => () => ({ kind: "filled", ...rules.filled() }),
    "carried by": () => () => ({ kind: "carried", by: rules.things() }),
    "drains through": () => () => {
      rules.gaps();
      return { kind: "drains", how: "gaps" };
    },
    "drains by": () => () => ({ kind: "drains", how: "holes", ...rules.holes() }),
    "no drain": () => just({ kind: "drains", how: "nothing" }),
    grows: () => () => ({ kind: "grows", what: rules.names() }),
    weighs: () => () => ({ kind: "weighs", value: rules.weighs() }),
  },
  place: {
    upright: () => lies("upright"),
    across: () => lies("across"),
    flat: () => lies("flat"),
    "on edge": () => lies("on edge"),
    "front to back": () => lies("front to back"),
    "wide face": () => () => ({ kind: "wide face", side: rules.side() as Side }),
    "long points": () => () => ({ kind: "long points at", side: rules.side() as Side }),
    leaning: () => () => ({ kind: "leaning", ...rules.leaning() }),
    sloping: () => () => ({ kind: "sloping", ...rules.sloping() }),
    on: () => touches("on"),
    under: () => touches("under"),
    "left of": () => touches("left of"),
    "right of": () => touches("right of"),
    "in front of": () => touches("in front of"),
    behind: () => touches("behind"),
    "flush with": () => () => ({ kind: "flush", ...rules.faceOf() }),
    between: () => () => ({ kind: "between", ...rules.span() }),
    centered: () => () => ({ kind: "centered", ...rules.centered() }),
    "at each corner of": () => () => ({ kind: "corners", ...rules.corners() }),
    "diagonally on": () => () => ({ kind: "diagonal", ...rules.diagonal() }),
    from: () => () => ({ kind: "run", ...rules.fromTo() }),
    "": () => () => rules.measuredPlace(),
    tight: () => just({ kind: "spacing", rule: "tight" }),
    "spread between": () => () => ({ kind: "spread", ...rules.span() }),
    "spread over": () => () => ({ kind: "spread over", target: rules.thing() }),
    "with a gap at each end": () => just({ kind: "end gaps" }),
    "as many as fit": () => just({ kind: "repeat" }),
    "at most": () => () => ({ kind: "spacing", rule: "at most apart", value: rules.apart() }),
    mirrored: () => () => ({ kind: "mirrored", ...rules.mirrored() }),
  },
  fasten: {
    "": () => () => rules.driven(),
    pilot: () => value("pilot"),
    clearance: () => value("clearance"),
    angled: () => value("angled"),
  },
  glue: { with: () => () => ({ kind: "glue with", name: rules.name() }) },
  coat: { "": () => () => ({ kind: "coats of", value: rules.coatCount() }) },
  line: { fold: () => value("fold"), overlap: () => value("overlap") },
  step: {
    uses: () => () => ({ kind: "uses", things: rules.things() }),
    coats: () => () => ({ kind: "coats", things: rules.things() }),
    lines: () => () => ({ kind: "lines", things: rules.things() }),
    takes: () => value("takes"),
    "then wait": () => value("wait"),
    wait: () => value("wait"),
    "": () => () => ({ kind: "people", value: rules.people() }),
  },
  built: {
    measured: () => () => ({ kind: "came out", ...rules.cameOut() }),
    used: () => () => ({ kind: "made of", ...rules.madeOf() }),
    changed: () => () => ({ kind: "changed", text: rules.text() }),
    wear: () => () => ({ kind: "wear", ...rules.wear() }),
  },
};

/** Lists that go on over commas: a clause that opens with a number belongs to the one before. */
const GOES_ON: Readonly<Record<string, readonly string[]>> = {
  plan: ["space", "way in"],
  stock: ["sold", "on hand"],
  sheet: ["sold", "on hand"],
  box: ["inside", "outline", "tapering to"],
};

/** Whether a clause that opens with this token still belongs to the clause of that opening. */
export function goesOn(entry: string, opening: string, isLiteral: boolean): boolean {
  return isLiteral && (GOES_ON[entry]?.includes(opening) ?? false);
}
