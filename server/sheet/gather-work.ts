/** Shopping list, fasteners, rings, boxes and steps as the sheet tells them. */
import type { Judged } from "../checks";
import { problemText } from "../checks";
import { rollWords } from "../checks/lining-words";
import { setOut } from "../checks/writing";
import { ifKnown } from "../plan";
import { structuralCaution } from "../trade";
import { bothLengths, type Display, lengthText, moneyText, type Quantity, quantityText } from "../units";
import { floorShare, type Joint, type Worked } from "../worked";
import type { FastenerRow, SheetBox, SheetRing, Shopping, ShoppingRow } from "./data";
import { carryOf } from "./gather-shop";
import { both, soldLength } from "./marks";

export function shoppingOf(worked: Worked): Shopping {
  const { shopping, settings } = worked;
  const { display } = settings;
  const text = (q: Quantity | null | undefined) => (q ? moneyText(q) : null);
  return {
    rows: shopping.rows.map(
      (r): ShoppingRow => ({
        aisle: r.aisle,
        what: r.what,
        count: r.count,
        unit: unitOf(r, display),
        each: text(r.each),
        total: text(r.total),
        note: "",
      }),
    ),
    onHand: onHandUsed(worked),
    subtotal: shopping.rows.length > 0 ? text(shopping.subtotal) : null,
    tax: text(shopping.tax),
    total: shopping.rows.length > 0 ? text(shopping.total) : null,
    budget: text(settings.budget?.value),
    withoutPrice: [...new Set(shopping.withoutPrice)],
    carry: carryOf(worked),
  };
}

function unitOf(row: Worked["shopping"]["rows"][number], display: Display): string {
  if (row.pack !== undefined) return `box of ${row.pack}`;
  if (row.tin) return `${row.tin.text} tin`;
  if (row.length) return `${rollWords(row.length, display)} off the roll`;
  if (!row.size) return "";
  const length = soldLength(row.size.length, display);
  return row.size.width
    ? `${lengthText(row.size.width, display)} x ${lengthText(row.size.length, display)} sheet`
    : `${length} board`;
}

function onHandUsed({ boards, sheets, settings }: Worked): string[] {
  const lines: string[] = [];
  for (const work of [...boards, ...sheets]) {
    const used = "boards" in work.answer ? work.answer.boards : work.answer.sheets;
    const ids = used.flatMap((b) => (b.kind === "on hand" ? ["boardId" in b ? b.boardId : b.sheetId] : []));
    for (const [i, pile] of work.material.onHand.entries()) {
      const count = ids.filter((id) => id.startsWith(`pile ${i} /`)).length;
      if (count > 0)
        lines.push(`${count} of ${lengthText(pile.length, settings.display)} ${work.material.name}`);
    }
  }
  return lines;
}

/** `deck-mid (#8 x 1-5/8")`; empty where the line does not say which. */
export const screwWords = ({ size, fastener }: Joint): string =>
  !size ? "" : fastener ? `${fastener.name} (${size.text})` : size.text;

export function fastenerRows(worked: Worked): FastenerRow[] {
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
    const holes = joints.map((j) => holesOf(j, display));
    const alike = holes.every((h) => h === holes[0]);
    return {
      what,
      count: counts.every((c) => c !== undefined) ? counts.reduce((sum, c) => sum + c, 0) * make : null,
      joints: joints.map((j, i) => {
        const slant = j.angle.approx > 0 ? `, ${quantityText(j.angle, display)} off square` : "";
        const own = alike || !holes[i] ? "" : `, ${holes[i]}`;
        return `${j.title}: ${setOut(j, display)}${slant}${own}`;
      }),
      holes: alike ? holes[0]! : "",
    };
  });
}

export function ringRows(worked: Worked, judged: Judged): SheetRing[] {
  const { display } = worked.settings;
  return worked.rings.map((ring) => {
    const open = judged.problems.find((p) => p.code === "ring-open" && p.about.includes(ring.name));
    const known = ifKnown(ring.closing);
    return {
      name: ring.name,
      members: ring.members.map((m) => (m.count > 1 ? `${m.count} ${m.part}` : m.part)).join(", "),
      state: open
        ? problemText(open.code, open, display)
        : known
          ? "closes to the plan's marks"
          : "not checked",
    };
  });
}

export function boxRows(worked: Worked): SheetBox[] {
  const { settings } = worked;
  const { display } = settings;
  return worked.boxes.map((box) => {
    const rows: { label: string; value: string }[] = [];
    const add = (label: string, value: string | undefined) => {
      if (value) rows.push({ label, value });
    };
    const known = (q: Quantity | undefined) => (q ? both(q, display) : undefined);
    if (box.inside?.wide && box.inside.deep && box.inside.high) {
      const { wide, deep, high } = box.inside;
      add("Inside", [wide, deep, high].map((q) => bothLengths(q, display)).join(" x "));
    }
    add("Holds to the rim", known(ifKnown(box.volume)));
    if (box.fill) {
      add(`Filled with ${box.fill.name}`, known(ifKnown(box.filled)));
      for (const wetness of ["dry", "moist", "saturated"] as const)
        add(`Fill, ${wetness}`, known(ifKnown(box.weights[wetness])));
      add("Weights from", [box.fill.source, box.fill.assumed].filter(Boolean).join("; "));
    }
    add("Box, empty", known(ifKnown(box.own)));
    add("On the floor, saturated", known(ifKnown(box.pressure)));
    const share = floorShare(settings);
    if (settings.floorLimit && share && ifKnown(box.pressure)) {
      const used = quantityText(ifKnown(box.pressure)!, display);
      add("Floor limit you typed", `uses ${used} of the ${quantityText(share, display)} that is left of it`);
    }
    const drains = { gaps: "through the gaps", holes: "by drilled holes", nothing: "does not drain" };
    add("Drains", box.drains && drains[box.drains]);
    add("Grows", box.grows.join(", "));
    return { name: box.name, rows, caution: structuralCaution.value.text };
  });
}

/** `pilot 1/8", clearance 3/16"`: the holes to drill for a joint; nothing when none is asked for. */
export function holesOf(joint: Joint, display: Display): string {
  const pilot = joint.pilot && `pilot ${lengthText(joint.pilot, display)}`;
  const clearance = joint.clearance && `clearance ${lengthText(joint.clearance, display)}`;
  return [pilot, clearance].filter(Boolean).join(", ");
}
