/** What the pile of a stock gives to a plan, and what lies there once all is cut. */
import { type Display, exactly, exactOf, fraction, LENGTH, type Quantity } from "../units";
import { type BoardWork, ofTicks, piecesOf, type SheetWork } from "./layouts";
import type { Pile } from "./materials";
import { currencyOf, ofCents } from "./proving";
import { boardRests, isAcross, sheetRests } from "./rests";

type Work = BoardWork | SheetWork;

export interface PileUsed {
  readonly pile: Pile;
  /** So many of its boards or sheets are cut, and so many pieces are cut from them. */
  readonly count: number;
  readonly pieces: number;
  /** About what the pieces cost if as much wood were bought, at the lowest price by length or area. */
  readonly saves: Quantity | undefined;
}

/** In the order of the plan. */
export function pileUsed(work: Work): PileUsed[] {
  const { material, job } = work;
  const currency = currencyOf(work);
  const rates = job.sold.flatMap((s) => (s.price === null ? [] : [s.price / amountOf(s)]));
  const cut = layoutsOf(work).filter(({ kind }) => kind === "on hand");
  return material.onHand.flatMap((pile, i): PileUsed[] => {
    const used = cut.filter(({ id }) => id.startsWith(`pile ${i} /`));
    if (used.length === 0) return [];
    const pieces = used.reduce((sum, one) => sum + one.count, 0);
    const wood = used.flatMap((one) => one.pieces).reduce((sum, piece) => sum + amountOf(piece), 0);
    const saves =
      currency && rates.length > 0 ? ofCents(Math.round(wood * Math.min(...rates)), currency) : undefined;
    return [{ pile, count: used.length, pieces, saves }];
  });
}

interface Sides {
  readonly length: number;
  readonly width?: number;
}

/** A length; of what has a width, an area. */
const amountOf = ({ length, width = 1 }: Sides): number => length * width;

interface Laid {
  readonly kind: "bought" | "on hand";
  readonly id: string;
  /** What is cut from it; pieces that lie side by side on a board are one of these. */
  readonly pieces: readonly Sides[];
  readonly count: number;
}

function layoutsOf(work: Work): Laid[] {
  if ("sheets" in work.answer)
    return work.answer.sheets.map(({ kind, sheetId: id, placements }) => {
      return { kind, id, pieces: placements, count: placements.length };
    });
  const { answer } = work as BoardWork;
  return answer.boards.map(({ kind, boardId: id, cuts }) => ({
    kind,
    id,
    pieces: cuts.map(({ from, to }) => ({ length: to - from })),
    count: cuts.reduce((sum, { pieceId }) => sum + piecesOf(work as BoardWork, pieceId).length, 0),
  }));
}

/** So many alike on hand. */
export interface OnHandAfter {
  readonly count: number;
  readonly length: Quantity;
  readonly width: Quantity | undefined;
  readonly bad: Pile["bad"];
}

/**
 * What lies there once all is cut: rests worth keeping, to the mark below, then what was left whole. Rests of sheets
 * whose grain runs along their shorter side are left out, since no line can say that.
 */
export function afterwards({ answer, job, material }: Work, { mark }: Display): OnHandAfter[] {
  const below = (ticks: number): Quantity => {
    const marks = fraction.floor(fraction.divide(exactOf(ofTicks(ticks)), mark)!);
    return exactly(LENGTH, fraction.multiply(fraction.rational(marks), mark));
  };
  const rests: OnHandAfter[] =
    "boards" in answer
      ? answer.boards.flatMap(boardRests).map(({ length }) => ({
          count: 1,
          length: below(length),
          width: undefined,
          bad: [],
        }))
      : answer.sheets
          .flatMap((sheet) => sheetRests(sheet, job.kerf))
          .filter(({ length, width }) => !isAcross(length, width, material.grain))
          .map(({ length, width }) => ({
            count: 1,
            length: below(Math.max(length, width)),
            width: below(Math.min(length, width)),
            bad: [],
          }));
  const cut = new Set<string>(
    "boards" in answer
      ? answer.boards.map(({ boardId }) => boardId)
      : answer.sheets.map(({ sheetId }) => sheetId),
  );
  const whole = material.onHand.flatMap((pile, i): OnHandAfter[] => {
    const left = Array.from({ length: pile.count }, (_, n) => `pile ${i} / ${n + 1}`).filter(
      (id) => !cut.has(id),
    );
    return left.length > 0 ? [{ ...pile, count: left.length }] : [];
  });
  return [...alike(rests), ...whole];
}

/** Those of one size together, longest first. */
function alike(rests: readonly OnHandAfter[]): OnHandAfter[] {
  const groups = new Map<string, OnHandAfter>();
  for (const rest of rests) {
    const key = `${rest.length.approx} ${rest.width?.approx ?? ""}`;
    groups.set(key, { ...rest, count: (groups.get(key)?.count ?? 0) + 1 });
  }
  return [...groups.values()].sort(
    (a, b) => b.length.approx - a.length.approx || (b.width?.approx ?? 0) - (a.width?.approx ?? 0),
  );
}
