/** Oils, stains and paints: how far they go, how many coats, how they are sold; those the plan declares, and usual ones. */
import type { Expression } from "../../grammar/tree";
import {
  chain,
  type Declared,
  known,
  type Loaded,
  MISTAKE,
  map,
  type Scope,
  unknown,
  type Value,
} from "../plan";
import { cite, roughThirst, type Source, finish as usualFinish } from "../trade";
import {
  AREA,
  COVERAGE,
  type Dimension,
  exactly,
  fraction,
  over,
  plainly,
  type Quantity,
  refused,
  sameDimension,
  TIME,
  unitNamed,
  VOLUME,
} from "../units";
import type { Assumption } from "./assumptions";
import type { Worker } from "./expressions";
import { Reader } from "./settings";

/** How far a finish goes on one coat, area over volume; both are the same where one number is typed. */
export interface Coverage {
  /** The cautious end: what is bought is reckoned with it. */
  readonly least: Quantity;
  readonly most: Quantity;
}

export interface Tin {
  readonly size: Quantity;
  /** `1 qt` as written, else in litres. */
  readonly text: string;
  readonly price: Quantity | undefined;
}

/** How long a coat dries; both are the same where one time is typed. */
export interface Drying {
  readonly least: Quantity;
  /** What is told, and waited for. */
  readonly most: Quantity;
  readonly source: string;
}

export interface Finish {
  readonly name: string;
  /** Undefined for a usual one that only a line names. */
  readonly declared: Declared | undefined;
  readonly covers: Value<Coverage>;
  /** On rough or weathered wood. */
  readonly coversRough: Value<Coverage>;
  /** A table prints that, or it is taken from what is printed for stain. */
  readonly rough: "printed" | "taken";
  /** As declared; undefined where it does not say. */
  readonly coats: Value<number> | undefined;
  /** How long a coat dries. */
  readonly dries: Value<Drying>;
  readonly tins: readonly Tin[];
  /** Where its coverage comes from; undefined for the plan's own. */
  readonly from: Source | undefined;
  readonly assumed: readonly Assumption[];
}

/** The most coats that are worked out. */
export const MOST_COATS = 100;

/** Finishes that the plan and its shop declare, in their order, then usual ones that its `coat` lines name. */
export function finishesOf(loaded: Loaded, scope: Scope, worker: Worker): Finish[] {
  const declared = [...scope.declared.values()].filter((d) => d.kind === "finish");
  const named = loaded.files[0]!.tree.entries.flatMap((e) => (e.kind === "coat" ? [e.with.text] : []));
  const usual = [...new Set(named)].filter((name) => !scope.declared.has(name) && usualFinish(name));
  return [...declared.map((d) => workFinish(d, worker)), ...usual.map(undeclared)];
}

function workFinish(declared: Declared, worker: Worker): Finish {
  const { entry, at, name } = declared;
  const { file } = at;
  const read = new Reader(worker, file, entry.clauses);
  const clause = read.clause("covers");
  const coats = read.clause("coats of");
  const usual = usualRow(name);
  const broken = entry.clauses.some((c) => c.kind === "broken");
  const typed = clause && map(coverageOf(clause, file, worker), (q): Coverage => ({ least: q, most: q }));
  const unsaid = broken ? MISTAKE : unknown("unsaid", "unsaid how far it goes", { name });
  const covers = typed ?? (usual && !broken ? known(usual.covers) : unsaid);
  const taken = !typed && usual && !broken ? usual : undefined;
  const dries = read.amount("dries", TIME, "a time, like 12 h,", "how long a coat dries");
  const row = dries || broken ? undefined : usual;
  return {
    name,
    declared,
    covers,
    coversRough: taken ? known(taken.coversRough) : map(covers, thirsty),
    rough: taken?.rough ?? "taken",
    coats: coats && worker.wholeNumber(coats.value, file, "the number of coats", MOST_COATS),
    dries: dries
      ? map(dries, (q): Drying => ({ least: q, most: q, source: `the line of ${name}` }))
      : broken
        ? MISTAKE
        : (usual?.dries ?? dryingUnsaid(name)),
    tins: read.all("tin").flatMap((c): Tin[] => {
      const size = positive(c.size, file, VOLUME, "a volume, like 1 qt,", "what a tin holds", worker);
      const price = c.price && read.money(c.price, { file, start: c.price.start, end: c.price.end })?.value;
      return size.state === "known" ? [{ size: size.value, text: tinText(c.size, size.value), price }] : [];
    }),
    from: taken?.source,
    assumed: [taken?.spread, row?.drying].filter((one) => one !== undefined),
  };
}

function undeclared(name: string): Finish {
  const { covers, coversRough, rough, dries, source, spread, drying } = usualRow(name)!;
  return {
    name,
    declared: undefined,
    covers: known(covers),
    coversRough: known(coversRough),
    rough,
    coats: undefined,
    dries,
    tins: [],
    from: source,
    assumed: drying ? [spread, drying] : [spread],
  };
}

/** The table's row of a usual finish, in the plan's own kinds of value. */
function usualRow(name: string) {
  const row = usualFinish(name);
  if (!row) return undefined;
  const { smooth, rough, recoat } = row;
  const { low, high } = smooth.value;
  const spread: Assumption = { kind: "spread", finish: name, smooth: smooth.value, rough: rough?.value };
  const drying: Assumption | undefined = recoat && { kind: "drying", hours: recoat.value };
  return {
    covers: coverage(low, high),
    coversRough: rough ? coverage(rough.value.low, rough.value.high) : thirsty(coverage(low, high)),
    rough: rough ? ("printed" as const) : ("taken" as const),
    dries: recoat
      ? known({
          least: hours(recoat.value.low),
          most: hours(recoat.value.high),
          source: cite(recoat.source),
        })
      : dryingUnsaid(name),
    source: smooth.source,
    spread,
    drying,
  };
}

const dryingUnsaid = (name: string): Value<Drying> => unknown("unsaid", "unsaid drying", { name });

const hours = (n: number): Quantity => exactly(TIME, fraction.rational(n * 60));

const coverage = (low: number, high: number): Coverage => ({
  least: sqftPerGal(low),
  most: sqftPerGal(high),
});

const SQFT_PER_GAL = fraction.divide(unitNamed("sqft")!.factor, unitNamed("gal")!.factor)!;
const sqftPerGal = (n: number): Quantity =>
  exactly(COVERAGE, fraction.multiply(fraction.rational(n), SQFT_PER_GAL));

const thirsty = ({ least, most }: Coverage): Coverage => ({ least: halved(least), most: halved(most) });

/** How far it goes where it is drunk as rough wood does. */
const halved = (q: Quantity): Quantity =>
  q.exact
    ? exactly(q.dim, fraction.divide(q.exact, fraction.rational(roughThirst.value))!)
    : { ...q, approx: q.approx / roughThirst.value };

/** Volumes as a tin's label spells them. */
const SPELLED: Readonly<Record<string, string>> = {
  gallon: "gal",
  gallons: "gal",
  quart: "qt",
  quarts: "qt",
  litre: "L",
  litres: "L",
  liter: "L",
  liters: "L",
};

type Covers = Extract<Declared["entry"]["clauses"][number], { kind: "covers" }>;

/** `250 sqft per gal` as area over volume. */
function coverageOf({ value, per }: Covers, file: string, worker: Worker): Value<Quantity> {
  const area = positive(value, file, AREA, "an area, like 250 sqft,", "how far it goes", worker);
  const spelled = Object.hasOwn(SPELLED, per.text) ? SPELLED[per.text]! : per.text;
  const unit = unitNamed(spelled);
  if (!unit || !sameDimension(unit.dim, VOLUME)) {
    const at = { file, start: per.start, end: per.end };
    const wants = "a volume, like gal or L,";
    return worker.fault({ kind: "unknown-name", at, name: per.text, near: [], wants, fixed: true });
  }
  return chain(area, (a) => {
    const goes = over(a, exactly(VOLUME, unit.factor));
    return refused(goes) ? MISTAKE : known(goes);
  });
}

function positive(
  e: Expression,
  file: string,
  wanted: Dimension,
  what: string,
  name: string,
  worker: Worker,
): Value<Quantity> {
  return worker.positive(worker.expect(e, file, wanted, what), e, file, name);
}

const tinText = (e: Expression, { approx }: Quantity): string =>
  e.kind === "literal" ? plainly(e.text) : `${Math.round(approx / 1e4) / 100} L`;
