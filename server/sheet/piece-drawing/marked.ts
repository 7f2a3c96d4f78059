/** Which marks can be pointed at in a view, and where: on the largest piece of each that is seen. */
import type { DrawnPiece } from "./pieces";
import type { Sight, Spot } from "./spots";

/** A mark and the spots in which its leader may end. */
export interface Marked {
  readonly mark: string;
  readonly ends: readonly Spot[];
}

/** The marks seen with the best spots of their largest pieces, in order of the pieces, and the marks not seen, in order of the alphabet. */
export function marksOf(
  pieces: readonly DrawnPiece[],
  sight: Sight,
): { readonly marked: readonly Marked[]; readonly unseen: readonly string[] } {
  const byMark = new Map<string, string[]>();
  for (const { mark, id } of pieces) {
    const ids = byMark.get(mark);
    if (ids) ids.push(id);
    else byMark.set(mark, [id]);
  }
  const marks = [...byMark].map(([mark, ids]) => ({ mark, ends: endsOf(ids, sight) }));
  return {
    marked: marks.filter(({ ends }) => ends.length > 0),
    unseen: marks
      .filter(({ ends }) => ends.length === 0)
      .map(({ mark }) => mark)
      .sort((a, b) => a.length - b.length || (a < b ? -1 : 1)),
  };
}

function endsOf(ids: readonly string[], sight: Sight): readonly Spot[] {
  const seen = ids.filter((id) => sight.width(id) >= LEAST_WIDTH);
  const most = seen.reduce((area, id) => Math.max(area, sight.area(id)), 0);
  const large = seen.filter((id) => sight.area(id) >= LARGE * most);
  const good = sight.spots(large, NEARLY);
  const every = Math.ceil(good.length / MOST_ENDS);
  return good.filter((_, i) => i % every === Math.floor(every / 2));
}

/** Share of the largest from which a piece is as good, of the best from which a spot is. */
const LARGE = 0.6;
const NEARLY = 0.75;
/** mm of paper; what is nowhere seen as wide as this cannot be made out. */
const LEAST_WIDTH = 0.6;
const MOST_ENDS = 48;
