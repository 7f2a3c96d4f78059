/** An assembly as a block: what its own place lines put together, turned as a whole. */
import { chain, type Declared, ifKnown, known, lookUp, map, type Value } from "../../plan";
import { boundsOf } from "../../solid/contact";
import { type Pose, placedAt, within } from "../../solid/pose";
import type { Vec3 } from "../../solid/vector";
import { LENGTH, type Quantity, roughly } from "../../units";
import { AXES, type Axis } from "./axes";
import type { Block, BoardIn, Inside } from "./block";
import { boardsOf } from "./boards";
import type { PlaceEntry } from "./clauses";
import { leanedPose, leanOf } from "./part-block";
import type { Context, Placing } from "./placing";
import { less, type Stretch } from "./stretch";

/** Which of the assembly's own directions points along each of the world's, and whether backwards. */
type Turn = readonly [Own, Own, Own];
interface Own {
  readonly axis: Axis;
  readonly back: boolean;
}
const own = (axis: Axis, back = false): Own => ({ axis, back });

/** Its front looks to the front, the right, the back or the left. */
const TURNS = {
  front: [own(0), own(1), own(2)],
  right: [own(1, true), own(0), own(2)],
  back: [own(0, true), own(1, true), own(2)],
  left: [own(1), own(0, true), own(2)],
} as const satisfies Record<string, Turn>;

function turnOf(entry: PlaceEntry): Turn {
  const face = entry.clauses.find((c) => c.kind === "wide face");
  if (face?.kind === "wide face" && face.side in TURNS) return TURNS[face.side as keyof typeof TURNS];
  const along = entry.clauses.some((c) => c.kind === "lies" && c.lie === "front to back");
  return along ? TURNS.right : TURNS.front;
}

export function assemblyBlock(
  placing: Placing,
  declared: Declared,
  entry: PlaceEntry,
  context: Context,
): Block {
  const inner = () => placing.assembly(declared);
  const lean = leanOf(entry.clauses, placing.input.worker, context.file);
  const turn = turnOf(entry);
  const pose = (): Value<Pose> => poseFor(turn, (axis) => placing.boundsOf(inner(), axis));
  const boards = (): Value<readonly BoardIn[]> =>
    chain(pose(), (outer) =>
      chain(boardsOf(placing, inner()), (list) =>
        known(list.map((b) => ({ ...b, pose: within(outer, b.pose) }))),
      ),
    );
  if (lean) {
    let done: Value<Settled> | undefined;
    const tipped = () =>
      (done ??= chain(lean(), (l) =>
        map(boards(), (list) =>
          settled(
            placing,
            list.map((b) => ({ ...b, pose: leanedPose(l, b.pose) })),
          ),
        ),
      ));
    return {
      size: (axis) => chain(tipped(), ({ size }) => known(roughly(LENGTH, size[axis]))),
      thin: () => false,
      inside: (name) => {
        const found = lookUp(placing.input.scope, name);
        const here = found ? placing.groupOf(found, inner()).length > 0 : false;
        return here ? insideTipped(placing, name, tipped()) : [];
      },
      boards: () => chain(tipped(), (t) => known(t.boards)),
    };
  }
  return {
    size: (axis) => {
      const bounds = placing.boundsOf(inner(), turn[axis].axis);
      return chain(bounds, ({ low, high }) => known(less(high, low)));
    },
    thin: () => false,
    inside: (name) => {
      const found = lookUp(placing.input.scope, name);
      if (!found) return [];
      return placing.groupOf(found, inner()).map((one): Inside => turnedInside(placing, one, turn, inner()));
    },
    boards,
  };
}

/** A piece of the assembly as seen from the lowest corner of the turned block. */
function turnedInside(placing: Placing, one: Inside, turn: Turn, inner: Context): Inside {
  const stretches = (axis: Axis): Value<readonly Stretch[]> => {
    const { axis: from, back } = turn[axis];
    return chain(placing.boundsOf(inner, from), (all) =>
      chain(one.stretches(from), (list) =>
        known(
          list.map(
            (s): Stretch =>
              back
                ? { low: less(all.high, s.high), high: less(all.high, s.low), flipped: s.flipped }
                : { low: less(s.low, all.low), high: less(s.high, all.low), flipped: s.flipped },
          ),
        ),
      ),
    );
  };
  return { stretches, thin: (axis) => one.thin(turn[axis].axis) };
}

/** The turned assembly's pose, with its lowest corner at 0. */
function poseFor(turn: Turn, bounds: (axis: Axis) => Value<Stretch>): Value<Pose> {
  const columns: Record<Axis, [number, number, number]> = { 0: [0, 0, 0], 1: [0, 0, 0], 2: [0, 0, 0] };
  const origin: [number, number, number] = [0, 0, 0];
  for (const axis of AXES) {
    const { axis: from, back } = turn[axis];
    const reach = bounds(from);
    if (reach.state !== "known") return reach;
    columns[from][axis] = back ? -1 : 1;
    origin[axis] = back ? reach.value.high.approx : -reach.value.low.approx;
  }
  return known({ length: columns[0], width: columns[1], thickness: columns[2], origin });
}

interface Settled {
  readonly boards: readonly BoardIn[];
  readonly size: Vec3;
}

const cornersOf = (placing: Placing, board: BoardIn): Vec3[] => {
  const part = lookUp(placing.input.scope, board.part);
  const cut = part && ifKnown(placing.input.shapes.of(part).cut);
  return (cut?.corners ?? []).map((c) => placedAt(board.pose, c));
};

/** Boards moved so that the lowest corner of all is at 0. */
function settled(placing: Placing, boards: readonly BoardIn[]): Settled {
  const { least, most } = boundsOf(boards.flatMap((b) => cornersOf(placing, b)));
  const moved = ([x, y, z]: Vec3): Vec3 => [x - least[0], y - least[1], z - least[2]];
  return {
    boards: boards.map((b) => ({ ...b, pose: { ...b.pose, origin: moved(b.pose.origin) } })),
    size: moved(most),
  };
}

/** The pieces of a part, or the copies of a ring or an assembly, where they stand in a tipped one. */
function insideTipped(placing: Placing, name: string, tipped: Value<Settled>): Inside[] {
  if (tipped.state !== "known") return [{ stretches: () => tipped, thin: () => false }];
  const copies = new Map<string, Vec3[]>();
  for (const board of tipped.value.boards) {
    const key = board.part === name ? board.path : board.owners.find((o) => o.name === name)?.id;
    if (key === undefined) continue;
    copies.set(key, [...(copies.get(key) ?? []), ...cornersOf(placing, board)]);
  }
  return [...copies.values()].map((corners): Inside => {
    const { least, most } = boundsOf(corners);
    const mm = (x: number): Quantity => roughly(LENGTH, x);
    return {
      stretches: (axis) => known([{ low: mm(least[axis]), high: mm(most[axis]), flipped: false }]),
      thin: () => false,
    };
  });
}
