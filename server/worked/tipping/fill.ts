/** What fills the boxes of a thing, as weights where it lies: dry, or wet in one half only, as when one side was watered. */
import { ifKnown } from "../../plan";
import { boundsOf } from "../../solid/contact";
import type { Mass } from "../../strength/topple";
import type { Box } from "../boxes";
import type { Piece } from "../pieces";
import type { State } from "./stance";

interface Filled {
  readonly box: Box;
  /** Its placed walls and bottom. */
  readonly walls: readonly Piece[];
}

/** All boxes dry, and wet on the left, the right, the front and the back, the other half dry; states of which no weight is known are left out. */
export function fillsOf(boxes: readonly Filled[]): { state: State; masses: Mass[] }[] {
  const heaps = boxes.flatMap(({ box, walls }) => {
    const dry = ifKnown(box.weights.dry)?.approx;
    const wet = ifKnown(box.weights.saturated)?.approx;
    const spot = spotOf(box, walls);
    return dry === undefined || wet === undefined || !spot ? [] : [{ dry, wet, spot }];
  });
  if (heaps.length === 0) return [];
  const dry = heaps.map(({ dry, spot }): Mass => ({ kg: dry, at: spot.middle }));
  const halves = ([0, 1] as const).flatMap((axis) =>
    [-1, 1].map((sign): { state: State; masses: Mass[] } => ({
      state: "wet on one side",
      masses: heaps.flatMap(({ dry, wet, spot }) => [
        { kg: wet / 2, at: moved(spot.middle, axis, (sign * spot.size[axis]) / 4) },
        { kg: dry / 2, at: moved(spot.middle, axis, (-sign * spot.size[axis]) / 4) },
      ]),
    })),
  );
  return [{ state: "dry", masses: dry }, ...halves];
}

function moved(at: Mass["at"], axis: 0 | 1, by: number): Mass["at"] {
  return axis === 0 ? [at[0] + by, at[1], at[2]] : [at[0], at[1] + by, at[2]];
}

interface Spot {
  readonly middle: Mass["at"];
  /** Across and deep, half way up. */
  readonly size: readonly [number, number];
}

/** Where the fill lies: in the room between the walls, or where these make none that is square, within the block round them. */
function spotOf({ placed, fillBelowRim }: Box, walls: readonly Piece[]): Spot | undefined {
  if (walls.length === 0) return undefined;
  const { least, most } = boundsOf(walls.flatMap((p) => [p.bounds.least, p.bounds.most]));
  const side = (k: 0 | 1): { from: number; to: number } => {
    if (!placed) return { from: least[k], to: most[k] };
    const { rim, foot } = placed.room;
    return { from: (rim[k].from + foot[k].from) / 2, to: (rim[k].to + foot[k].to) / 2 };
  };
  const [low, rim] = placed ? [placed.room.low, placed.room.high] : [least[2], most[2]];
  const high = Math.max(low, rim - (fillBelowRim?.approx ?? 0));
  const [x, y] = [side(0), side(1)];
  return {
    middle: [(x.from + x.to) / 2, (y.from + y.to) / 2, (low + high) / 2],
    size: [x.to - x.from, y.to - y.from],
  };
}
