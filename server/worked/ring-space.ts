/** The corners of a placed ring as its solids make them: how much of each cut end lies on its neighbour. */
import { contacts } from "../solid/contact";
import { areaOf, type BoardSide } from "../solid/convex";
import { dot } from "../solid/vector";
import type { Piece } from "./pieces";
import type { Ring } from "./rings";
import { copiesOf, type Space } from "./space";

export interface RingCornerInSpace {
  readonly ring: string;
  /** Places among all pieces. */
  readonly first: number;
  readonly second: number;
  /** The share of the cut end that lies before the other's: 1 when all of it does. */
  readonly share: number;
  /** How far the two cut ends stand apart where they do so most, in mm. */
  readonly opening: number;
}

/** The corners of every copy of a ring that is placed. */
export function ringCorners(space: Space, ring: Ring): RingCornerInSpace[] {
  return copiesOf(space, ring.name).flatMap((sides) =>
    sides.map((first, n) => {
      const second = sides[(n + 1) % sides.length]!;
      return { ring: ring.name, first, second, ...corner(space, first, second) };
    }),
  );
}

function corner(space: Space, i: number, j: number): Pick<RingCornerInSpace, "share" | "opening"> {
  const [p, q] = [space.pieces[i]!, space.pieces[j]!];
  let [area, opening] = [0, 0];
  for (const a of p.cells)
    for (const b of q.cells)
      for (const contact of contacts(a, b, NEAR, NEARLY)) {
        const [f, g] = [a.facets[contact.facets[0]]!, b.facets[contact.facets[1]]!];
        if (!isEnd(f.side) || !isEnd(g.side)) continue;
        area += contact.area;
        for (const v of g.loop) opening = Math.max(opening, dot(f.normal, b.vertices[v]!) - f.offset);
      }
  const cut = Math.min(endArea(p), endArea(q));
  return { share: cut > 0 ? area / cut : 0, opening };
}

const isEnd = (side: BoardSide): boolean => side === "left end" || side === "right end";
/** Cut ends this near, in mm, and within a degree of each other are the two of a corner. */
const NEAR = 2;
const NEARLY = Math.cos(Math.PI / 180);

/** The smaller of a piece's two end faces, in square millimetres. */
function endArea({ cells }: Piece): number {
  const area = (side: "left end" | "right end"): number =>
    cells.reduce(
      (sum, cell) =>
        sum + cell.facets.reduce((s, f) => s + (f.side === side && !f.inner ? areaOf(cell, f) : 0), 0),
      0,
    );
  return Math.min(area("left end"), area("right end"));
}
