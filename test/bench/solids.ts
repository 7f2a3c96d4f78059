/** Measures the solids by themselves: pieces put in space, what touches and overlaps, crossings and screws, frames and rows. */
import { load } from "../../server/plan";
import { overlapsOf, type Worked, work } from "../../server/worked";
import { jointInSpace } from "../../server/worked/joint-space";
import { piecesOf } from "../../server/worked/pieces";
import { framesOf } from "../../server/worked/racking";
import { unevenRows } from "../../server/worked/rows";
import { spaceOf } from "../../server/worked/space";
import { planOf } from "./plan";
import { type Figure, inMs, timed } from "./stats";

/** Once more everything that is read off the solids of a plan; its lines are worked out already. */
function solids(worked: Worked): void {
  const pieces = piecesOf(worked.placing);
  const space = spaceOf(pieces.all);
  for (const { entry, within, size, angle } of worked.joints)
    jointInSpace(
      entry,
      within,
      worked.scope,
      space,
      size && { size, angle, count: 2, place: { at: "each crossing" }, spacing: undefined, most: 20_000 },
    );
  framesOf(space, worked.joints, worked.parts);
  unevenRows(space);
  overlapsOf({ ...worked, space });
}

export function solidsFigures(): Figure[] {
  return (
    [
      [300, "20 ms"],
      [1000, "100 ms"],
    ] as const
  ).map(([lines, budget]) => {
    const worked = work(load("p", planOf(lines), (path) => ({ file: path, refused: "no such file" })));
    const what = `solids, contacts, overlaps, screws, ${worked.pieces.all.length} pieces`;
    return { what, budget, value: inMs(timed(30, () => solids(worked), 30)) };
  });
}
