/** What pieces are cut from: boards and panels, with their real sizes, what is sold and what is on hand. */

import { nearest } from "../../grammar/near";
import type { Name } from "../../grammar/tree";
import { type At, type Declared, ifKnown, known, nearNames, type Scope, type Value } from "../plan";
import {
  assumedSpecies,
  cite,
  type LumberStandard,
  metricPanel,
  nearestSections,
  panel,
  type Source,
  section,
  species,
  speciesCalled,
  speciesNames,
  weightOf,
} from "../trade";
import { exactly, fraction, INCH, LENGTH, type Quantity, readNumber, unitNamed } from "../units";
import type { Worker } from "./expressions";
import { Reader } from "./settings";

/** How many names are asked about where one is not known. */
const MOST_NEAR = 4;

export interface Sold {
  readonly length: Quantity;
  readonly width: Quantity | undefined;
  readonly price: Quantity | undefined;
}

export interface Pile {
  readonly count: number;
  readonly length: Quantity;
  readonly width: Quantity | undefined;
  readonly bad: readonly { readonly from: Quantity; readonly to: Quantity }[];
}

export interface Wood {
  readonly name: string;
  readonly title: string;
  /** kg/m3 at the board's moisture; undefined when no table has it. */
  readonly density: number | undefined;
  /** Percent. */
  readonly moisture: number;
  /** Where its weight comes from; undefined when no table has it. */
  readonly from: Source | undefined;
  readonly assumed: string;
}

export interface Material {
  /** The name it is asked for by: "2x4", "pallet-slat", "shelf-ply". */
  readonly name: string;
  readonly kind: "board" | "sheet";
  readonly declared: Declared | undefined;
  readonly thickness: Value<Quantity>;
  /** A board's width; a sheet has none of its own. */
  readonly width: Value<Quantity> | undefined;
  /** Where the size comes from, and the same to be told in other words. */
  readonly source: string;
  readonly sizeFrom: SizeFrom;
  readonly wood: Wood;
  readonly conditions: readonly string[];
  readonly sold: readonly Sold[];
  readonly onHand: readonly Pile[];
  readonly endTrim: { readonly value: Quantity; readonly assumed: boolean };
  readonly salvage: "use up" | "keep";
  readonly grain: "length" | "width" | "none";
}

/** Where a size comes from: a row of a table (of a panel with what it really measures), or the plan. */
export type SizeFrom =
  | {
      readonly by: "table";
      readonly source: Source;
      readonly really?: {
        /** The panel's name in its table: "23/32". */
        readonly name: string;
        readonly min: string | number;
        readonly max: string | number;
        readonly mark: string;
      };
    }
  | { readonly by: "measured" | "plan" | "plan, no such panel" | "nothing" };

/** Taken off one end of a bought board where the plan says nothing (common practice: the yard's end is not square). */
const END_TRIM = exactly(LENGTH, fraction.divide(INCH, fraction.rational(2))!);
/** The most boards of one kind on hand. */
const MOST_ON_HAND = 10_000;
const UNSUPPLIED = { sold: [], onHand: [], endTrim: { value: END_TRIM, assumed: true } } as const;
const POUND_PER_CUBIC_FOOT = fraction.toNumber(unitNamed("lb/cuft")!.factor) * 1e9;

/** Finds materials by name; each is worked out once. */
export class Materials {
  private readonly found = new Map<string, Material | undefined>();
  private readonly underWay: { readonly name: string; readonly at: At }[] = [];

  constructor(
    private readonly scope: Scope,
    private readonly worker: Worker,
    private readonly lumber: LumberStandard,
  ) {}

  /** All that were asked for, in the order asked. */
  get used(): Material[] {
    return [...this.found.values()].filter((m) => m !== undefined);
  }

  /** The material of that name, or undefined after a fault. */
  named(name: Name, file: string): Material | undefined {
    const key = name.text.replace("×", "x");
    if (this.found.has(key)) return this.found.get(key);
    const at = { file, start: name.start, end: name.end };
    const from = this.underWay.findIndex((u) => u.name === key);
    if (from >= 0) {
      const path = [...this.underWay.slice(from), { name: key, at }];
      this.worker.fault({ kind: "circle", at, path });
      return undefined;
    }
    const declared = this.scope.declared.get(key);
    this.underWay.push({ name: key, at: declared?.at ?? at });
    const material = declared ? this.fromEntry(declared, name, file) : this.nominal(key, name, file);
    this.underWay.pop();
    this.found.set(key, material);
    // What is sold may be told by the board's own size, so it is worked out once that is known.
    if (material && declared) Object.assign(material, this.supply(declared));
    return material;
  }

  /** Looks a material up without complaint. */
  peek(declared: Declared): Material | undefined {
    return this.named(
      { text: declared.name, start: declared.at.start, end: declared.at.end },
      declared.at.file,
    );
  }

  private fromEntry(declared: Declared, use: Name, file: string): Material | undefined {
    if (declared.kind === "stock") return this.board(declared);
    if (declared.kind === "sheet") return this.sheet(declared);
    const at = { file, start: use.start, end: use.end };
    this.worker.fault({
      kind: "wrong-kind",
      at,
      name: use.text,
      found: declared.kind,
      wants: "a stock or a sheet",
    });
    return undefined;
  }

  private nominal(key: string, name: Name, file: string): Material | undefined {
    const size = this.section(key, { file, start: name.start, end: name.end });
    if (!size) return undefined;
    return {
      name: key,
      kind: "board",
      declared: undefined,
      ...size,
      wood: this.wood(undefined, undefined, undefined, []),
      conditions: [],
      ...UNSUPPLIED,
      salvage: "use up",
      grain: "length",
    };
  }

  /** The real size of a nominal section; a fault with the nearest known ones when there is none. */
  private section(
    name: string,
    at: At,
  ): Pick<Material, "thickness" | "width" | "source" | "sizeFrom"> | undefined {
    const found = section(name, this.lumber);
    if (found)
      return {
        thickness: known(size(found.thickness, found.unit)),
        width: known(size(found.width, found.unit)),
        ...sourced({ by: "table", source: found.source }),
      };
    if (/^\d/.test(name)) {
      const near = nearestSections(name, this.lumber, 3);
      this.worker.fault({ kind: "unknown-section", at, name, near });
    } else {
      const near = nearNames(this.scope, name, ["stock", "sheet"]);
      this.worker.fault({ kind: "unknown-name", at, name, near, wants: "a stock or a sheet" });
    }
    return undefined;
  }

  private board(declared: Declared): Material | undefined {
    const { entry, at } = declared;
    if (entry.kind !== "stock") return undefined;
    const read = new Reader(this.worker, at.file, entry.clauses);
    const stated = read.clause("measured") ?? read.clause("actual");
    const sides = stated?.sides.map((e) => this.worker.positiveLength(e, at.file, "this side"));
    const nominalName = entry.of ?? entry.name;
    if (!stated && !entry.of && !/^\d/.test(declared.name)) {
      if (!entry.clauses.some((c) => c.kind === "broken"))
        this.worker.fault({ kind: "size-missing", at, name: declared.name, what: "board" });
      return undefined;
    }
    const size =
      sides?.length === 2
        ? {
            thickness: sides[0]!,
            width: sides[1]!,
            ...sourced({ by: stated!.kind === "measured" ? "measured" : "plan" }),
          }
        : this.section(nominalName.text.replace("×", "x"), {
            file: at.file,
            start: nominalName.start,
            end: nominalName.end,
          });
    if (!size) return undefined;
    return {
      name: declared.name,
      kind: "board",
      declared,
      ...size,
      ...UNSUPPLIED,
      wood: this.wood(undefined, undefined, undefined, []),
      conditions: read.all("condition").map((c) => c.word),
      salvage: read.clause("salvage")?.rule ?? "use up",
      grain: "length",
    };
  }

  private sheet(declared: Declared): Material {
    const { entry, at } = declared;
    const read = new Reader(this.worker, at.file, entry.clauses);
    const category = read.clause("plywood");
    const plain = read.clause("thickness");
    const thickness = category
      ? this.worker.positiveLength(category.value, at.file, "the thickness")
      : plain
        ? this.worker.positiveLength(plain.value, at.file, "the thickness")
        : this.worker.fault({ kind: "size-missing", at, name: declared.name, what: "thickness" });
    return {
      name: declared.name,
      kind: "sheet",
      declared,
      thickness,
      width: undefined,
      ...sourced(category ? panelFrom(category.value) : { by: plain ? "plan" : "nothing" }),
      ...UNSUPPLIED,
      wood: this.wood(undefined, undefined, undefined, []),
      conditions: [],
      salvage: "use up",
      grain: read.clause("grain")?.along ?? "length",
    };
  }

  /** What is sold and on hand of it, and which wood it is. */
  private supply({
    entry,
    kind,
    at: { file },
  }: Declared): Pick<Material, "wood" | "sold" | "onHand" | "endTrim"> {
    const read = new Reader(this.worker, file, entry.clauses);
    const trim = kind === "stock" ? read.length("end trim", "the end trim") : undefined;
    const conditions = kind === "stock" ? read.all("condition").map((c) => c.word) : [];
    const wood = this.woodOf(read, file, conditions);
    const sold = read.all("sold").flatMap((c) =>
      c.offers.flatMap((offer): Sold[] => {
        const length = ifKnown(this.worker.positiveLength(offer.length, file, "a length that is sold"));
        const width =
          offer.width && ifKnown(this.worker.positiveLength(offer.width, file, "a width that is sold"));
        const price =
          offer.price && read.money(offer.price, { file, start: offer.price.start, end: offer.price.end });
        return length ? [{ length, width, price: price?.value }] : [];
      }),
    );
    const onHand = read.all("on hand").flatMap((c) =>
      c.items.flatMap((item): Pile[] => {
        const count = ifKnown(
          this.worker.wholeNumber(item.count, file, "how many are on hand", MOST_ON_HAND),
        );
        const length = ifKnown(this.worker.positiveLength(item.length, file, "the length on hand"));
        const width =
          item.width && ifKnown(this.worker.positiveLength(item.width, file, "the width on hand"));
        const bad = item.bad.flatMap(({ from, to }) => {
          const start = ifKnown(this.worker.expect(from, file, LENGTH, "a length"));
          const end = ifKnown(this.worker.expect(to, file, LENGTH, "a length"));
          // From either end: what lies between is bad.
          if (!start || !end) return [];
          return [start.approx <= end.approx ? { from: start, to: end } : { from: end, to: start }];
        });
        return count && length ? [{ count, length, width, bad }] : [];
      }),
    );
    return { wood, sold, onHand, endTrim: { value: trim ?? END_TRIM, assumed: !trim } };
  }

  private woodOf(read: Reader, file: string, conditions: readonly string[]): Wood {
    const clause = read.clause("species");
    const moisture = read.clause("moisture");
    const share = moisture?.value && ifKnown(this.worker.evaluate(moisture.value, file));
    const name = clause?.name.text;
    if (name && !species(name)) {
      const at = { file, start: clause.name.start, end: clause.name.end };
      this.worker.fault({
        kind: "unknown-name",
        at,
        name,
        near: [...new Set([...nearest(name, speciesNames()), ...speciesCalled(name)])].slice(0, MOST_NEAR),
        wants: "a species",
      });
    }
    return this.wood(name, moisture?.state, share && share.approx * 100, conditions);
  }

  private wood(
    name: string | undefined,
    state: "dry" | "green" | undefined,
    percent: number | undefined,
    conditions: readonly string[],
  ): Wood {
    const taken = assumedSpecies.value;
    const green = state === "green" || conditions.includes("treated");
    const moisture = percent ?? (green ? taken.greenMoisture : taken.dryMoisture);
    const kind = species(name ?? taken.name) ?? species(taken.name)!;
    const weight = weightOf(kind, moisture);
    return {
      name: kind.name,
      title: kind.title,
      density: weight && weight.density * POUND_PER_CUBIC_FOOT,
      moisture,
      from: weight?.from.source,
      assumed:
        name && species(name)
          ? ""
          : `taken as ${kind.title} at ${moisture}% moisture, since the plan does not say`,
    };
  }
}

/** The lengths of a table row as an exact value. */
export function size(value: string | number, unit: "in" | "mm"): Quantity {
  if (unit === "mm") return exactly(LENGTH, fraction.fromDecimal(String(value))!);
  return exactly(LENGTH, fraction.multiply(readNumber(String(value))!, INCH));
}

function panelFrom(e: { readonly kind: string; readonly text?: string }): SizeFrom {
  const text = e.kind === "literal" ? (e.text ?? "") : "";
  const found = panel(text.replace(/["″”]|in$/g, "")) ?? metricPanel(Number(text.replace(/mm$/, "")));
  if (!found) return { by: "plan, no such panel" };
  const { name, source, min, max, unit } = found;
  return { by: "table", source, really: { name, min, max, mark: unit === "in" ? '"' : " mm" } };
}

const sourced = (sizeFrom: SizeFrom): Pick<Material, "source" | "sizeFrom"> => ({
  source: sizeSource(sizeFrom),
  sizeFrom,
});

function sizeSource(from: SizeFrom): string {
  switch (from.by) {
    case "table": {
      const { source, really } = from;
      return `${cite(source)}${really ? `: really ${really.min} to ${really.max}${really.mark}` : ""}`;
    }
    case "measured":
      return "as measured";
    case "plan":
      return "as the plan says";
    case "plan, no such panel":
      return "as the plan says (no such panel in the table)";
    case "nothing":
      return "";
  }
}
