// Cautions for the person who builds: plain sentences, each called up by what a plan does.
import { COMMON_PRACTICE, FROM_MEMORY, type Row, remembered, type Source } from "./row";

/** What in a plan, or in the tools it needs, calls a caution up. "always" is on every sheet. */
export type CautionTag =
  | "always"
  | "structure"
  | "sawing"
  | "power-saw"
  | "circular-saw"
  | "table-saw"
  | "push-stick"
  | "miter"
  | "rip"
  | "short-piece"
  | "screws"
  | "nails"
  | "dust-cedar"
  | "treated"
  | "treated-food"
  | "treated-soil"
  | "treated-finish"
  | "treated-screws"
  | "stains-iron"
  | "oil-finish"
  | "salvage"
  | "salvage-unknown"
  | "pallet"
  | "food"
  | "lift-over-51lb"
  | "wet-box"
  | "tall"
  | "hung"
  | "near-guard"
  | "floor"
  | "children"
  | "small-parts"
  | "dig";

export interface Caution {
  /** Any one of these calls it up. */
  readonly when: readonly CautionTag[];
  readonly text: string;
}

/** The cautions that these tags call up, in the order of the table. */
export function cautionsFor(tags: Iterable<CautionTag>): readonly Row<Caution>[] {
  const wanted = new Set<CautionTag>([...tags, "always"]);
  return cautions.filter(({ value }) => value.when.some((tag) => wanted.has(tag)));
}

const CIRCULAR_SAWS: Source = {
  document: "EM 385-1-1",
  table: "13.C, portable circular saws",
  confidence: "read",
};
const RADIAL_SAWS: Source = {
  document: "WAC 296-155-370",
  table: "ripping",
  via: "casetext.com",
  confidence: "read",
};
const NIOSH_LIFT: Source = {
  document: "NIOSH lifting equation",
  table: "load constant 51 lb",
  via: "osha.gov",
  confidence: "read",
};
const NOISE: Source = {
  document: "29 CFR 1910.95",
  table: "noise exposure",
  via: "a safety web page",
  confidence: "secondary",
};
const TREATED: Source = {
  document: "EPA consumer sheet on treated wood",
  via: "a garden web page (rainyside.com)",
  confidence: "read",
};
const CCA: Source = {
  document: "extension service (Michigan), answer 178073",
  via: "ask.extension.org",
  confidence: "read",
};
const EYES = remembered("ANSI Z87.1", "eye protection");
const DUST = remembered("NIOSH", "wood dust, 1 mg/m3");
const CEDAR_DUST = remembered("ACGIH", "western redcedar dust, 0.5 mg/m3");
const SMALL_PARTS = remembered("16 CFR 1501", "small parts cylinder");
const PALLETS = remembered("ISPM 15", "marks of treatment on pallets");
const UC4A = remembered("AWPA", "use categories UC3B and UC4A");

/** Stands with every structural figure, in hovers and on the sheet. */
export const structuralCaution: Row<Caution> = caution("estimate", ["always", "structure"], COMMON_PRACTICE, [
  "Every figure for strength, weight and load is an estimate for small builds; local code and a licensed professional decide.",
  "Buildings, roofs, stairs, guards, decks, swings and anything that holds people up high are outside what is judged here.",
]);

const SAWS: readonly CautionTag[] = ["power-saw", "circular-saw", "table-saw", "miter", "rip"];

export const cautions: readonly Row<Caution>[] = [
  structuralCaution,
  caution("floor", ["floor"], COMMON_PRACTICE, [
    "A balcony, a roof or a weak floor: ask the building's owner or engineer before anything is set on it.",
    "Its limit is for everything together, people and snow as well as the box.",
  ]),
  caution("guard", ["near-guard"], COMMON_PRACTICE, [
    "Beside a guard, anything a child can stand on makes the guard lower. Keep it about 4 ft away.",
  ]),
  caution("tall", ["tall"], COMMON_PRACTICE, [
    "Tall and narrow things tip. Anchor this one so that it cannot, and hold it while it is being built.",
  ]),
  caution("hung", ["hung"], COMMON_PRACTICE, [
    "What hangs on a wall pulls out of plaster and wallboard: screw it into the studs or the masonry behind, and find them first.",
  ]),
  caution("circular-saw", ["circular-saw"], CIRCULAR_SAWS, [
    "A circular saw's guards cover its teeth above and below the shoe, and the lower one returns by itself when the saw is drawn back: see that it does before every cut.",
  ]),
  caution("table-saw", ["table-saw"], RADIAL_SAWS, [
    "Rip with the splitter or riving knife and the anti-kickback device in place.",
  ]),
  caution("push-stick", ["push-stick"], FROM_MEMORY, [
    "Push narrow rips through a table saw with a push stick: the board can kick back.",
  ]),
  caution("rip", ["rip"], FROM_MEMORY, [
    "A long rip with a hand-held saw can bind and kick back: clamp the board and a guide, and keep the cut open.",
  ]),
  caution("short-piece", ["short-piece"], FROM_MEMORY, [
    "Pieces under 6 in are cut from a long board and clamped, never held by hand at the saw.",
  ]),
  caution("miter", ["miter"], FROM_MEMORY, [
    "Clamp small stock on a miter saw; 6 in is the shortest piece to hold.",
  ]),
  caution("blade-change", SAWS, FROM_MEMORY, ["Unplug the saw before changing its blade."]),
  caution("eyes", [...SAWS, "sawing", "screws", "nails"], EYES, [
    "Wear eye protection when sawing, drilling and driving.",
  ]),
  caution("ears", SAWS, NOISE, ["Circular saws run at about 100 to 110 dBA: wear ear protection."]),
  caution("splitting", ["screws"], FROM_MEMORY, [
    "Drill a pilot hole near ends and edges, and in thin or brittle wood, even where the tables ask for none.",
  ]),
  caution("dust", [...SAWS, "sawing"], DUST, [
    "Wood dust harms the lungs: wear a dust mask, and cut outdoors if you can.",
  ]),
  caution("dust-cedar", ["dust-cedar"], CEDAR_DUST, [
    "Western redcedar dust can bring on asthma: wear a dust mask for every cut and for sanding.",
  ]),
  caution("treated-dust", ["treated"], COMMON_PRACTICE, [
    "Dust of treated wood is worse than that of plain wood: cut it outdoors, with a dust mask.",
  ]),
  caution("treated-burn", ["treated", "salvage-unknown"], TREATED, [
    "Never burn treated wood or its scraps, nor salvage that may be treated.",
  ]),
  caution("treated-food", ["treated-food"], CCA, [
    "Treated lumber sold today holds no arsenic, but its copper may leach. Line a box that grows food with landscape fabric if that concerns you.",
  ]),
  caution("treated-contact", ["treated-soil"], UC4A, [
    "Treated wood that touches soil wants the ground-contact mark UC4A; UC3B is for above ground only.",
  ]),
  caution("treated-drying", ["treated-finish"], FROM_MEMORY, [
    "Fresh treated lumber must dry before it takes a finish: two to four weeks or more, until sprinkled water soaks in.",
  ]),
  caution("treated-screws", ["treated-screws"], FROM_MEMORY, [
    "Copper-treated lumber wants hot-dip galvanized or stainless fasteners: it corrodes others.",
  ]),
  caution("black-stain", ["stains-iron"], FROM_MEMORY, [
    "Cedar, redwood and oak stain black around steel: use stainless fasteners.",
  ]),
  caution("old-treated", ["salvage-unknown"], CCA, [
    "Treated lumber sold for homes before 2004 may hold arsenic: do not use it for a box.",
  ]),
  caution("salvage-poison", ["salvage-unknown"], FROM_MEMORY, [
    "Do not use railroad ties (creosote) or wood treated with pentachlorophenol.",
  ]),
  caution("salvage", ["salvage"], COMMON_PRACTICE, [
    "Look for nails before sawing salvage, and pull them.",
    "Old paint may hold lead: do not sand or cut it until it has been tested.",
    "Leave wood that shows spills.",
  ]),
  caution("pallet", ["pallet"], PALLETS, [
    "Read the stamps on pallet wood: leave any marked MB, which was gassed, and any that has none.",
  ]),
  caution("near-food", ["food"], COMMON_PRACTICE, [
    "Salvage, treated wood, finish or liner that is not known to be safe near food stays unknown: keep it away from what is eaten.",
  ]),
  caution("oily-rags", ["oil-finish"], COMMON_PRACTICE, [
    "Oily rags heat themselves and can catch fire: lay them flat outdoors to dry, or drown them in water.",
  ]),
  caution("lifting", ["lift-over-51lb"], NIOSH_LIFT, [
    "51 lb is the most for one person in the best posture, and reaching or stooping makes it less: get help, or carry it in parts.",
  ]),
  caution("wet-box", ["wet-box"], FROM_MEMORY, [
    "Do not move a filled box, least of all a wet one: set it in place empty, and empty it before moving it.",
  ]),
  caution("digging", ["dig"], COMMON_PRACTICE, [
    "Have buried lines marked before digging, or before driving an anchor.",
  ]),
  caution("children", ["children"], COMMON_PRACTICE, [
    "Keep children away while you build, and pick up every dropped screw and offcut: small ones are swallowed.",
  ]),
  caution("small-parts", ["small-parts"], SMALL_PARTS, [
    "A loose piece that fits a tube 1-1/4 in wide and 2-1/4 in deep can choke a small child: fix it so that it cannot come off.",
  ]),
];

export const cautionRows: readonly Row<unknown>[] = cautions;

function caution(
  key: string,
  when: readonly CautionTag[],
  source: Source,
  sentences: readonly string[],
): Row<Caution> {
  return { key, value: { when, text: sentences.join(" ") }, unit: "", source };
}
