/** A board read from left to right: what becomes of its wood between the pieces, and which places are marked. */
import type { SheetBoard, SheetRest } from "./data";

export interface Rest {
  readonly from: number;
  readonly to: number;
  /** "kept" is an offcut that the sheet names; "waste" is trim and what is too short to keep. */
  readonly kind: "waste" | "bad" | "kept";
  /** Of one that is kept. */
  readonly named?: SheetRest;
}

/** What is no piece, in order, neighbouring waste as one stretch; the kerfs are left out. In mm. */
export function restsOf(board: SheetBoard): readonly Rest[] {
  const rests: Rest[] = [];
  for (const { from, to, why } of [...board.waste].sort((a, b) => a.from - b.from)) {
    if (why === "kerf") continue;
    const named = why === "offcut" ? board.rests.find(({ x }) => Math.abs(x - from) < NOISE) : undefined;
    const kind = why === "bad" ? "bad" : named ? "kept" : "waste";
    const last = rests.at(-1);
    if (last?.kind === "waste" && kind === "waste" && from - last.to < NOISE)
      rests[rests.length - 1] = { ...last, to: Math.max(last.to, to) };
    else rests.push({ from, to, kind, ...(named && { named }) });
  }
  return rests;
}

export interface Mark {
  readonly mm: number;
  readonly text: string;
  /** The side on which the saw takes its kerf; null at the board's own end. */
  readonly waste: "left" | "right" | null;
}

/** The end of each piece in order; its beginning too where it does not simply follow the kerf of the one before. */
export function marksOf(board: SheetBoard): readonly Mark[] {
  return board.cuts.flatMap(({ from, to }, i): Mark[] => {
    const before = board.cuts[i - 1]?.to.mm ?? 0;
    const begins = board.waste.some(
      (waste) => waste.why !== "kerf" && waste.from > before - NOISE && waste.to < from.mm + NOISE,
    );
    const end = {
      mm: to.mm,
      text: to.text,
      waste: to.mm < board.length.mm - NOISE ? ("right" as const) : null,
    };
    return begins ? [{ mm: from.mm, text: from.text, waste: "left" }, end] : [end];
  });
}

/** A double's noise on a length, in mm. */
const NOISE = 0.01;
