/** The boards that place lines put somewhere, with their poses: every line's block at each of its places. */
import { chain, known, lookUp, MISTAKE, type Value } from "../../plan";
import { type Pose, within } from "../../solid/pose";
import { add, type Vec3 } from "../../solid/vector";
import { AXES } from "./axes";
import type { BoardIn } from "./block";
import { unmirrored } from "./board-solid";
import { nameOfLine, nameOfSlot } from "./identity";
import type { Context, Placement, Placing } from "./placing";
import type { Stretch } from "./stretch";

/** All boards of a context; unknown when some line's place is. */
export function boardsOf(placing: Placing, context: Context): Value<readonly BoardIn[]> {
  const all: BoardIn[] = [];
  for (const p of context.placements) {
    const list = boardsAt(placing, p);
    if (list.state !== "known") return list;
    for (const board of list.value) all.push(board);
  }
  return known(all);
}

/** The boards of one line. */
export function boardsAt(placing: Placing, p: Placement): Value<readonly BoardIn[]> {
  const block = p.block?.boards();
  if (!block) return MISTAKE;
  return chain(block, (boards) =>
    chain(placing.stretches(p, 0), (xs) =>
      chain(placing.stretches(p, 1), (ys) =>
        chain(placing.stretches(p, 2), (zs) => {
          const line = nameOfLine(p);
          const parts = boards.map(({ part }) => lookUp(placing.input.scope, part));
          const counts = [xs.length, ys.length, zs.length] as const;
          const all: BoardIn[] = [];
          zs.forEach((z, k) => {
            ys.forEach((y, j) => {
              xs.forEach((x, i) => {
                const slot = nameOfSlot(p, [i, j, k], counts, [x, y, z]);
                const name = [p.subject.name, line, slot].filter(Boolean).join(" / ");
                const put = moverTo([x, y, z]);
                boards.forEach((b, n) => {
                  const pose = put(b.pose);
                  const part = parts[n];
                  all.push(named(b, part ? unmirrored(pose, placing.input.shapes.of(part)) : pose, name, p));
                });
              });
            });
          });
          return known(all);
        }),
      ),
    ),
  );
}

/** A board of a block as a piece of the line that places it: its own name after that of its slot. */
function named(board: BoardIn, pose: Pose, slot: string, { subject }: Placement): BoardIn {
  const after = (inner: string): string => (inner === "" ? slot : `${slot} / ${inner}`);
  const inner = board.owners.map((o) => ({ name: o.name, id: after(o.id) }));
  const owners = subject.kind === "part" ? inner : [{ name: subject.name, id: slot }, ...inner];
  return { ...board, path: after(board.path), pose, owners };
}

/** Puts what is in a block's own frame where a slot has it. */
function moverTo(at: readonly [Stretch, Stretch, Stretch]): (pose: Pose) => Pose {
  const outer = slotPose(at);
  if (at.some(({ flipped }) => flipped)) return (pose) => within(outer, pose);
  return ({ length, width, thickness, origin }) => ({
    length,
    width,
    thickness,
    origin: add(origin, outer.origin),
  });
}

/** Where a slot puts a block's own corner, and which directions it reflects. */
function slotPose(at: readonly [Stretch, Stretch, Stretch]): Pose {
  const axis = (k: 0 | 1 | 2): Vec3 => {
    const v: [number, number, number] = [0, 0, 0];
    v[k] = at[k].flipped ? -1 : 1;
    return v;
  };
  const origin = AXES.map((k) => (at[k].flipped ? at[k].high.approx : at[k].low.approx));
  return {
    length: axis(0),
    width: axis(1),
    thickness: axis(2),
    origin: [origin[0]!, origin[1]!, origin[2]!],
  };
}
