/** Shopping list, fasteners, rings, boxes and steps as the sheet tells them. */
import type { Judged, Problem } from "../checks";
import { rollWords } from "../checks/lining-words";
import { soldLength } from "../checks/writing";
import { ifKnown } from "../plan";
import { structuralCaution } from "../trade";
import {
  bothLengths,
  type Display,
  lengthInFull,
  lengthText,
  minus,
  moneyText,
  type Quantity,
  quantityText,
  refused,
} from "../units";
import { type FillInfo, floorShare, type Joint, type Worked } from "../worked";
import type { FastenerRow, SheetBox, SheetPile, SheetRing, Shopping, ShoppingRow } from "./data";
import { carryOf } from "./gather-shop";
import { pileRows } from "./gather-stock";
import { both } from "./marks";
import type { SheetWords } from "./words";

export function shoppingOf(worked: Worked, words: SheetWords): Shopping {
  const { shopping, settings } = worked;
  const { display } = settings;
  const text = (q: Quantity | null | undefined) => (q ? moneyText(q, display) : null);
  // Where nothing has a price a sum would say that it costs nothing.
  const sumText = (q: Quantity | null) => (shopping.rows.some(({ each }) => each) ? text(q) : null);
  const pile = pileRows(worked);
  return {
    rows: shopping.rows.map(
      (r): ShoppingRow => ({
        aisle: r.aisle,
        what: r.what,
        count: r.count,
        unit: unitOf(r, display, words),
        key: keyOf(r),
        each: text(r.each),
        total: text(r.total),
        note: "",
      }),
    ),
    onHand: pile.map((one) => pileWords(one, words)),
    subtotal: sumText(shopping.subtotal),
    tax: sumText(shopping.tax),
    taxOf: settings.tax?.yard ?? null,
    total: sumText(shopping.total),
    budget: text(settings.budget?.value),
    withoutPrice: shopping.withoutPrice,
    carry: carryOf(worked),
    pile,
    left: leftOf(worked),
  };
}

/** `2 of 41" 2x4`. */
export function pileWords({ stock, count, length, width }: SheetPile, { wood, by }: SheetWords): string {
  const size = [length, ...(width ? [width] : [])].map(({ text }) => text).join(by);
  return wood.pile(count, size, stock);
}

/** What the total leaves of the budget; where it is not all that is bought, only by how much it is over. */
function leftOf({ shopping, settings: { budget, display } }: Worked): Shopping["left"] {
  const left = budget && shopping.total && minus(budget.value, shopping.total);
  if (!left || refused(left) || shopping.rows.length === 0) return null;
  const over = left.approx < 0;
  const { withoutPrice, uncounted, unmeasured } = shopping;
  if (!over && withoutPrice.length + uncounted.length + unmeasured.length > 0) return null;
  const amount = over ? minus(shopping.total!, budget.value) : left;
  return refused(amount) ? null : { amount: moneyText(amount, display), over };
}

/** What is sold in the same size, or as many in a box, has the same. */
function keyOf({ aisle, what, pack, tin, length, size }: Worked["shopping"]["rows"][number]): string {
  const sides = [length, size?.length, size?.width].flatMap((side) => (side ? [side.approx] : []));
  return [aisle, what, ...(pack === undefined ? [] : [pack]), ...(tin ? [tin.text] : []), ...sides].join("/");
}

function unitOf(
  row: Worked["shopping"]["rows"][number],
  display: Display,
  { wood, by, work }: SheetWords,
): string {
  if (row.pack !== undefined) return wood.boxOf(row.pack);
  if (row.tin) return work.tin(row.tin.text);
  if (row.length) return work.offRoll(rollWords(row.length, display));
  if (!row.size) return "";
  const length = soldLength(row.size.length, display);
  return row.size.width
    ? wood.layouts.sheet([row.size.length, row.size.width].map((q) => lengthText(q, display)).join(by))
    : wood.layouts.board(length);
}

/** `deck-mid (#8 x 1-5/8")`; empty where the line does not say which. */
export const screwWords = ({ size, fastener }: Joint): string =>
  !size ? "" : fastener ? `${fastener.name} (${size.text})` : size.text;

export function fastenerRows(worked: Worked, words: SheetWords): FastenerRow[] {
  const rows = new Map<string, { joints: Joint[] }>();
  for (const joint of worked.joints) {
    if (!joint.size) continue;
    const what = screwWords(joint);
    const row = rows.get(what);
    if (row) row.joints.push(joint);
    else rows.set(what, { joints: [joint] });
  }
  const { display, make } = worked.settings;
  return [...rows].map(([what, { joints }]) => {
    const counts = joints.map((j) => ifKnown(j.count));
    const holes = joints.map((j) => holesOf(j, display, words));
    const alike = holes.every((h) => h === holes[0]);
    return {
      what,
      count: counts.every((c) => c !== undefined) ? counts.reduce((sum, c) => sum + c, 0) * make : null,
      joints: joints.map((j, i) => {
        const slant = j.angle.approx > 0 ? `, ${words.wood.offSquare(quantityText(j.angle, display))}` : "";
        const own = alike || !holes[i] ? "" : `, ${holes[i]}`;
        const spacing = j.spacing ? lengthText(j.spacing, display) : "";
        const pattern = words.wood.setOut(words.shop.joint.pattern(j.setting), spacing);
        return words.said(words.shop.titleOf(j), `${pattern}${slant}${own}`);
      }),
      holes: alike ? holes[0]! : "",
    };
  });
}

/** `message` writes a problem as a sentence. */
export function ringRows(
  worked: Worked,
  judged: Judged,
  message: (p: Problem) => string,
  { plan }: SheetWords,
): SheetRing[] {
  return worked.rings.map((ring) => {
    const open = judged.problems.find((p) => p.code === "ring-open" && p.about.includes(ring.name));
    const known = ifKnown(ring.closing);
    return {
      name: ring.name,
      members: ring.members.map((m) => (m.count > 1 ? `${m.count} ${m.part}` : m.part)).join(", "),
      state: open ? message(open) : known ? plan.closes : plan.notChecked,
    };
  });
}

export function boxRows(worked: Worked, words: SheetWords): SheetBox[] {
  const { settings } = worked;
  const { boxes: said } = words.plan;
  const { display } = settings;
  return worked.boxes.map((box) => {
    const rows: { label: string; value: string }[] = [];
    const add = (label: string, value: string | undefined) => {
      if (value) rows.push({ label, value });
    };
    const known = (q: Quantity | undefined) => (q ? both(q, display) : undefined);
    if (box.inside?.wide && box.inside.deep && box.inside.high) {
      const { wide, deep, high } = box.inside;
      add(said.inside, [wide, deep, high].map((q) => bothLengths(q, display)).join(words.by));
    }
    add(said.holds, known(ifKnown(box.volume)));
    if (box.fill) {
      add(said.filled(box.fill.name), known(ifKnown(box.filled)));
      for (const wetness of ["dry", "moist", "saturated"] as const)
        add(said.fill(wetness), known(ifKnown(box.weights[wetness])));
      add(said.weightsFrom, weightsFrom(box.fill, words));
    }
    add(said.empty, known(ifKnown(box.own)));
    add(said.onFloor, known(ifKnown(box.pressure)));
    const share = floorShare(settings);
    if (settings.floorLimit && share && ifKnown(box.pressure)) {
      const used = quantityText(ifKnown(box.pressure)!, display);
      add(said.limit, said.uses(used, quantityText(share, display)));
    }
    add(said.drains, box.drains && said.drainsBy[box.drains]);
    add(said.grows, box.grows.join(", "));
    return { name: box.name, rows, caution: words.shop.caution(structuralCaution) };
  });
}

function weightsFrom({ from, taken }: FillInfo, { plan, between }: SheetWords): string {
  const source = from ? plan.boxes.source(from) : plan.boxes.asSaid;
  return [source, ...(taken === undefined ? [] : [plan.boxes.taken(taken)])].join(between);
}

/** `pilot 1/8", clearance 3/16"`: the holes to drill for a joint, as the bits are sold; nothing when none is asked for. */
export function holesOf(joint: Joint, display: Display, { wood: { holes } }: SheetWords): string {
  const pilot = joint.pilot && holes.pilot(lengthInFull(joint.pilot, display));
  const clearance = joint.clearance && holes.clearance(lengthInFull(joint.clearance, display));
  return [pilot, clearance].filter(Boolean).join(", ");
}
