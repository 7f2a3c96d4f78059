/** How many pieces of each part the places and the rings of a plan ask for, and the pieces themselves. */
import { type Declared, ifKnown, known, MISTAKE, type Value } from "../plan";
import type { Asked } from "./parts";
import { MOST_PIECES } from "./parts";
import { NO_PIECES, type Pieces, piecesOf } from "./pieces";
import type { Placing } from "./placing";

export interface AskedFor {
  readonly of: (part: Declared) => Asked | undefined;
  readonly pieces: Pieces;
}

export function askedOf(placing: Placing): AskedFor {
  const parts = [...placing.input.scope.declared.values()].filter((d) => d.kind === "part");
  const placed = new Map(parts.map((d) => [d.name, placing.counts.of(d, placing.plan)]));
  const total = [...placed.values()].reduce((sum, n) => sum + (ifKnown(n) ?? 0), 0);
  if (total > MOST_PIECES) return tooMany(placing, total);
  const pieces = piecesOf(placing);
  const mirrored = new Map<string, number>();
  for (const piece of pieces.all)
    if (piece.mirrored) mirrored.set(piece.part, (mirrored.get(piece.part) ?? 0) + 1);
  const loose = looseRings(placing);
  const of = ({ name }: Declared): Asked | undefined => {
    const inPlace = placed.get(name);
    const inRing = loose.get(name) ?? 0;
    if (!inPlace) return inRing > 0 ? { count: known(inRing), by: "ring", mirrored: 0 } : undefined;
    const count: Value<number> = inPlace.state === "known" ? known(inPlace.value + inRing) : inPlace;
    return { count, by: "placed", mirrored: mirrored.get(name) ?? 0 };
  };
  return { of, pieces };
}

/** Told once, at the line that places the most; the counts are then left unknown. */
function tooMany(placing: Placing, total: number): AskedFor {
  const { placements } = placing.plan;
  const size = placements.map((p) => ifKnown(placing.counts.all(p)) ?? 0);
  const { keyword, subject } = placements[size.indexOf(Math.max(...size))]!.entry;
  placing.input.worker.fault({
    kind: "too-many",
    at: { file: placing.plan.file, start: keyword.start, end: subject.end },
    what: "the number of placed pieces",
    found: total,
    limit: MOST_PIECES,
  });
  return { of: () => ({ count: MISTAKE, by: "placed", mirrored: 0 }), pieces: NO_PIECES };
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
