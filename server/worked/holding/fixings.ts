/** What fastens which pieces to each other: the joints of a plan by the pairs of pieces that they hold together. */
import type { Crossing } from "../crossings";
import type { Joint } from "../joints";
import type { PlacedScrew } from "../screw-way";

/** The screws of one joint between two pieces that lie on each other; none of a glued one. */
export interface Fixing {
  readonly joint: Joint;
  readonly screws: readonly PlacedScrew[];
}

/** What fastens two pieces, by both of them. */
export type Fixings = (a: number, b: number) => readonly Fixing[];

/** Between any two pieces that follow on each other along a screw; `count` is that of all pieces. */
export function fixingsOf(joints: readonly Joint[], count: number): Fixings {
  const found = new Map<number, { joint: Joint; screws: readonly PlacedScrew[] }[]>();
  const keyOf = (a: number, b: number): number => (a < b ? a * count + b : b * count + a);
  for (const joint of joints) {
    const { placed, size, entry } = joint;
    if (!placed) continue;
    const screwsIn = byCrossing(placed.screws);
    // Screws whose size is not known, or that are too many to set out, still hold.
    const isSetOut = entry.kind === "fasten" && size !== undefined && placed.tooMany === undefined;
    for (const crossing of placed.crossings) {
      const screws = screwsIn.get(crossing) ?? [];
      if (isSetOut && screws.length === 0) continue;
      let near = crossing.first;
      for (const next of [...crossing.through, crossing.into]) {
        const key = keyOf(near, next);
        near = next;
        const pair = found.get(key);
        const before = pair?.find((f) => f.joint === joint);
        if (!pair) found.set(key, [{ joint, screws }]);
        else if (before) before.screws = [...before.screws, ...screws];
        else pair.push({ joint, screws });
      }
    }
  }
  return (a, b) => found.get(keyOf(a, b)) ?? NONE;
}

const NONE: readonly Fixing[] = [];

function byCrossing(screws: readonly PlacedScrew[]): Map<Crossing, PlacedScrew[]> {
  const found = new Map<Crossing, PlacedScrew[]>();
  for (const screw of screws) {
    const list = found.get(screw.crossing);
    if (list) list.push(screw);
    else found.set(screw.crossing, [screw]);
  }
  return found;
}
