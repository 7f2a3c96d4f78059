/** Bought boards for a set of pieces: several rules, the cheapest result. */
import { type Effort, packFullest } from "./fullest";
import { type Bin, type Fit, packDecreasing } from "./pack";
import { firstTaking, type Question } from "./question";
import { isBetter, type Score, scoreOf, shrink } from "./score";

/**
 * Packs all of `counts` but groups too long for any board sold. At least one rule is tried, the others while effort is
 * left; rules that seldom win only when `thorough`. The bins are shrunk already.
 */
export function packBought(
  question: Question,
  counts: Int32Array,
  effort: Effort,
  thorough: boolean,
): readonly Bin[] {
  const { sizes, tooLong } = question;
  const groups = [tooLong, sizes.length] as const;
  let best: readonly Bin[] = [];
  let bestScore: Score | null = null;
  const consider = (pack: (left: Int32Array) => Bin[]) => {
    if (bestScore !== null && effort.left <= 0) return;
    const bins = shrink(question, pack(counts.slice()));
    effort.left -= PER_RULE + sizes.length + bins.length;
    const score = scoreOf(question, bins);
    if (bestScore !== null && !isBetter(score, bestScore)) return;
    bestScore = score;
    best = bins;
  };
  const decreasing = (fit: Fit, choose: Choice) =>
    consider((left) => {
      const bins: Bin[] = [];
      packDecreasing(fit, sizes, left, groups, bins, (size, count) =>
        opened(question, choose(question, size, count)),
      );
      return bins;
    });
  const kinds = worthTrying(question);
  const choices = kinds.map((kind) => preferring(kind));
  for (const choose of [...choices, cheapestRun]) decreasing("first", choose);
  for (const some of [kinds, kinds.slice(0, 1), kinds.slice(1, 2)])
    if (some.length > 0) consider((left) => packFullest(question, left, some, effort));
  if (!thorough) return best;
  for (const choose of [...choices, cheapestRun, cheapestTaking]) decreasing("best", choose);
  decreasing("first", cheapestTaking);
  return best;
}

/** The kind to open for a piece of that size, of which so many are left. */
type Choice = (question: Question, size: number, count: number) => number | undefined;

/** Charged for each rule beside what it looks at. */
const PER_RULE = 32;
/** Sold lengths tried as the one to buy; the others still serve when content shrinks to them. */
const MOST_KINDS = 10;

/** Sold lengths for which no longer one is as cheap: least weight for their room first. */
function worthTrying({ kinds, cheapestFrom }: Question): readonly number[] {
  return kinds
    .map((_, k) => k)
    .filter((k) => cheapestFrom[k] === k)
    .sort((a, b) => kinds[a]!.weight * kinds[b]!.room - kinds[b]!.weight * kinds[a]!.room || b - a)
    .slice(0, MOST_KINDS);
}

function preferring(kind: number): Choice {
  return (question, size) =>
    question.kinds[kind]!.room >= size ? kind : question.densestFrom[firstTaking(question, size)];
}

function cheapestTaking(question: Question, size: number): number | undefined {
  return question.cheapestFrom[firstTaking(question, size)];
}

/** The kind that is cheapest per piece when filled with as many pieces of that size as there are. */
function cheapestRun(question: Question, size: number, count: number): number | undefined {
  const { kinds } = question;
  let best: number | undefined;
  let [bestWeight, bestPieces] = [0, 1];
  for (let k = firstTaking(question, size); k < kinds.length; k++) {
    const pieces = Math.min(count, Math.floor(kinds[k]!.room / size));
    if (best !== undefined && kinds[k]!.weight * bestPieces >= bestWeight * pieces) continue;
    best = k;
    [bestWeight, bestPieces] = [kinds[k]!.weight, pieces];
  }
  return best;
}

function opened({ kinds }: Question, kind: number | undefined): Bin | null {
  return kind === undefined ? null : { wood: kind, bought: true, room: kinds[kind]!.room, runs: [] };
}
