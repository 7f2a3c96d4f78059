/** What another board, or one more on hand, would save, and rests that cost much. Read off the answer shown; nothing is searched for. */
import { type LumberStandard, soldLengths } from "../trade";
import type { Quantity } from "../units";
import { type BoardWork, ofTicks, type SheetWork, TICKS_PER_MM } from "./layouts";
import type { Sold } from "./materials";
import { currencyOf, ofCents } from "./proving";
import { boardRests, isAcross, sheetRests } from "./rests";
import { whyNothing } from "./shortage";

/** Less is not worth another way to the yard, in hundredths of whatever it is paid in; nor is less than this share of what the stock costs. */
const LEAST_CENTS = 500;
const LEAST_SHARE = 0.1;
/** The share of a board, or of a sheet, that wood from the pile could take over: more is hardly an offcut. */
const LITTLE = { board: 1 / 3, sheet: 1 / 4 };
/** A rest worth a word is larger than this share of its board or sheet, and at least 24 in long; of a sheet, no side is under 12 in. */
const LARGE = 1 / 2;
const LONG = 24 * 25.4 * TICKS_PER_MM;
const WIDE = 12 * 25.4 * TICKS_PER_MM;
/** And is worth this share of what is bought of its stock. */
const DEAR = 0.2;

export type Saving = {
  readonly saves: Quantity;
  /** The board that is bought now. */
  readonly instead: Sold;
} & (
  | {
      readonly by: "on hand";
      /** What one more on hand must measure at least; a board has no width of its own. */
      readonly length: Quantity;
      readonly width: Quantity | undefined;
    }
  | {
      readonly by: "length";
      /** A length usually sold, and how many of the boards bought could be of it. */
      readonly length: Quantity;
      readonly count: number;
      /** As much by length as what is sold nearest to it. */
      readonly price: Quantity;
      readonly near: Sold;
    }
);

/** The one that saves most; undefined where none is worth it, or a price is missing. */
export function savingOf(work: BoardWork | SheetWork, lumber: LumberStandard): Saving | undefined {
  const { cost } = work.answer;
  if (!cost || whyNothing(work)) return undefined;
  const found = "longest" in work ? [byLength(work, lumber), byBoardOnHand(work)] : [bySheetOnHand(work)];
  const [best] = found.filter((s) => s !== undefined).sort((a, b) => b.cents - a.cents);
  return best && best.cents >= LEAST_CENTS && best.cents >= LEAST_SHARE * cost ? best.saving : undefined;
}

interface Found {
  readonly cents: number;
  readonly saving: Saving;
}

const soldAs = ({ material }: BoardWork | SheetWork, id: string): Sold =>
  material.sold[Number(id.slice("sold ".length))]!;

/** Boards of a length usually sold, which is not among those of the shop, in place of longer ones that are bought. */
function byLength(work: BoardWork, lumber: LumberStandard): Found | undefined {
  const { job, answer } = work;
  const currency = currencyOf(work);
  const unit = lumber === "planed-metric" ? "mm" : "ft";
  const usual = soldLengths.find((row) => row.unit === unit)?.value ?? [];
  const priced = job.sold.filter(({ price }) => price !== null);
  const bought = answer.boards.filter(({ kind }) => kind === "bought");
  const found = usual.flatMap((n): Found[] => {
    const length = n * (unit === "mm" ? TICKS_PER_MM : TICKS_PER_FOOT);
    if (!currency || job.sold.some((s) => Math.abs(s.length - length) < TICKS_PER_MM)) return [];
    const near = nearest(priced, length);
    const price = Math.ceil((near.price! * length) / near.length);
    const saved = bought.flatMap((board) => {
      const now = job.sold.find(({ id }) => id === board.boardId)!;
      return board.cuts.at(-1)!.to <= length && now.price! > price
        ? [{ now, cents: now.price! - price }]
        : [];
    });
    if (saved.length === 0) return [];
    const saving: Saving = {
      by: "length",
      length: ofTicks(length),
      count: saved.length,
      saves: ofCents(
        saved.reduce((sum, { cents }) => sum + cents, 0),
        currency,
      ),
      instead: soldAs(work, saved[0]!.now.id),
      price: ofCents(price, currency),
      near: soldAs(work, near.id),
    };
    return [{ cents: saved.reduce((sum, { cents }) => sum + cents, 0), saving }];
  });
  return found.sort((a, b) => b.cents - a.cents)[0];
}

const TICKS_PER_FOOT = 195_072;

/** Of the next shorter and the next longer sold, that which costs more by length. */
function nearest(sold: BoardWork["job"]["sold"], length: number): BoardWork["job"]["sold"][number] {
  const inOrder = [...sold].sort((a, b) => a.length - b.length);
  const around = [inOrder.findLast((s) => s.length < length), inOrder.find((s) => s.length > length)];
  const [dearest] = around
    .filter((s) => s !== undefined)
    .sort((a, b) => b.price! * a.length - a.price! * b.length);
  return dearest!;
}

/** The board bought with the least on it, where wood that is there already could take that over. */
function byBoardOnHand(work: BoardWork): Found | undefined {
  const { job, answer, material } = work;
  const used = ({ cuts }: (typeof answer.boards)[number]) => cuts.at(-1)!.to - job.endTrim;
  const [least] = answer.boards.filter(({ kind }) => kind === "bought").sort((a, b) => used(a) - used(b));
  const currency = currencyOf(work);
  if (!least || !currency || material.salvage === "keep" || used(least) > LITTLE.board * least.length)
    return undefined;
  const cents = job.sold.find(({ id }) => id === least.boardId)!.price!;
  const instead = soldAs(work, least.boardId);
  const saves = ofCents(cents, currency);
  return { cents, saving: { by: "on hand", length: ofTicks(used(least)), width: undefined, saves, instead } };
}

function bySheetOnHand(work: SheetWork): Found | undefined {
  const { job, answer } = work;
  const taken = ({ placements }: (typeof answer.sheets)[number]) => ({
    length: Math.max(...placements.map((p) => p.x + p.length)),
    width: Math.max(...placements.map((p) => p.y + p.width)),
  });
  const area = (sheet: (typeof answer.sheets)[number]) => taken(sheet).length * taken(sheet).width;
  const [least] = answer.sheets.filter(({ kind }) => kind === "bought").sort((a, b) => area(a) - area(b));
  const currency = currencyOf(work);
  if (!least || !currency || area(least) > LITTLE.sheet * least.length * least.width) return undefined;
  const cents = job.sold.find(({ id }) => id === least.sheetId)!.price!;
  const { length, width } = taken(least);
  const instead = soldAs(work, least.sheetId);
  const sides = { length: ofTicks(length), width: ofTicks(width) };
  return { cents, saving: { by: "on hand", ...sides, saves: ofCents(cents, currency), instead } };
}

export interface WastedRest {
  readonly length: Quantity;
  readonly width: Quantity | undefined;
  /** Its share of what the board cost. */
  readonly worth: Quantity;
  /** It has a grain, which runs along its shorter side: no line of a plan says so of a sheet on hand. */
  readonly grainAcross: boolean;
  readonly from: Sold;
}

/** The dearest rest of what is bought; undefined where none is worth a word, or the stock's own pile is to be kept. */
export function wastedRest(work: BoardWork | SheetWork): WastedRest | undefined {
  const { answer, job, material } = work;
  const currency = currencyOf(work);
  if (!currency || !answer.cost || material.salvage === "keep" || whyNothing(work)) return undefined;
  const rests = "boards" in answer ? restsOfBoards(answer.boards) : restsOfSheets(answer.sheets, job.kerf);
  const dear = rests.flatMap(({ id, share, length, width }) => {
    const price = job.sold.find((sold) => sold.id === id)!.price!;
    return [{ id, share, length, width, cents: Math.floor(price * share) }];
  });
  const [best] = dear
    .filter(({ share, cents }) => share > LARGE && cents >= LEAST_CENTS && cents >= DEAR * answer.cost!)
    .sort((a, b) => b.cents - a.cents);
  return (
    best && {
      length: ofTicks(best.length),
      width: best.width === undefined ? undefined : ofTicks(best.width),
      worth: ofCents(best.cents, currency),
      grainAcross: best.width !== undefined && isAcross(best.length, best.width, material.grain),
      from: soldAs(work, best.id),
    }
  );
}

interface Rest {
  readonly id: string;
  readonly share: number;
  readonly length: number;
  readonly width: number | undefined;
}

const restsOfBoards = (boards: BoardWork["answer"]["boards"]): Rest[] =>
  boards
    .filter(({ kind }) => kind === "bought")
    .flatMap((board) =>
      boardRests(board)
        .filter(({ length }) => length >= LONG)
        .map(({ length }) => ({
          id: board.boardId,
          share: length / board.length,
          length,
          width: undefined,
        })),
    );

const restsOfSheets = (sheets: SheetWork["answer"]["sheets"], kerf: number): Rest[] =>
  sheets
    .filter(({ kind }) => kind === "bought")
    .flatMap((sheet) =>
      sheetRests(sheet, kerf)
        .filter(({ length, width }) => Math.min(length, width) >= WIDE && Math.max(length, width) >= LONG)
        .map(({ length, width }) => ({
          id: sheet.sheetId,
          share: (length * width) / (sheet.length * sheet.width),
          length,
          width,
        })),
    );
