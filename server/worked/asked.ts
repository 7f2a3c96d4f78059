/** How many pieces of each part the places and the rings of a plan ask for, and the pieces themselves. */
import { ifKnown, known, type Value } from "../plan";
import type { Asked } from "./parts";
import { MOST_PIECES } from "./parts";
import { NO_PIECES, type Pieces, piecesOf, placedCounts } from "./pieces";
import type { Placing } from "./placing";

export interface AskedFor {
  readonly of: (part: string) => Asked | undefined;
  readonly pieces: Pieces;
}

export function askedOf(placing: Placing): AskedFor {
  const placed = placedCounts(placing);
  const total = [...placed.values()].reduce((sum, n) => sum + (ifKnown(n) ?? 0), 0);
  const pieces = total <= MOST_PIECES ? piecesOf(placing) : NO_PIECES;
  if (total > MOST_PIECES) {
    const { keyword, subject } = placing.plan.placements.at(-1)!.entry;
    const at = { file: placing.plan.file, start: keyword.start, end: subject.end };
    placing.input.worker.fault({
      kind: "too-many",
      at,
      what: "the number of placed pieces",
      found: total,
      limit: MOST_PIECES,
    });
  }
  const mirrored = new Map<string, number>();
  for (const piece of pieces.all)
    if (piece.mirrored) mirrored.set(piece.part, (mirrored.get(piece.part) ?? 0) + 1);
  const loose = looseRings(placing);
  const of = (part: string): Asked | undefined => {
    const inPlace = placed.get(part);
    const inRing = loose.get(part) ?? 0;
    if (!inPlace) return inRing > 0 ? { count: known(inRing), by: "ring", mirrored: 0 } : undefined;
    const count: Value<number> = inPlace.state === "known" ? known(inPlace.value + inRing) : inPlace;
    return { count, by: "placed", mirrored: mirrored.get(part) ?? 0 };
  };
  return { of, pieces };
}

/** How many of each part the rings take that no line places. */
function looseRings(placing: Placing): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const [ring, members] of placing.input.rings) {
    if (placing.linesOf(ring).length > 0) continue;
    for (const { part, count } of members) counts.set(part, (counts.get(part) ?? 0) + count);
  }
  return counts;
}
