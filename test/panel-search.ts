/**
 * The least any answer for a few pieces must cost, by trying every way to cut them with edge-to-edge cuts. It knows nothing
 * of what it is compared with.
 */
import type { SheetJob, SheetOnHand, SheetPiece } from "../server/cutting/sheets";

/** Pieces left over, then weight bought (cents, or area when a price is missing), then area bought. */
export type Optimum = readonly [left: number, weight: number, area: number];

/** For up to six pieces with sound numbers. */
export function sheetOptimum({ pieces, sold, onHand, kerf }: SheetJob): Optimum {
  const all = 2 ** pieces.length - 1;
  const priced = sold.every(({ price }) => price !== null);
  const boxes = [false, true].map((grain) => allBoxes(pieces, kerf, grain));
  const takes = (sheet: SheetOnHand, set: number) =>
    boxes[sheet.grain ? 1 : 0]![set]!.some(([x, y]) => x <= sheet.length && y <= sheet.width);
  const cheapest: (readonly [number, number])[] = [[0, 0]];
  for (let set = 1; set <= all; set++) {
    let best: readonly [number, number] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (let part = set; part > 0; part = (part - 1) & set)
      for (const sheet of sold) {
        if (!takes(sheet, part)) continue;
        const area = sheet.length * sheet.width;
        const [weight, size] = cheapest[set ^ part]!;
        const price = [weight + (priced ? sheet.price! : area), size + area] as const;
        if (price[0] < best[0] || (price[0] === best[0] && price[1] < best[1])) best = price;
      }
    cheapest[set] = best;
  }
  const free = pieces.map((_, i) => sold.every((sheet) => !takes(sheet, 2 ** i)));
  let optimum: Optimum = [Number.POSITIVE_INFINITY, 0, 0];
  const share = (i: number, own: readonly number[], buy: number, left: number): void => {
    if (i < pieces.length) {
      onHand.forEach((sheet, s) => {
        if (takes(sheet, own[s]! | (2 ** i))) share(i + 1, own.with(s, own[s]! | (2 ** i)), buy, left);
      });
      if (free[i]) share(i + 1, own, buy, left + 1);
      else share(i + 1, own, buy | (2 ** i), left);
      return;
    }
    const one: Optimum = [left, ...cheapest[buy]!];
    const k = one.findIndex((n, j) => n !== optimum[j]);
    if (k >= 0 && one[k]! < optimum[k]!) optimum = one;
  };
  share(
    0,
    onHand.map(() => 0),
    0,
    0,
  );
  return optimum;
}

/** For each set of pieces all sizes of what they can be put together to. */
function allBoxes(pieces: readonly SheetPiece[], kerf: number, grain: boolean) {
  const boxes: (readonly [x: number, y: number])[][] = [[]];
  for (let set = 1; set < 2 ** pieces.length; set++) {
    const found = new Map<string, readonly [number, number]>();
    const add = (x: number, y: number) => found.set(`${x} ${y}`, [x, y]);
    pieces.forEach((piece, i) => {
      if (set !== 2 ** i) return;
      add(piece.length, piece.width);
      if (!grain || piece.grain === "free") add(piece.width, piece.length);
    });
    for (let part = (set - 1) & set; part > 0; part = (part - 1) & set)
      for (const [x, y] of boxes[part]!)
        for (const [u, v] of boxes[set ^ part]!) {
          add(x + kerf + u, Math.max(y, v));
          add(Math.max(x, u), y + kerf + v);
        }
    boxes.push([...found.values()]);
  }
  return boxes;
}
