/** What to buy and what it costs: boards and sheets from the layouts, whole boxes, whole tins, and lengths off a roll. */
import { ifKnown } from "../plan";
import { exactly, fraction, money, type Quantity } from "../units";
import type { CoatWork } from "./coating";
import type { Fastener } from "./fasteners";
import type { Tin } from "./finishes";
import type { Joint } from "./joints";
import type { BoardWork, SheetWork } from "./layouts";
import type { LiningWork } from "./lining";
import type { Settings } from "./settings";
import { type FinishNeed, finishNeeds, type LinerNeed, linerNeeds } from "./supplies";

export interface Bought {
  readonly aisle: "boards" | "sheets" | "fasteners" | "finish" | "liner";
  readonly what: string;
  readonly count: number;
  readonly size: { readonly length: Quantity; readonly width: Quantity | undefined } | undefined;
  /** For boxes: how many each holds. */
  readonly pack: number | undefined;
  /** For finish: what a tin holds. */
  readonly tin?: Tin;
  /** For liner: how much of the roll, in one length. */
  readonly length?: Quantity;
  readonly each: Quantity | undefined;
  readonly total: Quantity | undefined;
}

export interface Shopping {
  readonly rows: readonly Bought[];
  /** What the sums leave out, each name once: what is bought at no known price, … */
  readonly withoutPrice: readonly string[];
  /** … and of which it is not known how many, or how much, it takes in all. */
  readonly uncounted: readonly string[];
  readonly unmeasured: readonly string[];
  /** Null when two currencies meet. */
  readonly subtotal: Quantity | null;
  readonly tax: Quantity | null;
  readonly total: Quantity | null;
  readonly currencies: readonly string[];
  /** How many of each fastener all copies take; not `complete` where some joint's count is not known. */
  readonly fasteners: readonly {
    readonly fastener: Fastener;
    readonly count: number;
    readonly complete: boolean;
  }[];
  readonly finishes: readonly FinishNeed[];
  readonly liners: readonly LinerNeed[];
}

export function shoppingOf(
  boards: readonly BoardWork[],
  sheets: readonly SheetWork[],
  joints: readonly Joint[],
  fasteners: readonly Fastener[],
  coats: readonly CoatWork[],
  linings: readonly LiningWork[],
  settings: Settings,
): Shopping {
  const rows = [
    ...boards.flatMap((w) => woodRows("boards", w)),
    ...sheets.flatMap((w) => woodRows("sheets", w)),
  ];
  const counted = fasteners.flatMap((fastener) => {
    const used = joints.filter((j) => j.fastener === fastener);
    if (used.length === 0) return [];
    const count = used.reduce((sum, j) => sum + (ifKnown(j.count) ?? 0), 0) * settings.make;
    return [{ fastener, count, complete: used.every((j) => j.count.state === "known") }];
  });
  for (const { fastener, count } of counted) {
    const need = count - fastener.onHand;
    if (need <= 0 || !fastener.pack) continue;
    const boxes = Math.ceil(need / fastener.pack.count);
    rows.push(row("fasteners", fastener.name, boxes, undefined, fastener.pack.count, fastener.pack.price));
  }
  const finishes = finishNeeds(coats, settings);
  for (const { finish, tins } of finishes)
    for (const { tin, count } of tins)
      rows.push({ ...row("finish", finish.name, count, undefined, undefined, tin.price), tin });
  const liners = linerNeeds(linings, settings);
  for (const { roll, bought, price } of liners)
    rows.push({ ...row("liner", roll.name, 1, undefined, undefined, price), length: bought });
  const unsold = finishes.flatMap(({ finish, tins }) => (tins.length === 0 ? [finish.name] : []));
  const unpacked = counted.filter(({ fastener, count }) => count > fastener.onHand && !fastener.pack);
  const undeclared = joints.flatMap((j) => (j.size && !j.fastener ? [j.size.text] : []));
  const currencies = [...new Set(rows.flatMap((r) => (r.each ? [r.each.dim.currency] : [])))];
  const subtotal =
    currencies.length > 1 ? null : sum(rows, currencies[0] ?? settings.budget?.value.dim.currency ?? "");
  const tax = subtotal && settings.tax ? scaled(subtotal, settings.tax.share) : null;
  return {
    rows,
    withoutPrice: once([
      ...rows.filter((r) => !r.each).map((r) => r.what),
      ...unsold,
      ...unpacked.map(({ fastener }) => fastener.name),
      ...undeclared,
    ]),
    uncounted: once([
      ...[...boards, ...sheets].flatMap((w) => (w.leftOut.length > 0 ? [w.material.name] : [])),
      ...counted.flatMap(({ fastener, complete }) => (complete ? [] : [fastener.name])),
    ]),
    unmeasured: once([
      ...coats.flatMap((c) => (c.finish && c.amount.state !== "known" ? [c.finish.name] : [])),
      ...linings.flatMap((l) => (l.roll && l.along.state !== "known" ? [l.roll.name] : [])),
    ]),
    subtotal,
    tax,
    total: subtotal && tax ? plus(subtotal, tax) : subtotal,
    currencies,
    fasteners: counted,
    finishes,
    liners,
  };
}

const once = (names: readonly string[]): string[] => [...new Set(names)];

function woodRows(aisle: "boards" | "sheets", work: BoardWork | SheetWork): Bought[] {
  const { material, answer } = work;
  return answer.buy.map(({ id, count }) => {
    const sold = material.sold[Number(id.slice("sold ".length))]!;
    return row(
      aisle,
      material.name,
      count,
      { length: sold.length, width: sold.width },
      undefined,
      sold.price,
    );
  });
}

function row(
  aisle: Bought["aisle"],
  what: string,
  count: number,
  size: Bought["size"],
  pack: number | undefined,
  each: Quantity | undefined,
): Bought {
  const total = each && scaled(each, { exact: fraction.rational(count), approx: count });
  return { aisle, what, count, size, pack, each, total };
}

function sum(rows: readonly Bought[], currency: string): Quantity {
  return rows.reduce<Quantity>(
    (all, r) => (r.total ? plus(all, r.total) : all),
    exactly(money(currency), fraction.ZERO),
  );
}

const plus = (a: Quantity, b: Quantity): Quantity => exactly(b.dim, fraction.add(a.exact!, b.exact!));

/** Money times a number, to the whole cent. */
function scaled(amount: Quantity, by: Pick<Quantity, "exact" | "approx">): Quantity {
  const factor = by.exact ?? fraction.rational(Math.round(by.approx * 1e6), 1_000_000);
  return exactly(
    amount.dim,
    fraction.roundTo(fraction.multiply(amount.exact!, factor), fraction.rational(1, 100)),
  );
}
