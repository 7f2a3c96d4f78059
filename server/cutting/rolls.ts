/**
 * Pieces off a roll: cut across its whole width into bands, and each band along the roll into pieces side by side. As
 * little of the roll as can be, in whole ticks; nothing is lost to a knife. Of few pieces the answer is the least there
 * is, found by trying all that could be less; of many it is the best of some rules.
 */

export interface RollPiece {
  readonly id: string;
  /** Along the roll and across it; it may be laid the other way where `turns`. */
  readonly along: number;
  readonly across: number;
  readonly turns: boolean;
}

export interface RollJob {
  readonly width: number;
  /** The canonical order is the order given. */
  readonly pieces: readonly RollPiece[];
}

export interface RollBand {
  /** How much of the roll it takes. */
  readonly along: number;
  readonly pieces: readonly {
    readonly pieceId: string;
    readonly along: number;
    readonly across: number;
    readonly turned: boolean;
  }[];
}

export interface RollAnswer {
  /** Longest first. */
  readonly bands: readonly RollBand[];
  readonly along: number;
  /** No way to cut it so takes less. */
  readonly proven: boolean;
  /** Ids of pieces wider than the roll either way, or whose numbers are no lengths. */
  readonly unplaced: readonly string[];
}

/** Never throws, whatever numbers the job holds. */
export function layOutRoll({ width, pieces }: RollJob): RollAnswer {
  const fits = (across: number) => across <= width;
  const usable = pieces.filter(
    ({ along, across, turns }) =>
      [along, across, width].every(isLength) && (fits(across) || (turns && fits(along))),
  );
  // Laid with the shorter side along the roll, where both are possible, a piece takes less of it alone.
  const laid = usable.map((piece) => waysOf(piece, width));
  const first = laid.map((ways) => ways[0]!);
  const rules = [first, laid.map((ways) => ways.at(-1)!)].map((ways) => inBands(ways, width));
  const best = rules.reduce((a, b) => (totalOf(b) < totalOf(a) ? b : a));
  const search = { steps: MOST_STEPS, best, least: totalOf(best) };
  if (laid.length <= MOST_TRIED) tryAll(laid, width, search);
  const bands = search.best
    .map(
      (band): RollBand => ({
        along: Math.max(...band.map(({ along }) => along)),
        pieces: band.map(({ piece, along, across, turned }) => ({
          pieceId: piece.id,
          along,
          across,
          turned,
        })),
      }),
    )
    .sort((a, b) => b.along - a.along);
  return {
    bands,
    along: bands.reduce((sum, band) => sum + band.along, 0),
    proven:
      (laid.length <= MOST_TRIED && search.steps > 0) || totalOf(search.best) <= leastByArea(first, width),
    unplaced: pieces.filter((piece) => !usable.includes(piece)).map(({ id }) => id),
  };
}

interface Way {
  readonly piece: RollPiece;
  readonly along: number;
  readonly across: number;
  readonly turned: boolean;
}

const MOST_TRIED = 9;
const MOST_STEPS = 200_000;

const isLength = (n: number): boolean => Number.isInteger(n) && n > 0 && n <= 2 ** 32;

function waysOf(piece: RollPiece, width: number): readonly Way[] {
  const { along, across, turns } = piece;
  const ways = [
    { piece, along, across, turned: false },
    ...(turns && along !== across ? [{ piece, along: across, across: along, turned: true }] : []),
  ];
  return ways.filter((way) => way.across <= width).sort((a, b) => a.along - b.along);
}

/** Longest first, each into the first band that has room. */
function inBands(ways: readonly Way[], width: number): readonly (readonly Way[])[] {
  const bands: { left: number; readonly ways: Way[] }[] = [];
  for (const way of [...ways].sort((a, b) => b.along - a.along || b.across - a.across)) {
    const band = bands.find(({ left }) => left >= way.across);
    if (band) {
      band.ways.push(way);
      band.left -= way.across;
    } else bands.push({ left: width - way.across, ways: [way] });
  }
  return bands.map((band) => band.ways);
}

const totalOf = (bands: readonly (readonly Way[])[]): number =>
  bands.reduce((sum, band) => sum + Math.max(...band.map(({ along }) => along)), 0);

const leastByArea = (ways: readonly Way[], width: number): number =>
  Math.ceil(ways.reduce((sum, { along, across }) => sum + along * across, 0) / width);

interface Search {
  steps: number;
  best: readonly (readonly Way[])[];
  least: number;
}

/** Each piece each way, into each band there is, or a new one. */
function tryAll(laid: readonly (readonly Way[])[], width: number, search: Search): void {
  const bands: { along: number; left: number; readonly ways: Way[] }[] = [];
  const place = (i: number, total: number): void => {
    if (search.steps-- <= 0 || total >= search.least) return;
    if (i === laid.length) {
      search.least = total;
      search.best = bands.map((band) => [...band.ways]);
      return;
    }
    for (const way of laid[i]!) {
      for (const band of bands) {
        if (band.left < way.across) continue;
        const before = band.along;
        band.along = Math.max(before, way.along);
        band.left -= way.across;
        band.ways.push(way);
        place(i + 1, total - before + band.along);
        band.ways.pop();
        band.left += way.across;
        band.along = before;
      }
      bands.push({ along: way.along, left: width - way.across, ways: [way] });
      place(i + 1, total + way.along);
      bands.pop();
    }
  };
  place(0, 0);
}
