/** Seeded plywood plans: cupboards, shelves and boxes as they are cut from sheets. */
import type { SheetForSale, SheetJob, SheetOnHand, SheetPiece } from "../../../server/cutting/sheets";
import { random } from "../../published/random";

const INCH = 16256;

/** What a plan is drawn from; lengths in inches, prices in cents. */
export const PANEL_PLANS = {
  sheet: { length: 96, width: 48, price: [4200, 8900] },
  /** Half and quarter sheets, as a share of the whole one's price; how often one is sold, or both. */
  half: { length: 48, width: 48, share: [0.55, 0.68], often: 0.4 },
  quarter: { length: 48, width: 24, share: [0.3, 0.4], often: 0.3 },
  pieces: [5, 40],
  sizes: [3, 12],
  /** Depths of shelves and boxes; lengths are drawn in eighths. */
  depths: [3.5, 5.25, 7.25, 9.25, 11.25, 11.875, 14, 15.75, 16, 18, 22, 23.25, 23.875],
  length: [6, 47],
  /** Tall sides, now and then. */
  tall: { often: 0.15, length: [48, 84] },
  grain: 0.5,
  onHand: [0, 3],
  offcut: { length: [14, 48], width: [10, 30] },
  kerf: 0.125,
} as const;

/** One plan; the same for the same seed. */
export function panelPlan(seed: number): SheetJob {
  const next = random(seed);
  const p = PANEL_PLANS;
  const between = ([from, to]: readonly [number, number]) => from + next() * (to - from);
  const whole = ([from, to]: readonly [number, number]) => from + Math.floor(next() * (to - from + 1));
  const eighths = (range: readonly [number, number]) => Math.round(between(range) * 8) / 8;
  const ticks = (inches: number) => Math.round(inches * INCH);
  const grain = next() < p.grain;
  const price = Math.round(between(p.sheet.price) / 50) * 50;
  const panel = (id: string, length: number, width: number): SheetOnHand => ({
    id,
    length: ticks(length),
    width: ticks(width),
    grain,
  });
  const sold: SheetForSale[] = [{ ...panel("sheet", p.sheet.length, p.sheet.width), price }];
  for (const [id, part] of [
    ["half", p.half],
    ["quarter", p.quarter],
  ] as const)
    if (next() < part.often)
      sold.push({
        ...panel(id, part.length, part.width),
        price: Math.round((price * between(part.share)) / 25) * 25,
      });
  const onHand = Array.from({ length: whole(p.onHand) }, (_, i) =>
    panel(`offcut ${i + 1}`, eighths(p.offcut.length), eighths(p.offcut.width)),
  );
  const count = whole(p.pieces);
  const sizes = Array.from({ length: Math.min(count, whole(p.sizes)) }, () => {
    const tall = next() < p.tall.often;
    const depth = p.depths[Math.floor(next() * p.depths.length)]!;
    return { length: ticks(eighths(tall ? p.tall.length : p.length)), width: ticks(depth) };
  });
  const pieces = Array.from({ length: count }, (_, i): SheetPiece => {
    const size = i < sizes.length ? sizes[i]! : sizes[Math.floor(next() * sizes.length)]!;
    return { id: `panel / ${i + 1}`, ...size, grain: grain ? "along" : "free" };
  });
  return { pieces, sold, onHand, kerf: ticks(p.kerf) };
}
