/** Small made-up things of boards that stand in space, for drawings. Millimetres. */
import type { DrawnPiece } from "../../server/sheet/piece-drawing";
import { solidOf, type TakenOut } from "../../server/solid/board";
import { bodyOf } from "../../server/solid/contact";
import { type EndCut, type LongPoints, lengths } from "../../server/solid/ends";
import { type Pose, placed, placedAt } from "../../server/solid/pose";
import type { Vec3 } from "../../server/solid/vector";

export interface Made {
  /** Entry and index, `leg / 1`. */
  readonly id: string;
  readonly mark: string;
  /** Length, width, thickness. */
  readonly size: Vec3;
  readonly pose: Pose;
  readonly left?: EndCut;
  readonly right?: EndCut;
  readonly edges?: LongPoints;
  readonly takenOut?: readonly TakenOut[];
  readonly assembly?: readonly string[];
  readonly apart?: Vec3;
}

const SQUARE: EndCut = { miter: 0, bevel: 0 };

/** The piece where it stands. Throws when it cannot be cut. */
export function made(piece: Made): DrawnPiece {
  const { id, mark, size, pose, left = SQUARE, right = SQUARE, edges = "one", takenOut = [] } = piece;
  const [length, width, thickness] = size;
  const cut = lengths({ measured: "overall", length, width, thickness, left, right, edges });
  if (cut.kind !== "cut") throw new Error(`${id} cannot be cut`);
  const solid = solidOf({ cut, width, thickness, takenOut });
  return {
    id,
    mark,
    title: id,
    assembly: piece.assembly ?? [],
    cells: solid.cells.map((cell) => bodyOf(placed(cell, pose))),
    ridges: solid.ridges.map(({ from, to, normals }) => ({
      from: placedAt(pose, from),
      to: placedAt(pose, to),
      normals: normals.map((n) => placedAt({ ...pose, origin: [0, 0, 0] }, n)),
    })),
    ...(piece.apart && { apart: piece.apart }),
  };
}

export const X: Vec3 = [1, 0, 0];
export const Y: Vec3 = [0, 1, 0];
export const Z: Vec3 = [0, 0, 1];
const minus = ([x, y, z]: Vec3): Vec3 => [-x, -y, -z];

/** Length along x, standing on its edge; along y, standing on its edge; along x or y, lying flat; upright. */
export const alongX = (origin: Vec3): Pose => ({ length: X, width: Z, thickness: Y, origin });
export const alongY = (origin: Vec3): Pose => ({ length: Y, width: Z, thickness: X, origin });
export const flatX = (origin: Vec3): Pose => ({ length: X, width: Y, thickness: Z, origin });
export const flatY = (origin: Vec3): Pose => ({ length: Y, width: X, thickness: Z, origin });
export const upright = (origin: Vec3): Pose => ({ length: Z, width: X, thickness: Y, origin });

/** Two boards that meet in a tee. */
export function tee(): readonly DrawnPiece[] {
  return [
    made({ id: "foot / 1", mark: "A", size: [200, 90, 20], pose: flatX([0, 0, 0]) }),
    made({ id: "post / 1", mark: "B", size: [150, 60, 20], pose: upright([70, 35, 20]) }),
  ];
}

/** A planting trough of 30 boards under a mitered cap, 1020 × 420 × 340 over all. */
export function trough(at: Vec3 = [0, 0, 0], copy = ""): readonly DrawnPiece[] {
  const list: DrawnPiece[] = [];
  const shift = (pose: Pose): Pose => ({
    ...pose,
    origin: [pose.origin[0] + at[0], pose.origin[1] + at[1], pose.origin[2] + at[2]],
  });
  const add = (name: string, mark: string, piece: Pick<Made, "size" | "pose" | "left" | "right">): void => {
    const index = list.filter(({ id }) => id.startsWith(`${copy}${name} /`)).length + 1;
    const assembly = ["trough", name === "cap-long" || name === "cap-short" ? "cap" : "box"];
    list.push(made({ id: `${copy}${name} / ${index}`, mark, assembly, ...piece, pose: shift(piece.pose) }));
  };
  for (const [x, y] of CORNERS) add("foot", "A", { size: [60, 60, 40], pose: flatX([x * 940, y * 340, 0]) });
  for (const x of [200, 760]) add("bearer", "B", { size: [400, 40, 40], pose: flatY([x, 0, 0]) });
  for (const k of [0, 1, 2, 3]) add("slat", "C", { size: [950, 85, 25], pose: flatX([25, 25 + k * 88, 40]) });
  for (const z of [40, 180])
    for (const y of [0, 375]) add("side", "D", { size: [1000, 140, 25], pose: alongX([0, y, z]) });
  for (const z of [40, 180])
    for (const x of [0, 975]) add("end", "E", { size: [350, 140, 25], pose: alongY([x, 25, z]) });
  for (const [x, y] of CORNERS)
    add("post", "F", { size: [255, 40, 40], pose: upright([25 + x * 910, 25 + y * 310, 65]) });
  for (const x of [300, 660])
    for (const y of [25, 355]) add("cleat", "G", { size: [255, 40, 20], pose: upright([x, y, 65]) });
  const miter = { left: { miter: 45, bevel: 0 }, right: { miter: 45, bevel: 0 } };
  const ring = (length: Vec3, width: Vec3, origin: Vec3): Pose => ({ length, width, thickness: Z, origin });
  add("cap-long", "H", { size: [1020, 60, 20], pose: ring(X, Y, [-10, -10, 320]), ...miter });
  add("cap-short", "I", { size: [420, 60, 20], pose: ring(Y, minus(X), [1010, -10, 320]), ...miter });
  add("cap-long", "H", { size: [1020, 60, 20], pose: ring(minus(X), minus(Y), [1010, 410, 320]), ...miter });
  add("cap-short", "I", { size: [420, 60, 20], pose: ring(minus(Y), X, [-10, 410, 320]), ...miter });
  return list;
}

/** Ten troughs in two rows: 300 pieces. */
export const troughs = (): readonly DrawnPiece[] =>
  Array.from({ length: 10 }, (_, i) =>
    trough([(i % 2) * 1200, Math.floor(i / 2) * 600, 0], `copy ${i} / `),
  ).flat();

const CORNERS = [
  [0, 0],
  [1, 0],
  [0, 1],
  [1, 1],
] as const;

/** A bench of 60 pieces: legs with notches, rails, leaning braces, a slatted top and a back that leans. */
export function bench(): readonly DrawnPiece[] {
  const list: DrawnPiece[] = [];
  const add = (name: string, mark: string, piece: Omit<Made, "id" | "mark">): void => {
    const index = list.filter(({ id }) => id.startsWith(`${name} /`)).length + 1;
    list.push(made({ id: `${name} / ${index}`, mark, ...piece }));
  };
  const notch: TakenOut = { from: [310, -1, -1], to: [401, 71, 21] };
  for (const x of [0, 830, 1660])
    for (const y of [0, 330])
      add("leg", "A", { size: [400, 70, 70], pose: upright([x, y, 0]), takenOut: y === 0 ? [notch] : [] });
  add("front-rail", "B", { size: [1730, 90, 20], pose: alongX([0, 0, 310]) });
  add("back-rail", "C", { size: [1730, 90, 20], pose: alongX([0, 400, 310]) });
  for (const x of [0, 850, 1700]) add("cross-rail", "D", { size: [260, 60, 30], pose: alongY([x, 70, 340]) });
  for (const x of [20, 850, 1680]) add("stretcher", "E", { size: [260, 50, 30], pose: alongY([x, 70, 80]) });
  for (let k = 0; k < 36; k++) add("slat", "F", { size: [440, 42, 24], pose: flatY([k * 48, -10, 400]) });
  const lean = 15 * (Math.PI / 180);
  const [c, s] = [Math.cos(lean), Math.sin(lean)];
  const leaning = (x: number, up: number, out: number): Pose => ({
    length: [0, s, c],
    width: X,
    thickness: [0, -c, s],
    origin: [x, 425 + up * s - out * c, 320 + up * c + out * s],
  });
  for (const x of [100, 850, 1580]) add("back-post", "G", { size: [520, 60, 40], pose: leaning(x, 0, -42) });
  for (const up of [200, 320, 440]) {
    const { width, thickness, origin, length } = leaning(20, up, -2);
    add("back-board", "H", {
      size: [1690, 80, 20],
      pose: { length: width, width: length, thickness, origin },
    });
  }
  for (const x of [70, 760, 1590, 900])
    add("brace", "J", {
      size: [280, 40, 20],
      left: { miter: 45, bevel: 0 },
      right: { miter: 45, bevel: 0 },
      pose: braced(x, x === 70 || x === 900 ? 1 : -1),
    });
  return list;
}

/** Between a leg and the rail, at 45 degrees in the plane of the rail. */
function braced(x: number, way: 1 | -1): Pose {
  const half = Math.SQRT1_2;
  return {
    length: [way * half, 0, half],
    width: [way * half, 0, -half],
    thickness: Y,
    origin: [way > 0 ? x : x + 70, 20, 112],
  };
}
