/** Screws, nails and bolts: those the shop names, and sizes written in a joint. */
import { type At, type Declared, ifKnown, type Scope } from "../plan";
import { type Source, screwGauge, shankDiameter } from "../trade";
import { exactly, fraction, INCH, LENGTH, plainly, type Quantity, readLiteral } from "../units";
import type { Worker } from "./expressions";
import { Reader } from "./settings";

export interface Size {
  /** `#8 x 1-5/8"` as written, tidied. */
  readonly text: string;
  readonly length: Quantity;
  readonly diameter: Quantity;
  readonly gauge: number | undefined;
  /** Where its diameter comes from. */
  readonly from: Source | "as written" | "by its number";
}

export interface Fastener {
  readonly name: string;
  readonly declared: Declared;
  readonly size: Size | undefined;
  readonly kind: string;
  readonly coating: string;
  /** How much of it is threaded, where the shop says so. */
  readonly thread: Quantity | undefined;
  readonly pack: { readonly count: number; readonly price: Quantity | undefined } | undefined;
  readonly onHand: number;
}

/** Reads `#8 x 1-1/4"` or `5 x 60mm`; undefined for anything else. */
export function screwSize(text: string): Size | undefined {
  const m = /^(#?)(\d+(?:\.\d+)?)\s*x\s*(.+)$/.exec(plainly(text));
  if (!m) return undefined;
  const length = readLiteral(m[3]!);
  const number = fraction.fromDecimal(m[2]!);
  if (!length || length.dim !== LENGTH || length.approx <= 0 || !number) return undefined;
  if (!m[1])
    return {
      text: plainly(text),
      length,
      diameter: exactly(LENGTH, number),
      gauge: undefined,
      from: "as written",
    };
  const gauge = Number(m[2]);
  const row = screwGauge(gauge);
  const inches = row
    ? fraction.fromDecimal(row.shank.value)!
    : fraction.rational(Math.round(shankDiameter(gauge) * 1000), 1000);
  return {
    text: plainly(text).replace(/\s+/g, " "),
    length,
    diameter: exactly(LENGTH, fraction.multiply(inches, INCH)),
    gauge,
    from: row?.shank.source ?? "by its number",
  };
}

function workFastener(declared: Declared, worker: Worker): Fastener {
  const { entry, at } = declared;
  const read = new Reader(worker, at.file, entry.clauses);
  const fits = read.clause("fits");
  const pack = read.clause("pack");
  const hand = read.clause("on hand");
  const packCount =
    pack && ifKnown(worker.wholeNumber(pack.count, at.file, "how many are in a box", 1_000_000));
  const packAt = (price: NonNullable<typeof pack>["price"]): At => ({
    file: at.file,
    start: price!.start,
    end: price!.end,
  });
  const sides = fits?.sides.map((e) => ifKnown(worker.positiveLength(e, at.file, "this size")));
  const size = fits?.size ? screwSize(fits.size.text) : undefined;
  const plain =
    sides?.length === 2 && sides[0] && sides[1] ? { diameter: sides[0], length: sides[1] } : undefined;
  return {
    name: declared.name,
    declared,
    size: size ?? (plain && { ...plain, text: declared.name, gauge: undefined, from: "as written" }),
    kind: fits?.what.map((w) => w.text).join(" ") || "screw",
    coating: read.clause("coating")?.word.text ?? "",
    thread: read.length("thread", "the thread"),
    pack: packCount
      ? { count: packCount, price: pack?.price && read.money(pack.price, packAt(pack.price))?.value }
      : undefined,
    onHand:
      (hand?.count && ifKnown(worker.wholeNumber(hand.count, at.file, "how many are on hand", 1_000_000))) ??
      0,
  };
}

/** All fasteners that the plan and its shop declare, in their order. */
export function fastenersOf(scope: Scope, worker: Worker): Fastener[] {
  return [...scope.declared.values()]
    .filter((d) => d.kind === "fastener")
    .map((d) => workFastener(d, worker));
}
