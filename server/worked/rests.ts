/** What is left of boards and sheets once all is cut, and worth keeping. In ticks. */
import type { BoardLayout } from "../cutting/job";
import type { SheetLayout } from "../cutting/sheets";
import { TICKS_PER_MM } from "./layouts";
import type { Material } from "./materials";

/**
 * A rest is not worth naming when it is shorter than 12 in, or, of a sheet, narrower than 6 in (common practice: what is
 * cut from it leaves less than 6 in, too little to hold while sawing).
 */
const SHORTEST = 12 * 25.4 * TICKS_PER_MM;
const NARROWEST = SHORTEST / 2;

/** Along the board from its marked end. */
export interface BoardRest {
  readonly from: number;
  readonly length: number;
}

/** Every rest worth keeping, in order along the board. */
export const boardRests = ({ waste }: BoardLayout): BoardRest[] =>
  waste
    .filter(({ from, to, why }) => why === "offcut" && to - from >= SHORTEST)
    .map(({ from, to }) => ({ from, length: to - from }));

/** From the sheet's lower left corner; `length` lies along the sheet's. */
export interface SheetRest {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/**
 * What two cuts from edge to edge take off the sheet before anything else is cut: a strip across its end and a strip
 * along its side, laid so that the larger of them is as large as it can be. What is left between pieces is not counted.
 */
export function sheetRests({ length, width, placements }: SheetLayout, kerf: number): SheetRest[] {
  const right = Math.max(...placements.map((p) => p.x + p.length));
  const top = Math.max(...placements.map((p) => p.y + p.width));
  const [x, y] = [right + kerf, top + kerf];
  const ways: SheetRest[][] = [
    [
      { x, y: 0, length: length - x, width },
      { x: 0, y, length: right, width: width - y },
    ],
    [
      { x: 0, y, length, width: width - y },
      { x, y: 0, length: length - x, width: top },
    ],
  ];
  const kept = ways.map((way) =>
    way.filter(
      ({ length, width }) => Math.max(length, width) >= SHORTEST && Math.min(length, width) >= NARROWEST,
    ),
  );
  const most = (rests: readonly SheetRest[]) => Math.max(0, ...rests.map((r) => r.length * r.width));
  return most(kept[1]!) > most(kept[0]!) ? kept[1]! : kept[0]!;
}

/** Whether the grain of a rest, which runs along its length, lies otherwise to its longer side than that of its sheet. */
export const isAcross = (length: number, width: number, grain: Material["grain"]): boolean =>
  grain === "length" ? length < width : grain === "width" && length > width;
