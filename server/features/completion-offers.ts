/** From what could come next to what is offered: names in scope first, then what can be asked of them, then words. */
import type { Span } from "../../grammar/tree";
import { CHECKS } from "../checks";
import { type Declared, ifKnown } from "../plan";
import {
  cropNames,
  fillNames,
  finishNames,
  linerNames,
  section,
  sectionNames,
  species,
  speciesNames,
  usualScrewLengths,
} from "../trade";
import {
  ANGLE,
  AREA,
  DENSITY,
  type Dimension,
  LENGTH,
  NUMBER,
  PRESSURE,
  sameDimension,
  TIME,
  VOLUME,
  WEIGHT,
} from "../units";
import { kindWord, type Size, type Worked } from "../worked";
import type { Checked } from "./checked";
import type { Next, Table, Unit } from "./completion-patterns";
import { FUNCTION_DOCS, PROPERTY_DOCS } from "./hover-values";
import { paragraphs, planBlock } from "./markdown";
import { detailOf } from "./symbols";
import { exactText } from "./values";

export interface Completion {
  readonly label: string;
  readonly kind:
    | "entry"
    | "clause"
    | "word"
    | "section"
    | "measure"
    | "property"
    | "function"
    | "unit"
    | "size"
    | "code"
    | "thing";
  readonly detail: string;
  /** Markdown. */
  readonly documentation: string;
  readonly insertText: string;
  /** The same with places to fill in, for a whole entry. */
  readonly snippet?: string;
  /** What the text is put in place of. */
  readonly range: Span;
  readonly sortText: string;
}

/** An offer before its place is known; the lower the rank, the earlier it comes. */
export type Offer = Omit<Completion, "range" | "sortText"> & { readonly rank: number };

export const offer = (
  label: string,
  kind: Offer["kind"],
  rank: number,
  more: Partial<Omit<Offer, "label" | "kind" | "rank">> = {},
): Offer => ({ label, kind, rank, detail: "", documentation: "", insertText: label, ...more });

/** Everything that fits one of the expectations, each label once, in the order of rank. */
export function offersFor(expected: readonly Next[], plan: Checked): Offer[] {
  const offers = expected.flatMap((next) => offersOf(next, plan));
  return distinct(offers);
}

/** The lowest rank of each label. */
export function distinct(offers: readonly Offer[]): Offer[] {
  const byLabel = new Map<string, Offer>();
  for (const o of offers) {
    const before = byLabel.get(o.label);
    if (!before || o.rank < before.rank) byLabel.set(o.label, o);
  }
  return [...byLabel.values()].sort((a, b) => a.rank - b.rank);
}

const RANK = {
  open: 0,
  name: 1,
  plural: 2,
  other: 3,
  property: 4,
  word: 5,
  function: 6,
  table: 7,
  narrow: 8,
};

function offersOf(next: Next, plan: Checked): Offer[] {
  switch (next.kind) {
    case "words":
      return [wordsOffer(next)];
    case "name":
      return [...declaredOffers(next, plan), ...tableOffers(next.table, plan)];
    case "screw":
      return screwOffers("", plan);
    case "value":
      return [];
  }
}

const NARROW = new Set(["front", "back", "left", "right", "top", "bottom", "middle", "upper", "lower"]);

function wordsOffer({ words, form, doc }: Extract<Next, { kind: "words" }>): Offer {
  const [first = ""] = words;
  const label = words.join(" ");
  if (words[words.length - 1] === "(") {
    const known = FUNCTION_DOCS[first];
    return offer(first, "function", RANK.function, {
      detail: known?.form ?? "",
      documentation: known?.doc ?? "",
      insertText: `${first}(`,
    });
  }
  if (form)
    return offer(label, "clause", RANK.word, {
      detail: form.example,
      documentation: paragraphs(form.doc, planBlock(form.example)),
    });
  if (words.length > 1 && words[words.length - 1] === "of") {
    const property = words.slice(0, -1).join(" ");
    const about = PROPERTY_DOCS[property];
    if (about)
      return offer(label, "property", RANK.property, { documentation: about, insertText: `${label} ` });
  }
  const rank = words.length === 1 && NARROW.has(first) ? RANK.narrow : RANK.word;
  return offer(label, "word", rank, { documentation: doc ?? "" });
}

function declaredOffers(
  { declared, plurals, unit }: Extract<Next, { kind: "name" }>,
  { worked, file }: Checked,
): Offer[] {
  return [...worked.scope.declared.values()]
    .filter(
      (d) => declared.includes(d.kind) && !(unit === "count" && measureRank(d, unit, worked) > RANK.name),
    )
    .flatMap((d) => {
      const from = d.at.file === file ? "" : `, from ${d.at.file}`;
      const detail = [kindWord(d.kind), worth(d, worked)].filter(Boolean).join(": ") + from;
      const rank = d.kind === "measure" ? measureRank(d, unit, worked) : RANK.name;
      const kind = d.kind === "measure" ? "measure" : "thing";
      const single = offer(d.name, kind, rank, { detail });
      const all = `${d.name}${/(s|x|ch|sh)$/.test(d.name) ? "es" : "s"}`;
      if (!plurals || worked.scope.declared.has(all)) return [single];
      return [single, offer(all, kind, RANK.plural, { detail: `every ${d.name}` })];
    });
}

/** What a declared thing comes to, in a few words. */
function worth(d: Declared, worked: Worked): string {
  const { display } = worked.settings;
  if (d.kind === "fastener") return worked.fasteners.find((f) => f.name === d.name)?.size?.text ?? "";
  if (d.kind !== "stock" && d.kind !== "sheet") return detailOf(d.entry, worked);
  const material = worked.materials.find((m) => m.name === d.name);
  const sides = [ifKnown(material?.thickness), ifKnown(material?.width)];
  return sides.flatMap((q) => (q ? [exactText(q, display)] : [])).join(" x ");
}

function measureRank(declared: Declared, unit: Unit | undefined, worked: Worked): number {
  const value = ifKnown(worked.measures.get(declared.name)?.value);
  const wanted = unit && DIMENSIONS[unit];
  return !wanted || !value || sameDimension(value.dim, wanted) ? RANK.name : RANK.other;
}

const DIMENSIONS: Readonly<Partial<Record<Unit, Dimension>>> = {
  length: LENGTH,
  angle: ANGLE,
  weight: WEIGHT,
  pressure: PRESSURE,
  density: DENSITY,
  area: AREA,
  volume: VOLUME,
  time: TIME,
  count: NUMBER,
  share: NUMBER,
};

function tableOffers(table: Table | undefined, plan: Checked): Offer[] {
  const { worked } = plan;
  const { lumber } = worked.settings;
  const declared = (name: string) => worked.scope.declared.has(name);
  switch (table) {
    case "sections":
      return sectionNames(lumber)
        .filter((name) => !declared(name))
        .map((name, i) => {
          const size = section(name, lumber);
          const mark = size?.unit === "mm" ? " mm" : '"';
          const detail = size ? `really ${size.thickness}${mark} x ${size.width}${mark}` : "";
          return offer(name, "section", RANK.table + i / 1000, { detail });
        });
    case "fills":
      return fillNames()
        .filter((name) => !declared(name))
        .map((name) => offer(name, "thing", RANK.table, { detail: "a fill every plan knows" }));
    case "finishes":
      return finishNames()
        .filter((name) => !declared(name))
        .map((name) => offer(name, "thing", RANK.table, { detail: "a finish every plan knows" }));
    case "liners":
      return linerNames()
        .filter((name) => !declared(name))
        .map((name) => offer(name, "thing", RANK.table, { detail: "a liner every plan knows" }));
    case "species":
      return speciesNames().map((name) =>
        offer(name, "word", RANK.table, { detail: species(name)?.title ?? "" }),
      );
    case "crops":
      return cropNames().map((name) => offer(name, "word", RANK.table));
    case "codes":
      return codeOffers(plan);
    case undefined:
      return [];
  }
}

/** Codes that an `accept` line may name: those open in this plan first. An error is never accepted. */
function codeOffers({ problems, accepted }: Checked): Offer[] {
  const open = new Set([...problems, ...accepted.map((a) => a.problem)].map((p) => p.code));
  return CHECKS.filter((c) => c.class !== "error").map((c) =>
    offer(c.code, "code", open.has(c.code) ? RANK.open : RANK.other, {
      detail: `${c.class}: ${c.title}`,
    }),
  );
}

/** Screw sizes: those the shop has, then the usual lengths of a gauge. `typed` is what stands there already: `#8 x 1`. */
export function screwOffers(typed: string, { worked }: Checked): Offer[] {
  const gauge = /^#(\d+)/.exec(typed)?.[1];
  const across = /^(\d[\d.]*) ?[x×]/.exec(typed)?.[1];
  const fits = (size: Size) =>
    (!gauge || size.gauge === Number(gauge)) && (!across || size.text.startsWith(`${across} `));
  const shop = worked.fasteners.flatMap((f) =>
    f.size && /[x×]/.test(f.size.text) && fits(f.size)
      ? [
          offer(f.size.text, "size", RANK.name, {
            detail: `${f.name}, ${f.coating ? `${f.coating} ` : ""}${f.kind}`,
          }),
        ]
      : [],
  );
  const gauges = gauge ? [Number(gauge)] : typed === "" || typed.startsWith("#") ? [6, 8, 10] : [];
  const usual = gauges.flatMap((g) =>
    (usualScrewLengths(g) ?? []).map((l, i) =>
      offer(`#${g} x ${l}"`, "size", RANK.table + g / 100 + i / 10000, { detail: "a usual length" }),
    ),
  );
  return distinct([...shop, ...usual]);
}

/** Units that a number may take, `36` becoming `36"` or `36mm`. */
export function unitOffers(number: string, units: readonly Unit[], { worked }: Checked): Offer[] {
  const metric = worked.settings.display.system === "millimetres";
  const spelled = units.flatMap((u) => (metric ? METRIC : INCHES)[u] ?? []);
  return [...new Set(spelled)].map((unit, i) =>
    offer(`${number}${unit}`, "unit", RANK.open + i / 100, { detail: UNIT_WORDS[unit.trim()] ?? "" }),
  );
}

type Spelled = Readonly<Partial<Record<Unit, readonly string[]>>>;
const INCHES: Spelled = {
  length: ['"', "'", "mm", "cm"],
  inches: ['"'],
  any: ['"', "'", "mm", "cm", "°"],
  angle: ["°"],
  weight: [" lb", " kg"],
  pressure: [" psf", " kPa"],
  density: [" lb/cuft", " kg/m3"],
  area: [" sqft", " m2"],
  volume: [" qt", " gal", " cuft", " L"],
  time: [" min", " h", " days"],
  share: ["%"],
};
const METRIC: Spelled = {
  ...INCHES,
  length: ["mm", "cm", '"', "'"],
  any: ["mm", "cm", '"', "'", "°"],
  weight: [" kg", " lb"],
  pressure: [" kPa", " psf"],
  density: [" kg/m3", " lb/cuft"],
  area: [" m2", " sqft"],
  volume: [" L", " gal", " cuft"],
};
const UNIT_WORDS: Readonly<Record<string, string>> = {
  '"': "inches",
  "'": "feet",
  mm: "millimetres",
  cm: "centimetres",
  "°": "degrees, off square",
  lb: "pounds",
  kg: "kilograms",
  psf: "pounds on a square foot",
  kPa: "kilopascals",
  "lb/cuft": "pounds in a cubic foot",
  "kg/m3": "kilograms in a cubic metre",
  sqft: "square feet",
  m2: "square metres",
  qt: "quarts",
  gal: "gallons",
  cuft: "cubic feet",
  L: "litres",
  min: "minutes",
  h: "hours",
  days: "days",
  "%": "a share",
};
