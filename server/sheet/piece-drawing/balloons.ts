/**
 * A ring with its mark for each row of the cut list, in a gutter beside the object, with a leader that ends in a dot on
 * a face of the largest piece seen. The places are dealt out so that the leaders together are shortest: exchanging the
 * places of two that cross would shorten both together, so they cross only where a measure stands in the way or one
 * would run too flat along the gutter.
 */
import { type Box, type Item, type Point, shortened, TYPE, textWidth } from "../display";
import { cheapest } from "./assign";
import type { Marked } from "./marked";
import { cross, distance, type Stroke } from "./plane";
import { balloon, RADIUS } from "./ring";
import type { Spot } from "./spots";

export type Gutter = "left" | "right" | "top" | "bottom";

export interface Balloons {
  readonly items: readonly Item[];
  /** Gutters in which a balloon stands. */
  readonly used: ReadonlySet<Gutter>;
}

/** The balloons of the marks around the object's box. Leaders cross `strokes`, and balloons touch them, only where there is no other way. */
export function placeBalloons(
  marked: readonly Marked[],
  box: Box,
  gutters: readonly Gutter[],
  strokes: readonly Stroke[],
): Balloons {
  const words = marked.map(({ mark }) => shortened(mark, TYPE, WIDEST, true));
  const half = Math.max(RADIUS, ...words.map((w) => textWidth(w, TYPE, true) / 2 + 0.9));
  const places = placesAround(box, half, gutters, marked.length, strokes);
  const best = marked.map(({ ends }) => places.map((place) => bestEnd(place, ends, strokes)));
  const dealt = cheapest(best.map((row) => row.map(({ cost }) => cost)));
  const used = new Set<Gutter>();
  const items = marked.flatMap((_, i): readonly Item[] => {
    const place = places[dealt[i]!]!;
    used.add(place.gutter);
    return balloon(words[i]!, place.at, half, best[i]![dealt[i]!]!.end);
  });
  return { items: [...items.filter(isLeader), ...items.filter((item) => !isLeader(item))], used };
}

const isLeader = ({ layer }: Item): boolean => layer === "leader";

interface Place {
  readonly at: Point;
  readonly gutter: Gutter;
}

/** At least as many places as marks: evenly along the gutters, and in further rows above when these do not suffice. */
function placesAround(
  box: Box,
  half: number,
  gutters: readonly Gutter[],
  count: number,
  strokes: readonly Stroke[],
): readonly Place[] {
  const middleX = (box.left + box.right) / 2;
  const spread = (from: number, to: number, pitch: number): number[] => {
    if (to <= from) return [(from + to) / 2];
    const n = Math.floor((to - from) / pitch);
    return Array.from({ length: n + 1 }, (_, i) =>
      n === 0 ? (from + to) / 2 : from + ((to - from) * i) / n,
    );
  };
  const [wide, high] = [2 * half + BETWEEN, 2 * RADIUS + BETWEEN];
  const free = ({ at }: Place): boolean => strokes.every((s) => distance(at, s) > half + BETWEEN);
  const places = gutters
    .flatMap((gutter): Place[] => {
      if (gutter === "left" || gutter === "right") {
        const x = gutter === "left" ? box.left - GAP - half : box.right + GAP + half;
        const ys = spread(box.top + RADIUS, box.bottom - RADIUS, high);
        return ys.map((y) => ({ at: [x, y], gutter }));
      }
      const y = gutter === "top" ? box.top - GAP - RADIUS : box.bottom + GAP + RADIUS;
      return spread(box.left + half, box.right - half, wide).map((x) => ({ at: [x, y], gutter }));
    })
    .filter(free);
  for (let row = 1; places.length < count + SPARE; row++) {
    const y = box.top - GAP - RADIUS - row * high;
    const reachOut = Math.max((box.right - box.left) / 2, ROW / 2) - half;
    const shift = row % 2 === 0 ? 0 : wide / 2;
    for (const x of spread(middleX - reachOut + shift, middleX + reachOut - shift, wide))
      places.push({ at: [x, y], gutter: "top" });
  }
  return places;
}

interface Leader {
  readonly end: Spot;
  readonly cost: number;
}

function bestEnd(place: Place, ends: readonly Spot[], strokes: readonly Stroke[]): Leader {
  let best: Leader = { end: ends[0]!, cost: Infinity };
  for (const end of ends) {
    const [dx, dy] = [Math.abs(end.at[0] - place.at[0]), Math.abs(end.at[1] - place.at[1])];
    const [out, aside] = place.gutter === "left" || place.gutter === "right" ? [dx, dy] : [dy, dx];
    const cost = Math.hypot(dx, dy) + Math.max(0, aside - out) + (place.gutter === "bottom" ? LAST : 0);
    if (cost < best.cost) best = { end, cost };
  }
  const leader: Stroke = [place.at, best.end.at];
  return { ...best, cost: best.cost + CROSSED * strokes.filter((s) => cross(s, leader)).length };
}

/** mm of paper: the gap between rings, the gutter between ring and object, the widest mark. */
const BETWEEN = 1.6;
const GAP = 5;
const WIDEST = 16;
/** mm of paper that a gutter with balloons takes. */
export const GUTTER = GAP + 2 * RADIUS + BETWEEN;
/** mm of paper that further rows of balloons may take. */
const ROW = 160;
const SPARE = 2;
/** Costs in mm of leader: a place below the object, and a line crossed. */
const LAST = 8;
const CROSSED = 400;
