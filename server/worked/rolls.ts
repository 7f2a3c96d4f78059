/** Liner, fabric and mesh sold off a roll: those the plan declares, and usual ones that a `line` names. */
import {
  type Declared,
  ifKnown,
  known,
  type Loaded,
  MISTAKE,
  type Scope,
  unknown,
  type Value,
} from "../plan";
import { liner, type Row, type Source } from "../trade";
import { exactly, exactOf, fraction, LENGTH, type Quantity, unitNamed } from "../units";
import type { Assumption } from "./assumptions";
import type { Worker } from "./expressions";
import { size } from "./materials";
import { Reader } from "./settings";

export interface Roll {
  readonly name: string;
  /** Undefined for a usual one that only a line names. */
  readonly declared: Declared | undefined;
  readonly width: Value<Quantity>;
  /** What one such length of it costs. */
  readonly price: { readonly each: Quantity; readonly per: Quantity; readonly word: string } | undefined;
  /** By the shop's word; undefined where it does not say. */
  readonly foodSafe: boolean | undefined;
  /** It lets no water through, so that it must be opened where the box drains. */
  readonly holdsWater: boolean;
  /** How much two widths lie over each other where the plan does not say, and where that comes from. */
  readonly overlap: { readonly value: Quantity; readonly source: Source };
  /** How it was told whether it holds water; undefined for one of a usual name. */
  readonly assumed: Assumption | undefined;
}

/** Rolls that the plan and its shop declare, in their order, then usual ones that its `line` entries name. */
export function rollsOf(loaded: Loaded, scope: Scope, worker: Worker): Roll[] {
  const declared = [...scope.declared.values()].filter((d) => d.kind === "roll");
  const named = loaded.files[0]!.tree.entries.flatMap((e) => (e.kind === "line" ? [e.with.text] : []));
  const usual = [...new Set(named)].filter((name) => !scope.declared.has(name) && liner(name));
  return [...declared.map((d) => workRoll(d, worker)), ...usual.map(undeclared)];
}

function workRoll(declared: Declared, worker: Worker): Roll {
  const { entry, at, name } = declared;
  const read = new Reader(worker, at.file, entry.clauses);
  const width = read.length("width", "the width");
  const unread = entry.clauses.some((c) => c.kind === "width" || c.kind === "broken");
  return {
    name,
    declared,
    width: width ? known(width) : unread ? MISTAKE : widthUnsaid(name),
    price: priceOf(read, at.file, worker),
    foodSafe: read.clause("food")?.safe,
    ...kindOf(name),
  };
}

const undeclared = (name: string): Roll => ({
  name,
  declared: undefined,
  width: widthUnsaid(name),
  price: undefined,
  foodSafe: undefined,
  ...kindOf(name),
});

const widthUnsaid = (name: string): Value<never> => unknown("unsaid", "unsaid roll width", { name });

/** Words in the name of what lets water through. */
const OPEN = /fabric|felt|fleece|mesh|cloth|burlap|hessian|netting|screen/;

function kindOf(name: string): Pick<Roll, "holdsWater" | "overlap" | "assumed"> {
  const row = liner(name);
  const fabric = liner("landscape-fabric")!;
  if (row) return { holdsWater: row.holdsWater, overlap: overlapOf(row.overlap), assumed: undefined };
  const open = OPEN.test(name);
  return {
    holdsWater: !open,
    overlap: overlapOf(fabric.overlap),
    assumed: { kind: "by its name", roll: name, holdsWater: !open },
  };
}

const overlapOf = ({ value, source }: Row<string>): Roll["overlap"] => ({ value: size(value, "in"), source });

/** Lengths that prices are by, as they are spelled out. */
const SPELLED: Readonly<Record<string, string>> = {
  foot: "ft",
  feet: "ft",
  metre: "m",
  metres: "m",
  meter: "m",
  meters: "m",
  inch: "in",
  inches: "in",
};
const YARD = /^(yd|yards?)$/;

/** One of the length that a price is by; undefined for a word that is none. */
function lengthNamed(word: string): Quantity | undefined {
  const unit = unitNamed(Object.hasOwn(SPELLED, word) ? SPELLED[word]! : YARD.test(word) ? "ft" : word);
  if (unit?.dim !== LENGTH) return undefined;
  return exactly(
    LENGTH,
    YARD.test(word) ? fraction.multiply(unit.factor, fraction.rational(3)) : unit.factor,
  );
}

function priceOf(read: Reader, file: string, worker: Worker): Roll["price"] {
  const clause = read.clause("price");
  if (!clause) return undefined;
  const { value, per } = clause;
  const paid = read.money(value, { file, start: value.start, end: value.end })?.value;
  const money = paid && ifKnown(worker.notNegative(known(paid), value, file, "the price"));
  const length = lengthNamed(per.text);
  if (!length) {
    const at = { file, start: per.start, end: per.end };
    const wants = "a length, like foot or metre,";
    worker.fault({ kind: "unknown-name", at, name: per.text, near: [], wants, fixed: true });
  }
  // Trigonometry may stand in any value; money is reckoned in whole fractions all the same.
  return money && length && { each: exactly(money.dim, exactOf(money)), per: length, word: per.text };
}
