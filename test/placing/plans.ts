/** Small plans for the tests of placing, and where their pieces stand, in inches. */

import { load } from "../../server/plan";
import type { Vec3 } from "../../server/solid/vector";
import type { Fault } from "../../server/worked/fault";
import type { Piece } from "../../server/worked/pieces";
import { type Worked, work } from "../../server/worked/work";

/** A board 1" thick and 4" wide, a post 1" x 4" x 20", a rail 30" long and a slat 12" long. */
export const STOCK = `stock b, actual 1" x 4"
part post of b, length 20"
part rail of b, length 30"
part slat of b, length 12"
`;

export interface Evaluated {
  readonly text: string;
  readonly worked: Worked;
}

export const evaluated = (text: string): Evaluated => ({
  text,
  worked: work(load("plan.sawbuck", text, (path) => ({ file: path, refused: "there is no such file" }))),
});

/** A plan with the boards above. */
export const plan = (lines: string): Evaluated => evaluated(STOCK + lines);

export type Spans = readonly [
  readonly [number, number],
  readonly [number, number],
  readonly [number, number],
];

/** Inches, to a millionth. */
export const inch = (mm: number): number => {
  const n = Math.round((mm / 25.4) * 1e6) / 1e6;
  return n === 0 ? 0 : n;
};

/** From left, front and bottom to right, back and top. */
export const spansOf = ({ bounds: { least, most } }: Piece): Spans => [
  [inch(least[0]), inch(most[0])],
  [inch(least[1]), inch(most[1])],
  [inch(least[2]), inch(most[2])],
];

/** Every piece by its identity. */
export const allWhere = ({ worked }: Evaluated): Record<string, Spans> =>
  Object.fromEntries(worked.pieces.all.map((p) => [p.id, spansOf(p)]));

/** The pieces of the lines, without those of the lines that are only there to lean on. */
export function where(lines: string, ...names: readonly string[]): Record<string, Spans> {
  const all = Object.entries(allWhere(plan(lines)));
  return Object.fromEntries(
    all.filter(([id]) => names.length === 0 || names.some((n) => id === n || id.startsWith(`${n} / `))),
  );
}

/** Where the one piece of a part stands. */
export function whereIs(part: string, lines: string): Spans | undefined {
  const found = plan(lines).worked.pieces.all.filter((p) => p.part === part);
  return found.length === 1 ? spansOf(found[0]!) : undefined;
}

export const faultsOf = (lines: string): readonly Fault["kind"][] =>
  plan(lines).worked.faults.map((f) => f.kind);

/** A point of the world in inches. */
export const inches = ([x, y, z]: Vec3): Vec3 => [inch(x), inch(y), inch(z)];

/** Corners of the piece in the world, in inches, each once. */
export const cornersOf = (piece: Piece): Vec3[] => piece.cells.flatMap((c) => c.vertices.map(inches));
