/** What holds for the whole plan: units, place, limits, money, tools; with what was taken for granted. */
import type { Clause, Entry, Expression } from "../../grammar/tree";
import { type At, ifKnown, type Loaded, type Told, type Value } from "../plan";
import type { LumberStandard } from "../trade";
import {
  ANGLE,
  type Dimension,
  type Display,
  exactly,
  fraction,
  INCH,
  LENGTH,
  MILLIMETRES,
  money,
  NUMBER,
  PRESSURE,
  type Quantity,
  SIXTEENTHS,
  WEIGHT,
} from "../units";
import type { Worker } from "./expressions";

export interface Limit {
  readonly value: Quantity;
  readonly by: string;
  readonly at: At;
}

export interface Extent3 {
  readonly wide?: Quantity;
  readonly deep?: Quantity;
  readonly high?: Quantity;
}

export interface Tax {
  readonly share: Quantity;
  /** The title of the yard whose tax it is, which may be empty; null where the plan itself says it. */
  readonly yard: string | null;
}

export interface Settings {
  readonly title: string;
  readonly at: At | undefined;
  readonly display: Display;
  readonly language: number;
  readonly languageAt: At | undefined;
  readonly place: "outdoors" | "indoors" | undefined;
  readonly nearChildren: boolean;
  readonly nearGuard: boolean;
  /** To what it is fixed at its top, in the plan's own words; empty where it stands free. */
  readonly anchoredTo: string;
  readonly space: Extent3 | undefined;
  readonly wayIn: Extent3 | undefined;
  readonly floorLimit: Limit | undefined;
  readonly footLimit: Limit | undefined;
  /** What else uses the floor limit. */
  readonly shares: readonly { readonly what: string; readonly value: Quantity; readonly at: At }[];
  readonly budget: { readonly value: Quantity; readonly at: At } | undefined;
  /** Where the wood is bought; empty where no file says it. */
  readonly yard: string;
  readonly tax: Tax | undefined;
  /** Extra pieces: `count` in every `per`. */
  readonly spare: { readonly count: number; readonly per: number } | undefined;
  readonly make: number;
  readonly kerf: {
    readonly value: Quantity;
    readonly from: "plan" | "tools" | "assumed";
    /** The clause that says it. */
    readonly at: At | undefined;
  };
  readonly lumber: LumberStandard;
  readonly writtenBy: string;
  readonly licence: string;
  readonly tools: Tools | undefined;
}

export interface Tools {
  readonly at: At;
  readonly miters: Quantity | undefined;
  readonly bevels: Quantity | undefined;
  readonly rips: boolean | undefined;
  readonly has: readonly string[];
}

/** The most copies of a plan that are worked out. */
export const MOST_COPIES = 1000;

const STANDARDS = { dry: "ps20-dry", green: "ps20-green", "planed metric": "planed-metric" } as const;
/** Taken where no kerf is given: a full-kerf blade (trade-facts table of kerfs; from memory). */
const KERF = exactly(LENGTH, fraction.divide(INCH, fraction.rational(8))!);

/** Reads the plan entry and the tools of the main file (tools may stand in the shop file). */
export function settingsOf(loaded: Loaded, worker: Worker): Settings {
  const main = loaded.files[0]!;
  const plans = main.tree.entries.filter((e): e is Entry & { kind: "plan" } => e.kind === "plan");
  const plan = plans[0];
  for (const extra of plans.slice(1)) {
    const at = { file: main.file, start: extra.keyword.start, end: extra.keyword.end };
    worker.fault({ kind: "said-twice", at, what: "plan", first: placeOf(main.file, plan!.keyword) });
  }
  const read = new Reader(worker, main.file, plan?.clauses ?? []);
  const tools = toolsOf(loaded, worker);
  const yards = yardsOf(loaded, worker);
  const units = read.clause("units");
  const kerf = read.length("kerf", "the kerf");
  read.clause("lumber");
  const make = read.clause("make");
  const language = read.clause("language");
  const spare = read.clause("spare");
  const whole = (e: Expression, what: Told, most: number) =>
    ifKnown(worker.wholeNumber(e, main.file, what, most));
  const spareCount = spare && whole(spare.count, "the number of spares", 1000);
  const sparePer = spare && whole(spare.per, "the number that one spare is for", 100_000);
  const budget = read.clause("budget");
  return {
    title: plan?.title.text ?? "",
    at: plan && placeOf(main.file, plan.keyword),
    display: displayOf(units, worker, main.file),
    language: (language && whole(language.value, "the language version", 1_000_000)) ?? 1,
    languageAt: language && placeOf(main.file, language),
    place: read.clause("setting")?.where,
    nearChildren: read.all("near").some((c) => c.what === "children"),
    nearGuard: read.all("near").some((c) => c.what === "guard"),
    anchoredTo: read.clause("anchored")?.text.text ?? "",
    space: read.extents("space"),
    wayIn: read.extents("way in"),
    floorLimit: read.limit("floor limit", PRESSURE, "a pressure, like 58 psf,"),
    footLimit: read.limit("foot limit", WEIGHT, "a weight, like 500 lb,"),
    shares: read.all("of which").flatMap((c) => {
      const value = ifKnown(worker.expect(c.value, main.file, PRESSURE, "a pressure, like 40 psf,"));
      return value ? [{ what: c.what.text, value, at: placeOf(main.file, c) }] : [];
    }),
    budget: budget && read.money(budget.value, placeOf(main.file, budget)),
    yard: yards.find(({ title }) => title !== "")?.title ?? "",
    tax: taxFrom(read, yards, worker, main.file),
    spare: spareCount && sparePer ? { count: spareCount, per: sparePer } : undefined,
    make: (make && whole(make.value, "how many to make", MOST_COPIES)) ?? 1,
    kerf: kerf
      ? { value: kerf, from: "plan", at: placeOf(main.file, read.all("kerf")[0]!) }
      : tools?.kerf
        ? { value: tools.kerf, from: "tools", at: tools.kerfAt }
        : { value: KERF, from: "assumed", at: undefined },
    lumber: lumberOf(loaded),
    writtenBy: read.clause("written by")?.text.text ?? "",
    licence: read.clause("licence")?.text.text ?? "",
    tools,
  };
}

/** The same settings with lengths shown in this system, to the usual marks of its tape where the plan shows the other. */
export const shownIn = (settings: Settings, system: Display["system"]): Settings =>
  settings.display.system === system
    ? settings
    : { ...settings, display: system === "inches" ? SIXTEENTHS : MILLIMETRES };

/** The space the plan must fit, for places that are measured from its right, its back or its top. */
export function roomOf(loaded: Loaded, worker: Worker): Extent3 | undefined {
  const { file, tree } = loaded.files[0]!;
  const plan = tree.entries.find((e) => e.kind === "plan");
  return plan && new Reader(worker, file, plan.clauses).extents("space");
}

/** The standard that section names follow: known before anything is worked out, since lengths may lean on a section. */
export function lumberOf(loaded: Loaded): LumberStandard {
  const plan = loaded.files[0]!.tree.entries.find((e) => e.kind === "plan");
  const clause = plan?.clauses.find((c): c is Of<"lumber"> => c.kind === "lumber");
  return STANDARDS[clause?.standard ?? "dry"];
}

const placeOf = (file: string, span: { start: number; end: number }): At => ({
  file,
  start: span.start,
  end: span.end,
});

type Of<K extends Clause["kind"]> = Clause & { readonly kind: K };

/** Clauses of one entry by kind; a kind said twice where once is meant is a fault. */
export class Reader {
  constructor(
    private readonly worker: Worker,
    private readonly file: string,
    private readonly clauses: readonly Clause[],
  ) {}

  all<K extends Clause["kind"]>(kind: K): Of<K>[] {
    return this.clauses.filter((c): c is Of<K> => c.kind === kind);
  }

  clause<K extends Clause["kind"]>(kind: K): Of<K> | undefined {
    return this.once(kind, this.all(kind));
  }

  /** The first of clauses that say the same thing; the second is a fault. */
  once<C extends Clause>(what: string, [first, second]: readonly C[]): C | undefined {
    if (first && second) {
      this.worker.fault({ kind: "said-twice", at: this.at(second), what, first: this.at(first) });
    }
    return first;
  }

  at(clause: Clause): At {
    return placeOf(this.file, clause);
  }

  /** An amount of nothing or more; undefined where no such clause is there. `name` tells what would be less than nothing. */
  amount(
    kind: "tax" | "weighs" | "dries" | "wait" | "takes",
    wanted: Dimension,
    what: Told,
    name: Told,
  ): Value<Quantity> | undefined {
    const clause = this.clause(kind);
    if (!clause) return undefined;
    const value = this.worker.expect(clause.value, this.file, wanted, what);
    return this.worker.notNegative(value, clause.value, this.file, name);
  }

  length(
    kind: "kerf" | "end trim" | "width" | "thickness" | "thread" | "pilot" | "clearance" | "fold" | "overlap",
    what: Told,
  ): Quantity | undefined {
    const clause = this.clause(kind);
    return clause && ifKnown(this.worker.positiveLength(clause.value, this.file, what));
  }

  limit(kind: "floor limit" | "foot limit", wanted: Dimension, what: Told): Limit | undefined {
    const clause = this.clause(kind);
    const value = clause && ifKnown(this.worker.expect(clause.value, this.file, wanted, what));
    return clause && value ? { value, by: clause.by?.text ?? "", at: this.at(clause) } : undefined;
  }

  extents(kind: "space" | "way in" | "inside" | "outline" | "tapering"): Extent3 | undefined {
    const clause = this.clause(kind);
    if (!clause) return undefined;
    const sides: { -readonly [K in keyof Extent3]: Extent3[K] } = {};
    for (const extent of clause.extents) {
      const value = ifKnown(this.worker.positiveLength(extent.value, this.file, "this side"));
      if (value) sides[extent.side === "long" ? "wide" : extent.side] = value;
    }
    return sides;
  }

  /** An amount of money in any one currency. */
  money(e: Expression, at: At): { value: Quantity; at: At } | undefined {
    const value = this.worker.evaluate(e, this.file);
    if (value.state !== "known") return undefined;
    if (value.value.dim.money === 1 && value.value.dim.currency !== "") return { value: value.value, at };
    const text = e.kind === "literal" ? e.text : "";
    this.worker.fault({
      kind: "wanted",
      at,
      what: "an amount of money, like $160,",
      wanted: money("$"),
      found: value.value,
      text,
    });
    return undefined;
  }
}

/** A share below one: `tax 8` would be eight times the price. */
function taxOf(read: Reader, worker: Worker, file: string): Quantity | undefined {
  const what = "a share below 100%, like 8%,";
  const tax = ifKnown(read.amount("tax", NUMBER, what, "the tax"));
  const e = read.clause("tax")?.value;
  if (!tax || !e || tax.approx < 1) return tax;
  const at = { file, start: e.start, end: e.end };
  worker.fault({ kind: "wanted", at, what, wanted: NUMBER, found: tax, text: "" });
  return undefined;
}

interface Yard {
  readonly title: string;
  readonly tax: Tax | undefined;
}

/** The plan's own, else that of the first yard that says one. */
function taxFrom(read: Reader, yards: readonly Yard[], worker: Worker, file: string): Tax | undefined {
  if (read.all("tax").length === 0) return yards.find(({ tax }) => tax)?.tax;
  const share = taxOf(read, worker, file);
  return share && { share, yard: null };
}

/** One of each file: the plan's own first, then that of the shop file, then those of files that are brought. */
function yardsOf({ files }: Loaded, worker: Worker): Yard[] {
  const inOrder = (["plan", "shop", "brought"] as const).flatMap((role) =>
    files.filter((one) => one.role === role),
  );
  return inOrder.flatMap(({ file, tree }): Yard[] => {
    const found = tree.entries.filter((e): e is Entry & { kind: "yard" } => e.kind === "yard");
    const [entry, second] = found;
    if (!entry) return [];
    if (second) {
      const [first, at] = [placeOf(file, entry.keyword), placeOf(file, second.keyword)];
      worker.fault({ kind: "said-twice", at, what: "yard", first });
    }
    const read = new Reader(worker, file, entry.clauses);
    const share = taxOf(read, worker, file);
    const title = entry.title.text;
    return [{ title, tax: share && { share, yard: title } }];
  });
}

function displayOf(units: Of<"units"> | undefined, worker: Worker, file: string): Display {
  if (!units) return SIXTEENTHS;
  const usual = units.system === "inches" ? SIXTEENTHS : MILLIMETRES;
  const mark = units.mark && ifKnown(worker.positiveLength(units.mark, file, "the finest mark"));
  return mark?.exact ? { system: units.system, mark: mark.exact } : usual;
}

function toolsOf(
  loaded: Loaded,
  worker: Worker,
): (Tools & { kerf: Quantity | undefined; kerfAt: At | undefined }) | undefined {
  for (const { file, tree } of loaded.files) {
    const [entry, second] = tree.entries.filter((e) => e.kind === "tools");
    if (!entry) continue;
    if (second) {
      const [first, at] = [placeOf(file, entry.keyword), placeOf(file, second.keyword)];
      worker.fault({ kind: "said-twice", at, what: "tools", first });
    }
    const read = new Reader(worker, file, entry.clauses);
    const angle = (kind: "miters to" | "bevels to") => {
      const clause = read.clause(kind);
      return clause && ifKnown(worker.expect(clause.value, file, ANGLE, "an angle"));
    };
    return {
      at: placeOf(file, entry.keyword),
      kerf: read.length("kerf", "the kerf"),
      kerfAt: read.all("kerf").map((clause) => placeOf(file, clause))[0],
      miters: angle("miters to"),
      bevels: angle("bevels to"),
      rips: read.clause("rips")?.can,
      has: read.all("has").flatMap((c) => c.names.map((n) => n.text)),
    };
  }
  return undefined;
}
