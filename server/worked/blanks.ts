/**
 * Ripped pieces of one length lie side by side on a stretch of board, a blank: it is crosscut first, then ripped. Per
 * length as few blanks as a first answer finds, which the test compares with the fewest there can be: fewer take less of
 * every board, however they are laid out.
 */
import { layOut } from "../cutting/job";

export interface Ripped {
  readonly id: string;
  readonly length: number;
  /** Undefined for a piece as wide as its board. */
  readonly width: number | undefined;
}

export interface Blank {
  /** That of its first piece. */
  readonly id: string;
  readonly length: number;
  /** Side by side, widest first; one for a blank that is not shared. */
  readonly pieces: readonly string[];
}

/** In the order of their first pieces; all lengths in ticks. */
export function blanksOf(pieces: readonly Ripped[], boardWidth: number | undefined, kerf: number): Blank[] {
  const byLength = new Map<number, Ripped[]>();
  const alone: Blank[] = [];
  for (const piece of pieces) {
    const { id, length, width } = piece;
    if (width === undefined || boardWidth === undefined || width > boardWidth)
      alone.push({ id, length, pieces: [id] });
    else byLength.set(length, [...(byLength.get(length) ?? []), piece]);
  }
  const shared = [...byLength].flatMap(([length, ripped]) =>
    layOut({
      pieces: ripped.map(({ id, width }) => ({ id, length: width! })),
      sold: [{ id: "blank", length: boardWidth!, price: 1 }],
      onHand: [],
      kerf,
      endTrim: 0,
      salvage: "keep",
    }).boards.map(({ cuts }): Blank => {
      const ids = cuts.map(({ pieceId }) => pieceId);
      return { id: ids[0]!, length, pieces: ids };
    }),
  );
  const place = new Map(pieces.map(({ id }, i) => [id, i]));
  return [...alone, ...shared].sort((a, b) => place.get(a.id)! - place.get(b.id)!);
}
