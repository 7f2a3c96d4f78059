/**
 * The first answer for pieces cut from sheets by edge-to-edge cuts: good, not proven. Sheets on hand are used first, in
 * the job's order. Rows along or across the sheet, free pieces laid three ways, first or best row, each sold size
 * preferred in turn; fewest pieces left over, then the least money (least area when a price is missing) wins.
 *
 * Lengths are integer ticks, money integer cents, as for boards; a side ends at `LONGEST_SIDE`. What is not so is left
 * out: such a piece is unplaced, such a sheet unused. Equal pieces are laid together, and at most a fixed number of
 * bought sheets, of rows and of columns stay open, so that one rule costs O(n + g h) for n pieces of g sizes and h sheets
 * on hand; the rules tried are counted, not timed.
 */
import { byText, firstOfEachId, isAmount } from "./question";
import { packShelves, type Rule, type ShelfItem, type ShelfSheet, type Shelves } from "./shelves";

/** About 13 m. */
export const LONGEST_SIDE = 2 ** 23;

export interface SheetPiece {
  /** Piece identity. The canonical order of pieces is the order given. */
  readonly id: string;
  readonly length: number;
  readonly width: number;
  /** "along": its length runs with the grain of a sheet that has one. */
  readonly grain: "along" | "free";
}

export interface SheetOnHand {
  readonly id: string;
  readonly length: number;
  readonly width: number;
  /** Its grain runs along its length; false when it has none. */
  readonly grain: boolean;
}

export interface SheetForSale extends SheetOnHand {
  /** Cents; null when not known. */
  readonly price: number | null;
}

export interface SheetJob {
  readonly pieces: readonly SheetPiece[];
  readonly sold: readonly SheetForSale[];
  readonly onHand: readonly SheetOnHand[];
  /** Lost to each saw cut. */
  readonly kerf: number;
}

/** Where a piece lies: `x` along the sheet's length and `y` along its width from the lower left corner. */
export interface Placement {
  readonly pieceId: string;
  readonly x: number;
  readonly y: number;
  /** What it takes along x and along y, turned or not. */
  readonly length: number;
  readonly width: number;
  /** Its length lies along y. */
  readonly turned: boolean;
}

export interface SheetLayout {
  readonly sheetId: string;
  readonly kind: "bought" | "on hand";
  readonly length: number;
  readonly width: number;
  /** Row by row. */
  readonly placements: readonly Placement[];
}

export interface SheetAnswer {
  /** On hand in the job's order, then bought: fullest first, equal ones together. */
  readonly sheets: readonly SheetLayout[];
  /** Ids of pieces that no sheet could take, in the order given. */
  readonly unplaced: readonly string[];
  /** What to buy, in the order sold; `price` is the total in cents, null when it is not known. */
  readonly buy: readonly { readonly id: string; readonly count: number; readonly price: number | null }[];
  /** Cents; 0 when nothing is bought, null when any bought sheet has no price. */
  readonly cost: number | null;
}

/** Never throws, whatever numbers the job holds. */
export function layOutSheets(job: SheetJob): SheetAnswer {
  const reading = readSheetJob(job);
  return answerOf(job, reading, bestShelves(reading, job.kerf));
}

/** The best that the rules find. */
export function bestShelves({ items, kinds, own }: SheetReading, kerf: number): Shelves {
  let best: Shelves | null = null;
  let looks = 0;
  for (const rule of rulesFor(kinds.length)) {
    if (best !== null && looks > MOST_LOOKS) break;
    const shelves = packShelves(items, kinds, own, kerf, rule);
    looks += shelves.looks;
    if (best === null || isBetter(shelves, best)) best = shelves;
  }
  return best!;
}

/** A job as the rules that lay it out see it: equal pieces as one item, sheets with what they cost in the ranking. */
export interface SheetReading {
  /** Longest first, then widest. */
  readonly items: readonly ShelfItem[];
  /** Per item: places in `job.pieces`, in order. */
  readonly members: readonly (readonly number[])[];
  readonly sold: readonly SheetForSale[];
  readonly onHand: readonly SheetOnHand[];
  /** As `sold`: cents, or area when a price is missing among the sheets sold. */
  readonly kinds: readonly ShelfSheet[];
  readonly own: readonly ShelfSheet[];
  /** Every sheet sold has its price. */
  readonly priced: boolean;
}

/** Reads any job, leaving out what cannot be used. */
export function readSheetJob(job: SheetJob): SheetReading {
  const sound = <T extends SheetOnHand>(sheets: readonly T[]) =>
    firstOfEachId(sheets).filter(({ length, width }) => isSide(length) && isSide(width));
  const sold = sound(job.sold).filter(({ price }) => price === null || isAmount(price));
  const priced = sold.every(({ price }) => price !== null);
  const kinds = sold.map((sheet) => weighed(sheet, priced ? (sheet.price ?? 0) : sheet.length * sheet.width));
  const onHand = sound(job.onHand);
  return { ...itemsOf(job), sold, onHand, kinds, own: onHand.map((sheet) => weighed(sheet, 0)), priced };
}

const MOST_LOOKS = 200_000;
/** Sold sizes tried as the one to buy. */
const MOST_KINDS = 8;

function isSide(n: number): boolean {
  return Number.isInteger(n) && n > 0 && n <= LONGEST_SIDE;
}

function weighed(sheet: SheetOnHand, weight: number): ShelfSheet {
  return { length: sheet.length, width: sheet.width, grain: sheet.grain, weight };
}

/** Pieces equal in everything but their id as one item; `members` are their places in `job.pieces`. */
function itemsOf({ pieces, kerf }: SheetJob): { items: readonly ShelfItem[]; members: readonly number[][] } {
  const groups = new Map<string, number[]>();
  pieces.forEach(({ length, width, grain }, i) => {
    if (!isAmount(kerf) || !isSide(length) || !isSide(width)) return;
    const key = `${length} ${width} ${grain}`;
    const group = groups.get(key);
    if (group) group.push(i);
    else groups.set(key, [i]);
  });
  const members = [...groups.values()];
  const items = members.map((group) => ({ ...pieces[group[0]!]!, count: group.length }));
  const order = items
    .map((_, i) => i)
    .sort((i, j) => {
      const [a, b] = [items[i]!, items[j]!];
      return b.length - a.length || b.width - a.width || byText(a.grain, b.grain);
    });
  return { items: order.map((i) => items[i]!), members: order.map((i) => members[i]!) };
}

function rulesFor(kinds: number): readonly Rule[] {
  const rules: Rule[] = [];
  for (let prefer = 0; prefer < Math.max(1, Math.min(kinds, MOST_KINDS)); prefer++)
    for (const rows of ["along", "across"] as const)
      for (const lay of ["as given", "long in the row", "long across the row"] as const)
        for (const fit of ["first", "best"] as const) rules.push({ prefer, rows, lay, fit });
  return rules;
}

function isBetter(a: Shelves, b: Shelves): boolean {
  const i = a.score.findIndex((n, j) => n !== b.score[j]);
  return i >= 0 && a.score[i]! < b.score[i]!;
}

/** Names the sheets and deals the pieces of equal size out in canonical order. */
export function answerOf(
  job: SheetJob,
  { members, sold, onHand }: SheetReading,
  { sheets }: Pick<Shelves, "sheets">,
): SheetAnswer {
  const dealt = members.map(() => 0);
  const placed = new Set<number>();
  const area = (sheet: Shelves["sheets"][number]) =>
    sheet.placed.reduce((sum, { dx, dy }) => sum + dx * dy, 0);
  const inOrder = sheets
    .map((sheet) => {
      const board = sheet.bought ? sold[sheet.index]! : onHand[sheet.index]!;
      return { sheet, board, area: area(sheet), text: JSON.stringify(sheet.placed) };
    })
    .sort((a, b) => {
      if (a.sheet.bought !== b.sheet.bought) return a.sheet.bought ? 1 : -1;
      if (!a.sheet.bought) return a.sheet.index - b.sheet.index;
      return b.area - a.area || byText(a.board.id, b.board.id) || byText(a.text, b.text);
    });
  const laidOut = inOrder.map(({ sheet, board }): SheetLayout => {
    const placements = sheet.placed.map(({ item, x, y, dx, dy, turned }): Placement => {
      const piece = members[item]![dealt[item]!++]!;
      placed.add(piece);
      return { pieceId: job.pieces[piece]!.id, x, y, length: dx, width: dy, turned };
    });
    const { id, length, width } = board;
    return { sheetId: id, kind: sheet.bought ? "bought" : "on hand", length, width, placements };
  });
  const buy = sold.flatMap(({ id, price }) => {
    const count = laidOut.filter(({ kind, sheetId }) => kind === "bought" && sheetId === id).length;
    return count === 0 ? [] : [{ id, count, price: price === null ? null : price * count }];
  });
  return {
    sheets: laidOut,
    unplaced: job.pieces.filter((_, i) => !placed.has(i)).map(({ id }) => id),
    buy,
    cost: buy.reduce<number | null>(
      (sum, { price }) => (sum === null || price === null ? null : sum + price),
      0,
    ),
  };
}
