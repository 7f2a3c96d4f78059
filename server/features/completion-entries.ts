/** What may open a line: the words of all entries, and whole entries with places to fill in. */
import { ENTRY_FORMS, type EntryForm, entryForm } from "../../grammar/forms";
import type { Entry } from "../../grammar/tree";
import type { DeclaredKind } from "../plan";
import { type Asking, type Offer, offer, RANK } from "./completion-offer";
import { filled } from "./completion-snippet";
import { COMPLETION_WORDS } from "./completion-words";
import { formText } from "./form-words";
import { paragraphs, planBlock } from "./markdown";

interface Whole {
  readonly label: string;
  /** As `filled` reads it. */
  readonly text: string;
}

/** Whole entries by their first word, the commonest first. */
const WHOLE: Readonly<Record<string, readonly Whole[]>> = {
  plan: [
    {
      label: "plan … units, space, budget",
      text: 'plan {Salad trough}\n  language 1\n  units {inches to 1/16"|millimetres to 1mm}\n  {outdoors|indoors}\n  space {60"} wide, {30"} deep, {48"} high\n  budget {$160}\n',
    },
  ],
  shop: [{ label: "shop … .sawbuck", text: "shop {my-shop}.sawbuck" }],
  bring: [{ label: "bring … .sawbuck", text: "bring {yard-measures}.sawbuck" }],
  enclosed: [{ label: "enclosed … .sawbuck", text: "enclosed {yard-measures}.sawbuck" }],
  measure: [
    { label: "measure … = …", text: 'measure {height} = {30"}' },
    {
      label: "measure … = …, at least …, at most …",
      text: 'measure {height} = {30"}, at least {24"}, at most {32"}',
    },
  ],
  stock: [
    {
      label: "stock … species, sold",
      text: "stock {2x4}, species {spruce-pine-fir|douglas-fir|western-redcedar|hem-fir}, sold {8'} {$4.20}, {10'} {$5.60}",
    },
    {
      label: "stock … of …, on hand",
      text: 'stock {pallet-slat} of {1x4}, measured {5/8"} x {3-7/16"}, on hand {6} of {40"}',
    },
  ],
  sheet: [
    {
      label: "sheet … plywood, sold",
      text: 'sheet {shelf-ply}, plywood {1/2"|3/4"|23/32"|15/32"}, sold {48"} x {96"} {$38.00}',
    },
  ],
  roll: [
    {
      label: "roll … width, price",
      text: "roll {pond-liner}, width {6'}, price {$2.10} per {foot|yard|metre}",
    },
  ],
  fastener: [
    {
      label: "fastener … screw, box of …",
      text: 'fastener {deck-2}, #{8|6|10} x {2"} screw, coating {coated|stainless|galvanized|plain}, box of {100} {$9.80}',
    },
  ],
  finish: [
    {
      label: "finish … covers, coats, dries, tin of …",
      text: "finish {outdoor-oil}, covers {250 sqft} per {gal|qt|L}, {2} coats, dries {12 h}, tin of {1 qt} {$18}",
    },
  ],
  fill: [
    {
      label: "fill … dry, moist, saturated",
      text: "fill {potting-mix}, dry {20 lb/cuft}, moist {45 lb/cuft}, saturated {75 lb/cuft}",
    },
  ],
  tools: [
    {
      label: "tools … kerf, miters, bevels, rips",
      text: 'tools\n  kerf {1/8"}\n  miters to {47°}\n  bevels to {45°}\n  {rips|no ripping}\n',
    },
  ],
  yard: [{ label: "yard … tax", text: "yard {Hillside timber yard}\n  tax {6%}\n" }],
  part: [
    { label: "part … of …, length …", text: 'part {leg} {4} of {@board:2x4}, length {28-1/2"}' },
    {
      label: "part … of …, mitered ends",
      text: 'part {rail} {2} of {@board:2x4}, length {40"} {long point to long point|short point to short point|overall}, ends mitered {45°}',
    },
  ],
  assembly: [
    {
      label: "assembly … place …",
      text: "assembly {gable}\n  place {@part:rafter} {across, flat|across, on edge|upright}, on floor\n",
    },
  ],
  ring: [{ label: "ring … = …", text: "ring {seat} = {6} {@part:board}" }],
  box: [
    {
      label: "box … walls, bottom, filled with, drains",
      text: 'box {trough}, walls {@part:side}, bottom {@part:floor-board}\n  filled with {@fill:potting-mix} to {1"} below rim\n  {drains through the gaps|no drain|drains by 12 holes of 1/2"}\n',
    },
  ],
  place: [
    {
      label: "place … upright, on floor, at each corner of …",
      text: 'place {@unplaced:leg} upright, wide face {front|right}, on floor, at each corner of {46-1/2"} x {16-1/2"}',
    },
    {
      label: "place … on …, flush with …",
      text: "place {@unplaced:side} {across|front to back}, {flat|on edge}, on {@placed:legs}, flush with {left|right} of {@placed:legs}, flush with {front|back} of {@placed:legs}",
    },
    {
      label: "place … spread over …",
      text: "place {@unplaced:slat} {front to back|across}, {flat|on edge}, on {@placed:rails}, flush with {front|left} of {@placed:rails}, {8} {across|deep}, spread over {@placed:rails}",
    },
  ],
  fasten: [
    {
      label: "fasten … into …, screws at each crossing",
      text: 'fasten {@part:side} face into {@part:leg} {face|edge}, {2} #8 x {1-5/8"} at each crossing, pilot {1/8"}',
    },
    {
      label: "fasten … into …, screws so far apart",
      text: 'fasten {@part:side} face into {@part:ledger} {face|edge}, #8 x {1-5/8"}, {6"} on center',
    },
  ],
  glue: [{ label: "glue … to …", text: "glue {@part:slat} to {@part:rail}, with {waterproof-glue}" }],
  coat: [{ label: "coat … with …", text: "coat {@part:side} with {@finish:oil-finish}, {2} coats" }],
  line: [{ label: "line … with …", text: 'line {@box:trough} with {@roll:pond-liner}, fold {3"}' }],
  load: [{ label: "load … so heavy", text: "load {@part:shelf} {40 lb} {spread|anywhere|middle}" }],
  must: [
    {
      label: "must … at most … because …",
      text: 'must {@measure:overall height of plan} {at most|at least} {32"} because {small children must reach it}',
    },
  ],
  accept: [{ label: "accept … because …", text: "accept {@code:over-budget} because {why it may stand}" }],
  note: [{ label: "note …", text: "note {What whoever builds it must know.}" }],
  step: [
    {
      label: "step … uses, takes",
      text: "step {Build the two ends}\n  uses {@part:leg}\n  takes {30 min}\n",
    },
  ],
  built: [
    {
      label: "built … by …, measured, changed",
      text: 'built {2026-05-09} by {the garden class}\n  measured {@measure:rim-height} = {27-1/2"} because {the wall leans}\n  changed {Two more screws in each corner}\n',
    },
  ],
};

/** The words of entries first, then whole ones of each; what is likely next before all. */
export function entryOffers(asking: Asking, keyword: number): Offer[] {
  const { entries } = mainTree(asking);
  const others = entries.filter((e) => e.start !== keyword);
  const had = (kind: string) => others.some((e) => e.kind === kind);
  const may = ENTRY_FORMS.filter(({ word }) => !ONCE.has(word) || !had(word));
  const likely = likelyEntry(asking, others, keyword);
  const words = may.map((form, i) =>
    wordOffer(form, i / 100 + (form.word === likely ? RANK.likely : 0), asking),
  );
  const whole = may.flatMap(({ word }, i) =>
    (WHOLE[word] ?? []).map((one, n) => wholeOffer(word, one, RANK.name + i / 100 + n / 1000, asking)),
  );
  return [...words, ...whole].sort((a, b) => a.rank - b.rank);
}

/** A plan has one line of these. */
const ONCE = new Set(["plan", "shop", "tools", "yard"]);

const mainTree = ({ plan }: Asking) => plan.worked.loaded.whole;

function wordOffer(form: EntryForm, rank: number, { language }: Asking): Offer {
  return offer(form.word, "entry", rank, {
    detail: form.example.split("\n")[0]!,
    documentation: () => paragraphs(formText(form, language), planBlock(form.example)),
    goesOn: form.word !== "tools",
  });
}

function wholeOffer(word: string, { label, text }: Whole, rank: number, asking: Asking): Offer {
  const { plain, snippet } = filled(text, (list) => namesIn(list, asking));
  return offer(label, "snippet", rank, {
    detail: COMPLETION_WORDS[asking.language].wholeEntry,
    documentation: () => paragraphs(formText(entryForm(word)!, asking.language), planBlock(plain)),
    insertText: plain,
    snippet,
  });
}

/** The names of the plan that may fill a place. */
function namesIn(list: string, { plan }: Asking): readonly string[] {
  const { scope, placing } = plan.worked;
  const of = (...kinds: readonly DeclaredKind[]) =>
    [...scope.declared.values()].filter((d) => kinds.includes(d.kind)).map((d) => d.name);
  const placed = new Set(placing.plan.placements.map((p) => p.subject.name));
  switch (list) {
    case "board":
      return of("stock", "sheet");
    case "unplaced":
      return of("part", "assembly", "ring").filter((name) => !placed.has(name));
    case "placed":
      return [...placed];
    case "code":
      return [...new Set(plan.problems.filter((p) => p.class !== "error").map((p) => p.code))];
    case "part":
    case "fill":
    case "finish":
    case "box":
    case "roll":
    case "measure":
      return of(list);
    default:
      return [];
  }
}

/** What a builder writes next: the plan, what it is made of, its parts, their places, their joints; else more of the same. */
function likelyEntry(asking: Asking, others: readonly Entry[], at: number): string {
  const { scope } = asking.plan.worked;
  const had = (...kinds: readonly string[]) => others.some((e) => kinds.includes(e.kind));
  const declares = (kind: DeclaredKind) => [...scope.declared.values()].some((d) => d.kind === kind);
  const before = others.findLast((e) => e.start < at)?.kind;
  if (others.length === 0) return "plan";
  const isShop = !had("plan", "part", "place");
  if (isShop) return before && before !== "unknown" ? before : "stock";
  if (!had("shop", "bring") && !declares("stock")) return "shop";
  if (!declares("part")) return "part";
  if (before === "part" || before === "place") {
    const left = namesIn("unplaced", asking).length > 0;
    return before === "part" && !had("place") ? "part" : left ? "place" : "fasten";
  }
  return before && before !== "unknown" ? before : "part";
}
