/** Rows of boards through the year: each gap as built, at the wettest and at the driest, and whether the row has room to swell. */
import type { At } from "../../plan";
import type { Wetting } from "../../trade";
import { floorsOf, wallsOf } from "../choose";
import type { WaterPath } from "../water";
import type { Worked } from "../work";
import { boardSize, type Movement, partMovement } from "./moistures";
import { type BoardRow, boardRows, type RowEnd, rowEnds, type SizeOf } from "./rows";

export type MovementInput = Pick<Worked, "boxes" | "parts" | "scope" | "settings" | "space" | "water">;

export interface MovementWork {
  readonly rows: readonly RowOfYear[];
  /** Rows of boards whose movement could not be had. */
  readonly unknown: readonly {
    readonly parts: readonly string[];
    readonly at: At;
    /** The wood that no table prints; undefined where the plan does not say where it stands. */
    readonly wood: string | undefined;
  }[];
}

/** A row of two boards and more that lie edge to edge. All lengths are mm. */
export interface RowOfYear {
  /** Places among all pieces, in order. */
  readonly pieces: readonly number[];
  /** Of each of them, as built. */
  readonly widths: readonly number[];
  readonly parts: readonly string[];
  /** Where its first board is placed. */
  readonly at: At;
  /** How each of its parts moves; the first is that of the first board. */
  readonly movements: readonly Movement[];
  /** Where the wettest of its boards are. */
  readonly where: Wetting;
  /** The box it is the bottom of, or a wall. */
  readonly box: { readonly path: WaterPath; readonly as: "floor" | "walls" } | undefined;
  /** Between neighbours, one fewer than there are boards. Each board is held in its middle: a gap loses half of what each neighbour swells. */
  readonly gaps: readonly GapOfYear[];
  /** What holds the row before its first board and after its last. */
  readonly ends: readonly [HeldEnd | undefined, HeldEnd | undefined];
  /** What all its boards together are wider at the wettest. */
  readonly swelling: number;
  /** All gaps together, with those at its ends. */
  readonly room: number;
  /** From one end to the other where both are held; undefined where one is free. */
  readonly span: number | undefined;
}

export interface GapOfYear {
  readonly built: number;
  /** Less than nothing: the boards push each other by so much. */
  readonly wettest: number;
  readonly driest: number;
}

export interface HeldEnd {
  readonly piece: number;
  readonly gap: GapOfYear;
}

/**
 * The rows of a plan's placed boards, and how their gaps change through the year. Boards are flat-sawn, which is the worst
 * case; panels hardly move and are left out, as are boards stacked on each other. What no table prints, and rows of a plan
 * that does not say where it stands and which would be in trouble outdoors, stand under `unknown`.
 */
export function gapsThroughTheYear(input: MovementInput): MovementWork {
  const { space, parts, settings } = input;
  const sizes = new Map([...parts].map(([name, part]) => [name, boardSize(part)]));
  const sizeOf: SizeOf = ({ part }) => sizes.get(part);
  const inBoxes = boxPieces(input);
  const moves = new Map<string, Movement | "no table" | undefined>();
  const movement = (piece: number, where: Wetting): Movement | "no table" | undefined => {
    const { part } = space.pieces[piece]!;
    const key = `${where} ${part}`;
    if (!moves.has(key)) moves.set(key, partMovement(parts.get(part)!, where));
    return moves.get(key);
  };
  const rows: RowOfYear[] = [];
  const unknown: MovementWork["unknown"][number][] = [];
  for (const row of boardRows(space, sizeOf)) {
    const whereOf = (piece: number): Wetting =>
      inBoxes.get(piece)?.wet ? "wet soil" : (settings.place ?? "outdoors");
    const found = row.boards.map(({ piece }) => movement(piece, whereOf(piece)));
    const names = [...new Set(row.boards.map(({ piece }) => space.pieces[piece]!.part))];
    const { at } = space.pieces[row.boards[0]!.piece]!;
    const unprinted = found.indexOf("no table");
    if (unprinted >= 0) {
      const wood = parts.get(space.pieces[row.boards[unprinted]!.piece]!.part)?.material?.wood.name;
      unknown.push({ parts: names, at, wood });
      continue;
    }
    const movements = found.filter((m): m is Movement => typeof m === "object");
    if (movements.length < found.length) continue;
    const year = yearOf(row, movements, names, at, inBoxes, input, sizeOf);
    const dry = settings.place === undefined && movements.some(({ where }) => where !== "wet soil");
    if (!dry) rows.push(year);
    else if (rowTrouble(year)) unknown.push({ parts: names, at, wood: undefined });
  }
  return { rows, unknown };
}

interface InBox {
  readonly path: WaterPath;
  readonly as: "floor" | "walls";
  readonly wet: boolean;
}

/** Walls behind a liner that holds water are out of the wet; a bottom is not, since what drains runs over it. */
function boxPieces({ water, scope, space }: MovementInput): ReadonlyMap<number, InBox> {
  const found = new Map<number, InBox>();
  for (const path of water.boxes)
    for (const as of ["walls", "floor"] as const) {
      const lined = as === "walls" && path.layers.some((l) => l.holdsWater);
      const pieces = (as === "walls" ? wallsOf : floorsOf)(path.box.declared, space, scope);
      for (const i of pieces) found.set(i, { path, as, wet: path.wet && !lined });
    }
  return found;
}

function yearOf(
  row: BoardRow,
  movements: readonly Movement[],
  parts: readonly string[],
  at: At,
  inBoxes: ReadonlyMap<number, InBox>,
  { space }: MovementInput,
  sizeOf: SizeOf,
): RowOfYear {
  const { boards } = row;
  const moves = boards.map(({ from, to }, i) => ({
    swells: (to - from) * movements[i]!.swells,
    shrinks: (to - from) * movements[i]!.shrinks,
  }));
  const gap = (built: number, ...beside: readonly number[]): GapOfYear => {
    const half = (of: "swells" | "shrinks"): number => beside.reduce((sum, i) => sum + moves[i]![of] / 2, 0);
    return { built, wettest: built - half("swells"), driest: built + half("shrinks") };
  };
  const gaps = boards.slice(1).map((b, i) => gap(Math.max(0, b.from - boards[i]!.to), i, i + 1));
  const swelling = moves.reduce((sum, m) => sum + m.swells, 0);
  const last = boards.length - 1;
  const held = (end: RowEnd | undefined, board: number): HeldEnd | undefined =>
    end && { piece: end.piece, gap: gap(end.gap, board) };
  const [first, second] = rowEnds(row, space, sizeOf, Math.max(LOOKED, swelling));
  const ends = [held(first, 0), held(second, last)] as const;
  const room = [...gaps, ...ends.flatMap((e) => (e ? [e.gap] : []))].reduce((sum, g) => sum + g.built, 0);
  const wet = movements.find(({ where }) => where === "wet soil");
  const boxOf = inBoxes.get(boards[0]!.piece);
  return {
    pieces: boards.map((b) => b.piece),
    widths: boards.map((b) => b.to - b.from),
    parts,
    at,
    movements: movements.filter((m, i) => movements.indexOf(m) === i),
    where: (wet ?? movements[0]!).where,
    box: boxOf && { path: boxOf.path, as: boxOf.as },
    gaps,
    ends,
    swelling,
    room,
    span: ends[0] && ends[1] && room + boards.reduce((sum, b) => sum + b.to - b.from, 0),
  };
}

/** How far from a row what holds it is looked for, in mm, where it swells by less: 1". */
const LOOKED = 25.4;

/**
 * pushes: between two held ends it has less room than it swells; drains shut: its box drains through these gaps, and none
 * stays open; closes: it is in the open, and a gap that was left closes.
 */
export type RowTrouble = "pushes" | "drains shut" | "closes";

/** What would go wrong with a row at its wettest; the first of these that is so. */
export function rowTrouble({ box, gaps, ends, swelling, room, span }: RowOfYear): RowTrouble | undefined {
  const bottom = box?.as === "floor" ? box.path : undefined;
  // A bottom that should leave gaps and leaves none is told by the water path, whose cure leaves room for this.
  if (bottom?.stop?.is === "gaps narrow" || bottom?.stop?.is === "bottom tight") return undefined;
  if (bottom && drainsByGaps(bottom)) {
    const around = [...gaps, ...ends.map((e) => e?.gap)];
    if (around.every((g) => g && g.wettest <= NOTHING)) return "drains shut";
  }
  if (span !== undefined && swelling > room + NOTHING) return "pushes";
  if (box) return undefined;
  return gaps.some(closes) ? "closes" : undefined;
}

export const closes = ({ built, wettest }: GapOfYear): boolean => built > LEFT && wettest <= NOTHING;

const drainsByGaps = ({ water, out, gapsDrain }: WaterPath): boolean =>
  water !== undefined && gapsDrain === true && (out === "gaps" || out === "unsaid");

/** mm: what arithmetic leaves. */
const NOTHING = 1e-6;
/** mm: less was hardly left as a gap: 1/32". */
const LEFT = 0.79375;
